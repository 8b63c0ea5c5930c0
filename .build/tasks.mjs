/** What the start and the test jobs share. Only built-ins of Node: it runs before anything is installed. */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The repository's root. */
export const root = join(dirname(fileURLToPath(import.meta.url)), "..");

/** Runs a program in the root with this terminal, and answers its exit code. */
export function run(program, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { cwd: root, stdio: "inherit", ...options });
    child.on("error", reject);
    child.on("close", (code) => resolve(code ?? 1));
  });
}

/** Runs a Node script of the repository and answers its exit code. */
export const runScript = (script, ...args) => run(process.execPath, [join(root, script), ...args]);

/** Installs the packages of the lock file, unless the last install was of this very lock file. */
export async function ensureDependencies() {
  const stampFile = join(root, ".cache", "dependencies.stamp");
  const hash = createHash("sha256").update(readFileSync(join(root, "package-lock.json"))).digest("hex");
  const installed = existsSync(join(root, "node_modules")) && existsSync(stampFile);
  if (installed && readFileSync(stampFile, "utf8") === hash) return;
  console.log("Installing the packages of package-lock.json ...");
  const args = ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"];
  const code = await run("npm", args, { shell: process.platform === "win32" });
  if (code !== 0) throw new Error(`npm ci ended with code ${code}. Is the npm registry within reach?`);
  mkdirSync(dirname(stampFile), { recursive: true });
  writeFileSync(stampFile, hash);
}

/** Builds the extension, its server and the command line. */
export async function buildAll() {
  const code = await runScript(".build/build.mjs");
  if (code !== 0) throw new Error(`the build ended with code ${code}`);
}
