/**
 * A rod is sheared off. Seen as a plate slid against its rods in wide holes, the rods bent over in the grout.
 *
 * ACI 318-19 17.7.1. Base plate holes are wide: with loose washers the plate slides until two rods bear, and only those two are counted
 * (common practice); with plate washers welded to the plate all rods share. A lug or friction may take the shear before the rods, see base/shear-path.ts.
 */
import { formula } from "../../formula/declare.js";
import { readShearPath, shearOnRods, shearPathFormulas, type ShearPath } from "../base/shear-path.js";
import { check, unchecked, weigh } from "../contract.js";
import { anchorEditions, noteEdition, readFactors } from "./factors.js";
import { ductilityNote, readRod, tensileStrengthUsed, type RodSteel } from "./rod.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

export interface SteelShearInputs extends RodSteel {
  readonly path: ShearPath;
  readonly seismic: SeismicAnchors;
  readonly edition: string;
  readonly phi: number;
  /** Rods that take shear. */
  readonly n_v: number;
  readonly isWelded: boolean;
  /** The plate stands on a grout pad, or nothing is said about it. */
  readonly isOnGrout: boolean;
  /** On leveling nuts with no grout. */
  readonly standsFree: boolean;
}

/** Rods that bear when the washers are loose in wide holes. */
const bearingLoose = 2;

export const rodShearDemand = formula({
  id: "anchors.rod-shear-demand",
  text: "V_ua = sqrt(V_x^2 + V_y^2) / n_v",
  source: "statics; two rods with loose washers is common practice, no source",
  symbols: {
    V_ua: { kind: "force", meaning: "shear of one rod" },
    V_x: { kind: "force", meaning: "shear toward the east" },
    V_y: { kind: "force", meaning: "shear toward the north" },
    n_v: { kind: "number", meaning: "rods that take shear", field: "bases.*.washers welded" },
  },
});

export const rodShearTwisted = formula({
  id: "anchors.rod-shear-twisted",
  text: "V_ua = V_1 + V_t",
  source: "the safe side: both as if they pointed one way",
  symbols: {
    V_ua: { kind: "force", meaning: "shear of one rod, with the twist of the base" },
    V_1: { kind: "force", meaning: "its part of the shear" },
    V_t: { kind: "force", meaning: "shear of one rod by the twist" },
  },
});

export const rodShear = formula({
  id: "anchors.rod-shear",
  text: "phiV_sa = phi * 0.6 * A_se * f_u",
  source: "ACI 318-19 Eq. 17.7.1.2b; phi by Table 17.5.3(a)",
  symbols: {
    phiV_sa: { kind: "force", meaning: "design shear strength of one rod" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    A_se: { kind: "area", meaning: "net area of the rod", field: "bases.*.anchors.diameter" },
    f_u: { kind: "steelStress", meaning: "tensile strength of the rod that may be used" },
  },
});

export const groutedRodShear = formula({
  id: "anchors.grouted-rod-shear",
  text: "phiV_sg = 0.80 * phiV_sa",
  source: "ACI 318-19 17.7.1.2.1: anchors with built-up grout pads",
  symbols: {
    phiV_sg: { kind: "force", meaning: "design shear strength of one rod through a grout pad" },
    phiV_sa: { kind: "force", meaning: "design shear strength of one rod" },
  },
});

export const steelShear = sharedMode(check({
  id: "anchors.steel-shear",
  title: "Shear in the anchor rods' steel",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.7.1; ACI 318-14 17.5.1",
  editions: anchorEditions,
  fails: "A rod is sheared off at the top of the concrete.",
  seen: "The plate slid against its rods in wide holes, the rods bent over in the grout.",
  range:
    "Threaded rods of ASTM F1554, cast in, shear shared evenly by the rods that bear; with loose washers two. Friction counts only where the notebook says so, alone and in combinations that press the base down. Shear goes through the middle of the rods; a twist of the base is added to it, on the safe side. The bending of rods that stand free below leveling nuts is checked by itself.",
  formulas: [tensileStrengthUsed, rodShear, groutedRodShear, rodShearDemand, rodShearTwisted, ...shearPathFormulas, ...seismicFormulas],
  applies: (support) => support.base !== undefined,
  inputs: (support, gather): SteelShearInputs => {
    const rod = readRod(support, gather);
    const fields = support.base?.fields;
    const anchors = fields?.anchors?.value;
    const count = anchors ? gather.need(anchors.count, "number of anchor rods") : Number.NaN;
    const isWelded = gather.may(fields?.["washers welded"]) ?? false;
    const grout = gather.may(fields?.grout);
    const factors = readFactors(support.codes, gather);
    return {
      ...rod,
      path: readShearPath(support, gather),
      seismic: readSeismic(support, gather, "shear"),
      edition: factors?.edition ?? "",
      phi: factors?.steelShear[rod.isDuctile ? "ductile" : "brittle"] ?? Number.NaN,
      n_v: isWelded ? count : Math.min(count, bearingLoose),
      isWelded,
      // Where no grout is stated a pad is likely, and the lower strength is the safe side.
      isOnGrout: grout === undefined || grout > 0,
      standsFree: (gather.may(fields?.["leveling nuts"]) ?? false) && grout === 0,
    };
  },
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { f_uta, f_ya, A_se, phi, n_v } = inputs;
    const shear = shearOnRods(inputs.path, demand, calc);
    if ("because" in shear) return unchecked(shear.because);
    noteEdition(inputs.edition, "steelShear", calc);
    calc.note(ductilityNote(inputs.isDuctile));
    const f_u = calc(tensileStrengthUsed, { f_uta, f_ya });
    const plain = calc(rodShear, { phi, A_se, f_u });
    let strength = plain;
    if (inputs.isOnGrout) {
      calc.note("The rods pass a built-up grout pad.");
      strength = calc(groutedRodShear, { phiV_sa: plain });
    }
    if (inputs.standsFree) calc.note("The plate stands on leveling nuts without grout: shear also bends the rods, which is a check of its own, base.leveling-nuts.");
    calc.note(inputs.isWelded ? "Washers are welded to the plate: every rod takes shear." : "Washers are loose in wide holes: two rods at most take shear.");
    const V_ua = calc(rodShearDemand, { V_x: shear.Vx, V_y: shear.Vy, n_v });
    return weigh(shear.twist ? calc(rodShearTwisted, { V_1: V_ua, V_t: shear.twist.ofRod }) : V_ua, strength, "force");
  },
  advise: (inputs, outcome, say) => {
    const way = inputs.isWelded ? "Take thicker rods or a higher grade." : "Weld plate washers to the plate so that every rod takes shear, or take thicker rods.";
    return `${say.show(outcome.demand, "force")} shear in one rod; ${inputs.rod} carries ${say.show(outcome.capacity, "force")}. ${way}`;
  },
}));
