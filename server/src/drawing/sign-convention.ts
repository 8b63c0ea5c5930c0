/** Which way forces and moments at a column are positive, drawn: a plan with the axes, and a section looking north with the three places. */
import { arrow, doubleArrow, drawing, groundHatch, line, path, plumbDimension, rectangle, turn, words } from "./svg.js";

export const signConventionWords =
  "Positive senses at a column. Axes: x east, y north. P presses down, so that uplift is negative. Vx pushes east, Vy north. Mx and My turn right-handed about the x and the y axis: " +
  "a push to the east above gives a positive My, a push to the north a negative Mx. Forces are those of what is above on what is below, at the top of the column, at its base and at the underside of the foundation.";

function plan(): readonly string[] {
  const [x, y, half] = [120, 138, 15];
  return [
    words(20, 24, "Plan", "start", 12),
    // Base plate and column of hollow section.
    rectangle(x - 27, y - 27, 54, 54, "thin"),
    rectangle(x - half, y - half, 2 * half, 2 * half, "cut"),
    rectangle(x - half + 4, y - half + 4, 2 * half - 8, 2 * half - 8),
    arrow(x + half, y, x + 68, y),
    words(x + 42, y - 6, "Vx", "middle"),
    arrow(x, y - half, x, y - 68),
    words(x + 6, y - 46, "Vy"),
    doubleArrow(x + half, y + 40, x + 68, y + 40),
    words(x + 42, y + 54, "Mx", "middle"),
    doubleArrow(x - 40, y - half, x - 40, y - 68),
    words(x - 46, y - 46, "My", "end"),
    // The axes of the notebook.
    arrow(30, 258, 72, 258, "thin"),
    words(76, 262, "x, east"),
    arrow(30, 258, 30, 216, "thin"),
    words(22, 208, "y, north"),
  ];
}

function section(): readonly string[] {
  const x = 360;
  const [top, base, grade, underside] = [82, 176, 186, 236];
  const level = (y: number, text: string): string => line(x + 24, y, x + 112, y, "thin", "4 3") + words(x + 118, y + 4, text);
  return [
    words(270, 24, "Section, looking north", "start", 12),
    // Roof beam, column, plate, pier.
    path(`M${x - 62} ${top - 13}H${x + 62}M${x - 62} ${top}H${x + 62}`, "seen"),
    path(`M${x - 7} ${top}V${base}M${x + 7} ${top}V${base}`, "cut"),
    rectangle(x - 22, base, 44, 4, "cut"),
    path(`M${x - 28} ${base + 6}H${x + 28}V${underside}H${x - 28}Z`, "cut"),
    groundHatch(x - 90, x - 28, grade + 6),
    groundHatch(x + 28, x + 84, grade + 6),
    arrow(x, top - 48, x, top - 15),
    words(x + 6, top - 36, "P"),
    arrow(x + 10, base - 22, x + 58, base - 22),
    words(x + 46, base - 28, "Vx", "middle"),
    // Seen from the south, a push to the east turns it clockwise.
    turn(x, base - 22, 32, (7 * Math.PI) / 6, (11 * Math.PI) / 6),
    words(x - 38, base - 36, "My", "end"),
    level(top, "top"),
    level(base, "base"),
    level(underside, "underside"),
    plumbDimension(x - 74, top, base),
    words(x - 80, (top + base) / 2 + 4, "H", "end"),
    arrow(270, 258, 312, 258, "thin"),
    words(316, 262, "x, east"),
  ];
}

/** The drawing, as SVG. */
export const signConvention = (): string => drawing(560, 272, signConventionWords, [...plan(), ...section()]);
