import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pierUplift } from "../../../server/src/checks/pier/uplift.js";
import { foot, inch, kip, say } from "../given.js";
import { allowable, lb, psf, read, standing, stepsFor, weigh } from "../ground.js";

const pier = (foundation: object, ground: object, site: object = {}) =>
  standing({ foundation: { kind: "pier", depth: 8 * foot, diameter: 2 * foot, "ignored depth": 0, ...foundation }, ground: { kind: "soil", ...ground } as never, site: site as never });

const lift = (pull: number, terms: Parameters<typeof allowable>[1] = []) => allowable({ P: -pull * lb }, terms);

describe("Weight of a pier", () => {
  // Statics with 150 pcf concrete and 62.4 pcf water; the first three are the fixtures K2 (12 in by 4 ft: 471 lb, 283 lb at 60 %) and
  // UP-2 (2 ft by 8 ft: 3.770 kip).
  it.each([
    ["12 in by 4 ft", { diameter: 12 * inch, depth: 4 * foot }, {}, 471.2],
    ["18 in by 4 ft", { diameter: 18 * inch, depth: 4 * foot }, {}, 1060.3],
    ["2 ft by 8 ft", {}, {}, 3769.9],
    ["2 ft by 8 ft, water at grade", {}, { "water table": 0 }, 2201.6],
    ["2 ft by 8 ft, water at 4 ft", {}, { "water table": 4 * foot }, 2985.8],
    ["2 ft by 8 ft, water below it", {}, { "water table": 20 * foot }, 3769.9],
    ["2 ft by 8 ft with 1 ft above grade", { "above grade": 12 * inch }, {}, 4241.2],
    ["16 in square by 6 ft", { diameter: undefined, width: 16 * inch, depth: 6 * foot }, {}, 1600],
  ])("%s", (_, foundation, ground, weight) => {
    expect(stepsFor(pierUplift, pier(foundation, { class: "SM", ...ground }), lift(1000)).values.get("W")! / lb).toBeCloseTo(weight, 0);
  });
});

describe("Uplift of a pier", () => {
  // UP-2: IBC friction of one sixth over 2 ft by 8 ft: class 4 16.755 kip, class 5 12.566 kip, class 3 at the 500 psf cap 25.133 kip.
  it.each([
    ["SM", 16.755],
    ["CL", 12.566],
    ["GP", 25.133],
    ["crystalline bedrock", 25.133],
  ])("side resistance in %s", (name, force) => {
    expect(stepsFor(pierUplift, pier({}, { class: name }), lift(1000)).values.get("R_s")! / kip).toBeCloseTo(force, 2);
  });

  it("adds six tenths of the weight to the side resistance, each factor once", () => {
    const found = weigh(pierUplift, pier({}, { class: "SM" }), lift(20_000, [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }]));
    expect(found.capacity / kip).toBeCloseTo(0.6 * 3.7699 + 16.755, 2);
    expect(found.demand / kip).toBeCloseTo(20, 9);
  });

  it("takes the combination's own factor on the weight", () => {
    const found = weigh(pierUplift, pier({}, { class: "SM" }), lift(20_000, [{ factor: 1, type: "D" }, { factor: 0.6, type: "W" }]));
    expect(found.capacity / kip).toBeCloseTo(3.7699 + 16.755, 2);
  });

  it("takes 0.6 where the reaction is given already combined, and says so", () => {
    expect(weigh(pierUplift, pier({}, { class: "SM" }), lift(5000)).capacity / kip).toBeCloseTo(0.6 * 3.7699 + 16.755, 2);
    expect(stepsFor(pierUplift, pier({}, { class: "SM" }), lift(5000)).notes.join(" ")).toContain("factor 0.6 of dead load against uplift");
  });

  it("takes side resistance as stated, without a sixth", () => {
    const found = weigh(pierUplift, pier({}, { "side resistance": 250 * psf }), lift(5000, [{ factor: 0.6, type: "D" }]));
    expect(found.capacity / kip).toBeCloseTo(0.6 * 3.7699 + 12.566, 2);
  });

  it("leaves out the frost depth, or the ignored depth where that is given", () => {
    const side = (foundation: object, site: object) => stepsFor(pierUplift, pier(foundation, { class: "SM" }, site), lift(1000)).values.get("R_s")! / kip;
    expect(side({ "ignored depth": undefined }, { "frost depth": 4 * foot })).toBeCloseTo(16.755 / 2, 3);
    expect(side({ "ignored depth": 5 * foot }, { "frost depth": 4 * foot })).toBeCloseTo((16.755 * 3) / 8, 3);
    expect(side({ "ignored depth": 2 * foot }, {})).toBeCloseTo((16.755 * 6) / 8, 3);
    expect(side({ "ignored depth": undefined }, { "frost depth": 9 * foot })).toBe(0);
  });

  it("finds the 12 in tube of 4 ft too light for 1,180 lb in ground that freezes to its foot", () => {
    const tube = pier({ diameter: 12 * inch, depth: 4 * foot, "ignored depth": undefined }, { class: "SM" }, { "frost depth": 4 * foot });
    const found = weigh(pierUplift, tube, lift(1180));
    expect(found.capacity / lb).toBeCloseTo(283, 0);
    expect(pierUplift.advise!(read(pierUplift, tube).inputs, found, say)).toContain("the pull is 1.18 kip");
  });

  it("asks for the frost depth or the ignored depth, and for a soil", () => {
    expect(read(pierUplift, pier({ "ignored depth": undefined }, {})).missing).toEqual(["side resistance, or the class of the ground", "frost depth of the site, or the ignored depth of the pier"]);
  });

  it("has no presumptive side resistance in fill", () => {
    expect(read(pierUplift, pier({}, { class: "fill" })).blocks.join()).toMatch(/side resistance: fill/);
  });

  it("is not tried by a column that presses", () => {
    expect(weigh(pierUplift, pier({}, { class: "SM" }), lift(-5000)).demand).toBe(0);
  });

  it("never holds less where it is deeper or wider, or the water is lower", () => {
    const size = fc.double({ min: 0.2, max: 2, noNaN: true });
    const length = fc.double({ min: 0.5, max: 8, noNaN: true });
    fc.assert(
      fc.property(size, length, length, fc.double({ min: 1, max: 2, noNaN: true }), (diameter, depth, water, factor) => {
        const of = (d: number, z: number, w: number) => weigh(pierUplift, pier({ diameter: d, depth: z, "ignored depth": 0.5 }, { class: "SM", "water table": w }), lift(1000)).capacity;
        const held = of(diameter, depth, water) * (1 - 1e-12);
        expect(of(diameter * factor, depth, water)).toBeGreaterThanOrEqual(held);
        expect(of(diameter, depth * factor, water)).toBeGreaterThanOrEqual(held);
        expect(of(diameter, depth, water * factor)).toBeGreaterThanOrEqual(held);
      }),
    );
  });
});
