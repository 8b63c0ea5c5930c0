import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findSection, sections, type ColumnSection } from "../../../server/src/catalog/sections.js";
import {
  compressiveDesignStrength,
  compressiveStrength,
  effectiveArea,
  slenderWallLimit,
  slendernessRatio,
  tensileDesignStrength,
} from "../../../server/src/checks/column/compression.js";
import { elasticStress, nominalStress } from "../../../server/src/checks/steel-buckling.js";
import {
  compactFlangeLimit,
  compactWebLimit,
  effectiveSectionModulus,
  noncompactWeb,
  slenderFlangeLimit,
  slenderWebLimit,
} from "../../../server/src/checks/column/flexure.js";
import { columnInteraction, interaction } from "../../../server/src/checks/column/interaction.js";
import { readColumn, type ColumnInputs } from "../../../server/src/checks/column/member.js";
import { flexuralStrength } from "../../../server/src/checks/column/strength.js";
import { columnSlenderness } from "../../../server/src/checks/column/slenderness.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, inch, kip, kipFoot, kipInch, ksi, ratioOf, run, say, sourced, strength, supportOf, valuesOf, weighed } from "../given.js";

const sectionOf = (name: string): ColumnSection => {
  const found = findSection(name);
  if ("problem" in found) throw new Error(found.problem);
  return found;
};

const column = (name: string, height: number, more: Record<string, unknown> = {}): ColumnInputs =>
  readColumn(supportOf({ column: { section: sectionOf(name), grade: "A500 Gr C", "top of column": "pinned", height, ...more } }), gatherer());

/** Within a part of the expected value. */
const near = (found: number | undefined, expected: number, part: number) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};

/** Design moment about the strong axis of a section that lies along x. */
const momentOf = (inputs: ColumnInputs): number => {
  const found = flexuralStrength(inputs, plainCalc);
  if ("because" in found) throw new Error(found.because);
  return found.y;
};

describe("flexural strength of square HSS (AISC 360-22 F7)", () => {
  it.each([
    ["HSS3-1/2x3-1/2x1/8, just noncompact: AISC Companion 16th ed., Example F.6", "HSS3-1/2x3-1/2x1/8", 7.2],
    ["HSS8x8x3/16, slender: AISC Companion 16th ed., Example F.8B", "HSS8x8x3/16", 45.4],
    ["HSS8x8x1/4, noncompact: F7-2 by hand with the properties of AISC Shapes Database v15.0", "HSS8x8x1/4", 70.2],
    ["HSS8x8x1/8, slender: F7-4 by hand with the properties of AISC Shapes Database v15.0", "HSS8x8x1/8", 24.8],
    ["HSS6x6x3/8, compact: 0.9 Fy Z with Z 15.8 in3 of AISC Shapes Database v15.0", "HSS6x6x3/8", 59.25],
  ])("%s", (_, name, kipFeet) => {
    near(momentOf(column(name, 3)) / kipFoot, kipFeet, 0.005);
  });

  it.each([
    ["compact flange", compactFlangeLimit, 26.97],
    ["slender flange", slenderFlangeLimit, 33.72],
    ["compact web", compactWebLimit, 58.28],
    ["slender web", slenderWebLimit, 137.3],
    ["slender wall in compression", slenderWallLimit, 33.72],
  ] as const)("limit of a %s at Fy 50 ksi (Table B4.1: 1.12, 1.40, 2.42, 5.70 and 1.40 times 24.083)", (_, limit, expected) => {
    near(limit.value({ F_y: 50 * ksi }), expected, 0.001);
  });

  it("reduces the moment for a noncompact web by Eq. F7-6 (by hand: 535 - 68 x 0.0979 = 528.3 kip-in)", () => {
    const found = noncompactWeb.value({ M_p: 535 * kipInch, F_y: 50 * ksi, S: 9.34 * inch ** 3, lambda: 66 });
    near((535 * kipInch - found) / kipInch, 6.657, 0.005);
  });

  it("takes the ineffective width with its own stiffness out of both flanges (by hand: (1 - 2 (0.5 x 0.25² + 0.5³/12))/0.5 = 1.8333)", () => {
    near(effectiveSectionModulus.value({ I: 1, b: 1, b_ef: 0, t: 0.5, B: 1 }), 1.83333, 1e-4);
  });

  it("does not answer where the webs are slender", () => {
    const outcome = columnInteraction.evaluate({ ...column("HSS8x8x1/8", 3), H: 0.5, B: 0.5 }, strength({ P: 1 }), plainCalc);
    expect(outcome).toMatchObject({ type: "unchecked" });
  });
});

