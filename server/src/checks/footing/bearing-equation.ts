/** The general bearing capacity equation for a footing with eccentric, inclined load: factors, shape, depth, inclination, effective area. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

const phi = { kind: "angle", meaning: "angle of internal friction", field: "ground.*.friction angle", range: [0.05, 0.75] } as const;
const general = "general bearing capacity equation of foundation textbooks";
const factor = (meaning: string) => ({ kind: "ratio", meaning }) as const;
const sides = {
  B_e: { kind: "length", meaning: "shorter side of the effective area" },
  L_e: { kind: "length", meaning: "longer side of the effective area" },
} as const;
const N_q = factor("bearing capacity factor of the soil above the underside");
const N_c = factor("bearing capacity factor of cohesion");
const pressure = (meaning: string) => ({ kind: "pressure", meaning }) as const;

export const factorQ = formula({
  id: "footing.factor-q",
  text: "N_q = exp(pi * tan(phi)) * tan(q + phi / 2)^2",
  source: `${general}; Prandtl and Reissner`,
  symbols: { N_q, phi },
  constants: { q: "45 deg" },
});

export const factorC = formula({
  id: "footing.factor-c",
  text: "N_c = (N_q - 1) / tan(phi)",
  source: `${general}; Prandtl`,
  symbols: { N_c, N_q: { ...N_q, range: [1.5, 60] }, phi },
});

export const factorCUndrained = formula({
  id: "footing.factor-c-undrained",
  text: "N_c = pi + 2",
  source: `${general}; Prandtl, without friction`,
  symbols: { N_c },
});

export const factorGamma = formula({
  id: "footing.factor-gamma",
  text: "N_g = 2 * (N_q + 1) * tan(phi)",
  source: "Vesic, 1973",
  symbols: { N_g: factor("bearing capacity factor of the soil below the underside"), N_q, phi },
});

export const effectiveSide = formula({
  id: "footing.effective-side",
  text: "b_e = b - 2 * abs(M) / N",
  source: "Meyerhof, 1953: effective area, the load on its middle",
  symbols: { b_e: { kind: "length", meaning: "effective side of the pad" }, b: { kind: "length", meaning: "side of the pad" }, M: { kind: "moment", meaning: "moment in its direction" }, N: { kind: "force", meaning: "vertical force on the ground" } },
});

export const overburden = formula({
  id: "footing.overburden",
  text: "q_0 = gamma * d - gamma_w * h_w",
  source: "statics: effective stress at the level of the underside",
  symbols: {
    q_0: pressure("effective stress beside the footing at its underside"),
    gamma: { kind: "unitWeight", meaning: "unit weight of the soil", field: "ground.*.unit weight" },
    d: { kind: "distance", meaning: "depth of the underside", field: "foundations.*.depth" },
    h_w: { kind: "distance", meaning: "height of the water above the underside" },
  },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const belowUnit = formula({
  id: "footing.unit-weight-below",
  text: "gamma_b = gamma - gamma_w * min(max(1 - (z_w - d) / B, 0), 1)",
  source: `${general}: between buoyant at the underside and full one width below it`,
  symbols: {
    gamma_b: { kind: "unitWeight", meaning: "unit weight of the soil below the underside" },
    gamma: { kind: "unitWeight", meaning: "unit weight of the soil", field: "ground.*.unit weight" },
    z_w: { kind: "distance", meaning: "depth of the water below grade", field: "ground.*.water table" },
    d: { kind: "distance", meaning: "depth of the underside", field: "foundations.*.depth" },
    B: { kind: "length", meaning: "shorter side of the pad" },
  },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const shapeC = formula({
  id: "footing.shape-c",
  text: "F_cs = 1 + B_e / L_e * N_q / N_c",
  source: "De Beer, 1970",
  symbols: { F_cs: factor("shape factor of cohesion"), ...sides, N_q, N_c },
});

export const shapeQ = formula({
  id: "footing.shape-q",
  text: "F_qs = 1 + B_e / L_e * tan(phi)",
  source: "De Beer, 1970",
  symbols: { F_qs: factor("shape factor of the soil above"), ...sides, phi },
});

export const shapeGamma = formula({
  id: "footing.shape-gamma",
  text: "F_gs = 1 - 0.4 * B_e / L_e",
  source: "De Beer, 1970",
  symbols: { F_gs: factor("shape factor of the soil below"), ...sides },
});

export const depthRatio = formula({
  id: "footing.depth-ratio",
  text: "k_d = d <= B ? d / B : atan(d / B) / one",
  source: "Hansen, 1970",
  symbols: { k_d: factor("relative depth"), d: { kind: "distance", meaning: "depth of the underside", field: "foundations.*.depth" }, B: { kind: "length", meaning: "shorter side of the pad" } },
  constants: { one: "1 rad" },
});

export const depthQ = formula({
  id: "footing.depth-q",
  text: "F_qd = 1 + 2 * tan(phi) * (1 - sin(phi))^2 * k_d",
  source: "Hansen, 1970",
  symbols: { F_qd: factor("depth factor of the soil above"), phi, k_d: factor("relative depth") },
});

export const depthC = formula({
  id: "footing.depth-c",
  text: "F_cd = F_qd - (1 - F_qd) / (N_c * tan(phi))",
  source: "Hansen, 1970",
  symbols: { F_cd: factor("depth factor of cohesion"), phi, F_qd: factor("depth factor of the soil above"), N_c },
});

export const depthCUndrained = formula({
  id: "footing.depth-c-undrained",
  text: "F_cd = 1 + 0.4 * k_d",
  source: "Hansen, 1970, without friction",
  symbols: { F_cd: factor("depth factor of cohesion"), k_d: factor("relative depth") },
});

export const inclinationQ = formula({
  id: "footing.inclination-q",
  text: "F_i = (1 - atan(V / N) / right)^2",
  source: "Meyerhof, 1963",
  symbols: { F_i: factor("inclination factor of cohesion and of the soil above"), V: { kind: "force", meaning: "push, resultant of both directions" }, N: { kind: "force", meaning: "vertical force on the ground" } },
  constants: { right: "90 deg" },
});

export const inclinationGamma = formula({
  id: "footing.inclination-gamma",
  text: "F_gi = max(1 - atan(V / N) / phi, 0)^2",
  source: "Meyerhof, 1963",
  symbols: { F_gi: factor("inclination factor of the soil below"), phi, V: { kind: "force", meaning: "push, resultant of both directions" }, N: { kind: "force", meaning: "vertical force on the ground" } },
});

export const ultimatePressure = formula({
  id: "footing.ultimate-pressure",
  text: "q_u = c * N_c * F_cs * F_cd * F_i + q_0 * N_q * F_qs * F_qd * F_i + 0.5 * gamma_b * B_e * N_g * F_gs * F_gi",
  source: general,
  symbols: {
    q_u: pressure("ultimate bearing pressure on the effective area"),
    c: { kind: "pressure", meaning: "cohesion", field: "ground.*.cohesion" },
    N_c,
    F_cs: factor("shape factor of cohesion"),
    F_cd: factor("depth factor of cohesion"),
    F_i: factor("inclination factor of cohesion and of the soil above"),
    q_0: pressure("effective stress beside the footing at its underside"),
    N_q,
    F_qs: factor("shape factor of the soil above"),
    F_qd: factor("depth factor of the soil above"),
    gamma_b: { kind: "unitWeight", meaning: "unit weight of the soil below the underside" },
    B_e: sides.B_e,
    N_g: factor("bearing capacity factor of the soil below the underside"),
    F_gs: factor("shape factor of the soil below"),
    F_gi: factor("inclination factor of the soil below"),
  },
});

export interface BearingSoil {
  readonly frictionAngle: number;
  readonly cohesion: number;
  readonly unitWeight: number;
  /** Depth of the water below grade, m, where known. */
  readonly waterTable: number | undefined;
}

