/**
 * Dowels in rows, in one direction: what the far row pulls and how the footing presses, from the axial force and the moment.
 *
 * The footing is rigid and bears by linear pressure without tension. The pressed strip ends at or before the dowels that pull, so the resultant
 * of the pressure stands at least g from the middle. With that least arm the pull is the exact one where a dowel just begins to pull, and more
 * than it beyond, whatever the stiffness of rock and bars. Rows between the outer ones share a net uplift and not what the moment adds.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type HeldRows, heldRows } from "../../mechanics/held-rows.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

const axial = { kind: "force", meaning: "axial force that goes with the moment, compression positive", range: [-1e5, 1e5] } as const;
const across = { kind: "moment", meaning: "moment at the underside", range: [1, 1e5] } as const;
const side = { kind: "length", meaning: "side of the footing across the axis of the moment" } as const;
const reach = { kind: "length", meaning: "distance between the outer rows" } as const;
const arm = { kind: "length", meaning: "least distance of the bearing resultant from the center" } as const;
const pull = { kind: "force", meaning: "pull on one dowel of the far row" } as const;
const inRow = { kind: "number", meaning: "dowels in one row" } as const;
const resultant = { kind: "force", meaning: "resultant of the bearing" } as const;
const other = { kind: "length", meaning: "side of the footing along the axis of the moment" } as const;
const pressure = { kind: "pressure", meaning: "pressure at the pressed edge" } as const;

export const oneRowPull = formula({
  id: "rock.one-row-pull",
  text: "T_r = max(3 * M_c / B_c, N) - N",
  source: "statics with the least arm B/3; derived",
  symbols: { T_r: { kind: "force", meaning: "pull on the row of dowels" }, M_c: across, B_c: side, N: axial },
});

export const rowPull = formula({
  id: "rock.pull-in-row",
  text: "T_i = T_r / n_r",
  source: "statics",
  symbols: { T_i: pull, T_r: { kind: "force", meaning: "pull on the row of dowels" }, n_r: inRow },
});

export const outerRows = formula({
  id: "rock.outer-rows",
  text: "s_o = s * (m - 1)",
  source: "geometry",
  symbols: { s_o: reach, s: { kind: "length", meaning: "spacing of the rows", field: "foundations.*.dowels.spacing" }, m: { kind: "number", meaning: "rows one behind the other", range: [2, 20] } },
});

export const leastArm = formula({
  id: "rock.least-arm",
  text: "g = (2 * B_c - s_o) / 6",
  source: "linear pressure from the edge to the far row; derived",
  symbols: { g: arm, B_c: side, s_o: reach },
});

export const rowsKern = formula({
  id: "rock.rows-kern",
  text: "r = s_o * (m + 1) / (6 * (m - 1))",
  source: "statics of evenly spaced rows: the near one goes slack at this eccentricity of a pull; derived",
  symbols: { r: { kind: "length", meaning: "eccentricity of a pull at which the near row goes slack" }, s_o: reach, m: { kind: "number", meaning: "rows one behind the other", range: [2, 20] } },
});

export const farRowPull = formula({
  id: "rock.far-row-pull",
  text: "T_i = N * r <= -M_c ? M_c / (m * n_r * r) - N / (m * n_r) : N < 0 * N ? (M_c + N * r) / ((g + s_o / 2) * n_r) - 2 * N / (m * n_r) : (max(M_c, N * g) - N * g) / ((g + s_o / 2) * n_r)",
  source: "statics of rows: all pulling, or the far one with what the moment adds; derived",
  symbols: {
    T_i: pull,
    N: axial,
    M_c: across,
    r: { kind: "length", meaning: "eccentricity of a pull at which the near row goes slack" },
    g: arm,
    s_o: reach,
    m: { kind: "number", meaning: "rows one behind the other", range: [2, 20] },
    n_r: inRow,
  },
});

export const oneRowBearing = formula({
  id: "rock.one-row-bearing",
  text: "C = max(3 * M_c / B_c, N)",
  source: "statics: axial force and the pull of the row",
  symbols: { C: resultant, M_c: across, B_c: side, N: axial },
});

export const rowsBearing = formula({
  id: "rock.rows-bearing",
  text: "C = N < 0 * N ? max(M_c + N * r, 0 * M_c) / (g + s_o / 2) : N + (max(M_c, N * g) - N * g) / (g + s_o / 2)",
  source: "statics: axial force and the pull of the rows",
  symbols: { C: resultant, N: axial, M_c: across, r: { kind: "length", meaning: "eccentricity of a pull at which the near row goes slack" }, g: arm, s_o: reach },
});

export const resultantArm = formula({
  id: "rock.resultant-arm",
  text: "e = min(M_c / C, g)",
  source: "statics: where the dowels pull, no farther out than the least arm",
  symbols: { e: { kind: "length", meaning: "distance of the bearing resultant from the center" }, M_c: across, C: { ...resultant, range: [1e2, 1e5] }, g: arm },
});

export const edgePressure = formula({
  id: "rock.edge-pressure",
  text: "q_i = e <= B_c / 6 ? C / (B_c * L_c) * (1 + 6 * e / B_c) : 2 * C / (3 * L_c * (B_c / 2 - e))",
  source: "linear pressure under a rigid rectangle",
  symbols: { q_i: pressure, C: { ...resultant, range: [1e2, 1e5] }, e: { kind: "length", meaning: "distance of the bearing resultant from the center", range: [0, 0.4] }, B_c: { ...side, range: [1, 3] }, L_c: other },
});

export const oneRowArm = formula({
  id: "rock.one-row-arm",
  text: "g = B_c / 3",
  source: "linear pressure on half of the underside",
  symbols: { g: arm, B_c: side },
});

/** One direction of a footing: its side across the axis of the moment and along it, and its rows. */
export interface Direction {
  readonly across: number;
  readonly along: number;
  readonly rows: number;
  readonly inRow: number;
  /** Of the rows, m; no number where there is one. */
  readonly spacing: number;
}

