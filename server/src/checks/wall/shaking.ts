/**
 * What an earthquake adds to a wall that holds soil back: the soil presses more (Mononobe and Okabe), and wall, footing and the soil on the heel are
 * thrown outward by their own weight. By the horizontal coefficient that is stated for the soil, as the geotechnical report gives it.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { calculatedOnce } from "../once.js";
import { heelPlane, stemWeight, stripWeight, type WallBody, weightsOf } from "./body.js";
import { coulomb, slopeToAngle } from "./coefficients.js";
import { beyondHeel, type EarthInputs } from "./earth.js";

const coefficient = { kind: "ratio", meaning: "earth pressure coefficient", range: [0.05, 0.9] } as const;
const shaken = { kind: "ratio", meaning: "horizontal seismic coefficient of the soil held back", field: "foundations.*.fill.seismic coefficient", range: [0, 0.3] } as const;
const psi = { kind: "angle", meaning: "angle by which the earthquake tilts the pull of gravity", range: [0, 0.2] } as const;
const phi = { kind: "angle", meaning: "angle of internal friction of the soil held back", field: "foundations.*.fill.friction angle", range: [0.5, 0.75] } as const;
const delta = { kind: "angle", meaning: "slope of the pressure below the horizontal: the wall friction by Coulomb, the slope of the ground by Rankine", range: [0, 0.4] } as const;
const beta = { kind: "angle", meaning: "slope of the ground behind the wall", field: "foundations.*.fill.slope", range: [0, 0.2] } as const;
const height = { kind: "distance", meaning: "height of the plane the soil presses on", range: [0.5, 6] } as const;
const run = { kind: "distance", meaning: "length of wall that acts with the post" } as const;
const push = { kind: "force", meaning: "what the earthquake adds to the push of the soil, horizontal" } as const;
const thrown = { kind: "force", meaning: "push of wall, footing and the soil on the heel by their own weight" } as const;
const part = (meaning: string) => ({ kind: "force", meaning }) as const;
const thickness = { kind: "length", meaning: "thickness of the strip footing", field: "foundations.*.footing.thickness" } as const;
const factor = { kind: "ratio", meaning: "factor of the earthquake in the combination" } as const;
const range = [-1e5, 1e5] as const;

export const shakeAngle = formula({ id: "wall.shake-angle", text: "psi = atan(k_h)", source: "statics: without a vertical part", symbols: { psi, k_h: shaken } });

export const mononobeOkabe = formula({
  id: "wall.mononobe-okabe",
  text: "K_AE = cos(phi - psi)^2 / (cos(psi) * cos(delta + psi) * (1 + sqrt(sin(phi + delta) * sin(phi - psi - beta) / (cos(delta + psi) * cos(beta))))^2)",
  source: "Mononobe (1929) and Okabe (1926), vertical back, without a vertical part (from memory)",
  symbols: { K_AE: { ...coefficient, meaning: "coefficient of the earth pressure while the soil shakes" }, phi, psi, delta, beta },
});

export const shakenPush = formula({
  id: "wall.shaken-push",
  text: "P_q = (K_AE - K) * cos(delta) * (gamma * H^2 / 2 + q * H) * L_r",
  source: "difference of the shaken and the still pressure on the same plane; a load on the ground shakes with it",
  symbols: {
    P_q: push,
    K_AE: { ...coefficient, range: [0.5, 0.9] },
    K: { ...coefficient, range: [0.1, 0.4] },
    delta,
    gamma: { kind: "unitWeight", meaning: "unit weight of the soil held back", field: "foundations.*.fill.unit weight" },
    H: height,
    q: { kind: "pressure", meaning: "load on the ground behind the wall", field: "foundations.*.fill.surcharge" },
    L_r: run,
  },
});

export const shakenMoment = formula({
  id: "wall.shaken-moment",
  text: "M_q = 0.6 * H * P_q",
  source: "Seed and Whitman (1970): what the earthquake adds acts at 0.6 of the height (from memory)",
  symbols: { M_q: { kind: "moment", meaning: "moment of that push about the underside" }, H: height, P_q: push },
});

const parts = {
  W_f: part("weight of the strip footing"),
  W_w: part("weight of the wall above its footing"),
  W_h: part("weight of the soil on the heel"),
  W_s: part("weight of the wedge of soil below the slope"),
} as const;

export const thrownPush = formula({ id: "wall.thrown-push", text: "F_i = k_h * (W_f + W_w + W_h + W_s)", source: "statics", symbols: { F_i: thrown, k_h: shaken, ...parts } });

export const thrownMoment = formula({
  id: "wall.thrown-moment",
  text: "M_i = k_h * (W_f * t_f / 2 + W_w * (t_f + h / 2) + W_h * (t_f + h_h / 2) + W_s * (t_f + h_h + m * b_h / 3))",
  source: "statics about the underside",
  symbols: {
    M_i: { kind: "moment", meaning: "moment of that push about the underside" },
    k_h: shaken,
    ...parts,
    t_f: thickness,
    h: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" },
    h_h: { kind: "distance", meaning: "height of the soil on the heel, at the wall" },
    m: { kind: "slope", meaning: "rise over run of the ground behind the wall", field: "foundations.*.fill.slope" },
    b_h: { kind: "length", meaning: "heel of the strip footing", field: "foundations.*.footing.heel" },
  },
});

export const pushWithQuake = formula({
  id: "wall.push-with-quake",
  text: "V_q = V_n + f_E * (P_q + F_i)",
  source: "statics",
  symbols: { V_q: { kind: "force", meaning: "push across the wall with what the earthquake adds", range }, V_n: { kind: "force", meaning: "push of the post across the wall, away from the fill positive", range }, f_E: factor, P_q: push, F_i: thrown },
});

export const turnWithQuake = formula({
  id: "wall.turn-with-quake",
  text: "M_t = M_n + f_E * (M_q + M_i)",
  source: "statics about the underside",
  symbols: {
    M_t: { kind: "moment", meaning: "moment at the underside with what the earthquake adds", range },
    M_n: { kind: "moment", meaning: "moment of the post at the underside, across the wall, away from the fill positive", range },
    f_E: factor,
    M_q: { kind: "moment", meaning: "moment of the soil's added push" },
    M_i: { kind: "moment", meaning: "moment of wall, footing and soil on the heel" },
  },
});

/** How the pressure slopes below the horizontal by its method. */
export const slopeOfPressure = ({ method, delta: wallFriction }: EarthInputs, ground: number): number => (method === "Coulomb" ? wallFriction : method === "Rankine" ? ground : 0);

