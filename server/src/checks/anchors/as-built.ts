/**
 * Rods that were set off their pattern: the plate does not go over them, its holes are burned wider, and the rod pulls at another place than was
 * drawn. The checks run on the places that were found; here is said how far off they are and what is to be done.
 *
 * Tolerance by the rod's size, ACI 117 and later editions of AISC 303 (from memory): 1/4 in to 7/8 in rods, 3/8 in to 1-1/2 in, 1/2 in above.
 */
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Point } from "../../mechanics/rectangles.js";
import { differencesOf } from "../../project/as-built.js";
import type { Base, Sourced } from "../../project/model.js";
import { readHardware } from "../base/hardware.js";
import { judgeBases, type Found, type Judgment, type Show } from "../base/judge.js";
import { rodPlaces, type Anchors } from "../base/rod-places.js";
import type { RuleDecl } from "../contract.js";
import { distanceBetween } from "./rod-edges.js";

const rod = { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" } as const;

export const placeTolerance = formula({
  id: "anchors.place-tolerance",
  text: "t_r = d_a < d_1 ? t_1 : (d_a < d_2 ? t_2 : t_3)",
  source: "ACI 117 and AISC 303, place of an anchor rod by its diameter (from memory)",
  symbols: { t_r: { kind: "length", meaning: "most that a rod may stand off its place" }, d_a: rod },
  constants: { d_1: "0.99 inch", d_2: "1.51 inch", t_1: "0.25 inch", t_2: "0.375 inch", t_3: "0.5 inch" },
});

export const holePlay = formula({
  id: "anchors.hole-play",
  text: "p_h = max(0, d_h - d_a) / 2",
  source: "geometry: the plate stands in its place",
  symbols: { p_h: { kind: "length", meaning: "how far off a rod still passes its hole" }, d_h: { kind: "length", meaning: "diameter of the hole", field: "bases.*.hole" }, d_a: rod },
});

const placing = ["count", "spacing x", "spacing y", "bolt circle", "places"] as const;
type Placing = (typeof placing)[number];

/** The pattern as it was drawn, out of an entry in which what was found stands over it; undefined where no place differs. */
export function drawnPattern(base: Base, anchors: Anchors): Pick<Anchors, Placing> | undefined {
  const moved = differencesOf(base).filter(({ built }) => placing.some((name) => built.path.endsWith(`.anchors.${name}`)));
  if (moved.length === 0) return undefined;
  const drawn: Record<Placing, unknown> = { count: anchors.count, "spacing x": anchors["spacing x"], "spacing y": anchors["spacing y"], "bolt circle": anchors["bolt circle"], places: anchors.places };
  for (const { drawn: before, built } of moved) for (const name of placing) if (built.path.endsWith(`.anchors.${name}`)) drawn[name] = before;
  return drawn as Pick<Anchors, Placing>;
}

interface Offset {
  readonly rod: number;
  readonly distance: number;
}

const farthest = (drawn: readonly Point[], found: readonly Point[]): Offset =>
  drawn.map((at, i) => ({ rod: i + 1, distance: distanceBetween(at, found[i]) })).reduce((most, each) => (each.distance > most.distance ? each : most));

function judgePattern(base: Base, show: Show): Judgment {
  const nothing = { message: "" };
  const anchors = base.anchors?.value;
  const at: Sourced<unknown> | undefined = base["as built"]?.value.anchors ?? base.anchors;
  const before = anchors && drawnPattern(base, anchors);
  if (!anchors || !before) return { over: [], unchecked: [], holds: { message: "Nothing is said to stand off the drawn pattern of the rods.", at: base.anchors } };
  const drawn = rodPlaces(before);
  const found = rodPlaces(anchors);
  const hardware = readHardware(base);
  const d_a = anchors.diameter?.value;
  if (!drawn || !found || "problem" in drawn || "problem" in found || d_a === undefined) {
    const problem = [drawn, found].flatMap((places) => (places && "problem" in places ? [places.problem] : []))[0] ?? "the number, diameter and places of the rods are needed";
    return { over: [], unchecked: [{ message: `How far the rods stand off their pattern cannot be said: ${problem}.`, at }], holds: nothing };
  }
  if (drawn.length !== found.length) return { over: [{ message: `${found.length} rods found, ${drawn.length} drawn. The checks count those found; the engineer of record has to say what replaces the missing ones.`, at }], unchecked: [], holds: nothing };
  const { rod: number, distance } = farthest(drawn, found);
  const t_r = placeTolerance.value({ d_a });
  const over: Found[] = [];
  if (isAbove(distance, t_r)) {
    const play = hardware && Number.isFinite(hardware.hole) ? holePlay.value({ d_h: hardware.hole, d_a }) : undefined;
    const passes = play !== undefined && !isAbove(distance, play);
    const way = passes
      ? `Its hole of ${show(hardware?.hole ?? 0)} still takes it: set the plate, and have the engineer of record accept the place.`
      : "Slot the hole and weld a plate washer over it, by the engineer of record's written word; do not bend the rod over, and do not burn the hole without asking.";
    over.push({ message: `Rod ${number} stands ${show(distance)} off its drawn place; ${show(t_r)} is the tolerance. ${way}`, at });
  }
  return { over, unchecked: [], holds: { message: `Rods found within ${show(distance)} of their drawn places; ${show(t_r)} is the tolerance.`, at } };
}

export const rodsAsBuilt: RuleDecl = {
  id: "anchors.as-built",
  title: "Rods off their pattern",
  link: "anchors",
  clause: "ACI 117 and AISC 303, tolerances of anchor rods (from memory)",
  fails: "The plate does not go over its rods, or a rod pulls where nobody reckoned with it.",
  seen: "Holes burned wide on the site, rods bent toward their holes, a washer over a slot with nothing welded.",
  range: "Places found against places drawn, rod by rod in the order they are given; the plate stands where it was drawn. The checks of base and anchors run on the places found. Heights are held against the projection needed by another rule; the distance from one group of rods to the next has a rule of its own.",
  alone: true,
  judge: (structure) => judgeBases(structure, (_, base, show) => judgePattern(base, show)),
};
