/**
 * Snow in a trough: it slides and is blown from the two high edges down into the valley, where it lies deepest. The rule is that of folded plates,
 * of which a single trough is taken as one fold; it adds a quarter and more to the even snow. The snow over the valley need not stand higher
 * than that over the edges.
 */
import { leastTroughSlope } from "../../catalog/snow.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isBelow } from "../../mechanics/compare.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { rectangleLoad } from "../gravity/vertical.js";
import type { TwoHalves } from "../roof-plane.js";
import { densityOf } from "./drift-height.js";
import { exposureFactor, flatSnow, type SnowSite } from "./editions.js";
import { eaveToRidge } from "./sloped.js";

const source = "ASCE 7-16 and 7-22 7.6.3, ASCE 7-10 7.6.3 (from memory), for folded plates; a single trough taken as one of them is common practice, no source";
const p_f = { kind: "pressure", meaning: "flat roof snow load" } as const;
const p_e = { kind: "pressure", meaning: "snow at the high edges" } as const;
const p_v = { kind: "pressure", meaning: "snow over the valley" } as const;
const W = { kind: "distance", meaning: "plan distance from edge to valley" } as const;
const c = { kind: "distance", meaning: "center of the snow of one half from the valley" } as const;

export const snowAtEdge = formula({ id: "snow.trough-edge", text: "p_e = 0.5 * p_f", source, symbols: { p_e, p_f } });

export const snowInValley = formula({
  id: "snow.trough-valley",
  text: "p_v = min(2 * p_f / C_e, p_e + gamma * s * W)",
  source,
  symbols: {
    p_v,
    p_f,
    C_e: { kind: "ratio", meaning: "exposure factor of the roof", field: "site.snow exposure", range: [0.8, 1.2] },
    p_e,
    gamma: { kind: "unitWeight", meaning: "weight of the snow" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
    W,
  },
});

export const troughMiddle = formula({
  id: "snow.trough-middle",
  text: "c = W / 3 * (p_v + 2 * p_e) / (p_v + p_e)",
  source: "statics of a load that falls off evenly from the valley",
  symbols: { c, W, p_v, p_e },
});

const band = formula({
  id: "snow.trough-band",
  text: "b_e = 2 * c",
  source: "statics: the band over which the same weight, spread evenly, has the same center",
  symbols: { b_e: { kind: "distance", meaning: "width of the band from the valley" }, c },
});

export const bandPressure = formula({
  id: "snow.trough-pressure",
  text: "p_b = (p_e + p_v) / 2 * W / b_e",
  source: "statics: the weight of one half, spread over the band",
  symbols: { p_b: { kind: "pressure", meaning: "snow spread over the band" }, p_e, p_v, W, b_e: { kind: "distance", meaning: "width of the band from the valley" } },
});

const fromValley = formula({
  id: "snow.from-valley",
  text: "t = W + u * b_e",
  source: "geometry: the valley is at the middle of the plan",
  symbols: { t: { kind: "distance", meaning: "edge of the band" }, W, u: { kind: "ratio", meaning: "1 toward the north or east, -1 toward the south or west", range: [-1, 1] }, b_e: { kind: "distance", meaning: "width of the band from the valley" } },
});

/** Whether the snow of a trough is taken to gather in its valley. */
export const gathers = (slope: number): boolean => !isBelow(slope, leastTroughSlope);

/** Snow gathered in the valley, on both halves. */
export function gatheredSnow(roof: TwoHalves, site: SnowSite, calc: Calc): readonly RoofLoad[] {
  const flat = flatSnow(site, calc);
  const half = eaveToRidge(roof, calc);
  const atEdge = calc(snowAtEdge, { p_f: flat });
  const inValley = calc(snowInValley, { p_f: flat, C_e: exposureFactor[site.terrain][site.roofExposure], p_e: atEdge, gamma: densityOf(site, calc), s: roof.slope, W: half });
  const b_e = calc(band, { c: calc(troughMiddle, { W: half, p_v: inValley, p_e: atEdge }) });
  const p_b = calc(bandPressure, { p_e: atEdge, p_v: inValley, W: half, b_e });
  return [-1, 1].map((u) => {
    const t = calc(fromValley, { W: half, u, b_e });
    const [low, high] = u < 0 ? [t, half] : [half, t];
    return rectangleLoad(roof, roof.ridge === "x" ? { x1: 0, x2: roof.length, y1: low, y2: high } : { x1: low, x2: high, y1: 0, y2: roof.width }, p_b, calc);
  });
}
