/**
 * The rods tip under shear and pry the concrete out behind them. Short, stiff rods far from an edge do it.
 *
 * ACI 318-19 17.7.3: the breakout strength in tension of the rods that take shear, once or twice over by their embedment.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc, Routine } from "../../formula/types.js";
import { rodGroup, type RodGroup, type RodGroupArgs } from "../../mechanics/rod-group.js";
import { towardWithTwist } from "../base/base-twist.js";
import { readShearPath, shearOnRods, shearPathFormulas, type ShearPath } from "../base/shear-path.js";
import { check, unchecked, weigh } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { bondFormulas, bondStrength, readBondValues, type BondValues } from "./adhesive.js";
import { coneFormulas, coneStrength, readCone, type ConeInputs } from "./cone.js";
import { anchorEditions, noteEdition } from "./factors.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

export interface PryoutInputs extends ConeInputs {
  readonly path: ShearPath;
  readonly seismic: SeismicAnchors;
  readonly isWelded: boolean;
  readonly phi: number;
  /** Of rods set in adhesive. */
  readonly bond: BondValues | undefined;
}

export const pryoutFactor = formula({
  id: "anchors.pryout-factor",
  text: "k_cp = h_ef < h_short ? 1 : 2",
  source: "ACI 318-19 17.7.3.1.1",
  symbols: {
    k_cp: { kind: "ratio", meaning: "pryout factor" },
    h_ef: { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" },
  },
  constants: { h_short: "2.5 inch" },
});

export const pryoutStrength = formula({
  id: "anchors.pryout-strength",
  text: "phiV_cpg = phi * k_cp * N_cbg",
  source: "ACI 318-19 Eq. 17.7.3.1b; phi by Table 17.5.3(c)",
  symbols: {
    phiV_cpg: { kind: "force", meaning: "design pryout strength of the rods that take shear" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    k_cp: { kind: "ratio", meaning: "pryout factor" },
    N_cbg: { kind: "force", meaning: "nominal breakout strength in tension of the rods that take shear" },
  },
});

export const leastOfBoth = formula({
  id: "anchors.least-of-breakout-and-bond",
  text: "N_cpg = min(N_cbg, N_ag)",
  source: "ACI 318-19 17.7.3.1.2: for adhesive anchors the lesser of breakout and bond",
  symbols: {
    N_cpg: { kind: "force", meaning: "nominal strength in tension of the rods that take shear" },
    N_cbg: { kind: "force", meaning: "nominal breakout strength in tension of the rods that take shear" },
    N_ag: { kind: "force", meaning: "nominal bond strength of the rods that take shear" },
  },
});

/** Nominal strength in tension of the rods that take shear, N. */
function pulledStrength(inputs: PryoutInputs, group: RodGroup, calc: Calc): number {
  const N_cbg = coneStrength(inputs, group, calc);
  return inputs.bond ? calc(leastOfBoth, { N_cbg, N_ag: bondStrength({ ...inputs, ...inputs.bond }, group, calc) }) : N_cbg;
}

export const shearResultant = formula({
  id: "anchors.shear-resultant",
  text: "V_ua = sqrt(V_x^2 + V_y^2)",
  source: "statics",
  symbols: {
    V_ua: { kind: "force", meaning: "shear at the base" },
    V_x: { kind: "force", meaning: "shear toward the east" },
    V_y: { kind: "force", meaning: "shear toward the north" },
  },
});

/** The rods that take shear are measured as a group in the way of rods that pull; the equal parts they are given are no forces to be shown. */
const shearGroup: Routine<RodGroupArgs, RodGroup> = {
  ...rodGroup,
  id: "anchors.shear-group",
  title: "Rods that take shear, as a group",
  method: "the rods that take shear, each an equal part of it",
  source: "geometry; the group is that of ACI 318-19, 17.7.3.1",
  show: (args, group) => ({
    given: rodGroup.show(args, group).given,
    found: [
      { symbol: "n", meaning: "rods that take shear", kind: "number", value: group.rods.length },
      { symbol: "s", meaning: "largest spacing of rows", kind: "length", value: group.spacing },
      { symbol: "c_a,min", meaning: "least edge distance", kind: "length", value: group.leastEdge },
    ],
  }),
};

/** Which rods take shear, as equal parts: all of them, or every pair where two bear at most. */
function sharings({ rods, isWelded }: PryoutInputs): readonly (readonly number[])[] {
  if (isWelded || rods.length <= 2) return [rods.map(() => 1)];
  const found: number[][] = [];
  for (let first = 0; first < rods.length; first += 1) {
    for (let second = first + 1; second < rods.length; second += 1) found.push(rods.map((_, at) => (at === first || at === second ? 1 : 0)));
  }
  return found;
}

/** The group of each base that pries out first; the same in every combination. */
const weakest = oncePerInputs((inputs: PryoutInputs): readonly number[] => {
  const { rods } = inputs;
  const strengthOf = (tensions: readonly number[]): number => {
    const group = plainCalc.routine(shearGroup, { rods, tensions, member: inputs.member.edges });
    return pulledStrength(inputs, group, plainCalc);
  };
  let chosen: readonly number[] = rods.map(() => 1);
  let least = Number.POSITIVE_INFINITY;
  for (const sharing of sharings(inputs)) {
    const strength = strengthOf(sharing);
    if (strength < least) [chosen, least] = [sharing, strength];
  }
  return chosen;
});

export const pryout = sharedMode(check({
  id: "anchors.pryout",
  title: "Pryout of the concrete by the rods in shear",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.7.3; ACI 318-14 17.5.3",
  editions: anchorEditions,
  fails: "The rods tip under the shear and pry a bowl of concrete out behind them.",
  seen: "Concrete heaved up behind short rods, on the side away from the push.",
  range:
    "By the breakout strength in tension of the rods that take shear; with loose washers two of them, the weakest pair, with welded ones all. A twist of the base stands as a shear of the group, on the safe side.",
  formulas: [...coneFormulas, ...bondFormulas, leastOfBoth, pryoutFactor, shearResultant, pryoutStrength, ...shearPathFormulas, ...seismicFormulas],
  applies: (support) => support.base !== undefined,
  inputs: (support, gather, place): PryoutInputs => {
    const { factors, ...cone } = readCone(support, gather, place);
    return { ...cone, path: readShearPath(support, gather), seismic: readSeismic(support, gather, "shear"), isWelded: gather.may(support.base?.fields["washers welded"]) ?? false, phi: factors?.pryout ?? Number.NaN, bond: cone.isAdhesive ? readBondValues(support, gather) : undefined };
  },
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { rods, h_ef, phi } = inputs;
    const shear = shearOnRods(inputs.path, demand, calc);
    if ("because" in shear) return unchecked(shear.because);
    const { Vx, Vy, twist } = shear;
    noteEdition(inputs.edition, "pryout", calc);
    calc.note(inputs.isWelded ? "Washers are welded to the plate: every rod takes shear." : "Washers are loose in wide holes: two rods at most take shear, the weakest pair is taken.");
    const group = calc.routine(shearGroup, { rods, tensions: weakest(inputs), member: inputs.member.edges });
    const N_cbg = pulledStrength(inputs, group, calc);
    const k_cp = calc(pryoutFactor, { h_ef });
    const along = (V: number, V_T: number): number => calc(towardWithTwist, { V: Math.abs(V), V_T });
    const [V_x, V_y] = twist ? [along(Vx, twist.x), along(Vy, twist.y)] : [Vx, Vy];
    return weigh(calc(shearResultant, { V_x, V_y }), calc(pryoutStrength, { phi, k_cp, N_cbg }), "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} shear; the concrete about the rods that take it holds ${say.show(outcome.capacity, "force")} against prying. Set the rods deeper${inputs.isWelded ? "" : ", weld plate washers to the plate so that every rod takes shear,"} or widen the concrete.`,
}));
