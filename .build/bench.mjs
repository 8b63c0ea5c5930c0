/**
 * `npm run bench`: the pace of an edit, of the answers to the editor and of the start, each beside its budget. It measures and
 * never fails; read the numbers as ratios, because the machine is shared with whatever else runs on it.
 *   --quick  fewer edits, for a first look
 */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { build } from "esbuild";
import { root } from "./tasks.mjs";

const output = join(root, "tests", "output");
const common = { absWorkingDir: root, bundle: true, platform: "node", format: "cjs", target: "node20", mainFields: ["module", "main"], logLevel: "warning", sourcemap: "inline" };
const bench = join(output, "bench.cjs");
const server = join(output, "bench-server.cjs");
// The server is measured as it is shipped.
await build({ ...common, entryPoints: ["server/src/main.ts"], outfile: server, minify: true, sourcemap: false });
await build({ ...common, entryPoints: ["tests/bench/edit.ts"], outfile: bench });

const child = spawn(process.execPath, ["--expose-gc", "--enable-source-maps", bench, server, ...process.argv.slice(2)], { cwd: root, stdio: "inherit" });
child.on("close", (code) => (process.exitCode = code ?? 1));