describe("compressive strength of square HSS (AISC 360-22 E3, E7)", () => {
  it("follows AISC Companion 16th ed., Example E.9: HSS12x10x3/8, Lc 16 ft", () => {
    const KLr = slendernessRatio.value({ K: 1, L: 16 * foot, r: 4.01 * inch });
    near(KLr, 47.9, 0.003);
    const F_e = elasticStress.value({ KLr });
    near(F_e / ksi, 125, 0.003);
    const F_n = nominalStress.value({ F_y: 50 * ksi, F_e });
    near(F_n / ksi, 42.3, 0.003);
    near(compressiveDesignStrength.value({ F_n, A_e: 14.6 * inch ** 2 }) / kip, 556, 0.003);
  });

  it("is 0.877 of the elastic stress where that is low (Eq. E3-3: 0.877 x 7.97 = 6.99 ksi)", () => {
    near(nominalStress.value({ F_y: 50 * ksi, F_e: 7.97 * ksi }) / ksi, 6.99, 0.001);
    near(nominalStress.value({ F_y: 50 * ksi, F_e: 22.3 * ksi }) / ksi, 19.5616, 1e-4);
    near(nominalStress.value({ F_y: 50 * ksi, F_e: 22.1 * ksi }) / ksi, 19.3817, 1e-4);
  });

  it("leaves the ineffective parts of four walls out of the area: 5.37 - 4 x 0.9266 x 0.174 = 4.725 in² (Eq. E7-1)", () => {
    near(effectiveArea.value({ n: 4, A: 5.37 * inch ** 2, b: 7.478 * inch, b_e: 6.5514 * inch, t: 0.174 * inch }) / inch ** 2, 4.7251, 1e-4);
  });

  it("is 0.90 Fy A in tension: 7.58 in² at 50 ksi, 341.1 kip (Eq. D2-1)", () => {
    near(tensileDesignStrength.value({ F_y: 50 * ksi, A: 7.58 * inch ** 2 }) / kip, 341.1, 1e-4);
  });

  it.each([
    ["HSS8x8x3/16", 10, 192],
    ["HSS8x8x3/16", 16, 173],
    ["HSS8x8x3/16", 20, 156],
    ["HSS8x8x3/16", 24, 133],
    ["HSS8x8x1/4", 10, 287],
    ["HSS6x6x3/8", 16, 203],
    ["HSS6x6x3/8", 24, 107],
    ["HSS6x6x1/2", 10, 355],
  ])("%s with Lc %i ft carries %i kip (E3 and E7 computed by the route of Examples E.9 and E.10 of AISC Companion 16th ed.)", (name, feet, kips) => {
    near(compressiveStrength({ ...column(name, feet * foot), K_x: 1, K_y: 1 }, plainCalc) / kip, kips, 0.005);
  });
});

