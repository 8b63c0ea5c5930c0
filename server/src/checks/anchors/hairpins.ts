/**
 * Hairpins in the top of the concrete take the shear of the rods in place of the concrete before them: U bars that lie flat, their bend toward
 * the edge, their legs back into the concrete. They fail where they yield, or where a leg or the bend is drawn out.
 *
 * ACI 318-19 17.5.2.1(b): bars that go round a rod, touch it and are developed beyond the breakout surface, or bars near the rods that are
 * developed on both sides of it; phi 0.75. They replace breakout in shear, and neither the rod's own steel nor pryout. They lie below the
 * plane of the shear, and pull more than it by the lever between.
 */
import { findBarGrade } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { edgeNames, edgeRows, rowMeasures, type EdgeName } from "../../mechanics/edge-rows.js";
import type { Support } from "../../project/model.js";
import { readBase, type BaseInputs } from "../base/geometry.js";
import { towardWithTwist } from "../base/base-twist.js";
import { readShearPath, shearOnRods, shearPathFormulas, type ShearPath } from "../base/shear-path.js";
import { check, unchecked, weigh, type Gather } from "../contract.js";
import { editionBlock } from "../editions.js";
import { developmentFormulas as straightFormulas, straight } from "../footing/bar-development.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { oncePerInputs } from "../once.js";
import { developmentOf, hookDevelopment } from "./development.js";
import { usedPart } from "./ratio.js";
import { developedOrNot, developedPart, hookPlaceFactor } from "./reinforcement-tension.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

/** The directions of shear that hairpins stand against. */
export interface HairpinSides {
  readonly takesX: boolean;
  readonly takesY: boolean;
}

/** Which shear the hairpins take in place of the concrete; none where there are none. */
export function readHairpinSides(support: Support, gather: Gather): HairpinSides {
  const hairpins = gather.may(support.foundation?.fields.hairpins);
  const resists = hairpins ? gather.needs(hairpins.resists, "which shear the hairpins stand against (hairpins, resists)") : undefined;
  return { takesX: resists === "along x" || resists === "both ways", takesY: resists === "along y" || resists === "both ways" };
}

export interface HairpinInputs extends BaseInputs, HairpinSides {
  readonly path: ShearPath;
  readonly seismic: SeismicAnchors;
  readonly edition: string;
  readonly h_ef: number;
  readonly d_b: number;
  readonly A_b: number;
  readonly f_y: number;
  readonly cover: number;
  /** Hairpins that stand against a push toward one edge, at rods that bear. */
  readonly n_h: number;
  /** They go round the rods and touch them. */
  readonly isRound: boolean;
  /** From a rod to the farthest leg that counts, along the edge, m; 0 where they touch. */
  readonly g: number;
  /** From the line of the rods to the ends of the legs, m. */
  readonly leg: number;
  readonly isHooked: boolean;
  /** Distance of two legs, m. */
  readonly s: number;
  /** From the shear, at the underside of the plate, to the middle of the hairpins, m, and the depth of concrete below that. */
  readonly e_s: number;
  readonly below: number;
  readonly c_top: number;
  readonly psi_o: number;
}

const offset = { kind: "length", meaning: "from a rod to the farthest leg that counts, along the edge; 0 where the hairpins touch the rods", field: "foundations.*.hairpins.from rods" } as const;
const nearest = { kind: "length", meaning: "from the row of rods nearest the edge to it" } as const;
const concreteDepth = { kind: "length", meaning: "depth of the concrete" } as const;
const depthOfBars = { kind: "length", meaning: "from the top of the concrete to the middle of the hairpins", field: "foundations.*.hairpins.below top" } as const;
const diameter = { kind: "length", meaning: "diameter of the hairpins", field: "foundations.*.hairpins.bar" } as const;
const lever = { kind: "length", meaning: "from the shear to the middle of the hairpins" } as const;
const length = { kind: "length", meaning: "length of bar on this side of the breakout surface", range: [-2, 5] } as const;

export const hairpinReach = formula({
  id: "anchors.hairpin-reach",
  text: "r = min(0.5 * c_a1, 0.3 * c_a2)",
  source: "ACI 318-19 R17.5.2.1: bars within 0.5 c_a1 and 0.3 c_a2 of the rods",
  symbols: { r: { kind: "length", meaning: "how far from a rod a leg counts" }, c_a1: nearest, c_a2: { kind: "length", meaning: "from that row to the nearer end of the edge" } },
});

