import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pierUplift } from "../../../server/src/checks/pier/uplift.js";
import { solveShaftSide } from "../../../server/src/mechanics/shaft-side.js";
import { foot, inch, kip, say, sourced } from "../given.js";
import { allowable, degree, lb, outcomeOf, pcf, psf, read, standing, stepsFor, weigh } from "../ground.js";

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

describe("Side resistance from the strength of the soil", () => {
  const strength = { "side resistance by": "soil strength" };
  const layered = (layers: readonly object[]) => ({ layers: layers.map((of) => sourced(Object.fromEntries(Object.entries(of).map(([name, value]) => [name, sourced(value)])))) });
  const given = (foundation: object, ground: object, layers: readonly object[]) => {
    const support = pier(foundation, { ...strength, ...ground }) as { ground?: { fields: Record<string, unknown> } };
    Object.assign(support.ground!.fields, { layers: sourced(layered(layers).layers) });
    return support as unknown as ReturnType<typeof pier>;
  };
  const ultimate = (support: ReturnType<typeof pier>) => stepsFor(pierUplift, support, lift(1000)).values.get("R_s")! / kip;

  // Das, Principles of Foundation Engineering, Example 12.5: shaft of 2.5 ft, clay of 800 psf along 7 ft below the 5 ft left out and of 1,200 psf along
  // 5.5 ft, alpha 0.55: 52.70 kip.
  it("clay in two layers by alpha", () => {
    const shaft = given({ diameter: 2.5 * foot, depth: 17.5 * foot }, { cohesion: 800 * psf, "uplift safety": 1.5 }, [{ from: 12 * foot, cohesion: 1200 * psf }]);
    expect(ultimate(shaft) * 1.5).toBeCloseTo(52.7, 1);
  });

  it("takes less of stronger clay, between the bounds of alpha", () => {
    // 1.5 atmospheres are 3,174 psf, 2.5 are 5,290 psf; 10 ft of a 2 ft shaft below the seasonal 5 ft.
    const of = (cohesion: number) => (ultimate(pier({ depth: 15 * foot }, { ...strength, cohesion: cohesion * psf, "uplift safety": 1.5 })) * 1.5 * 1000) / (Math.PI * 2 * 10);
    expect(of(3000)).toBeCloseTo(0.55 * 3000, 0);
    expect(of(4232.4)).toBeCloseTo(0.5 * 4232.4, -1);
    expect(of(5290)).toBeCloseTo(0.45 * 5290, -1);
    expect(of(9000)).toBeCloseTo(of(5290.5), -1);
  });

  // 2 ft by 8 ft in sand of 110 pcf with beta = 1.5 - 0.135 sqrt(z), in eight slices: 25.917 kip.
  const sand = { ...strength, "unit weight": 110 * pcf, "uplift safety": 2 };
  it("sand by beta", () => {
    expect((ultimate(pier({}, { ...sand, "blow count": 20 })) * 2) / 25.917).toBeCloseTo(1, 2);
  });

  it("takes loose sand in proportion to its blow count", () => {
    expect(ultimate(pier({}, { ...sand, "blow count": 9 })) / ultimate(pier({}, { ...sand, "blow count": 15 }))).toBeCloseTo(0.6, 9);
  });

  it("keeps beta between 0.25 and 1.2", () => {
    const mean = (from: number, to: number) => solveShaftSide({ layers: [{ top: 0, law: { type: "sand", blows: 30 }, weight: 110 * pcf }], perimeter: 1, from: from * foot, to: to * foot }).mean / psf;
    expect(mean(2, 2.001)).toBeCloseTo(1.2 * 220, 0);
    expect(mean(9, 9.001)).toBeCloseTo((1.5 - 0.135 * 3) * 990, 0);
    expect(mean(100, 100.001)).toBeCloseTo(0.25 * 11_000, 0);
  });

  it("counts the sand below the water by its buoyant weight", () => {
    const dry = ultimate(pier({}, { ...sand, "blow count": 20 }));
    expect(ultimate(pier({}, { ...sand, "blow count": 20, "water table": 0 })) / dry).toBeCloseTo((110 - 62.4) / 110, 6);
  });

  it.each([
    ["3 by analysis", undefined, [], 3],
    ["2 under wind", undefined, [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }], 2],
    ["as stated", 2.5, [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }], 2.5],
  ] as const)("divides by the factor of safety once: %s", (_, safety, terms, factor) => {
    const clay = pier({}, { ...strength, cohesion: 1000 * psf, "uplift safety": safety });
    // 3 ft below the seasonal depth.
    expect(stepsFor(pierUplift, clay, lift(1000, terms)).values.get("R_s")! / lb).toBeCloseTo((0.55 * 1000 * Math.PI * 2 * 3) / factor, 0);
  });

  it("asks for the strength", () => {
    expect(read(pierUplift, pier({}, strength)).missing).toEqual(["cohesion (clay) or blow count (sand) of the ground", "unit weight of the ground"]);
    expect(read(pierUplift, given({}, { cohesion: 1000 * psf }, [{ from: 4 * foot }])).missing).toContain("cohesion (clay) or blow count (sand) of layer 1 below the top one");
  });
});

