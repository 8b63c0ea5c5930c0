import * as assert from "node:assert/strict";
import { readFile, readdir, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import * as vscode from "vscode";
import { check, findingOf } from "./command-line.js";
import { page } from "./page.js";
import { runCommand } from "./palette.js";
import { test } from "./registry.js";
import { depthOfPier, openShelter, patience, setValue } from "./shelter.js";
import { waitUntil } from "./wait.js";

const names = ["landing-shelter-summary.html", "landing-shelter-summary.md", "landing-shelter-summary.csv"] as const;

/** ASTM SI 10: 1 kip. */
const newtonsOfKip = 4448.2216152605;

const plain = (html: string): string =>
  html
    .replace(/<style[\s\S]*?<\/style>/gu, "")
    .replace(/<[^>]*>/gu, " ")
    .replace(/&quot;/gu, '"')
    .replace(/&#39;/gu, "'")
    .replace(/&lt;/gu, "<")
    .replace(/&gt;/gu, ">")
    .replace(/&amp;/gu, "&")
    .replace(/\s+/gu, " ");

const read = async (folder: string): Promise<{ html: string; markdown: string }> => {
  const [html, markdown] = await Promise.all(names.map((name) => readFile(join(folder, name), "utf8").catch(() => "")));
  return { html, markdown };
};

test("the summary is written beside the notebook, written again, and leaves nothing else", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const folder = dirname(document.uri.fsPath);
  const before = (await readdir(folder)).filter((name) => !(names as readonly string[]).includes(name));
  await runCommand("Rootfast: Export the Summary");
  const first = await waitUntil(
    "both files are there",
    async () => {
      const files = await read(folder);
      return files.html !== "" && files.markdown !== "" && files;
    },
    patience,
  );

  const report = await check(document.getText());
  const [structure] = report.structures;
  const text = plain(first.html);
  for (const { shown } of structure.criteria) assert.ok(text.includes(shown), `criterion ${shown}`);
  for (const code of structure.codes) assert.ok(text.includes(code) && first.markdown.includes(code), code);
  for (const caution of report.cautions) assert.ok(text.includes(caution) && first.markdown.replaceAll("\\", "").includes(caution), caution);
  for (const item of structure.openItems) assert.ok(text.includes(item), item);
  for (const { title, clause, ratio, demand, capacity } of structure.supports.flatMap(({ findings }) => findings)) {
    const row = [title, clause, ratio?.toFixed(2), demand?.shown, capacity?.shown];
    for (const cell of row) assert.ok(cell === undefined || text.includes(cell), `${cell} of ${title}`);
  }
  // The unit stands in the head of the column.
  assert.ok(text.includes(" P, kip "), "the head of the loads");
  for (const { base } of structure.supports.flatMap(({ reactions }) => reactions)) {
    const kips = Number((base.P.value / newtonsOfKip).toPrecision(4));
    assert.ok(text.includes(` ${kips} `), `load ${base.P.shown}`);
  }

  await setValue(editor, depthOfPier, "4 ft");
  const { ratio } = findingOf(await check(document.getText()), "columns.south", "pier.embedment");
  assert.ok(ratio && !text.includes(` ${ratio.toFixed(2)} `), "the first summary is of the first depth");
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  await runCommand("Rootfast: Export the Summary");
  await waitUntil("the new ratio is written", async () => plain((await read(folder)).html).includes(` ${ratio.toFixed(2)} `), patience);
  await waitUntil("no other file is left", async () => (await readdir(folder)).sort().join() === [...before, ...names].sort().join(), patience);
});

test("on letter paper the summary keeps its whole width, in as many pages as it needs", async () => {
  const editor = await openShelter();
  const file = join(dirname(editor.document.uri.fsPath), names[0]);
  await Promise.all(names.map((name) => rm(join(dirname(file), name), { force: true })));
  await runCommand("Rootfast: Export the Summary");
  await waitUntil("the page is written", () => readFile(file).then((content) => content.length > 0, () => false), patience);
  const { pages, cutOff } = await page.print("summary", file);
  assert.ok(pages >= 2 && pages <= 30, `${pages} pages`);
  assert.deepEqual(cutOff, []);
});
