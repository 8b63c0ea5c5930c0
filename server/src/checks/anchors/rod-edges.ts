/** How far each rod of a base stands from the next and from the faces of its concrete, for the rules of its details. */
import { formula } from "../../formula/declare.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Support } from "../../project/model.js";
import { readMember, type Member } from "../base/member.js";
import { rodPlaces } from "../base/rod-places.js";
import type { Gather } from "../contract.js";

export const edgeOfRectangle = formula({
  id: "anchors.edge-of-rectangle",
  text: "c_a = min(min(x - x_w, x_e - x), min(y - y_s, y_n - y))",
  source: "geometry",
  symbols: {
    c_a: { kind: "length", meaning: "from the middle of the rod to the nearest face of the concrete" },
    x: { kind: "length", meaning: "place of the rod, east" },
    y: { kind: "length", meaning: "place of the rod, north" },
    x_w: { kind: "length", meaning: "west face" },
    x_e: { kind: "length", meaning: "east face" },
    y_s: { kind: "length", meaning: "south face" },
    y_n: { kind: "length", meaning: "north face" },
  },
});

export const edgeOfRound = formula({
  id: "anchors.edge-of-round",
  text: "c_a = D / 2 - sqrt(x^2 + y^2)",
  source: "geometry",
  symbols: {
    c_a: { kind: "length", meaning: "from the middle of the rod to the face of the round pier" },
    D: { kind: "length", meaning: "diameter of the pier", field: "foundations.*.diameter" },
    x: { kind: "length", meaning: "place of the rod, east" },
    y: { kind: "length", meaning: "place of the rod, north" },
  },
});

export const rodSpacing = formula({
  id: "anchors.rod-spacing",
  text: "s = sqrt((x_2 - x_1)^2 + (y_2 - y_1)^2)",
  source: "geometry",
  symbols: {
    s: { kind: "length", meaning: "distance of two rods or bars" },
    x_1: { kind: "length", meaning: "one, east" },
    y_1: { kind: "length", meaning: "one, north" },
    x_2: { kind: "length", meaning: "the other, east" },
    y_2: { kind: "length", meaning: "the other, north" },
  },
});

export const distanceBetween = (a: Point, b: Point): number => rodSpacing.value({ x_1: a.x, y_1: a.y, x_2: b.x, y_2: b.y });

/** Least distance between two of them, m; infinite for one. */
export const leastDistance = (places: readonly Point[]): number => Math.min(...places.flatMap((a, i) => places.slice(i + 1).map((b) => distanceBetween(a, b))));

/** To the true face: a round pier by its circle and not by the square inside it. */
export function edgeDistance({ x, y }: Point, member: Member): number {
  if (member.shape === "round") return edgeOfRound.value({ D: member.diameter, x, y });
  const { west: x_w, east: x_e, south: y_s, north: y_n } = member.edges;
  return edgeOfRectangle.value({ x, y, x_w, x_e, y_s, y_n });
}

export interface RodsInConcrete {
  readonly rods: readonly Point[];
  readonly d_a: number;
  readonly members: readonly Member[];
  /** Least distance between two rods, m; infinite for one rod. */
  readonly least: number;
  /** Least distance to a face, at any column of the line, m. */
  readonly edge: number;
}

/** Collects what is missing and what stands in the way, for a rule. */
export function listening(): Gather & { readonly lacks: readonly string[] } {
  const lacks: string[] = [];
  return {
    lacks,
    need: (value, what) => {
      if (value === undefined || !Number.isFinite(value.value)) lacks.push(what);
      return value?.value ?? Number.NaN;
    },
    needs: (value, what) => {
      if (value === undefined) lacks.push(what);
      return value?.value;
    },
    may: (value) => value?.value,
    block: (because) => void lacks.push(because),
  };
}

/** The rods of a base in their concrete, or in words what is missing. */
export function rodsInConcrete(support: Support): RodsInConcrete | { readonly lacks: string } {
  const gather = listening();
  const anchors = gather.needs(support.base?.fields.anchors, "the anchor rods");
  const d_a = anchors ? gather.need(anchors.diameter, "their diameter") : Number.NaN;
  const places = rodPlaces(anchors);
  if (anchors && places === undefined) gather.block("their number");
  if (places && "problem" in places) return { lacks: places.problem };
  const members = support.places.map((_, place) => readMember(support, gather, place));
  if (gather.lacks.length > 0 || !places) return { lacks: [...new Set(gather.lacks)].join(", ") };
  return {
    rods: places,
    d_a,
    members,
    least: leastDistance(places),
    edge: Math.min(...members.flatMap((member) => places.map((rod) => edgeDistance(rod, member)))),
  };
}
