import { describe, expect, it, test } from "vitest";
import { parsedOf, unregistered } from "../../server/src/formula/declare.js";
import { declaredMathml, resultMathml, substitutedMathml, symbolMathml } from "../../server/src/formula/mathml.js";
import { declaredHtml, declaredText, resultText, substitutedHtml, substitutedText, symbolHtml, symbolText } from "../../server/src/formula/plain.js";
import { namesIn } from "../../server/src/formula/tree.js";
import type { SymbolTable } from "../../server/src/formula/types.js";
import { breakout, contact, edgeFactor, velocityPressure } from "./samples.js";

const psi = 6894.757293168361;
const breakoutArgs = { lambda_a: 1, fprime_c: 4000 * psi, h_ef: 5.33 * 0.0254 };

const of = (expression: string, kind: "number" | "length" = "number") => {
  const names = [...new Set(expression.match(/\b[a-dx]\b/g) ?? [])];
  const symbols: SymbolTable = Object.fromEntries(["y", ...names].map((n) => [n, { kind, meaning: `side <${n}> & "more"` }]));
  return unregistered({ id: "test", text: `y = ${expression}`, source: "none", symbols });
};

describe("symbols", () => {
  test.each([
    ["h_ef", "h_ef", "h<sub>ef</sub>"],
    ["psi_ed_N", "ψ_ed,N", "ψ<sub>ed,N</sub>"],
    ["fprime_c", "f′_c", "f′<sub>c</sub>"],
    ["Delta", "Δ", "Δ"],
    ["K_phi", "K_φ", "K<sub>φ</sub>"],
    ["q_max", "q_max", "q<sub>max</sub>"],
    ["width", "width", "width"],
    ["phiN_cbg", "φN_cbg", "φN<sub>cbg</sub>"],
  ])("%s is %s in text and %s in a hover", (name, text, html) => {
    expect(symbolText(name)).toBe(text);
    expect(symbolHtml(name)).toBe(html);
  });

  test.each([
    ["h_ef", "<mi>h</mi><mi>ef</mi>"],
    ["psi_ed_N", "<mi>ψ</mi><mrow><mi>ed</mi><mo>,</mo><mi>N</mi></mrow>"],
    ["fprime_c", "<mi>f′</mi><mi>c</mi>"],
    ["k_1", "<mi>k</mi><mn>1</mn>"],
  ])("%s is a letter with a subscript in MathML", (name, inner) => {
    expect(symbolMathml(name)).toBe(`<mrow data-symbol="${name}"><msub>${inner}</msub></mrow>`);
  });
});

describe("one line of text", () => {
  test.each([
    ["a + b * c", "y = a + b·c"],
    ["(a + b) * c", "y = (a + b)·c"],
    ["a - (b - c)", "y = a − (b − c)"],
    ["a - (b + c)", "y = a − (b + c)"],
    ["a / (b * c)", "y = a/(b·c)"],
    ["a / b / c", "y = a/b/c"],
    ["a / (b / c)", "y = a/(b/c)"],
    ["a / b * c", "y = a/b·c"],
    ["a * (b / c)", "y = a·(b/c)"],
    ["a * (b * c)", "y = a·b·c"],
    ["-a^2", "y = −a^2"],
    ["(-a)^2", "y = (−a)^2"],
    ["a^(2/3)", "y = a^(2/3)"],
    ["(a / b)^2", "y = (a/b)^2"],
    ["(a^b)^c", "y = (a^b)^c"],
    ["-(a + b)", "y = −(a + b)"],
    ["a * -b", "y = a·(−b)"],
    ["sqrt(a^2 + b^2)", "y = √(a^2 + b^2)"],
    ["cbrt(a) + abs(b - c)", "y = ∛(a) + |b − c|"],
    ["min(a, 2 * pi * b)", "y = min(a, 2·π·b)"],
    ["log(a) + atan(b)", "y = ln(a) + arctan(b)"],
    ["floor(a) * ceil(b)", "y = ⌊a⌋·⌈b⌉"],
    ["a <= b ? a : c", "y = a if a ≤ b; otherwise c"],
    ["a < 1 ? a : a < 2 ? b : c", "y = a if a < 1; b if a < 2; otherwise c"],
    ["(a < 1 or b < 1) and c != 1 ? a : b", "y = a if (a < 1 or b < 1) and c ≠ 1; otherwise b"],
    ["not (a < 1 and b < 1) ? a : b", "y = a if a ≥ 1 or b ≥ 1; otherwise b"],
    ["2 * (a > b ? a : b)", "y = 2·(a if a > b; otherwise b)"],
  ])("%s reads %s", (expression, text) => {
    expect(declaredText(of(expression))).toBe(text);
  });

  it("prints a formula of practice as practice writes it", () => {
    expect(declaredText(breakout)).toBe("N_b = k_c·λ_a·√(f′_c)·h_ef^1.5");
    expect(declaredHtml(breakout)).toBe("N<sub>b</sub> = k<sub>c</sub>·λ<sub>a</sub>·√(f′<sub>c</sub>)·h<sub>ef</sub><sup>1.5</sup>");
    expect(declaredHtml(edgeFactor)).toContain("if c<sub>a1</sub> ≥ 1.5·h<sub>ef</sub>; otherwise");
    expect(declaredHtml(of("a < 1 ? a : 2"))).toContain("a &lt; 1");
  });
});

