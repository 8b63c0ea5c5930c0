/** What the driller goes by: size and spacing of the holes, and how the dowels are set and proved. */
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Structure, Support } from "../../project/model.js";
import { format } from "../../units/format.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { hasDowels, isOnRock } from "./block.js";

const hole = { kind: "length", meaning: "diameter of the hole", field: "foundations.*.dowels.hole" } as const;
const bar = { kind: "length", meaning: "diameter of the bar", field: "foundations.*.dowels.bar" } as const;

export const groutHole = formula({
  id: "rock.grout-hole",
  text: "d_n = d_b + d_1",
  source: "common practice, no source: a quarter of an inch of grout all round",
  symbols: { d_n: { ...hole, meaning: "least diameter of a hole for cement grout", field: undefined }, d_b: bar },
  constants: { d_1: "0.5 inch" },
});

export const adhesiveHole = formula({
  id: "rock.adhesive-hole",
  text: "d_n = d_b + d_1",
  source: "common practice, no source: the maker's instructions give the hole of each bar",
  symbols: { d_n: { ...hole, meaning: "least diameter of a hole for adhesive", field: undefined }, d_b: bar },
  constants: { d_1: "0.125 inch" },
});

export const widestAdhesiveHole = formula({
  id: "rock.widest-adhesive-hole",
  text: "d_m = d_b + d_1",
  source: "common practice, no source: the maker's instructions give the hole of each bar",
  symbols: { d_m: { ...hole, meaning: "largest diameter of a hole for adhesive", field: undefined }, d_b: bar },
  constants: { d_1: "0.25 inch" },
});

export const leastSpacing = formula({
  id: "rock.least-spacing",
  text: "s_n = max(4 * d_h, l_6)",
  source: "common practice, no source: so that drilling one hole does not break the next",
  symbols: { s_n: { kind: "length", meaning: "least spacing of drilled holes" }, d_h: hole },
  constants: { l_6: "6 inch" },
});

export const drilledDepth = formula({
  id: "rock.drilled-depth",
  text: "L_h = t_w + D",
  source: "geometry",
  symbols: {
    L_h: { kind: "length", meaning: "depth to drill from the top of the weathered rock" },
    t_w: { kind: "distance", meaning: "thickness of the weathered rock", field: "ground.*.weathered depth" },
    D: { kind: "length", meaning: "depth of the hole in sound rock", field: "foundations.*.dowels.into rock" },
  },
});

/** Least distance from a footing or a dowel on rock to the edge of the rock, m: 2 ft. */
const leastFace = 0.6096;

type Judged = Pick<RuleFinding, "verdict" | "message" | "at">;
type Show = (value: number) => string;

const judgeEach = (structure: Structure, applies: (support: Support) => boolean, judge: (support: Support, show: Show) => readonly Judged[]): readonly RuleFinding[] => {
  const system = structure.project.units?.value ?? "US";
  return structure.supports.filter(applies).flatMap((support) => judge(support, (value) => format(value, "length", system)).map((found) => ({ support, ...found })));
};

function judgeHole(support: Support, show: Show): readonly Judged[] {
  const dowels = support.foundation?.fields.dowels;
  const fields = dowels?.value;
  const d_b = fields?.bar?.value.diameter;
  const at = fields?.hole ?? dowels ?? support;
  if (!fields?.hole || d_b === undefined || !fields["set in"])
    return [{ verdict: "unchecked", message: `${support.name}: state the bar, the diameter of the holes and what the dowels are set in.`, at }];
  const d_h = fields.hole.value;
  const setIn = fields["set in"].value;
  const says = `${show(d_h)} holes for ${fields.bar?.value.name} bars in ${setIn}`;
  if (setIn === "nothing") return [{ verdict: "holds", message: `${support.name}: bars driven dry into ${show(d_h)} holes; they are pins against sliding alone.`, at }];
  const least = (setIn === "epoxy" ? adhesiveHole : groutHole).value({ d_b });
  const most = setIn === "epoxy" ? widestAdhesiveHole.value({ d_b }) : undefined;
  const tooTight = isBelow(d_h, least);
  const tooWide = most !== undefined && isAbove(d_h, most);
  if (tooTight) return [{ verdict: "over", message: `${support.name}: ${says}; ${show(least)} is the least, so that it flows all round the bar. Drill wider.`, at }];
  if (tooWide) return [{ verdict: "over", message: `${support.name}: ${says}; ${show(most)} is the most an adhesive is usually made for. Drill narrower, or set the bars in cement grout.`, at }];
  return [{ verdict: "holds", message: `${support.name}: ${says}.${setIn === "epoxy" ? " The maker's instructions give the hole of each bar and come first." : ""}`, at }];
}