describe("bending and axial force in a column (AISC 360-22 H1)", () => {
  const given = { P_r: 12 * kip, P_c: 139.6 * kip, M_cx: 59.25 * kipFoot, M_cy: 59.25 * kipFoot };

  it.each([
    ["about one axis", 25, 0, 0.465],
    ["about both axes", 25, 10, 0.634],
  ])("HSS6x6x3/8, 12 kip, first-order moments %s (H1-1b in closed form)", (_, Mx, My, expected) => {
    near(interaction.value({ ...given, M_rx: Mx * kipFoot, M_ry: My * kipFoot }), expected, 0.003);
  });

  it("uses Eq. H1-1a from one fifth of the axial strength on (0.5 + 8/9 x 0.4 = 0.8556)", () => {
    near(interaction.value({ P_r: 0.5, P_c: 1, M_rx: 0.3, M_ry: 0.1, M_cx: 1, M_cy: 1 }), 0.85556, 1e-4);
  });

  it("changes equation at one fifth: 0.202 + 8/9 x 0.4 = 0.5576 above, 0.199/2 + 0.4 = 0.4995 below", () => {
    near(interaction.value({ P_r: 0.202, P_c: 1, M_rx: 0.4, M_ry: 0, M_cx: 1, M_cy: 1 }), 0.55756, 1e-4);
    near(interaction.value({ P_r: 0.199, P_c: 1, M_rx: 0, M_ry: 0.4, M_cx: 1, M_cy: 1 }), 0.4995, 1e-4);
  });

  it.each([
    ["about one axis", 25, 0, 0.5038],
    ["about both axes", 25, 10, 0.6880],
  ])("magnifies the moments of the 10 ft cantilever %s by 1/(1 - 12/142.4) = 1.092 (closed form, P_e 178.0 kip x 0.8)", (_, Mx, My, expected) => {
    const outcome = run(columnInteraction, column("HSS6x6x3/8", 10 * foot), strength({ P: 12 * kip, Mx: Mx * kipFoot, My: -My * kipFoot }));
    near(ratioOf(outcome), expected, 0.003);
  });

  it.each([
    // P_c 139.6, 9/139.6 = 0.0645; 0.3 in out of plumb: 3 x 29000 x 39.5 x 0.3/120² = 71.6 kip-in of 711.
    ["a cantilever, 0.3 in along x", "pinned", { x: 0.3, y: 0 }, 0.0322 + 71.6 / 711],
    ["the worse of both directions, and not their sum", "pinned", { x: 0.2, y: 0.3 }, 0.0322 + 71.6 / 711],
    // K 1.2: KL/r 63.2, F_n 37.0 ksi, P_c 252.5 kip; 6 E I u/L² is twice as much.
    ["held at both ends", "fixed", { x: 0, y: 0.3 }, 9 / (2 * 252.5) + 143.2 / 711],
  ])("columns out of plumb: %s (slope deflection)", (_, top, inches, expected) => {
    const demand = { ...strength({ P: 9 * kip }, { P: 9 * kip }), magnified: { x: 1, y: 1 }, outOfPlumb: { x: inches.x * inch, y: inches.y * inch } };
    near(ratioOf(run(columnInteraction, column("HSS6x6x3/8", 10 * foot, { "top of column": top }), demand)), expected, 0.004);
  });

  it("a column on pins is not bent by a story out of plumb, and one that is lifted is not looked at for it", () => {
    const plumb = { magnified: { x: 1, y: 1 }, outOfPlumb: { x: 0.01, y: 0.01 } };
    const braced = column("HSS6x6x3/8", 10 * foot, { "sway along x": "braced bay", "sway along y": "braced bay" });
    const pressed = strength({ P: 9 * kip }, { P: 9 * kip });
    near(ratioOf(run(columnInteraction, braced, { ...pressed, ...plumb })), ratioOf(run(columnInteraction, braced, { ...pressed, magnified: plumb.magnified })), 1e-9);
    const lifted = strength({ P: -9 * kip }, { P: -9 * kip });
    const cantilever = column("HSS6x6x3/8", 10 * foot);
    near(ratioOf(run(columnInteraction, cantilever, { ...lifted, ...plumb })), ratioOf(run(columnInteraction, cantilever, lifted)), 1e-9);
  });

  it("shows the steps of that cantilever: KL/r 110.5, F_n 20.47 ksi, P_c 139.6 kip", () => {
    const inputs = column("HSS6x6x3/8", 10 * foot);
    const values = valuesOf(columnInteraction, inputs, strength({ P: 12 * kip, Mx: 25 * kipFoot }, { P: 12 * kip }));
    near(values.get("KLr"), 110.5, 0.003);
    near(values.get("F_n")! / ksi, 20.47, 0.003);
    near(values.get("P_c")! / kip, 139.6, 0.003);
    near(values.get("P_e")! / kip, 142.4, 0.003);
  });

  it("takes uplift against yielding of the whole section and does not magnify (12/(2 x 341.1) + 25/59.25 = 0.4395)", () => {
    near(ratioOf(run(columnInteraction, column("HSS6x6x3/8", 10 * foot), strength({ P: -12 * kip, Mx: 25 * kipFoot }))), 0.4395, 0.003);
  });

  it("takes the worse of the two ends", () => {
    const inputs = column("HSS6x6x3/8", 10 * foot, { "top of column": "fixed" });
    const atBase = run(columnInteraction, inputs, strength({ Mx: 30 * kipFoot }));
    const atTop = run(columnInteraction, inputs, strength({ Mx: 10 * kipFoot }, { Mx: -30 * kipFoot }));
    expect(ratioOf(atTop)).toBeCloseTo(ratioOf(atBase), 12);
  });

  it("weighs the axial force against buckling where the column is not stable at all", () => {
    const outcome = run(columnInteraction, column("HSS3x3x1/8", 30 * foot), strength({ P: 50 * kip }));
    expect(outcome.quantity).toBe("force");
    expect(ratioOf(outcome)).toBeGreaterThan(1);
  });

  it.each([
    ["pinned", 2.1],
    ["fixed", 1.2],
  ])("a %s column top gives K %d (AISC 360-22 Commentary Table C-A-7.1)", (top, K) => {
    expect(column("HSS6x6x3/8", 3, { "top of column": top })).toMatchObject({ K_x: K, K_y: K });
  });

  it("names what is missing", () => {
    const gather = gatherer();
    columnInteraction.inputs(supportOf({ column: { grade: "A500 Gr C", "top of column": "pinned" } }), gather, 0);
    expect(gather.missing).toEqual(["column section", "column height"]);
  });

  it("puts the number first in its advice", () => {
    const inputs = column("HSS6x6x3/8", 10 * foot);
    const outcome = run(columnInteraction, inputs, strength({ P: 12 * kip, Mx: 60 * kipFoot }));
    expect(columnInteraction.advise!(inputs, outcome, say)).toMatch(/^1\.\d+ times what HSS6x6x3\/8 holds over 10 ft\. Take/);
  });
});

