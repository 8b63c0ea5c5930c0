import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freeDepth, momentDepth, pierEmbedment, type EmbedmentInputs } from "../../../server/src/checks/pier/embedment.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { readQuantity } from "../../../server/src/units/parse.js";
import type { Forces } from "../../../server/src/actions/demand.js";
import { foot, inch, kip, say, weighed } from "../given.js";
import { allowable, lb, lbFoot, psf, psfPerFoot, read, standing, stepsFor, weigh } from "../ground.js";

const pier = (foundation: object, ground: object = { kind: "soil", "lateral bearing": 100 * psfPerFoot }, site: object = {}) =>
  standing({ foundation: { kind: "pier", depth: 7 * foot, ...foundation }, ground: ground as never, site: site as never });

/** P at h above grade, from the west. */
const push = (P: number, h: number) => allowable({ Vx: P * lb, My: P * h * lbFoot });

// IBC 2021 Eq. 18-1 to 18-3. W1: a published sign problem whose answer is "almost 6.5 ft"; the others recomputed from the code's formula in
// full precision. P lb, h ft, b ft, p psf/ft, multiplier, d ft, S1 psf, A ft; d ft and S3 psf restrained.
const rows = [
  ["W1", 480, 5, 1.5, 100, 1, 6.4401, 214.67, 3.4882, 4.0817, 408.17],
  ["W2", 480, 5, 1.5, 100, 2, 4.8769, 325.13, 2.3031, 3.2396, 647.92],
  ["W3", 1200, 10, 2.0, 150, 1, 8.1123, 405.61, 3.4614, 5.5397, 830.95],
  ["W4", 1200, 10, 2.0, 150, 2, 6.2173, 621.73, 2.2582, 4.3968, 1319.05],
  ["W5", 2500, 12, 2.5, 200, 2, 7.0718, 942.91, 2.4817, 5.0331, 2013.25],
  ["W6", 1500, 9, 2.0, 100, 1, 10.1703, 339.01, 5.1768, 6.5952, 659.52],
  ["W7", 1500, 9, 2.0, 400 / 3, 1, 9.067, 402.98, 4.3551, 5.9922, 798.96],
] as const;

