/** Statics of the joint at the foot of a knee brace, by hand, and the roof's way down to it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Forces } from "../../../server/src/actions/demand.js";
import { columnKneeBrace } from "../../../server/src/checks/column/knee-brace.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, kip, kipFoot, ratioOf, run, say, sourced, strength, supportOf, valuesOf } from "../given.js";

const near = (found: number | undefined, expected: number, part = 1e-9) => expect(Math.abs((found ?? Number.NaN) / expected - 1), `${found} against ${expected}`).toBeLessThan(part);

const brace = { "below top": 2 * foot, run: 3 * foot, sides: "one", strength: 2 * kip };
const supportWith = (more: Record<string, unknown> = {}, knee: Record<string, unknown> | undefined = brace) => supportOf({ column: { "sway along x": "knee brace", "sway along y": "fixed base", height: 10 * foot, ...more, "knee brace": knee } });
const inputsOf = (more?: Record<string, unknown>, knee?: Record<string, unknown>) => {
  const gather = gatherer();
  const inputs = columnKneeBrace.inputs(supportWith(more, knee), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
/** Forces just below the foot of the brace. */
const below = (forces: Partial<Forces>) => strength({}, forces);
const slope = Math.hypot(2, 3) / 3;

describe("the force in a knee brace (statics)", () => {
  it("0.4 kip on a post of 8 ft on a pin: 3.2 kip-ft at the foot, 1.6 kip back at the top 2 ft above, 2 kip level, 2.404 along 2 in 3 ft", () => {
    const values = valuesOf(columnKneeBrace, inputsOf(), below({ Vx: 0.4 * kip, My: -3.2 * kipFoot }));
    near(values.get("V_t")! / kip, -1.6);
    near(values.get("H_k")! / kip, 2);
    const outcome = run(columnKneeBrace, inputsOf(), below({ Vx: 0.4 * kip, My: -3.2 * kipFoot }));
    near(outcome.demand / kip, 2 * slope);
    near(outcome.capacity / kip, 2);
  });

  it("the same from the south, where a push to the north gives moments of the other sign", () => {
    const along = inputsOf({ "sway along x": "fixed base", "sway along y": "knee brace" });
    near(run(columnKneeBrace, along, below({ Vy: 0.4 * kip, Mx: 3.2 * kipFoot })).demand / kip, 2 * slope);
    expect(run(columnKneeBrace, along, below({ Vx: 9 * kip, My: 9 * kipFoot })).demand).toBe(0);
  });

  it("fixed at its base the moment at the foot is less: 0.4 kip with 1.6 kip-ft at the base leave 1.6 at the foot and 1.2 kip level", () => {
    const fixed = inputsOf({ "sway along x": "fixed base and knee brace" });
    near(run(columnKneeBrace, fixed, below({ Vx: 0.4 * kip, My: -1.6 * kipFoot })).demand / kip, 1.2 * slope);
  });

  it("two braces share alike, and a column braced both ways is asked for the worse of the two", () => {
    const pushed = below({ Vx: 0.4 * kip, My: -3.2 * kipFoot, Vy: 0.8 * kip, Mx: 6.4 * kipFoot });
    near(run(columnKneeBrace, inputsOf({}, { ...brace, sides: "both" }), pushed).demand / kip, slope);
    near(run(columnKneeBrace, inputsOf({ "sway along y": "knee brace" }), pushed).demand / kip, 4 * slope);
  });

  it("no force where nothing pushes, and none from the axial force of the column", () => {
    expect(run(columnKneeBrace, inputsOf(), below({ P: 20 * kip })).demand).toBe(0);
  });
});

describe("the check of a knee brace", () => {
  it("applies to columns under a roof that a brace holds, not to reactions given by hand", () => {
    expect(columnKneeBrace.applies(supportWith())).toBe(true);
    expect(columnKneeBrace.applies(supportWith({ "sway along x": "fixed base" }))).toBe(false);
    expect(columnKneeBrace.applies(supportOf({ base: {} }))).toBe(false);
    const byHand = supportWith();
    (byHand.column!.fields as unknown as Record<string, unknown>).reactions = sourced(new Map([["dead", sourced({})]]));
    expect(columnKneeBrace.applies(byHand)).toBe(false);
  });

  it.each([
    ["below top", "distance of the knee brace below the column top"],
    ["run", "run of the knee brace"],
    ["strength", "design strength of the knee brace and its ends"],
  ])("asks for its %s", (field, words) => {
    const gather = gatherer();
    columnKneeBrace.inputs(supportWith({}, { ...brace, [field]: undefined }), gather, 0);
    expect(gather.missing).toEqual([words]);
  });

  it("says the strength first, and what to change", () => {
    const inputs = inputsOf();
    const outcome = run(columnKneeBrace, inputs, below({ Vx: 0.4 * kip, My: -3.2 * kipFoot }));
    expect(columnKneeBrace.advise!(inputs, outcome, say)).toMatch(/^Strength 2 kip; 2\.404 kip needed along a brace that meets the column 24 in below its top\. Take a stronger brace/);
    expect(columnKneeBrace.fixedBy(supportWith())).toMatchObject({ value: 2 * kip });
  });

  it("does not answer beyond the range of numbers", () => {
    expect(columnKneeBrace.evaluate({ ...inputsOf(), a_k: 0 }, below({ Vx: kip, My: kipFoot }), plainCalc)).toMatchObject({ type: "unchecked" });
  });

  it("a foot lower down, a longer run and a second brace never ask for more, and the sense of the push does not matter", () => {
    const size = fc.double({ min: 0.5, max: 3, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.1, max: 5, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true }), (a, b, V, times) => {
        // On a pin: the moment at the foot is the push over the height below it.
        const used = (a_k: number, run_k: number, push: number, sides = "one") =>
          ratioOf(run(columnKneeBrace, inputsOf({}, { ...brace, "below top": a_k * foot, run: run_k * foot, sides }), below({ Vx: push * kip, My: -push * (10 - a_k) * kipFoot })));
        const here = used(a, b, V);
        expect(used(a, b * times, V)).toBeLessThanOrEqual(here * (1 + 1e-9));
        near(used(a, b, V, "both"), here / 2);
        near(used(a, b, -V), here);
        // V H/a along sqrt(a² + b²)/b.
        near(here, ((V * 10) / a) * (Math.hypot(a, b) / b) / 2);
      }),
    );
  });
});
