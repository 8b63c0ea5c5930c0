/** Usual weights of roofing: ASCE 7-22 Table C3.1-1a, the values typed from the table (from memory). */
import { describe, expect, it } from "vitest";
import { deadWeightNames, deadWeightOf, deadWeights } from "../../server/src/catalog/dead-weights.js";

const psf = 47.88025898033584;
const inch = 0.0254;

describe("usual weights", () => {
  it.each([
    ["asphalt shingles", 2],
    ["metal deck 20 gage", 2.5],
    ["metal deck 18 gage", 3],
    ["five-ply felt and gravel", 6],
    ["cement tile", 16],
    ["single-ply sheet membrane", 0.7],
    ["wood decking 2 in", 5],
  ])("of %s are %f psf of surface", (name, weight) => {
    const row = deadWeightOf(name);
    expect(row?.perThickness).toBe(false);
    expect((row?.light ?? 0) / psf).toBeCloseTo(weight, 9);
    expect((row?.heavy ?? 0) / psf).toBeCloseTo(weight, 9);
  });

  it.each([
    // Plywood weighs 0.4 psf for each 1/8 in.
    ["plywood", 0.5, 1.6],
    ["wood sheathing", 1, 3],
    ["polystyrene foam", 3, 0.6],
  ])("of %s follow its thickness: %f in weigh %f psf", (name, thickness, weight) => {
    const row = deadWeightOf(name);
    expect(row?.perThickness).toBe(true);
    expect(((row?.light ?? 0) * thickness * inch) / psf).toBeCloseTo(weight, 9);
  });

  it("are each once, with a source, the least not above the most", () => {
    expect(new Set(deadWeightNames).size).toBe(deadWeights.length);
    for (const { light, heavy, source } of deadWeights) {
      expect(light).toBeGreaterThan(0);
      expect(heavy).toBeGreaterThanOrEqual(light);
      expect(source).not.toBe("");
    }
  });

  it("are none for what is not in the list", () => {
    expect(deadWeightOf("thatch")).toBeUndefined();
  });
});
