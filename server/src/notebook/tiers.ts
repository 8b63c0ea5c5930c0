/** Tiers of messages: a message that only echoes a slip of an earlier tier at the same place is held back. */
import type { ParsedNotebook } from "./parse.js";
import type { Problem, Tier } from "./problem.js";
import { absolute } from "./tree.js";
import { mappingEnd } from "./yaml-errors.js";

const order: Readonly<Record<Tier, number>> = { syntax: 0, shape: 1, references: 2, engineering: 3 };

/** By tier, then by place. */
export const byTier = (problems: readonly Problem[]): Problem[] =>
  problems
    .map((problem) => ({ problem, at: absolute(problem.span).start }))
    .sort((a, b) => order[a.problem.tier] - order[b.problem.tier] || a.at - b.at)
    .map(({ problem }) => problem);

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** The lines of a slip, and the lines below that are indented deeper and so belong to it. */
function echoing(text: string, at: Stretch): Stretch {
  const start = at.start === 0 ? 0 : text.lastIndexOf("\n", at.start - 1) + 1;
  const indent = indentAt(text, start);
  let end = lineEnd(text, at.end);
  while (end < text.length) {
    const next = end + 1;
    const stop = lineEnd(text, next);
    const blank = text.slice(next, stop).trim() === "";
    if (!blank && indentAt(text, next) <= indent) break;
    end = stop;
  }
  return { start, end };
}

const lineEnd = (text: string, at: number): number => {
  const found = text.indexOf("\n", at);
  return found < 0 ? text.length : found;
};

function indentAt(text: string, start: number): number {
  let at = start;
  while (text.charCodeAt(at) === 32) at++;
  return at - start;
}

/** Slips after which the parser takes the lines that follow for something else. */
const swallows = new Set(["yaml.flow-hash", "yaml.open-bracket", "yaml.open-quote"]);

/** Removes messages of later tiers that follow from an error of YAML itself. */
export function withoutEchoes(problems: readonly Problem[], parsed: ParsedNotebook): Problem[] {
  const slips = parsed.problems.filter((problem) => problem.tier === "syntax" && problem.severity === "error" && problem.code !== "yaml.duplicate-key" && !problem.code.startsWith("file."));
  if (slips.length === 0) return [...problems];
  const echoes = slips.map((problem) => {
    const echo = echoing(parsed.text, absolute(problem.span));
    return swallows.has(problem.code) ? { start: echo.start, end: Math.max(echo.end, mappingEnd(parsed.text, echo.start)) } : echo;
  });
  return problems.filter((problem) => {
    const { start, end } = absolute(problem.span);
    if (echoes.some((echo) => start < echo.end && echo.start < Math.max(end, start + 1))) return false;
    // A name that is not found but stands in the text may only be lost in the part that cannot be read.
    const lost = problem.tier === "references" && parsed.text.includes(`${parsed.text.slice(start, end)}:`);
    return !lost;
  });
}
