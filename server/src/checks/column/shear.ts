/**
 * The column shears off or twists. It seldom governs in a tall column; it does in a short stub under a heavy roof, and in thin walls.
 * Twist comes with columns fixed at a roof that turns in plan, under wind that does not push through the middle of the columns.
 *
 * AISC 360-22 G2 and G6 (W), G4 (square and rectangular HSS), G5 (round HSS and pipe), H3.1 (torsion of HSS), H3.3 (of W). Shear and torsion
 * are added at once, the safe side; where torsion of an HSS is more than a fifth of its strength, H3.2 puts them beside axial force and bending.
 */
import type { Forces } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, weigh } from "../contract.js";
import { calculatedOnce } from "../once.js";
import { allowableForce, allowableMoment, available, ofMembers, steelLevels, type SteelDemand } from "../steel-strength.js";
import { flatOf, wallRatio, webFlat } from "./elements.js";
import { readColumn, type ColumnInputs } from "./member.js";
import { wideTorsionFormulas, wideTorsionStrength } from "./warping.js";

const steel = { E: "29000 ksi" } as const;
const F_y = { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } as const;
const t = { kind: "length", meaning: "design wall", field: "columns.*.section", range: [0.003, 0.012] } as const;
const side = { kind: "length", meaning: "outside size along the shear", field: "columns.*.section", range: [0.1, 0.3] } as const;
const wholeRatio = { kind: "ratio", meaning: "diameter over wall", field: "columns.*.section", range: [20, 150] } as const;

export const shearBuckling = formula({
  id: "column.shear-buckling",
  text: "C_v2 = lambda <= 1.10 * sqrt(k_v * E / F_y) ? 1 : lambda <= 1.37 * sqrt(k_v * E / F_y) ? 1.10 * sqrt(k_v * E / F_y) / lambda : 1.51 * k_v * E / (lambda^2 * F_y)",
  source: "AISC 360-22 Eq. G2-9 to G2-11",
  symbols: { C_v2: { kind: "ratio", meaning: "web shear buckling coefficient" }, lambda: { kind: "ratio", meaning: "clear height over thickness", range: [20, 150] }, k_v: { kind: "number", meaning: "plate shear buckling coefficient", range: [1.2, 5.34] }, F_y },
  constants: steel,
});

export const boxShear = formula({
  id: "column.box-shear",
  text: "V_c = phi_v * 0.6 * F_y * 2 * (B - 3 * t) * t * C_v2",
  source: "AISC 360-22 Eq. G4-1, phi_v = 0.90; web height is outside size less three walls",
  symbols: { V_c: { kind: "force", meaning: "design shear strength" }, F_y, B: side, t, C_v2: { kind: "ratio", meaning: "web shear buckling coefficient" } },
  constants: { phi_v: "0.90" },
});

export const roundShearStress = formula({
  id: "column.round-shear-stress",
  text: "F_cr = min(0.6 * F_y, max(1.60 * E / (sqrt(L / D) * lambda^1.25), 0.78 * E / lambda^1.5))",
  source: "AISC 360-22 Eq. G5-2a and G5-2b; the shear is even over the height",
  symbols: { F_cr: { kind: "steelStress", meaning: "critical shear stress" }, F_y, L: { kind: "distance", meaning: "height of the column", field: "columns.*.height" }, D: { kind: "length", meaning: "diameter", field: "columns.*.section" }, lambda: wholeRatio },
  constants: steel,
});

export const roundShear = formula({
  id: "column.round-shear",
  text: "V_c = phi_v * F_cr * A / 2",
  source: "AISC 360-22 Eq. G5-1, phi_v = 0.90",
  symbols: { V_c: { kind: "force", meaning: "design shear strength" }, F_cr: { kind: "steelStress", meaning: "critical shear stress" }, A: { kind: "area", meaning: "gross area", field: "columns.*.section" } },
  constants: { phi_v: "0.90" },
});

export const webShear = formula({
  id: "column.web-shear",
  text: "V_c = lambda <= 2.24 * sqrt(E / F_y) ? 1.00 * 0.6 * F_y * H * t_w : 0.90 * 0.6 * F_y * H * t_w * C_v2",
  source: "AISC 360-22 Eq. G2-1 with phi_v of 1.00 for the webs of G2.1(a) and 0.90 beyond, k_v = 5.34",
  symbols: {
    V_c: { kind: "force", meaning: "design shear strength along the web" },
    lambda: { kind: "ratio", meaning: "clear web over thickness", range: [20, 100] },
    F_y,
    H: { kind: "length", meaning: "depth of the section", field: "columns.*.section" },
    t_w: { kind: "length", meaning: "web", field: "columns.*.section" },
    C_v2: { kind: "ratio", meaning: "web shear buckling coefficient" },
  },
  constants: steel,
});

