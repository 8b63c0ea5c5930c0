import { steelModulus, steelShearModulus } from "../catalog/materials.js";
import { placedSection, type ColumnSection, type DeepSide } from "../catalog/sections.js";
import type { EndsHeld, RoofColumn } from "./rigid-roof.js";
import { dyingLength, warpingStiffening } from "./warping.js";

export interface SteelPost {
  readonly section: ColumnSection;
  /** Which plan axis the depth of the section lies along; of no concern where it is alike both ways. */
  readonly deep?: DeepSide;
  /** Plan place, m. */
  readonly x: number;
  readonly y: number;
  /** Elevation of the base, m. */
  readonly base: number;
  readonly height: number;
  readonly top: "pinned" | "fixed";
  /** Which ends hold a moment, by the direction of the push. */
  readonly ends?: { readonly x: EndsHeld; readonly y: EndsHeld };
}

/** Torsional stiffness times height, N·m². The flanges of a W count as held against warping at both ends, by base plate and roof framing. */
function twistStiffness({ shape, torsion, weak, depth, flange }: ColumnSection, height: number): number {
  const GJ = steelShearModulus.value * torsion;
  return shape === "W" ? GJ * warpingStiffening(height, dyingLength(steelModulus.value, steelShearModulus.value, weak.inertia, depth - flange, torsion)) : GJ;
}

/** A steel section as a column under a roof, with its stiffness along each plan axis. */
export function steelColumn({ section, deep, ...post }: SteelPost): RoofColumn {
  const { aboutX, aboutY } = placedSection(section, deep ?? "along x");
  return { ...post, E: steelModulus.value, area: section.area, Ix: aboutX.inertia, Iy: aboutY.inertia, GJ: twistStiffness(section, post.height) };
}