/** Rows of dowels along a wall and the distance between two of them, m; `width` that of its footing. */
export function readWallRows(support: Support, gather: Gather, width: number): { readonly rows: number; readonly rowSpacing: number } {
  const dowels = support.foundation?.fields.dowels?.value;
  const rows = gather.may(dowels?.rows) ?? 1;
  const rowSpacing = rows > 1 ? gather.need(dowels?.["row spacing"], "distance between the two rows of dowels (`row spacing`)") : Number.NaN;
  if (rowSpacing >= width) gather.block("the two rows of dowels stand wider apart than the footing: reduce `row spacing`");
  return { rows, rowSpacing };
}

/** Pull on one dowel of the far row, N; M_c is not below zero. */
export function pullIn(of: Direction, N: number, M_c: number, calc: Calc): number {
  const { across: B_c, rows: m, inRow: n_r } = of;
  if (m === 1) return calc(rowPull, { T_r: calc(oneRowPull, { M_c, B_c, N }), n_r });
  const s_o = calc(outerRows, { s: of.spacing, m });
  return calc(farRowPull, { N, M_c, r: calc(rowsKern, { s_o, m }), g: calc(leastArm, { B_c, s_o }), s_o, m, n_r });
}

/** Resultant of the bearing in the same state, N, and its distance from the center, m; both zero where nothing presses. */
export interface Bearing {
  readonly C: number;
  readonly e: number;
}

const nothing: Bearing = { C: 0, e: 0 };

export function bearingIn(of: Direction, N: number, M_c: number, calc: Calc): Bearing {
  const { across: B_c, rows: m } = of;
  if (m === 1) {
    const C = calc(oneRowBearing, { M_c, B_c, N });
    return C > 0 ? { C, e: calc(resultantArm, { M_c, C, g: calc(oneRowArm, { B_c }) }) } : nothing;
  }
  const s_o = calc(outerRows, { s: of.spacing, m });
  const g = calc(leastArm, { B_c, s_o });
  const C = calc(rowsBearing, { N, M_c, r: calc(rowsKern, { s_o, m }), g, s_o });
  return C > 0 ? { C, e: calc(resultantArm, { M_c, C, g }) } : nothing;
}

/** Pressure at the pressed edge, Pa. */
export function pressureIn(of: Direction, N: number, M_c: number, calc: Calc): number {
  const { C, e } = bearingIn(of, N, M_c, calc);
  return C > 0 ? calc(edgePressure, { C, e, B_c: of.across, L_c: of.along }) : 0;
}

/** What presses and what pulls, laid out over the underside: `M` about its middle, pressing the high end of the axis where it is positive. */
export function heldIn(of: Direction, axis: "x" | "y", places: readonly number[], N: number, M: number, calc: Calc): HeldRows {
  const M_c = M < 0 ? -M : M;
  const { across, along, rows, inRow, spacing } = of;
  const far = pullIn(of, N, M_c, calc);
  const { C, e } = bearingIn(of, N, M_c, calc);
  return calc.routine(heldRows, { axis, toward: M < 0 ? -1 : 1, across, along, C, e, N, rows, spacing, inRow, places, far });
}

export const pullFormulas = [oneRowPull, rowPull, outerRows, leastArm, rowsKern, farRowPull] as const;
/** What the resultant of the bearing is found by. */
export const bearingFormulas = [oneRowArm, oneRowBearing, outerRows, leastArm, rowsKern, rowsBearing, resultantArm] as const;
export const pressureFormulas = [...bearingFormulas, edgePressure] as const;
