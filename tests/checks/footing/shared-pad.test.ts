import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demandsTogether } from "../../../server/src/actions/together.js";
import { footingBearing } from "../../../server/src/checks/footing/bearing.js";
import { combinedBending, combinedShear } from "../../../server/src/checks/footing/combined.js";
import { combinedDevelopment } from "../../../server/src/checks/footing/combined-development.js";
import { footingDevelopment } from "../../../server/src/checks/footing/development.js";
import { footingFlexure } from "../../../server/src/checks/footing/flexure.js";
import { footingTwoWayShear } from "../../../server/src/checks/footing/two-way-shear.js";
import { weighCheck } from "../../../server/src/findings/weigh.js";
import { solveOutside } from "../../../server/src/mechanics/footing-section.js";
import { solveFootingContact } from "../../../server/src/mechanics/partial-contact.js";
import { foot, inch, kip, kipFoot } from "../given.js";
import { allowable, outcomeOf, psf, read, stepsFor, strengthOf, weigh } from "../ground.js";
import { mats, pad } from "./pad.js";

const shared = (foundation: object = {}, apart = 16) =>
  pad({
    foundation: { width: 24 * foot, length: 6 * foot, thickness: 3 * foot, depth: 3 * foot, "above grade": 12 * inch, pedestal: { width: 18 * inch, length: 18 * inch }, "shared by line": true, "bottom bars": mats(8, 10), "top bars": mats(8, 10), ...foundation },
    places: [{ x: 0, y: 5 }, { x: apart * foot, y: 5 }],
  });
const own = (foundation: object = {}) => pad({ foundation: { width: 6 * foot, length: 6 * foot, ...foundation } });
const down = [{ factor: 1, type: "D" }] as const;

describe("A pad under the columns of a line", () => {
  const load = (P: number) => ({ ...strengthOf({ P: P * kip }, down) });

  it("takes the forces of all its columns together, those of each with it", () => {
    const [merged] = demandsTogether([[load(100)], [load(60)]], shared().places);
    expect(merged.base.P / kip).toBeCloseTo(160, 9);
    expect(merged.base.My / kipFoot).toBeCloseTo(8 * (60 - 100), 6);
    expect(merged.parts?.map(({ x, base }) => [x / foot, base.P / kip])).toEqual([[-8, 100], [8, 60]]);
  });

  it("says so where a column lacks a combination", () => {
    const [merged] = demandsTogether([[load(100)], [{ ...load(60), label: "another" }]], shared().places);
    expect(merged.beyond).toMatch(/not every column/);
  });

  it("keeps the same demands for the same loads, so that nothing is weighed twice", () => {
    const lists = [[load(1)], [load(2)]];
    const { places } = shared();
    expect(demandsTogether(lists, places)).toBe(demandsTogether([...lists], places));
  });

  it("is weighed once, not once a column", () => {
    const actions = [100, 100].map((P) => ({ cases: [], strength: [], atTop: [], allowable: [allowable({ P: P * kip }, down)], steel: [], service: [] }));
    const { result } = weighCheck(footingBearing, shared(), actions as never, 0.9, { evaluations: 0, checksRun: 0 });
    // 200 kip, 24 x 6 x 3 ft of concrete, two pedestals of 2.25 ft² by 1 ft: 265.5 kip on 144 ft².
    expect(result.weighed!.demand / psf).toBeCloseTo(265_475 / 144, 0);
  });

  it("bends and shears as a beam", () => {
    const [merged] = demandsTogether([[load(100)], [load(100)]], shared().places);
    expect(weigh(combinedBending, shared(), merged).demand / kipFoot).toBeCloseTo(200, -1);
    expect(weigh(combinedShear, shared(), merged).demand / kip).toBeGreaterThan(30);
    expect(weigh(combinedBending, shared({ "top bars": undefined }), merged).capacity).toBeLessThan(weigh(combinedBending, shared(), merged).capacity);
  });

  it("is punched by all of a column's force", () => {
    // Far from the ends: four sides round each.
    const inner = shared({}, 10);
    const found = stepsFor(footingTwoWayShear, inner, load(100));
    expect(found.values.get("v_u")! * found.values.get("b_o")! * read(footingTwoWayShear, inner).inputs.bottom.d).toBeCloseTo(100 * kip, 0);
    expect(found.notes.join()).toMatch(/pressure inside it is not taken off/);
  });

  it("leaves the checks of a pad under one column to such pads", () => {
    expect([combinedBending, footingFlexure].map(({ applies }) => applies(shared()))).toEqual([true, false]);
    expect([combinedBending, footingFlexure].map(({ applies }) => applies(own()))).toEqual([false, true]);
    expect([combinedDevelopment, footingDevelopment].map(({ applies }) => applies(shared()))).toEqual([true, false]);
    expect(read(combinedBending, shared({}, 0)).blocks.join()).toMatch(/do not stand in a line/);
  });

  it("develops its bars beyond the last columns, and across", () => {
    const at = (P: number, foundation: object = {}) => {
      const [merged] = demandsTogether([[load(P)], [load(P)]], shared(foundation).places);
      const found = weigh(combinedDevelopment, shared(foundation), merged);
      return [found.demand / inch, found.capacity / inch];
    };
    // Across from the face of a column: 36 - 9 - 3 in; 12 in at least.
    expect(at(100)).toEqual([expect.closeTo(12, 6), expect.closeTo(24, 6)]);
    // At the top 800.7 kip-ft, of 0.9 x 5.688 x 60 (32 - a/2): most of 1.3 x 60/(20 sqrt(4000)), and 144 - 96 + 9 - 3 in there.
    const A_s = (0.79 * 72) / 10;
    const held = (0.9 * A_s * 60 * (32 - (A_s * 60) / (0.85 * 4 * 72) / 2)) / 12;
    const l_d = (1.3 * 60000) / (20 * Math.sqrt(4000));
    const [length, there] = at(400);
    expect(length / ((l_d * 800.67) / held)).toBeCloseTo(1, 3);
    expect(there).toBeCloseTo(54, 6);
    // Hooks of no. 8, 9 in clear: 1.25 x (4/15 + 0.6) x 60/(55 sqrt(4000)), across as at the ends.
    expect(at(400, { "hooked bars": true })).toEqual([expect.closeTo((1.25 * (4 / 15 + 0.6) * 60000) / (55 * Math.sqrt(4000)), 4), expect.closeTo(24, 6)]);
  });

  it("says the same with its columns named from the other end", () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 150, noNaN: true }), fc.double({ min: 20, max: 150, noNaN: true }), (a, b) => {
        const { places } = shared();
        const turned = [...places].reverse();
        const [one] = demandsTogether([[load(a)], [load(b)]], places);
        const [other] = demandsTogether([[load(b)], [load(a)]], turned);
        for (const check of [combinedBending, combinedShear]) expect(weigh(check, shared(), other).demand / weigh(check, shared(), one).demand).toBeCloseTo(1, 9);
      }),
      { numRuns: 50 },
    );
  });
});