describe("laws of the column", () => {
  const anySection = fc.constantFrom(...sections);
  const anyMoment = fc.double({ min: 0, max: 2e5, noNaN: true });
  const anyHeight = fc.double({ min: 1, max: 12, noNaN: true });
  const grades = { "shaped HSS": "A500 Gr C", "round HSS": "A500 Gr B", pipe: "A53 Gr B", W: "A992" } as const;
  const inputsOf = (section: ColumnSection, height: number, deep = "along x"): ColumnInputs =>
    readColumn(supportOf({ column: { section, grade: grades[section.make], "deep side": deep, "top of column": "pinned", height } }), gatherer());

  it("every section answers with numbers, under any force", () => {
    fc.assert(
      fc.property(anySection, anyHeight, fc.double({ min: -1e6, max: 1e6, noNaN: true }), anyMoment, anyMoment, (section, height, P, Mx, My) => {
        const { demand, capacity } = weighed(columnInteraction.evaluate(inputsOf(section, height), strength({ P, Mx, My }), plainCalc));
        return Number.isFinite(demand) && capacity > 0;
      }),
      { numRuns: 500 },
    );
  });

  it("a larger moment never helps, and turning the column with both moments by a right angle changes nothing", () => {
    fc.assert(
      fc.property(anySection, anyHeight, anyMoment, anyMoment, (section, height, Mx, My) => {
        const inputs = inputsOf(section, height);
        const turned = inputsOf(section, height, "along y");
        const here = ratioOf(run(columnInteraction, inputs, strength({ P: 1000, Mx, My })));
        expect(ratioOf(run(columnInteraction, inputs, strength({ P: 1000, Mx: 1.1 * Mx, My })))).toBeGreaterThanOrEqual(here - 1e-12);
        expect(ratioOf(run(columnInteraction, turned, strength({ P: 1000, Mx: -My, My: Mx })))).toBeCloseTo(here, 9);
      }),
    );
  });

  it("a taller column is never stronger in compression", () => {
    fc.assert(
      fc.property(anySection, anyHeight, (section, height) => {
        const inputs = inputsOf(section, height);
        expect(compressiveStrength({ ...inputs, L: 1.1 * height }, plainCalc)).toBeLessThanOrEqual(compressiveStrength(inputs, plainCalc) * (1 + 1e-12));
      }),
    );
  });
});

describe("slenderness of the column", () => {
  it("sets KL/r against 200 in compression: HSS6x6x3/8, 10 ft, 110.5", () => {
    const outcome = run(columnSlenderness, column("HSS6x6x3/8", 10 * foot), strength({ P: kip }));
    near(outcome.demand, 110.5, 0.003);
    expect(outcome.capacity).toBe(200);
    expect(columnSlenderness.advise!(column("HSS6x6x3/8", 10 * foot), outcome, say)).toMatch(/^KL\/r 110/);
  });

  it("asks nothing of a column that is only lifted", () => {
    expect(run(columnSlenderness, column("HSS6x6x3/8", 10 * foot), strength({ P: -kip })).demand).toBe(0);
  });

  it("stands on the section, where the notebook says it", () => {
    expect(columnSlenderness.fixedBy(supportOf({ column: { section: sectionOf("HSS6x6x3/8") } }))).toMatchObject(sourced(sectionOf("HSS6x6x3/8"), "section"));
  });
});
