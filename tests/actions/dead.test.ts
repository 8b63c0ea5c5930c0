/** Source: ASCE 7-22 3.1; weights by hand. HSS6x6x3/8 weighs 27.48 lb/ft (AISC Shapes Database v15.0). */
import { describe, expect, it } from "vitest";
import { baseOf, entries, pound, psf, solved, totalOf, unknownOf } from "./given.js";

describe("dead load", () => {
  const { actions, columns } = solved();

  it("of the roof is its load on plan: 10 psf on 24 ft by 20 ft is 4800 lb, at the middle", () => {
    const { P, Vx, Vy, Mx, My } = totalOf(actions, "dead");
    expect(P / pound).toBeCloseTo(4800, 6);
    expect([Vx, Vy, Mx, My]).toEqual(Array(4).fill(expect.closeTo(0, 6)));
  });

  it.each([
    ["a south column, 10 ft", 0, 10],
    ["a north column, 12 ft", 2, 12],
  ])("brings the weight of %s to its own base only", (_, index, height) => {
    const dead = columns[index].cases.find(({ loadCase }) => loadCase.id === "dead");
    const own = ((dead?.base.P ?? 0) - (dead?.top.P ?? 0)) / pound;
    expect(own).toBeGreaterThan(27.48 * height * 0.995);
    expect(own).toBeLessThan(27.48 * height * 1.005);
  });

  it("reaches the bases whole: roof and four columns", () => {
    const sum = columns.reduce((total, column) => total + baseOf(column, "dead").P, 0) / pound;
    expect(Math.abs(sum - (4800 + 27.48 * 44))).toBeLessThan(6);
  });
});

describe("dead load by layers", () => {
  // Shingles 2 psf, 5/8 in plywood 2 psf, framing 3 to 5 psf: 7 and 9 psf over a surface 1.0308 times its plan of 480 sq ft at 3 in 12.
  const layers = entries({
    shingles: { material: "asphalt shingles" },
    sheathing: { material: "plywood", thickness: (5 / 8) * 0.0254 },
    framing: { light: 3 * psf, heavy: 5 * psf },
  });
  const roof = { dead: undefined, slope: 0.25, layers };
  const { actions, columns } = solved({ roof });

  it.each([
    ["light", 3463.5],
    ["heavy", 4453.1],
  ])("is on plan the weight of the sloped surface: %s %f lb", (estimate, weight) => {
    expect(totalOf(actions, `dead/${estimate}`).P / pound).toBeCloseTo(weight, 0);
  });

  it("holds down with the light estimate and presses with the heavy one", () => {
    for (const { combination, cases } of [...columns[0].strength, ...columns[0].allowable]) {
      expect(cases[0].id).toBe(combination.terms[0].factor < 1 ? "dead/light" : "dead/heavy");
    }
  });

  it("is one case where no layer has a range", () => {
    const even = entries({ shingles: { material: "asphalt shingles" }, framing: { weight: 4 * psf } });
    expect(totalOf(solved({ roof: { ...roof, layers: even } }).actions, "dead").P / pound).toBeCloseTo(6 * 480 * Math.sqrt(1 + 1 / 16), 0);
  });

  it("takes a stated weight before the usual one", () => {
    const own = entries({ shingles: { material: "asphalt shingles", weight: 4 * psf } });
    expect(totalOf(solved({ roof: { ...roof, slope: 0, layers: own } }).actions, "dead").P / pound).toBeCloseTo(4 * 480, 6);
  });

  it("shows each layer with the source of its weight", () => {
    const steps = actions.derivations().find(({ title }) => title === "heavy dead load")?.steps ?? [];
    const notes = steps.flatMap((step) => (step.type === "note" ? [step.text] : []));
    expect(notes).toEqual(["shingles: asphalt shingles, ASCE 7-22 Table C3.1-1a (from memory).", "sheathing: plywood, ASCE 7-22 Table C3.1-1a (from memory).", "framing: as stated."]);
  });
});

describe("a light and a heavy dead load", () => {
  it("are cases of their own, each with the columns' weight", () => {
    const { actions, columns } = solved({ roof: { dead: undefined, "light dead": 8 * psf, "heavy dead": 14 * psf } });
    expect([totalOf(actions, "dead/light").P / pound, totalOf(actions, "dead/heavy").P / pound]).toEqual([3840, 6720].map((P) => expect.closeTo(P, 6)));
    const sum = (id: string) => columns.reduce((total, column) => total + baseOf(column, id).P, 0) / pound;
    expect(sum("dead/heavy") - sum("dead/light")).toBeCloseTo(2880, 6);
  });

  it("fall back on the one number", () => {
    const { actions } = solved({ roof: { dead: 10 * psf, "heavy dead": 14 * psf } });
    expect(totalOf(actions, "dead/light").P / pound).toBeCloseTo(4800, 6);
  });

  it.each([
    ["a number and layers", { dead: 10 * psf, layers: entries({ a: { weight: 2 * psf } }) }, /stated as a number and by its layers/u],
    ["a light one above the heavy", { "light dead": 12 * psf, "heavy dead": 10 * psf }, /light dead load of the roof is more than the heavy one/u],
    ["a layer's light above its heavy", { dead: undefined, layers: entries({ deck: { light: 3 * psf, heavy: 2 * psf } }) }, /light dead load of deck is more/u],
    ["the heavy one alone", { dead: undefined, "heavy dead": 10 * psf }, /the light dead load of the roof, or one dead load/u],
    ["a layer of nothing", { dead: undefined, layers: entries({ deck: {} }) }, /the material or the weight of the roof's layer deck/u],
    ["a layer without thickness", { dead: undefined, layers: entries({ deck: { material: "plywood" } }) }, /the thickness of the roof's layer deck/u],
  ])("say what is wrong with %s", (_, roof, words) => {
    expect(unknownOf({ roof })).toMatch(words);
  });
});
