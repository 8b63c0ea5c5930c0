/** Forces at sections of a rigid rectangular footing: the pressure of its contact less the weight that lies on it, exactly integrated. */
import type { Routine, ShownValue } from "../formula/types.js";
import type { FootingPressure } from "./partial-contact.js";
import type { Point, Rectangle } from "./rectangles.js";

/** Pressure under a point of the footing, Pa; zero where it has lifted. `x`, `y` in m from the center. */
export const pressureAt = ({ plane }: Pick<FootingPressure, "plane">, x: number, y: number): number => Math.max(0, plane.atCenter + plane.alongX * x + plane.alongY * y);

/** Resultant of a pressure, N, and its first moments about the center of the footing, N·m. */
export interface PressureSum {
  readonly force: number;
  readonly alongX: number;
  readonly alongY: number;
}

type Side = readonly [normalX: number, normalY: number, offset: number];

/** Keeps the part of a polygon in which normal · p <= offset. */
function cut(polygon: readonly Point[], [nx, ny, offset]: Side): readonly Point[] {
  const kept: Point[] = [];
  for (let i = 0; i < polygon.length; i++) {
    const here = polygon[i];
    const next = polygon[(i + 1) % polygon.length];
    const a = nx * here.x + ny * here.y - offset;
    const b = nx * next.x + ny * next.y - offset;
    if (a <= 0) kept.push(here);
    if (a < 0 !== b < 0 && a !== b && a !== 0 && b !== 0) {
      const t = a / (a - b);
      kept.push({ x: here.x + t * (next.x - here.x), y: here.y + t * (next.y - here.y) });
    }
  }
  return kept;
}