/** Why what an earthquake adds to the push cannot be found; undefined where it can. */
export function shakingTrouble(earth: EarthInputs): string | undefined {
  const { method, phi: friction, water, shaking } = earth;
  if (shaking === undefined) return undefined;
  if (method === "at rest") return "soil at rest behind a wall that is held from giving way presses more in an earthquake than Mononobe and Okabe give, and that is not worked out: it comes from the geotechnical report";
  if (water !== undefined) return "soil that stands in water shakes in another way than Mononobe and Okabe have it: drain the wall";
  if (!(friction > 0)) return "what an earthquake adds to the push goes by the friction angle of the soil held back: state it beside the equivalent fluid";
  const ground = slopeToAngle.value({ m: earth.slope });
  if (mononobeOkabe.value({ phi: friction, psi: shakeAngle.value({ k_h: shaking }), delta: slopeOfPressure(earth, ground), beta: ground }) > 0) return undefined;
  return "so strong an earthquake brings the ground behind the wall down by itself, and its push has no value by Mononobe and Okabe: flatten the slope, or ask the geotechnical engineer";
}

export interface Quake {
  readonly P_q: number;
  readonly M_q: number;
  readonly F_i: number;
  readonly M_i: number;
}

/** What an earthquake adds, without load factor. */
export const quakeOn = calculatedOnce((body: WallBody & { readonly earth: EarthInputs }, calc: Calc): Quake => {
  const { run: L_r, base: t_f } = body;
  const earth = beyondHeel(body.earth, body.heel, calc);
  const k_h = earth.shaking ?? 0;
  const H = calc(heelPlane, { h_h: body.high, t_f, m: earth.slope, b_h: body.heel });
  const beta = earth.slope > 0 ? calc(slopeToAngle, { m: earth.slope }) : 0;
  const delta = slopeOfPressure(earth, beta);
  const psi = calc(shakeAngle, { k_h });
  const K_AE = calc(mononobeOkabe, { phi: earth.phi, psi, delta, beta });
  const K = calc(coulomb, { phi: earth.phi, delta, beta });
  const P_q = calc(shakenPush, { K_AE, K, delta, gamma: earth.gamma, H, q: earth.surcharge, L_r });
  const { heelSoil: W_h, wedge: W_s } = weightsOf(body, "holds with the fill", calc);
  const weights = { W_f: calc(stripWeight, { B: body.width, t_f, L_r }), W_w: calc(stemWeight, { t_w: body.thickness, h: body.height, L_r }), W_h, W_s };
  return {
    P_q,
    M_q: calc(shakenMoment, { H, P_q }),
    F_i: calc(thrownPush, { k_h, ...weights }),
    M_i: calc(thrownMoment, { k_h, ...weights, t_f, h: body.height, h_h: body.high, m: earth.slope, b_h: body.heel }),
  };
});

export const shakingFormulas = [shakeAngle, mononobeOkabe, shakenPush, shakenMoment, thrownPush, thrownMoment, pushWithQuake, turnWithQuake] as const;
