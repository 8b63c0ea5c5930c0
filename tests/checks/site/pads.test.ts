import { describe, expect, it } from "vitest";
import { checkText } from "../../../server/src/engine/check-text.js";
import { buildReport } from "../../../server/src/engine/report.js";
import { starterOf } from "../../../server/src/summary/starters.js";

const two = (x: string, more = "") => `rootfast: 1
ground:
  sand: { kind: soil, class: SM, unit weight: 110 pcf }
columns:
  a: { at: "3 ft, 3 ft", stands on: pad, combined: { full: { level: allowable, down: 10 kip } } }
  b: { at: "${x}, 3 ft", stands on: pad, combined: { full: { level: allowable, down: 10 kip } } }
foundations:
  pad:
    kind: footing
    ground: sand
    width: 5 ft
    length: 5 ft
    thickness: 18 in
    depth: 18 in
${more}`;

const said = (text: string, subject: string) =>
  buildReport(checkText(text), { file: "x" }).structures[0].supports.find(({ path }) => path === subject)?.findings.find(({ check }) => check === "site.agreement");

describe("Pads held against each other and against the roof", () => {
  it("lie over each other where their columns stand nearer than their half sides", () => {
    expect(said(two("7.9 ft"), "columns.a")).toMatchObject({ state: "over", message: expect.stringContaining("their pads lie over each other") });
    expect(said(two("8 ft"), "columns.a")?.state).toBe("holds");
  });

  it("a pad below grade carries its column from where it ends, not from grade", () => {
    const text = starterOf("footings")!.text;
    const high = said(text, "columns.north");
    expect(high?.state).toBe("holds");
    // Without its pedestal the pad ends 28 in below grade, and the column of the starter is too short.
    const buried = text.replace(/ {4}pedestal:.*\n/u, "").replace(/ {4}bars:.*\n/u, "").replace(/ {4}above grade:.*\n/u, "");
    expect(said(buried, "columns.north")).toMatchObject({ state: "over", message: expect.stringContaining("by concrete, grout and plate it begins at -") });
  });
});
