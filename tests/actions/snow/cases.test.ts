/** Snow on a roof and down to its columns: which cases there are, what is missing, and that each arrives whole. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { columnsOf, foot, pound, psf, solved, sourcedFields, totalOf, unknownOf, type Given } from "../given.js";

const pitchedRoof = { shape: "pitched", ridge: "along x", "low edge": undefined, slope: 4 / 12, "mean height": 14 * foot };
const given = (more: Given = {}): Given => ({ ...more, site: { "ground snow": 30 * psf, ...more.site } });
const idsOf = (more: Given = {}): string[] => solved(given(more)).columns[0].cases.flatMap(({ loadCase }) => (loadCase.type === "S" ? [loadCase.id] : []));

const higherRoof = (more: Readonly<Record<string, unknown>> = {}) =>
  sourcedFields({ edge: "north", "height above": 6 * foot, "length upwind": 50 * foot, "sliding length": 0, ...more });

describe("the cases of snow", () => {
  it("are even snow and the least of a low slope on a monoslope roof", () => {
    expect(idsOf()).toEqual(["snow/even", "snow/least"]);
  });

  it("are none where no snow falls", () => {
    expect(idsOf({ site: { "ground snow": 0 } })).toEqual([]);
  });

  it("are unbalanced to both eaves on a pitched roof, without the least above 15 degrees", () => {
    expect(idsOf({ roof: { ...pitchedRoof, "simple rafters": true } })).toEqual(["snow/even", "snow/unbalanced/north", "snow/unbalanced/south"]);
  });

  it("are a drift and sliding snow beside a higher roof", () => {
    const site = { "winter wind": 0.4 };
    expect(idsOf({ site, roof: { "higher roof": higherRoof({ "sliding length": 12 * foot }) } })).toEqual(["snow/even", "snow/least", "snow/drift", "snow/sliding"]);
    expect(idsOf({ site, roof: { "higher roof": higherRoof() } })).toEqual(["snow/even", "snow/least", "snow/drift"]);
  });
});

describe("snow at strength level", () => {
  // ASCE 7-22, ground snow 50 psf: 42.0 psf on the roof, at allowable-stress level 0.7 of it, 29.4 psf, on 480 sq ft.
  const { actions, columns } = solved({ site: { "ground snow": 50 * psf } });

  it("is 42.0 psf flat", () => {
    expect(totalOf(actions, "snow/even").P / (480 * pound)).toBeCloseTo(42, 6);
  });

  it("counts with 0.7 beside allowable stresses", () => {
    const pressing = columns.map((column) => {
      const with_ = column.allowable.find(({ combination }) => combination.label === "1.0D + 0.7S")?.top.P ?? NaN;
      const alone = column.allowable.find(({ combination }) => combination.label === "1.0D")?.top.P ?? NaN;
      return with_ - alone;
    });
    expect(pressing.reduce((a, b) => a + b) / (480 * pound)).toBeCloseTo(29.4, 6);
  });
});

describe("the number of combinations", () => {
  it("grows with the wind cases and not with loads alike all over the roof", () => {
    const of = (site: Given["site"]) => solved({ site }).columns[0];
    for (const [column, snowy] of [[of({ "ground snow": 0 }), 0], [of({ "ground snow": 30 * psf }), 1]] as const) {
      const winds = column.cases.filter(({ loadCase }) => loadCase.type === "W").length;
      // 1.4D; 1.2D with the largest of roof live load and snow, alone and with each wind; each wind with 1.2D, alone and with it, and with 0.9D.
      // The least sideways force toward each edge with 1.2D, alone and with snow, and with 0.9D; with D, alone and with the largest load, and with 0.6D.
      expect(column.strength).toHaveLength(2 + 4 * winds + 4 * (2 + snowy));
      expect(column.allowable).toHaveLength(2 + 3 * winds + 4 * 3);
    }
  });
});

describe("what snow needs", () => {
  it.each<[string, Given, string]>([
    ["the ground snow", { site: { "ground snow": undefined } }, "the ground snow of the site (0 psf where none falls)"],
    ["the risk category", given({ site: { "risk category": undefined } }), "the risk category"],
    ["how rafters span", given({ roof: pitchedRoof }), "whether simple rafters span from ridge to eave (roof, simple rafters), for unbalanced snow"],
    ["the winter wind, for unbalanced snow", given({ roof: { ...pitchedRoof, "simple rafters": false } }), "the winter wind parameter of the site, for drifting snow"],
    ["the winter wind, for a drift", given({ roof: { "higher roof": higherRoof() } }), "the winter wind parameter of the site, for drifting snow"],
    ["the step", given({ site: { "winter wind": 0.4 }, roof: { "higher roof": higherRoof({ "height above": undefined }) } }), "the height of the higher roof above this one"],
    ["whether snow slides", given({ site: { "winter wind": 0.4 }, roof: { "higher roof": higherRoof({ "sliding length": undefined }) } }), "the length of the higher roof that slopes down to this one (sliding length, 0 ft where none does)"],
  ])("%s", (_, of, words) => {
    expect(unknownOf(of)).toBe(`the loads need ${words}`);
  });
});

describe("every case of snow arrives whole", () => {
  it("its weight, and its moments about the middle of the roof, are those of the column tops", () => {
    const length = fc.integer({ min: 16, max: 40 });
    fc.assert(
      fc.property(length, length, fc.integer({ min: 5, max: 80 }), fc.constantFrom("north", "east", "south", "west"), fc.boolean(), (l, w, pg, edge, isPitched) => {
        const lines = [{ name: "a", places: [{ x: 3, y: 3 }, { x: l - 4, y: 3 }, { x: 3, y: w - 3 }, { x: l - 4, y: w - 3 }], fields: { height: 10 * foot } }];
        const roof = {
          ...(isPitched ? { ...pitchedRoof, "simple rafters": false } : { slope: 0.1 }),
          length: l * foot,
          width: w * foot,
          "mean height": 16 * foot,
          "higher roof": higherRoof({ edge, "sliding length": 20 * foot }),
        };
        const of: Given = { lines, roof, site: { "ground snow": pg * psf, "winter wind": 0.5 } };
        const { actions, columns } = solved(of);
        for (const { loadCase } of columns[0].cases.filter((one) => one.loadCase.type === "S" || one.loadCase.type === "Lr")) {
          const total = totalOf(actions, loadCase.id);
          const tops = columns.map((column, i) => ({ ...(column.cases.find((one) => one.loadCase.id === loadCase.id)?.top ?? { P: NaN, Vx: NaN, Vy: NaN }), ...lines[0].places[i] }));
          const scale = total.P;
          expect(Math.abs(tops.reduce((sum, { P }) => sum + P, 0) - total.P) / scale).toBeLessThan(1e-9);
          // Tops stand at different elevations and hold each other sideways, which counts in the moments; pinned tops take none.
          const rise = (y: number) => (isPitched ? (w / 4 - Math.abs(y - w / 2)) * (4 / 12) : (y - w / 2) * 0.1) * foot;
          const Mx = tops.reduce((sum, { P, Vy, y }) => sum - P * (y - w / 2) * foot - Vy * rise(y), 0);
          const My = tops.reduce((sum, { P, Vx, x, y }) => sum + P * (x - l / 2) * foot + Vx * rise(y), 0);
          expect(Math.abs(Mx - total.Mx) / (scale * w * foot)).toBeLessThan(1e-9);
          expect(Math.abs(My - total.My) / (scale * l * foot)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("and the same numbers give the same columns", () => {
    const of = given();
    const { actions } = solved(of);
    expect(columnsOf(actions)).toEqual(solved(of).columns);
  });
});
