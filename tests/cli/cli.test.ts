import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { allChecks, allRules } from "../../server/src/checks/registry.js";
import { explainText } from "../../server/src/engine/explain.js";
import { bundled } from "../protocol/bundle.js";
import { notebook, withChange } from "../protocol/notebooks.js";
import { departures } from "./shape.js";

const cli = bundled("server/src/cli.ts");
const samples = join(__dirname, "../../samples");

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rootfast-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

function run(...args: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], { encoding: "utf8", cwd: folder, maxBuffer: 2 ** 28 });
  return { code: status, out: stdout, err: stderr };
}

const shallow = withChange(notebook, "depth: 8 ft", "depth: 1 ft");
const near = withChange(notebook, "units: US", "units: US\n  near from: 0.5");

describe("rootfast check ends with", () => {
  it.each([
    ["0 where everything holds", notebook, [], 0],
    ["0 where something is near", near, [], 0],
    ["1 where something is near and --strict is given", near, ["--strict"], 1],
    ["1 where limit states are not covered and --strict is given", notebook, ["--strict"], 1],
    ["1 where something is over", shallow, [], 1],
    ["1 where something is not checked", withChange(notebook, "    concrete: 4000 psi\n    diameter: 30 in\n", "    concrete: 4000 psi\n"), [], 1],
    ["1 where the text has an error", `${notebook}sit:\n  exposure: C\n`, [], 1],
    ["1 where the text is broken", `${notebook}  half a line\n`, [], 1],
    ["1 for an empty file", "", [], 1],
    ["1 for a file that is no notebook", "[1, 2]", [], 1],
    ["1 for a binary file", "\0\u0001\u0002", [], 1],
    ["1 where nothing stands on anything", "rootfast: 1\nsite:\n  frost depth: 30 in\n", [], 1],
  ])("%s", (_, text, options, expected) => {
    const { code, out, err } = run("check", file("n.rootfast", text), ...options);
    expect(code, `${out}\n${err}`).toBe(expected);
    expect(out).not.toBe("");
    expect(err).toBe("");
  });

  it("2 for a file that is not there, and says so", () => {
    const { code, out, err } = run("check", "nowhere.rootfast");
    expect(code).toBe(2);
    expect(err).toBe("rootfast: nowhere.rootfast cannot be read: there is no such file.\n");
    expect(out.trim()).toBe("");
  });

  it("2 for a folder, and says so", () => {
    mkdirSync(join(folder, "jobs"));
    const { code, err } = run("check", "jobs");
    expect(code).toBe(2);
    expect(err).toBe("rootfast: jobs cannot be read: it is a folder.\n");
  });

  it("2 where one of several files cannot be read, and still checks the others", () => {
    const { code, out, err } = run("check", "nowhere.rootfast", file("n.rootfast", notebook));
    expect(code).toBe(2);
    expect(out).toContain("Path signs");
    expect(err).toContain("there is no such file");
  });

  it.each([
    ["no file", ["check"], /needs at least one file/u],
    ["an option it does not know", ["check", "--colour", "x.rootfast"], /--colour/u],
    ["a format it does not know", ["check", "--format", "xml", "x.rootfast"], /text or json, not xml/u],
    ["a command it does not know", ["chek", "x.rootfast"], /"chek" is not a command/u],
    ["two files to summarize", ["summary", "a", "b"], /one file/u],
    ["a summary format it does not know", ["summary", "--format", "pdf", "a"], /html or markdown, not pdf/u],
  ])("2 and the usage for %s", (_, args, message) => {
    const { code, out, err } = run(...args);
    expect(code).toBe(2);
    expect(err).toMatch(message);
    expect(err).toContain("rootfast check FILE...");
    expect(out).toBe("");
  });

  it("0 for help, on standard output", () => {
    for (const word of ["help", "--help", "-h"]) {
      const { code, out, err } = run(word);
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(out).toContain("rootfast explain [ID | FIELD]");
    }
  });
});

