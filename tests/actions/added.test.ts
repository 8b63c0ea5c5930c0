/** Loads added to those of the roof: where they go, what they join, and that they arrive whole. Statics by hand. */
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../server/src/actions/index.js";
import { baseOf, columnsOf, entries, foot, kip, pound, psf, sourcedFields, structureOf, totalOf, type Given } from "./given.js";

type Loads = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

const withLoads = (loads: Loads, given: Given = {}) => ({ ...structureOf(given), loads: entries(loads) as never });

const solvedWith = (loads: Loads, given: Given = {}) => {
  const actions = actionsOf(withLoads(loads, given));
  return { actions, columns: columnsOf(actions) };
};

const unknownWith = (loads: Loads, given: Given = {}): string => {
  const of = actionsOf(withLoads(loads, given)).of({ path: "columns.south" });
  return "unknown" in of ? of.unknown : "";
};

const plain = solvedWith({});

const changed = (loads: Loads, given: Given = {}): string[] => {
  const { columns } = solvedWith(loads, given);
  const before = given === undefined ? plain : solvedWith({}, given);
  return columns[0].cases
    .filter(({ loadCase }) => {
      const there = before.columns[0].cases.find((one) => one.loadCase.id === loadCase.id);
      return !there || columns.some((column, i) => Math.abs(baseOf(column, loadCase.id).P - baseOf(before.columns[i], loadCase.id).P) + Math.abs(baseOf(column, loadCase.id).Vy - baseOf(before.columns[i], loadCase.id).Vy) > 1e-6);
    })
    .map(({ loadCase }) => loadCase.id);
};

describe("a load at a column", () => {
  const { columns } = solvedWith({ sign: { type: "dead", column: "south", number: 2, down: 200 * pound } });

  it("presses on that column alone, at its top and its base", () => {
    const more = columns.map((column, i) => (baseOf(column, "dead").P - baseOf(plain.columns[i], "dead").P) / pound);
    expect(more).toEqual([0, 200, 0, 0].map((P) => expect.closeTo(P, 6)));
    expect((columns[1].cases[0].top.P - plain.columns[1].cases[0].top.P) / pound).toBeCloseTo(200, 6);
  });

  it("without a number presses on each column of the line", () => {
    const { columns: each } = solvedWith({ planters: { type: "dead", column: "north", down: 150 * pound } });
    const more = each.map((column, i) => (baseOf(column, "dead").P - baseOf(plain.columns[i], "dead").P) / pound);
    expect(more).toEqual([0, 0, 150, 150].map((P) => expect.closeTo(P, 6)));
  });

  it("that pushes sideways is shared by the roof, whole", () => {
    const { columns: pushed } = solvedWith({ rope: { type: "live", column: "south", number: 1, "push x": 1 * kip } });
    const Vx = pushed.map((column) => baseOf(column, "added/live-load").Vx / kip);
    expect(Vx.reduce((a, b) => a + b)).toBeCloseTo(1, 9);
    expect(Math.min(...Vx)).toBeGreaterThan(0.05);
  });
});

describe("a load on the roof", () => {
  it("acts at its middle where no place is stated", () => {
    const { actions } = solvedWith({ hoist: { type: "live", down: 2 * kip, up: 0.5 * kip } });
    expect(totalOf(actions, "added/live-load")).toMatchObject({ P: expect.closeTo(1.5 * kip, 3), Mx: expect.closeTo(0, 3), My: expect.closeTo(0, 3) });
  });

  it("acts at its place: 2 kip at 5 ft east of the middle turn the roof by 10 kip-ft", () => {
    const { actions } = solvedWith({ hoist: { type: "live", place: { x: 17 * foot, y: 10 * foot }, down: 2 * kip } });
    expect(totalOf(actions, "added/live-load").My / (kip * foot)).toBeCloseTo(10, 6);
  });

  it("as a pressure covers all of it, down or up", () => {
    expect(totalOf(solvedWith({ gravel: { type: "dead", pressure: 3 * psf } }).actions, "dead").P / pound).toBeCloseTo(13 * 480, 5);
    expect(totalOf(solvedWith({ suction: { type: "wind", pressure: -3 * psf } }).actions, "added/suction").P / pound).toBeCloseTo(-3 * 480, 5);
  });
});

