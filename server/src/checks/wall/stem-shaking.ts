/** What an earthquake adds above a section of a wall that holds soil back, per length of wall: the shaken soil presses more, and the wall is thrown outward by its own weight. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { coulomb, slopeToAngle } from "./coefficients.js";
import type { EarthInputs } from "./earth.js";
import { mononobeOkabe, shakeAngle, slopeOfPressure } from "./shaking.js";

const coefficient = { kind: "ratio", meaning: "earth pressure coefficient", range: [0.05, 0.9] } as const;
const soil = { kind: "distance", meaning: "height of the soil above the section, at the back of the wall" } as const;
const depth = { kind: "distance", meaning: "depth of the section below the top of the wall" } as const;
const pressed = { kind: "lineLoad", meaning: "what the earthquake adds to the push of the soil above the section" } as const;
const thrown = { kind: "lineLoad", meaning: "push of the wall above the section by its own weight" } as const;

export const shakenAbove = formula({
  id: "wall.shaken-above",
  text: "V_s = (K_AE - K) * cos(delta) * (gamma * z_s^2 / 2 + q * z_s)",
  source: "difference of the shaken and the still pressure; a load on the ground shakes with it",
  symbols: {
    V_s: pressed,
    K_AE: { ...coefficient, range: [0.5, 0.9] },
    K: { ...coefficient, range: [0.1, 0.4] },
    delta: { kind: "angle", meaning: "slope of the pressure below the horizontal", range: [0, 0.4] },
    gamma: { kind: "unitWeight", meaning: "unit weight of the soil held back", field: "foundations.*.fill.unit weight" },
    z_s: soil,
    q: { kind: "pressure", meaning: "load on the ground behind the wall", field: "foundations.*.fill.surcharge" },
  },
});

export const thrownAbove = formula({
  id: "wall.thrown-above",
  text: "V_i = k_h * gamma_c * t_w * z",
  source: "statics",
  symbols: { V_i: thrown, k_h: { kind: "ratio", meaning: "horizontal seismic coefficient", field: "foundations.*.fill.seismic coefficient", range: [0, 0.3] }, t_w: { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" }, z: depth },
  constants: { gamma_c: "150 lbf/ft^3" },
});

export const quakeShearAbove = formula({
  id: "wall.quake-shear",
  text: "V_q = V_s + V_i",
  source: "statics",
  symbols: { V_q: { kind: "lineLoad", meaning: "what the earthquake adds to the shear, per length of wall" }, V_s: pressed, V_i: thrown },
});

export const quakeMomentAbove = formula({
  id: "wall.quake-moment",
  text: "M_q = 0.6 * z_s * V_s + V_i * z / 2",
  source: "Seed and Whitman (1970): what the earthquake adds to the push acts at 0.6 of the height (from memory)",
  symbols: { M_q: { kind: "momentPerLength", meaning: "what the earthquake adds to the moment, per length of wall" }, z_s: soil, V_s: pressed, V_i: thrown, z: depth },
});

export const stemShakingFormulas = [shakeAngle, mononobeOkabe, shakenAbove, thrownAbove, quakeShearAbove, quakeMomentAbove] as const;

export interface StemQuake {
  /** N/m and N·m/m, without load factor. */
  readonly shear: number;
  readonly moment: number;
}

export function stemQuake(earth: EarthInputs & { readonly shaking: number }, z_s: number, z: number, t_w: number, calc: Calc): StemQuake {
  const { shaking: k_h, phi, gamma, surcharge: q } = earth;
  const beta = earth.slope > 0 ? calc(slopeToAngle, { m: earth.slope }) : 0;
  const delta = slopeOfPressure(earth, beta);
  const K_AE = calc(mononobeOkabe, { phi, psi: calc(shakeAngle, { k_h }), delta, beta });
  const V_s = calc(shakenAbove, { K_AE, K: calc(coulomb, { phi, delta, beta }), delta, gamma, z_s, q });
  const V_i = calc(thrownAbove, { k_h, t_w, z });
  return { shear: calc(quakeShearAbove, { V_s, V_i }), moment: calc(quakeMomentAbove, { z_s, V_s, V_i, z }) };
}
