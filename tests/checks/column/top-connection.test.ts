/** Statics: net uplift at the column top against the stated strength; tributary areas and dead load by hand. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { topConnection } from "../../../server/src/checks/column/top-connection.js";
import { columnsOf, fourColumns, kip, psf, solved } from "../../actions/given.js";
import { gatherer, ratioOf, run, sourced, strength, supportOf } from "../given.js";

describe("uplift at the column top", () => {
  it.each([
    [-8, 10, 0.8],
    [-12, 10, 1.2],
    [5, 10, 0],
  ])("axial force of %d kip against %d kip: ratio %f", (P, stated, ratio) => {
    expect(ratioOf(run(topConnection, { strength: stated * kip }, strength({}, { P: P * kip })))).toBeCloseTo(ratio, 9);
  });

  it("takes the forces at the top, not those at the base", () => {
    expect(run(topConnection, { strength: 10 * kip }, strength({ P: -20 * kip }, { P: -1 * kip })).demand / kip).toBeCloseTo(1, 9);
  });

  it("grows with the uplift, and with half the strength the ratio doubles", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.double({ min: 0.1, max: 100, noNaN: true }), (P, stated) => {
        const ratio = (p: number, s: number) => ratioOf(run(topConnection, { strength: s * kip }, strength({}, { P: -p * kip })));
        expect(ratio(P, stated / 2) / ratio(P, stated)).toBeCloseTo(2, 9);
        expect(ratio(P * 1.02, stated) / ratio(P, stated)).toBeCloseTo(1.02, 9);
      }),
    );
  });

  it.each([
    ["none described", {}],
    ["one without a strength", { "top connection": { detail: "four bolts" } }],
  ])("with %s the missing strength is named", (_, column) => {
    const gather = gatherer();
    topConnection.inputs(supportOf({ column }), gather, 0);
    expect(gather.missing).toEqual(["uplift strength of the connection at the column top"]);
  });

  it("does not apply to columns with reactions of their own, nor to foundations alone", () => {
    expect(topConnection.applies(supportOf({ column: {} }))).toBe(true);
    expect(topConnection.applies(supportOf({ foundation: {} }))).toBe(false);
    const byHand = supportOf({ column: {} });
    const fields = { ...byHand.column?.fields, reactions: sourced(new Map([["dead", sourced({})]])) };
    expect(topConnection.applies({ ...byHand, column: { ...byHand.column, fields } } as never)).toBe(false);
  });
});

describe("what tries the column tops", () => {
  const { columns } = solved();
  const edges = columns.map(({ atTop }) => atTop.filter(({ cases }) => cases.some(({ id }) => id.startsWith("wind/edges/"))));

  it("is all of the main frame, and edge pressures beside it", () => {
    columns.forEach(({ strength: frame, atTop }, i) => {
      expect(atTop.slice(0, frame.length)).toEqual(frame);
      expect(edges[i].length).toBe(atTop.length - frame.length);
    });
  });

  it("with 0.9 of the dead load: 10 psf and 1.4 * 35.42 psf on 120 ft², 4,871 lb of net uplift", () => {
    for (const list of edges) {
      const most = Math.min(...list.map(({ top }) => top.P));
      expect(Math.abs(most / kip + 4.871)).toBeLessThan(0.005);
      expect(list.find(({ top }) => top.P === most)?.label).toBe("0.9D + 1.0W: wind on the roof area at the column top, with edge and corner pressures, clear flow");
    }
  });

  it("holds down with the light estimate of the dead load and lifts in both kinds of flow", () => {
    const given = { roof: { dead: undefined, "light dead": 8 * psf, "heavy dead": 14 * psf, "flow below": "either" } };
    const [first] = columnsOf(solved(given).actions);
    // Obstructed flow at 7.5 degrees has 1.7: 1.7 * 35.42 * 120 - 0.9 * 8 * 120.
    expect(Math.abs(Math.min(...first.atTop.map(({ top }) => top.P)) / kip + 6.362)).toBeLessThan(0.007);
  });

  it("is nothing on a column that stands outside the roof", () => {
    const lines = [...fourColumns, { name: "away", places: [{ x: 200, y: 10 }] }];
    const away = solved({ lines }).columns[4].atTop.filter(({ cases }) => cases.some(({ id }) => id.startsWith("wind/edges/")));
    for (const { top } of away) expect(Math.abs(top.P)).toBe(0);
  });
});
