import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { wallBearing } from "../../../server/src/checks/wall/bearing.js";
import { wallOverturning } from "../../../server/src/checks/wall/overturning.js";
import { wallSliding } from "../../../server/src/checks/wall/sliding.js";
import { wallUplift } from "../../../server/src/checks/wall/uplift.js";
import { wallStretch, wallRun } from "../../../server/src/mechanics/wall-run.js";
import { foot, inch, kip, kipFoot } from "../given.js";
import { allowable, outcomeOf, pcf, psf, psfPerFoot, read, standing, stepsFor, weigh } from "../ground.js";

const dead = [{ factor: 1, type: "D" }, { factor: 0.6, type: "W" }] as const;
const lightDead = [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }] as const;

type Fields = Readonly<Record<string, unknown>>;

const wallOf = (more: Fields = {}, fill: Fields | null = {}, ground: Fields = {}, site: Fields = {}, places?: readonly { x: number; y: number }[]) => {
  const made = standing({
    places,
    site: { "seismic design category": "B", ...site },
    ground: { kind: "soil", class: "GP", "unit weight": 120 * pcf, ...ground },
    foundation: {
      kind: "wall on footing", concrete: 4000, length: 40 * foot, thickness: 1 * foot, height: 4 * foot, depth: 2 * foot, "length per post": 8 * foot,
      footing: { width: 6 * foot, thickness: 1 * foot }, backfill: "loose",
      ...(fill ? { retains: 3 * foot, fill: { side: "north", method: "equivalent fluid", "unit weight": 120 * pcf, "equivalent fluid": 45 * psfPerFoot, surcharge: 0, drained: true, ...fill } } : { retains: 0 }),
      ...more,
    },
  });
  return { ...made, codes: { ...made.codes, overturning: { value: "factored dead load", path: "", span: made.span } } } as typeof made;
};
const away = { P: 2 * kip, Vy: -0.9 * kip, Mx: 9 * kipFoot };
const toward = { P: 2 * kip, Vy: 0.9 * kip, Mx: -9 * kipFoot };
const checks: readonly CheckDecl<any, any>[] = [wallOverturning, wallSliding, wallBearing, wallUplift];
const ratio = (check: CheckDecl<any, any>, support: ReturnType<typeof wallOf>, demand: ReturnType<typeof allowable>) => {
  const { demand: d, capacity } = weigh(check, support, demand);
  return d / capacity;
};

describe("Coulomb's pressure and the heel of a footing", () => {
  const degree = Math.PI / 180;
  const soil = { "friction angle": 32 * degree, slope: 1 / 6 };
  const by = (footing: Fields, fill: Fields, check: CheckDecl<any, any> = wallSliding) => weigh(check, wallOf({ footing: { width: 6 * foot, thickness: 1 * foot, ...footing } }, { ...soil, ...fill }), allowable({ P: 2 * kip, Vy: -0.1 * kip }, dead));
  const rankine = { method: "Rankine" };
  const rough = { method: "Coulomb", "wall friction": 20 * degree };

  it("presses by Rankine on the plane in the soil at the end of a heel, where the wall's friction does not act", () => {
    for (const check of [wallSliding, wallOverturning, wallBearing] as readonly CheckDecl<any, any>[]) {
      expect(by({}, rough, check).demand).toBeCloseTo(by({}, rankine, check).demand, 3);
      expect(by({}, rough, check).capacity).toBeCloseTo(by({}, rankine, check).capacity, 3);
    }
    // 0.31946 cos 9.462 x 120 pcf on 4 ft of soil and 2.5 ft of slope, 8 ft of it; Coulomb's horizontal part would be 0.29146.
    const H = 5 + 2.5 / 6;
    expect((by({}, rough).demand / kip - 0.1) / (8 * 0.06 * H * H)).toBeCloseTo(0.31512, 4);
  });
  it("keeps the wall's friction where the footing has no heel, and the soil lies against the wall itself", () => {
    const none = { toe: 5 * foot, heel: 0 };
    expect((by(none, rough).demand / kip - 0.1) / (8 * 0.06 * 25)).toBeCloseTo(0.29146, 4);
  });
});

