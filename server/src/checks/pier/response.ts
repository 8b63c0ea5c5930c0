/**
 * How a pier answers a push and a moment from the column: movement, lean, moment and shear along it, with the soil followed by springs or p-y
 * curves as the notebook states them. Used by the checks of movement and lean, by the sway of the column, and for the concrete of the pier.
 */
import type { Forces } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { beamOnSprings, type BeamAnswer } from "../../mechanics/beam-on-springs.js";
import type { Support } from "../../project/model.js";
import { concreteModulus } from "../base/distribution.js";
import type { Gather } from "../contract.js";
import { readPier, type PierBody } from "./body.js";
import { baseHeight, momentX, momentY, lateralAt, momentResultant, shearResultant } from "./grade-forces.js";
import { isHeld, readHold } from "./slab.js";
import { layersOf, readPierSoil, springStiffness, type PierSoil } from "./soil.js";

const inertia = { kind: "inertia", meaning: "second moment of area of the whole section" } as const;

export const roundInertia = formula({
  id: "pier.round-inertia",
  text: "I_g = pi * D^4 / 64",
  source: "geometry",
  symbols: { I_g: inertia, D: { kind: "length", meaning: "diameter of the pier", field: "foundations.*.diameter" } },
});

export const squareInertia = formula({
  id: "pier.square-inertia",
  text: "I_g = w^4 / 12",
  source: "geometry",
  symbols: { I_g: inertia, w: { kind: "length", meaning: "side of the square pier", field: "foundations.*.width" } },
});

/** The stiffness is the product of a stress and an inertia, which is a force times an area; kept apart from its parts for the solver. */
export const crackedModulus = formula({
  id: "pier.cracked-modulus",
  text: "E_r = 0.35 * E_c",
  source: "ACI 318-19 Table 6.6.3.1.1(a): 0.35 of the whole section for members that bend (from memory)",
  symbols: {
    E_r: { kind: "steelStress", meaning: "modulus of the concrete reduced for cracks" },
    E_c: { kind: "steelStress", meaning: "modulus of elasticity of the concrete" },
  },
});

export const countedLength = formula({
  id: "pier.counted-length",
  text: "L_c = d - z_i",
  source: "statics: the ground counted begins below the ignored depth",
  symbols: {
    L_c: { kind: "distance", meaning: "length of the pier in the ground that is counted" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth", range: [2, 10] },
    z_i: { kind: "distance", meaning: "ignored depth", field: "foundations.*.ignored depth", range: [0, 1.5] },
  },
});

/** Everything the answer of a pier depends on besides the load; plain data. */
export interface PierInGround extends PierBody {
  readonly soil: PierSoil;
  readonly concrete: number;
  /** Depth at the top that holds nothing, m. */
  readonly ignored: number;
  /** A rigid slab tied to the pier holds it at grade. */
  readonly held: boolean;
  readonly grout: number;
  readonly plate: number;
}

export function readPierInGround(support: Support, gather: Gather): PierInGround {
  const pier = support.foundation?.fields;
  const ignored = gather.may(pier?.["ignored depth"]) ?? 0;
  const body = readPier(support, gather);
  if (ignored >= body.depth) gather.block("the ignored depth reaches the underside of the pier: nothing is left to hold it. Deepen the pier");
  return {
    ...body,
    soil: readPierSoil(support, gather),
    concrete: gather.need(pier?.concrete, "concrete strength"),
    ignored,
    held: isHeld(readHold(support, gather)),
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
  };
}

/** The formulas a response is made of, for the lists of the checks that use it. */
export const responseFormulas = [baseHeight, momentX, momentY, shearResultant, momentResultant, concreteModulus, crackedModulus, roundInertia, squareInertia, springStiffness];

/** Height of the top of the base plate above grade, m. */
export const heightOf = ({ aboveGrade, grout, plate }: PierInGround, calc: Calc): number => calc(baseHeight, { h_a: aboveGrade, t_g: grout, t_p: plate });

/**
 * The pier under the forces at a column base: push and moment at grade as resultants in one plane and one sense, the safe side where they are
 * not. Undefined where the solution fails.
 */
export function pierResponse(pier: PierInGround, base: Forces, calc: Calc): BeamAnswer | undefined {
  const { force: H, moment: M } = lateralAt(base, heightOf(pier, calc), calc);
  const E = calc(crackedModulus, { E_c: calc(concreteModulus, { fprime_c: pier.concrete }) });
  const I = pier.shape === "round" ? calc(roundInertia, { D: pier.size }) : calc(squareInertia, { w: pier.size });
  pier.soil.words.forEach((words, i) => calc.note(`${pier.soil.words.length === 1 ? "The ground" : `Layer ${i + 1} from the top`} is followed by ${words}.`));
  if (pier.ignored > 0) calc.note("The ignored depth holds nothing, and the ground that counts begins below it.");
  if (pier.soil.water === undefined) calc.note("No water table is given: the ground is taken as dry along the pier.");
  return calc.routine(beamOnSprings, {
    length: pier.depth,
    width: pier.size,
    E,
    I,
    H,
    M,
    P: Math.max(0, base.P),
    held: pier.held,
    layers: layersOf(pier.soil, pier.size, calc),
    surface: pier.ignored,
    water: pier.soil.water,
  });
}

/** What grows the movement of a pier: a load no larger in each of these moves it no farther. */
export function pierLoad(pier: PierInGround, base: Forces, calc: Calc): readonly number[] {
  const { force, moment } = lateralAt(base, heightOf(pier, calc), calc);
  return [force, moment, Math.max(0, base.P)];
}
