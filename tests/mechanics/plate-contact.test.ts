import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plateContact, solvePlateContact, type PlateArgs, type PlateContact } from "../../server/src/mechanics/plate-contact.js";

const square = (half: number) => [
  { x: -half, y: -half },
  { x: half, y: -half },
  { x: half, y: half },
  { x: -half, y: half },
];
const plate: PlateArgs = { width: 0.36, length: 0.36, rods: square(0.13), rodArea: 506e-6, modularRatio: 8, P: 0, Mx: 0, My: 0 };

const solved = (args: PlateArgs): PlateContact => {
  const result = solvePlateContact(args);
  if ("unstable" in result) throw new Error(result.unstable);
  return result;
};

const inside = fc.double({ min: -0.47, max: 0.47, noNaN: true });
const anyPlate: fc.Arbitrary<PlateArgs> = fc
  .record({
    width: fc.double({ min: 0.15, max: 0.8, noNaN: true }),
    length: fc.double({ min: 0.15, max: 0.8, noNaN: true }),
    places: fc.array(fc.tuple(inside, inside), { minLength: 1, maxLength: 8 }),
    rodArea: fc.double({ min: 5e-5, max: 3e-3, noNaN: true }),
    modularRatio: fc.double({ min: 5, max: 15, noNaN: true }),
    P: fc.double({ min: -3e5, max: 5e5, noNaN: true }),
    Mx: fc.double({ min: -8e4, max: 8e4, noNaN: true }),
    My: fc.double({ min: -8e4, max: 8e4, noNaN: true }),
  })
  .map(({ places, ...rest }) => ({ ...rest, rods: places.map(([x, y]) => ({ x: x * rest.width, y: y * rest.length })) }));

describe("hand cases", () => {
  it("a concentric load presses evenly: P/A", () => {
    const result = solved({ ...plate, P: 200e3 });
    expect(result.maxBearing).toBeCloseTo(200e3 / 0.36 ** 2, 4);
    expect(result.tensions).toEqual([0, 0, 0, 0]);
    expect(result.contactRatio).toBeCloseTo(1, 12);
    expect(result.neutralLine).toBeUndefined();
  });

  it("a load within the kern presses by P/A + M/S and pulls no rod", () => {
    const result = solved({ ...plate, P: 200e3, My: 6e3, Mx: -4e3 });
    expect(result.maxBearing).toBeCloseTo(200e3 / 0.36 ** 2 + (6 * 10e3) / 0.36 ** 3, 3);
    expect(result.maxBearingAt).toEqual({ x: 0.18, y: 0.18 });
    expect(result.tensions).toEqual([0, 0, 0, 0]);
  });

  it("pure uplift on four rods is a quarter each", () => {
    const result = solved({ ...plate, P: -40e3 });
    for (const tension of result.tensions) expect(tension).toBeCloseTo(10e3, 6);
    expect([result.compression, result.maxBearing, result.contact.length]).toEqual([0, 0, 0]);
    expect(result.note).toBeUndefined();
  });

  it("uplift with a little moment stays clear of the concrete: T/4 plus M/(2s) on the far rods", () => {
    const result = solved({ ...plate, P: -40e3, My: 1e3 });
    const more = 1e3 / (4 * 0.13);
    expect(result.tensions).toEqual([10e3 + more, 10e3 - more, 10e3 - more, 10e3 + more].map((t) => expect.closeTo(t, 6)));
    expect(result.contact).toHaveLength(0);
  });

  it("nothing at all asks for nothing", () => {
    expect(solved(plate)).toMatchObject({ tensions: [0, 0, 0, 0], compression: 0, maxBearing: 0 });
  });

  /**
   * One-way bending: with c the depth in contact, statics of the cracked section gives P = b c s/2 - n As s (d - c)/c and
   * M = (b c s/2)(h/2 - c/3) + n As s ((d - c)/c)(d - h/2), the textbook equation of a base plate with rods in one row per side.
   */
  it.each([
    [50e3, 30e3],
    [0, 30e3],
    [-60e3, 25e3],
    [200e3, 35e3],
    [-10e3, 60e3],
  ])("P = %d N with M = %d N·m agrees with the cracked section of the textbooks", (P, M) => {
    const [b, h, n] = [0.36, 0.36, 8];
    const As = 2 * 506e-6;
    const d = h / 2 + 0.13;
    // M - P e: bisection on the depth in contact, the stress eliminated between the two equations.
    const unit = (c: number) => ({ p: (b * c) / 2 - (n * As * (d - c)) / c, m: ((b * c) / 2) * (h / 2 - c / 3) + ((n * As * (d - c)) / c) * (d - h / 2) });
    let [low, high] = [1e-6, d];
    for (let i = 0; i < 200; i++) {
      const c = (low + high) / 2;
      if (unit(c).p * M < P * unit(c).m) low = c;
      else high = c;
    }
    const c = (low + high) / 2;
    const stress = M / unit(c).m;
    const result = solved({ ...plate, P, My: M });
    expect(result.maxBearing / stress).toBeCloseTo(1, 9);
    expect(result.tensions[0] / ((n * As * stress * (d - c)) / c / 2)).toBeCloseTo(1, 9);
    expect(result.contactRatio).toBeCloseTo(c / h, 9);
    expect(result.neutralLine?.every(({ x }) => Math.abs(x - (h / 2 - c)) < 1e-9)).toBe(true);
  });

  it("with P = 0 the depth in contact is that of a singly reinforced section: b c²/2 = n As (d - c)", () => {
    const nAs = 8 * 2 * 506e-6;
    const d = 0.31;
    const c = (-nAs + Math.sqrt(nAs ** 2 + 2 * 0.36 * nAs * d)) / 0.36;
    expect(solved({ ...plate, My: 20e3 }).contactRatio * 0.36).toBeCloseTo(c, 9);
  });

  it("two rods share a concentric uplift, and the answer says that the plate can rock about their row", () => {
    const pair = { ...plate, rods: [{ x: 0, y: -0.1 }, { x: 0, y: 0.1 }], P: -20e3 };
    const still = solved(pair);
    expect(still.tensions).toEqual([expect.closeTo(10e3, 6), expect.closeTo(10e3, 6)]);
    expect(still.note).toContain("row of rods");
    expect(solved({ ...pair, rods: [{ x: 0, y: 0 }] }).note).toContain("one rod");
    // With the least moment an edge bears: C at nearly half the width, each rod (20 kN + C)/2.
    const rocking = solved({ ...pair, My: 900 });
    const { compression, compressionAt } = rocking;
    expect(compression * (compressionAt?.x ?? 0)).toBeCloseTo(900, 6);
    expect(rocking.tensions[0]).toBeCloseTo((20e3 + compression) / 2, 6);
    expect(rocking.note).toBeUndefined();
  });
});