describe("A wall that holds nothing back", () => {
  const forces = fc.record({ P: fc.double({ min: -5, max: 20, noNaN: true }), V: fc.double({ min: 0.01, max: 1, noNaN: true }), M: fc.double({ min: 0.01, max: 6, noNaN: true }) });
  it("does not care which way the wind blows across it", () => {
    fc.assert(fc.property(forces, ({ P, V, M }) => {
      const support = wallOf({}, null);
      const one = allowable({ P: P * kip, Vy: -V * kip, Mx: M * kipFoot }, dead);
      const other = allowable({ P: P * kip, Vy: V * kip, Mx: -M * kipFoot }, dead);
      for (const check of [wallOverturning, wallSliding, wallUplift] as readonly CheckDecl<any, any>[]) expect(ratio(check, support, one)).toBeCloseTo(ratio(check, support, other), 9);
    }));
  });
  it("slides alike to either side also where the soil beside it is compacted and tested", () => {
    const tested = wallOf({ backfill: "compacted and tested" }, null);
    const of = (Vy: number) => weigh(wallSliding, tested, allowable({ P: 2 * kip, Vy: Vy * kip }, dead)).capacity;
    expect(of(1)).toBeCloseTo(of(-1), 6);
    expect(of(1)).toBeGreaterThan(weigh(wallSliding, wallOf({}, null), allowable({ P: 2 * kip, Vy: kip }, dead)).capacity);
  });
  it("holds the same whichever of its two directions it runs in", () => {
    const turned = wallOf({ "wall runs": "north-south" }, null);
    const straight = wallOf({}, null);
    const { Vy, Mx, P } = away;
    for (const check of checks) expect(ratio(check, turned, allowable({ P, Vx: Vy, My: -Mx }, dead))).toBeCloseTo(ratio(check, straight, allowable(away, dead)), 9);
  });
});

