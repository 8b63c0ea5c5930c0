/** What holds columns against sway, from the notebook's text to their reactions: statics in closed form, and what is refused in words. */
import { describe, expect, it } from "vitest";
import type { ColumnActions } from "../../server/src/actions/demand.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { foot, kip, kipFoot } from "./given.js";

const line = (name: string, y: number, count: number, more: string, height = "10 ft") => `  ${name}:
    line of: ${count}
    from: 4 ft, ${y} ft
    to: 20 ft, ${y} ft
    section: HSS6x6x3/8
    width in the wind: 0 in
    height: ${height}
${more
  .trim()
  .split("\n")
  .map((one) => `    ${one}\n`)
  .join("")}`;

const notebook = (columns: string, dead = "40 psf") => `rootfast: 1
site:
  risk category: II
  wind speed: 115 mph
  exposure: C
  ground elevation: 0 ft
  ground snow: 0 psf
  seismic design category: A
roof:
  shape: monoslope
  slope: 0 in 12
  length: 24 ft
  width: 20 ft
  low edge: south
  mean height: 10 ft
  dead: ${dead}
  flow below: clear
  edge depth: 12 in
  rigid in plane: yes
columns:
${columns}`;

const both = (south: string, north = south, count = 2) => notebook(line("south", 3, count, south) + line("north", 17, count, north));

function actionsIn(text: string): Readonly<Record<string, readonly ColumnActions[]>> {
  const checked = checkText(text);
  const [{ structure, actions }] = checked.documents;
  const errors = checked.problems.filter(({ severity }) => severity === "error").map(({ message }) => message);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return Object.fromEntries(
    structure.supports.map((support) => {
      const of = actions.of(support);
      if ("unknown" in of) throw new Error(of.unknown);
      return [support.name, of];
    }),
  );
}

const unknownIn = (text: string): string => {
  const [{ structure, actions }] = checkText(text).documents;
  const of = actions.of(structure.supports[0]);
  return "unknown" in of ? of.unknown : "";
};

