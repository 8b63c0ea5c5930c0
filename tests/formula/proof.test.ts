import { describe, expect, it, test } from "vitest";
import { unregistered } from "../../server/src/formula/declare.js";
import { proveUnits } from "../../server/src/formula/proof.js";
import type { SymbolTable } from "../../server/src/formula/types.js";
import { breakout, contact, edgeFactor, velocityPressure } from "./samples.js";

const of = (text: string, kinds: Record<string, SymbolTable[string]["kind"]>, constants?: Record<string, string>) =>
  unregistered({ id: "test.proof", text, source: "none", symbols: Object.fromEntries(Object.entries(kinds).map(([n, kind]) => [n, { kind, meaning: n }])), constants });

describe("formulas that are sound", () => {
  test.each([breakout, edgeFactor, contact, velocityPressure].map((f) => [f.id, f] as const))("%s is proved on every branch", (_id, f) => {
    const proof = proveUnits(f);
    expect(proof).toMatchObject({ ok: true, message: "" });
    for (const branch of proof.branches) expect(branch.points).toBeGreaterThanOrEqual(20);
  });

  it("counts both ways of a choice", () => {
    expect(proveUnits(edgeFactor).branches.map((b) => b.name)).toEqual(["c_a1 ≥ 1.5·h_ef", "c_a1 < 1.5·h_ef"]);
  });

  test.each([
    ["a zero of any unit", of("y = max(0, a - b)", { y: "length", a: "length", b: "length" })],
    ["a branch that is zero", of("y = a > b ? a - b : 0", { y: "length", a: "length", b: "length" })],
    ["a ratio and a plain number", of("y = 1 + 3 * a / b", { y: "ratio", a: "length", b: "distance" })],
    ["an angle", of("M = P * r * sin(t)", { M: "moment", P: "force", r: "length", t: "angle" })],
    ["an angle found", of("t = atan(a / b)", { t: "angle", a: "length", b: "length" })],
    ["an angle in degrees", of("n = atan(s) / deg + c * t", { n: "number", s: "slope", t: "angle" }, { deg: "1 deg", c: "2 rad/deg" })],
    ["a slope", of("y = a / cos(atan(s))", { y: "distance", a: "distance", s: "slope" })],
    ["roots of units", of("y = sqrt(a * b) + cbrt(V)", { y: "length", a: "length", b: "length", V: "volume" })],
    ["every weight per volume", of("F = g * V + k * A * A / b", { F: "force", g: "unitWeight", V: "volume", k: "pressurePerDepth", A: "planArea", b: "distance" })],
    ["a moment per length", of("m = w * b^2 / 8", { m: "momentPerLength", w: "pressure", b: "distance" })],
    ["bending", of("s = M / S + k * u / A", { s: "stress", M: "smallMoment", S: "sectionModulus", k: "stiffness", u: "length", A: "area" })],
  ])("%s is proved", (_title, f) => {
    expect(proveUnits(f).message).toBe("");
  });
});

describe("formulas that are wrong", () => {
  test.each<[string, ReturnType<typeof of>, RegExp]>([
    [
      "a constant without its hidden units",
      of("N = 24 * sqrt(f) * h^1.5", { N: "force", f: "stress", h: "length" }),
      /hides its units/,
    ],
    ["a constant with other units", of("q = k * V^2", { q: "pressure", V: "speed" }, { k: "0.00256 psf/mph" }), /hides its units/],
    ["a length added to a number", of("y = a + 0.6", { y: "length", a: "length" }), /cannot be evaluated/],
    ["a stress added to a length", of("y = a + s", { y: "length", a: "length", s: "stress" }), /cannot be evaluated/],
    ["a result of another kind", of("y = a * b", { y: "length", a: "length", b: "length" }), /"y" is a length/],
    ["a plain number for a force", of("F = a / b", { F: "force", a: "length", b: "length" }), /"F" is a force/],
    ["a length for a ratio", of("r = a", { r: "ratio", a: "length" }), /"r" is a ratio/],
    ["units in an exponent", of("y = exp(a)", { y: "number", a: "length" }), /cannot be evaluated/],
    ["units compared with a number", of("y = a > 3 ? a : 2 * a", { y: "length", a: "length" }), /cannot be evaluated/],
    ["one wrong branch", of("y = a > b ? a : a * b", { y: "length", a: "length", b: "length" }), /branch "a ≤ b"/],
    ["a branch that is never reached", of("y = a < 0 * a ? 2 * a : a", { y: "length", a: "length" }), /branch "a < 0·a" has a value at only 0/],
    ["a formula without a value", of("y = a * sqrt(-r)", { y: "length", a: "length", r: "ratio" }), /has a value at only 0/],
    ["an undeclared name", of("y = a + z", { y: "length", a: "length" }), /"z" is not declared/],
  ])("%s is caught", (_title, f, message) => {
    const proof = proveUnits(f);
    expect(proof.ok).toBe(false);
    expect(proof.message).toMatch(message);
  });

  it("reaches a branch once a range is given", () => {
    const f = unregistered({
      id: "test.range",
      text: "y = a < 0 ? -a : a",
      source: "none",
      symbols: { y: { kind: "length", meaning: "size" }, a: { kind: "length", meaning: "offset", range: [-1, 1] } },
    });
    expect(proveUnits(f)).toMatchObject({ ok: true });
  });
});
