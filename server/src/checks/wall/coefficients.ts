/** Earth pressure coefficients by each method the notebook can name, and the parts of the pressure across and down a vertical plane. */
import { formula } from "../../formula/declare.js";

const coefficient = { kind: "ratio", meaning: "earth pressure coefficient", range: [0.05, 0.6] } as const;
const frictionAngle = { kind: "angle", meaning: "angle of internal friction of the soil held back", field: "foundations.*.fill.friction angle", range: [0.35, 0.75] } as const;
const slopeAngle = { kind: "angle", meaning: "slope of the ground behind the wall", field: "foundations.*.fill.slope", range: [0, 0.3] } as const;
const wallFriction = { kind: "angle", meaning: "angle of friction between soil and wall", field: "foundations.*.fill.wall friction", range: [0, 0.4] } as const;

export const slopeToAngle = formula({
  id: "wall.slope-angle",
  text: "beta = atan(m)",
  source: "geometry",
  symbols: { beta: slopeAngle, m: { kind: "slope", meaning: "rise over run of the ground behind the wall", field: "foundations.*.fill.slope" } },
});

export const atRest = formula({
  id: "wall.at-rest",
  text: "K = (1 - sin(phi)) * (1 + sin(beta))",
  source: "Jaky's coefficient of normally consolidated soil; rise with the slope of EN 1997-1 9.5.2 (from memory)",
  symbols: { K: coefficient, phi: frictionAngle, beta: slopeAngle },
});

export const rankine = formula({
  id: "wall.rankine",
  text: "K = cos(beta) * (cos(beta) - sqrt(cos(beta)^2 - cos(phi)^2)) / (cos(beta) + sqrt(cos(beta)^2 - cos(phi)^2))",
  source: "Rankine's active pressure on a vertical plane under sloping ground; Das, Principles of Foundation Engineering, Eq. 7.19",
  symbols: { K: coefficient, phi: frictionAngle, beta: slopeAngle },
});

export const coulomb = formula({
  id: "wall.coulomb",
  text: "K = cos(phi)^2 / (cos(delta) * (1 + sqrt(sin(phi + delta) * sin(phi - beta) / (cos(delta) * cos(beta))))^2)",
  source: "Coulomb's active pressure on a vertical back; Das, Principles of Foundation Engineering, section 7.5",
  symbols: { K: coefficient, phi: frictionAngle, delta: wallFriction, beta: slopeAngle },
});

export const fluidCoefficient = formula({
  id: "wall.equivalent-fluid",
  text: "K = G / gamma",
  source: "common practice: the coefficient that gives the equivalent fluid's weight, so that a surcharge presses alike",
  symbols: {
    K: coefficient,
    G: { kind: "pressurePerDepth", meaning: "weight of the equivalent fluid", field: "foundations.*.fill.equivalent fluid" },
    gamma: { kind: "unitWeight", meaning: "unit weight of the soil held back", field: "foundations.*.fill.unit weight" },
  },
});

const inclination = { kind: "angle", meaning: "angle of the pressure below the horizontal: the slope by Rankine, the wall friction by Coulomb, none otherwise", range: [0, 0.4] } as const;

export const acrossPart = formula({
  id: "wall.horizontal-part",
  text: "K_h = K * cos(omega)",
  source: "statics",
  symbols: { K_h: { ...coefficient, meaning: "horizontal part of the earth pressure coefficient" }, K: coefficient, omega: inclination },
});

export const downPart = formula({
  id: "wall.vertical-part",
  text: "K_v = K * sin(omega)",
  source: "statics",
  symbols: { K_v: { ...coefficient, meaning: "vertical part of the earth pressure coefficient" }, K: coefficient, omega: inclination },
});

export const rankinePassive = formula({
  id: "wall.passive",
  text: "K_p = tan(pi / 4 + phi / 2)^2",
  source: "Rankine's passive pressure, level ground; Das, Principles of Foundation Engineering, section 7.8",
  symbols: { K_p: { kind: "ratio", meaning: "passive pressure coefficient" }, phi: { ...frictionAngle, meaning: "angle of internal friction of the ground", field: "ground.*.friction angle" } },
});

export const coefficientFormulas = [slopeToAngle, atRest, rankine, coulomb, fluidCoefficient, acrossPart, downPart] as const;
