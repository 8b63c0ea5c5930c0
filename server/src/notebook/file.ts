/** What can be said about a file as a whole: that it is no text, too large, in conflict, or not a notebook. */
import type { Problem } from "./problem.js";
import { newestVersion, notebook } from "./schema.js";
import { entryOf, type Block, type MapNode, type Node, type Span } from "./tree.js";

/** Characters; a notebook of a large job has a tenth of it. */
export const largestText = 2 * 1024 * 1024;

const firstLine = (block: Block, from = 0): Span => {
  const found = block.text.slice(from, from + 200).search(/[\r\n]/u);
  const end = found < 0 ? Math.min(block.text.length, from + 200) : from + found;
  return { block, start: from, end };
};

const problem = (code: string, message: string, span: Span, more: Partial<Problem> = {}): Problem => ({ code, tier: "syntax", severity: "error", message, span, ...more });

/** Brackets in a row; the parser would follow them down thousands of levels before giving up. */
const nested = /[[{]{100}/u;
const maybeNested = ["[[[[", "{{{{", "[{[{", "[[{{"];
const opening = /^<{7}(?: [^\n]*)?\r?$/mu;
const further = /^(?:={7}|>{7}(?: [^\n]*)?)\r?$/gmu;

/** The one message about a text that is not parsed at all, or undefined. */
export function unreadable(text: string): Problem | undefined {
  const block: Block = { key: "", text: text.length > largestText ? text.slice(0, 200) : text, offset: 0 };
  if (text.length > largestText) {
    const size = (text.length / (1024 * 1024)).toFixed(1);
    return problem("file.too-large", `${size} MB is more than the 2 MB read here; split the job into several notebooks.`, firstLine(block));
  }
  const zero = text.indexOf("\0");
  if (zero >= 0) return problem("file.binary", "This is not a text file: it holds characters with the code 0.", { block, start: zero, end: zero + 1 });
  const deep = maybeNested.some((run) => text.includes(run)) ? nested.exec(text) : null;
  if (deep) return problem("yaml.too-deep", "Lists or mappings stand inside one another too deeply here to be read.", { block, start: deep.index, end: deep.index + 1 });
  const marker = text.includes("<<<<<<<") ? opening.exec(text) : null;
  if (marker) {
    const related = [...text.matchAll(further)].filter((m) => m.index > marker.index).slice(0, 20);
    return problem(
      "file.conflict",
      "Two versions of this part stand one below the other, left by a merge; keep one of them and remove the three marker lines.",
      { block, start: marker.index, end: marker.index + marker[0].trimEnd().length },
      { related: related.map((m) => ({ span: { block, start: m.index, end: m.index + m[0].trimEnd().length }, message: "A marker line of the same conflict." })) },
    );
  }
  return loneReturn(text, block);
}

function loneReturn(text: string, block: Block): Problem | undefined {
  const found: number[] = [];
  for (let at = text.indexOf("\r"); at >= 0; at = text.indexOf("\r", at + 1)) if (text[at + 1] !== "\n") found.push(at);
  if (found.length === 0) return undefined;
  const edits = found.map((at) => ({ span: { block, start: at, end: at + 1 }, text: "\n" }));
  return problem("file.line-end", "A line ends here with a carriage return alone, which YAML does not read as a line end; end lines with a line feed.", edits[0].span, {
    fixes: [{ title: "End these lines with line feeds", edits }],
  });
}

export const emptyMap = (block: Block, at = 0): MapNode => ({ type: "map", span: { block, start: at, end: at }, entries: [], flow: false });

export interface Judged {
  /** Empty where the document is not to be read any further. */
  readonly root: MapNode;
  readonly problems: readonly Problem[];
  /** False where nothing else is to be said about the document. */
  readonly isNotebook: boolean;
}

/** Whether the root is a notebook of a version known here. */
export function judgeRoot(root: Node, whole: Block): Judged {
  const stop = (said: Problem): Judged => ({ root: emptyMap(root.span.block, root.span.start), problems: [said], isNotebook: false });
  const start = "a notebook is a list of sections, and its first line is rootfast: 1.";
  if (root.type === "null")
    return stop({ ...problem("file.empty", `Nothing is written here yet; ${start}`, { block: whole, start: 0, end: 0 }, { fixes: [{ title: "Write rootfast: 1", edits: [{ span: { block: whole, start: whole.text.length, end: whole.text.length }, text: "rootfast: 1\n" }] }] }), severity: "information" });
  const place: Span = { block: root.span.block, start: root.span.start, end: Math.min(root.span.end, firstLine(root.span.block, root.span.start).end) };
  if (root.type !== "map") return stop(problem("file.other-shape", `This is not a notebook; ${start}`, place));
  if (!root.entries.some((entry) => Object.hasOwn(notebook.fields, entry.key))) return stop(problem("file.other-shape", `This is not a notebook: none of its keys is a section known here; ${start}`, place));

  const version = entryOf(root, "rootfast");
  if (!version) {
    const at = root.span.start + (root.flow ? 1 : 0);
    const span = { block: root.span.block, start: at, end: at };
    const text = root.flow ? '"rootfast": 1, ' : `rootfast: 1${whole.text.includes("\r\n") ? "\r\n" : "\n"}`;
    const said = problem("file.version-missing", "The notebook does not say its format; write rootfast: 1 as its first line.", place, { fixes: [{ title: "Write rootfast: 1", edits: [{ span, text }] }] });
    return { root, problems: [said], isNotebook: true };
  }
  const written = version.value.type === "scalar" ? Number(version.value.text) : Number.NaN;
  if (written > newestVersion)
    return stop(problem("file.version-newer", `This notebook is written in format ${written}; the newest read here is ${newestVersion}. Update the extension to check it.`, version.value.span));
  return { root, problems: [], isNotebook: true };
}
