import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { footingBeamDetails, pierBeamDetails } from "../../../server/src/checks/footing/grade-beam-details.js";
import { footingBeamDevelopment, pierBeamDevelopment } from "../../../server/src/checks/footing/grade-beam-development.js";
import { footingBeamStrength, pierBeamStrength } from "../../../server/src/checks/footing/grade-beam-strength.js";
import { foot, inch, kip, psi, ratioOf, say } from "../given.js";
import { outcomeOf, read, standing, strengthOf, weigh } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

const [pierSize, pierTies, pierBars] = pierBeamDetails;
const [footingSize] = footingBeamDetails;
const D = [{ factor: 1.4, type: "D" }] as const;
const gravity = (P: number) => strengthOf({ P: P * kip }, D);

/** A pier tied by a beam of 12 in by 14 in with four no. 5 in no. 3 ties at 6 in, 16 ft clear; 3 ksi. */
function tied(beam: Fields = {}, more: { readonly site?: Fields; readonly foundation?: Fields; readonly places?: readonly { x: number; y: number }[] } = {}) {
  return standing({
    foundation: {
      kind: "pier",
      diameter: 24 * inch,
      depth: 8 * foot,
      concrete: 3000 * psi,
      "bar grade": "Gr 60",
      cover: 3 * inch,
      "tied by": "grade beams",
      "grade beam": { width: 12 * inch, depth: 14 * inch, "clear span": 16 * foot, bars: { count: 4, bar: readBar("no. 5")! }, ties: { bar: readBar("no. 3")!, spacing: 6 * inch }, "into foundation": 12 * inch, "bar ends": "hooked", ...beam },
      ...more.foundation,
    },
    ground: { kind: "soil" },
    site: { "seismic design category": "D", "short-period acceleration": 1, ...more.site },
  });
}

describe("A grade beam as a tie", () => {
  // A tenth of S_DS times the load; 0.9 x 4 x 0.31 x 60 = 66.96 kip.
  it.each([
    [1, 60, 6],
    [0.5, 60, 3],
    [1.2, 100, 12],
    [1, -20, 0],
  ])("under S_DS %s and %s kip takes %s kip", (S_DS, P, F) => {
    const found = weigh(pierBeamStrength, tied({}, { site: { "short-period acceleration": S_DS } }), gravity(P));
    expect(found.demand / kip).toBeCloseTo(F, 9);
    expect(found.capacity / kip).toBeCloseTo(66.96, 6);
  });

  it("in compression holds the concrete that its bars allow, where bars are strong and concrete little", () => {
    // 0.65 x 0.8 x (0.85 x 3 x (36 - 1.76) + 60 x 1.76) = 100.3 kip, and 0.9 x 1.76 x 60 = 95.0 in tension; with no. 8: 3.16 in², 126.2 kip pressed.
    const small = { width: 6 * inch, depth: 6 * inch, bars: { count: 4, bar: readBar("no. 8")! } };
    expect(weigh(pierBeamStrength, tied(small), gravity(60)).capacity / kip).toBeCloseTo(0.52 * (2.55 * (36 - 3.16) + 60 * 3.16), 3);
  });

  it("counts bars that are less than 1 % on the concrete they allow", () => {
    // 24 in by 24 in with eight no. 11 is more than 1 %; with four no. 3 the tension governs by far.
    expect(weigh(pierBeamStrength, tied({ bars: { count: 4, bar: readBar("no. 3")! } }), gravity(60)).capacity / kip).toBeCloseTo(0.9 * 0.44 * 60, 6);
  });

  it("is tried by gravity alone, and by all of a reaction that came combined", () => {
    expect(weigh(pierBeamStrength, tied(), strengthOf({ P: 60 * kip }, [...D, { factor: 1, type: "E" }])).demand).toBe(0);
    expect(weigh(pierBeamStrength, tied(), strengthOf({ P: 60 * kip }, [...D, { factor: 1, type: "W" }])).demand).toBe(0);
    expect(weigh(pierBeamStrength, tied(), strengthOf({ P: 60 * kip })).demand / kip).toBeCloseTo(6, 9);
  });

  it("holds for the tie of a footing on soft ground alike", () => {
    const footing = tied({}, { foundation: { kind: "footing" }, site: { "site class": "E" } });
    expect(footingBeamStrength.applies(footing)).toBe(true);
    expect(pierBeamStrength.applies(footing)).toBe(false);
    expect(weigh(footingBeamStrength, footing, gravity(60)).demand / kip).toBeCloseTo(6, 9);
    expect(weigh(footingSize, footing, gravity(60)).demand / inch).toBeCloseTo(9.6, 9);
    expect(weigh(footingBeamDevelopment, footing, gravity(60)).demand / inch).toBeCloseTo(9.84, 2);
  });

  it.each([
    ["category B", { site: { "seismic design category": "B" } }, false],
    ["category C", { site: { "seismic design category": "C" } }, true],
    ["a slab", { foundation: { "tied by": "slab" } }, false],
    ["nothing said", { foundation: { "tied by": undefined } }, false],
    ["a footing on stiff ground", { foundation: { kind: "footing" }, site: { "site class": "D" } }, false],
  ])("is asked for: %s", (_, more, asked) => {
    const support = tied({}, more);
    expect([pierBeamStrength, footingBeamStrength].some((one) => one.applies(support))).toBe(asked);
  });

  it("names what is missing in one word", () => {
    for (const one of [pierBeamStrength, pierSize, pierTies, pierBars, pierBeamDevelopment]) expect([...new Set(read(one as typeof pierBeamStrength, tied({}, { foundation: { "grade beam": undefined } })).missing)]).toEqual(["grade beam between the foundations (`grade beam`)"]);
    expect(read(pierBeamStrength, tied({}, { site: { "short-period acceleration": undefined } })).missing).toEqual(["short-period acceleration S_DS of the site"]);
  });

  it("grows with load and ground, and holds more with more bars", () => {
    const size = fc.double({ min: 1e-3, max: 2, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: -100, max: 500, noNaN: true }), size, fc.integer({ min: 4, max: 20 }), (S_DS, P, more, n) => {
        const at = (s: number, p: number, count: number) => weigh(pierBeamStrength, tied({ width: 24 * inch, depth: 24 * inch, bars: { count, bar: readBar("no. 5")! } }, { site: { "short-period acceleration": s } }), gravity(p));
        const first = at(S_DS, P, n);
        expect(first.demand).toBeGreaterThanOrEqual(0);
        expect(ratioOf(at(S_DS + more, P, n))).toBeGreaterThanOrEqual(ratioOf(first));
        expect(ratioOf(at(S_DS, P + 10 * more, n))).toBeGreaterThanOrEqual(ratioOf(first));
        expect(at(S_DS, P, n + 2).capacity).toBeGreaterThan(first.capacity);
      }),
      { numRuns: 60 },
    );
  });
});

