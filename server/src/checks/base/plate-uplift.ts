/**
 * The rods hold the plate down and the column lifts its middle: the plate bends between the tube and the rods. Under a light roof
 * this, and not bearing, often sets the thickness. Seen as a plate bent up along the tube's face or across its corners.
 *
 * Two ways to draw the line are in use for rods off the corners of a square tube: straight across the whole plate, or diagonal
 * across the corner. The straight line through the whole width counts steel the tension does not reach, so the diagonal is taken here,
 * with a width of at most twice the rod's distance from it. Rods off a side bend the plate along that side.
 */
import { check, unchecked, weigh } from "../contract.js";
import { allowablePlateMoment, available, ofMembers, steelLevels } from "../steel-strength.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "./distribution.js";
import { bendSide } from "./bend-rectangle.js";
import { plateStrength, readPlate, thicknessNeeded } from "./plate-compression.js";
import { bendByRods, bendSquare, rodMoment } from "./rod-moment.js";

export const plateUplift = check({
  id: "base.plate-uplift",
  title: "Bending of the base plate by the rods in tension",
  link: "base",
  level: steelLevels,
  clause: "AISC Design Guide 1, 3rd ed., 4.3.7; AISC 360-22 F11.1",
  fails: "The plate bends between the tube and the rods that hold it down.",
  seen: "A plate bent up along the tube's face or across its corners after a storm, the rods unbroken.",
  range:
    "Columns in the middle of the plate; round and W columns by a rectangle about them, which for a corner of a W is common practice without a source. Tension spreads at 45° to a line along the tube's side, or to the diagonal line across its corner, clipped at the plate's edges and half way to the next rod. A plate that holds is thicker than the AISC Manual, Part 9, asks for to keep it from prying on its rods, so that nothing is added to their pull. Stiffened plates and the weld are not in it.",
  formulas: [plateStrength, concreteModulus, modularRatio, bendSide, bendSquare, rodMoment, thicknessNeeded, allowablePlateMoment],
  applies: (support) => support.base !== undefined && support.column !== undefined,
  inputs: readPlate,
  fixedBy: (support) => support.base?.fields.plate?.value.thickness ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { F_y, t_p } = inputs;
    const m_d = available(demand, calc(plateStrength, { F_y, t_p }), allowablePlateMoment, ofMembers, calc);
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    if (!contact.tensions.some((T) => T > 0)) return weigh(0, m_d, "momentPerLength");
    const m_u = bendByRods(inputs, contact.tensions, calc);
    if (m_u === undefined) return unchecked("the rods in tension stand within the column's own outline, where this method has no bend line; move the rods out");
    calc(thicknessNeeded, { t_p, m_u, m_d });
    return weigh(m_u, m_d, "momentPerLength");
  },
  advise: (inputs, outcome, say) =>
    `Plate ${say.show(inputs.t_p, "length")}; ${say.show(thicknessNeeded.value({ t_p: inputs.t_p, m_u: outcome.demand, m_d: outcome.capacity }), "length")} needed where the rods pull. Take a thicker plate.`,
});
