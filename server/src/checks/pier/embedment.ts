/**
 * The pier leans over: the soil beside it gives way near the top on one side and near the toe on the other. In the field the pier
 * stands out of plumb after a storm, with a gap behind it and a bulge before it.
 *
 * IBC 2021 1807.3.2.1, Eq. 18-1 (free at grade) and 1807.3.2.2, Eq. 18-2 and 18-3 (restrained at grade by a rigid slab). Allowable-stress loads
 * against allowable lateral bearing; the formulas hold their own safety.
 *
 * With S1 = p d/3, Eq. 18-1 is the cubic d³ = 7.02 P d/(p b) + 7.65 P h/(p b), which has one positive root, so that nothing is tried over.
 * The pressure is counted to a depth of at most 12 ft, S1 = p min(d, 12 ft)/3, the strict reading of the code's limit.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { cubicRoot } from "../../mechanics/cubic.js";
import { check, weigh } from "../contract.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { isPole, isShort, readPier, type PierBody } from "./body.js";
import { baseHeight, type Lateral, lateralAt, loweredGround, momentResultant, momentX, momentY, shearResultant } from "./grade-forces.js";
import { standsAlone } from "./crowd.js";
import { isHeld, readHold } from "./slab.js";
import { falls, levelGround } from "./slope.js";

const free = "IBC 2021 1807.3.2.1, Eq. 18-1";
const restrained = "IBC 2021 1807.3.2.2, Eq. 18-2 and 18-3 (coefficient from memory)";
const cap = { d_cap: "12 ft" } as const;

const width = { kind: "length", meaning: "width of the pier: diameter, or diagonal of a square" } as const;
const lateral = { kind: "pressurePerDepth", meaning: "allowable lateral bearing per depth" } as const;
const force = { kind: "force", meaning: "lateral force (P of the code)" } as const;
const moment = { kind: "moment", meaning: "moment at the ground that is counted (P h of the code)" } as const;

export const diagonal = formula({
  id: "pier.diagonal",
  text: "b = w * sqrt(2)",
  source: "IBC 2021 1807.3.2.1: b is the diagonal of a square post or footing",
  symbols: { b: width, w: { kind: "length", meaning: "side of the square pier", field: "foundations.*.width" } },
});

export const doubledBearing = formula({
  id: "pier.doubled-lateral-bearing",
  text: "p = 2 * p_t",
  source: "IBC 2021 1806.3.4 (wording from memory)",
  symbols: { p: { ...lateral, meaning: "allowable lateral bearing per depth, doubled for an isolated pole" }, p_t: { ...lateral, field: "ground.*.lateral bearing" } },
});

export const leverArm = formula({
  id: "pier.lever-arm",
  text: "h = M_h / P_h",
  source: "statics",
  symbols: { h: { kind: "distance", meaning: "height of the lateral force above the ground that is counted" }, M_h: moment, P_h: force },
});

export const linearTerm = formula({
  id: "pier.embedment-linear-term",
  text: "c_1 = 3 * 2.34 * P_h / (p * b)",
  source: free,
  symbols: { c_1: { kind: "planArea", meaning: "linear term of Eq. 18-1 written as a cubic in the depth" }, P_h: force, p: lateral, b: width },
});

export const constantTerm = formula({
  id: "pier.embedment-constant-term",
  text: "c_0 = 3 * 2.34 * 4.36 / 4 * M_h / (p * b)",
  source: free,
  symbols: { c_0: { kind: "volume", meaning: "constant term of Eq. 18-1 written as a cubic in the depth" }, M_h: moment, p: lateral, b: width },
});

export const thirdPointPressure = formula({
  id: "pier.pressure-at-third",
  text: "S_1 = p * min(d_0, d_cap) / 3",
  source: "IBC 2021 1807.3.2.1: allowable lateral pressure at a third of the depth, the depth counted to 12 ft at most",
  symbols: { S_1: { kind: "pressure", meaning: "allowable lateral pressure at a third of the depth" }, p: lateral, d_0: { kind: "distance", meaning: "depth, root of the cubic" } },
  constants: cap,
});

export const lengthA = formula({
  id: "pier.length-A",
  text: "A = 2.34 * P_h / (S_1 * b)",
  source: free,
  symbols: { A: { kind: "distance", meaning: "A of Eq. 18-1" }, P_h: force, S_1: { kind: "pressure", meaning: "allowable lateral pressure at a third of the depth" }, b: width },
});

export const freeDepth = formula({
  id: "pier.free-depth",
  text: "d_r = 0.5 * A * (1 + sqrt(1 + 4.36 * h / A))",
  source: free,
  symbols: {
    d_r: { kind: "distance", meaning: "depth needed in the ground that is counted" },
    A: { kind: "distance", meaning: "A of Eq. 18-1" },
    h: { kind: "distance", meaning: "height of the lateral force above the ground that is counted" },
  },
});

export const momentDepth = formula({
  id: "pier.moment-depth",
  text: "d_r = A / 2 + sqrt(A^2 / 4 + 2.34 * 4.36 / 4 * M_h / (S_1 * b))",
  source: `${free}, with P h written as the moment`,
  symbols: {
    d_r: { kind: "distance", meaning: "depth needed in the ground that is counted" },
    A: { kind: "distance", meaning: "A of Eq. 18-1" },
    M_h: moment,
    S_1: { kind: "pressure", meaning: "allowable lateral pressure at a third of the depth" },
    b: width,
  },
});

export const restrainedRoot = formula({
  id: "pier.restrained-root",
  text: "d_0 = cbrt(4.25 * M_g / (p * b))",
  source: `${restrained}, solved for the depth with S3 = p d`,
  symbols: { d_0: { kind: "distance", meaning: "depth, root of the cubic" }, M_g: { kind: "moment", meaning: "moment at grade" }, p: lateral, b: width },
});

export const toePressure = formula({
  id: "pier.pressure-at-toe",
  text: "S_3 = p * min(d_0, d_cap)",
  source: "IBC 2021 1807.3.2.2: allowable lateral pressure at the full depth, the depth counted to 12 ft at most",
  symbols: { S_3: { kind: "pressure", meaning: "allowable lateral pressure at the full depth" }, p: lateral, d_0: { kind: "distance", meaning: "depth, root of the cubic" } },
  constants: cap,
});

export const restrainedDepth = formula({
  id: "pier.restrained-depth",
  text: "d_r = sqrt(4.25 * M_g / (S_3 * b))",
  source: restrained,
  symbols: {
    d_r: { kind: "distance", meaning: "depth needed in the ground that is counted" },
    M_g: { kind: "moment", meaning: "moment at grade" },
    S_3: { kind: "pressure", meaning: "allowable lateral pressure at the full depth" },
    b: width,
  },
});

export const depthFromGrade = formula({
  id: "pier.depth-from-grade",
  text: "d_n = d_r + z_i",
  source: "statics: the ground counted begins below the ignored depth",
  symbols: {
    d_n: { kind: "distance", meaning: "depth needed below grade" },
    d_r: { kind: "distance", meaning: "depth needed in the ground that is counted" },
    z_i: { kind: "distance", meaning: "ignored depth", field: "foundations.*.ignored depth" },
  },
});

export interface EmbedmentInputs extends PierBody {
  readonly lateralBearing: GroundValue;
  readonly isolated: boolean;
  readonly restrained: boolean;
  /** The notebook says restrained, and what lies at grade holds nothing. */
  readonly looselyHeld: boolean;
  /** The ground falls away, and the lateral bearing is one stated for it. */
  readonly falls: boolean;
  /** What a pier less than two widths deep is taken as. */
  readonly short?: string | undefined;
  readonly ignored: number;
  readonly grout: number;
  readonly plate: number;
}

