/**
 * What carries the shear of a base before its rods do: a lug in the directions it stands against, or friction where the notebook counts on it.
 * Friction is never counted where the base lifts, in an earthquake, or on leveling nuts without grout, and it never works together with the
 * rods: it carries a combination alone or not at all. A twist of the base is left to the rods whole, and no friction is counted beside it.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Forces } from "../../mechanics/forces.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { twistFormulas, twistOnRods, type Twist, type TwistPath } from "./base-twist.js";
import { rodPlaces } from "./rod-places.js";

export interface ShearPath extends TwistPath {
  readonly lugTakesX: boolean;
  readonly lugTakesY: boolean;
  readonly isFrictionCounted: boolean;
}

export const frictionStrength = formula({
  id: "base.friction-strength",
  text: "phiV_f = phi * mu * P",
  source: "AISC Design Guide 1, 3rd ed., chapter 4: mu = 0.40 of grout on steel, phi = 0.75 (from memory)",
  symbols: { phiV_f: { kind: "force", meaning: "design strength of friction" }, P: { kind: "force", meaning: "compression of the base in the same combination" } },
  constants: { phi: "0.75", mu: "0.40" },
});

export const shearOfBase = formula({
  id: "base.shear-of-base",
  text: "V_b = sqrt(V_x^2 + V_y^2)",
  source: "statics",
  symbols: { V_b: { kind: "force", meaning: "shear of the base" }, V_x: { kind: "force", meaning: "shear toward the east" }, V_y: { kind: "force", meaning: "shear toward the north" } },
});

/** Formulas that {@link shearOnRods} may calculate with. */
export const shearPathFormulas = [shearOfBase, frictionStrength, ...twistFormulas] as const;

export function readShearPath(support: Support, gather: Gather): ShearPath {
  const fields = support.base?.fields;
  const resists = gather.may(gather.may(fields?.["shear lug"])?.resists);
  const standsFree = (gather.may(fields?.["leveling nuts"]) ?? false) && gather.may(fields?.grout) === 0;
  const places = rodPlaces(fields?.anchors?.value);
  return {
    // What stands in the way of their places the checks of the base say.
    rods: !places || "problem" in places ? [] : places,
    isWelded: gather.may(fields?.["washers welded"]) ?? false,
    lugTakesX: resists === "along x" || resists === "both ways",
    lugTakesY: resists === "along y" || resists === "both ways",
    isFrictionCounted: (gather.may(fields?.friction) ?? false) && !standsFree,
  };
}

/** The forces of a combination with the shear that is left to the rods, and what a twist asks of them. */
export interface RodShear extends Forces {
  readonly twist?: Twist;
}

/** The shear that is left to the rods; or why they cannot hold the base. */
export function shearOnRods(path: ShearPath, demand: Demand, calc: Calc): RodShear | { readonly because: string } {
  const { lugTakesX, lugTakesY, isFrictionCounted } = path;
  const { base } = demand;
  const left: Forces = lugTakesX || lugTakesY ? { ...base, Vx: lugTakesX ? 0 : base.Vx, Vy: lugTakesY ? 0 : base.Vy } : base;
  if (left !== base) calc.note("The shear lug takes the shear it stands against.");
  if (base.Mz !== undefined && base.Mz !== 0) {
    const twist = twistOnRods(path, base.Mz, calc);
    return "because" in twist ? twist : { ...left, twist };
  }
  if (!isFrictionCounted || (left.Vx === 0 && left.Vy === 0)) return left;
  if (!(left.P > 0)) {
    calc.note("The base is not pressed down: no friction.");
    return left;
  }
  if (demand.earthquake !== undefined) {
    calc.note("No friction is counted in an earthquake.");
    return left;
  }
  const carried = calc(frictionStrength, { P: left.P });
  if (carried < calc(shearOfBase, { V_x: left.Vx, V_y: left.Vy })) {
    calc.note("Friction alone does not carry the shear: the rods are asked for all of it.");
    return left;
  }
  calc.note("Friction carries the shear of this combination.");
  return { ...left, Vx: 0, Vy: 0 };
}
