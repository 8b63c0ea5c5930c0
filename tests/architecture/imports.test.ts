import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = resolve(__dirname, "../..");

/** The direction data flows in; a room may import itself and the rooms before it. */
const rooms = [
  "units", "catalog", "formula", "notebook", "project", "mechanics", "actions", "checks", "findings", "drawing", "summary", "engine", "editor",
];

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesBelow(join(folder, entry.name)) : entry.name.endsWith(".ts") ? [join(folder, entry.name)] : [],
  );

export const importsOf = (file: string): string[] => {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node) => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push(node.moduleSpecifier.text);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword && ts.isStringLiteral(node.arguments[0])) {
      found.push(node.arguments[0].text);
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) {
      found.push(node.argument.literal.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

/** Where a file lives: `server/units`, `client`, `shared`, `server` for the entries. */
const homeOf = (file: string): string => {
  const parts = relative(root, file).split(/[\\/]/u);
  if (parts[0] !== "server") return parts[0];
  return parts.length > 3 ? `server/${parts[2]}` : "server";
};

const rank = (home: string): number => (home === "server" ? rooms.length : rooms.indexOf(home.replace("server/", "")));

const mayImport = (from: string, to: string): boolean => {
  if (to === "shared") return true;
  if (from === "shared") return false;
  if (from === "client") return to === "client";
  if (!to.startsWith("server")) return false;
  return rank(to) <= rank(from);
};

const sources = ["client/src", "server/src", "shared"].flatMap((folder) => filesBelow(join(root, folder)));

describe("Imports follow the direction data flows in", () => {
  it.each(sources.map((file) => [relative(root, file), file]))("%s", (_, file) => {
    const against = importsOf(file)
      .filter((specifier) => specifier.startsWith("."))
      .map((specifier) => resolve(dirname(file), specifier))
      .filter((target) => !mayImport(homeOf(file), homeOf(target.replace(/\.js$/u, ".ts"))))
      .map((target) => relative(root, target));
    expect(against).toEqual([]);
  });

  it("every folder of the server is a room in the list", () => {
    const folders = readdirSync(join(root, "server/src"), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map((folder) => folder.name).filter((name) => !rooms.includes(name))).toEqual([]);
  });

  it.each(sources.filter((file) => /server\/src\/(?!main|cli|editor)/u.test(file)).map((file) => [relative(root, file), file]))(
    "%s does no I/O and knows no editor protocol",
    (_, file) => {
      const banned = importsOf(file).filter((specifier) => specifier.startsWith("node:") || /^vscode/u.test(specifier));
      expect(banned).toEqual([]);
    },
  );

  it.each([
    ["a check may use mechanics", "server/checks", "server/mechanics", true],
    ["mechanics may not use a check", "server/mechanics", "server/checks", false],
    ["the client may not use the server", "client", "server/units", false],
    ["the server may not use the client", "server/editor", "client", false],
    ["shared types stand alone", "shared", "server/units", false],
  ])("the rule itself: %s", (_, from, to, allowed) => {
    expect(mayImport(from, to)).toBe(allowed);
  });
});
