/**
 * The footing slides on the rock. In the field a pad has crept down a smooth ledge, or a wall has moved off its line in a storm that lifted it.
 *
 * First friction, where dead load is left after the uplift: IBC 2021 Table 1806.2 and 1806.3.1, never with a net pull. Then a key cast into a slot of
 * the rock: its lateral bearing by the same table, and its own shear as plain concrete. Dowels come second, as pins in shear. Allowable-stress loads.
 * On a slope that is not benched, push and weight both drive down it.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { frictionForce, padFace, readGrip, restingDead } from "../footing/sliding.js";
import { shearResultant } from "../pier/grade-forces.js";
import { deadFactor } from "../site/dead-factor.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { blockUnsound, blockWeight, isFreeOnRock, readBlock, type RockBlock, sharedLength } from "./block.js";
import { atUnderside, dowelPullFormulas } from "./dowel-force.js";
import { pinFormulas, type Pins, pinsHold, readPins, secondToFriction } from "./pins.js";

const angle = { kind: "angle", meaning: "slope of the rock", range: [0, 0.6] } as const;
const push = { kind: "force", meaning: "push, resultant of both directions" } as const;

export const rockAngle = formula({
  id: "rock.slope-angle",
  text: "alpha = atan(m)",
  source: "geometry",
  symbols: { alpha: angle, m: { kind: "slope", meaning: "slope of the rock, rise over run", field: "ground.*.rock slope" } },
});

export const downSlope = formula({
  id: "rock.down-slope",
  text: "V_s = V * cos(alpha) + max(N, 0 * abs(N)) * sin(alpha)",
  source: "statics: all of the push taken down the slope, the worse way",
  symbols: { V_s: { kind: "force", meaning: "push along the surface of the rock" }, V: push, alpha: angle, N: { kind: "force", meaning: "axial force on the rock, compression positive", range: [-1e5, 1e5] } },
});

export const squareToSlope = formula({
  id: "rock.square-to-slope",
  text: "N_D = max(N_d * cos(alpha) - V * sin(alpha), 0 * V)",
  source: "statics",
  symbols: { N_D: { kind: "force", meaning: "dead load square to the surface of the rock" }, N_d: { kind: "force", meaning: "dead load that rests on the rock, uplift taken off" }, V: push, alpha: angle },
});

export const keyBottom = formula({
  id: "rock.key-bottom",
  text: "d_k = d + h_k",
  source: "geometry",
  symbols: { d_k: { kind: "distance", meaning: "depth of the bottom of the key below grade" }, d: { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" }, h_k: { kind: "length", meaning: "depth of the key", field: "foundations.*.key.depth" } },
});

export const keyShear = formula({
  id: "rock.key-shear",
  text: "R_ks = phi * 4 / 3 * s_c * b * w_k / 1.6",
  source: "ACI 318-19 14.5.5.1 and 21.2.1, over the load factor 1.6 of lateral earth load to come to allowable loads (from memory)",
  symbols: {
    R_ks: { kind: "force", meaning: "shear of the key as plain concrete, allowable" },
    s_c: { kind: "stress", meaning: "square root of the concrete strength, as a stress" },
    b: { kind: "distance", meaning: "length of the key" },
    w_k: { kind: "length", meaning: "width of the key", field: "foundations.*.key.width" },
  },
  constants: { phi: "0.6" },
});

export const holdsTogether = formula({
  id: "rock.sliding-together",
  text: "R = R_f + R_k + R_d",
  source: "IBC 2021 1806.3.1: lateral bearing and sliding resistance may be combined; dowels besides by practice",
  symbols: {
    R: { kind: "force", meaning: "allowable resistance to sliding" },
    R_f: { kind: "force", meaning: "allowable friction" },
    R_k: { kind: "force", meaning: "allowable resistance of the key" },
    R_d: { kind: "force", meaning: "allowable shear of the dowels as pins" },
  },
});

interface Key {
  readonly width: number;
  readonly depth: number;
  /** Depth of the underside of the footing below grade, m. */
  readonly from: number;
  readonly lateral: GroundValue;
  readonly fprime_c: number;
}

export interface RockSlidingInputs {
  readonly block: RockBlock;
  readonly mu: number;
  readonly muFrom: string;
  /** Rise over run; zero where level or benched. */
  readonly slope: number;
  readonly key: Key | undefined;
  readonly pins: Pins | undefined;
}

