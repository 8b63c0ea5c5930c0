import { steelModulus, steelShearModulus } from "../catalog/materials.js";
import { torsionConstant, type ColumnSection } from "../catalog/sections.js";
import type { EndsHeld, RoofColumn } from "./rigid-roof.js";

export interface HssPost {
  readonly section: ColumnSection;
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

/** A square steel hollow section as a column under a rigid roof. */
export const hssColumn = ({ section, ...post }: HssPost): RoofColumn => ({
  ...post,
  E: steelModulus.value,
  area: section.area,
  Ix: section.inertia,
  Iy: section.inertia,
  GJ: steelShearModulus.value * torsionConstant(section),
});
