/** What holds a wall against sliding: along its underside, and before its footing and key. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { cohesionForce, frictionForce, type Grip, readGrip } from "../footing/sliding.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import type { WallBody } from "./body.js";
import { rankinePassive } from "./coefficients.js";

const run = { kind: "distance", meaning: "length of wall that acts with the post" } as const;
const depth = { kind: "distance", meaning: "depth of the underside below the lower ground", field: "foundations.*.depth", range: [0.5, 3] } as const;
const key = { kind: "length", meaning: "depth of the key below the footing", field: "foundations.*.key.depth" } as const;
const top = { kind: "distance", meaning: "depth from which the soil before the wall counts", range: [0, 0.5] } as const;

export const baseFriction = formula({
  id: "wall.base-friction",
  text: "R_f = max(N, 0 * N) * tan(2 / 3 * phi_g) + 2 / 3 * c_g * r_c * B * L_r",
  source: "two thirds of the ground's friction angle and cohesion along the base; Das, Principles of Foundation Engineering, section 8.5",
  symbols: {
    R_f: { kind: "force", meaning: "friction and adhesion along the underside" },
    N: { kind: "force", meaning: "vertical force on the ground, down positive", range: [-1e5, 1e5] },
    phi_g: { kind: "angle", meaning: "friction angle of the ground", field: "ground.*.friction angle", range: [0, 0.7] },
    c_g: { kind: "pressure", meaning: "cohesion of the ground", field: "ground.*.cohesion" },
    r_c: { kind: "ratio", meaning: "part of the underside in contact" },
    B: { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" },
    L_r: run,
  },
});

export const allowableFace = formula({
  id: "wall.allowable-face",
  text: "R_p = p * ((d + h_k)^2 - z_i^2) / 2 * L_r",
  source: "IBC 2021 Table 1806.2: lateral bearing grows with the depth",
  symbols: { R_p: { kind: "force", meaning: "what the ground before the wall and its key holds" }, p: { kind: "pressurePerDepth", meaning: "allowable lateral bearing per depth", field: "ground.*.lateral bearing" }, d: depth, h_k: key, z_i: top, L_r: run },
});

export const passiveFace = formula({
  id: "wall.passive-face",
  text: "R_p = (K_p * gamma_g * ((d + h_k)^2 - z_i^2) / 2 + 2 * c_g * sqrt(K_p) * (d + h_k - z_i)) * L_r",
  source: "Rankine's passive pressure; Das, Principles of Foundation Engineering, section 8.5",
  symbols: {
    R_p: { kind: "force", meaning: "what the ground before the wall and its key holds" },
    K_p: { kind: "ratio", meaning: "passive pressure coefficient" },
    gamma_g: { kind: "unitWeight", meaning: "unit weight of the ground", field: "ground.*.unit weight" },
    c_g: { kind: "pressure", meaning: "cohesion of the ground", field: "ground.*.cohesion" },
    d: depth,
    h_k: key,
    z_i: top,
    L_r: run,
  },
});

/** Strength of the ground by its friction angle and cohesion, or allowable values by its class. */
export type WallGrip = { readonly by: "strength"; readonly phi: number; readonly cohesion: number } | { readonly by: "allowable"; readonly grip: Grip };

export type Before = { readonly by: "passive"; readonly phi: number; readonly cohesion: number; readonly gamma: number } | { readonly by: "bearing"; readonly value: GroundValue } | undefined;

export function readWallGrip(support: Support, gather: Gather): WallGrip {
  const ground = support.ground?.fields;
  const phi = gather.may(ground?.["friction angle"]);
  const cohesion = gather.may(ground?.cohesion);
  if (ground?.kind?.value === "rock" || ground?.friction || (phi === undefined && cohesion === undefined)) return { by: "allowable", grip: readGrip(support, gather) };
  return { by: "strength", phi: phi ?? 0, cohesion: cohesion ?? 0 };
}

/** The ground before the wall: where its soil is compacted and tested, or where a key reaches below the footing into it. */
export function readBefore(support: Support, gather: Gather, body: WallBody): Before {
  if (!body.isSoilCounted && !(body.keyDepth > 0)) return undefined;
  const ground = support.ground?.fields;
  const phi = gather.may(ground?.["friction angle"]);
  if (ground?.kind?.value !== "rock" && phi !== undefined && !ground?.["lateral bearing"])
    return { by: "passive", phi, cohesion: gather.may(ground?.cohesion) ?? 0, gamma: gather.need(ground?.["unit weight"], "unit weight of the ground") };
  return { by: "bearing", value: groundValue(support, gather, ground?.["lateral bearing"], "lateral bearing", (soil) => soil.lateralPerDepth) };
}

/** Along the underside, N; `N_D` the dead load that rests, `N` all that presses, `r_c` the part in contact. */
export function gripOf(found: WallGrip, body: WallBody, forces: { readonly N: number; readonly N_D: number; readonly r_c: number }, calc: Calc): number {
  const { width: B, run: L_r } = body;
  if (found.by === "strength") return calc(baseFriction, { N: forces.N, phi_g: found.phi, c_g: found.cohesion, r_c: forces.r_c, B, L_r });
  const { grip } = found;
  calc.note(grip.from);
  if (grip.by === "friction") return calc(frictionForce, { mu: grip.mu, N_D: forces.N_D });
  return calc(cohesionForce, { c_s: grip.cohesion, r_c: forces.r_c, B, L: L_r, N_D: forces.N_D });
}

/** Before the wall, N. */
export function beforeOf(found: Before, body: WallBody & { readonly ignored: number }, calc: Calc): number {
  if (!found) return 0;
  const { depth: d, keyDepth: h_k, run: L_r } = body;
  if (!body.isSoilCounted) calc.note("The soil before the footing is loose, or not said to be compacted and tested: only the key is counted.");
  const z_i = body.isSoilCounted ? Math.min(body.ignored, d) : d;
  if (found.by === "passive") return calc(passiveFace, { K_p: calc(rankinePassive, { phi: found.phi }), gamma_g: found.gamma, c_g: found.cohesion, d, h_k, z_i, L_r });
  calc.note(found.value.from);
  return calc(allowableFace, { p: found.value.value, d, h_k, z_i, L_r });
}

export const gripFormulas = [baseFriction, frictionForce, cohesionForce, rankinePassive, passiveFace, allowableFace] as const;