export const flangeShear = formula({
  id: "column.flange-shear",
  text: "V_c = phi_v * 0.6 * F_y * 2 * B * t_f * C_v2",
  source: "AISC 360-22 Eq. G6-1, phi_v = 0.90, both flanges, k_v = 1.2",
  symbols: { V_c: { kind: "force", meaning: "design shear strength along the flanges" }, F_y, B: { kind: "length", meaning: "flange width", field: "columns.*.section" }, t_f: { kind: "length", meaning: "flange thickness", field: "columns.*.section" }, C_v2: { kind: "ratio", meaning: "web shear buckling coefficient" } },
  constants: { phi_v: "0.90" },
});

export const boxTorsionStress = formula({
  id: "column.box-torsion-stress",
  text: "F_cr = lambda <= 2.45 * sqrt(E / F_y) ? 0.6 * F_y : lambda <= 3.07 * sqrt(E / F_y) ? 0.6 * F_y * 2.45 * sqrt(E / F_y) / lambda : 0.458 * pi^2 * E / lambda^2",
  source: "AISC 360-22 Eq. H3-3 to H3-5",
  symbols: { F_cr: { kind: "steelStress", meaning: "critical torsional stress" }, lambda: { kind: "ratio", meaning: "flat width over wall of the longer side", range: [20, 150] }, F_y },
  constants: steel,
});

export const boxTorsion = formula({
  id: "column.box-torsion",
  text: "T_c = phi_T * F_cr * (2 * (B - t) * (H - t) * t - 4.5 * (4 - pi) * t^3)",
  source: "AISC 360-22 Eq. H3-1 with C of the user note, phi_T = 0.90",
  symbols: { T_c: { kind: "moment", meaning: "design torsional strength" }, F_cr: { kind: "steelStress", meaning: "critical torsional stress" }, B: { ...side, meaning: "short side" }, H: { ...side, meaning: "long side" }, t },
  constants: { phi_T: "0.90" },
});

export const roundTorsion = formula({
  id: "column.round-torsion",
  text: "T_c = phi_T * min(0.6 * F_y, max(1.23 * E / (sqrt(L / D) * lambda^1.25), 0.60 * E / lambda^1.5)) * pi * (D - t)^2 * t / 2",
  source: "AISC 360-22 Eq. H3-1, H3-2a and H3-2b with C of the user note, phi_T = 0.90",
  symbols: { T_c: { kind: "moment", meaning: "design torsional strength" }, F_y, L: { kind: "distance", meaning: "height of the column", field: "columns.*.height" }, D: { kind: "length", meaning: "diameter", field: "columns.*.section", range: [0.1, 0.3] }, lambda: wholeRatio, t },
  constants: { phi_T: "0.90", E: "29000 ksi" },
});

export const shearUse = formula({
  id: "column.shear-use",
  text: "U_v = max(abs(V_x) / V_cx, abs(V_y) / V_cy) + abs(T) / T_c",
  source: "AISC 360-22 G1 and H3.2, shear and torsion added",
  symbols: {
    U_v: { kind: "ratio", meaning: "shear and torsion against strength" },
    V_x: { kind: "force", meaning: "shear to the east" },
    V_y: { kind: "force", meaning: "shear to the north" },
    V_cx: { kind: "force", meaning: "design shear strength along x" },
    V_cy: { kind: "force", meaning: "design shear strength along y" },
    T: { kind: "moment", meaning: "torsion" },
    T_c: { kind: "moment", meaning: "design torsional strength" },
  },
});

export const resultantShear = formula({
  id: "column.resultant-shear",
  text: "V = sqrt(V_x^2 + V_y^2)",
  source: "statics: a round section is alike in every direction",
  symbols: { V: { kind: "force", meaning: "shear, both directions together" }, V_x: { kind: "force", meaning: "shear to the east" }, V_y: { kind: "force", meaning: "shear to the north" } },
});

/** Design shear strength along each plan axis, N, and in torsion, N·m. */
export interface ShearStrength {
  readonly x: number;
  readonly y: number;
  readonly T: number;
}

const k_v = { box: 5, web: 5.34, flange: 1.2 } as const;

