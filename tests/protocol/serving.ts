/** One server for a file of tests, and its diagnostics as lines that can be read. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import type { Diagnostic } from "vscode-languageserver";
import { bundled } from "./bundle.js";
import { Client, type ClientOptions } from "./client.js";
import { textIn } from "./text.js";

/** Starts the server before the tests of this file and ends it after them; a stray message fails the file. */
export function serving(options: ClientOptions = {}): () => Client {
  let client: Client | undefined;
  beforeAll(async () => {
    client = await Client.start(bundled("server/src/main.ts"), options);
  });
  afterAll(async () => {
    await client?.end();
  });
  return () => {
    if (!client) throw new Error("The server has not been started.");
    return client;
  };
}

export const sample = (name: string): string => readFileSync(join(__dirname, "../../samples", `${name}.rootfast`), "utf8");

const severities = ["", "error", "warning", "information", "hint"];

/** `error pier.embedment "3 ft 6 in"`: severity, code and the text it stands on. */
export const said = (text: string, diagnostics: readonly Diagnostic[]): string[] =>
  diagnostics.map(({ severity, code, range }) => `${severities[severity ?? 0]} ${code} ${JSON.stringify(textIn(text, range))}`);

/** The same, of the severities named. */
export const saidAs = (text: string, diagnostics: readonly Diagnostic[], ...wanted: string[]): string[] =>
  said(text, diagnostics).filter((line) => wanted.includes(line.split(" ")[0]));
