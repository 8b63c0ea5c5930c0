import * as assert from "node:assert/strict";
import { inView, openDerivation } from "./derivation.js";
import { page } from "./page.js";
import { test } from "./registry.js";
import { openShelter, patience } from "./shelter.js";
import { waitUntil } from "./wait.js";

/* Runs in the page: the least contrast of its texts (WCAG 2.2, 1.4.3), and the text that has it. */
const leastContrast = `(() => {
  const channels = (color) => color.match(/[\\d.]+/g).map(Number);
  const light = (color) => channels(color).slice(0, 3).map((c) => c / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
    .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
  const over = (top, under) => { const [r, g, b, a = 1] = channels(top); const below = channels(under); return "rgb(" + [r, g, b].map((c, i) => c * a + below[i] * (1 - a)).join(",") + ")"; };
  const page = getComputedStyle(document.body).backgroundColor;
  let least = { ratio: 99, text: "" };
  for (const element of document.querySelectorAll("#sheet *")) {
    if (![...element.childNodes].some((node) => node.nodeType === 3 && node.nodeValue.trim()) || element.getClientRects().length === 0) continue;
    const style = getComputedStyle(element);
    const ground = element.closest("select") ? getComputedStyle(element.closest("select")).backgroundColor : page;
    const [a, b] = [light(over(style.color, ground)), light(ground)].sort((x, y) => y - x);
    const ratio = (a + 0.05) / (b + 0.05);
    if (ratio < least.ratio) least = { ratio, text: element.textContent.slice(0, 60) };
  }
  return least;
})()`;

const themes = [
  { theme: "light", picture: "derivation-light", least: 4.5 },
  { theme: "dark", picture: "derivation-dark", least: 4.5 },
  { theme: "high contrast", picture: "derivation-high-contrast", least: 7 },
  { theme: "high contrast light", picture: "derivation-high-contrast-light", least: 4.5 },
] as const;

test("every text of the view can be read in the light, dark and high contrast themes", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south", "pier.embedment");
  try {
    for (const { theme, picture, least } of themes) {
      await page.setTheme(theme);
      const kind = theme.startsWith("high") ? (theme.endsWith("light") ? "vscode-high-contrast-light" : "vscode-high-contrast") : `vscode-${theme}`;
      await waitUntil(`the view wears ${kind}`, () => page.evaluate<boolean>(`document.body.classList.contains("${kind}")`, inView), patience);
      const contrast = await page.evaluate<{ ratio: number; text: string }>(leastContrast, inView);
      assert.ok(contrast.ratio >= least, `in ${theme} "${contrast.text}" has a contrast of ${contrast.ratio.toFixed(2)}; ${least} is needed`);
      await page.screenshot(picture);
    }
  } finally {
    await page.setTheme("light");
  }
});

test("nothing of the view is wider than the view, but what scrolls by itself", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  const [needed, given] = await page.evaluate<[number, number]>("[document.documentElement.scrollWidth, document.documentElement.clientWidth]", inView);
  assert.ok(needed <= given, `the page needs ${needed} px and has ${given} px`);
});

test("the signs of the forces are drawn beside the loads, in the color of the text", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  const drawn = await page.evaluate<{ words: string[]; width: number; height: number; same: boolean }>(
    `(() => {
      const svg = document.querySelector("#loads").closest("section").querySelector("figure svg");
      svg.scrollIntoView({ block: "center" });
      const { width, height } = svg.getBoundingClientRect();
      const text = svg.querySelector("text");
      return { words: [...svg.querySelectorAll("text")].map((one) => one.textContent), width, height, same: getComputedStyle(text).fill === getComputedStyle(document.body).color };
    })()`,
    inView,
  );
  for (const word of ["P", "Vx", "Vy", "Mx", "My", "top", "base", "underside"]) assert.ok(drawn.words.includes(word), `${word} is drawn`);
  assert.ok(drawn.width > 200 && drawn.height > 100, `the drawing is ${drawn.width} by ${drawn.height} px`);
  assert.ok(drawn.same, "the drawing has the color of the text");
  await page.screenshot("derivation-signs");
});

test("the support and its checks are drawn to scale, in the color of the text, with a caption below", async () => {
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  const figures = await page.evaluate<{ of: string; width: number; height: number; caption: string; same: boolean }[]>(
    `[...document.querySelectorAll("figure")].filter((figure) => figure.querySelector("figcaption")).map((figure) => {
      const svg = figure.querySelector("svg");
      const { width, height } = svg.getBoundingClientRect();
      return { of: figure.closest("section").dataset.check ?? figure.closest("section").dataset.key, width, height, caption: figure.querySelector("figcaption").textContent, same: getComputedStyle(svg.querySelector("text")).fill === getComputedStyle(document.body).color };
    })`,
    inView,
  );
  for (const of of ["drawings", "anchors.breakout-tension", "anchors.breakout-shear", "base.plate-uplift"]) assert.ok(figures.some((figure) => figure.of === of), `${of} is drawn`);
  for (const { of, width, height, caption, same } of figures) {
    assert.ok(width > 200 && height > 150, `${of} is drawn ${width} by ${height} px`);
    assert.ok(same, `${of} has the color of the text`);
    assert.match(caption, of === "load-path" ? /^Load path/u : /to scale|Diagrams|Strength/u);
  }
  await page.evaluate(`document.querySelector('[data-key="drawings"]').scrollIntoView()`, inView);
  await page.screenshot("derivation-drawings");
});

/** Complaints of the editor's own parts under load say nothing about the view. */
const ownComplaints = (problems: readonly string[]): string[] =>
  problems.filter((problem) => !problem.includes("/workbench.js") || /Content Security Policy|rootfast/i.test(problem));

test("the view runs without a complaint under a policy that refuses strangers", async () => {
  await page.problems();
  const { document } = await openShelter();
  await openDerivation(document, "columns.south");
  await openDerivation(document, "columns.north");
  assert.deepEqual(ownComplaints(await page.problems()), []);

  await page.evaluate(
    `(() => {
      const script = document.createElement("script");
      script.textContent = "window.stranger = true";
      document.body.append(script);
      script.remove();
    })()`,
    inView,
  );
  assert.equal(await page.evaluate("window.stranger ?? null", inView), null);
  const refused = await waitUntil("the refusal is logged", async () => (await page.problems()).find((problem) => problem.includes("Content Security Policy")), patience);
  assert.match(refused, /script-src/);
});
