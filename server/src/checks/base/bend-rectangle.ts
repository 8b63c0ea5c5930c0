/** The rectangle about a column that its base plate bends on. */
import { placedSection } from "../../catalog/sections.js";
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { deepSideOf } from "../column/member.js";

export const bendSide = formula({
  id: "base.bend-side",
  text: "b_p = k_b * b_c",
  source: "AISC Design Guide 1, 3rd ed., 4.3.1: 0.95 of the sides of a hollow section and of the depth of a W, 0.80 of its flange and of a diameter",
  symbols: {
    b_p: { kind: "length", meaning: "side of the rectangle the plate bends about" },
    k_b: { kind: "ratio", meaning: "share of the column's size" },
    b_c: { kind: "length", meaning: "size of the column on that side", field: "columns.*.section" },
  },
});

export const betweenFlanges = formula({
  id: "base.between-flanges",
  text: "n_prime = sqrt(d * b_f) / 4",
  source: "AISC Companion to the Manual, 16th ed., Example J.6: n' with lambda at its limit of 1",
  symbols: {
    n_prime: { kind: "length", meaning: "overhang that stands for the plate between the flanges" },
    d: { kind: "length", meaning: "depth of the W", field: "columns.*.section" },
    b_f: { kind: "length", meaning: "flange of the W", field: "columns.*.section" },
  },
});

const shares = { side: 0.95, flange: 0.8, diameter: 0.8 } as const;

/** Its sides along x and y, and the depth and flange of a W (0 for other columns), m. */
export function readBendRectangle(support: Support, gather: Gather): { readonly b_px: number; readonly b_py: number; readonly d_W: number; readonly b_W: number } {
  const fields = support.column?.fields;
  const section = gather.needs(fields?.section, "column section");
  if (!section) return { b_px: Number.NaN, b_py: Number.NaN, d_W: 0, b_W: 0 };
  const deep = deepSideOf(fields, section, gather);
  const { alongX, alongY } = placedSection(section, deep);
  const depth = section.shape === "round" ? shares.diameter : shares.side;
  const width = section.shape === "round" ? shares.diameter : section.shape === "W" ? shares.flange : shares.side;
  const [k_x, k_y] = deep === "along x" ? [depth, width] : [width, depth];
  return { b_px: bendSide.value({ k_b: k_x, b_c: alongX }), b_py: bendSide.value({ k_b: k_y, b_c: alongY }), d_W: section.shape === "W" ? section.depth : 0, b_W: section.shape === "W" ? section.width : 0 };
}
