/** Source: ASCE 7-22 2.3.1, 2.3.6, 2.4.1 and 2.4.5; the combinations are typed from the clauses. */
import { describe, expect, it } from "vitest";
import { chosenCases, combinationsFor, combine } from "../../server/src/actions/combinations.js";
import type { Forces, LoadCase, LoadType } from "../../server/src/actions/demand.js";
import { plainCalc } from "../../server/src/formula/calc.js";

const labels = (level: "strength" | "allowable", ...types: LoadType[]): string[] => combinationsFor("ASCE 7-22", level, new Set(types)).map(({ label }) => label);

describe("combinations for the loads there are", () => {
  it("dead load and wind, strength", () => {
    expect(labels("strength", "D", "W")).toEqual(["1.4D", "1.2D", "1.2D + 0.5W", "1.2D + 1.0W", "0.9D + 1.0W"]);
  });

  it("dead load and wind, allowable", () => {
    expect(labels("allowable", "D", "W")).toEqual(["1.0D", "1.0D + 0.6W", "1.0D + 0.45W", "0.6D + 0.6W"]);
  });

  it.each([
    ["strength", ["1.4D", "1.2D + 1.0S", "1.2D + 1.0S + 0.5W", "1.2D + 1.0W + 0.3S", "0.9D + 1.0W"]],
    ["allowable", ["1.0D + 0.7S", "1.0D + 0.45W + 0.525S", "0.6D + 0.6W"]],
  ] as const)("snow at strength level keeps its own factors: %s", (level, expected) => {
    expect(labels(level, "D", "S", "W")).toEqual(expect.arrayContaining([...expected]));
  });

  it.each([
    ["strength", ["1.2D + 1.6L + 0.5Lr", "1.2D + 1.6Lr + 1.0L", "1.2D + 1.6Lr + 0.5W", "1.2D + 1.0W + 1.0L + 0.5Lr"]],
    ["allowable", ["1.0D + 1.0L", "1.0D + 1.0Lr", "1.0D + 0.75L + 0.75Lr", "1.0D + 0.45W + 0.75L + 0.75Lr"]],
  ] as const)("live and roof live load: %s", (level, expected) => {
    expect(labels(level, "D", "L", "Lr", "W")).toEqual(expect.arrayContaining([...expected]));
  });

  it.each([
    ["strength", ["1.2D + 1.0E", "1.2D + 1.0E + 0.15S", "0.9D + 1.0E"]],
    ["allowable", ["1.0D + 0.7E", "1.0D + 0.525E + 0.1S", "0.6D + 0.7E"]],
  ] as const)("earthquake: %s", (level, expected) => {
    expect(labels(level, "D", "S", "E")).toEqual(expect.arrayContaining([...expected]));
  });

  it("never takes two of roof live, snow and rain at once", () => {
    for (const level of ["strength", "allowable"] as const) {
      for (const label of labels(level, "D", "L", "Lr", "S", "R", "W", "E")) expect(label.match(/Lr|S|R/gu)?.length ?? 0).toBeLessThan(2);
    }
  });

  it("names each combination once", () => {
    const all = labels("strength", "D", "L", "Lr", "S", "R", "W", "E");
    expect(new Set(all).size).toBe(all.length);
  });
});

describe("combined forces", () => {
  const wind = (id: string): LoadCase => ({ id, type: "W", title: `wind ${id}` });
  const dead: LoadCase = { id: "dead", type: "D", title: "dead load" };
  const force = (P: number, Vx = 0): Forces => ({ P, Vx, Vy: 0, Mx: 0, My: 0 });

  const minimumOf = (level: "strength" | "allowable", D: number, W: number): number => {
    const reactions = [D, W].map((P) => ({ top: force(P), base: force(P) }));
    return Math.min(...combine(chosenCases("ASCE 7-22", level, [dead, wind("1")]), reactions, plainCalc).map(({ base }) => base.P));
  };

  it.each([
    ["10 psf dead and 49.5 psf up", 10, -49.5, -40.5, -23.7],
    ["5 psf dead and 49.5 psf up", 5, -49.5, -45.0, -26.7],
    // 14 ft by 24 ft, four posts, 10 psf dead, 20 psf of 0.6W up: 1176 lb lift each post.
    ["a post of a small terrace roof", 840, -2800, -2044, -1176],
  ])("%s: the most uplift", (_, D, W, strength, allowable) => {
    expect(minimumOf("strength", D, W)).toBeCloseTo(strength, 9);
    expect(minimumOf("allowable", D, W)).toBeCloseTo(allowable, 9);
  });

  it("tries every wind case and names it", () => {
    const chosen = chosenCases("ASCE 7-22", "strength", [dead, wind("1"), wind("2"), wind("3")]);
    expect(chosen.filter(({ combination }) => combination.label === "0.9D + 1.0W").map(({ label }) => label)).toEqual([
      "0.9D + 1.0W: wind 1",
      "0.9D + 1.0W: wind 2",
      "0.9D + 1.0W: wind 3",
    ]);
    expect(new Set(chosen.map(({ label }) => label)).size).toBe(chosen.length);
  });

  it("factors every component at both ends", () => {
    const at = (k: number): Forces => ({ P: 10 * k, Vx: 2 * k, Vy: 3 * k, Mx: 4 * k, My: 5 * k });
    const chosen = chosenCases("ASCE 7-22", "strength", [dead, wind("1")]);
    const demands = combine(chosen, [{ top: at(1), base: at(2) }, { top: at(10), base: at(20) }], plainCalc);
    const found = demands.find(({ combination }) => combination.label === "1.2D + 0.5W");
    expect(found?.top).toEqual({ P: 62, Vx: expect.closeTo(12.4, 9), Vy: expect.closeTo(18.6, 9), Mx: expect.closeTo(24.8, 9), My: 31 });
    expect(found?.base.P).toBe(124);
    expect(found?.level).toBe("strength");
  });
});
