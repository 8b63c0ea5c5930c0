/**
 * The footing is pulled out of the ground: the wind under the roof lifts more than the concrete and the soil on it weigh. In the field the
 * column has risen with its footing, and the soil about it is broken in a ring.
 *
 * Weight times the dead load factor of the combination (ASCE 7-22 2.4.1), buoyant below the water. Beyond the soil straight above the pad either
 * the cone of soil lifted with it, by its weight, or allowable friction on the sides of the soil above it; never both. Common practice.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { netUplift } from "../pier/uplift.js";
import { neighborDistance } from "../rock/block.js";
import { deadFactor } from "../site/dead-factor.js";
import { bodyFormulas, type FootingBody, isFooting, pedestalAreaOf, readFooting, weightsOf } from "./body.js";

const width = { kind: "length", meaning: "pad along x", field: "foundations.*.width" } as const;
const length = { kind: "length", meaning: "pad along y", field: "foundations.*.length" } as const;
const angle = { kind: "angle", meaning: "angle of the cone from the vertical", field: "ground.*.cone angle", range: [0.1, 1] } as const;
const height = { kind: "distance", meaning: "height above the pad" } as const;

export const coneVolume = formula({
  id: "footing.cone-volume",
  text: "V_c = B * L * h + (B + L) * h^2 * tan(theta) + 4 / 3 * h^3 * tan(theta)^2",
  source: "geometry: frustum of a pyramid with sloping sides; for a square pad D/3 (A1 + A2 + sqrt(A1 A2))",
  symbols: { V_c: { kind: "volume", meaning: "volume between the pad and that height, sides sloping outward" }, B: width, L: length, h: height, theta: angle },
});

export const coneOfSoil = formula({
  id: "footing.cone-weight",
  text: "W_s = gamma_s * (V_c - A_p * h_s) - gamma_w * (V_w - A_p * h_ws)",
  source: "statics: weight of the cone of soil less the pedestal in it and the water it displaces; common practice, no source",
  symbols: {
    W_s: { kind: "force", meaning: "weight of the cone of soil above the pad" },
    gamma_s: { kind: "unitWeight", meaning: "unit weight of the soil above the pad", field: "foundations.*.backfill weight" },
    V_c: { kind: "volume", meaning: "volume of the cone" },
    A_p: { kind: "planArea", meaning: "area of the pedestal in plan" },
    h_s: { kind: "distance", meaning: "height of the soil on the pad" },
    V_w: { kind: "volume", meaning: "volume of the cone below the water" },
    h_ws: { kind: "distance", meaning: "height of the water above the pad" },
  },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const waterOnPad = formula({
  id: "footing.water-on-pad",
  text: "h_ws = min(max(h_w - t, 0 * t), h_s)",
  source: "geometry",
  symbols: {
    h_ws: { kind: "distance", meaning: "height of the water above the pad" },
    h_w: { kind: "distance", meaning: "height of the water above the underside" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    h_s: { kind: "distance", meaning: "height of the soil on the pad" },
  },
});

export const coneReach = formula({
  id: "footing.cone-width",
  text: "b_c = max(B, L) + 2 * h_s * tan(theta)",
  source: "geometry",
  symbols: { b_c: { kind: "distance", meaning: "width of the cone at grade" }, B: width, L: length, h_s: { kind: "distance", meaning: "height of the soil on the pad" }, theta: angle },
});

export const sidesFriction = formula({
  id: "footing.side-friction",
  text: "R_s = f_s * 2 * (B + L) * max(h_s - z_s, 0 * h_s)",
  source: "statics: allowable friction on the sides of the soil above the pad, below the depth that freezes or is left out",
  symbols: {
    R_s: { kind: "force", meaning: "allowable friction on the sides" },
    f_s: { kind: "pressure", meaning: "allowable side resistance", field: "ground.*.side resistance" },
    B: width,
    L: length,
    h_s: { kind: "distance", meaning: "height of the soil on the pad" },
    z_s: { kind: "distance", meaning: "depth without side resistance", field: "foundations.*.ignored depth" },
  },
});

export const upliftHold = formula({
  id: "footing.uplift-resistance",
  text: "R_a = f_D * (W_c + W_s) + R_s",
  source: "ASCE 7-22 2.4.1; friction is already allowable",
  symbols: {
    R_a: { kind: "force", meaning: "allowable resistance to uplift" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W_c: { kind: "force", meaning: "weight of pad and pedestal" },
    W_s: { kind: "force", meaning: "weight of the soil that is lifted" },
    R_s: { kind: "force", meaning: "allowable friction on the sides" },
  },
});

export interface UpliftInputs extends FootingBody {
  readonly by: "weight" | "soil cone" | "side friction";
  readonly coneAngle: number;
  /** Allowable side resistance, Pa, and the depth without it, m. */
  readonly side: number;
  readonly withoutSide: number;
  readonly neighbors?: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number };
}

