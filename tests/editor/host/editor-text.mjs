/** Finding text among the editor's drawn lines, pointing at it, and reading the hover that appears. */
import { setTimeout as sleep } from "node:timers/promises";

/** The middle of the first visible occurrence of `text` within one line of an editor, in page pixels. */
export async function findInEditor(page, text, timeout) {
  const end = Date.now() + timeout;
  for (;;) {
    const point = await page.evaluate(locateInLines, text);
    if (point) return point;
    if (Date.now() > end) throw new Error(`No visible line of the editor shows "${text}" (waited ${timeout} ms).`);
    await sleep(100);
  }
}

/** Moves the mouse there by a small detour: the editor reacts to movement, not to a position it already has. */
export async function pointAt(page, { x, y }) {
  await page.mouse.move(x - 3, y - 1);
  await page.mouse.move(x, y, { steps: 3 });
}

/** Waits until a hover is shown and has stopped changing, and answers its visible text. */
export async function hoverText(page, timeout) {
  const hover = page.locator(".monaco-editor .monaco-hover:not(.hidden), .monaco-resizable-hover .monaco-hover").filter({ visible: true }).first();
  await hover.waitFor({ timeout });
  const end = Date.now() + timeout;
  let last = "";
  while (Date.now() < end) {
    const now = await hover.innerText();
    if (now === last && !/^\s*(Loading\.\.\.)?\s*$/.test(now)) return now;
    last = now;
    await sleep(250);
  }
  throw new Error(`The hover did not settle within ${timeout} ms. It shows: ${last}`);
}

/* Runs in the page: lines are drawn as spans, with non-breaking spaces in them. */
function locateInLines(text) {
  for (const line of document.querySelectorAll(".monaco-editor .view-line")) {
    const at = line.textContent.replaceAll("\u00a0", " ").indexOf(text);
    if (at < 0) continue;
    const range = document.createRange();
    const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
    let before = 0;
    let started = false;
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const after = before + node.length;
      if (!started && at < after) {
        range.setStart(node, at - before);
        started = true;
      }
      if (started && at + text.length <= after) {
        range.setEnd(node, at + text.length - before);
        break;
      }
      before = after;
    }
    const box = range.getBoundingClientRect();
    const x = box.x + box.width / 2;
    const y = box.y + box.height / 2;
    if (box.width > 0 && x > 0 && y > 0 && x < innerWidth && y < innerHeight) return { x, y };
  }
  return undefined;
}
