import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";

const sample = (file: string) => {
  const report = buildReport(checkText(readFileSync(join(__dirname, "../../samples", file), "utf8")), { file });
  const findings = report.structures.flatMap(({ supports }) => supports.flatMap((support) => support.findings));
  return { report, findings, said: (state: string) => findings.filter((finding) => finding.state === state).map(({ check }) => check) };
};

describe("the samples", () => {
  it.each(["landing-shelter.rootfast", "market-canopy.rootfast", "bus-stop-reactions.rootfast"])("of %s reads without a problem, and every check in it is made", (file) => {
    const { report, findings, said } = sample(file);
    expect(report.problems).toEqual([]);
    expect(findings.length).toBeGreaterThan(10);
    expect(said("not checked")).toEqual([]);
  });

  it("of the landing shelter holds two faults: mixed ground, and a pier too shallow for its side load", () => {
    expect(sample("landing-shelter.rootfast").said("over").sort()).toEqual(["pier.embedment", "site.one-ground"]);
  });

  it("of the landing shelter keeps the mixed ground alone when the pier goes deep enough", () => {
    const text = readFileSync(join(__dirname, "../../samples/landing-shelter.rootfast"), "utf8").replace("depth: 3 ft 6 in", "depth: 7 ft");
    const { structures } = buildReport(checkText(text), { file: "deeper.rootfast" });
    const over = structures.flatMap(({ supports }) => supports.flatMap(({ findings }) => findings.filter(({ state }) => state === "over")));
    expect(over.map(({ check }) => check)).toEqual(["site.one-ground"]);
  });

  it.each(["market-canopy.rootfast", "bus-stop-reactions.rootfast"])("of %s has nothing over or near", (file) => {
    const { said } = sample(file);
    expect([...said("over"), ...said("near")]).toEqual([]);
  });

  it("of the bus stops holds two structures, each on its own ground", () => {
    expect(sample("bus-stop-reactions.rootfast").report.structures.map(({ name }) => name)).toEqual(["Bus stop at the mill", "Bus stop at the quarry"]);
  });
});
