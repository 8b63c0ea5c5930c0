import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import type { FindingReport } from "../../../shared/report.js";
import { check } from "./command-line.js";
import { inView, untilSupport } from "./derivation.js";
import { lensTitles } from "./lenses.js";
import { page } from "./page.js";
import { test } from "./registry.js";
import { depthOfPier, keyRange, openShelter, patience, setValue } from "./shelter.js";
import { waitUntil } from "./wait.js";

/** The links of the chain that belong to an entry, and its support; a column line has them all. */
const entries = [
  { entry: "north", support: 0, links: undefined },
  { entry: "south", support: 1, links: undefined },
  { entry: "wall base", support: 0, links: ["base", "anchors"] },
  { entry: "pier base", support: 1, links: ["base", "anchors"] },
  { entry: "ledge wall", support: 0, links: ["rock", "wall"] },
  { entry: "short pier", support: 1, links: ["pier"] },
] as const;

/** A report lists the worst first; what is over is never behind what holds. */
const worst = (findings: readonly FindingReport[]): FindingReport => {
  const [first] = findings;
  assert.equal(first.state === "over", findings.some(({ state }) => state === "over"));
  return first;
};

test("every column line, base and foundation carries its worst check with the ratio", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const { supports } = (await check(document.getText())).structures[0];
  const wanted = entries.map(({ entry, support, links }): [string, string] => {
    const findings = supports[support].findings.filter(({ link }) => links === undefined || (links as readonly string[]).includes(link));
    const { ratio, state, title } = worst(findings);
    return [entry, `${ratio?.toFixed(2)} ${state}: ${title}`];
  });
  assert.deepEqual(await lensTitles(document), new Map(wanted));

  editor.revealRange(keyRange(document, "foundations", "short pier"), vscode.TextEditorRevealType.InCenter);
  const title = new Map(wanted).get("short pier") ?? "";
  await waitUntil(`the lens "${title}" is drawn`, async () => (await page.text(".codelens-decoration")).some((text) => text.replaceAll("\u00a0", " ").trim() === title), patience);
});

test("a lens follows an edit", async () => {
  const editor = await openShelter();
  await setValue(editor, depthOfPier, "4 ft");
  const { ratio } = worst((await check(editor.document.getText())).structures[0].supports[1].findings);
  await waitUntil(`the lens shows ${ratio}`, async () => (await lensTitles(editor.document)).get("short pier")?.startsWith(`${ratio?.toFixed(2)} over`), patience);
});

test("clicking a lens opens the derivation at its check", async () => {
  const editor = await openShelter();
  editor.revealRange(keyRange(editor.document, "bases", "wall base"), vscode.TextEditorRevealType.AtTop);
  const title = (await lensTitles(editor.document)).get("wall base") ?? "";
  await waitUntil("the lens is drawn", async () => (await page.text(".codelens-decoration a")).some((text) => text.replaceAll("\u00a0", " ").trim() === title), patience);
  await page.click({ selector: `.codelens-decoration a:has-text("${title}")` });
  await untilSupport("north");
  const name = title.slice(title.indexOf(": ") + 2);
  await waitUntil(
    `"${name}" is in view`,
    () =>
      page.evaluate<boolean>(
        `(() => {
          const heading = [...document.querySelectorAll("section.check h3")].find((one) => one.querySelector(".title").textContent === ${JSON.stringify(name)});
          const { top, bottom } = heading.getBoundingClientRect();
          return top >= 0 && bottom <= innerHeight && heading.parentElement.querySelector("details").open;
        })()`,
        inView,
      ),
    patience,
  );
});