describe("with values", () => {
  it("puts numbers and units in the place of symbols", () => {
    // 24 · √4000 · 5.33^1.5 = 18 678 lb by hand.
    expect(substitutedText(breakout, breakoutArgs, "US")).toBe("= 24·1·√(4000 psi)·(5.33 in)^1.5 = 18.68 kip");
    expect(substitutedHtml(breakout, breakoutArgs, "US")).toBe("= 24·1·√(4000 psi)·(5.33 in)<sup>1.5</sup> = 18.68 kip");
  });

  it("keeps the unit of a constant where the shown numbers would not work out without it", () => {
    expect(substitutedText(breakout, breakoutArgs, "SI")).toBe("= 24 lbf^0.5/in^0.5·1·√(27.58 MPa)·(135.4 mm)^1.5 = 83.08 kN");
    const q = { K_z: 0.85, K_zt: 1, V: 115 * 0.44704 };
    expect(substitutedText(velocityPressure, q, "US")).toBe("= 0.00256·0.85·1·(115 mph)^2 = 28.78 psf");
    expect(substitutedText(velocityPressure, q, "SI")).toContain("= 0.00256 psf/mph^2·");
    expect(substitutedHtml(velocityPressure, q, "SI")).toContain("0.00256 psf/mph<sup>2</sup>·");
  });

  it("shows the branch that was taken and the condition that decided it", () => {
    expect(substitutedText(edgeFactor, { c_a1: 0.1524, h_ef: 0.2032 }, "US")).toBe("= 0.7 + 0.3·6 in/(1.5·8 in) = 0.85, since 6 in < 1.5·8 in");
    expect(substitutedText(edgeFactor, { c_a1: 0.4, h_ef: 0.2 }, "SI")).toBe("= 1 = 1, since 400 mm ≥ 1.5·200 mm");
    const html = substitutedMathml(edgeFactor, { c_a1: 0.1524, h_ef: 0.2032 }, "US");
    expect(html).toContain("since");
    expect(html).not.toContain("mtable");
  });

  it("fences negative values and says where there is none", () => {
    expect(substitutedText(of("a * b^2"), { a: -2, b: -3 }, "US")).toBe("= (−2)·(−3)^2 = −18");
    expect(substitutedText(of("a + b"), { a: NaN, b: 1 }, "US")).toBe("= no value + 1 = no value");
    expect(substitutedText(of("a > 1 ? a : 2"), { a: NaN }, "US")).toBe("= no value if no value > 1; otherwise 2 = no value");
    expect(resultMathml(of("a"), NaN, "US")).toContain("<mtext>no\u00a0value</mtext>");
  });

  it("leaves the hyphen of a unit alone", () => {
    expect(resultText(unregistered({ id: "t", text: "M = P * x", source: "s", symbols: { M: { kind: "moment", meaning: "m" }, P: { kind: "force", meaning: "p" }, x: { kind: "length", meaning: "x" } } }), -13558.179483314004, "US")).toBe("M = −10 kip-ft");
  });
});

