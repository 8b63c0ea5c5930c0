/** How a rule about foundations speaks: everything it finds wrong in one statement, what it could not see in another. */
import type { Foundation, Structure, Support } from "../../project/model.js";
import { format } from "../../units/format.js";
import type { KindName } from "../../units/kinds.js";
import type { Found, Judgment } from "../base/judge.js";
import type { RuleFinding } from "../contract.js";

export type { Found, Judgment };

export type ShowAs = (value: number, kind: KindName) => string;

const sentence = (found: readonly Found[]): string => found.map(({ message }) => message).join(" ");

export const showAs =
  (structure: Structure): ShowAs =>
  (value, kind) =>
    format(value, kind, structure.project.units?.value ?? "US");

/** The statement a judgment comes to: what is wrong before what is not known. */
export function spoken(support: Support, { over, unchecked, holds }: Judgment, at: RuleFinding["at"]): RuleFinding {
  const [verdict, found] = over.length > 0 ? (["over", over] as const) : unchecked.length > 0 ? (["unchecked", unchecked] as const) : (["holds", [holds]] as const);
  return { support, verdict, message: `${support.name}: ${sentence(found)}`, at: found[0].at ?? at };
}

/** One finding for each support with a foundation the rule has something to say about. */
export function judgeFoundations(structure: Structure, judge: (support: Support, foundation: Foundation, show: ShowAs) => Judgment | undefined): readonly RuleFinding[] {
  const show = showAs(structure);
  return structure.supports.flatMap((support): RuleFinding[] => {
    const judged = support.foundation && judge(support, support.foundation.fields, show);
    return judged && support.foundation ? [spoken(support, judged, support.foundation)] : [];
  });
}