describe("Embedment by IBC 2021 Eq. 18-1 and 18-2", () => {
  it.each(rows)("%s: %d lb at %d ft on %d ft", (_name, ...numbers) => {
    const [P, h, b, p, factor, d, S1, A, dr, S3] = numbers as number[];
    const ground = { kind: "soil", "lateral bearing": p * psfPerFoot, "isolated poles": factor === 2 };
    const free = stepsFor(pierEmbedment, pier({ diameter: b * foot }, ground), push(P, h)).values;
    expect(free.get("d_r")! / foot).toBeCloseTo(d, 3);
    expect(free.get("S_1")! / psf).toBeCloseTo(S1, 1);
    expect(free.get("A")! / foot).toBeCloseTo(A, 3);
    const held = stepsFor(pierEmbedment, pier({ diameter: b * foot, "restrained at grade": true }, ground), push(P, h)).values;
    expect(held.get("d_r")! / foot).toBeCloseTo(dr, 3);
    expect(held.get("S_3")! / psf).toBeCloseTo(S3, 1);
  });

  it("W10: a 16 in square pier counts with its diagonal", () => {
    const support = (more: object) => pier({ width: 16 * inch, ...more }, { kind: "soil", "lateral bearing": 150 * psfPerFoot });
    expect(weigh(pierEmbedment, support({}), push(800, 8)).demand / foot).toBeCloseTo(6.7467, 3);
    expect(weigh(pierEmbedment, support({ "restrained at grade": true }), push(800, 8)).demand / foot).toBeCloseTo(4.5815, 3);
  });

  // Fixture K4: a 12 in round pier whose 150 psf/ft had been multiplied by the depth a second time in a published discussion.
  it.each([
    ["free", 150, false, false, 17.5],
    ["free, a third more", 150 * 1.33, false, false, 14.2],
    ["free, doubled", 150, true, false, 11.2],
    ["restrained", 150, false, true, 8.8],
  ] as const)("3,000 lb at 8 ft on 12 in, %s", (_, p, doubled, restrained, d) => {
    const support = pier({ diameter: 12 * inch, "restrained at grade": restrained }, { kind: "soil", "lateral bearing": p * psfPerFoot, "isolated poles": doubled });
    expect(weigh(pierEmbedment, support, push(3000, 8)).demand / foot).toBeCloseTo(d, 1);
  });

  it("counts the depth needed against the depth given", () => {
    const found = weigh(pierEmbedment, pier({ diameter: 18 * inch, depth: 6 * foot }), push(480, 5));
    expect(found.capacity).toBe(6 * foot);
    expect(found.demand).toBeGreaterThan(found.capacity);
    expect(pierEmbedment.advise!(read(pierEmbedment, pier({ diameter: 18 * inch })).inputs, found, say)).toBe("depth 6 ft; 6.44 ft needed. Deepen the pier or widen it.");
  });

  it("carries the shear down over the concrete above grade, the grout and the plate", () => {
    const raised = standing({
      foundation: { kind: "pier", diameter: 2 * foot, depth: 7 * foot, "above grade": 9.5 * inch },
      ground: { kind: "soil", "lateral bearing": 150 * psfPerFoot },
      base: { grout: 1.5 * inch, plate: { thickness: 1 * inch } },
    });
    const found = weigh(pierEmbedment, raised, allowable({ Vx: 1200 * lb, My: 1200 * 9 * lbFoot }));
    expect(found.demand / foot).toBeCloseTo(8.1123, 3);
  });

  it("lets the ground begin below the ignored depth", () => {
    const found = weigh(pierEmbedment, pier({ diameter: 2 * foot, "ignored depth": 2 * foot }, { kind: "soil", "lateral bearing": 150 * psfPerFoot }), push(1200, 8));
    expect(found.demand / foot).toBeCloseTo(8.1123 + 2, 3);
  });

  it("takes a pier held at grade as turning about grade, and its ground from below the ignored depth", () => {
    const found = weigh(pierEmbedment, pier({ diameter: 2 * foot, "ignored depth": 1 * foot, "restrained at grade": true }, { kind: "soil", "lateral bearing": 150 * psfPerFoot }), push(1200, 10));
    expect(found.demand / foot).toBeCloseTo(5.5397 + 1, 3);
  });

  it("takes a moment without shear by the moment form, next to a shear that goes to nothing", () => {
    const support = pier({ diameter: 2 * foot });
    const moment = weigh(pierEmbedment, support, allowable({ My: 12000 * lbFoot })).demand;
    const nearly = weigh(pierEmbedment, support, allowable({ Vx: 1e-4 * lb, My: 12000 * lbFoot })).demand;
    expect(moment).toBeCloseTo(nearly, 6);
    // d³ = 7.6518 M/(p b), Eq. 18-1 with P h = M and P = 0.
    expect(moment / foot).toBeCloseTo(Math.cbrt((7.6518 * 12000) / 200), 4);
  });

  it("has the moment form agree with Eq. 18-1 where both apply", () => {
    // W3: P 1200 lb at 10 ft on 2 ft, S1 405.61 psf.
    const A = 3.4614 * foot;
    const d = momentDepth.value({ A, M_h: 12000 * lbFoot, S_1: 405.61 * psf, b: 2 * foot });
    expect(d / foot).toBeCloseTo(8.1123, 3);
    expect(d / freeDepth.value({ A, h: 10 * foot })).toBeCloseTo(1, 4);
  });

  it("takes resultants of both directions", () => {
    const both = weigh(pierEmbedment, pier({ diameter: 2 * foot }, { kind: "soil", "lateral bearing": 150 * psfPerFoot }), allowable({ Vx: 720 * lb, Vy: 960 * lb, My: 7200 * lbFoot, Mx: -9600 * lbFoot }));
    expect(both.demand / foot).toBeCloseTo(8.1123, 3);
  });

  it("needs no depth where a slab at grade takes all there is, a shear", () => {
    expect(weigh(pierEmbedment, pier({ diameter: 2 * foot, "restrained at grade": true }), allowable({ Vx: 1 * kip })).demand).toBe(0);
  });

  it("is not tried where the column brings neither shear nor moment", () => {
    expect(weigh(pierEmbedment, pier({ diameter: 2 * foot }), allowable({ P: 10 * kip })).demand).toBe(0);
  });

  it("doubles the lateral bearing for short-term loads alone", () => {
    const ground = { kind: "soil", "lateral bearing": 150 * psfPerFoot, "isolated poles": true };
    const support = pier({ diameter: 2 * foot }, ground);
    const of = (type: "D" | "W") => weigh(pierEmbedment, support, allowable({ Vx: 1200 * lb, My: 12000 * lbFoot }, [{ factor: 1, type }])).demand / foot;
    expect(of("W")).toBeCloseTo(6.2173, 3);
    expect(of("D")).toBeCloseTo(8.1123, 3);
  });
});

