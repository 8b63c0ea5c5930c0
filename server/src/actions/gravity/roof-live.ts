/**
 * Roof live load: people and material on the roof during upkeep. The usual 20 psf is reduced for the area one column carries and for the
 * slope, to no less than 12 psf. A smaller stated load (an awning of fabric) is taken as it is, and so is a larger one (a roof people
 * gather on), whose reduction follows other rules.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Edition } from "../edition.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofPlane } from "../roof-plane.js";
import type { OneSide } from "./one-side.js";
import { rectangleLoad, uniformCase } from "./vertical.js";

const clause = (standard: Edition): string => (standard === "ASCE 7-10" ? "ASCE 7-10 4.8.1" : `${standard} 4.8.2`);

export const tributaryArea = formula({
  id: "actions.roof-live.area",
  text: "A_t = k * l * w",
  source: "ASCE 7-22 4.8.2: plan area the column carries, from its share of a load alike all over the roof; the smallest of the columns, on the safe side",
  symbols: {
    A_t: { kind: "planArea", meaning: "tributary area" },
    k: { kind: "ratio", meaning: "smallest share of a column" },
    l: { kind: "distance", meaning: "length of the roof in plan", field: "roof.length" },
    w: { kind: "distance", meaning: "width of the roof in plan", field: "roof.width" },
  },
});

export const areaReduction = formula({
  id: "actions.roof-live.area-factor",
  text: "R_1 = A_t <= A_1 ? 1 : A_t >= A_2 ? 0.6 : 1.2 - A_t / A_3",
  source: "ASCE 7-22 4.8.2, the same in 7-16 and 7-10",
  symbols: {
    R_1: { kind: "ratio", meaning: "reduction by area" },
    A_t: { kind: "planArea", meaning: "tributary area", range: [5, 100] },
  },
  constants: { A_1: "200 ft^2", A_2: "600 ft^2", A_3: "1000 ft^2" },
});

export const slopeReduction = formula({
  id: "actions.roof-live.slope-factor",
  text: "R_2 = 12 * s <= 4 ? 1 : 12 * s >= 12 ? 0.6 : 1.2 - 0.05 * 12 * s",
  source: "ASCE 7-22 4.8.2, F = 12 s inches of rise per foot; the same in 7-16 and 7-10",
  symbols: {
    R_2: { kind: "ratio", meaning: "reduction by slope" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope", range: [0, 1.5] },
  },
});

export const roofLive = formula({
  id: "actions.roof-live.load",
  text: "L_r = L_o > 1.001 * L_u ? L_o : min(L_o, max(L_m, L_o * R_1 * R_2))",
  source: "ASCE 7-22 4.8.2 for the usual roof of Table 4.3-1, between 12 and 20 psf; the same in 7-16 and 7-10",
  symbols: {
    L_r: { kind: "pressure", meaning: "roof live load on plan" },
    L_o: { kind: "pressure", meaning: "roof live load before reduction", field: "roof.live", range: [100, 2000] },
    R_1: { kind: "ratio", meaning: "reduction by area" },
    R_2: { kind: "ratio", meaning: "reduction by slope" },
  },
  constants: { L_u: "20 psf", L_m: "12 psf" },
});

/** Roof live load on plan, Pa. `share` is the smallest share any column has of a uniform load. */
export function roofLiveLoad(plane: RoofPlane, live: number, share: number, calc: Calc): number {
  const A_t = calc(tributaryArea, { k: share, l: plane.length, w: plane.width });
  const R_1 = calc(areaReduction, { A_t });
  const R_2 = calc(slopeReduction, { s: plane.slope });
  return calc(roofLive, { L_o: live, R_1, R_2 });
}

/** Roof live load on one side of a single line of columns, none on the other. */
export const roofLiveOnOneSide = (standard: Edition, plane: RoofPlane, live: number, sides: readonly OneSide[], share: (calc: Calc) => number): readonly RoofCase[] =>
  sides.map(({ toward, there }) => ({
    loadCase: { id: `roof-live/one-side/${toward}`, type: "Lr", title: `roof live load ${toward} of the columns alone` },
    source: `${clause(standard)}; IBC 2021 1607.14.1 (from memory) asks for alternate spans where the load is reduced below 20 psf, common practice otherwise`,
    loads: (calc) => [rectangleLoad(plane, there, roofLiveLoad(plane, live, share(calc), calc), calc)],
  }));

export const roofLiveCase = (standard: Edition, plane: RoofPlane, live: number, share: (calc: Calc) => number): RoofCase =>
  uniformCase(plane, { id: "roof-live", type: "Lr", title: "roof live load" }, clause(standard), (calc) => roofLiveLoad(plane, live, share(calc), calc));
