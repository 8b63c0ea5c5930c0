import * as assert from "node:assert/strict";
import { inView, openDerivation, untilSupport } from "./derivation.js";
import { page } from "./page.js";
import { test } from "./registry.js";
import { openShelter, patience } from "./shelter.js";
import { waitUntil } from "./wait.js";

interface Focused {
  readonly what: string;
  readonly outlined: boolean;
}

/** What has the focus in the page of the view, and whether that can be seen. */
const focused = (): Promise<Focused> =>
  page.evaluate<Focused>(
    `(() => {
      const element = document.activeElement;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const key = element.closest("[data-key]")?.dataset.key ?? "";
      return { what: element.id || element.localName + " " + (element.getAttribute("href") ?? key), outlined: outlineStyle !== "none" && parseFloat(outlineWidth) > 0 };
    })()`,
    inView,
  );

/** Presses Tab until something has the focus; every stop on the way must be seen to have it. */
async function tabTo(what: string): Promise<void> {
  const stops: string[] = [];
  for (let i = 0; i < 80; i += 1) {
    await page.press("Tab");
    const stop = await focused();
    stops.push(stop.what);
    assert.ok(stop.outlined, `the focus on "${stop.what}" is drawn`);
    if (stop.what === what) return;
  }
  throw new Error(`Tab does not reach "${what}" but: ${stops.join(", ")}`);
}

test("Tab reaches the skip links, the choice of the support, the checks and their calculations", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  await page.click({ ...inView, selector: ".job" });
  await page.press("Home");
  await tabTo("subject");
  await tabTo("a #check-pier.embedment");
  await tabTo("summary pier.embedment:steps");
  const open = () => page.evaluate<boolean>(`document.querySelector('[data-key="pier.embedment:steps"]').open`, inView);
  const before = await open();
  await page.press("Enter");
  await waitUntil("Enter folds the calculation", async () => (await open()) !== before, patience);
});

test("the support is chosen with the arrow keys", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  await page.click({ ...inView, selector: ".job" });
  await tabTo("subject");
  await page.press("ArrowUp");
  await untilSupport("north");
  assert.equal((await focused()).what, "subject");
});

test("a screen reader is given headings, named regions and tables", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  const tree = await page.aria("body", inView);
  for (const part of ['heading "south" [level=1]', 'combobox "Support"', 'heading "Checks" [level=2]', 'table "Checks, the governing first"', 'region "Embedment of the pier', "status"]) {
    assert.ok(tree.includes(part), `${part} is missing in\n${tree.slice(0, 3000)}`);
  }
  assert.match(tree, /math|rowheader/);
});
