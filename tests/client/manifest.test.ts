import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { commands, languageId } from "../../shared/protocol.js";

const root = join(__dirname, "..", "..");
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));

const sources = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sources(path) : entry.name.endsWith(".ts") ? [readFileSync(path, "utf8")] : [];
  });

const client = sources(join(root, "client", "src")).join("\n");
const declared: string[] = manifest.contributes.commands.map(({ command }: { command: string }) => command);

describe("the manifest", () => {
  it("declares the commands the wire names, each registered once in the extension", () => {
    const registered = [...client.matchAll(/registerCommand\(\s*commands\.(\w+)/gu)].map(([, name]) => commands[name as keyof typeof commands]);
    expect([...registered].sort()).toEqual([...declared].sort());
    expect([...Object.values(commands)].sort()).toEqual([...declared].sort());
  });

  it("puts only declared commands into menus", () => {
    const menus = Object.values(manifest.contributes.menus as Record<string, { command: string }[]>).flat();
    expect(menus.length).toBeGreaterThan(3);
    expect(menus.filter(({ command }) => !declared.includes(command))).toEqual([]);
  });

  it("claims .rootfast and .rootfast.yaml, the latter before YAML can", () => {
    const [language] = manifest.contributes.languages;
    expect(language.id).toBe(languageId);
    expect(language.extensions).toEqual([".rootfast", ".rootfast.yaml"]);
    expect(language.filenamePatterns).toContain("*.rootfast.yaml");
  });

  it("names files that exist", () => {
    const { languages, grammars } = manifest.contributes;
    for (const path of [languages[0].configuration, grammars[0].path, "LICENSE"]) expect(existsSync(join(root, path)), path).toBe(true);
  });

  it("is woken for a view that a reload of the window brings back", () => {
    const [, viewType] = /viewType = "([^"]+)"/u.exec(client) ?? [];
    expect(manifest.activationEvents).toContain(`onWebviewPanel:${viewType}`);
  });

  it("works in untrusted and virtual workspaces, since it runs nothing of the workspace", () => {
    expect(manifest.capabilities).toEqual({ untrustedWorkspaces: { supported: true }, virtualWorkspaces: true });
  });

  it("has indentation rules that indent below a key without a value and nowhere else", () => {
    const { indentationRules } = JSON.parse(readFileSync(join(root, "language-configuration.json"), "utf8"));
    const indents = new RegExp(indentationRules.increaseIndentPattern, "u");
    for (const line of ["site:", "  pier:", "  pier: # drilled", "  notes: |", "  - reactions:"]) expect(line).toMatch(indents);
    for (const line of ["  depth: 7 ft", "# site:", "  bars: 8 no. 6", ""]) expect(line).not.toMatch(indents);
  });
});
