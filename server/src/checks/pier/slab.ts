/** What holds a pier at grade: a rigid slab tied to it, and nothing else. */
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

type Kind = "tied slab" | "loose slab" | "pavers";

export interface GradeHold {
  /** The notebook says that it is restrained at grade. */
  readonly isStated: boolean;
  /** What lies there, where that is stated. */
  readonly kind?: Kind;
}

export function readHold(support: Support, gather: Gather): GradeHold {
  const pier = support.foundation?.fields;
  return { isStated: gather.may(pier?.["restrained at grade"]) ?? false, kind: gather.may(pier?.["slab at grade"]?.value.kind) };
}

/** A slab that only lies against the pier, and pavers, hold nothing. */
export const isHeld = ({ isStated, kind }: GradeHold): boolean => isStated && kind !== "loose slab" && kind !== "pavers";