/** A depth, m, that is none: forces next to nothing would only lose their digits further on. */
const noDepth = 1e-6;

/** Beyond this height, m, the force is a moment in all but name, and the moment form is used. */
const highestForce = 1e4;

function depthWhenFree({ force: P_h, moment: M_h }: Lateral, p: number, b: number, calc: Calc): number {
  const c_1 = calc(linearTerm, { P_h, p, b });
  const c_0 = calc(constantTerm, { M_h, p, b });
  const d_0 = calc.routine(cubicRoot, { a: c_1, b: c_0 });
  if (d_0 < noDepth) return d_0;
  const S_1 = calc(thirdPointPressure, { p, d_0 });
  const A = calc(lengthA, { P_h, S_1, b });
  const h = P_h > 0 ? calc(leverArm, { M_h, P_h }) : Number.POSITIVE_INFINITY;
  if (h < highestForce) return calc(freeDepth, { A, h });
  calc.note("There is a moment and next to no lateral force: Eq. 18-1 is used with P h as the moment.");
  return calc(momentDepth, { A, M_h, S_1, b });
}

function depthWhenRestrained(M_g: number, p: number, b: number, calc: Calc): number {
  calc.note("A rigid slab holds the pier at grade. It has to take a reaction larger than the lateral force, which is held against its stated capacity.");
  const d_0 = calc(restrainedRoot, { M_g, p, b });
  if (d_0 < noDepth) return d_0;
  const S_3 = calc(toePressure, { p, d_0 });
  return calc(restrainedDepth, { M_g, S_3, b });
}

/** Permanent lateral loads are not short-term ones, which alone may count on the doubled value. */
const isShortTerm = (terms: readonly { readonly type: string }[]): boolean => terms.length === 0 || terms.some(({ type }) => type === "W" || type === "E");

