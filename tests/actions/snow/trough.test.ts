/** Snow gathered in a trough (ASCE 7-16 7.6.3, from memory), by hand: 24 ft by 32 ft, valley along x, ground snow 30 psf, p_f = 25.2 psf. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatheredSnow } from "../../../server/src/actions/snow/trough.js";
import type { TwoHalves } from "../../../server/src/actions/roof-plane.js";
import type { SnowSite } from "../../../server/src/actions/snow/editions.js";
import { foot, pound, psf, solved, totalOf, type Line } from "../given.js";

const site: SnowSite = { standard: "ASCE 7-16", groundSnow: 30 * psf, terrain: "C", roofExposure: "partially exposed", riskCategory: "II" };
const roofOf = (more: Partial<TwoHalves> = {}): TwoHalves => ({ shape: "troughed", slope: 2 / 12, length: 24 * foot, width: 32 * foot, meanHeight: 12 * foot, ridge: "x", ...more });

const totals = (roof: TwoHalves, of: SnowSite = site) => {
  const loads = gatheredSnow(roof, of, plainCalc);
  const weight = loads.reduce((sum, { Fz }) => sum - Fz, 0) / pound;
  return { loads, weight };
};

describe("snow gathered in a trough", () => {
  it.each<[string, Partial<TwoHalves>, Partial<SnowSite>, number]>([
    ["2 in 12: 12.6 psf at the edges, 50.4 psf in the valley, 31.5 psf on 768 sq ft", {}, {}, 24192],
    ["1/2 in 12: level with the edges at 12.6 + 17.9 x 16/24 = 24.53 psf, 18.57 psf on average", { slope: 0.5 / 12 }, {}, 14260],
    ["fully exposed: p_f 22.68 psf, 2 p_f/0.9 = 50.4 psf, (11.34 + 50.4)/2 = 30.87 psf", {}, { roofExposure: "fully exposed" }, 23708],
    ["ASCE 7-22: p_f without importance, in risk category IV as well", {}, { standard: "ASCE 7-22", riskCategory: "IV" }, 24192],
    ["ASCE 7-16, risk category IV: 1.2 times p_f of 25.2", {}, { riskCategory: "IV" }, 1.2 * 24192],
  ])("%s", (_, roof, of, expected) => {
    expect(totals(roofOf(roof), { ...site, ...of }).weight / expected).toBeCloseTo(1, 3);
  });

  it("of each half lies 6.4 ft from the valley: 16/3 x (50.4 + 25.2)/63", () => {
    for (const { y } of totals(roofOf()).loads) expect(Math.abs(y / foot - 16)).toBeCloseTo(6.4, 3);
    for (const { x } of totals(roofOf({ ridge: "y", length: 32 * foot, width: 24 * foot })).loads) expect(Math.abs(x / foot - 16)).toBeCloseTo(6.4, 3);
  });

  it("stays on the roof, and is never more than twice the even snow over its exposure factor", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.04, max: 1, noNaN: true }), fc.integer({ min: 8, max: 60 }), fc.integer({ min: 1, max: 80 }), (slope, width, pg) => {
        const { loads, weight } = totals(roofOf({ slope, width: width * foot }), { ...site, groundSnow: pg * psf });
        const flat = 0.84 * pg * 24 * width;
        expect(weight).toBeGreaterThan(0.5 * flat * 0.999);
        expect(weight).toBeLessThan(1.25 * flat * 1.001);
        for (const { over } of loads) {
          expect(over!.y1).toBeGreaterThanOrEqual(-1e-9);
          expect(over!.y2).toBeLessThanOrEqual(width * foot * (1 + 1e-9));
        }
      }),
    );
  });

  const lines: readonly Line[] = [3, 29].map((y, i) => ({ name: i ? "north" : "south", places: [{ x: 3, y }, { x: 21, y }], fields: { height: 11 * foot } }));
  const under = (slope: number) => solved({ standard: "ASCE 7-16", lines, site: { "ground snow": 30 * psf }, roof: { shape: "troughed", valley: "along x", "low edge": undefined, slope, width: 32 * foot, "mean height": 12 * foot } });

  it("is a case of its own on a roof, and arrives at the columns whole", () => {
    const { actions, columns } = under(2 / 12);
    expect(totalOf(actions, "snow/valley").P / pound / 24192).toBeCloseTo(1, 3);
    const down = columns.map(({ cases }) => (cases.find(({ loadCase }) => loadCase.id === "snow/valley")?.base.P ?? 0) / pound);
    for (const one of down) expect(one / 6048).toBeCloseTo(1, 3);
  });

  it("is none below 3/8 in to the foot", () => {
    const ids = under(0.3 / 12).columns[0].cases.map(({ loadCase }) => loadCase.id);
    expect(ids).toContain("snow/even");
    expect(ids).not.toContain("snow/valley");
  });
});
