import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { notebook } from "../../server/src/notebook/schema.js";
import type { Field } from "../../server/src/notebook/fields.js";
import { scopeAt, type Grammar, type Rule } from "./textmate.js";

const grammar = JSON.parse(readFileSync(join(__dirname, "../../syntaxes/rootfast.tmLanguage.json"), "utf8")) as Grammar;

const rows: readonly (readonly [text: string, part: string, scope: string | undefined])[] = [
  ["site:", "site", "keyword.other.section"],
  ["  frost depth: 30 in", "frost depth", "entity.name.tag"],
  ["  frost depth: 30 in", ":", "punctuation.separator.key-value"],
  ["  frost depth: 30 in", "30", "constant.numeric"],
  ["  frost depth: 30 in", "in", "keyword.other.unit"],
  ["  clear height: 9 ft", "clear height", "entity.name.type.entry"],
  ["  south:", "south", "entity.name.type.entry"],
  ["      wind from west:", "wind from west", "entity.name.type.entry"],
  ["    base: A", "A", "variable.other.reference"],
  ["    stands on: ledge wall # north", "ledge wall", "variable.other.reference"],
  ["    stands on: ledge wall # north", "north", "comment.line.number-sign"],
  ["    bars: 8 #6", "6", "comment.line.number-sign"],
  ["    bars: 8 no. 6", "no. 6", "support.constant.bar"],
  ["    bar: 16M", "16M", "support.constant.bar"],
  ["    grout: 1-1/2 in", "1-1/2", "constant.numeric"],
  ["    height: 5'-6\"", "5", "constant.numeric"],
  ["    height: 5'-6\"", "'", "keyword.other.unit"],
  ["    height: 5'-6\"", "\"", "keyword.other.unit"],
  ["    lateral bearing: 150 psf/ft", "psf/ft", "keyword.other.unit"],
  ["        moment x: -4.5 kip-ft", "-4.5", "constant.numeric"],
  ["        moment x: -4.5 kip-ft", "kip-ft", "keyword.other.unit"],
  ["    section: HSS6x6x3/8", "HSS6x6x3/8", "support.constant.section"],
  ["    anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square", "F1554 Gr 36", "support.constant.grade"],
  ["    anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square", "x", "keyword.operator.word"],
  ["    anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square", "deep", "keyword.operator.word"],
  ["  building: IBC 2021", "IBC 2021", "support.constant.edition"],
  ["    leveling nuts: yes", "yes", "constant.language.boolean"],
  ["    height: = max(clear height, 8 ft) + 6 in", "=", "keyword.operator.assignment.expression"],
  ["    height: = max(clear height, 8 ft) + 6 in", "max", "support.function.math"],
  ["    height: = max(clear height, 8 ft) + 6 in", "clear height", "variable.other.readwrite"],
  ["    height: = max(clear height, 8 ft) + 6 in", "ft", "keyword.other.unit"],
  ["    height: = max(clear height, 8 ft) + 6 in", "+", "keyword.operator.arithmetic"],
  ["    height: = foundations.pier.depth # same", "foundations.pier.depth", "variable.other.readwrite"],
  ["    height: = foundations.pier.depth # same", "same", "comment.line.number-sign"],
  ["  south: { height: \"= max(9 ft, 8 ft)\", base: A }", "max", "support.function.math"],
  ["  south: { height: \"= max(9 ft, 8 ft)\", base: A }", "base", "entity.name.tag"],
  ["  south: { height: \"= max(9 ft, 8 ft)\", base: A }", "A", "variable.other.reference"],
  ["  - check: column drift", "check", "entity.name.tag"],
  ["  - check: column drift", "-", "punctuation.definition.block.sequence.item"],
  ["  notes: |\n    Line 1 # not a comment: 5 ft", "# not a comment: 5 ft", "string.unquoted.block"],
  ["  notes: |\n    Line 1\n  stage: permit", "stage", "entity.name.tag"],
  ["  south: &line", "&line", "entity.name.type.anchor"],
  ["    <<: *line", "*line", "variable.other.alias"],
  ["---", "---", "entity.other.document"],
];

describe("the grammar", () => {
  it.each(rows)("in %j, %j is %s", (text, part, scope) => {
    expect(scopeAt(grammar, text, part)).toBe(scope === undefined ? undefined : `${scope}.rootfast`);
  });

  it("names every section and every field of the format", () => {
    const names = new Set<string>();
    const collect = (field: Field): void => {
      if (field.type === "record") {
        for (const [name, inner] of Object.entries(field.fields as Record<string, Field>)) {
          names.add(name);
          collect(inner);
        }
      } else if (field.type === "named" || field.type === "list") collect(field.of);
    };
    for (const [section, field] of Object.entries(notebook.fields as Record<string, Field>)) {
      expect(scopeAt(grammar, `${section}:`, section)).toBe("keyword.other.section.rootfast");
      collect(field);
    }
    expect(names.size).toBeGreaterThan(80);
    const unknown = [...names].filter((name) => scopeAt(grammar, `  ${name}: 1`, name) !== "entity.name.tag.rootfast");
    expect(unknown).toEqual([]);
  });

  it("includes only what it holds itself, so it needs no other extension", () => {
    const included = (rules: readonly Rule[]): string[] =>
      rules.flatMap((rule) => [...(rule.include === undefined ? [] : [rule.include]), ...included(rule.patterns ?? [])]);
    const all = included([...grammar.patterns, ...Object.values(grammar.repository)]);
    expect(all.length).toBeGreaterThan(10);
    expect(all.filter((name) => !(name.slice(1) in grammar.repository))).toEqual([]);
  });
});
