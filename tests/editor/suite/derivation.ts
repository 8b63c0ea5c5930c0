/** The derivation view, opened for a support and read from the page that draws it. */
import * as vscode from "vscode";
import { page, type Where } from "./page.js";
import { patience } from "./shelter.js";
import { waitUntil } from "./wait.js";

export const inView: Where = { frame: "webview", containing: "#sheet", timeout: patience };

export interface DrawnSymbol {
  readonly symbol: string;
  readonly value: string;
}

export interface DrawnStep {
  readonly id: string;
  /** Of a formula; a routine has none. */
  readonly value: string | null;
  /** Of a routine. */
  readonly values: readonly DrawnSymbol[];
  /** Formula, formula with values, result; `text` has a space between any two signs. */
  readonly math: readonly { readonly text: string; readonly width: number; readonly height: number }[];
}

export interface DrawnCheck {
  readonly check: string;
  readonly state: string;
  readonly ratio: string | null;
  readonly text: string;
  readonly steps: readonly DrawnStep[];
  readonly symbols: readonly (DrawnSymbol & { readonly shown: string })[];
}

/* Runs in the page. Everything is unfolded first, since what is folded has no size. */
const readChecks = `(() => {
  for (const details of document.querySelectorAll("section.check details")) details.open = true;
  const symbol = (element) => ({ symbol: element.dataset.symbol, value: element.dataset.value });
  return [...document.querySelectorAll("section.check")].map((section) => ({
    check: section.dataset.check,
    state: section.dataset.state,
    ratio: section.getAttribute("data-ratio"),
    text: section.innerText,
    steps: [...section.querySelectorAll("li.step")].map((step) => ({
      id: step.dataset.formula,
      value: step.getAttribute("data-value"),
      values: [...step.querySelectorAll("li[data-symbol]")].map(symbol),
      math: [...step.querySelectorAll(".formula > math, .substituted > math, .result > math")].map((math) => {
        const { width, height } = math.getBoundingClientRect();
        const leaves = [...math.querySelectorAll("*")].filter((element) => element.childElementCount === 0);
        return { text: leaves.map((leaf) => leaf.textContent).join(" "), width, height };
      }),
    })),
    symbols: [...section.querySelectorAll("tr[data-symbol]")].map((row) => ({ ...symbol(row), shown: row.cells[1].innerText })),
  }));
})()`;

export const drawnChecks = (): Promise<DrawnCheck[]> => page.evaluate<DrawnCheck[]>(readChecks, inView);

/** Opens the view as a lens does, and waits until it shows this support. */
export async function openDerivation(document: vscode.TextDocument, subject: string, check?: string): Promise<void> {
  await vscode.commands.executeCommand("rootfast.openDerivation", { uri: document.uri.toString(), subject, check });
  await untilSupport(subject.slice(subject.indexOf(".") + 1));
}

/** Waits until the view's heading is the name of this support. */
export async function untilSupport(name: string): Promise<void> {
  await page.waitFor("section.check", inView);
  await waitUntil(`the view shows ${name}`, async () => (await page.text("h1", inView))[0] === name, patience);
}

/** The ratio of a check as the view has it, in all its digits. */
export const drawnRatio = (check: string): Promise<string | null> =>
  page.evaluate<string | null>(`document.querySelector('[data-check="${check}"]')?.getAttribute("data-ratio") ?? null`, inView);
