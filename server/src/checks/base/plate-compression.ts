/**
 * The plate bends where it reaches past the column and the concrete presses up on it. Seen as a plate dished round the column.
 *
 * AISC Design Guide 1, 3rd ed., section 4.3: the plate is a cantilever beyond a rectangle of 0.95 of a tube's sides, 0.80 of a
 * round one's diameter, or 0.95 of the depth and 0.80 of the flange of a W. The
 * pressure on the whole strip is the largest bearing stress of the combination, which is exact without moment and on the safe side
 * with one.
 */
import { findSteel } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, unchecked, weigh, type Gather, type Outcome } from "../contract.js";
import { allowablePlateMoment, available, ofMembers, steelLevels, type SteelDemand } from "../steel-strength.js";
import { concreteModulus, distribute, forcesBelow, isUnstable, modularRatio, tipsOver } from "./distribution.js";
import { bendSide, betweenFlanges, readBendRectangle } from "./bend-rectangle.js";
import { readBase, type BaseInputs } from "./geometry.js";
import { bendByRods, bendSquare, rodMoment } from "./rod-moment.js";

export interface PlateInputs extends BaseInputs {
  /** Sides along x and y of the rectangle the plate bends about, m. */
  readonly b_px: number;
  readonly b_py: number;
  /** Depth and flange of a W, m; 0 for other columns. */
  readonly d_W: number;
  readonly b_W: number;
  /** Plate thickness, m. */
  readonly t_p: number;
  readonly F_y: number;
}

const yieldStrength = { kind: "steelStress", meaning: "yield strength of the plate", field: "bases.*.plate.grade" } as const;
const momentPerWidth = { kind: "momentPerLength", meaning: "moment in the plate per width" } as const;

