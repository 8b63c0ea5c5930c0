/** The bench. Arguments: the bundled server; `--quick` for fewer turns. Budgets are those the design sets itself. */
import { parseDocument } from "yaml";
import { completionsAt } from "../../server/src/editor/completion.js";
import { derivationFor } from "../../server/src/editor/derivation.js";
import { diagnosticsOf } from "../../server/src/editor/diagnostics.js";
import { hoverAt } from "../../server/src/editor/hover.js";
import { lensesOf } from "../../server/src/editor/lenses.js";
import { checkedOf } from "../../server/src/editor/notices.js";
import type { Session } from "../../server/src/editor/sessions.js";
import { symbolsOf } from "../../server/src/editor/symbols.js";
import { checkText, type Checked } from "../../server/src/engine/check-text.js";
import { warm } from "../../server/src/formula/declare.js";
import { LineIndex } from "../../server/src/notebook/lines.js";
import { Client } from "../protocol/client.js";
import { longNotebook } from "./long-notebook.js";
import { median, percentile, printRows, printTable, time, type Row } from "./measure.js";
import { benchPiers } from "./pier.js";
import { edited, places, sharedPlaces, wander, type Place } from "./typing.js";

const [server, ...flags] = process.argv.slice(2);
const quick = flags.includes("--quick");
const rounds = quick ? 60 : 400;

const sizes = [
  { lines: 200, supports: 9 },
  { lines: 2_000, supports: 98, budget: 10 },
  { lines: 20_000, supports: 998, budget: 25 },
];

const sessionOf = (checked: Checked, version: number): Session => ({ uri: "file:///bench.rootfast", version, checked, lines: new LineIndex(checked.text), stale: false, shown: checked });

/** What the server does of itself after an edit: check, place, put into the wire's form. */
function publish(checked: Checked, version: number): Session {
  const session = sessionOf(checked, version);
  JSON.stringify(diagnosticsOf(session));
  JSON.stringify(checkedOf(session));
  return session;
}

function edits(start: Checked, places: readonly Place[], supports: number, turns: number): { times: Map<string, number[]>; last: Checked } {
  const times = new Map<string, number[]>(places.map(({ kind }) => [kind, []]));
  const support = wander(supports);
  let checked = start;
  for (let turn = 0; turn < turns; turn += 1) {
    const place = places[turn % places.length];
    const text = edited(checked.text, place, support.next().value as number, turn);
    const took = time(() => {
      checked = checkText(text, checked);
      publish(checked, turn);
    });
    times.get(place.kind)?.push(took);
  }
  return { times, last: checked };
}

/** The `yaml` package's parse of the whole text, as a server without blocks would do at each edit. */
const fullParses = (text: string, turns: number): number[] => Array.from({ length: turns }, (_, i) => time(() => parseDocument(`${text}# ${i}\n`)));

function benchEdits(): void {
  for (const { lines, supports, budget } of sizes) {
    const text = longNotebook(supports);
    const parses = fullParses(text, lines > 5000 ? 8 : 20).slice(2);
    const cold = time(() => checkText(text));
    let checked = checkText(text);
    // The first edits are still being compiled by the engine that runs them.
    checked = edits(checked, [...places, ...sharedPlaces], supports, 40).last;
    const own = edits(checked, places, supports, rounds);
    const shared = edits(own.last, sharedPlaces, supports, lines > 5000 ? 30 : 90);
    const all = [...own.times.values()].flat();
    const rows: Row[] = [
      { what: "one character, in one support", times: all, budget: budget === undefined ? undefined : { at: "p95", ms: budget } },
      ...[...own.times].map(([what, times]) => ({ what: `  ${what}`, times })),
      ...[...shared.times].map(([what, times]) => ({ what: `one character, ${what}`, times })),
      { what: "one full parse by yaml", times: parses },
    ];
    printRows(`Edit to diagnostics, ${text.split("\n").length.toLocaleString("en-US")} lines, ${supports} supports (first check of the text ${cold.toFixed(0)} ms)`, rows);
    const ratio = median(parses) / median(all);
    console.log(`A full parse takes ${ratio.toFixed(1)} times as long as an edit (${ratio > 1 ? "met" : "MISSED"}: more than 1); at p95 ${(percentile(parses, 0.95) / percentile(all, 0.95)).toFixed(1)}.`);
    benchAnswers(own.last, supports, lines);
  }
}

