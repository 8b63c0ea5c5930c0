import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { statusLines, statusText } from "../../client/src/status-text.js";
import type { CheckedParams } from "../../shared/protocol.js";

const checked = (counts: Record<string, number>, more: Partial<CheckedParams> = {}): CheckedParams => ({
  uri: "file:///shelter.rootfast",
  version: 1,
  stale: false,
  counts,
  problems: 0,
  ...more,
});

const rows: readonly (readonly [counts: Record<string, number>, more: Partial<CheckedParams>, text: string])[] = [
  [{ over: 2, "not checked": 1, holds: 7 }, {}, "2 over · 1 not checked"],
  [{ holds: 7, "not covered": 9 }, {}, "All checked links hold"],
  [{ holds: 7, near: 1 }, {}, "1 near"],
  [{ holds: 7, accepted: 1 }, {}, "1 over and accepted"],
  [{ holds: 7 }, { problems: 1 }, "1 problem in the text"],
  [{ over: 1 }, { problems: 2, stale: true }, "1 over · 2 problems in the text · numbers of the last readable text"],
  [{}, {}, "Nothing checked yet"],
  [{ "not covered": 9 }, {}, "Nothing checked yet"],
];

describe("the status bar", () => {
  it.each(rows)("of %j with %j says the words", (counts, more, text) => {
    expect(statusText(checked(counts, more))).toBe(text);
  });

  it("never says that all links hold while one is over, near, accepted or not checked, or the text has problems", () => {
    const count = fc.nat({ max: 3 });
    fc.assert(
      fc.property(count, count, count, count, count, count, (over, near, accepted, unchecked, holds, problems) => {
        const said = statusText(checked({ over, near, accepted, "not checked": unchecked, holds }, { problems })).includes("All checked links hold");
        expect(said).toBe(holds > 0 && over + near + accepted + unchecked + problems === 0);
      }),
    );
  });

  it("lists every count and the governing link in its tooltip", () => {
    const worst = { state: "over", ratio: 1.237, subject: "columns.south", title: "Embedment" };
    expect(statusLines(checked({ over: 2, holds: 1, "not covered": 1 }, { worst }))).toEqual([
      "2 over",
      "1 holds",
      "1 known limit state not covered",
      "Governs: Embedment at columns.south, over (1.24)",
    ]);
  });
});
