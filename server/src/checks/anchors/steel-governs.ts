/**
 * In an earthquake the concrete breaks before the rods stretch, and what was to yield tears out instead.
 *
 * ACI 318-19 17.10.5.3(a)(i): when the rod that pulls most reaches 1.2 times its nominal steel strength, and the others their part of that,
 * every mode of the concrete still holds by its nominal strength. Where bars stand in place of breakout, they do.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Formula } from "../../formula/types.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { readBase, type BaseInputs } from "../base/geometry.js";
import { check, unchecked, weigh, type CheckDecl, type Gather, type Weighed } from "../contract.js";
import { breakoutTension } from "./breakout-tension.js";
import { anchorEditions } from "./factors.js";
import { pullout } from "./pullout.js";
import { usedPart } from "./ratio.js";
import { reinforcementTension } from "./reinforcement-tension.js";
import { readRod, tensileStrengthUsed, type RodSteel } from "./rod.js";
import { calm, isShaken, stretches } from "./seismic.js";
import { sideFaceBlowout } from "./side-face-blowout.js";

type Mode = CheckDecl<any, "strength">;

const modes: readonly Mode[] = [breakoutTension, reinforcementTension, pullout, sideFaceBlowout];

interface ModeInputs {
  /** Inputs of the mode's own check, without the rules for earthquake. */
  readonly own: object;
  /** Strength reduction factor that is in its capacity. */
  readonly phi: number;
}

export interface SteelGovernsInputs extends BaseInputs, RodSteel {
  readonly modes: Readonly<Record<string, ModeInputs>>;
}

/** phi of anchor reinforcement, ACI 318-19 Table 17.5.3. */
const phiOfBars = 0.75;

export const pullAtYield = formula({
  id: "anchors.pull-at-yield",
  text: "N_y = N_ua / N_i * 1.2 * A_se * f_u",
  source: "ACI 318-19 17.10.5.3(a)(i): the ratio of the rod that pulls most to 1.2 times its nominal strength, at least that of the concrete (from memory)",
  symbols: {
    N_y: { kind: "force", meaning: "tension on this mode when the rod that pulls most yields" },
    N_ua: { kind: "force", meaning: "tension on this mode in the combination" },
    N_i: { kind: "force", meaning: "tension of the rod that pulls most" },
    A_se: { kind: "area", meaning: "net tensile area of the rod", field: "bases.*.anchors.diameter" },
    f_u: { kind: "steelStress", meaning: "tensile strength of the rod that may be used" },
  },
});

export const nominalOf = formula({
  id: "anchors.nominal-of",
  text: "N_n = phiN / phi",
  source: "ACI 318-19 17.10.5.3(a)(i): nominal strength of the concrete",
  symbols: {
    N_n: { kind: "force", meaning: "nominal strength of this mode" },
    phiN: { kind: "force", meaning: "its design strength, without an earthquake" },
    phi: { kind: "ratio", meaning: "strength reduction factor in it" },
  },
});

/** Inputs of each mode that applies, with forces and strengths as they are without the rules for earthquake. */
function readModes(support: Parameters<Mode["inputs"]>[0], gather: Gather, place: number): Readonly<Record<string, ModeInputs>> {
  return Object.fromEntries(
    modes
      .filter((mode) => mode.applies(support))
      .map((mode) => {
        const own = mode.inputs(support, gather, place) as { readonly phi?: number };
        return [mode.id, { own: { ...own, seismic: calm }, phi: own.phi ?? phiOfBars }];
      }),
  );
}

interface Tried {
  readonly mode: Mode;
  readonly outcome: Weighed;
  readonly demand: number;
  readonly capacity: number;
}

export const steelGoverns = check({
  id: "anchors.steel-governs",
  title: "Rods that stretch before the concrete breaks",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.10.5.3(a); ACI 318-14 17.2.3.4.3(a)",
  editions: anchorEditions,
  fails: "The concrete breaks out in an earthquake before the rods have stretched.",
  seen: "A column base torn out whole after an earthquake, its rods as straight as they were set.",
  range:
    "Combinations with an earthquake in seismic design category C to F, where the rods are to stretch (seismic anchors: stretch length). Breakout, or the bars in its place, pullout and side-face blowout by their nominal strengths, against the rods at 1.2 times theirs. The stretch length itself and the rods' steel are a rule of their own; in shear the overstrength stays.",
  formulas: [...new Set<Formula<any, any>>([...modes.flatMap(({ formulas }) => formulas ?? []), tensileStrengthUsed, concreteModulus, modularRatio, pullAtYield, nominalOf])],
  applies: (support) => support.base !== undefined && stretches(support),
  inputs: (support, gather, place): SteelGovernsInputs => ({ ...readBase(support, gather, place), ...readRod(support, gather), modes: readModes(support, gather, place) }),
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { A_se, f_uta, f_ya } = inputs;
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    const f_u = calc(tensileStrengthUsed, { f_uta, f_ya });
    const N_i = Math.max(0, ...contact.tensions);
    const isTried = N_i > 0 && isShaken(demand);
    let worst: Tried | undefined;
    for (const mode of modes) {
      const read = inputs.modes[mode.id];
      if (!read) continue;
      const outcome = mode.evaluate(read.own, demand, plainCalc);
      if (outcome.type === "unchecked") return outcome;
      const capacity = nominalOf.value({ phiN: outcome.capacity, phi: read.phi });
      const N_y = isTried ? pullAtYield.value({ N_ua: Math.max(0, outcome.demand), N_i, A_se, f_u }) : 0;
      const isWorse = worst === undefined || (isTried ? usedPart.value({ S_u: N_y, S_d: capacity }) > usedPart.value({ S_u: worst.demand, S_d: worst.capacity }) : capacity < worst.capacity);
      if (isWorse) worst = { mode, outcome, demand: N_y, capacity };
    }
    if (!worst) return unchecked("no mode of the concrete can be weighed");
    calc.note(`${worst.mode.title}:`);
    const { own, phi } = inputs.modes[worst.mode.id];
    // The mode that governs has been weighed; its steps run again for a reader.
    if (calc !== plainCalc) worst.mode.evaluate(own, demand, calc);
    const N_n = calc(nominalOf, { phiN: worst.outcome.capacity, phi });
    if (!isTried) {
      calc.note("The combination holds no earthquake, or pulls no rod.");
      return weigh(0, N_n, "force");
    }
    return weigh(calc(pullAtYield, { N_ua: Math.max(0, worst.outcome.demand), N_i, A_se, f_u }), N_n, "force");
  },
  advise: (_, outcome, say) =>
    `${say.show(outcome.demand, "force")} when the rods yield in an earthquake; the concrete breaks at ${say.show(outcome.capacity, "force")}. Take thinner rods or a lower grade, widen the concrete or give it bars in place of breakout, or design for the overstrength (seismic anchors: overstrength).`,
});
