/** The vertical bars of a wall with the rods of a base between them, as anchor reinforcement. */
import { formula } from "../../formula/declare.js";
import type { Point } from "../../mechanics/rectangles.js";
import { shiftsOfRows, type BarRow } from "../../mechanics/rod-bars.js";
import type { Support } from "../../project/model.js";
import { readWallRun } from "../base/wall-place.js";
import type { Gather } from "../contract.js";
import { distanceBetween } from "./rod-edges.js";

export const stemBarPlace = formula({
  id: "anchors.stem-bar-place",
  text: "y_b = t / 2 - c_c - d_b / 2",
  source: "geometry: the vertical bars as the outermost ones, which puts them farthest from the rods",
  symbols: {
    y_b: { kind: "length", meaning: "from the middle of the wall to its vertical bars", range: [-1, 2] },
    t: { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" },
    c_c: { kind: "length", meaning: "clear cover of the outer bars of the wall", field: "foundations.*.stem cover" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.stem bars" },
  },
});

export const otherFace = formula({
  id: "anchors.other-face",
  text: "y_o = -y_b",
  source: "geometry",
  symbols: { y_o: { kind: "length", meaning: "place of the bars at the other face", range: [-2, 2] }, y_b: { kind: "length", meaning: "from the middle of the wall to its vertical bars" } },
});

export const stretchBefore = formula({
  id: "anchors.stretch-before",
  text: "a_1 = max(l_1, a - r)",
  source: "geometry: bars beyond the reach of every rod need no place",
  symbols: {
    a_1: { kind: "length", meaning: "where the stretch of wall begins", range: [-50, 50] },
    l_1: { kind: "length", meaning: "beginning of the wall", range: [-50, 50] },
    a: { kind: "length", meaning: "place of the first rod along the wall", range: [-5, 5] },
    r: { kind: "length", meaning: "how far from a rod a bar counts" },
  },
});

export const stretchAfter = formula({
  id: "anchors.stretch-after",
  text: "a_2 = min(l_2, a + r)",
  source: "geometry: bars beyond the reach of every rod need no place",
  symbols: {
    a_2: { kind: "length", meaning: "where the stretch of wall ends", range: [-50, 50] },
    l_2: { kind: "length", meaning: "end of the wall", range: [-50, 50] },
    a: { kind: "length", meaning: "place of the last rod along the wall", range: [-5, 5] },
    r: { kind: "length", meaning: "how far from a rod a bar counts" },
  },
});

export interface WallBars {
  readonly bar: { readonly name: string; readonly diameter: number; readonly area: number };
  readonly rows: readonly BarRow[];
  /** Every way the rows can stand along the wall, of which it is not known which was built. */
  readonly arrangements: (rods: readonly Point[], reach: number) => readonly (readonly Point[])[];
  readonly cover: number;
  /** No ties stand round them. */
  readonly tie: 0;
  /** Least distance of two bars, m. */
  readonly spacing: number;
}

interface Vertical {
  readonly name: string;
  readonly diameter: number;
  readonly area: number;
  readonly spacing: number;
}

/** The vertical bars; undefined where they are not known, with what is missing noted. */
export function wallBars(support: Support, gather: Gather, place: number): WallBars | undefined {
  const fields = support.foundation?.fields;
  if (fields?.kind?.value !== "wall on footing") {
    gather.block("the rods do not stand in a wall; vertical bars of a pier or pedestal are counted by anchor reinforcement: pier bars");
    return undefined;
  }
  const stem = gather.needs(fields["stem bars"], "vertical bars of the wall (stem bars)");
  if (!stem) return undefined;
  const read = (name: "fill face" | "free face" | "middle"): Vertical | undefined => {
    const face = gather.may(stem[name]);
    const vertical = face ? gather.may(face.vertical) : undefined;
    const bar = vertical ? gather.needs(vertical.bar, "size of the wall's vertical bars") : undefined;
    const spacing = vertical ? gather.need(vertical.spacing, "spacing of the wall's vertical bars") : Number.NaN;
    return bar && Number.isFinite(spacing) ? { ...bar, spacing } : undefined;
  };
  const faces = [read("fill face"), read("free face")];
  const middle = read("middle");
  const all = [...faces, middle].filter((one) => one !== undefined);
  const cover = gather.need(fields["stem cover"], "clear cover of the wall's bars");
  const t = gather.need(fields.thickness, "thickness of the wall");
  const run = readWallRun(support, gather, place, gather.need(fields.length ?? fields["length per post"], "length of the wall"));
  const [first] = all;
  if (!first) {
    gather.block("the wall has no vertical bars that are known (stem bars: fill face, free face or middle, vertical)");
    return undefined;
  }
  if (all.some(({ name }) => name !== first.name)) {
    gather.block("the vertical bars of the wall differ in size; as anchor reinforcement bars of one size are counted");
    return undefined;
  }
  const y_b = stemBarPlace.value({ t, c_c: cover, d_b: first.diameter });
  if (!run || !(y_b > 0)) {
    if (run) gather.block("the vertical bars with their cover do not fit into the wall");
    return undefined;
  }
  const sides = [y_b, otherFace.value({ y_b })];
  const rows: BarRow[] = faces.flatMap((one, i) => (one ? [{ across: sides[i], spacing: one.spacing }] : []));
  if (middle) rows.push({ across: 0, spacing: middle.spacing });
  const { axis } = run;
  const arrangements = (rods: readonly Point[], r: number): readonly (readonly Point[])[] => {
    const along = rods.map((rod) => rod[axis]);
    return shiftsOfRows({ rows, axis, from: stretchBefore.value({ l_1: -run.before, a: Math.min(...along), r }), to: stretchAfter.value({ l_2: run.after, a: Math.max(...along), r }) });
  };
  const across = rows.length > 1 ? distanceBetween({ x: 0, y: rows[0].across }, { x: 0, y: rows[1].across }) : Number.POSITIVE_INFINITY;
  return { bar: first, rows, arrangements, cover, tie: 0, spacing: Math.min(across, ...rows.map(({ spacing }) => spacing)) };
}
