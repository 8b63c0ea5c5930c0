/** The loads of the roof, case by case: what presses and pushes, where each coefficient is read from, and what comes of it on the whole roof. */
import type { LoadCaseReport, StructureReport } from "../../../shared/report.js";
import type { Block } from "./document.js";
import { forceColumns } from "./force-cells.js";
import { columnUnit, formatIn } from "../units/format.js";
import type { DisplayUnit } from "../units/kinds.js";

const none = "–";

type Part = LoadCaseReport["parts"][number];

const coefficient = ({ coefficient: of }: Part): string => (of ? `${of.symbol} = ${Number(of.value.toFixed(3))}` : none);

/** The units of a column that holds pressures and pushes. */
interface Units {
  readonly pressure: DisplayUnit;
  readonly push: DisplayUnit;
}

/** A pressure, or a push by its sense along the axes. */
function amountOf({ pressure, pushX, pushY }: Part, units: Units): string {
  if (pressure) return formatIn(pressure.value, units.pressure);
  const along = (push: Part["pushX"], axis: string): string => (push && push.value !== 0 ? `${formatIn(push.value, units.push)} along ${axis}` : "");
  const pushes = [along(pushX, "x"), along(pushY, "y")].filter(Boolean);
  return pushes.length > 0 ? pushes.join(", ") : none;
}

/** Rows of one case; its title and source stand in the first. */
function rowsOf({ title, source, outside, parts }: LoadCaseReport, units: Units): readonly (readonly string[])[] {
  const name = outside === undefined ? title : `${title} (information only: ${outside})`;
  if (parts.length === 0) return [[name, none, none, none, source]];
  return parts.map((part, i) => [i === 0 ? name : "", part.where, coefficient(part), amountOf(part, units), part.read]);
}

export function loadPage({ loads, units }: StructureReport): readonly Block[] {
  if (!loads) return [];
  const parts = loads.cases.flatMap((one) => one.parts);
  const values = (of: readonly (Part["pushX"] | undefined)[]): readonly number[] => of.flatMap((one) => (one ? [one.value] : []));
  const shown = { pressure: columnUnit(values(parts.map(({ pressure }) => pressure)), "pressure", units), push: columnUnit(values(parts.flatMap(({ pushX, pushY }) => [pushX, pushY])), "force", units) };
  const groups = loads.cases.map((one) => rowsOf(one, shown));
  const resultants = forceColumns(loads.cases.map(({ total }) => total), units);
  return [
    { type: "heading", level: 2, text: "Loads on the roof" },
    { type: "paragraph", text: `Velocity pressure at mean roof height q_h = ${loads.velocityPressure.shown} (${loads.velocityPressureSource}). Pressures are positive down on the top of the roof; pushes are positive toward the east and the north.` },
    {
      type: "table",
      caption: "Loads by case, and where each is read from",
      head: ["Load case", "Where", "Coefficient", "Pressure or push", "Read from"],
      rows: groups.flat(),
      numeric: [],
      tight: [2],
      groups: groups.map((_, i) => groups.slice(0, i).reduce((sum, rows) => sum + rows.length, 0)),
    },
    {
      type: "table",
      caption: "Resultants on the whole structure, about the middle of the roof at mean height, P positive down; the weight of the columns is not in them",
      head: ["Load case", ...resultants.heads],
      rows: loads.cases.map(({ title }, i) => [title, ...resultants.rows[i]]),
      numeric: resultants.heads.map((_, i) => i + 1),
    },
  ];
}
