/** The formulas a check declares. A formula's id begins with the id of the check it belongs to, or with a part that several share. */
import type { CheckDecl } from "../checks/contract.js";
import { allFormulas } from "../formula/declare.js";
import type { Formula } from "../formula/types.js";

export const formulasOf = (check: CheckDecl): readonly Formula[] => allFormulas().filter((formula) => formula.id === check.id || formula.id.startsWith(`${check.id}.`));
