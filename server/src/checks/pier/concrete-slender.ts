/**
 * A tall thin pier or pedestal sways under its load: the load leans out with it and bends it more, until it buckles. In the field a thin pier far out of
 * the ground that leans and cracks at its foot.
 *
 * ACI 318-19 6.2.5.1 (slender from k l/r = 22 on), 6.6.4.4.2, 6.6.4.4.4(a), 6.6.4.6.2(b), 6.2.5.3 (at most 1.4). A cantilever, k = 2. A pier counts as held at
 * 10 ft below grade, as in soft soil (IBC 2021 1810.2.1, from memory), or at its underside.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { bendingStrength } from "../../mechanics/column-strength.js";
import { worseOf } from "../../mechanics/worse.js";
import { concreteModulus } from "../base/distribution.js";
import { check, unchecked, weigh, weighLimit } from "../contract.js";
import { pedestalRise } from "../footing/body.js";
import { bendingFormulas, type BendingInputs, strengthOf } from "./concrete-bending.js";
import { axialAlong, bentFormulas, bentSections, readAlong } from "./concrete-forces.js";
import { concreteEditions, type ConcreteMember, memberFormulas, pedestalMember, pierMember, readMember, withBars } from "./concrete-member.js";
import { roundInertia } from "./response.js";

const l_u = { kind: "distance", meaning: "length from the top to where it is held" } as const;
const h = { kind: "length", meaning: "diameter, or least side" } as const;
const E_c = { kind: "steelStress", meaning: "modulus of elasticity of the concrete" } as const;
const I_g = { kind: "inertia", meaning: "inertia of the gross section" } as const;
const P_u = { kind: "force", meaning: "axial force at the foot, compression" } as const;
const P_c = { kind: "force", meaning: "critical load" } as const;

export const freePier = formula({
  id: "pier.free-length",
  text: "l_u = h_a + min(d, z_f)",
  source: "IBC 2021 1810.2.1: held at 10 ft below grade in soft soil (from memory)",
  symbols: { l_u, h_a: { kind: "length", meaning: "height of the top of concrete above grade", field: "foundations.*.above grade" }, d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" } },
  constants: { z_f: "10 ft" },
});

export const freePedestal = formula({ id: "pier.free-pedestal", text: "l_u = h_p", source: "geometry: the soil beside it is not counted", symbols: { l_u, h_p: { kind: "length", meaning: "height of the pedestal above the pad" } } });

export const roundGyration = formula({ id: "pier.round-gyration", text: "r = 0.25 * h", source: "ACI 318-19 6.2.5.2", symbols: { r: { kind: "length", meaning: "radius of gyration" }, h } });
export const sidedGyration = formula({ id: "pier.sided-gyration", text: "r = 0.3 * h", source: "ACI 318-19 6.2.5.2", symbols: { r: { kind: "length", meaning: "radius of gyration" }, h } });

export const slendernessRatio = formula({ id: "pier.slenderness", text: "lambda = 2 * l_u / r", source: "ACI 318-19 6.2.5.1, k = 2 of a cantilever", symbols: { lambda: { kind: "ratio", meaning: "slenderness" }, l_u, r: { kind: "length", meaning: "radius of gyration" } } });
export const slenderFrom = formula({ id: "pier.slender-from", text: "lambda_s = 22", source: "ACI 318-19 6.2.5.1(a)", symbols: { lambda_s: { kind: "ratio", meaning: "slenderness up to which second order is left out" } } });

export const sidedInertia = formula({ id: "pier.sided-inertia", text: "I_g = b * h^3 / 12", source: "geometry", symbols: { I_g, b: { kind: "length", meaning: "the other side" }, h } });

export const criticalLoad = formula({
  id: "pier.critical-load",
  text: "P_c = pi^2 * 0.4 * E_c * I_g / (1 + beta_d) / (2 * l_u)^2",
  source: "ACI 318-19 6.6.4.4.2, 6.6.4.4.4(a), all of the load taken as lasting",
  symbols: { P_c, E_c, I_g, l_u },
  constants: { beta_d: "1" },
});

export const usefulLoad = formula({ id: "pier.useful-critical-load", text: "P_s = 0.75 * P_c", source: "ACI 318-19 6.6.4.6.2(b)", symbols: { P_s: { kind: "force", meaning: "load at which the moments grow without end" }, P_c } });

export const magnifier = formula({
  id: "pier.magnifier",
  text: "delta_s = 1 / (1 - P_u / P_s)",
  source: "ACI 318-19 6.6.4.6.2(b)",
  symbols: { delta_s: { kind: "ratio", meaning: "magnifier of the moments" }, P_u: { ...P_u, range: [1, 1e4] }, P_s: { kind: "force", meaning: "load at which the moments grow without end", range: [1e5, 1e6] } },
});
export const mostMagnified = formula({ id: "pier.most-magnified", text: "delta_m = 1.4", source: "ACI 318-19 6.2.5.3", symbols: { delta_m: { kind: "ratio", meaning: "largest magnifier" } } });

export const leastMoment = formula({
  id: "pier.least-moment",
  text: "M_m = P_u * (e_0 + 0.03 * h)",
  source: "ACI 318-19 Eq. 6.6.4.5.4, of columns that do not sway; taken here as well",
  symbols: { M_m: { kind: "moment", meaning: "least moment" }, P_u, h },
  constants: { e_0: "0.6 inch" },
});
export const magnifiedMoment = formula({
  id: "pier.magnified-moment",
  text: "M_c = delta_s * max(M, M_m)",
  source: "ACI 318-19 6.6.4.6.1",
  symbols: { M_c: { kind: "moment", meaning: "magnified moment" }, delta_s: { kind: "ratio", meaning: "magnifier of the moments" }, M: { kind: "moment", meaning: "largest moment along it, first order" }, M_m: { kind: "moment", meaning: "least moment" } },
});

export const heightRatio = formula({ id: "pier.height-ratio", text: "r_h = l_a / h", source: "geometry", symbols: { r_h: { kind: "ratio", meaning: "free height over the least side" }, l_a: { kind: "length", meaning: "free height" }, h } });

/** Free height over width up to which nobody asks whether it is slender: there k l/r stays far below 22. */
const stocky = 1;

