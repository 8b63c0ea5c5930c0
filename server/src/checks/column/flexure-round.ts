/** Flexural strength of round hollow sections and pipe: AISC 360-22 F8, yielding and local buckling. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { wallRatio } from "./elements.js";
import { flexuralDesignStrength, plasticMoment } from "./flexure.js";
import type { ColumnInputs } from "./member.js";

const steel = { E: "29000 ksi" } as const;
const F_y = { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } as const;
const lambda = { kind: "ratio", meaning: "diameter over wall", field: "columns.*.section", range: [30, 150] } as const;

const limit = <const T extends string>(id: string, text: T, meaning: string, source: string) =>
  formula({ id, text, source, symbols: { lambda_l: { kind: "ratio", meaning }, F_y }, constants: steel });

export const roundCompactLimit = limit("column.round-compact-limit", "lambda_l = 0.07 * E / F_y", "limit of a compact round section", "AISC 360-22 Table B4.1b, case 20");
export const roundSlenderLimit = limit("column.round-slender-limit", "lambda_l = 0.31 * E / F_y", "limit of a slender round section", "AISC 360-22 Table B4.1b, case 20");
export const roundRange = limit("column.round-range", "lambda_l = 0.45 * E / F_y", "diameter over wall up to which the method holds", "AISC 360-22 F8 and E7.2");

export const roundNoncompact = formula({
  id: "column.round-noncompact",
  text: "M_n = min(M_p, (0.021 * E / lambda + F_y) * S)",
  source: "AISC 360-22 Eq. F8-2",
  symbols: { M_n: { kind: "moment", meaning: "nominal moment" }, M_p: { kind: "moment", meaning: "plastic moment" }, lambda, F_y, S: { kind: "sectionModulus", meaning: "elastic section modulus", field: "columns.*.section" } },
  constants: steel,
});

export const roundSlender = formula({
  id: "column.round-slender",
  text: "M_n = 0.33 * E / lambda * S",
  source: "AISC 360-22 Eq. F8-3 and F8-4",
  symbols: { M_n: { kind: "moment", meaning: "nominal moment" }, lambda, S: { kind: "sectionModulus", meaning: "elastic section modulus", field: "columns.*.section" } },
  constants: steel,
});

/** Design flexural strength of a round section, N·m, or undefined beyond the range of the method. */
export function roundStrength(column: ColumnInputs, calc: Calc): number | undefined {
  const { strong } = column;
  const ratio = calc(wallRatio, { b: column.H, t: column.t });
  if (ratio >= calc(roundRange, { F_y: column.F_y })) return undefined;
  const M_p = calc(plasticMoment, { F_y: column.F_y, Z: strong.Z });
  if (ratio <= calc(roundCompactLimit, { F_y: column.F_y })) {
    calc.note("The section is compact.");
    return calc(flexuralDesignStrength, { M_n: M_p });
  }
  const isSlender = ratio > calc(roundSlenderLimit, { F_y: column.F_y });
  calc.note(isSlender ? "The section is slender." : "The section is noncompact.");
  const M_n = isSlender ? calc(roundSlender, { lambda: ratio, S: strong.S }) : calc(roundNoncompact, { M_p, lambda: ratio, F_y: column.F_y, S: strong.S });
  return calc(flexuralDesignStrength, { M_n });
}

export const roundFormulas = [roundRange, roundCompactLimit, roundSlenderLimit, roundNoncompact, roundSlender];
