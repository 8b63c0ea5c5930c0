/**
 * A rod set in adhesive is drawn out of its hole: along the steel, or with the adhesive along the wall of the hole where it was not cleaned.
 * Under a pull that stays it creeps out.
 *
 * ACI 318-19 17.6.5, the rods in tension as a group, and 17.5.2.2 for the sustained part of the pull on one rod.
 */
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import { rodGroup } from "../../mechanics/rod-group.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { check, unchecked, weigh } from "../contract.js";
import { bondFormulas, basicBond, bondStrength, leastCrackedBond, leastUncrackedBond, phiOfAdhesive, readBondValues, type BondedInputs } from "./adhesive.js";
import { isSetInAdhesive, readCone, roundNote } from "./cone.js";
import { anchorEditions, noteEdition } from "./factors.js";
import { usedPart } from "./ratio.js";
import { sharedMode } from "./shared-mode.js";

export interface BondInputs extends BondedInputs {
  readonly phi: number;
  /** Factored tension of one rod that stays, N. */
  readonly N_uas: number;
  /** The table's values stand for a report. */
  readonly isOutdoor: boolean;
}

const embedment = { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" } as const;
const rod = { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" } as const;

export const depthInDiameters = formula({
  id: "anchors.depth-in-diameters",
  text: "k_h = h_ef / d_a",
  source: "ACI 318-19 17.3.3: adhesive anchors from 4 to 20 diameters deep",
  symbols: { k_h: { kind: "ratio", meaning: "embedment in rod diameters" }, h_ef: embedment, d_a: rod },
});

export const bondDesign = formula({
  id: "anchors.bond-design",
  text: "phiN_ag = phi * N_ag",
  source: "ACI 318-19 Table 17.5.3(b), adhesive, without supplementary reinforcement, by the category of the product",
  symbols: {
    phiN_ag: { kind: "force", meaning: "design bond strength of the group" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    N_ag: { kind: "force", meaning: "nominal bond strength of the group" },
  },
});

export const sustainedBond = formula({
  id: "anchors.sustained-bond",
  text: "phiN_s = 0.55 * phi * N_ba",
  source: "ACI 318-19 17.5.2.2",
  symbols: {
    phiN_s: { kind: "force", meaning: "design bond strength of one rod under tension that stays" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    N_ba: { kind: "force", meaning: "basic bond strength of one rod" },
  },
});

const [shallowest, deepest] = [4, 20];

/** ACI 318-19 17.2.1: least concrete strength of adhesive anchors, 2,500 psi, Pa. */
const leastConcrete = 17.236e6;

const isWithin = (k_h: number): boolean => !isBelow(k_h, shallowest) && !isAbove(k_h, deepest);

export const bond = sharedMode(check({
  id: "anchors.bond",
  title: "Bond of rods set in adhesive",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.6.5, 17.5.2.2; ACI 318-14 17.4.5, 17.3.1.2",
  editions: anchorEditions,
  fails: "A rod is drawn out of its hole, at once or slowly under a pull that stays.",
  seen: "A rod pulled out clean with a sleeve of hardened adhesive on it, dust on the sleeve.",
  range:
    "Rods in tension in holes drilled downward with a hammer or rock drill, in concrete of 2,500 psi or more that is 21 days old and at least 50 °F; products by ACI 355.4, 4 to 20 diameters deep. Bond by the product's report, or the least values of Table 17.6.5.2.5 where asked for, with 0.4 of them where part of the tension stays. Seismic design categories C to F are not covered. The union of the squares about the rods is taken within the concrete; a round pier as the square inside it.",
  formulas: [concreteModulus, modularRatio, leastCrackedBond, leastUncrackedBond, depthInDiameters, ...bondFormulas, bondDesign, sustainedBond],
  applies: (support) => support.base !== undefined && isSetInAdhesive(support),
  inputs: (support, gather, place): BondInputs => {
    const { factors, ...cone } = readCone(support, gather, place);
    const category = gather.needs(support.site["seismic design category"], "seismic design category of the site");
    if (category !== undefined && "CDEF".includes(category)) {
      gather.block(`seismic design category ${category}: whether a product holds in an earthquake is in its report (ACI 355.4), and its rules there (ACI 318-19 17.10.5.4, Table 17.6.5.2.5) are not done here; the engineer has to check these rods, or cast them in`);
    }
    const k_h = depthInDiameters.value({ h_ef: cone.h_ef, d_a: cone.d_a });
    if (Number.isFinite(k_h) && !isWithin(k_h)) gather.block("the rods are not 4 to 20 diameters deep, the range of the bond formula (ACI 318-19 17.3.3); change their depth or their diameter");
    if (cone.fprime_c < leastConcrete) gather.block("the concrete is weaker than 2,500 psi, the least for rods set in adhesive");
    const adhesive = support.base?.fields.anchors?.value.adhesive?.value;
    return {
      ...cone,
      ...readBondValues(support, gather),
      phi: phiOfAdhesive(support, factors, gather) ?? Number.NaN,
      N_uas: adhesive ? gather.need(adhesive["sustained tension"], "factored tension of one rod that stays, 0 kip where dead load presses the base down (anchors, adhesive, sustained tension)") : Number.NaN,
      isOutdoor: adhesive?.conditions?.value === "outdoor",
    };
  },
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { phi, rods, N_uas, d_a, h_ef, tau } = inputs;
    noteEdition(inputs.edition, "bond", calc);
    if (inputs.member.shape === "round") calc.note(roundNote);
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    if (inputs.isLeast) {
      const is = { is_outdoor: inputs.isOutdoor ? 1 : 0, is_sustained: N_uas > 0 ? 1 : 0 };
      calc.note("The least bond of the table stands for a product's report; the product has to be one of ACI 355.4.");
      if (inputs.isCracked) calc(leastCrackedBond, is);
      calc(leastUncrackedBond, is);
    }
    const group = calc.routine(rodGroup, { rods, tensions: contact.tensions, member: inputs.member.edges });
    const strength = calc(bondDesign, { phi, N_ag: bondStrength(inputs, group, calc) });
    calc.note("Drilling, cleaning and filling of the holes are for special inspection (IBC 1705); holes drilled sideways or upward under a pull that stays need certified installers.");
    if (!(N_uas > 0)) return weigh(group.total, strength, "force");
    const lasting = calc(sustainedBond, { phi, N_ba: calc(basicBond, { tau, d_a, h_ef }) });
    const together = usedPart.value({ S_u: group.total, S_d: strength });
    if (usedPart.value({ S_u: N_uas, S_d: lasting }) <= together) return weigh(group.total, strength, "force");
    calc.note("The tension that stays governs, on one rod.");
    return weigh(N_uas, lasting, "force");
  },
  advise: (_, outcome, say) =>
    `${say.show(outcome.demand, "force")} tension in the rods; their adhesive holds ${say.show(outcome.capacity, "force")}. Set them deeper, to 20 diameters at most, or thicker, or farther from each other and from the edges, or take a product with more bond by its report.`,
}));
