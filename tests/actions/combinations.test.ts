/**
 * Source: ASCE 7-22 and 7-16 2.3.1, 2.3.6, 2.4.1 and 2.4.5, ASCE 7-10 2.3.2 and 2.4.1, IBC 2021 1605.2; the combinations are typed from the
 * clauses, those of snow and earthquake from memory.
 */
import { describe, expect, it } from "vitest";
import { chosenCases, combinationsFor, combine } from "../../server/src/actions/combinations.js";
import type { Forces, LoadCase, LoadType } from "../../server/src/actions/demand.js";
import type { Edition } from "../../server/src/actions/edition.js";
import { plainCalc } from "../../server/src/formula/calc.js";

const editions: readonly Edition[] = ["ASCE 7-10", "ASCE 7-16", "ASCE 7-22"];
const all: readonly LoadType[] = ["D", "L", "Lr", "S", "R", "W", "E", "Ev"];

const of = (edition: Edition, level: "strength" | "allowable", ...types: LoadType[]): string[] => combinationsFor(edition, level, new Set(types)).map(({ label }) => label);
const alternative = (edition: Edition, ...types: LoadType[]): string[] => combinationsFor(edition, "allowable", new Set(types), true).map(({ label }) => label);

describe("combinations for the loads there are", () => {
  it.each([
    ["strength", ["1.4D", "1.2D + 1.0W", "0.9D + 1.0W"]],
    ["allowable", ["1.0D", "1.0D + 0.6W", "0.6D + 0.6W"]],
  ] as const)("dead load and wind, %s, of every edition", (level, expected) => {
    for (const edition of editions) expect(of(edition, level, "D", "W")).toEqual(expected);
  });

  it.each([
    ["ASCE 7-22", "strength", ["1.4D", "1.2D + 1.0S", "1.2D + 1.0S + 0.5W", "1.2D + 1.0W", "1.2D + 1.0W + 0.3S", "0.9D + 1.0W"]],
    ["ASCE 7-16", "strength", ["1.4D", "1.2D + 1.6S", "1.2D + 1.6S + 0.5W", "1.2D + 1.0W", "1.2D + 1.0W + 0.5S", "0.9D + 1.0W"]],
    ["ASCE 7-10", "strength", ["1.4D", "1.2D + 1.6S", "1.2D + 1.6S + 0.5W", "1.2D + 1.0W", "1.2D + 1.0W + 0.5S", "0.9D + 1.0W"]],
    ["ASCE 7-22", "allowable", ["1.0D", "1.0D + 0.7S", "1.0D + 0.6W", "1.0D + 0.45W + 0.525S", "0.6D + 0.6W"]],
    ["ASCE 7-16", "allowable", ["1.0D", "1.0D + 1.0S", "1.0D + 0.6W", "1.0D + 0.45W + 0.75S", "0.6D + 0.6W"]],
    ["ASCE 7-10", "allowable", ["1.0D", "1.0D + 1.0S", "1.0D + 0.6W", "1.0D + 0.45W + 0.75S", "0.6D + 0.6W"]],
  ] as const)("snow keeps the factors of its edition: %s, %s", (edition, level, expected) => {
    expect(of(edition, level, "D", "S", "W")).toEqual(expected);
  });

  it.each([
    ["strength", ["1.2D + 1.6L + 0.5Lr", "1.2D + 1.6Lr", "1.2D + 1.6Lr + 1.0L", "1.2D + 1.6Lr + 0.5W", "1.2D + 1.0W + 1.0L + 0.5Lr"]],
    ["allowable", ["1.0D + 1.0L", "1.0D + 1.0Lr", "1.0D + 0.75L + 0.75Lr", "1.0D + 0.45W + 0.75L + 0.75Lr"]],
  ] as const)("live and roof live load, %s, of every edition", (level, expected) => {
    for (const edition of editions) expect(of(edition, level, "D", "L", "Lr", "W")).toEqual(expect.arrayContaining([...expected]));
  });

  it.each([
    ["strength", ["1.2D + 1.6R", "1.2D + 1.6R + 0.5W", "1.2D + 1.0W + 0.5R"]],
    ["allowable", ["1.0D + 1.0R", "1.0D + 0.45W + 0.75R"]],
  ] as const)("rain, %s, of every edition", (level, expected) => {
    for (const edition of editions) expect(of(edition, level, "D", "R", "W")).toEqual(expect.arrayContaining([...expected]));
  });

  it.each([
    ["ASCE 7-22", "strength", ["1.4D", "1.2D + 1.0Ev + 1.0E", "1.2D + 1.0Ev + 1.0E + 0.15S", "0.9D - 1.0Ev + 1.0E"]],
    ["ASCE 7-16", "strength", ["1.4D", "1.2D + 1.0Ev + 1.0E", "1.2D + 1.0Ev + 1.0E + 0.2S", "0.9D - 1.0Ev + 1.0E"]],
    ["ASCE 7-10", "strength", ["1.4D", "1.2D + 1.0Ev + 1.0E", "1.2D + 1.0Ev + 1.0E + 0.2S", "0.9D - 1.0Ev + 1.0E"]],
    ["ASCE 7-22", "allowable", ["1.0D", "1.0D + 0.7Ev + 0.7E", "1.0D + 0.525Ev + 0.525E + 0.1S", "0.6D - 0.7Ev + 0.7E"]],
    ["ASCE 7-16", "allowable", ["1.0D", "1.0D + 0.7Ev + 0.7E", "1.0D + 0.525Ev + 0.525E + 0.75S", "0.6D - 0.7Ev + 0.7E"]],
    ["ASCE 7-10", "allowable", ["1.0D", "1.0D + 0.7Ev + 0.7E", "1.0D + 0.525Ev + 0.525E + 0.75S", "0.6D - 0.7Ev + 0.7E"]],
  ] as const)("earthquake with its vertical part: %s, %s", (edition, level, expected) => {
    const labels = of(edition, level, "D", "S", "E", "Ev");
    expect(labels.filter((label) => label === expected[0] || label.includes("E"))).toEqual(expected);
  });

  it("an earthquake that states no vertical part is combined without one", () => {
    expect(of("ASCE 7-22", "strength", "D", "E")).toEqual(["1.4D", "1.2D + 1.0E", "0.9D + 1.0E"]);
    expect(of("ASCE 7-22", "allowable", "D", "E")).toEqual(["1.0D", "1.0D + 0.7E", "0.6D + 0.7E"]);
  });

  it("never takes two of roof live, snow and rain at once, nor wind with earthquake", () => {
    for (const edition of editions) {
      for (const labels of [of(edition, "strength", ...all), of(edition, "allowable", ...all), alternative(edition, ...all)]) {
        for (const label of labels) {
          expect(label.match(/Lr|S|R/gu)?.length ?? 0).toBeLessThan(2);
          expect(/W.*E|E.*W/u.test(label)).toBe(false);
        }
      }
    }
  });

  it("names each combination once, with its clause", () => {
    for (const edition of editions) {
      const found = combinationsFor(edition, "strength", new Set(all));
      expect(new Set(found.map(({ label }) => label)).size).toBe(found.length);
      for (const { clause } of found) expect(clause).toMatch(new RegExp(`^${edition} 2\\.3\\.[126], combination `, "u"));
    }
  });
});

