import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Direction } from "../../../server/src/checks/rock/rows.js";
import type { WallBody } from "../../../server/src/checks/wall/body.js";
import { heldByDowels } from "../../../server/src/checks/wall/dowel-rows.js";
import { contactOf } from "../../../server/src/checks/wall/underside.js";
import { plainCalc } from "../../../server/src/formula/calc.js";

const [kip, foot] = [4448.2216, 0.3048];

const body = (B: number, L: number) => ({ width: B, run: L }) as WallBody;
const rows = (B: number, L: number, count = 1, spacing = Number.NaN): Direction => ({ across: B, along: L, rows: count, inRow: 1, spacing });

function held(B: number, L: number, N: number, M_c: number, M_l: number, of = rows(B, L)) {
  const found = heldByDowels(body(B, L), of, { N, M_c, M_l }, plainCalc);
  if (!found || "unstable" in found) throw new Error(found ? found.unstable : "no dowel pulls");
  return found;
}

const contact = (B: number, L: number, N: number, M_c: number, M_l: number) => {
  const found = contactOf(body(B, L), { N, M_c, M_l }, plainCalc);
  if ("unstable" in found) throw new Error(found.unstable);
  return found;
};

// A footing 3 ft wide and 6 ft long under 6 kip: one row in its middle pulls beyond a moment of N B / 3 = 6 kip-ft.
const [B, L, N] = [3 * foot, 6 * foot, 6 * kip];

describe("A strip footing held down by dowels", () => {
  it("pulls 3 M / B less N on one row, and bears the rest on half of its width, where all of the moment is across", () => {
    const found = held(B, L, N, 9 * kip * foot, 0);
    expect(found.pulls.reduce((sum, { force }) => sum + force, 0) / kip).toBeCloseTo(3, 6);
    // 9 kip on 1.5 ft by 6 ft, a triangle: 2 x 9 / 9 = 2 ksf.
    expect(found.pressure.qmax / (kip / foot ** 2)).toBeCloseTo(2, 6);
  });

  it.each([
    ["one row", rows(B, L), 1 / 3],
    ["two rows", rows(B, L, 2, 1.2 * foot), (2 * 3 - 1.2) / (6 * 3)],
  ])("with %s begins to be held without a jump of the pressure, whatever part of the moment is along the wall", (_, of, kern) => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.6, noNaN: true }), fc.boolean(), (part, isNegative) => {
        const M = N * B * kern * 1.0001;
        const [M_l, M_c] = [M * part, (isNegative ? -1 : 1) * M * Math.sqrt(1 - part * part)];
        const before = contact(B, L, N, M_c, M_l).qmax;
        expect(held(B, L, N, M_c, M_l, of).pressure.qmax / before).toBeCloseTo(1, 2);
      }),
    );
  });

  it("bears what presses and what the dowels pull, and no less at the pressed end for a moment along the wall", () => {
    fc.assert(
      fc.property(fc.double({ min: 6.5, max: 12, noNaN: true }), fc.double({ min: 0.05, max: 0.5, noNaN: true }), (total, part) => {
        const M = total * kip * foot;
        const [M_l, M_c] = [M * part, M * Math.sqrt(1 - part * part)];
        const found = held(B, L, N, M_c, M_l);
        const T = found.pulls.reduce((sum, { force }) => sum + force, 0);
        expect(found.pressure.qmax).toBeCloseTo(contact(B, L, N + T, M_c, M_l).qmax, 3);
        expect(found.pressure.qmax).toBeGreaterThan((N + T) / (B * L));
        expect(found.pressure.qmax).toBeGreaterThanOrEqual(contact(B, L, N + T, M_c, 0).qmax);
      }),
    );
  });
});
