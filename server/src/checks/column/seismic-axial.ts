/**
 * A column that stands up from the ground by itself carries too much weight to sway in an earthquake: once it leans, the weight pushes it over. In the
 * field a heavy roof has come down sideways with its columns folded at their feet.
 *
 * Axial force of the combinations with an earthquake against 15 % of the axial strength, slenderness included. ASCE 7 12.2.5.2.
 */
import { isByHand } from "../../actions/by-hand.js";
import { seismicSystemOf } from "../../catalog/seismic-systems.js";
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import { check, weigh } from "../contract.js";
import { compressionFormulas, compressiveStrength } from "./compression.js";
import { readColumn } from "./member.js";

export const axialPart = formula({
  id: "column.seismic-axial-limit",
  text: "P_e = k_e * P_c",
  source: "ASCE 7-22, 7-16 and 7-10 12.2.5.2 (from memory)",
  symbols: { P_e: { kind: "force", meaning: "axial force a cantilevered column may carry in an earthquake" }, P_c: { kind: "force", meaning: "design compressive strength" } },
  constants: { k_e: "0.15" },
});

const pressed = formula({
  id: "column.seismic-axial-force",
  text: "P_r = max(P, 0)",
  source: "statics; axial force is compression positive",
  symbols: { P_r: { kind: "force", meaning: "axial force on the column" }, P: { kind: "force", meaning: "axial force at the base", range: [-1e5, 1e5] } },
});

/** An earthquake shakes the roof, and its system is one of cantilevered columns. */
function isCantilevered({ roof, site }: Support): boolean {
  const named = roof?.fields["earthquake system"]?.value;
  const isShaken = site["short-period acceleration"] !== undefined && site["seismic design category"]?.value !== "A";
  return isShaken && named !== undefined && seismicSystemOf(named)?.cantilevered === true;
}

export const seismicAxial = check({
  id: "column.seismic-axial",
  title: "Axial force of a cantilevered column in an earthquake",
  link: "column",
  level: "strength",
  clause: "ASCE 7-22, 7-16 and 7-10 12.2.5.2 (from memory)",
  fails: "The weight on a column that stands up by itself pushes it over once an earthquake makes it lean.",
  seen: "A heavy roof come down sideways, its columns folded at their feet.",
  range: "Combinations with an earthquake alone, at the column base, against 15 % of the compressive strength by AISC 360-22 E3, E4 and E7; other combinations do not try it.",
  formulas: [pressed, axialPart, ...compressionFormulas],
  applies: (support) => support.column !== undefined && !isByHand(support.column.fields) && isCantilevered(support),
  inputs: (support, gather) => {
    gather.may(support.roof?.fields["earthquake system"]);
    return readColumn(support, gather);
  },
  fixedBy: (support) => support.column?.fields.section ?? support.column,
  evaluate: (inputs, demand, calc) => {
    const P_e = calc(axialPart, { P_c: compressiveStrength(inputs, calc) });
    return weigh(demand.earthquake === undefined ? 0 : calc(pressed, { P: demand.base.P }), P_e, "force");
  },
  advise: (inputs, outcome, say) =>
    `Axial force ${say.show(outcome.demand, "force")} in an earthquake; ${say.show(outcome.capacity, "force")} is 15 % of the strength of ${inputs.section} over ${say.show(inputs.L, "distance")}. Take a larger section, lighten the roof, or hold the columns at their tops or by braced bays.`,
});
