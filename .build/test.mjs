/**
 * `npm test`: packages, build, type check, the tests of the engine, and the tests in a real VS Code. Every part prints
 * its own summary; the last line is `total: N passed, N failed`. A part that breaks, or that runs no test, counts as one
 * failure.
 */
import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { buildAll, ensureDependencies, root, runScript } from "./tasks.mjs";

const output = join(root, "tests", "output");
const total = { passed: 0, failed: 0 };

if ((await step("packages", ensureDependencies)) && (await step("build", buildAll))) {
  await step("types", checkTypes);
  add("unit", await unitTests());
  add("editor", await editorTests());
}
console.log(`total: ${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;

/** Runs a part that has no tests of its own; answers whether it went well. */
async function step(name, work) {
  try {
    await work();
    console.log(`${name}: ok`);
    return true;
  } catch (error) {
    console.log(`${name}: failed, ${error.message}`);
    total.failed += 1;
    return false;
  }
}

function add(name, { passed, failed, broken }) {
  const nothing = passed + failed === 0;
  if (broken && failed === 0) console.log(`${name}: ${broken}`);
  else if (nothing) console.log(`${name}: no test ran`);
  total.passed += passed;
  total.failed += failed === 0 && (broken || nothing) ? 1 : failed;
}

async function checkTypes() {
  const code = await runScript("node_modules/typescript/bin/tsc", "--noEmit", "-p", "tsconfig.json");
  if (code !== 0) throw new Error("tsc found errors");
}

async function unitTests() {
  const report = join(output, "vitest.json");
  mkdirSync(output, { recursive: true });
  rmSync(report, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const code = await runScript("node_modules/vitest/vitest.mjs", "run", ...reporters);
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, "utf8"));
    console.log(`unit: ${numPassedTests} passed, ${numFailedTests} failed`);
    return { passed: numPassedTests, failed: numFailedTests, broken: code === 0 ? undefined : `vitest ended with code ${code}` };
  } catch (error) {
    return { passed: 0, failed: 0, broken: `vitest left no report (${error.message})` };
  }
}

/** The runner's last line holds its numbers; all it prints is passed on. */
function editorTests() {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(root, "tests/editor/run.mjs")], { cwd: root, stdio: ["ignore", "pipe", "inherit"] });
    let printed = "";
    child.stdout.setEncoding("utf8").on("data", (chunk) => {
      printed += chunk;
      process.stdout.write(chunk);
    });
    child.on("close", (code) => {
      const numbers = [...printed.matchAll(/^editor: (\d+) passed, (\d+) failed$/gm)].at(-1);
      if (!numbers) return resolve({ passed: 0, failed: 0, broken: "the runner gave no result" });
      const [passed, failed] = numbers.slice(1).map(Number);
      return resolve({ passed, failed, broken: code === 0 ? undefined : `the runner ended with code ${code}` });
    });
  });
}
