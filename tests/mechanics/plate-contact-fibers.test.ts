import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solvePlateContact, type PlateArgs } from "../../server/src/mechanics/plate-contact.js";

/**
 * The same plate by another route: the concrete cut into fibers that only press, each at its middle, and the rods into springs that only
 * pull. The plane of stress is found by Newton's method on the sums over the fibers; nothing of the exact solution is used.
 */
function byFibers({ width, length, rods, rodArea, modularRatio, P, Mx, My }: PlateArgs, cells: number) {
  const fiber = (width * length) / cells ** 2;
  const fibers = Array.from({ length: cells ** 2 }, (_, i) => ({ x: (((i % cells) + 0.5) / cells - 0.5) * width, y: ((Math.floor(i / cells) + 0.5) / cells - 0.5) * length }));
  const k = rodArea * modularRatio;
  const load = [P, My, -Mx];
  const sums = (u: readonly number[]) => {
    const force = [0, 0, 0];
    const K = [[0, 0, 0], [0, 0, 0], [0, 0, 0]];
    const add = (x: number, y: number, stiffness: number) => {
      const at = [1, x, y];
      const s = u[0] + u[1] * x + u[2] * y;
      for (let i = 0; i < 3; i++) {
        force[i] += stiffness * s * at[i];
        for (let j = 0; j < 3; j++) K[i][j] += stiffness * at[i] * at[j];
      }
    };
    for (const { x, y } of fibers) if (u[0] + u[1] * x + u[2] * y > 0) add(x, y, fiber);
    for (const { x, y } of rods) if (u[0] + u[1] * x + u[2] * y < 0) add(x, y, k);
    return { K, left: load.map((l, i) => l - force[i]) };
  };
  const size = ({ left }: { left: readonly number[] }) => Math.hypot(left[0], left[1] / width, left[2] / length);
  // From the whole plate bonded.
  let u = [P / (width * length), (12 * My) / (width ** 3 * length), (-12 * Mx) / (length ** 3 * width)];
  for (let step = 0; step < 200; step++) {
    const now = sums(u);
    if (size(now) < 1e-7 * (Math.abs(P) + Math.hypot(Mx, My) / Math.min(width, length))) break;
    const move = solve3(now.K, now.left);
    let part = 1;
    while (part > 1e-4 && size(sums(u.map((value, i) => value + part * move[i]))) >= size(now)) part /= 2;
    u = u.map((value, i) => value + part * move[i]);
  }
  const at = (x: number, y: number) => u[0] + u[1] * x + u[2] * y;
  return {
    tensions: rods.map(({ x, y }) => k * Math.max(0, -at(x, y))),
    maxBearing: Math.max(0, ...[-1, 1].flatMap((i) => [-1, 1].map((j) => at((i * width) / 2, (j * length) / 2)))),
    left: size(sums(u)),
  };
}

/** Cramer's rule, with a little stiffness so that a plate clear of the concrete keeps its footing. */
function solve3(K: readonly (readonly number[])[], f: readonly number[]): number[] {
  const soft = 1e-9 * Math.max(K[0][0], 1e-12);
  const M = K.map((row, i) => row.map((value, j) => value + (i === j ? soft : 0)));
  const det = (m: readonly (readonly number[])[]) =>
    m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  return [0, 1, 2].map((column) => det(M.map((row, i) => row.map((value, j) => (j === column ? f[i] : value)))) / det(M));
}

const square = (half: number) => [-1, 1].flatMap((i) => [-1, 1].map((j) => ({ x: i * half, y: j * half })));
const plate: PlateArgs = { width: 0.36, length: 0.36, rods: square(0.13), rodArea: 391e-6, modularRatio: 8, P: 0, Mx: 0, My: 0 };

const solved = (args: PlateArgs) => {
  const found = solvePlateContact(args);
  if ("unstable" in found) throw new Error(found.unstable);
  return found;
};

