/**
 * A column set on its rods falls over while the crew lets go of it. In the field: a column lying beside its pier, two rods bent flat.
 *
 * 29 CFR 1926.755(a): at least four rods, and the column with its base, weld and foundation able to hold 300 lb at its top, 18 in out from its
 * outer face, in any direction. A post of no more than 300 lb that bears along its axis, or is held sideways above, is excepted
 * (1926.751). The load stands alone: column and plate hold nothing down.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { placedSection } from "../../catalog/sections.js";
import { usedPart } from "../anchors/ratio.js";
import { readFactors } from "../anchors/factors.js";
import { readRod, tensileStrengthUsed, type RodSteel } from "../anchors/rod.js";
import { rodTension } from "../anchors/steel-tension.js";
import { check, sameInAll, unchecked, weigh, type Weighed } from "../contract.js";
import { bendSide } from "./bend-rectangle.js";
import { plateStrength, readPlate, type PlateInputs } from "./plate-compression.js";
import { bendByRods, bendSquare, rodMoment } from "./rod-moment.js";

const osha = "29 CFR 1926.755(a)(1)-(3)";
const momentSymbol = { kind: "smallMoment", meaning: "moment of the erection load at the base" } as const;

export const columnWeight = formula({
  id: "base.column-weight",
  text: "W_c = w * H",
  source: "AISC Shapes Database v15.0",
  symbols: { W_c: { kind: "smallForce", meaning: "weight of the column" }, w: { kind: "lineLoad", meaning: "weight of the section", field: "columns.*.section" }, H: { kind: "distance", meaning: "height of the column", field: "columns.*.height" } },
});

export const erectionMoment = formula({
  id: "base.erection-moment",
  text: "M_e = P_e * (a_e + b_c / 2)",
  source: osha,
  symbols: { M_e: momentSymbol, b_c: { kind: "length", meaning: "size of the column that way", field: "columns.*.section" } },
  constants: { P_e: "300 lbf", a_e: "18 inch" },
});

export const erectionTension = formula({
  id: "base.erection-tension",
  text: "T_e = M_e / s",
  source: "statics: a couple of the rods on both sides",
  symbols: { T_e: { kind: "smallForce", meaning: "tension of the rods on one side" }, M_e: momentSymbol, s: { kind: "length", meaning: "from the rods on one side to those on the other", field: "bases.*.anchors.spacing x" } },
});

export const erectionTensionOfRod = formula({
  id: "base.erection-tension-of-rod",
  text: "T_u = 1.6 * T_e / n_t",
  source: "statics; a load factor of 1.6 as for live load, common practice, no source: the rule gives none",
  symbols: { T_u: { kind: "force", meaning: "factored tension of one rod" }, T_e: { kind: "smallForce", meaning: "tension of the rods on one side" }, n_t: { kind: "number", meaning: "rods on that side" } },
});

export const usedOfPlate = formula({
  id: "base.used-of-plate",
  text: "r = m_u / m_d",
  source: "AISC 360-22 B3.1",
  symbols: {
    r: { kind: "ratio", meaning: "part of the plate's strength that is used" },
    m_u: { kind: "momentPerLength", meaning: "moment in the plate per width" },
    m_d: { kind: "momentPerLength", meaning: "design moment of the plate per width" },
  },
});

export const spread = formula({
  id: "base.spread",
  text: "s = c_2 - c_1",
  source: "geometry",
  symbols: { s: { kind: "length", meaning: "from the rods on one side to those on the other" }, c_1: { kind: "length", meaning: "outermost rods on one side" }, c_2: { kind: "length", meaning: "outermost rods on the other" } },
});

export interface ErectionInputs extends PlateInputs, RodSteel {
  readonly phi: number;
  /** Size of the column along x and y, m. */
  readonly alongX: number;
  readonly alongY: number;
  /** N/m and m. */
  readonly w: number;
  readonly H: number;
}

const leastRods = 4;

/** Rods within this of the outermost one stand in its row, m. */
const row = 0.005;

interface Tried extends Weighed {
  readonly used: number;
}

