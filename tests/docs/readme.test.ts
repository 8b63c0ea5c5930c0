import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { checksTable } from "../../server/src/summary/checks-table.js";

const file = join(__dirname, "../../README.md");
const between = /(<!-- generated: checks -->\n)([\s\S]*?)(<!-- end of generated -->)/u;

describe("The README", () => {
  it("lists the checks as the registry has them", () => {
    const text = readFileSync(file, "utf8");
    const renewed = text.replace(between, (_, open, __, close) => `${open}\n${checksTable()}\n\n${close}`);
    if (process.env.ROOTFAST_RENEW_DOCS) writeFileSync(file, renewed);
    expect(readFileSync(file, "utf8"), "run npm run docs").toBe(renewed);
  });

  it("shows a notebook that is read without an error", () => {
    const notebook = /```yaml\n([\s\S]+?)```/u.exec(readFileSync(file, "utf8"))?.[1] ?? "";
    const { problems, documents } = checkText(notebook);
    expect(problems.filter((problem) => problem.severity === "error").map((problem) => problem.message)).toEqual([]);
    expect(documents[0].structure.supports).toHaveLength(1);
  });

  it("names pictures that are there", () => {
    const pictures = [...readFileSync(file, "utf8").matchAll(/!\[[^\]]+\]\(([^)]+)\)/gu)].map((match) => match[1]);
    expect(pictures.length).toBeGreaterThan(0);
    expect(pictures.filter((picture) => !existsSync(join(__dirname, "../..", picture)))).toEqual([]);
  });
});
