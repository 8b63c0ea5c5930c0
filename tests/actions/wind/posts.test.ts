/** ASCE 7-22 Figure 29.4-1 for round posts, D sqrt(q) in ft and psf; numbers by hand. Given: 150 mph, exposure C, below 15 ft: q = 49.03 psf. */
import { describe, expect, it } from "vitest";
import { roundPostPressure, seenBy } from "../../../server/src/actions/wind/posts.js";
import type { WindSite } from "../../../server/src/actions/wind/velocity-pressure.js";
import { findSection, type ColumnSection } from "../../../server/src/catalog/sections.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { kinds } from "../../../server/src/units/kinds.js";
import { foot, mph, psf } from "../given.js";

const inch = kinds.length.US.factor;
const section = (name: string) => findSection(name) as ColumnSection;
const site = (V: number): WindSite => ({ standard: "ASCE 7-22", V: V * mph, exposure: "C", K_zt: 1, groundElevation: 0 });

describe("a round column in the wind", () => {
  it.each([
    // 0.5 ft sqrt(49.03) = 3.5 > 2.5, H/D 24 of 7 to 25: C_f = 0.6 + 0.1 x 17/18 = 0.6944; 49.03 x 0.85 x 0.6944.
    [150, 6, 12, 28.94],
    // 0.333 ft x 7.0 = 2.33: small. H/D 36, beyond the table: 1.2.
    [150, 4, 12, 50.01],
    // 75 mph: q = 12.26 psf, 0.5 x 3.5 = 1.75: small; C_f = 0.8 + 0.4 x 17/18 = 1.1778.
    [75, 6, 12, 12.27],
  ])("at %d mph, %d in wide and %d ft high: %f psf", (V, D, H, expected) => {
    const p = roundPostPressure(6 * foot, H * foot, D * inch, site(V), plainCalc) / psf;
    expect(Math.abs(p / expected - 1)).toBeLessThan(0.003);
  });

  it("the wind along x sees the side along y, and a wrapping both ways alike", () => {
    const box = section("HSS8x4x1/4");
    expect(seenBy(box, "along x", undefined)).toMatchObject({ width: { x: box.width, y: box.depth }, isRound: false });
    expect(seenBy(box, "along y", undefined)).toMatchObject({ width: { x: box.depth, y: box.width } });
    expect(seenBy(section("Pipe 6 STD"), undefined, undefined)).toMatchObject({ isRound: true });
    expect(seenBy(section("Pipe 6 STD"), undefined, 0.3)).toEqual({ width: { x: 0.3, y: 0.3 }, isRound: false });
  });
});
