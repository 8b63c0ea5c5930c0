import { describe, expect, it } from "vitest";
import { anchorChecks } from "../../server/src/checks/anchors/index.js";
import { anchorFactors, readFactors } from "../../server/src/checks/anchors/factors.js";
import { editionBlock } from "../../server/src/checks/editions.js";
import { allChecks } from "../../server/src/checks/registry.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { gatherer, sourced } from "./given.js";

const notebook = (edition: string) => `rootfast: 1
codes:
  concrete: ${edition}
site:
  seismic design category: B
columns:
  C1:
    at: 0 ft, 0 ft
    section: HSS3x3x1/4
    height: 10 ft
    base: A
    stands on: pedestal
    combined:
      uplift:
        level: strength
        up: 7 kip
        shear x: 2 kip
        moment y: 1 kip-ft
bases:
  A:
    plate: 10 in x 10 in x 1 in
    grout: 1 in
    anchors: 4 x 7/8 in F1554 Gr 36, headed, 14 in deep, 4 in square
foundations:
  pedestal:
    kind: pier
    concrete: 4000 psi
    width: 20 in
    depth: 5 ft
`;
const findings = (edition: string) => {
  const report = buildReport(checkText(notebook(edition)), { file: "editions.rootfast", steps: true });
  expect(report.problems.filter(({ severity }) => severity === "error")).toEqual([]);
  return report.structures.flatMap(({ supports }) => supports.flatMap((support) => support.findings));
};
const anchorIds = anchorChecks.map(({ id }) => id);
const codes = (edition: string) => ({ concrete: sourced(edition) }) as never;

describe("The edition of the concrete standard", () => {
  it("ACI 318-14: cast-in anchors are weighed by the same numbers, under that edition's clauses", () => {
    const newer = findings("ACI 318-19");
    for (const finding of findings("ACI 318-14").filter(({ check }) => anchorIds.includes(check))) {
      const same = newer.find(({ check }) => check === finding.check)!;
      expect(finding.state, finding.check).toBe(same.state);
      expect(finding.state).not.toBe("not checked");
      expect(finding.capacity?.value).toBe(same.capacity?.value);
      const notes = (finding.steps ?? []).flatMap((step) => (step.type === "note" ? [step.text] : []));
      expect(notes.some((text) => /^By ACI 318-14 17\.\d/.test(text)), finding.check).toBe(true);
    }
  });

  it("ACI 318-25 is a choice, and every check of concrete says that it is not covered", () => {
    const found = findings("ACI 318-25");
    const ids = [...anchorIds, "base.bearing"].filter((id) => found.some(({ check }) => check === id));
    expect(ids.length).toBeGreaterThanOrEqual(9);
    for (const id of ids) {
      const finding = found.find(({ check }) => check === id)!;
      expect(finding.state, id).toBe("not checked");
      expect(finding.message).toContain("ACI 318-25 is not covered here; this check is made by ACI 318-14 or ACI 318-19");
    }
    expect(found.find(({ check }) => check === "column.slenderness")!.state).not.toBe("not checked");
  });

  it("keeps a check that names no edition to ACI 318-19", () => {
    const clause = "ACI 318-19 22.5";
    expect(editionBlock({ clause }, codes("ACI 318-19"))).toBeUndefined();
    expect(editionBlock({ clause }, codes("ACI 318-14"))).toBe("ACI 318-14 is not covered here; this check is made by ACI 318-19");
    expect(editionBlock({ clause: "AISC 360-22 F7" }, codes("ACI 318-14"))).toBeUndefined();
  });

  it("holds every check of concrete back by an edition that is not covered", () => {
    const ofConcrete = allChecks.filter(({ clause }) => clause.includes("ACI 318"));
    expect(ofConcrete.length).toBeGreaterThan(anchorIds.length);
    for (const check of ofConcrete) expect(editionBlock(check, codes("ACI 318-25")), check.id).toBeDefined();
  });

  it("has rows of factors for the anchors, and says so where it has none", () => {
    expect(Object.keys(anchorFactors)).toEqual(["ACI 318-19", "ACI 318-14"]);
    const gather = gatherer();
    expect(readFactors(codes("ACI 318-25"), gather)).toBeUndefined();
    expect(gather.blocks).toEqual(["ACI 318-25 is not covered here; this check is made by ACI 318-14 or ACI 318-19"]);
  });

  // ACI 318-19 Table 17.5.3; ACI 318-14 17.3.3, condition B (from memory).
  it.each(["ACI 318-19", "ACI 318-14"])("%s: phi 0.75 and 0.65 in tension, 0.65 and 0.60 in shear for steel, 0.70 for concrete", (edition) => {
    expect(anchorFactors[edition]).toMatchObject({
      steelTension: { ductile: 0.75, brittle: 0.65 },
      steelShear: { ductile: 0.65, brittle: 0.6 },
      breakout: 0.7,
      pullout: 0.7,
      blowout: 0.7,
      shearBreakout: 0.7,
      pryout: 0.7,
      breakoutCracking: { cracked: 1, uncracked: 1.25 },
      pulloutCracking: { cracked: 1, uncracked: 1.4 },
      shearUncracked: 1.4,
    });
  });
});
