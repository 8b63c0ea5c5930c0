/** The least sideways force of category A: 1 % of the dead load toward each edge (ASCE 7-16 1.4.2, Eq. 1.4-1), weights by hand. */
import { describe, expect, it } from "vitest";
import { combinationsFor } from "../../../server/src/actions/combinations.js";
import type { LoadType } from "../../../server/src/actions/demand.js";
import { actionsOf } from "../../../server/src/actions/index.js";
import { baseOf, pound, psf, recordOf, solved, structureOf, totalOf } from "../given.js";

// 10 psf on 480 sq ft and 44 ft of HSS6x6x3/8 at 27.48 lb/ft.
const weight = 4800 + 44 * 27.48;

describe("the least sideways force", () => {
  const { actions, columns } = solved();

  it.each([
    ["north", 0, 1],
    ["east", 1, 0],
    ["south", 0, -1],
    ["west", -1, 0],
  ])("toward the %s is a hundredth of 10 psf and the columns, through the middle of the roof", (edge, x, y) => {
    const { P, Vx, Vy } = totalOf(actions, `least-sideways/${edge}`);
    expect(Vx / pound).toBeCloseTo(x * 0.01 * weight, 1);
    expect(Vy / pound).toBeCloseTo(y * 0.01 * weight, 1);
    expect(P).toBeCloseTo(0, 9);
  });

  it("reaches the bases whole", () => {
    const sum = columns.reduce((total, column) => total + baseOf(column, "least-sideways/east").Vx, 0);
    expect(sum / pound).toBeCloseTo(0.01 * weight, 1);
  });

  it("weighs the heavy estimate of the roof, and no snow", () => {
    const heavy = solved({ roof: { dead: undefined, "light dead": 8 * psf, "heavy dead": 15 * psf }, site: { "ground snow": 100 * psf, "winter wind": 0.4 } });
    expect(totalOf(heavy.actions, "least-sideways/east").Vx / pound).toBeCloseTo(0.01 * (weight + 5 * 480), 1);
  });

  it("weighs dead loads added to the roof", () => {
    const structure = structureOf();
    const loads = new Map([["tank", { value: recordOf({ type: "dead", down: 2000 * pound }), path: "loads.tank", span: {} }]]);
    const with_ = actionsOf({ ...structure, loads } as never);
    expect(totalOf(with_, "least-sideways/north").Vy / pound).toBeCloseTo(0.01 * (weight + 2000), 1);
  });

  it.each(["B", "C", "D"])("is not there in category %s", (category) => {
    const site = { "seismic design category": category, "short-period acceleration": 0.5, "one-second acceleration": 0.3, "mapped one-second acceleration": 0.4 };
    const shaken = solved({ site, roof: { "earthquake system": "ordinary steel cantilevered columns" } });
    expect(shaken.columns[0].cases.some(({ loadCase }) => loadCase.type === "N")).toBe(false);
  });
});

describe("combinations of the least sideways force (ASCE 7 1.4.1, from memory)", () => {
  const labels = (edition: "ASCE 7-10" | "ASCE 7-16" | "ASCE 7-22", level: "strength" | "allowable", alternative = false, types: readonly LoadType[] = ["D", "Lr", "S", "N"]) =>
    combinationsFor(edition, level, new Set(types), alternative).filter(({ terms }) => terms.some(({ type }) => type === "N"));

  it.each([
    ["ASCE 7-10", "strength", ["1.2D + 1.0N", "1.2D + 1.0N + 0.2S", "0.9D + 1.0N"]],
    ["ASCE 7-22", "strength", ["1.2D + 1.0N", "1.2D + 1.0N + 0.15S", "0.9D + 1.0N"]],
    ["ASCE 7-16", "allowable", ["1.0D + 0.7N", "1.0D + 0.525N + 0.75Lr", "1.0D + 0.525N + 0.75S", "0.6D + 0.7N"]],
    ["ASCE 7-22", "allowable", ["1.0D + 0.7N", "1.0D + 0.525N + 0.75Lr", "1.0D + 0.525N + 0.525S", "0.6D + 0.7N"]],
  ] as const)("%s, %s", (edition, level, expected) => {
    const found = labels(edition, level);
    expect(found.map(({ label }) => label)).toEqual(expected);
    for (const { clause } of found) expect(clause).toBe(`${edition} 1.4.1 (from memory)`);
  });

  it("stand beside the alternative ones as well", () => {
    expect(labels("ASCE 7-22", "allowable", true).map(({ label }) => label)).toEqual(labels("ASCE 7-22", "allowable").map(({ label }) => label));
  });

  it("are none without it", () => {
    expect(labels("ASCE 7-22", "strength", false, ["D", "Lr", "S", "W", "E", "Ev"])).toEqual([]);
  });
});
