const greek: Readonly<Record<string, string>> = {
  alpha: "α", beta: "β", gamma: "γ", delta: "δ", epsilon: "ε", theta: "θ", lambda: "λ", mu: "μ", nu: "ν", pi: "π",
  rho: "ρ", sigma: "σ", tau: "τ", phi: "φ", psi: "ψ", omega: "ω",
  Alpha: "Α", Beta: "Β", Gamma: "Γ", Delta: "Δ", Epsilon: "Ε", Theta: "Θ", Lambda: "Λ", Mu: "Μ", Nu: "Ν", Pi: "Π",
  Rho: "Ρ", Sigma: "Σ", Tau: "Τ", Phi: "Φ", Psi: "Ψ", Omega: "Ω",
};

export interface SymbolParts {
  /** The letter, with its prime: `ψ`, `f′`. */
  readonly base: string;
  readonly subscripts: readonly string[];
}

/** A letter by its name; a Greek one may stand before a capital, as in `phiN`, a strength with its factor. */
function letter(name: string): string {
  if (Object.hasOwn(greek, name)) return greek[name];
  const joined = /^([a-z]+)([A-Z].*)$/u.exec(name);
  return joined && Object.hasOwn(greek, joined[1]) ? greek[joined[1]] + joined[2] : name;
}

/**
 * The parts of a symbol by its name in the text: `h_ef` is h with subscript ef, `psi_ed_N` is ψ with subscript ed,N, and
 * `fprime_c` is f′ with subscript c.
 */
export function symbolParts(name: string): SymbolParts {
  const [first, ...rest] = name.split("_").filter((part) => part !== "");
  const primed = /^(.+)prime$/.exec(first);
  return { base: primed ? `${letter(primed[1])}′` : letter(first), subscripts: rest.map(letter) };
}
