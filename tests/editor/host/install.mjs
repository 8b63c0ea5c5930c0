/**
 * Installs the hosted editor (a VS Code server) and its browser from the npm registry into `.cache/editor-host/`,
 * once per lock file. Only built-ins of Node are imported, so it also works before the extension's own `npm ci`.
 */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { chmodSync, copyFileSync, cpSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { fillOnce } from "./cache.mjs";

const here = dirname(fileURLToPath(import.meta.url));
/** The repository's root. */
export const repository = join(here, "..", "..", "..");
const cacheRoot = join(repository, ".cache", "editor-host");

/**
 * Makes sure the host is installed and answers where its parts are: `folder` (the install), `server` (the VS Code
 * server's entry), `modules` (the packages beside it). Rejects with npm's own message if the registry fails.
 */
export async function ensureHost() {
  const stamp = createHash("sha256").update(readFileSync(join(here, "package-lock.json"))).digest("hex").slice(0, 12);
  const folder = join(cacheRoot, stamp);
  if (!existsSync(folder)) {
    const started = Date.now();
    console.log("Installing the hosted editor (about 540 MB, the first time only) ...");
    await fillOnce(folder, install);
    removeOlder(stamp);
    console.log(`The hosted editor is ready after ${((Date.now() - started) / 1000).toFixed(0)} s.`);
  }
  const modules = join(folder, "node_modules");
  return { folder, modules, server: join(codeFolder(folder), "out", "server-main.js") };
}

const codeFolder = (folder) => join(folder, "node_modules", "code-server", "lib", "vscode");

async function install(folder) {
  for (const file of ["package.json", "package-lock.json"]) copyFileSync(join(here, file), join(folder, file));
  // The install scripts would compile native modules or fetch from elsewhere; the server runs without them.
  await npm(["ci", "--ignore-scripts"], folder);
  const code = codeFolder(folder);
  await npm(["install", "--omit=dev", "--ignore-scripts"], code);
  placeRipgrep(folder, code);
}

/** Text search and `findFiles` need ripgrep, which the server looks for where its skipped install script puts it. */
function placeRipgrep(folder, code) {
  const name = process.platform === "win32" ? "rg.exe" : "rg";
  const binary = join(folder, "node_modules", "@vscode", `ripgrep-${process.platform}-${process.arch}`, "bin", name);
  if (!existsSync(binary)) return;
  const target = join(code, "node_modules", "@vscode", "ripgrep", "bin");
  mkdirSync(target, { recursive: true });
  cpSync(binary, join(target, name));
  chmodSync(join(target, name), 0o755);
}

/** Installs of earlier lock files are of no more use. */
function removeOlder(stamp) {
  for (const entry of readdirSync(cacheRoot)) {
    if (!entry.startsWith(stamp)) rmSync(join(cacheRoot, entry), { recursive: true, force: true });
  }
}

/** Runs npm in a folder. Its output is shown only if it fails. */
function npm(args, cwd) {
  const quiet = ["--no-audit", "--no-fund", "--loglevel=error"];
  // Settings that an outer `npm test` or `npm start` exports for its own package do not apply to this one.
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([key]) => !/^npm_(package|lifecycle|command|config_(local_)?prefix)/i.test(key) && key !== "NODE_ENV"),
  );
  return new Promise((resolve, reject) => {
    const child = spawn("npm", [...args, ...quiet], { cwd, env, shell: process.platform === "win32" });
    let output = "";
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk) => (output += chunk));
    child.on("error", reject);
    child.on("close", (code) => {
      if (code === 0) resolve();
      else reject(new Error(`npm ${args.join(" ")} failed while installing the hosted editor:\n${output}`));
    });
  });
}
