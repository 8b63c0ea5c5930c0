import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { readNotebook } from "../../server/src/notebook/read-notebook.js";
import { absolute } from "../../server/src/notebook/tree.js";
import { applied } from "./sample.js";

const inch = 0.0254;
const foot = 0.3048;

/** A notebook with some given values and one field to hold the expression. */
const withDepth = (expression: string) => `rootfast: 1
given:
  clear height: 9 ft
  clear: 2 ft
  clear height 2: 1 ft
  pitch: 2 in 12
  lean: 30 deg
  factor: 1.5
  load: 10 psi
  A/B: 4 in
roof:
  slope: 3 in 12
columns:
  the south line:
    height: = clear height + 3 ft
  e.w:
    height: 8 ft
bases:
  A:
    plate: 14 in x 12 in x 1 in
foundations:
  pier:
    concrete: 4000 psi
    depth: = ${expression}
`;

const readDepth = (expression: string) => {
  const text = withDepth(expression);
  const parsed = parseNotebook(text);
  const reading = readNotebook(parsed, 0);
  return { text, value: reading.values.foundations?.value.get("pier")?.value.depth?.value, problems: [...parsed.problems, ...reading.problems] };
};

describe("an expression", () => {
  const rows: [string, number][] = [
    ["clear height + 6 in", 9 * foot + 6 * inch],
    ["clear   height+6 in", 9 * foot + 6 * inch],
    ["clear height 2 * 3", 3 * foot],
    ["clear height - clear", 7 * foot],
    ["clear height / 2 - 1 ft", 3.5 * foot],
    ["-(clear - clear height)", 7 * foot],
    ["2 * 3 ft + 1 ft", 7 * foot],
    ["2 ft ^ 2 / 4 ft", foot],
    ["2 ^ 3 ^ 0 * 1 ft", 2 * foot],
    ["-2 ^ 2 * -1 ft", 4 * foot],
    ["5'-6\" + 0 ft", 5.5 * foot],
    ["5' 6 1/2\" + 0 ft", 5 * foot + 6.5 * inch],
    ["5 ft 6 in + 6 in", 6 * foot],
    ["5 ft - 6 in", 4.5 * foot],
    ["1-1/2 in + 1/2 in", 2 * inch],
    ["3/4 in * 4", 3 * inch],
    ["1.4 m + 600 mm", 2],
    ["min(9 ft, clear height + 1 ft, 3 m)", 9 * foot],
    ["max(9 ft, 8 ft, 2 in)", 9 * foot],
    ["abs(clear - clear height)", 7 * foot],
    ["sqrt(4 ft * 9 ft)", 6 * foot],
    ["10 ft * sin(30 deg)", 5 * foot],
    ["10 ft * sin(lean)", 5 * foot],
    ["10 ft * cos(60°)", 5 * foot],
    ["10 ft * tan(atan(pitch))", (10 * foot * 2) / 12],
    ["12 ft * (asin(0.5) / 30 deg)", 12 * foot],
    ["12 ft * pitch", 2 * foot],
    ["ceil(49.2 in, 1 in)", 50 * inch],
    ["floor(49.2 in, 6 in)", 48 * inch],
    ["round(49.6 in, 1 in)", 50 * inch],
    ["ceil(1.2) * 1 ft", 2 * foot],
    ["ceil(3 ft, 1 in)", 36 * inch],
    ["factor * clear", 3 * foot],
    ["load / 2 psi * 1 in", 5 * inch],
    ["columns.the south line.height - 2 ft", 10 * foot],
    ["columns.e.w.height", 8 * foot],
    ["given.clear height", 9 * foot],
    ["bases.A.plate.width + bases.A.plate.thickness", 15 * inch],
    ["roof.slope * 8 ft", 2 * foot],
    ["foundations.pier.concrete / 4000 psi * 1 ft", foot],
    ["A/B * 2", 8 * inch],
    ["+3 ft", 3 * foot],
    ["6 in²  / 1 in", 6 * inch],
    ["1e1 ft", 10 * foot],
  ];
  test.each(rows)("= %s", (expression, value) => {
    const read = readDepth(expression);
    expect(read.problems.map((problem) => problem.message)).toEqual([]);
    expect(read.value).toBeCloseTo(value, 12);
  });

  /** The code, the stretch it is placed at, and part of its message. */
  const faults: [string, string, string, string][] = [
    ["3 ft + 2 psi", "expression.dimension", "3 ft + 2 psi", "3 ft is a length and 2 psi is a pressure or stress; they cannot be added."],
    ["1 ft * (2 in - 3)", "expression.dimension", "(2 in - 3)", "a plain number; they cannot be subtracted"],
    ["max(3 ft, 2 psi)", "expression.dimension", "max(3 ft, 2 psi)", "cannot be compared"],
    ["30 deg + 1", "expression.dimension", "30 deg + 1", "an angle"],
    ["2 * load", "expression.kind", "= 2 * load", "a length is needed"],
    ["clear heigth", "expression.unknown-name", "clear heigth", "did you mean clear height"],
    ["clear height of wall", "expression.unknown-name", "clear height of wall", "not a name known here"],
    ["1 ft + depht - 2 ft", "expression.unknown-name", "depht", "not a name known here"],
    ["height", "expression.unknown-name", "height", "columns.the south line.height"],
    ["columns.south.height", "expression.unknown-name", "south", "there are the south line, e.w"],
    ["columns.e.w.hight", "expression.unknown-name", "hight", "did you mean height"],
    ["columns.e.w", "expression.not-a-value", "columns.e.w", "columns.e.w.height"],
    ["roof.length", "expression.no-value", "roof.length", "not written"],
    ["eval(3 ft)", "expression.unknown-function", "eval", "cannot be called"],
    ["constructor", "expression.unknown-name", "constructor", "not a name"],
    ["(3 ft", "expression.parenthesis", "(3 ft", "not closed"],
    ["3 ft)", "expression.parenthesis", ")", "closes nothing"],
    ["min(3 ft, 2 ft", "expression.parenthesis", "min(3 ft, 2 ft", "not closed"],
    ["3 ft +", "expression.incomplete", "+", "ends in the middle"],
    ["3 ft 4 psi", "expression.operator", "4 psi", "operator is missing"],
    ["3 ft, 4 ft", "expression.comma", ",", "comma"],
    ["3 ft & 4 ft", "expression.character", "&", "no meaning"],
    ["3 ft − 1 ft", "expression.character", "−", "minus sign"],
    ["3 ft / (1 - 1)", "expression.division", "(1 - 1)", "zero"],
    ["sqrt(0 ft - 4 ft)", "expression.root", "0 ft - 4 ft", "negative"],
    ["sin(30) * 1 ft", "expression.angle", "30", "takes an angle"],
    ["acos(2) * 1 ft", "expression.angle", "2", "beyond 1"],
    ["3 ft ^ 2 ft", "expression.power", "2 ft", "plain number"],
    ["(3 ft) ^ 0.3", "expression.power", "0.3", "whole or half"],
    ["sqrt(1, 2)", "expression.arguments", "sqrt(1, 2)", "1 value"],
    ["ceil(49.2 in)", "expression.step", "49.2 in", "ceil(49.2 in, 1 in)"],
    ["ceil(49.2 in, 0 in)", "expression.step", "0 in", "more than zero"],
    ["1-1/2 * 1 ft", "expression.ambiguous", "1-1/2", "two ways"],
    ["5 ft-6 in", "expression.ambiguous", "5 ft-6 in", "5 ft 6 in or 5 ft - 6 in"],
    ["9 ^ 9 ^ 9 * 1 ft", "expression.not-finite", "9 ^ 9 ^ 9", "too large"],
    ["clear - clear height", "quantity.bounds", "= clear - clear height", "more than zero"],
    [`${"(".repeat(60)}1 ft${")".repeat(60)}`, "expression.too-deep", "(", "parentheses"],
    [Array(200).fill("1 ft").join(" + "), "expression.too-long", Array(200).fill("1 ft").join(" + "), "under given"],
  ];
  test.each(faults)("= %s is refused at the right place", (expression, code, stretch, message) => {
    const { text, value, problems } = readDepth(expression);
    expect(value).toBeUndefined();
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    const { start, end } = absolute(problems[0].span);
    expect(text.slice(start, end).trim()).toBe(stretch);
    expect(problems[0].message).toContain(message);
  });

  test.each([
    ["clear heigth + 1 ft", "clear height + 1 ft"],
    ["columns.e.w.hight", "columns.e.w.height"],
    ["5 ft-6 in", "5 ft 6 in"],
    ["3 ft − 1 ft", "3 ft - 1 ft"],
  ])("= %s is corrected by its fix", (expression, fixed) => {
    const { text, problems } = readDepth(expression);
    expect(applied(text, problems[0])).toBe(withDepth(fixed));
  });
});