/** The load out along one axis: the rod in tension, or the plate it bends. */
function outward(inputs: ErectionInputs, axis: "x" | "y", strength: number, m_d: number, calc: Calc): Tried | undefined {
  const { rods } = inputs;
  const places = rods.map((rod) => rod[axis]);
  const c_1 = Math.min(...places);
  const c_2 = Math.max(...places);
  const s = calc(spread, { c_1, c_2 });
  if (!(s > row)) return undefined;
  const isFar = (place: number): boolean => spread.value({ c_1: place, c_2 }) < row;
  const M_e = calc(erectionMoment, { b_c: axis === "x" ? inputs.alongX : inputs.alongY });
  const T_e = calc(erectionTension, { M_e, s });
  const T_u = calc(erectionTensionOfRod, { T_e, n_t: places.filter(isFar).length });
  const m_u = bendByRods(inputs, places.map((place) => (isFar(place) ? T_u : 0)), calc);
  if (m_u === undefined) return undefined;
  const rodUsed = calc(usedPart, { S_u: T_u, S_d: strength });
  const plateUsed = calc(usedOfPlate, { m_u, m_d });
  return rodUsed >= plateUsed ? { ...weigh(T_u, strength, "force"), used: rodUsed } : { ...weigh(m_u, m_d, "momentPerLength"), used: plateUsed };
}

export const erection = check({
  id: "base.erection",
  title: "Four rods and 300 lb at erection",
  link: "base",
  level: "strength",
  clause: "29 CFR 1926.755(a)",
  fails: "The column falls over on its rods before it is tied.",
  seen: "A column lying beside its pier, two rods bent flat.",
  range:
    "300 lb, 18 in out from the face of the column, along x and along y, times 1.6, on the rods of one side in tension and on the plate between them and the column; it is the same in every combination. Nothing that holds the column down is counted. The weld is checked under the forces of the structure; the foundation under this load, and wind before the roof ties the columns, are not in it. Whether a column is a post that is excepted is not decided here.",
  formulas: [columnWeight, spread, erectionMoment, erectionTension, erectionTensionOfRod, tensileStrengthUsed, rodTension, plateStrength, bendSide, bendSquare, rodMoment, usedPart, usedOfPlate],
  applies: (support) => support.base !== undefined && support.column !== undefined,
  inputs: (support, gather, place): ErectionInputs => {
    const plate = readPlate(support, gather, place);
    const rod = readRod(support, gather);
    const factors = readFactors(support.codes, gather);
    const column = support.column?.fields;
    const section = gather.needs(column?.section, "column section");
    const placed = section && placedSection(section, gather.may(column?.["deep side"]) ?? "along x");
    return {
      ...plate,
      ...rod,
      phi: factors?.steelTension[rod.isDuctile ? "ductile" : "brittle"] ?? Number.NaN,
      alongX: placed?.alongX ?? Number.NaN,
      alongY: placed?.alongY ?? Number.NaN,
      w: section?.weight ?? Number.NaN,
      H: gather.need(column?.height, "column height"),
    };
  },
  measures: sameInAll,
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, _, calc) => {
    const { F_y, t_p, phi, A_se, f_uta, f_ya, rods, w, H } = inputs;
    calc.note("Before the roof is on: the 300 lb stand alone, whatever the combination.");
    calc(columnWeight, { w, H });
    if (rods.length < leastRods) return weigh(leastRods, rods.length, "number");
    const m_d = calc(plateStrength, { F_y, t_p });
    const strength = calc(rodTension, { phi, A_se, f_u: calc(tensileStrengthUsed, { f_uta, f_ya }) });
    // Both ways are tried in silence; the steps shown are those of the worse.
    const way = worse(outward(inputs, "x", strength, m_d, plainCalc), outward(inputs, "y", strength, m_d, plainCalc));
    if (way === undefined) return unchecked("the rods stand in one row, or under the column itself, and hold nothing that tips across; set them about the column");
    const governing = outward(inputs, way, strength, m_d, calc);
    return governing ? weigh(governing.demand, governing.capacity, governing.quantity) : unchecked("the rods hold nothing that tips the column");
  },
  advise: (inputs, outcome, say) =>
    outcome.quantity === "number"
      ? `${say.show(outcome.capacity, "number")} rods; 4 are needed to set the column. Only a post of 300 lb or less that bears along its axis or is held sideways is excepted; this one weighs ${say.show(columnWeight.value({ w: inputs.w, H: inputs.H }), "smallForce")}.`
      : `${say.show(outcome.demand, outcome.quantity)} by 300 lb at 18 in from the column's face; ${say.show(outcome.capacity, outcome.quantity)} can be held. ${outcome.quantity === "force" ? "Take thicker rods or set them farther apart." : "Take a thicker plate or set the rods closer to the column."}`,
});

/** The way that uses more; undefined where one of them holds nothing. */
function worse(x: Tried | undefined, y: Tried | undefined): "x" | "y" | undefined {
  return x && y ? (x.used > y.used ? "x" : "y") : undefined;
}
