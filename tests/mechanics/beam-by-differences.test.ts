import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveBeamOnSprings, type BeamArgs } from "../../server/src/mechanics/beam-on-springs.js";

/**
 * The same pier by another route: EI y'''' + P y'' + p(y, z) = 0 by central differences on a fine mesh, the curves by their secants until nothing moves,
 * with the soil's curves written down a second time. Nothing is shared with the elements but the statement of the problem.
 */
type Curve = (z: number, y: number) => number;

const evenSprings = (k: number): Curve => (_, y) => k * y;

/** API RP 2GEO sand, static; angles in rad, N and m. */
function sandCurve(phi: number, k: number, gamma: number, D: number): Curve {
  const [a, b] = [phi / 2, Math.PI / 4 + phi / 2];
  const Kp = Math.tan(b) ** 2;
  const C1 = Math.tan(b) * (Kp * Math.tan(a) + 0.4 * (Math.tan(phi) * Math.sin(b) * (1 / Math.cos(a) + 1) - Math.tan(a)));
  const C2 = Kp - 1 / Kp;
  const C3 = Kp * Kp * (Kp + 0.4 * Math.tan(phi)) - 1 / Kp;
  return (z, y) => {
    const pu = Math.max(3 - (0.8 * z) / D, 0.9) * Math.min((C1 * z + C2 * D) * gamma * z, C3 * D * gamma * z);
    return pu > 0 ? pu * Math.tanh((k * z * y) / pu) : 0;
  };
}

/** Matlock's soft clay, static. */
function clayCurve(c: number, eps50: number, gamma: number, D: number): Curve {
  return (z, y) => {
    const pu = Math.min(3 + (gamma * z) / c + (0.5 * z) / D, 9) * c * D;
    return Math.sign(y) * pu * Math.min(1, 0.5 * Math.cbrt(Math.abs(y) / (2.5 * eps50 * D)));
  };
}

/** Solves a banded system by elimination with row exchange; four rows below and eight columns beside count. */
function solve(rows: Float64Array[], right: Float64Array): Float64Array {
  const n = right.length;
  for (let k = 0; k < n; k += 1) {
    const last = Math.min(k + 4, n - 1);
    let pivot = k;
    for (let i = k + 1; i <= last; i += 1) if (Math.abs(rows[i][k]) > Math.abs(rows[pivot][k])) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot], rows[k]];
    [right[k], right[pivot]] = [right[pivot], right[k]];
    for (let i = k + 1; i <= last; i += 1) {
      const factor = rows[i][k] / rows[k][k];
      if (factor === 0) continue;
      for (let j = k; j <= Math.min(k + 8, n - 1); j += 1) rows[i][j] -= factor * rows[k][j];
      right[i] -= factor * right[k];
    }
  }
  for (let k = n - 1; k >= 0; k -= 1) {
    for (let j = k + 1; j <= Math.min(k + 8, n - 1); j += 1) right[k] -= rows[k][j] * right[j];
    right[k] /= rows[k][k];
  }
  return right;
}

interface Found {
  readonly y0: number;
  readonly Mmax: number;
  readonly settled: boolean;
}