/** Free height above grade, or above the pad, and the least side, m. */
function freeHeight(member: ConcreteMember, { foundation }: Support): { readonly height: number | undefined; readonly side: number | undefined } {
  const f = foundation?.fields;
  if (member.word === "pier") return { height: f?.["above grade"]?.value, side: f?.diameter?.value ?? f?.width?.value };
  const of = f?.pedestal?.value;
  const height = f?.depth && f.thickness ? pedestalRise.value({ d: f.depth.value, h_a: f["above grade"]?.value ?? 0, t: f.thickness.value }) : undefined;
  const side = of?.diameter?.value ?? (of?.width && of.length ? Math.min(of.width.value, of.length.value) : undefined);
  return { height, side };
}

function isTall(member: ConcreteMember, support: Support): boolean {
  const { height, side } = freeHeight(member, support);
  return height !== undefined && side !== undefined && heightRatio.value({ l_a: height, h: side }) > stocky;
}

/** Length to where it is held, least side, slenderness. */
function slenderOf(inputs: BendingInputs, calc: Calc): { readonly l_u: number; readonly h: number; readonly lambda: number } {
  const { body } = inputs;
  const side = Math.min(inputs.width, inputs.length);
  const length = body.of === "pier" ? calc(freePier, { h_a: body.pier.aboveGrade, d: body.pier.depth }) : calc(freePedestal, { h_p: body.footing.pedestal.height });
  const r = calc(inputs.shape === "round" ? roundGyration : sidedGyration, { h: side });
  return { l_u: length, h: side, lambda: calc(slendernessRatio, { l_u: length, r }) };
}

