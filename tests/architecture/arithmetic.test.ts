import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = resolve(__dirname, "../..");

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesBelow(join(folder, entry.name)) : entry.name.endsWith(".ts") ? [join(folder, entry.name)] : [],
  );

const arithmetic = new Set([
  ts.SyntaxKind.PlusToken, ts.SyntaxKind.MinusToken, ts.SyntaxKind.AsteriskToken, ts.SyntaxKind.SlashToken, ts.SyntaxKind.AsteriskAsteriskToken,
  ts.SyntaxKind.PlusEqualsToken, ts.SyntaxKind.MinusEqualsToken, ts.SyntaxKind.AsteriskEqualsToken, ts.SyntaxKind.SlashEqualsToken,
]);

/** Math functions that calculate; choosing the larger of two demands or rounding an index is not a formula. */
const calculating = new Set(["sqrt", "pow", "cbrt", "exp", "log", "sin", "cos", "tan", "atan", "atan2", "asin", "acos", "hypot"]);

/** Lines of a file that calculate outside a declared formula. String joining and counting by one are let through. */
export function arithmeticIn(text: string, name = "file.ts"): string[] {
  const source = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const isText = (node: ts.Node): boolean =>
    ts.isStringLiteralLike(node) || ts.isTemplateExpression(node) || (ts.isBinaryExpression(node) && (isText(node.left) || isText(node.right)));
  const isCounting = (node: ts.BinaryExpression) =>
    ts.isNumericLiteral(node.right) && node.right.text === "1" && [ts.SyntaxKind.PlusToken, ts.SyntaxKind.MinusToken, ts.SyntaxKind.PlusEqualsToken].includes(node.operatorToken.kind);
  const say = (node: ts.Node) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${name}:${line + 1}: ${node.getText().slice(0, 70)}`);
  };
  const visit = (node: ts.Node) => {
    if (ts.isBinaryExpression(node) && arithmetic.has(node.operatorToken.kind) && !isText(node) && !isCounting(node)) say(node);
    else if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) && node.expression.expression.getText() === "Math" && calculating.has(node.expression.name.text)) say(node);
    else ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe("Engineering arithmetic stands in declared formulas or named mechanics routines", () => {
  const files = ["server/src/checks", "server/src/actions"].flatMap((folder) => filesBelow(join(root, folder)));

  it("finds the files to look at", () => {
    expect(files.length).toBeGreaterThan(10);
  });

  it.each(files.map((file) => [relative(root, file), file]))("%s", (name, file) => {
    expect(arithmeticIn(readFileSync(file, "utf8"), name)).toEqual([]);
  });

  it.each([
    ["const a = b * c;", 1],
    ["const a = Math.sqrt(b);", 1],
    ["a += b;", 1],
    ["const a = `x` + b;", 0],
    ["for (let i = 0; i < n; i += 1) f(i + 1);", 0],
    ["const f = formula({ text: 'A = b * c' });", 0],
  ])("the rule itself sees %s", (text, count) => {
    expect(arithmeticIn(text)).toHaveLength(count);
  });
});