describe("A bell at the foot of a pier", () => {
  const bell = { bell: { diameter: 4 * foot, height: 1.5 * foot } };
  const ground = { class: "SM", "unit weight": 110 * pcf, "cone angle": 30 * degree };
  const values = (foundation: object, more: object = {}) => stepsFor(pierUplift, pier({ ...bell, ...foundation }, { ...ground, ...more }), lift(1000)).values;

  // By hand: frustum pi 1.5/12 (16 + 8 + 4) less the shaft pi 1.5 is 6.2832 ft³.
  it("weighs what its frustum does", () => {
    expect(values({}).get("W_b")! / lb).toBeCloseTo(942.5, 0);
    expect(values({}).get("W_p")! / lb).toBeCloseTo(3769.9 + 942.5, 0);
    expect(values({}, { "water table": 0 }).get("W_b")! / lb).toBeCloseTo(6.2832 * 87.6, 0);
  });

  it("has no side resistance of its own", () => {
    expect(values({}).get("R_s")! / kip).toBeCloseTo((16.755 * 6.5) / 8, 2);
  });

  it("lifts the soil straight above it, without side resistance", () => {
    const found = values({ "held down by": "weight" });
    expect(found.get("W_s")! / lb).toBeCloseTo(69.115 * 110, -1);
    expect(found.get("R_a")! / lb).toBeCloseTo(0.6 * (3769.9 + 942.5 + 7602.7), -1);
    expect(found.has("R_s")).toBe(false);
    expect(values({ "held down by": "weight" }, { "water table": 0 }).get("W_s")! / lb).toBeCloseTo(69.115 * (110 - 62.4), -1);
  });

  it("lifts a cone of soil", () => {
    const volume = 8 * Math.PI * (4 + 2 * 8 * Math.tan(Math.PI / 6) + (8 * Math.tan(Math.PI / 6)) ** 2 / 3) - 8 * Math.PI - 6.2832;
    expect(values({ "held down by": "soil cone" }).get("W_s")! / lb).toBeCloseTo(volume * 110, -1);
    expect(values({ "held down by": "soil cone" }, { "water table": 0 }).get("W_s")! / lb).toBeCloseTo(volume * 47.6, -1);
  });

  it("does not count the soil between two cones twice", () => {
    const far = (distance: number) => outcomeOf(pierUplift, standing({ foundation: { kind: "pier", depth: 8 * foot, diameter: 2 * foot, ...bell, "held down by": "soil cone" }, ground: { kind: "soil", ...ground }, places: [{ x: 0, y: 0 }, { x: distance * foot, y: 0 }] }), lift(1000));
    // 4 + 16 tan 30° = 13.24 ft at grade.
    expect(far(13.2).type).toBe("unchecked");
    expect(far(13.3).type).toBe("weighed");
  });

  it("is needed for a cone, is round and wider than its pier", () => {
    const blocks = (foundation: object) => read(pierUplift, pier(foundation, ground)).blocks.join();
    expect(blocks({ "held down by": "soil cone" })).toMatch(/lifts no cone/);
    expect(blocks({ bell: { diameter: 2 * foot, height: 1 * foot } })).toMatch(/no wider than its pier/);
    expect(blocks({ bell: { diameter: 4 * foot, height: 9 * foot } })).toMatch(/reaches up to grade/);
    expect(blocks({ ...bell, diameter: undefined, width: 2 * foot })).toMatch(/round pier alone/);
  });

  it("leaves a straight pier to its weight alone where that is said", () => {
    expect(weigh(pierUplift, pier({ "held down by": "weight" }, ground), lift(1000)).capacity / lb).toBeCloseTo(0.6 * 3769.9, 0);
  });

  it("never holds less where it is wider", () => {
    const size = fc.double({ min: 1.05, max: 3, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.constantFrom("weight", "soil cone"), fc.double({ min: 0, max: 10, noNaN: true }), (a, b, by, water) => {
        const of = (wider: number) => weigh(pierUplift, pier({ bell: { diameter: wider * 2 * foot, height: foot }, "held down by": by }, { ...ground, "water table": water * foot }), lift(1000)).capacity;
        expect(of(Math.max(a, b))).toBeGreaterThanOrEqual(of(Math.min(a, b)) * (1 - 1e-12));
      }),
    );
  });
});
