/** The governing forces of a support: for each component its largest and its smallest, with what acts beside it. */
import type { GoverningForces, SupportReport } from "../../../shared/report.js";
import type { UnitSystem } from "../units/kinds.js";
import type { Block } from "./document.js";
import { forceColumns } from "./force-cells.js";

const groupsOf = (rows: readonly GoverningForces[]): readonly (readonly GoverningForces[])[] => {
  const groups = new Map<string, GoverningForces[]>();
  for (const row of rows) groups.set(`${row.level} ${row.section}`, [...(groups.get(`${row.level} ${row.section}`) ?? []), row]);
  return [...groups.values()];
};

export function governing({ name, columns, governing: rows }: SupportReport, system: UnitSystem): readonly Block[] {
  const several = columns > 1;
  return groupsOf(rows).map((group): Block => {
    const [{ level, section }] = group;
    const { heads, rows: cells } = forceColumns(group.map(({ forces }) => forces), system);
    const weight = section === "underside" ? ", the weight of the foundation not in them" : "";
    return {
      type: "table",
      caption: `Governing forces of ${name} at the ${section === "underside" ? "underside of the foundation" : section}, ${level} level${weight}`,
      head: ["", ...(several ? ["Column"] : []), ...heads, "Combination"],
      rows: group.map(({ extreme, component, column, combination }, i) => [
        `${extreme} ${component}`,
        ...(several ? [String(column)] : []),
        ...cells[i],
        combination,
      ]),
      numeric: heads.map((_, i) => i + (several ? 2 : 1)),
      tight: [0],
    };
  });
}
