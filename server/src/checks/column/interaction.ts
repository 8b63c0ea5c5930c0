/**
 * The column bends and carries axial force at once. A cantilevered column under an open roof takes the whole side load in bending at
 * its base, while the roof presses down or lifts; an overloaded one leans, and folds just above the base plate.
 *
 * AISC 360-22 H1.1 (compression) and H1.2 (tension), with E3, E7, F7 and D2. Moments at the base and at the top come from one
 * combination; they are magnified for the axial force on the leaning column here, unless they come with second order in them.
 */
import type { Demand, Forces } from "../../actions/demand.js";
import { findSteel } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, unchecked, weigh, type Gather, type Outcome } from "../contract.js";
import { compressiveDesignStrength, compressiveStrength, effectiveArea, effectiveWallWidth, elasticStress, flatWidth, type HssProperties, nominalStress, slendernessRatio, slenderWallLimit, tensileDesignStrength, wallElasticStress } from "./compression.js";
import { effectiveLengthFactor } from "./effective-length.js";
import { compactFlangeLimit, compactWebLimit, effectiveFlangeWidth, effectiveSectionModulus, flexuralDesignStrength, flexuralStrength, noncompactFlange, noncompactWeb, plasticMoment, slenderFlange, slenderFlangeLimit, slenderWebLimit } from "./flexure.js";

export interface ColumnInputs extends HssProperties {
  readonly section: string;
  readonly L: number;
  readonly K: number;
}

export const elasticLoad = formula({
  id: "column.elastic-load",
  text: "P_e = pi^2 * 0.8 * E * I / (K * L)^2",
  source: "AISC 360-22 Eq. A-8-5, with the stiffness reduced to 0.8EI by C2.3",
  symbols: {
    P_e: { kind: "force", meaning: "elastic buckling load at reduced stiffness" },
    I: { kind: "inertia", meaning: "second moment of area", field: "columns.*.section" },
    K: { kind: "ratio", meaning: "effective length factor", field: "columns.*.sway along x" },
    L: { kind: "distance", meaning: "height of the column", field: "columns.*.height" },
  },
  constants: { E: "29000 ksi" },
});

export const magnifier = formula({
  id: "column.magnifier",
  text: "B_2 = 1 / (1 - P_r / P_e)",
  source: "AISC 360-22 Appendix 8, Eq. A-8-6, for a column that steadies itself alone",
  symbols: {
    B_2: { kind: "ratio", meaning: "magnifier of the moments for the column's lean" },
    P_r: { kind: "force", meaning: "compression in the column", range: [0, 4e5] },
    P_e: { kind: "force", meaning: "elastic buckling load at reduced stiffness", range: [5e5, 2e6] },
  },
});

export const magnifiedMoment = formula({
  id: "column.magnified-moment",
  text: "M_r = B_2 * abs(M)",
  source: "AISC 360-22 Appendix 8, Eq. A-8-1",
  symbols: {
    M_r: { kind: "moment", meaning: "required moment about one axis" },
    B_2: { kind: "ratio", meaning: "magnifier of the moments for the column's lean" },
    M: { kind: "moment", meaning: "moment about one axis, first order" },
  },
});

export const axialSize = formula({
  id: "column.axial-size",
  text: "P_r = abs(P)",
  source: "AISC 360-22 H1",
  symbols: {
    P_r: { kind: "force", meaning: "required axial strength" },
    P: { kind: "force", meaning: "axial force, compression positive" },
  },
});

export const interaction = formula({
  id: "column.interaction",
  text: "U = P_r / P_c >= 0.2 ? P_r / P_c + 8 / 9 * (M_rx / M_c + M_ry / M_c) : P_r / (2 * P_c) + (M_rx / M_c + M_ry / M_c)",
  source: "AISC 360-22 Eq. H1-1a and H1-1b",
  symbols: {
    U: { kind: "ratio", meaning: "axial force and bending against strength" },
    P_r: { kind: "force", meaning: "required axial strength" },
    P_c: { kind: "force", meaning: "design axial strength" },
    M_rx: { kind: "moment", meaning: "required moment about the east axis" },
    M_ry: { kind: "moment", meaning: "required moment about the north axis" },
    M_c: { kind: "moment", meaning: "design flexural strength" },
  },
});

