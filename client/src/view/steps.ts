/** The steps of a calculation: each formula, the same with its numbers, its result and where it comes from. */
import type { FindingReport, StepReport, SymbolReport } from "../../../shared/report.js";
import { h, table, type Child } from "./dom.js";
import { math } from "./math.js";
import { lettered } from "./symbol-text.js";

const symbolName = (symbol: string): Child => {
  const { base, sub } = lettered(symbol);
  return [h("i", {}, base), sub !== undefined && h("sub", {}, sub)];
};

/** Symbol, meaning and value in one line, for what went into a routine and what came out of it. */
const values = (list: readonly SymbolReport[]): Child =>
  list.map(({ symbol, meaning, shown, value }) =>
    h("li", { "data-symbol": symbol, "data-value": String(value) }, symbolName(symbol), ` = ${shown}, ${meaning}`),
  );

const step = (one: StepReport): HTMLElement => {
  switch (one.type) {
    case "note":
      return h("li", { class: "note" }, one.text);
    case "routine":
      return h(
        "li",
        { class: "step", "data-formula": one.id },
        h("p", { class: "source" }, one.source),
        h("p", {}, h("strong", {}, one.title), `. ${one.method}`),
        h("p", { class: "aside" }, "Given"),
        h("ul", { class: "values" }, values(one.given)),
        h("p", { class: "aside" }, "Found"),
        h("ul", { class: "values" }, values(one.found)),
      );
    case "formula":
      return h(
        "li",
        { class: "step", "data-formula": one.id, "data-value": String(one.result.value) },
        h("p", { class: "source" }, one.source),
        h("p", { class: "aside" }, one.result.meaning),
        h("div", { class: "formula" }, math(one.mathml?.formula, one.plain.formula)),
        h("div", { class: "substituted" }, math(one.mathml?.substituted, one.plain.substituted)),
        h("div", { class: "result" }, math(one.mathml?.result, one.plain.result)),
      );
  }
};

export const steps = (list: readonly StepReport[]): HTMLElement => h("ol", { class: "steps" }, list.map(step));

const symbolsOf = (one: StepReport): readonly SymbolReport[] => {
  if (one.type === "note") return [];
  return one.type === "formula" ? [...one.symbols, one.result] : [...one.given, ...one.found];
};

/** Each symbol once for each value it takes, in the order of the calculation. */
const distinct = (list: readonly StepReport[]): SymbolReport[] => {
  const seen = new Map<string, SymbolReport>();
  for (const symbol of list.flatMap(symbolsOf)) {
    const key = `${symbol.symbol} ${symbol.value}`;
    const known = seen.get(key);
    if (!known || (known.field === undefined && symbol.field !== undefined)) seen.set(key, symbol);
  }
  return [...seen.values()];
};

/** A field is declared with `*` for a name; the places of a finding carry the name. */
const names = (pattern: string, path: string): boolean => {
  const [parts, given] = [pattern.split("."), path.split(".")];
  return parts.length === given.length && parts.every((part, i) => part === "*" || part === given[i]);
};

type Related = NonNullable<FindingReport["related"]>;

/** The notebook field of a symbol: a button that shows it in the text where its place is known. */
const fieldOf = (field: string | undefined, related: Related): Child => {
  if (field === undefined) return "";
  const found = related.find((one) => one.field !== undefined && names(field, one.field));
  return found
    ? h("button", { type: "button", "data-reveal": JSON.stringify(found.place), title: "Show in the notebook" }, found.field)
    : field.replaceAll(".*.", " · ").replaceAll(".", " · ");
};

export const symbols = (list: readonly StepReport[], related: Related): HTMLElement =>
  table(
    "Symbols of this calculation",
    [{ head: "Symbol" }, { head: "Value", numeric: true }, { head: "Meaning" }, { head: "In the notebook" }],
    distinct(list).map((one) => ({
      attributes: { "data-symbol": one.symbol, "data-value": String(one.value), "data-unit": one.unit },
      cells: [symbolName(one.symbol), one.shown, one.meaning, fieldOf(one.field, related)],
    })),
  );
