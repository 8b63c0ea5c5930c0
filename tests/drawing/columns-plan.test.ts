import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { columnsPlan } from "../../server/src/drawing/columns-plan.js";
import type { Picture } from "../../server/src/drawing/picture.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { format } from "../../server/src/units/format.js";
import { faultsOf } from "./sound.js";

const planOf = (text: string): Picture | undefined => columnsPlan(checkText(text).documents[0].structure, (value, kind) => format(value, kind, "US"));

const sample = readFileSync("samples/landing-shelter.rootfast", "utf8");

/** Columns in the order they are drawn, by their middles on the page. */
const columnsIn = (svg: string): readonly { x: number; y: number }[] =>
  [...svg.matchAll(/<rect x="([^"]+)" y="([^"]+)" width="6" height="6" fill="currentColor"/gu)].map(([, x, y]) => ({ x: Number(x) + 3, y: Number(y) + 3 }));

const roof = (more: string): string => `rootfast: 1\nroof: { ${more}, length: 30 ft, width: 12 ft, slope: 2 in 12, mean height: 10 ft, dead: 10 psf }\n`;
const post = (name: string, at: string): string => `  ${name}: { at: "${at}", section: HSS6x6x3/8, height: 10 ft }\n`;

describe("the plan of the columns", () => {
  it("of the shelter numbers both lines from west to east and says where each column stands", () => {
    const plan = planOf(sample);
    expect(faultsOf(plan?.svg ?? "NaN")).toEqual([]);
    expect(columnsIn(plan?.svg ?? "")).toHaveLength(8);
    for (const word of [">north 1<", ">south 1<", ">4<", ">low edge<", ">3.5 ft<", ">11 ft<"]) expect(plan?.svg).toContain(word);
    expect(plan?.caption).toContain("north: 1 at 3.5 ft, 17 ft; 2 at 14.5 ft, 17 ft");
  });

  it("is to one scale along both axes, north up and east to the right", () => {
    const plan = planOf(`${roof("shape: pitched, ridge: along x")}columns:\n${post("a", "3 ft, 2 ft")}${post("b", "27 ft, 2 ft")}${post("c", "3 ft, 10 ft")}`);
    const [a, b, c] = columnsIn(plan?.svg ?? "");
    expect(b.y).toBeCloseTo(a.y, 6);
    expect(c.x).toBeCloseTo(a.x, 6);
    expect((b.x - a.x) / 24).toBeCloseTo((a.y - c.y) / 8, 1);
    expect(b.x).toBeGreaterThan(a.x);
    expect(plan?.svg).toContain(">ridge<");
    expect(faultsOf(plan?.svg ?? "NaN")).toEqual([]);
  });

  it.each([
    ["one column alone", `rootfast: 1\ncolumns:\n${post("lone", "0 ft, 0 ft")}`, 1],
    ["one row without a roof", `rootfast: 1\ncolumns:\n${post("a", "0 ft, 0 ft")}${post("b", "40 ft, 0 ft")}`, 2],
    ["a valley along y", `${roof("shape: troughed, ridge: along y")}columns:\n${post("a", "15 ft, 6 ft")}`, 1],
    ["a line of forty", "rootfast: 1\ncolumns:\n  row: { line of: 40, from: \"0 ft, 0 ft\", to: \"400 ft, 30 ft\", section: HSS6x6x3/8, height: 10 ft }\n", 40],
    ["columns far apart", `rootfast: 1\ncolumns:\n${post("a", "0 ft, 0 ft")}${post("a long name of a column", "4000 ft, 9000 ft")}`, 2],
  ])("keeps within its frame: %s", (_, text, count) => {
    const plan = planOf(text);
    expect(faultsOf(plan?.svg ?? "NaN")).toEqual([]);
    expect(columnsIn(plan?.svg ?? "")).toHaveLength(count);
  });

  it("is not there where no column has a place", () => {
    expect(planOf("rootfast: 1\nfoundations:\n  pier: { kind: pier, combined: { uplift: 1 kip } }\n")).toBeUndefined();
  });
});
