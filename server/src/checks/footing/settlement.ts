/**
 * The ground under a pad gives as it is loaded, and the column goes down with it. In the field a roof that sags to one column and cladding that tears.
 *
 * Immediate settlement of a rigid rectangle on an elastic half-space, by the vertical stiffness of Gazetas 1991 (from memory); a square comes out within 1 %
 * of the rigid circle of its area. Only where the modulus of the ground and a limit are stated: no code gives either.
 */
import { formula } from "../../formula/declare.js";
import { check, weigh } from "../contract.js";
import { type FootingBody, isFooting, readFooting } from "./body.js";
import { atUnderside, undersideFormulas } from "./forces.js";

const G = { kind: "pressure", meaning: "shear modulus of the ground" } as const;
const nu = { kind: "ratio", meaning: "Poisson's ratio of the ground", field: "ground.*.poisson ratio" } as const;

export const shearModulus = formula({
  id: "footing.shear-modulus",
  text: "G = E / (2 * (1 + nu))",
  source: "elasticity",
  symbols: { G, E: { kind: "pressure", meaning: "modulus of elasticity of the ground", field: "ground.*.elastic modulus" }, nu },
});

export const immediateSettlement = formula({
  id: "footing.immediate-settlement",
  text: "s_i = max(N, 0 * N) * (1 - nu) / (G * max(b, c) * (0.73 + 1.54 * (min(b, c) / max(b, c))^0.75))",
  source: "Gazetas 1991, rigid rectangle on an elastic half-space (from memory)",
  symbols: {
    s_i: { kind: "length", meaning: "immediate settlement" },
    N: { kind: "force", meaning: "vertical force on the ground" },
    nu: { ...nu, range: [0, 0.5] },
    G,
    b: { kind: "length", meaning: "pad along x", field: "foundations.*.width" },
    c: { kind: "length", meaning: "pad along y", field: "foundations.*.length" },
  },
});

interface SettlementInputs extends FootingBody {
  readonly modulus: number;
  readonly poisson: number;
  readonly limit: number;
}

export const footingSettlement = check({
  id: "footing.settlement",
  title: "Settlement of the pad",
  link: "footing",
  wholePad: true,
  level: "allowable",
  clause: "Gazetas 1991 (from memory); the limit is the notebook's, no code limit",
  fails: "The ground gives under the pad, and the column goes down with it.",
  seen: "A roof that sags to one column, gutters that drain the wrong way.",
  range:
    "Immediate and elastic: a rigid pad on one deep soil of one modulus, all of its load at once, from the weight of concrete and soil on, nothing taken off for the soil that was dug out or for its depth. " +
    "Consolidation of clay, creep, collapse, water, layers, neighbors, tilt and the difference from one column to the next are not in it.",
  formulas: [...undersideFormulas, shearModulus, immediateSettlement],
  applies: (support) => isFooting(support) && support.foundation?.fields["settlement limit"] !== undefined,
  inputs: (support, gather): SettlementInputs => {
    const ground = support.ground?.fields;
    if (ground?.kind?.value === "rock") gather.block("the pad stands on rock, whose settlement is not worked out");
    if (ground?.layers) gather.block("the ground is in layers, and settlement is worked out for one soil alone: have it found by a geotechnical engineer");
    return {
      ...readFooting(support, gather),
      modulus: gather.need(ground?.["elastic modulus"], "elastic modulus of the ground, from the report"),
      poisson: gather.need(ground?.["poisson ratio"], "Poisson's ratio of the ground (`poisson ratio`)"),
      limit: gather.need(support.foundation?.fields["settlement limit"], "settlement limit of the pad"),
    };
  },
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { N } = atUnderside(inputs, demand, "by factor", calc);
    const G = calc(shearModulus, { E: inputs.modulus, nu: inputs.poisson });
    return weigh(calc(immediateSettlement, { N, nu: inputs.poisson, G, b: inputs.width, c: inputs.length }), inputs.limit, "length");
  },
  advise: (_inputs, outcome, say) => `the pad settles by ${say.show(outcome.demand, "length")} as it is loaded; ${say.show(outcome.capacity, "length")} is the limit. Widen the pad, or improve the ground.`,
});
