import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Report, StepReport } from "../../shared/report.js";
import { starters } from "../../server/src/summary/starters.js";
import { bundled } from "./bundle.js";
import { notebook } from "./notebooks.js";
import { saidAs, sample, serving } from "./serving.js";
import { faultsOf } from "../drawing/sound.js";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "rootfast-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What the command line says of the same text, steps included. Its exit code tells of findings and is no matter here. */
function onCommandLine(text: string): Report {
  const file = join(folder, "same.rootfast");
  writeFileSync(file, text);
  let printed: string;
  try {
    printed = execFileSync(process.execPath, [bundled("server/src/cli.ts"), "check", "--format", "json", "--steps", file], { encoding: "utf8", maxBuffer: 2 ** 28 });
  } catch (error) {
    printed = (error as { stdout: string }).stdout;
  }
  return (JSON.parse(printed) as Report[])[0];
}

/** Steps without the MathML, which the command line leaves out. */
const withoutMathml = (steps: readonly StepReport[] | undefined) => steps?.map((step) => JSON.parse(JSON.stringify({ ...step, mathml: undefined })));

describe("The derivation request", () => {
  const client = serving();

  it.each([
    ["a structure under its roof", sample("landing-shelter")],
    ["reactions by hand", notebook],
    ["several documents", sample("bus-stop-reactions")],
  ])("gives the symbols, values and ratios the command line gives, for %s", async (_, text) => {
    const open = client().open(text);
    await open.answer();
    const report = onCommandLine(text);
    const supports = report.structures.flatMap((structure) => structure.supports);
    const { subjects } = (await open.derivation()) ?? { subjects: [] };
    expect(subjects.map(({ path }) => path)).toEqual(supports.map(({ path }) => path));
    let formulas = 0;
    for (const expected of supports) {
      const reply = await open.derivation(expected.path);
      expect(reply?.version).toBe(1);
      const findings = reply?.support?.findings ?? [];
      expect(findings.map(({ check, state, ratio }) => [check, state, ratio])).toEqual(expected.findings.map(({ check, state, ratio }) => [check, state, ratio]));
      findings.forEach((finding, i) => expect(withoutMathml(finding.steps), finding.check).toEqual(withoutMathml(expected.findings[i].steps)));
      for (const step of findings.flatMap(({ steps }) => steps ?? [])) {
        if (step.type !== "formula") continue;
        formulas += 1;
        for (const line of ["formula", "substituted", "result"] as const) expect(step.mathml?.[line], step.id).toMatch(/^<math[\s>][\s\S]*<\/math>$/u);
      }
    }
    expect(formulas).toBeGreaterThan(5);
    await open.close();
  });

  it("carries the drawings of the support and of its checks", async () => {
    const open = client().open(sample("landing-shelter"));
    await open.answer();
    const support = (await open.derivation("columns.south"))?.support;
    expect(support?.drawings?.map(({ caption }) => caption.split(",")[0])).toEqual(["Elevation looking north", "Section looking north"]);
    const drawn = (support?.findings ?? []).filter(({ drawings }) => drawings && drawings.length > 0);
    expect(drawn.map(({ check }) => check)).toEqual(expect.arrayContaining(["anchors.breakout-tension", "anchors.breakout-shear", "base.bearing"]));
    for (const { svg } of [...(support?.drawings ?? []), ...drawn.flatMap(({ drawings }) => drawings ?? [])]) expect(faultsOf(svg)).toEqual([]);
    await open.close();
  });

  it("shows the first support where none is named, and none where the name is unknown", async () => {
    const open = client().open(notebook);
    await open.answer();
    expect((await open.derivation())?.support?.path).toBe("columns.west sign");
    const unknown = await open.derivation("columns.nowhere");
    expect(unknown?.support).toBeUndefined();
    expect(unknown?.subjects).toHaveLength(2);
    await open.close();
  });

  it("says that a step's substitution holds its symbols' values", async () => {
    const open = client().open(notebook);
    await open.answer();
    const embedment = (await open.derivation("columns.west sign"))?.support?.findings.find(({ check }) => check === "pier.embedment");
    for (const step of embedment?.steps ?? []) {
      if (step.type !== "formula") continue;
      for (const symbol of step.symbols.filter(({ value }) => value !== 0 && Math.abs(value) > 1e-9)) {
        expect(step.plain.substituted.replaceAll("−", "-"), `${step.id}, ${symbol.symbol}`).toContain(symbol.shown.replaceAll("−", "-").split(" ")[0]);
      }
    }
    expect(embedment?.steps?.some(({ type }) => type === "formula")).toBe(true);
    await open.close();
  });
});

describe("The summary request", () => {
  const client = serving();

  it.each([
    ["file:///jobs/River%20landing.rootfast", "River landing"],
    ["file:///jobs/landing.rootfast.yaml", "landing"],
    ["untitled:Untitled-1", "Untitled-1"],
  ])("names the documents after %s", async (uri, stem) => {
    const open = client().open(sample("landing-shelter"), uri);
    await open.answer();
    const summary = await open.summary();
    expect(summary?.stem).toMatch(new RegExp(`^${stem}`, "u"));
    expect(summary?.stem).not.toMatch(/[:/\\%]/u);
    for (const text of [summary?.html, summary?.markdown]) {
      for (const part of ["River landing shelter", "Embedment of the pier", "IBC 2021 1807.3", "Preliminary", "dowel bond in the ledge"]) expect(text).toContain(part);
    }
    expect(summary?.html).toMatch(/^<!doctype html>/iu);
    await open.close();
  });

  it("puts what a notebook says into HTML as text", async () => {
    const open = client().open(notebook.replace("name: Path signs", "name: <script>alert(1)</script> & signs"));
    await open.answer();
    expect((await open.summary())?.html).toContain("&lt;script&gt;alert(1)&lt;/script&gt; &amp; signs");
    expect((await open.summary())?.html).not.toContain("<script>alert");
    await open.close();
  });
});

describe("The starter request", () => {
  const client = serving();

  it.each(starters.map(({ kind }) => kind))("gives a notebook of the kind %s that has no error", async (kind) => {
    const reply = await client().open("", `file:///s/${kind}.rootfast`).starter(kind);
    expect(reply.kinds.map((item) => item.kind)).toEqual(starters.map((item) => item.kind));
    const open = client().open(reply.text);
    expect(saidAs(open.text, await open.diagnostics(), "error", "warning")).toEqual([]);
    await open.close();
    // The empty text it was asked from.
    await client().next(`file:///s/${kind}.rootfast`);
  });

  it("gives the list and no text for a kind it does not know", async () => {
    const reply = await client().request<{ text: string; kinds: unknown[] }>("rootfast/starter", { kind: "castle" });
    expect(reply.text).toBe("");
    expect(reply.kinds).toHaveLength(starters.length);
  });
});
