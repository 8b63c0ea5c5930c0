/** What is said about the loads without being a finding: editions that do not go together, and reactions that stand in place of the roof. */
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../server/src/actions/index.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { assumed, entries, fourColumns, kip, sourcedFields, structureOf, type Given } from "./given.js";

const said = (of: Given): readonly string[] => actionsOf(structureOf(of)).information.map(({ message }) => message(() => ""));
const codes = (building: string, loads: string, concrete = "ACI 318-19") => ({ building, loads, concrete, steel: "AISC 360-22" });

describe("editions", () => {
  // IBC chapter 35, from memory.
  it.each([
    ["IBC 2024", "ASCE 7-22", "ACI 318-19"],
    ["IBC 2021", "ASCE 7-16", "ACI 318-19"],
    ["IBC 2018", "ASCE 7-16", "ACI 318-14"],
  ])("that %s adopts are not spoken of: %s, %s", (building, loads, concrete) => {
    expect(said({ codes: codes(building, loads, concrete) })).toEqual([]);
  });

  it.each([
    ["IBC 2021", "ASCE 7-22", "ACI 318-19", /^IBC 2021 adopts ASCE 7-16 and AISC 360-16, and this notebook goes by ASCE 7-22 and AISC 360-22\. The building official decides/u],
    ["IBC 2021", "ASCE 7-10", "ACI 318-19", /^IBC 2021 adopts ASCE 7-16 and AISC 360-16, and this notebook goes by ASCE 7-10/u],
    ["IBC 2024", "ASCE 7-16", "ACI 318-19", /^IBC 2024 adopts ASCE 7-22, and this notebook goes by ASCE 7-16\. /u],
    ["IBC 2018", "ASCE 7-16", "ACI 318-19", /^IBC 2018 adopts ACI 318-14 and AISC 360-16, and this notebook goes by ACI 318-19 and AISC 360-22\. /u],
  ])("%s with %s and %s: the official decides", (building, loads, concrete, words) => {
    const [remark, ...others] = said({ codes: codes(building, loads, concrete) });
    expect(remark).toMatch(words);
    expect(others).toEqual([]);
  });

  it("are spoken of at the one that is stated", () => {
    const at = (of: Record<string, unknown>) => actionsOf(structureOf({ codes: of })).information.map((one) => ("path" in one.at ? one.at.path : ""));
    expect(at({ ...codes("IBC 2021", "ASCE 7-22"), loads: assumed("ASCE 7-22") })).toEqual(["building"]);
    expect(at({ ...codes("IBC 2024", "ASCE 7-10"), building: assumed("IBC 2024") })).toEqual(["loads"]);
  });

  it("go together where the notebook names none, and a remark is no finding", () => {
    const report = (text: string) => buildReport(checkText(`rootfast: 1\n${text}`), { file: "x" }).structures[0];
    expect(report("").remarks).toEqual([]);
    const of2021 = report("codes:\n  building: IBC 2021\n");
    expect(of2021.remarks).toHaveLength(1);
    expect(of2021.counts.over + of2021.counts.near).toBe(0);
  });
});

describe("reactions stated for columns under a roof", () => {
  const reactions = entries({ dead: { down: 2 * kip } });
  const withReactions = (...names: readonly string[]) => fourColumns.map((line) => (names.includes(line.name) ? { ...line, fields: { ...line.fields, reactions } } : line));

  it("are said to stand in place of the roof's loads, which the others carry", () => {
    const [remark, ...others] = said({ lines: withReactions("south") });
    expect(remark).toMatch(/^The reactions stated for south stand in place of the roof's loads\. The roof is carried by the other columns alone/u);
    expect(others).toEqual([]);
  });

  it("are said to leave the roof's loads without a way down where no column is left", () => {
    const remarks = said({ lines: withReactions("south", "north") });
    expect(remarks).toHaveLength(2);
    expect(remarks.every((one) => one.includes("No column is left to carry the roof's loads"))).toBe(true);
  });

  it("say nothing where there is no roof, or no stated reactions", () => {
    expect(said({ noRoof: true, lines: withReactions("south", "north") })).toEqual([]);
    expect(said({})).toEqual([]);
  });
});

describe("the edge of the roof", () => {
  const ofEdge = (roof: Given["roof"]): readonly string[] => said({ roof });

  it("counts in the least force alone, which is said where its depth is stated and its band is not", () => {
    const [remark, ...others] = ofEdge({ fascia: undefined });
    expect(remark).toMatch(/counts in the least wind force alone\. A solid band there.*describe it under fascia/u);
    expect(others).toEqual([]);
  });

  it.each([
    ["a fascia is described", { fascia: sourcedFields({ depth: 0.3 }) }],
    ["its band is said to be none", { fascia: sourcedFields({ depth: 0 }) }],
    ["no depth is stated", { fascia: undefined, "edge depth": assumed(0.3) }],
    ["it has no depth", { fascia: undefined, "edge depth": 0 }],
  ])("is not spoken of where %s", (_, roof) => {
    expect(ofEdge(roof)).toEqual([]);
  });
});

describe("an earthquake among stated reactions", () => {
  const lines = [{ name: "C1", places: [{ x: 0, y: 0 }], fields: { reactions: entries({ dead: { down: 2 * kip }, "earthquake x": { "shear x": kip } }) } }];

  it.each([
    ["D", undefined, 1],
    ["D", 0.8, 0],
    ["B", undefined, 0],
  ])("in category %s with S_DS %s: its vertical part is said to be missing in %i remarks", (category, acceleration, count) => {
    const remarks = said({ noRoof: true, lines, site: { "seismic design category": category, "short-period acceleration": acceleration } });
    expect(remarks.filter((one) => one.includes("its vertical part, 0.2 S_DS D, is not"))).toHaveLength(count);
  });
});

describe("a roof on one line of columns", () => {
  const roof = (places: readonly number[], more = "") => `rootfast: 1
roof: { shape: monoslope, slope: 1 in 12, length: 30 ft, width: 12 ft, low edge: north, mean height: 10 ft, dead: 8 psf, flow below: clear, fascia: { depth: 0 in }${more} }
columns:
${places.map((x, i) => `  C${i}: { at: "${x} ft, 6 ft", section: HSS8x8x3/8, height: 9 ft }\n`).join("")}`;
  const spoken = (text: string): readonly string[] => buildReport(checkText(text), { file: "x" }).structures[0].remarks.map(({ message }) => message);

  // Simple spans of 15 ft between the ends and the middle: the middle column takes half of the roof, 1.5 times a third.
  it("is told how much more the middle column takes by the spans", () => {
    expect(spoken(roof([0, 15, 30]))).toEqual([expect.stringMatching(/by its spans one of them takes 1\.5 times the mean\. State rigid in plane: envelope/u)]);
  });

  it.each([
    ["overhangs of a third of the bay bring every column the same", roof([3.75, 15, 26.25])],
    ["both ways of sharing count already", roof([0, 15, 30], ", rigid in plane: envelope")],
    ["each column takes what is its own", roof([0, 15, 30], ", rigid in plane: no")],
    ["there are two columns, which statics alone decides", roof([0, 30])],
  ])("has nothing said of it where %s", (_, text) => {
    expect(spoken(text)).toEqual([]);
  });
});
