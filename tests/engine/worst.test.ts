import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { resultsOf, worstFirst, worstOf } from "../../server/src/engine/worst.js";
import { isRule } from "../../server/src/findings/result.js";

const [document] = checkText(readFileSync(join(__dirname, "../../samples/landing-shelter.rootfast"), "utf8")).documents;

describe("The answers about a support, the worst first", () => {
  const [north, south] = document.structure.supports.map((support) => resultsOf(document, support));

  it("begin with what is over", () => {
    expect(worstOf(south)).toMatchObject({ state: "over", check: "pier.embedment" });
  });

  it("have the limits of details that are kept behind every strength, and before the rules", () => {
    const kept = worstFirst(north).flatMap((result) => (result.state === "holds" ? [isRule(result) ? "rule" : result.weighed?.isLimit ? "detail" : (result.ratio ?? 0) > 0 ? "strength" : "untried"] : []));
    expect(kept).toContain("detail");
    expect(kept.lastIndexOf("strength")).toBeLessThan(kept.indexOf("detail"));
    expect(kept.lastIndexOf("detail")).toBeLessThan(kept.indexOf("rule"));
  });

  it("go by the larger ratio among strengths", () => {
    const ratios = worstFirst(north).flatMap((result) => (!isRule(result) && result.state === "holds" && !result.weighed?.isLimit ? [result.ratio ?? 0] : []));
    expect(ratios).toEqual([...ratios].sort((a, b) => b - a));
  });
});
