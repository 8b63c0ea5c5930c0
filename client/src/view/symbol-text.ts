/** How the name of a symbol is lettered: Greek letters as such, what follows the first underscore as a subscript. */

const greek: Readonly<Record<string, string>> = {
  alpha: "α",
  beta: "β",
  gamma: "γ",
  delta: "δ",
  epsilon: "ε",
  theta: "θ",
  lambda: "λ",
  mu: "μ",
  nu: "ν",
  pi: "π",
  rho: "ρ",
  sigma: "σ",
  tau: "τ",
  phi: "φ",
  psi: "ψ",
  omega: "ω",
  Delta: "Δ",
  Sigma: "Σ",
  Omega: "Ω",
};

export interface Lettered {
  readonly base: string;
  readonly sub?: string;
}

/** `psi_ed_N` is ψ with the subscript "ed,N". */
export const lettered = (symbol: string): Lettered => {
  const [base, ...sub] = symbol.split("_");
  const written = greek[base] ?? base;
  return sub.length === 0 ? { base: written } : { base: written, sub: sub.join(",") };
};
