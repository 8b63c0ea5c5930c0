/**
 * A rod slides out of the concrete without a cone: the concrete under the head crushes, or the hook straightens and slips. Hooks slip at a
 * small load, long before the steel works.
 *
 * ACI 318-19 17.6.3, on the rod that pulls most.
 */
import { formula } from "../../formula/declare.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { readBase, type BaseInputs } from "../base/geometry.js";
import { check, unchecked, weigh } from "../contract.js";
import { concreteStrengthUsed } from "./concrete.js";
import { anchorEditions, noteEdition, readFactors } from "./factors.js";
import { readHead } from "./head.js";
import { concreteInEarthquake, readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

export interface PulloutInputs extends BaseInputs {
  readonly seismic: SeismicAnchors;
  readonly end: "headed" | "hooked";
  /** Bearing area of the head, m²; not a number for a hook. */
  readonly A_brg: number;
  /** From the inner face of the shaft to the tip of the hook, m; not a number for a head. */
  readonly e_h: number;
  readonly edition: string;
  /** Factor for cracking. */
  readonly psi_cP: number;
  readonly phi: number;
}

export const headPullout = formula({
  id: "anchors.head-pullout",
  text: "N_p = 8 * A_brg * f_c",
  source: "ACI 318-19 Eq. 17.6.3.2.2a",
  symbols: {
    N_p: { kind: "force", meaning: "basic pullout strength of a head" },
    A_brg: { kind: "area", meaning: "bearing area of the head", field: "bases.*.anchors.head" },
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
  },
});

export const hookRange = formula({
  id: "anchors.hook-used",
  text: "e_hu = min(e_h, 4.5 * d_a)",
  source: "ACI 318-19 17.6.3.2.2: e_h between 3 d_a and 4.5 d_a",
  symbols: {
    e_hu: { kind: "length", meaning: "hook length that counts" },
    e_h: { kind: "length", meaning: "from the inner face of the shaft to the tip of the hook", field: "bases.*.anchors.hook length" },
    d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" },
  },
});

export const shortestHook = formula({
  id: "anchors.shortest-hook",
  text: "e_min = 3 * d_a",
  source: "ACI 318-19 17.6.3.2.2: e_h between 3 d_a and 4.5 d_a",
  symbols: {
    e_min: { kind: "length", meaning: "shortest hook the method covers" },
    d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" },
  },
});

export const hookPullout = formula({
  id: "anchors.hook-pullout",
  text: "N_p = 0.9 * f_c * e_hu * d_a",
  source: "ACI 318-19 Eq. 17.6.3.2.2b",
  symbols: {
    N_p: { kind: "force", meaning: "basic pullout strength of a hook" },
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
    e_hu: { kind: "length", meaning: "hook length that counts" },
    d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" },
  },
});

export const pulloutStrength = formula({
  id: "anchors.pullout-strength",
  text: "phiN_pn = phi * psi_cP * N_p",
  source: "ACI 318-19 Eq. 17.6.3.1; phi by Table 17.5.3(c)",
  symbols: {
    phiN_pn: { kind: "force", meaning: "design pullout strength of one rod" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    psi_cP: { kind: "ratio", meaning: "1.4 in uncracked concrete, 1.0 in cracked", field: "bases.*.cracked concrete" },
    N_p: { kind: "force", meaning: "basic pullout strength" },
  },
});

export const pullout = sharedMode(check({
  id: "anchors.pullout",
  title: "Pullout of the anchor rods",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.6.3; ACI 318-14 17.4.3",
  editions: anchorEditions,
  fails: "The head crushes its way through the concrete, or the hook straightens and slips out.",
  seen: "Hooked bolts drawn out of a pier whole, with no cone of concrete on them.",
  range: "Cast-in headed rods and J or L bolts. A hook counts from 3 to 4.5 rod diameters; what is longer earns nothing.",
  formulas: [concreteStrengthUsed, headPullout, hookPullout, hookRange, pulloutStrength, concreteModulus, modularRatio, ...seismicFormulas],
  applies: (support) => support.base !== undefined && support.base.fields.anchors?.value.end?.value !== "set in adhesive",
  inputs: (support, gather, place): PulloutInputs => {
    const base = readBase(support, gather, place);
    const fields = support.base?.fields;
    const anchors = fields?.anchors?.value;
    const end = gather.needs(anchors?.end, "end of the rods, headed or hooked");
    let A_brg = Number.NaN;
    let e_h = Number.NaN;
    if (end === "hooked") {
      e_h = gather.need(anchors?.["hook length"], "hook length");
      if (e_h < shortestHook.value({ d_a: base.d_a })) gather.block("the hook is shorter than 3 rod diameters, below the range of ACI 318-19 17.6.3.2.2; lengthen it or take a headed rod");
    } else if (end === "headed") {
      A_brg = readHead(support, gather, base.d_a);
    }
    const factors = readFactors(support.codes, gather);
    const isCracked = gather.may(fields?.["cracked concrete"]) ?? true;
    return {
      ...base,
      seismic: readSeismic(support, gather, "tension"),
      edition: factors?.edition ?? "",
      end: end === "hooked" ? end : "headed",
      A_brg,
      e_h,
      psi_cP: factors?.pulloutCracking[isCracked ? "cracked" : "uncracked"] ?? Number.NaN,
      phi: factors?.pullout ?? Number.NaN,
    };
  },
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { d_a, phi, psi_cP } = inputs;
    noteEdition(inputs.edition, "pullout", calc);
    const f_c = calc(concreteStrengthUsed, { fprime_c: inputs.fprime_c });
    const N_p =
      inputs.end === "headed"
        ? calc(headPullout, { A_brg: inputs.A_brg, f_c })
        : calc(hookPullout, { f_c, e_hu: calc(hookRange, { e_h: inputs.e_h, d_a }), d_a });
    const strength = concreteInEarthquake(calc(pulloutStrength, { phi, psi_cP, N_p }), inputs.seismic, demand, calc);
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    return weigh(Math.max(0, ...contact.tensions), strength, "force");
  },
  advise: (inputs, outcome, say) => {
    const way = inputs.end === "hooked" ? "Change the hooks to headed rods." : "Take a larger head, thicker rods or stronger concrete.";
    return `${say.show(outcome.demand, "force")} in one rod; its ${inputs.end === "hooked" ? "hook" : "head"} holds ${say.show(outcome.capacity, "force")}. ${way}`;
  },
}));
