/**
 * A foundation at the top of a slope stands too near to its face: the soil in front of it is thin, creeps downhill and washes out. In the field the
 * downhill posts of a terrace roof lean outward, and their footings look out of the bank.
 *
 * IBC 2021 1808.7.2 (from memory): beside slopes steeper than 1 in 3 the underside stands back from the face by a third of the height of the slope,
 * 40 ft at most; where the slope is steeper than 1 in 1, from a plane that rises at 45 degrees from its foot.
 */
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

const source = "IBC 2021 1808.7.2 (from memory)";
const height = { kind: "distance", meaning: "height of the slope, from its foot to grade", field: "foundations.*.slope below.height" } as const;
const steepness = { kind: "slope", meaning: "rise of the slope over its run", field: "foundations.*.slope below.slope", range: [0.3, 3] } as const;
const toEdge = { kind: "distance", meaning: "level distance from the foundation to the top of the slope", field: "foundations.*.slope below.distance" } as const;
const depth = { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" } as const;

export const setbackNeeded = formula({
  id: "site.setback-needed",
  text: "a_m = min(H / 3, a_40)",
  source,
  symbols: { a_m: { kind: "distance", meaning: "least setback" }, H: height },
  constants: { a_40: "40 ft" },
});

export const setbackThere = formula({
  id: "site.setback",
  text: "a_s = s <= 1 ? a + d / s : a + H / s - H + d",
  source: `geometry; ${source}: from the face of the slope, or from a plane at 45 degrees from its foot`,
  symbols: { a_s: { kind: "distance", meaning: "setback at the level of the underside" }, s: steepness, a: toEdge, d: depth, H: height },
});

export const depthForSetback = formula({
  id: "site.depth-for-setback",
  text: "d = s <= 1 ? (a_m - a) * s : a_m - a - H / s + H",
  source: `geometry; ${source}`,
  symbols: { d: depth, a_m: { kind: "distance", meaning: "least setback" }, s: steepness, a: toEdge, H: height },
});

/** Slopes flatter than 1 in 3 ask for nothing. */
const flattest = 0.3333333333;

const nothing = { message: "" };

function judgeSlope(_: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const below = fields["slope below"];
  if (!below) return undefined;
  const { slope, height: high, distance } = below.value;
  const deep = fields.depth;
  const lacks = [!slope && "its slope", !high && "its height", !distance && "how far the foundation stands from its top", !deep && "the depth of the underside"].filter((one) => one !== false);
  const shown = (value: number): string => show(value, "distance");
  if (!slope || !high || !distance || !deep) return { over: [], unchecked: [{ message: `Of the slope below the foundation ${lacks.join(", ")} ${lacks.length > 1 ? "are" : "is"} needed.`, at: below }], holds: nothing };
  if (!isAbove(slope.value, flattest)) return { over: [], unchecked: [], holds: { message: `The slope below it, ${show(slope.value, "slope")}, is no steeper than 1 in 3 and asks for no setback.`, at: slope } };
  if (!isBelow(deep.value, high.value)) return { over: [], unchecked: [], holds: { message: `The underside is no higher than the foot of the slope below it.`, at: deep } };
  const given = { s: slope.value, a: distance.value, H: high.value };
  const a_m = setbackNeeded.value({ H: high.value });
  const a_s = setbackThere.value({ ...given, d: deep.value });
  const from = slope.value > 1 ? "a plane at 45 degrees from the foot of the slope" : "the face of the slope";
  const says = `Underside ${shown(Math.max(a_s, 0))} back from ${from}, ${shown(high.value)} high; ${shown(a_m)} needed, a third of its height`;
  if (!isBelow(a_s, a_m)) return { over: [], unchecked: [], holds: { message: `${says}.`, at: distance } };
  const inFront = a_s < 0 ? " It stands in front of that plane." : "";
  return { over: [{ message: `${says}.${inFront} Move the foundation away from the slope, go down to ${shown(depthForSetback.value({ ...given, a_m }))}, or have a geotechnical engineer show that less will do.`, at: distance }], unchecked: [], holds: nothing };
}

export const slopeSetback: RuleDecl = {
  id: "site.slope-setback",
  title: "Setback from a slope below",
  link: "site",
  clause: source,
  fails: "The thin soil between the foundation and the face of the slope creeps and washes out, and the foundation goes with it.",
  seen: "The downhill posts of a terrace roof leaning outward, their footings looking out of the bank.",
  range: "Slopes that fall away from a foundation, where one is stated (slope below), by geometry alone: whether the slope itself stands, and what the soil in front of the foundation still holds sideways, are not looked at. Slopes that rise behind it are not looked at.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeSlope),
};
