import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { allChecks } from "../../server/src/checks/registry.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { actual, allowance, quantity, readExample } from "./example.js";

const files = readdirSync(__dirname).filter((name) => name.endsWith(".md") && name !== "README.md");
const examples = files.map((file) => ({ file, ...readExample(readFileSync(join(__dirname, file), "utf8")) }));

describe.each(examples)("$title", ({ file, notebook, rows }) => {
  const report = buildReport(checkText(notebook), { file, steps: true });

  it("is a notebook without errors", () => {
    expect(report.problems.filter((problem) => problem.severity === "error").map((problem) => problem.message)).toEqual([]);
  });

  it("calculates with formulas its checks list", () => {
    for (const finding of report.structures.flatMap((structure) => structure.supports.flatMap((support) => support.findings))) {
      const declared = allChecks.find((check) => check.id === finding.check)?.formulas?.map((formula) => formula.id) ?? [];
      const used = (finding.steps ?? []).flatMap((step) => (step.type === "formula" ? [step.id] : []));
      expect(used.filter((id) => !declared.includes(id)), finding.check).toEqual([]);
    }
  });

  it.each(rows)("$subject $check $value is $expected", (row) => {
    const found = actual(report, row);
    if (row.value === "state") {
      expect(found).toBe(row.expected);
      return;
    }
    expect(found, `there is no ${row.value} in ${row.check} at ${row.subject}`).toBeTypeOf("number");
    const wanted = quantity(row.expected);
    expect(Math.abs((found as number) - wanted), `found ${found}, wanted ${wanted} (SI)`).toBeLessThanOrEqual(allowance(row.tolerance, wanted));
  });
});

describe("The worked examples together", () => {
  it("touch every check there is", () => {
    const touched = new Set(examples.flatMap((example) => example.rows.map((row) => row.check)));
    // One calculation may stand under two ids, for loads of the roof and for stated reactions.
    const calculations = new Set(allChecks.filter(({ id }) => touched.has(id)).map(({ evaluate }) => evaluate));
    expect(allChecks.filter(({ evaluate }) => !calculations.has(evaluate)).map(({ id }) => id)).toEqual([]);
  });
});
