/**
 * Pressure of the soil a wall holds back, of the load on it and of the water in it, with the shear and the moment they make at any depth below the
 * top of that soil. Per meter of wall, without load factor. The pressure grows in straight lines: from the surface, from the water down.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { acrossPart, atRest, coefficientFormulas, coulomb, downPart, fluidCoefficient, rankine, slopeToAngle } from "./coefficients.js";

export type EarthMethod = "at rest" | "Rankine" | "Coulomb" | "equivalent fluid";

/** The fill as the notebook gives it, SI. */
export interface EarthInputs {
  readonly method: EarthMethod;
  readonly phi: number;
  readonly delta: number;
  /** Rise over run of the ground behind the wall. */
  readonly slope: number;
  /** Weight of the equivalent fluid, N/m³; zero by another method. */
  readonly fluid: number;
  readonly gamma: number;
  readonly saturated: number;
  readonly cohesion: number;
  readonly surcharge: number;
  /** Depth of the water below the top of the soil at the wall, m; undefined where a drain keeps it out. */
  readonly water: number | undefined;
  /** Horizontal seismic coefficient, where it is stated. */
  readonly shaking?: number | undefined;
}

/** What the pressure is made of, once its coefficient is known. */
export interface Earth {
  readonly K_h: number;
  readonly K_v: number;
  readonly gamma: number;
  /** Buoyant unit weight below the water, N/m³. */
  readonly gamma_b: number;
  readonly q: number;
  /** Pressure the cohesion takes off, Pa. */
  readonly p_c: number;
}

const horizontal = { kind: "ratio", meaning: "horizontal part of the earth pressure coefficient", range: [0.1, 0.6] } as const;
const unitWeight = { kind: "unitWeight", meaning: "unit weight of the soil held back", field: "foundations.*.fill.unit weight", range: [15e3, 22e3] } as const;
const buoyant = { kind: "unitWeight", meaning: "buoyant unit weight of the soil below the water", range: [8e3, 12e3] } as const;
const surcharge = { kind: "pressure", meaning: "load on the ground behind the wall", field: "foundations.*.fill.surcharge" } as const;
const depth = { kind: "distance", meaning: "depth below the top of the soil", range: [0.1, 6] } as const;
const waterDepth = { kind: "distance", meaning: "depth of the water below the top of the soil", field: "foundations.*.fill.water", range: [0.1, 6] } as const;
const pulled = { kind: "pressure", meaning: "pressure that the cohesion takes off" } as const;
const crack = { kind: "distance", meaning: "depth down to which cohesion leaves no pressure", range: [0.1, 6] } as const;
const first = { kind: "pressure", meaning: "pressure at that depth" } as const;
const shear = { kind: "lineLoad", meaning: "push of the soil and of the load on it above that depth, horizontal" } as const;
const moment = { kind: "momentPerLength", meaning: "moment of that push about that depth" } as const;

