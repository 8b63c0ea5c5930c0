/**
 * Characters that look like part of a number and are not: they arrive with text pasted from a document or typed on another
 * keyboard. Each is named, with the text it should have been.
 */
export interface Lookalike {
  readonly code: string;
  readonly message: string;
  readonly at: number;
  readonly length: number;
}

interface Rule {
  readonly code: string;
  readonly find: RegExp;
  readonly say: (found: string) => string;
  readonly instead: (found: string) => string;
}

const fractions: Readonly<Record<string, string>> = {
  "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
};

/** The ASCII digit for a decimal digit of any script: digits stand in runs of ten from a zero. */
function asciiDigit(found: string): string {
  const code = found.codePointAt(0) ?? 0;
  let zero = code;
  while (/\p{Nd}/u.test(String.fromCodePoint(zero - 1))) zero--;
  return String((code - zero) % 10);
}

const hex = (found: string) => `U+${(found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;

const rules: readonly Rule[] = [
  {
    code: "quantity.minus-sign",
    find: /[\u2010-\u2015\u2212\uFE58\uFE63\uFF0D]/gu,
    say: (c) => `"${c}" (${hex(c)}) is not the minus sign or hyphen of the keyboard; write "-".`,
    instead: () => "-",
  },
  {
    code: "quantity.digits",
    find: /(?![0-9])\p{Nd}/gu,
    say: (c) => `"${c}" (${hex(c)}) is not a digit 0 to 9; write ${asciiDigit(c)}.`,
    instead: asciiDigit,
  },
  {
    code: "quantity.space",
    find: /[\u00A0\u1680\u2000-\u200A\u202F\u205F\u3000]/gu,
    say: (c) => `The space here (${hex(c)}) is not an ordinary space; write an ordinary space.`,
    instead: () => " ",
  },
  {
    code: "quantity.invisible",
    find: /[\u00AD\u200B-\u200F\u202A-\u202E\u2060\uFEFF]/gu,
    say: (c) => `An invisible character (${hex(c)}) stands here; remove it.`,
    instead: () => "",
  },
  {
    code: "quantity.quote",
    find: /[\u2018\u2019\u201C\u201D]/gu,
    say: (c) => `"${c}" is a quotation mark; write feet as ' and inches as ".`,
    instead: (c) => (c === "\u2018" || c === "\u2019" ? "'" : '"'),
  },
  {
    code: "quantity.fraction-character",
    find: /[½⅓⅔¼¾⅛⅜⅝⅞]/gu,
    say: (c) => `"${c}" is one character; write the fraction out as ${fractions[c]}.`,
    instead: (c) => fractions[c] ?? c,
  },
  {
    code: "quantity.full-width",
    find: /[\uFF01-\uFF0F\uFF1A-\uFF5E]/gu,
    say: (c) => `"${c}" (${hex(c)}) is a full-width character; write "${narrow(c)}".`,
    instead: (c) => narrow(c),
  },
];

const narrow = (found: string) => String.fromCodePoint((found.codePointAt(0) ?? 0) - 0xfee0);

/** The first such character, or undefined. */
export function findLookalike(text: string): Lookalike | undefined {
  let first: Lookalike | undefined;
  for (const rule of rules) {
    const at = text.search(new RegExp(rule.find.source, "u"));
    if (at < 0 || (first && first.at <= at)) continue;
    const found = String.fromCodePoint(text.codePointAt(at) ?? 0);
    first = { code: rule.code, message: rule.say(found), at, length: found.length };
  }
  return first;
}

/** The text with every such character replaced; `5½` becomes `5-1/2`. */
export function plainCharacters(text: string): string {
  const spread = text.replace(/(\d)[ ]?([½⅓⅔¼¾⅛⅜⅝⅞])/gu, (_all, digit: string, c: string) => `${digit}-${fractions[c]}`);
  return rules.reduce((t, rule) => t.replace(rule.find, (c) => rule.instead(c)), spread);
}
