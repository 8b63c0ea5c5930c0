/** What stands in the way is named; what is not touched is not made again. */
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../server/src/actions/index.js";
import type { KindName } from "../../server/src/units/kinds.js";
import { kinds } from "../../server/src/units/kinds.js";
import { baseOf, columnsOf, entries, foot, fourColumns, kip, psf, solved, structureOf, unknownOf } from "./given.js";

const show = (value: number, kind: KindName): string => `${(value / kinds[kind].US.factor).toFixed(1)} ${kinds[kind].US.unit}`;

describe("missing fields", () => {
  it.each([
    ["wind speed", { site: { "wind speed": undefined } }, "the wind speed of the site"],
    ["exposure", { site: { exposure: undefined } }, "the exposure of the site"],
    ["dead load", { roof: { dead: undefined } }, "the dead load of the roof"],
    ["slope", { roof: { slope: undefined } }, "the slope of the roof"],
    ["low edge", { roof: { "low edge": undefined } }, "the low edge of the roof"],
    ["mean height", { roof: { "mean height": undefined } }, "the mean height of the roof"],
    ["shape", { roof: { shape: undefined } }, "the shape of the roof"],
    ["flow below", { roof: { "flow below": undefined } }, "the flow below the roof (clear, obstructed or either)"],
  ])("%s", (_, given, words) => {
    expect(unknownOf(given)).toBe(`the loads need ${words}`);
  });

  it.each([
    ["pitched", "ridge"],
    ["troughed", "valley"],
  ])("a %s roof needs its %s", (shape, line) => {
    expect(unknownOf({ roof: { shape, "low edge": undefined } })).toBe(`the loads need the way the ${line} of the roof runs (${line}: along x or along y)`);
  });

  it.each([
    [{ shape: "pitched", ridge: "along x" }, /pitched and states a low edge.*take out `low edge` and state `ridge`/u],
    [{ shape: "troughed", "low edge": undefined, valley: "along x", ridge: "along x" }, /troughed and states a ridge/u],
    [{ ridge: "along y" }, /monoslope and states a ridge.*state `low edge`/u],
  ])("a field of another shape is said: %j", (roof, words) => {
    expect(unknownOf({ roof })).toMatch(words);
  });

  it("are all named at once", () => {
    expect(unknownOf({ site: { "wind speed": undefined, exposure: undefined }, roof: { dead: undefined } })).toBe(
      "the loads need the wind speed of the site, the exposure of the site and the dead load of the roof",
    );
  });

  it.each([
    ["section", { section: undefined }, "the section of column south"],
    ["height", { height: undefined }, "the height of column south"],
    ["place", { at: undefined }, "the place of column south (at, or line of with from and to)"],
  ])("a column without its %s stops every column under the roof", (_, fields, words) => {
    const [south, north] = fourColumns;
    const lines = [{ ...south, fields: { ...south.fields, ...fields } }, north];
    expect(unknownOf({ lines }, "north")).toBe(`the loads need ${words}`);
  });

  it("a support that is not in the structure has no loads", () => {
    expect(actionsOf(structureOf()).of({ path: "columns.elsewhere" })).toHaveProperty("unknown");
  });
});

describe("outside the range of the figures", () => {
  const long = { roof: { length: 60 * foot, "mean height": 12 * foot } };

  it("nothing is known, and the words name edge, ratio and figure", () => {
    expect(unknownOf(long)).toBe(
      "the wind loads are outside the range of the method (wind from the east and west: mean height over plan length along the wind is 0.20, outside 0.25 to 1.0 of ASCE 7-22 Figure 27.3-7; wind from the north and south is within it). State reactions that were found another way",
    );
  });

  it.each([
    ["a roof too narrow one way", { roof: { width: 10 * foot, "mean height": 12 * foot } }, [{ x: 3, y: 2 }, { x: 21, y: 2 }, { x: 3, y: 8 }, { x: 21, y: 8 }], /wind from the north and south: mean height over plan length along the wind is 1\.20, outside 0\.25 to 1\.0 of ASCE 7-22 Figure 27\.3-4; wind from the east and west is within it/u],
    ["a steep roof", { roof: { slope: 1.1 } }, [{ x: 3, y: 3 }, { x: 21, y: 3 }, { x: 3, y: 17 }], /wind from the north and south: the roof angle of 47\.7.*; wind from the east and west: the roof angle/u],
  ])("%s names only the directions concerned", (_, given, places, words) => {
    expect(unknownOf({ ...given, lines: [{ name: "south", places }] })).toMatch(words);
  });

  it("a nearly flat long roof is within the range down to h/L = 0.05", () => {
    const lines = [{ name: "south", places: [{ x: 3, y: 3 }, { x: 97, y: 3 }, { x: 3, y: 17 }, { x: 97, y: 17 }] }];
    expect(unknownOf({ roof: { length: 100 * foot, slope: 0.08 }, lines })).toBe("");
    expect(unknownOf({ roof: { length: 100 * foot, slope: 0.09 }, lines })).toMatch(/wind from the east and west: .* 0\.12, outside 0\.25/u);
  });

  it("the nearest result is given as information, one for each edge", () => {
    const { information } = actionsOf(structureOf(long));
    expect(information.map(({ message }) => message(show))).toEqual([
      expect.stringMatching(/^Wind from the east, for information only, .* takes up to \d+\.\d kip up, \d+\.\d kip down and \d+\.\d kip sideways\.$/u),
      expect.stringMatching(/^Wind from the west/u),
    ]);
    // Case A: 0.8, 0.6 and 0.3 over bands of 12, 12 and 36 ft, times 20 ft, times 49.03 psf, 0.85 and 0.85: 19.6 kip up.
    expect(information[0].message(show)).toContain("up to 19.6 kip up");
  });
});

