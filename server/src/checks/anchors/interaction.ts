/**
 * Tension and shear on the same rods: each alone would hold, both together break them.
 *
 * ACI 318-19 17.8: the worst of the tension modes and the worst of the shear modes of one combination. Below a fifth of either strength the
 * other counts in full; above, the two parts add up to at most 1.2. Every part is that of the check of its own mode.
 */
import type { Demand } from "../../actions/demand.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Formula } from "../../formula/types.js";
import { check, unchecked, weigh, type CheckDecl, type Unchecked, type Weighed } from "../contract.js";
import { bond } from "./bond.js";
import { breakoutShear } from "./breakout-shear.js";
import { breakoutTension } from "./breakout-tension.js";
import { anchorEditions, noteEdition } from "./factors.js";
import { hairpins } from "./hairpins.js";
import { pryout } from "./pryout.js";
import { pullout } from "./pullout.js";
import { usedPart } from "./ratio.js";
import { reinforcementTension } from "./reinforcement-tension.js";
import { sideFaceBlowout } from "./side-face-blowout.js";
import { steelShear } from "./steel-shear.js";
import { steelTension } from "./steel-tension.js";

type Mode = CheckDecl<any, "strength">;

const tensionModes: readonly Mode[] = [steelTension, breakoutTension, reinforcementTension, pullout, bond, sideFaceBlowout];
const shearModes: readonly Mode[] = [steelShear, breakoutShear, hairpins, pryout];
const modes: readonly Mode[] = [...tensionModes, ...shearModes];

export interface InteractionInputs {
  readonly edition: string;
  /** Inputs of each mode's own check, by its id; a mode that does not apply is left out. */
  readonly modes: Readonly<Record<string, object>>;
}

export const countsTogether = formula({
  id: "anchors.counts-together",
  text: "u = min(r_N, r_V) > 0.2 ? r_N + r_V : 0",
  source: "ACI 318-19 17.8.1 to 17.8.3: the full strength of either counts while the other uses at most 0.2",
  symbols: {
    u: { kind: "ratio", meaning: "parts used by tension and by shear together; 0 where one of them is too small to count" },
    r_N: { kind: "ratio", meaning: "part of the strength in tension that is used, worst mode" },
    r_V: { kind: "ratio", meaning: "part of the strength in shear that is used, worst mode" },
  },
});

export const mostTogether = formula({
  id: "anchors.most-together",
  text: "u_most = 1.2",
  source: "ACI 318-19 Eq. 17.8.3",
  symbols: { u_most: { kind: "ratio", meaning: "most that the two parts may add up to" } },
});

interface Worst {
  readonly mode: Mode;
  readonly outcome: Weighed;
  readonly part: number;
}

const partOf = ({ demand, capacity }: Weighed): number => Math.max(0, usedPart.value({ S_u: demand, S_d: capacity }));

/** The mode of which most is used, or why one of them cannot be weighed. */
function worstOf(among: readonly Mode[], inputs: InteractionInputs, demand: Demand<"strength">): Worst | Unchecked {
  let worst: Worst | undefined;
  for (const mode of among) {
    const own = inputs.modes[mode.id];
    if (!own) continue;
    const outcome = mode.evaluate(own, demand, plainCalc);
    if (outcome.type === "unchecked") return outcome;
    const part = partOf(outcome);
    if (!worst || part > worst.part) worst = { mode, outcome, part };
  }
  return worst ?? unchecked("no mode of the rods can be weighed");
}

export const interaction = check({
  id: "anchors.interaction",
  title: "Tension and shear of the rods together",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.8; ACI 318-14 17.6",
  editions: anchorEditions,
  fails: "Rods or concrete that would hold the tension alone and the shear alone break under both.",
  seen: "A pier top broken at the corner the structure was pushed toward while it lifted.",
  range:
    "The modes of the anchors' own checks, tension and shear by the same combination; where one uses at most 0.2 of its strength the other counts alone, and nothing is added here. Within the ranges of those checks.",
  formulas: [...new Set<Formula<any, any>>([...modes.flatMap(({ formulas }) => formulas ?? []), usedPart, countsTogether, mostTogether])],
  applies: (support) => support.base !== undefined,
  inputs: (support, gather, place): InteractionInputs => {
    return {
      edition: support.codes.concrete?.value ?? "",
      modes: Object.fromEntries(modes.filter((mode) => mode.applies(support)).map((mode) => [mode.id, mode.inputs(support, gather, place) as object])),
    };
  },
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, demand, calc) => {
    noteEdition(inputs.edition, "interaction", calc);
    const pull = worstOf(tensionModes, inputs, demand);
    if ("because" in pull) return pull;
    const push = worstOf(shearModes, inputs, demand);
    if ("because" in push) return push;
    const [r_N, r_V] = [pull, push].map(({ mode, outcome, part }) => {
      calc.note(`${mode.title}:`);
      // The mode that governs has been weighed; its steps run again for a reader.
      if (calc !== plainCalc) mode.evaluate(inputs.modes[mode.id], demand, calc);
      return part > 0 ? calc(usedPart, { S_u: outcome.demand, S_d: outcome.capacity }) : 0;
    });
    const u = calc(countsTogether, { r_N, r_V });
    if (u === 0) calc.note("Tension or shear uses at most 0.2 of its strength: the other counts in full, alone.");
    return weigh(u, calc(mostTogether, {}), "ratio");
  },
  advise: (_, outcome, say) =>
    `the parts used by tension and by shear add up to ${say.show(outcome.demand, "ratio")}; ${say.show(outcome.capacity, "ratio")} is the most. Mend the mode that uses most: its own check names what to change.`,
});
