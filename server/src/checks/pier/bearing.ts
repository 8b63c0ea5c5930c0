/**
 * The ground under the pier gives way. In the field the column has gone down and the roof sags to it; often a tube whose area was taken
 * as its width squared.
 *
 * IBC 2021 1806.2 and 1807.3.2.3. Column load and the full weight of the pier over the area of its underside, against allowable bearing. Nothing
 * is taken off for the soil the pier displaces or for side resistance (the code adds it to end bearing only by a report).
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, weigh } from "../contract.js";
import { deadFactor } from "../site/dead-factor.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { bellArea, bellFormulas, bellOf, withBell } from "./bell.js";
import { areaOf, isPier, type PierBody, pierWeight, readPier, roundArea, squareArea, weightOf } from "./body.js";

export const pierPressure = formula({
  id: "pier.pressure",
  text: "q = (P + f_D * W) / A_b",
  source: "IBC 2021 1807.3.2.3",
  symbols: {
    q: { kind: "pressure", meaning: "pressure under the pier" },
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W: { kind: "force", meaning: "weight of the pier" },
    A_b: { kind: "planArea", meaning: "area of the pier" },
  },
});

export interface BearingInputs extends PierBody {
  readonly bearing: GroundValue;
}

export const pierBearing = check({
  id: "pier.bearing",
  title: "Bearing under the pier",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1807.3.2.3, Table 1806.2",
  fails: "The ground under the pier gives way and the column goes down.",
  seen: "A roof that sags to one column, or a beam that has lifted off its neighbor.",
  range:
    "Concentric: the moment of an embedded pier goes into the soil beside it and is left to the embedment. The pier's weight counts in full, dry and without the soil it displaces; side resistance is not added. A bell counts with its area and its weight. Settlement is not looked at.",
  formulas: [roundArea, squareArea, pierWeight, ...bellFormulas, withBell, bellArea, pierPressure],
  applies: isPier,
  inputs: (support, gather): BearingInputs => ({
    ...readPier(support, gather),
    bearing: groundValue(support, gather, support.ground?.fields.bearing, "bearing", (soil) => soil.verticalBearing),
  }),
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const shaft = areaOf(inputs, calc);
    const W = fullWeight(inputs, shaft, calc);
    const A_b = inputs.bell ? calc(bellArea, { D_b: inputs.bell.diameter }) : shaft;
    const { factor: f_D, note } = deadFactor(demand);
    calc.note(note);
    calc.note(inputs.bearing.from);
    const q = calc(pierPressure, { P: demand.base.P, f_D, W, A_b });
    if (q > 0) return weigh(q, inputs.bearing.value, "pressure");
    calc.note("The column pulls with more than the pier weighs: nothing presses on the ground below it.");
    return weigh(0, inputs.bearing.value, "pressure");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(inputs.bell?.diameter ?? inputs.size, "length")} ${inputs.shape === "round" ? "diameter" : "square"} bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed. Widen the ${inputs.bell ? "bell" : "pier"}.`,
});

/** Dry weight of shaft and bell, N. */
function fullWeight(inputs: PierBody, shaft: number, calc: Calc): number {
  const W = weightOf(inputs, shaft, inputs.depth, calc);
  return inputs.bell ? calc(withBell, { W, W_b: bellOf(inputs.bell, inputs.size, false, calc).weight }) : W;
}
