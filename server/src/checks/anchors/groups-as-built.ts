/**
 * A whole group of rods set off its place: beams and roof come cut to the distances drawn, and the column stands off its line or does not meet them.
 *
 * Middle of the rods found against the middle of those drawn. Older AISC 303 7.5.1 (from memory): 1/4 in from the middle of one group to that of the
 * next, no more than 1 in summed up along a line.
 */
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import { leastBetween } from "../../mechanics/nearest-neighbor.js";
import type { Point } from "../../mechanics/rectangles.js";
import { middleOf } from "../../mechanics/rod-pattern.js";
import type { Structure, Support } from "../../project/model.js";
import { format } from "../../units/format.js";
import { rodPlaces } from "../base/rod-places.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { drawnPattern } from "./as-built.js";
import { distanceBetween } from "./rod-edges.js";

export const groupTolerance = formula({
  id: "anchors.group-tolerance",
  text: "t_g = t_1",
  source: "AISC 303, older editions 7.5.1: between the middles of two groups next to each other (from memory)",
  symbols: { t_g: { kind: "length", meaning: "most that the distance of two groups may differ from the drawn one" } },
  constants: { t_1: "0.25 inch" },
});

export const summedTolerance = formula({
  id: "anchors.summed-tolerance",
  text: "t_s = t_1",
  source: "AISC 303, older editions 7.5.1: summed up over the groups of a line (from memory)",
  symbols: { t_s: { kind: "length", meaning: "most that the distance of any two groups may differ from the drawn one" } },
  constants: { t_1: "1 inch" },
});

interface Group {
  readonly support: Support;
  /** Middle of the rods found from the middle of those drawn, m. */
  readonly off: Point;
  readonly isFound: boolean;
}

const onPlace: Point = { x: 0, y: 0 };

/** Undefined where the places are not all known; the rule of the pattern asks for them. */
function groupOf(support: Support): Group | undefined {
  const base = support.base?.fields;
  const anchors = base?.anchors?.value;
  const before = base && anchors && drawnPattern(base, anchors);
  if (!before) return { support, off: onPlace, isFound: false };
  const [drawn, found] = [rodPlaces(before), rodPlaces(anchors)];
  if (!drawn || !found || "problem" in drawn || "problem" in found) return undefined;
  return { support, off: middleOf(found, middleOf(drawn)), isFound: true };
}

const nearestOf = ({ support }: Group, others: readonly Group[]): Group | undefined => {
  const nearest = leastBetween(support.places, others.map((other) => other.support.places));
  return nearest === undefined ? undefined : others[nearest];
};

function judgeGroup(one: Group, others: readonly Group[], show: (length: number) => string): Omit<RuleFinding, "support"> {
  const at = one.support.base?.fields["as built"]?.value.anchors ?? one.support;
  const next = nearestOf(one, others);
  const apart = (other: Group | undefined): number => distanceBetween(one.off, other?.off ?? onPlace);
  const [t_g, t_s] = [groupTolerance.value({}), summedTolerance.value({})];
  const toNext = next ? `the distance to the rods of ${next.support.name} is off by ${show(apart(next))}` : `the rods stand ${show(apart(undefined))} off the drawn place of the column`;
  const way = "Have the engineer of record say whether the column is set on the middle found, its top with it, or on the drawn one by slots; tell whoever cuts the beams.";
  if (isAbove(apart(next), t_g)) return { verdict: "over", message: `${one.support.name}: the middle of its rods was found ${show(distanceBetween(one.off, onPlace))} off, and ${toNext}; ${show(t_g)} is the tolerance between two groups. ${way}`, at };
  const far = others.find((other) => isAbove(apart(other), t_s));
  if (far) return { verdict: "over", message: `${one.support.name}: the distance to the rods of ${far.support.name} is off by ${show(apart(far))}; ${show(t_s)} is the most it may sum up to. ${way}`, at };
  return { verdict: "holds", message: `${one.support.name}: ${toNext}; ${show(t_g)} is the tolerance between two groups.`, at };
}

function judge(structure: Structure): readonly RuleFinding[] {
  const system = structure.project.units?.value ?? "US";
  const groups = structure.supports.flatMap((support) => (support.base ? (groupOf(support) ?? []) : []));
  return groups
    .filter(({ isFound }) => isFound)
    .map((one) => ({ support: one.support, ...judgeGroup(one, groups.filter((other) => other !== one), (value) => format(value, "length", system)) }));
}

export const groupsAsBuilt: RuleDecl = {
  id: "anchors.groups-as-built",
  title: "Distance from one group of rods to the next",
  link: "anchors",
  clause: "AISC 303, tolerances between groups of anchor rods (from memory)",
  fails: "A group of rods stands off its place as a whole, and the beams cut to the drawn distances do not meet the column.",
  seen: "A column pulled over by its beam with a come-along, and bolts that will not go in.",
  range: "By the middle of the rods found, where their places are stated as built; against the nearest other line or column, and against all of them for the sum. One entry of a base stands for every column on it: these are taken to have moved alike. A turn of the whole group is for the rule of the pattern.",
  judge,
};
