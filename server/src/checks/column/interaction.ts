/**
 * The column bends and carries axial force at once. A cantilevered column under an open roof takes the whole side load in bending at
 * its base, while the roof presses down or lifts; an overloaded one leans, and folds just above the base plate.
 *
 * AISC 360-22 H1.1 (compression) and H1.2 (tension), with D2, E3, E4, E7, F2, F3, F5, F6, F7, F8, and H3.2 or H3.3 where the column is twisted. Moments at the base and at the top come from one
 * combination; they are magnified for the axial force on the leaning column here, unless they come with second order in them.
 */
import type { Forces } from "../../actions/demand.js";
import { alphaOf } from "../../actions/second-order.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, unchecked, weigh, type Outcome } from "../contract.js";
import { allowableForce, allowableMoment, available, ofMembers, steelLevels, type SteelDemand } from "../steel-strength.js";
import { compressionFormulas, compressiveStrength, tensileDesignStrength } from "./compression.js";
import { axesOf, readColumn, type ColumnInputs } from "./member.js";
import { availableShear, shearAt, shearFormulas, shearStrength } from "./shear.js";
import { flexuralStrength, flexureFormulas, type FlexuralStrength } from "./strength.js";
import { addWarping, warpingFormulas } from "./warping.js";

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
  text: "B_2 = 1 / (1 - P_s / P_e)",
  source: "AISC 360-22 Appendix 8, Eq. A-8-6, for a column that steadies itself alone",
  symbols: {
    B_2: { kind: "ratio", meaning: "magnifier of the moments for the column's lean" },
    P_s: { kind: "force", meaning: "compression in the column when it gives way", range: [0, 4e5] },
    P_e: { kind: "force", meaning: "elastic buckling load at reduced stiffness", range: [5e5, 2e6] },
  },
});

