/** The table of forces: the three sections by statics, the governing rows, and the three formats. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { forcesOf } from "../../server/src/engine/forces.js";
import { lowered } from "../../server/src/mechanics/transfer.js";
import { components, governingRows, undersideArm, type ForceRow } from "../../server/src/summary/force-rows.js";
import { forcesCsv, forcesJson, forcesMarkdown } from "../../server/src/summary/forces-table.js";
import { foot, inch, kip, kipFoot, supportOf } from "../checks/given.js";
import { readExample } from "../worked-examples/example.js";

const sample = (name: string): string => readFileSync(join(__dirname, "../../samples", `${name}.rootfast`), "utf8");
const rowsIn = (text: string): readonly ForceRow[] => forcesOf(checkText(text)).flatMap(({ rows }) => rows);

const alone = (name: string, foundation = "") => `rootfast: 1
foundations:
  ${name}:
    kind: pier
    depth: 6 ft
    above grade: 6 in
${foundation}    reactions:
      dead:
        down: 2 kip
      wind from west:
        up: 1 kip
        shear x: 0.5 kip
        shear y: -0.2 kip
        moment x: 1 kip-ft
        moment y: 4 kip-ft
`;

/** Cells of a line of CSV with quotes taken off. */
const cells = (line: string): string[] => [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/gu)].map(([, cell]) => cell.replace(/^"|"$/gu, "").replace(/""/gu, '"')).slice(0, 13);

describe("sections", () => {
  it("at the underside shears have added to the moments: 0.5 kip over 6 ft 6 in is 3.25 kip-ft", () => {
    const underside = rowsIn(alone("post")).find(({ section, what }) => section === "underside" && what === "wind from west");
    expect(underside?.forces.P).toBeCloseTo(-1 * kip, 6);
    expect((underside?.forces.My ?? 0) / kipFoot).toBeCloseTo(4 + 0.5 * 6.5, 9);
    expect((underside?.forces.Mx ?? 0) / kipFoot).toBeCloseTo(1 + 0.2 * 6.5, 9);
  });

  it.each([
    ["pier", { kind: "pier", depth: 7 * foot, "above grade": 6 * inch }, 7.5 * foot + 2.5 * inch],
    ["pad on rock", { kind: "footing on rock", thickness: 24 * inch, depth: 18 * inch, "above grade": 6 * inch }, 24 * inch + 2.5 * inch],
    ["footing with a pedestal", { kind: "footing", thickness: 18 * inch, depth: 4 * foot, "above grade": 6 * inch, pedestal: { width: 1, length: 1 } }, 4.5 * foot + 2.5 * inch],
    ["footing without one", { kind: "footing", thickness: 18 * inch, depth: 4 * foot }, 18 * inch + 2.5 * inch],
    ["wall", { kind: "wall on footing", height: 3 * foot, footing: { width: 1, thickness: 14 * inch } }, 3 * foot + 16.5 * inch],
  ])("the arm of a %s is from the top of the plate to the underside", (_, foundation, expected) => {
    const support = supportOf({ foundation, base: { grout: 1.5 * inch, plate: { thickness: 1 * inch } } });
    expect(undersideArm(support)).toBeCloseTo(expected, 9);
  });

  it("the upper end of a knee-braced column is named as the section below its brace, that of any other its top", () => {
    const braced = readExample(readFileSync(join(__dirname, "../worked-examples/knee-braced-columns.md"), "utf8")).notebook;
    const names = (text: string) => [...new Set(rowsIn(text).map(({ section }) => section))];
    expect(names(braced)).toEqual(["section below the knee brace", "base"]);
    const cantilevers = braced.replaceAll("sway along x: knee brace", "sway along x: fixed base").replace(/ {4}knee brace:\n(?: {6}.*\n)+/gu, "");
    expect(names(cantilevers)).toEqual(["top", "base"]);
    // From the west: 80 lb and 640 lb-ft at the foot of the brace, 8 ft above a pin.
    const west = rowsIn(braced).find(({ what, section }) => section === "section below the knee brace" && /^wind from the west.*least force/u.test(what));
    expect(west!.forces.My / kipFoot).toBeCloseTo(-0.64, 3);
    expect(forcesMarkdown(forcesOf(checkText(braced)))).toContain("at the section below the knee brace");
  });

  it("is left out where a size of the foundation is missing", () => {
    expect(undersideArm(supportOf({ foundation: { kind: "pier" } }))).toBeUndefined();
    expect(undersideArm(supportOf({}))).toBeUndefined();
    expect(rowsIn(alone("post").replace("    depth: 6 ft\n", "")).some(({ section }) => section === "underside")).toBe(false);
  });

  it("going down in two steps is going down in one", () => {
    const any = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.record({ P: any, Vx: any, Vy: any, Mx: any, My: any }), fc.double({ min: 0, max: 9, noNaN: true }), fc.double({ min: 0, max: 9, noNaN: true }), (forces, a, b) => {
        const [twice, once] = [lowered(lowered(forces, a), b), lowered(forces, a + b)];
        for (const part of components) expect(Math.abs(twice[part] - once[part])).toBeLessThan(1e-5);
      }),
    );
  });

  it("of a sample are all there, for every column, case, level and combination", () => {
    const checked = checkText(sample("market-canopy"));
    const [{ structure, actions }] = checked.documents;
    let count = 0;
    for (const support of structure.supports) {
      const of = actions.of(support);
      if ("unknown" in of) throw new Error(of.unknown);
      for (const { cases, strength, allowable, service } of of) count += 3 * (cases.length + strength.length + allowable.length + service.length);
    }
    expect(rowsIn(sample("market-canopy"))).toHaveLength(count);
  });
});

