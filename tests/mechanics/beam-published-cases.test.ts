import { describe, expect, it } from "vitest";
import { solveBeamOnSprings, type BeamAnswer, type BeamArgs } from "../../server/src/mechanics/beam-on-springs.js";

/**
 * Published beams on an elastic foundation: Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., chapter 10 (read in a transcription,
 * recomputed). N and mm there, SI here. A pier is loaded at its head alone, so that the beams are made of piers by superposition: an endless beam of
 * two halves whose heads do not turn, a load beside an end of an endless beam less what it would carry across that end.
 */
const solved = (args: Partial<BeamArgs> & Pick<BeamArgs, "E" | "I" | "H" | "M">, k: number): BeamAnswer => {
  const found = solveBeamOnSprings({ length: 12, width: 0.1, elements: 1200, layers: [{ top: 0, law: { type: "springs", k, growth: 0 } }], ...args });
  if (!found) throw new Error("no answer");
  return found;
};

/** Distance of the nodes, m. */
const apart = 0.01;
const node = (x: number): number => Math.round(x / apart);

/** Movement, moment (EI y'') and shear of an endless beam under a load of 1 N, by the distance from it. */
function endless(E: number, I: number, k: number) {
  const push = solved({ E, I, H: 0.5, M: 0 }, k);
  const half = solved({ E, I, H: 0.5, M: push.slope[0] / push.head.leanM }, k);
  return { y: (x: number) => half.deflection[node(Math.abs(x))], M: (x: number) => half.moment[node(Math.abs(x))], V: (x: number) => half.shear[node(Math.abs(x))] };
}

const largest = (of: (x: number) => number, from: number, to: number): readonly [number, number] => {
  let [most, at] = [0, from];
  for (let i = node(from); i <= node(to); i += 1) if (Math.abs(of(i * apart)) > Math.abs(most)) [most, at] = [of(i * apart), i * apart];
  return [most, at];
};

describe("Example 10.1, an endless rail", () => {
  const rail = endless(200e9, 36.9e-6, 14e6);
  const P = 170e3;

  it("(a) one wheel: 5.04 mm, 51.21 kN·m, 137.54 MPa at 99.1 mm", () => {
    expect(P * rail.y(0) * 1e3).toBeCloseTo(5.0384, 3);
    expect((-P * rail.M(0)) / 51.2137e3).toBeCloseTo(1, 4);
    expect((-P * rail.M(0) * 0.0991) / 36.9e-6 / 137.54e6).toBeCloseTo(1, 4);
  });

  it("(b) three wheels 1.7 m apart: 7.86 mm below the middle one, 6.257 mm below an outer one; 37.02 kN·m there, 30.527 in the middle", () => {
    const sum = (of: (x: number) => number, x: number) => P * (of(x) + of(x - 1.7) + of(x - 3.4));
    expect(sum(rail.y, 1.7) * 1e3).toBeCloseTo(7.86, 2);
    expect(sum(rail.y, 0) * 1e3).toBeCloseTo(6.257, 3);
    expect(-sum(rail.M, 0) / 37.02e3).toBeCloseTo(1, 3);
    expect(-sum(rail.M, 1.7) / 30.527e3).toBeCloseTo(1, 4);
    expect((-sum(rail.M, 0) * 0.0991) / 36.9e-6 / 99.42e6).toBeCloseTo(1, 3);
  });
});

describe("Example 10.2, a beam hung on springs of 110 N/mm every 1.1 m", () => {
  const beam = endless(72e9, 2.45e-6, 110e3 / 1.1);
  const P = 12e3;

  it("moves 36.81 mm below 12 kN and 26.35, 11.41 and 2.24 mm at the next springs", () => {
    expect(P * beam.y(0) * 1e3).toBeCloseTo(36.81, 2);
    expect([1.1, 2.2, 3.3].map((x) => P * beam.y(x) * 1e3)).toEqual([expect.closeTo(26.35, 2), expect.closeTo(11.41, 2), expect.closeTo(2.24, 2)]);
  });

  it("is bent by 4.89 kN·m: 99.78 MPa at 50 mm", () => {
    expect((-P * beam.M(0)) / 4.89e3).toBeCloseTo(1, 3);
    expect((-P * beam.M(0) * 0.05) / 2.45e-6 / 99.78e6).toBeCloseTo(1, 3);
  });
});