/** Pressure on a part of the underside, whatever of it is in contact. The region is a convex polygon and the pressure a plane: exact. */
export function pressureOver({ contact, plane }: Pick<FootingPressure, "contact" | "plane">, part: Rectangle): PressureSum {
  let region: readonly Point[] = contact;
  const sides: readonly Side[] = [[-1, 0, -part.west], [1, 0, part.east], [0, -1, -part.south], [0, 1, part.north]];
  for (const side of sides) region = cut(region, side);
  let force = 0;
  let alongX = 0;
  let alongY = 0;
  const q = ({ x, y }: Point): number => plane.atCenter + plane.alongX * x + plane.alongY * y;
  for (let i = 1; i + 1 < region.length; i++) {
    const [a, b, c] = [region[0], region[i], region[i + 1]];
    const area = ((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    const [qa, qb, qc] = [q(a), q(b), q(c)];
    const sum = qa + qb + qc;
    force += (area / 3) * sum;
    alongX += (area / 12) * (sum * (a.x + b.x + c.x) + qa * a.x + qb * b.x + qc * c.x);
    alongY += (area / 12) * (sum * (a.y + b.y + c.y) + qa * a.y + qb * b.y + qc * c.y);
  }
  return { force, alongX, alongY };
}

/** A bar that pulls the footing down at a point, N; m from the center. */
export interface Pull extends Point {
  readonly force: number;
}

type Pressed = Pick<FootingPressure, "contact" | "plane">;

/** What acts on the footing from below. */
export interface FromBelow {
  readonly pressure: Pressed;
  /** A second pressure that acts together with the first. */
  readonly beside?: Pressed;
  readonly pulls?: readonly Pull[];
}

/** Force up on a part of the underside, and its first moments: both pressures less the bars that pull there. */
function upOn({ pressure, beside, pulls }: FromBelow, part: Rectangle): PressureSum {
  let { force, alongX, alongY } = pressureOver(pressure, part);
  if (beside) {
    const more = pressureOver(beside, part);
    force += more.force;
    alongX += more.alongX;
    alongY += more.alongY;
  }
  for (const { x, y, force: T } of pulls ?? []) {
    if (x < part.west || x > part.east || y < part.south || y > part.north) continue;
    force -= T;
    alongX -= T * x;
    alongY -= T * y;
  }
  return { force, alongX, alongY };
}

export interface OverhangArgs extends FromBelow {
  /** Sides of the footing along x and y, m. */
  readonly width: number;
  readonly length: number;
  /** Weight on the underside of the footing and what lies on it, Pa. */
  readonly down: number;
  /** Axis across which the sections stand: `x` cuts the east and west overhangs. */
  readonly across: "x" | "y";
  /** Distance of the sections from the center, m. */
  readonly at: number;
}

/** At the two sections at equal distance from the center: shear N and moment N·m, positive where the ground lifts the overhang. */
export interface Overhang {
  readonly shear: readonly [low: number, high: number];
  readonly moment: readonly [low: number, high: number];
}

export function solveOverhang(args: OverhangArgs): Overhang {
  const { width, length, down, across, at } = args;
  const half = (across === "x" ? width : length) / 2;
  const side = across === "x" ? length : width;
  const reach = Math.max(0, half - at);
  if (reach === 0) return { shear: [0, 0], moment: [0, 0] };
  const weight = down * side * reach;
  const one = (sign: 1 | -1): readonly [number, number] => {
    const [from, to] = sign > 0 ? [at, half] : [-half, -at];
    const part = across === "x" ? { west: from, east: to, south: -length / 2, north: length / 2 } : { west: -width / 2, east: width / 2, south: from, north: to };
    const sum = upOn(args, part);
    const first = sign * (across === "x" ? sum.alongX : sum.alongY) - at * sum.force;
    return [sum.force - weight, first - (weight * reach) / 2];
  };
  const [lowShear, lowMoment] = one(-1);
  const [highShear, highMoment] = one(1);
  return { shear: [lowShear, highShear], moment: [lowMoment, highMoment] };
}

/** {@link solveOverhang} as a step of a calculation. */
export const footingOverhang: Routine<OverhangArgs, Overhang> = {
  id: "mechanics.footing-overhang",
  title: "Shear and moment of the overhangs of a footing",
  method: "contact pressure beyond the section less the weight on it, integrated exactly over the polygon in contact",
  source: "statics",
  run: solveOverhang,
  show: ({ down, across, at }, { shear, moment }) => {
    const [low, high] = across === "x" ? ["west", "east"] : ["south", "north"];
    const given: ShownValue[] = [
      { symbol: "w", meaning: "weight of the pad and of what lies on it", kind: "pressure", value: down },
      { symbol: "x_s", meaning: `distance of the section from the center, along ${across}`, kind: "length", value: at },
    ];
    return {
      given,
      found: [
        { symbol: "V_1", meaning: `shear of the ${low} overhang, upward positive`, kind: "force", value: shear[0] },
        { symbol: "V_2", meaning: `shear of the ${high} overhang, upward positive`, kind: "force", value: shear[1] },
        { symbol: "M_1", meaning: `moment of the ${low} overhang, tension at the bottom positive`, kind: "moment", value: moment[0] },
        { symbol: "M_2", meaning: `moment of the ${high} overhang, tension at the bottom positive`, kind: "moment", value: moment[1] },
      ],
    };
  },
};

export interface OutsideArgs extends Omit<OverhangArgs, "across" | "at"> {
  /** Sides of the critical section, m, and its middle from that of the footing, where the column stands off it. */
  readonly inside: { readonly width: number; readonly length: number; readonly x?: number; readonly y?: number };
}

/** What acts outside the section: force up, N, and its moments toward the east and the north about the middle of the section, N·m. */
export interface Outside {
  readonly force: number;
  readonly alongX: number;
  readonly alongY: number;
}

export function solveOutside(args: OutsideArgs): Outside {
  const { width, length, down, inside } = args;
  const { x = 0, y = 0 } = inside;
  const all = upOn(args, { west: -width / 2, east: width / 2, south: -length / 2, north: length / 2 });
  const within = upOn(args, { west: x - inside.width / 2, east: x + inside.width / 2, south: y - inside.length / 2, north: y + inside.length / 2 });
  const weight = down * (width * length - inside.width * inside.length);
  const lifted = all.force - within.force;
  // The weight outside has its own middle where the section stands off that of the footing: that of all of it less that of the part inside.
  const arm = down * width * length;
  return { force: lifted - weight, alongX: all.alongX - within.alongX - x * lifted + x * arm, alongY: all.alongY - within.alongY - y * lifted + y * arm };
}

/** {@link solveOutside} as a step of a calculation. */
export const outsideForces: Routine<OutsideArgs, Outside> = {
  id: "mechanics.footing-outside",
  title: "Force and moments through the section round a column",
  method: "contact pressure outside the section less the weight there, integrated exactly over the polygon in contact",
  source: "statics",
  run: solveOutside,
  show: ({ down, inside }, { force, alongX, alongY }) => ({
    given: [
      { symbol: "w", meaning: "weight of the pad and of what lies on it", kind: "pressure", value: down },
      { symbol: "b_x", meaning: "section along x", kind: "length", value: inside.width },
      { symbol: "b_y", meaning: "section along y", kind: "length", value: inside.length },
    ],
    found: [
      { symbol: "V_u", meaning: "force through the section, upward positive", kind: "force", value: force },
      { symbol: "M_ux", meaning: "moment through the section toward the east", kind: "moment", value: alongX },
      { symbol: "M_uy", meaning: "moment through the section toward the north", kind: "moment", value: alongY },
    ],
  }),
};