describe("A wall that holds soil back", () => {
  it.each([
    ["north", { P: 2 * kip, Vy: -0.9 * kip, Mx: 9 * kipFoot }],
    ["south", { P: 2 * kip, Vy: 0.9 * kip, Mx: -9 * kipFoot }],
    ["west", { P: 2 * kip, Vx: 0.9 * kip, My: 9 * kipFoot }],
    ["east", { P: 2 * kip, Vx: -0.9 * kip, My: -9 * kipFoot }],
  ])("to the %s turns over the same when its post is pushed away from the soil", (side, base) => {
    const { demand, capacity } = weigh(wallOverturning, wallOf({}, { side }), allowable(base, dead));
    // 45 psf/ft over 5 ft on 8 ft of wall: 7.5 kip-ft; the post 9 + 0.9 x 5.
    expect(demand / kipFoot).toBeCloseTo(7.5 + 13.5, 6);
    // 4.8 kip wall, 7.2 kip footing, 2.5 ft x 4 ft of soil on the heel: 9.6 kip at 4.75 ft.
    expect(capacity / kipFoot).toBeCloseTo(((4.8 + 7.2 + 2) * 3 + 9.6 * 4.75) / 1.5, 6);
  });
  it("needs no further factor where the dead load is reduced, and 1.1 with an earthquake", () => {
    const hold = (14 - 2) * 3 + 9.6 * 4.75;
    const gentle = { P: 2 * kip, Vy: -0.1 * kip, Mx: 1 * kipFoot };
    expect(weigh(wallOverturning, wallOf(), allowable(gentle, lightDead)).capacity / kipFoot).toBeCloseTo(0.6 * hold + 6, 6);
    expect(weigh(wallOverturning, wallOf(), allowable(gentle, [{ factor: 1, type: "D" }, { factor: 0.7, type: "E" }])).capacity / kipFoot).toBeCloseTo((hold + 6) / 1.1, 6);
  });
  it("is not answered for an earthquake in category D, where the soil itself shakes", () => {
    const shaken = allowable(away, [{ factor: 1, type: "D" }, { factor: 0.7, type: "E" }]);
    for (const check of [wallOverturning, wallSliding, wallBearing] as readonly CheckDecl<any, any>[]) {
      const found = outcomeOf(check, wallOf({}, {}, {}, { "seismic design category": "D" }), shaken);
      expect(found.type === "unchecked" && found.because).toMatch(/category D the soil behind a wall presses more/);
      expect(outcomeOf(check, wallOf({}, null, {}, { "seismic design category": "D" }), shaken).type).toBe("weighed");
    }
  });
  it("names the situation that governs", () => {
    expect(stepsFor(wallOverturning, wallOf(), allowable(away, dead)).notes.join(" ")).toMatch(/with the fill behind the wall, the post pushed away from the fill/);
    expect(stepsFor(wallOverturning, wallOf(), allowable({ ...toward, Vy: 2 * kip, Mx: -20 * kipFoot }, dead)).notes.join(" ")).toMatch(/without the fill, the post pushed toward the fill/);
    expect(stepsFor(wallOverturning, wallOf(), allowable({ P: 20 * kip }, dead)).notes.join(" ")).toMatch(/length of wall without a post/);
  });
  it("slides no less for a surcharge or for water behind it, and no more for a key", () => {
    fc.assert(fc.property(fc.double({ min: 1, max: 400, noNaN: true }), fc.double({ min: 0.5, max: 3, noNaN: true }), (q, z) => {
      const angle = { method: "at rest", "equivalent fluid": undefined, "friction angle": (30 * Math.PI) / 180 };
      const demand = allowable(away, dead);
      const plain = ratio(wallSliding, wallOf({}, angle), demand);
      expect(ratio(wallSliding, wallOf({}, { ...angle, surcharge: q * psf }), demand)).toBeGreaterThan(plain);
      expect(ratio(wallSliding, wallOf({}, { ...angle, drained: false, water: z * foot }), demand)).toBeGreaterThan(plain);
      expect(ratio(wallSliding, wallOf({ key: { width: 1 * foot, depth: z * foot } }, angle), demand)).toBeLessThan(plain);
    }), { numRuns: 30 });
  });
  it("counts soil before it only where it is compacted and tested: 200 psf/ft from 1 ft to 2 ft on 8 ft", () => {
    const loose = weigh(wallSliding, wallOf(), allowable(away, dead)).capacity;
    const tested = weigh(wallSliding, wallOf({ backfill: "compacted and tested", "ignored depth": 1 * foot }), allowable(away, dead)).capacity;
    // Half of 200 x (4 - 1) x 8, and friction of 0.35 below 2.5 ft x 1 ft of soil on the toe; both over 1.5.
    expect((tested - loose) / kip).toBeCloseTo((2.4 + 0.35 * 2.4) / 1.5, 6);
  });
  it("a push along it takes its part of the friction", () => {
    const base = { ...away, Vx: 1 * kip };
    const { capacity } = weigh(wallSliding, wallOf(), allowable(base, dead));
    const straight = weigh(wallSliding, wallOf(), allowable(away, dead)).capacity;
    expect(capacity / kip).toBeCloseTo(Math.sqrt((straight / kip) ** 2 - 1), 6);
  });
});

describe("Pressure below the wall", () => {
  it("is in equilibrium with what acts, and grows with the moment", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 12, noNaN: true }), fc.double({ min: 0.1, max: 4, noNaN: true }), (M, more) => {
      const at = (m: number) => weigh(wallBearing, wallOf({}, null), allowable({ P: 4 * kip, Mx: m * kipFoot }, dead)).demand;
      expect(at(M + more)).toBeGreaterThan(at(M));
      const { values } = stepsFor(wallBearing, wallOf({}, null), allowable({ P: 4 * kip, Mx: M * kipFoot }, dead));
      const N = values.get("N")!;
      const e = values.get("M_c")! / N;
      const B = 6 * foot;
      const q = e <= B / 6 ? (N / (B * 8 * foot)) * (1 + (6 * e) / B) : (2 * N) / (3 * (B / 2 - e) * 8 * foot);
      expect(at(M) / q).toBeCloseTo(1, 6);
    }), { numRuns: 40 });
  });
  it("on rock with dowels ends at their row once the middle lifts, without a jump", () => {
    const rock = { kind: "rock", class: "crystalline bedrock", bearing: 100e6, "dowel bond": 1e6 };
    const wall = wallOf({ dowels: { spacing: 2 * foot } }, { surcharge: 1 * psf }, rock);
    const at = (m: number) => weigh(wallBearing, wall, allowable({ P: 0, Mx: m * kipFoot }, lightDead)).demand;
    let before = at(1);
    for (let m = 2; m < 80; m += 1) {
      const here = at(m);
      expect(here).toBeGreaterThanOrEqual(before);
      expect(here).toBeLessThan(before * 1.2);
      before = here;
    }
  });
});

