/**
 * The ground under the pressed edge of a footing gives way, and the column goes down and leans. In the field the roof sags to one column
 * after the first wet winter.
 *
 * IBC 2021 1806.2: largest pressure under the rigid pad, on the part that stays in contact, against the allowable bearing stated or
 * presumptive for the class of the ground. Gross pressure: column, concrete and the soil on the pad.
 */
import { check, unchecked, weigh } from "../contract.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { type FootingBody, isFooting, readFooting } from "./body.js";
import { atUnderside, pressureUnder, undersideFormulas } from "./forces.js";

export interface BearingInputs extends FootingBody {
  readonly bearing: GroundValue;
}

export const footingBearing = check({
  id: "footing.bearing",
  title: "Bearing under the footing",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "IBC 2021 1806.2, Table 1806.2",
  fails: "The ground under the pressed edge of the pad gives way.",
  seen: "A column that has gone down and leans, and a roof that sags to it.",
  range:
    "A rigid rectangular pad, wholly in contact or lifted at one edge or corner. Gross pressure: concrete and soil on the pad count in full where the combination presses, buoyant and without loose soil where its dead load is reduced. Settlement has a check of its own where its limit is stated; slopes and neighboring footings are not looked at.",
  formulas: undersideFormulas,
  applies: isFooting,
  inputs: (support, gather): BearingInputs => ({
    ...readFooting(support, gather),
    bearing: groundValue(support, gather, support.ground?.fields.bearing, "bearing", (soil) => soil.verticalBearing),
  }),
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const under = atUnderside(inputs, demand, "by factor", calc);
    const { value: allowed, from } = inputs.bearing;
    calc.note(from);
    if (under.N <= 0 && under.M_x === 0 && under.M_y === 0) return weigh(0, allowed, "pressure");
    const pressure = pressureUnder(inputs, under, demand, calc);
    if ("unstable" in pressure) return unchecked(`${pressure.unstable}; while it does, no pressure balances the load. Widen or weight the pad until it stands`);
    if (pressure.contactRatio < 1) calc.note("A part of the pad has lifted; the pressure is that of the part in contact.");
    return weigh(pressure.qmax, allowed, "pressure");
  },
  advise: (_inputs, outcome, say) => `the pressed edge bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed. Widen the pad.`,
});
