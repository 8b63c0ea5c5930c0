import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rockSliding } from "../../../server/src/checks/rock/sliding.js";
import { foot, inch, kip, kipFoot, psi, say } from "../given.js";
import { allowable, psfPerFoot, read, standing, stepsFor, weigh } from "../ground.js";

const bar = { name: "no. 6", diameter: 0.75 * inch, area: 0.44 * inch ** 2 };
const dowels = { count: 4, spacing: 24 * inch, bar, grade: "Gr 60", "into rock": 30 * inch };
const pad = (more: object = {}, ground: object = {}) =>
  standing({
    foundation: { kind: "footing on rock", width: 4 * foot, length: 4 * foot, thickness: 18 * inch, concrete: 4000 * psi, ...more },
    ground: { kind: "rock", class: "granite", ...ground },
  });
/** Dead load of 10 kip from the column, unreduced, with a push of 2 kip. */
const resting = { ...allowable({ P: 10 * kip, Vx: 2 * kip }, [{ factor: 1, type: "D" }]), dead: 10 * kip };

describe("Sliding on rock, IBC 2021 Table 1806.2", () => {
  // Coefficients 0.70 on crystalline bedrock and 0.35 on sedimentary and foliated rock; a 4 ft square pad 18 in thick weighs 3.6 kip.
  it.each([
    ["granite", 0.7],
    ["slate", 0.35],
  ])("friction on %s is the coefficient times the dead load", (name, mu) => {
    const found = weigh(rockSliding, pad({}, { class: name }), resting);
    expect(found.demand / kip).toBeCloseTo(2, 9);
    expect(found.capacity / kip).toBeCloseTo(mu * 13.6, 9);
  });

  it("takes the stated coefficient before the presumptive one", () => {
    expect(weigh(rockSliding, pad({}, { friction: 0.5 }), resting).capacity / kip).toBeCloseTo(6.8, 9);
  });

  it("counts only the concrete of a reaction that came combined", () => {
    expect(weigh(rockSliding, pad(), allowable({ P: 10 * kip, Vx: 2 * kip }, [{ factor: 1, type: "D" }])).capacity / kip).toBeCloseTo(0.7 * 3.6, 9);
  });

  it("never counts friction under a net pull, and says that the dowels are relied on", () => {
    const pulled = allowable({ P: -10 * kip, Vx: 2 * kip });
    expect(weigh(rockSliding, pad(), pulled).capacity).toBe(0);
    // The worst dowel pulls 7.84/4 + 2 x 1.5/4 = 2.71 kip: 4 x 0.6 x 60 x 0.44/2 x (1 - 1.67 x 2.71/26.4) kip.
    expect(weigh(rockSliding, pad({ dowels }), pulled).capacity / kip).toBeCloseTo(31.68 * (1 - (1.67 * 2.71) / 26.4), 6);
    expect(stepsFor(rockSliding, pad({ dowels }), pulled).notes.join()).toMatch(/net pull: friction does not count, and dowels and key alone are relied on/);
  });

  it("counts dowels besides friction as pins, once they are deep enough to be pins", () => {
    // Eight diameters of no. 6 are 6 in.
    expect(weigh(rockSliding, pad({ dowels: { ...dowels, "into rock": 6.01 * inch } }), resting).capacity / kip).toBeCloseTo(9.52 + 31.68, 6);
    expect(weigh(rockSliding, pad({ dowels: { ...dowels, "into rock": 5.9 * inch } }), resting).capacity / kip).toBeCloseTo(9.52, 6);
  });

  it("bears a key on the rock before it, and shears it as plain concrete", () => {
    // 1200 psf per foot between 24 in and 32 in, 4 ft long: 1.2 x (2.6667² - 2²)/2 x 4 = 7.467 kip.
    const keyed = (width: number) => weigh(rockSliding, pad({ depth: 2 * foot, key: { width: width * inch, depth: 8 * inch } }), resting).capacity / kip;
    expect(keyed(12) - 9.52).toBeCloseTo(7.4667, 3);
    // 3 in wide: 0.6 x 4/3 x 63.246 psi x 48 in x 3 in / 1.6 = 4.554 kip, ACI 318-19 14.5.5.1.
    expect(keyed(3) - 9.52).toBeCloseTo(4.5537, 3);
    const stated = pad({ depth: 2 * foot, key: { width: 12 * inch, depth: 8 * inch } }, { "lateral bearing": 600 * psfPerFoot });
    expect(weigh(rockSliding, stated, resting).capacity / kip - 9.52).toBeCloseTo(3.7333, 3);
    expect(read(rockSliding, pad({ key: { width: 12 * inch, depth: 8 * inch } })).missing).toContain("depth of the footing, for the bearing of its key");
  });

  it("drives the footing down rock that slopes, unless it is benched", () => {
    // 3 in 12, 14.036°: 2 cos + 13.6 sin = 5.2388 kip down it; 0.7 (13.6 cos - 2 sin) = 8.8964 kip.
    const found = weigh(rockSliding, pad({}, { "rock slope": 0.25 }), resting);
    expect(found.demand / kip).toBeCloseTo(5.2388, 3);
    expect(found.capacity / kip).toBeCloseTo(8.8964, 3);
    expect(weigh(rockSliding, pad({}, { "rock slope": 0.25, surface: "benched" }), resting)).toEqual(weigh(rockSliding, pad(), resting));
    expect(rockSliding.advise!(read(rockSliding, pad({}, { "rock slope": 0.25 })).inputs, found, say)).toBe(
      "5.239 kip pushes the footing along the rock; 8.896 kip holds it. Cut the rock into level benches, or cut a key into it, make the footing heavier, or add dowels as pins.",
    );
  });

  it("takes the dowels and the key of a wall for the length that acts with one post", () => {
    const wall = standing({
      foundation: { kind: "wall on footing", concrete: 4000 * psi, depth: 2 * foot, thickness: 18 * inch, height: 4 * foot, footing: { width: 42 * inch, thickness: 14 * inch }, "length per post": 10 * foot, key: { width: 12 * inch, depth: 8 * inch }, dowels: { spacing: 16 * inch, bar, grade: "Gr 60", "into rock": 24 * inch } },
      ground: { kind: "rock", class: "granite" },
    });
    // 0.7 x 15.125 kip; 7.4667 x 10/4 kip; 7.5 x 7.92 kip.
    expect(weigh(rockSliding, wall, allowable({ Vy: 2 * kip }, [{ factor: 1, type: "D" }])).capacity / kip).toBeCloseTo(10.5875 + 18.6667 + 59.4, 3);
  });

  it("is not told for the class of a soil or weathered rock; walls that hold soil back are looked at elsewhere", () => {
    expect(read(rockSliding, pad({}, { class: "weathered granite" })).blocks.join()).toMatch(/weathered/);
    expect(read(rockSliding, pad({}, { class: "CL" })).blocks.join()).toMatch(/state the class of the rock/);
    const retaining = standing({
      foundation: { kind: "wall on footing", thickness: 18 * inch, height: 4 * foot, footing: { width: 42 * inch, thickness: 14 * inch }, "length per post": 10 * foot, retains: 4 * foot },
      ground: { kind: "rock", class: "granite" },
    });
    expect(rockSliding.applies(retaining)).toBe(false);
  });
});

describe("Laws of sliding on rock", () => {
  it("never holds more for more uplift or a steeper rock, and its capacity is finite and not negative", () => {
    const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(double(-40, 40), double(0, 10), double(-20, 20), double(0, 10), double(0.01, 0.5), (P, V, M, more, slope) => {
        const at = (axial: number, m: number) => weigh(rockSliding, pad({ dowels }, { "rock slope": m }), { ...allowable({ P: axial * kip, Vx: V * kip, My: M * kipFoot }, [{ factor: 0.6, type: "D" }]), dead: 5 * kip });
        const found = at(P, slope);
        expect(Number.isFinite(found.capacity) && found.capacity >= 0).toBe(true);
        expect(at(P - more, slope).capacity).toBeLessThanOrEqual(found.capacity + 1e-6);
        expect(at(P, slope * 1.2).capacity).toBeLessThanOrEqual(found.capacity + 1e-6);
      }),
      { numRuns: 300 },
    );
  });
});
