/** The server and the command line as they are shipped, one file each, bundled again only where their source is newer. */
import { existsSync, mkdirSync, readdirSync, renameSync, statSync, utimesSync } from "node:fs";
import { dirname, join } from "node:path";
import { buildSync } from "esbuild";

const root = join(__dirname, "../..");

const newest = (path: string): number => {
  const stat = statSync(path);
  return stat.isDirectory() ? Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name)))) : stat.mtimeMs;
};

/** Bundles an entry, `server/src/main.ts`, and gives the path of the file to run. Safe where several test files ask at once. */
export function bundled(entry: string): string {
  const output = join(root, "tests/output", `${entry.replace(/^.*\//u, "").replace(/\.ts$/u, "")}.cjs`);
  const sources = ["server/src", "shared", "package-lock.json", "tests/protocol/bundle.ts"].map((path) => newest(join(root, path)));
  if (existsSync(output) && statSync(output).mtimeMs >= Math.max(...sources)) return output;
  const began = new Date();
  const temporary = `${output}.${process.pid}`;
  mkdirSync(dirname(output), { recursive: true });
  buildSync({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile: temporary,
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    mainFields: ["module", "main"],
    logLevel: "warning",
    sourcemap: "inline",
  });
  // A source saved while the bundle was made has to count as newer than it.
  utimesSync(temporary, began, began);
  renameSync(temporary, output);
  return output;
}
