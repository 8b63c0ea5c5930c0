/** Prints an HTML file as a reader would, to look at its pages and to see whether anything is cut off. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { pathToFileURL } from "node:url";

/** Letter paper with margins of 3/4 in, in CSS pixels. */
const sheetWidth = (8.5 - 2 * 0.75) * 96;

/** Writes `path` as PDF. Answers `{ path, pages, cutOff }`; `cutOff` is the text of what is wider than the sheet. */
export async function printHtml(browser, file, path) {
  const page = await browser.newPage({ viewport: { width: sheetWidth, height: 900 } });
  try {
    await page.goto(pathToFileURL(file).href);
    await page.emulateMedia({ media: "print" });
    const cutOff = await page.evaluate((width) => {
      const wide = [...document.querySelectorAll("body *")].filter((element) => element.getBoundingClientRect().right > width + 1);
      return wide.filter((element) => !wide.some((other) => other !== element && element.contains(other))).map((element) => element.textContent.trim().slice(0, 80));
    }, sheetWidth);
    const pdf = await page.pdf({ format: "Letter", margin: { top: "0.75in", right: "0.75in", bottom: "0.75in", left: "0.75in" }, printBackground: true });
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, pdf);
    return { path, pages: pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0, cutOff };
  } finally {
    await page.close();
  }
}
