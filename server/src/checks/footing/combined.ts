/**
 * A pad under two columns or more of a line bends between them with tension at its top and beyond them with tension at its bottom, and shears beside
 * them. In the field a narrow strip under two columns has cracked across between them.
 *
 * ACI 318-19 13.3.4 (combined footings): statics of the pad as a beam under the pressure of the ground and the columns; strengths as of any pad.
 * Across its length each column's load is spread in a band one effective depth wider than the column (common practice, no source).
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { combinedFooting, type ColumnOnPad, type CombinedForces } from "../../mechanics/combined-footing.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { momentX, momentY } from "../pier/grade-forces.js";
import { bendingFormulas, plainStrength, reinforcedStrength, tooMuchSteel } from "./bending.js";
import { armOf } from "./body.js";
import { atUnderside } from "./forces.js";
import { oneWayEarlier, oneWayStrength, oneWayWithoutStirrups, rootStrength, steelRatio } from "./one-way-shear.js";
import { padEditions, type PadInputs, readPad } from "./pad.js";
import { actingOn, sectionFormulas } from "./sections.js";
import { isShared, type OnSharedPad, readShared } from "./shared-pad.js";

export const placeOnPad = formula({
  id: "footing.place-on-pad",
  text: "x_i = x_0 + e",
  source: "geometry",
  symbols: { x_i: { kind: "distance", meaning: "column from the middle of the pad" }, x_0: { kind: "distance", meaning: "column from the middle of the line", range: [-5, 5] }, e: { kind: "length", meaning: "middle of the line off that of the pad", field: "foundations.*.off middle.x", range: [-1, 1] } },
});

export const towardHigh = formula({
  id: "footing.moment-toward-north",
  text: "M_i = -M_x",
  source: "sign: a push to the north turns about the east axis the other way",
  symbols: { M_i: { kind: "moment", meaning: "moment toward the high end of the line" }, M_x: { kind: "moment", meaning: "moment about the east axis at the underside", range: [-1e5, -1e3] } },
});

export const bandWidth = formula({
  id: "footing.column-band",
  text: "b_b = 2 * x_f + d",
  source: "common practice, no source: the column and half an effective depth to each side",
  symbols: { b_b: { kind: "length", meaning: "band of the pad across under a column" }, x_f: { kind: "length", meaning: "half of the column along the line" }, d: { kind: "length", meaning: "effective depth" } },
});

export const bandSteel = formula({
  id: "footing.band-steel",
  text: "A_sb = A_s * min(b_b / b, 1)",
  source: "geometry: evenly spaced bars",
  symbols: { A_sb: { kind: "area", meaning: "bars across in the band" }, A_s: { kind: "area", meaning: "bars across in the whole pad" }, b_b: { kind: "length", meaning: "band of the pad across under a column" }, b: { kind: "length", meaning: "side of the pad along the line" } },
});

export const acrossMoment = formula({
  id: "footing.moment-across",
  text: "M_a = max(P, 0 * P) / b * (b / 2 - x_f)^2 / 2 + abs(M) / 2",
  source: "statics: the column's load spread over the band, its moment across shared by both sides",
  symbols: {
    M_a: { kind: "moment", meaning: "moment across at the face of the column" },
    P: { kind: "force", meaning: "load of the column" },
    b: { kind: "length", meaning: "side of the pad across the line", range: [1, 3] },
    x_f: { kind: "length", meaning: "half of the column across the line", range: [0.1, 0.4] },
    M: { kind: "moment", meaning: "moment of the column across the line at the underside" },
  },
});

export interface CombinedInputs extends PadInputs, OnSharedPad {}

export const readCombined = (support: Parameters<typeof readPad>[0], gather: Parameters<typeof readPad>[1]): CombinedInputs => ({ ...readPad(support, gather), ...readShared(support, gather) });

export interface Parts {
  readonly columns: readonly ColumnOnPad[];
  /** Moment of each across the line at the underside, N·m. */
  readonly across: readonly number[];
}

/** The columns along the line, and their moments across it. */
export function columnsOn(inputs: CombinedInputs, demand: Demand, calc: Calc): Parts {
  const { along, face, offset } = inputs;
  const a = armOf(inputs, calc);
  const columns: ColumnOnPad[] = [];
  const across: number[] = [];
  for (const { x, y, base } of demand.parts ?? []) {
    const M_x = calc(towardHigh, { M_x: calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a }) });
    const M_y = calc(momentY, { M_yb: base.My, V_x: base.Vx, a });
    const isX = along === "x";
    columns.push({ at: calc(placeOnPad, { x_0: isX ? x : y, e: offset[along] }), half: face[along], P: base.P, M: isX ? M_y : M_x });
    across.push(isX ? M_x : M_y);
  }
  return { columns, across };
}

