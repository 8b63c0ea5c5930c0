/**
 * The dowels lift the rock out with them: a cone of rock about each dowel, joined into a ridge or a block where they stand close. In
 * the field the rock around a row of short dowels cracks along its joints and comes up as one slab.
 *
 * Weight of the cone alone, from the bottom of the hole, over a factor of safety; the strength of the rock is not counted. Half angle 45° in
 * sound rock, 30° in weathered or fractured rock. Practice of rock anchors, from memory. Allowable-stress loads.
 *
 * Cones of neighbors overlap when the spacing is less than 2 D tan(a). What one dowel then lifts is the volume of the joined cones between
 * the planes midway to its neighbors, exact for a row. As the spacing goes to nothing it becomes the ridge of the row formula,
 * D² tan(a) s. In a square pattern the share of a row is taken in both directions: less than four
 * dowels lift together, and within 5 % of an endless grid.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check } from "../contract.js";
import type { Support } from "../../project/model.js";
import { isOnRock, neighborDistance } from "./block.js";
import { type DowelInputs, dowelPullFormulas, readDowels } from "./dowel-force.js";
import { weighDowel } from "./settle.js";

const practice = "weight of a rock cone, practice of rock anchors (from memory)";

export const coneWeight = formula({
  id: "rock.cone-weight",
  text: "W_c = pi / 3 * gamma_r * D^3 * tan(theta)^2",
  source: practice,
  symbols: {
    W_c: { kind: "force", meaning: "weight of the rock cone of one dowel" },
    gamma_r: { kind: "unitWeight", meaning: "unit weight of the rock", field: "ground.*.unit weight" },
    D: { kind: "length", meaning: "depth of the hole", field: "foundations.*.dowels.into rock" },
    theta: { kind: "angle", meaning: "half apex angle of the cone", field: "ground.*.cone angle", range: [0.3, 1] },
  },
});

export const spacingRatio = formula({
  id: "rock.cone-spacing-ratio",
  text: "u = min(s / (2 * D * tan(theta)), 1)",
  source: "geometry: cones overlap when the spacing is less than their width at the surface",
  symbols: {
    u: { kind: "ratio", meaning: "spacing over the width of the cone at the surface" },
    s: { kind: "length", meaning: "spacing of the dowels", field: "foundations.*.dowels.spacing" },
    D: { kind: "length", meaning: "depth of the hole", field: "foundations.*.dowels.into rock" },
    theta: { kind: "angle", meaning: "half apex angle of the cone", field: "ground.*.cone angle", range: [0.3, 1] },
  },
});

export const overlapShare = formula({
  id: "rock.cone-overlap",
  text: "psi_o = (4 * u * sqrt(1 - u^2) + 2 * asin(u) - 2 * u^3 * log((1 + sqrt(1 - u^2)) / u)) / pi",
  source: "geometry: volume of a cone between two planes beside its axis; derived",
  symbols: {
    psi_o: { kind: "ratio", meaning: "part of its own cone that one dowel of a row lifts" },
    u: { kind: "ratio", meaning: "spacing over the width of the cone at the surface", range: [0.02, 1] },
  },
});

export const coneResistance = formula({
  id: "rock.cone-resistance",
  text: "T_c = psi_o^m * psi_f * W_c / FS",
  source: practice,
  symbols: {
    T_c: { kind: "force", meaning: "allowable pull of one dowel by the weight of its rock cone" },
    psi_o: { kind: "ratio", meaning: "part of its own cone that one dowel of a row lifts", range: [0.02, 1] },
    m: { kind: "number", meaning: "directions in which it has neighbors: 0, 1 in a row, 2 in a square", range: [0, 2] },
    psi_f: { kind: "ratio", meaning: "part of the cone on this side of a free face", range: [0.5, 1] },
    W_c: { kind: "force", meaning: "weight of the rock cone of one dowel" },
    FS: { kind: "ratio", meaning: "factor of safety", field: "ground.*.bond safety" },
  },
});

export const faceRatio = formula({
  id: "rock.cone-face-ratio",
  text: "u = min(c_f / (D * tan(theta)), 1)",
  source: "geometry: a free face cuts the cone where it is nearer than the radius of the cone at the surface",
  symbols: {
    u: { kind: "ratio", meaning: "distance of the free face over the radius of the cone at the surface" },
    c_f: { kind: "distance", meaning: "distance to a free face of the rock", field: "foundations.*.dowels.rock face" },
    D: { kind: "length", meaning: "depth of the hole", field: "foundations.*.dowels.into rock" },
    theta: { kind: "angle", meaning: "half apex angle of the cone", field: "ground.*.cone angle", range: [0.3, 1] },
  },
});

export const faceShare = formula({
  id: "rock.cone-face",
  text: "psi_f = (1 + psi_o) / 2",
  source: "geometry: half of the cone, and half of what lies between two planes at that distance; derived",
  symbols: { psi_f: { kind: "ratio", meaning: "part of the cone on this side of a free face" }, psi_o: { kind: "ratio", meaning: "part of a cone between two planes beside its axis", range: [0.02, 1] } },
});

export const midwayToNext = formula({
  id: "rock.midway-to-next",
  text: "c_f = max((s_c - s * (m - 1)) / 2, s / 4)",
  source: "geometry: the plane midway between the nearest dowels of two pads",
  symbols: {
    c_f: { kind: "distance", meaning: "distance from the outer dowels to the plane midway to the next pad" },
    s_c: { kind: "distance", meaning: "distance to the neighboring column" },
    s: { kind: "length", meaning: "spacing of the dowels", field: "foundations.*.dowels.spacing" },
    m: { kind: "number", meaning: "dowels side by side", range: [1, 20] },
  },
});

/** Half of the way between the outer dowels of a pad and those of the nearest pad of its line, m. */
function nearestPad(support: Support, { grid, count, spacing, block }: DowelInputs, place: number): number | undefined {
  const here = support.places[place];
  if (!here || block.body.type !== "pad" || count === 1 || !(spacing > 0)) return undefined;
  const m = grid ? Math.max(grid.alongX, grid.alongY) : 2;
  const gaps = [support.places[place - 1], support.places[place + 1]].flatMap((next) =>
    next ? [midwayToNext.value({ s_c: neighborDistance.value({ x_1: here.x, y_1: here.y, x_2: next.x, y_2: next.y }), s: spacing, m })] : [],
  );
  return gaps.length > 0 ? Math.min(...gaps) : undefined;
}