const investigated = new Set(["D", "E", "F"]);

export const pierEmbedment = check({
  id: "pier.embedment",
  title: "Embedment of the pier",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1807.3.2",
  fails: "The soil beside the pier gives way and the pier leans over.",
  seen: "A column out of plumb after a storm, with a gap behind its pier and a bulge before it.",
  range:
    "A rigid straight pier in level ground, by the building code's formula. Resultants of shear and of moment are taken as acting in one plane and one sense, the safe side where they do not. " +
    "Lateral pressure is counted to a depth of 12 ft at most. The ground counted begins below the ignored depth. Ground that falls away needs a lateral bearing stated for that slope. Piers nearer than three widths are not checked; trenches and pools are not in it.",
  formulas: [baseHeight, loweredGround, momentX, momentY, shearResultant, momentResultant, doubledBearing, diagonal, restrainedRoot, toePressure, restrainedDepth, linearTerm, constantTerm, thirdPointPressure, lengthA, leverArm, freeDepth, momentDepth, depthFromGrade],
  applies: isPole,
  inputs: (support, gather, place): EmbedmentInputs => {
    standsAlone(support, gather, place, "the lateral strength");
    const ground = support.ground?.fields;
    const pier = support.foundation?.fields;
    const lateralBearing = groundValue(support, gather, ground?.["lateral bearing"], "lateral bearing", (soil) => soil.lateralPerDepth);
    const seismic = gather.may(support.site["seismic design category"]);
    if (lateralBearing.isPresumptive && seismic !== undefined && investigated.has(seismic))
      gather.block(`seismic design category ${seismic} asks for a geotechnical investigation (IBC 2021 1803.5.12), and presumptive lateral bearing will not do: state the lateral bearing from the report`);
    if (lateralBearing.isPresumptive) levelGround(support, gather, "presumptive lateral bearing", "state a lateral bearing found for that slope, or bring the ground level around the pier");
    const hold = readHold(support, gather);
    return {
      ...readPier(support, gather),
      lateralBearing,
      isolated: gather.may(ground?.["isolated poles"]) ?? false,
      restrained: isHeld(hold),
      looselyHeld: hold.isStated && !isHeld(hold),
      falls: falls(support),
      short: isShort(support) ? (gather.may(pier?.["taken as"]) ?? "pole and block") : undefined,
      ignored: gather.may(pier?.["ignored depth"]) ?? 0,
      grout: gather.may(support.base?.fields.grout) ?? 0,
      plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
    };
  },
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { ignored } = inputs;
    const a = calc(baseHeight, { h_a: inputs.aboveGrade, t_g: inputs.grout, t_p: inputs.plate });
    // A pier held at grade turns about grade; below it the slab's reaction only takes moment away.
    const below = ignored > 0 && !inputs.restrained ? calc(loweredGround, { a, z_i: ignored }) : a;
    const load = lateralAt(demand.base, below, calc);
    if (load.force === 0 && load.moment === 0) return weigh(0, inputs.depth, "distance");
    calc.note(inputs.lateralBearing.from);
    if (inputs.falls) calc.note("The ground falls away beside the pier: the lateral bearing stated is taken as one found for that slope.");
    if (inputs.looselyHeld) calc.note("What lies at grade is no rigid slab tied to the pier: the pier is taken as free at grade.");
    if (inputs.short !== undefined)
      calc.note(`The pier is less than two widths deep: it works as much like a block as like a pole${inputs.short === "pole" ? ", and is said to be taken as a pole alone" : inputs.restrained ? ", but is held at grade" : " and is looked at as a block as well (overturning, bearing, sliding)"}.`);
    let p = inputs.lateralBearing.value;
    if (inputs.isolated && isShortTerm(demand.combination.terms)) {
      calc.note("Half an inch of movement at grade is said to do no harm, and the load is short-term: the lateral bearing is doubled. The movement is held against that half inch on its own.");
      p = calc(doubledBearing, { p_t: p });
    }
    const b = inputs.shape === "square" ? calc(diagonal, { w: inputs.size }) : inputs.size;
    const counted = inputs.restrained ? depthWhenRestrained(load.moment, p, b, calc) : depthWhenFree(load, p, b, calc);
    if (ignored > 0) calc.note("The ignored depth is left out: the ground is taken to begin below it, for the pressure and, where the pier is free at grade, for the height of the force.");
    const needed = ignored > 0 ? calc(depthFromGrade, { d_r: counted, z_i: ignored }) : counted;
    return weigh(needed, inputs.depth, "distance");
  },
  advise: (inputs, outcome, say) =>
    `depth ${say.show(outcome.capacity, "distance")}; ${say.show(outcome.demand, "distance")} needed${inputs.restrained ? " with the slab at grade" : ""}. Deepen the pier or widen it.`,
});
