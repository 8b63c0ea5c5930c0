/** Rain on a roof that can hold water: 5.2 psf for each inch, ASCE 7-10 and 7-16 8.3, ASCE 7-22 8.2 with the ponding head. */
import { describe, expect, it } from "vitest";
import { rainOn } from "../../../server/src/actions/gravity/rain.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { pound, psf, solved, sourcedFields, totalOf, unknownOf } from "../given.js";

const inch = 0.0254;
const water = (ds: number, dh: number, dp?: number) => ({ static: ds * inch, hydraulic: dh * inch, ...(dp === undefined ? {} : { ponding: dp * inch }) });

describe("rain load", () => {
  it.each([
    ["ASCE 7-10", water(2, 1), 15.6],
    ["ASCE 7-16", water(3, 1.5), 23.4],
    ["ASCE 7-22", water(3, 1.5, 0.5), 26],
    ["ASCE 7-22", water(2, 0, 0), 10.4],
  ] as const)("%s, %o: %f psf", (standard, held, load) => {
    expect(rainOn(standard, held, plainCalc) / psf).toBeCloseTo(load, 9);
  });

  const holds = (dp?: number) => sourcedFields({ "static head": 2 * inch, "hydraulic head": 1 * inch, "ponding head": dp === undefined ? undefined : dp * inch });

  it("stands alike all over the roof: 18.2 psf on 480 sq ft", () => {
    const { actions, columns } = solved({ roof: { "holds water": holds(0.5) } });
    expect(totalOf(actions, "rain").P / pound).toBeCloseTo(5.2 * 3.5 * 480, 5);
    expect(columns[0].allowable.map(({ combination }) => combination.label)).toContain("1.0D + 1.0Lr");
  });

  it("is none where the roof holds no water", () => {
    expect(solved().columns[0].cases.map(({ loadCase }) => loadCase.type)).not.toContain("R");
  });

  it("is not known in ASCE 7-22 without the ponding head", () => {
    expect(unknownOf({ roof: { "holds water": holds() } })).toBe("the loads need the ponding head of the water the roof holds");
  });
});
