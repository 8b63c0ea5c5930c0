/**
 * The page that shows the editor, seen from a test in the extension host: pictures, the DOM of the workbench and of
 * webviews, keys and the mouse. The commands are described in `../host/channel.mjs`.
 */
import * as vscode from "vscode";

/** Where in the page to look. `containing` picks among several webviews by a selector one of them holds. */
export interface Where {
  readonly frame?: "main" | "webview";
  readonly containing?: string;
  /** Milliseconds to wait at most; 10 s if left out. */
  readonly timeout?: number;
}

/** What to point at: a selector, or a text (of an editor's line, or of a webview). */
export type Target = Where & ({ readonly selector: string } | { readonly text: string });

/** True if this VS Code has a control channel; a desktop one has none. */
export function hasPage(): boolean {
  return process.env.ROOTFAST_EDITOR_CHANNEL !== undefined;
}

async function send<T>(command: string, options: object = {}): Promise<T> {
  const address = process.env.ROOTFAST_EDITOR_CHANNEL;
  if (!address) {
    throw new Error(
      `"${command}" needs the control channel of the hosted editor, which a desktop VS Code does not have. ` +
        "Run this test without ROOTFAST_DESKTOP_CODE.",
    );
  }
  const response = await fetch(address, {
    method: "POST",
    headers: { authorization: `Bearer ${process.env.ROOTFAST_EDITOR_CHANNEL_TOKEN}` },
    body: JSON.stringify({ command, ...options }),
  });
  const answer = (await response.json()) as { result: T; error?: string };
  if (!response.ok) throw new Error(`${command}: ${answer.error}`);
  return answer.result;
}

/** Each function throws with a clear message if there is no channel, or if what it looks for does not appear. */
export const page = {
  /** Takes a picture of the window, or of one element. Answers the file's path. */
  screenshot: (name: string, options: Where & { readonly selector?: string } = {}) =>
    send<string>("screenshot", { name, ...options }),
  /** Evaluates a JavaScript expression and answers its value. */
  evaluate: <T>(expression: string, where: Where = {}) => send<T>("evaluate", { expression, ...where }),
  /** Waits for a selector's state, 'visible' if left out. */
  waitFor: (selector: string, options: Where & { readonly state?: "visible" | "hidden" | "attached" | "detached" } = {}) =>
    send<null>("waitFor", { selector, ...options }),
  /** The visible text of every match. */
  text: (selector: string, where: Where = {}) => send<string[]>("text", { selector, ...where }),
  /** The accessibility tree below a selector, as YAML. */
  aria: (selector = "body", where: Where = {}) => send<string>("aria", { selector, ...where }),
  /** Points at a target. Over a text of the editor it waits for the hover and answers its text. */
  hover: (target: Target) => send<string>("hover", target),
  click: (target: Target & { readonly button?: "left" | "right"; readonly count?: number }) => send<null>("click", target),
  /** Presses a key or a chord, such as 'Control+Shift+P'. */
  press: (key: string) => send<null>("press", { key }),
  type: (text: string) => send<null>("type", { text }),
  resize: (width: number, height: number) => send<null>("resize", { width, height }),
  emulate: (media: {
    readonly colorScheme?: "light" | "dark";
    readonly forcedColors?: "active" | "none";
    readonly reducedMotion?: "reduce" | "no-preference";
  }) => send<null>("emulate", media),
  /** Prints an HTML file on letter paper. `cutOff` holds the texts that are wider than the paper. */
  print: (name: string, file: string) => send<{ readonly path: string; readonly pages: number; readonly cutOff: readonly string[] }>("print", { name, file }),
  /** Errors the page has logged since the last call. */
  problems: () => send<string[]>("problems"),
  setTheme,
};

/** The themes every VS Code carries, with the class the workbench wears under each. */
const themes = {
  light: { name: "Default Light Modern", marker: "vs" },
  dark: { name: "Default Dark Modern", marker: "vs-dark" },
  "high contrast": { name: "Default High Contrast", marker: "hc-black" },
  "high contrast light": { name: "Default High Contrast Light", marker: "hc-light" },
} as const;

/** Changes the color theme and waits until the workbench wears it. */
async function setTheme(theme: keyof typeof themes): Promise<void> {
  const { name, marker } = themes[theme];
  await vscode.workspace.getConfiguration("workbench").update("colorTheme", name, vscode.ConfigurationTarget.Global);
  await page.waitFor(`.monaco-workbench.${marker}`);
}
