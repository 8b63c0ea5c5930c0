/**
 * In an earthquake a pier is bent to and fro below its top until the cover spalls; ties that stand wide let the core run out and the bars bow.
 *
 * IBC 2021 1810.3.9.4.1 (category C) and 1810.3.9.4.2 (D to F), ACI 318-19 Table 18.13.5.7.1, 18.7.5.3, Table 18.7.5.4: from memory. The notebook has one
 * spacing for the whole height, so that what is asked near the top holds all the way down.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { type Gather, weighLimit } from "../contract.js";
import { detailOf, tiesOf } from "./concrete-detail.js";
import { areaFormulas, memberArea, type MemberInputs, pierMember, readMember } from "./concrete-member.js";
import { coreDiameter, spiralRatio } from "./concrete-spiral.js";

const memory = "(from memory)";
const s_m = { kind: "length", meaning: "largest spacing of the ties" } as const;
const d_b = { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" } as const;
const D = { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" } as const;
const A_g = { kind: "planArea", meaning: "area of the section" } as const;
const fprime_c = { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } as const;
const f_yt = { kind: "steelStress", meaning: "yield strength of the ties" } as const;

export const spacingInC = formula({ id: "pier.tie-spacing-category-c", text: "s_m = min(s_6, 8 * d_b)", source: `IBC 2021 1810.3.9.4.1 ${memory}`, symbols: { s_m, d_b }, constants: { s_6: "6 inch" } });

export const spacingInD = formula({
  id: "pier.tie-spacing-category-d",
  text: "s_m = min(D / 4, k_b * d_b, s_o)",
  source: `IBC 2021 1810.3.9.4.2, ACI 318-19 18.7.5.3 ${memory}`,
  symbols: {
    s_m,
    D,
    k_b: { kind: "number", meaning: "6 for bars of Gr 60, 5 for those of Gr 80" },
    d_b,
    s_o: { kind: "length", meaning: "6 in round a circle of bars; 4 in, the least it may be, round a rectangle" },
  },
});

export const roundCap = formula({ id: "pier.tie-spacing-round", text: "s_o = s_6", source: `ACI 318-19 18.7.5.3(d): at most 6 in ${memory}`, symbols: { s_o: { kind: "length", meaning: "cap of the spacing" } }, constants: { s_6: "6 inch" } });
export const squareCap = formula({ id: "pier.tie-spacing-square", text: "s_o = s_4", source: `ACI 318-19 18.7.5.3(d): at least 4 in, taken in place of a count of the bars that are held ${memory}`, symbols: { s_o: { kind: "length", meaning: "cap of the spacing" } }, constants: { s_4: "4 inch" } });

export const seismicTieSize = formula({
  id: "pier.seismic-tie-size",
  text: "d_r = D > d_20 ? d_4 : d_3",
  source: `IBC 2021 1810.3.9.4.1 (3/8 in), 1810.3.9.4.2 (no. 4 where the pier is wider than 20 in) ${memory}`,
  symbols: { d_r: { kind: "length", meaning: "least diameter of the ties" }, D },
  // A hair below the nominal sizes, so that 10 mm and 12 mm bars count.
  constants: { d_20: "20 inch", d_4: "0.47 inch", d_3: "0.37 inch" },
});

export const tieSizeInC = formula({ id: "pier.seismic-tie-size-c", text: "d_r = d_3", source: `IBC 2021 1810.3.9.4.1: 3/8 in ${memory}`, symbols: { d_r: { kind: "length", meaning: "least diameter of the ties" } }, constants: { d_3: "0.37 inch" } });

export const hoopRatioNeeded = formula({
  id: "pier.hoop-ratio-needed",
  text: "rho_r = k_s * max(0.45 * (A_g / (pi * D_c^2 / 4) - 1), 0.12) * fprime_c / f_yt",
  source: `ACI 318-19 Table 18.7.5.4; half of it on site class A to D, IBC 2021 1810.3.9.4.2.1 ${memory}`,
  symbols: {
    rho_r: { kind: "ratio", meaning: "volume of the ties needed over that of the core" },
    k_s: { kind: "ratio", meaning: "0.5 on site class A to D, 1 on softer ground" },
    A_g,
    D_c: { kind: "length", meaning: "diameter of the core, to the outside of the ties" },
    fprime_c,
    f_yt,
  },
});

export const coreSide = formula({
  id: "pier.core-side",
  text: "b_c = D - 2 * c_c",
  source: "ACI 318-19 2.2",
  symbols: { b_c: { kind: "length", meaning: "side of the core, to the outside of the ties" }, D, c_c: { kind: "length", meaning: "clear cover of the ties", field: "foundations.*.cover" } },
});

export const legsNeeded = formula({
  id: "pier.hoop-legs-needed",
  text: "A_shr = s * b_c * max(0.3 * (A_g / b_c^2 - 1), 0.09) * fprime_c / f_yt",
  source: `ACI 318-19 Table 18.7.5.4 ${memory}`,
  symbols: { A_shr: { kind: "area", meaning: "legs of the ties needed across each side" }, s: { kind: "length", meaning: "spacing of the ties", field: "foundations.*.ties.spacing" }, b_c: { kind: "length", meaning: "side of the core, to the outside of the ties" }, A_g, fprime_c, f_yt },
});

export const twoLegs = formula({ id: "pier.hoop-legs", text: "A_sh = 2 * A_t", source: "geometry: inner ties are not counted", symbols: { A_sh: { kind: "area", meaning: "two legs of a tie" }, A_t: { kind: "area", meaning: "area of the bar of the ties", field: "foundations.*.ties.bar" } } });

interface SeismicInputs extends MemberInputs {
  readonly category: string;
  /** Site class A to D halves what round ties need. */
  readonly isFirm: boolean;
}

