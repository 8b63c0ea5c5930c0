/**
 * Builds what is shipped: the extension, its server, the command line and the derivation view's page.
 *   --dev      with source maps, not minified
 *   --partial  leaves out an entry whose source does not exist yet
 */
import { chmod, mkdir, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const dist = join(root, "dist");
const dev = process.argv.includes("--dev");
const partial = process.argv.includes("--partial");

const common = {
  absWorkingDir: root,
  bundle: true,
  minify: !dev,
  sourcemap: dev,
  metafile: true,
  legalComments: "none",
  logLevel: "warning",
};
// The language client and server are CommonJS; a bundle of another format fails on their dynamic require.
const node = { ...common, platform: "node", format: "cjs", target: "node20", mainFields: ["module", "main"] };
const page = { ...common, platform: "browser", target: "chrome128" };

const outputs = [
  { ...node, entryPoints: ["client/src/extension.ts"], outfile: "dist/client.js", external: ["vscode"] },
  { ...node, entryPoints: ["server/src/main.ts"], outfile: "dist/server.js" },
  { ...node, entryPoints: ["server/src/cli.ts"], outfile: "dist/cli.js", banner: { js: "#!/usr/bin/env node" } },
  { ...page, format: "iife", entryPoints: ["client/src/view/main.ts"], outfile: "dist/view.js" },
  { ...page, entryPoints: ["client/src/view/view.css"], outfile: "dist/view.css" },
];

/** The licenses of the packages that went into the bundles, which ask to be passed on with every copy. */
async function notices(inputs) {
  const folders = new Set(inputs.map((input) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/u.exec(input)?.[0]).filter(Boolean));
  const texts = [...folders].sort().map(async (folder) => {
    const { name, version, license } = JSON.parse(await readFile(join(root, folder, "package.json"), "utf8"));
    const file = (await readdir(join(root, folder))).find((entry) => /^licen[cs]e(?:\.|$)/iu.test(entry));
    const text = file ? (await readFile(join(root, folder, file), "utf8")).trim() : `License: ${license}`;
    return `${name} ${version}\n\n${text}\n`;
  });
  return `Rootfast contains the following packages.\n\n${(await Promise.all(texts)).join(`\n${"-".repeat(72)}\n\n`)}`;
}

await mkdir(dist, { recursive: true });
// Maps of an earlier build would be packed with the next one.
for (const name of await readdir(dist)) if (name.endsWith(".map")) await rm(join(dist, name));

const present = outputs.filter(({ entryPoints: [entry] }) => {
  if (existsSync(join(root, entry))) return true;
  if (!partial) throw new Error(`${entry} is missing.`);
  console.log(`left out: ${entry} does not exist`);
  return false;
});
const built = await Promise.all(present.map((options) => build(options)));
await writeFile(join(dist, "NOTICES.txt"), await notices(built.flatMap(({ metafile }) => Object.keys(metafile.inputs))));

for (const { outfile } of present) {
  const file = join(root, outfile);
  if (outfile.endsWith("cli.js")) await chmod(file, 0o755);
  console.log(`${outfile}  ${Math.round((await stat(file)).size / 1024)} KB`);
}
