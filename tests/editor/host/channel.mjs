/**
 * The control channel: how a test inside the extension host looks at, and acts on, the page that shows the editor.
 *
 * The extension host cannot see the workbench's DOM. The hosted executable therefore listens on a random port of
 * 127.0.0.1 and passes its address and a random token to the extension host in ROOTFAST_EDITOR_CHANNEL and
 * ROOTFAST_EDITOR_CHANNEL_TOKEN. A desktop VS Code has no channel. Tests use it through `../suite/page.ts`.
 *
 * A request is a POST with the token as its bearer and a JSON body `{ command, ... }`. The answer is `{ result }`, or
 * `{ error }` with status 500. The commands (`?` marks what may be left out):
 *
 *   screenshot  name, selector?, frame?         writes tests/output/screenshots/<name>.png, answers its path
 *   evaluate    expression, frame?, containing? the value of a JavaScript expression (or promise) in the page
 *   waitFor     selector, state?, frame?        until it is 'visible' (the default), 'hidden', 'attached' or 'detached'
 *   text        selector, frame?                the visible text of every match
 *   aria        selector?, frame?               the accessibility tree, as playwright's YAML
 *   hover       text | selector, frame?         points at it; over the editor, waits for the hover and answers its text
 *   click       text | selector, frame?, button?, count?
 *   press       key                             a key or a chord in playwright's names, such as 'Control+Shift+P'
 *   type        text                            types into what has the focus
 *   resize      width, height                   of the window, in pixels
 *   emulate     colorScheme?, forcedColors?, reducedMotion?   media features of the page
 *   print       name, file                      an HTML file on letter paper: tests/output/screenshots/<name>.pdf, and answers
 *                                               `{ path, pages, cutOff }`, what of it is wider than the paper
 *   problems                                    errors the page and the extension hosts have logged since the last call,
 *                                               without the known complaints of the host itself
 *
 * `frame` is 'main' (the workbench, the default) or 'webview': the first webview shown that holds `containing`
 * (a selector), else `selector`. `text` in the main frame means text of a line of the editor; the first visible
 * match counts. `timeout` (ms) may be given everywhere.
 */
