/** What the YAML parser found wrong, said in our words and placed where the writer has to look. */
import type { YAMLError } from "yaml";
import type { Fix, Problem } from "./problem.js";
import type { Block, Span } from "./tree.js";

interface Said {
  readonly code: string;
  readonly message: string;
  readonly start: number;
  readonly end: number;
  readonly fixes?: readonly Fix[];
}

const lineAt = (text: string, at: number): { readonly start: number; readonly end: number } => {
  const start = at === 0 ? 0 : text.lastIndexOf("\n", at - 1) + 1;
  const next = text.indexOf("\n", start);
  const end = next < 0 ? text.length : next;
  return { start, end: text[end - 1] === "\r" && end > start ? end - 1 : end };
};

const trimmed = (text: string, start: number, end: number): { readonly start: number; readonly end: number } => {
  const raw = text.slice(start, end);
  const from = start + (raw.length - raw.trimStart().length);
  return { start: from, end: Math.max(from, start + raw.trimEnd().length) };
};

/** The problem for one error of the parser; one line is told about once, so callers drop later ones on the same line. */
export function explain(error: YAMLError, block: Block): Problem {
  const said = say(error, block);
  const limit = block.text.length;
  const start = Math.min(Math.max(0, said.start), limit);
  const end = Math.min(Math.max(said.end, start), limit);
  return { code: said.code, tier: "syntax", severity: "error", message: said.message, span: { block, start, end }, fixes: said.fixes };
}

function say(error: YAMLError, block: Block): Said {
  const { text } = block;
  const pos = Math.min(error.pos[0], text.length);
  const line = lineAt(text, pos);
  const content = trimmed(text, line.start, line.end);
  const words = text.slice(content.start, content.end);
  const span = (start: number, end: number): Span => ({ block, start, end });

  if (/tab/iu.test(error.message) || error.code === "TAB_AS_INDENT") {
    const lead = /^[ \t]*/u.exec(text.slice(line.start, line.end))?.[0] ?? "";
    const at = span(line.start, line.start + lead.length);
    const message = "A tab stands in the indentation of this line; YAML counts spaces only, so write two spaces for each step.";
    return { code: "yaml.tab", message, start: at.start, end: at.end, fixes: [{ title: "Write spaces", edits: [{ span: at, text: lead.replaceAll("\t", "  ") }] }] };
  }
  if (error.code === "MULTILINE_IMPLICIT_KEY" || /implicit map keys need/iu.test(error.message)) return sayNoColon(block, pos, words, content);
  if (/quote/iu.test(error.message)) {
    const open = openingQuote(text, pos);
    return { code: "yaml.open-quote", message: `The text that begins with ${text[open] ?? "a quotation mark"} here is not closed; write the same mark at its end.`, start: open, end: Math.max(open + 1, lineAt(text, open).end) };
  }
  if (/must end with a|end with a \}|end with a \]/iu.test(error.message)) {
    const closing = error.message.includes("}") ? "}" : "]";
    const open = openingBracket(text, pos, closing === "}" ? "{" : "[");
    const place = open < 0 ? content : trimmed(text, open, lineAt(text, open).end);
    return { code: "yaml.open-bracket", message: `The ${closing === "}" ? "{" : "["} here is not closed; write ${closing} after its last part.`, ...place };
  }
  if (error.code === "BAD_INDENT" || /same column|indent/iu.test(error.message))
    return { code: "yaml.indentation", message: `"${words.slice(0, 40)}" does not line up with the lines it belongs to; begin it in their column.`, ...content };
  if (error.code === "BLOCK_AS_IMPLICIT_KEY")
    return { code: "yaml.second-colon", message: "A second colon followed by a space stands on this line; quote the value, or put the inner key on a line of its own.", ...content };
  if (/after .* key|separated from the next/iu.test(error.message))
    return { code: "yaml.space", message: "A space is missing here between two parts of the line.", start: pos, end: Math.min(pos + 1, line.end) };
  if (error.code === "RESOURCE_EXHAUSTION")
    return { code: "yaml.too-deep", message: "Lists or mappings stand inside one another too deeply here to be read.", start: pos, end: pos + 1 };
  const place = content.end > content.start ? content : { start: pos, end: Math.min(pos + 1, text.length) };
  return { code: "yaml.syntax", message: `This line cannot be read${words === "" ? "" : ` from "${text.slice(pos, Math.min(pos + 24, line.end)).trim()}" on`}; write a name, a colon, a space and a value.`, ...place };
}

/** A line without a colon, or without the space after it: the parser takes it together with the next line. */
function sayNoColon(block: Block, pos: number, words: string, content: { readonly start: number; readonly end: number }): Said {
  const tight = /^[^\s:#][^:#\n]*?:(?=[^\s/:])/u.exec(words);
  if (tight) {
    const at = content.start + tight[0].length;
    return {
      code: "yaml.colon-space",
      message: `A space is missing after the colon of "${tight[0]}".`,
      ...content,
      fixes: [{ title: "Write a space after the colon", edits: [{ span: { block, start: at, end: at }, text: " " }] }],
    };
  }
  return { code: "yaml.no-colon", message: `"${words.slice(0, 40)}" has no colon after it; write the name, a colon, a space and a value.`, ...(content.end > content.start ? content : { start: pos, end: pos + 1 }) };
}

/** The quotation mark nearest before a place that opens a value. */
function openingQuote(text: string, pos: number): number {
  const from = Math.max(0, pos - 4000);
  const before = text.slice(from, pos + 1);
  const found = [...before.matchAll(/(?:^|[\s,[{])(["'])/gu)].at(-1);
  return found ? from + found.index + found[0].length - 1 : pos;
}

/** The bracket that is still open at a place, or -1. */
function openingBracket(text: string, pos: number, bracket: string): number {
  let closed = 0;
  for (let at = Math.min(pos, text.length) - 1; at >= 0 && pos - at < 4000; at--) {
    const char = text[at];
    if (char === "}" || char === "]") closed++;
    else if ((char === "{" || char === "[") && closed > 0) closed--;
    else if (char === bracket) return at;
  }
  return -1;
}

/** Where the mapping that the line at `at` stands in is over: the next line indented less than that line. */
export function mappingEnd(text: string, at: number): number {
  const line = lineAt(text, at);
  const depth = /^ */u.exec(text.slice(line.start, line.end))?.[0].length ?? 0;
  if (depth === 0) return text.length;
  const over = new RegExp(`\\n {0,${Math.min(depth, 200) - 1}}(?=[^\\s#])`, "gu");
  over.lastIndex = at;
  return over.exec(text)?.index ?? text.length;
}

/** One message a line: the first. */
export function oncePerLine(problems: readonly Problem[]): Problem[] {
  const told = new Set<number>();
  return [...problems]
    .sort((a, b) => a.span.start - b.span.start)
    .filter((problem) => {
      const { start } = lineAt(problem.span.block.text, problem.span.start);
      if (told.has(start)) return false;
      told.add(start);
      return true;
    });
}