describe("The contact of plate, concrete and rods agrees with fibers", () => {
  it.each<[string, Partial<PlateArgs>]>([
    ["compression and a moment along x", { P: 60e3, My: 15e3 }],
    ["compression and moments both ways, the corner lifting", { P: 60e3, Mx: -12e3, My: 9e3 }],
    ["moments alone, both ways", { Mx: 8e3, My: 14e3 }],
    ["uplift with moments both ways", { P: -30e3, Mx: -10e3, My: 12e3 }],
    ["a long plate", { length: 0.6, P: 20e3, Mx: 25e3, My: 6e3 }],
    ["eight rods", { rods: [...square(0.14), { x: 0, y: 0.14 }, { x: 0, y: -0.14 }, { x: 0.14, y: 0 }, { x: -0.14, y: 0 }], P: -20e3, Mx: -9e3, My: 15e3 }],
  ])("%s", (_, change) => {
    const args = { ...plate, ...change };
    const exact = solved(args);
    const mesh = byFibers(args, 120);
    const most = Math.max(...exact.tensions);
    exact.tensions.forEach((T, i) => expect(Math.abs(T - mesh.tensions[i]) / most).toBeLessThan(0.01));
    expect(Math.abs(exact.maxBearing / mesh.maxBearing - 1)).toBeLessThan(0.02);
  });

  it("over random plates, rods and loads", () => {
    const share = fc.double({ min: 0.25, max: 0.46, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          width: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
          length: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
          rodArea: fc.double({ min: 1e-4, max: 1.5e-3, noNaN: true }),
          modularRatio: fc.double({ min: 6, max: 12, noNaN: true }),
          P: fc.double({ min: -8e4, max: 2e5, noNaN: true }),
          Mx: fc.double({ min: -3e4, max: 3e4, noNaN: true }),
          My: fc.double({ min: -3e4, max: 3e4, noNaN: true }),
          sx: share,
          sy: share,
        }),
        ({ sx, sy, ...rest }) => {
          const args: PlateArgs = { ...rest, rods: [-1, 1].flatMap((i) => [-1, 1].map((j) => ({ x: i * sx * rest.width, y: j * sy * rest.length }))) };
          const exact = solved(args);
          // Where only a sliver bears, fibers of this size do not see it.
          fc.pre(exact.contactRatio > 0.08 && Math.hypot(args.Mx, args.My) > 1e3);
          const mesh = byFibers(args, 60);
          expect(mesh.left).toBeLessThan(1e-3 * (Math.abs(args.P) + Math.hypot(args.Mx, args.My)));
          const most = Math.max(1, ...exact.tensions, ...mesh.tensions);
          const total = most + exact.compression;
          exact.tensions.forEach((T, i) => expect(Math.abs(T - mesh.tensions[i]) / total).toBeLessThan(0.02));
          expect(Math.abs(exact.maxBearing - mesh.maxBearing) / exact.maxBearing).toBeLessThan(0.06);
        },
      ),
      { numRuns: 60 },
    );
  });
});

/** Even stress q over the toe of the plate: depth Y and pull T, AISC Design Guide 1, 3rd ed., 4.3 (second hand). Any one system of units. */
const block = ({ N, f, q, P, M }: { N: number; f: number; q: number; P: number; M: number }) => {
  const reach = f + N / 2;
  const Y = reach - Math.sqrt(reach ** 2 - (2 * (M + P * f)) / q);
  return { Y, T: q * Y - P };
};

describe("The even-stress block of AISC Design Guide 1 beside the elastic contact", () => {
  it.each([
    ["3rd ed., Example 4.7-14: Y 1.654 in (printed 1.70 from a rounded root), T 12.4 kip (printed 15.2)", { N: 14, f: 5.5, q: 61.9, P: 90, M: 700 }, 1.654, 12.4, 0.005],
    ["2nd ed., Example 4.7 (inputs from memory): Y 5.3 in, T 69 kip", { N: 19, f: 8, q: 84, P: 376, M: 3600 }, 5.3, 69, 0.01],
    ["a memo in SI with no axial force: Y 1.05 mm, T 13.0 kN", { N: 450, f: 175, q: 12.43, P: 0, M: 5200 }, 1.05, 13, 0.005],
  ] as const)("%s", (_, given, Y, T, part) => {
    const found = block(given);
    expect(Math.abs(found.Y / Y - 1)).toBeLessThan(part);
    expect(Math.abs(found.T / T - 1)).toBeLessThan(part);
  });

  it("never asks more of the rods than the elastic contact, as long as that stays below the stress of the block", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2e5, noNaN: true }), fc.double({ min: 5e3, max: 6e4, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true }), (P, M, more) => {
        const exact = solved({ ...plate, P, My: M });
        const pull = exact.tensions.reduce((a, b) => a + b, 0);
        fc.pre(pull > 0);
        const found = block({ N: 0.36, f: 0.13, q: more * exact.maxBearing * 0.36, P, M });
        expect(found.T).toBeLessThanOrEqual(pull * (1 + 1e-9));
      }),
    );
  });
});
