import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { summaryMarkdown } from "../../server/src/summary/markdown.js";

const notebook = (built: string, ground = "") => `rootfast: 1
site:
  frost depth: 0 in
ground:
  sand:
    kind: soil
    class: SM
  ledge:
    kind: rock
    class: crystalline bedrock
    condition: sound
    drained: yes
foundations:
  other:
    kind: pier
    diameter: 24 in
    depth: 9 ft
    ground: sand
    combined:
      storm: { level: allowable, shear x: 1200 lb, moment y: 12 kip-ft }
  pier:
    kind: pier
    diameter: 24 in
    depth: 9 ft
    ground: sand
${built}${ground}    combined:
      storm: { level: allowable, shear x: 1200 lb, moment y: 12 kip-ft }
`;

const built = "    as built:\n      noted: stopped by a boulder, seen by the inspector\n      depth: 7 ft\n";
const report = (text: string) => buildReport(checkText(text), { file: "x" });
const embedment = (text: string) => report(text).structures[0].supports.find(({ name }) => name === "pier")?.findings.find(({ check }) => check === "pier.embedment");

describe("What was built takes the place of what was drawn", () => {
  // IBC 2021 Eq. 18-1 for 1,200 lb at 10 ft, 2 ft wide, 150 psf/ft: 8.1123 ft (derived from the equation).
  it("the check runs on the depth as dug and stands on its value", () => {
    expect(embedment(notebook(""))?.state).toBe("holds");
    const found = embedment(notebook(built));
    expect(found?.state).toBe("over");
    expect(found?.capacity?.value).toBeCloseTo(7 * 0.3048, 9);
    expect(found?.demand?.value).toBeCloseTo(8.1123 * 0.3048, 3);
    expect(notebook(built).split("\n")[found?.place.line ?? 0]).toBe("      depth: 7 ft");
  });

  it("says what changed, in the report and in the summary, with the remark", () => {
    const [structure] = report(notebook(built)).structures;
    expect(structure.asBuilt).toMatchObject([{ path: "foundations.pier.as built.depth", drawn: "9 ft", built: "7 ft", noted: "stopped by a boulder, seen by the inspector" }]);
    expect(summaryMarkdown(report(notebook(built)))).toContain("stopped by a boulder");
    expect(report(notebook("")).structures[0].asBuilt).toEqual([]);
  });

  it("rods found at other places are said one by one, in inches", () => {
    const text = `rootfast: 1
columns:
  C1: { at: "0 ft, 0 ft", base: A, stands on: pier, combined: { storm: { level: strength, up: 4 kip } } }
bases:
  A:
    plate: 12 in x 12 in x 1 in
    anchors: 2 x 3/4 in F1554 Gr 36, headed, 12 in deep
    as built:
      anchors:
        places:
          - -4 in, 1/4 in
          - 4-1/2 in, 0 in
foundations:
  pier: { kind: pier, width: 24 in, depth: 4 ft }
`;
    expect(report(text).structures[0].asBuilt).toMatchObject([{ path: "bases.A.as built.anchors.places", drawn: "nothing", built: "-4 in, 0.25 in; 4.5 in, 0 in" }]);
  });

  it("rock met early at one pier makes the ground mixed", () => {
    const met = "    as built:\n      ground: ledge\n";
    const rules = (text: string) => report(text).structures[0].supports.flatMap(({ findings }) => findings.filter(({ check }) => check === "site.one-ground").map(({ state }) => state));
    expect(rules(notebook(""))).toEqual(["holds", "holds"]);
    expect(rules(notebook("", met))).toContain("over");
  });

  it("an edit of what was built is an edit of the pier alone", () => {
    const first = checkText(notebook(built));
    const next = checkText(notebook(built.replace("7 ft", "8 ft 6 in")), first);
    expect(next.work.entriesRead).toBe(1);
    expect(buildReport(next, { file: "x" })).toEqual(report(notebook(built.replace("7 ft", "8 ft 6 in"))));
  });
});