export const hairpinLever = formula({
  id: "anchors.hairpin-lever",
  text: "e_s = a_h + t_g",
  source: "geometry: the shear enters the rods at the underside of the plate",
  symbols: { e_s: lever, a_h: depthOfBars, t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" } },
});

export const belowHairpins = formula({
  id: "anchors.below-hairpins",
  text: "h_b = h - a_h",
  source: "geometry",
  symbols: { h_b: { kind: "length", meaning: "depth of concrete below the hairpins", range: [-5, 40] }, h: concreteDepth, a_h: depthOfBars },
});

export const hairpinPull = formula({
  id: "anchors.hairpin-pull",
  text: "N_re = V_u * (1 + e_s / (0.85 * min(h_b, 2 * h_ef, 2 * c_a1)))",
  source: "EN 1992-4:2018 Eq. 7.31 (from memory); ACI 318 says that the bars pull more than the shear and gives no formula",
  symbols: {
    N_re: { kind: "force", meaning: "pull of the hairpins" },
    V_u: { kind: "force", meaning: "shear toward the edge" },
    e_s: lever,
    h_b: { kind: "length", meaning: "depth of concrete below the hairpins" },
    h_ef: { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" },
    c_a1: nearest,
  },
});

export const legBehind = formula({
  id: "anchors.leg-behind",
  text: "l_i = l_l + g / 1.5",
  source: "geometry: the breakout surface spreads from the rod at 1 to 1.5, ACI 318-19 17.7.2.1",
  symbols: { l_i: length, l_l: { kind: "length", meaning: "from the line of the rods to the ends of the legs", field: "foundations.*.hairpins.leg" }, g: offset },
});

export const bendBefore = formula({
  id: "anchors.bend-before",
  text: "l_o = c_a1 - g / 1.5 - c_c",
  source: "geometry: the breakout surface spreads from the rod at 1 to 1.5, ACI 318-19 17.7.2.1",
  symbols: { l_o: length, c_a1: nearest, g: offset, c_c: { kind: "length", meaning: "clear cover of the bend", field: "foundations.*.cover" } },
});

export const legSpacing = formula({
  id: "anchors.leg-spacing",
  text: "s_l = g > 0 ? 2 * g : d_a + d_b",
  source: "geometry: one leg to each side of a rod",
  symbols: { s_l: { kind: "length", meaning: "distance of the two legs of a hairpin" }, g: { ...offset, range: [-1, 1] }, d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" }, d_b: diameter },
});

export const coverOfHairpins = formula({
  id: "anchors.cover-of-hairpins",
  text: "c_t = a_h - d_b / 2",
  source: "geometry",
  symbols: { c_t: { kind: "length", meaning: "clear cover of the hairpins at the top", range: [-1, 5] }, a_h: depthOfBars, d_b: diameter },
});

export const hairpinsCounted = formula({
  id: "anchors.hairpins-counted",
  text: "n_h = is_welded > 0 ? n : n * min(n_a, 2) / n_a",
  source: "common practice, no source: with loose washers two rods bear, and the hairpins of these two count",
  symbols: {
    n_h: { kind: "number", meaning: "hairpins that count against a push toward one edge" },
    n: { kind: "number", meaning: "hairpins that stand against it", field: "foundations.*.hairpins.count" },
    n_a: { kind: "number", meaning: "rods", field: "bases.*.anchors.count" },
    is_welded: { kind: "number", meaning: "1 where washers are welded to the plate, 0 otherwise", range: [-1, 1], field: "bases.*.washers welded" },
  },
});

export const hairpinStrength = formula({
  id: "anchors.hairpin-strength",
  text: "phiN_re = phi * 2 * n_h * A_b * f_y * min(k_i, k_o)",
  source: "ACI 318-19 17.5.2.1 and Table 17.5.3, anchor reinforcement: phi = 0.75; two legs a hairpin",
  symbols: {
    phiN_re: { kind: "force", meaning: "design strength of the hairpins" },
    n_h: { kind: "number", meaning: "hairpins that count against a push toward one edge" },
    A_b: { kind: "area", meaning: "area of one leg", field: "foundations.*.hairpins.bar" },
    f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" },
    k_i: { kind: "ratio", meaning: "part developed behind the breakout surface" },
    k_o: { kind: "ratio", meaning: "part developed before it; 1 where the hairpins touch the rods" },
  },
  constants: { phi: "0.75" },
});

/** More fresh concrete than this below a bar makes it a top bar, m: 12 in, ACI 318-19 Table 25.4.2.5. */
const topBarFrom = 0.3048;

/** No. 5 is the largest bar of the tests the rule stands on (R17.5.2.1); one of 16 mm is one, m. */
const largestBar = 0.0161;

/** Distances of the rods toward one edge. */
interface Before {
  readonly c_a1: number;
  readonly c_a2: number;
}

/** The row nearest each edge; the same for every combination. */
const rowsOf = oncePerInputs((inputs: HairpinInputs): Readonly<Record<EdgeName, Before>> => {
  const before = (edge: EdgeName): Before => {
    const [row] = edgeRows({ rods: inputs.rods, member: inputs.member.edges, edge });
    return { c_a1: row.distance, c_a2: rowMeasures.run(row).leastEnd };
  };
  return Object.fromEntries(edgeNames.map((edge) => [edge, before(edge)])) as Record<EdgeName, Before>;
});

/** Design strength of the hairpins against a push toward one edge, N. */
function strengthToward({ c_a1, c_a2 }: Before, inputs: HairpinInputs, calc: Calc): number {
  const { d_b, A_b, f_y, n_h, g, leg, fprime_c, psi_o, edition } = inputs;
  let isNear = true;
  if (!inputs.isRound) {
    isNear = calc(hairpinReach, { c_a1, c_a2 }) >= g;
    if (!isNear) calc.note("The legs stand beyond the reach of the rods and count for nothing.");
  }
  const hook = (l: number): number => calc(developedOrNot, { l, l_n: developmentOf("hooked", { d_b, f_y, fprime_c, c_b: inputs.c_top, psi_r: 1.6, psi_o }, calc) });
  calc.note("Behind the breakout surface:");
  const l_i = calc(legBehind, { l_l: leg, g });
  const s_c = calc(rootStrength, { fprime_c });
  const k_i = inputs.isHooked ? hook(l_i) : calc(developedPart, { l: l_i, l_n: straight({ diameter: d_b, spacing: inputs.s }, inputs.c_top, f_y, s_c, inputs.below > topBarFrom, edition, calc) });
  let k_o = 1;
  if (inputs.isRound) calc.note("The hairpins go round the rods and touch them: nothing has to be developed before the breakout surface.");
  else {
    calc.note("Before it:");
    k_o = hook(calc(bendBefore, { c_a1, g, c_c: inputs.cover }));
  }
  return calc(hairpinStrength, { n_h: isNear ? n_h : 0, A_b, f_y, k_i, k_o });
}

const strengths = oncePerInputs((inputs: HairpinInputs): Readonly<Record<EdgeName, number>> => {
  const rows = rowsOf(inputs);
  return Object.fromEntries(edgeNames.map((edge) => [edge, strengthToward(rows[edge], inputs, plainCalc)])) as Record<EdgeName, number>;
});

export const hairpins = sharedMode(check({
  id: "anchors.hairpins",
  title: "Hairpins in place of breakout in shear",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.5.2.1, 25.4",
  fails: "The hairpins that are to take the shear of the rods yield, or their legs or bends are too short and slip.",
  seen: "The top of a pier pushed off its cage toward one side, the legs of its hairpins drawn out.",
  range:
    "Uncoated bars to no. 5, lying flat, that stand against a push toward each edge across their direction; those that go round rods and touch them, or those near enough that are developed on both sides. Straight legs shorter than their development length count in part, hooks in full or not at all; hairpins are taken as nearer to each other than six bar diameters. With loose washers those of two rods count. " +
    "Shear in a direction without hairpins is left to the concrete; a twist of the base stands as a shear toward every edge. That the legs lie level, and touch where they are to touch, is for the drawing.",
  formulas: [
    hairpinsCounted, hairpinLever, belowHairpins, hairpinReach, hairpinPull, legBehind, bendBefore, legSpacing, coverOfHairpins, rootStrength,
    ...straightFormulas, hookDevelopment, developedPart, developedOrNot, hookPlaceFactor, hairpinStrength, ...shearPathFormulas, ...seismicFormulas,
  ],
  applies: (support) => support.base !== undefined && support.foundation?.fields.hairpins !== undefined,
  inputs: (support, gather, place): HairpinInputs => {
    const base = readBase(support, gather, place);
    const because = editionBlock({ clause: "ACI 318-19 25.4" }, support.codes);
    if (because !== undefined) gather.block(because);
    const fields = support.foundation?.fields;
    const anchors = support.base?.fields.anchors?.value;
    if (gather.may(anchors?.end) === "set in adhesive") gather.block("hairpins are counted for cast-in rods alone; rods set in adhesive are drilled beside them and do not lean on them");
    const given = gather.needs(fields?.hairpins, "hairpins");
    const need = (value: NonNullable<typeof given>["leg"], what: string): number => (given ? gather.need(value, what) : Number.NaN);
    const bar = given ? gather.needs(given.bar, "size of the hairpins") : undefined;
    const d_b = bar?.diameter ?? Number.NaN;
    if (d_b > largestBar) gather.block("hairpins of more than no. 5 are beyond the tests the rule stands on (ACI 318-19 R17.5.2.1); take more and thinner ones");
    const isRound = (given && gather.may(given["around rods"])) ?? false;
    const g = isRound ? 0 : need(given?.["from rods"], "distance from a rod to the farthest leg that counts (hairpins, from rods), or that they go round the rods (hairpins, around rods)");
    const a_h = need(given?.["below top"], "depth of the hairpins below the top of the concrete (hairpins, below top)");
    const grade = findBarGrade(gather.needs(fields?.["bar grade"], "grade of the bars") ?? "");
    const cover = gather.need(fields?.cover, "clear cover of the bars");
    const c_top = coverOfHairpins.value({ a_h, d_b });
    const below = belowHairpins.value({ h: base.member.depth, a_h });
    if (c_top <= 0 || below <= 0) gather.block("the hairpins do not lie inside the concrete; give the depth of their middle below its top");
    const t_g = gather.may(support.base?.fields.grout) ?? 0;
    return {
      ...base,
      ...readHairpinSides(support, gather),
      path: readShearPath(support, gather),
      seismic: readSeismic(support, gather, "shear"),
      edition: support.codes.concrete?.value ?? "",
      h_ef: gather.need(anchors?.embedment, "anchor embedment"),
      d_b,
      A_b: bar?.area ?? Number.NaN,
      f_y: isMissing(grade) ? Number.NaN : grade.fy,
      cover,
      n_h: hairpinsCounted.value({ n: need(given?.count, "number of hairpins"), n_a: base.rods.length, is_welded: gather.may(support.base?.fields["washers welded"]) ? 1 : 0 }),
      isRound,
      g,
      leg: need(given?.leg, "length of the legs from the line of the rods (hairpins, leg)"),
      isHooked: (given && gather.may(given["leg ends"])) === "hooked",
      s: legSpacing.value({ g, d_a: base.d_a, d_b }),
      e_s: hairpinLever.value({ a_h, t_g }),
      below,
      c_top,
      psi_o: hookPlaceFactor.value({ c_c: cover, d_t: 0, d_b }),
    };
  },
  fixedBy: (support) => support.foundation?.fields.hairpins ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const shear = shearOnRods(inputs.path, demand, calc);
    if ("because" in shear) return unchecked(shear.because);
    const { Vx, Vy, twist } = shear;
    const { e_s, below: h_b, h_ef } = inputs;
    const rows = rowsOf(inputs);
    const found = strengths(inputs);
    const pullToward = (edge: EdgeName, V_u: number, on: Calc): number => on(hairpinPull, { V_u, e_s, h_b, h_ef, c_a1: rows[edge].c_a1 });
    const pushes: (readonly [EdgeName, number])[] = [];
    /** A twist pushes toward both edges of a direction. */
    const toward = (back: EdgeName, front: EdgeName, V: number, V_T: number | undefined): void => {
      if (V_T === undefined) pushes.push([V < 0 ? back : front, Math.abs(V)]);
      else pushes.push([back, calc(towardWithTwist, { V: -V, V_T })], [front, calc(towardWithTwist, { V, V_T })]);
    };
    if (inputs.takesX) toward("west", "east", Vx, twist?.x);
    if (inputs.takesY) toward("south", "north", Vy, twist?.y);
    if (pushes.length === 0) return unchecked("which shear the hairpins stand against is not known");
    let [edge, push] = pushes[0];
    let most = -1;
    for (const [at, V_u] of pushes) {
      const S_u = pullToward(at, V_u, plainCalc);
      const used = S_u > 0 ? (found[at] > 0 ? usedPart.value({ S_u, S_d: found[at] }) : Number.POSITIVE_INFINITY) : 0;
      if (used > most) [edge, push, most] = [at, V_u, used];
    }
    calc.note(`The push toward the ${edge} edge governs.`);
    const pull = pullToward(edge, push, calc);
    return weigh(pull, calc === plainCalc ? found[edge] : strengthToward(rows[edge], inputs, calc), "force");
  },
  advise: (inputs, outcome, say) =>
    outcome.capacity > 0
      ? `${say.show(outcome.demand, "force")} pull in the hairpins; they carry ${say.show(outcome.capacity, "force")} with what is developed of them. Take more or thicker hairpins, lengthen or hook their legs, or weld plate washers to the plate so that every rod bears on its own.`
      : inputs.isRound
        ? `${say.show(outcome.demand, "force")} pull in the hairpins; their legs are too short behind the rods to carry anything. Lengthen them.`
        : `${say.show(outcome.demand, "force")} pull in the hairpins; legs ${say.show(inputs.g, "length")} from the rods are out of their reach, or too short before or behind the breakout surface. Let them go round the rods (hairpins, around rods), or set the rods farther from the edge.`,
}));