describe("a load goes with the loads of its type", () => {
  const sideways = ["north", "east", "south", "west"].map((edge) => `least-sideways/${edge}`);

  it.each<[string, Loads, Given, string[]]>([
    ["dead load, and the hundredth of it sideways", { a: { type: "dead", down: kip } }, {}, ["dead", ...sideways]],
    ["dead load, in both estimates", { a: { type: "dead", down: kip } }, { roof: { dead: undefined, "light dead": 8 * psf, "heavy dead": 12 * psf } }, ["dead/light", "dead/heavy", ...sideways]],
    ["roof live load", { a: { type: "roof live", down: kip } }, {}, ["roof-live"]],
    ["snow, in each of its cases", { a: { type: "snow", down: kip } }, { site: { "ground snow": 20 * psf } }, ["snow/even", "snow/least"]],
    ["snow where there is none", { a: { type: "snow", down: kip } }, {}, ["added/snow"]],
    ["rain", { a: { type: "rain", pressure: 10 * psf } }, {}, ["added/rain"]],
    ["wind from an edge", { a: { type: "wind", from: "south", "push y": kip } }, {}, ["wind/south/A/clear", "wind/south/B/clear", "wind/south/minimum"]],
    ["wind from no edge", { banner: { type: "wind", "push y": kip } }, {}, ["added/banner"]],
    ["an earthquake, in either sense", { shelf: { type: "earthquake", "push y": kip } }, {}, ["added/shelf", "added/shelf/reversed"]],
  ])("%s", (_, loads, given, ids) => {
    expect(changed(loads, given)).toEqual(ids);
  });

  it("and an earthquake shakes the dead load that was added", () => {
    const site = { "seismic design category": "B", "short-period acceleration": 0.5, "one-second acceleration": 0.3 };
    const roof = { "earthquake system": "ordinary steel cantilevered columns" };
    const before = solvedWith({}, { site, roof });
    const after = solvedWith({ a: { type: "dead", column: "south", number: 1, down: 2 * kip } }, { site, roof });
    // 0.5 / 1.25 of 2 kip with the overstrength of 1.25, and 0.2 * 0.5 of it up and down.
    expect((totalOf(after.actions, "earthquake/east").Vx - totalOf(before.actions, "earthquake/east").Vx) / kip).toBeCloseTo(1, 9);
    expect((baseOf(after.columns[0], "earthquake/vertical").P - baseOf(before.columns[0], "earthquake/vertical").P) / kip).toBeCloseTo(0.2, 9);
  });

  it("and is no longer left out where another load is the same all over the roof", () => {
    const { columns } = solvedWith({ a: { type: "snow", column: "south", number: 1, down: kip } }, { site: { "ground snow": 5 * psf } });
    const labels = columns[0].strength.map(({ label }) => label);
    expect(labels).toContain("1.2D + 1.0S: even snow");
    expect(labels).toContain("1.2D + 1.6Lr: roof live load");
  });
});

describe("an added load that cannot be placed says why", () => {
  it.each<[string, Loads, RegExp]>([
    ["no type", { a: { down: kip } }, /the type of the load a/u],
    ["no force", { a: { type: "dead" } }, /a force or a pressure of the load a/u],
    ["a line that is not there", { a: { type: "dead", column: "east", down: kip } }, /acts at east, which is not among the columns under the roof/u],
    ["a number beyond the line", { a: { type: "dead", column: "south", number: 3, down: kip } }, /acts at column 3 of south, which has 2/u],
    ["a number without a line", { a: { type: "dead", number: 1, down: kip } }, /names a column's number and no line/u],
    ["a pressure at a column", { a: { type: "dead", column: "south", pressure: psf } }, /has no place and no pressure on the roof/u],
  ])("%s", (_, loads, words) => {
    expect(unknownWith(loads)).toMatch(words);
  });
});

describe("alternative basic combinations", () => {
  const asked = (): Given => ({});
  const of = (alternative: boolean) => {
    const structure = structureOf(asked());
    const codes = { ...structure.codes, ...sourcedFields({ "alternative combinations": alternative }) } as never;
    return columnsOf(actionsOf({ ...structure, codes }))[0];
  };

  it("are taken where asked for, for the soil alone", () => {
    const labels = (alternative: boolean) => [...new Set(of(alternative).allowable.map(({ combination }) => combination.label))];
    expect(labels(true)).toContain("0.667D + 0.6W");
    expect(labels(false)).toContain("0.6D + 0.6W");
    expect(labels(true)).not.toContain("0.6D + 0.6W");
    expect(of(true).strength.map(({ label }) => label)).toEqual(of(false).strength.map(({ label }) => label));
  });
});
