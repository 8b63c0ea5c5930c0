/** The joint of pedestal and pad: its forces, its bars, and how they share tension with bearing. */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { barsOnCircle, barsOnRectangle } from "../../mechanics/bars-around.js";
import { plateContact, type PlateContact } from "../../mechanics/plate-contact.js";
import type { Unstable } from "../../mechanics/plate-contact.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Support } from "../../project/model.js";
import { leastDistance } from "../anchors/rod-edges.js";
import { concreteModulus, modularRatio } from "../base/distribution.js";
import type { Gather } from "../contract.js";
import { momentX, momentY } from "../pier/grade-forces.js";
import { deadFactor } from "../site/dead-factor.js";
import { isFooting, pedestalAreaOf, roundPedestal, squaredPedestal } from "./body.js";
import { equalSquare, type PadInputs, readPad } from "./pad.js";

export const hasPedestal = (support: Support): boolean => isFooting(support) && support.foundation?.fields.pedestal !== undefined;

export interface JointInputs extends PadInputs {
  readonly bar: { readonly name: string; readonly diameter: number; readonly area: number };
  readonly count: number;
  /** Places of the bars from the middle, m. */
  readonly places: readonly Point[];
  /** Sides of the bearing area: the pedestal, or the square of equal area. */
  readonly sides: { readonly x: number; readonly y: number };
  /** Least distance between neighboring bars, m. */
  readonly barSpacing: number;
}

export const barLine = formula({
  id: "footing.pedestal-bar-line",
  text: "s_b = c - 2 * c_c - d_b",
  source: "geometry",
  symbols: {
    s_b: { kind: "length", meaning: "distance of the outermost bars, center to center" },
    c: { kind: "length", meaning: "side or diameter of the pedestal" },
    c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover" },
    d_b: { kind: "length", meaning: "diameter of the bars" },
  },
});

export const jointArm = formula({
  id: "footing.joint-arm",
  text: "a_j = h_p + t_g + t_p",
  source: "geometry",
  symbols: {
    a_j: { kind: "length", meaning: "height of the column base above the pad" },
    h_p: { kind: "length", meaning: "height of the pedestal above the pad" },
    t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" },
  },
});

export const jointAxial = formula({
  id: "footing.joint-axial",
  text: "N_j = P + f_D * gamma_c * A_p * h_p",
  source: "statics",
  symbols: {
    N_j: { kind: "force", meaning: "axial force at the joint of pedestal and pad, compression positive", range: [-1e5, 1e5] },
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    A_p: { kind: "planArea", meaning: "area of the pedestal in plan" },
    h_p: { kind: "length", meaning: "height of the pedestal above the pad" },
  },
  constants: { gamma_c: "150 lbf/ft^3" },
});

const nowhere = { bar: { name: "", diameter: Number.NaN, area: Number.NaN }, count: Number.NaN, places: [], barSpacing: Number.NaN };

export function readJoint(support: Support, gather: Gather): JointInputs {
  const pad = readPad(support, gather);
  const { pedestal, cover: c_c } = pad;
  const square = pedestal.shape === "round" ? equalSquare.value({ D_p: pedestal.width }) : undefined;
  const sides = { x: square ?? pedestal.width, y: square ?? pedestal.length };
  const stated = gather.needs(support.foundation?.fields.bars, "vertical bars of the pedestal (`bars`)");
  const bar = stated && gather.needs(stated.bar, "size of the bars of the pedestal");
  if (!bar) return { ...pad, ...nowhere, sides };
  const count = gather.need(stated.count, "number of the bars of the pedestal");
  const x = barLine.value({ c: pedestal.width, c_c, d_b: bar.diameter });
  const y = barLine.value({ c: pedestal.length, c_c, d_b: bar.diameter });
  if (x <= 0 || y <= 0) gather.block("the bars with their cover do not fit into the pedestal");
  const places = pedestal.shape === "round" ? barsOnCircle(count, x) : barsOnRectangle(count, x, y);
  if (places === undefined) gather.block(`where ${count} bars stand in a rectangular pedestal is not known: an even number of four or more does`);
  return { ...pad, bar: { name: bar.name, diameter: bar.diameter, area: bar.area }, count, places: places ?? [], sides, barSpacing: places ? leastDistance(places) : Number.NaN };
}

export interface Joint {
  readonly N_j: number;
  readonly M_x: number;
  readonly M_y: number;
  readonly A_p: number;
}

/** Forces at the joint. */
export function atJoint(inputs: JointInputs, demand: Demand, calc: Calc): Joint {
  const { base } = demand;
  const { factor: f_D } = deadFactor(demand);
  const { pedestal } = inputs;
  const A_p = pedestalAreaOf(inputs, calc);
  const a = calc(jointArm, { h_p: pedestal.height, t_g: inputs.grout, t_p: inputs.plate });
  return {
    N_j: calc(jointAxial, { P: base.P, f_D, A_p, h_p: pedestal.height }),
    M_x: calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a }),
    M_y: calc(momentY, { M_yb: base.My, V_x: base.Vx, a }),
    A_p,
  };
}

/** Bearing and tension of the bars at the joint as a cracked elastic section; bars in compression are not counted. */
export function shareAtJoint(inputs: JointInputs, { N_j, M_x, M_y }: Joint, calc: Calc): PlateContact | Unstable {
  const n = calc(modularRatio, { E_c: calc(concreteModulus, { fprime_c: inputs.fprime_c }) });
  if (inputs.pedestal.shape === "round") calc.note("The round pedestal bears as the square of equal area; its bars stand on their circle.");
  return calc.routine(plateContact, { width: inputs.sides.x, length: inputs.sides.y, rods: inputs.places, rodArea: inputs.bar.area, modularRatio: n, P: N_j, Mx: M_x, My: M_y });
}

export const jointFormulas = [roundPedestal, squaredPedestal, jointArm, jointAxial, momentX, momentY] as const;
export const shareFormulas = [...jointFormulas, concreteModulus, modularRatio] as const;
