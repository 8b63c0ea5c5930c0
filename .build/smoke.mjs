/** Proves the served editor without a screen: the sample is shown, and the extension has something to say about it. */
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { launchBrowser } from "../tests/editor/host/browser.mjs";

/** What an extension draws into a text: lenses and underlines. */
const marks = ".codelens-decoration a, .codelens-decoration span, .squiggly-error, .squiggly-warning, .squiggly-info";

/**
 * Opens `address` in a windowless browser, waits until the first lines of `sample` and a mark of the extension are
 * there, and writes `picture`. Rejects, after taking the picture, if one of them does not appear.
 */
export async function trySampleInBrowser({ address, sample, picture }) {
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
    await page.goto(address);
    try {
      const firstLine = readFileSync(sample, "utf8").split(/\r?\n/).find((line) => line.trim() !== "") ?? "";
      await appear(page.locator(".monaco-editor .view-line", { hasText: firstLine.trim().slice(0, 40) }), 60, "The sample's first line");
      console.log(`VS Code shows ${basename(sample)}.`);
      await appear(page.locator(marks), 30, "A lens or an underline of the extension");
      // Lenses and underlines come one after the other; a moment later the picture has them all.
      await page.waitForTimeout(1500);
      console.log(`The extension has marked ${await page.locator(marks).count()} places of it that are in view.`);
    } finally {
      await page.screenshot({ path: picture });
      console.log(`A picture of it: ${picture}`);
    }
  } finally {
    await browser.close();
  }
}

async function appear(locator, seconds, what) {
  try {
    await locator.first().waitFor({ timeout: seconds * 1000 });
  } catch {
    throw new Error(`${what} did not appear within ${seconds} s.`);
  }
}