describe("A column off the middle of its pad", () => {
  const off = (x: number, y = 0) => own({ "off middle": { x: x * inch, y: y * inch } });
  const load = allowable({ P: 30 * kip }, down);

  it("has a moment of its axial force about the middle", () => {
    expect(stepsFor(footingBearing, off(6), load).values.get("M_y")! / kipFoot).toBeCloseTo(15, 9);
    expect(stepsFor(footingBearing, off(0, 6), load).values.get("M_x")! / kipFoot).toBeCloseTo(-15, 9);
  });

  it("presses more, however it stands off, and the same to either side", () => {
    const inside = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(inside, inside, (a, b) => {
        const of = (x: number, y: number) => weigh(footingBearing, off(x, y), load).demand;
        expect(of(a, b)).toBeGreaterThanOrEqual(of(0, 0) * (1 - 1e-12));
        for (const [x, y] of [[-a, b], [a, -b], [b, a]]) expect(of(x, y) / of(a, b)).toBeCloseTo(1, 9);
      }),
      { numRuns: 50 },
    );
  });

  it("bends the longer overhang, from its own face", () => {
    const factored = strengthOf({ P: 40 * kip }, down);
    expect(weigh(footingFlexure, off(9), factored).demand).toBeLessThan(weigh(footingFlexure, off(0), factored).demand * 2);
    expect(weigh(footingFlexure, off(9), factored).demand / weigh(footingFlexure, off(-9), factored).demand).toBeCloseTo(1, 9);
    expect(outcomeOf(footingTwoWayShear, off(22), factored).type).toBe("weighed");
    expect(read(footingFlexure, off(40)).blocks.join()).toMatch(/leaves the pad/);
  });

  it("leaves equilibrium round its critical section", () => {
    // Pressure and weight in balance outside: force and moments of what is outside are those of the column less what is inside.
    const [P, x, y, down] = [1e5, 0.3, -0.2, 4e3];
    const pressure = solveFootingContact({ width: 2, length: 2, P: P + down * 4, Mx: -P * y, My: P * x });
    if ("unstable" in pressure) throw new Error(pressure.unstable);
    const none = solveOutside({ pressure, width: 2, length: 2, down, inside: { width: 1e-9, length: 1e-9, x, y } });
    expect(none.force / P).toBeCloseTo(1, 9);
    expect(none.alongX / P).toBeCloseTo(0, 9);
    expect(none.alongY / P).toBeCloseTo(0, 9);
  });
});
