/**
 * A rod breaks in tension. Seen as a rod necked or snapped at the first thread under the nut.
 *
 * ACI 318-19 17.6.1, on the rod that pulls most.
 */
import { formula } from "../../formula/declare.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { readBase, type BaseInputs } from "../base/geometry.js";
import { check, unchecked, weigh } from "../contract.js";
import { anchorEditions, noteEdition, readFactors } from "./factors.js";
import { ductilityNote, readRod, tensileStrengthUsed, type RodSteel } from "./rod.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

export interface SteelTensionInputs extends BaseInputs, RodSteel {
  readonly seismic: SeismicAnchors;
  readonly edition: string;
  readonly phi: number;
}

export const rodTension = formula({
  id: "anchors.rod-tension",
  text: "phiN_sa = phi * A_se * f_u",
  source: "ACI 318-19 Eq. 17.6.1.2; phi by Table 17.5.3(a)",
  symbols: {
    phiN_sa: { kind: "force", meaning: "design tensile strength of one rod" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    A_se: { kind: "area", meaning: "net tensile area of the rod", field: "bases.*.anchors.diameter" },
    f_u: { kind: "steelStress", meaning: "tensile strength of the rod that may be used" },
  },
});

export const steelTension = sharedMode(check({
  id: "anchors.steel-tension",
  title: "Tension in the anchor rods' steel",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.6.1; ACI 318-14 17.4.1",
  editions: anchorEditions,
  fails: "A rod breaks in tension.",
  seen: "A rod necked or snapped at the first thread under the nut.",
  range: "Threaded rods of ASTM F1554, cast in. The rod that pulls most by elastic contact under a stiff plate; prying by a thin plate is not in it.",
  formulas: [tensileStrengthUsed, rodTension, concreteModulus, modularRatio, ...seismicFormulas],
  applies: (support) => support.base !== undefined,
  inputs: (support, gather, place): SteelTensionInputs => {
    const base = readBase(support, gather, place);
    const rod = readRod(support, gather);
    const factors = readFactors(support.codes, gather);
    return { ...base, ...rod, seismic: readSeismic(support, gather, "tension"), edition: factors?.edition ?? "", phi: factors?.steelTension[rod.isDuctile ? "ductile" : "brittle"] ?? Number.NaN };
  },
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { f_uta, f_ya, A_se, phi } = inputs;
    noteEdition(inputs.edition, "steelTension", calc);
    calc.note(ductilityNote(inputs.isDuctile));
    const f_u = calc(tensileStrengthUsed, { f_uta, f_ya });
    const strength = calc(rodTension, { phi, A_se, f_u });
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    return weigh(Math.max(0, ...contact.tensions), strength, "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} in one rod; ${inputs.rod} carries ${say.show(outcome.capacity, "force")}. Take thicker rods, a higher grade, or set them farther apart.`,
}));
