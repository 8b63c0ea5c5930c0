/** The extension's item in the status bar. */
import { page } from "./page.js";

export const statusItem = '.statusbar-item[id="rootfast.rootfast.rootfast.checked"]';

/** The text shown; empty where the item is not shown. */
export const statusText = async (): Promise<string> => (await page.text(statusItem)).join(" ").trim();
