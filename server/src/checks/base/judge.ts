/** How a rule about a base speaks: everything it finds wrong in one statement, what it could not see in another. */
import type { Base, Named, Sourced, Structure, Support } from "../../project/model.js";
import { format } from "../../units/format.js";
import type { RuleFinding } from "../contract.js";

export type Show = (length: number) => string;

export interface Found {
  readonly message: string;
  /** The value to change. */
  readonly at?: Sourced<unknown> | Named<unknown>;
}

export interface Judgment {
  readonly over: readonly Found[];
  readonly unchecked: readonly Found[];
  /** What to say where all holds. */
  readonly holds: Found;
}

const sentence = (found: readonly Found[]): string => found.map(({ message }) => message).join(" ");

/** One finding for each support with a base. */
export function judgeBases(structure: Structure, judge: (support: Support, base: Base, show: Show) => Judgment): readonly RuleFinding[] {
  const system = structure.project.units?.value ?? "US";
  const show: Show = (value) => format(value, "length", system);
  return structure.supports.flatMap((support): RuleFinding[] => {
    if (!support.base) return [];
    const { over, unchecked, holds } = judge(support, support.base.fields, show);
    const [verdict, found] = over.length > 0 ? (["over", over] as const) : unchecked.length > 0 ? (["unchecked", unchecked] as const) : (["holds", [holds]] as const);
    return [{ support, verdict, message: `${support.name}: ${sentence(found)}`, at: found[0].at ?? support.base }];
  });
}
