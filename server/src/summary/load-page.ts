/** The loads of the roof, case by case: what presses and pushes, where each coefficient is read from, and what comes of it on the whole roof. */
import type { LoadCaseReport, StructureReport } from "../../../shared/report.js";
import type { Block } from "./document.js";
import { forceCells, forceHeads } from "./force-cells.js";

const none = "–";

type Part = LoadCaseReport["parts"][number];

const coefficient = ({ coefficient: of }: Part): string => (of ? `${of.symbol} = ${Number(of.value.toFixed(3))}` : none);

/** A pressure, or a push by its sense along the axes. */
function amountOf({ pressure, pushX, pushY }: Part): string {
  if (pressure) return pressure.shown;
  const pushes = [pushX && pushX.value !== 0 ? `${pushX.shown} along x` : "", pushY && pushY.value !== 0 ? `${pushY.shown} along y` : ""].filter(Boolean);
  return pushes.length > 0 ? pushes.join(", ") : none;
}

/** Rows of one case; its title and source stand in the first. */
function rowsOf({ title, source, outside, parts }: LoadCaseReport): readonly (readonly string[])[] {
  const name = outside === undefined ? title : `${title} (information only: ${outside})`;
  if (parts.length === 0) return [[name, none, none, none, source]];
  return parts.map((part, i) => [i === 0 ? name : "", part.where, coefficient(part), amountOf(part), part.read]);
}

export function loadPage({ loads, units }: StructureReport): readonly Block[] {
  if (!loads) return [];
  const groups = loads.cases.map(rowsOf);
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
      head: ["Load case", ...forceHeads(units)],
      rows: loads.cases.map(({ title, total }) => [title, ...forceCells(total, units)]),
      numeric: [1, 2, 3, 4, 5],
    },
  ];
}
