import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkText, type Checked } from "../../server/src/engine/check-text.js";
import { notebook, withChange } from "../protocol/notebooks.js";
import { reportOf, sound } from "./sound.js";

const folder = join(__dirname, "../../samples");
const samples = readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), "utf8")] as const);

describe("Any text is answered", () => {
  it.each(samples)("every prefix of %s, as somebody types it", (_, text) => {
    let checked: Checked | undefined;
    // Prefixes that end within a line as well as at its end; each is checked after the one before.
    for (let end = 0; end <= text.length; end += text.length > 3000 ? 3 : 2) {
      const prefix = text.slice(0, end);
      checked = checkText(prefix, checked);
      expect(checked.problems.every(({ span }) => span.start <= span.end)).toBe(true);
      if (end % 30 === 0) sound(prefix, checked);
    }
  });

  it("random texts", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 300 }), fc.string({ unit: "grapheme", maxLength: 300 })), (text) => {
        sound(text, checkText(text));
      }),
      { numRuns: 300 },
    );
  });

  it("random bytes, read the way a file is read", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        const text = Buffer.from(bytes).toString("utf8");
        sound(text, checkText(text));
      }),
      { numRuns: 200 },
    );
  });

  it("random bytes in the middle of a notebook", () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 6 }), fc.double({ min: 0, max: 1, noNaN: true }), (bytes, share) => {
        const at = Math.floor(share * notebook.length);
        const text = notebook.slice(0, at) + Buffer.from(bytes).toString("latin1") + notebook.slice(at);
        sound(text, checkText(text));
      }),
      { numRuns: 150 },
    );
  });

  it("lines of a notebook in any order and number", () => {
    const lines = notebook.split("\n");
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...lines), { maxLength: 40 }), (chosen) => {
        const text = chosen.join("\n");
        sound(text, checkText(text));
      }),
      { numRuns: 150 },
    );
  });
});

interface Broken {
  readonly what: string;
  readonly old: string;
  readonly fresh: string;
  readonly code: string;
  /** Ids of the checks that read the value; none of them may hold without it. */
  readonly checks: RegExp;
  /** Names of the supports concerned; all where not given. */
  readonly supports?: readonly string[];
}

/** Both supports stand on the pier; the checks of its link read its fields. */
const pier = /^pier\./u;
const all = /^(?!site\.|base\.(?:details|grout-thickness|projection|below-finish)$)/u;