export const axialAtGivingWay = formula({
  id: "column.axial-at-giving-way",
  text: "P_s = alpha * P_r",
  source: "AISC 360-22 C2.1(d) and Appendix 8: alpha of 1.0 with strength loads, 1.6 with allowable-stress ones",
  symbols: {
    P_s: { kind: "force", meaning: "compression in the column when it gives way" },
    alpha: { kind: "ratio", meaning: "from the loads of the combination to those the column gives way at", range: [1, 1.6] },
    P_r: { kind: "force", meaning: "compression in the column" },
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

export const plumbMoment = formula({
  id: "column.out-of-plumb-moment",
  text: "M_n = k_n * E * I * u_n / L^2",
  source: "slope deflection: 3 for one end that turns freely, 6 for none; a base that gives takes less, the safe side",
  symbols: {
    M_n: { kind: "moment", meaning: "moment at the ends of the column as its story moves out of plumb" },
    k_n: { kind: "number", meaning: "3 held against turning at one end, 6 at both" },
    I: { kind: "inertia", meaning: "second moment of area in that direction", field: "columns.*.section" },
    u_n: { kind: "length", meaning: "movement of the story by its notional loads" },
    L: { kind: "distance", meaning: "height of the column", field: "columns.*.height" },
  },
  constants: { E: "29000 ksi" },
});

export const withPlumbMoment = formula({
  id: "column.with-out-of-plumb-moment",
  text: "M_r = M + M_n",
  source: "AISC 360-22 C2.2b: in the direction that is worse, one at a time",
  symbols: {
    M_r: { kind: "moment", meaning: "required moment about one axis, columns out of plumb" },
    M: { kind: "moment", meaning: "required moment about it" },
    M_n: { kind: "moment", meaning: "moment as the story moves out of plumb" },
  },
});

const againstStrength = {
  P_r: { kind: "force", meaning: "required axial strength" },
  P_c: { kind: "force", meaning: "design axial strength" },
  M_rx: { kind: "moment", meaning: "required moment about the east axis" },
  M_ry: { kind: "moment", meaning: "required moment about the north axis" },
  M_cx: { kind: "moment", meaning: "design flexural strength about the east axis" },
  M_cy: { kind: "moment", meaning: "design flexural strength about the north axis" },
} as const;

export const interaction = formula({
  id: "column.interaction",
  text: "U = P_r / P_c >= 0.2 ? P_r / P_c + 8 / 9 * (M_rx / M_cx + M_ry / M_cy) : P_r / (2 * P_c) + (M_rx / M_cx + M_ry / M_cy)",
  source: "AISC 360-22 Eq. H1-1a and H1-1b",
  symbols: {
    U: { kind: "ratio", meaning: "axial force and bending against strength" },
    ...againstStrength,
  },
});

export const resultantMoment = formula({
  id: "column.resultant-moment",
  text: "M = sqrt(M_x^2 + M_y^2)",
  source: "statics: a round section is alike about every axis, so that both moments make one",
  symbols: { M: { kind: "moment", meaning: "both moments together" }, M_x: { kind: "moment", meaning: "required moment about the east axis" }, M_y: { kind: "moment", meaning: "required moment about the north axis" } },
});

export const withTorsion = formula({
  id: "column.interaction-with-torsion",
  text: "U = P_r / P_c + M_rx / M_cx + M_ry / M_cy + U_v^2",
  source: "AISC 360-22 Eq. H3-6, where torsion is more than a fifth of its strength; biaxial bending summed",
  symbols: {
    U: { kind: "ratio", meaning: "axial force, bending, shear and torsion against strength" },
    ...againstStrength,
    U_v: { kind: "ratio", meaning: "shear and torsion against strength" },
  },
});

export const torsionUse = formula({
  id: "column.torsion-use",
  text: "U_T = abs(T) / T_c",
  source: "AISC 360-22 H3.2",
  symbols: { U_T: { kind: "ratio", meaning: "torsion against its strength" }, T: { kind: "moment", meaning: "torsion" }, T_c: { kind: "moment", meaning: "design torsional strength" } },
});

/** Up to this share of its strength torsion is left out of the interaction, AISC 360-22 H3.2. */
const torsionLeftOut = 0.2;

function availableMoments(demand: SteelDemand, { x, y }: FlexuralStrength, calc: Calc): FlexuralStrength {
  const M_x = available(demand, x, allowableMoment, ofMembers, calc);
  return { x: M_x, y: x === y ? M_x : available(demand, y, allowableMoment, ofMembers, calc) };
}

/** Everything of one end set against strength. */
function together(inputs: ColumnInputs, demand: SteelDemand, forces: Forces, P_r: number, P_c: number, M_rx: number, M_ry: number, M_c: FlexuralStrength, calc: Calc): number {
  const isRound = inputs.shape === "round";
  const terms = { P_r, P_c, M_rx: isRound ? calc(resultantMoment, { M_x: M_rx, M_y: M_ry }) : M_rx, M_ry: isRound ? 0 : M_ry, M_cx: M_c.x, M_cy: M_c.y };
  const T = forces.Mz ?? 0;
  if (T !== 0 && inputs.shape === "W") return addWarping(inputs, demand, T, calc(interaction, terms), calc);
  if (T !== 0) {
    const strength = availableShear(demand, shearStrength(inputs, calc), calc);
    if (calc(torsionUse, { T, T_c: strength.T }) > torsionLeftOut) return calc(withTorsion, { ...terms, U_v: shearAt(inputs, strength, forces, calc) });
  }
  return calc(interaction, terms);
}

/** Between the effective length factor of a column held at both ends against turning, 1.2, and that of one held at one end, 2 and more. */
const heldAtBothBelow = 1.5;

/** Moment of a column as its story moves out of plumb; none where it stands on pins. */
const momentOutOfPlumb = (K: number, I: number, L: number, u_n: number, calc: Calc): number => (K <= 1 || u_n === 0 ? 0 : calc(plumbMoment, { k_n: K < heldAtBothBelow ? 6 : 3, I, u_n, L }));

/** The interaction at one end of the column, or an outcome that ends the check. */
function atOneEnd(inputs: ColumnInputs, demand: SteelDemand, forces: Forces, M_c: FlexuralStrength, calc: Calc): number | Outcome {
  const { magnified } = demand;
  const P_r = calc(axialSize, { P: forces.P });
  if (forces.P <= 0) {
    const P_c = available(demand, calc(tensileDesignStrength, { F_y: inputs.F_y, A: inputs.A }), allowableForce, ofMembers, calc);
    const M_rx = calc(magnifiedMoment, { B_2: 1, M: forces.Mx });
    const M_ry = calc(magnifiedMoment, { B_2: 1, M: forces.My });
    return together(inputs, demand, forces, P_r, P_c, M_rx, M_ry, M_c, calc);
  }
  const { aboutX, aboutY } = axesOf(inputs);
  // A sway along y bends the column about x.
  const P_ex = calc(elasticLoad, { I: aboutX.I, K: inputs.K_y, L: inputs.L });
  const P_ey = inputs.K_x === inputs.K_y && aboutX.I === aboutY.I ? P_ex : calc(elasticLoad, { I: aboutY.I, K: inputs.K_x, L: inputs.L });
  const least = P_ex <= P_ey ? P_ex : P_ey;
  const P_s = demand.level === "strength" ? P_r : calc(axialAtGivingWay, { alpha: alphaOf[demand.level], P_r });
  if (P_s >= least) {
    calc.note("The axial force reaches the elastic buckling load at reduced stiffness: the column is not stable.");
    return weigh(P_s, least, "force");
  }
  const B_2x = magnified ? 1 : calc(magnifier, { P_s, P_e: P_ex });
  const B_2y = magnified ? 1 : P_ex === P_ey ? B_2x : calc(magnifier, { P_s, P_e: P_ey });
  const P_c = available(demand, compressiveStrength(inputs, calc), allowableForce, ofMembers, calc);
  const M_rx = calc(magnifiedMoment, { B_2: B_2x, M: forces.Mx });
  const M_ry = calc(magnifiedMoment, { B_2: B_2y, M: forces.My });
  const { outOfPlumb } = demand;
  if (!outOfPlumb) return together(inputs, demand, forces, P_r, P_c, M_rx, M_ry, M_c, calc);
  calc.note("Nothing pushes sideways, or the story leans much: columns out of plumb, in the direction that is worse.");
  const M_nx = momentOutOfPlumb(inputs.K_y, aboutX.I, inputs.L, outOfPlumb.y, calc);
  const M_ny = momentOutOfPlumb(inputs.K_x, aboutY.I, inputs.L, outOfPlumb.x, calc);
  const alongY = together(inputs, demand, forces, P_r, P_c, calc(withPlumbMoment, { M: M_rx, M_n: M_nx }), M_ry, M_c, calc);
  const alongX = together(inputs, demand, forces, P_r, P_c, M_rx, calc(withPlumbMoment, { M: M_ry, M_n: M_ny }), M_c, calc);
  return Math.max(alongX, alongY);
}

export const columnInteraction = check({
  id: "column.interaction",
  title: "Bending and axial force in the column",
  link: "column",
  level: steelLevels,
  clause: "AISC 360-22 H1.1, H1.2, H3.2, H3.3 with D2, E3, E4, E7, F2, F3, F5, F6, F7, F8",
  fails: "The column's wall buckles or yields under bending and axial force together.",
  seen: "A cantilevered column leans for good after a storm; the wall dents on the pressed side just above the base plate.",
  range:
    "Hollow sections and W shapes without holes; design walls of 0.93 of nominal also for A1085, the safe side. The base is taken as rigid unless its stiffness against turning is stated (base rotation stiffness): then K of a cantilever grows with it, and a column held at its top as well counts as pinned at its base. A base that gives, and of which nothing is said, makes the column weaker and more flexible than is found here. " +
    "K goes by what holds the column against sway in each direction: 2.1 for a cantilever, 1.2 fixed at both ends, 1.0 in a braced bay. Under a roof the moments come with the second order of the whole story in them, columns that lean on others included; reactions given by hand are magnified here, by the column's own axial force at 0.8EI. By ASD strengths are R_n/Omega, and second order goes by 1.6 of the loads. The flanges of a twisted W bend against each other as if held at both ends. Where nothing pushes sideways, or a story leans much, the columns under a roof are taken as 1/500 out of plumb (notional loads, C2.2b); reactions given by hand are taken to have that in them. Second order of the twist is not in it.",
  formulas: [...new Set([...flexureFormulas, axialSize, tensileDesignStrength, magnifiedMoment, interaction, plumbMoment, withPlumbMoment, elasticLoad, magnifier, ...compressionFormulas, resultantMoment, torsionUse, ...shearFormulas, withTorsion, ...warpingFormulas, allowableForce, allowableMoment, axialAtGivingWay])],
  applies: (support) => support.column !== undefined,
  inputs: (support, gather) => readColumn(support, gather),
  fixedBy: (support) => support.column?.fields.section ?? support.column,
  evaluate: (inputs, demand, calc) => {
    const found = flexuralStrength(inputs, calc);
    if ("because" in found) return unchecked(found.because);
    const M_c = availableMoments(demand, found, calc);
    if (demand.magnified) calc.note("The moments come with the second order of the whole story in them, so that they are not magnified here.");
    calc.note("At the column base:");
    const base = atOneEnd(inputs, demand, demand.base, M_c, calc);
    if (typeof base !== "number") return base;
    calc.note("At the column top:");
    const top = atOneEnd(inputs, demand, demand.top, M_c, calc);
    if (typeof top !== "number") return top;
    return weigh(base >= top ? base : top, 1, "ratio");
  },
  advise: (inputs, outcome, say) =>
    outcome.quantity === "force"
      ? `Axial force ${say.show(outcome.demand, "force")}; the column is unstable from ${say.show(outcome.capacity, "force")} over ${say.show(inputs.L, "distance")}. Take a wider section or fix the column top.`
      : `${say.show(outcome.demand, "ratio")} times what ${inputs.section} holds over ${say.show(inputs.L, "distance")}. Take a thicker wall or a wider section, fix the column top, or add knee braces.`,
});
