/** Plan of the rods that pull, or that take shear, with the squares of 17.6.2 about them as far as there is concrete. */
import { groupProjection, type ConeInputs } from "../checks/anchors/cone.js";
import { isUnstable, sharedContact } from "../checks/base/distribution.js";
import type { CheckResult } from "../findings/result.js";
import { overlap } from "../mechanics/rectangles.js";
import { rodGroup } from "../mechanics/rod-group.js";
import { levelChain, plumbChain } from "./dimension.js";
import { hatched } from "./hatch.js";
import { listed, northMark, planOfBase, rodMarks } from "./concrete-plan.js";
import { observed } from "./observe.js";
import type { Picture, Show } from "./picture.js";
import { cornersOf, placed } from "./scale.js";
import { drawing, rectangle, words } from "./svg.js";

const frame = { left: 74, top: 40, width: 300, height: 300 } as const;

/** Of breakout in tension and of pryout; undefined where the check found no group. */
export function breakoutPlan(result: CheckResult, show: Show): Picture | undefined {
  const found = observed(result);
  const cone = found?.routine(groupProjection);
  if (!found || !cone) return undefined;
  const inputs = result.inputs as ConeInputs;
  const { anchors, reach, member } = cone.args;
  const squares = anchors.map(({ x, y }) => overlap({ west: x - reach, east: x + reach, south: y - reach, north: y + reach }, member));
  const { scale, shown, strokes } = planOfBase(inputs, squares, frame);
  const { x, y, of } = scale;
  const contact = found.routine(sharedContact)?.result;
  const tensions = found.routine(rodGroup)?.args.tensions ?? (contact && !isUnstable(contact) ? contact.tensions : []);
  const isInGroup = (rod: number): boolean => anchors.some((at) => at.x === inputs.rods[rod].x && at.y === inputs.rods[rod].y);
  const rows = inputs.rods.map((_, i) => `rod ${i + 1}: ${result.check.id === "anchors.pryout" ? (isInGroup(i) ? "takes shear" : "none") : tensions[i] > 0 ? `${show(tensions[i], "force")} tension` : "no tension"}`);
  const area = show(cone.result.area, "area");
  const chain = (from: number, places: readonly number[], to: number, shownFrom: number, shownTo: number): readonly number[] =>
    [...(from >= shownFrom ? [from] : []), ...[...new Set(places)].sort((one, other) => one - other), ...(to <= shownTo ? [to] : [])];
  const across = chain(member.west, anchors.map((at) => at.x), member.east, shown.west, shown.east);
  const up = chain(member.south, anchors.map((at) => at.y), member.north, shown.south, shown.north);
  const between = (stops: readonly number[]): readonly string[] => stops.slice(1).map((to, i) => show(to - stops[i], "length"));
  const caption =
    `Plan to scale. Hatched: the area within ${show(reach, "length")} of the rods${result.check.id === "anchors.pryout" ? " that take shear" : " in tension"}, as far as there is concrete, ${area} together.` +
    (inputs.member.shape === "round" ? " Dashed: the square inside the round pier, by which edges are measured." : "");
  return {
    caption,
    svg: drawing(560, 384, caption, [
      words(20, 20, "Plan", "start", 12),
      hatched(squares.map((square) => placed(scale, cornersOf(square)))),
      ...squares.map((square) => rectangle(x(square.west), y(square.north), of(square.east - square.west), of(square.north - square.south), "thin", "3 3")),
      ...strokes,
      ...rodMarks(inputs.rods, inputs.d_a, scale, isInGroup),
      levelChain(across.map(x), y(shown.south) + 22, between(across)),
      plumbChain(up.map(y), frame.left - 8, between(up)),
      northMark(404, 70),
      ...listed(404, 110, rows),
    ]),
  };
}
