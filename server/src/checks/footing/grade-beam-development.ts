/**
 * The bars of the grade beam end too soon in the foundation and are drawn out of it before they yield: the tie is none.
 *
 * ACI 318-19 18.13.4: bars without a break, developed in or beyond the column or anchored in the footing (from memory); lengths of 25.4, in full.
 */
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import { check, type CheckDecl, sameInAll, weighLimit } from "../contract.js";
import { concreteEditions } from "../pier/concrete-member.js";
import { developmentFormulas, hooked, straight } from "./bar-development.js";
import { type BeamConcrete, beamField, type BeamInputs, needBeam, readBeam, readBeamConcrete, tiedFooting, type TiedFoundation, tiedPier } from "./grade-beam.js";
import { rootStrength } from "./one-way-shear.js";

const c_c = { kind: "length", meaning: "clear cover of the ties", field: "foundations.*.cover" } as const;
const d_t = { kind: "length", meaning: "diameter of the ties", field: "foundations.*.grade beam.ties.bar" } as const;
const d_b = { kind: "length", meaning: "bar diameter", field: "foundations.*.grade beam.bars" } as const;

export const beamBarSpacing = formula({
  id: "footing.grade-beam-bar-spacing",
  text: "s = (b_g - 2 * (c_c + d_t) - d_b) / max(n / 2 - 1, 1)",
  source: "geometry: half of the bars evenly along the top, half along the bottom",
  symbols: {
    s: { kind: "length", meaning: "spacing of the bars" },
    b_g: { kind: "length", meaning: "width of the grade beam", field: "foundations.*.grade beam.width" },
    c_c,
    d_t,
    d_b,
    n: { kind: "number", meaning: "bars of the beam", field: "foundations.*.grade beam.bars", range: [2, 20] },
  },
});

export const barCover = formula({ id: "footing.grade-beam-bar-cover", text: "c_b = c_c + d_t", source: "geometry", symbols: { c_b: { kind: "length", meaning: "clear cover of the bars" }, c_c, d_t } });

export const concreteBelow = formula({
  id: "footing.grade-beam-concrete-below",
  text: "h_b = h_g - c_c - d_t - d_b",
  source: "geometry",
  symbols: { h_b: { kind: "length", meaning: "fresh concrete below the top bars" }, h_g: { kind: "length", meaning: "depth of the grade beam", field: "foundations.*.grade beam.depth" }, c_c, d_t, d_b },
});

/** Fresh concrete below a bar from which it counts as a top bar, m: 12 in. */
const highCast = 0.3048;

interface DevelopedInputs extends BeamInputs, BeamConcrete {
  readonly tie: number;
  readonly into: number;
  readonly isHooked: boolean;
}

const declare = (tied: TiedFoundation): CheckDecl<DevelopedInputs, "strength"> =>
  check<DevelopedInputs, "strength">({
    id: tied.id("development"),
    title: "Bars of the grade beam in the foundation",
    link: tied.word,
    level: "strength",
    clause: "ACI 318-19 18.13.4, 25.4 (from memory)",
    editions: concreteEditions,
    fails: "The bars of the beam end too soon in the foundation and are drawn out of it.",
    seen: "A beam that has parted from its foundation, its bars slipped at the joint.",
    range: "The whole length for the yield strength, straight or hooked, uncoated. Where the beam goes on past the foundation with the same bars, the length to where they end counts. Laps within the beam are not looked at.",
    formulas: [beamBarSpacing, barCover, concreteBelow, rootStrength, ...developmentFormulas],
    applies: tied.is,
    inputs: (support, gather) => {
      const beam = needBeam(support, gather);
      const ties = beam && gather.needs(beam.ties, "closed ties of the grade beam");
      const of = { ...readBeam(support, gather), ...readBeamConcrete(support, gather), tie: (ties && gather.needs(ties.bar, "size of the ties of the grade beam"))?.diameter ?? Number.NaN };
      if (beamBarSpacing.value({ b_g: of.width, c_c: of.cover, d_t: of.tie, d_b: of.bar.diameter, n: of.count }) <= of.bar.diameter || concreteBelow.value({ h_g: of.depth, c_c: of.cover, d_t: of.tie, d_b: of.bar.diameter }) <= of.cover)
        gather.block("the bars of the grade beam with their ties and cover do not fit into it: widen or deepen the beam, or use fewer bars");
      return {
        ...of,
        into: beam ? gather.need(beam["into foundation"], "length of the bars of the grade beam in the foundation (`into foundation`)") : Number.NaN,
        isHooked: beam ? gather.may(beam["bar ends"]) === "hooked" : false,
      };
    },
    measures: sameInAll,
    fixedBy: beamField("into foundation"),
    evaluate: ({ width: b_g, depth: h_g, cover, tie: d_t, bar, count: n, fprime_c, f_y, edition, into, isHooked }, _demand, calc) => {
      const of = { c_c: cover, d_t, d_b: bar.diameter };
      const placed = { diameter: bar.diameter, spacing: calc(beamBarSpacing, { b_g, n, ...of }) };
      const s_c = calc(rootStrength, { fprime_c });
      if (isHooked) return weighLimit(hooked(placed, f_y, fprime_c, s_c, edition, calc), into, "length");
      const isHigh = isAbove(calc(concreteBelow, { h_g, ...of }), highCast);
      return weighLimit(straight(placed, calc(barCover, { c_c: cover, d_t }), f_y, s_c, isHigh, edition, calc), into, "length");
    },
    advise: (inputs, outcome, say) =>
      `${inputs.bar.name} go ${say.show(outcome.capacity, "length")} into the foundation; ${say.show(outcome.demand, "length")} needed. Run them farther${inputs.isHooked ? "" : ", hook their ends"}, or take smaller bars.`,
  });

export const pierBeamDevelopment = declare(tiedPier);
export const footingBeamDevelopment = declare(tiedFooting);
