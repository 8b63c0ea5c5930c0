/** What has to be so of the answer to any text. */
import { expect } from "vitest";
import type { Checked } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";

export const reportOf = (checked: Checked) => buildReport(checked, { file: "x", steps: true });

/** What has to be so of any report: places inside the text, finite numbers, states that agree with them. */
export function sound(text: string, checked: Checked): void {
  const { problems, structures } = reportOf(checked);
  const lines = text.split(/\r\n|\r|\n/u);
  for (const { place, message } of [...problems, ...structures.flatMap(({ supports }) => supports.flatMap(({ findings }) => findings))]) {
    expect(message).not.toMatch(/\bNaN\b|\bInfinity\b|undefined|\[object|the check itself failed|the rule itself failed/u);
    expect(place.endLine).toBeLessThan(lines.length);
    expect(place.character).toBeLessThanOrEqual(lines[place.line].length + 1);
  }
  for (const finding of structures.flatMap(({ supports }) => supports.flatMap(({ findings }) => findings))) {
    for (const amount of [finding.demand, finding.capacity]) if (amount) expect(Number.isFinite(amount.value), finding.message).toBe(true);
    if (finding.state === "holds" || finding.state === "near") expect(finding.ratio ?? 0).toBeLessThanOrEqual(1);
  }
}