export const buoyantSoil = formula({
  id: "wall.buoyant-soil",
  text: "gamma_b = gamma_sat - gamma_w",
  source: "statics",
  symbols: { gamma_b: buoyant, gamma_sat: { ...unitWeight, meaning: "unit weight of the soil below the water, water included", field: "foundations.*.fill.saturated weight" } },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const cohesionPull = formula({
  id: "wall.cohesion",
  text: "p_c = 2 * c * sqrt(K_h)",
  source: "Rankine's active pressure of soil with cohesion; Das, Principles of Foundation Engineering, section 7.3",
  symbols: { p_c: pulled, c: { kind: "pressure", meaning: "cohesion of the soil held back", field: "foundations.*.fill.cohesion" }, K_h: horizontal },
});

export const crackDepth = formula({
  id: "wall.crack-depth",
  text: "z_0 = K_h * q >= p_c ? 0 * z_w : (K_h * (q + gamma * z_w) >= p_c ? (p_c - K_h * q) / (K_h * gamma) : z_w + (p_c - K_h * (q + gamma * z_w)) / (K_h * gamma_b))",
  source: "where the pressure begins; no pull of the soil on the wall, as after a tension crack (Das, Principles of Foundation Engineering, section 7.3)",
  symbols: { z_0: crack, K_h: horizontal, q: surcharge, p_c: pulled, gamma: unitWeight, gamma_b: buoyant, z_w: waterDepth },
});

export const firstPressure = formula({
  id: "wall.first-pressure",
  text: "p_0 = max(K_h * q - p_c, 0 * q)",
  source: "a load all over the ground presses alike at every depth",
  symbols: { p_0: first, K_h: horizontal, q: surcharge, p_c: pulled },
});

const pressed = { kind: "distance", meaning: "depth over which the soil presses, from where its pressure begins", range: [0.1, 6] } as const;
const wet = { kind: "distance", meaning: "depth below the water", range: [0, 6] } as const;
const growth = { K_h: horizontal, gamma: unitWeight, gamma_b: buoyant, z_0: crack, z_w: waterDepth, p_0: first, u: pressed, w: wet } as const;

export const pressedDepth = formula({
  id: "wall.pressed-depth",
  text: "u = max(z - z_0, 0 * z)",
  source: "geometry",
  symbols: { u: pressed, z: depth, z_0: crack },
});

export const wetDepth = formula({
  id: "wall.wet-depth",
  text: "w = max(z - z_w, 0 * z)",
  source: "geometry",
  symbols: { w: wet, z: depth, z_w: waterDepth },
});

export const soilPressure = formula({
  id: "wall.soil-pressure",
  text: "p = z_0 < z_w ? p_0 + K_h * (gamma * u - (gamma - gamma_b) * w) : p_0 + K_h * gamma_b * u",
  source: "straight growth with the weight of soil above, buoyant below the water",
  symbols: { p: { kind: "pressure", meaning: "pressure of the soil and of the load on it, horizontal" }, ...growth },
});

export const soilShear = formula({
  id: "wall.soil-shear",
  text: "V_s = z_0 < z_w ? p_0 * u + K_h * (gamma * u^2 - (gamma - gamma_b) * w^2) / 2 : p_0 * u + K_h * gamma_b * u^2 / 2",
  source: "statics: the pressure summed up over the depth",
  symbols: { V_s: shear, ...growth },
});

export const soilMoment = formula({
  id: "wall.soil-moment",
  text: "M_s = z_0 < z_w ? p_0 * u^2 / 2 + K_h * (gamma * u^3 - (gamma - gamma_b) * w^3) / 6 : p_0 * u^2 / 2 + K_h * gamma_b * u^3 / 6",
  source: "statics: the shear summed up over the depth",
  symbols: { M_s: moment, ...growth },
});

export const waterShear = formula({
  id: "wall.water-shear",
  text: "V_w = gamma_w * w^2 / 2",
  source: "hydrostatic pressure",
  symbols: { V_w: { ...shear, meaning: "push of the water above that depth" }, w: wet },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const waterMoment = formula({
  id: "wall.water-moment",
  text: "M_w = gamma_w * w^3 / 6",
  source: "hydrostatic pressure",
  symbols: { M_w: { ...moment, meaning: "moment of the water's push about that depth" }, w: wet },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const wholeShear = formula({
  id: "wall.earth-shear",
  text: "V_e = V_s + V_w",
  source: "statics",
  symbols: { V_e: { ...shear, meaning: "push of soil, load and water above that depth, per length of wall" }, V_s: shear, V_w: shear },
});

export const wholeMoment = formula({
  id: "wall.earth-moment",
  text: "M_e = M_s + M_w",
  source: "statics",
  symbols: { M_e: { ...moment, meaning: "moment of soil, load and water about that depth, per length of wall" }, M_s: moment, M_w: moment },
});

export const downDrag = formula({
  id: "wall.down-drag",
  text: "P_v = V_s * K_v / K_h",
  source: "statics: the soil's pressure slopes down by the slope of the ground (Rankine) or the friction of the wall (Coulomb)",
  symbols: { P_v: { ...shear, meaning: "vertical part of the soil's push, per length of wall" }, V_s: shear, K_v: { ...horizontal, meaning: "vertical part of the earth pressure coefficient" }, K_h: horizontal },
});

/** Formulas of the pressure, for the list of a check. */
export const earthFormulas = [...coefficientFormulas, buoyantSoil, cohesionPull, crackDepth, firstPressure, pressedDepth, wetDepth, soilShear, soilMoment, waterShear, waterMoment, wholeShear, wholeMoment] as const;

/** Reads the fill behind a wall; call it only where the wall holds some back. */
export function readEarth(support: Support, gather: Gather): EarthInputs {
  const fill = gather.needs(support.foundation?.fields.fill, "soil held back by the wall (`fill`)");
  const method = (fill && gather.needs(fill.method, "method of the earth pressure (at rest, Rankine, Coulomb or equivalent fluid)")) ?? "at rest";
  const gamma = gather.need(fill?.["unit weight"], "unit weight of the soil held back");
  const byAngle = method !== "equivalent fluid";
  const phi = byAngle ? gather.need(fill?.["friction angle"], "friction angle of the soil held back") : (gather.may(fill?.["friction angle"]) ?? 0);
  const delta = method === "Coulomb" ? gather.need(fill?.["wall friction"], "wall friction of the soil held back, for Coulomb's method") : 0;
  const fluid = byAngle ? 0 : gather.need(fill?.["equivalent fluid"], "equivalent fluid weight of the soil held back");
  const slope = gather.may(fill?.slope) ?? 0;
  const surcharge = gather.need(fill?.surcharge, "surcharge on the soil held back (0 psf where nothing can stand there)");
  const drained = gather.needs(fill?.drained, "whether a drain keeps water from the back of the wall (`drained`)");
  const water = drained === false ? gather.need(fill?.water, "depth of the water behind the wall") : undefined;
  if (drained === true && fill?.water) gather.block("the wall is drained and has water behind it: correct `drained` or leave out `water`");
  const beta = slopeToAngle.value({ m: slope });
  if (byAngle && method !== "at rest" && slope > 0 && !(beta < phi)) gather.block("the ground behind the wall is as steep as its friction angle, and active pressure has no value: flatten the slope");
  if (method === "Coulomb" && delta > phi) gather.block("the wall friction is larger than the friction angle of the soil: reduce it");
  if (!byAngle && fluid >= gamma) gather.block("the equivalent fluid is as heavy as the soil itself: give the drained weight, or another method with the water stated");
  if (!byAngle && drained === false) gather.block("an equivalent fluid weight goes with drained soil: drain the wall, or name another method");
  if (!byAngle && slope > 0) gather.block("an equivalent fluid weight holds for the slope it was given for: choose Rankine or Coulomb for sloping ground");
  const cohesion = gather.may(fill?.cohesion) ?? 0;
  return { method, phi, delta, slope, fluid, gamma, saturated: gather.may(fill?.["saturated weight"]) ?? gamma, cohesion, surcharge, water, shaking: gather.may(fill?.["seismic coefficient"]) };
}

/** Reach of a footing that is only the rounding of its widths, m. */
const rounding = 1e-6;

/**
 * The soil as it presses on the plane through the end of a heel. Soil lies on both sides of that plane, so that the friction of the wall, which makes
 * Coulomb's pressure smaller, does not act on it: there it is Rankine's, which slopes with the ground; cohesion stays out, as by Coulomb.
 */
export function beyondHeel(inputs: EarthInputs, heel: number, calc: Calc): EarthInputs {
  if (inputs.method !== "Coulomb" || !(heel > rounding)) return inputs;
  calc.note("The friction of the wall does not act on a plane in the soil at the end of the heel: the pressure there is found by Rankine's method.");
  return { ...inputs, method: "Rankine", cohesion: 0 };
}

/** The coefficient by the method named, and what goes with it. */
export function earthOf(inputs: EarthInputs, calc: Calc): Earth {
  const { method, phi, delta, gamma } = inputs;
  const beta = inputs.slope > 0 ? calc(slopeToAngle, { m: inputs.slope }) : 0;
  let K: number;
  let omega = 0;
  if (method === "Rankine") {
    K = calc(rankine, { phi, beta });
    omega = beta;
  } else if (method === "Coulomb") {
    K = calc(coulomb, { phi, delta, beta });
    omega = delta;
  } else if (method === "at rest") K = calc(atRest, { phi, beta });
  else K = calc(fluidCoefficient, { G: inputs.fluid, gamma });
  const K_h = omega > 0 ? calc(acrossPart, { K, omega }) : K;
  const K_v = omega > 0 ? calc(downPart, { K, omega }) : 0;
  const counts = method === "Rankine" && inputs.slope === 0 && inputs.cohesion > 0;
  if (inputs.cohesion > 0 && !counts) calc.note("Cohesion takes pressure off by Rankine's method on level ground alone: it is not counted here.");
  const gamma_b = inputs.water === undefined ? gamma : calc(buoyantSoil, { gamma_sat: inputs.saturated });
  return { K_h, K_v, gamma, gamma_b, q: inputs.surcharge, p_c: counts ? calc(cohesionPull, { c: inputs.cohesion, K_h }) : 0 };
}

/** What presses above one depth, per meter of wall, without load factor. */
export interface Push {
  /** N/m. */
  readonly shear: number;
  /** About that depth, N·m per m. */
  readonly moment: number;
  /** Of the soil alone, N/m. */
  readonly soil: number;
}

/** Shear and moment at depth `z` below the top of the soil; `z_w` the depth of the water, at or below `z` where there is none. */
export function pushAbove({ K_h, gamma, gamma_b, q, p_c }: Earth, z: number, z_w: number, calc: Calc): Push {
  const z_0 = calc(crackDepth, { K_h, q, p_c, gamma, gamma_b, z_w });
  const p_0 = calc(firstPressure, { K_h, q, p_c });
  const u = calc(pressedDepth, { z, z_0 });
  const w = calc(wetDepth, { z, z_w });
  const args = { K_h, gamma, gamma_b, z_0, z_w, p_0, u, w };
  const V_s = calc(soilShear, args);
  const M_s = calc(soilMoment, args);
  if (w <= 0) return { shear: V_s, moment: M_s, soil: V_s };
  const V_e = calc(wholeShear, { V_s, V_w: calc(waterShear, { w }) });
  return { shear: V_e, moment: calc(wholeMoment, { M_s, M_w: calc(waterMoment, { w }) }), soil: V_s };
}

/** Pressure of soil, load and water at depth `z`, Pa. */
export function pressureAt(earth: Earth, z: number, z_w: number, calc: Calc): { readonly soil: number; readonly depthInWater: number } {
  const { K_h, gamma, gamma_b, q, p_c } = earth;
  const z_0 = calc(crackDepth, { K_h, q, p_c, gamma, gamma_b, z_w });
  const w = calc(wetDepth, { z, z_w });
  return { soil: calc(soilPressure, { K_h, gamma, gamma_b, z_0, z_w, p_0: calc(firstPressure, { K_h, q, p_c }), u: calc(pressedDepth, { z, z_0 }), w }), depthInWater: w };
}

/** Water no deeper than this matters: where a drain keeps it out, it stands at the depth asked for. */
export const waterFor = ({ water }: EarthInputs, z: number): number => (water === undefined || water > z ? z : water);
