/** Tributary areas: the part of a rectangle in plan that is nearer to one column than to any other. */
import { routine } from "../formula/calc.js";

interface Place {
  readonly x: number;
  readonly y: number;
}

/** A convex polygon, its corners in order. */
export type Polygon = readonly Place[];

export interface Rectangle {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

/** The part of a convex polygon on which a x + b y <= c. */
function cut(polygon: Polygon, a: number, b: number, c: number): Polygon {
  const kept: Place[] = [];
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length];
    const dp = a * p.x + b * p.y - c;
    const dq = a * q.x + b * q.y - c;
    if (dp <= 0) kept.push(p);
    if ((dp < 0 && dq > 0) || (dp > 0 && dq < 0)) {
      const t = dp / (dp - dq);
      kept.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
    }
  });
  return kept;
}

/** The part of a rectangle nearer to the column `of` than to any other. */
export function tributaryPolygon(whole: Rectangle, columns: readonly Place[], of: number): Polygon {
  const own = columns[of];
  let polygon: Polygon = [
    { x: whole.x1, y: whole.y1 },
    { x: whole.x2, y: whole.y1 },
    { x: whole.x2, y: whole.y2 },
    { x: whole.x1, y: whole.y2 },
  ];
  for (const other of columns) {
    const a = other.x - own.x;
    const b = other.y - own.y;
    // A column at the same place takes nothing away: both are given the whole.
    if (a === 0 && b === 0) continue;
    polygon = cut(polygon, a, b, (other.x ** 2 + other.y ** 2 - own.x ** 2 - own.y ** 2) / 2);
  }
  return polygon;
}

/** Area of the part of a convex polygon inside a rectangle. */
export function areaWithin(polygon: Polygon, { x1, x2, y1, y2 }: Rectangle): number {
  const inside = cut(cut(cut(cut(polygon, -1, 0, -x1), 1, 0, x2), 0, -1, -y1), 0, 1, y2);
  let twice = 0;
  inside.forEach((p, i) => {
    const q = inside[(i + 1) % inside.length];
    twice += p.x * q.y - q.x * p.y;
  });
  return Math.max(0, twice / 2);
}

export interface StretchArgs {
  readonly from: Place;
  readonly to: Place;
  readonly columns: readonly Place[];
}

/** Length of the part of a line that is nearer to one column than to any other, for each column, m. */
export function stretchesOf({ from, to, columns }: StretchArgs): readonly number[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  return columns.map((own) => {
    let [low, high] = [0, 1];
    for (const other of columns) {
      const a = 2 * (dx * (other.x - own.x) + dy * (other.y - own.y));
      const c = other.x ** 2 + other.y ** 2 - own.x ** 2 - own.y ** 2 - 2 * (from.x * (other.x - own.x) + from.y * (other.y - own.y));
      // Points at t from one end to the other are nearer to the own column where a t <= c. A column as near everywhere takes nothing away: both are given the whole.
      if (Math.abs(a) <= 1e-12 * length ** 2) {
        if (c < -1e-12 * length ** 2) high = low;
      } else if (a > 0) high = Math.min(high, c / a);
      else low = Math.max(low, c / a);
    }
    return Math.max(0, high - low) * length;
  });
}

/** {@link stretchesOf} as a step of a calculation. */
export const nearestStretches = routine<StretchArgs, readonly number[]>({
  id: "mechanics.nearest-stretches",
  title: "Stretch of a line nearest to each column",
  method: "each point of the line goes to the column nearest to it",
  source: "geometry; common practice, no single source",
  run: stretchesOf,
  show: ({ from, to }, lengths) => ({
    given: [{ symbol: "l", meaning: "length of the line", kind: "distance", value: Math.hypot(to.x - from.x, to.y - from.y) }],
    found: lengths.map((value, i) => ({ symbol: `l_${i + 1}`, meaning: `stretch of column ${i + 1}`, kind: "distance" as const, value })),
  }),
});

export interface ZonedArgs {
  readonly whole: Rectangle;
  readonly columns: readonly Place[];
  readonly of: number;
  /** Parts of the whole, each with the number of its zone. */
  readonly zones: readonly (Rectangle & { readonly zone: 1 | 2 | 3 })[];
}

/** Tributary area of a column in all, and by zone, m². */
export interface ZonedAreas {
  readonly all: number;
  readonly 1: number;
  readonly 2: number;
  readonly 3: number;
}

/** Tributary area of one column, split by zones. */
export const tributaryByZone = routine<ZonedArgs, ZonedAreas>({
  id: "mechanics.tributary-by-zone",
  title: "Tributary area of the column top, by zone",
  method: "the part of the roof nearer to this column than to any other, cut by the zones",
  source: "geometry; common practice, no single source",
  run: ({ whole, columns, of, zones }) => {
    const polygon = tributaryPolygon(whole, columns, of);
    const areas = { all: areaWithin(polygon, whole), 1: 0, 2: 0, 3: 0 };
    for (const part of zones) areas[part.zone] += areaWithin(polygon, part);
    return areas;
  },
  show: ({ columns, of }, areas) => ({
    given: [
      { symbol: "x", meaning: "place of the column, east", kind: "distance", value: columns[of].x },
      { symbol: "y", meaning: "place of the column, north", kind: "distance", value: columns[of].y },
    ],
    found: [
      { symbol: "A", meaning: "tributary area", kind: "planArea", value: areas.all },
      { symbol: "A_1", meaning: "part of it in zone 1, inside", kind: "planArea", value: areas[1] },
      { symbol: "A_2", meaning: "part of it in zone 2, edges", kind: "planArea", value: areas[2] },
      { symbol: "A_3", meaning: "part of it in zone 3, corners", kind: "planArea", value: areas[3] },
    ],
  }),
});
