/** Reactions stated by hand: sign convention, combinations of ASCE 7-22 2.3.1 and 2.4.1, levels. Sums by hand. */
import { describe, expect, it } from "vitest";
import { typeOfName } from "../../server/src/actions/by-hand.js";
import type { ColumnActions, Demand } from "../../server/src/actions/demand.js";
import { actionsOf, type LoadedStructure } from "../../server/src/actions/index.js";
import { entries, foot, kip, kipFoot, structureOf } from "./given.js";

type Entry = Readonly<Record<string, unknown>>;

const standing = (stated: { reactions?: Readonly<Record<string, Entry>>; combined?: Readonly<Record<string, Entry>> }, height?: number): LoadedStructure =>
  structureOf({
    noRoof: true,
    lines: [
      {
        name: "C1",
        places: [{ x: 0, y: 0 }],
        fields: { height, reactions: stated.reactions && entries(stated.reactions), combined: stated.combined && entries(stated.combined) },
      },
    ],
  });

const reach = (structure: LoadedStructure): ColumnActions => {
  const of = actionsOf(structure).of({ path: "columns.C1" });
  if ("unknown" in of) throw new Error(of.unknown);
  return of[0];
};

const unknown = (structure: LoadedStructure): string => {
  const of = actionsOf(structure).of({ path: "columns.C1" });
  return "unknown" in of ? of.unknown : "";
};

const byLabel = (demands: readonly Demand[], label: string): Demand => {
  const found = demands.find((demand) => demand.label === label);
  if (!found) throw new Error(`no ${label} among ${demands.map((demand) => demand.label).join(" | ")}`);
  return found;
};

describe("the name of a reaction says its load type", () => {
  it.each([
    ["dead", "D"],
    ["Dead load", "D"],
    ["roof live", "Lr"],
    ["live", "L"],
    ["snow unbalanced", "S"],
    ["rain", "R"],
    ["wind 1", "W"],
    ["wind-2", "W"],
    ["earthquake x", "E"],
    ["windward", undefined],
    ["lateral", undefined],
  ])("%s", (name, type) => {
    expect(typeOfName(name)).toBe(type);
  });
});

describe("unfactored reactions", () => {
  const reactions = {
    dead: { down: 4 * kip },
    "wind 1": { up: 10 * kip, "shear x": 2 * kip, "moment y": 20 * kipFoot },
    "wind 2": { down: 6 * kip, "shear y": -1 * kip, "moment x": 10 * kipFoot },
  };
  const actions = reach(standing({ reactions }, 10 * foot));

  it.each([
    // 0.9 * 4 - 10, 1.2 * 4 + 6, 0.6 * 4 - 0.6 * 10, 4 + 0.6 * 6
    ["strength", "0.9D + 1.0W: wind 1", -6.4],
    ["strength", "1.2D + 1.0W: wind 2", 10.8],
    ["allowable", "0.6D + 0.6W: wind 1", -3.6],
    ["allowable", "1.0D + 0.6W: wind 2", 7.6],
  ] as const)("%s, %s", (level, label, P) => {
    const demand = byLabel(actions[level], label);
    expect(demand.base.P / kip).toBeCloseTo(P, 9);
    expect(demand.level).toBe(level);
  });

  it("keep every wind entry as its own case", () => {
    expect(actions.cases.map(({ loadCase }) => loadCase.id)).toEqual(["dead", "wind-1", "wind-2"]);
    expect(actions.strength.every(({ cases }) => cases.filter(({ type }) => type === "W").length < 2)).toBe(true);
  });

  it("go up the column by statics: 20 kip-ft at the base less 2 kip over 10 ft is nothing at the top", () => {
    const wind = actions.cases[1];
    expect(wind.top.My).toBeCloseTo(0, 6);
    expect(actions.cases[2].top.Mx / kipFoot).toBeCloseTo(0, 9);
    expect(wind.base.My / kipFoot).toBeCloseTo(20, 9);
  });

  it("stand at the top as stated where the height is not known", () => {
    const [, wind] = reach(standing({ reactions })).cases;
    expect(wind.top).toEqual(wind.base);
  });

  it("of an earthquake act in either sense", () => {
    const { cases } = reach(standing({ reactions: { dead: { down: kip }, "earthquake x": { up: 3 * kip, "shear x": 2 * kip, "moment y": 5 * kipFoot } } }));
    expect(cases[2].loadCase.title).toBe("earthquake x, in the other sense");
    expect([cases[2].base.P / kip, cases[2].base.Vx / kip, cases[2].base.My / kipFoot]).toEqual([3, -2, -5].map((value) => expect.closeTo(value, 9)));
  });

  // ASCE 7-22 12.4.2.2 and 2.3.6, 2.4.5: E_v = 0.2 S_DS D, down with 1.2D and up with 0.9D and 0.6D.
  it.each([
    ["1.2D + 1.0Ev + 1.0E: earthquake x, in the other sense", 12 + 1.6 + 3],
    ["0.9D - 1.0Ev + 1.0E: earthquake x", 9 - 1.6 - 3],
    ["0.6D - 0.7Ev + 0.7E: earthquake x", 6 - 1.12 - 2.1],
  ])("of an earthquake press and lift with a part of the dead load where the acceleration is stated: %s", (label, kips) => {
    const structure = standing({ reactions: { dead: { down: 10 * kip }, "earthquake x": { up: 3 * kip, "shear x": 2 * kip } } });
    const { strength, allowable } = reach({ ...structure, site: { ...structure.site, "short-period acceleration": { value: 0.8, path: "site", span: { start: 0, end: 0 } } as never } });
    expect(byLabel([...strength, ...allowable], label).base.P).toBeCloseTo(kips * kip, 6);
  });

  it("bring a twist to base and top alike, through the combinations and in either sense of an earthquake, and none where none is stated", () => {
    const twisted = reach(standing({ reactions: { dead: { down: kip }, "earthquake x": { twist: 2 * kipFoot } } }));
    expect(twisted.cases.map(({ top, base }) => [top.Mz, base.Mz].map((T) => T && T / kipFoot))).toEqual([[undefined, undefined], [2, 2], [-2, -2]].map((pair) => pair.map((T) => (T === undefined ? T : expect.closeTo(T, 9)))));
    expect(Math.max(...twisted.strength.map(({ base }) => base.Mz ?? 0)) / kipFoot).toBeCloseTo(2, 9);
    expect(reach(standing({ reactions })).strength.every(({ base }) => base.Mz === undefined)).toBe(true);
  });
});

