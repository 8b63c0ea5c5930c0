/**
 * A column that the roof props while a load acts along it: at its top, and at the foot of a knee brace. For columns whose bases give or that are
 * knee-braced; the frame solution of one member plane. Braces do not stretch here, as in the hand route.
 */
import { routine } from "../formula/calc.js";
import { frameModel, solveFrame } from "./frame.js";
import type { FrameMember, FrameNode, LineLoad } from "./frame-types.js";
import type { EndsHeld } from "./sway-stiffness.js";

export interface ProppedArgs {
  /** Bending stiffness in the plane, N·m². */
  readonly EI: number;
  readonly h: number;
  readonly ends: EndsHeld;
  /** Load along the column, N/m, between two heights above its base, m. */
  readonly w: number;
  readonly from: number;
  readonly to: number;
}

/** What the roof and its brace do to the column, both against the load: their force, and their moment about the column top. */
export interface Props {
  readonly R: number;
  readonly M: number;
}

export const bendingStiffness = (E: number, I: number): number => E * I;

/** The frame is given the stiffness whole, as modulus of a section of this size. */
const size = 1;

/** {@link Props} of a column; NaN where it cannot stand. */
export function propsOf({ EI, h, ends, w, from, to }: ProppedArgs): Props {
  const { base, baseSpring, top, knee } = ends;
  const flat = { y: "held", rx: "held", rz: "held" } as const;
  const nodes: FrameNode[] = [{ x: 0, y: 0, z: 0, holds: { ...flat, x: "held", z: "held", ...(base ? { ry: baseSpring ?? "held" } : {}) } }];
  if (knee) nodes.push({ x: 0, y: 0, z: knee.foot, holds: { ...flat, x: "held" } });
  nodes.push({ x: 0, y: 0, z: h, holds: { ...flat, x: "held", ...(top ? { ry: "held" } : {}) } });
  const members = nodes.slice(1).map((_, i): FrameMember => ({ start: i, end: i + 1, E: EI, area: size, Iy: size, Iz: size, GJ: EI }));
  const loads = members.flatMap(({ start }, member): readonly LineLoad[] => {
    const [low, high] = [nodes[start].z, nodes[start + 1].z];
    const [a, b] = [Math.max(from, low), Math.min(to, high)];
    return b > a ? [{ member, from: a - low, to: b - low, intensity: { x: w, y: 0, z: 0 } }] : [];
  });
  const model = frameModel({ nodes, members });
  if ("fault" in model) return { R: Number.NaN, M: Number.NaN };
  const reactions = solveFrame(model, loads).reactions;
  let R = 0;
  let M = 0;
  nodes.forEach(({ z }, i) => {
    if (i === 0) return;
    R -= reactions[i][0];
    M -= reactions[i][0] * (h - z) - reactions[i][4];
  });
  return { R, M };
}

/** {@link propsOf} as a step of a calculation. */
export const proppedColumn = routine<ProppedArgs, Props>({
  id: "mechanics.propped-column",
  title: "Force of the roof and its brace on a column with a load along it",
  method: "direct stiffness: the column on its base spring, held sideways at its top and at the foot of its knee brace",
  source: "first-order theory of structures; common practice, no single source",
  run: propsOf,
  show: ({ EI: _, h, ends, w, from, to }, { R, M }) => ({
    given: [
      { symbol: "w", meaning: "load along the column", kind: "lineLoad", value: w },
      { symbol: "a", meaning: "where it begins, above the base", kind: "distance", value: from },
      { symbol: "b", meaning: "where it ends, above the base", kind: "distance", value: to },
      { symbol: "H", meaning: "column height", kind: "distance", value: h },
      ...(ends.baseSpring === undefined ? [] : [{ symbol: "k_b", meaning: "turning stiffness of the base", kind: "rotationalStiffness" as const, value: ends.baseSpring }]),
      ...(ends.knee ? [{ symbol: "H_k", meaning: "height of the foot of the knee brace above the base", kind: "distance" as const, value: ends.knee.foot }] : []),
    ],
    found: [
      { symbol: "R_t", meaning: "force of the roof and its brace on the column", kind: "force", value: R },
      { symbol: "M_t", meaning: "their moment about the column top", kind: "moment", value: M },
    ],
  }),
});
