import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distributeRoof, rigidRoof, roofModel, solveRigidRoof, type RoofColumn, type RoofLoad, type RoofResult } from "../../server/src/mechanics/rigid-roof.js";

const column = (x: number, y: number, other: Partial<RoofColumn> = {}): RoofColumn => ({ x, y, base: 0, height: 3, E: 200e9, area: 4.9e-3, Ix: 1.6e-5, Iy: 1.6e-5, top: "pinned", ...other });
const load = (x: number, y: number, z: number, Fx: number, Fy: number, Fz: number): RoofLoad => ({ x, y, z, Fx, Fy, Fz });
const four = (a: number, b: number, other: Partial<RoofColumn> = {}): RoofColumn[] => [column(-a, -b, other), column(a, -b, other), column(a, b, other), column(-a, b, other)];

const solved = (columns: readonly RoofColumn[], loads: readonly RoofLoad[]): RoofResult => {
  const result = solveRigidRoof({ columns, loads });
  if ("mechanism" in result) throw new Error(result.mechanism);
  return result;
};

describe("closed forms", () => {
  it("four equal columns with pinned tops take a quarter of a push each, and bend by H h/4", () => {
    for (const { base, top } of solved(four(5, 3), [load(0, 0, 3, 40e3, 0, 0)]).columns) {
      expect(base.Vx).toBeCloseTo(10e3, 6);
      expect(base.My).toBeCloseTo(30e3, 6);
      expect([base.P, base.Vy, base.Mx, base.Mz, top.Mx, top.My]).toEqual(Array(6).fill(expect.closeTo(0, 6)));
    }
  });

  it("a push to the north bends the base by -Mx, and the roof moves by H h³/(3 E ΣI)", () => {
    const result = solved(four(5, 3), [load(0, 0, 3, 0, 40e3, 0)]);
    for (const { base } of result.columns) expect(base.Mx).toBeCloseTo(-30e3, 6);
    expect(result.displacement.y).toBeCloseTo((40e3 * 27) / (3 * 200e9 * 4 * 1.6e-5), 12);
  });

  it("columns fixed to a rigid roof and stiff along their length bend in double curvature: H h/8 at both ends", () => {
    for (const { base, top } of solved(four(5, 3, { top: "fixed", area: 1e6 }), [load(0, 0, 3, 40e3, 0, 0)]).columns) {
      expect(base.My).toBeCloseTo(15e3, 3);
      expect(top.My).toBeCloseTo(-15e3, 3);
    }
  });

  it.each<[string, Partial<RoofColumn>, number]>([
    ["pinned", { Ix: 4e-5, Iy: 1e-5 }, 3],
    ["fixed", { Ix: 4e-5, Iy: 1e-5, top: "fixed", area: 1e6 }, 12],
  ])("columns with %s tops and unequal axes move by H h³/(k E ΣI) of the axis they bend about", (_, other, k) => {
    const move = (Fx: number, Fy: number) => solved(four(5, 3, other), [load(0, 0, 3, Fx, Fy, 0)]).displacement;
    expect(move(40e3, 0).x / ((40e3 * 27) / (k * 200e9 * 4 * 1e-5))).toBeCloseTo(1, 6);
    expect(move(0, 40e3).y / ((40e3 * 27) / (k * 200e9 * 4 * 4e-5))).toBeCloseTo(1, 6);
  });

  it("a cantilever with a fixed top turns by H h²/(2EI) + M h/(EI) about each axis, and twists by M h/(GJ)", () => {
    const one = [column(0, 0, { top: "fixed", Ix: 4e-5, Iy: 1e-5, GJ: 2e6 })];
    const east = solved(one, [load(0, 1, 3.5, 10e3, 0, 0)]);
    expect(east.rotation.y).toBeCloseTo((10e3 * 4.5 + 5e3 * 3) / (200e9 * 1e-5), 9);
    expect(east.displacement.x).toBeCloseTo((10e3 * 9 + 5e3 * 4.5) / (200e9 * 1e-5), 9);
    expect(east.rotation.z).toBeCloseTo((-10e3 * 3) / 2e6, 9);
    const north = solved(one, [load(0, 0, 3.5, 0, 10e3, 0)]);
    expect(north.rotation.x).toBeCloseTo(-(10e3 * 4.5 + 5e3 * 3) / (200e9 * 4e-5), 9);
    expect(north.displacement.y).toBeCloseTo((10e3 * 9 + 5e3 * 4.5) / (200e9 * 4e-5), 9);
  });

  it("a vertical load at the middle gives equal shares, and one over a column goes into that column", () => {
    for (const { base } of solved(four(5, 3), [load(0, 0, 3, 0, 0, -80e3)]).columns) expect(base.P).toBeCloseTo(20e3, 6);
    // On three columns the shares are statics alone, but for the push the tilt of a level roof does not cause.
    const three = [column(0, 0), column(6, 0), column(0, 4)];
    expect(solved(three, [load(6, 0, 3, 0, 0, -80e3)]).columns.map(({ base }) => base.P)).toEqual([0, 80e3, 0].map((p) => expect.closeTo(p, 4)));
  });

  it("a push off the middle turns the roof: shares follow H/n plus the torsion term T y/Σr²", () => {
    const [a, b, e, H] = [5, 3, 1.2, 40e3];
    const { columns, rotation } = solved(four(a, b), [load(0, e, 3, H, 0, 0)]);
    const polar = 4 * (a ** 2 + b ** 2);
    const places = [[-a, -b], [a, -b], [a, b], [-a, b]];
    for (const [i, [x, y]] of places.entries()) {
      expect(columns[i].base.Vx).toBeCloseTo(H / 4 + (H * e * y) / polar, 6);
      expect(columns[i].base.Vy).toBeCloseTo((-H * e * x) / polar, 6);
    }
    expect(rotation.z).toBeCloseTo((-H * e) / (polar * (3 * 200e9 * 1.6e-5) / 27), 12);
  });

  it("a push above the column tops adds a couple in the columns", () => {
    const { columns } = solved(four(5, 3), [load(0, 0, 4, 40e3, 0, 0)]);
    // The couple about the tops is 40 kN over 1 m, taken by two pairs 10 m apart.
    expect(columns.map(({ base }) => base.P)).toEqual([-2e3, 2e3, 2e3, -2e3].map((p) => expect.closeTo(p, 6)));
  });

  it("one fixed column is a cantilever with torsion", () => {
    const { columns } = solved([column(0, 0, { top: "fixed", GJ: 2e6 })], [load(2, 1, 3.5, 10e3, 0, 4e3)]);
    expect(columns[0].base).toEqual({ P: expect.closeTo(-4e3, 6), Vx: expect.closeTo(10e3, 6), Vy: expect.closeTo(0, 6), Mx: expect.closeTo(4e3, 6), My: expect.closeTo(35e3 - 8e3, 6), Mz: expect.closeTo(-10e3, 6) });
  });

  it("on columns of unequal height, pushed through their center of stiffness, shares go as 1/h³", () => {
    const columns = [column(0, -2, { base: 1, height: 2 }), column(6, -2, { base: 1, height: 2 }), column(0, 2), column(6, 2)];
    const [short, tall] = [1 / 8, 1 / 27];
    const y = (2 * (tall - short)) / (tall + short);
    const shares = solved(columns, [load(3, y, 3, 10e3, 0, 0)]).columns.map(({ base }) => base.Vx);
    expect(shares[0] / shares[2]).toBeCloseTo(27 / 8, 9);
  });
});