describe("Example 10.4, 35 N/mm over 3.61 m of an endless beam", () => {
  // 100 mm by 200 mm, 10 GPa, 0.04 N/mm³ below 100 mm.
  const I = (0.1 * 0.2 ** 3) / 12;
  const beam = endless(10e9, I, 0.04e9 * 0.1);
  const L = 3.61;
  /** The load from 0 to L in strips of a node, each at its middle. */
  const sum = (of: (x: number) => number, x: number): number => {
    let total = 0;
    for (let i = 0; i < node(L); i += 1) total += (35e3 * apart * (of(x - i * apart) + of(x - (i + 1) * apart))) / 2;
    return total;
  };

  it("moves 9.24 mm at most", () => {
    expect(largest((x) => sum(beam.y, x), 0, L)[0] * 1e3).toBeCloseTo(9.24, 2);
  });

  it("is bent most outside the load, 695 mm from its end: 2.36 kN·m, 3.54 MPa", () => {
    const [M, at] = largest((x) => sum(beam.M, -x), 0, 3);
    expect(M / 1e3).toBeCloseTo(2.36, 2);
    expect(at).toBeCloseTo(0.695, 1);
    expect((M * 0.1) / I / 3.54e6).toBeCloseTo(1, 2);
  });

  // The book looks at a quarter wave from the end, pi/4 over beta, where 2.28 kN·m act; the largest inside is 2.293 by the exact sum.
  it("is bent by 2.28 kN·m a quarter wave inside, 2.293 at most there", () => {
    const beta = (4e6 / (4 * 10e9 * I)) ** 0.25;
    expect(beta * L).toBeCloseTo(4, 2);
    expect(-sum(beam.M, Math.PI / 4 / beta) / 1e3).toBeCloseTo(2.28, 1.6);
    expect(-largest((x) => sum(beam.M, x), 0, L)[0] / 2.293e3).toBeCloseTo(1, 3);
  });
});

describe("Example 10.6, 30 kN at 500 mm from the end of a long beam on rubber", () => {
  // E, I and the load of Examples 10.5 and 10.6 are from memory: 200 GPa, 2.53e6 mm⁴, 102 mm deep, 30 kN. They agree with the read 23.8 N/mm², 3.6155 kN·m and 72.88 MPa.
  const [E, I, k, P, a] = [200e9, 2.53e-6, 23.8e6, 30e3, 0.5];
  const beam = endless(E, I, k);
  // The end is free: what the endless beam carries across it is taken off.
  const end = solved({ E, I, H: P * beam.V(a), M: -P * beam.M(a) }, k);
  const y = (x: number) => P * beam.y(x - a) + end.deflection[node(x)];
  const M = (x: number) => P * beam.M(x - a) + end.moment[node(x)];

  // Printed 1.32; Hetenyi's closed form of a load beside a free end gives 1.3254 mm at 420 mm and 1.3067 mm below the load.
  it("moves 1.32 mm at most, 420 mm from the end, and 1.307 mm below the load", () => {
    const [most, at] = largest(y, 0, 3);
    expect(Math.abs((most * 1e3) / 1.32 - 1)).toBeLessThan(0.005);
    expect(at).toBeCloseTo(0.42, 1.5);
    expect(y(a) * 1e3).toBeCloseTo(1.307, 3);
  });

  it("is bent by 3.6155 kN·m below the load, 72.88 MPa, and not at all at its end", () => {
    const [most, at] = largest(M, 0, 3);
    expect(-most / 3.6155e3).toBeCloseTo(1, 3);
    expect(at).toBeCloseTo(a, 9);
    expect((-most * 0.051) / I / 72.88e6).toBeCloseTo(1, 3);
    expect(Math.abs(M(0))).toBeLessThan(1e-6 * Math.abs(most));
  });
});

