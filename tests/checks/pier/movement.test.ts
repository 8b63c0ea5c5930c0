import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pierMovement } from "../../../server/src/checks/pier/movement.js";
import { pierRotation, pierRotationStated } from "../../../server/src/checks/pier/rotation.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, inch, kip, kipFoot, psi, say, sourced } from "../given.js";
import { allowable, degree, lb, lbFoot, pcf, psf, read, standing, stepsFor, weigh } from "../ground.js";

const pci = lb / inch ** 3;

/** f'c so that 0.35 of 57,000 sqrt(f'c) is 3,600 ksi: the stiffness of the recomputed cases. */
const concrete = (3.6e6 / (0.35 * 57000)) ** 2 * psi;

type Fields = Record<string, unknown>;
const pier = (ground: Fields, more: Fields = {}) =>
  standing({ foundation: { kind: "pier", diameter: 24 * inch, depth: 10 * foot, concrete, ...more }, ground: { kind: "soil", "isolated poles": true, ...ground } as never });

const sand = { "friction angle": 33 * degree, "modulus growth": 60 * pci, "unit weight": 110 * pcf };
const softClay = { cohesion: 500 * psf, "strain at half strength": 0.02, "unit weight": (50 + 62.4) * pcf, "water table": 0 };
const push = (H: number, h: number) => allowable({ Vx: H * lb, My: H * h * lbFoot });

describe("Movement of a pier at grade", () => {
  // 24 in, 120 in long, a push 120 in above grade; by a separate solution on 240 elements. EI of 5.8630e10 lb·in².
  it.each([
    [1000, 0.05274],
    [2000, 0.10643],
    [4000, 0.220884],
    [6000, 0.35364],
  ])("in sand under %d lb is %d in", (H, y0) => {
    const found = weigh(pierMovement, pier(sand), push(H, 10));
    expect(found.demand / inch / y0).toBeCloseTo(1, 2);
    expect(found.capacity / inch).toBeCloseTo(0.5, 9);
  });

  it.each([
    [1000, 0.0564],
    [2000, 0.4332],
    [3000, 1.451],
  ])("in soft clay under water under %d lb is %d in", (H, y0) => {
    expect(weigh(pierMovement, pier(softClay), push(H, 10)).demand / inch / y0).toBeCloseTo(1, 2);
  });

  // Rigid pier in closed form: 1,200 lb at 120 in, 84 in long: 100 pci y0 0.0748 in, with bending 0.0759 in; growing by 60 pci 0.1482 in.
  it("on springs of 100 pci is 0.0759 in, on springs that grow by 60 pci at least the rigid 0.1482 in", () => {
    const of = (ground: Fields) => weigh(pierMovement, pier(ground, { depth: 7 * foot }), push(1200, 10)).demand / inch;
    expect(of({ "subgrade modulus": 100 * pci })).toBeCloseTo(0.07585, 4);
    expect(of({ "modulus growth": 60 * pci })).toBeGreaterThan(0.1482);
    expect(of({ "modulus growth": 60 * pci })).toBeLessThan(0.1482 * 1.02);
  });

  it("is held against half an inch, a smaller limit stated, or a limit alone where nothing is doubled", () => {
    const limit = (ground: Fields, more: Fields) => weigh(pierMovement, pier({ ...sand, ...ground }, more), push(1000, 10)).capacity / inch;
    expect(limit({}, { "movement limit": 0.25 * inch })).toBeCloseTo(0.25, 9);
    expect(limit({}, { "movement limit": 1 * inch })).toBeCloseTo(0.5, 9);
    expect(limit({ "isolated poles": false }, { "movement limit": 1 * inch })).toBeCloseTo(1, 9);
  });

  it("is made where the lateral bearing is doubled or a limit is stated, and nowhere else", () => {
    expect(pierMovement.applies(pier({}))).toBe(true);
    expect(pierMovement.applies(pier({ "isolated poles": false }))).toBe(false);
    expect(pierMovement.applies(pier({ "isolated poles": false }, { "movement limit": 0.01 }))).toBe(true);
  });

  it("is over where the soil gives way", () => {
    const support = pier(softClay);
    const found = weigh(pierMovement, support, push(30_000, 10));
    expect(found.demand).toBeCloseTo(24 * inch, 9);
    expect(pierMovement.advise!(read(pierMovement, support).inputs, found, say)).toBe("depth 10 ft: the soil gives way before the load is reached. Deepen the pier or widen it.");
  });

  it("says what to change", () => {
    const support = pier(softClay);
    expect(pierMovement.advise!(read(pierMovement, support).inputs, weigh(pierMovement, support, push(3000, 10)), say)).toMatch(/^movement 1\.45\d? in at grade; 0\.5 in is the limit\. Deepen the pier or widen it, or do not count on the doubled lateral bearing/);
  });

  it("is none where a tied slab holds the pier", () => {
    expect(weigh(pierMovement, pier(sand, { "restrained at grade": true, "slab at grade": { kind: "tied slab" } }), push(1000, 10)).demand).toBe(0);
    expect(weigh(pierMovement, pier(sand, { "restrained at grade": true, "slab at grade": { kind: "pavers" } }), push(1000, 10)).demand).toBeGreaterThan(0);
  });

  it("is larger by a second moment of area of w^4/12 in a square pier as a round one has of D^4/64", () => {
    const values = (more: Fields) => stepsFor(pierMovement, pier(sand, more), push(1000, 10)).values;
    expect(values({}).get("I_g")! / inch ** 4).toBeCloseTo(16286, 0);
    expect(values({ diameter: undefined, width: 24 * inch }).get("I_g")! / inch ** 4).toBeCloseTo(27648, 0);
    expect(values({}).get("E_r")! / psi / 3.6e6).toBeCloseTo(1, 9);
  });
});

