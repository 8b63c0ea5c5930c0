/** Shears and moments at the sections of a pad in one strength combination: soil pressure less the weight of the pad and of what lies on it. */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { footingOverhang, type FromBelow, type Overhang } from "../../mechanics/footing-section.js";
import type { FootingBody, Purpose } from "./body.js";
import { atUnderside, pressureUnder, purposeOf, undersideFormulas } from "./forces.js";

export const weightBelow = formula({
  id: "footing.weight-on-underside",
  text: "w = f_D * (gamma_c * t - gamma_w * min(t, h_w) + gamma_s * h_s - gamma_w * min(max(h_w - t, 0 * t), h_s))",
  source: "statics",
  symbols: {
    w: { kind: "pressure", meaning: "weight of the pad and of the soil on it" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    h_w: { kind: "distance", meaning: "height of the water above the underside" },
    gamma_s: { kind: "unitWeight", meaning: "unit weight of the soil above the pad", field: "foundations.*.backfill weight" },
    h_s: { kind: "distance", meaning: "height of the soil on the pad" },
  },
  constants: { gamma_c: "150 lbf/ft^3", gamma_w: "62.4 lbf/ft^3" },
});

/** What presses up and what lies on the pad in one combination; or why it cannot be told; or nothing, where nothing acts. */
export type Acting = (FromBelow & { readonly down: number }) | { readonly because: string } | undefined;

export function actingOn(body: FootingBody, demand: Demand<"strength">, purpose: Purpose | "by factor", calc: Calc): Acting {
  const under = atUnderside(body, demand, purpose, calc);
  if (under.N <= 0 && under.M_x === 0 && under.M_y === 0 && demand.base.P === 0) return undefined;
  const pressure = pressureUnder(body, under, demand, calc);
  if ("unstable" in pressure)
    return { because: `${pressure.unstable} under this factored load, so that no soil pressure balances it; what holds the pad then is not worked out. Widen the pad or make it heavier` };
  const holds = (purpose === "by factor" ? purposeOf(under.f_D) : purpose) === "holds";
  const h_s = holds && !body.isSoilCounted ? 0 : body.soilHeight;
  const down = calc(weightBelow, { f_D: under.f_D, t: body.thickness, h_w: holds ? body.waterHeight : 0, gamma_s: body.soilWeight, h_s });
  return { pressure, down };
}

export const lowSection = formula({
  id: "footing.low-section",
  text: "x_1 = x_s - e",
  source: "geometry: the column stands off the middle",
  symbols: { x_1: { kind: "length", meaning: "section toward the west or south, from the middle" }, x_s: { kind: "length", meaning: "section from the middle of the column" }, e: { kind: "length", meaning: "column off the middle", field: "foundations.*.off middle.x", range: [-1, 1] } },
});

export const farFace = formula({
  id: "footing.far-face",
  text: "x_n = abs(e) + x_f",
  source: "geometry: the face nearest to an edge where the column stands off the middle",
  symbols: { x_n: { kind: "length", meaning: "farther face of the pedestal, from the middle of the pad" }, e: { kind: "length", meaning: "column off the middle", field: "foundations.*.off middle.x", range: [-1, 1] }, x_f: { kind: "length", meaning: "face of the pedestal, from its middle" } },
});

export const highSection = formula({
  id: "footing.high-section",
  text: "x_2 = x_s + e",
  source: "geometry: the column stands off the middle",
  symbols: { x_2: { kind: "length", meaning: "section toward the east or north, from the middle" }, x_s: { kind: "length", meaning: "section from the middle of the column" }, e: { kind: "length", meaning: "column off the middle", field: "foundations.*.off middle.x", range: [-1, 1] } },
});

export const sectionFormulas = [...undersideFormulas, weightBelow, lowSection, highSection] as const;

/** The two overhangs along an axis, cut at a distance from the middle of the column. */
export function overhangs(body: FootingBody, acting: Exclude<Acting, undefined | { because: string }>, across: "x" | "y", at: number, calc: Calc): Overhang {
  const { width, length } = body;
  const e = body.offset[across];
  const cut = (where: number): Overhang => calc.routine(footingOverhang, { ...acting, width, length, across, at: where });
  if (e === 0) return cut(at);
  const low = cut(calc(lowSection, { x_s: at, e }));
  const high = cut(calc(highSection, { x_s: at, e }));
  return { shear: [low.shear[0], high.shear[1]], moment: [low.moment[0], high.moment[1]] };
}

/** Largest of the two, not below zero. */
export const largest = ([low, high]: readonly [number, number]): number => Math.max(low, high, 0);
/** Largest of what points the other way, as a positive number. */
export const largestReverse = ([low, high]: readonly [number, number]): number => Math.max(-low, -high, 0);
