/**
 * The footing slides: friction or cohesion under it and the soil before it hold less than the roof pushes. In the field a pad stands askew in
 * its hole with a gap behind it.
 *
 * IBC 2021 1806.2, 1806.3 and Table 1806.2: coefficient of friction times the dead load; for clay and silt cohesion times the area in contact, at
 * most half the dead load (1806.3.2); lateral bearing on the side of the pad besides. All of them allowable values.
 */
import { isMissing } from "../../catalog/lookup.js";
import { findSoil } from "../../catalog/soils.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { shearResultant } from "../pier/grade-forces.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { type FootingBody, isFooting, readFooting } from "./body.js";
import { atUnderside, pressureUnder, undersideFormulas } from "./forces.js";

const resting = { kind: "force", meaning: "dead load that rests on the ground, uplift taken off" } as const;

export const restingDead = formula({
  id: "footing.resting-dead",
  text: "N_D = max(min(N, P_D + f_D * (W_c + W_s)), 0 * abs(N))",
  source: "IBC 2021 1806.3.1: the coefficient multiplies the dead load; uplift taken off by statics",
  symbols: {
    N_D: resting,
    N: { kind: "force", meaning: "vertical force on the ground, down positive", range: [-1e5, 1e5] },
    P_D: { kind: "force", meaning: "dead load at the column base, factored" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W_c: { kind: "force", meaning: "weight of pad and pedestal" },
    W_s: { kind: "force", meaning: "weight of the soil on the pad" },
  },
});

export const frictionForce = formula({
  id: "footing.friction",
  text: "R_f = mu * N_D",
  source: "IBC 2021 Table 1806.2, 1806.3.1",
  symbols: { R_f: { kind: "force", meaning: "allowable friction" }, mu: { kind: "ratio", meaning: "coefficient of friction", field: "ground.*.friction" }, N_D: resting },
});

export const cohesionForce = formula({
  id: "footing.cohesion",
  text: "R_f = min(c_s * r_c * B * L, N_D / 2)",
  source: "IBC 2021 Table 1806.2, 1806.3.2 (from memory)",
  symbols: {
    R_f: { kind: "force", meaning: "allowable cohesion on the underside" },
    c_s: { kind: "pressure", meaning: "presumptive cohesion", field: "ground.*.class" },
    r_c: { kind: "ratio", meaning: "part of the underside in contact" },
    B: { kind: "length", meaning: "pad along x", field: "foundations.*.width" },
    L: { kind: "length", meaning: "pad along y", field: "foundations.*.length" },
    N_D: resting,
  },
});

export const padFace = formula({
  id: "footing.face-resistance",
  text: "R_p = p * (d^2 - min(max(d - t, z_i), d)^2) / 2 * b",
  source: "IBC 2021 Table 1806.2: lateral bearing grows with the depth",
  symbols: {
    R_p: { kind: "force", meaning: "allowable lateral bearing on one side of the pad" },
    p: { kind: "pressurePerDepth", meaning: "allowable lateral bearing per depth", field: "ground.*.lateral bearing" },
    d: { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    z_i: { kind: "distance", meaning: "depth of soil left out at the top", field: "foundations.*.ignored depth" },
    b: { kind: "length", meaning: "length of the side of the pad" },
  },
});

export const faceTogether = formula({
  id: "footing.faces-together",
  text: "R_p = V / max(abs(V_x) / R_px, abs(V_y) / R_py)",
  source: "statics: both faces press back along the push, neither more than it can",
  symbols: {
    R_p: { kind: "force", meaning: "allowable lateral bearing against the push" },
    V: { kind: "force", meaning: "push, resultant of both directions" },
    V_x: { kind: "force", meaning: "push to the east" },
    V_y: { kind: "force", meaning: "push to the north" },
    R_px: { kind: "force", meaning: "allowable lateral bearing on the east or west side" },
    R_py: { kind: "force", meaning: "allowable lateral bearing on the north or south side" },
  },
});

export const slidingTogether = formula({
  id: "footing.sliding-together",
  text: "R = R_f + R_p",
  source: "IBC 2021 1806.3.1: lateral bearing and sliding resistance may be combined",
  symbols: { R: { kind: "force", meaning: "allowable resistance to sliding" }, R_f: { kind: "force", meaning: "allowable friction or cohesion" }, R_p: { kind: "force", meaning: "allowable lateral bearing against the push" } },
});

/** What holds along the underside: friction by a coefficient, or cohesion. */
export type Grip = { readonly by: "friction"; readonly mu: number; readonly from: string } | { readonly by: "cohesion"; readonly cohesion: number; readonly from: string };

export interface SlidingInputs extends FootingBody {
  readonly grip: Grip;
  /** Only where the soil beside the pad is counted. */
  readonly lateral: GroundValue | undefined;
  readonly ignored: number;
}

/** What holds along the underside, by the ground as stated or by its class. */
export function readGrip(support: Support, gather: Gather): Grip {
  const ground = support.ground?.fields;
  const none: Grip = { by: "friction", mu: Number.NaN, from: "" };
  if (ground?.friction) return { by: "friction", mu: gather.need(ground.friction, "coefficient of friction"), from: "The coefficient of friction is as stated." };
  const name = gather.needs(ground?.class, "coefficient of friction, or the class of the ground");
  if (name === undefined) return none;
  const found = findSoil(name);
  if ("blocked" in found || isMissing(found)) {
    gather.block(`no presumptive friction: ${"blocked" in found ? found.blocked : found.problem}`);
    return none;
  }
  const { soil } = found;
  const from = (what: string): string => `The ${what} is presumptive for ${found.by}, class ${soil.class}, ${soil.name} (${soil.source}).`;
  if (soil.friction !== undefined) return { by: "friction", mu: soil.friction, from: from("coefficient of friction") };
  return { by: "cohesion", cohesion: soil.cohesion ?? Number.NaN, from: `${from("cohesion")} Not more than half the dead load counts (IBC 2021 1806.3.2).` };
}

export const footingSliding = check({
  id: "footing.sliding",
  title: "Sliding of the footing",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "IBC 2021 1806.3, Table 1806.2",
  fails: "The push of the roof is more than friction under the pad and the soil before it hold.",
  seen: "A pad askew in its hole, with a gap behind it.",
  range:
    "Dead load alone gives friction, uplift taken off; of a reaction given already combined only the weight of the footing counts. Lateral bearing on the pad where the backfill is compacted and tested, below the ignored depth, not on the pedestal. Presumptive values are allowable ones and take no further factor. Slabs and ties that hold the footing are not counted, slopes not looked at.",
  formulas: [...undersideFormulas, shearResultant, restingDead, frictionForce, cohesionForce, padFace, faceTogether, slidingTogether],
  applies: isFooting,
  inputs: (support, gather): SlidingInputs => {
    const body = readFooting(support, gather);
    const lateral = body.isSoilCounted ? groundValue(support, gather, support.ground?.fields["lateral bearing"], "lateral bearing", (soil) => soil.lateralPerDepth) : undefined;
    return { ...body, grip: readGrip(support, gather), lateral, ignored: gather.may(support.foundation?.fields["ignored depth"]) ?? 0 };
  },
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { Vx: V_x, Vy: V_y } = demand.base;
    const under = atUnderside(inputs, demand, "holds", calc);
    const V = calc(shearResultant, { V_x, V_y });
    if (demand.dead === undefined) calc.note("The reaction is given already combined, and what of it is dead load is not known: only the weight of the footing gives friction.");
    const N_D = calc(restingDead, { N: under.N, P_D: demand.dead ?? 0, f_D: under.f_D, W_c: under.W_c, W_s: under.W_s });
    calc.note(inputs.grip.from);
    const R_f = grip(inputs, N_D, () => pressureUnder(inputs, under, demand, calc), V, calc);
    if (typeof R_f === "string") return unchecked(R_f);
    const R_p = V > 0 ? besides(inputs, V, V_x, V_y, calc) : 0;
    return weigh(V, calc(slidingTogether, { R_f, R_p }), "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} pushes the footing; ${say.show(outcome.capacity, "force")} holds it. Make it heavier or deeper${inputs.isSoilCounted ? "" : ", or compact and test the backfill so that the soil before it counts"}.`,
});

function grip(inputs: SlidingInputs, N_D: number, contact: () => ReturnType<typeof pressureUnder>, V: number, calc: Calc): number | string {
  const found = inputs.grip;
  if (found.by === "friction") return calc(frictionForce, { mu: found.mu, N_D });
  if (N_D <= 0 || V === 0) return calc(cohesionForce, { c_s: found.cohesion, r_c: 1, B: inputs.width, L: inputs.length, N_D });
  const pressure = contact();
  if ("unstable" in pressure) return `${pressure.unstable}, and how much of the pad is in contact is not known. Widen or weight the pad until it stands`;
  return calc(cohesionForce, { c_s: found.cohesion, r_c: pressure.contactRatio, B: inputs.width, L: inputs.length, N_D });
}

function besides(inputs: SlidingInputs, V: number, V_x: number, V_y: number, calc: Calc): number {
  if (!inputs.lateral) {
    calc.note("The backfill is loose, or not said to be compacted and tested: the soil before the pad is not counted.");
    return 0;
  }
  calc.note(inputs.lateral.from);
  const { thickness: t, depth: d, ignored: z_i, width, length } = inputs;
  const p = inputs.lateral.value;
  const R_px = calc(padFace, { p, d, t, z_i, b: length });
  const R_py = calc(padFace, { p, d, t, z_i, b: width });
  if (!(R_px > 0 && R_py > 0)) {
    calc.note("All of the pad is above the depth from which the soil counts.");
    return 0;
  }
  return calc(faceTogether, { V, V_x, V_y, R_px, R_py });
}