export interface BearingLoad {
  /** Sides of the pad; its effective sides, shorter first; m. */
  readonly B: number;
  readonly B_e: number;
  readonly L_e: number;
  readonly depth: number;
  /** Height of the water above the underside, m. */
  readonly waterHeight: number;
  readonly N: number;
  readonly V: number;
}

/** Ultimate bearing pressure on the effective area, Pa. */
export function ultimateBearing(soil: BearingSoil, load: BearingLoad, calc: Calc): number {
  const { frictionAngle: phi, unitWeight: gamma } = soil;
  const { B, B_e, L_e, depth: d, N, V } = load;
  const N_q = calc(factorQ, { phi });
  const hasFriction = phi > 0;
  if (!hasFriction) calc.note("No friction angle: the soil is taken as undrained, with its cohesion alone.");
  const N_c = hasFriction ? calc(factorC, { phi, N_q }) : calc(factorCUndrained, {});
  const N_g = calc(factorGamma, { phi, N_q });
  const k_d = calc(depthRatio, { d, B });
  const F_qd = calc(depthQ, { phi, k_d });
  const gamma_b = soil.waterTable === undefined ? gamma : calc(belowUnit, { gamma, z_w: soil.waterTable, d, B });
  return calc(ultimatePressure, {
    c: soil.cohesion,
    N_c,
    F_cs: calc(shapeC, { B_e, L_e, N_q, N_c }),
    F_cd: hasFriction ? calc(depthC, { phi, F_qd, N_c }) : calc(depthCUndrained, { k_d }),
    F_i: calc(inclinationQ, { V, N }),
    q_0: calc(overburden, { gamma, d, h_w: load.waterHeight }),
    N_q,
    F_qs: calc(shapeQ, { B_e, L_e, phi }),
    F_qd,
    gamma_b,
    B_e,
    N_g,
    F_gs: calc(shapeGamma, { B_e, L_e }),
    F_gi: hasFriction ? calc(inclinationGamma, { phi, V, N }) : 1,
  });
}

export const equationFormulas = [factorQ, factorC, factorCUndrained, factorGamma, effectiveSide, overburden, belowUnit, shapeC, shapeQ, shapeGamma, depthRatio, depthQ, depthC, depthCUndrained, inclinationQ, inclinationGamma, ultimatePressure] as const;
