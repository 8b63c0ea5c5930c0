/** A name is part of what a finding says: after a rename nothing may still speak by the old one. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";

const shelter = readFileSync(join(__dirname, "../../samples/landing-shelter.rootfast"), "utf8");

/** Checks one text after the other and holds each answer against a fresh one. */
function typed(...texts: readonly string[]) {
  let checked = checkText(texts[0]);
  for (const text of texts.slice(1)) {
    checked = checkText(text, checked);
    expect(buildReport(checked, { file: "x" })).toEqual(buildReport(checkText(text), { file: "x" }));
  }
  return checked;
}

const key = (name: string) => new RegExp(`^  ${name}:`, "mu");
const use = (field: string, name: string) => new RegExp(`(\\b${field}: )${name}\\b`, "gu");

const renames = [
  ["bases", "base", "pier base", "plate one"],
  ["foundations", "stands on", "short pier", "shaft"],
  ["ground", "ground", "sand", "river sand"],
] as const;

describe("After a rename nothing speaks by the old name", () => {
  it.each(renames)("of an entry of %s, its key first and then its uses, or the other way", (_, field, from, to) => {
    const defined = shelter.replace(key(from), `  ${to}:`);
    const used = shelter.replace(use(field, from), `$1${to}`);
    const both = defined.replace(use(field, from), `$1${to}`);
    expect(new Set([shelter, defined, used, both]).size).toBe(4);
    typed(shelter, defined, both);
    typed(shelter, used, both);
  });

  it("of two columns that change names", () => {
    const swapped = shelter.replace(key("north"), "  X:").replace(key("south"), "  north:").replace(key("X"), "  south:");
    typed(shelter, swapped);
  });

  it("of a base that shares its values with another by an alias", () => {
    const text = (base: string) => `rootfast: 1
bases: { A: &a { plate: 14 in x 14 in x 1 in, grout: 1 in, anchors: "4 x 3/4 in F1554 Gr 36, headed, 18 in deep, 10 in square" }, B: *a }
foundations:
  pier: { kind: pier, diameter: 30 in, depth: 9 ft, concrete: 4000 psi, ground: sand }
ground: { sand: { kind: soil, class: SM } }
columns:
  C: { at: "0 ft, 0 ft", base: ${base}, stands on: pier, combined: { storm: { level: strength, up: 2 kip, shear x: 1 kip } } }
`;
    const [support] = typed(text("A"), text("B")).documents[0].structure.supports;
    expect(support.base?.name).toBe("B");
    expect(support.base?.path).toBe("bases.B");
  });
});
