/**
 * The footing turns over about its edge: the pull of the roof and its sideways push have more moment than the weight holds. In the field the
 * column lies down with its footing still on it.
 *
 * Three ways of counting its safety are in use, and the job names one. ASCE 7-22 2.4.1: with reduced dead load the resultant stays within the
 * pad (IBC 2021 1605.1.1: stability by the load combinations). Or 1.5 against unreduced weight, common practice for signs and walls: with the
 * uplift taken from the weight, or added to the overturning moment. The same footing has different numbers by each.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, type Outcome, unchecked, weigh } from "../contract.js";
import { type FootingBody, isFooting, readFooting } from "./body.js";
import { atUnderside, undersideFormulas } from "./forces.js";

const down = { kind: "force", meaning: "vertical force on the ground, down positive" } as const;
const overturning = { kind: "moment", meaning: "overturning moment about the edge" } as const;
const holding = { kind: "moment", meaning: "moment that holds the footing on its edge" } as const;
const across = { kind: "length", meaning: "side of the pad in the direction it turns over" } as const;

export const netHold = formula({
  id: "footing.net-hold",
  text: "M_r = max(N, 0 * abs(N)) * b / 2",
  source: "statics about the edge of the pad",
  symbols: { M_r: holding, N: { ...down, range: [-1e5, 1e5] }, b: across },
});

export const turningMoment = formula({
  id: "footing.turning-moment",
  text: "M_o = abs(M)",
  source: "statics",
  symbols: { M_o: overturning, M: { kind: "moment", meaning: "moment at the underside", range: [-1e5, 1e5] } },
});

export const uplifted = formula({
  id: "footing.uplift-part",
  text: "T = max(P_D - P, 0 * abs(P))",
  source: "statics: what of the axial force is not dead load and lifts",
  symbols: {
    T: { kind: "force", meaning: "uplift of the column, without its dead load" },
    P_D: { kind: "force", meaning: "dead load at the column base" },
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
  },
});

export const turningWithUplift = formula({
  id: "footing.turning-with-uplift",
  text: "M_o = abs(M) + T * b / 2",
  source: "statics about the edge of the pad",
  symbols: { M_o: overturning, M: { kind: "moment", meaning: "moment at the underside", range: [-1e5, 1e5] }, T: { kind: "force", meaning: "uplift of the column, without its dead load" }, b: across },
});

export const grossHold = formula({
  id: "footing.gross-hold",
  text: "M_r = (N + T) * b / 2",
  source: "statics about the edge of the pad",
  symbols: { M_r: holding, N: { ...down, range: [-1e5, 1e5] }, T: { kind: "force", meaning: "uplift of the column, without its dead load", range: [1e5, 3e5] }, b: across },
});

export const safeHold = formula({
  id: "footing.safe-hold",
  text: "M_a = M_r / FS",
  source: "common practice; IBC 2021 1807.2.3 asks the same of retaining walls",
  symbols: { M_a: { kind: "moment", meaning: "holding moment over the factor of safety" }, M_r: holding },
  constants: { FS: "1.5" },
});

export type Definition = "factored dead load" | "1.5 on the net weight" | "1.5 with uplift as a load";

export interface OverturningInputs extends FootingBody {
  readonly definition: Definition;
}

function both(inputs: FootingBody, M_x: number, M_y: number, turn: (M: number, b: number) => Pair, calc: Calc): Outcome {
  if (M_x !== 0 && M_y !== 0) calc.note("There is a moment both ways; about each edge the other one does not count.");
  const found = worseOf(turn(M_y, inputs.width), turn(M_x, inputs.length));
  return weigh(found.demand, found.capacity, "moment");
}

export const footingOverturning = check({
  id: "footing.overturning",
  title: "Overturning of the footing",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "IBC 2021 1605.1.1; ASCE 7-22 2.4.1",
  fails: "The pull and the push of the roof have more moment about the edge of the pad than the weight holds.",
  seen: "A column lying down with its footing still on it.",
  range:
    "A rigid pad on ground that does not give; turning about one edge at a time. Soil beside the footing is not counted, neither is a soil cone nor friction on the sides. With a factor of 1.5, only combinations whose dead load is not reduced are looked at.",
  formulas: [...undersideFormulas, netHold, turningMoment, uplifted, turningWithUplift, grossHold, safeHold],
  applies: isFooting,
  inputs: (support, gather): OverturningInputs => ({ ...readFooting(support, gather), definition: gather.needs(support.codes.overturning, "how the safety against overturning is counted") ?? "factored dead load" }),
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    if (inputs.definition === "factored dead load") {
      const { N, M_x, M_y } = atUnderside(inputs, demand, "holds", calc);
      return both(inputs, M_x, M_y, (M, b) => ({ demand: calc(turningMoment, { M }), capacity: calc(netHold, { N, b }) }), calc);
    }
    const dead = demand.combination.terms.find(({ type }) => type === "D");
    if (dead === undefined) return unchecked("a factor of 1.5 is on unreduced weight, and the reaction came already combined: state the reactions by load case, or count by factored dead load");
    const { N, M_x, M_y } = atUnderside(inputs, demand, "holds", calc);
    if (dead.factor < 1) {
      calc.note("The dead load is reduced here: the factor of 1.5 is looked at in the combinations where it is not.");
      return weigh(0, calc(safeHold, { M_r: calc(netHold, { N, b: inputs.width }) }), "moment");
    }
    if (inputs.definition === "1.5 on the net weight")
      return both(inputs, M_x, M_y, (M, b) => ({ demand: calc(turningMoment, { M }), capacity: calc(safeHold, { M_r: calc(netHold, { N, b }) }) }), calc);
    if (demand.dead === undefined) return unchecked("how much of the axial force is dead load is not known: state the reactions by load case");
    const T = calc(uplifted, { P_D: demand.dead, P: demand.base.P });
    const turn = (M: number, b: number): Pair => ({ demand: calc(turningWithUplift, { M, T, b }), capacity: calc(safeHold, { M_r: calc(grossHold, { N, T, b }) }) });
    return both(inputs, M_x, M_y, turn, calc);
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "moment")} turns the footing over; ${say.show(outcome.capacity, "moment")} holds it. Widen the pad, or make it heavier.`,
});
