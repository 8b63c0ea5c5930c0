/**
 * The rods hold the plate down and the column lifts its middle: the plate bends between the tube and the rods. Under a light roof
 * this, and not bearing, often sets the thickness. Seen as a plate bent up along the tube's face or across its corners.
 *
 * Two ways to draw the line are in use for rods off the corners of a square tube: straight across the whole plate, or diagonal
 * across the corner. The straight line through the whole width counts steel the tension does not reach, so the diagonal is taken here,
 * with a width of at most twice the rod's distance from it. Rods off a side bend the plate along that side.
 */
import { formula } from "../../formula/declare.js";
import { bendLine } from "../../mechanics/plate-bend-lines.js";
import { check, unchecked, weigh } from "../contract.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "./distribution.js";
import { bendSide } from "./bend-rectangle.js";
import { plateStrength, readPlate, thicknessNeeded } from "./plate-compression.js";

export const bendSquare = formula({
  id: "base.bend-square",
  text: "c = b_p / 2",
  source: "geometry",
  symbols: {
    c: { kind: "length", meaning: "half the rectangle the plate bends about" },
    b_p: { kind: "length", meaning: "its side", field: "columns.*.section" },
  },
});

export const rodMoment = formula({
  id: "base.rod-moment",
  text: "m_u = T * a / b_eff",
  source: "statics; the 45° spread is common practice, no single source",
  symbols: {
    m_u: { kind: "momentPerLength", meaning: "moment in the plate per width" },
    T: { kind: "force", meaning: "tension of the rod" },
    a: { kind: "length", meaning: "from the rod to the bend line" },
    b_eff: { kind: "length", meaning: "width of the plate that bends with it" },
  },
});

export const plateUplift = check({
  id: "base.plate-uplift",
  title: "Bending of the base plate by the rods in tension",
  link: "base",
  level: "strength",
  clause: "AISC Design Guide 1, 3rd ed., 4.3.7; AISC 360-22 F11.1",
  fails: "The plate bends between the tube and the rods that hold it down.",
  seen: "A plate bent up along the tube's face or across its corners after a storm, the rods unbroken.",
  range:
    "Columns in the middle of the plate; round and W columns by a rectangle about them, which for a corner of a W is common practice without a source. Tension spreads at 45° to a line along the tube's side, or to the diagonal line across its corner, clipped at the plate's edges and half way to the next rod. Prying on the rods is not in it, nor is the weld.",
  formulas: [plateStrength, concreteModulus, modularRatio, bendSide, bendSquare, rodMoment, thicknessNeeded],
  applies: (support) => support.base !== undefined && support.column !== undefined,
  inputs: readPlate,
  fixedBy: (support) => support.base?.fields.plate?.value.thickness ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { B, N, F_y, t_p, rods } = inputs;
    const m_d = calc(plateStrength, { F_y, t_p });
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    if (!contact.tensions.some((T) => T > 0)) return weigh(0, m_d, "momentPerLength");
    const half = calc(bendSquare, { b_p: inputs.b_px });
    const halfY = inputs.b_py === inputs.b_px ? half : calc(bendSquare, { b_p: inputs.b_py });
    const worst = calc.routine(bendLine, { width: B, length: N, half, halfY, rods, tensions: contact.tensions });
    if (!worst) return unchecked("the rods in tension stand within the column's own outline, where this method has no bend line; move the rods out");
    calc.note(worst.line === "corner" ? "The rod stands off a corner of the tube: diagonal bend line." : "The rod stands off a side of the tube: bend line along that side.");
    const m_u = calc(rodMoment, { T: worst.tension, a: worst.distance, b_eff: worst.width });
    calc(thicknessNeeded, { m_u, F_y });
    return weigh(m_u, m_d, "momentPerLength");
  },
  advise: (inputs, outcome, say) =>
    `Plate ${say.show(inputs.t_p, "length")}; ${say.show(thicknessNeeded.value({ m_u: outcome.demand, F_y: inputs.F_y }), "length")} needed where the rods pull. Take a thicker plate.`,
});
