/** The page of loads: every case with its coefficients, the figure they are read from, and the resultant. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { forceColumns } from "../../server/src/summary/force-cells.js";
import { loadPage } from "../../server/src/summary/load-page.js";
import { summaryHtml } from "../../server/src/summary/html.js";
import { summaryMarkdown } from "../../server/src/summary/markdown.js";
import { kip, psf } from "../actions/given.js";

const text = readFileSync(join(__dirname, "../../samples/landing-shelter.rootfast"), "utf8");
const report = buildReport(checkText(text), { file: "shelter.rootfast" });
const [structure] = report.structures;
const { loads } = structure;
const caseOf = (id: string) => {
  const found = loads?.cases.find((one) => one.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};

describe("the loads of the report", () => {
  it("say of wind onto the low edge, case A: both halves with C_N between the rows of Figure 27.3-4", () => {
    // 2 in 12 is 9.46 degrees: 0.9 to 1.3 and 1.5 to 1.6 from 7.5 to 15 degrees.
    const { parts } = caseOf("wind/south/A/clear");
    const share = ((Math.atan(2 / 12) * 180) / Math.PI - 7.5) / 7.5;
    expect(parts[0]).toMatchObject({ where: "windward half, 0 ft to 10 ft from the south edge", coefficient: { symbol: "C_NW" }, read: "ASCE 7-22 Figure 27.3-4, between the rows of 7.5° and 15°" });
    expect(parts[1]).toMatchObject({ where: "leeward half, 10 ft to 20 ft from the south edge", coefficient: { symbol: "C_NL" } });
    expect(parts[0].coefficient?.value).toBeCloseTo(0.9 + 0.4 * share, 9);
    expect(parts[1].coefficient?.value).toBeCloseTo(1.5 + 0.1 * share, 9);
    const unit = (loads?.velocityPressure.value ?? 0) * 0.85 * 0.85;
    expect(parts[0].pressure?.value).toBeCloseTo(unit * (0.9 + 0.4 * share), 6);
  });

  it("say of wind onto a side edge: bands by mean heights of Figure 27.3-7", () => {
    const { parts } = caseOf("wind/west/A/clear");
    expect(parts.slice(0, 3).map(({ where, coefficient }) => [where, coefficient?.value])).toEqual([
      ["up to h, 0 ft to 10.5 ft from the west edge", -0.8],
      ["h to 2h, 10.5 ft to 21 ft from the west edge", -0.6],
      ["beyond 2h, 21 ft to 40 ft from the west edge", -0.3],
    ]);
    expect(parts[0].read).toBe("ASCE 7-22 Figure 27.3-7");
  });

  it("say of loads down on the roof their pressure and clause, of the least wind force its push", () => {
    expect(caseOf("dead").parts).toEqual([expect.objectContaining({ where: "whole roof", pressure: expect.objectContaining({ value: expect.closeTo(15 * psf, 6) }) })]);
    const { parts, total } = caseOf("wind/west/minimum");
    expect(parts).toHaveLength(1);
    expect(parts[0].pushX?.value).toBeCloseTo(total.Vx.value, 6);
    expect(parts[0].read).toMatch(/27\.1\.5/u);
  });

  it("the pressures of each case add up to its resultant", () => {
    for (const { parts, total, type } of loads?.cases ?? []) {
      if (type !== "W") continue;
      let P = 0;
      for (const { where, pressure } of parts) {
        const [, from, to] = /, ([\d.]+) ft to ([\d.]+) ft from/u.exec(where) ?? [];
        const across = /(?:south|north) edge/u.test(where) ? 40 : 20;
        if (pressure) P += (pressure.value / psf) * (Number(to) - Number(from)) * across;
      }
      expect(Math.abs(P / 1000 - total.P.value / kip)).toBeLessThan(0.01);
    }
  });

  it("are every case of the columns, in their order", () => {
    const ids = structure.supports[0].reactions.filter(({ column }) => column === 1).map(({ caseId }) => caseId);
    expect(loads?.cases.map(({ id }) => id)).toEqual(ids);
  });

  it("are left out where reactions are given by hand, and from the view of one support", () => {
    const byHand = readFileSync(join(__dirname, "../../samples/bus-stop-reactions.rootfast"), "utf8");
    expect(buildReport(checkText(byHand), { file: "x" }).structures.map((one) => one.loads)).toEqual([undefined, undefined]);
    expect(loadPage(buildReport(checkText(byHand), { file: "x" }).structures[0])).toEqual([]);
  });
});

describe("reactions at the column bases", () => {
  it("show the torsion a notebook states, and have no place for it where there is none", () => {
    const text = (twist: string): string => `rootfast: 1\ncolumns:\n  sign: { section: HSS6x6x3/8, height: 10 ft, reactions: { dead: { down: 2 kip }, wind from the west: { up: 1 kip, shear x: 1 kip${twist} } } }\n`;
    const [twisted, plain] = [", twist: 2 kip-ft", ""].map((twist) => buildReport(checkText(text(twist)), { file: "x" }).structures[0].supports[0]);
    expect(twisted.reactionHeads).toEqual(["P, kip", "Vx, kip", "Vy, kip", "Mx, kip-ft", "My, kip-ft", "Mz, kip-ft"]);
    expect(twisted.reactions.map((row) => [row.case, row.cells.at(-1)])).toEqual([["dead", "0"], ["wind from the west", "2"]]);
    expect(plain.reactionHeads).toHaveLength(5);
  });

  it("stand in one unit to a component, named in its head", () => {
    for (const { reactions, reactionHeads } of report.structures.flatMap(({ supports }) => supports)) {
      expect(reactionHeads.map((head) => head.split(",")[0])).toEqual(["P", "Vx", "Vy", "Mx", "My", ...(reactions.some(({ base }) => base.Mz) ? ["Mz"] : [])]);
      reactionHeads.forEach((head, at) => {
        const [component, unit] = head.split(", ");
        const factor = { lb: kip / 1000, kip, "lb-ft": (kip * 0.3048) / 1000, "kip-ft": kip * 0.3048 }[unit] ?? Number.NaN;
        for (const { base, cells } of reactions) {
          const value = base[component as keyof typeof base]?.value ?? 0;
          // Four digits, and nothing below half of a thousandth.
          expect(Math.abs(Number(cells[at]) * factor - value)).toBeLessThanOrEqual(Math.max(0.0005 * Math.abs(value), 0.0005 * factor));
        }
      });
    }
  });
});

describe("the summary", () => {
  const html = summaryHtml(report);
  const markdown = summaryMarkdown(report);

  it("has the page of loads, the drawn sign convention and the governing forces", () => {
    for (const said of ["Loads on the roof", "ASCE 7-22 Figure 27.3-4, between the rows of 7.5° and 15°", "C_NW = 1.005", "Governing forces of south at the base, strength level", "Governing forces of south at the underside of the foundation, allowable level"]) {
      expect(html).toContain(said);
    }
    expect(html.match(/<svg /gu)).toHaveLength(1);
    expect(markdown).toContain("Loads on the roof");
    expect(markdown).toContain("Positive senses at a column");
    expect(markdown).not.toContain("<svg");
  });

  it("keeps the rows of a case together on a page", () => {
    expect(html.match(/<tbody class="g">/gu)).toHaveLength(loads?.cases.length ?? 0);
  });

  it("says of a case outside its figure that it is information only", () => {
    const tall = buildReport(checkText(text.replace("width: 20 ft", "width: 9 ft").replaceAll(", 17 ft", ", 7 ft").replaceAll(", 3 ft", ", 2 ft")), { file: "x" });
    const [, , table] = loadPage(tall.structures[0]);
    expect(table.type === "table" && table.rows.some(([name]) => name.includes("information only: mean height over plan length"))).toBe(true);
  });
});

describe("tables of forces", () => {
  it("have their unit in the head and plain numbers below it, so that no column mixes units", () => {
    const page = summaryMarkdown(report);
    const heads = page.split("\n").filter((row) => /\| P\b/u.test(row));
    expect(heads.length).toBeGreaterThanOrEqual(5);
    for (const head of heads) expect(head).toMatch(/P, kip.*Vx, kip.*Vy, kip.*Mx, kip-ft.*My, kip-ft/u);
    const resultants = loadPage(structure).filter((block) => block.type === "table").at(-1);
    const rows = resultants?.type === "table" ? resultants.rows : [];
    // 15 psf on 40 ft by 20 ft.
    expect(rows[0]).toEqual(["dead load", "12", "0", "0", "0", "0"]);
    for (const row of rows) for (const cell of row.slice(1)) expect(cell).toMatch(/^-?[\d.]+$/u);
  });

  it("take the unit of the largest number of each column", () => {
    const forces = (P: number, Mx: number) => ({ P: { value: P * kip }, Vx: { value: 0 }, Vy: { value: 0.02 * kip }, Mx: { value: Mx * kip * 0.3048 }, My: { value: 0 } }) as never;
    const { heads, rows } = forceColumns([forces(4, 0.002), forces(0.014, -0.05)], "US");
    expect(heads).toEqual(["P, kip", "Vx, kip", "Vy, lb", "Mx, lb-ft", "My, kip-ft"]);
    expect(rows).toEqual([
      ["4", "0", "20", "2", "0"],
      ["0.014", "0", "20", "-50", "0"],
    ]);
  });

  it("and so do the pressures of the page of loads", () => {
    const inSi = buildReport(checkText(text.replace("units: US", "units: SI")), { file: "x" });
    const [, , table] = loadPage(inSi.structures[0]);
    const cells = table.type === "table" ? table.rows.map((row) => row[3]) : [];
    expect(cells.filter((cell) => /Pa$/u.test(cell)).length).toBeGreaterThan(10);
    expect(cells.filter((cell) => /\dPa$| Pa$/u.test(cell))).toEqual([]);
  });
});