describe("a dead load stated light and heavy", () => {
  const actions = reach(standing({ reactions: { "dead, light": { down: 2 * kip }, "dead, heavy": { down: 3 * kip }, wind: { up: 4 * kip } } }));

  it.each([
    // 0.9 * 2 - 4, 1.2 * 3 - 4, 0.6 * 2 - 0.6 * 4, 3 - 0.6 * 4
    ["strength", "0.9D + 1.0W: dead, light; wind", -2.2],
    ["strength", "1.2D + 1.0W: dead, heavy; wind", -0.4],
    ["allowable", "0.6D + 0.6W: dead, light; wind", -1.2],
    ["allowable", "1.0D + 0.6W: dead, heavy; wind", 0.6],
  ] as const)("holds down with the light and presses with the heavy: %s, %s", (level, label, P) => {
    expect(byLabel(actions[level], label).base.P / kip).toBeCloseTo(P, 9);
  });
});

describe("combined reactions", () => {
  it("are demands at their own level under their own name", () => {
    const actions = reach(standing({ combined: { uplift: { level: "strength", up: 20 * kip, "shear x": 3 * kip }, service: { level: "allowable", down: 9 * kip } } }));
    expect(actions.strength).toHaveLength(1);
    expect(actions.strength[0]).toMatchObject({ level: "strength", label: "uplift", cases: [], combination: { terms: [], label: "uplift" } });
    expect(actions.strength[0].base.P / kip).toBeCloseTo(-20, 9);
    expect(actions.allowable.map(({ label }) => label)).toEqual(["service"]);
  });

  it("leave the other level empty where nothing is stated at it", () => {
    const actions = reach(standing({ combined: { uplift: { level: "strength", up: 20 * kip } } }));
    expect(actions.allowable).toEqual([]);
    expect(actions.cases).toEqual([]);
  });

  it("stand beside unfactored ones", () => {
    const actions = reach(standing({ reactions: { dead: { down: kip } }, combined: { worst: { level: "strength", up: kip } } }));
    expect(actions.strength.map(({ label }) => label)).toEqual(["1.4D", "worst"]);
  });
});

describe("reactions that lack something say what", () => {
  it.each([
    ["no dead load", { reactions: { "wind 1": { up: kip } } }, /no dead load/u],
    ["a light dead load alone beside another", { reactions: { "dead light": { down: kip }, dead: { down: kip } } }, /more than one dead load/u],
    ["two dead loads", { reactions: { dead: { down: kip }, "dead of roof": { down: kip } } }, /more than one dead load/u],
    ["an unknown name", { reactions: { dead: { down: kip }, lateral: { up: kip } } }, /"lateral" has no load type/u],
    ["no level", { combined: { worst: { up: kip } } }, /"worst" does not say its level/u],
  ])("%s", (_, stated, words) => {
    expect(unknown(standing(stated))).toMatch(words);
  });

  it("a column with neither roof nor reactions has no loads", () => {
    expect(unknown(standing({}))).toMatch(/describe the roof, or state reactions/u);
  });
});
