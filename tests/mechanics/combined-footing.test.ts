import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveCombined } from "../../server/src/mechanics/combined-footing.js";
import { forcesTogether, lineAxis, placesFromMiddle } from "../../server/src/mechanics/forces-together.js";
import { solveFootingContact, type FootingPressure } from "../../server/src/mechanics/partial-contact.js";

const contact = (width: number, length: number, P: number, Mx: number, My: number): FootingPressure => {
  const found = solveFootingContact({ width, length, P, Mx, My });
  if ("unstable" in found) throw new Error(found.unstable);
  return found;
};

describe("A pad under several columns as a beam", () => {
  // Statics by hand, in kip and feet: 100 kip at 8 ft to each side on 24 ft, 8.333 kip/ft from below. Beyond the columns 8.333 x 3.25²/2 = 44.0 at the
  // outer face; midway 8.333 x 12²/2 - 100 x 8 = -200; at 1.5 ft from the inner face 100 - 8.333 x 6.25 = 47.9.
  const two = [
    { at: -8, half: 0.75, P: 100, M: 0 },
    { at: 8, half: 0.75, P: 100, M: 0 },
  ];
  it.each(["x", "y"] as const)("agrees with statics along %s", (along) => {
    const [width, length] = along === "x" ? [24, 6] : [6, 24];
    const found = solveCombined({ pressure: contact(width, length, 200, 0, 0), width, length, down: 0, along, columns: two, d: 1.5, N: 200 });
    expect(found.sagging).toBeCloseTo(44.01, 2);
    expect(found.hogging).toBeCloseTo(200, 6);
    expect(found.shear).toBeCloseTo(47.917, 3);
    expect(found.residual).toBeLessThan(1e-9);
  });

  // Two columns 3 ft to each side pull 10 kip each on a pad 12 ft long that hangs by its own 20 kip, 1.667 kip/ft: nothing presses. At a face, half a
  // foot from the column, 1.667 x 2.5 = 4.17 kip outside, and 10 - 1.667 x 3.5 = 4.17 inside; at 1 ft from the face there would be 2.5.
  it("is sheared at the face of a column that pulls", () => {
    const nothing = { contact: [], plane: { atCenter: 0, alongX: 0, alongY: 0 } };
    const columns = [-3, 3].map((at) => ({ at, half: 0.5, P: -10, M: 0 }));
    const found = solveCombined({ pressure: nothing, width: 12, length: 4, down: 20 / 48, along: "x", columns, d: 1, N: 0 });
    expect(found.shear).toBeCloseTo(4.1667, 3);
  });

  it("takes the weight of the pad off, which bends nothing where it lies evenly", () => {
    const found = solveCombined({ pressure: contact(24, 6, 344, 0, 0), width: 24, length: 6, down: 1, along: "x", columns: two, d: 1.5, N: 344 });
    expect(found.hogging).toBeCloseTo(200, 6);
  });

  it("closes to nothing at the far end, whatever stands on it", () => {
    const load = fc.double({ min: 10, max: 200, noNaN: true });
    const turn = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(load, load, turn, turn, fc.double({ min: 0, max: 1, noNaN: true }), (P1, P2, M1, M2, down) => {
        const columns = [
          { at: -7, half: 0.75, P: P1, M: M1 },
          { at: 7.5, half: 0.75, P: P2, M: M2 },
        ];
        const N = P1 + P2 + down * 24 * 6;
        const My = -7 * P1 + 7.5 * P2 + M1 + M2;
        const found = solveCombined({ pressure: contact(24, 6, N, 0, My), width: 24, length: 6, down, along: "x", columns, d: 1.5, N });
        expect(found.residual).toBeLessThan(1e-8);
      }),
    );
  });
});

describe("Forces of several columns together", () => {
  it("have moments of their axial forces about the middle", () => {
    const places = placesFromMiddle([{ x: 3, y: 10 }, { x: 9, y: 10 }]);
    expect(places).toEqual([{ x: -3, y: 0 }, { x: 3, y: 0 }]);
    const base = { P: 10, Vx: 1, Vy: 2, Mx: 3, My: 4 };
    expect(forcesTogether([{ ...places[0], base }, { ...places[1], base: { ...base, P: 30 } }])).toEqual({ P: 40, Vx: 2, Vy: 4, Mx: 6, My: 8 + 60 });
    expect(forcesTogether([{ x: 0, y: 2, base }]).Mx).toBe(3 - 20);
  });

  it("know the axis of their line", () => {
    expect(lineAxis([{ x: -1, y: 0 }, { x: 1, y: 0 }])).toBe("x");
    expect(lineAxis([{ x: 0, y: -1 }, { x: 0, y: 1 }])).toBe("y");
    expect(lineAxis([{ x: -1, y: -1 }, { x: 1, y: 1 }])).toBeUndefined();
    expect(lineAxis([{ x: 0, y: 0 }, { x: 0, y: 0 }])).toBeUndefined();
  });
});