const caseOf = (column: ColumnActions, id: string) => {
  const found = column.cases.find(({ loadCase }) => loadCase.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};

// Least wind force: 16 psf on an edge 12 in deep. From the west across 20 ft: 320 lb; from the south along 24 ft: 384 lb.
const fromWest = 0.32 * kip;
const fromSouth = 0.384 * kip;

describe("statics of each condition, under the least wind force", () => {
  it("left out, a column is a cantilever, and says so as an assumption", () => {
    const text = both("top of column: pinned");
    for (const column of Object.values(actionsIn(text)).flat()) {
      const { base, top } = caseOf(column, "wind/west/minimum");
      expect(base.Vx).toBeCloseTo(fromWest / 4, 3);
      expect(base.My).toBeCloseTo((fromWest / 4) * 10 * foot, 3);
      expect(top.My).toBeCloseTo(0, 3);
    }
    const assumed = checkText(text).documents[0].structure.assumptions.map(({ path }) => path);
    expect(assumed).toContain("columns.south.sway along x");
    expect(assumed).toContain("columns.north.sway along y");
  });

  it("fixed at base and top along x alone, it bends in double curvature along x and stands as a cantilever along y", () => {
    const [column] = actionsIn(both("sway along x: fixed base and top")).south;
    const west = caseOf(column, "wind/west/minimum");
    // Level tops on stiff columns: the roof's tilt takes a little from the half at each end.
    expect(west.base.My / ((fromWest / 4) * 5 * foot)).toBeCloseTo(1, 1);
    expect(west.top.My / (-(fromWest / 4) * 5 * foot)).toBeCloseTo(1, 1);
    expect(west.base.My - west.top.My).toBeCloseTo((fromWest / 4) * 10 * foot, 3);
    const south = caseOf(column, "wind/south/minimum");
    expect(south.base.Mx).toBeCloseTo(-(fromSouth / 4) * 10 * foot, 3);
    expect(south.top.Mx).toBeCloseTo(0, 3);
  });

  it("lines braced along themselves take the push in the rods: shear at the windward base, a couple of H h/L over the bay", () => {
    const { south, north } = actionsIn(both("sway along x: braced bay\nbracing:\n  area: 0.44 in²"));
    const couple = ((fromWest / 2) * 10) / 16;
    for (const [west, east] of [south, north]) {
      const [w, e] = [caseOf(west, "wind/west/minimum").base, caseOf(east, "wind/west/minimum").base];
      expect([w.Vx, w.P, w.My]).toEqual([fromWest / 2, -couple, 0].map((value) => expect.closeTo(value, 1)));
      expect([e.Vx, e.P, e.My]).toEqual([0, couple, 0].map((value) => expect.closeTo(value, 1)));
    }
  });

  it("a line of three names its braced bay, and the third column leans", () => {
    const { south } = actionsIn(both("sway along x: braced bay\nbracing:\n  area: 0.44 in²\n  bays: [2]", undefined, 3));
    const bases = south.map((column) => caseOf(column, "wind/west/minimum").base);
    expect(bases.map(({ Vx }) => Vx)).toEqual([0, fromWest / 2, 0].map((value) => expect.closeTo(value, 1)));
    expect(bases[2].P - bases[0].P).toBeGreaterThan(0);
    expect(bases.reduce((sum, { P }) => sum + P, 0)).toBeCloseTo(0, 3);
  });

  it("bays across lead from one line to the other, and are the same bays when both lines name them", () => {
    const across = (to: string) => `sway along y: braced bay\nbracing:\n  area: 0.44 in²\n  to: ${to}\n  bays: [1, 2]`;
    const twice = actionsIn(both(across("north"), across("south")));
    const couple = ((fromSouth / 2) * 10) / 14;
    for (const column of twice.south) {
      const { base } = caseOf(column, "wind/south/minimum");
      expect([base.Vy, base.P, base.Mx]).toEqual([fromSouth / 2, -couple, 0].map((value) => expect.closeTo(value, 1)));
    }
    for (const column of twice.north) expect(caseOf(column, "wind/south/minimum").base.P).toBeCloseTo(couple, 1);
    const once = actionsIn(both(across("north"), "sway along y: pinned base"));
    expect(caseOf(once.south[0], "wind/south/minimum").base.Vy).toBeCloseTo(fromSouth / 2, 1);
  });

  it("a leaning line beside cantilevers brings its weight down and takes no push", () => {
    const { south, north } = actionsIn(both("sway along x: pinned base", "sway along x: fixed base"));
    for (const column of south) {
      const { base } = caseOf(column, "wind/west/minimum");
      expect([base.Vx, base.My]).toEqual([expect.closeTo(0, 6), expect.closeTo(0, 6)]);
      expect(caseOf(column, "dead").base.P).toBeGreaterThan(1 * kip);
    }
    expect(north.reduce((sum, column) => sum + caseOf(column, "wind/west/minimum").base.Vx, 0)).toBeCloseTo(fromWest, 3);
  });

  it("unequal heights: a braced bay under a slope stands on its own bases, and still balances", () => {
    const text = both("sway along x: braced bay\nbracing:\n  area: 0.44 in²")
      .replace("slope: 0 in 12", "slope: 2 in 12")
      .replace("low edge: south", "low edge: west");
    const { south, north } = actionsIn(text);
    for (const id of ["wind/west/minimum", "wind/west/A/clear", "wind/north/B/clear", "dead"]) {
      const sum = [...south, ...north].reduce((at, column) => at + caseOf(column, id).base.Vx, 0);
      const [{ actions }] = checkText(text).documents;
      const total = actions.resultants.find(({ loadCase }) => loadCase.id === id)?.total;
      expect(Math.abs(sum - (total?.Vx ?? Number.NaN))).toBeLessThan(1e-6 * kip);
    }
  });

  it("a column out beyond the others, under an overhang, keeps the balance of moments", () => {
    const text = notebook(`${line("south", 3, 2, "sway along x: braced bay\nbracing:\n  area: 0.44 in²")}${line("north", 17, 2, "sway along x: braced bay\nbracing:\n  area: 0.44 in²")}  out:
    at: 23 ft, 10 ft
    section: HSS4x4x1/4
    height: 12 ft
    sway along x: pinned base
`);
    const of = actionsIn(text);
    const places = [[4, 3, 0], [20, 3, 0], [4, 17, 0], [20, 17, 0], [23, 10, -2]] as const;
    const [{ actions }] = checkText(text).documents;
    for (const { loadCase, total } of actions.resultants.filter(({ loadCase: { type } }) => type === "W")) {
      let [Mx, My, size] = [0, 0, 0];
      [...of.south, ...of.north, ...of.out].forEach((column, i) => {
        const { base } = caseOf(column, loadCase.id);
        const [x, y, z] = [(places[i][0] - 12) * foot, (places[i][1] - 10) * foot, (places[i][2] - 10) * foot];
        Mx += base.Mx - y * base.P - z * base.Vy;
        My += base.My + z * base.Vx + x * base.P;
        size += Math.abs(base.P) * 20 + Math.abs(base.Mx) + Math.abs(base.My);
      });
      expect(Math.abs(Mx - total.Mx)).toBeLessThan(1e-9 * size * 10);
      expect(Math.abs(My - total.My)).toBeLessThan(1e-9 * size * 10);
    }
  });
});

describe("what is refused, in words", () => {
  const area = "bracing:\n  area: 0.44 in²";
  it.each<[string, string, RegExp]>([
    ["pinned bases and no brace north to south", both("sway along y: pinned base"), /nothing holds the roof against swaying north to south/u],
    ["pinned bases in both directions", both("sway along x: pinned base\nsway along y: pinned base"), /against swaying east to west/u],
    ["a braced bay without its rods", both("sway along x: braced bay"), /column south is held against swaying east to west by a braced bay: state the area of one of its rods/u],
    ["a bay across without the other line", both(`sway along y: braced bay\n${area}`), /column south is braced along y, across its own line: say which other column or line/u],
    ["a line of three without its bay", both(`sway along x: braced bay\n${area}`, undefined, 3), /say which of its 2 bays are braced/u],
    ["a bay beyond the line", both(`sway along x: braced bay\n${area}\n  bays: [2]`), /has 1 bays, and bay 2 is stated/u],
    ["a bay across at a column the other line has not", both(`sway along y: braced bay\n${area}\n  to: north\n  bays: [3]`), /braced to north at column 3, and one of them has only 2/u],
    ["bays across between lines without saying where", both(`sway along y: braced bay\n${area}\n  to: north`), /say between which columns/u],
    ["a bracket without a rating", both("sway along y: bracket"), /held against swaying north to south by a bracket: state its rated moment/u],
    ["fixed at the top and stated as pinned", both("sway along x: fixed base and top\ntop of column: pinned"), /fixed at base and top.*stated as pinned/u],
    ["one braced line alone, the other leaning, and nothing to hold the turning", both(`sway along x: braced bay\nsway along y: braced bay\n${area}\n  to: north\n  bays: [1]`, "sway along x: pinned base\nsway along y: pinned base"), /turn about a plumb line/u],
  ])("%s", (_, text, words) => {
    expect(unknownIn(text)).toMatch(words);
  });

  it("a line that is not there is an error at the name", () => {
    const { problems } = checkText(both(`sway along y: braced bay\n${area}\n  to: nort`));
    expect(problems.map(({ message }) => message).join("\n")).toMatch(/"nort" is not among the columns; did you mean north\?/u);
  });
});

describe("a bracket with a rated moment", () => {
  const text = (rated: string) => both(`sway along x: fixed base\nsway along y: bracket\nbracket:\n  rated moment: ${rated}`);
  const finding = (of: string) => checkText(of).documents[0].checks.find(({ check, support }) => check.id === "column.bracket" && support.name === "south");

  it("is checked at allowable level against the moment along its direction alone", () => {
    const found = finding(text("3 kip-ft"));
    const of = actionsIn(text("3 kip-ft")).south;
    const worst = Math.max(...of.flatMap(({ allowable }) => allowable.map(({ base }) => Math.abs(base.Mx))));
    expect(found?.weighed?.demand).toBeCloseTo(worst, 6);
    expect(found?.weighed?.capacity).toBeCloseTo(3 * kipFoot, 6);
    expect(found?.governing?.level).toBe("allowable");
  });

  it("goes over where the rating is below the moment, and holds where it is above", () => {
    expect(finding(text("0.1 kip-ft"))?.state).toBe("over");
    expect(finding(text("90 kip-ft"))?.state).toBe("holds");
  });

  it("is not asked of columns that stand otherwise", () => {
    expect(checkText(both("sway along x: fixed base")).documents[0].checks.map(({ check }) => check.id)).not.toContain("column.bracket");
  });
});
