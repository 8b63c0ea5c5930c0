import { dimensionOf, dimensionOfKind, sameDimension } from "./dimension.js";
import type { KindName } from "./kinds.js";
import { likelyUnits } from "./likely.js";
import { unitTable } from "./table.js";

export interface DigitGroups {
  readonly code: string;
  readonly message: string;
  readonly at: number;
  readonly length: number;
  /** Replacements of the whole text. */
  readonly texts: readonly string[];
}

/** Finds commas, underscores and apostrophes used inside a number: `1,000`, `1,5`, `1_000`, `1'000`. */
export function readDigitGroups(text: string): DigitGroups | undefined {
  const underscore = /\d+(?:_\d+)+/.exec(text);
  if (underscore) {
    const said = underscore[0].replaceAll("_", "");
    return found("quantity.underscore", `${underscore[0]} has underscores between digits; write ${said}.`, text, underscore, [said]);
  }
  // Swiss grouping would otherwise be read as feet.
  const apostrophe = /(?<!\d)\d{1,3}(?:'\d{3})+(?![\d/."'])(?! *(?:in\b|"|″|-|\d))/.exec(text);
  if (apostrophe) {
    const said = apostrophe[0].replaceAll("'", "");
    return found("quantity.thousands", `${apostrophe[0]} has a mark between thousands; write ${said}.`, text, apostrophe, [said]);
  }
  const comma = /\d[\d.]*(?:,\d[\d.]*)+/.exec(text);
  if (!comma) return text.includes(",") ? strayComma(text) : undefined;
  const number = comma[0];
  const joined = number.replaceAll(",", "");
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/.test(number)) {
    const said = number.replaceAll(".", "").replace(",", ".");
    return found("quantity.comma", `${number} has points between thousands and a decimal comma; write ${said}.`, text, comma, [said]);
  }
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(number)) {
    const single = /^\d+,\d+$/.test(number) ? [number.replace(",", ".")] : [];
    const or = single.length ? `, or ${single[0]} if the comma is a decimal comma` : "";
    return found("quantity.thousands", `${number} has a comma between thousands; write ${joined}${or}.`, text, comma, [joined, ...single]);
  }
  if (/^\d+,\d+$/.test(number)) {
    const said = number.replace(",", ".");
    return found("quantity.comma", `${number} has a decimal comma; write ${said}.`, text, comma, [said]);
  }
  return found("quantity.comma", `${number} cannot be read with its commas; write the number with a decimal point and nothing between thousands.`, text, comma, []);
}

const strayComma = (text: string): DigitGroups => ({
  code: "quantity.comma",
  message: "A comma stands here; one number with its unit has none.",
  at: text.indexOf(","),
  length: 1,
  texts: [text.replaceAll(/ *, */g, " ")],
});

const found = (code: string, message: string, text: string, at: RegExpExecArray, instead: readonly string[]): DigitGroups => ({
  code,
  message,
  at: at.index,
  length: at[0].length,
  texts: instead.map((said) => text.slice(0, at.index) + said + text.slice(at.index + at[0].length)),
});

/** The unit a misspelling stands for: the same letters in other capitals, or one slip away. */
export function suggestUnit(written: string, kind: KindName): string | undefined {
  const word = written.trim();
  if (word === "" || word.length > 12) return undefined;
  const all = [...new Set([...likelyUnits[kind], ...unitTable.keys(), "kN/m", "kN/m²", "kN/m³", "N/mm²", "kPa/m", "kN·m", "m/s"])];
  const fits = (unit: string) => {
    const dim = dimensionOf(unit);
    return dim !== undefined && sameDimension(dim, dimensionOfKind(kind));
  };
  const loose = (s: string) => s.toLowerCase().replaceAll("²", "2").replaceAll("³", "3").replaceAll("·", "").replaceAll(/[.^*-]/g, "");
  const sameLetters = all.filter((unit) => loose(unit) === loose(word));
  const near = sameLetters.length ? sameLetters : all.filter((unit) => fits(unit) && word.length > 1 && oneSlip(unit.toLowerCase(), word.toLowerCase()));
  return near.find(fits) ?? near[0];
}

/** One letter more, fewer, changed, or two neighbors swapped. */
function oneSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return a === b;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  const [restA, restB] = [a.slice(i), b.slice(i)];
  if (restA.slice(1) === restB || restA === restB.slice(1) || restA.slice(1) === restB.slice(1)) return true;
  return restA.length > 1 && restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2);
}
