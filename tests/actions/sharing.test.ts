/** The two routes of sharing, on the samples and the starters: a frame in space and, beside it, the rigid roof by hand. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../server/src/actions/index.js";
import { besideTitle, routesAgreeWithin } from "../../server/src/actions/sharing.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { starters } from "../../server/src/summary/starters.js";
import { structureOf } from "./given.js";

const texts: readonly (readonly [string, string])[] = [
  ...["landing-shelter", "market-canopy"].map((name) => [name, readFileSync(join(__dirname, "../../samples", `${name}.rootfast`), "utf8")] as const),
  ...starters.filter(({ text }) => /^roof:/mu.test(text)).map(({ kind, text }) => [`starter ${kind}`, text] as const),
];

const besideIn = (text: string) => {
  const [{ actions }] = checkText(text).documents;
  const found = actions.derivations().find(({ title }) => title === besideTitle);
  return found?.steps ?? [];
};

describe("the hand route beside the frame", () => {
  it.each(texts)("of %s gives the same base reactions within the stated part of the largest", (_, text) => {
    const steps = besideIn(text);
    const parts = steps.flatMap((step) => (step.type === "routine" ? step.found.filter(({ symbol }) => symbol === "d").map(({ value }) => value) : []));
    expect(parts.length).toBeGreaterThan(8);
    expect(Math.max(...parts)).toBeLessThan(routesAgreeWithin);
  });

  it("shows both routes and their largest difference under every load case", () => {
    const actions = actionsOf(structureOf());
    const derivation = actions.derivations().find(({ title }) => title === besideTitle);
    const steps = derivation?.steps ?? [];
    expect(steps.filter((step) => step.type === "note")).toHaveLength(actions.resultants.length);
    const ids = steps.flatMap((step) => (step.type === "routine" ? [step.routine.id] : []));
    expect(ids.slice(0, 3)).toEqual(["mechanics.roof-frame", "mechanics.rigid-roof", "mechanics.largest-difference"]);
    expect(ids).toHaveLength(3 * actions.resultants.length);
  });
});
