/** The shape of the report as `shared/report.ts` documents it, written out by hand; every place where a value departs from it. */
import { reportVersion } from "../../shared/report.js";

type Test = (value: unknown, at: string) => string[];
interface Optional {
  readonly optional: Test;
}

const wrong = (at: string, wanted: string, value: unknown): string[] => [`${at}: ${wanted} wanted, ${JSON.stringify(value)?.slice(0, 60) ?? "nothing"} found`];

const text: Test = (value, at) => (typeof value === "string" ? [] : wrong(at, "a text", value));
const words: Test = (value, at) => (typeof value === "string" && value.trim() !== "" ? [] : wrong(at, "words", value));
const number: Test = (value, at) => (typeof value === "number" && Number.isFinite(value) ? [] : wrong(at, "a finite number", value));
const count: Test = (value, at) => (Number.isInteger(value) && (value as number) >= 0 ? [] : wrong(at, "a count", value));
const oneOf =
  (...choices: readonly unknown[]): Test =>
  (value, at) =>
    choices.includes(value) ? [] : wrong(at, `one of ${choices.join(", ")}`, value);
const optional = (test: Test): Optional => ({ optional: test });
const list =
  (test: Test): Test =>
  (value, at) =>
    Array.isArray(value) ? value.flatMap((item, i) => test(item, `${at}[${i}]`)) : wrong(at, "a list", value);

/** Exactly these fields: a field nobody documented is wrong too. */
const fields =
  (shape: Readonly<Record<string, Test | Optional>>): Test =>
  (value, at) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return wrong(at, "fields", value);
    const holder = value as Record<string, unknown>;
    const unknown = Object.keys(holder).filter((key) => !Object.hasOwn(shape, key)).flatMap((key) => wrong(`${at}.${key}`, "no such field", holder[key]));
    const known = Object.entries(shape).flatMap(([key, test]) => {
      if (typeof test === "function") return test(holder[key], `${at}.${key}`);
      return holder[key] === undefined ? [] : test.optional(holder[key], `${at}.${key}`);
    });
    return [...unknown, ...known];
  };

const states = ["holds", "near", "over", "not checked", "not covered", "accepted"];
const state = oneOf(...states);
const place: Test = (value, at) => {
  const found = fields({ line: count, character: count, endLine: count, endCharacter: count })(value, at);
  if (found.length > 0) return found;
  const { line, character, endLine, endCharacter } = value as Record<string, number>;
  return endLine > line || (endLine === line && endCharacter >= character) ? [] : wrong(at, "an end behind its start", value);
};
const amount = fields({ value: number, unit: text, shown: words });
const symbol = fields({ symbol: words, meaning: words, field: optional(words), value: number, unit: text, shown: words });
const lines = fields({ formula: words, substituted: words, result: words });
const stepShapes: Readonly<Record<string, Test>> = {
  formula: fields({ type: oneOf("formula"), id: words, source: words, result: symbol, symbols: list(symbol), plain: lines }),
  routine: fields({ type: oneOf("routine"), id: words, title: words, method: words, source: words, given: list(symbol), found: list(symbol) }),
  note: fields({ type: oneOf("note"), text: words }),
};
const step: Test = (value, at) => (stepShapes[(value as { type: string } | null)?.type ?? ""] ?? ((other) => wrong(at, "a step", other)))(value, at);

const finding: Test = (value, at) => {
  const found = fields({
    check: words,
    title: words,
    link: words,
    subject: words,
    clause: words,
    level: optional(oneOf("strength", "allowable", "service")),
    state,
    message: words,
    demand: optional(amount),
    capacity: optional(amount),
    ratio: optional(number),
    combination: optional(words),
    column: optional(fields({ number: count, of: count })),
    place,
    related: optional(list(fields({ place, message: words, field: optional(words) }))),
    steps: optional(list(step)),
  })(value, at);
  const { state: said, ratio, demand, capacity } = value as { state: string; ratio?: number; demand?: { value: number }; capacity?: { value: number } };
  if (said === "not checked" && (ratio !== undefined || demand !== undefined || capacity !== undefined)) found.push(`${at}: not checked, and yet with numbers`);
  if ((said === "holds" || said === "near") && ratio !== undefined && ratio > 1) found.push(`${at}: ${said} with a ratio of ${ratio}`);
  if (said === "over" && ratio !== undefined && ratio <= 1) found.push(`${at}: over with a ratio of ${ratio}`);
  return found;
};

const forces = fields({ P: amount, Vx: amount, Vy: amount, Mx: amount, My: amount, Mz: optional(amount) });
const part = fields({ where: words, coefficient: optional(fields({ symbol: words, value: number })), pressure: optional(amount), pushX: optional(amount), pushY: optional(amount), read: words });
const loadCase = fields({ id: words, title: words, type: words, source: words, outside: optional(words), parts: list(part), total: forces });
const support = fields({
  path: words,
  name: words,
  description: text,
  columns: count,
  place,
  worst: fields({ state, ratio: optional(number), check: optional(words) }),
  reactions: list(fields({ column: count, caseId: words, case: words, type: words, base: forces, cells: list(words) })),
  reactionHeads: list(words),
  governing: list(fields({ level: words, section: words, component: words, extreme: oneOf("largest", "smallest"), column: count, combination: words, forces })),
  noActions: optional(words),
  findings: list(finding),
  notCovered: list(fields({ id: words, text: words })),
});
const structure = fields({
  name: text,
  stage: optional(words),
  units: oneOf("US", "SI"),
  codes: list(words),
  criteria: list(fields({ label: words, shown: words, assumed: optional(words) })),
  supports: list(support),
  assumptions: list(fields({ field: words, path: words, text: words, source: words, place })),
  loads: optional(fields({ velocityPressure: amount, velocityPressureSource: words, cases: list(loadCase) })),
  openItems: list(text),
  remarks: list(fields({ message: words, place })),
  asBuilt: list(fields({ path: words, drawn: words, built: words, noted: optional(words), place })),
  loadDerivations: optional(list(fields({ title: words, source: words, steps: list(step) }))),
  counts: fields(Object.fromEntries(states.map((name) => [name, count]))),
});
const report = fields({
  rootfastReport: oneOf(reportVersion),
  file: words,
  problems: list(fields({ code: words, tier: oneOf("syntax", "shape", "references", "engineering"), severity: oneOf("error", "warning", "information", "hint"), message: words, place })),
  structures: list(structure),
  cautions: list(words),
});

/** Where the reports `check --format json` prints depart from their documented shape; empty where nowhere. */
export const departures = (reports: unknown): string[] => list(report)(reports, "reports");
