/**
 * Supports of one structure stand partly on rock and partly on soil. The soil side settles and the rock side does not: in the field the roof
 * racks, connections open, and the frame takes loads nobody designed.
 *
 * Long-standing practice; no clause of IBC 2021 forbids it.
 */
import type { Support } from "../../project/model.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { listed } from "./words.js";

type Ground = "rock" | "soil";

const waysOut = "Take every support down to rock; or bench the rock down and cushion it, so that all of them settle alike; or separate the structure into parts that may move against each other.";

const kindOf = (support: Support): Ground | undefined => support.ground?.fields.kind?.value;

const countOf = (supports: readonly Support[]): number => supports.flatMap(({ places }) => places).length;

const placeOf = (support: Support) => support.ground?.fields.kind ?? support.foundation?.fields.ground ?? support;

export const oneGround: RuleDecl = {
  id: "site.one-ground",
  title: "All supports on rock, or none",
  link: "site",
  clause: "common practice, no source",
  fails: "One part of the structure stands on rock and another on soil, and they settle by different amounts.",
  seen: "A roof racked toward its soil side, with opened connections and columns out of plumb.",
  range: "By the kind of ground each support names. How much the soil side settles is not worked out, neither soils of different stiffness.",
  judge: (structure) => {
    const known = structure.supports.filter((support) => kindOf(support) !== undefined);
    const unknown: RuleFinding[] = structure.supports
      .filter((support) => kindOf(support) === undefined)
      .map((support) => ({ support, verdict: "unchecked", message: `${support.name}: whether it stands on rock or soil is not said. Name its ground, and give the ground a kind.`, at: placeOf(support) }));
    const onRock = known.filter((support) => kindOf(support) === "rock");
    const onSoil = known.filter((support) => kindOf(support) === "soil");
    if (onRock.length === 0 || onSoil.length === 0)
      return [...known.map((support): RuleFinding => ({ support, verdict: "holds", message: `${support.name} stands on ${kindOf(support)}, as all supports whose ground is known do.`, at: placeOf(support) })), ...unknown];
    // With as many on either side, the ones on soil are the ones that can be taken to rock.
    const few = countOf(onRock) < countOf(onSoil) ? onRock : onSoil;
    const many = few === onRock ? onSoil : onRock;
    const names = (supports: readonly Support[]) => listed(supports.map(({ name }) => name));
    const says = `${names(onRock)} on rock, ${names(onSoil)} on soil`;
    return [
      ...few.map((support): RuleFinding => ({
        support,
        verdict: "over",
        message: `Mixed bearing: ${says}. The soil side settles and the rock side does not. ${waysOut}`,
        at: placeOf(support),
        related: many.map((other) => ({ at: placeOf(other), message: `${other.name} stands on ${kindOf(other)}.` })),
      })),
      // The others are named in it; said again at each of them, one fault would count as many.
      ...unknown,
    ];
  },
};
