/** Times in milliseconds, and a table of them beside their budgets. */
export function time(work: () => unknown): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}

/** The value below which this share of the times lies. */
export function percentile(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
}

export const median = (times: readonly number[]): number => percentile(times, 0.5);

export interface Row {
  readonly what: string;
  readonly times: readonly number[];
  /** Budget of the share named, ms. */
  readonly budget?: { readonly at: "p50" | "p95"; readonly ms: number };
}

const ms = (value: number): string => (value < 10 ? value.toFixed(2) : value.toFixed(1));

/** Prints rows in columns; the last says whether the budget is met. */
export function printRows(title: string, rows: readonly Row[]): void {
  const cells = rows.map(({ what, times, budget }) => {
    const at = budget && percentile(times, budget.at === "p95" ? 0.95 : 0.5);
    const judged = budget && at !== undefined ? `${at <= budget.ms ? "met" : "MISSED"}: ${budget.at} within ${ms(budget.ms)}` : "";
    return [what, ms(median(times)), ms(percentile(times, 0.95)), ms(Math.max(...times)), String(times.length), judged];
  });
  printTable(title, ["ms", "p50", "p95", "max", "times", "budget"], cells);
}

export function printTable(title: string, heads: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i].length)));
  const line = (row: readonly string[]) => row.map((cell, i) => (i === 0 || i === row.length - 1 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join("  ").trimEnd();
  console.log(`\n${title}\n${line(heads)}\n${rows.map(line).join("\n")}`);
}
