/**
 * Knee-braced columns. Between the foot of its brace and its top such a column is held twice by the roof; below the foot it bends like a column whose
 * top is held. Forces "at the top" are those on the section just below the foot of the brace, each moment at the foot in its own plane: what bends the
 * column most. From them come, by statics, the force in the brace and what is left to the connection at the column top.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import { endsOf, type RoofColumn } from "../mechanics/rigid-roof.js";
import { reachOf, type KneeBrace } from "../mechanics/sway-stiffness.js";
import type { Ends } from "./sway-inputs.js";

const f = { kind: "distance", meaning: "height of the foot of the brace above the base" } as const;
const k = { kind: "ratio", meaning: "1 for moments about the north axis, -1 about the east axis", range: [-1, 1] } as const;
const b_k = { kind: "distance", meaning: "level distance from the column to where the brace meets the roof framing", field: "columns.*.knee brace.run" } as const;
const a_k = { kind: "length", meaning: "piece of the column between the foot of the brace and the top", field: "columns.*.knee brace.below top" } as const;
const H_k = { kind: "force", meaning: "level force of the braces on the column" } as const;

const footMoment = formula({
  id: "actions.knee.foot-moment",
  text: "M_f = M_b - k * V * f",
  source: "statics: the section just below the foot of the brace",
  symbols: { M_f: { kind: "moment", meaning: "moment below the foot of the brace" }, M_b: { kind: "moment", meaning: "moment at the column base" }, k, V: { kind: "force", meaning: "shear of the column" }, f },
});

export const pieceShear = formula({
  id: "actions.knee.piece-shear",
  text: "V_t = k * M_f / a_k",
  source: "statics: the piece above the brace ends at a pinned top",
  symbols: { V_t: { kind: "force", meaning: "shear at the column top" }, k, M_f: { kind: "moment", meaning: "moment at the foot of the brace" }, a_k },
});

export const braceLevel = formula({
  id: "actions.knee.brace-level",
  text: "H_k = V - V_t",
  source: "statics of the joint at the foot of the brace",
  symbols: { H_k, V: { kind: "force", meaning: "shear of the column below the brace" }, V_t: { kind: "force", meaning: "shear at the column top" } },
});

export const braceAxial = formula({
  id: "actions.knee.brace-axial",
  text: "N_k = abs(H_k) * sqrt(a_k^2 + b_k^2) / (b_k * n_k)",
  source: "statics: the brace along its own line; two braces share alike",
  symbols: { N_k: { kind: "force", meaning: "axial force in one brace, either way" }, H_k, a_k, b_k, n_k: { kind: "number", meaning: "braces at the column in this direction", range: [1, 2] } },
});

const topAxial = formula({
  id: "actions.knee.top-axial",
  text: "P_t = P + s_k * H_k * a_k / b_k",
  source: "statics of the joint at the foot of the brace; s_k is the side of a single brace, 0 where two balance each other",
  symbols: {
    P_t: { kind: "force", meaning: "axial force at the column top", range: [-1e5, 1e5] },
    P: { kind: "force", meaning: "axial force of the column below the brace", range: [-1e5, 1e5] },
    s_k: { kind: "ratio", meaning: "side of the brace, 1 or -1, or 0 of two", range: [-1, 1] },
    H_k,
    a_k,
    b_k,
  },
});

const ratio = formula({ id: "actions.knee.piece", text: "a_k = H - f", source: "geometry", symbols: { a_k, H: { kind: "distance", meaning: "column height", field: "columns.*.height" }, f } });

const isBraced = ({ x, y }: Ends): boolean => x.knee !== undefined || y.knee !== undefined;

/** Forces of a column at the section where the roof takes hold of it, from those at its base; nothing acts between the two. */
export function atReach(column: RoofColumn, top: Forces, base: Forces, calc: Calc): Forces {
  const ends = endsOf(column);
  if (!isBraced(ends)) return top;
  const reach = reachOf(ends, column.height);
  return {
    ...top,
    My: ends.x.knee ? calc(footMoment, { M_b: base.My, k: 1, V: base.Vx, f: reach.x }) : top.My,
    Mx: ends.y.knee ? calc(footMoment, { M_b: base.Mx, k: -1, V: base.Vy, f: reach.y }) : top.Mx,
  };
}

/** A brace with the piece of the column above its foot, m. */
interface Braced extends KneeBrace {
  readonly a_k: number;
}

const bracedIn = (knee: KneeBrace | undefined, height: number, calc: Calc): Braced | undefined => knee && { ...knee, a_k: calc(ratio, { H: height, f: knee.foot }) };

/** Shear that is left to the top, and level force of the braces, in one plane. */
function parted(V: number, M_f: number, sense: 1 | -1, { a_k }: Braced, calc: Calc): { readonly V_t: number; readonly H: number } {
  const V_t = calc(pieceShear, { k: sense, M_f, a_k });
  return { V_t, H: calc(braceLevel, { V, V_t }) };
}

/** What the connection at the column top takes, from the forces below the foot of the brace. What the wind puts on the piece between is left out. */
export function forcesAtTop(at: Forces, ends: Ends | undefined, height: number, calc: Calc): Forces {
  if (!ends || !isBraced(ends)) return at;
  let { P, Vx, Vy, Mx, My } = at;
  const x = bracedIn(ends.x.knee, height, calc);
  if (x) {
    const { V_t, H } = parted(Vx, My, 1, x, calc);
    P = calc(topAxial, { P, s_k: x.sides === "both" ? 0 : x.sides, H_k: H, a_k: x.a_k, b_k: x.run });
    [Vx, My] = [V_t, 0];
  }
  const y = bracedIn(ends.y.knee, height, calc);
  if (y) {
    const { V_t, H } = parted(Vy, Mx, -1, y, calc);
    P = calc(topAxial, { P, s_k: y.sides === "both" ? 0 : y.sides, H_k: H, a_k: y.a_k, b_k: y.run });
    [Vy, Mx] = [V_t, 0];
  }
  return { ...at, P, Vx, Vy, Mx, My };
}
