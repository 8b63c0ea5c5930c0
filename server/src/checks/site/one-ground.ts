/**
 * Supports of one structure stand partly on rock and partly on soil. The soil side settles and the rock side does not: in the field the roof
 * racks, connections open, and the frame takes loads nobody designed. Rock that was met early at one pier makes it so as surely as a drawing.
 *
 * Long-standing practice; no clause of IBC 2021 forbids it. A cushion of a foot or more on rock that was cut down: practice (from memory).
 */
import { formula } from "../../formula/declare.js";
import { isBelow } from "../../mechanics/compare.js";
import { differencesOf } from "../../project/as-built.js";
import type { Sourced, Support } from "../../project/model.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { showAs, type ShowAs } from "./judge.js";
import { listed } from "./words.js";

type Ground = "rock" | "soil";

const waysOut = "Take every support down to rock; or bench the rock down and cushion it, so that all of them settle alike; or separate the structure into parts that may move against each other.";

export const leastCushion = formula({
  id: "site.least-cushion",
  text: "t_c = t_0",
  source: "a cushion of 1 to 2 ft on rock that was cut down; practice (from memory)",
  symbols: { t_c: { kind: "distance", meaning: "least thickness of the cushion" } },
  constants: { t_0: "12 inch" },
});

/** Rock met above the underside, where the drawing has soil. */
function rockMet(support: Support): { readonly at: Sourced<number>; readonly by: number | undefined } | undefined {
  const built = support.foundation?.fields["as built"]?.value;
  const at = built?.["rock met at"];
  const depth = support.foundation?.fields.depth;
  if (!at || support.ground?.fields.kind?.value === "rock" || (depth && isBelow(depth.value, at.value))) return undefined;
  return { at, by: built["rock met by"]?.value };
}

function kindOf(support: Support): Ground | undefined {
  const fields = support.ground?.fields;
  if (fields?.kind?.value === "rock" && fields.cushion && !isBelow(fields.cushion.value, leastCushion.value({}))) return "soil";
  return rockMet(support) ? "rock" : fields?.kind?.value;
}

/** Why it stands on what it stands on, where that is not what was drawn. */
function becauseOf(support: Support, show: ShowAs): string {
  const met = rockMet(support);
  if (met) return ` (as built: rock met at ${show(met.at.value, "distance")})`;
  return support.foundation && differencesOf(support.foundation.fields).some(({ built }) => built.path.endsWith(".as built.ground")) ? " (as built)" : "";
}

const countOf = (supports: readonly Support[]): number => supports.flatMap(({ places }) => places).length;

const placeOf = (support: Support) => rockMet(support)?.at ?? support.ground?.fields.kind ?? support.foundation?.fields.ground ?? support;

/** A line of which some met rock and the others did not is mixed in itself. */
function mixedLine(support: Support, show: ShowAs): RuleFinding | undefined {
  const met = rockMet(support);
  const count = support.places.length;
  if (!met || met.by === undefined || met.by >= count) return undefined;
  return {
    support,
    verdict: "over",
    message: `Mixed bearing: ${met.by} of the ${count} foundations of ${support.name} met rock at ${show(met.at.value, "distance")}, the others stand on soil. The soil side settles and the rock side does not. ${waysOut}`,
    at: met.at,
  };
}

export const oneGround: RuleDecl = {
  id: "site.one-ground",
  title: "All supports on rock, or none",
  link: "site",
  clause: "common practice, no source",
  fails: "One part of the structure stands on rock and another on soil, and they settle by different amounts.",
  seen: "A roof racked toward its soil side, with opened connections and columns out of plumb.",
  range: "By the kind of ground each support names, rock met above its underside, and a cushion of 12 in or more on rock. How much the soil side settles is not worked out, neither soils of different stiffness.",
  judge: (structure) => {
    const show = showAs(structure);
    const mixed = structure.supports.map((support) => mixedLine(support, show)).filter((found) => found !== undefined);
    if (mixed.length > 0) return mixed;
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
    const names = (supports: readonly Support[]) => listed(supports.map((support) => `${support.name}${becauseOf(support, show)}`));
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
