/**
 * Runs the editor tests in a real VS Code: bundles tests/editor/suite, copies the samples into a workspace of their
 * own, and prints `editor: N passed, N failed` as its last line. Needs a build. See README.md beside this file.
 */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { runTests } from "@vscode/test-electron";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const repository = join(here, "..", "..");
const suite = join(here, "suite");
const bundle = join(repository, "dist-tests", "editor-suite.cjs");
const temporary = mkdtempSync(join(tmpdir(), "rootfast-editor-tests-"));
const resultsFile = join(temporary, "results.json");

let failure;
try {
  const files = readdirSync(suite).filter((file) => file.endsWith(".test.ts")).sort();
  await bundleSuite(filterBy(process.argv[2], files));
  const workspace = join(temporary, "notebooks");
  mkdirSync(workspace);
  cpSync(join(repository, "samples"), workspace, { recursive: true });
  await runTests({
    vscodeExecutablePath: executable(),
    // ROOTFAST_EXTENSION lets the host itself be tried with another extension.
    extensionDevelopmentPath: process.env.ROOTFAST_EXTENSION ?? repository,
    extensionTestsPath: bundle,
    launchArgs: [workspace],
    extensionTestsEnv: { ROOTFAST_EDITOR_RESULTS: resultsFile },
  });
} catch (error) {
  failure = error;
}
const results = readResults();
rmSync(temporary, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
if (failure && results.failed === 0) {
  // The editor never got as far as a result; that is a failure of its own.
  console.error(failure.message ?? failure);
  results.failed = 1;
}
console.log(`editor: ${results.passed} passed, ${results.failed} failed`);
process.exitCode = results.failed > 0 || results.passed === 0 ? 1 : 0;

/** The test files to run: all, or those whose name holds the word given on the command line. */
function filterBy(word, files) {
  const chosen = word ? files.filter((file) => file.includes(word)) : files;
  if (chosen.length === 0) throw new Error(`No file of ${suite} ends in .test.ts${word ? ` and holds "${word}"` : ""}.`);
  return chosen;
}

async function bundleSuite(files) {
  const lines = [...files.map((file) => `import './${file}';`), "export { run } from './index.ts';"];
  await build({
    stdin: { contents: lines.join("\n"), resolveDir: suite, loader: "ts" },
    outfile: bundle,
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    sourcemap: "inline",
    external: ["vscode"],
    logLevel: "warning",
  });
}

function executable() {
  const desktop = process.env.ROOTFAST_DESKTOP_CODE;
  if (desktop) return desktop;
  if (process.platform === "win32") {
    throw new Error("The hosted editor runs on Linux and macOS. On Windows name a VS Code in ROOTFAST_DESKTOP_CODE.");
  }
  return join(here, "host", "hosted-code.mjs");
}

function readResults() {
  try {
    return JSON.parse(readFileSync(resultsFile, "utf8"));
  } catch {
    return { passed: 0, failed: 0 };
  }
}
