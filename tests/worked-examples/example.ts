/** Reads a worked example written in Markdown: title, source, one notebook, one table of expected values. */
import { readNumeral } from "../../server/src/units/numeral.js";
import { unitFrom } from "../../server/src/units/dimension.js";
import type { Report, StepReport } from "../../shared/report.js";

export interface Row {
  readonly subject: string;
  readonly check: string;
  readonly value: string;
  readonly expected: string;
  readonly tolerance: string;
}

export interface Example {
  readonly title: string;
  readonly source: string;
  readonly notebook: string;
  readonly rows: readonly Row[];
}

export function readExample(markdown: string): Example {
  const title = /^# (.+)$/mu.exec(markdown)?.[1];
  const source = /^Source: ([\s\S]+?)\n\s*\n/mu.exec(markdown)?.[1].replace(/\s+/gu, " ");
  const notebook = /```yaml\r?\n([\s\S]+?)```/u.exec(markdown)?.[1];
  const rows = markdown
    .split(/\r?\n/u)
    .filter((line) => line.startsWith("|"))
    .slice(2)
    .map((line) => line.split("|").slice(1, -1).map((cell) => cell.trim()))
    .map(([subject, check, value, expected, tolerance]) => ({ subject, check, value, expected, tolerance: tolerance ?? "" }));
  if (!title || !source || !notebook || rows.length === 0) throw new Error("A worked example needs a title, a source line, a notebook and a table with rows.");
  return { title, source, notebook, rows };
}

/** A number with its unit, in SI. */
export function quantity(text: string): number {
  const trimmed = text.trim().replace("−", "-");
  const sign = trimmed.startsWith("-") ? 1 : 0;
  const numeral = readNumeral(trimmed, sign);
  if (!numeral) throw new Error(`"${text}" is not a number with a unit.`);
  const rest = trimmed.slice(numeral.end).trim();
  const unit = rest === "" ? { factor: 1 } : unitFrom(rest);
  if (!unit) throw new Error(`"${rest}" is not a unit.`);
  return (sign ? -1 : 1) * numeral.value * unit.factor;
}

/** The allowed distance from the expected value, SI: a share of it, or a quantity. */
export function allowance(tolerance: string, expected: number): number {
  const share = /^([\d.]+)\s*%$/u.exec(tolerance);
  if (share) return (Math.abs(expected) * Number(share[1])) / 100;
  return quantity(tolerance);
}

const lastOf = (steps: readonly StepReport[], symbol: string): number | undefined => {
  for (const step of [...steps].reverse()) {
    if (step.type === "formula" && step.result.symbol === symbol) return step.result.value;
    if (step.type === "routine") {
      const found = [...step.found, ...step.given].find((value) => value.symbol === symbol);
      if (found) return found.value;
    }
  }
  return undefined;
};

/** What the report says for a row: a state as text, anything else as an SI number. */
export function actual(report: Report, row: Row): number | string | undefined {
  const [structure] = report.structures;
  const support = structure?.supports.find((item) => item.path === row.subject);
  if (row.check === "loads") {
    const reaction = /^(\S+) base\.(P|Vx|Vy|Mx|My)(?: place (\d+))?$/u.exec(row.value);
    if (reaction) {
      const [, id, component, place] = reaction;
      return support?.reactions.find((item) => item.caseId === id && item.column === Number(place ?? 1))?.base[component as "P"].value;
    }
    for (const derivation of [...(structure?.loadDerivations ?? [])].reverse()) {
      const found = lastOf(derivation.steps, row.value);
      if (found !== undefined) return found;
    }
    return undefined;
  }
  const finding = support?.findings.find((item) => item.check === row.check) ?? structure?.supports.flatMap((item) => item.findings).find((item) => item.check === row.check && item.subject === row.subject);
  if (!finding) return undefined;
  if (row.value === "state") return finding.state;
  if (row.value === "ratio") return finding.ratio;
  if (row.value === "demand") return finding.demand?.value;
  if (row.value === "capacity") return finding.capacity?.value;
  return lastOf(finding.steps ?? [], row.value);
}
