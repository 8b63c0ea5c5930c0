import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import type { State } from "../../../shared/report.js";
import { check, findingOf } from "./command-line.js";
import { test } from "./registry.js";
import { depthOfPier, diagnostics, errors, openShelter, patience, setValue, sufficientDepth, untilErrors, valueRange } from "./shelter.js";
import { waitUntil } from "./wait.js";

const { Error: error, Warning: warning, Information: information } = vscode.DiagnosticSeverity;

const rangeText = ({ start, end }: vscode.Range): string => `${start.line}:${start.character}-${end.line}:${end.character}`;

test("the sample shows its two faults, each on the value that can fix it", async () => {
  const { document } = await openShelter();
  const found = errors(document).map(({ code, range, source }) => ({ code, text: document.getText(range), at: rangeText(range), source }));
  const depth = valueRange(document, ...depthOfPier);
  const kind = valueRange(document, "ground", "sand", "kind");
  assert.deepEqual(
    found.sort((a, b) => String(a.code).localeCompare(String(b.code))),
    [
      { code: "pier.embedment", text: "3 ft 6 in", at: rangeText(depth), source: "rootfast" },
      { code: "site.one-ground", text: "soil", at: rangeText(kind), source: "rootfast" },
    ],
  );
});

test("a fault points to the other values it rests on", async () => {
  const { document } = await openShelter();
  const othersOf = (code: string) =>
    errors(document)
      .find((one) => one.code === code)
      ?.relatedInformation?.map(({ location, message }) => ({ at: rangeText(location.range), message, uri: location.uri.toString() })) ?? [];
  const embedment = othersOf("pier.embedment");
  const diameter = embedment.find(({ at }) => at === rangeText(valueRange(document, "foundations", "short pier", "diameter")));
  assert.match(diameter?.message ?? "", /diameter/);
  const soil = embedment.find(({ at }) => at === rangeText(valueRange(document, "ground", "sand", "class")));
  assert.match(soil?.message ?? "", /lateral bearing/);
  const ground = othersOf("site.one-ground");
  assert.deepEqual(ground.map(({ at }) => at), [rangeText(valueRange(document, "ground", "ledge", "kind"))]);
  assert.match(ground[0].message, /north stands on rock/);
  for (const { uri } of [...embedment, ...ground]) assert.equal(uri, document.uri.toString());
});

test("what the command line finds over, near or not checked is marked at the same place, and what holds is not", async () => {
  const { document } = await openShelter();
  const report = await check(document.getText());
  const findings = report.structures.flatMap(({ supports }) => supports.flatMap((support) => support.findings));
  const marked: Partial<Record<State, vscode.DiagnosticSeverity>> = { over: error, near: information, accepted: information };
  for (const { check: id, state, place } of findings) {
    const at = rangeText(new vscode.Range(place.line, place.character, place.endLine, place.endCharacter));
    const severities = diagnostics(document)
      .filter((one) => one.code === id && rangeText(one.range) === at)
      .map(({ severity }) => severity);
    assert.deepEqual([...new Set(severities)], marked[state] === undefined ? [] : [marked[state]], `${id}, ${state}, at ${at}`);
  }
});

test("near is information, accepted is information, not checked is a warning", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const { demand } = findingOf(await check(document.getText()), "columns.south", "pier.embedment");
  assert.ok(demand, "the embedment has no demand");
  const ofPier = () => diagnostics(document).filter(({ code }) => code === "pier.embedment").map(({ severity }) => severity);
  const until = (what: string, severity: vscode.DiagnosticSeverity) => waitUntil(what, () => ofPier().length === 1 && ofPier()[0] === severity, patience);

  await setValue(editor, depthOfPier, `${(demand.value / 0.3048 / 0.97).toFixed(3)} ft`);
  await until("a depth used to 97 % is near", information);

  await setValue(editor, depthOfPier, "3 ft 6 in");
  await untilErrors(document, "pier.embedment", "site.one-ground");
  await editor.edit((edit) =>
    edit.insert(document.lineAt(document.lineCount - 1).range.end, "\naccept:\n  - check: pier.embedment\n    at: south\n    because: a temporary shelter, watched in storms\n"),
  );
  await until("a written reason accepts it", information);
  await untilErrors(document, "site.one-ground");

  await vscode.commands.executeCommand("undo");
  await untilErrors(document, "pier.embedment", "site.one-ground");
  await editor.edit((edit) => edit.delete(document.lineAt(valueRange(document, ...depthOfPier).start.line).rangeIncludingLineBreak));
  const unknown = await waitUntil(
    "a pier without a depth is not checked",
    () => diagnostics(document).find(({ severity, message }) => severity === warning && message.includes("Embedment of the pier")),
    patience,
  );
  assert.match(unknown.message, /^Not checked: .*depth/);
});

test("a sufficient depth clears the mark, and undo brings it back", async () => {
  const editor = await openShelter();
  await setValue(editor, depthOfPier, sufficientDepth);
  await untilErrors(editor.document, "site.one-ground");
  await vscode.commands.executeCommand("undo");
  assert.equal(editor.document.getText(valueRange(editor.document, ...depthOfPier)), "3 ft 6 in");
  await untilErrors(editor.document, "pier.embedment", "site.one-ground");
});
