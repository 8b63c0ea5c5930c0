import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSection } from "../../../server/src/checks/footing/punching-section.js";
import { footingTwoWayShear, punchingStress, sectionProperty } from "../../../server/src/checks/footing/two-way-shear.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { solveOpenSection } from "../../../server/src/mechanics/open-section.js";
import { foot, inch, kip, psi } from "../given.js";
import { stepsFor, strengthOf, weigh } from "../ground.js";
import { mats, pad } from "./pad.js";

const least = (x: number, y: number, b = 40, side = 72) => leastSection({ width: side * inch, length: side * inch, x: x * inch, y: y * inch, b_x: b * inch, b_y: b * inch }, plainCalc);
const shape = ({ b_o, alpha_s, openX, openY }: ReturnType<typeof leastSection>) => [Math.round((b_o / inch) * 1000) / 1000, alpha_s, openX, openY];

describe("The section a column punches through", () => {
  it.each([
    ["on the middle four sides, however near all edges are", 0, 0, [160, 40, false, false]],
    // 72/2 - 20 + 20 = 36 to the edge: 2 x 36 + 40.
    ["near an edge three", 20, 0, [112, 30, true, false]],
    ["near the other edge three", 0, -20, [112, 30, false, true]],
    ["near a corner two", 20, -20, [72, 20, true, true]],
    // 2 x 46 + 40 = 132 on three sides; 46 + 55 on two.
    ["off both ways the least of them", 10, 1, [101, 20, true, true]],
  ])("%s", (_, x, y, expected) => {
    expect(shape(least(x, y))).toEqual(expected);
  });

  it("of a wide pad has four sides until the edge is nearer than half of them", () => {
    // Three sides are 2 l + 40 < 160 from l = 60 down: 60 = 120 - e + 20, e = 80.
    expect(shape(least(79.9, 0, 40, 240))).toEqual([160, 40, false, false]);
    expect(shape(least(80.1, 0, 40, 240))).toEqual([159.8, 30, true, false]);
  });

  it("takes its strength by its sides", () => {
    // 0.75 (2 + alpha d/b_o) sqrt(4000) where that is less than four.
    const at = (alpha_s: number) => punchingStress.value({ beta: 1, alpha_s, d: 10 * inch, b_o: 250 * inch, s_c: Math.sqrt(4000) * psi }) / psi;
    expect(at(40)).toBeCloseTo(0.75 * 3.6 * Math.sqrt(4000), 6);
    expect(at(30)).toBeCloseTo(0.75 * 3.2 * Math.sqrt(4000), 6);
    expect(at(20)).toBeCloseTo(0.75 * 2.8 * Math.sqrt(4000), 6);
  });
});