/** Reads the column of a support. */
export function readColumn(support: Support, gather: Gather): ColumnInputs {
  const fields = support.column?.fields;
  const section = gather.needs(fields?.section, "column section");
  const grade = gather.needs(fields?.grade, "column steel grade");
  const steel = grade === undefined ? undefined : findSteel(grade);
  if (steel && isMissing(steel)) gather.block(`${steel.problem}: its yield strength is missing`);
  return {
    section: section?.name ?? "",
    L: gather.need(fields?.height, "column height"),
    K: effectiveLengthFactor(fields, gather),
    B: section?.width ?? Number.NaN,
    t: section?.wall ?? Number.NaN,
    slenderness: section?.slenderness ?? Number.NaN,
    A: section?.area ?? Number.NaN,
    I: section?.inertia ?? Number.NaN,
    S: section?.sectionModulus ?? Number.NaN,
    Z: section?.plasticModulus ?? Number.NaN,
    r: section?.gyration ?? Number.NaN,
    F_y: steel && !isMissing(steel) ? steel.fy : Number.NaN,
  };
}

/** The interaction at one end of the column, or an outcome that ends the check. */
function atOneEnd(inputs: ColumnInputs, forces: Forces, magnified: Demand["magnified"], M_c: number, calc: Calc): number | Outcome {
  const P_r = calc(axialSize, { P: forces.P });
  if (forces.P <= 0) {
    const P_c = calc(tensileDesignStrength, { F_y: inputs.F_y, A: inputs.A });
    const M_rx = calc(magnifiedMoment, { B_2: 1, M: forces.Mx });
    const M_ry = calc(magnifiedMoment, { B_2: 1, M: forces.My });
    return calc(interaction, { P_r, P_c, M_rx, M_ry, M_c });
  }
  const P_e = calc(elasticLoad, { I: inputs.I, K: inputs.K, L: inputs.L });
  if (P_r >= P_e) {
    calc.note("The axial force reaches the elastic buckling load at reduced stiffness: the column is not stable.");
    return weigh(P_r, P_e, "force");
  }
  const B_2 = magnified ? 1 : calc(magnifier, { P_r, P_e });
  const P_c = compressiveStrength(inputs, inputs.K, inputs.L, calc);
  const M_rx = calc(magnifiedMoment, { B_2, M: forces.Mx });
  const M_ry = calc(magnifiedMoment, { B_2, M: forces.My });
  return calc(interaction, { P_r, P_c, M_rx, M_ry, M_c });
}

export const columnInteraction = check({
  id: "column.interaction",
  title: "Bending and axial force in the column",
  link: "column",
  level: "strength",
  clause: "AISC 360-22 H1.1, H1.2 with D2, E3, E7, F7",
  fails: "The column's wall buckles or yields under bending and axial force together.",
  seen: "A cantilevered column leans for good after a storm; the wall dents on the pressed side just above the base plate.",
  range:
    "Square hollow sections. The base is taken as rigid: the turning of the pier or footing below is not in it, and a base that gives makes the column weaker and more flexible. " +
    "K goes by what holds the column against sway, the worse of both directions: 2.1 for a cantilever, 1.2 fixed at both ends, 1.0 in a braced bay. Under a roof the moments come with the second order of the whole story in them, columns that lean on others included; reactions given by hand are magnified here, by the column's own axial force at 0.8EI. Notional loads, shear and torsion are not in it.",
  formulas: [plasticMoment, compactFlangeLimit, slenderFlangeLimit, noncompactFlange, flatWidth, effectiveFlangeWidth, effectiveSectionModulus, slenderFlange, compactWebLimit, slenderWebLimit, noncompactWeb, flexuralDesignStrength, axialSize, tensileDesignStrength, magnifiedMoment, interaction, elasticLoad, magnifier, slendernessRatio, elasticStress, nominalStress, slenderWallLimit, compressiveDesignStrength, wallElasticStress, effectiveWallWidth, effectiveArea],
  applies: (support) => support.column !== undefined,
  inputs: (support, gather) => readColumn(support, gather),
  fixedBy: (support) => support.column?.fields.section ?? support.column,
  evaluate: (inputs, demand, calc) => {
    const M_c = flexuralStrength(inputs, calc);
    if (M_c === undefined) return unchecked("the webs of this section are slender in bending, which this method leaves out; take a thicker wall");
    if (demand.magnified) calc.note("The moments come with the second order of the whole story in them, so that they are not magnified here.");
    calc.note("At the column base:");
    const base = atOneEnd(inputs, demand.base, demand.magnified, M_c, calc);
    if (typeof base !== "number") return base;
    calc.note("At the column top:");
    const top = atOneEnd(inputs, demand.top, demand.magnified, M_c, calc);
    if (typeof top !== "number") return top;
    return weigh(base >= top ? base : top, 1, "ratio");
  },
  advise: (inputs, outcome, say) =>
    outcome.quantity === "force"
      ? `Axial force ${say.show(outcome.demand, "force")}; the column is unstable from ${say.show(outcome.capacity, "force")} over ${say.show(inputs.L, "distance")}. Take a wider section or fix the column top.`
      : `${say.show(outcome.demand, "ratio")} of the strength of ${inputs.section} used over ${say.show(inputs.L, "distance")}. Take a thicker wall or a wider section, or fix the column top.`,
});
