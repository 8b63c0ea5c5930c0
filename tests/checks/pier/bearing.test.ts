import { describe, expect, it } from "vitest";
import { pierBearing } from "../../../server/src/checks/pier/bearing.js";
import { foot, inch, kip, say } from "../given.js";
import { allowable, lb, psf, read, standing, weigh } from "../ground.js";

const tube = (diameter: number, ground: object, more: object = {}) =>
  standing({ foundation: { kind: "pier", diameter: diameter * inch, depth: 4 * foot, ...more }, ground: { kind: "soil", ...ground } as never });

describe("Bearing under a pier", () => {
  // Fixture K8: 3,200 lb on a 12 in tube is 4,074 psf without the tube's weight; 4 ft of concrete at 150 pcf add 600 psf.
  it("finds a 12 in tube over for 3,200 lb on clay", () => {
    const support = tube(12, { class: "CL" });
    const found = weigh(pierBearing, support, allowable({ P: 3200 * lb }));
    expect(found.demand / psf).toBeCloseTo(4074.4 + 600, 0);
    expect(found.capacity / psf).toBeCloseTo(1500, 6);
    expect(pierBearing.advise!(read(pierBearing, support).inputs, found, say)).toBe("12 in diameter bears 4674 psf; 1500 psf allowed. Widen the pier.");
  });

  // 3,200 lb on 20 in: 1,466.8 psf, the size the discussion arrives at before the tube's own weight.
  it("counts the tube's weight, which makes 20 in too small as well", () => {
    expect(weigh(pierBearing, tube(20, { class: "CL" }), allowable({ P: 3200 * lb })).demand / psf).toBeCloseTo(1466.8 + 600, 0);
  });

  it("takes the dead load factor of the combination on the weight, and all of it where there is none", () => {
    const of = (factor: number) => weigh(pierBearing, tube(12, { class: "CL" }), allowable({ P: 0 }, [{ factor, type: "D" }])).demand / psf;
    expect(of(0.6)).toBeCloseTo(360, 6);
    expect(of(1)).toBeCloseTo(600, 6);
    expect(weigh(pierBearing, tube(12, { class: "CL" }), allowable({ P: 0 })).demand / psf).toBeCloseTo(600, 6);
  });

  it("takes a stated bearing before a presumptive one", () => {
    expect(weigh(pierBearing, tube(12, { class: "CL", bearing: 5000 * psf }), allowable({ P: 1 * kip })).capacity / psf).toBeCloseTo(5000, 6);
  });

  it("bears on the square of a square pier", () => {
    const square = tube(12, { class: "SM" }, { diameter: undefined, width: 2 * foot });
    expect(weigh(pierBearing, square, allowable({ P: 4 * kip })).demand / psf).toBeCloseTo(1600, 6);
  });

  it("does not press where the column pulls more than the pier weighs", () => {
    expect(weigh(pierBearing, tube(12, { class: "CL" }), allowable({ P: -2 * kip })).demand).toBe(0);
  });

  it("has no presumptive bearing on organic soil", () => {
    expect(read(pierBearing, tube(12, { class: "topsoil" })).blocks.join()).toMatch(/organic/);
  });

  // 30 kip and 4,712 lb on the 12.57 ft² of a bell of 4 ft; the pier is not lighter in water where it presses.
  it("spreads the load over a bell and counts the bell's weight, dry", () => {
    const found = weigh(pierBearing, tube(24, { class: "CL", "water table": 0 }, { depth: 8 * foot, bell: { diameter: 4 * foot, height: 1.5 * foot } }), allowable({ P: 30 * kip }));
    expect(found.demand / psf).toBeCloseTo((30_000 + 3769.9 + 942.5) / 12.5664, 0);
  });
});