describe("A wall on rock that holds soil back", () => {
  const no6 = { name: "no. 6", diameter: 0.75 * inch, area: 0.44 * inch ** 2 };
  const granite = { kind: "rock", class: "granite", bearing: 100e6 };
  const pins = { spacing: 2 * foot, bar: no6, grade: "Gr 60", "into rock": 12 * inch, "set in": "cement grout" };
  const doweled = (more: Fields = {}) => wallOf({ dowels: { ...pins, ...more } }, {}, granite);

  it("is pressed by its far row as the pull on it is found: two rows 4 ft apart on 6 ft", () => {
    // With the fill, its post pushed toward it: 0.6 x (12 + 9.6) - 20 = -7.04 kip; 100 + 0.2 x 5, less 7.5 of the soil, and 0.6 x 9.6 kip 1.75 ft off:
    // 103.58 kip-ft. r = 2 ft, g = (12 - 4)/6 ft: C = (103.58 - 14.08)/(g + 2).
    const two = doweled({ rows: 2, "row spacing": 4 * foot });
    const found = weigh(wallBearing, two, allowable({ P: -20 * kip, Vy: 0.2 * kip, Mx: -100 * kipFoot }, lightDead));
    const C = 89.5 / (4 / 3 + 2);
    expect(found.demand / (kip / foot ** 2)).toBeCloseTo((2 * C) / (3 * 8 * (3 - 4 / 3)), 6);
    // One row on the middle presses half of the width: 12 M/(B² L).
    expect(weigh(wallBearing, doweled(), allowable({ P: -20 * kip, Vy: 0.2 * kip, Mx: -100 * kipFoot }, lightDead)).demand / (kip / foot ** 2)).toBeCloseTo((12 * 103.58) / (36 * 8), 6);
  });
  it("counts its dowels as pins, second to friction, and says so", () => {
    // Four dowels on 8 ft, no pull: 4 x 0.6 x 60 x 0.44/2 = 31.68 kip.
    const demand = allowable({ P: 10 * kip, Vy: -0.9 * kip }, dead);
    const gain = weigh(wallSliding, doweled(), demand).capacity - weigh(wallSliding, wallOf({}, {}, granite), demand).capacity;
    expect(gain / kip).toBeCloseTo(31.68, 6);
    expect(stepsFor(wallSliding, doweled(), demand).notes.join(" ")).toMatch(/Friction and key come first; the dowels are counted besides, as pins/);
    // Eight diameters are 6 in.
    expect(weigh(wallSliding, doweled({ "into rock": 5.9 * inch }), demand).capacity).toBeCloseTo(weigh(wallSliding, wallOf({}, {}, granite), demand).capacity, 6);
    expect(stepsFor(wallSliding, doweled(), allowable({ P: -60 * kip }, dead)).notes.join(" ")).toMatch(/net pull: friction does not count/);
  });
  it("has less of its dowels the more they pull, and all of bars driven dry", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 60, noNaN: true }), fc.double({ min: 1, max: 20, noNaN: true }), (up, more) => {
      const at = (support: ReturnType<typeof wallOf>, P: number) => weigh(wallSliding, support, allowable({ P: -P * kip, Vy: -0.1 * kip }, lightDead)).capacity;
      expect(at(doweled(), up + more)).toBeLessThanOrEqual(at(doweled(), up) + 1e-6);
      expect(at(doweled({ "set in": "nothing" }), up)).toBeGreaterThanOrEqual(at(doweled(), up) - 1e-6);
    }), { numRuns: 40 });
    expect(weigh(wallSliding, doweled({ "set in": "nothing" }), allowable({ P: -60 * kip }, dead)).capacity / kip).toBeCloseTo(31.68, 6);
  });
  it("is held down by grouted dowels, and not by bars driven dry", () => {
    expect(wallOverturning.applies(doweled())).toBe(false);
    expect(wallOverturning.applies(doweled({ "set in": "nothing" }))).toBe(true);
  });
});

