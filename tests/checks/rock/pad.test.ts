import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { footingFlexure } from "../../../server/src/checks/footing/flexure.js";
import { footingOneWayShear } from "../../../server/src/checks/footing/one-way-shear.js";
import { overhangs } from "../../../server/src/checks/footing/sections.js";
import { footingTwoWayShear } from "../../../server/src/checks/footing/two-way-shear.js";
import { onRock, type RockPadInputs } from "../../../server/src/checks/rock/pad.js";
import { padConcrete, padDevelopment, padFlexure, padLeastSteel, padOneWayShear, padTopFlexure, padTwoWayShear } from "../../../server/src/checks/rock/pad-concrete.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, inch, kip, kipFoot, kipInch, psi } from "../given.js";
import { outcomeOf, read, standing, stepsFor, strengthOf, weigh } from "../ground.js";
import { bar, mats, pad as onSoil } from "../footing/pad.js";

type Fields = Readonly<Record<string, unknown>>;

const light = [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }] as const;
const grouted = { count: 4, spacing: 3 * foot, bar: bar(6), grade: "Gr 60", "into rock": 30 * inch, "set in": "cement grout" };
const pad = (more: Fields = {}, dowels: Fields | null = {}, site: Fields = {}) => {
  const made = standing({
    site: { "seismic design category": "B", ...site },
    ground: { kind: "rock", class: "granite" },
    foundation: {
      kind: "footing on rock", width: 5 * foot, length: 5 * foot, thickness: 18 * inch, depth: 18 * inch, concrete: 4000 * psi, "bar grade": "Gr 60", cover: 3 * inch,
      pedestal: { width: 16 * inch, length: 16 * inch }, "bottom bars": mats(5, 9), "top bars": mats(5, 9), "hooked bars": false,
      ...(dowels ? { dowels: { ...grouted, ...dowels } } : {}),
      ...more,
    },
  });
  return { ...made, codes: { ...made.codes, concrete: { value: "ACI 318-19", path: "", span: made.span } } } as typeof made;
};

const forces = fc.record({
  P: fc.double({ min: -60, max: 60, noNaN: true }),
  Mx: fc.double({ min: -40, max: 40, noNaN: true }),
  My: fc.double({ min: -40, max: 40, noNaN: true }),
});
const demandOf = ({ P, Mx, My }: { P: number; Mx: number; My: number }) => strengthOf({ P: P * kip, Mx: Mx * kipFoot, My: My * kipFoot }, light);

