/** Statics and first-order theory: a roof that turns as one plate twists every column fixed at its top by GJ/h times the same angle. */
import { describe, expect, it } from "vitest";
import { findSection, type ColumnSection } from "../../../server/src/catalog/sections.js";
import { steelModulus, steelShearModulus } from "../../../server/src/catalog/materials.js";
import { flangeBending, warpingLength } from "../../../server/src/checks/column/warping.js";
import { steelColumn } from "../../../server/src/mechanics/steel-column.js";
import { warpingStiffening } from "../../../server/src/mechanics/warping.js";
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

/** Vlasov's equation G J u - E C_w u'' = T for the twist u per length, zero at both ends, in finite differences. */
function byDifferences(GJ: number, ECw: number, L: number, steps: number) {
  const d = L / steps;
  const n = steps - 1;
  const [off, on] = [-ECw / d ** 2, GJ + (2 * ECw) / d ** 2];
  // Thomas' elimination with T = 1.
  const c: number[] = [];
  const r: number[] = [];
  for (let i = 0; i < n; i++) {
    const m = on - off * (c[i - 1] ?? 0);
    c.push(off / m);
    r.push((1 - off * (r[i - 1] ?? 0)) / m);
  }
  const u: number[] = [];
  for (let i = n - 1; i >= 0; i--) u[i] = r[i] - c[i] * (u[i + 1] ?? 0);
  return { angle: u.reduce((sum, value) => sum + value * d, 0), bimoment: (ECw * (2 * u[0] - u[1] / 2)) / d };
}

describe("a W held against warping at both ends", () => {
  const section = findSection("W8x31") as ColumnSection;
  const [E, G] = [steelModulus.value, steelShearModulus.value];
  const h_o = section.depth - section.flange;
  const GJ = G * section.torsion;
  const ECw = (E * section.weak.inertia * h_o ** 2) / 4;

  it.each([1.5, 3, 6])("%f m tall is as stiff, and its flanges bend as much, as its differential equation says", (height) => {
    const { angle, bimoment } = byDifferences(GJ, ECw, height, 4000);
    const post = steelColumn({ section, deep: "along x", x: 0, y: 0, base: 0, height, top: "fixed" });
    expect((post.GJ! / height) * angle).toBeCloseTo(1, 4);
    const a = warpingLength.value({ h_o, I_y: section.weak.inertia, J: section.torsion });
    expect((flangeBending.value({ T: 1, a, h_o, L: height }) * h_o) / bimoment).toBeCloseTo(1, 3);
  });

  it("very short it is two flanges as beams fixed at both ends, very tall it is GJ/L alone", () => {
    const flanges = (12 * E * (section.weak.inertia / 2) * 2 * (h_o / 2) ** 2) / 0.002 ** 3;
    expect((GJ * warpingStiffening(0.002, Math.sqrt(ECw / GJ))) / 0.002 / flanges).toBeCloseTo(1, 6);
    expect((GJ * warpingStiffening(0.05, Math.sqrt(ECw / GJ))) / 0.05 / ((flanges * 0.002 ** 3) / 0.05 ** 3)).toBeCloseTo(1, 2);
    expect(warpingStiffening(1e4, 1)).toBeCloseTo(1, 3);
  });
});
