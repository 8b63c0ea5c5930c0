/** The page's script: takes numbers from the extension, keeps the sheet renewed, and sends back what the reader asks for. */
import type { DerivationReply } from "../../../shared/protocol.js";
import { anchorOf } from "./check-section.js";
import { changes } from "./changes.js";
import type { PageState, ToExtension, ToPage } from "./messages.js";
import { morphChildren } from "./morph.js";
import { keysOf, sheet, type SheetInput } from "./sheet.js";

declare const acquireVsCodeApi: () => {
  postMessage(message: ToExtension): void;
  getState(): PageState | undefined;
  setState(state: PageState): void;
};

const vscode = acquireVsCodeApi();
const root = document.getElementById("sheet") as HTMLElement;
const announcer = document.getElementById("announcer") as HTMLElement;

const kept = vscode.getState();
let open: Record<string, boolean> = { ...kept?.open };
let place: { uri: string; subject?: string } | undefined = kept && { uri: kept.uri, subject: kept.subject };
let scrollTo = kept?.scroll;
let input: SheetInput | undefined;

const save = (): void => {
  if (place) vscode.setState({ ...place, open, scroll: Math.round(window.scrollY) });
};

/** What the reader opened or closed before wins over how a part begins. */
const applyOpen = (tree: ParentNode): void => {
  for (const details of tree.querySelectorAll<HTMLDetailsElement>("details[data-key]")) {
    const decided = open[details.dataset.key ?? ""];
    if (decided !== undefined) details.open = decided;
  }
};

/** The findings on the page, as text, by key. */
let findings = new Map<string, string>();
let printing = false;

const draw = (next: SheetInput): void => {
  const fresh = input?.reply.support?.path !== next.reply.support?.path;
  const before = fresh ? new Map<string, string>() : findings;
  findings = new Map(keysOf(next.reply.support?.findings ?? []).map(({ finding, key }) => [key, JSON.stringify(finding)]));
  input = next;
  const tree = sheet(next, {
    same: (key) => before.get(key) === findings.get(key),
    isOpen: (key) => printing || open[key] === true,
  });
  applyOpen(tree);
  // Another support is another sheet, not this one with other numbers.
  if (fresh) root.replaceChildren(...tree.childNodes);
  else morphChildren(root, tree);
  const select = document.getElementById("subject") as HTMLSelectElement | null;
  if (select && next.subject !== undefined) select.value = next.subject;
};

const render = (next: SheetInput): void => {
  const before = input?.reply;
  const focused = document.activeElement;
  draw(next);
  if (focused instanceof HTMLElement && focused !== document.activeElement) {
    const again = focused.isConnected ? focused : focused.id ? document.getElementById(focused.id) : null;
    again?.focus({ preventScroll: true });
  }
  announce(before, next.reply);
};

const announce = (before: DerivationReply | undefined, after: DerivationReply): void => {
  const said = changes(before, after);
  if (said !== "") announcer.textContent = said;
};

const bringIntoView = (check: string): void => {
  const heading = document.getElementById(anchorOf(check));
  if (!heading) return;
  const details = heading.parentElement?.querySelector<HTMLDetailsElement>(":scope > details");
  if (details) details.open = true;
  heading.scrollIntoView({ block: "start" });
};

const askForLoads = (): void => {
  const titles = [...document.querySelectorAll<HTMLDetailsElement>("details[data-lazy]")].filter((one) => one.open).map((one) => one.dataset.lazy ?? "");
  vscode.postMessage({ type: "loads", titles });
};

window.addEventListener("message", ({ data }: MessageEvent<ToPage>) => {
  if (data.type === "notice") {
    render(input ? { ...input, notice: data.text } : { file: "", notice: data.text, reply: { version: 0, stale: false, subjects: [], cautions: [], signConvention: "" } });
    return;
  }
  const moved = place?.subject !== undefined && place.subject !== data.subject;
  place = { uri: data.uri, subject: data.subject };
  render({ file: data.file, subject: data.subject, reply: data.reply });
  if (moved && data.check === undefined) window.scrollTo(0, 0);
  else if (scrollTo !== undefined) window.scrollTo(0, scrollTo);
  scrollTo = undefined;
  if (data.check !== undefined) bringIntoView(data.check);
  save();
});

document.addEventListener("click", (event) => {
  const target = event.target instanceof Element ? event.target : null;
  const place = target?.closest<HTMLElement>("[data-reveal]")?.dataset.reveal;
  if (place !== undefined) vscode.postMessage({ type: "reveal", place: JSON.parse(place) });
  const anchor = target?.closest<HTMLAnchorElement>('a[href^="#"]');
  if (anchor) {
    event.preventDefault();
    const heading = document.getElementById(decodeURIComponent(anchor.hash.slice(1)));
    heading?.scrollIntoView({ block: "start" });
    heading?.focus({ preventScroll: true });
  }
  // The keyboard's way to unfold is a click too; a toggle event would also come when the page itself opens a part.
  const details = target?.closest("summary")?.parentElement;
  if (details instanceof HTMLDetailsElement && details.dataset.key !== undefined) {
    open = { ...open, [details.dataset.key]: !details.open };
    save();
  }
});

document.addEventListener("change", ({ target }) => {
  if (target instanceof HTMLSelectElement && target.id === "subject") vscode.postMessage({ type: "choose", subject: target.value });
});

// A toggle does not bubble, but it can be met on its way down.
document.addEventListener(
  "toggle",
  ({ target }) => {
    if (!(target instanceof HTMLDetailsElement) || !input || printing || !target.matches("[data-lazy]")) return;
    open = { ...open, [target.dataset.key ?? ""]: target.open };
    draw(input);
    askForLoads();
  },
  true,
);

let saving: ReturnType<typeof setTimeout> | undefined;
window.addEventListener("scroll", () => {
  clearTimeout(saving);
  saving = setTimeout(save, 200);
});

// On paper nothing can be unfolded.
let closed: HTMLDetailsElement[] = [];
window.addEventListener("beforeprint", () => {
  printing = true;
  if (input) draw(input);
  closed = [...document.querySelectorAll("details")].filter((details) => !details.open);
  for (const details of closed) details.open = true;
});
window.addEventListener("afterprint", () => {
  for (const details of closed) details.open = false;
  printing = false;
  if (input) draw(input);
});

vscode.postMessage({ type: "ready" });
