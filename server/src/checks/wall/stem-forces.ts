/**
 * Axial force, bending and shear of the wall at a depth below its top, per length of wall, in each situation of its fill: what the post sends down
 * spreads with the depth, soil and water above the section push, the wall's own weight presses.
 */
import type { Demand } from "../../actions/demand.js";
import { steelModulus } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Reduction } from "../../mechanics/column-strength.js";
import { wallStrength, type PulledFace, type WallSection, type WallStrength } from "../../mechanics/wall-section.js";
import { pulledStrain, pulledStrainEarlier } from "../pier/concrete-bending.js";
import { deadFactor } from "../site/dead-factor.js";
import { earthFormulas, earthOf, pushAbove, waterFor } from "./earth.js";
import { earthFactor, isShaken, quakeFactor, shakenFill } from "./safety.js";
import { shakingTrouble } from "./shaking.js";
import { alongDirection, direction, shakenSituations, type Situation, situationsOf, pushAcross, pushAlong } from "./situations.js";
import { carriedAt, spreadFormulas } from "./spread.js";
import { areaPerLength, type Face, stemFormulas, type StemInputs, stressAt, type Vertical } from "./stem.js";
import { type StemQuake, stemQuake, stemShakingFormulas } from "./stem-shaking.js";

const wide = [-1e6, 1e6] as const;
const width = { kind: "distance", meaning: "length of wall that carries the forces of the post" } as const;
const depth = { kind: "distance", meaning: "depth of the section below the top of the wall" } as const;
const wallHeight = { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" } as const;
const above = { kind: "distance", meaning: "height of the column base above the section" } as const;
const across = { kind: "force", meaning: "push of the post across the wall, away from the fill positive", range: wide } as const;
const along = { kind: "force", meaning: "push of the post along the wall", range: wide } as const;
const axial = { kind: "force", meaning: "axial force at the column base, compression positive", range: wide } as const;
const turn = { kind: "moment", meaning: "moment at the column base across the wall, tension at the fill face positive", range: wide } as const;
const turnLong = { kind: "moment", meaning: "moment along the wall about the middle of the length that carries it", range: wide } as const;
const deadShare = { kind: "ratio", meaning: "factor of dead load in the combination" } as const;
const earthShare = { kind: "ratio", meaning: "factor of the earth pressure" } as const;
const thickness = { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" } as const;
const perLength = { kind: "lineLoad", meaning: "axial force per length of wall, compression positive", range: wide } as const;

export const sectionDepth = formula({
  id: "wall.section-depth",
  text: "z = h - y",
  source: "geometry",
  symbols: { z: depth, h: wallHeight, y: { kind: "distance", meaning: "height of the section above the footing" } },
});

export const sectionHeight = formula({
  id: "wall.section-height",
  text: "y = h - z",
  source: "geometry",
  symbols: { y: { kind: "distance", meaning: "height of the section above the footing" }, h: wallHeight, z: depth },
});

export const soilOver = formula({
  id: "wall.soil-over-section",
  text: "z_s = max(z - (h - h_h), 0 * z)",
  source: "geometry",
  symbols: { z_s: { kind: "distance", meaning: "height of the soil above the section, at the back of the wall" }, z: depth, h: wallHeight, h_h: { kind: "distance", meaning: "height of the soil on the heel, at the wall" } },
});

export const armAbove = formula({
  id: "wall.arm-above",
  text: "a = z + t_g + t_p",
  source: "geometry",
  symbols: { a: above, z: depth, t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" }, t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" } },
});

const M = { M_x: { kind: "moment", meaning: "moment about the east axis at the column base", range: wide }, M_y: { kind: "moment", meaning: "moment about the north axis at the column base", range: wide } } as const;

export const turnAcrossAtBase = formula({
  id: "wall.post-moment-across",
  text: "M_n = n_x * M_y - n_y * M_x",
  source: "statics",
  symbols: { M_n: turn, n_x: direction("east"), n_y: direction("north"), ...M },
});

export const turnAlongAtBase = formula({
  id: "wall.post-moment-along",
  text: "M_l = l_x * M_y - l_y * M_x",
  source: "statics",
  symbols: { M_l: { kind: "moment", meaning: "moment at the column base along the wall", range: wide }, l_x: alongDirection("east"), l_y: alongDirection("north"), ...M },
});

export const turnAlongAt = formula({
  id: "wall.post-moment-along-at",
  text: "M_b = M_l + V_l * a - P * e_b",
  source: "statics",
  symbols: { M_b: turnLong, M_l: { kind: "moment", meaning: "moment at the column base along the wall", range: wide }, V_l: along, a: above, P: axial, e_b: { kind: "distance", meaning: "from the post to the middle of that length", range: [-3, 3] } },
});

export const axialAt = formula({
  id: "wall.stem-axial",
  text: "N_w = P / b + s_e * 6 * abs(M_b) / b^2 + f_D * gamma_c * t_w * z",
  source: "statics: straight over the length that carries the post, at its end that is pressed less (s_e = -1) or more (s_e = 1), or its mean (s_e = 0)",
  symbols: { N_w: perLength, P: axial, b: width, s_e: { kind: "number", meaning: "end of the length that is looked at", range: [-1, 1] }, M_b: turnLong, f_D: deadShare, t_w: thickness, z: depth },
  constants: { gamma_c: "150 lbf/ft^3" },
});

export const pulledApart = formula({
  id: "wall.stem-pull",
  text: "T_w = -N_w",
  source: "arithmetic",
  symbols: { T_w: { kind: "lineLoad", meaning: "pull per length of wall", range: wide }, N_w: perLength },
});

export const momentAt = formula({
  id: "wall.stem-moment",
  text: "M_w = delta * ((M_n + V_n * a) / b + f_H * M_e)",
  source: "statics; second order by ACI 318-19 6.6.4.6.2 (delta)",
  symbols: {
    M_w: { kind: "momentPerLength", meaning: "bending of the wall per length, tension at the fill face positive", range: wide },
    delta: { kind: "ratio", meaning: "magnification of the moment by the axial force", range: [1, 2] },
    M_n: turn,
    V_n: across,
    a: above,
    b: width,
    f_H: earthShare,
    M_e: { kind: "momentPerLength", meaning: "moment of soil, load and water about the section, per length of wall" },
  },
});

const quakeShare = { kind: "ratio", meaning: "factor of the earthquake in the combination" } as const;

export const momentShaken = formula({
  id: "wall.stem-moment-shaken",
  text: "M_t = M_w + delta * f_E * M_q",
  source: "statics",
  symbols: {
    M_t: { kind: "momentPerLength", meaning: "bending of the wall per length with what the earthquake adds", range: wide },
    M_w: { kind: "momentPerLength", meaning: "bending of the wall per length, tension at the fill face positive", range: wide },
    delta: { kind: "ratio", meaning: "magnification of the moment by the axial force", range: [1, 2] },
    f_E: quakeShare,
    M_q: { kind: "momentPerLength", meaning: "what the earthquake adds to the moment, per length of wall" },
  },
});

export const pushShaken = formula({
  id: "wall.stem-push-shaken",
  text: "V_t = V_n + f_E * V_q * b",
  source: "statics",
  symbols: { V_t: { kind: "force", meaning: "push of the post and what the earthquake adds, away from the fill positive", range: wide }, V_n: across, f_E: quakeShare, V_q: { kind: "lineLoad", meaning: "what the earthquake adds to the shear, per length of wall" }, b: width },
});

export const shearAt = formula({
  id: "wall.stem-shear-force",
  text: "V_w = abs(V_n + f_H * V_e * b)",
  source: "statics",
  symbols: { V_w: { kind: "force", meaning: "shear across the wall over the length that carries the post" }, V_n: across, f_H: earthShare, V_e: { kind: "lineLoad", meaning: "push of soil, load and water above the section, per length of wall" }, b: width },
});

export const slenderness = formula({
  id: "wall.slenderness",
  text: "lambda_k = 2 * h / (0.3 * t_w)",
  source: "ACI 318-19 6.2.5.1, 6.2.5.2: k = 2 of a cantilever (from memory)",
  symbols: { lambda_k: { kind: "number", meaning: "slenderness of the wall as a cantilever" }, h: wallHeight, t_w: thickness },
});

export const bucklingLoad = formula({
  id: "wall.buckling-load",
  text: "P_c = pi^2 * 0.25 * k_E * sqrt(fprime_c) * t_w^3 / 12 / (2 * h)^2",
  source: "ACI 318-19 6.6.4.4.2, 6.6.4.4.4(a) with beta_dns = 0.6, 19.2.2.1 (from memory)",
  symbols: { P_c: { kind: "lineLoad", meaning: "buckling load of the wall as a cantilever, per length" }, fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" }, t_w: thickness, h: wallHeight },
  constants: { k_E: "57000 lbf^0.5/inch" },
});

export const magnification = formula({
  id: "wall.magnification",
  text: "delta = 1 / (1 - N_w / (0.75 * P_c))",
  source: "ACI 318-19 6.6.4.6.2 (from memory)",
  symbols: { delta: { kind: "ratio", meaning: "magnification of the moment by the axial force" }, N_w: { ...perLength, range: [0, 1e5] }, P_c: { kind: "lineLoad", meaning: "buckling load of the wall as a cantilever, per length", range: [1e6, 1e8] } },
});

export const stemForceFormulas = [...earthFormulas, ...spreadFormulas, ...stemFormulas, pulledStrain, pulledStrainEarlier, pushAcross, pushAlong, turnAcrossAtBase, turnAlongAtBase, sectionDepth, soilOver, armAbove, turnAlongAt, axialAt, momentAt, slenderness, bucklingLoad, magnification, ...stemShakingFormulas, momentShaken, pushShaken] as const;

/** Forces of the post at the top of its base plate, in the directions of the wall. */
export interface TopForces {
  readonly P: number;
  readonly across: number;
  readonly along: number;
  readonly turn: number;
  readonly turnAlong: number;
}

const outward = { north: [0, -1], south: [0, 1], east: [-1, 0], west: [1, 0] } as const;
const nothing: TopForces = { P: 0, across: 0, along: 0, turn: 0, turnAlong: 0 };

export function topForces({ fillSide }: StemInputs, { base }: Demand, calc: Calc): TopForces {
  const [n_x, n_y] = outward[fillSide];
  const [l_x, l_y] = n_x === 0 ? [1, 0] : [0, 1];
  const shears = { V_x: base.Vx, V_y: base.Vy };
  const moments = { M_x: base.Mx, M_y: base.My };
  return {
    P: base.P,
    across: calc(pushAcross, { n_x, n_y, ...shears }),
    along: calc(pushAlong, { l_x, l_y, ...shears }),
    turn: calc(turnAcrossAtBase, { n_x, n_y, ...moments }),
    turnAlong: calc(turnAlongAtBase, { l_x, l_y, ...moments }),
  };
}

export const isLoaded = ({ P, across: V_n, along: V_l, turn: M_n, turnAlong: M_l }: TopForces): boolean => P !== 0 || V_n !== 0 || V_l !== 0 || M_n !== 0 || M_l !== 0;

/** What a section of the wall depends on, beside the combination. */
export interface StemSection {
  /** m. */
  readonly depth: number;
  readonly arm: number;
  readonly width: number;
  readonly offset: number;
  /** Of soil, load and water above it, per length of wall, without load factor. */
  readonly soilMoment: number;
  readonly soilShear: number;
  /** What an earthquake adds, where the fill states its coefficient. */
  readonly quake: StemQuake | undefined;
}

/** Without a post, or where nobody says how its forces spread, one length that acts with the post stands for the wall. */
export function sectionAt(inputs: StemInputs, y: number, calc: Calc): StemSection {
  const { height: h, spread, earth: fill, high: h_h, grout: t_g, plate: t_p } = inputs;
  const z = calc(sectionDepth, { h, y });
  const { width: b, offset } = spread ? carriedAt(spread, z, calc) : { width: inputs.run, offset: 0 };
  const a = calc(armAbove, { z, t_g, t_p });
  const bare = { depth: z, arm: a, width: b, offset, soilMoment: 0, soilShear: 0, quake: undefined };
  if (!fill) return bare;
  const z_s = calc(soilOver, { z, h, h_h });
  const { shaking } = fill;
  const quake = shaking === undefined || shakingTrouble(fill) !== undefined ? undefined : stemQuake({ ...fill, shaking }, z_s, z, inputs.thickness, calc);
  if (!(z_s > 0)) return { ...bare, quake };
  const { moment, shear } = pushAbove(earthOf(fill, calc), z_s, waterFor(fill, z_s), calc);
  return { ...bare, soilMoment: moment, soilShear: shear, quake };
}

/** What acts on one section in one situation. */
export interface AtStem {
  /** Per length of wall, N/m: at the end of the length that is pressed less, at the one pressed more, and in the mean. */
  readonly least: number;
  readonly most: number;
  readonly mean: number;
  /** N·m/m. */
  readonly moment: number;
  readonly pulled: PulledFace;
}

export interface Combined {
  readonly top: TopForces;
  readonly f_D: number;
  readonly delta: number;
  readonly situations: readonly Situation[];
}

const slender = 22;

/** Forces of a combination and how they are magnified; or why there is no answer. */
export function combinedAt(inputs: StemInputs, demand: Demand, calc: Calc): Combined | { readonly because: string } {
  const { earth } = inputs;
  const isQuake = earth?.shaking !== undefined && isShaken(demand);
  const shaken = isQuake ? shakingTrouble(earth) : shakenFill(inputs, demand);
  if (shaken !== undefined) return { because: shaken };
  const situations = isQuake ? [...situationsOf(inputs), ...shakenSituations(quakeFactor(demand))] : situationsOf(inputs);
  const top = topForces(inputs, demand, calc);
  if (!inputs.spread && isLoaded(top)) return { because: "nobody says what length of the wall carries the forces of its post: state `post width`" };
  const { factor: f_D, note } = deadFactor(demand);
  calc.note(note);
  const { height: h, thickness: t_w, fprime_c } = inputs;
  if (calc(slenderness, { h, t_w }) <= slender) return { top, f_D, delta: 1, situations };
  const { depth: z, width: b } = sectionAt(inputs, 0, calc);
  const N_w = calc(axialAt, { P: top.P, b, s_e: 0, M_b: 0, f_D, t_w, z });
  if (!(N_w > 0)) return { top, f_D, delta: 1, situations };
  const delta = calc(magnification, { N_w, P_c: calc(bucklingLoad, { fprime_c, t_w, h }) });
  return delta >= 1 ? { top, f_D, delta, situations } : { because: "the wall is so slender that it buckles under this load: thicken it" };
}

/** Forces at a section. With the fill its pressure takes the factor of a load that adds. */
export function forcesAt(inputs: StemInputs, section: StemSection, situation: Situation, { top, f_D, delta }: Combined, calc: Calc): AtStem {
  const { P, across: V_n, along: V_l, turn: M_n, turnAlong: M_l } = situation.hasPost ? top : nothing;
  const { depth: z, arm: a, width: b, offset: e_b } = section;
  const t_w = inputs.thickness;
  const hasTurn = M_l !== 0 || V_l !== 0 || (P !== 0 && e_b !== 0);
  const M_b = hasTurn ? calc(turnAlongAt, { M_l, V_l, a, P, e_b }) : 0;
  const mean = calc(axialAt, { P, b, s_e: 0, M_b: 0, f_D, t_w, z });
  const still = calc(momentAt, { delta, M_n, V_n, a, b, f_H: earthFactor.strength.adds, M_e: situation.hasFill ? section.soilMoment : 0 });
  const M_w = situation.quake === undefined || !section.quake ? still : calc(momentShaken, { M_w: still, delta, f_E: situation.quake, M_q: section.quake.moment });
  return {
    least: M_b === 0 ? mean : calc(axialAt, { P, b, s_e: -1, M_b, f_D, t_w, z }),
    most: M_b === 0 ? mean : calc(axialAt, { P, b, s_e: 1, M_b, f_D, t_w, z }),
    mean,
    moment: M_w,
    pulled: M_w >= 0 ? "fill" : "free",
  };
}

/** Shear across the wall over the length that carries the post, N. */
export function shearOf({ width: b, soilShear: V_e, quake }: StemSection, { hasPost, hasFill, quake: f_E }: Situation, { top }: Combined, calc: Calc): number {
  const V_n = hasPost ? top.across : 0;
  const push = f_E === undefined || !quake ? V_n : calc(pushShaken, { V_n, f_E, V_q: quake.shear, b });
  return calc(shearAt, { V_n: push, f_H: earthFactor.strength.adds, V_e: hasFill ? V_e : 0, b });
}

/** Strength reduction by strain, ACI 318-19 Table 21.2.2, without a spiral. */
export function reductionOf({ edition, f_y }: Pick<StemInputs, "edition" | "f_y">, calc: Calc): Reduction {
  return { pressed: 0.65, pulledFrom: edition === "ACI 318-14" ? calc(pulledStrainEarlier, {}) : calc(pulledStrain, { f_y, E_s: steelModulus.value }) };
}

/** A section with its bars. */
export interface Barred {
  readonly section: WallSection;
  readonly strength: WallStrength;
}

type Stress = (bar: Vertical) => number;

/** The bars of all faces, each up to the stress it is developed for. */
export function barredOf(inputs: StemInputs, faces: readonly Pick<Face, "vertical">[], stressOf: Stress, calc: Calc): Barred {
  const { thickness, fprime_c, f_y } = inputs;
  const layers = faces.flatMap(({ vertical }) => vertical.map((one) => ({ from: one.from, area: calc(areaPerLength, { A_b: one.area, s: one.spacing }), stress: stressOf(one) })));
  const section: WallSection = { thickness, layers, fprime_c, f_y, E_s: steelModulus.value };
  return { section, strength: wallStrength(section, reductionOf(inputs, calc)) };
}

export const stemBarsAt = (inputs: StemInputs, z: number, calc: Calc): Barred => barredOf(inputs, inputs.faces, (one) => stressAt(inputs, one, z, calc), calc);
