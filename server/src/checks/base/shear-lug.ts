/**
 * The lug that takes the shear crushes the concrete before it, pushes a wedge off the edge, or bends. In the field the grout pocket cracks
 * toward the near edge and the plate has moved that way.
 *
 * ACI 318-19 17.11: bearing before the lug, breakout toward the edges and along them, at least four rods; the lug's own bending by AISC
 * 360-22 F11.1. The couple of the lug, shear times its arm below the plate, is in the tension of the rods.
 */
import { findSteel } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { KindName } from "../../units/kinds.js";
import { concreteStrengthUsed } from "../anchors/concrete.js";
import { readFactors } from "../anchors/factors.js";
import { readRod, tensileStrengthUsed, type RodSteel } from "../anchors/rod.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "../anchors/seismic.js";
import { basicShearByEdge, shearDepth, shearEnd, singleWedge } from "../anchors/shear-wedge.js";
import { check, unchecked, weigh } from "../contract.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "./distribution.js";
import { lugArm, lugBearingDepth, readLug, type LugSizes } from "./lug.js";
import {
  embedmentBehindLug, lugAlongEdge, lugBearing, lugBreakout, lugEdgeUsed, lugEndDistance, lugFaceToEdge, lugFlexure, lugMoment, lugPressed, lugPulled, lugWedge,
} from "./lug-strength.js";
import { readBase, type BaseInputs } from "./geometry.js";

export interface LugInputs extends BaseInputs, RodSteel {
  readonly lug: LugSizes;
  readonly seismic: SeismicAnchors;
  readonly F_y: number;
  readonly h_ef: number;
  readonly psi_cV: number;
}

/** One limit state of the lug. */
interface State {
  readonly demand: number;
  readonly capacity: number;
  readonly quantity: KindName;
  readonly note: string;
}

/** Distances from the middle of the plate: ahead along the shear, and to both sides. */
interface Reach {
  readonly ahead: number;
  readonly sides: readonly [number, number];
}

/** Breakout toward the edge ahead of a face of this width and thickness; psi_ed left out for shear along the edge. */
function towardEdge(inputs: LugInputs, f_c: number, h_sl: number, reach: Reach, across: number, along: number, isAlong: boolean, calc: Calc): number {
  const h_a = inputs.member.depth;
  const c_a1 = calc(lugFaceToEdge, { c_e: reach.ahead, t_sl: along });
  const [c_l, c_r] = reach.sides.map((c_e) => calc(lugEndDistance, { c_e, b: across }));
  const far = Math.max(c_l, c_r);
  const c_1 = calc(lugEdgeUsed, { c_a1, c_a2_max: far, h_a });
  const A_Vc = calc(lugWedge, { b_l: across, c_1, c_l, c_r, h_a, h_sl });
  const psi_edV = isAlong ? 1 : calc(shearEnd, { c_a2: Math.min(c_l, c_r), c_1 });
  return calc(lugBreakout, { A_Vc, A_Vco: calc(singleWedge, { c_1 }), psi_edV, psi_cV: inputs.psi_cV, psi_hV: calc(shearDepth, { c_1, h_a }), V_bb: calc(basicShearByEdge, { f_c, c_1 }) });
}

/** The limit states under shear along one axis, the rods' tensions known. */
function* statesAlong(inputs: LugInputs, axis: "x" | "y", V: number, P: number, tensions: readonly number[], calc: Calc): Generator<State> {
  const { lug, member, fprime_c, B, N, A_se, f_uta, f_ya, F_y, h_ef, rods } = inputs;
  const { west, east, south, north } = member.edges;
  const shear = Math.abs(V);
  const f_c = calc(concreteStrengthUsed, { fprime_c });
  const h_sl = calc(lugBearingDepth, { h_l: lug.depth, t_g: lug.grout, t_sl: lug.thickness });
  const psi_brg = P < 0 ? calc(lugPulled, { T: -P, n: rods.length, A_se, f_u: calc(tensileStrengthUsed, { f_uta, f_ya }) }) : calc(lugPressed, { P, B, N, f_c });
  yield { demand: shear, capacity: calc(lugBearing, { f_c, b_l: lug.width, h_sl, psi_brg }), quantity: "force", note: "Bearing before the lug governs." };
  const [back, front, low, high] = axis === "x" ? [-west, east, -south, north] : [-south, north, -west, east];
  const ahead = V > 0 ? front : back;
  const breakout = towardEdge(inputs, f_c, h_sl, { ahead, sides: [low, high] }, lug.width, lug.thickness, false, calc);
  yield { demand: shear, capacity: breakout, quantity: "force", note: "Breakout toward the edge governs." };
  for (const side of [low, high]) {
    const along = towardEdge(inputs, f_c, h_sl, { ahead: side, sides: [back, front] }, lug.thickness, lug.width, true, calc);
    yield { demand: shear, capacity: calc(lugAlongEdge, { phiV_cb: along }), quantity: "force", note: "Breakout along the side edge governs." };
  }
  const e = calc(lugArm, { t_g: lug.grout, h_sl });
  yield { demand: calc(lugMoment, { V: shear, e }), capacity: calc(lugFlexure, { F_y, b_l: lug.width, t_sl: lug.thickness }), quantity: "smallMoment", note: "Bending of the lug governs." };
  const pulled = rods.filter((_, i) => tensions[i] > 0);
  if (pulled.length > 0) {
    const c_sl = Math.max(...pulled.map((rod) => Math.abs(rod[axis])));
    yield { demand: calc(embedmentBehindLug, { h_sl, c_sl }), capacity: h_ef, quantity: "length", note: "Embedment of the rods in tension behind the lug governs." };
  }
}