describe("loads that cannot be held", () => {
  it.each<[string, Partial<PlateArgs>, string]>([
    ["uplift without rods", { rods: [], P: -1 }, "lifted"],
    ["a load past the edge without rods", { rods: [], P: 1e3, My: 1e3 }, "outside the plate"],
    ["a rod out of reach", { rods: [{ x: 1, y: 0 }], P: -20e3, My: 1 }, "no rod stands within the plate"],
    ["a plate of no size", { width: 0 }, "no size"],
    ["rods of no area", { rodArea: 0 }, "no area"],
    ["a load that is no number", { P: Number.NaN }, "not a number"],
    ["a rod that is nowhere", { rods: [{ x: Number.NaN, y: 0 }] }, "not a number"],
  ])("%s", (_, change, words) => {
    expect(solvePlateContact({ ...plate, ...change })).toEqual({ unstable: expect.stringContaining(words) });
  });

  it("but a load on the plate needs no rods", () => {
    // The kern is passed: contact over 3(B/2 - e), qmax = 2P/(3L(B/2 - e)).
    expect(solved({ ...plate, rods: [], P: 100e3, My: 10e3 }).maxBearing / (200e3 / (3 * 0.36 * 0.08))).toBeCloseTo(1, 9);
  });
});

describe("laws", () => {
  it("one rod within the plate can balance any load, to 1e-9 of the forces at play", () => {
    fc.assert(
      fc.property(anyPlate, (args) => {
        const result = solved(args);
        const arm = Math.max(args.width, args.length);
        const size = Math.abs(args.P) + (Math.abs(args.Mx) + Math.abs(args.My)) / arm + result.compression + result.tensions.reduce((a, b) => a + b, 0);
        fc.pre(size > 1e-3);
        const { compressionAt: at = { x: 0, y: 0 } } = result;
        const moment = (pick: "x" | "y"): number => result.compression * at[pick] - result.tensions.reduce((sum, t, i) => sum + t * args.rods[i][pick], 0);
        expect(Math.abs(result.compression - result.tensions.reduce((a, b) => a + b, 0) - args.P) / size).toBeLessThan(1e-9);
        expect(Math.abs(moment("x") - args.My) / size / arm).toBeLessThan(1e-9);
        expect(Math.abs(moment("y") + args.Mx) / size / arm).toBeLessThan(1e-9);
        expect(Math.abs(result.residual.P) / size).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it("agrees with a fine grid laid over the plate", () => {
    const cells = 300;
    fc.assert(
      fc.property(anyPlate, (args) => {
        const { plane, compression, contactRatio, maxBearing, compressionAt } = solved(args);
        fc.pre(contactRatio > 0.05);
        let [force, first, area] = [0, 0, 0];
        for (let i = 0; i < cells; i++) {
          for (let j = 0; j < cells; j++) {
            const x = ((i + 0.5) / cells - 0.5) * args.width;
            const y = ((j + 0.5) / cells - 0.5) * args.length;
            const s = plane.atCenter + plane.alongX * x + plane.alongY * y;
            if (s <= 0) continue;
            force += s;
            first += s * x;
            area++;
          }
        }
        const cell = (args.width * args.length) / cells ** 2;
        expect(Math.abs(area / cells ** 2 - contactRatio)).toBeLessThan(0.01);
        expect(Math.abs((force * cell) / compression - 1)).toBeLessThan(5e-3);
        expect(Math.abs((first / force - (compressionAt?.x ?? 0)) / args.width)).toBeLessThan(5e-3);
        expect(maxBearing).toBeGreaterThanOrEqual(compression / (contactRatio * args.width * args.length) - 1e-6);
      }),
      { numRuns: 30 },
    );
  });

  it("the tension of each rod is the modular ratio times the plane at that rod", () => {
    fc.assert(
      fc.property(anyPlate, (args) => {
        const { plane, tensions } = solved(args);
        args.rods.forEach(({ x, y }, i) => {
          const s = plane.atCenter + plane.alongX * x + plane.alongY * y;
          expect(tensions[i]).toBeCloseTo(args.modularRatio * args.rodArea * Math.max(0, -s), 6);
        });
      }),
    );
  });

  it("a quarter turn of plate, rods and load turns the answer", () => {
    fc.assert(
      fc.property(anyPlate, (args) => {
        const turned = solved({ ...args, width: args.length, length: args.width, rods: args.rods.map(({ x, y }) => ({ x: -y, y: x })), Mx: -args.My, My: args.Mx });
        const straight = solved(args);
        const size = Math.max(1, ...straight.tensions);
        // Rods in one place share what is statically one tension; their sum is compared through the largest stress as well.
        straight.tensions.forEach((t, i) => expect(Math.abs(turned.tensions[i] - t) / size).toBeLessThan(1e-6));
        expect(Math.abs(turned.maxBearing - straight.maxBearing)).toBeLessThanOrEqual(1e-6 * straight.maxBearing + 1e-3);
      }),
    );
  });

  it("equal moments about both axes of a square plate load its rods alike across the diagonal", () => {
    const { tensions, maxBearingAt } = solved({ ...plate, P: 20e3, My: 15e3, Mx: -15e3 });
    expect(tensions[1]).toBeCloseTo(tensions[3], 6);
    expect(tensions[0]).toBeGreaterThan(tensions[1]);
    expect(tensions[2]).toBe(0);
    expect(maxBearingAt).toEqual({ x: 0.18, y: 0.18 });
  });

  it("the answer scales with the load", () => {
    fc.assert(
      fc.property(anyPlate, fc.double({ min: 0.01, max: 100, noNaN: true }), (args, times) => {
        const [one, more] = [solved(args), solved({ ...args, P: args.P * times, Mx: args.Mx * times, My: args.My * times })];
        expect(Math.abs(more.maxBearing - times * one.maxBearing)).toBeLessThanOrEqual(1e-7 * times * one.maxBearing + 1e-3);
      }),
    );
  });

  it("more uplift never lowers the sum of the tensions", () => {
    fc.assert(
      fc.property(fc.double({ min: -2e5, max: 2e5, noNaN: true }), fc.double({ min: 0, max: 1e5, noNaN: true }), (P, more) => {
        const sum = (force: number): number => solved({ ...plate, P: force, My: 12e3, Mx: 5e3 }).tensions.reduce((a, b) => a + b, 0);
        expect(sum(P - more)).toBeGreaterThanOrEqual(sum(P) - 1e-6);
      }),
    );
  });
});

describe("as a step of a calculation", () => {
  it("shows plate, loads, rod tensions and bearing", () => {
    const args = { ...plate, P: -40e3 };
    const shown = plateContact.show(args, plateContact.run(args));
    expect(shown.given.map(({ symbol }) => symbol)).toEqual(["B", "L", "n", "A_b", "P", "M_x", "M_y"]);
    expect(shown.found.find(({ symbol }) => symbol === "T_4")?.value).toBeCloseTo(10e3, 6);
    expect(plateContact.show({ ...plate, rods: [], P: -1 }, { unstable: "lifted" }).found).toEqual([]);
  });
});
