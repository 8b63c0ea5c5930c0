/** Steel by LRFD, by ASD and by both: strengths divided by Omega against allowable-stress loads, and who follows the method. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findSection } from "../../server/src/catalog/sections.js";
import { plateCompression } from "../../server/src/checks/base/plate-compression.js";
import { columnInteraction } from "../../server/src/checks/column/interaction.js";
import { readColumn } from "../../server/src/checks/column/member.js";
import { columnShear } from "../../server/src/checks/column/shear.js";
import { levelsTried } from "../../server/src/checks/contract.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { allowable, foot, gatherer, inch, kip, kipFoot, ksi, ratioOf, run, strength, supportOf, valuesOf } from "./given.js";

const column = (height: number) => readColumn(supportOf({ column: { section: findSection("HSS6x6x3/8"), grade: "A500 Gr C", "top of column": "pinned", height } }), gatherer());

describe("allowable strengths of a column, HSS6x6x3/8 of 50 ksi (AISC Shapes Database v15.0)", () => {
  const inputs = column(10 * foot);

  it.each([
    ["bending: 50 x 15.8/1.67 = 473.1 kip-in (F7-1)", { My: 39.42 * kipFoot }, 1],
    ["tension: 50 x 7.58/1.67 = 226.9 kip (D2-1)", { P: -226.9 * kip }, 1],
    ["compression at KL/r of 110.5: 20.46 x 7.58/1.67 = 92.9 kip (E3)", { P: 80 * kip }, 80 / 92.9],
  ])("%s", (_, forces, expected) => {
    expect(ratioOf(run(columnInteraction, inputs, allowable(forces)))).toBeCloseTo(expected, 2);
  });

  it("shear: 0.6 x 50 x 2 x (6 - 3 x 0.349) x 0.349/1.67 = 62.1 kip (G4-1)", () => {
    expect(ratioOf(run(columnShear, inputs, allowable({ Vx: 62.1 * kip })))).toBeCloseTo(1, 2);
  });

  it("is unstable at 1.6 of its load: 142.4/1.6 = 89.0 kip (Appendix 8, C2.1(d))", () => {
    expect(run(columnInteraction, inputs, allowable({ P: 88.9 * kip })).quantity).toBe("ratio");
    const outcome = run(columnInteraction, inputs, allowable({ P: 89.1 * kip }));
    expect(outcome.quantity).toBe("force");
    expect(outcome.demand / kip).toBeCloseTo(142.56, 2);
    expect(outcome.capacity / kip).toBeCloseTo(142.4, 0);
  });

  it("a load gives 1.503 times the ratio by ASD that it gives by LRFD, where nothing leans", () => {
    fc.assert(
      fc.property(fc.double({ min: -80, max: 0, noNaN: true }), fc.double({ min: 1, max: 30, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }), (P, Mx, My) => {
        // The same branch of H1-1 both ways: an axial force below 0.2 of the smaller strength.
        const forces = { P: P * 0.5 * kip, Mx: Mx * kipFoot, My: My * kipFoot };
        const [asd, lrfd] = [run(columnInteraction, inputs, allowable(forces)), run(columnInteraction, inputs, strength(forces))].map(ratioOf);
        expect(asd / lrfd).toBeCloseTo(0.9 * 1.67, 9);
      }),
    );
  });
});

describe("allowable bending of a base plate", () => {
  it("needs 0.918 in by ASD in AISC Companion 16th ed., Example K.9: 160 kip on 13 x 13 in, 3.65 x sqrt(2 x 0.947 x 1.67/50)", () => {
    const support = supportOf({
      column: { section: findSection("HSS6x6x3/8") },
      base: { plate: { width: 13 * inch, length: 13 * inch, thickness: inch, grade: "A572 Gr 50" }, anchors: { count: 4, diameter: 0.75 * inch, "spacing x": 10 * inch, "spacing y": 10 * inch }, grout: inch },
      foundation: { kind: "pier", width: 60 * inch, depth: 2, concrete: 4 * ksi },
    });
    const inputs = plateCompression.inputs(support, gatherer(), 0);
    const found = valuesOf(plateCompression, inputs, allowable({ P: 160 * kip }));
    expect(found.get("t_min")! / inch).toBeCloseTo(0.918, 3);
  });
});

const notebook = (method: string, combined: string) => `rootfast: 1
${method && `codes:\n  method: ${method}\n`}site:
  seismic design category: B
columns:
  C1:
    at: 0 ft, 0 ft
    section: HSS6x6x3/8
    grade: A500 Gr C
    height: 10 ft
    top of column: pinned
    base: A
    stands on: pier
    combined:
${combined}
bases:
  A:
    plate: 14 in x 14 in x 1 in
    grout: 1-1/2 in
    anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square
foundations:
  pier:
    kind: pier
    concrete: 4000 psi
    width: 60 in
    depth: 6 ft
`;

const byStrength = "      storm: { level: strength, moment x: 20 kip-ft }";
const byAllowable = "      storm at allowable level: { level: allowable, moment x: 15 kip-ft }";

const findingsOf = (method: string, ...combined: readonly string[]) => {
  const [support] = buildReport(checkText(notebook(method, combined.join("\n"))), { file: "x" }).structures[0].supports;
  return (check: string) => support.findings.find((finding) => finding.check === check)!;
};

describe("the method of a notebook", () => {
  it("is LRFD where none is named, which is an assumption with a source", () => {
    const report = buildReport(checkText(notebook("", byStrength)), { file: "x" }).structures[0];
    expect(report.assumptions.find(({ path }) => path === "codes.method")).toMatchObject({ text: "LRFD", source: expect.stringContaining("AISC 360-22") });
    expect(findingsOf("", byStrength, byAllowable)("column.interaction")).toMatchObject({ level: "strength", ratio: expect.closeTo(20 / 59.25, 3) });
  });

  it("takes the allowable-stress loads by ASD, and the worse of each by both", () => {
    expect(findingsOf("ASD", byStrength, byAllowable)("column.interaction")).toMatchObject({ level: "allowable", ratio: expect.closeTo(15 / 39.42, 3) });
    expect(findingsOf("both", byStrength, byAllowable)("column.interaction")).toMatchObject({ level: "allowable", ratio: expect.closeTo(15 / 39.42, 3) });
    expect(findingsOf("both", byStrength, byAllowable.replace("15", "12"))("column.interaction")).toMatchObject({ level: "strength", ratio: expect.closeTo(20 / 59.25, 3) });
  });

  it("is followed by column and plate, while concrete and rods stay with strength", () => {
    const of = findingsOf("ASD", byStrength, byAllowable);
    for (const check of ["column.interaction", "column.shear", "base.plate-compression", "base.plate-uplift"]) expect(of(check)).toMatchObject({ level: "allowable" });
    for (const check of ["base.bearing", "anchors.steel-tension", "anchors.breakout-tension"]) expect(of(check)).toMatchObject({ level: "strength" });
  });

  it("leaves steel not checked where reactions of its level are not given", () => {
    expect(findingsOf("ASD", byStrength)("column.interaction")).toMatchObject({ state: "not checked", message: expect.stringContaining("no allowable-level reactions are given") });
    expect(findingsOf("both", byStrength)("base.plate-uplift")).toMatchObject({ state: "not checked", message: expect.stringContaining("no allowable-level reactions are given") });
    expect(findingsOf("both", byAllowable)("base.plate-uplift")).toMatchObject({ state: "not checked", message: expect.stringContaining("no strength-level reactions are given") });
  });

  it("says which levels a check of steel takes", () => {
    const codes = (method: string) => ({ codes: { method: { value: method } } }) as never;
    expect(levelsTried(columnInteraction, codes("LRFD"))).toEqual(["strength"]);
    expect(levelsTried(columnInteraction, codes("ASD"))).toEqual(["allowable"]);
    expect(levelsTried(columnInteraction, codes("both"))).toEqual(["strength", "allowable"]);
    expect(levelsTried({ level: "service" }, codes("ASD"))).toEqual(["service"]);
  });
});