describe("The length of wall that acts with a post", () => {
  const places = [{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 20, y: 0 }];
  it.each([
    ["half of it to each side", 1, {}, 6, { before: 3, after: 3, cutBefore: "length", cutAfter: "length" }],
    ["to the wall's end", 0, { first: 2 }, 6, { before: 2, after: 3, cutBefore: "end", cutAfter: "length" }],
    ["to a joint", 1, { first: 2, joints: [13] }, 6, { before: 3, after: 1, cutBefore: "length", cutAfter: "joint" }],
    ["half way to the next posts", 1, {}, 30, { before: 5, after: 5, cutBefore: "post", cutAfter: "post" }],
  ] as const)("reaches %s", (_, place, plan, perPost, expected) => {
    expect(wallStretch(places, place, wallRun(places, place, 24, plan)!, perPost)).toEqual(expected);
  });
  it("sums up to no more than the wall, whatever is asked for", () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 6 }), fc.double({ min: 1, max: 30, noNaN: true }), fc.array(fc.double({ min: 0.1, max: 80, noNaN: true }), { maxLength: 4 }), (n, perPost, joints) => {
      const line = Array.from({ length: n }, (_, i) => ({ x: 0, y: 12 * i }));
      const length = 12 * n + 4;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const { before, after } = wallStretch(line, i, wallRun(line, i, length, { first: 8, joints, axis: "y" })!, perPost);
        sum += before + after;
        expect(before).toBeGreaterThanOrEqual(0);
        expect(after).toBeGreaterThanOrEqual(0);
      }
      expect(sum).toBeLessThanOrEqual(length * (1 + 1e-12));
    }));
  });
  it("pulls the pressure to one side where it is cut short on the other", () => {
    const { values, notes } = stepsFor(wallBearing, wallOf({ "first post": 1 * foot }), allowable({ P: 10 * kip }, dead));
    expect(values.get("M_l")! / kipFoot).toBeCloseTo(-10 * 1.5, 6);
    expect(notes.join(" ")).toMatch(/cut short on the west by the end of the wall/);
  });
});

describe("What a wall needs to be told", () => {
  it.each([
    ["the side of its soil", { side: undefined }, /side of the wall the soil is held back on/],
    ["the method", { method: undefined }, /method of the earth pressure/],
    ["whether it is drained", { drained: undefined }, /drain keeps water/],
    ["how high the water stands", { method: "at rest", "friction angle": 0.5, drained: false }, /depth of the water behind the wall/],
    ["what stands on the ground behind it", { surcharge: undefined }, /surcharge/],
    ["a friction angle", { method: "Rankine" }, /friction angle of the soil held back/],
    ["a wall friction", { method: "Coulomb", "friction angle": 0.5 }, /wall friction/],
  ])("%s", (_, fill, words) => {
    expect(read(wallOverturning, wallOf({}, fill)).missing.join("; ")).toMatch(words);
  });
  it.each([
    ["soil above the wall", { retains: 9 * foot }, {}, /soil stands higher than the wall/],
    ["a toe and a heel that do not add up", { footing: { width: 6 * foot, thickness: 1 * foot, toe: 1 * foot, heel: 3 * foot } }, {}, /not as wide as the footing/],
    ["a slope as steep as the friction angle", {}, { method: "Rankine", "friction angle": 0.5, slope: 0.6 }, /as steep as its friction angle/],
    ["an equivalent fluid in wet soil", {}, { drained: false, water: 1 }, /goes with drained soil/],
    ["active pressure at a corner", { "wall ends": "corner", "first post": 1 * foot }, { method: "Rankine", "friction angle": 0.5 }, /take pressure at rest/],
    ["a post on a joint", { "movement joints": Object.assign([{ value: 3 * foot }], { name: "joints" }), "first post": 3 * foot }, {}, /stands on a movement joint/],
    ["depth, height and top that do not close", { "above grade": 6 * inch }, {}, /do not close/],
  ])("refuses %s", (_, more, fill, words) => {
    expect(read(wallOverturning, wallOf(more, fill)).blocks.join("; ")).toMatch(words);
  });
});
