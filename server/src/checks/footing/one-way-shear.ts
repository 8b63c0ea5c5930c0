/**
 * The pad shears across its width as a wide beam, along an inclined crack from the underside at the pressed edge. In the field it is hidden
 * below grade; above, the column has dropped.
 *
 * ACI 318-19 22.5.5.1 without stirrups, lambda_s = 1 by 13.2.6.2. At d from the face of the pedestal where the ground pushes the side up (13.2.7.2);
 * at the face where the column pulls and soil or dowels push the side down, as nothing then presses its end region together (7.4.3.2(a)). ACI 318-14 22.5.5.1 gives
 * 2 sqrt(f'c), which is often twice as much; the difference is the usual surprise on changing editions.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";
import { largest, largestReverse, overhangs } from "./sections.js";

const strength = { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } as const;
const sqrtStrength = "sqrt(f'c) at most 100 psi by 22.5.3.1";

export const rootStrength = formula({
  id: "footing.root-strength",
  text: "s_c = min(one * sqrt(fprime_c), cap)",
  source: `ACI 318-19 22.5.3.1, 22.6.3.1: ${sqrtStrength}`,
  symbols: { s_c: { kind: "stress", meaning: "square root of the concrete strength, as a stress" }, fprime_c: strength },
  constants: { one: "1 lbf^0.5/inch", cap: "100 psi" },
});

export const shearSection = formula({
  id: "footing.shear-section",
  text: "x_v = x_f + d",
  source: "ACI 318-19 13.2.7.2, 7.4.3.2: at d from the face",
  symbols: { x_v: { kind: "length", meaning: "section in shear, from the middle" }, x_f: { kind: "length", meaning: "face of the pedestal, from the middle" }, d: { kind: "length", meaning: "effective depth" } },
});

export const steelRatio = formula({
  id: "footing.steel-ratio",
  text: "rho_w = A_s / (b * d)",
  source: "ACI 318-19 2.2",
  symbols: { rho_w: { kind: "ratio", meaning: "steel ratio" }, A_s: { kind: "area", meaning: "bars that cross the section" }, b: { kind: "length", meaning: "width of the section" }, d: { kind: "length", meaning: "effective depth" } },
});

const oneWay = {
  phiV_c: { kind: "force", meaning: "design strength of the section in one-way shear" },
  s_c: { kind: "stress", meaning: "square root of the concrete strength, as a stress" },
  b: { kind: "length", meaning: "width of the section" },
  d: { kind: "length", meaning: "effective depth" },
} as const;

export const oneWayWithoutStirrups = formula({
  id: "footing.one-way-without-stirrups",
  text: "phiV_c = phi * min(8 * cbrt(rho_w), 5) * s_c * b * d",
  source: "ACI 318-19 Table 22.5.5.1 (c), 22.5.5.1.1, 13.2.6.2, 21.2.1 (from memory)",
  symbols: { ...oneWay, rho_w: { kind: "ratio", meaning: "steel ratio", range: [0.001, 0.4] } },
  constants: { phi: "0.75" },
});

export const oneWayEarlier = formula({
  id: "footing.one-way-earlier",
  text: "phiV_c = phi * 2 * s_c * b * d",
  source: "ACI 318-14 22.5.5.1, 21.2.1 (from memory)",
  symbols: oneWay,
  constants: { phi: "0.75" },
});

/** Design strength of a section in one-way shear, N. */
export function oneWayStrength(inputs: Pick<PadInputs, "edition" | "fprime_c">, A_s: number, b: number, d: number, calc: Calc): number {
  const s_c = calc(rootStrength, { fprime_c: inputs.fprime_c });
  if (inputs.edition === "ACI 318-14") return calc(oneWayEarlier, { s_c, b, d });
  return calc(oneWayWithoutStirrups, { rho_w: calc(steelRatio, { A_s, b, d }), s_c, b, d });
}

export const oneWayShearOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("one-way-shear"),
    title: `One-way shear of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 22.5.5.1, 13.2.6.2, 7.4.3.2",
    editions: padEditions,
    fails: "The pad shears across its width along an inclined crack.",
    seen: "A column that has dropped, its pad broken in two below grade.",
    range: `Normalweight concrete, no stirrups, the bottom bars counted as fully developed at the section. Upward and downward shear are held against the same strength, upward at d from the face, downward at the face. ${on.net}`,
    formulas: [...on.formulas, shearSection, rootStrength, steelRatio, oneWayWithoutStirrups, oneWayEarlier],
    applies: on.isOwn,
    inputs: on.read,
    fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const { bottom, face, width, length } = inputs;
      const { d } = bottom;
      const capacityX = oneWayStrength(inputs, bottom.x.area, length, d, calc);
      const capacityY = oneWayStrength(inputs, bottom.y.area, width, d, calc);
      const acting = on.acting(inputs, demand, "by factor", calc);
      if (!acting) return weigh(0, Math.min(capacityX, capacityY), "force");
      if ("because" in acting) return unchecked(acting.because);
      const shearAlong = (axis: "x" | "y"): number => {
        const up = largest(overhangs(inputs, acting, axis, calc(shearSection, { x_f: face[axis], d }), calc).shear);
        const down = largestReverse(overhangs(inputs, acting, axis, face[axis], calc).shear);
        return Math.max(up, down);
      };
      const x = { demand: shearAlong("x"), capacity: capacityX };
      const y = { demand: shearAlong("y"), capacity: capacityY };
      const found = worseOf(x, y);
      return weigh(found.demand, found.capacity, "force");
    },
    advise: (inputs, outcome, say) =>
      `${say.show(outcome.demand, "force")} of shear beside the pedestal; the pad holds ${say.show(outcome.capacity, "force")}. Thicken the pad${inputs.edition === "ACI 318-14" ? "" : ", or add bottom bars, which raise the strength by the cube root"}.`,
  });

export const footingOneWayShear = oneWayShearOf(onSoil);
