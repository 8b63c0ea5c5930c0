import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { breakoutTension } from "../../../server/src/checks/anchors/breakout-tension.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { sideFaceBlowout } from "../../../server/src/checks/anchors/side-face-blowout.js";
import { steelTension } from "../../../server/src/checks/anchors/steel-tension.js";
import { rodPlaces } from "../../../server/src/checks/base/rod-places.js";
import { baseBearing } from "../../../server/src/checks/base/bearing.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { anchorsShortForm } from "../../../server/src/notebook/short-forms.js";
import { gatherer, inch, kip, kipFoot, run, strength } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const modes = [steelTension, breakoutTension, sideFaceBlowout, breakoutShear, pryout, baseBearing] as readonly CheckDecl<any, any>[];
const outcomeOf = (of: CheckDecl<any, any>, given: Given, demand: ReturnType<typeof strength>) => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return run(of, inputs, demand);
};
const ring = (count: number, circle: number, more: Given = {}): Given => ({ plate: [18, 18, 1], pier: 30, rod: 0.75, embedment: 16, count, spacing: [undefined, undefined], ...more, anchors: { "bolt circle": circle * inch } });

describe("rods on a bolt circle", () => {
  it("four on a circle of 14.142 in answer like four 10 in square: contact, tension, blowout, breakout both ways and pryout", () => {
    const demand = strength({ P: -8 * kip, Vx: 2 * kip, Vy: -3 * kip, Mx: 6 * kipFoot, My: 9 * kipFoot });
    const square: Given = { plate: [18, 18, 1], pier: 30, rod: 0.75, embedment: 16, spacing: [10, 10] };
    for (const of of modes) {
      const [a, b] = [outcomeOf(of, ring(4, 10 * Math.SQRT2), demand), outcomeOf(of, square, demand)];
      expect(Math.abs(a.demand - b.demand), of.id).toBeLessThanOrEqual(1e-6 * Math.max(1, b.demand));
      expect(a.capacity / b.capacity, of.id).toBeCloseTo(1, 9);
    }
  });

  it("eight answer a load turned by a right angle like the load itself", () => {
    const size = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, size, (P, Vx, Vy, Mx, My) => {
        const given = ring(8, 12);
        const demand = strength({ P: P * kip, Vx: Vx * kip, Vy: Vy * kip, Mx: Mx * kipFoot, My: My * kipFoot });
        const turned = strength({ P: P * kip, Vx: -Vy * kip, Vy: Vx * kip, Mx: -My * kipFoot, My: Mx * kipFoot });
        for (const of of [steelTension, breakoutShear, baseBearing] as readonly CheckDecl<any, any>[]) {
          const [a, b] = [outcomeOf(of, given, demand), outcomeOf(of, given, turned)];
          expect(Math.abs(a.demand - b.demand), of.id).toBeLessThanOrEqual(1e-5 * Math.max(100, b.demand));
        }
      }),
      { numRuns: 25 },
    );
  });

  it("a circle and a spacing together are a problem, and places go before a circle", () => {
    const sourced = <T>(value: T) => ({ value, path: "", span: {} as never });
    expect(rodPlaces({ count: sourced(4), "bolt circle": sourced(0.3), "spacing x": sourced(0.2), "spacing y": undefined, places: undefined })).toEqual({ problem: expect.stringMatching(/both a bolt circle and a spacing/) });
    const places = [{ x: 1, y: 2 }];
    expect(rodPlaces({ count: sourced(1), "bolt circle": sourced(0.3), "spacing x": undefined, "spacing y": undefined, places: sourced(places.map(sourced)) })).toEqual(places);
  });

  it("is read from one line, as rods set in adhesive are", () => {
    const parts = anchorsShortForm.split("6 x 3/4 in F1554 Gr 55, set in adhesive, 8 in deep, 12 in bolt circle");
    expect(Array.isArray(parts) && Object.fromEntries(parts.map(({ field, text }) => [field, text]))).toEqual({ count: "6", diameter: "3/4 in", grade: "F1554 Gr 55", end: "set in adhesive", embedment: "8 in", "bolt circle": "12 in" });
  });
});
