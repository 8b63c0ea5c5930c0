/** The governing forces of a support: for each component its largest and its smallest, with what acts beside it. */
import type { Amount, GoverningForces, SupportReport } from "../../../shared/report.js";
import { kinds, type UnitSystem } from "../units/kinds.js";
import type { Block } from "./document.js";

const groupsOf = (rows: readonly GoverningForces[]): readonly (readonly GoverningForces[])[] => {
  const groups = new Map<string, GoverningForces[]>();
  for (const row of rows) groups.set(`${row.level} ${row.section}`, [...(groups.get(`${row.level} ${row.section}`) ?? []), row]);
  return [...groups.values()];
};

/** In the unit of the head, so that the numbers of a column stand in one unit. */
function numeral({ value }: Amount, kind: "force" | "moment", system: UnitSystem): string {
  const shown = Number((value / kinds[kind][system].factor).toPrecision(4));
  return Math.abs(shown) < 0.0005 ? "0" : String(shown);
}

export function governing({ name, columns, governing: rows }: SupportReport, system: UnitSystem): readonly Block[] {
  const [force, moment] = [kinds.force[system].unit, kinds.moment[system].unit];
  const several = columns > 1;
  return groupsOf(rows).map((group): Block => {
    const [{ level, section }] = group;
    const weight = section === "underside" ? ", the weight of the foundation not in them" : "";
    return {
      type: "table",
      caption: `Governing forces of ${name} at the ${section === "underside" ? "underside of the foundation" : section}, ${level} level${weight}`,
      head: ["", ...(several ? ["Column"] : []), `P, ${force}`, `Vx, ${force}`, `Vy, ${force}`, `Mx, ${moment}`, `My, ${moment}`, "Combination"],
      rows: group.map(({ extreme, component, column, forces, combination }) => [
        `${extreme} ${component}`,
        ...(several ? [String(column)] : []),
        numeral(forces.P, "force", system),
        numeral(forces.Vx, "force", system),
        numeral(forces.Vy, "force", system),
        numeral(forces.Mx, "moment", system),
        numeral(forces.My, "moment", system),
        combination,
      ]),
      numeric: several ? [2, 3, 4, 5, 6] : [1, 2, 3, 4, 5],
      tight: [0],
    };
  });
}
