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

const kneeBrace = "knee brace:\n  below top: 2 ft\n  run: 3 ft\n  area: 2 in²";

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

  it("knee braces on pinned bases bend the column at their feet, V f, and leave its top what the piece above them takes", () => {
    for (const sides of ["one", "both"]) {
      const { south, north } = actionsIn(both(`sway along x: knee brace\n${kneeBrace}\n  sides: ${sides}`));
      const V = fromWest / 4;
      [...south, ...north].forEach((column, i) => {
        const { base, top } = caseOf(column, "wind/west/minimum");
        expect(base.Vx).toBeCloseTo(V, 3);
        expect(base.My).toBeCloseTo(0, 3);
        expect(top.My).toBeCloseTo(-V * 8 * foot, 3);
        const at = (demands: readonly { readonly label: string; readonly top: { readonly P: number; readonly Vx: number; readonly My: number } }[]) => {
          const found = demands.find(({ label }) => label.startsWith("0.9D + 1.0W") && label.includes("from the west") && label.includes("least force"));
          if (!found) throw new Error("no such combination");
          return found.top;
        };
        // The moment of the foot over the piece of 2 ft, 4 V but for second order; level in the brace both together, and of that 2/3 up or down in a single one.
        const [below, above] = [at(column.strength), at(column.atTop)];
        expect(above.Vx).toBeCloseTo(below.My / (2 * foot), 6);
        expect(above.Vx / below.Vx).toBeCloseTo(-4, 0);
        const side = i % 2 === 0 ? 1 : -1;
        expect(above.P - below.P).toBeCloseTo(sides === "both" ? 0 : (side * (below.Vx - above.Vx) * 2) / 3, 6);
      });
    }
  });

  it("knee braces on fixed bases share the moment between foot and base by slope-deflection", () => {
    const [column] = actionsIn(both(`sway along x: fixed base and knee brace\n${kneeBrace.replace("2 in²", "200 in²")}\n  sides: both`)).south;
    const { base, top } = caseOf(column, "wind/west/minimum");
    // Turning of the foot t = 6 u / f² over 4/f + 3/a with f = 8, a = 2: 6 u / (8² * 2). Moments 6 u / f² less 2 t / f at the base, 4 t / f at the foot.
    const turned = 6 / 64 / (4 / 8 + 3 / 2);
    const [atBase, atFoot] = [6 / 64 - (2 * turned) / 8, 6 / 64 - (4 * turned) / 8];
    expect(base.My / -top.My).toBeCloseTo(atBase / atFoot, 1);
    expect(base.My - top.My).toBeCloseTo((fromWest / 4) * 8 * foot, 3);
  });

  it("a base that gives adds h²/k to the sway of a cantilever and nothing to its forces", () => {
    const stiff = actionsIn(both("sway along x: fixed base")).south[0];
    const soft = actionsIn(both("sway along x: fixed base\nbase rotation stiffness: 500 kip-ft/rad")).south[0];
    const at = (column: ColumnActions) => {
      const found = column.strength.find(({ label }) => label.startsWith("0.9D + 1.0W") && label.includes("from the west") && label.includes("least force"));
      if (!found?.sway) throw new Error("no such combination");
      return found;
    };
    expect(at(soft).base.Vx).toBeCloseTo(at(stiff).base.Vx, 6);
    const added = ((fromWest / 4) * (10 * foot) ** 2) / (500 * kipFoot);
    // The tilt of the roof is the same in both; second order is left out where it is a trifle.
    expect((at(soft).sway?.x ?? 0) / (at(soft).magnified?.x ?? 1) - (at(stiff).sway?.x ?? 0) / (at(stiff).magnified?.x ?? 1)).toBeCloseTo(added, 6);
  });

  it("the drag along columns with knee braces and springs balances too", () => {
    const text = both(`sway along x: fixed base and knee brace\nsway along y: knee brace\nbase rotation stiffness: 500 kip-ft/rad\n${kneeBrace}`).replaceAll("width in the wind: 0 in", "width in the wind: 10 in");
    const { south, north } = actionsIn(text);
    const places = [[4, 3], [20, 3], [4, 17], [20, 17]];
    const [{ actions }] = checkText(text).documents;
    for (const { loadCase, total } of actions.resultants.filter(({ loadCase: { type } }) => type === "W")) {
      const sum = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };
      [...south, ...north].forEach((column, i) => {
        const { base } = caseOf(column, loadCase.id);
        const [x, y, z] = [(places[i][0] - 12) * foot, (places[i][1] - 10) * foot, -10 * foot];
        sum.P += base.P;
        sum.Vx += base.Vx;
        sum.Vy += base.Vy;
        sum.Mx += base.Mx - y * base.P - z * base.Vy;
        sum.My += base.My + z * base.Vx + x * base.P;
      });
      for (const part of ["P", "Vx", "Vy", "Mx", "My"] as const) expect(Math.abs(sum[part] - total[part]) / (10 * kip)).toBeLessThan(1e-9);
    }
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
    ["a knee brace without its sizes", both("sway along x: knee brace\nknee brace:\n  run: 3 ft"), /by a knee brace: under `knee brace` state how far below the column top.*and its cross-section area/u],
    ["a knee brace below a top stated as fixed", both(`sway along x: knee brace\ntop of column: fixed\n${kneeBrace}`), /knee brace, and its `top of column` is stated as fixed/u],
    ["a knee brace that meets the column below its base", both(`sway along x: knee brace\n${kneeBrace.replace("2 ft", "12 ft")}`), /meets it below its base/u],
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