describe("columns with reactions of their own", () => {
  const byHand = { name: "porch", places: [{ x: 30, y: 3 }], fields: { reactions: entries({ dead: { down: 4 * kip } }) } };

  it("are not under the roof", () => {
    const alone = solved().columns;
    const beside = columnsOf(actionsOf(structureOf({ lines: [...fourColumns, byHand] })));
    expect(beside.map(({ cases }) => cases)).toEqual(alone.map(({ cases }) => cases));
  });

  it("are known although the roof is not", () => {
    const of = actionsOf(structureOf({ lines: [...fourColumns, byHand], roof: { dead: undefined } })).of({ path: "columns.porch" });
    expect(of).toHaveLength(1);
  });
});

describe("an equal input gives the same objects", () => {
  it("for the roof, although the fields were read again", () => {
    const first = actionsOf(structureOf());
    const again = actionsOf(structureOf(), first);
    for (const { name } of fourColumns) expect(again.of({ path: `columns.${name}` })).toBe(first.of({ path: `columns.${name}` }));
  });

  it("for stated reactions whose entry was not read again", () => {
    const byHand = { name: "porch", places: [{ x: 30, y: 3 }], fields: { reactions: entries({ dead: { down: 4 * kip } }) } };
    const structure = structureOf({ lines: [...fourColumns, byHand] });
    const first = actionsOf(structure);
    const again = actionsOf({ ...structureOf({ roof: { dead: 12 * psf } }), supports: structure.supports }, first);
    expect(again.of({ path: "columns.porch" })).toBe(first.of({ path: "columns.porch" }));
    expect(again.of({ path: "columns.south" })).not.toBe(first.of({ path: "columns.south" }));
  });

  it("and another input gives another answer", () => {
    const first = actionsOf(structureOf());
    const again = actionsOf(structureOf({ roof: { "mean height": 16 * foot } }), first);
    expect(columnsOf(again)).toEqual(columnsOf(actionsOf(structureOf({ roof: { "mean height": 16 * foot } }))));
  });
});

describe("derivations", () => {
  const { actions, columns } = solved();
  const derivations = actions.derivations();

  it("show the case that ran: the spans' share and that of the plate, the last step of each, are what the columns take", () => {
    for (const { loadCase } of columns[0].cases.filter((one) => one.loadCase.type === "W")) {
      const derivation = derivations.find(({ title }) => title === loadCase.title);
      const routines = (derivation?.steps ?? []).filter((step) => step.type === "routine");
      const bySpans = routines.find(({ routine }) => routine.id === "mechanics.roof-spans");
      const asPlate = derivation?.steps.at(-1);
      if (!bySpans || asPlate?.type !== "routine") throw new Error(`${loadCase.title} does not end in the share of each column`);
      const shown = (step: typeof bySpans, i: number): number => step.found.find(({ symbol }) => symbol === `P_${i + 1}`)?.value ?? NaN;
      columns.forEach((column, i) => {
        expect(shown(bySpans, i) + shown(asPlate, i)).toBeCloseTo(baseOf(column, loadCase.id).P, 6);
      });
    }
  });

  it("begin with the velocity pressure and its factors", () => {
    const symbols = derivations[0].steps.flatMap((step) => (step.type === "formula" ? [step.formula.result] : []));
    expect(symbols).toEqual(["K_z", "K_e", "q_h"]);
  });

  it("name a source each", () => {
    for (const { source } of derivations) expect(source.length).toBeGreaterThan(5);
  });

  it("are none where the roof's loads are not known", () => {
    expect(actionsOf(structureOf({ roof: { dead: undefined } })).derivations()).toEqual([]);
  });
});
