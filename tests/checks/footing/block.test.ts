import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockBearing, blockChecks, blockOverturning, blockSliding } from "../../../server/src/checks/footing/block-checks.js";
import { pierEmbedment } from "../../../server/src/checks/pier/embedment.js";
import { foot, kip } from "../given.js";
import { allowable, lbFoot, outcomeOf, psf, read, standing, stepsFor, weigh } from "../ground.js";

const block = (foundation: object = {}, ground: object = {}) => standing({ foundation: { kind: "pier", diameter: 3 * foot, depth: 4 * foot, ...foundation }, ground: { kind: "soil", class: "SM", ...ground } as never });
const gust = (P: number, V: number, M: number) => allowable({ P: P * kip, Vy: V * kip, Mx: -M * 1000 * lbFoot });

describe("A short wide pier as a block", () => {
  it.each([
    ["a pier of two widths", { depth: 6 * foot }, false],
    ["one a little shorter", { depth: 5.9 * foot }, true],
    ["one with a bell", { bell: { diameter: 5 * foot, height: 1 * foot } }, false],
    ["one held at grade", { "restrained at grade": true }, false],
    ["one taken as a pole alone", { "taken as": "pole" }, false],
    ["one taken as a block alone", { "taken as": "block" }, true],
    ["one of no stated depth", { depth: undefined }, false],
  ])("%s", (_, foundation, applies) => {
    for (const check of blockChecks) expect(check.applies(block(foundation))).toBe(applies);
  });

  it("is no pole where it is taken as a block alone", () => {
    expect(pierEmbedment.applies(block({ "taken as": "block" }))).toBe(false);
    expect(pierEmbedment.applies(block({ "taken as": "pole and block" }))).toBe(true);
    expect(pierEmbedment.applies(block({ depth: 6 * foot, "taken as": "block" }))).toBe(true);
  });

  it("leans on the soil no harder than the column and friction below push", () => {
    // Side 150 x 3 x 16 / 2 = 3,600 lb; column 0.5 kip and friction 0.25 x 4,241 lb: 1,560 lb at a third of 4 ft.
    const found = stepsFor(blockOverturning, block(), gust(4, 0.5, 3)).values;
    expect(found.get("R_h")! / kip).toBeCloseTo(3.6, 6);
    expect(found.get("M_s")! / (1000 * lbFoot)).toBeCloseTo(2.0804, 3);
    // A column that pushes with 5 kip finds all of the side: 3.6 x 4 / 3.
    expect(stepsFor(blockOverturning, block(), gust(4, 5, 3)).values.get("M_s")! / (1000 * lbFoot)).toBeCloseTo(4.8, 6);
  });

  it("leaves out the ignored depth", () => {
    expect(stepsFor(blockOverturning, block({ "ignored depth": 2 * foot }), gust(4, 0.5, 3)).values.get("R_h")! / kip).toBeCloseTo(0.9, 6);
    expect(read(blockOverturning, block({ "ignored depth": 4 * foot })).blocks.join()).toMatch(/reaches the underside/);
  });

  it("takes cohesion in clay, at most half the dead load", () => {
    // 130 psf on 7.069 ft² against half of 4,241 lb.
    expect(stepsFor(blockSliding, block({}, { class: "CL" }), gust(4, 0.5, 3)).values.get("R_f")! / kip).toBeCloseTo(0.919, 3);
  });

  it("weighs buoyant where it holds and dry where it presses", () => {
    const wet = block({}, { "water table": 0 });
    expect(stepsFor(blockOverturning, wet, gust(4, 0.5, 3)).values.get("W")! / kip).toBeCloseTo(4.2412 * (87.6 / 150), 3);
    expect(stepsFor(blockBearing, wet, gust(4, 0.5, 3)).values.get("W")! / kip).toBeCloseTo(4.2412, 3);
  });

  it("says that a block which tips has no pressure to find", () => {
    const found = outcomeOf(blockBearing, block(), gust(4, 1.5, 30));
    expect(found.type === "unchecked" && found.because).toMatch(/tips over.*Deepen or widen/);
  });

  it("needs a value for the slope where the ground falls away", () => {
    expect(read(blockSliding, block({ "ground slope": 0.3 })).blocks.join()).toMatch(/falls away/);
    expect(read(blockSliding, block({ "ground slope": 0.3 }, { "lateral bearing": 3000 })).blocks).toEqual([]);
  });

  it("never holds less where it is wider or deeper", () => {
    const size = fc.double({ min: 0.6, max: 3, noNaN: true });
    const part = fc.double({ min: 0.3, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(size, part, part, fc.double({ min: -5, max: 20, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (width, a, b, P, V) => {
        const of = (w: number, d: number) => [blockOverturning, blockSliding].map((check) => weigh(check, block({ diameter: w, depth: d }), gust(P, V, 2)).capacity);
        const [low, high] = [Math.min(a, b) * width, Math.max(a, b) * width];
        const least = of(width, low);
        of(width, high).forEach((held, i) => expect(held).toBeGreaterThanOrEqual(least[i] * (1 - 1e-12)));
        of(width * 1.3, low).forEach((held, i) => expect(held).toBeGreaterThanOrEqual(least[i] * (1 - 1e-12)));
      }),
    );
  });

  it("bears the same whichever way the column pushes", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), (angle) => {
        const turned = allowable({ P: 10 * kip, Vx: kip * Math.cos(angle), Vy: kip * Math.sin(angle), Mx: -4000 * lbFoot * Math.sin(angle), My: 4000 * lbFoot * Math.cos(angle) });
        expect(weigh(blockBearing, block(), turned).demand / weigh(blockBearing, block(), gust(10, 1, 4)).demand).toBeCloseTo(1, 9);
      }),
    );
  });

  it("takes a square by its side where that is worse and by its diagonal otherwise", () => {
    // Mean pressure of 5 ft by 5 ft; factors by exact integration: 4.1373 at (0.2, 0.2); along the side 2/(3 (0.5 - e)) where the load is near the edge.
    const cube = block({ diameter: undefined, width: 5 * foot, depth: 5 * foot });
    expect(weigh(blockBearing, cube, gust(6, 1.5, 37.814)).demand / psf).toBeCloseTo(4096, -1);
    const near = stepsFor(blockBearing, cube, gust(6, 1.5, 57)).values;
    const e = near.get("M_b")! / near.get("N")! / (5 * foot);
    expect(e).toBeGreaterThan(0.43);
    expect(weigh(blockBearing, cube, gust(6, 1.5, 57)).demand / psf).toBeCloseTo((990 * 2) / (3 * (0.5 - e)), 0);
  });
});
