import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hatched } from "../../server/src/drawing/hatch.js";
import { cornersOf, fitted } from "../../server/src/drawing/scale.js";
import { lineAt } from "../../server/src/drawing/contact-plan.js";
import { unionArea, type Rectangle } from "../../server/src/mechanics/rectangles.js";

const attribute = (tag: string, name: string): number => Number(new RegExp(` ${name}="([^"]*)"`, "u").exec(tag)?.[1]);

const inked = (svg: string): number =>
  [...svg.matchAll(/<line [^>]*>/gu)].reduce((sum, [tag]) => sum + Math.hypot(attribute(tag, "x2") - attribute(tag, "x1"), attribute(tag, "y2") - attribute(tag, "y1")), 0);

const size = fc.double({ min: 20, max: 200, noNaN: true });
const rectangleOf = fc.tuple(size, size, size, size).map(([x, y, w, h]): Rectangle => ({ west: x, east: x + w, south: y, north: y + h }));

describe("hatching", () => {
  it("covers the union of its regions once, whatever its angle: stroke length times gap is the area", () => {
    fc.assert(
      fc.property(fc.array(rectangleOf, { minLength: 1, maxLength: 4 }), fc.double({ min: 0.05, max: 1.5, noNaN: true }), (regions, angle) => {
        const gap = 0.5;
        const area = unionArea(regions);
        expect(Math.abs(inked(hatched(regions.map(cornersOf), { angle, gap })) * gap - area)).toBeLessThan(0.01 * area + 100);
      }),
      { numRuns: 25 },
    );
  });

  it("draws nothing where there is no region", () => expect(hatched([])).toBe(""));
});

describe("a scale", () => {
  it("fits what is shown into its frame, north up, at one scale along both axes", () => {
    const { x, y, of } = fitted({ west: -1, east: 3, south: 0, north: 2 }, { left: 10, top: 20, width: 400, height: 400 });
    expect([x(-1), x(3), y(2), y(0), of(1)]).toEqual([10, 410, 120, 320, 100]);
  });
});

describe("a line of equal pressure", () => {
  it("lies where the plane has that value", () => {
    const square = cornersOf({ west: -1, east: 1, south: -1, north: 1 });
    const [from, to] = lineAt(square, { atCenter: 2, alongX: 1, alongY: 0 }, 2.5);
    expect([from.x, to.x]).toEqual([expect.closeTo(0.5, 12), expect.closeTo(0.5, 12)]);
    expect(Math.abs(from.y - to.y)).toBeCloseTo(2, 12);
  });
});
