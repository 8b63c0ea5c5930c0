import { describe, expect, it } from "vitest";
import { withoutRounding } from "../../server/src/mechanics/noise.js";

describe("Rounding of a solution", () => {
  it("is zero beside the largest number, and what is small and real stays", () => {
    expect(withoutRounding([{ P: 1000, Vx: 1e-11, Vy: -1e-3, Mx: 1e-12, My: -500 }, { P: 1e-12, Vx: 2, Vy: 0, Mx: 0, My: 0 }])).toEqual([
      { P: 1000, Vx: 0, Vy: -1e-3, Mx: 0, My: -500 },
      { P: 0, Vx: 2, Vy: 0, Mx: 0, My: 0 },
    ]);
  });

  it("leaves nothing at all as it is", () => {
    const none = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };
    expect(withoutRounding([none])).toEqual([none]);
    expect(withoutRounding([])).toEqual([]);
  });
});
