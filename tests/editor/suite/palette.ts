/** Running a command as a user does, from the command palette; and what a list to choose from shows. */
import { page } from "./page.js";
import { patience } from "./shelter.js";
import { waitUntil } from "./wait.js";

const rows = ".quick-input-widget .monaco-list-row";

/** The entries of the list that is shown, each as the lines of its text. */
export const shownChoices = async (): Promise<string[]> => (await page.text(rows)).map((text) => text.replaceAll("\u00a0", " "));

/** Runs the command with this title. */
export async function runCommand(title: string): Promise<void> {
  await page.press("F1");
  await page.waitFor(".quick-input-widget", { timeout: patience });
  await page.type(title);
  await waitUntil(`the palette offers "${title}"`, async () => (await shownChoices())[0]?.startsWith(title), patience);
  await page.press("Enter");
}

/** Chooses the entry of a list that begins with these words. */
export async function choose(words: string): Promise<void> {
  const wanted = await waitUntil(
    `"${words}" can be chosen`,
    async () => {
      const found = (await shownChoices()).findIndex((text) => text.startsWith(words));
      return found >= 0 && { index: found };
    },
    patience,
  );
  for (let i = 0; i < wanted.index; i += 1) await page.press("ArrowDown");
  await page.press("Enter");
}
