import { readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it, test } from "vitest";
import { allFormulas } from "../../server/src/formula/declare.js";
import { declaredMathml } from "../../server/src/formula/mathml.js";
import { declaredText } from "../../server/src/formula/plain.js";
import { proveUnits } from "../../server/src/formula/proof.js";

const source = resolve(__dirname, "../../server/src");

describe("every declared formula", async () => {
  // Whatever declares a formula registers it on being imported, so every file of the engineering rooms is.
  for (const room of ["mechanics", "actions", "checks"])
    for (const file of readdirSync(join(source, room), { recursive: true, encoding: "utf8" }).sort())
      if (file.endsWith(".ts") && !file.endsWith(".d.ts")) await import(pathToFileURL(join(source, room, file)).href);

  const formulas = allFormulas();

  it("is found", () => {
    expect(formulas.length).toBeGreaterThan(0);
  });

  test.each(formulas.map((f) => [f.id, f] as const))("%s is sound in its units on every branch", (id, f) => {
    expect(proveUnits(f).message).toBe("");
    expect(id).toMatch(/^[a-z][A-Za-z0-9-]*(\.[a-z][A-Za-z0-9-]*)+$/);
    expect(f.source.trim()).not.toBe("");
    for (const [name, symbol] of Object.entries(f.symbols)) expect(symbol.meaning.trim(), name).not.toBe("");
    expect(declaredText(f)).toContain(" = ");
    expect(declaredMathml(f)).toContain(`data-symbol="${f.result}"`);
  });
});
