/** Statics and first-order theory: a roof that turns as one plate twists every column fixed at its top by GJ/h times the same angle. */
import { describe, expect, it } from "vitest";
import { findSection, type ColumnSection } from "../../../server/src/catalog/sections.js";
import { steelColumn } from "../../../server/src/mechanics/steel-column.js";
import { foot, fourColumns, solved } from "../../actions/given.js";

const heights = [6 * foot, 6 * foot, 12 * foot, 12 * foot];
const under = (top: "pinned" | "fixed") => {
  const lines = fourColumns.map((line, i) => ({ ...line, fields: { ...line.fields, "top of column": top, height: heights[2 * i] } }));
  return solved({ lines }).columns;
};

describe("the twist of columns", () => {
  it("comes down to the checks where tops are fixed and the roof turns, as its angle over the height", () => {
    const columns = under("fixed");
    const place = columns[0].strength.findIndex(({ base }) => Math.abs(base.Mz ?? 0) > 1);
    expect(place).toBeGreaterThanOrEqual(0);
    const angles = columns.map(({ strength }, i) => (strength[place].base.Mz ?? 0) * heights[i]);
    for (const angle of angles) expect(angle / angles[0]).toBeCloseTo(1, 6);
  });

  it("is none where tops are pinned", () => {
    for (const { strength, atTop } of under("pinned")) for (const { base, top } of [...strength, ...atTop]) expect([base.Mz ?? 0, top.Mz ?? 0]).toEqual([0, 0]);
  });
});

describe("the stiffness of a section as a column", () => {
  it("a push along its depth bends it about its strong axis", () => {
    const section = findSection("HSS8x4x1/4") as ColumnSection;
    const post = { section, x: 0, y: 0, base: 0, height: 3, top: "pinned" } as const;
    expect(steelColumn({ ...post, deep: "along x" })).toMatchObject({ Ix: section.weak.inertia, Iy: section.strong.inertia });
    expect(steelColumn({ ...post, deep: "along y" })).toMatchObject({ Ix: section.strong.inertia, Iy: section.weak.inertia });
  });
});
