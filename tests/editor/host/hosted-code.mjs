#!/usr/bin/env node
/**
 * A stand-in for the desktop's `code` executable, for test runners: it takes the desktop's arguments
 * (`--extensionDevelopmentPath=`, `--extensionTestsPath=`, a folder; others are ignored), opens the folder in a VS Code
 * server's page in a windowless browser, lets the extension tests run in its extension host, passes their log on and
 * exits with the code they report. Any failure to get that far is a message and exit code 1.
 *
 * Environment: ROOTFAST_EDITOR_TIMEOUT (seconds for the whole run, 600), ROOTFAST_EDITOR_LOG=all (pass on
 * every line of the page's console), ROOTFAST_CHROMIUM (see browser.mjs).
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { launchBrowser } from "./browser.mjs";
import { openChannel } from "./channel.mjs";
import { isNoise } from "./noise.mjs";
import { startServer } from "./serve.mjs";

const request = readArguments(process.argv.slice(2));
const cleanups = [];
let closing = false;
for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => void finish(130));

try {
  await finish(await runTests(request));
} catch (error) {
  console.error(`The hosted editor could not run the tests: ${error.message}`);
  await finish(1);
}

function readArguments(args) {
  const values = (name) => args.filter((arg) => arg.startsWith(`--${name}=`)).map((arg) => resolve(arg.slice(name.length + 3)));
  return {
    extensions: values("extensionDevelopmentPath"),
    tests: values("extensionTestsPath")[0],
    folder: args.filter((arg) => !arg.startsWith("-")).map((arg) => resolve(arg))[0],
  };
}

/** Answers the exit code the test module reported. */
async function runTests({ extensions, tests, folder }) {
  if (!tests) throw new Error("--extensionTestsPath= is missing.");
  const dataFolder = mkdtempSync(join(tmpdir(), "rootfast-editor-"));
  cleanups.push(() => rmSync(dataFolder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }));
  const channel = await openChannel();
  cleanups.push(() => channel.close());
  // A page saves by itself unless it is told not to; a desktop does not, and a test must find the files as they were.
  const server = await startServer({ dataFolder, env: channel.env, testDriver: true, settings: { "files.autoSave": "off" } });
  cleanups.push(() => server.stop());
  const browser = await launchBrowser();
  cleanups.push(() => browser.close());

  const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
  channel.attach(page);
  const seconds = Number(process.env.ROOTFAST_EDITOR_TIMEOUT ?? 600);
  const reported = new Promise((resolveCode, reject) => {
    const late = setTimeout(() => reject(new Error(`no result after ${seconds} s.`)), seconds * 1000);
    late.unref();
    page.once("crash", () => reject(new Error("the page crashed.")));
    browser.once("disconnected", () => reject(new Error("the browser ended early.")));
    void page.exposeFunction("codeAutomationExit", (code) => resolveCode(code));
  });
  // A rejection before anybody waits for it is still reported by the wait below.
  reported.catch(() => {});
  await page.exposeFunction("codeAutomationLog", (type, args) => printLog(type, args));
  await page.goto(server.address({ folder, extensions, tests }));
  return await reported;
}

/** Passes on what tests and extensions log. Everything is logged through the page, its level is `type`. */
function printLog(type, args) {
  const line = args.map((arg) => (typeof arg === "string" ? arg : JSON.stringify(arg))).join(" ");
  if (process.env.ROOTFAST_EDITOR_LOG === "all") process.stdout.write(`[${type}] ${line}\n`);
  else if (!isNoise(line)) (type === "error" ? process.stderr : process.stdout).write(`${line}\n`);
}

async function finish(code) {
  if (closing) return;
  closing = true;
  for (const cleanup of cleanups.reverse()) {
    try {
      await cleanup();
    } catch (error) {
      console.error(`While closing the hosted editor: ${error.message}`);
    }
  }
  process.exit(code);
}
