/**
 * A rigid footing held down by rows of bars across one of its directions: the linear pressure of its bearing resultant, and what each bar pulls.
 * The resultant and the pull of the far row are found before; here they are laid out over the underside.
 */
import type { Routine } from "../formula/types.js";
import type { Pull } from "./footing-section.js";
import type { FootingPressure } from "./partial-contact.js";
import type { Point } from "./rectangles.js";

export interface HeldRowsArgs {
  /** Axis along which the pressure changes, and the end of it that is pressed. */
  readonly axis: "x" | "y";
  readonly toward: 1 | -1;
  /** Side of the footing along that axis and the other one, m. */
  readonly across: number;
  readonly along: number;
  /** Resultant of the bearing, N, and its distance from the middle, m; zero where nothing presses. */
  readonly C: number;
  readonly e: number;
  /** Axial force, compression positive, N. */
  readonly N: number;
  /** Rows one behind the other and the distance between two of them, m; no distance where there is one. */
  readonly rows: number;
  readonly spacing: number;
  /** Bars in a row; where they stand along it, m from the middle. One place stands for all of them where they are alike along the footing. */
  readonly inRow: number;
  readonly places: readonly number[];
  /** Pull on one bar of the far row, N. */
  readonly far: number;
}

export interface HeldRows {
  readonly pressure: Pick<FootingPressure, "qmax" | "contact" | "plane">;
  readonly pulls: readonly Pull[];
}

/** So many places, evenly spaced about a middle; one stands on it. */
export const evenPlaces = (count: number, spacing: number, middle = 0): readonly number[] =>
  Array.from({ length: count }, (_, i) => (count === 1 ? middle : middle + (i - (count - 1) / 2) * spacing));

const at = (axis: "x" | "y", main: number, other: number): Point => (axis === "x" ? { x: main, y: other } : { x: other, y: main });

/** Linear pressure with its resultant C at e from the middle, toward the pressed end. */
function pressureOf({ axis, toward, across: B, along: L, C, e }: HeldRowsArgs): HeldRows["pressure"] {
  const none = { atCenter: 0, alongX: 0, alongY: 0 };
  if (!(C > 0)) return { qmax: 0, contact: [], plane: none };
  const mean = C / (B * L);
  const isWhole = 6 * e <= B;
  const from = isWhole ? -B / 2 : B / 2 - 3 * (B / 2 - e);
  const qmax = isWhole ? mean * (1 + (6 * e) / B) : (2 * C) / (3 * L * (B / 2 - e));
  const slope = isWhole ? (12 * mean * e) / (B * B) : qmax / (B / 2 - from);
  const atCenter = isWhole ? mean : -slope * from;
  const [low, high] = toward > 0 ? [from, B / 2] : [-B / 2, -from];
  const [l, h] = [-L / 2, L / 2];
  const square = [at(axis, low, l), at(axis, high, l), at(axis, high, h), at(axis, low, h)];
  // Swapping the axes turns the corners the other way round.
  const contact = axis === "x" ? square : [...square].reverse();
  return { qmax, contact, plane: axis === "x" ? { atCenter, alongX: toward * slope, alongY: 0 } : { atCenter, alongX: 0, alongY: toward * slope } };
}

/** Pull on one bar of each row, from the near row to the far one, N. */
function pullOfRows({ C, N, rows: m, inRow, far }: HeldRowsArgs): readonly number[] {
  if (m === 1) return [far];
  const mean = -N / (m * inRow);
  return Array.from({ length: m }, (_, i) => {
    if (i === m - 1) return far;
    const k = (2 * i) / (m - 1);
    // All rows pull in a straight line about their middle; or the net uplift goes with the near row slack, and what the moment adds is the far row's alone.
    return C > 0 ? Math.max(mean, 0) * k : mean + (far - mean) * (k - 1);
  });
}

export function solveHeldRows(args: HeldRowsArgs): HeldRows {
  const { axis, toward, rows: m, inRow, spacing, places } = args;
  const share = inRow / places.length;
  const pulls = pullOfRows(args).flatMap((pull, i) => {
    const main = m === 1 ? 0 : toward * ((m - 1) / 2 - i) * spacing;
    return pull === 0 ? [] : places.map((place): Pull => ({ ...at(axis, main, place), force: pull * share }));
  });
  return { pressure: pressureOf(args), pulls };
}

/** {@link solveHeldRows} as a step of a calculation. */
export const heldRows: Routine<HeldRowsArgs, HeldRows> = {
  id: "mechanics.held-rows",
  title: "Pressure and pulls below a footing held down by rows of bars",
  method: "linear pressure with the bearing resultant where the rows leave it; the far row pulls most, the rows between share a net uplift",
  source: "statics; derived",
  run: solveHeldRows,
  show: ({ axis, across, C, e, N, far }, { pressure }) => ({
    given: [
      { symbol: "B_c", meaning: `side of the footing along ${axis}`, kind: "length", value: across },
      { symbol: "N", meaning: "axial force, compression positive", kind: "force", value: N },
      { symbol: "C", meaning: "resultant of the bearing", kind: "force", value: C },
      { symbol: "e", meaning: "distance of the resultant from the middle", kind: "length", value: e },
      { symbol: "T_i", meaning: "pull on one bar of the far row", kind: "force", value: far },
    ],
    found: [{ symbol: "q_max", meaning: "largest pressure", kind: "pressure", value: pressure.qmax }],
  }),
};

interface PulledDownArgs {
  /** Axial force, compression positive, N, and moment that presses the high end of x, N·m. */
  readonly N: number;
  readonly M: number;
  readonly pulls: readonly Pull[];
}

/** What the ground bears where bars pull the footing down: the forces on it and the pulls together. */
export const pulledDown: Routine<PulledDownArgs, { readonly N: number; readonly M: number }> = {
  id: "mechanics.pulled-down",
  title: "What the ground bears below a footing that bars pull down",
  method: "sum of the axial force and the pulls, and of the moment and the pulls by their places",
  source: "statics",
  run: ({ N, M, pulls }) => ({ N: pulls.reduce((sum, { force }) => sum + force, N), M: pulls.reduce((sum, { force, x }) => sum + force * x, M) }),
  show: ({ N, M }, found) => ({
    given: [
      { symbol: "N", meaning: "axial force, compression positive", kind: "force", value: N },
      { symbol: "M_c", meaning: "moment at the underside", kind: "moment", value: M },
    ],
    found: [
      { symbol: "C", meaning: "resultant of the bearing", kind: "force", value: found.N },
      { symbol: "M_C", meaning: "moment of the bearing about the middle", kind: "moment", value: found.M },
    ],
  }),
};