const declare = (member: ConcreteMember) =>
  check({
    id: member.id("slender"),
    title: `Slender ${member.word}`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 6.2.5, 6.6.4",
    editions: concreteEditions,
    fails: `The ${member.word} sways, its load leans out with it, and it breaks or buckles.`,
    seen: `A thin ${member.word} that leans and is cracked at its foot.`,
    range:
      "Where it stands out by more than its width. A cantilever on its own, all of its load lasting, the largest moment along it magnified; the column above is looked at on its own, and so is the lean of a pier in its soil. " +
      "The soil beside a pedestal holds nothing; a pier is held 10 ft below grade or at its underside, not higher.",
    formulas: [...bentFormulas, ...memberFormulas, ...bendingFormulas, freePier, freePedestal, roundGyration, sidedGyration, slendernessRatio, slenderFrom, sidedInertia, criticalLoad, usefulLoad, magnifier, mostMagnified, leastMoment, magnifiedMoment],
    applies: (support) => withBars(member)(support) && isTall(member, support),
    inputs: (support, gather): BendingInputs => ({ ...readMember(member, support, gather), ...readAlong(member, support, gather) }),
    fixedBy: (support) => support.foundation?.fields["above grade"] ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const { l_u, h, lambda } = slenderOf(inputs, calc);
      const limit = calc(slenderFrom, {});
      if (lambda <= limit) return weighLimit(lambda, limit, "ratio");
      const { most: P } = axialAlong(inputs, demand, calc);
      const I = inputs.shape === "round" ? calc(roundInertia, { D: h }) : calc(sidedInertia, { b: Math.max(inputs.width, inputs.length), h });
      const P_c = calc(criticalLoad, { E_c: calc(concreteModulus, { fprime_c: inputs.fprime_c }), I_g: I, l_u });
      const P_s = calc(usefulLoad, { P_c });
      if (!(P > 0)) return weigh(0, P_s, "force");
      if (P >= P_s) return weigh(P, P_s, "force");
      const delta_s = calc(magnifier, { P_u: P, P_s });
      const delta_m = calc(mostMagnified, {});
      if (delta_s > delta_m) return weighLimit(delta_s, delta_m, "ratio");
      const sections = bentSections(inputs, demand, calc);
      if ("because" in sections) return unchecked(sections.because);
      const strength = strengthOf(inputs, calc);
      const M_m = calc(leastMoment, { P_u: P, h });
      const tried = sections.map(({ N, M, toward }) => ({ demand: calc(magnifiedMoment, { delta_s, M, M_m }), capacity: calc.routine(bendingStrength, { ...strength, P: N, ...(M > 0 && toward ? { toward } : {}) }).phiM_n }));
      const worst = tried.reduce((a, b) => worseOf(a, b));
      return weigh(worst.demand, worst.capacity, "moment");
    },
    advise: (inputs, outcome, say) => {
      const { lambda } = slenderOf(inputs, plainCalc);
      const what = `Slenderness ${say.show(lambda, "ratio")}`;
      if (outcome.quantity === "force") return `${say.show(outcome.demand, "force")} presses on the ${member.word}; it sways without end at ${say.show(outcome.capacity, "force")}. ${what}: widen it, or bring its top down.`;
      if (outcome.quantity === "ratio") return `its moments grow by ${say.show(outcome.demand, "ratio")} as it sways; ${say.show(outcome.capacity, "ratio")} at most. ${what}: widen it, or bring its top down.`;
      return `${say.show(outcome.demand, "moment")} bends the ${member.word} with what its sway adds; it holds ${say.show(outcome.capacity, "moment")}. ${what}: widen it, add bars, or bring its top down.`;
    },
  });

export const pierSlender = declare(pierMember);
export const pedestalSlender = declare(pedestalMember);