describe("Stress on a section open toward an edge", () => {
  const args = { inside: { west: 0, east: 0.8, south: -0.5, north: 0.5 }, d: 0.3, force: 1e5, alongX: 2e4, alongY: 0, at: { x: 0, y: 0 }, shareX: 0.4, shareY: 0.4 };

  it("closed on four sides has the property of the closed form", () => {
    const found = solveOpenSection({ ...args, open: {} });
    expect(found.inertiaX).toBeCloseTo(sectionProperty.value({ d: 0.3, b_1: 0.8, b_2: 1 }), 12);
    expect(found.inertiaY).toBeCloseTo(sectionProperty.value({ d: 0.3, b_1: 1, b_2: 0.8 }), 12);
    expect([found.perimeter, found.x, found.y]).toEqual([expect.closeTo(3.6, 12), expect.closeTo(0.4, 12), expect.closeTo(0, 12)]);
  });

  it("on three sides has that of an edge column", () => {
    const [L, b, d] = [0.8, 1, 0.3];
    const found = solveOpenSection({ ...args, open: { east: true } });
    const x = L ** 2 / (2 * L + b);
    const J = 2 * ((d * L ** 3) / 12 + (L * d ** 3) / 12 + L * d * (L / 2 - x) ** 2) + d * b * x ** 2;
    expect(found.perimeter).toBeCloseTo(2.6, 12);
    expect(found.x).toBeCloseTo(x, 12);
    expect(found.inertiaX).toBeCloseTo(J, 12);
    expect(found.inertiaY).toBeCloseTo((d * b ** 3) / 12 + (b * d ** 3) / 12 + 2 * L * d * (b / 2) ** 2, 12);
    const M = 2e4 - 1e5 * x;
    expect(found.stress).toBeCloseTo(Math.max(Math.abs(1e5 / (2.6 * d) - (0.4 * M * x) / J), Math.abs(1e5 / (2.6 * d) + (0.4 * M * (L - x)) / J)), 3);
  });

  it("on two sides counts their product of inertia", () => {
    const [L, d, M] = [1, 0.3, 1e4];
    const found = solveOpenSection({ inside: { west: 0, east: L, south: 0, north: L }, open: { east: true, north: true }, d, force: 0, alongX: M, alongY: M, at: { x: 0, y: 0 }, shareX: 0.4, shareY: 0.4 });
    const J = (d * L ** 3) / 12 + (L * d ** 3) / 12 + 2 * L * d * (L / 4) ** 2;
    // Pressed toward the corner: the stress grows along the diagonal, and each leg's ends are half a leg from the middle.
    expect(found.stress).toBeCloseTo(((0.4 * M) / (J - (L ** 3 * d) / 8)) * (L / 2), 3);
  });

  it("is the same for every way of looking at it", () => {
    const size = fc.double({ min: 0.2, max: 2, noNaN: true });
    const moment = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, moment, moment, fc.boolean(), (b_x, b_y, mx, my, isCorner) => {
        const common = { d: 0.3, force: 1e5, at: { x: 0, y: 0 }, shareX: 0.4, shareY: 0.35 };
        const one = solveOpenSection({ ...common, inside: { west: 0, east: b_x, south: 0, north: b_y }, open: { east: true, north: isCorner }, alongX: mx * 1e5, alongY: my * 1e5 });
        const mirrored = solveOpenSection({ ...common, inside: { west: -b_x, east: 0, south: 0, north: b_y }, open: { west: true, north: isCorner }, alongX: -mx * 1e5, alongY: my * 1e5 });
        const turned = solveOpenSection({ ...common, shareX: 0.35, shareY: 0.4, inside: { west: 0, east: b_y, south: 0, north: b_x }, open: { north: true, east: isCorner }, alongX: my * 1e5, alongY: mx * 1e5 });
        expect(mirrored.stress / one.stress).toBeCloseTo(1, 6);
        expect(turned.stress / one.stress).toBeCloseTo(1, 6);
        expect(one.stress).toBeGreaterThanOrEqual((1e5 / (one.perimeter * 0.3)) * (1 - 1e-9));
      }),
      { numRuns: 60 },
    );
  });
});

describe("A column near the edge of its pad", () => {
  const off = (x: number, y: number) => pad({ foundation: { width: 6 * foot, length: 6 * foot, "off middle": { x: x * inch, y: y * inch } } });
  const down = [{ factor: 1, type: "D" }] as const;
  const load = strengthOf({ P: 20 * kip }, down);

  it("punches alike at each edge", () => {
    const near = fc.double({ min: 1, max: 20, noNaN: true });
    fc.assert(
      fc.property(near, near, (a, b) => {
        const of = (x: number, y: number) => weigh(footingTwoWayShear, off(x, y), load).demand;
        for (const [x, y] of [[-a, b], [a, -b], [b, a]]) expect(of(x, y) / of(a, b)).toBeCloseTo(1, 6);
      }),
      { numRuns: 20 },
    );
  });

  it("at the end of a pad of several counts all of its force where it stands", () => {
    const strip = pad({
      foundation: { width: 20 * foot, length: 6 * foot, thickness: 2 * foot, depth: 2 * foot, "above grade": 12 * inch, pedestal: { width: 18 * inch, length: 18 * inch }, "shared by line": true, "bottom bars": mats(6, 9), "top bars": mats(6, 9) },
      places: [{ x: 0, y: 5 }, { x: 16 * foot, y: 5 }],
    });
    // d 20.25, section 38.25; 24 in to the end: 24 + 19.125 = 43.125 long, 2 x 43.125 + 38.25 = 124.5 round three sides.
    const [L, b, d, b_o] = [43.125, 38.25, 20.25, 124.5];
    const x = L ** 2 / b_o;
    const J = 2 * ((d * L ** 3) / 12 + (L * d ** 3) / 12 + L * d * (L / 2 - x) ** 2) + d * b * x ** 2;
    const share = 1 - 1 / (1 + (2 / 3) * Math.sqrt(L / b));
    // 100 kip, b/2 from the far side.
    const M = 100_000 * (b / 2 - x);
    const stress = Math.max(Math.abs(100_000 / (b_o * d) - (share * M * x) / J), Math.abs(100_000 / (b_o * d) + (share * M * (L - x)) / J));
    const found = weigh(footingTwoWayShear, strip, strengthOf({ P: 100 * kip }, down));
    expect(found.demand / psi).toBeCloseTo(stress, 2);
    expect(stepsFor(footingTwoWayShear, strip, strengthOf({ P: 100 * kip }, down)).notes.join()).toMatch(/open toward the edge/);
  });
});