const strict = new Set(["D", "E", "F"]);
const soft = new Set(["DE", "E", "F"]);

const categoryOf = ({ site }: Support): string => site["seismic design category"]?.value ?? "";
const isShaken = (support: Support): boolean => categoryOf(support) === "C" || strict.has(categoryOf(support));
const isShakenHard = (support: Support): boolean => strict.has(categoryOf(support));

function readSeismic(support: Support, gather: Gather): SeismicInputs {
  const category = gather.needs(support.site["seismic design category"], "seismic design category") ?? "";
  return { ...readMember(pierMember, support, gather), category, isFirm: true };
}

function readWithSite(support: Support, gather: Gather): SeismicInputs {
  const site = gather.needs(support.site["site class"], "site class of the ground");
  return { ...readSeismic(support, gather), isFirm: site !== undefined && !soft.has(site) };
}

const isHighGrade = (f_y: number): boolean => f_y > 500e6;

function spacingLimit(inputs: SeismicInputs, calc: Calc): number {
  const { diameter: d_b } = inputs.bar;
  if (!strict.has(inputs.category)) return calc(spacingInC, { d_b });
  return calc(spacingInD, { D: inputs.width, k_b: isHighGrade(inputs.f_y) ? 5 : 6, d_b, s_o: calc(inputs.shape === "round" ? roundCap : squareCap, {}) });
}

const codeText = "IBC 2021 1810.3.9.4, ACI 318-19 18.13.5 (from memory)";
const exceptions = "Exceptions for posts of dwellings and decks are left to the official.";

export const pierSeismicTieSpacing = detailOf(pierMember, readSeismic, {
  name: "seismic-tie-spacing",
  title: "Closer ties of the pier for earthquakes",
  clause: codeText,
  fails: "Below the top of the pier the cover spalls in an earthquake, and the bars bow out between ties that stand wide.",
  seen: "A pier broken open below its column after an earthquake.",
  range: `Categories C to F. What is asked within three widths of the top (seven on site class E and F) is asked of the one spacing that is stated, over the whole height. ${exceptions}`,
  formulas: [spacingInC, roundCap, squareCap, spacingInD],
  applies: isShaken,
  fixedBy: tiesOf,
  evaluate: (inputs, calc) => weighLimit(inputs.transverse.spacing, spacingLimit(inputs, calc), "length"),
  advise: (inputs, outcome, say) => `ties ${say.show(outcome.demand, "length")} apart; ${say.show(outcome.capacity, "length")} at most below the top of a pier in seismic design category ${inputs.category}. Set them closer.`,
});