describe("alternative basic combinations", () => {
  it.each([
    ["ASCE 7-16", ["1.0D", "1.0D + 1.0S", "1.0D + 0.6W", "1.0D + 0.6W + 0.5S", "1.0D + 1.0S + 0.3W", "0.667D + 0.6W"]],
    ["ASCE 7-22", ["1.0D", "1.0D + 0.7S", "1.0D + 0.6W", "1.0D + 0.6W + 0.35S", "1.0D + 0.7S + 0.3W", "0.667D + 0.6W"]],
  ] as const)("of dead load, snow and wind: %s", (edition, expected) => {
    expect(alternative(edition, "D", "S", "W")).toEqual(expected);
  });

  it("of an earthquake divide it by 1.4", () => {
    expect(alternative("ASCE 7-16", "D", "E", "Ev")).toEqual(["1.0D", "1.0D + 0.714Ev + 0.714E", "0.9D - 0.714Ev + 0.714E"]);
    const [, , quake] = combinationsFor("ASCE 7-16", "allowable", new Set(["D", "E"]), true);
    expect(quake.terms[1].factor).toBeCloseTo(1 / 1.4, 4);
  });

  it("count no more than two thirds of the least dead load against wind", () => {
    const found = combinationsFor("ASCE 7-16", "allowable", new Set(["D", "W"]), true).find(({ clause }) => clause.includes("two thirds"));
    expect(found?.terms[0].factor).toBeLessThanOrEqual(2 / 3);
    expect(found?.terms[0].factor).toBeCloseTo(2 / 3, 3);
  });

  it("change nothing at strength level", () => {
    const present = new Set<LoadType>(["D", "S", "W"]);
    expect(combinationsFor("ASCE 7-16", "strength", present, true)).toEqual(combinationsFor("ASCE 7-16", "strength", present));
  });
});