/** Movement at the head and the largest moment, m and N·m. */
function byDifferences({ length: L, E, I, H, M, P = 0 }: Omit<BeamArgs, "layers" | "width">, curve: Curve, n = 240): Found {
  const EI = E * I;
  const h = L / n;
  let y = new Float64Array(n + 5).fill(1e-3);
  let settled = false;
  for (let round = 0; round < 400 && !settled; round += 1) {
    const rows = Array.from({ length: n + 5 }, () => new Float64Array(n + 5));
    const right = new Float64Array(n + 5);
    // Shear and moment at the head, nothing at the toe. Node i stands in column i + 2.
    const shearAt = (row: number, i: number): void => {
      [-0.5, 1, 0, -1, 0.5].forEach((share, j) => (rows[row][i + j] += (share * EI) / h ** 3));
      rows[row][i + 1] -= P / (2 * h);
      rows[row][i + 3] += P / (2 * h);
    };
    const momentAt = (row: number, i: number): void => [1, -2, 1].forEach((share, j) => (rows[row][i + 1 + j] += (share * EI) / h ** 2));
    shearAt(0, 0);
    right[0] = H;
    momentAt(1, 0);
    right[1] = M;
    for (let i = 0; i <= n; i += 1) {
      [1, -4, 6, -4, 1].forEach((share, j) => (rows[i + 2][i + j] += (share * EI) / h ** 4));
      [1, -2, 1].forEach((share, j) => (rows[i + 2][i + 1 + j] += (share * P) / h ** 2));
      const at = Math.abs(y[i + 2]) < 1e-9 ? 1e-9 : y[i + 2];
      rows[i + 2][i + 2] += curve(i * h, at) / at;
    }
    momentAt(n + 3, n);
    shearAt(n + 4, n);
    const next = solve(rows, right);
    let [most, moved] = [0, 0];
    for (let i = 2; i < n + 3; i += 1) {
      most = Math.max(most, Math.abs(next[i]));
      moved = Math.max(moved, Math.abs(next[i] - y[i]));
    }
    settled = moved < 1e-6 * most;
    y = next.map((value, i) => (round < 3 ? value : 0.7 * value + 0.3 * y[i]));
  }
  let Mmax = 0;
  for (let i = 0; i <= n; i += 1) Mmax = Math.max(Mmax, Math.abs((EI * (y[i + 1] - 2 * y[i + 2] + y[i + 3])) / h ** 2));
  return { y0: y[2], Mmax, settled };
}

const piers = fc.record({
  length: fc.double({ min: 1.5, max: 6, noNaN: true }),
  width: fc.double({ min: 0.4, max: 1, noNaN: true }),
  H: fc.double({ min: 1e3, max: 1.2e4, noNaN: true }),
  height: fc.double({ min: 0, max: 3.5, noNaN: true }),
  P: fc.double({ min: 0, max: 1e5, noNaN: true }),
});
const argsOf = ({ height, width, ...rest }: { length: number; width: number; H: number; height: number; P: number }) => ({ ...rest, width, E: 8.7e9, I: (Math.PI * width ** 4) / 64, M: rest.H * height });

describe("A pier by elements and by differences", () => {
  it.each([
    ["springs alike at every depth", { type: "springs", k: 1.6e7, growth: 0 }, () => evenSprings(1.6e7), 0],
    ["sand", { type: "sand", phi: 0.58, k: 1.6e7 }, (D: number) => sandCurve(0.58, 1.6e7, 17.5e3, D), 17.5e3],
    ["soft clay", { type: "clay", c: 25e3, eps50: 0.01 }, (D: number) => clayCurve(25e3, 0.01, 9e3, D), 9e3],
  ] as const)("in %s moves and is bent alike within 1 %", (_, law, curve, weight) => {
    let compared = 0;
    fc.assert(
      fc.property(piers, (given) => {
        const args = argsOf(given);
        const found = solveBeamOnSprings({ ...args, elements: 60, layers: [{ top: 0, law, weight }] })!;
        // Near the strength of the soil a small difference of curves is a large one of movements.
        if (found.givesWay || found.deflection[0] > 0.05 * args.width) return;
        // The elements start a curve of endless first stiffness by a short line, up to a thousandth of its scale: movements of microns are no matter.
        if (law.type === "clay" && found.deflection[0] < 0.05 * 2.5 * law.eps50 * args.width) return;
        const apart = byDifferences(args, curve(args.width));
        if (!apart.settled) return;
        compared += 1;
        expect(Math.abs(found.deflection[0] / apart.y0 - 1)).toBeLessThan(0.01);
        expect(Math.abs(found.maxMoment / apart.Mmax - 1)).toBeLessThan(0.01);
      }),
      { numRuns: law.type === "clay" ? 120 : 30 },
    );
    expect(compared).toBeGreaterThan(12);
  });
});
