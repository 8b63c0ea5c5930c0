/**
 * A post on pavers: paving and its bedding carry neither pull nor push. In the field: a pergola in the neighbor's garden, its four brackets still
 * screwed to four loose stones.
 *
 * Common practice, no source. IBC 2021 1809.4: at least 12 in below undisturbed ground.
 */
import type { RuleDecl, RuleFinding } from "../contract.js";

const words = /\b(?:pavers?|paving|bedding|patio stones?|cobbles?)\b/iu;

/** Whether words about the ground mean paving. */
export const isPaved = (name: string): boolean => words.test(name);

export const paving: RuleDecl = {
  id: "site.paving",
  title: "Paving is no ground",
  link: "site",
  clause: "IBC 2021 1809.4; common practice, no source",
  fails: "Paving and its bedding carry neither pull nor push.",
  seen: "A pergola carried off by the wind, its brackets still screwed to loose stones.",
  range: "By the words of the ground's class.",
  alone: true,
  judge: (structure) =>
    structure.supports.flatMap((support): RuleFinding[] => {
      const name = support.ground?.fields.class;
      if (!name || !isPaved(name.value)) return [];
      return [{ support, verdict: "over", message: `${support.name}: it stands on ${name.value}, which carries neither pull nor push. Lift the paving, pour a footing in the ground below, and bring it up above the finish.`, at: name }];
    }),
};
