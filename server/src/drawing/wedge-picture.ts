/** The side of the concrete that a row of rods pushes off, seen straight on, and the same wedge in plan. */
import { wedgeArea, type WedgeInputs } from "../checks/anchors/shear-wedge.js";
import type { CheckResult } from "../findings/result.js";
import { edgeRows, edgeNames, type EdgeName, type EdgeRow } from "../mechanics/edge-rows.js";
import type { Point, Rectangle } from "../mechanics/rectangles.js";
import { planOfBase, rodMarks, northMark } from "./concrete-plan.js";
import { plumb, levelDimension } from "./dimension.js";
import { hatched } from "./hatch.js";
import { observed } from "./observe.js";
import type { Picture, Show } from "./picture.js";
import { cornersOf, fitted, placed } from "./scale.js";
import { drawing, line, polyline, rectangle, words } from "./svg.js";

const planFrame = { left: 20, top: 40, width: 240, height: 240 } as const;
const faceFrame = { left: 312, top: 60, width: 180, height: 200 } as const;

/** The edge whose rows hold this row of rods. */
const edgeOf = ({ rods, member }: WedgeInputs, row: EdgeRow): EdgeName | undefined =>
  edgeNames.find((edge) =>
    edgeRows({ rods, member: member.edges, edge }).some((one) => one.distance === row.distance && one.from === row.from && row.indices.every((i) => one.indices.includes(i)) && one.along.includes(row.along[0])),
  );

/** Places of a strip in plan: along the edge, and from the row to it. */
function outline(inputs: WedgeInputs, row: EdgeRow, edge: EdgeName, reach: number): readonly Point[] {
  const { west, east, south, north } = inputs.member.edges;
  const cut = (place: number): number => Math.min(Math.max(place, row.from), row.to);
  const [first, last] = [row.along[0], row.along[row.along.length - 1]];
  const at = (along: number, out: number): Point =>
    edge === "west" ? { x: west + out, y: along } : edge === "east" ? { x: east - out, y: along } : edge === "south" ? { x: along, y: south + out } : { x: along, y: north - out };
  return [at(first, row.distance), at(last, row.distance), at(cut(last + reach), 0), at(cut(first - reach), 0)];
}

export function wedgePicture(result: CheckResult, show: Show): Picture | undefined {
  const wedge = observed(result)?.routine(wedgeArea);
  if (!wedge) return undefined;
  const inputs = result.inputs as WedgeInputs;
  const { row, reach, thickness } = wedge.args;
  const edge = edgeOf(inputs, row);
  if (!edge) return undefined;

  const strip = outline(inputs, row, edge, reach);
  const plan = planOfBase(inputs, [{ west: Math.min(...strip.map(({ x }) => x)), east: Math.max(...strip.map(({ x }) => x)), south: Math.min(...strip.map(({ y }) => y)), north: Math.max(...strip.map(({ y }) => y)) }], planFrame);
  const corners = placed(plan.scale, strip);

  // On the face the top of the concrete is at zero and depth goes down.
  const cut = (place: number): number => Math.min(Math.max(place, row.from), row.to);
  const rectangles: readonly Rectangle[] = row.along.map((at) => ({ west: cut(at - reach), east: cut(at + reach), south: -Math.min(reach, thickness), north: 0 }));
  const [left, right] = [Math.max(row.from, row.along[0] - 1.8 * reach), Math.min(row.to, row.along[row.along.length - 1] + 1.8 * reach)];
  const deep = Math.min(thickness, 1.5 * reach);
  const scale = fitted({ west: left, east: right, south: -deep, north: 0 }, faceFrame);
  const { x, y, of } = scale;
  const caption =
    `Toward the ${edge} edge, to scale. Hatched: the wedge in plan, and on the face ${show(wedge.result, "area")}, which reaches ${show(reach, "length")} down and to each side of the rods as far as there is concrete.` +
    (inputs.member.shape === "round" ? " Edges are those of the square inside the round pier." : "");
  return {
    caption,
    svg: drawing(560, 330, caption, [
      words(20, 20, "Plan", "start", 12),
      hatched([corners]),
      polyline(corners, "thin"),
      ...plan.strokes,
      ...rodMarks(inputs.rods, inputs.d_a, plan.scale, (rod) => row.indices.includes(rod)),
      northMark(276, 66),
      words(faceFrame.left, 20, `Face toward the ${edge}`, "start", 12),
      hatched(rectangles.map((one) => placed(scale, cornersOf(one)))),
      ...rectangles.map((one) => rectangle(x(one.west), y(one.north), of(one.east - one.west), of(one.north - one.south), "thin", "3 3")),
      line(x(left), y(0), x(right), y(0), "cut"),
      left === row.from ? line(x(left), y(0), x(left), y(-deep), "cut") : "",
      right === row.to ? line(x(right), y(0), x(right), y(-deep), "cut") : "",
      deep === thickness ? line(x(left), y(-deep), x(right), y(-deep), "cut") : "",
      ...row.along.map((at) => line(x(at), y(0) - 12, x(at), y(-Math.min(inputs.h_ef, deep)), "seen", "5 3")),
      plumb(x(right) + 10, y(0), y(-Math.min(reach, thickness)), show(Math.min(reach, thickness), "length"), "right"),
      levelDimension(x(cut(row.along[0] - reach)), x(cut(row.along[row.along.length - 1] + reach)), 300, show(cut(row.along[row.along.length - 1] + reach) - cut(row.along[0] - reach), "length")),
    ]),
  };
}