const spot = fc.double({ min: -20, max: 20, noNaN: true });
const push = fc.double({ min: -1e5, max: 1e5, noNaN: true });
const anyColumn: fc.Arbitrary<RoofColumn> = fc.record({
  x: spot,
  y: spot,
  base: fc.double({ min: -1, max: 1, noNaN: true }),
  height: fc.double({ min: 2, max: 6, noNaN: true }),
  E: fc.constant(200e9),
  area: fc.double({ min: 1e-3, max: 2e-2, noNaN: true }),
  Ix: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
  Iy: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
  GJ: fc.double({ min: 1e4, max: 1e7, noNaN: true }),
  top: fc.constantFrom("pinned", "fixed"),
});
const anyRoof = fc.array(anyColumn, { minLength: 3, maxLength: 8 }).filter((columns) => !("mechanism" in roofModel(columns)));
const anyLoads = fc.array(fc.record({ x: spot, y: spot, z: fc.double({ min: 2, max: 7, noNaN: true }), Fx: push, Fy: push, Fz: push }), { minLength: 1, maxLength: 4 });

describe("laws", () => {
  it("base reactions balance the loads in all six equations", () => {
    fc.assert(
      fc.property(anyRoof, anyLoads, (columns, loads) => {
        const sum = [0, 0, 0, 0, 0, 0];
        const scale = [1, 1];
        const add = (sign: number, x: number, y: number, z: number, F: readonly number[], M: readonly number[]): void => {
          const moment = [y * F[2] - z * F[1] + M[0], z * F[0] - x * F[2] + M[1], x * F[1] - y * F[0] + M[2]];
          for (let i = 0; i < 3; i++) {
            sum[i] += sign * F[i];
            sum[i + 3] += sign * moment[i];
            scale[0] = Math.max(scale[0], Math.abs(F[i]));
            scale[1] = Math.max(scale[1], Math.abs(moment[i]), Math.abs(F[i]) * 20);
          }
        };
        for (const l of loads) add(1, l.x, l.y, l.z, [l.Fx, l.Fy, l.Fz], [0, 0, 0]);
        solved(columns, loads).columns.forEach(({ base: f }, i) => add(-1, columns[i].x, columns[i].y, columns[i].base, [f.Vx, f.Vy, -f.P], [f.Mx, f.My, f.Mz]));
        for (let i = 0; i < 6; i++) expect(Math.abs(sum[i]) / scale[i < 3 ? 0 : 1]).toBeLessThan(1e-9);
      }),
    );
  });

  it("a structure mirrored east to west has its reactions mirrored", () => {
    fc.assert(
      fc.property(anyRoof, anyLoads, (columns, loads) => {
        const there = solved(columns, loads).columns;
        const mirrored = solved(columns.map((c) => ({ ...c, x: -c.x })), loads.map((l) => ({ ...l, x: -l.x, Fx: -l.Fx }))).columns;
        const size = Math.max(1, ...there.flatMap(({ base }) => Object.values(base).map(Math.abs)));
        // A mirror reverses the push across it and the moments about the two axes that lie in it.
        there.forEach(({ base }, i) => {
          const expected = { P: base.P, Vx: -base.Vx, Vy: base.Vy, Mx: base.Mx, My: -base.My, Mz: -base.Mz };
          for (const key of ["P", "Vx", "Vy", "Mx", "My", "Mz"] as const) expect(Math.abs(mirrored[i].base[key] - expected[key]) / size).toBeLessThan(1e-7);
        });
      }),
    );
  });

  it("a structure turned by a quarter has its reactions turned", () => {
    fc.assert(
      fc.property(anyRoof, anyLoads, (columns, loads) => {
        const there = solved(columns, loads).columns;
        const turned = solved(
          columns.map((c) => ({ ...c, x: -c.y, y: c.x, Ix: c.Iy, Iy: c.Ix })),
          loads.map((l) => ({ ...l, x: -l.y, y: l.x, Fx: -l.Fy, Fy: l.Fx })),
        ).columns;
        const size = Math.max(1, ...there.flatMap(({ base }) => Object.values(base).map(Math.abs)));
        there.forEach(({ base }, i) => {
          const expected = { P: base.P, Vx: -base.Vy, Vy: base.Vx, Mx: -base.My, My: base.Mx, Mz: base.Mz };
          for (const key of ["P", "Vx", "Vy", "Mx", "My", "Mz"] as const) expect(Math.abs(turned[i].base[key] - expected[key]) / size).toBeLessThan(1e-7);
        });
      }),
    );
  });

  it("a stiffer column never takes less of a push through the center of stiffness", () => {
    const inertia = fc.double({ min: 1e-6, max: 1e-4, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(inertia, inertia, inertia, inertia), (inertias) => {
        const columns = four(5, 3).map((c, i) => ({ ...c, Ix: inertias[i], Iy: inertias[i] }));
        const total = inertias.reduce((a, b) => a + b);
        const y = columns.reduce((sum, c) => sum + c.y * c.Iy, 0) / total;
        solved(columns, [load(0, y, 3, 50e3, 0, 0)]).columns.forEach(({ base }, i) => expect(base.Vx).toBeCloseTo((50e3 * inertias[i]) / total, 4));
      }),
    );
  });

  it("results of loads add up", () => {
    fc.assert(
      fc.property(anyRoof, anyLoads, (columns, loads) => {
        const model = roofModel(columns);
        if ("mechanism" in model) throw new Error(model.mechanism);
        const whole = distributeRoof(model, loads).columns;
        const parts = loads.map((one) => distributeRoof(model, [one]).columns);
        const size = Math.max(1, ...parts.flat().flatMap(({ base }) => Object.values(base).map(Math.abs)));
        whole.forEach(({ base }, i) => expect(Math.abs(parts.reduce((sum, part) => sum + part[i].base.My, 0) - base.My) / size).toBeLessThan(1e-9));
      }),
    );
  });
});