export const pierSeismicTieSize = detailOf(pierMember, readSeismic, {
  name: "seismic-tie-size",
  title: "Size of the ties of the pier for earthquakes",
  clause: codeText,
  fails: "The ties are too thin to hold the bars when the cover has gone.",
  seen: "Ties snapped round a broken pier.",
  range: `Categories C to F: 3/8 in, and no. 4 in D to F where the pier is wider than 20 in. ${exceptions}`,
  formulas: [tieSizeInC, seismicTieSize],
  applies: isShaken,
  fixedBy: tiesOf,
  evaluate: (inputs, calc) => weighLimit(strict.has(inputs.category) ? calc(seismicTieSize, { D: inputs.width }) : calc(tieSizeInC, {}), inputs.transverse.diameter, "length"),
  advise: (inputs, outcome, say) => `${inputs.transverse.name} ties; ${say.show(outcome.demand, "length")} of diameter needed in seismic design category ${inputs.category}. Take larger ties.`,
});

export const pierSeismicConfinement = detailOf(pierMember, readWithSite, {
  name: "seismic-confinement",
  title: "Ties that confine the core of the pier in an earthquake",
  clause: codeText,
  fails: "The ties are too light to hold the core of the pier when it is bent to and fro.",
  seen: "A pier crushed below its column, its ties opened.",
  range: `Categories D to F. Round: the volume of ties or spiral along the middle line of their bar, half of what a column needs on site class A to D. Square: two legs across each side, inner ties not counted. Ties are taken as hoops with seismic hooks, of the grade of the vertical bars. Under a cover of 3 in much is asked. ${exceptions}`,
  formulas: [...areaFormulas, coreDiameter, hoopRatioNeeded, spiralRatio, coreSide, legsNeeded, twoLegs],
  applies: isShakenHard,
  fixedBy: tiesOf,
  evaluate: (inputs, calc) => {
    const { width: D, cover: c_c, fprime_c, f_y: f_yt, transverse, isFirm } = inputs;
    const A_g = memberArea(inputs, calc);
    if (inputs.shape === "round") {
      const D_c = calc(coreDiameter, { D, c_c });
      const have = calc(spiralRatio, { A_sp: transverse.area, D_c, d_s: transverse.diameter, s: transverse.spacing });
      return weighLimit(calc(hoopRatioNeeded, { k_s: isFirm ? 0.5 : 1, A_g, D_c, fprime_c, f_yt }), have, "ratio");
    }
    const needed = calc(legsNeeded, { s: transverse.spacing, b_c: calc(coreSide, { D, c_c }), A_g, fprime_c, f_yt });
    return weighLimit(needed, calc(twoLegs, { A_t: transverse.area }), "area");
  },
  advise: (inputs, outcome, say) =>
    outcome.quantity === "ratio"
      ? `${inputs.transverse.name} at ${say.show(inputs.transverse.spacing, "length")} is ${say.show(outcome.capacity, "ratio")} of the core; ${say.show(outcome.demand, "ratio")} needed. Set the ties closer, take larger ones, or less cover in forms.`
      : `two legs of ${inputs.transverse.name} have ${say.show(outcome.capacity, "area")}; ${say.show(outcome.demand, "area")} needed at ${say.show(inputs.transverse.spacing, "length")} apart. Set the ties closer or take larger ones.`,
});

export const seismicTies = [pierSeismicTieSpacing, pierSeismicTieSize, pierSeismicConfinement] as const;
