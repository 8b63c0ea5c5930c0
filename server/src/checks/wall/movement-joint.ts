/**
 * A movement joint runs so near a post that it cuts the cone of its rods: the concrete beside the joint breaks out, or the joint opens under the plate. In the field
 * a corner of the wall broken off beside a post, along a joint.
 *
 * Common practice: a joint stays out of the reach of the cone, 1.5 times the embedment (ACI 318-19 17.6.2.1.1), unless the notebook states another distance. The
 * checks of the rods take a nearer joint for an edge in any case.
 */
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import { criticalEdge } from "../anchors/cone.js";
import { rodPlaces } from "../base/rod-places.js";
import { readWallRun } from "../base/wall-place.js";
import { check, type Gather, sameInAll, weigh, weighLimit } from "../contract.js";
import { isWall } from "./body.js";

export const jointGap = formula({
  id: "wall.movement-joint-gap",
  text: "c_j = max(a_j - x_r, 0 * a_j)",
  source: "geometry",
  symbols: {
    c_j: { kind: "length", meaning: "from the nearest rod to the joint" },
    a_j: { kind: "distance", meaning: "from the middle of the post to the joint", field: "foundations.*.movement joints" },
    x_r: { kind: "length", meaning: "from the middle of the post to its outermost rod, toward the joint", range: [-1, 1] },
  },
});

interface Side {
  /** m. */
  readonly joint: number;
  readonly rod: number;
}

export interface MovementJointInputs {
  readonly sides: readonly Side[];
  readonly h_ef: number;
  /** Least distance as the notebook states it, m. */
  readonly stated: number | undefined;
}

/** The first row counts from the middle of the post: rods toward smaller coordinates are looked at from there too. */
const mirrored = formula({ id: "wall.mirrored-rod", text: "x_r = -x", source: "geometry", symbols: { x_r: { kind: "length", meaning: "place of the rod, seen from the other side", range: [-1, 1] }, x: { kind: "length", meaning: "place of the rod", range: [-1, 1] } } });

function read(support: Support, gather: Gather, place: number): MovementJointInputs {
  const f = support.foundation?.fields;
  const anchors = gather.needs(support.base?.fields.anchors, "anchors of the post on the wall");
  const h_ef = gather.need(anchors?.embedment, "anchor embedment");
  const places = rodPlaces(anchors);
  if (places && "problem" in places) gather.block(places.problem);
  const rods = places && !("problem" in places) ? places : [];
  if (anchors && rods.length === 0) gather.block("the places of the rods are not known");
  const run = readWallRun(support, gather, place, gather.need(f?.length ?? f?.["length per post"], "length of the wall"));
  const sides: Side[] = [];
  if (run) {
    const along = rods.map((rod) => rod[run.axis]);
    if (run.jointBefore) sides.push({ joint: run.before, rod: Math.max(...along.map((x) => mirrored.value({ x }))) });
    if (run.jointAfter) sides.push({ joint: run.after, rod: Math.max(...along) });
  }
  return { sides, h_ef, stated: gather.may(f?.["joint distance"]) };
}

export const wallMovementJoint = check({
  id: "wall.movement-joint",
  title: "Movement joint beside a post",
  link: "wall",
  level: "strength",
  clause: "common practice, no source; reach of the cone by ACI 318-19 17.6.2.1.1",
  fails: "A joint cuts the cone of a post's rods, and the concrete beside it breaks out or the joint opens under the plate.",
  seen: "A corner of the wall broken off beside a post, along a joint.",
  range: "The joints stated, on both sides of each post, from its outermost rod. Left out, the reach of the cone is kept; a smaller distance may be stated, and the checks of the rods then take the joint for an edge of the concrete. Where joints ought to be is not looked at.",
  formulas: [criticalEdge, jointGap],
  applies: (support) => isWall(support) && support.foundation?.fields["movement joints"] !== undefined && support.base?.fields.anchors !== undefined,
  inputs: read,
  measures: sameInAll,
  fixedBy: (support) => support.foundation?.fields["joint distance"] ?? support.foundation?.fields["movement joints"] ?? support.foundation,
  evaluate: ({ sides, h_ef, stated }, _demand, calc) => {
    const needed = stated ?? calc(criticalEdge, { h: h_ef });
    if (sides.length === 0) return weigh(0, needed, "length");
    return weighLimit(needed, Math.min(...sides.map(({ joint: a_j, rod: x_r }) => calc(jointGap, { a_j, x_r }))), "length");
  },
  advise: (inputs, outcome, say) =>
    `Movement joint ${say.show(outcome.capacity, "length")} from the rods of a post; ${say.show(outcome.demand, "length")} ${inputs.stated === undefined ? "is the reach of their cone" : "is the least distance stated"}. Move the joint or the post${inputs.stated === undefined ? ", or state a smaller `joint distance`: the joint counts as an edge for the rods" : ""}.`,
});