const caseOf = (type: LoadType, id: string, more: Partial<LoadCase> = {}): LoadCase => ({ id, type, title: id, ...more });

describe("a dead load with a least and a most", () => {
  const cases = [caseOf("D", "light dead load", { estimate: "light" }), caseOf("D", "heavy dead load", { estimate: "heavy" }), caseOf("W", "wind")];

  it.each(["strength", "allowable"] as const)("holds down with the least and presses with the most: %s", (level) => {
    const chosen = chosenCases("ASCE 7-22", level, cases);
    expect(chosen.length).toBe(3);
    for (const { combination, cases: taken, label } of chosen) {
      const estimate = combination.terms[0].factor < 1 ? "light" : "heavy";
      expect(taken[0].estimate).toBe(estimate);
      expect(label).toContain(`${estimate} dead load`);
    }
  });
});

describe("loads alike all over the roof", () => {
  const uniform = (type: LoadType, id: string, psf: number) => caseOf(type, id, { uniform: psf * 47.88 });
  const dead = caseOf("D", "dead");

  it.each([
    // 1.6 times 20 psf against 1.0 times 30 psf, and 0.5 times 20 against 0.3 times 30; 20 against 0.7 times 30.
    ["ASCE 7-22", "strength", 20, 30, ["1.2D + 1.6Lr", "1.2D + 1.0W + 0.5Lr"]],
    ["ASCE 7-22", "allowable", 20, 30, ["1.0D + 0.7S", "1.0D + 0.45W + 0.525S"]],
    ["ASCE 7-16", "strength", 20, 21, ["1.2D + 1.6S", "1.2D + 1.0W + 0.5S"]],
    ["ASCE 7-16", "allowable", 20, 19, ["1.0D + 1.0Lr", "1.0D + 0.45W + 0.75Lr"]],
  ] as const)("are tried with the largest alone: %s, %s, roof live %f, snow %f", (edition, level, live, snow, expected) => {
    const labels = chosenCases(edition, level, [dead, uniform("Lr", "live", live), uniform("S", "snow", snow), caseOf("W", "wind")]).map(({ combination }) => combination.label);
    expect(labels).toEqual(expect.arrayContaining([...expected]));
    expect(labels.filter((label) => /Lr/u.test(label) !== /Lr/u.test(expected[0]) && /Lr|S/u.test(label))).toEqual([]);
  });

  it("leave every load that differs over the roof in its place", () => {
    const cases = [dead, uniform("S", "even snow", 20), uniform("S", "least snow", 25), caseOf("S", "drift"), caseOf("S", "unbalanced")];
    const taken = chosenCases("ASCE 7-16", "strength", cases).map(({ label }) => label);
    expect(taken).toEqual(["1.4D", "1.2D + 1.6S: least snow", "1.2D + 1.6S: drift", "1.2D + 1.6S: unbalanced"]);
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
    const found = demands.find(({ combination }) => combination.label === "0.9D + 1.0W");
    expect(found?.top).toEqual({ P: 109, Vx: expect.closeTo(21.8, 9), Vy: expect.closeTo(32.7, 9), Mx: expect.closeTo(43.6, 9), My: 54.5 });
    expect(found?.base.P).toBe(218);
    expect(found?.level).toBe("strength");
  });

  it("take the vertical part of an earthquake down with 1.2D and up with 0.9D", () => {
    const cases = [dead, caseOf("Ev", "shaking"), caseOf("E", "earthquake")];
    const parts = [100, 20, 0].map((P) => ({ top: force(P), base: force(P) }));
    const demands = combine(chosenCases("ASCE 7-22", "strength", cases), parts, plainCalc);
    expect(demands.map(({ combination, base }) => [combination.label, base.P])).toEqual([
      ["1.4D", 140],
      ["1.2D + 1.0Ev + 1.0E", 140],
      ["0.9D - 1.0Ev + 1.0E", 70],
    ]);
  });
});