describe("What the embedment reads", () => {
  it("takes presumptive lateral bearing by the class, and says so", () => {
    const support = pier({ diameter: 2 * foot }, { kind: "soil", class: "SM" });
    expect(weigh(pierEmbedment, support, push(1200, 10)).demand / foot).toBeCloseTo(8.1123, 3);
    expect(stepsFor(pierEmbedment, support, push(1200, 10)).notes.join(" ")).toContain("presumptive for SM, class 4");
  });

  it.each([
    ["undocumented fill", /fill/],
    ["peat", /organic/],
    ["expansive clay", /expansive/],
    ["moon dust", /no soil or rock known/],
  ])("has no presumptive value for %s", (name, words) => {
    expect(read(pierEmbedment, pier({ diameter: 2 * foot }, { kind: "soil", class: name })).blocks.join()).toMatch(words);
  });

  it("lets a stated value stand for ground without a presumptive one", () => {
    expect(read(pierEmbedment, pier({ diameter: 2 * foot }, { kind: "soil", class: "fill", "lateral bearing": 80 * psfPerFoot })).blocks).toEqual([]);
  });

  it.each([
    ["C", 0],
    ["D", 1],
    ["F", 1],
  ])("in seismic design category %s asks %d time for an investigation before presumptive values count", (category, count) => {
    const site = { "seismic design category": category };
    expect(read(pierEmbedment, pier({ diameter: 2 * foot }, { kind: "soil", class: "SM" }, site)).blocks).toHaveLength(count);
    expect(read(pierEmbedment, pier({ diameter: 2 * foot }, undefined, site)).blocks).toEqual([]);
  });

  it("names what is missing", () => {
    expect(read(pierEmbedment, standing({ foundation: { kind: "pier" } })).missing).toEqual(["ground the foundation stands in", "diameter (round pier) or width (square pier)", "depth of the pier"]);
    expect(read(pierEmbedment, pier({ diameter: 2 * foot }, { kind: "soil" })).missing).toEqual(["lateral bearing, or the class of the ground"]);
  });

  it("does not choose between a diameter and a width", () => {
    expect(read(pierEmbedment, pier({ diameter: 2 * foot, width: 2 * foot })).blocks.join()).toContain("both a diameter and a width");
  });
});

const random = fc.record({
  shape: fc.constantFrom("round" as const, "square" as const),
  size: fc.double({ min: 0.15, max: 2, noNaN: true }),
  depth: fc.double({ min: 0.3, max: 8, noNaN: true }),
  aboveGrade: fc.double({ min: 0, max: 1.5, noNaN: true }),
  isolated: fc.boolean(),
  restrained: fc.boolean(),
  ignored: fc.double({ min: 0, max: 1.5, noNaN: true }),
  grout: fc.double({ min: 0, max: 0.1, noNaN: true }),
  plate: fc.double({ min: 0, max: 0.1, noNaN: true }),
  lateral: fc.double({ min: 5e3, max: 2e5, noNaN: true }),
});
const component = fc.double({ min: -2e5, max: 2e5, noNaN: true });
const forces: fc.Arbitrary<Forces> = fc.record({ P: component, Vx: component, Vy: component, Mx: component, My: component });