describe("governing rows", () => {
  const rows = rowsIn(sample("landing-shelter"));

  it("name the largest and the smallest of each component, and what acts beside it", () => {
    for (const [level, section] of [["strength", "base"], ["allowable", "underside"]] as const) {
      const among = rows.filter((row) => row.level === level && row.section === section);
      const found = governingRows(rows, level, section);
      expect(found).toHaveLength(10);
      for (const { component, extreme, forces, what, column } of found) {
        const values = among.map((row) => row.forces[component]);
        expect(forces[component]).toBe(extreme === "largest" ? Math.max(...values) : Math.min(...values));
        expect(among.some((row) => row.what === what && row.column === column && row.forces === forces)).toBe(true);
      }
    }
  });

  it("are none where nothing is stated at a level", () => {
    expect(governingRows([], "strength", "base")).toEqual([]);
  });
});

describe("formats", () => {
  const structures = forcesOf(checkText(sample("landing-shelter")));
  const rows = structures[0].rows;

  it("CSV has one line a row, its heads carry the units, and its numbers are the rows'", () => {
    const lines = forcesCsv(structures).trimEnd().split("\r\n");
    expect(lines).toHaveLength(rows.length + 1);
    expect(lines[0]).toBe("structure,support,column,x (ft),y (ft),level,load case or combination,section,P (kip),Vx (kip),Vy (kip),Mx (kip-ft),My (kip-ft)");
    lines.slice(1).forEach((line, i) => {
      const row = cells(line);
      expect(row).toHaveLength(13);
      expect(row.slice(1, 3)).toEqual([rows[i].support, String(rows[i].column)]);
      expect(row.slice(5, 8)).toEqual([rows[i].level, rows[i].what, rows[i].section]);
      expect(Number(row[8])).toBeCloseTo(rows[i].forces.P / kip, 3);
      expect(Number(row[12])).toBeCloseTo(rows[i].forces.My / kipFoot, 3);
    });
  });

  it("a twist has a column of its own where one is stated, 0 in rows without it", () => {
    const twisted = forcesOf(checkText(alone("post").replace("moment y: 4 kip-ft", "moment y: 4 kip-ft\n        twist: 1.5 kip-ft")));
    const lines = forcesCsv(twisted).trimEnd().split("\r\n");
    expect(lines[0]).toMatch(/,My \(kip-ft\),Mz \(kip-ft\)$/u);
    expect(lines.find((line) => line.includes("unfactored,wind from west,base"))).toMatch(/,1\.5$/u);
    expect(lines.find((line) => line.includes("unfactored,dead,base"))).toMatch(/,0$/u);
    expect(forcesMarkdown(twisted)).toMatch(/\| My \(kip-ft\) \| Mz \(kip-ft\) \|\n\| --- \| ---: \| ---: \| ---: \| ---: \| ---: \| ---: \|/u);
    expect(forcesMarkdown(structures)).not.toContain("Mz");
  });

  it("CSV in SI carries its own units, and another document its own heads", () => {
    const text = `${alone("one")}---\n${alone("two").replace("rootfast: 1", "rootfast: 1\nproject:\n  units: SI")}`;
    const csv = forcesCsv(forcesOf(checkText(text)));
    expect(csv).toContain("P (kip)");
    expect(csv).toContain("P (kN),Vx (kN),Vy (kN),Mx (kN·m),My (kN·m)");
  });

  it("CSV quotes commas, and a name that looks like a formula stays a name", () => {
    const csv = forcesCsv(forcesOf(checkText(alone('"=1+1, \\"x\\""'))));
    expect(csv).toContain(`"'=1+1, ""x"""`);
    expect(csv).not.toMatch(/(?:^|,)=/mu);
  });

  it("Markdown and JSON have the same rows", () => {
    const markdown = forcesMarkdown(structures);
    expect(markdown.split("\n").filter((line) => line.startsWith("| ") && !line.includes("---") && !line.startsWith("| Load case"))).toHaveLength(rows.length);
    const { structures: parsed } = JSON.parse(forcesJson(structures));
    expect(parsed[0].rows).toHaveLength(rows.length);
    expect(parsed[0].rows[0].forces.P).toBe(rows[0].forces.P);
  });

  it("a support without loads is named with the reason", () => {
    const [{ without }] = forcesOf(checkText("rootfast: 1\ncolumns:\n  lost:\n    at: 0 ft, 0 ft\n"));
    expect(without).toEqual([{ support: "lost", because: expect.stringMatching(/describe the roof, or state reactions/u) }]);
  });
});

describe("steel designed by allowable stress", () => {
  const of = (method: string) => rowsIn(sample("market-canopy").replace("codes:\n", `codes:\n  method: ${method}\n`));
  const second = (method: string) => of(method).filter(({ level }) => level === "allowable, second order");

  it("has its own rows beside those soil takes: the same axial forces, moments no smaller", () => {
    const rows = of("ASD");
    const soil = rows.filter(({ level }) => level === "allowable");
    const steel = rows.filter(({ level }) => level === "allowable, second order");
    expect(steel).toHaveLength(soil.length);
    steel.forEach((row, i) => {
      expect([row.support, row.column, row.what, row.section, row.forces.P]).toEqual([soil[i].support, soil[i].column, soil[i].what, soil[i].section, soil[i].forces.P]);
      if (row.section !== "underside") expect(Math.abs(row.forces.My)).toBeGreaterThanOrEqual(Math.abs(soil[i].forces.My));
    });
  });

  it("has none by LRFD", () => {
    expect(second("LRFD")).toEqual([]);
    expect(second("both").length).toBeGreaterThan(0);
  });
});
