/**
 * Steel set on concrete that is still green: a rod pulls out with the first gust, or its edge breaks off as the nut is tightened.
 *
 * 29 CFR 1926.752(a)(1): 75 percent of the design strength, or enough for the loads of erection, by samples cured on the site, and the notice of it
 * in writing. Seven days without samples: common practice, no source.
 */
import { formula } from "../../formula/declare.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Foundation } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

export const strengthForSteel = formula({
  id: "site.strength-for-steel",
  text: "f_e = 0.75 * fprime_c",
  source: "29 CFR 1926.752(a)(1)",
  symbols: { f_e: { kind: "stress", meaning: "strength on the day the columns are set" }, fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } },
});

export const daysForSteel = formula({
  id: "site.days-for-steel",
  text: "n_d = 7",
  source: "common practice, no source",
  symbols: { n_d: { kind: "number", meaning: "days from the pour to the day the columns are set" } },
});

function judgeAge(fields: Foundation, show: ShowAs): Judgment | undefined {
  const strength = fields["strength at erection"];
  const days = fields["days before erection"];
  const concrete = fields.concrete;
  const nothing = { message: "" };
  if (strength && concrete) {
    const needed = strengthForSteel.value({ fprime_c: concrete.value });
    const says = `Concrete ${show(strength.value, "stress")} when the columns are set; ${show(needed, "stress")} needed, three quarters of ${show(concrete.value, "stress")}`;
    if (isBelow(strength.value, needed)) return { over: [{ message: `${says}. Wait, or have the engineer say in writing what the erection needs.`, at: strength }], unchecked: [], holds: nothing };
    return { over: [], unchecked: [], holds: { message: `${says}; the erector has it in writing before the steel goes up.`, at: strength } };
  }
  if (!days) return undefined;
  const needed = daysForSteel.value({});
  const says = `${days.value} days from the pour to the columns; ${needed} is the least without tests (common practice)`;
  if (days.value < needed) return { over: [{ message: `${says}. Wait, or test samples cured on the site and state the strength at erection.`, at: days }], unchecked: [], holds: nothing };
  return { over: [], unchecked: [], holds: { message: `${says}. Warm, moist curing is meant; cold slows it.`, at: days } };
}

export const cure: RuleDecl = {
  id: "site.cure",
  title: "Cure before the columns are set",
  link: "site",
  clause: "29 CFR 1926.752(a)(1); 7 days: common practice, no source",
  fails: "A rod pulls out of green concrete, or the edge breaks as its nut is tightened.",
  seen: "A cone of crumbling concrete round a rod; a column down in the first wind.",
  range: "By the strength or the days stated; where neither is, nothing is asked here. How the temperature slows the cure is not looked at, neither the loads of erection themselves.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, (_, fields, show) => judgeAge(fields, show)),
};