/** Elements of MathML Core used here, with the number of children where it is fixed. */
const core: Readonly<Record<string, number | undefined>> = {
  math: undefined, mrow: undefined, mi: 0, mn: 0, mo: 0, mtext: 0, mspace: 0, mfrac: 2, msqrt: undefined, mroot: 2, msub: 2, msup: 2,
  mtable: undefined, mtr: undefined, mtd: undefined,
};

/** Reads MathML strictly; gives the `data-symbol` names, or throws at what is not well formed. */
function symbolsOf(mathml: string): string[] {
  const open: { name: string; children: number }[] = [];
  const symbols: string[] = [];
  let at = 0;
  while (at < mathml.length) {
    const tag = /^<(\/?)([a-z]+)((?: [a-z-]+="[^"<>]*")*)>/.exec(mathml.slice(at));
    if (tag) {
      const [all, closing, name, attributes] = tag;
      if (!(name in core)) throw new Error(`${name} is not in MathML Core`);
      if (closing) {
        const top = open.pop();
        if (top?.name !== name) throw new Error(`</${name}> closes ${top?.name}`);
        if (core[name] !== undefined && core[name] !== top.children) throw new Error(`${name} has ${top.children} children`);
      } else {
        if (open.length === 0 && at > 0) throw new Error("two roots");
        const parent = open.at(-1);
        if (parent) parent.children++;
        open.push({ name, children: 0 });
        const symbol = / data-symbol="([^"]*)"/.exec(attributes);
        if (symbol) symbols.push(symbol[1]);
      }
      at += all.length;
      continue;
    }
    const text = /^(?:[^<>&]|&(?:amp|lt|gt|quot);)+/.exec(mathml.slice(at));
    if (!text || !["mi", "mn", "mo", "mtext"].includes(open.at(-1)?.name ?? "")) throw new Error(`loose text at ${mathml.slice(at, at + 30)}`);
    at += text[0].length;
  }
  if (open.length) throw new Error("left open");
  return symbols;
}

describe("MathML", () => {
  const expressions = ["a / (b + 1)", "sqrt(a) + cbrt(b)", "-a^(b / 2)", "a <= b and not (a == 1) ? min(a, b, 1) : abs(b)", "exp(a) * log(b) / pi", "(a / b)^2 * floor(c)"];
  const formulas = [breakout, edgeFactor, contact, velocityPressure, ...expressions.map((e) => of(e)), of("a + b", "length")];

  test.each(formulas.map((f) => [f.text, f] as const))("%s is well formed and marks the symbols of the text", (_text, f) => {
    const { tree } = parsedOf(f);
    const names = new Set([f.result, ...namesIn(tree)]);
    expect(new Set(symbolsOf(declaredMathml(f)))).toEqual(names);
    const args = Object.fromEntries(Object.keys(f.symbols).map((name, i) => [name, 1.5 + i]));
    for (const system of ["US", "SI"] as const) {
      const shown = symbolsOf(substitutedMathml(f, args, system));
      expect(shown[0]).toBe(f.result);
      for (const name of shown) expect(names).toContain(name);
      expect(symbolsOf(resultMathml(f, 2, system))).toEqual([f.result]);
    }
  });

  test.each([
    ["a / (b + 1)", "<mfrac>"],
    ["sqrt(a)", "<msqrt>"],
    ["cbrt(a)", "<mroot>"],
    ["a^2", "<msup>"],
    ["a < 1 ? 1 : 2", "<mtable>"],
  ])("%s uses %s", (expression, element) => {
    expect(declaredMathml(of(expression))).toContain(element);
  });

  it("needs no parentheses around what a fraction or a raised exponent sets apart", () => {
    expect(declaredMathml(of("(a + b) / (c + d)"))).not.toContain("<mo>(</mo>");
    expect(declaredMathml(of("a^(b + c)"))).not.toContain("<mo>(</mo>");
    expect(declaredMathml(of("(a / b)^2"))).toContain("<mo>(</mo>");
  });

  it("escapes what is written into it", () => {
    expect(declaredMathml(of("a + 1"))).toContain('data-meaning="side &lt;a&gt; &amp; &quot;more&quot;"');
    expect(declaredMathml(of("a < 1 ? a : 2"))).toContain("<mo>&lt;</mo>");
  });
});