function readKey(support: Support, gather: Gather): Key | undefined {
  const f = support.foundation?.fields;
  const key = f?.key?.value;
  if (!key) return undefined;
  return {
    width: gather.need(key.width, "width of the key"),
    depth: gather.need(key.depth, "depth of the key"),
    from: gather.need(f?.depth, "depth of the footing, for the bearing of its key"),
    lateral: groundValue(support, gather, support.ground?.fields["lateral bearing"], "lateral bearing", (soil) => soil.lateralPerDepth),
    fprime_c: gather.need(f?.concrete, "concrete strength"),
  };
}

function keyHolds(key: Key | undefined, { body }: RockBlock, calc: Calc): number {
  if (!key) return 0;
  // A key has the whole length of a wall; below a pad the shorter side, whichever way it runs.
  const b = body.type === "wall" ? body.lengthPerPost : Math.min(body.width, body.length);
  calc.note(key.lateral.from);
  const d = calc(keyBottom, { d: key.from, h_k: key.depth });
  const R_p = calc(padFace, { p: key.lateral.value, d, t: key.depth, z_i: 0, b });
  return Math.min(R_p, calc(keyShear, { s_c: calc(rootStrength, { fprime_c: key.fprime_c }), b, w_k: key.width }));
}

export const rockSliding = check({
  id: "rock.sliding",
  title: "Sliding on the rock",
  link: "rock",
  level: "allowable",
  clause: "IBC 2021 1806.3, Table 1806.2; dowels by practice",
  fails: "The push of the roof is more than friction on the rock, a key and the dowels hold.",
  seen: "A pad crept down a smooth ledge, or a wall off its line after a storm that lifted it.",
  range:
    "Dead load alone gives friction, uplift taken off, and none is left under a net pull; of a reaction given already combined only the weight of the concrete counts. A key bears on the rock before it and shears as plain concrete. Dowels count as pins in shear, less what they pull, where they go deep enough to be pins; the rock crushed beside them is left out. Soil before the footing is not counted.",
  formulas: [...dowelPullFormulas, shearResultant, restingDead, rockAngle, downSlope, squareToSlope, frictionForce, keyBottom, padFace, rootStrength, keyShear, ...pinFormulas, holdsTogether],
  applies: isFreeOnRock,
  inputs: (support, gather, place): RockSlidingInputs => {
    const grip = readGrip(support, gather);
    if (grip.by === "cohesion") gather.block("the class of the ground is a soil, and the footing stands on rock: state the class of the rock, or `friction`");
    const ground = support.ground?.fields;
    blockUnsound(support, gather, ground?.friction, "coefficient of friction (`friction`)");
    if (support.foundation?.fields.key) blockUnsound(support, gather, ground?.["lateral bearing"], "lateral bearing");
    return {
      block: readBlock(support, gather, place),
      mu: grip.by === "friction" ? grip.mu : Number.NaN,
      muFrom: grip.from,
      slope: gather.may(ground?.surface) === "benched" ? 0 : (gather.may(ground?.["rock slope"]) ?? 0),
      key: readKey(support, gather),
      pins: readPins(support, gather, place),
    };
  },
  fixedBy: (support) => support.foundation?.fields.key ?? support.foundation?.fields.dowels ?? support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { block } = inputs;
    const shared = sharedLength(block, calc);
    if (shared !== undefined) return unchecked(shared);
    const { N } = atUnderside(block, demand, calc);
    const V = calc(shearResultant, { V_x: demand.base.Vx, V_y: demand.base.Vy });
    if (demand.dead === undefined) calc.note("The reaction is given already combined, and what of it is dead load is not known: only the weight of the concrete gives friction.");
    const N_d = calc(restingDead, { N, P_D: demand.dead ?? 0, f_D: deadFactor(demand).factor, W_c: blockWeight(block, calc), W_s: 0 });
    const alpha = inputs.slope > 0 ? calc(rockAngle, { m: inputs.slope }) : 0;
    const V_s = inputs.slope > 0 ? calc(downSlope, { V, alpha, N }) : V;
    const N_D = inputs.slope > 0 ? calc(squareToSlope, { N_d, V, alpha }) : N_d;
    calc.note(inputs.muFrom);
    const R_f = calc(frictionForce, { mu: inputs.mu, N_D });
    const R_k = keyHolds(inputs.key, block, calc);
    const R_d = pinsHold(inputs.pins, demand, calc);
    if (R_d > 0) calc.note(secondToFriction(N));
    return weigh(V_s, calc(holdsTogether, { R_f, R_k, R_d }), "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} pushes the footing along the rock; ${say.show(outcome.capacity, "force")} holds it. ${inputs.slope > 0 ? "Cut the rock into level benches, or cut" : "Cut"} a key into it${inputs.key ? " that is deeper" : ""}, make the footing heavier, or add dowels as pins.`,
});
