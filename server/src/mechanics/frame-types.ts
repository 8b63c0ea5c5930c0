/** What a frame in space is made of. Axes x east, y north, z up; SI throughout. */
import type { Vector } from "./rigid-roof.js";

export type { Vector };

/** The six movements of a node or of a member's end, and the forces that belong to them. */
export const motions = ["x", "y", "z", "rx", "ry", "rz"] as const;
export type Motion = (typeof motions)[number];

/** Held, or held by a spring of this stiffness, N/m or N·m/rad. A movement not named is free. */
export type Hold = "held" | number;

export interface FrameNode extends Vector {
  readonly holds?: Partial<Record<Motion, Hold>>;
  /** Number of the node it moves with as one rigid body. That node leads; it follows none itself. */
  readonly follows?: number;
}

/**
 * A straight member of constant section from one node to another. Its own axes: x along it, z toward `zAxis`, y across both. Without
 * `zAxis`, z is as near to up as it gets, and to the north in a plumb member.
 */
export interface FrameMember {
  readonly start: number;
  readonly end: number;
  /** Modulus of elasticity, Pa. */
  readonly E: number;
  /** Cross-section area, m². */
  readonly area: number;
  /** A bar that carries axial force alone. */
  readonly isTie?: boolean;
  /** Second moments of area about its own y and z, m⁴; left out in a tie. */
  readonly Iy?: number;
  readonly Iz?: number;
  /** Torsional stiffness G·J, N·m². */
  readonly GJ?: number;
  readonly zAxis?: Vector;
  /** Movements, in its own axes, in which an end is not tied to its node. */
  readonly freeAtStart?: readonly Motion[];
  readonly freeAtEnd?: readonly Motion[];
}

export interface Frame {
  readonly nodes: readonly FrameNode[];
  readonly members: readonly FrameMember[];
}

/** A force and moment at a node; at `place`, where given, as if a rigid arm led from there to the node. N, N·m, m. */
export interface NodeLoad {
  readonly node: number;
  readonly force?: Vector;
  readonly moment?: Vector;
  readonly place?: Vector;
}

/** A force on a member at a distance from its start, in the axes of the structure. */
export interface PointLoad {
  readonly member: number;
  readonly at: number;
  readonly force: Vector;
}

/** A force per length of member, N/m, in the axes of the structure, from one distance to another; it may change evenly to `atTo`. */
export interface LineLoad {
  readonly member: number;
  readonly from: number;
  readonly to: number;
  readonly intensity: Vector;
  readonly atTo?: Vector;
}

export type FrameLoad = NodeLoad | PointLoad | LineLoad;

/** Movements or forces in the order of {@link motions}, in the axes of the structure. */
export type Six = Float64Array;

export interface MemberEnds {
  /** Forces the nodes exert on the ends of the member. */
  readonly start: Six;
  readonly end: Six;
  /** Axial force at its start, compression positive, N. */
  readonly compression: number;
}

export interface FrameResult {
  /** By node. */
  readonly displacements: readonly Six[];
  readonly members: readonly MemberEnds[];
  /** By node: what the ground exerts on the structure where it is held or sprung. */
  readonly reactions: readonly Six[];
}

/** Why a frame cannot be solved. */
export type FrameFault =
  | { readonly fault: "free" | "buckled"; readonly node: number; readonly motion: Motion }
  | { readonly fault: "input"; readonly because: string };
