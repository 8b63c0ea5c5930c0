/**
 * Frozen ground grips the side of the pedestal and lifts the footing as it swells, though the pad stands below the frost. In the field a light
 * canopy rises over some winters.
 *
 * Grip by the adfreeze stress of the notebook over the side in the frost depth, the pad's own side where it reaches up into it. Held by the dead load
 * with the factor of the combination and by compacted soil on the pad below the frost. Common practice, no source.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, weigh } from "../contract.js";
import { calculatedOnce } from "../once.js";
import { heldAgainstGrip, heldInFrost, heldWithoutColumn, isGripped } from "../pier/frost-grip.js";
import { bodyFormulas, type FootingBody, isFooting, pedestalAreaOf, readFooting, soilOverPad, weightsOf } from "./body.js";

const z_f = { kind: "distance", meaning: "frost depth", field: "site.frost depth" } as const;
const h_s = { kind: "distance", meaning: "height of the soil on the pad" } as const;
const p_p = { kind: "distance", meaning: "perimeter of the pedestal" } as const;

export const roundPedestalPerimeter = formula({
  id: "footing.round-pedestal-perimeter",
  text: "p_p = pi * D_p",
  source: "geometry",
  symbols: { p_p, D_p: { kind: "length", meaning: "diameter of the pedestal", field: "foundations.*.pedestal.diameter" } },
});

export const pedestalPerimeter = formula({
  id: "footing.pedestal-perimeter",
  text: "p_p = 2 * (c_x + c_y)",
  source: "geometry",
  symbols: {
    p_p,
    c_x: { kind: "length", meaning: "pedestal along x", field: "foundations.*.pedestal.width" },
    c_y: { kind: "length", meaning: "pedestal along y", field: "foundations.*.pedestal.length" },
  },
});

export const allPerimeters = formula({
  id: "footing.pedestal-perimeters",
  text: "p_p = n * p_1",
  source: "arithmetic",
  symbols: { p_p, n: { kind: "number", meaning: "columns on the pad" }, p_1: { kind: "distance", meaning: "perimeter of one pedestal" } },
});

export const footingGrip = formula({
  id: "footing.frost-grip",
  text: "F_g = tau_a * (p_p * min(z_f, h_s) + 2 * (B + L) * max(min(z_f, d) - h_s, 0 * d))",
  source: "statics with the adfreeze stress stated; common practice, no source",
  symbols: {
    F_g: { kind: "force", meaning: "lift of the frozen ground on the sides" },
    tau_a: { kind: "stress", meaning: "adfreeze stress", field: "ground.*.adfreeze stress" },
    p_p,
    z_f,
    h_s,
    B: { kind: "length", meaning: "pad along x", field: "foundations.*.width" },
    L: { kind: "length", meaning: "pad along y", field: "foundations.*.length" },
    d: { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" },
  },
});

export const thawedSoil = formula({
  id: "footing.soil-below-frost",
  text: "h_t = max(h_s - z_f, 0 * h_s)",
  source: "geometry: the soil in the frost depth lifts by itself",
  symbols: { h_t: { kind: "distance", meaning: "height of soil on the pad below the frost" }, h_s, z_f },
});

export interface FootingGripInputs extends FootingBody {
  readonly stress: number;
  readonly frost: number;
}

interface Found {
  readonly grip: number;
  readonly W_p: number;
  readonly W_s: number;
}

const found = calculatedOnce((inputs: FootingGripInputs, calc: Calc): Found => {
  const { pedestal, width: B, length: L, thickness: t, depth: d, soilHeight, frost, stress } = inputs;
  const p_p = pedestal.shape === "none" ? 0 : pedestal.shape === "round" ? calc(roundPedestalPerimeter, { D_p: pedestal.width }) : calc(pedestalPerimeter, { c_x: pedestal.width, c_y: pedestal.length });
  const all = pedestal.count === undefined ? p_p : calc(allPerimeters, { n: pedestal.count, p_1: p_p });
  const grip = calc(footingGrip, { tau_a: stress, p_p: all, z_f: frost, h_s: soilHeight, B, L, d });
  const { concrete } = weightsOf({ ...inputs, soilHeight: 0 }, "holds", calc);
  const thawed = calc(thawedSoil, { h_s: soilHeight, z_f: frost });
  if (!inputs.isSoilCounted) calc.note("The backfill is loose, or not said to be compacted and tested: the soil above the pad is not counted to hold it.");
  const W_s = inputs.isSoilCounted && thawed > 0 ? calc(soilOverPad, { B, L, A_p: pedestalAreaOf(inputs, calc), gamma_s: inputs.soilWeight, h_s: thawed, h_w: inputs.waterHeight, t }) : 0;
  return { grip, W_p: concrete, W_s };
});

export const footingFrostGrip = check({
  id: "footing.frost-grip",
  title: "Grip of frost on the footing",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "common practice, no source",
  fails: "Frozen ground lifts the footing by the side of its pedestal.",
  seen: "A light canopy that has risen over some winters though its pads stand below the frost.",
  range: "Where an adfreeze stress is stated for the ground. The whole side in the frost depth is gripped at once; a sleeve or a drained filling is said by a lower stress. Wind does not pull at the same time. Ground that freezes below the pad is not looked at here.",
  formulas: [...bodyFormulas, roundPedestalPerimeter, pedestalPerimeter, allPerimeters, footingGrip, thawedSoil, heldInFrost, heldWithoutColumn],
  applies: (support) => isFooting(support) && isGripped(support),
  inputs: (support, gather): FootingGripInputs => ({
    ...readFooting(support, gather),
    stress: gather.need(support.ground?.fields["adfreeze stress"], "adfreeze stress of the ground"),
    frost: gather.need(support.site["frost depth"], "frost depth of the site"),
  }),
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { grip, W_p, W_s } = found(inputs, calc);
    return weigh(grip, heldAgainstGrip({ W_p, W_s, R_s: 0 }, demand, calc), "force");
  },
  advise: (_inputs, outcome, say) =>
    `frost grips the sides with ${say.show(outcome.demand, "force")}; ${say.show(outcome.capacity, "force")} holds. Set the pad deeper under compacted soil, make the pedestal more slender, or sleeve it and drain it and state the stress that is left.`,
});
