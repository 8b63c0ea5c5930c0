import type { Misread } from "./parse.js";

export { readNumber } from "./parse.js";

/** Reads `yes`, `no`, `true` or `false` in any case. */
export function readYesNo(text: string): { readonly ok: true; readonly value: boolean } | Misread {
  const word = text.trim().toLowerCase();
  if (word === "yes" || word === "true") return { ok: true, value: true };
  if (word === "no" || word === "false") return { ok: true, value: false };
  return {
    ok: false,
    code: word === "" ? "yes-no.empty" : "yes-no.unknown",
    message: word === "" ? "Nothing is written here; write yes or no." : `"${text.trim()}" is neither yes nor no; write yes or no.`,
    at: text.length - text.trimStart().length,
    length: text.trim().length,
    fixes: ["yes", "no"].map((answer) => ({ title: `Write ${answer}`, text: answer })),
  };
}