function benchAnswers(checked: Checked, supports: number, lines: number): void {
  const session = publish(checked, 1);
  const support = wander(supports);
  const turns = quick ? 30 : 100;
  const at = (i: number, inside: string) => session.lines.positionAt(session.checked.text.indexOf(inside, session.checked.text.indexOf(`\n  P${i}:`)) + inside.length);
  const ask = (work: (i: number) => unknown, count = turns) => Array.from({ length: count }, () => support.next().value as number).map((i) => time(() => JSON.stringify(work(i))));
  const budget = { at: "p95", ms: 16 } as const;
  printRows(`Answers, ${lines.toLocaleString("en-US")} lines`, [
    { what: "hover on a value", times: ask((i) => hoverAt(session, at(i, "depth: "), true)), budget },
    { what: "hover on a support", times: ask((i) => hoverAt(session, session.lines.positionAt(session.checked.text.indexOf(`\n  C${i}:`) + 4), true)), budget },
    { what: "completion of a value", times: ask((i) => completionsAt(session, at(i, "ground: "))), budget },
    { what: "completion of a key", times: ask((i) => completionsAt(session, at(i, "kind: pier\n    "))), budget },
    { what: "lenses", times: ask(() => lensesOf(session), lines > 5000 ? 12 : turns), budget },
    { what: "outline", times: ask(() => symbolsOf(session), lines > 5000 ? 12 : turns) },
    { what: "derivation view", times: ask((i) => derivationFor(session, `columns.C${i}`), lines > 5000 ? 12 : turns) },
  ]);
}

async function benchWire(): Promise<void> {
  const rows: Row[] = [];
  for (const { lines, supports, budget } of sizes) {
    const client = await Client.start(server);
    const open = client.open(longNotebook(supports));
    await open.answer();
    const support = wander(supports);
    const times: number[] = [];
    for (let turn = 0; turn < rounds / 2 + 20; turn += 1) {
      const text = edited(open.text, places[turn % places.length], support.next().value as number, turn);
      let from = 0;
      while (text[from] === open.text[from]) from += 1;
      const grown = text.length - open.text.length;
      const to = from + (grown > 0 ? 0 : 1);
      const sign = text.slice(from, from + (grown < 0 ? 0 : 1));
      // Counting lines is the client's part and not the server's.
      const change = open.prepare({ from, to, text: sign });
      const began = performance.now();
      change();
      await open.answer();
      if (turn >= 20) times.push(performance.now() - began);
    }
    await client.end();
    rows.push({ what: `${lines.toLocaleString("en-US")} lines`, times, budget: budget === undefined ? undefined : { at: "p95", ms: budget } });
  }
  printRows("Edit sent to diagnostics received, real server over its streams", rows);
}

async function benchStart(): Promise<void> {
  const times: number[] = [];
  for (let i = 0; i < 10; i += 1) {
    const began = performance.now();
    const client = await Client.start(server);
    times.push(performance.now() - began);
    await client.end();
  }
  printRows("Start of the process to the initialize reply", [{ what: "start", times, budget: { at: "p50", ms: 300 } }]);
}

function benchMemory(): void {
  const supports = 98;
  const support = wander(supports);
  const all = [...places, ...sharedPlaces];
  let checked = checkText(longNotebook(supports));
  const measured: { edits: number; heap: number; rss: number }[] = [];
  const total = quick ? 2_000 : 10_000;
  for (let turn = 1; turn <= total; turn += 1) {
    checked = checkText(edited(checked.text, turn % 40 === 0 ? all[turn % all.length] : places[turn % places.length], support.next().value as number, turn), checked);
    publish(checked, turn);
    if (turn === total / 10 || turn === total / 2 || turn === total) {
      globalThis.gc?.();
      const { heapUsed, rss } = process.memoryUsage();
      measured.push({ edits: turn, heap: heapUsed / 2 ** 20, rss: rss / 2 ** 20 });
    }
  }
  printTable(
    "Memory, 2,000 lines",
    ["MiB", "heap", "resident", ""],
    measured.map(({ edits, heap, rss }) => [`after ${edits.toLocaleString("en-US")} edits`, heap.toFixed(1), rss.toFixed(0), ""]),
  );
  const grown = measured[measured.length - 1].heap - measured[0].heap;
  console.log(`The heap grew by ${grown.toFixed(1)} MiB (${grown < 2 ? "met" : "MISSED"}: flat, within 2 MiB).`);
}

async function main(): Promise<void> {
  warm();
  benchPiers(quick ? 100 : 400);
  await benchStart();
  benchEdits();
  benchMemory();
  await benchWire();
}

void main();
