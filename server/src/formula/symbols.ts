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

const letter = (name: string) => (Object.hasOwn(greek, name) ? greek[name] : name);

/**
 * The parts of a symbol by its name in the text: `h_ef` is h with subscript ef, `psi_ed_N` is ψ with subscript ed,N, and
 * `fprime_c` is f′ with subscript c.
 */
export function symbolParts(name: string): SymbolParts {
  const [first, ...rest] = name.split("_").filter((part) => part !== "");
  const primed = /^(.+)prime$/.exec(first);
  return { base: primed ? `${letter(primed[1])}′` : letter(first), subscripts: rest.map(letter) };
}
