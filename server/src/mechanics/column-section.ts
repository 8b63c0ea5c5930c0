/**
 * A reinforced concrete section under axial force and bending by strain compatibility: plane strains, 0.003 at the pressed edge, the rectangular
 * stress block of ACI 318-19 22.2, elastic and perfectly plastic bars. Round and rectangular sections in closed form, any direction of bending.
 */
import type { Point } from "./rectangles.js";

export interface ColumnSection {
  readonly shape: "round" | "rectangle";
  /** Diameter, or side along x; m. */
  readonly width: number;
  /** Diameter, or side along y; m. */
  readonly length: number;
  /** Places of the bars from the middle, m. */
  readonly bars: readonly Point[];
  /** Area of one bar, m². */
  readonly barArea: number;
  /** Concrete and yield strength, and the modulus of the bars; Pa. */
  readonly fprime_c: number;
  readonly f_y: number;
  readonly E_s: number;
  /** Share of the concrete that is counted, each strip of it narrowed alike; 1 for the whole. */
  readonly share: number;
}

/** Strain of the concrete at the pressed edge, ACI 318-19 22.2.2.1. */
export const crushingStrain = 0.003;

const psi = 4.4482216152605 / 0.0254 ** 2;

/** Depth of the stress block over that of the neutral axis, ACI 318-19 Table 22.2.2.4.3. */
export const blockRatio = (fprime_c: number): number => Math.min(0.85, Math.max(0.65, 0.85 - 0.05 * ((fprime_c / psi - 4000) / 1000)));

/** Area of the section, m², all of it. */
export const grossArea = ({ shape, width, length }: Pick<ColumnSection, "shape" | "width" | "length">): number => (shape === "round" ? (Math.PI * width ** 2) / 4 : width * length);

/** Area and first moments, m² and m³. */
interface Part {
  readonly area: number;
  readonly x: number;
  readonly y: number;
}

/** From the middle to the farthest point of the section in the direction (cos, sin). */
export const reachOf = ({ shape, width, length }: Pick<ColumnSection, "shape" | "width" | "length">, cos: number, sin: number): number =>
  shape === "round" ? width / 2 : (Math.abs(cos) * width + Math.abs(sin) * length) / 2;

/** The part of a disk farther out than `from` in the direction. */
function ofDisk(radius: number, from: number, cos: number, sin: number): Part {
  if (from <= -radius) return { area: Math.PI * radius ** 2, x: 0, y: 0 };
  if (from >= radius) return { area: 0, x: 0, y: 0 };
  const half = Math.acos(from / radius);
  const first = (2 / 3) * (radius * Math.sin(half)) ** 3;
  return { area: radius ** 2 * (half - Math.sin(half) * Math.cos(half)), x: first * cos, y: first * sin };
}

/** The part of a rectangle farther out than `from` in the direction: a polygon cut by a line. */
function ofRectangle(width: number, length: number, from: number, cos: number, sin: number): Part {
  const [a, b] = [width / 2, length / 2];
  const xs = [-a, a, a, -a];
  const ys = [-b, -b, b, b];
  let area = 0;
  let x = 0;
  let y = 0;
  let began = false;
  let x0 = 0;
  let y0 = 0;
  let lastX = 0;
  let lastY = 0;
  const add = (px: number, py: number): void => {
    if (!began) [began, x0, y0, lastX, lastY] = [true, px, py, px, py];
    // Triangles from the first corner kept.
    const cross = ((lastX - x0) * (py - y0) - (px - x0) * (lastY - y0)) / 2;
    area += cross;
    x += (cross * (x0 + lastX + px)) / 3;
    y += (cross * (y0 + lastY + py)) / 3;
    [lastX, lastY] = [px, py];
  };
  for (let i = 0; i < 4; i += 1) {
    const j = (i + 1) % 4;
    const here = xs[i] * cos + ys[i] * sin - from;
    const next = xs[j] * cos + ys[j] * sin - from;
    if (here >= 0) add(xs[i], ys[i]);
    if (here >= 0 !== next >= 0) {
      const t = here / (here - next);
      add(xs[i] + t * (xs[j] - xs[i]), ys[i] + t * (ys[j] - ys[i]));
    }
  }
  return { area, x, y };
}

/** Axial force, N, compression positive; moments toward x and y, N·m; strain of the bar that is pulled most, tension positive. */
export interface Resultants {
  readonly P: number;
  readonly towardX: number;
  readonly towardY: number;
  readonly strain: number;
}

/** What the section holds with its neutral axis `c` (m) below the edge that lies farthest out in the direction `angle` (rad from x). */
export function resultantsAt(section: ColumnSection, angle: number, c: number): Resultants {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const reach = reachOf(section, cos, sin);
  const stress = 0.85 * section.fprime_c * section.share;
  const block = reach - blockRatio(section.fprime_c) * c;
  const pressed = section.shape === "round" ? ofDisk(section.width / 2, block, cos, sin) : ofRectangle(section.width, section.length, block, cos, sin);
  let P = stress * pressed.area;
  let towardX = stress * pressed.x;
  let towardY = stress * pressed.y;
  let strain = Number.NEGATIVE_INFINITY;
  for (const { x, y } of section.bars) {
    const out = x * cos + y * sin;
    const pulled = (crushingStrain * (reach - c - out)) / c;
    strain = Math.max(strain, pulled);
    const inSteel = Math.max(-section.f_y, Math.min(section.f_y, -section.E_s * pulled));
    const force = section.barArea * (inSteel - (out > block ? stress : 0));
    P += force;
    towardX += force * x;
    towardY += force * y;
  }
  return { P, towardX, towardY, strain };
}

/** Strength in pure compression, N, not yet limited for chance eccentricity: ACI 318-19 22.4.2.2. */
export const squashForce = (section: ColumnSection): number => {
  const steel = section.bars.length * section.barArea;
  return 0.85 * section.fprime_c * section.share * (grossArea(section) - steel) + section.f_y * steel;
};

/** Strength in pure tension, N, as a positive number: ACI 318-19 22.4.3.1. */
export const pullForce = ({ bars, barArea, f_y }: Pick<ColumnSection, "bars" | "barArea" | "f_y">): number => bars.length * barArea * f_y;

/** Bars that count as tension steel in shear: farther than two thirds of the depth from the pressed edge, or the farthest ones where none is. */
export interface TensionBars {
  /** m². */
  readonly area: number;
  /** From the pressed edge to their middle, m. */
  readonly depth: number;
}

/** The tension bars of a section bent in the direction `angle`, ACI 318-19 R22.5.5.1. In a small section under thick cover no bar may lie so far out. */
export function tensionBars(section: Pick<ColumnSection, "shape" | "width" | "length" | "bars" | "barArea">, angle: number): TensionBars {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const reach = reachOf(section, cos, sin);
  const depths = section.bars.map(({ x, y }) => reach - (x * cos + y * sin));
  const least = Math.min((4 / 3) * reach, Math.max(...depths)) * (1 - 1e-9);
  const counted = depths.filter((below) => below >= least);
  return { area: counted.length * section.barArea, depth: counted.length > 0 ? counted.reduce((sum, below) => sum + below, 0) / counted.length : 0 };
}
