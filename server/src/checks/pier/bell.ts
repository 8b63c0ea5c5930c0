/** The bell at the foot of a round pier: its size and weight, and the soil straight above it or in the cone that is lifted with it. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

/** Sides that slope from the shaft out to its diameter at the underside. */
export interface Bell {
  readonly diameter: number;
  readonly height: number;
}

const D = { kind: "length", meaning: "diameter of the shaft", field: "foundations.*.diameter" } as const;
const D_b = { kind: "length", meaning: "diameter of the bell at the underside", field: "foundations.*.bell.diameter", range: [1.2, 2.5] } as const;
const V_b = { kind: "volume", meaning: "volume of the bell outside the shaft" } as const;
const d = { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" } as const;
const z_w = { kind: "distance", meaning: "depth of the water below grade", field: "ground.*.water table", range: [0, 3] } as const;
const gamma_s = { kind: "unitWeight", meaning: "unit weight of the soil", field: "ground.*.unit weight" } as const;
const theta = { kind: "angle", meaning: "angle of the cone from the vertical", field: "ground.*.cone angle", range: [0.1, 1] } as const;
const W_s = { kind: "force", meaning: "weight of the soil lifted with the bell, buoyant below the water" } as const;
const gamma_w = "62.4 lbf/ft^3";

export const bellVolume = formula({
  id: "pier.bell-volume",
  text: "V_b = pi / 12 * h_b * (D_b^2 + D_b * D + D^2) - pi / 4 * D^2 * h_b",
  source: "geometry: a frustum less the shaft in it",
  symbols: { V_b, h_b: { kind: "length", meaning: "height of the bell", field: "foundations.*.bell.height" }, D_b, D: { ...D, range: [0.3, 1] } },
});

export const bellWeight = formula({ id: "pier.bell-weight", text: "W_b = gamma_c * V_b", source: "statics", symbols: { W_b: { kind: "force", meaning: "weight of the bell" }, V_b }, constants: { gamma_c: "150 lbf/ft^3" } });

export const buoyantBell = formula({
  id: "pier.buoyant-bell",
  text: "W_b = (gamma_c - gamma_w) * V_b",
  source: "statics: the whole bell taken as standing in water",
  symbols: { W_b: { kind: "force", meaning: "weight of the bell" }, V_b },
  constants: { gamma_c: "150 lbf/ft^3", gamma_w },
});

export const withBell = formula({
  id: "pier.with-bell",
  text: "W_p = W + W_b",
  source: "statics",
  symbols: { W_p: { kind: "force", meaning: "weight of pier and bell" }, W: { kind: "force", meaning: "weight of the shaft" }, W_b: { kind: "force", meaning: "weight of the bell" } },
});

export const bellArea = formula({ id: "pier.bell-area", text: "A_b = pi * D_b^2 / 4", source: "geometry", symbols: { A_b: { kind: "planArea", meaning: "area of the underside" }, D_b } });

export const prismAbove = formula({
  id: "pier.soil-prism",
  text: "W_s = gamma_s * (pi / 4 * (D_b^2 - D^2) * d - V_b) - gamma_w * max(pi / 4 * (D_b^2 - D^2) * (d - min(z_w, d)) - V_b, 0 * V_b)",
  source: "statics: the soil straight above the bell; common practice, no source",
  symbols: { W_s, D_b, D: { ...D, range: [0.3, 1] }, gamma_s: { ...gamma_s, range: [1.5e4, 2e4] }, d: { ...d, range: [2, 6] }, z_w, V_b: { ...V_b, range: [0.1, 0.3] } },
  constants: { gamma_w },
});

export const coneAt = formula({
  id: "pier.soil-cone-volume",
  text: "V_c = pi * h * (D_b^2 / 4 + D_b / 2 * h * tan(theta) + (h * tan(theta))^2 / 3)",
  source: "geometry: a frustum that widens upward from the edge of the bell",
  symbols: { V_c: { kind: "volume", meaning: "volume of the cone up to a height above the underside" }, h: { kind: "distance", meaning: "height above the underside" }, D_b, theta },
});

export const coneWeight = formula({
  id: "pier.soil-cone",
  text: "W_s = gamma_s * (V_c - pi / 4 * D^2 * d - V_b) - gamma_w * max(V_w - pi / 4 * D^2 * (d - min(z_w, d)) - V_b, 0 * V_b)",
  source: "statics: weight of the cone of soil above the bell; common practice, no source",
  symbols: {
    W_s,
    gamma_s: { ...gamma_s, range: [1.5e4, 2e4] },
    V_c: { kind: "volume", meaning: "volume of the cone up to grade", range: [20, 60] },
    D: { ...D, range: [0.3, 1] },
    d: { ...d, range: [2, 6] },
    V_b: { ...V_b, range: [0.1, 0.3] },
    V_w: { kind: "volume", meaning: "volume of the cone below the water", range: [0, 10] },
    z_w,
  },
  constants: { gamma_w },
});

export const heightInWater = formula({
  id: "pier.height-in-water",
  text: "h = d - min(z_w, d)",
  source: "geometry",
  symbols: { h: { kind: "distance", meaning: "height of the water above the underside" }, d, z_w },
});

export const leastNothing = formula({
  id: "pier.soil-at-least-nothing",
  text: "W_s = max(W_c, 0 * abs(W_c))",
  source: "the soil cannot lift the bell",
  symbols: { W_s, W_c: { kind: "force", meaning: "weight of the soil by its volumes", range: [-1e4, 1e5] } },
});

export const belowFrost = formula({
  id: "pier.depth-below-frost",
  text: "d_t = d - z_f",
  source: "geometry",
  symbols: { d_t: { kind: "distance", meaning: "depth of the underside below the frost" }, d: { ...d, range: [3, 10] }, z_f: { kind: "distance", meaning: "frost depth", field: "site.frost depth", range: [0.1, 2] } },
});

export const waterBelowFrost = formula({
  id: "pier.water-below-frost",
  text: "z_t = max(z_w - z_f, 0 * z_f)",
  source: "geometry",
  symbols: { z_t: { kind: "distance", meaning: "depth of the water below the frost" }, z_w: { ...z_w, range: [0, 5] }, z_f: { kind: "distance", meaning: "frost depth", field: "site.frost depth", range: [0.1, 2] } },
});

export const coneWidth = formula({
  id: "pier.soil-cone-width",
  text: "b_c = D_b + 2 * d * tan(theta)",
  source: "geometry",
  symbols: { b_c: { kind: "distance", meaning: "width of the cone at grade" }, D_b, d, theta },
});

export function readBell(support: Support, gather: Gather, isSquare: boolean): Bell | undefined {
  const pier = support.foundation?.fields;
  const stated = pier?.bell?.value;
  if (!stated) return undefined;
  if (isSquare) gather.block("a bell is looked at under a round pier alone: give the pier a diameter, or leave the bell out");
  const bell = { diameter: gather.need(stated.diameter, "diameter of the bell"), height: gather.need(stated.height, "height of the bell") };
  if (pier?.diameter && bell.diameter <= pier.diameter.value) gather.block("the bell is no wider than its pier: give it a larger diameter, or leave it out");
  if (pier?.depth && bell.height >= pier.depth.value) gather.block("the bell reaches up to grade: give it less height, or deepen the pier");
  return bell;
}

/** Volume of the bell outside the shaft, m³, and its weight, N; `water` only where water may take weight away. */
export function bellOf({ diameter: D_b, height: h_b }: Bell, D: number, isWet: boolean, calc: Calc): { readonly volume: number; readonly weight: number } {
  const V_b = calc(bellVolume, { h_b, D_b, D });
  return { volume: V_b, weight: calc(isWet ? buoyantBell : bellWeight, { V_b }) };
}

export const bellFormulas = [bellVolume, bellWeight, buoyantBell] as const;
