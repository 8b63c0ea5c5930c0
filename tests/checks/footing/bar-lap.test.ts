import { describe, expect, it } from "vitest";
import { footingBarLap } from "../../../server/src/checks/footing/bar-lap.js";
import { inch } from "../given.js";
import { strengthOf, weigh } from "../ground.js";
import { mats, pad } from "./pad.js";

const root = Math.sqrt(4000);

describe("The lap of the bars of a pad", () => {
  it.each([
    // 1.3 x 60/(25 sqrt(4000)) d_b of small bars, 20 of larger ones; 1.3 more at the top of a thick pad.
    ["no. 5 at the bottom", { "bottom bars": mats(5, 9) }, ((1.3 * 60000) / (25 * root)) * 0.625],
    ["no. 8 at the bottom", { "bottom bars": mats(8, 9) }, (1.3 * 60000) / (20 * root)],
    ["no. 5 at both, 18 in thick", { "top bars": mats(5, 9) }, ((1.3 * 1.3 * 60000) / (25 * root)) * 0.625],
    ["no. 5 at both, 12 in thick", { "top bars": mats(5, 9), thickness: 12 * inch }, ((1.3 * 60000) / (25 * root)) * 0.625],
    ["no. 4 of strong concrete at least", { "bottom bars": mats(4, 9), concrete: 70e6, "bar grade": "Gr 60" }, Math.max(12, ((1.3 * 60000) / (25 * 100)) * 0.5)],
  ])("%s", (_, foundation, lap) => {
    const found = weigh(footingBarLap, pad({ foundation: { "bar lap": 30 * inch, ...foundation } }), strengthOf({}));
    expect(found.demand / inch).toBeCloseTo(lap, 2);
    expect(found.capacity / inch).toBeCloseTo(30, 9);
  });

  it("is asked about where it is stated", () => {
    expect(footingBarLap.applies(pad())).toBe(false);
    expect(footingBarLap.applies(pad({ foundation: { "bar lap": 30 * inch } }))).toBe(true);
  });
});
