/**
 * The rods that pull tear a cone of concrete out with them. In a narrow pier the cone is cut off by the edges, and the top of the pier
 * comes off in one piece with the rods still in it.
 *
 * ACI 318-19 17.6.2, the rods in tension as one group: the area is the union of the squares about them, clipped to the concrete.
 * Where three or more edges are nearer than 1.5 h_ef the depth in the formulas is cut to that of 17.6.2.1.2, so rods set deeper than
 * that gain nothing; anchor reinforcement or a wider pier does.
 */
import { formula } from "../../formula/declare.js";
import { rodGroup } from "../../mechanics/rod-group.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { check, unchecked, weigh } from "../contract.js";
import { phiOfAdhesive } from "./adhesive.js";
import { coneFormulas, coneStrength, readCone, type ConeInputs } from "./cone.js";
import { anchorEditions, noteEdition } from "./factors.js";
import { concreteInEarthquake, readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

export interface BreakoutInputs extends ConeInputs {
  readonly seismic: SeismicAnchors;
  readonly phi: number;
  /** Bars take all of the tension in place of the concrete. */
  readonly isReinforced: boolean;
}

export const breakoutStrength = formula({
  id: "anchors.breakout-strength",
  text: "phiN_cbg = phi * N_cbg",
  source: "ACI 318-19 Table 17.5.3(b), without supplementary reinforcement; of adhesive anchors by the category of the product",
  symbols: {
    phiN_cbg: { kind: "force", meaning: "design breakout strength of the group" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    N_cbg: { kind: "force", meaning: "nominal breakout strength of the group" },
  },
});

export const breakoutTension = sharedMode(check({
  id: "anchors.breakout-tension",
  title: "Concrete breakout by the rods in tension",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.6.2; ACI 318-14 17.4.2",
  editions: anchorEditions,
  fails: "The rods tear out a cone of concrete, or the whole top of a narrow pier.",
  seen: "A pier top broken off with the rods still in it, the crack running down from the heads to the sides.",
  range:
    "Rods cast in, or set in adhesive by the coefficients for drilled-in anchors, in normalweight concrete, without supplementary reinforcement; where vertical bars are counted on in its place it takes no tension. A round pier is taken as the square inside it, a wall as a strip centered under its posts. The form with h_ef^(5/3) for deep rods is not used. Cones of neighboring posts on one wall are taken as clear of each other. " +
    "The edges and spacings that keep concrete from splitting are another limit state.",
  formulas: [concreteModulus, modularRatio, ...coneFormulas, breakoutStrength, ...seismicFormulas],
  applies: (support) => support.base !== undefined,
  inputs: (support, gather, place): BreakoutInputs => {
    const { factors, ...cone } = readCone(support, gather, place);
    return { ...cone, seismic: readSeismic(support, gather, "tension"), phi: (cone.isAdhesive ? phiOfAdhesive(support, factors, gather) : factors?.breakout) ?? Number.NaN, isReinforced: (gather.may(support.base?.fields["anchor reinforcement"]) ?? "none") !== "none" };
  },
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation?.fields.thickness ?? support.base?.fields.anchors,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { phi, rods } = inputs;
    noteEdition(inputs.edition, "breakoutTension", calc);
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    const group = calc.routine(rodGroup, { rods, tensions: contact.tensions, member: inputs.member.edges });
    const N_cbg = coneStrength(inputs, group, calc);
    const strength = calc(breakoutStrength, { phi, N_cbg });
    if (inputs.isReinforced) {
      calc.note("Vertical bars take all of the tension in place of the concrete; that is a check of its own.");
      return weigh(0, strength, "force");
    }
    return weigh(group.total, concreteInEarthquake(strength, inputs.seismic, demand, calc), "force");
  },
  advise: (_, outcome, say) =>
    `${say.show(outcome.demand, "force")} tension in the rods; the concrete holds ${say.show(outcome.capacity, "force")}. Widen the concrete about the rods, or count on vertical bars beside them to carry all of it (anchor reinforcement: pier bars, or wall bars); deeper rods help only while fewer than three edges are near.`,
}));