export const cantilever = formula({
  id: "base.cantilever",
  text: "l = max(B - b_px, N - b_py) / 2",
  source: "AISC Companion to the Manual, 16th ed., Example K.9: m and n beyond the rectangle the plate bends about",
  symbols: {
    l: { kind: "length", meaning: "overhang of the plate past the bend line" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
    b_px: { kind: "length", meaning: "side along x of the rectangle the plate bends about", field: "columns.*.section" },
    b_py: { kind: "length", meaning: "its side along y", field: "columns.*.section" },
  },
});

export const evenPressure = formula({
  id: "base.even-pressure",
  text: "f_p = max(0, P) / (B * N)",
  source: "AISC Design Guide 1, 3rd ed., 4.3.1",
  symbols: {
    f_p: { kind: "stress", meaning: "bearing stress" },
    P: { kind: "force", meaning: "axial force, compression positive" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
  },
});

export const cantileverMoment = formula({
  id: "base.cantilever-moment",
  text: "m_u = f_p * l^2 / 2",
  source: "AISC Design Guide 1, 3rd ed., 4.3.1",
  symbols: {
    m_u: momentPerWidth,
    f_p: { kind: "stress", meaning: "bearing stress" },
    l: { kind: "length", meaning: "overhang of the plate past the bend line" },
  },
});

export const plateStrength = formula({
  id: "base.plate-strength",
  text: "m_d = phi_b * F_y * t_p^2 / 4",
  source: "AISC 360-22 F11.1, phi_b = 0.90; AISC Design Guide 1, 3rd ed., 4.3.1",
  symbols: {
    m_d: { kind: "momentPerLength", meaning: "design moment of the plate per width" },
    F_y: yieldStrength,
    t_p: { kind: "length", meaning: "plate thickness", field: "bases.*.plate.thickness" },
  },
  constants: { phi_b: "0.90" },
});

export const thicknessNeeded = formula({
  id: "base.thickness-needed",
  text: "t_min = t_p * sqrt(m_u / m_d)",
  source: "AISC Design Guide 1, 3rd ed., 4.3.1: strength goes with the square of the thickness, by either method",
  symbols: {
    t_min: { kind: "length", meaning: "plate thickness needed" },
    t_p: { kind: "length", meaning: "plate thickness", field: "bases.*.plate.thickness" },
    m_u: momentPerWidth,
    m_d: { kind: "momentPerLength", meaning: "moment the plate may take per width" },
  },
});

/** Reads the plate with the tube it is welded to. */
export function readPlate(support: Support, gather: Gather, place: number): PlateInputs {
  const base = readBase(support, gather, place);
  const plate = support.base?.fields.plate?.value;
  const grade = gather.needs(plate?.grade, "grade of the base plate");
  const steel = grade === undefined ? undefined : findSteel(grade);
  if (steel && isMissing(steel)) gather.block(`${steel.problem}: the plate's yield strength is missing`);
  return {
    ...base,
    ...readBendRectangle(support, gather),
    t_p: gather.need(plate?.thickness, "thickness of the base plate"),
    F_y: steel && !isMissing(steel) ? steel.fy : Number.NaN,
  };
}

/** On leveling nuts without grout the rods that press bend the plate. */
function weighOnRods(inputs: PlateInputs, demand: SteelDemand, m_d: number, calc: Calc): Outcome {
  const contact = distribute(inputs, demand, calc);
  if (isUnstable(contact)) return unchecked(tipsOver(contact));
  const { pushes = [] } = contact;
  if (!pushes.some((push) => push > 0)) return weigh(0, m_d, "momentPerLength");
  const m_u = bendByRods(inputs, pushes, calc);
  if (m_u === undefined) return unchecked("the rods that press stand within the column's own outline, where this method has no bend line; move the rods out");
  calc(thicknessNeeded, { t_p: inputs.t_p, m_u, m_d });
  return weigh(m_u, m_d, "momentPerLength");
}

export const plateCompression = check({
  id: "base.plate-compression",
  title: "Bending of the base plate on the bearing side",
  link: "base",
  level: steelLevels,
  clause: "AISC Design Guide 1, 3rd ed., 4.3; AISC 360-22 F11.1",
  fails: "The plate bends up round the column under the bearing pressure.",
  seen: "A thin plate dished round the column, its corners off the grout.",
  range: "Columns in the middle of the plate. Between the flanges of a W the plate bends as much as a cantilever of a quarter of the root of depth times flange, without the relief of a light load. The largest bearing stress is taken over the whole overhang. On leveling nuts without grout the rods that press bend the plate as those that pull do. Stiffened plates are not in it.",
  formulas: [plateStrength, bendSide, cantilever, betweenFlanges, evenPressure, concreteModulus, modularRatio, cantileverMoment, bendSquare, rodMoment, thicknessNeeded, allowablePlateMoment],
  applies: (support) => support.base !== undefined && support.column !== undefined,
  inputs: readPlate,
  fixedBy: (support) => support.base?.fields.plate?.value.thickness ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { B, N, F_y, t_p } = inputs;
    const m_d = available(demand, calc(plateStrength, { F_y, t_p }), allowablePlateMoment, ofMembers, calc);
    const beyond = calc(cantilever, { B, N, b_px: inputs.b_px, b_py: inputs.b_py });
    // Inside the outline of a W the plate spans from the web, whatever it overhangs.
    const l = inputs.d_W > 0 ? Math.max(beyond, calc(betweenFlanges, { d: inputs.d_W, b_f: inputs.b_W })) : beyond;
    if (l <= 0) return unchecked("the plate does not reach past the column; take a larger plate");
    if (inputs.standsFree) return weighOnRods(inputs, demand, m_d, calc);
    const { P, Mx, My } = forcesBelow(inputs, demand.base, calc);
    let f_p: number;
    if (Mx === 0 && My === 0) f_p = calc(evenPressure, { P, B, N });
    else {
      const contact = distribute(inputs, demand, calc);
      if (isUnstable(contact)) return unchecked(tipsOver(contact));
      f_p = contact.maxBearing;
    }
    const m_u = calc(cantileverMoment, { f_p, l });
    calc(thicknessNeeded, { t_p, m_u, m_d });
    return weigh(m_u, m_d, "momentPerLength");
  },
  advise: (inputs, outcome, say) =>
    `Plate ${say.show(inputs.t_p, "length")}; ${say.show(thicknessNeeded.value({ t_p: inputs.t_p, m_u: outcome.demand, m_d: outcome.capacity }), "length")} needed on the bearing side. Take a thicker plate.`,
});
