import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { allRules } from "../../server/src/checks/registry.js";
import { checkText } from "../../server/src/engine/check-text.js";

const samples = join(__dirname, "../../samples");
const examples = join(__dirname, "../worked-examples");

const textsOf = (folder: string, ending: string): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .map((name) => readFileSync(join(folder, name), "utf8"));

const notebooks = [...textsOf(samples, ".rootfast"), ...textsOf(examples, ".md").flatMap((text) => [...text.matchAll(/```yaml\n([\s\S]*?)```/gu)].map(([, yaml]) => yaml))];

describe("A rule that looks at one support alone", () => {
  const structures = notebooks.flatMap((text) => checkText(text).documents.map(({ structure }) => structure)).filter(({ supports }) => supports.length > 1);

  it("has structures of several supports to be tried on", () => {
    expect(structures.length).toBeGreaterThan(10);
  });

  it.each(allRules.filter(({ alone }) => alone).map((rule) => [rule.id, rule] as const))("%s says of each support what it says of it among the others", (_, rule) => {
    for (const structure of structures) {
      const together = rule.judge(structure);
      const apart = structure.supports.flatMap((support) => rule.judge({ ...structure, supports: [support] }));
      expect(apart.map(({ support, verdict, message }) => [support?.path, verdict, message])).toEqual(together.map(({ support, verdict, message }) => [support?.path, verdict, message]));
    }
  });
});