/** Forces along the pad; or why they cannot be told; or nothing where nothing acts. */
export function forcesAlong(inputs: CombinedInputs, { columns }: Parts, demand: Demand<"strength">, calc: Calc): CombinedForces | { readonly because: string } | undefined {
  const acting = actingOn(inputs, demand, "by factor", calc);
  if (!acting || "because" in acting) return acting;
  const { N } = atUnderside(inputs, demand, "by factor", calc);
  const { width, length, along } = inputs;
  return calc.routine(combinedFooting, { ...acting, width, length, along, columns, d: inputs.bottom.d, N });
}

/** Of {@link columnsOn} and {@link forcesAlong}. */
export const alongFormulas = [...sectionFormulas, momentX, momentY, towardHigh, placeOnPad] as const;
const range = "Columns of one line that runs along a side of the pad, the pad rigid, its bars evenly spaced and going through. Development of its bars is looked at on its own.";

export const combinedBending = check({
  id: "footing.combined-bending",
  title: "Bending of a pad under several columns",
  link: "footing",
  wholePad: true,
  level: "strength",
  clause: "ACI 318-19 13.3.4, 22.3",
  editions: padEditions,
  fails: "The pad breaks between its columns at the top, or beyond or beside them at the bottom.",
  seen: "A strip under two columns cracked across between them.",
  range,
  formulas: [...alongFormulas, ...bendingFormulas, rootStrength, plainStrength, bandWidth, bandSteel, acrossMoment],
  applies: isShared,
  inputs: readCombined,
  fixedBy: (support) => support.foundation?.fields["top bars"] ?? support.foundation?.fields["bottom bars"] ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { along, bottom, top, f_y, fprime_c, face, thickness: t } = inputs;
    const other = along === "x" ? "y" : "x";
    const side = along === "x" ? inputs.length : inputs.width;
    const reach = along === "x" ? inputs.width : inputs.length;
    const capacityBottom = reinforcedStrength(bottom[along].area, f_y, fprime_c, side, bottom.d, calc);
    const capacityTop = top ? reinforcedStrength(top[along].area, f_y, fprime_c, side, top.d, calc) : calc(plainStrength, { s_c: calc(rootStrength, { fprime_c }), b: side, t });
    const b_b = calc(bandWidth, { x_f: face[along], d: bottom.d });
    const capacityAcross = reinforcedStrength(calc(bandSteel, { A_s: bottom[other].area, b_b, b: reach }), f_y, fprime_c, b_b, bottom.d, calc);
    if (capacityBottom === undefined || capacityTop === undefined || capacityAcross === undefined) return unchecked(tooMuchSteel);
    if (!top) calc.note("There are no top bars: between the columns the pad is held as plain concrete.");
    const parts = columnsOn(inputs, demand, calc);
    const found = forcesAlong(inputs, parts, demand, calc);
    if (!found) return weigh(0, capacityBottom, "moment");
    if ("because" in found) return unchecked(found.because);
    let worst: Pair = worseOf({ demand: found.sagging, capacity: capacityBottom }, { demand: found.hogging, capacity: capacityTop });
    parts.columns.forEach(({ P }, i) => {
      worst = worseOf(worst, { demand: calc(acrossMoment, { P, b: side, x_f: face[other], M: parts.across[i] }), capacity: capacityAcross });
    });
    return weigh(worst.demand, worst.capacity, "moment");
  },
  advise: (inputs, outcome, say) => `${say.show(outcome.demand, "moment")} bends the pad under its columns; ${say.show(outcome.capacity, "moment")} is held there. ${inputs.top ? "Add bars where it bends" : "Put in top bars between the columns"}, or thicken the pad.`,
});

export const combinedShear = check({
  id: "footing.combined-shear",
  title: "Shear of a pad under several columns",
  link: "footing",
  wholePad: true,
  level: "strength",
  clause: "ACI 318-19 13.3.4, 22.5.5.1, 13.2.6.2",
  editions: padEditions,
  fails: "The pad shears across beside a column along an inclined crack.",
  seen: "A strip under two columns broken beside one of them.",
  range,
  formulas: [...alongFormulas, rootStrength, steelRatio, oneWayWithoutStirrups, oneWayEarlier],
  applies: isShared,
  inputs: readCombined,
  fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { along, bottom } = inputs;
    const side = along === "x" ? inputs.length : inputs.width;
    const capacity = oneWayStrength(inputs, bottom[along].area, side, bottom.d, calc);
    const found = forcesAlong(inputs, columnsOn(inputs, demand, calc), demand, calc);
    if (!found) return weigh(0, capacity, "force");
    if ("because" in found) return unchecked(found.because);
    return weigh(found.shear, capacity, "force");
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "force")} of shear beside a column; the pad holds ${say.show(outcome.capacity, "force")}. Thicken the pad, or add bottom bars.`,
});