const lugUsed = formula({
  id: "base.lug-used",
  text: "r = D / C",
  source: "demand over capacity, to find the limit state that governs",
  symbols: { r: { kind: "ratio", meaning: "part that is used" }, D: { kind: "number", meaning: "demand" }, C: { kind: "number", meaning: "capacity" } },
});

const used = ({ demand, capacity }: State): number => (capacity > 0 ? lugUsed.value({ D: demand, C: capacity }) : Number.POSITIVE_INFINITY);

const leastRods = 4;

export const shearLug = check({
  id: "base.shear-lug",
  title: "Shear lug under the base plate",
  link: "base",
  level: "strength",
  clause: "ACI 318-19 17.11, 17.10.6.3; AISC 360-22 F11.1",
  fails: "The lug crushes the concrete before it, pushes a wedge off the edge, or bends.",
  seen: "A grout pocket cracked toward the near edge, the plate moved that way.",
  range:
    "One lug, or a cross of two, in the middle of the plate, of the plate's grade, filled all around with grout no weaker than the concrete; each direction by itself. A round pier is taken as the square inside it. The weld of the lug and vent holes of 1 in on both sides of it are for the drawing. The rods are not asked for the shear the lug stands against. In seismic design category C to F the earthquake's part of the forces comes with the overstrength of the system, as on the rods in shear.",
  formulas: [
    concreteModulus, modularRatio, concreteStrengthUsed, lugBearingDepth, tensileStrengthUsed, lugPulled, lugPressed, lugBearing, lugFaceToEdge, lugEndDistance, lugEdgeUsed, lugWedge, singleWedge, shearEnd,
    shearDepth, basicShearByEdge, lugBreakout, lugAlongEdge, lugArm, lugMoment, lugFlexure, embedmentBehindLug,
    ...seismicFormulas,
  ],
  applies: (support) => support.base?.fields["shear lug"] !== undefined,
  inputs: (support, gather, place): LugInputs => {
    const base = readBase(support, gather, place);
    const rod = readRod(support, gather);
    const factors = readFactors(support.codes, gather);
    const fields = support.base?.fields;
    const lug = readLug(support, gather) ?? { width: Number.NaN, depth: Number.NaN, thickness: Number.NaN, grout: Number.NaN, resistsX: false, resistsY: false };
    const grade = gather.needs(fields?.plate?.value.grade, "grade of the base plate");
    const steel = grade === undefined ? undefined : findSteel(grade);
    const isCracked = gather.may(fields?.["cracked concrete"]) ?? true;
    const bars = gather.may(fields?.["edge bars"]) ?? "none";
    if (base.rods.length > 0 && base.rods.length < leastRods) gather.block("a base with a shear lug needs at least four rods (ACI 318-19 17.11.1.1.1)");
    if (base.standsFree) gather.block("a shear lug needs the grout that fills its pocket; state the thickness of the grout");
    if (lugBearingDepth.value({ h_l: lug.depth, t_g: lug.grout, t_sl: lug.thickness }) <= 0) gather.block("the shear lug ends in the grout and does not reach the concrete; take a deeper lug");
    return {
      ...base,
      ...rod,
      lug,
      seismic: readSeismic(support, gather, "shear"),
      F_y: steel && !isMissing(steel) ? steel.fy : Number.NaN,
      h_ef: gather.need(fields?.anchors?.value.embedment, "anchor embedment"),
      psi_cV: (isCracked ? factors?.shearCracked[bars] : factors?.shearUncracked) ?? Number.NaN,
    };
  },
  fixedBy: (support) => support.base?.fields["shear lug"] ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { P, Vx, Vy } = demand.base;
    const { resistsX, resistsY } = inputs.lug;
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    const states: State[] = [];
    if (resistsX && Vx !== 0) states.push(...statesAlong(inputs, "x", Vx, P, contact.tensions, calc));
    if (resistsY && Vy !== 0) states.push(...statesAlong(inputs, "y", Vy, P, contact.tensions, calc));
    if (states.length === 0) {
      calc.note("No shear against the lug.");
      return weigh(0, calc(lugBearing, { f_c: calc(concreteStrengthUsed, { fprime_c: inputs.fprime_c }), b_l: inputs.lug.width, h_sl: calc(lugBearingDepth, { h_l: inputs.lug.depth, t_g: inputs.lug.grout, t_sl: inputs.lug.thickness }), psi_brg: 1 }), "force");
    }
    const governing = states.reduce((worst, state) => (used(state) > used(worst) ? state : worst));
    calc.note(governing.note);
    return weigh(governing.demand, Math.max(0, governing.capacity), governing.quantity);
  },
  advise: (_, outcome, say) =>
    outcome.quantity === "length"
      ? `Embedment ${say.show(outcome.capacity, "length")}; ${say.show(outcome.demand, "length")} needed behind the lug. Set the rods deeper or closer to the lug.`
      : `${say.show(outcome.demand, outcome.quantity)} on the lug; ${say.show(outcome.capacity, outcome.quantity)} can be held. ${outcome.quantity === "smallMoment" ? "Take a thicker or a shorter lug." : "Take a wider or a deeper and thicker lug, or widen the concrete."}`,
});
