/** What the command line says of a text: the same engine on another way, for comparing with what the editor shows. */
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as vscode from "vscode";
import type { FindingReport, Report, SupportReport } from "../../../shared/report.js";

/** The report of `rootfast check --format json --steps`. Rejects where the command says something else than a report. */
export async function check(text: string): Promise<Report> {
  const extension = vscode.extensions.getExtension("rootfast.rootfast");
  if (!extension) throw new Error("the extension is not installed in this VS Code");
  const folder = await mkdtemp(join(tmpdir(), "rootfast-check-"));
  try {
    const file = join(folder, "notebook.rootfast");
    await writeFile(file, text);
    const program = join(extension.extensionPath, "dist", "cli.js");
    const printed = await output([program, "check", "--format", "json", "--steps", file]);
    const [report] = JSON.parse(printed) as Report[];
    return report;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Exit code 1 says that something is over, which is an answer. */
function output(args: readonly string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    const env = { ...process.env, ELECTRON_RUN_AS_NODE: "1" };
    execFile(process.execPath, args, { env, maxBuffer: 1 << 28 }, (error, stdout, stderr) => {
      if (error && error.code !== 1) reject(new Error(`rootfast check: ${error.message}\n${stderr}`));
      else resolve(stdout);
    });
  });
}

export function supportOf(report: Report, path: string): SupportReport {
  const support = report.structures.flatMap(({ supports }) => supports).find((one) => one.path === path);
  if (!support) throw new Error(`the command line knows no support ${path}`);
  return support;
}

export function findingOf(report: Report, path: string, id: string): FindingReport {
  const finding = supportOf(report, path).findings.find((one) => one.check === id);
  if (!finding) throw new Error(`the command line has no finding ${id} of ${path}`);
  return finding;
}
