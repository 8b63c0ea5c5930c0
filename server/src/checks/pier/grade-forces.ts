/** The column's shear and moment carried down from the base plate to a level of the pier, as resultants. */
import type { Forces } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

const shear = (axis: string) => ({ kind: "force", meaning: `shear at the column base toward the ${axis}`, range: [-1e5, 1e5] }) as const;
const moment = (axis: string, at: string) => ({ kind: "moment", meaning: `moment about the ${axis} axis ${at}`, range: [-1e5, 1e5] }) as const;

export const baseHeight = formula({
  id: "pier.base-height",
  text: "a = h_a + t_g + t_p",
  source: "geometry",
  symbols: {
    a: { kind: "length", meaning: "height of the top of the base plate above grade" },
    h_a: { kind: "length", meaning: "height of the top of concrete above grade", field: "foundations.*.above grade" },
    t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" },
  },
});

export const loweredGround = formula({
  id: "pier.lowered-ground",
  text: "a_i = a + z_i",
  source: "statics: the ground counted begins below the ignored depth",
  symbols: {
    a_i: { kind: "length", meaning: "height of the top of the base plate above the ground that is counted" },
    a: { kind: "length", meaning: "height of the top of the base plate above grade" },
    z_i: { kind: "distance", meaning: "ignored depth", field: "foundations.*.ignored depth" },
  },
});

export const momentX = formula({
  id: "pier.moment-x",
  text: "M_x = M_xb - V_y * a",
  source: "statics",
  symbols: {
    M_x: { kind: "moment", meaning: "moment about the east axis at the level below" },
    M_xb: moment("east", "at the column base"),
    V_y: shear("north"),
    a: { kind: "length", meaning: "height of the column base above that level" },
  },
});

export const momentY = formula({
  id: "pier.moment-y",
  text: "M_y = M_yb + V_x * a",
  source: "statics",
  symbols: {
    M_y: { kind: "moment", meaning: "moment about the north axis at the level below" },
    M_yb: moment("north", "at the column base"),
    V_x: shear("east"),
    a: { kind: "length", meaning: "height of the column base above that level" },
  },
});

export const shearResultant = formula({
  id: "pier.shear-resultant",
  text: "P_h = sqrt(V_x^2 + V_y^2)",
  source: "statics",
  symbols: { P_h: { kind: "force", meaning: "lateral force, resultant of both directions (P of the code)" }, V_x: shear("east"), V_y: shear("north") },
});

export const momentResultant = formula({
  id: "pier.moment-resultant",
  text: "M_h = sqrt(M_x^2 + M_y^2)",
  source: "statics",
  symbols: { M_h: { kind: "moment", meaning: "moment at that level, resultant of both directions" }, M_x: moment("east", "at that level"), M_y: moment("north", "at that level") },
});

export interface Lateral {
  /** Lateral force, N. */
  readonly force: number;
  /** Moment at the level, N·m. */
  readonly moment: number;
}

/** Resultants `a` below the column base. */
export function lateralAt(base: Forces, a: number, calc: Calc): Lateral {
  const M_x = calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a });
  const M_y = calc(momentY, { M_yb: base.My, V_x: base.Vx, a });
  return { force: calc(shearResultant, { V_x: base.Vx, V_y: base.Vy }), moment: calc(momentResultant, { M_x, M_y }) };
}