function judgeLayout(support: Support, show: Show): readonly Judged[] {
  const fields = support.foundation?.fields.dowels?.value;
  const found: Judged[] = [];
  const s = fields?.spacing;
  if (s && fields?.hole) {
    const least = leastSpacing.value({ d_h: fields.hole.value });
    found.push(
      isBelow(s.value, least)
        ? { verdict: "over", message: `${support.name}: holes ${show(s.value)} apart; ${show(least)} is the least for holes of ${show(fields.hole.value)}. Space them wider: drilling one breaks the next.`, at: s }
        : { verdict: "holds", message: `${support.name}: holes ${show(s.value)} apart, ${show(least)} is the least.`, at: s },
    );
  }
  const face = fields?.["rock face"];
  if (face)
    found.push(
      isBelow(face.value, leastFace)
        ? { verdict: "over", message: `${support.name}: dowels ${show(face.value)} from the face of the rock; ${show(leastFace)} is the least. Move them in, or cut the loose edge off and go lower.`, at: face }
        : { verdict: "holds", message: `${support.name}: dowels ${show(face.value)} from the face of the rock.`, at: face },
    );
  return found;
}

function judgeSetting(support: Support): readonly Judged[] {
  const dowels = support.foundation?.fields.dowels;
  const fields = dowels?.value;
  const setIn = fields?.["set in"];
  const wet = fields?.["hole condition"];
  const cold = fields?.["rock temperature"];
  const at = wet ?? cold ?? dowels ?? support;
  if (!setIn || !wet || !cold) {
    const missing = [...(setIn ? [] : ["what the dowels are set in (`set in`)"]), ...(wet ? [] : ["how wet the holes are (`hole condition`)"]), ...(cold ? [] : ["how cold the rock is (`rock temperature`)"])];
    return [{ verdict: "unchecked", message: `${support.name}: state ${missing.join(" and ")}.`, at }];
  }
  if (setIn.value === "nothing") return [{ verdict: "holds", message: `${support.name}: the bars are driven dry; nothing has to set.`, at }];
  const isFrozen = cold.value === "frozen";
  const isBad = wet.value !== "dry" || cold.value !== "50 F or more";
  const holes = `${wet.value} holes in rock ${cold.value === "50 F or more" ? "at 50 °F or more" : cold.value === "frozen" ? "that is frozen" : "below 50 °F"}`;
  if (setIn.value === "cement grout" && isFrozen) return [{ verdict: "over", message: `${support.name}: cement grout does not set in ${holes}. Warm the rock and keep it warm, or wait for spring.`, at: cold }];
  if (setIn.value === "epoxy" && isBad && fields.listed?.value !== true)
    return [{ verdict: "over", message: `${support.name}: adhesive in ${holes}. It must be one whose printed instructions cover that: choose one and state \`listed: yes\`, or set the bars in cement grout.`, at }];
  const test = fields["proof test"];
  const wanted = isFrozen ? "all" : "some";
  if (isBad && (!test || test.value === "none" || (wanted === "all" && test.value !== "all")))
    return [{ verdict: "over", message: `${support.name}: ${holes}: pull ${isFrozen ? "every dowel" : "the first 3 dowels and then 1 in 10"} to prove ${isFrozen ? "it" : "them"}, and state \`proof test: ${wanted}\`.`, at: test ?? at }];
  return [{ verdict: "holds", message: `${support.name}: dowels in ${setIn.value}, ${holes}. Blow and brush the holes clean; the inspector checks drill, depth, cleaning and what goes in. Adhesive needs an inspector by the building code, unless the official exempts it.`, at }];
}

function judgeSound(support: Support, show: Show): readonly Judged[] {
  const ground = support.ground?.fields;
  const condition = ground?.condition;
  const weathered = ground?.["weathered depth"];
  const into = support.foundation?.fields.dowels?.value["into rock"];
  if (!condition) return [{ verdict: "unchecked", message: `${support.name}: state the condition of the rock (sound, weathered or fractured).`, at: support.ground ?? support }];
  if (!into) return [{ verdict: "unchecked", message: `${support.name}: state how deep the dowels go into sound rock (\`into rock\`).`, at: support.foundation?.fields.dowels ?? support }];
  if (condition.value === "sound" && !(weathered && weathered.value > 0)) return [{ verdict: "holds", message: `${support.name}: drill ${show(into.value)} into sound rock.`, at: into }];
  if (!weathered)
    return [{ verdict: "unchecked", message: `${support.name}: the rock is ${condition.value}, and the depth of its dowels counts from sound rock. State how thick the weathered rock is (\`weathered depth\`), by a drill or a test pit.`, at: condition }];
  const depth = drilledDepth.value({ t_w: weathered.value, D: into.value });
  return [{ verdict: "holds", message: `${support.name}: drill ${show(depth)}: ${show(weathered.value)} of weathered rock and ${show(into.value)} of sound rock below it.`, at: into }];
}

