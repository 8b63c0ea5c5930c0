/** The command line: the same engine, for a terminal or a build. */
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { parseArgs } from "node:util";
import { allChecks, allRules, findDeclared } from "./checks/registry.js";
import { checkText } from "./engine/check-text.js";
import { explainField, explainText } from "./engine/explain.js";
import { forcesOf } from "./engine/forces.js";
import { buildReport } from "./engine/report.js";
import { exitCode, reportText } from "./engine/report-text.js";
import type { Report } from "../../shared/report.js";
import { forcesCsv, forcesJson, forcesMarkdown } from "./summary/forces-table.js";
import { summaryHtml } from "./summary/html.js";
import { summaryMarkdown } from "./summary/markdown.js";
import { summaryStem } from "./summary/stem.js";

const usage = `rootfast: live checks of foundations and anchorage for open-sided structures

  rootfast check FILE... [--format text|json] [--steps] [--strict]
      Checks notebooks. Exit 0: nothing is over or not checked. 1: something is, or a notebook has errors.
      2: a file cannot be read. --strict counts near and not covered too. --steps adds every step (JSON).
  rootfast summary FILE [--format html|markdown] [--out FILE]
      Writes the summary beside the notebook, as HTML and Markdown; --format picks one, --out names it, - prints it.
  rootfast forces FILE [--format csv|markdown|json]
      Prints the forces at every column, case by case and combination by combination: at its top, its base and the underside
      of its foundation. Exit 1: some column has none, or the notebook has errors.
  rootfast explain [ID | FIELD]...
      Says what a check is: what fails, how it is seen, clause, formulas, symbols; or what a field of the notebook is,
      as in "site.wind speed" or "foundations.*.depth". Without either lists the checks.
`;

const say = (text: string) => process.stdout.write(text.endsWith("\n") ? text : `${text}\n`);
const complain = (text: string) => process.stderr.write(`rootfast: ${text}\n`);

/** The notebook's text, or undefined after saying why not. */
function read(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    complain(`${file} cannot be read: ${code === "ENOENT" ? "there is no such file" : code === "EISDIR" ? "it is a folder" : (code ?? String(error))}.`);
    return undefined;
  }
}

function check(args: string[]): number {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { format: { type: "string", default: "text" }, steps: { type: "boolean" }, strict: { type: "boolean" } },
  });
  if (positionals.length === 0) return misuse("check needs at least one file.");
  if (values.format !== "text" && values.format !== "json") return misuse(`--format is text or json, not ${values.format}.`);
  const reports: Report[] = [];
  let code = 0;
  for (const file of positionals) {
    const text = read(file);
    if (text === undefined) {
      code = 2;
      continue;
    }
    const report = buildReport(checkText(text), { file, steps: values.steps });
    reports.push(report);
    code = Math.max(code, exitCode(report, values.strict ?? false));
  }
  if (values.format === "json") say(JSON.stringify(reports, undefined, 2));
  else say(reports.map(reportText).join("\n"));
  return code;
}

/** Writes whole or not at all. */
function writeAtomically(file: string, text: string): void {
  const temporary = join(dirname(file), `.${basename(file)}.${process.pid}.tmp`);
  try {
    writeFileSync(temporary, text);
    renameSync(temporary, file);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
}

function summary(args: string[]): number {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options: { format: { type: "string" }, out: { type: "string" } } });
  if (positionals.length !== 1) return misuse("summary needs one file.");
  if (values.format !== undefined && values.format !== "html" && values.format !== "markdown") return misuse(`--format is html or markdown, not ${values.format}.`);
  const [file] = positionals;
  const text = read(file);
  if (text === undefined) return 2;
  const report = buildReport(checkText(text), { file: basename(file), drawings: "supports" });
  const wanted = values.format ? [values.format] : values.out !== undefined ? [/\.html?$/iu.test(values.out) ? "html" : "markdown"] : ["html", "markdown"];
  for (const format of wanted) {
    const body = format === "html" ? summaryHtml(report) : summaryMarkdown(report);
    if (values.out === "-") {
      say(body);
      continue;
    }
    const target = values.out ?? join(dirname(file), `${summaryStem(file)}.${format === "html" ? "html" : "md"}`);
    try {
      writeAtomically(target, body);
    } catch (error) {
      complain(`${target} cannot be written: ${(error as NodeJS.ErrnoException).code ?? String(error)}.`);
      return 2;
    }
    say(`wrote ${target}`);
  }
  return exitCode(report, false);
}

const forceFormats = { csv: forcesCsv, markdown: forcesMarkdown, json: forcesJson } as const;

function forces(args: string[]): number {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options: { format: { type: "string", default: "csv" } } });
  if (positionals.length !== 1) return misuse("forces needs one file.");
  const { format } = values;
  if (format !== "csv" && format !== "markdown" && format !== "json") return misuse(`--format is csv, markdown or json, not ${format}.`);
  const [file] = positionals;
  const text = read(file);
  if (text === undefined) return 2;
  const checked = checkText(text);
  const structures = forcesOf(checked);
  say(forceFormats[format](structures));
  for (const { without } of structures) for (const { support, because } of without) complain(`${support} has no loads: ${because}.`);
  const errors = checked.problems.filter(({ severity }) => severity === "error").length;
  if (errors > 0) complain(`the notebook has ${errors} error${errors === 1 ? "" : "s"}; rootfast check ${file} lists them.`);
  return errors > 0 || structures.length === 0 || structures.some(({ without, rows }) => without.length > 0 || rows.length === 0) ? 1 : 0;
}

function explain(args: string[]): number {
  const { positionals } = parseArgs({ args, allowPositionals: true });
  if (positionals.length === 0) {
    say([...allChecks, ...allRules].map((item) => `${item.id.padEnd(30)} ${item.title}`).join("\n"));
    return 0;
  }
  const texts = positionals.map((wanted) => {
    const found = findDeclared(wanted);
    return found ? explainText(found) : explainField(wanted);
  });
  const said = texts.filter((text) => text !== undefined);
  if (said.length > 0) say(said.join("\n"));
  for (const [i, wanted] of positionals.entries()) {
    if (texts[i] === undefined) complain(`there is no check and no field "${wanted}"; rootfast explain lists the checks, rootfast explain foundations.* the fields of a foundation.`);
  }
  return said.length === texts.length ? 0 : 2;
}

function misuse(message: string): number {
  complain(message);
  process.stderr.write(`\n${usage}`);
  return 2;
}

function main(argv: string[]): number {
  const [command, ...rest] = argv;
  try {
    if (command === "check") return check(rest);
    if (command === "summary") return summary(rest);
    if (command === "forces") return forces(rest);
    if (command === "explain") return explain(rest);
  } catch (error) {
    // parseArgs throws on an option it does not know.
    return misuse(error instanceof Error ? error.message : String(error));
  }
  if (command === undefined || command === "help" || command === "--help" || command === "-h") {
    say(usage);
    return command === undefined ? 2 : 0;
  }
  return misuse(`"${command}" is not a command.`);
}

// Whoever reads the output may stop reading before its end.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});
process.exitCode = main(process.argv.slice(2));