const inputsOf = ({ lateral, ...rest }: { lateral: number } & Omit<EmbedmentInputs, "lateralBearing" | "looselyHeld" | "falls">): EmbedmentInputs => ({ ...rest, looselyHeld: false, falls: false, lateralBearing: { value: lateral, isPresumptive: false, from: "" } });
const needed = (inputs: EmbedmentInputs, base: Partial<Forces>): number => weighed(pierEmbedment.evaluate(inputs, allowable(base), plainCalc)).demand;

describe("Laws of embedment", () => {
  it("answers 10,000 random piers with a finite depth that does not jump under a small change of load", () => {
    fc.assert(
      fc.property(random, forces, (given, base) => {
        const inputs = inputsOf(given);
        const depth = needed(inputs, base);
        expect(Number.isFinite(depth)).toBe(true);
        const more = 1 + 1e-6;
        const next = needed(inputs, { P: base.P, Vx: base.Vx * more, Vy: base.Vy * more, Mx: base.Mx * more, My: base.My * more });
        expect(next).toBeGreaterThanOrEqual(depth - 1e-9);
        expect(next - depth).toBeLessThanOrEqual(2e-6 * depth + 1e-9);
      }),
      { numRuns: 10_000 },
    );
  });

  it("is the same from either side, and in either direction of a round pier", () => {
    fc.assert(
      fc.property(random, forces, (given, base) => {
        const inputs = inputsOf(given);
        const depth = needed(inputs, base);
        expect(needed(inputs, { Vx: -base.Vx, Vy: -base.Vy, Mx: -base.Mx, My: -base.My })).toBeCloseTo(depth, 9);
        expect(needed(inputs, { Vx: base.Vy, Vy: base.Vx, Mx: -base.My, My: -base.Mx })).toBeCloseTo(depth, 9);
      }),
    );
  });

  it("never needs more depth where the pier is deeper, wider, lower or in better ground", () => {
    fc.assert(
      fc.property(random, component, component, fc.double({ min: 1, max: 3, noNaN: true }), (given, V, h, factor) => {
        const base = { Vx: Math.abs(V), My: Math.abs(h) };
        const depth = needed(inputsOf(given), base);
        const slack = depth + 1e-9;
        expect(needed(inputsOf({ ...given, depth: given.depth * factor }), base)).toBe(depth);
        expect(needed(inputsOf({ ...given, size: given.size * factor }), base)).toBeLessThanOrEqual(slack);
        expect(needed(inputsOf({ ...given, lateral: given.lateral * factor }), base)).toBeLessThanOrEqual(slack);
        expect(needed(inputsOf({ ...given, aboveGrade: given.aboveGrade / factor }), base)).toBeLessThanOrEqual(slack);
        expect(needed(inputsOf({ ...given, ignored: given.ignored / factor }), base)).toBeLessThanOrEqual(slack);
      }),
    );
  });

  it("does not depend on the units a notebook is written in", () => {
    const of = (text: string, kind: Parameters<typeof readQuantity>[1]): number => {
      const found = readQuantity(text, kind);
      if (!found.ok) throw new Error(found.message);
      return found.value;
    };
    const make = (diameter: string, depth: string, lateral: string) => pier({ diameter: of(diameter, "length"), depth: of(depth, "distance") }, { kind: "soil", "lateral bearing": of(lateral, "pressurePerDepth") });
    const us = weigh(pierEmbedment, make("24 in", "7 ft", "150 psf/ft"), allowable({ Vx: of("1.2 kip", "force"), My: of("12 kip-ft", "moment") }));
    const si = weigh(pierEmbedment, make("609.6 mm", "2.1336 m", "23.56312 kPa/m"), allowable({ Vx: of("5.337866 kN", "force"), My: of("16.269816 kN-m", "moment") }));
    expect(si.demand / us.demand).toBeCloseTo(1, 6);
    expect(si.capacity / us.capacity).toBeCloseTo(1, 9);
  });
});