describe("What the movement reads of the ground", () => {
  it.each([
    [{}, ["modulus growth (sand), subgrade modulus (stiff clay), or cohesion and strain at half strength (soft clay) of the ground"]],
    [{ "friction angle": 0.5 }, ["modulus growth (sand), subgrade modulus (stiff clay), or cohesion and strain at half strength (soft clay) of the ground"]],
    [{ "friction angle": 0.5, "modulus growth": 1e7 }, ["unit weight of the ground"]],
    [{ cohesion: 2e4, "strain at half strength": 0.01 }, ["unit weight of the ground"]],
    [{ "rock strength": 2e6 }, ["rock quality designation (rqd) of the ground", "rock strain of the ground"]],
    [{ "subgrade modulus": 1e7 }, []],
    [{ "modulus growth": 1e7 }, []],
  ])("%o lacks %o", (ground, missing) => {
    expect(read(pierMovement, pier(ground)).missing).toEqual(missing);
  });

  it.each([
    [sand, "p-y curve of sand"],
    [softClay, "p-y curve of soft clay"],
    [{ "rock strength": 2e6, rqd: 50, "rock strain": 2e-4 }, "p-y curve of weak rock"],
    [{ "subgrade modulus": 1e7, "friction angle": 0.5, cohesion: 1e4 }, "springs the same at every depth"],
    [{ "modulus growth": 1e7 }, "springs that grow with depth"],
  ])("says what %o is followed by: %s", (ground, words) => {
    expect(stepsFor(pierMovement, pier(ground), push(1000, 10)).notes.join(" ")).toContain(words);
  });

  const layered = (from: number, below: Fields) => ({ ...sand, layers: [sourcedFields({ from, ...below })] });
  const sourcedFields = (fields: Fields) => sourced(Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, sourced(value)])));
  const support = (ground: Fields) => {
    const made = pier({});
    const fields = Object.fromEntries(Object.entries({ kind: "soil", "isolated poles": true, ...ground }).map(([name, value]) => [name, sourced(value)]));
    return { ...made, ground: { ...made.ground!, fields } } as unknown as typeof made;
  };

  it("takes layers below: the same sand below changes nothing, soft clay below lets it move farther", () => {
    const of = (ground: Fields) => weigh(pierMovement, support(ground), push(2000, 10)).demand;
    expect(of(layered(4 * foot, sand)) / of(sand)).toBeCloseTo(1, 4);
    expect(of(layered(4 * foot, softClay))).toBeGreaterThan(of(sand));
    expect(of(layered(20 * foot, softClay)) / of(sand)).toBeCloseTo(1, 6);
  });

  it("asks for layers in order, and for what one of them lacks", () => {
    const wrong = { ...sand, layers: [sourcedFields({ from: 2, ...sand }), sourcedFields({ from: 1, ...sand })] };
    expect(read(pierMovement, support(wrong)).blocks.join()).toContain("do not go down in order");
    expect(read(pierMovement, support(layered(2, { "unit weight": 18e3 }))).missing.join()).toContain("layer 1 below the top one");
  });

  it("is stopped by a slope, and by an ignored depth that leaves nothing", () => {
    expect(read(pierMovement, pier(sand, { "ground slope": 0.3 })).blocks.join()).toContain("falls away");
    expect(read(pierMovement, pier(sand, { "ignored depth": 10 * foot })).blocks.join()).toContain("nothing is left");
  });
});