export const submergedRock = formula({
  id: "rock.submerged-unit-weight",
  text: "gamma_s = gamma_r - gamma_w",
  source: "statics: all of the cone taken as standing in water",
  symbols: {
    gamma_s: { kind: "unitWeight", meaning: "submerged unit weight of the rock" },
    gamma_r: { kind: "unitWeight", meaning: "unit weight of the rock", field: "ground.*.unit weight", range: [2e4, 3e4] },
  },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export interface ConeInputs extends DowelInputs {
  readonly intoRock: number;
  readonly unitWeight: number;
  readonly isRockWet: boolean;
  /** Half apex angle, rad. */
  readonly angle: number;
  readonly angleFrom: string;
  readonly safety: number;
  /** Distance to a free face, m, where stated. */
  readonly face: number | undefined;
  /** Distance to the plane midway to the next pad of the line, m. */
  readonly neighbor: number | undefined;
}

/** Half angles by the condition of the rock, rad: 45 and 30 degrees. Practice, from memory. */
const angleBy = { sound: 0.7853981633974483, weathered: 0.5235987755982988, fractured: 0.5235987755982988 } as const;

export function coneCapacity(inputs: ConeInputs, directions: 0 | 1 | 2, calc: Calc): number {
  const gamma_r = inputs.isRockWet ? calc(submergedRock, { gamma_r: inputs.unitWeight }) : inputs.unitWeight;
  const W_c = calc(coneWeight, { gamma_r, D: inputs.intoRock, theta: inputs.angle });
  const cutBy = (c_f: number | undefined): number =>
    c_f === undefined ? 1 : calc(faceShare, { psi_o: calc(overlapShare, { u: calc(faceRatio, { c_f, D: inputs.intoRock, theta: inputs.angle }) }) });
  const psi_f = cutBy(inputs.face === undefined || (inputs.neighbor !== undefined && inputs.neighbor < inputs.face) ? inputs.neighbor : inputs.face);
  if (directions === 0) return calc(coneResistance, { psi_o: 1, m: 0, psi_f, W_c, FS: inputs.safety });
  const u = calc(spacingRatio, { s: inputs.spacing, D: inputs.intoRock, theta: inputs.angle });
  const psi_o = calc(overlapShare, { u });
  return calc(coneResistance, { psi_o, m: directions, psi_f, W_c, FS: inputs.safety });
}

export const rockCone = check({
  id: "rock.cone",
  title: "Rock cone of the dowels",
  link: "rock",
  level: "allowable",
  clause: "practice of rock anchors (from memory)",
  fails: "The dowels lift a cone or slab of rock with them.",
  seen: "Rock around a row of short dowels, cracked along its joints and lifted as one slab.",
  range:
    "Weight of the rock alone: its strength is not counted. The cone begins at the bottom of the hole. Level rock; a free face cuts the cone where one is stated (`rock face`). The depth of each hole is in sound rock, and the weathered rock above it is not weighed. Pads of one line count the rock between them half to each; cones of other lines are left out.",
  formulas: [...dowelPullFormulas, submergedRock, coneWeight, spacingRatio, overlapShare, faceRatio, faceShare, coneResistance],
  applies: isOnRock,
  inputs: (support, gather, place): ConeInputs => {
    const dowels = support.foundation?.fields.dowels?.value;
    const ground = support.ground?.fields;
    const read = readDowels(support, gather, place);
    const stated = ground?.["cone angle"];
    const condition = stated ? undefined : gather.needs(ground?.condition, "condition of the rock, or the cone angle");
    return {
      ...read,
      spacing: read.count === 1 && read.block.body.type === "pad" ? Number.NaN : gather.need(dowels?.spacing, "spacing of the dowels"),
      intoRock: gather.need(dowels?.["into rock"], "depth of the dowel holes in rock"),
      unitWeight: gather.need(ground?.["unit weight"], "unit weight of the rock"),
      // The rock is below the footing: water known to stand above the underside stands above the rock as well.
      isRockWet: ground?.["water table"] !== undefined,
      angle: stated ? gather.need(stated, "cone angle") : condition ? angleBy[condition] : Number.NaN,
      angleFrom: stated ? "The cone angle is as stated." : `The rock is ${condition ?? "of unknown condition"}: half angle ${condition === "sound" ? "45°" : "30°"}, from memory of practice.`,
      safety: gather.need(ground?.["bond safety"], "factor of safety on the rock cone"),
      face: gather.may(dowels?.["rock face"]),
      neighbor: nearestPad(support, read, place),
    };
  },
  fixedBy: (support) => support.foundation?.fields.dowels?.value["into rock"] ?? support.foundation?.fields.dowels ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    calc.note(inputs.angleFrom);
    if (inputs.isRockWet) calc.note("A water table is given: the rock is taken as submerged, the safe side.");
    if (inputs.neighbor !== undefined) calc.note("The pads of this line lift together: the rock between two of them counts half to each.");
    const { grid, count } = inputs;
    const inGrid = grid && (grid.alongX === 1 ? (grid.alongY === 1 ? 0 : 1) : grid.alongY === 1 ? 1 : 2);
    const directions = inputs.block.body.type === "wall" ? (inputs.rows > 1 ? 2 : 1) : (inGrid ?? (count === 2 ? 1 : 2));
    return weighDowel(inputs, demand, coneCapacity(inputs, directions, calc), calc);
  },
  advise: (inputs, outcome, say) =>
    `one dowel pulls ${say.show(outcome.demand, "force")}; the rock over a hole ${say.show(inputs.intoRock, "length")} deep holds ${say.show(outcome.capacity, "force")} by its weight. Drill deeper, or space the dowels wider.`,
});
