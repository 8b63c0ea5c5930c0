/** The frame under a roof: against the hand route, closed forms of braced bays, laws. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveRigidRoof, type EndsHeld, type MemberForces, type RoofColumn, type RoofLoad, type RoofResult } from "../../server/src/mechanics/rigid-roof.js";
import { framedRoof, roofFrame, solveRoofFrame, topMovement, type RoofBrace } from "../../server/src/mechanics/roof-frame.js";

const E = 200e9;
const I = 1.6e-5;
const column = (x: number, y: number, other: Partial<RoofColumn> = {}): RoofColumn => ({ x, y, base: 0, height: 3, E, area: 4.9e-3, Ix: I, Iy: I, GJ: 2e6, top: "pinned", ...other });
const load = (x: number, y: number, z: number, Fx: number, Fy: number, Fz: number): RoofLoad => ({ x, y, z, Fx, Fy, Fz });
const ends = (x: readonly [boolean, boolean], y: readonly [boolean, boolean]): { x: EndsHeld; y: EndsHeld } => ({ x: { base: x[0], top: x[1] }, y: { base: y[0], top: y[1] } });
const hingedAlongX = ends([false, false], [true, false]);

function solved(columns: readonly RoofColumn[], loads: readonly RoofLoad[], braces: readonly RoofBrace[] = []): RoofResult {
  const frame = roofFrame(columns, braces);
  const result = "mechanism" in frame ? frame : solveRoofFrame(frame, loads);
  if ("mechanism" in result) throw new Error(result.mechanism);
  return result;
}
const mechanismOf = (columns: readonly RoofColumn[], braces: readonly RoofBrace[] = []): string => {
  const frame = roofFrame(columns, braces);
  return "mechanism" in frame ? frame.mechanism : "";
};

const rod = 3e-4;
const bay = (from: number, to: number): RoofBrace => ({ from, to, E, area: rod });

describe("braced bays, by statics", () => {
  // South line 0, 1 and north line 2, 3, six meters apart along x, four along y, three high.
  const square = [column(0, 0, { ends: hingedAlongX }), column(6, 0, { ends: hingedAlongX }), column(0, 4, { ends: hingedAlongX }), column(6, 4, { ends: hingedAlongX })];
  const braces = [bay(0, 1), bay(2, 3)];

  it("a push along the braced lines goes to the base of the rod it stretches, with a couple of H h/L in the two columns", () => {
    const { columns } = solved(square, [load(3, 2, 3, 20e3, 0, 0)], braces);
    // Half to each line: the push to the east stretches the rod from the west base to the east top.
    const west: Partial<MemberForces> = { P: expect.closeTo(-5e3, 2) as never, Vx: expect.closeTo(10e3, 2) as never, Vy: expect.closeTo(0, 6) as never, Mx: expect.closeTo(0, 6) as never, My: expect.closeTo(0, 6) as never };
    const east = { ...west, P: expect.closeTo(5e3, 2), Vx: expect.closeTo(0, 2) };
    expect(columns.map(({ base }) => base)).toMatchObject([west, east, west, east]);
  });

  it("the push from the other side stretches the other rod", () => {
    const { columns } = solved(square, [load(3, 2, 3, -20e3, 0, 0)], braces);
    expect(columns.map(({ base }) => [base.P, base.Vx])).toEqual([[5e3, 0], [-5e3, -10e3], [5e3, 0], [-5e3, -10e3]].map((row) => row.map((f) => expect.closeTo(f, 2))));
  });

  it("across the braced lines the columns stand as cantilevers", () => {
    for (const { base } of solved(square, [load(3, 2, 3, 0, 20e3, 0)], braces).columns) {
      expect([base.Vy, base.Mx]).toEqual([expect.closeTo(5e3, 3), expect.closeTo(-15e3, 2)]);
    }
  });

  it("a plumb load shares evenly, and the slack rods take next to nothing", () => {
    for (const { base } of solved(square, [load(3, 2, 3, 0, 0, -80e3)], braces).columns) {
      expect(base.P).toBeCloseTo(20e3, 3);
      expect(Math.abs(base.Vx)).toBeLessThan(0.02 * 20e3);
    }
  });

  it("the bay moves by the stretch of its rod, H L_r³/(E A L²), beside the shortening of its column", () => {
    const slant = Math.hypot(6, 3);
    const { displacement } = solved(square.map((c) => ({ ...c, area: 1e3 })), [load(3, 2, 3, 20e3, 0, 0)], braces);
    expect(displacement.x / ((10e3 * slant ** 3) / (E * rod * 36))).toBeCloseTo(1, 3);
  });

  it("a braced line beside a cantilevered one takes the larger part", () => {
    const mixed = [column(0, 0, { ends: hingedAlongX }), column(6, 0, { ends: hingedAlongX }), column(0, 4), column(6, 4)];
    const { columns } = solved(mixed, [load(3, 2, 3, 20e3, 0, 0)], [bay(0, 1)]);
    const braced = columns[0].base.Vx + columns[1].base.Vx;
    expect(braced).toBeGreaterThan(9.9e3);
    expect(columns.reduce((sum, { base }) => sum + base.Vx, 0)).toBeCloseTo(20e3, 6);
  });

  it("leaning columns take no push and bring their load down", () => {
    const leaning = [...square, column(3, 2, { ends: ends([false, false], [false, false]) })];
    const { columns } = solved(leaning, [load(3, 2, 3, 20e3, 4e3, -50e3)], braces);
    expect(columns[4].base).toMatchObject({ Vx: expect.closeTo(0, 6), Vy: expect.closeTo(0, 6), Mx: expect.closeTo(0, 6), My: expect.closeTo(0, 6) });
    expect(columns[4].base.P).toBeGreaterThan(9e3);
  });
});

describe("mechanisms, in words", () => {
  const leaning = ends([false, false], [false, false]);
  const square = (of: Partial<RoofColumn>) => [column(0, 0, of), column(6, 0, of), column(0, 4, of), column(6, 4, of)];
  it.each<[string, readonly RoofColumn[], readonly RoofBrace[], RegExp]>([
    ["pins everywhere", square({ ends: leaning }), [], /against swaying east to west: no column is fixed/u],
    ["pins along y and no brace north to south", square({ ends: ends([true, false], [false, false]) }), [], /against swaying north to south.*brace a bay along y/u],
    ["one braced line alone", square({ ends: hingedAlongX }), [bay(0, 1)], /^$/u],
    ["one braced line and nothing else north to south", square({ ends: leaning }), [bay(0, 1)], /north to south/u],
    ["two bays that cross in one column", [column(0, 0, { ends: leaning }), column(6, 0, { ends: leaning }), column(0, 4, { ends: leaning })], [bay(0, 1), bay(0, 2)], /turn about a plumb line/u],
    ["one line of cantilevers with pinned tops", [column(0, 0), column(6, 0)], [], /one line, running east to west.*rotate about that line/u],
    ["one line with tops fixed along it alone", [column(0, 0, { ends: ends([true, true], [true, false]) }), column(6, 0, { ends: ends([true, true], [true, false]) })], [], /rotate about that line/u],
    ["one line with tops fixed across it", [column(0, 0, { ends: ends([true, false], [true, true]) }), column(6, 0, { ends: ends([true, false], [true, true]) })], [], /^$/u],
    ["one line of columns held at the top alone", [column(0, 0, { ends: ends([false, true], [false, false]) }), column(6, 0, { ends: ends([false, true], [true, false]) })], [], /tip over about a line running east to west/u],
  ])("%s", (_, columns, braces, words) => {
    expect(mechanismOf(columns, braces)).toMatch(words);
    if (braces.length > 0) return;
    const hand = solveRigidRoof({ columns, loads: [] });
    expect("mechanism" in hand ? hand.mechanism : "").toBe(mechanismOf(columns));
  });
});

const spot = fc.double({ min: -15, max: 15, noNaN: true });
const push = fc.double({ min: -1e5, max: 1e5, noNaN: true });
const anyEnds: fc.Arbitrary<EndsHeld> = fc.constantFrom({ base: true, top: false }, { base: true, top: true }, { base: false, top: true }, { base: false, top: false });
const anyColumn: fc.Arbitrary<RoofColumn> = fc.record({
  x: spot,
  y: spot,
  base: fc.double({ min: -1, max: 1, noNaN: true }),
  height: fc.double({ min: 2, max: 6, noNaN: true }),
  E: fc.constant(E),
  area: fc.double({ min: 1e-3, max: 2e-2, noNaN: true }),
  Ix: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
  Iy: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
  GJ: fc.double({ min: 1e4, max: 1e7, noNaN: true }),
  top: fc.constant("pinned" as const),
  ends: fc.record({ x: anyEnds, y: anyEnds }),
});
// Three plain cantilevers apart from each other make sure that the roof stands well.
const anyColumns = fc.array(anyColumn, { minLength: 1, maxLength: 6 }).map((more) => [column(-9, -7), column(9, -7), column(0, 8), ...more]);
const anyLoads = fc.array(fc.record({ x: spot, y: spot, z: fc.double({ min: 2, max: 7, noNaN: true }), Fx: push, Fy: push, Fz: push }), { minLength: 1, maxLength: 4 });
const parts = ["P", "Vx", "Vy", "Mx", "My"] as const;

describe("laws", () => {
  it("the frame gives what the hand route gives, at both ends of every column", () => {
    fc.assert(
      fc.property(anyColumns, anyLoads, (columns, loads) => {
        const hand = solveRigidRoof({ columns, loads });
        if ("mechanism" in hand) throw new Error(hand.mechanism);
        const frame = solved(columns, loads);
        const size = Math.max(...hand.columns.flatMap(({ base, top }) => parts.flatMap((part) => [Math.abs(base[part]), Math.abs(top[part])])), 1e-3);
        frame.columns.forEach((one, i) => {
          for (const at of ["top", "base"] as const) for (const part of parts) expect(Math.abs(one[at][part] - hand.columns[i][at][part])).toBeLessThan(1e-7 * size);
        });
        for (const c of columns) {
          const [a, b] = [topMovement(frame, c), topMovement(hand, c)];
          expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-7 * (Math.hypot(a.x, a.y) + 1e-6));
        }
      }),
      { numRuns: 100 },
    );
  });

  it("with braced bays too, reactions balance the loads to 1e-9 in five equations", () => {
    fc.assert(
      fc.property(anyColumns, anyLoads, (columns, loads) => {
        const braces = [bay(0, 1), bay(1, 2)];
        const { columns: results } = solved(columns, loads, braces);
        const sum = [0, 0, 0, 0, 0];
        let size = 0;
        const add = (sign: number, x: number, y: number, z: number, F: readonly number[], M: readonly number[]): void => {
          [...F, y * F[2] - z * F[1] + M[0], z * F[0] - x * F[2] + M[1]].forEach((value, i) => {
            sum[i] += sign * value;
            size += Math.abs(value);
          });
        };
        for (const { x, y, z, Fx, Fy, Fz } of loads) add(1, x, y, z, [Fx, Fy, Fz], [0, 0]);
        results.forEach(({ base }, i) => add(-1, columns[i].x, columns[i].y, columns[i].base, [base.Vx, base.Vy, -base.P], [base.Mx, base.My]));
        for (const rest of sum) expect(Math.abs(rest)).toBeLessThanOrEqual(1e-9 * size + 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it("a braced structure mirrored east to west has mirrored reactions", () => {
    fc.assert(
      fc.property(anyColumns, anyLoads, (columns, loads) => {
        const braces = [bay(0, 1), bay(1, 2)];
        const first = solved(columns, loads, braces).columns;
        const second = solved(
          columns.map((c) => ({ ...c, x: -c.x })),
          loads.map((l) => ({ ...l, x: -l.x, Fx: -l.Fx })),
          braces,
        ).columns;
        const size = Math.max(...first.flatMap(({ base }) => parts.map((part) => Math.abs(base[part]))), 1e-3);
        first.forEach(({ base }, i) => {
          const other = second[i].base;
          [base.P - other.P, base.Vx + other.Vx, base.Vy - other.Vy, base.Mx - other.Mx, base.My + other.My].forEach((rest) => expect(Math.abs(rest)).toBeLessThan(1e-6 * size));
        });
      }),
      { numRuns: 60 },
    );
  });

  it("a column made stiffer never takes less of a push through the center of stiffness", () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ x: spot, y: spot, I: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }) }), { minLength: 3, maxLength: 6 }),
        fc.double({ min: 1.05, max: 8, noNaN: true }),
        fc.nat(),
        (places, by, which) => {
          const i = which % places.length;
          // Far apart in height from any tilt: level tops, pushed at their level, so that the center lies at the mean weighted by stiffness.
          const share = (inertia: readonly number[]): number => {
            const columns = places.map(({ x, y }, n) => column(x, y, { Ix: inertia[n], Iy: inertia[n] }));
            const whole = inertia.reduce((a, b) => a + b, 0);
            const y = places.reduce((sum, place, n) => sum + place.y * inertia[n], 0) / whole;
            const frame = roofFrame(columns);
            if ("mechanism" in frame) return Number.NaN;
            const result = solveRoofFrame(frame, [load(0, y, 3, 10e3, 0, 0)]);
            return "mechanism" in result ? Number.NaN : result.columns[i].base.Vx;
          };
          const before = share(places.map((place) => place.I));
          const after = share(places.map((place, n) => (n === i ? by * place.I : place.I)));
          fc.pre(Number.isFinite(before) && Number.isFinite(after));
          expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-9));
        },
      ),
      { numRuns: 100 },
    );
  });

  it("second order: a pole leans as the beam column solution says, and buckles at its load", () => {
    const one = [column(0, 0, { ends: ends([true, true], [true, true]) })];
    const euler = (Math.PI ** 2 * E * I) / (4 * 9);
    const lean = (P: number): number => {
      const frame = roofFrame(one, [], [P]);
      const result = "mechanism" in frame ? frame : solveRoofFrame(frame, [load(0, 0, 3, 1e3, 0, 0)]);
      return "mechanism" in result ? Number.NaN : result.displacement.x;
    };
    const k = Math.sqrt((0.3 * euler) / (E * I));
    expect(lean(0.3 * euler) / ((1e3 / (0.3 * euler)) * (Math.tan(3 * k) / k - 3))).toBeCloseTo(1, 2);
    expect(lean(1.05 * euler)).toBeNaN();
  });
});

it("shows the loads that went in and the bases that came out", () => {
  const frame = roofFrame([column(0, 0), column(6, 0), column(0, 4)]);
  if ("mechanism" in frame) throw new Error(frame.mechanism);
  const args = { frame, loads: [load(2, 1, 3, 3e3, 0, -9e3)] };
  const { given, found } = framedRoof.show(args, framedRoof.run(args));
  expect(given.map(({ symbol, value }) => [symbol, value])).toEqual([["n", 3], ["F_x", 3e3], ["F_y", 0], ["F_z", -9e3]]);
  expect(found.filter(({ symbol }) => symbol.startsWith("P")).reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(9e3, 6);
});