describe("Lean of a pier", () => {
  const limited = (ground: Fields, more: Fields = {}) => pier(ground, { depth: 7 * foot, "rotation limit": 0.2 * degree, ...more });
  // Rigid pier in closed form: 1,200 lb at 120 in, 84 in long, 100 pci: 0.00163994 rad; with bending 0.00172396.
  it("on springs of 100 pci is 0.0017240 rad", () => {
    const found = weigh(pierRotation, limited({ "subgrade modulus": 100 * pci }), { ...push(1200, 10), level: "service" } as never);
    expect(found.demand / 0.00172396).toBeCloseTo(1, 3);
    expect(found.capacity).toBeCloseTo(0.2 * degree, 9);
    expect(pierRotation.advise!(read(pierRotation, limited(sand)).inputs, found, say)).toBe("lean 0.09878 ° at grade; 0.2 ° is the limit. Deepen the pier or widen it.");
  });

  it("is held against a limit that is stated, under the service wind or, where reactions are stated, under the allowable combinations", () => {
    expect(pierRotation.applies(pier(sand))).toBe(false);
    expect([pierRotation.applies(limited(sand)), pierRotationStated.applies(limited(sand))]).toEqual([true, false]);
    const byHand = limited(sand, { combined: new Map() });
    expect([pierRotation.applies(byHand), pierRotationStated.applies(byHand)]).toEqual([false, true]);
  });

  it("is over where the soil gives way", () => {
    const found = weigh(pierRotationStated, limited(softClay, { combined: new Map() }), push(40_000, 10));
    expect(found.demand / found.capacity).toBeGreaterThan(100);
    // Half a radian stands for all that is more.
    const soft = weigh(pierRotationStated, pier({ "subgrade modulus": 1 * pci }, { depth: 3 * foot, diameter: 48 * inch, "rotation limit": 0.2 * degree, combined: new Map() }), push(9000, 10));
    expect(soft.demand).toBe(0.5);
  });
});

const load = fc.double({ min: -2e4, max: 2e4, noNaN: true });
describe("Laws of movement", () => {
  it("moves no farther where the pier is deeper or the ground stiffer, and the same from any side", () => {
    fc.assert(
      fc.property(load, load, fc.double({ min: 1.5, max: 5, noNaN: true }), fc.double({ min: 3e6, max: 4e7, noNaN: true }), (V, M, depth, k) => {
        const of = (ground: Fields, more: Fields, base: object = { Vx: V, My: M }) => weigh(pierMovement, pier(ground, more), allowable(base)).demand;
        const ground = { ...sand, "modulus growth": k };
        const one = of(ground, { depth });
        // In springs that only grow a deeper pier is stiffer; the same of sand.
        expect(of(ground, { depth: depth * 1.15 })).toBeLessThanOrEqual(one * (1 + 1e-4) + 1e-9);
        expect(of({ ...ground, "modulus growth": 1.2 * k }, { depth })).toBeLessThanOrEqual(one * (1 + 1e-6) + 1e-9);
        expect(of(ground, { depth }, { Vx: -V, My: -M })).toBeCloseTo(one, 7);
        expect(of(ground, { depth }, { Vy: V, Mx: -M })).toBeCloseTo(one, 7);
      }),
      { numRuns: 100 },
    );
  });

  it("names what grows it: push, moment and compression at grade", () => {
    const { inputs } = read(pierMovement, pier(sand, { "above grade": 1 * foot }));
    const sizes = pierMovement.measures!(inputs, allowable({ P: -3 * kip, Vx: 3 * kip, Vy: 4 * kip, My: 10 * kipFoot }), plainCalc);
    expect(sizes[0] / kip).toBeCloseTo(5, 9);
    expect(sizes[1] / kipFoot).toBeCloseTo(Math.hypot(13, 4), 9);
    expect(sizes[2]).toBe(0);
  });
});
