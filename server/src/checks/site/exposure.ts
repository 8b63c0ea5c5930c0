/**
 * Concrete of a mix that its place destroys: water freezes in its pores and the top of the pier scales off, sulfate eats it, salt reaches the bars.
 *
 * ACI 318-19 Table 19.3.2.1 (strength, water) and Table 19.3.3.1 (air), from memory; for strength above 5000 psi a point less air.
 */
import { airFor, mixNeeded, type ExposureClass } from "../../catalog/concrete-exposure.js";
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Foundation, Sourced, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { unchangedSince14 } from "../editions.js";
import { isBelowFrost } from "./concrete-top.js";
import { judgeFoundations, type Found, type Judgment, type ShowAs } from "./judge.js";

export const airNeeded = formula({
  id: "site.air-needed",
  text: "A_n = A_t - (fprime_c > f_1 ? A_1 : 0)",
  source: "ACI 318-19 Table 19.3.3.1 and 19.3.3.3 (from memory)",
  symbols: {
    A_n: { kind: "ratio", meaning: "air of the fresh concrete" },
    A_t: { kind: "ratio", meaning: "air by the class of freezing and the aggregate" },
    fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
  },
  constants: { f_1: "5000 psi", A_1: "0.01" },
});

export const percentOf = formula({
  id: "site.percent-of",
  text: "p = 100 * A",
  source: "a part of the whole in percent",
  symbols: { p: { kind: "number", meaning: "percent" }, A: { kind: "ratio", meaning: "part of the whole" } },
});

const classFields = ["freezing exposure", "sulfate exposure", "water exposure", "corrosion exposure"] as const;

type Stated = Sourced<ExposureClass>;

const statedOf = (fields: Foundation): readonly Stated[] => classFields.flatMap((name) => (fields[name] ? [fields[name] as Stated] : []));

/** The class that asks for the most of a property. */
const strictest = (classes: readonly Stated[], asks: (one: ExposureClass) => number): Stated | undefined =>
  classes.reduce<Stated | undefined>((most, each) => (most === undefined || asks(each.value) > asks(most.value) ? each : most), undefined);

const percent = (A: number): string => `${Number(percentOf.value({ A }).toFixed(1))} %`;

function strengthFound(fields: Foundation, classes: readonly Stated[], show: ShowAs): Found | undefined {
  const by = strictest(classes, (one) => mixNeeded[one].strength);
  const concrete = fields.concrete;
  if (!by || !concrete || !isBelow(concrete.value, mixNeeded[by.value].strength)) return undefined;
  return { message: `Concrete ${show(concrete.value, "stress")}; ${show(mixNeeded[by.value].strength, "stress")} needed in exposure ${by.value}. Order stronger concrete.`, at: concrete };
}

function waterFound(fields: Foundation, classes: readonly Stated[]): { readonly over?: Found; readonly unchecked?: Found } {
  const by = strictest(classes, (one) => -(mixNeeded[one].waterCement ?? Number.POSITIVE_INFINITY));
  const most = by && mixNeeded[by.value].waterCement;
  if (!by || most === undefined) return {};
  const ratio = fields["water-cement ratio"];
  if (!ratio) return { unchecked: { message: `The water-cement ratio of the mix is not stated; ${most} is the most in exposure ${by.value}.`, at: by } };
  return isAbove(ratio.value, most) ? { over: { message: `Water-cement ratio ${ratio.value}; ${most} is the most in exposure ${by.value}. Order a mix with less water.`, at: ratio } } : {};
}

function airFound(fields: Foundation, show: ShowAs): { readonly over?: Found; readonly unchecked?: Found } {
  const freezing = fields["freezing exposure"];
  if (!freezing || freezing.value === "F0") return {};
  const content = fields["air content"];
  const aggregate = fields["aggregate size"];
  if (!content) return { unchecked: { message: `Air in the concrete is not stated; exposure ${freezing.value} asks for it.`, at: freezing } };
  if (!aggregate) return { unchecked: { message: "The air needed goes by the aggregate size, which is not stated.", at: content } };
  const A_t = airFor(freezing.value, aggregate.value);
  if (A_t === undefined) return { unchecked: { message: `The table of air begins at an aggregate of 3/8 in; this one is ${show(aggregate.value, "length")}.`, at: aggregate } };
  const needed = airNeeded.value({ A_t, fprime_c: fields.concrete?.value ?? 0 });
  if (!isBelow(content.value, needed)) return {};
  return { over: { message: `Air ${percent(content.value)}; ${percent(needed)} needed in exposure ${freezing.value} with aggregate of ${show(aggregate.value, "length")}. Order more entrained air.`, at: content } };
}

/** Salt in the air reaches the bars; whether it does here has to be said. */
function saltFound({ site, foundation }: Support): Found | undefined {
  const air = site.air;
  if (!air || (air.value !== "salt spray" && air.value !== "pool") || foundation?.fields["corrosion exposure"]) return undefined;
  return { message: `The air is ${air.value === "pool" ? "that of a pool" : "salt spray"}, and whether chlorides reach the bars is not stated (corrosion exposure): C2 takes 5000 psi and a water-cement ratio of 0.4.`, at: air };
}

/** Where the ground freezes and no class is named, what the mildest class of freezing asks for is the least. */
function leastFound(support: Support, fields: Foundation, show: ShowAs): Found | undefined {
  const frost = support.site["frost depth"];
  const concrete = fields.concrete;
  if (!frost || frost.value <= 0 || fields["freezing exposure"] || !concrete || isBelowFrost(support, frost.value)) return undefined;
  if (!isBelow(concrete.value, mixNeeded.F1.strength)) return undefined;
  return {
    message: `Concrete ${show(concrete.value, "stress")} where the ground freezes; ${show(mixNeeded.F1.strength, "stress")} is the least (F1), ${show(mixNeeded.F2.strength, "stress")} where it is often wet (F2). Order stronger concrete and state its freezing exposure.`,
    at: concrete,
  };
}

function judgeMix(support: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const classes = statedOf(fields);
  const least = leastFound(support, fields, show);
  const salt = saltFound(support);
  if (classes.length === 0 && !least && !salt) return undefined;
  const edition = support.codes.concrete;
  if (edition && !unchangedSince14.includes(edition.value)) return { over: [], unchecked: [{ message: `The mix by ${edition.value} is not covered here.`, at: edition }], holds: { message: "" } };
  const water = waterFound(fields, classes);
  const air = airFound(fields, show);
  const names = classes.map(({ value }) => value).join(", ");
  return {
    over: [strengthFound(fields, classes, show) ?? least, water.over, air.over].filter((found) => found !== undefined),
    unchecked: [water.unchecked, air.unchecked, salt].filter((found) => found !== undefined),
    holds: { message: `Concrete ${fields.concrete ? show(fields.concrete.value, "stress") : ""} in exposure ${names}: strength, water and air suffice.`, at: classes[0] },
  };
}

export const exposure: RuleDecl = {
  id: "site.exposure",
  title: "Mix of the concrete by its exposure",
  link: "site",
  clause: "ACI 318-19 Tables 19.3.2.1 and 19.3.3.1 (from memory)",
  fails: "The concrete scales off where it freezes, is eaten by sulfate, or lets salt reach its bars.",
  seen: "A pier top crumbling round its plate after some winters; rust stains along the bars.",
  range:
    "Strength, water-cement ratio and air by the classes stated. Where the ground freezes and no class of freezing is stated, the strength of the mildest one is the least. Types of cement against sulfate, chlorides in the mix, fly ash where salts are spread, and plain concrete in F3 are not looked at.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeMix),
};
