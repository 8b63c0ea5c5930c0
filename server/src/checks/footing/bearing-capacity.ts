/**
 * The ground shears out from under the footing along a curved surface. In the field one side of the pad has sunk and the ground beside it has
 * heaved.
 *
 * General bearing capacity equation with Vesic's N-gamma, De Beer's shape, Hansen's depth and Meyerhof's inclination factors on Meyerhof's
 * effective area; the factor of safety is the report's. Only where a friction angle or a cohesion is stated.
 */
import { formula } from "../../formula/declare.js";
import { check, unchecked, weigh } from "../contract.js";
import { shearResultant } from "../pier/grade-forces.js";
import { type FootingBody, isFooting, readFooting } from "./body.js";
import { effectiveSide, equationFormulas, type BearingSoil, ultimateBearing } from "./bearing-equation.js";
import { atUnderside, undersideFormulas } from "./forces.js";

export const effectivePressure = formula({
  id: "footing.effective-pressure",
  text: "q_e = N / (B_e * L_e)",
  source: "Meyerhof, 1953: even pressure on the effective area",
  symbols: {
    q_e: { kind: "pressure", meaning: "pressure on the effective area" },
    N: { kind: "force", meaning: "vertical force on the ground" },
    B_e: { kind: "length", meaning: "shorter side of the effective area" },
    L_e: { kind: "length", meaning: "longer side of the effective area" },
  },
});

export const safePressure = formula({
  id: "footing.safe-pressure",
  text: "q_a = q_u / FS",
  source: "factor of safety as stated",
  symbols: {
    q_a: { kind: "pressure", meaning: "allowable pressure on the effective area" },
    q_u: { kind: "pressure", meaning: "ultimate bearing pressure on the effective area" },
    FS: { kind: "ratio", meaning: "factor of safety", field: "ground.*.bearing safety" },
  },
});

export interface CapacityInputs extends FootingBody {
  readonly soil: BearingSoil;
  readonly safety: number;
}

export const bearingCapacity = check({
  id: "footing.bearing-capacity",
  title: "Bearing capacity of the ground",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "IBC 2021 1806.2 (values by investigation); general bearing capacity equation of foundation textbooks",
  fails: "The ground shears out from under the footing along a curved surface.",
  seen: "One side of the pad sunk, and the ground beside it heaved.",
  range:
    "One uniform soil, level ground, gross pressure. Depth factors with the full width of the pad. The soil beside the footing is counted down to its underside with the unit weight of the ground. Not for layered or soft sensitive soils, slopes or rock. Settlement is not checked, and it often governs.",
  formulas: [...undersideFormulas, shearResultant, ...equationFormulas, effectivePressure, safePressure],
  applies: (support) => isFooting(support) && (support.ground?.fields["friction angle"] ?? support.ground?.fields.cohesion) !== undefined,
  inputs: (support, gather): CapacityInputs => {
    const ground = support.ground?.fields;
    return {
      ...readFooting(support, gather),
      soil: {
        frictionAngle: gather.may(ground?.["friction angle"]) ?? 0,
        cohesion: gather.may(ground?.cohesion) ?? 0,
        unitWeight: gather.need(ground?.["unit weight"], "unit weight of the ground"),
        waterTable: gather.may(ground?.["water table"]),
      },
      safety: gather.need(ground?.["bearing safety"], "factor of safety on the bearing capacity (`bearing safety` of the ground), from the report"),
    };
  },
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { width, length, soil } = inputs;
    const { N, M_x, M_y } = atUnderside(inputs, demand, "by factor", calc);
    const V = calc(shearResultant, { V_x: demand.base.Vx, V_y: demand.base.Vy });
    const isIdle = N <= 0 && M_x === 0 && M_y === 0 && V === 0;
    if (N <= 0 && !isIdle) return unchecked("there is no net load down on the footing, and it has moment or push to carry: make it heavier until it stands");
    const load = isIdle ? 1 : N;
    const e_x = calc(effectiveSide, { b: width, M: isIdle ? 0 : M_y, N: load });
    const e_y = calc(effectiveSide, { b: length, M: isIdle ? 0 : M_x, N: load });
    if (!(e_x > 0 && e_y > 0)) return unchecked("the load lies on or outside the edge of the pad, and no effective area is left: widen the pad or make it heavier");
    const [B_e, L_e] = e_x <= e_y ? [e_x, e_y] : [e_y, e_x];
    const q_u = ultimateBearing(soil, { B: width <= length ? width : length, B_e, L_e, depth: inputs.depth, waterHeight: inputs.waterHeight, N: load, V }, calc);
    const q_a = calc(safePressure, { q_u, FS: inputs.safety });
    return weigh(isIdle ? 0 : calc(effectivePressure, { N, B_e, L_e }), q_a, "pressure");
  },
  advise: (inputs, outcome, say) =>
    `the effective area bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed by the bearing capacity equation over ${inputs.safety}. Widen the pad or set it deeper.`,
});
