/**
 * `npm start`: from a fresh clone to the main sample open in VS Code with the extension.
 *
 * Prints the samples' findings in the terminal, then opens the desktop's `code` if there is one, else a VS Code served
 * to the browser, which runs until Ctrl-C.
 *   --check-only  only prints the findings
 *   --no-open     serves the editor and prints its address, without opening anything
 *   --smoke       opens the served editor in a windowless browser, waits for the sample and its findings, takes a
 *                 picture (.cache/start.png) and ends; this is also what happens in CI or without a terminal
 *   --stay        keeps serving even without a terminal
 */
import { spawn } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { delimiter, join } from "node:path";
import { buildAll, ensureDependencies, root, runScript } from "./tasks.mjs";

const flags = new Set(process.argv.slice(2));
const samples = join(root, "samples");
const preferredSample = "landing-shelter.rootfast";

try {
  process.exitCode = await start();
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}

async function start() {
  await ensureDependencies();
  await buildAll();
  const notebooks = readdirSync(samples).filter((name) => /\.rootfast(\.yaml)?$/.test(name)).sort();
  if (notebooks.length === 0) throw new Error("The samples folder holds no .rootfast file.");
  console.log("");
  // Its exit code tells of findings, which samples are meant to have.
  await runScript("dist/cli.js", "check", ...notebooks.map((name) => join("samples", name)));
  console.log("");
  if (flags.has("--check-only")) return 0;

  const sample = join(samples, notebooks.includes(preferredSample) ? preferredSample : notebooks[0]);
  const unattended = process.env.CI || !process.stdout.isTTY;
  const smoke = flags.has("--smoke") || (unattended && !flags.has("--stay") && !flags.has("--no-open"));
  const desktop = smoke || flags.has("--no-open") ? undefined : findProgram("code");
  if (desktop) return openDesktop(desktop, sample);
  return smoke ? trySample(sample) : serveUntilStopped(sample);
}

/** The desktop editor returns at once and lives on by itself. */
function openDesktop(code, sample) {
  console.log(`Opening ${sample} in ${code}`);
  const shell = process.platform === "win32";
  const quote = (text) => (shell ? `"${text}"` : text);
  const args = [`--extensionDevelopmentPath=${root}`, "--new-window", samples, sample].map(quote);
  return new Promise((resolve, reject) => {
    const child = spawn(quote(code), args, { stdio: "inherit", shell });
    child.on("error", reject);
    child.on("close", (exitCode) => resolve(exitCode ?? 1));
  });
}

/** Starts the served editor; answers it with the address of the page that shows the sample. */
async function serve(sample) {
  const { startServer } = await import("../tests/editor/host/serve.mjs");
  const server = await startServer({ dataFolder: join(root, ".cache", "start-editor") });
  return { server, address: server.address({ folder: samples, file: sample, extensions: [root] }) };
}

async function serveUntilStopped(sample) {
  const { server, address } = await serve(sample);
  const stopped = new Promise((resolve) => ["SIGINT", "SIGTERM"].forEach((signal) => process.once(signal, resolve)));
  console.log(`VS Code with Rootfast is served at\n\n  ${address}\n`);
  if (!flags.has("--no-open") && openInBrowser(address)) console.log("It opens in your browser.");
  console.log("Press Ctrl-C to end it.");
  // The pending server keeps Node alive until the signal comes.
  await stopped;
  await server.stop();
  return 0;
}

async function trySample(sample) {
  const { trySampleInBrowser } = await import("./smoke.mjs");
  const { server, address } = await serve(sample);
  try {
    await trySampleInBrowser({ address, sample, picture: join(root, ".cache", "start.png") });
    return 0;
  } finally {
    await server.stop();
  }
}

/** Hands an address to the system's browser, if the system has a screen to show it on. */
function openInBrowser(address) {
  const openers = { darwin: ["open"], win32: ["explorer"] };
  const [program, ...args] = openers[process.platform] ?? ["xdg-open"];
  const screen = process.platform in openers || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (!screen || (program === "xdg-open" && !findProgram(program))) return false;
  const child = spawn(program, [...args, address], { stdio: "ignore", detached: true });
  // The address is printed anyway, so a browser that will not open is no failure.
  child.on("error", () => {});
  child.unref();
  return true;
}

/** The full path of a program on PATH. */
function findProgram(name) {
  const suffixes = process.platform === "win32" ? [".cmd", ".exe"] : [""];
  return (process.env.PATH ?? "")
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => suffixes.map((suffix) => join(folder, name + suffix)))
    .find((file) => existsSync(file));
}
