/**
 * Resultants of ASCE 7-22 Figure 27.3-4 in closed form: F_v = q G (C_NW + C_NL) L / 2, M = q G (C_NW - C_NL) L^2 / 8 about the middle,
 * H = |F_v| tan(theta) downwind. Given: 150 mph, exposure C, tabulated K_z 0.85, so q K_d = 41.616 psf; 7.5 degrees, L = 20 ft, h = 12 ft,
 * clear flow. Numbers per foot of roof, computed by hand from the figure.
 */
import { describe, expect, it } from "vitest";
import type { Edge } from "../../../server/src/actions/demand.js";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { stripLoads } from "../../../server/src/actions/way-down.js";
import { directionOf, windCases, windPatches, type WindOnRoof } from "../../../server/src/actions/wind/free-roof.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { allEdges, foot, pound, psf } from "../given.js";

const slope = Math.tan((7.5 * Math.PI) / 180);
const q_h = (41.616 / 0.85) * psf;

/** A strip of the roof one foot wide, 20 ft along the slope. */
const strip: RoofPlane = { shape: "monoslope", slope, length: foot, width: 20 * foot, lowEdge: "south", meanHeight: 12 * foot };

const caseOf = (roof: RoofPlane, id: string): WindOnRoof => {
  const found = windCases(roof, "either", allEdges).find(({ loadCase }) => loadCase.id === id);
  if (!found) throw new Error(id);
  return found;
};

const patchesOf = (roof: RoofPlane, id: string) => {
  const wind = caseOf(roof, id);
  return windPatches(roof, wind, directionOf("ASCE 7-22", roof, wind.from), q_h, plainCalc);
};

