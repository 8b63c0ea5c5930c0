import * as assert from "node:assert/strict";
import type { StepReport, SymbolReport } from "../../../shared/report.js";
import { check, findingOf, supportOf } from "./command-line.js";
import { drawnChecks, drawnRatio, inView, openDerivation, untilSupport } from "./derivation.js";
import { page } from "./page.js";
import { test } from "./registry.js";
import { depthOfPier, openShelter, patience, setValue } from "./shelter.js";
import { waitUntil } from "./wait.js";

const made = (steps: readonly StepReport[] | undefined) => (steps ?? []).filter((step) => step.type !== "note");

const symbolsOf = (step: StepReport): readonly SymbolReport[] => {
  if (step.type === "note") return [];
  return step.type === "formula" ? [...step.symbols, step.result] : [...step.given, ...step.found];
};

/** The numbers in a text, without their signs: there is more than one minus. */
const numbersIn = (text: string): string[] => text.match(/\d+(?:\.\d+)?(?:e[+-]?\d+)?/gu) ?? [];

for (const subject of ["columns.north", "columns.south"]) {
  test(`the view of ${subject} holds the symbols, values and ratios of the command line`, async () => {
    const { document } = await openShelter();
    const support = supportOf(await check(document.getText()), subject);
    await openDerivation(document, subject);
    const drawn = await drawnChecks();
    assert.deepEqual(
      drawn.map(({ check: id, state, ratio }) => ({ id, state, ratio })),
      support.findings.map(({ check: id, state, ratio }) => ({ id, state, ratio: ratio === undefined ? null : String(ratio) })),
    );
    for (const [i, finding] of support.findings.entries()) {
      const { steps, symbols, text } = drawn[i];
      const wanted = made(finding.steps);
      assert.deepEqual(
        steps.map(({ id, value, values }) => ({ id, value, values })),
        wanted.map((step) => ({
          id: step.id,
          value: step.type === "formula" ? String(step.result.value) : null,
          values: step.type === "routine" ? symbolsOf(step).map(({ symbol, value }) => ({ symbol, value: String(value) })) : [],
        })),
        finding.check,
      );
      const key = ({ symbol, value }: { symbol: string; value: string | number }) => `${symbol} ${value}`;
      const listed = new Map(symbols.map((one) => [key(one), one.shown]));
      const used = new Map(wanted.flatMap(symbolsOf).map((one) => [key(one), one.shown]));
      assert.deepEqual([...listed.keys()].sort(), [...used.keys()].sort(), `symbols of ${finding.check}`);
      for (const [one, shown] of listed) assert.equal(shown, used.get(one), `${one} of ${finding.check}`);
      for (const said of [finding.title, finding.message, finding.clause, finding.combination, finding.demand?.shown, finding.capacity?.shown]) {
        assert.ok(said === undefined || text.includes(said), `${finding.check} says "${said}"`);
      }
    }
  });

  test(`every formula in the view of ${subject} is drawn as mathematics, with the numbers put in`, async () => {
    const { document } = await openShelter();
    const support = supportOf(await check(document.getText()), subject);
    await openDerivation(document, subject);
    let formulas = 0;
    for (const [i, { steps }] of (await drawnChecks()).entries()) {
      const { check: id, steps: reported } = support.findings[i];
      for (const [j, step] of made(reported).entries()) {
        if (step.type !== "formula") continue;
        formulas += 1;
        const { math } = steps[j];
        assert.equal(math.length, 3, `${step.id} of ${id} is drawn as formula, substitution and result`);
        for (const { text, width, height } of math) assert.ok(width > 5 && height > 5, `${text} of ${step.id} is ${width} by ${height}`);
        // The symbol before the equals sign may have a number in its subscript.
        // A formula of several branches says why it is this one.
        const [putIn, result] = math.slice(1).map(({ text }) => numbersIn(text.slice(text.indexOf(" = ")).split(/,\s*since/u)[0]));
        const substituted = step.plain.substituted.slice(0, step.plain.substituted.lastIndexOf(" = "));
        // A cube root has its 3 inside the sign on a line of text, and beside it where it is drawn.
        assert.deepEqual(putIn.sort(), numbersIn(substituted.replaceAll("∛", "3 √")).sort(), `the numbers of ${step.id} in ${id}: ${math[1].text}`);
        assert.deepEqual(result, numbersIn(step.result.shown), `the result of ${step.id} in ${id}: ${math[2].text}`);
      }
    }
    assert.ok(formulas > 20, `${formulas} formulas`);
  });
}

test("an edit renews the numbers in the view and leaves the reader where they are", async () => {
  const editor = await openShelter();
  const { document } = editor;
  await openDerivation(document, "columns.south", "pier.embedment");
  const before = await drawnRatio("pier.embedment");
  await page.evaluate("window.scrollBy(0, 300)", inView);
  const place = () => page.evaluate<number>("Math.round(window.scrollY)", inView);
  const scrolled = await place();
  assert.ok(scrolled > 300, `the view can be scrolled; it is at ${scrolled}`);

  await setValue(editor, depthOfPier, "4 ft");
  const wanted = String(findingOf(await check(document.getText()), "columns.south", "pier.embedment").ratio);
  assert.notEqual(wanted, before);
  await waitUntil(`the ratio is ${wanted}`, async () => (await drawnRatio("pier.embedment")) === wanted, patience);
  assert.equal(await place(), scrolled);
  assert.ok(await page.evaluate<boolean>(`document.querySelector('[data-check="pier.embedment"] details').open`, inView), "the calculation is still unfolded");
});

test("while the text is broken the view keeps its numbers and says so", async () => {
  const editor = await openShelter();
  await openDerivation(editor.document, "columns.south");
  const before = await drawnRatio("pier.embedment");
  await setValue(editor, depthOfPier, '"7 ft');
  await page.waitFor('[data-key="stale"]', inView);
  assert.equal(await drawnRatio("pier.embedment"), before);
  await setValue(editor, depthOfPier, "7 ft");
  await page.waitFor('[data-key="stale"]', { ...inView, state: "detached" });
  await waitUntil("the new depth counts", async () => (await drawnRatio("pier.embedment")) !== before, patience);
});

test("a place in the view leads to the value in the notebook", async () => {
  const editor = await openShelter();
  await openDerivation(editor.document, "columns.south", "pier.embedment");
  await page.click({ ...inView, selector: '[data-check="pier.embedment"] > .actions button' });
  await waitUntil("the depth is selected", () => editor.document.getText(editor.selection) === "3 ft 6 in", patience);
});

test("the support can be chosen in the view", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  await page.evaluate(
    `(() => { const select = document.querySelector("#subject"); select.value = "columns.north"; select.dispatchEvent(new Event("change", { bubbles: true })); })()`,
    inView,
  );
  await untilSupport("north");
});
