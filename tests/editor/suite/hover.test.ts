import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import { check, findingOf, supportOf } from "./command-line.js";
import { page } from "./page.js";
import { test } from "./registry.js";
import { depthOfPier, keyRange, openShelter, patience, valueRange } from "./shelter.js";
import { waitUntil } from "./wait.js";

/** Shown text without the differences of spaces and line breaks. */
const flat = (text: string): string => text.replace(/[\s\u00a0]+/gu, " ");

/** What a reader must never see: Markdown or HTML that was not drawn, or a number that is none. */
function assertDrawn(text: string): void {
  for (const garbled of [/\\/, /\*\*/, /<\/?su[bp]>/, /<br>/, /\| ?-{3}/, /&[a-z]+;/, /NaN|undefined|Infinity|\[object/]) assert.doesNotMatch(text, garbled);
}

/** Letters of a subscript stand beside their base in the text of a page: `h_a` reads `ha`. */
const withoutUnderscores = (text: string): string => text.replaceAll("_", "");

/** Scrolls, and waits until the window has done so: what is pointed at must not move away. */
async function showInCenter(editor: vscode.TextEditor, range: vscode.Range): Promise<void> {
  editor.revealRange(range, vscode.TextEditorRevealType.InCenter);
  await waitUntil("it is scrolled there", () => editor.visibleRanges.some((visible) => visible.contains(range)), patience);
}

test("pointing at the depth shows how the pier's embedment comes about", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const finding = findingOf(await check(document.getText()), "columns.south", "pier.embedment");
  await showInCenter(editor, valueRange(document, ...depthOfPier));
  // The middle of this text is in the value; the value alone is to be read in other places too.
  const shown = flat(await page.hover({ text: "depth: 3 ft 6 in", timeout: patience }));
  await page.screenshot("hover-depth");
  assertDrawn(shown);
  assert.ok(shown.includes(`Embedment of the pier: over ${finding.ratio?.toFixed(2)}`), "the state and the ratio");
  assert.ok(shown.includes(finding.combination ?? "no combination"), "the combination that governs");
  assert.ok(shown.includes(finding.clause), "the clause");
  const formulas = (finding.steps ?? []).filter((step) => step.type === "formula");
  assert.ok(formulas.length > 5, "the embedment takes more than a few formulas");
  for (const { plain, symbols } of formulas) {
    assert.ok(shown.includes(flat(plain.substituted).replaceAll("^2", "2")), `the numbers of ${plain.formula}: ${plain.substituted}`);
    for (const { meaning, shown: value } of symbols.filter(({ field }) => field)) {
      assert.ok(shown.includes(value) && shown.includes(meaning), `${meaning}, ${value}`);
    }
  }
  const formula = formulas.find(({ id }) => id === "pier.base-height")?.plain.formula ?? "";
  assert.ok(shown.includes(withoutUnderscores(formula)), formula);
  const subscripts = await page.evaluate<string[]>("[...document.querySelectorAll('.monaco-hover sub')].map((sub) => sub.textContent)");
  assert.ok(subscripts.includes("xb") && subscripts.includes("h"), `subscripts are drawn as such: ${subscripts.join(" ")}`);
});

test("pointing at a column line lists every check of the support and the math of the worst", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const { findings, notCovered } = supportOf(await check(document.getText()), "columns.south");
  await showInCenter(editor, keyRange(document, "columns", "south"));
  const shown = flat(await page.hover({ text: "south:", timeout: patience }));
  await page.screenshot("hover-column");
  assertDrawn(shown);
  for (const { title, state, ratio } of findings) {
    assert.ok(shown.includes(`${title} ${state}${ratio === undefined ? "" : ` ${ratio.toFixed(2)}`}`), title);
  }
  const worst = findings.find(({ check: id }) => id === "pier.embedment");
  assert.ok(shown.includes(worst?.combination ?? "no combination"), "the combination that governs the worst check");
  const covered = [shown.indexOf("check state"), shown.lastIndexOf("further limit states of south are not covered")];
  assert.ok(covered[0] > 0 && covered[1] > covered[0], "the checks come first, then what is not covered");
  assert.ok(covered[0] < 300, `the checks begin after ${covered[0]} letters, so that they are seen at once`);
  for (const { text } of notCovered) assert.ok(shown.includes(flat(text)), text);
});
