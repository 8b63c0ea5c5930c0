/** What the details of a pier's or pedestal's bars have in common: they look at no force, and at the bars as stated. */
import type { Calc } from "../../formula/types.js";
import type { Named, Sourced, Support } from "../../project/model.js";
import { check, type CheckDecl, type Gather, sameInAll, type Outcome } from "../contract.js";
import { concreteEditions, type ConcreteMember, type MemberInputs, readMember, withBars } from "./concrete-member.js";

type Given = Pick<CheckDecl, "title" | "clause" | "fails" | "seen" | "range" | "formulas">;

interface Detail<I extends object> extends Given {
  readonly name: string;
  readonly applies?: (support: Support) => boolean;
  readonly fixedBy: (support: Support) => Sourced<unknown> | Named<unknown> | undefined;
  readonly evaluate: (inputs: I, calc: Calc) => Outcome;
  readonly advise: NonNullable<CheckDecl<I, "strength">["advise"]>;
}

/** A detail that needs more than the bars: `inputs` reads it. */
export const detailOf = <I extends object>(member: ConcreteMember, inputs: (support: Support, gather: Gather, place: number) => I, { name, applies, evaluate, fixedBy, ...detail }: Detail<I>): CheckDecl<I, "strength"> =>
  check<I, "strength">({
    ...detail,
    id: member.id(name),
    link: member.link,
    level: "strength",
    editions: concreteEditions,
    applies: (support) => withBars(member)(support) && (applies?.(support) ?? true),
    inputs,
    measures: sameInAll,
    fixedBy: (support) => fixedBy(support) ?? support.foundation,
    evaluate: (read, _demand, calc) => evaluate(read, calc),
  });

export const detail = (member: ConcreteMember, of: Detail<MemberInputs>): CheckDecl<MemberInputs, "strength"> => detailOf(member, (support, gather) => readMember(member, support, gather), of);

export const barsOf = (support: Support): Sourced<unknown> | undefined => support.foundation?.fields.bars;
export const tiesOf = (support: Support): Sourced<unknown> | undefined => support.foundation?.fields.ties ?? support.foundation?.fields.spiral;