export function readUplift(support: Support, gather: Gather, place: number): UpliftInputs {
  const f = support.foundation?.fields;
  const ground = support.ground?.fields;
  const body = readFooting(support, gather);
  const by = gather.needs(f?.["held down by"], "what holds the footing down") ?? "weight";
  if (by !== "weight" && !body.isSoilCounted) gather.block(`a ${by} needs backfill that is compacted and tested: say so under \`backfill\`, or let the footing be held down by its weight`);
  const ignored = f?.["ignored depth"];
  const frost = support.site["frost depth"];
  const without = ignored && frost && frost.value > ignored.value ? frost : (ignored ?? frost);
  const here = support.places[place];
  const next = support.places[place + 1] ?? support.places[place - 1];
  return {
    ...body,
    by,
    coneAngle: by === "soil cone" ? gather.need(ground?.["cone angle"], "angle of the soil cone (`cone angle` of the ground)") : 0,
    side: by === "side friction" ? gather.need(ground?.["side resistance"], "allowable side resistance of the soil (`side resistance` of the ground)") : 0,
    withoutSide: by === "side friction" ? gather.need(without, "frost depth of the site, or the ignored depth of the footing") : 0,
    neighbors: by === "soil cone" && here && next ? { x1: here.x, y1: here.y, x2: next.x, y2: next.y } : undefined,
  };
}

export const footingUplift = check({
  id: "footing.uplift",
  title: "Uplift of the footing",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "ASCE 7-22 2.4.1",
  fails: "The pull of the roof is more than the footing and the soil it lifts weigh.",
  seen: "A column risen with its footing, and the soil about it broken in a ring.",
  range:
    "A pad that stands alone. The weight takes the factor of dead load of the combination and no further factor of safety. Soil above the pad counts where the backfill is compacted and tested. A cone that meets the one of the next column of its line is not worked out; other lines are not looked at. Moment goes into overturning. Grip of frozen soil on the sides is not checked.",
  formulas: [...bodyFormulas, neighborDistance, coneReach, coneVolume, waterOnPad, coneOfSoil, sidesFriction, upliftHold, netUplift],
  applies: isFooting,
  inputs: readUplift,
  fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { factor: f_D, note } = deadFactor(demand);
    const weights = weightsOf(inputs, "holds", calc);
    calc.note(note);
    let W_s = weights.soil;
    let R_s = 0;
    if (inputs.by === "soil cone" && inputs.soilHeight > 0) {
      const overlap = conesMeet(inputs, calc);
      if (overlap !== undefined) return unchecked(overlap);
      W_s = coneOf(inputs, calc);
    } else if (inputs.by === "side friction" && inputs.soilHeight > 0) {
      calc.note("Friction on the sides is counted beside the soil straight above the pad; a cone is not.");
      R_s = calc(sidesFriction, { f_s: inputs.side, B: inputs.width, L: inputs.length, h_s: inputs.soilHeight, z_s: inputs.withoutSide });
    }
    const capacity = calc(upliftHold, { f_D, W_c: weights.concrete, W_s, R_s });
    if (!(demand.base.P < 0)) return weigh(0, capacity, "force");
    return weigh(calc(netUplift, { P: demand.base.P }), capacity, "force");
  },
  advise: (_inputs, outcome, say) => `the pull is ${say.show(outcome.demand, "force")}; the footing and its soil hold ${say.show(outcome.capacity, "force")}, their weight reduced once, by the combination. Thicken or widen the pad, or set it deeper under compacted soil.`,
});

function conesMeet(inputs: UpliftInputs, calc: Calc): string | undefined {
  if (!inputs.neighbors) return undefined;
  const { x1: x_1, y1: y_1, x2: x_2, y2: y_2 } = inputs.neighbors;
  const spacing = calc(neighborDistance, { x_1, y_1, x_2, y_2 });
  const b_c = calc(coneReach, { B: inputs.width, L: inputs.length, h_s: inputs.soilHeight, theta: inputs.coneAngle });
  return spacing > 0 && isAbove(b_c, spacing) ? "the cones of soil of neighboring columns meet before grade, and the same soil would be counted twice: let the footing be held down by weight, or set the columns farther apart" : undefined;
}

function coneOf(inputs: UpliftInputs, calc: Calc): number {
  const { width: B, length: L, soilHeight: h_s, coneAngle: theta } = inputs;
  const V_c = calc(coneVolume, { B, L, h: h_s, theta });
  const h_ws = calc(waterOnPad, { h_w: inputs.waterHeight, t: inputs.thickness, h_s });
  const V_w = calc(coneVolume, { B, L, h: h_ws, theta });
  return calc(coneOfSoil, { gamma_s: inputs.soilWeight, V_c, A_p: pedestalAreaOf(inputs, calc), h_s, V_w, h_ws });
}
