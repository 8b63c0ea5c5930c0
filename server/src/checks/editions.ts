/** Which edition of the concrete standard a check is right by. What a check does not name, it does not answer for. */
import type { Codes } from "../project/model.js";
import type { CheckDecl } from "./contract.js";

/** The edition the checks of concrete are written by; one that is right by others too names them itself. */
const written: readonly string[] = ["ACI 318-19"];

/** For a rule that reads the same in ACI 318-14, under the same clause (from memory). */
export const unchangedSince14: readonly string[] = ["ACI 318-14", "ACI 318-19"];

/** Why the chosen edition keeps this check from answering, in words; undefined where it does not. */
export function editionBlock(check: Pick<CheckDecl, "clause" | "editions">, codes: Codes): string | undefined {
  const edition = codes.concrete?.value;
  const covered = check.editions ?? written;
  if (edition === undefined || !check.clause.includes("ACI 318") || covered.includes(edition)) return undefined;
  return `${edition} is not covered here; this check is made by ${covered.join(" or ")}`;
}