const shared = { link: "rock" } as const;

export const dowelHoles: RuleDecl = {
  ...shared,
  id: "rock.dowel-holes",
  title: "Size of the dowel holes",
  clause: "common practice, no source",
  fails: "A hole too tight for what the dowel is set in leaves the bar bare on one side; one too wide wastes adhesive, which cures soft.",
  seen: "Bars leaning on the wall of the hole, with grout on one side alone.",
  range: "A quarter of an inch of cement grout all round; an eighth to a quarter of an inch over the bar for adhesive. The maker's instructions come first.",
  alone: true,
  judge: (structure) => judgeEach(structure, hasDowels, judgeHole),
};

export const dowelLayout: RuleDecl = {
  ...shared,
  id: "rock.dowel-layout",
  title: "Spacing of the dowels and their distance from a face of the rock",
  clause: "common practice, no source; Cleveland building code: 2 ft from footing to edge of rock",
  fails: "Holes too near each other or to the edge of the ledge break the rock between them.",
  seen: "A wedge of rock loosened at the edge of the ledge while the holes were drilled.",
  range: "Four hole diameters and 6 in between holes, 2 ft to a face where one is stated. What spacing takes from the rock cone is in its own check.",
  alone: true,
  judge: (structure) => judgeEach(structure, hasDowels, judgeLayout),
};

export const dowelSetting: RuleDecl = {
  ...shared,
  id: "rock.dowel-setting",
  title: "Wet or cold holes, and proof of the dowels",
  clause: "common practice, no source",
  fails: "Grout or adhesive does not set or does not stick in a wet or cold hole.",
  seen: "Dowels pulled out by hand in spring, set in frozen rock by the book.",
  range: "By what is stated of holes, temperature, product and tests. How many dowels are pulled is common practice; the test load is the engineer's.",
  alone: true,
  judge: (structure) => judgeEach(structure, hasDowels, (support) => judgeSetting(support)),
};

export const soundDepth: RuleDecl = {
  ...shared,
  id: "rock.sound-depth",
  title: "Depth to drill, below weathered rock",
  clause: "common practice, no source",
  fails: "The dowels end in weathered rock that is counted as sound.",
  seen: "A drill that drops through seams, and bars that turn in their holes.",
  range: "By the thickness of the weathered rock as stated; a drill or a test pit shows it.",
  alone: true,
  judge: (structure) => judgeEach(structure, hasDowels, judgeSound),
};

/** Steepest underside of a footing, rise over run. */
const steepestUnderside = 0.1;

export const rockSurface: RuleDecl = {
  ...shared,
  id: "rock.surface",
  title: "Slope of the rock below the footing",
  clause: "IBC 2021 1809.3",
  fails: "A footing cast on sloping rock slides down on it.",
  seen: "A pad crept downhill on a smooth ledge.",
  range: "By the slope as stated; rock without one is taken as level. Fissures are filled with concrete and loose rock is taken off before.",
  alone: true,
  judge: (structure) =>
    judgeEach(structure, isOnRock, (support): readonly Judged[] => {
      const slope = support.ground?.fields["rock slope"];
      if (!slope) return [];
      const inTwelve = format(slope.value, "slope", structure.project.units?.value ?? "US");
      if (support.ground?.fields.surface?.value === "benched") return [{ verdict: "holds", message: `${support.name}: the rock slopes ${inTwelve} and is cut into level benches.`, at: slope }];
      return isAbove(slope.value, steepestUnderside)
        ? [{ verdict: "over", message: `${support.name}: the rock slopes ${inTwelve}; the underside of a footing may slope 1 in 10 at most (IBC 2021 1809.3). Cut level benches (\`surface: benched\`). A key or dowels stop the sliding, and leave the slope.`, at: slope }]
        : [{ verdict: "holds", message: `${support.name}: the rock slopes ${inTwelve}, no more than 1 in 10.`, at: slope }];
    }),
};
