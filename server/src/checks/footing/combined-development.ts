/**
 * The bars of a pad under several columns end too soon beyond the section where they are needed, and pull out before they yield.
 *
 * ACI 318-19 13.2.8 and 25.4. Bars go through from cover to cover: those at the bottom take up their force beyond the outer face of the last column, those
 * at the top beyond its inner face, those across from the face of a column to the side of the pad. The largest moment of the pad is taken at each.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { developmentFormulas, hooked, straight } from "./bar-development.js";
import { bendingFormulas, reinforcedStrength, tooMuchSteel } from "./bending.js";
import { acrossMoment, alongFormulas, bandSteel, bandWidth, columnsOn, type CombinedInputs, forcesAlong, readCombined } from "./combined.js";
import { type Ends, fullCategories, highCast, lengthAtHand, lengthNeeded } from "./development.js";
import { rootStrength } from "./one-way-shear.js";
import { type Mat, padEditions } from "./pad.js";
import { farFace } from "./sections.js";
import { isShared } from "./shared-pad.js";

export const beyondInnerFace = formula({
  id: "footing.length-beyond-inner-face",
  text: "l_a = b / 2 - abs(x_i) + x_f - c_c",
  source: "geometry",
  symbols: {
    l_a: { kind: "length", meaning: "length of the top bars beyond the inner face of the last column" },
    b: { kind: "length", meaning: "side of the pad along the line" },
    x_i: { kind: "distance", meaning: "column from the middle of the pad", range: [-5, 5] },
    x_f: { kind: "length", meaning: "half of the column along the line" },
    c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover" },
  },
});

type Inputs = CombinedInputs & Ends;

/** Length a mat needs where a moment is held by part of its strength. */
function needed(inputs: Inputs, mat: Mat, { demand, capacity }: Pair, isHigh: boolean, calc: Calc): number {
  if (!(demand > 0)) return 0;
  const { cover, f_y, fprime_c, edition } = inputs;
  const s_c = calc(rootStrength, { fprime_c });
  if (inputs.isHooked) return hooked(mat, f_y, fprime_c, s_c, edition, calc);
  const l_d = straight(mat, cover, f_y, s_c, isHigh, edition, calc);
  return calc(lengthNeeded, { l_d, M_u: inputs.isFull ? capacity : demand, phiM_n: capacity });
}

export const combinedDevelopment = check({
  id: "footing.combined-development",
  title: "Development of the bars of a pad under several columns",
  link: "footing",
  wholePad: true,
  level: "strength",
  clause: "ACI 318-19 13.2.8, 25.4",
  editions: padEditions,
  fails: "The bars end too soon beyond a column and pull out before they yield.",
  seen: "A strip cracked at its last column, with bars that have slipped at its end.",
  range: "Uncoated deformed bars in one piece from cover to cover, straight or with standard hooks at both ends; the largest moment of the pad is taken at the last columns. Their lap has a check of its own where it is stated; bars that end within the pad are not looked at.",
  formulas: [...alongFormulas, ...bendingFormulas, bandWidth, bandSteel, acrossMoment, rootStrength, ...developmentFormulas, farFace, lengthAtHand, beyondInnerFace, lengthNeeded],
  applies: isShared,
  inputs: (support, gather): Inputs => {
    const category = gather.may(support.site["seismic design category"]);
    return { ...readCombined(support, gather), isHooked: gather.may(support.foundation?.fields["hooked bars"]) ?? false, isFull: category !== undefined && fullCategories.has(category) };
  },
  fixedBy: (support) => support.foundation?.fields["bottom bars"] ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { along, bottom, top, f_y, fprime_c, face, cover: c_c, offset } = inputs;
    const other = along === "x" ? "y" : "x";
    const side = along === "x" ? inputs.length : inputs.width;
    const reach = along === "x" ? inputs.width : inputs.length;
    const parts = columnsOn(inputs, demand, calc);
    const found = forcesAlong(inputs, parts, demand, calc);
    if (found && "because" in found) return unchecked(found.because);
    const b_b = calc(bandWidth, { x_f: face[along], d: bottom.d });
    const held = reinforcedStrength(bottom[along].area, f_y, fprime_c, side, bottom.d, calc);
    const heldAcross = reinforcedStrength(calc(bandSteel, { A_s: bottom[other].area, b_b, b: reach }), f_y, fprime_c, b_b, bottom.d, calc);
    const heldTop = top ? reinforcedStrength(top[along].area, f_y, fprime_c, side, top.d, calc) : 0;
    if (held === undefined || heldAcross === undefined || heldTop === undefined) return unchecked(tooMuchSteel);
    const acrossHand = calc(lengthAtHand, { b: side, x_f: offset[other] === 0 ? face[other] : calc(farFace, { e: offset[other], x_f: face[other] }), c_c });
    const pair = (length: number, atHand: number): Pair => ({ demand: length, capacity: Math.max(0, atHand) });
    let worst = pair(0, acrossHand);
    if (!found) return weigh(0, worst.capacity, "length");
    parts.columns.forEach(({ at, P }, i) => {
      const outer = calc(lengthAtHand, { b: reach, x_f: calc(farFace, { e: at, x_f: face[along] }), c_c });
      // Columns between the last ones have more bar beyond them than the last.
      worst = worseOf(worst, pair(needed(inputs, bottom[along], { demand: found.sagging, capacity: held }, false, calc), outer));
      if (top) worst = worseOf(worst, pair(needed(inputs, top[along], { demand: found.hogging, capacity: heldTop }, isAbove(top.d, highCast), calc), calc(beyondInnerFace, { b: reach, x_i: at, x_f: face[along], c_c })));
      const M = calc(acrossMoment, { P, b: side, x_f: face[other], M: parts.across[i] });
      worst = worseOf(worst, pair(needed(inputs, bottom[other], { demand: M, capacity: heldAcross }, false, calc), acrossHand));
    });
    return weigh(worst.demand, worst.capacity, "length");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "length")} of bar needed beyond the column; ${say.show(outcome.capacity, "length")} there. Take smaller bars closer together${inputs.isHooked ? "" : ", hook their ends"}, or let the pad go on farther.`,
});
