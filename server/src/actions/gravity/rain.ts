/**
 * Rain that stands on a roof that can hold water when its primary drains are blocked: the depth up to the overflow, the head over the
 * overflow that the rain of the place needs, and from ASCE 7-22 on the depth added by the bending of the roof under the water. A roof that
 * drains freely over its edge holds none.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Roof } from "../../project/model.js";
import type { Wanted } from "../wanted.js";
import type { Edition } from "../edition.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofPlane } from "../roof-plane.js";
import { uniformCase } from "./vertical.js";

/** Depths of water, m. */
export interface HeldWater {
  readonly static: number;
  readonly hydraulic: number;
  /** From ASCE 7-22 on. */
  readonly ponding?: number;
}

const head = { static: { kind: "length", meaning: "depth of water up to the overflow", field: "roof.holds water.static head" }, hydraulic: { kind: "length", meaning: "head over the overflow", field: "roof.holds water.hydraulic head" } } as const;

export const rainLoad = formula({
  id: "actions.rain.load",
  text: "R = g_w * (d_s + d_h)",
  source: "ASCE 7-16 Eq. 8.3-1, ASCE 7-10 Eq. 8.3-1",
  symbols: { R: { kind: "pressure", meaning: "rain load on plan" }, d_s: head.static, d_h: head.hydraulic },
  constants: { g_w: "5.2 psf/inch" },
});

export const rainLoadWithPonding = formula({
  id: "actions.rain.load-with-ponding",
  text: "R = g_w * (d_s + d_h + d_p)",
  source: "ASCE 7-22 Eq. 8.2-1 (from memory)",
  symbols: {
    R: { kind: "pressure", meaning: "rain load on plan" },
    d_s: head.static,
    d_h: head.hydraulic,
    d_p: { kind: "length", meaning: "depth added by the bending of the roof", field: "roof.holds water.ponding head" },
  },
  constants: { g_w: "5.2 psf/inch" },
});

/** Rain load on plan, Pa. */
export const rainOn = (standard: Edition, water: HeldWater, calc: Calc): number =>
  standard === "ASCE 7-22"
    ? calc(rainLoadWithPonding, { d_s: water.static, d_h: water.hydraulic, d_p: water.ponding ?? NaN })
    : calc(rainLoad, { d_s: water.static, d_h: water.hydraulic });

export const rainCase = (standard: Edition, plane: RoofPlane, water: HeldWater): RoofCase =>
  uniformCase(plane, { id: "rain", type: "R", title: "rain held on the roof" }, `${standard} chapter 8`, (calc) => {
    calc.note("The water is taken to stand alike all over the roof.");
    return rainOn(standard, water, calc);
  });

/** The water a roof can hold, with what is missing noted; nothing where it holds none. */
export function readWater(roof: Roof, standard: Edition, wanted: Wanted): HeldWater | undefined {
  const held = roof["holds water"]?.value;
  if (!held) return undefined;
  return {
    static: wanted.need(held["static head"], "the static head of the water the roof holds"),
    hydraulic: wanted.need(held["hydraulic head"], "the hydraulic head of the water the roof holds"),
    ...(standard === "ASCE 7-22" ? { ponding: wanted.need(held["ponding head"], "the ponding head of the water the roof holds") } : {}),
  };
}
