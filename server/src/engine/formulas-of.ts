/** The formulas a check calculates with: those it lists, or those whose id begins with its own. */
import type { CheckDecl } from "../checks/contract.js";
import { allFormulas } from "../formula/declare.js";
import type { Formula } from "../formula/types.js";

export const formulasOf = (check: CheckDecl): readonly Formula[] =>
  check.formulas ?? allFormulas().filter((formula) => formula.id === check.id || formula.id.startsWith(`${check.id}.`));