describe("loops", () => {
  const read = (given: string) => readNotebook(parseNotebook(`rootfast: 1\ngiven:\n${given}`), 0);

  test("are told on each member once, and not on what only leads there", () => {
    const { problems, values } = read("  d: = a\n  a: = b + 1 ft\n  b: = c\n  c: = a\n  e: 1 ft\n");
    expect(problems.map((problem) => problem.message.split(" depend")[0])).toEqual(["a -> b -> c -> a", "b -> c -> a -> b", "c -> a -> b -> c"]);
    expect([...(values.given?.value.keys() ?? [])]).toEqual(["e"]);
  });

  test("of one member name it", () => {
    expect(read("  a: = a + 1 ft\n").problems.map((problem) => problem.message.split(" depend")[0])).toEqual(["a -> a"]);
  });

  test("through fields name the paths", () => {
    const text = "rootfast: 1\ncolumns:\n  a:\n    height: = columns.b.height\n  b:\n    height: = columns.a.height\n";
    const messages = readNotebook(parseNotebook(text), 0).problems.map((problem) => problem.message.split(" depend")[0]);
    expect(messages).toEqual(["columns.a.height -> columns.b.height -> columns.a.height", "columns.b.height -> columns.a.height -> columns.b.height"]);
  });

  test("a chain of five thousand ends without exhausting the stack", () => {
    const chain = Array.from({ length: 5000 }, (_, i) => `  n${i}: = n${i + 1}\n`).join("");
    const { problems } = read(`${chain}  n5000: 1 ft\n`);
    expect(problems.every((problem) => problem.code === "expression.too-deep")).toBe(true);
  });
});

test("no text of an expression throws or runs away", () => {
  const scrap = fc.constantFrom("clear height", "3 ft", "1-1/2 in", "5'-6\"", "(", ")", "+", "-", "*", "/", "^", ",", "min(", "sqrt(", "columns.", ".", "=", "2 in 12", "°", "e", "9", "'", '"', " ", "given.", "[", "x", "1e99");
  fc.assert(
    fc.property(fc.oneof(fc.array(scrap, { maxLength: 30 }).map((parts) => parts.join(" ")), fc.array(scrap, { maxLength: 30 }).map((parts) => parts.join("")), fc.string()), (expression) => {
      const began = performance.now();
      const { text, problems } = readDepth(expression.replace(/[\r\n\0]/gu, " "));
      expect(performance.now() - began).toBeLessThan(500);
      for (const { span } of problems) {
        const { start, end } = absolute(span);
        expect(0 <= start && start <= end && end <= text.length).toBe(true);
      }
    }),
    { numRuns: 200 },
  );
});