describe("The section and bars of a grade beam", () => {
  it.each([
    [16, 9.6],
    [20, 12],
    [30, 18],
    [60, 18],
  ])("%s ft clear ask for a least side of %s in", (span, side) => {
    const found = weigh(pierSize, tied({ "clear span": span * foot }), gravity(1));
    expect(found.demand / inch).toBeCloseTo(side, 9);
    expect(found.capacity / inch).toBeCloseTo(12, 9);
  });

  it.each([
    [12, 14, 6],
    [30, 26, 12],
    [16, 12, 6],
  ])("ties of a beam %s in by %s in stand %s in apart at most", (width, depth, s) => {
    expect(weigh(pierTies, tied({ width: width * inch, depth: depth * inch }), gravity(1)).capacity / inch).toBeCloseTo(s, 9);
  });

  it("asks for no. 4 ties round bars larger than no. 10", () => {
    const found = weigh(pierTies, tied({ bars: { count: 4, bar: readBar("no. 11")! } }), gravity(1));
    expect([found.demand / inch, found.capacity / inch]).toEqual([expect.closeTo(0.47, 6), expect.closeTo(0.375, 6)]);
    expect(pierTies.advise!(read(pierTies, tied({ bars: { count: 4, bar: readBar("no. 11")! } })).inputs as never, found, say)).toMatch(/^No\. 3 round|^no\. 3 round/);
  });

  it("asks for four bars, and for half of 1 % of the section", () => {
    expect(weigh(pierBars, tied({ bars: { count: 2, bar: readBar("no. 8")! } }), gravity(1))).toMatchObject({ demand: 4, capacity: 2, quantity: "number" });
    const found = weigh(pierBars, tied(), gravity(1));
    expect(found.demand / inch ** 2).toBeCloseTo(0.84, 9);
    expect(found.capacity / inch ** 2).toBeCloseTo(1.24, 9);
  });
});

describe("The bars of a grade beam in the foundation", () => {
  const rootPsi = Math.sqrt(3000);
  it.each([
    // (12 - 2 x 3.375 - 0.625) = 4.625 in apart: six diameters clear, psi_r 1; psi_c 0.8.
    ["hooked", {}, ((1.25 * 0.8 * 60000) / (55 * rootPsi)) * Math.sqrt(0.625) * 0.625],
    ["straight", { "bar ends": "straight" }, (60000 / (25 * rootPsi)) * 0.625],
    // 18 in deep: 14 in of concrete below the top bars.
    ["straight in a deep beam", { "bar ends": "straight", depth: 18 * inch }, ((1.3 * 60000) / (25 * rootPsi)) * 0.625],
    // Eight bars, four a face: 1.54 in apart, 1.47 diameters clear.
    ["straight and close", { "bar ends": "straight", bars: { count: 8, bar: readBar("no. 5")! } }, ((1.5 * 60000) / (25 * rootPsi)) * 0.625],
  ])("%s need their length", (_, beam, length) => {
    const found = weigh(pierBeamDevelopment, tied(beam), gravity(1));
    expect(found.demand / inch).toBeCloseTo(length, 2);
    expect(found.capacity / inch).toBeCloseTo(12, 9);
  });

  it("says that bars do not fit", () => {
    expect(() => outcomeOf(pierBeamDevelopment, tied({ width: 6 * inch }), gravity(1))).toThrow(/do not fit/);
  });
});