import { randomBytes } from "node:crypto";
import { mkdirSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { stripVTControlCharacters } from "node:util";
import { findInEditor, hoverText, pointAt } from "./editor-text.mjs";
import { repository } from "./install.mjs";
import { isNoise } from "./noise.mjs";
import { printHtml } from "./print.mjs";

const screenshots = join(repository, "tests", "output", "screenshots");
const usualTimeout = 10_000;

/** Opens a channel whose page may come later. Answers `{ env, attach(page), close }`. */
export async function openChannel() {
  const token = randomBytes(16).toString("hex");
  const state = { page: undefined, problems: [] };
  const server = createServer(async (request, response) => {
    const answer = (status, body) => response.writeHead(status, { "content-type": "application/json" }).end(JSON.stringify(body));
    if (request.headers.authorization !== `Bearer ${token}`) return answer(403, { error: "wrong token" });
    try {
      let body = "";
      for await (const chunk of request) body += chunk;
      const { command, ...options } = JSON.parse(body);
      if (!state.page) throw new Error("The page is not open yet.");
      if (!Object.hasOwn(commands, command)) throw new Error(`The channel knows no command "${command}".`);
      answer(200, { result: (await commands[command](state.page, { timeout: usualTimeout, ...options }, state)) ?? null });
    } catch (error) {
      answer(500, { error: plain(error.message) });
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    env: {
      ROOTFAST_EDITOR_CHANNEL: `http://127.0.0.1:${server.address().port}`,
      ROOTFAST_EDITOR_CHANNEL_TOKEN: token,
    },
    attach: (page) => {
      state.page = page;
      page.on("pageerror", (error) => state.problems.push(error.message));
      page.on("console", (message) => {
        const line = `${message.text()} (${message.location().url})`;
        if (message.type() === "error" && !isNoise(line)) state.problems.push(line);
      });
    },
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

/** Playwright colors its messages for a terminal; the first lines say it all. */
function plain(message) {
  return stripVTControlCharacters(message).split("\n").slice(0, 3).join("\n");
}

const commands = {
  async screenshot(page, { name, ...where }) {
    if (!/^[\w-]+$/.test(name ?? "")) throw new Error("A screenshot needs a name of letters, digits, - and _.");
    mkdirSync(screenshots, { recursive: true });
    const path = join(screenshots, `${name}.png`);
    const target = where.selector ? await visible(page, where) : page;
    await target.screenshot({ path, animations: "disabled" });
    return path;
  },
  async evaluate(page, { expression, ...where }) {
    return (await frameOf(page, where)).evaluate(expression);
  },
  async waitFor(page, { selector, state = "visible", ...where }) {
    const frame = await frameOf(page, { ...where, selector: state === "visible" || state === "attached" ? selector : undefined });
    await frame.locator(selector).first().waitFor({ state, timeout: where.timeout });
  },
  async text(page, where) {
    return (await frameOf(page, where)).locator(where.selector).filter({ visible: true }).allInnerTexts();
  },
  async aria(page, { selector = "body", ...where }) {
    return (await frameOf(page, { ...where, selector })).locator(selector).first().ariaSnapshot({ timeout: where.timeout });
  },
  async hover(page, where) {
    if (where.text !== undefined && where.frame !== "webview") {
      await pointAt(page, await findInEditor(page, where.text, where.timeout));
      return hoverText(page, where.timeout);
    }
    await (await visible(page, where)).hover({ timeout: where.timeout });
  },
  async click(page, { button = "left", count = 1, ...where }) {
    if (where.text !== undefined && where.frame !== "webview") {
      const { x, y } = await findInEditor(page, where.text, where.timeout);
      await page.mouse.click(x, y, { button, clickCount: count });
      return;
    }
    await (await visible(page, where)).click({ button, clickCount: count, timeout: where.timeout });
  },
  async press(page, { key }) {
    await page.keyboard.press(key);
  },
  async type(page, { text }) {
    await page.keyboard.type(text);
  },
  async resize(page, { width, height }) {
    await page.setViewportSize({ width, height });
  },
  async emulate(page, { colorScheme, forcedColors, reducedMotion }) {
    await page.emulateMedia({ colorScheme, forcedColors, reducedMotion });
  },
  async print(page, { name, file }) {
    if (!/^[\w-]+$/.test(name ?? "")) throw new Error("A print needs a name of letters, digits, - and _.");
    return printHtml(page.context().browser(), file, join(screenshots, `${name}.pdf`));
  },
  async problems(_page, _options, state) {
    return state.problems.splice(0);
  },
};

/** The first visible match of a selector, or of a text in a webview. */
async function visible(page, where) {
  const frame = await frameOf(page, where);
  const matches = where.selector ? frame.locator(where.selector) : frame.getByText(where.text);
  const first = matches.filter({ visible: true }).first();
  await first.waitFor({ timeout: where.timeout });
  return first;
}

/** The main frame, or the content frame of the first webview shown that holds what is asked for. */
async function frameOf(page, { frame = "main", containing, selector, timeout = usualTimeout }) {
  if (frame === "main") return page.mainFrame();
  if (frame !== "webview") throw new Error(`There is no frame "${frame}": it is 'main' or 'webview'.`);
  const wanted = containing ?? selector ?? "body";
  const end = Date.now() + timeout;
  for (;;) {
    for (const candidate of page.frames()) {
      if (await holds(candidate, wanted)) return candidate;
    }
    if (Date.now() > end) throw new Error(`No visible webview holds ${wanted} (waited ${timeout} ms).`);
    await sleep(100);
  }
}

/** A webview's content sits in an inner frame, which the workbench names once it is loaded. */
async function holds(frame, selector) {
  try {
    const element = await frame.frameElement();
    if ((await element.getAttribute("id")) !== "active-frame" || !(await element.isVisible())) return false;
    const outer = await frame.parentFrame()?.frameElement();
    if (outer && !(await outer.isVisible())) return false;
    return (await frame.locator(selector).count()) > 0;
  } catch {
    // The main frame has no element, and a frame may go away while it is looked at.
    return false;
  }
}