export const shearStrength = calculatedOnce((column: ColumnInputs, calc: Calc): ShearStrength => {
  const fy = { F_y: column.F_y };
  const size = { t: column.t };
  if (column.shape === "round") {
    const lambda = calc(wallRatio, { b: column.H, t: column.t });
    const F_cr = calc(roundShearStress, { ...fy, L: column.L, D: column.H, lambda });
    const V = calc(roundShear, { F_cr, A: column.A });
    return { x: V, y: V, T: calc(roundTorsion, { ...fy, L: column.L, D: column.H, lambda, ...size }) };
  }
  const [deep, wide] = column.shape === "W" ? wideShears(column, calc) : ([column.H, column.B] as const).map((B) => calc(boxShear, { ...fy, B, ...size, C_v2: calc(shearBuckling, { lambda: calc(wallRatio, { b: calc(flatOf, { B, t: column.t }), t: column.t }), k_v: k_v.box, ...fy }) }));
  const T =
    column.shape === "W" ? wideTorsionStrength(column, calc) : calc(boxTorsion, { F_cr: calc(boxTorsionStress, { lambda: calc(wallRatio, { b: calc(flatOf, { B: column.H, t: column.t }), t: column.t }), ...fy }), B: column.B, H: column.H, ...size });
  return column.deep === "along x" ? { x: deep, y: wide, T } : { x: wide, y: deep, T };
});

function wideShears(column: ColumnInputs, calc: Calc): readonly [number, number] {
  const fy = { F_y: column.F_y };
  const lambda = calc(wallRatio, { b: calc(webFlat, { H: column.H, t_f: column.t_f, r_k: column.fillet }), t: column.t });
  const web = calc(webShear, { lambda, ...fy, H: column.H, t_w: column.t, C_v2: calc(shearBuckling, { lambda, k_v: k_v.web, ...fy }) });
  const half = calc(wallRatio, { b: column.B, t: column.t_f });
  return [web, calc(flangeShear, { ...fy, B: column.B, t_f: column.t_f, C_v2: calc(shearBuckling, { lambda: half, k_v: k_v.flange, ...fy }) })];
}

/** The same as allowable strengths where the loads are at that level. Webs with phi of 1.00 have Omega of 1.50, which this takes 0.2 % less of. */
export const availableShear = (demand: SteelDemand, { x, y, T }: ShearStrength, calc: Calc): ShearStrength =>
  demand.level === "strength"
    ? { x, y, T }
    : { x: available(demand, x, allowableForce, ofMembers, calc), y: available(demand, y, allowableForce, ofMembers, calc), T: available(demand, T, allowableMoment, ofMembers, calc) };

/** Shear and torsion at one end against strength. */
export function shearAt(column: ColumnInputs, strength: ShearStrength, forces: Forces, calc: Calc): number {
  const isRound = column.shape === "round";
  const V_x = isRound ? calc(resultantShear, { V_x: forces.Vx, V_y: forces.Vy }) : forces.Vx;
  return calc(shearUse, { V_x, V_y: isRound ? 0 : forces.Vy, V_cx: strength.x, V_cy: strength.y, T: forces.Mz ?? 0, T_c: strength.T });
}

export const shearFormulas = [flatOf, wallRatio, webFlat, shearBuckling, boxShear, roundShearStress, roundShear, webShear, flangeShear, boxTorsionStress, boxTorsion, roundTorsion, ...wideTorsionFormulas, resultantShear, shearUse];

export const columnShear = check({
  id: "column.shear",
  title: "Shear and torsion of the column",
  link: "column",
  level: steelLevels,
  clause: "AISC 360-22 G2, G4, G5, G6, H3.1, H3.3",
  fails: "The column's walls yield or buckle in shear, by the push across it and by twist.",
  seen: "Diagonal creases in the wall of a short stub column after a storm.",
  range: "Rolled W shapes without stiffeners, and hollow sections without holes. Twist is known where the roof is carried down as one plate by columns fixed at their tops; with pinned tops there is none. W shapes count as held against warping at both ends, by base plate and roof framing, in their stiffness and their strength alike.",
  formulas: [...shearFormulas, allowableForce, allowableMoment],
  applies: (support) => support.column !== undefined,
  inputs: (support, gather) => readColumn(support, gather),
  fixedBy: (support) => support.column?.fields.section ?? support.column,
  evaluate: (inputs, demand, calc) => {
    const { base, top } = demand;
    const strength = availableShear(demand, shearStrength(inputs, calc), calc);
    const [atBase, atTop] = [shearAt(inputs, strength, base, calc), shearAt(inputs, strength, top, calc)];
    return weigh(atBase >= atTop ? atBase : atTop, 1, "ratio");
  },
  advise: (inputs, outcome, say) => `${say.show(outcome.demand, "ratio")} times what ${inputs.section} holds in shear and twist. Take a thicker wall or a wider section.`,
});