describe("A pier on springs that grow with depth, by its coefficients along the depth", () => {
  // Exact solution of y'''' + Z y = 0 to Z = 10: y = A_y H T³/EI + B_y M T²/EI and so on. The printed tables of Matlock and Reese are 0.25 % higher.
  const rows = [
    [0.0, 2.429, -1.619, 0.0, 1.0, 1.619, -1.747, 1.0, 0.0],
    [0.2, 2.107, -1.6, 0.197, 0.956, 1.29, -1.547, 0.998, -0.028],
    [0.4, 1.792, -1.542, 0.378, 0.84, 1.001, -1.348, 0.986, -0.095],
    [0.6, 1.492, -1.45, 0.53, 0.677, 0.75, -1.153, 0.959, -0.182],
    [0.8, 1.214, -1.332, 0.647, 0.489, 0.539, -0.966, 0.913, -0.271],
    [1.0, 0.961, -1.194, 0.725, 0.294, 0.363, -0.789, 0.851, -0.351],
    [1.4, 0.543, -0.891, 0.77, -0.056, 0.112, -0.48, 0.686, -0.457],
    [2.0, 0.141, -0.462, 0.627, -0.371, -0.07, -0.153, 0.404, -0.456],
    [3.0, -0.075, -0.039, 0.224, -0.349, -0.089, 0.057, 0.059, -0.213],
    [4.0, -0.05, 0.052, 0.0, -0.106, -0.028, 0.049, -0.042, -0.016],
    [5.0, -0.009, 0.025, -0.033, 0.013, 0.0, 0.011, -0.026, 0.029],
  ] as const;
  // EI = 1, T = 1 m, so that the answers are the coefficients.
  const of = (H: number, M: number): BeamAnswer => {
    const found = solveBeamOnSprings({ length: 10, width: 0.5, E: 1e9, I: 1e-9, H, M, elements: 200, layers: [{ top: 0, law: { type: "springs", k: 0, growth: 1 } }] });
    if (!found) throw new Error("no answer");
    return found;
  };
  const push = of(1, 0);
  const moment = of(0, 1);

  it.each(rows)("at a depth of %d stiffness lengths", (Z, ...coefficients) => {
    const at = Math.round(Z * 20);
    expect(push.depth[at]).toBeCloseTo(Z, 9);
    const found = [push, moment].flatMap((answer) => [answer.deflection[at], answer.slope[at], answer.moment[at], answer.shear[at]]);
    found.forEach((value, i) => expect(Math.abs(value - coefficients[i])).toBeLessThan(0.0011));
  });

  // With a head that does not turn: M = -0.927 H T and y = 0.928 H T³/EI exactly; printed -0.93 and 0.93.
  it("with its head held against turning has 0.927 H T there and moves 0.928 H T³/EI", () => {
    const M = push.slope[0] / push.head.leanM;
    const held = of(1, M);
    expect(held.slope[0]).toBeCloseTo(0, 9);
    expect(-M).toBeCloseTo(0.927, 3);
    expect(held.deflection[0]).toBeCloseTo(0.928, 3);
  });

  // Das, Principles of Foundation Engineering, Example 11.7: My = 240.19 kN·m, T 1.16236 m, coefficient 0.772: 267.67 kN; 0.3 %.
  it("yields under 267.67 kN in Das's Example 11.7", () => {
    const found = solveBeamOnSprings({ length: 25, width: 0.254, E: 207e9, I: 123e-6, H: 267.67e3, M: 0, elements: 80, layers: [{ top: 0, law: { type: "springs", k: 0, growth: 12e6 } }] })!;
    expect(Math.abs(found.maxMoment / 240.19e3 - 1)).toBeLessThan(0.003);
  });
});
