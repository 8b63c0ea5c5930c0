/**
 * Shear stress on a critical section that is open toward an edge or a corner of the slab: its sides are those of a rectangle that do not lie at an edge.
 * Stress varies in a plane over the section, as the eccentricity of shear asks; where the section is not symmetric the product of inertia counts.
 */
import type { Routine } from "../formula/types.js";
import type { Rectangle } from "./rectangles.js";

export interface OpenSectionArgs {
  /** The column's side of the section, m, from the middle of the pad. */
  readonly inside: Rectangle;
  /** Sides that lie at an edge and carry nothing. */
  readonly open: { readonly west?: boolean; readonly east?: boolean; readonly south?: boolean; readonly north?: boolean };
  /** Effective depth, m. */
  readonly d: number;
  /** Force through the section, N, and its moments toward the east and the north about `at`, N·m. */
  readonly force: number;
  readonly alongX: number;
  readonly alongY: number;
  readonly at: { readonly x: number; readonly y: number };
  /** Parts of the moments, about the middle of the section, that shear transfers. */
  readonly shareX: number;
  readonly shareY: number;
}

export interface OpenSection {
  /** Length of the sides, m. */
  readonly perimeter: number;
  /** Middle of the sides, m. */
  readonly x: number;
  readonly y: number;
  /** Moments about it, N·m, all of them. */
  readonly momentX: number;
  readonly momentY: number;
  /** Properties analogous to polar moments of inertia, m⁴. */
  readonly inertiaX: number;
  readonly inertiaY: number;
  /** Largest shear stress, without sign, Pa. */
  readonly stress: number;
}

interface Segment {
  readonly x: number;
  readonly y: number;
  /** Half its length along x and along y; one of them is zero. */
  readonly halfX: number;
  readonly halfY: number;
}

function segmentsOf({ west, east, south, north }: Rectangle, open: OpenSectionArgs["open"]): readonly Segment[] {
  const [x, y, halfX, halfY] = [(west + east) / 2, (south + north) / 2, (east - west) / 2, (north - south) / 2];
  return [
    ...(open.west ? [] : [{ x: west, y, halfX: 0, halfY }]),
    ...(open.east ? [] : [{ x: east, y, halfX: 0, halfY }]),
    ...(open.south ? [] : [{ x, y: south, halfX, halfY: 0 }]),
    ...(open.north ? [] : [{ x, y: north, halfX, halfY: 0 }]),
  ];
}

/** Side of length L in the direction of the moment: d L³/12 + L d³/12 beside the term of its place. */
const own = (half: number, d: number): number => (half === 0 ? 0 : (d * (2 * half) ** 3 + 2 * half * d ** 3) / 12);

export function solveOpenSection({ inside, open, d, force, alongX, alongY, at, shareX, shareY }: OpenSectionArgs): OpenSection {
  const segments = segmentsOf(inside, open);
  const lengthOf = ({ halfX, halfY }: Segment): number => 2 * (halfX + halfY);
  const sum = (of: (segment: Segment) => number): number => segments.reduce((total, segment) => total + of(segment), 0);
  const perimeter = sum(lengthOf);
  const x = sum((one) => one.x * lengthOf(one)) / perimeter;
  const y = sum((one) => one.y * lengthOf(one)) / perimeter;
  const inertiaX = sum((one) => own(one.halfX, d) + lengthOf(one) * d * (one.x - x) ** 2);
  const inertiaY = sum((one) => own(one.halfY, d) + lengthOf(one) * d * (one.y - y) ** 2);
  const product = sum((one) => lengthOf(one) * d * (one.x - x) * (one.y - y));
  const momentX = alongX + force * (at.x - x);
  const momentY = alongY + force * (at.y - y);
  const [mx, my] = [shareX * momentX, shareY * momentY];
  const det = inertiaX * inertiaY - product * product;
  const a = (mx * inertiaY - my * product) / det;
  const b = (my * inertiaX - mx * product) / det;
  let stress = 0;
  for (const one of segments)
    for (const end of [-1, 1]) stress = Math.max(stress, Math.abs(force / (perimeter * d) + a * (one.x + end * one.halfX - x) + b * (one.y + end * one.halfY - y)));
  return { perimeter, x, y, momentX, momentY, inertiaX, inertiaY, stress };
}

/** {@link solveOpenSection} as a step of a calculation. */
export const openSection: Routine<OpenSectionArgs, OpenSection> = {
  id: "mechanics.open-section",
  title: "Shear stress on a section open toward an edge",
  method: "direct shear and the transferred parts of the moments about the middle of the sides, stress in a plane over them with their inertias and their product",
  source: "ACI 318-19 8.4.4.2.3; J_c of three sides from memory, of two by statics",
  run: solveOpenSection,
  show: ({ d, force, shareX, shareY }, found) => ({
    given: [
      { symbol: "V_u", meaning: "force through the section", kind: "force", value: force },
      { symbol: "d", meaning: "effective depth", kind: "length", value: d },
      { symbol: "gamma_vx", meaning: "part of the moment toward the east transferred by shear", kind: "ratio", value: shareX },
      { symbol: "gamma_vy", meaning: "part of the moment toward the north transferred by shear", kind: "ratio", value: shareY },
    ],
    found: [
      { symbol: "x_c", meaning: "middle of the sides from that of the pad, along x", kind: "distance", value: found.x },
      { symbol: "y_c", meaning: "middle of the sides from that of the pad, along y", kind: "distance", value: found.y },
      { symbol: "M_ux", meaning: "moment about it toward the east", kind: "moment", value: found.momentX },
      { symbol: "M_uy", meaning: "moment about it toward the north", kind: "moment", value: found.momentY },
      { symbol: "J_cx", meaning: "property of the section along x", kind: "inertia", value: found.inertiaX },
      { symbol: "J_cy", meaning: "property of the section along y", kind: "inertia", value: found.inertiaY },
      { symbol: "v_u", meaning: "largest shear stress on the section", kind: "stress", value: found.stress },
    ],
  }),
};
