import { describe, expect, it } from "vitest";
import { check, weigh, type Outcome } from "../../server/src/checks/contract.js";
import { messageOf } from "../../server/src/findings/message.js";
import { weighCheck } from "../../server/src/findings/weigh.js";
import { kip, sourced, strength, supportOf } from "../checks/given.js";

/** A check that weighs what it is given; a strength of undefined is missing. */
const weighing = (outcome: Outcome, isStated: boolean, triedBy?: string) =>
  check({
    id: "column.of-a-test",
    title: "Uplift of a strap",
    link: "column",
    level: "strength",
    clause: "none",
    fails: "",
    seen: "",
    range: "",
    applies: () => true,
    inputs: (_, gather) => ({ s: gather.need(isStated ? sourced(1) : undefined, "strength of the strap") }),
    fixedBy: () => undefined,
    triedBy,
    evaluate: (_, { base }) => (outcome.type === "weighed" ? { ...outcome, demand: outcome.demand * base.P } : outcome),
  });

const demands = [strength({ P: 1 }), { ...strength({ P: 2 }), label: "0.9D + 1.0W" }];
const said = (outcome: Outcome, isStated = true, triedBy?: string): string => {
  const support = { ...supportOf({ column: {} }), places: [{ x: 0, y: 0 }, { x: 1, y: 0 }] };
  const actions = [{ strength: [demands[0]] }, { strength: demands }];
  return messageOf(weighCheck(weighing(outcome, isStated, triedBy), support as never, actions as never, 0.95, { evaluations: 0, checksRun: 0 }).result, "US");
};

describe("The message of a result", () => {
  it.each([
    ["demand against capacity", weigh(3 * kip, 5 * kip, "force"), /^Uplift of a strap: 6 kip against 5 kip, ratio 1\.20 \(0\.9D \+ 1\.0W, column 2 of 2\)\.$/],
    ["a part of the strength, in percent", weigh(0.7105, 1, "ratio"), /^Uplift of a strap: 142 % of the strength \(/],
    ["an excess too small to show", weigh(2.50001 * kip, 5 * kip, "force"), /: just over 5 kip against 5 kip, ratio 1\.00 \(/],
    ["the same of a part of the strength", weigh(0.5001, 1, "ratio"), /: just over 100 % of the strength \(/],
    ["no excess at the very limit", weigh(2.5 * kip, 5 * kip, "force"), /: 5 kip against 5 kip, ratio 1\.00 \(/],
  ])("says %s", (_, outcome, words) => {
    expect(said(outcome)).toMatch(words);
  });

  it("takes what rounding left of nothing for nothing", () => {
    expect(said(weigh(1e-9, 5 * kip, "force"))).toBe("Uplift of a strap: no combination tries it.");
    expect(said(weigh(1e-3, 5 * kip, "force"))).toMatch(/ lb against 5 kip, ratio 0\.00 \(/);
  });

  it("names what tries a link whose strength is missing, by the largest combination", () => {
    expect(said(weigh(3 * kip, Number.NaN, "force"), false, "pulls at the strap")).toBe("Uplift of a strap: not checked, needs the strength of the strap; 6 kip pulls at the strap (0.9D + 1.0W, column 2 of 2).");
    expect(said(weigh(3 * kip, Number.NaN, "force"), false)).toBe("Uplift of a strap: not checked, needs the strength of the strap.");
    expect(said(weigh(Number.NaN, Number.NaN, "force"), false, "pulls at the strap")).toBe("Uplift of a strap: not checked, needs the strength of the strap.");
    expect(said(weigh(-3 * kip, Number.NaN, "force"), false, "pulls at the strap")).toBe("Uplift of a strap: not checked, needs the strength of the strap.");
  });
});