describe("A pad held down to rock", () => {
  it("is in equilibrium with its column at a cut through its middle, in both directions", () => {
    fc.assert(
      fc.property(forces, fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }), (one, alongX, alongY) => {
        const support = pad({}, { count: undefined, "along x": alongX, "along y": alongY, spacing: 15 * inch });
        const inputs = read(padFlexure, support).inputs as RockPadInputs;
        const demand = demandOf(one);
        const acting = onRock.acting(inputs, demand, "by factor", plainCalc);
        if (!acting) return;
        if ("because" in acting) throw new Error(acting.because);
        // A dowel on the cut itself hangs on both sides of it.
        const onCut = (axis: "x" | "y") => (acting.pulls ?? []).filter((pull) => Math.abs(pull[axis]) < 1e-9).reduce((all, { force }) => all + force, 0);
        const x = overhangs(inputs, acting, "x", 0, plainCalc);
        const y = overhangs(inputs, acting, "y", 0, plainCalc);
        const scale = 1e5;
        expect(Math.abs(x.shear[0] + x.shear[1] + onCut("x") - one.P * kip) / scale).toBeLessThan(1e-6);
        expect(Math.abs(y.shear[0] + y.shear[1] + onCut("y") - one.P * kip) / scale).toBeLessThan(1e-6);
        expect(Math.abs(x.moment[1] - x.moment[0] - one.My * kipFoot) / scale).toBeLessThan(1e-6);
        // A moment about the east axis presses the south.
        expect(Math.abs(y.moment[0] - y.moment[1] - one.Mx * kipFoot) / scale).toBeLessThan(1e-6);
      }),
      { numRuns: 200 },
    );
  });

  it("is bent and sheared the same by a storm from any of four sides", () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 20, noNaN: true }), fc.double({ min: 0.1, max: 30, noNaN: true }), (P, M) => {
        const blown = [{ Mx: 0, My: M }, { Mx: 0, My: -M }, { Mx: M, My: 0 }, { Mx: -M, My: 0 }].map((moments) => demandOf({ P, ...moments }));
        for (const check of [padFlexure, padTopFlexure, padOneWayShear, padTwoWayShear]) {
          const [first, ...others] = blown.map((demand) => {
            const outcome = outcomeOf<any>(check, pad(), demand);
            return outcome.type === "weighed" ? outcome.demand : outcome.because;
          });
          for (const other of others) typeof first === "number" ? expect(other as number).toBeCloseTo(first, 1) : expect(other).toBe(first);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("is bent downward no less by a harder pull, and not at all at its bottom by a pull alone", () => {
    fc.assert(
      fc.property(fc.double({ min: 6, max: 50, noNaN: true }), fc.double({ min: 0.1, max: 10, noNaN: true }), (up, more) => {
        const at = (P: number) => weigh(padTopFlexure, pad(), demandOf({ P: -P, Mx: 0, My: 0 })).demand;
        expect(at(up + more)).toBeGreaterThan(at(up));
        expect(weigh(padFlexure, pad(), demandOf({ P: -up, Mx: 0, My: 0 })).demand).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  it("hangs at its far pair: 30 kip up, four dowels 3 ft apart", () => {
    // W = 0.9 x 0.15 x 25 x 1.5 = 5.0625 kip: 24.9375/2 on a pair, 18 - 8 in off the face; 1.0125 kip/ft of weight on 22 in.
    const found = weigh(padTopFlexure, pad(), demandOf({ P: -30, Mx: 0, My: 0 }));
    expect(found.demand / kipFoot).toBeCloseTo((24.9375 / 2) * (10 / 12) + (1.0125 * (22 / 12) ** 2) / 2, 6);
    const A = (0.31 * 60) / 9;
    expect(found.capacity / kipInch).toBeCloseTo(0.9 * A * 60 * (14.375 - (A * 60) / (2 * 0.85 * 4 * 60)), 2);
  });

  it("has its top as plain concrete where it has no bars there, not in seismic design category D", () => {
    const bare = (category: string) => outcomeOf(padTopFlexure, pad({ "top bars": undefined }, {}, { "seismic design category": category }), demandOf({ P: -30, Mx: 0, My: 0 }));
    // 0.6 x 5 sqrt(4000) x 60 x 16²/6.
    expect((bare("B") as { capacity: number }).capacity / kipInch).toBeCloseTo((0.6 * 5 * Math.sqrt(4000) * 60 * 256) / 6000, 4);
    expect(bare("D")).toMatchObject({ type: "unchecked" });
  });

  it("is not told where the places of its dowels are not known, or where bars driven dry are to hold it", () => {
    const unknown = outcomeOf(padTopFlexure, pad({}, { count: 6 }), demandOf({ P: -30, Mx: 0, My: 0 }));
    expect(unknown.type === "unchecked" && unknown.because).toMatch(/6 dowels stand in the pad is not known: say how many stand side by side/);
    const dry = outcomeOf(padTopFlexure, pad({}, { "set in": "nothing" }), demandOf({ P: -30, Mx: 0, My: 0 }));
    expect(dry.type === "unchecked" && dry.because).toMatch(/no dowels hold it down/);
    expect(read(padFlexure, pad({ "off middle": { x: 0.1 } })).blocks.join()).toMatch(/off the middle of a pad on rock/);
  });
});

describe("A pad on rock without dowels", () => {
  it("is bent, sheared and punched as one of its size on soil that nothing lies on", () => {
    const column = { section: { name: "HSS6x6x3/8", width: 6 * inch, depth: 6 * inch } };
    const base = { plate: { width: 14 * inch, length: 12 * inch, thickness: 0 } };
    const parts = (made: ReturnType<typeof pad>) => ({ ...made, column: standing({ column }).column, base: standing({ base }).base }) as typeof made;
    const rock = parts(pad({ pedestal: undefined }, null));
    const soil = parts(onSoil({ foundation: { pedestal: undefined, depth: 18 * inch, "above grade": 0, "top bars": mats(5, 9) } }) as typeof rock);
    fc.assert(
      fc.property(fc.double({ min: 10, max: 60, noNaN: true }), fc.double({ min: -10, max: 10, noNaN: true }), fc.double({ min: -10, max: 10, noNaN: true }), (P, Mx, My) => {
        const demand = demandOf({ P, Mx, My });
        for (const [one, other] of [[padFlexure, footingFlexure], [padOneWayShear, footingOneWayShear], [padTwoWayShear, footingTwoWayShear]] as const) {
          const [a, b] = [weigh<any>(one, rock, demand), weigh<any>(other, soil, demand)];
          expect(a.demand / b.demand).toBeCloseTo(1, 9);
          expect(a.capacity).toBe(b.capacity);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("tips over under a load outside of it, with what to do", () => {
    const outcome = outcomeOf(padFlexure, pad({}, null), demandOf({ P: 1, Mx: 0, My: 60 }));
    expect(outcome.type === "unchecked" && outcome.because).toMatch(/hold it down by dowels/);
  });
});

describe("A pad on rock that nothing is said to stand on", () => {
  const bare = (site: Fields = {}) => pad({ pedestal: undefined }, {}, site);

  it("is bent about its middle, the safe side, and says so", () => {
    const demand = demandOf({ P: 40, Mx: 0, My: 0 });
    // 40 kip on 25 sq ft bend half of it: 8 kip/ft x 2.5²/2.
    expect(weigh(padFlexure, bare(), demand).demand / kipFoot).toBeCloseTo(25, 6);
    expect(stepsFor(padFlexure, bare(), demand).notes.join()).toMatch(/taken as a point on its middle/);
    // Punching on a square of side d: 4 x 14.375 in; the force outside of it.
    expect(weigh(padTwoWayShear, bare(), demand).demand / psi).toBeCloseTo((40000 * (1 - 14.375 ** 2 / 3600)) / (4 * 14.375 ** 2), 4);
  });

  it("does not say that its bars are long enough in seismic design category D", () => {
    expect(read(padDevelopment, bare()).blocks).toEqual([]);
    expect(read(padDevelopment, bare({ "seismic design category": "D" })).blocks.join()).toMatch(/describe its pedestal or its base plate/);
  });
});

describe("What the concrete of a pad on rock asks for", () => {
  it("are its bars", () => {
    for (const check of padConcrete) expect(read(check, pad({ "bottom bars": undefined })).missing, check.id).toContain("bottom bars of the pad");
    expect(weigh(padLeastSteel, pad(), strengthOf({ P: 0 })).demand / inch ** 2).toBeCloseTo(0.0018 * 60 * 18, 9);
  });
});
