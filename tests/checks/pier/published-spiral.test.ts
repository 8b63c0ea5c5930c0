/** A worked spiral column, 21.5 in outside, 18.5 in over the core, 3 ksi concrete, 40 ksi bars of 3/8 in at 2 in. */
import { describe, expect, it } from "vitest";
import { largestGap, leastGap, pitchNeeded, spiralGap, spiralNeeded, spiralRatio } from "../../../server/src/checks/pier/concrete-spiral.js";
import { inch, ksi } from "../given.js";

const near = (found: number, expected: number, part = 0.005) => expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThan(part);

const needed = spiralNeeded.value({ A_g: (Math.PI * (21.5 * inch) ** 2) / 4, D_c: 18.5 * inch, fprime_c: 3 * ksi, f_yt: 40 * ksi });
const steel = { A_sp: 0.11 * inch ** 2, D_c: 18.5 * inch, d_s: 0.375 * inch };

describe("A worked example of a spiral by ACI 318, Eq. 10-6 in its numbering, now 25.7.3.3", () => {
  it("needs 0.0118 of the core", () => near(needed, 0.0118));

  /**
   * The example has 0.0119, one turn as long as the core's own outline, and passes. A turn runs along the middle of the bar, which is 18.5 - 0.375 in
   * across: 0.01165, and that is too little. The shorter turn is taken here.
   */
  it("has 0.01165 by the length of its bar, and fails; 0.0119 by the outline of its core, as printed, would pass", () => {
    const found = spiralRatio.value({ ...steel, s: 2 * inch });
    near(found, 0.01165, 0.001);
    expect(found).toBeLessThan(needed);
    const asPrinted = spiralRatio.value({ ...steel, d_s: 0, s: 2 * inch });
    near(asPrinted, 0.0119);
    expect(asPrinted).toBeGreaterThan(needed);
    const pitch = pitchNeeded.value({ ...steel, rho_r: needed });
    expect(pitch).toBeLessThan(2 * inch);
    near(pitch / inch, 2 * (0.01165 / 0.0118), 0.005);
  });

  it("is 1.625 in clear between turns, within 1 and 3 in", () => {
    const gap = spiralGap.value({ s: 2 * inch, d_s: 0.375 * inch });
    near(gap / inch, 1.625, 1e-9);
    expect(gap).toBeGreaterThan(leastGap.value({}));
    expect(gap).toBeLessThan(largestGap.value({}));
  });
});