const slips: readonly Broken[] = [
  { what: "a length without its unit", old: "diameter: 30 in", fresh: "diameter: 30", code: "quantity.no-unit", checks: pier },
  { what: "a pressure for a length", old: "diameter: 30 in", fresh: "diameter: 30 psf", code: "quantity.wrong-dimension", checks: pier },
  { what: "a size of zero", old: "diameter: 30 in", fresh: "diameter: 0 in", code: "quantity.bounds", checks: pier },
  { what: "a depth below zero", old: "depth: 8 ft", fresh: "depth: -8 ft", code: "quantity.bounds", checks: pier },
  { what: "a number near the largest there is", old: "diameter: 30 in", fresh: "diameter: 1e308 in", code: "quantity.not-finite", checks: pier },
  { what: "a loop of given values", old: "  clear height: 9 ft", fresh: "  clear height: = tall\n  tall: = clear height", code: "expression.loop", checks: /^column\.(?:interaction|slenderness|shear)$/u },
  { what: "a name nobody gave", old: "depth: 8 ft", fresh: "depth: = nobody", code: "expression.unknown-name", checks: pier },
  { what: "an unknown ground", old: "    ground: sand\n", fresh: "    ground: gravel\n", code: "reference.unknown", checks: pier },
  { what: "an unknown foundation", old: "height: = clear height + 1 ft\n    base: A\n    stands on: round pier", fresh: "height: = clear height + 1 ft\n    base: A\n    stands on: pad", code: "reference.unknown", checks: pier, supports: ["west sign"] },
  { what: "an uplift without its unit", old: "up: 2 kip", fresh: "up: 2", code: "quantity.no-unit", checks: all, supports: ["west sign"] },
  { what: "an uplift that is a pressure", old: "up: 2 kip", fresh: "up: 2 psf", code: "quantity.wrong-dimension", checks: all, supports: ["west sign"] },
  { what: "an uplift under a misspelled key", old: "up: 2 kip", fresh: "upp: 2 kip", code: "shape.unknown-key", checks: all, supports: ["west sign"] },
  { what: "an uplift cut by a comma in braces", old: "up: 2 kip", fresh: "up: = max(2 kip, 3 kip)", code: "yaml.flow-comma", checks: all, supports: ["west sign"] },
  { what: "a moment nobody gave", old: "moment x: -4 kip-ft", fresh: "moment x: = overturning", code: "expression.unknown-name", checks: all, supports: ["west sign"] },
  { what: "a concrete strength without its unit", old: "concrete: 4000 psi", fresh: "concrete: 4000", code: "quantity.no-unit", checks: /^(?:base\.bearing|anchors\.(?:breakout-tension|pullout))$/u },
  { what: "a column grade that is none", old: "height: = clear height + 1 ft", fresh: "height: = clear height + 1 ft\n    grade: A37", code: "choice.unknown", checks: /^column\.interaction$/u, supports: ["west sign"] },
  { what: "a water table without its unit", old: "water table: 15 ft", fresh: "water table: 15", code: "quantity.no-unit", checks: /^pier\.uplift$/u },
  { what: "a height above grade nobody gave", old: "above grade: = above", fresh: "above grade: = abve", code: "expression.unknown-name", checks: pier },
  { what: "a plate lost to a missing size", old: "plate: 14 in x 14 in x 1 in", fresh: "plate: 14 in x 14 in x 1", code: "quantity.no-unit", checks: /^base\.plate-/u },
  { what: "a frost depth without its unit", old: "frost depth: 30 in", fresh: "frost depth: 30", code: "quantity.no-unit", checks: /^site\.frost$/u },
];

describe("A value that cannot be read", () => {
  it("the notebook without a slip holds in every check the slips are about", () => {
    const { problems, structures } = reportOf(checkText(notebook));
    expect(problems).toEqual([]);
    for (const { checks, supports } of slips) {
      const concerned = structures[0].supports.filter(({ name }) => supports?.includes(name) ?? true).flatMap(({ findings }) => findings.filter(({ check }) => checks.test(check)));
      expect(concerned.length).toBeGreaterThan(0);
      expect(concerned.every(({ state }) => state === "holds" || state === "near")).toBe(true);
    }
  });

  it.each(slips.map((slip) => [slip.what, slip] as const))("%s: a clear message there, and no check that reads it holds", (_, { old, fresh, code, checks, supports }) => {
    const text = withChange(notebook, old, fresh);
    const checked = checkText(text);
    sound(text, checked);
    const { problems, structures } = reportOf(checked);
    const slip = problems.find((problem) => problem.code === code);
    expect(slip, problems.map((problem) => problem.code).join()).toBeDefined();
    const written = text.slice(0, text.indexOf(fresh)).split("\n").length - 1;
    const end = written + fresh.split("\n").length - 1;
    expect(slip?.place.line).toBeGreaterThanOrEqual(written);
    expect(slip?.place.line).toBeLessThanOrEqual(end);
    const concerned = structures[0].supports.filter(({ name }) => supports?.includes(name) ?? true).flatMap(({ findings }) => findings.filter((finding) => checks.test(finding.check)));
    expect(concerned.filter(({ state }) => state === "holds" || state === "near").map(({ subject, check, ratio }) => `${subject} ${check} ${ratio}`)).toEqual([]);
  });

  it("bar sizes lost to a comment are a message at the sign", () => {
    const { problems } = reportOf(checkText(withChange(notebook, "bars: 8 no. 7", "bars: 8 #7")));
    expect(problems.map(({ code }) => code)).toEqual(["yaml.hash-callout"]);
  });
});