describe("roofs that do not stand", () => {
  it.each<[string, RoofColumn[], string]>([
    ["no column", [], "no column"],
    ["one pinned column", [column(0, 0)], "tip over in any direction"],
    ["one fixed column of unknown torsion", [column(0, 0, { top: "fixed" })], "like a flag"],
    ["two pinned columns", [column(0, 0), column(5, 0)], "rotate about that line"],
    ["a pinned row east to west", [column(0, 1), column(4, 1), column(8, 1)], "one line, running east to west, with pinned tops"],
    ["a pinned row north to south", [column(2, 1), column(2, 5), column(2, 9)], "one line, running north to south, with pinned tops"],
    ["a pinned row on a diagonal", [column(0, 0), column(1.1, 1.1), column(3.3, 3.3)], "one line with pinned tops"],
    ["a pinned row a hair out of line", [column(0, 0), column(5, 1e-4), column(10, 0)], "rotate about that line"],
    ["a column with no height", [column(0, 0), column(5, 0, { height: 0 })], "column 2 has no height"],
    ["a column with no inertia", [column(0, 0, { Ix: 0 })], "column 1 has no bending stiffness"],
    ["a column at no place", [column(Number.NaN, 0)], "column 1 has no position"],
    ["a column with no area", [column(0, 0, { area: 0 })], "column 1 has no area"],
  ])("%s", (_, columns, words) => {
    expect(solveRigidRoof({ columns, loads: [] })).toEqual({ mechanism: expect.stringContaining(words) });
  });

  it.each<[string, RoofColumn[]]>([
    ["a row with one fixed top", [column(0, 0, { top: "fixed" }), column(5, 0)]],
    ["a pinned triangle", [column(0, 0), column(5, 0), column(2, 3)]],
    ["one fixed column of known torsion", [column(0, 0, { top: "fixed", GJ: 1e6 })]],
  ])("but %s stands", (_, columns) => {
    expect(solveRigidRoof({ columns, loads: [load(1, 1, 3, 1e3, 1e3, -1e3)] })).toHaveProperty("columns");
  });
});

describe("as a step of a calculation", () => {
  it("shows the loads that went in and the bases that came out", () => {
    const args = { columns: four(5, 3), loads: [load(0, 0, 3, 40e3, 0, -80e3)] };
    const shown = rigidRoof.show(args, rigidRoof.run(args));
    expect(shown.given.map(({ value }) => value)).toEqual([4, 40e3, 0, -80e3]);
    expect(shown.found.find(({ symbol }) => symbol === "M_1")?.value).toBeCloseTo(30e3, 6);
    expect(shown.found).toHaveLength(13);
    expect(rigidRoof.show({ columns: [], loads: [] }, rigidRoof.run({ columns: [], loads: [] })).found).toEqual([]);
  });
});