describe("wind along the slope", () => {
  it.each([
    ["onto the high edge, case A", "wind/north/A/clear", -21.22, -35.37, -566.0, 707.5, 74.5],
    ["onto the high edge, case B", "wind/north/B/clear", -49.52, 0, -495.2, -2476, 65.2],
    ["onto the low edge, case A", "wind/south/A/clear", 31.84, 53.06, 849.0, -1061, 111.8],
    ["onto the low edge, case B", "wind/south/B/clear", 56.6, 10.61, 672.1, 2299, 88.5],
  ])("%s", (_, id, windward, leeward, F_v, M, H) => {
    const patches = patchesOf(strip, id);
    const loads = stripLoads(strip, patches, plainCalc);
    const downwind = id.includes("south") ? 1 : -1;
    const within = (value: number, expected: number, tolerance: number) => expect(Math.abs(value - expected)).toBeLessThan(tolerance);
    within(patches[0].pressure / psf, windward, 0.006);
    within(patches[1].pressure / psf, leeward, 0.006);
    within(loads.reduce((sum, load) => sum - load.Fz, 0) / pound, F_v, 0.1);
    // Moment of the vertical forces about the middle, positive where the windward half is pressed down.
    within(loads.reduce((sum, load) => sum + load.Fz * (load.y - 10 * foot) * downwind, 0) / (pound * foot), M, 0.6);
    within((loads.reduce((sum, load) => sum + load.Fy, 0) * downwind) / pound, H, 0.06);
  });

  // 15 degrees; q G K_d is 35.374 psf. F_v = 353.74 (C_NW + C_NL), M = 1768.7 (C_NW - C_NL); downwind push: pitched
  // 353.74 tan 15 (C_NW - C_NL), troughed the opposite.
  it.each([
    ["pitched", "A", 1.1, -0.4, 247.6, 2653.0, 142.2],
    ["pitched", "B", 0.1, -1.1, -353.7, 2122.4, 113.7],
    ["troughed", "A", -1.1, 0.4, -247.6, -2653.0, 142.2],
    ["troughed", "B", 0.1, 1.1, 424.5, -1768.7, 94.78],
  ] as const)("on a %s roof of 15 degrees, case %s", (shape, pressureCase, windward, leeward, F_v, M, H) => {
    const halves: RoofPlane = { shape, slope: Math.tan(Math.PI / 12), length: foot, width: 20 * foot, ridge: "x", meanHeight: 12 * foot };
    for (const [from, downwind] of [["south", 1], ["north", -1]] as const) {
      const patches = patchesOf(halves, `wind/${from}/${pressureCase}/clear`);
      const loads = stripLoads(halves, patches, plainCalc);
      const within = (value: number, expected: number) => expect(Math.abs(value - expected)).toBeLessThan(5e-4 * Math.abs(expected));
      within(patches[0].pressure / psf, windward * 35.374);
      within(patches[1].pressure / psf, leeward * 35.374);
      within(loads.reduce((sum, load) => sum - load.Fz, 0) / pound, F_v);
      within(loads.reduce((sum, load) => sum + load.Fz * (load.y - 10 * foot) * downwind, 0) / (pound * foot), M);
      within((loads.reduce((sum, load) => sum + load.Fy, 0) * downwind) / pound, H);
    }
  });

  it("along a ridge the bands are cut at the ridge, and the pushes of both halves cancel", () => {
    const halves: RoofPlane = { shape: "pitched", slope: 0.5, length: 40 * foot, width: 20 * foot, ridge: "x", meanHeight: 12 * foot };
    const loads = stripLoads(halves, patchesOf(halves, "wind/west/A/clear"), plainCalc);
    expect(loads).toHaveLength(6);
    expect(loads.reduce((sum, load) => sum + load.Fy, 0)).toBeCloseTo(0, 6);
    for (const load of loads) expect(load.z / foot).toBeCloseTo(12, 9);
  });

  it.each([
    ["pitched", "south", "eave"],
    ["pitched", "west", "gable end"],
    ["troughed", "south", "high edge"],
    ["troughed", "west", "side edge"],
  ] as const)("on a %s roof with its line along x the wind from the %s meets the %s", (shape, from, words) => {
    const halves: RoofPlane = { shape, slope: 0.5, length: 40 * foot, width: 20 * foot, ridge: "x", meanHeight: 12 * foot };
    expect(windCases(halves, "clear", [from])[0].loadCase.title).toContain(`onto the ${words}, case A`);
  });

  it.each([
    ["north", "high edge"],
    ["south", "low edge"],
    ["east", "side edge"],
    ["west", "side edge"],
  ] as const)("from the %s the title names the %s", (from, sense) => {
    for (const { loadCase } of windCases(strip, "clear", [from])) expect(loadCase.title).toContain(`wind from the ${from}, onto the ${sense}, case`);
  });

  it("names flow and case in words", () => {
    expect(caseOf(strip, "wind/south/B/clear").loadCase.title).toBe("wind from the south, onto the low edge, case B, clear flow");
  });

  it.each([
    ["clear", 8],
    ["obstructed", 8],
    ["either", 16],
  ] as const)("flow below %s gives %d cases", (flow, count) => {
    expect(windCases(strip, flow, allEdges)).toHaveLength(count);
  });
});

describe("strips lie from the windward edge on", () => {
  const roof: RoofPlane = { shape: "monoslope", slope: 0.2, length: 40 * foot, width: 30 * foot, lowEdge: "west", meanHeight: 12 * foot };
  it.each<readonly [Edge, "x1" | "x2" | "y1" | "y2", number]>([
    ["west", "x1", 0],
    ["east", "x2", 40],
    ["south", "y1", 0],
    ["north", "y2", 30],
  ])("wind from the %s", (from, side, at) => {
    const patches = patchesOf(roof, `wind/${from}/A/clear`);
    expect(patches[0][side] / foot).toBeCloseTo(at, 9);
    const area = patches.reduce((sum, { x1, x2, y1, y2 }) => sum + (x2 - x1) * (y2 - y1), 0);
    expect(area / foot ** 2).toBeCloseTo(1200, 6);
  });
});