describe("rootfast check prints", () => {
  it("findings with file, line and column, as a terminal follows them", () => {
    const path = file("n.rootfast", shallow);
    const { out } = run("check", path);
    const line = shallow.slice(0, shallow.indexOf("depth: 1 ft")).split("\n").length;
    expect(out.replaceAll(/\s+/gu, " ")).toContain(`n.rootfast:${line}:12: over: Embedment of the pier`);
    expect(out).not.toMatch(/\[object|undefined|NaN/u);
  });

  it.each(readdirSync(samples))("JSON of the documented shape for %s", (name) => {
    for (const options of [[], ["--steps"]]) {
      const { out, err } = run("check", "--format", "json", ...options, join(samples, name));
      expect(err).toBe("");
      const reports = JSON.parse(out);
      expect(departures(reports)).toEqual([]);
      expect(reports).toHaveLength(1);
      const findings = reports[0].structures.flatMap((structure: any) => structure.supports.flatMap((support: any) => support.findings));
      expect(findings.length).toBeGreaterThan(5);
      const made = findings.filter((finding: any) => finding.ratio !== undefined);
      expect(made.every((finding: any) => (options.length > 0) === (finding.steps?.length > 0))).toBe(true);
    }
  });

  it("JSON of the documented shape for a text with every kind of slip, and for none at all", () => {
    for (const text of ["", "[1]", `${shallow}  half\n`, withChange(notebook, "diameter: 30 in", "diameter: 30"), `${notebook}accept:\n  - check: nothing\n`, `${notebook}---\n${shallow}`]) {
      const { out } = run("check", "--format", "json", "--steps", file("n.rootfast", text));
      expect(departures(JSON.parse(out))).toEqual([]);
    }
  });

  it("a ratio that is demand over capacity", () => {
    const { out } = run("check", "--format", "json", file("n.rootfast", shallow));
    const findings = JSON.parse(out)[0].structures[0].supports.flatMap((support: any) => support.findings).filter((finding: any) => finding.ratio !== undefined);
    expect(findings.length).toBeGreaterThan(5);
    for (const { ratio, demand, capacity } of findings) expect(ratio).toBeCloseTo(demand.value / capacity.value, 9);
  });

  it("the validator of the shape sees a field too many, one too few, and a wrong state", () => {
    const { out } = run("check", "--format", "json", file("n.rootfast", notebook));
    const spoiled = (spoil: (report: any) => void) => {
      const reports = JSON.parse(out);
      spoil(reports[0]);
      return departures(reports);
    };
    expect(spoiled(() => undefined)).toEqual([]);
    expect(spoiled((report) => (report.extra = 1))).toHaveLength(1);
    expect(spoiled((report) => delete report.cautions)).toHaveLength(1);
    expect(spoiled((report) => (report.structures[0].supports[0].findings[0].state = "fine"))).toHaveLength(1);
    expect(spoiled((report) => (report.structures[0].supports[0].findings[0].ratio = 2))).toHaveLength(1);
  });
});

describe("rootfast forces", () => {
  it.each([
    ["csv", /^structure,support,column,x \(ft\)/u],
    ["markdown", /^# .*\n\n## /u],
    ["json", /^\{\n {2}"units"/u],
  ])("prints %s", (format, begins) => {
    const { code, out, err } = run("forces", join(samples, "landing-shelter.rootfast"), "--format", format);
    expect(code).toBe(0);
    expect(out).toMatch(begins);
    expect(err).toBe("");
  });

  it("prints CSV unless told otherwise", () => {
    expect(run("forces", join(samples, "bus-stop-reactions.rootfast")).out).toMatch(/^structure,support/u);
  });

  it("ends with 1 where a support has no loads, and says why", () => {
    const { code, err } = run("forces", file("n.rootfast", "rootfast: 1\ncolumns:\n  lost:\n    at: 0 ft, 0 ft\n"));
    expect(code).toBe(1);
    expect(err).toMatch(/^rootfast: lost has no loads: no loads reach it/u);
  });

  it("ends with 1 where the notebook has errors", () => {
    const { code, err } = run("forces", file("n.rootfast", `${notebook}sit:\n  exposure: C\n`));
    expect(code).toBe(1);
    expect(err).toMatch(/the notebook has 1 error; rootfast check .* lists them/u);
  });

  it.each([
    ["no file", [], /forces needs one file/u],
    ["an unknown format", ["x.rootfast", "--format", "pdf"], /--format is csv, markdown or json, not pdf/u],
    ["a file that is not there", ["nowhere.rootfast"], /cannot be read/u],
  ])("ends with 2 for %s", (_, args, words) => {
    const { code, err } = run("forces", ...args);
    expect(code).toBe(2);
    expect(err).toMatch(words);
  });
});

describe("rootfast summary", () => {
  it("writes HTML and Markdown beside the notebook, whole, and leaves nothing else behind", () => {
    const path = file("Path signs.rootfast", notebook);
    const { code, out } = run("summary", path);
    expect(code).toBe(0);
    const written = readdirSync(folder).filter((name) => name !== "Path signs.rootfast").sort();
    expect(written.map((name) => name.replace(/^.*\./u, ""))).toEqual(["html", "md"]);
    for (const name of written) {
      expect(out).toContain(name);
      expect(readFileSync(join(folder, name), "utf8")).toContain("Embedment of the pier");
    }
  });

  it("replaces an earlier summary in one step: what is there is never half a document", () => {
    const path = file("n.rootfast", notebook);
    run("summary", path, "--format", "html");
    const [name] = readdirSync(folder).filter((entry) => entry.endsWith(".html"));
    writeFileSync(join(folder, name), "an older summary");
    run("summary", path, "--format", "html");
    expect(readFileSync(join(folder, name), "utf8")).toMatch(/<\/html>\s*$/u);
    expect(readdirSync(folder)).toHaveLength(2);
  });

  it("leaves the earlier summary and no rest where it cannot write", () => {
    const path = file("n.rootfast", notebook);
    mkdirSync(join(folder, "taken.html"));
    const { code, err } = run("summary", path, "--out", join(folder, "taken.html"));
    expect(code).toBe(2);
    expect(err).toMatch(/taken\.html cannot be written/u);
    expect(readdirSync(folder).sort()).toEqual(["n.rootfast", "taken.html"]);
  });

  it("prints to standard output where asked, one format", () => {
    const path = file("n.rootfast", notebook);
    expect(run("summary", path, "--format", "html", "--out", "-").out).toMatch(/^<!doctype html>/iu);
    expect(run("summary", path, "--format", "markdown", "--out", "-").out).toMatch(/^# /u);
    expect(readdirSync(folder)).toEqual(["n.rootfast"]);
  });

  it("takes the format from the name it is given", () => {
    const path = file("n.rootfast", notebook);
    run("summary", path, "--out", join(folder, "out.html"));
    run("summary", path, "--out", join(folder, "out.md"));
    expect(readFileSync(join(folder, "out.html"), "utf8")).toMatch(/^<!doctype html>/iu);
    expect(readFileSync(join(folder, "out.md"), "utf8")).toMatch(/^# /u);
  });

  it("ends with 1 where something is over and 2 where there is no file", () => {
    expect(run("summary", file("n.rootfast", shallow)).code).toBe(1);
    expect(run("summary", "nowhere.rootfast").code).toBe(2);
  });
});

describe("rootfast explain", () => {
  const declared = [...allChecks, ...allRules];

  it("lists every check and rule", () => {
    const { code, out } = run("explain");
    expect(code).toBe(0);
    expect(out.trim().split("\n").map((line) => line.split(" ")[0])).toEqual(declared.map(({ id }) => id));
  });

  it.each(declared.map((item) => [item.id, item] as const))("says of %s what fails, how it is seen, and by which clause", (_, item) => {
    const text = explainText(item);
    for (const part of [item.title, item.fails, item.seen, item.clause, item.range]) expect(text.replaceAll(/\s+/gu, " ")).toContain(part.replaceAll(/\s+/gu, " "));
    expect(text).not.toMatch(/\[object|undefined|NaN/u);
  });

  it("says it of all that are asked for, one after the other", () => {
    const { code, out, err } = run("explain", ...declared.map(({ id }) => id));
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out.trim()).toBe(declared.map(explainText).join("\n").trim());
  });

  it.each([
    ["foundations.*.depth", ["Depth of the underside below grade", "pier.uplift"]],
    ["foundations.my pier.depth", ["foundations.*.depth"]],
    ["site.wind speed", ["Basic wind speed", "mph", "the loads"]],
    ["bases.*", ["plate", "anchors", "Left out"]],
  ])("says of the field %s what it is and what uses it", (field, parts) => {
    const { code, out } = run("explain", field);
    expect(code).toBe(0);
    for (const part of parts) expect(out).toContain(part);
  });

  it("ends with 2 for an id there is not", () => {
    const { code, err } = run("explain", "pier.nothing");
    expect(code).toBe(2);
    expect(err).toContain('there is no check and no field "pier.nothing"');
  });

  it("ends with 2 where one of several ids is none, and still says the others", () => {
    const { code, out, err } = run("explain", "pier.nothing", "pier.uplift");
    expect(code).toBe(2);
    expect(out).toContain("pier.uplift");
    expect(err).toContain('"pier.nothing"');
  });
});
