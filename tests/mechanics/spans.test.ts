/** Source: simple spans by lever. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { eitherEnd, steppedReactions } from "../../server/src/mechanics/spans.js";

const all = [{ to: Number.POSITIVE_INFINITY, value: 3 }];

describe("equal simple spans under a load in steps", () => {
  it.each([
    ["alike all along", { spans: 2, length: 4, unit: 1, steps: all }, [6, 12, 6]],
    ["on the first quarter of a span", { spans: 1, length: 4, unit: 1, steps: [{ to: 1, value: 8 }, { to: Number.POSITIVE_INFINITY, value: 0 }] }, [7, 1]],
    ["over the middle support", { spans: 2, length: 4, unit: 2, steps: [{ to: 1, value: 0 }, { to: 3, value: 5 }, { to: 9, value: 0 }] }, [2.5, 15, 2.5]],
  ])("%s", (_, of, expected) => {
    steppedReactions(of).forEach((reaction, i) => expect(reaction).toBeCloseTo(expected[i], 9));
  });

  it("add up to the load, and from either end are alike both ways and never less than from one", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), fc.double({ min: 1, max: 10, noNaN: true }), fc.double({ min: 0.3, max: 5, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (spans, length, unit, value) => {
        const of = { spans, length, unit, steps: [{ to: 1, value }, { to: 2, value: 1 }, { to: Number.POSITIVE_INFINITY, value: 0.5 }] };
        const whole = spans * length;
        const load = value * Math.min(unit, whole) + (Math.min(2 * unit, whole) - Math.min(unit, whole)) + 0.5 * (whole - Math.min(2 * unit, whole));
        const one = steppedReactions(of);
        expect(one.reduce((sum, reaction) => sum + reaction, 0)).toBeCloseTo(load, 6);
        const found = eitherEnd.run(of);
        found.forEach((reaction, i) => {
          expect(reaction).toBeCloseTo(found[found.length - 1 - i], 9);
          expect(reaction).toBeGreaterThanOrEqual(one[i]);
        });
      }),
    );
  });
});
