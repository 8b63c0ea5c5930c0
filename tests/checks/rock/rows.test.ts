import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bearingIn, heldIn, pressureIn, pullIn } from "../../../server/src/checks/rock/rows.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { pressureOver, solveOutside, solveOverhang } from "../../../server/src/mechanics/footing-section.js";
import { foot, kip, kipFoot } from "../given.js";

const state = fc.record({
  across: fc.double({ min: 0.8, max: 3, noNaN: true }),
  along: fc.double({ min: 0.8, max: 6, noNaN: true }),
  rows: fc.integer({ min: 1, max: 5 }),
  inRow: fc.integer({ min: 1, max: 4 }),
  reach: fc.double({ min: 0.2, max: 0.95, noNaN: true }),
  N: fc.double({ min: -8e4, max: 8e4, noNaN: true }),
  M: fc.double({ min: -6e4, max: 6e4, noNaN: true }),
  axis: fc.constantFrom("x" as const, "y" as const),
});

/** The direction drawn, and its state, with the bars of a row evenly over its length. */
const held = ({ across, along, rows, inRow, reach, N, M, axis }: (typeof state extends fc.Arbitrary<infer T> ? T : never)) => {
  const of = { across, along, rows, inRow, spacing: rows > 1 ? (reach * across) / (rows - 1) : Number.NaN };
  const places = Array.from({ length: inRow }, (_, i) => ((i - (inRow - 1) / 2) / inRow) * along);
  return { of, found: heldIn(of, axis, places, N, M, plainCalc) };
};
/** A moment that nothing answers: a pull without dowels does not occur, and a footing pressed by nothing has none. */
const isTried = ({ N, M }: { N: number; M: number }): boolean => N < -1 || Math.abs(M) > 1 || N > 1;

describe("Pressure and pulls of a footing held down by rows of bars", () => {
  it("balance the axial force and the moment, whatever the rows", () => {
    fc.assert(
      fc.property(state, (one) => {
        fc.pre(isTried(one));
        const { found } = held(one);
        const [width, length] = one.axis === "x" ? [one.across, one.along] : [one.along, one.across];
        const sum = pressureOver(found.pressure, { west: -width / 2, east: width / 2, south: -length / 2, north: length / 2 });
        const pulled = found.pulls.reduce((all, { force }) => all + force, 0);
        const turned = found.pulls.reduce((all, { x, y, force }) => all + force * (one.axis === "x" ? x : y), 0);
        expect(Math.abs(sum.force - pulled - one.N)).toBeLessThan(1e-6 * (1e4 + Math.abs(one.N)));
        expect(Math.abs((one.axis === "x" ? sum.alongX : sum.alongY) - turned - one.M)).toBeLessThan(1e-6 * (1e4 + Math.abs(one.M)));
        expect(found.pulls.every(({ force }) => force > -1e-6)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("are no more than the pull on one bar of the far row and the pressure at the edge", () => {
    fc.assert(
      fc.property(state, (one) => {
        fc.pre(isTried(one));
        const { of, found } = held(one);
        const M_c = Math.abs(one.M);
        const worst = Math.max(0, ...found.pulls.map(({ force }) => force));
        expect(worst).toBeCloseTo(Math.max(0, pullIn(of, one.N, M_c, plainCalc)), 3);
        expect(found.pressure.qmax).toBeCloseTo(pressureIn(of, one.N, M_c, plainCalc), 2);
      }),
      { numRuns: 300 },
    );
  });

  it("turn over with the moment", () => {
    fc.assert(
      fc.property(state, (one) => {
        fc.pre(isTried(one) && Math.abs(one.M) > 1);
        const back = held({ ...one, M: -one.M }).found;
        const { found } = held(one);
        expect(back.pressure.qmax).toBeCloseTo(found.pressure.qmax, 6);
        expect(back.pressure.plane.alongX + found.pressure.plane.alongX).toBeCloseTo(0, 3);
      }),
      { numRuns: 100 },
    );
  });

  it("has its resultant at the kern's third of a half-pressed footing: 10 kip-ft on 4 ft, one row in the middle", () => {
    const of = { across: 4 * foot, along: 4 * foot, rows: 1, inRow: 2, spacing: Number.NaN };
    // C = 3 M/B = 7.5 kip at 4/3 ft; 2 C/(3 L (B/2 - e)) = 15/(12 x 0.6667) = 1.875 ksf.
    const { C, e } = bearingIn(of, -2 * kip, 10 * kipFoot, plainCalc);
    expect([C / kip, e / foot]).toEqual([expect.closeTo(7.5, 9), expect.closeTo(4 / 3, 9)]);
    expect(pressureIn(of, -2 * kip, 10 * kipFoot, plainCalc) / (kip / foot ** 2)).toBeCloseTo(1.875, 9);
  });
});

describe("Sections of a footing that bars pull down", () => {
  const none = { contact: [], plane: { atCenter: 0, alongX: 0, alongY: 0 } };
  it("take a bar beyond the section for its pull and its arm, and one before it for nothing", () => {
    const args = { pressure: none, width: 4, length: 2, down: 0, across: "x", at: 0.5, pulls: [{ x: 1.5, y: 0.3, force: 10 }, { x: 0.4, y: 0, force: 70 }, { x: -1, y: 0, force: 20 }] } as const;
    expect(solveOverhang(args)).toEqual({ shear: [-20, -10], moment: [-10, -10] });
    expect(solveOverhang({ ...args, across: "y", at: 0.2 }).shear).toEqual([0, -10]);
  });
  it("through a column's critical section take what stands outside it", () => {
    const found = solveOutside({ pressure: none, width: 4, length: 2, down: 0, inside: { width: 1, length: 1 }, pulls: [{ x: 1.5, y: 0.3, force: 10 }, { x: 0.4, y: 0, force: 70 }] });
    expect([found.force, found.alongX, found.alongY]).toEqual([expect.closeTo(-10, 9), expect.closeTo(-15, 9), expect.closeTo(-3, 9)]);
  });
  it("adds a second pressure to the first", () => {
    const even = { contact: [{ x: -2, y: -1 }, { x: 2, y: -1 }, { x: 2, y: 1 }, { x: -2, y: 1 }], plane: { atCenter: 5, alongX: 0, alongY: 0 } };
    const args = { width: 4, length: 2, down: 3, across: "x", at: 1 } as const;
    expect(solveOverhang({ ...args, pressure: even, beside: even }).shear[1]).toBeCloseTo((10 - 3) * 2, 9);
  });
});
