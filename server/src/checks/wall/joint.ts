/** The bars that cross the joint between a wall and its footing, read once for every check of it. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { faceNames, type FaceName, placeOf, readStem, type StemInputs, type Vertical } from "./stem.js";
import { barredOf, type Barred, type StemSection } from "./stem-forces.js";
import type { Height } from "./stem-heights.js";
import { prepared } from "./stem-worst.js";

export type Surface = "not roughened" | "roughened 1/4 in" | "cast in one";

/** Bars of one face across the joint. */
export interface Dowels {
  readonly name: FaceName;
  readonly vertical: readonly Vertical[];
}

export interface JointInputs extends StemInputs {
  readonly dowels: readonly Dowels[];
  /** The bars of the wall themselves go on into the footing. */
  readonly isOne: boolean;
  /** Lengths above and below the joint, m. */
  readonly intoWall: number;
  readonly intoFooting: number;
  readonly isHooked: boolean;
  /** Cover of the bars of the footing, m. */
  readonly footingCover: number;
  readonly surface: Surface;
}

export const depthOfFooting = formula({
  id: "wall.dowel-room",
  text: "l_r = t_f - c_c",
  source: "geometry",
  symbols: { l_r: { kind: "length", meaning: "room for the dowels in the footing, down to its cover" }, t_f: { kind: "length", meaning: "thickness of the strip footing", field: "foundations.*.footing.thickness" }, c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover" } },
});

type DowelFields = NonNullable<NonNullable<Support["foundation"]>["fields"]["joint dowels"]>["value"];

function readFaces(stated: DowelFields, stem: StemInputs, gather: Gather): readonly Dowels[] {
  return faceNames.flatMap((name) => {
    const fields = gather.may(stated[name]);
    const bar = fields && gather.needs(fields.bar, `size of the dowels into the wall (${name})`);
    if (!fields || !bar) return [];
    const outer = stem.faces.find((face) => face.name === name)?.outer ?? Math.max(0, ...stem.faces.map((face) => face.outer));
    const from = placeOf(name, stem.thickness, stem.cover, outer, bar.diameter);
    if (!(from > 0 && from < stem.thickness)) gather.block("the dowels with their cover do not fit into the wall");
    return [{ name, vertical: [{ name: bar.name, diameter: bar.diameter, area: bar.area, spacing: gather.need(fields.spacing, `spacing of the dowels into the wall (${name})`), from, end: 0, isHooked: false }] }];
  });
}

export function readJoint(support: Support, gather: Gather, place: number): JointInputs {
  const f = support.foundation?.fields;
  const stem = readStem(support, gather, place);
  const stated = gather.needs(f?.["joint dowels"], "bars that tie the wall to its footing (`joint dowels`)");
  const isOne = stated ? (gather.may(stated["stem bars go on"]) ?? false) : false;
  const dowels = stated ? (isOne ? stem.faces : readFaces(stated, stem, gather)) : [];
  if (stated && isOne && faceNames.some((name) => stated[name])) gather.block("the stem bars go on into the footing and dowels are given besides: leave out one of them");
  if (stated && !isOne && dowels.length === 0) gather.block("the joint has no dowels that are known (joint dowels: fill face, free face or middle; or `stem bars go on`)");
  const footingCover = gather.need(f?.cover, "clear cover of the footing's bars");
  const intoFooting = stated ? gather.need(stated["into footing"], "length of the dowels below the joint (`into footing`)") : Number.NaN;
  if (isAbove(intoFooting, depthOfFooting.value({ t_f: stem.base, c_c: footingCover }))) gather.block("the dowels reach deeper than the footing has room for below the joint: shorten them or thicken the footing");
  const intoWall = !stated || isOne ? stem.height : gather.need(stated["into wall"], "length of the dowels above the joint (`into wall`)");
  if (isAbove(intoWall, stem.height)) gather.block("the dowels reach out of the wall: shorten them");
  return {
    ...stem,
    dowels,
    isOne,
    intoWall,
    intoFooting,
    isHooked: stated ? (gather.may(stated.hooked) ?? false) : false,
    footingCover,
    surface: (stated ? gather.may(stated.surface) : undefined) ?? "not roughened",
  };
}

/** The section at the joint alone. */
const joint: readonly Height[] = [{ y: 0, words: "at the joint to the footing", isDeveloped: true }];

/** The dowels in the section at the joint, developed on both sides. */
export const dowelsIn = (inputs: JointInputs, _section: StemSection, calc: Calc): Barred => barredOf(inputs, inputs.dowels, () => inputs.f_y, calc);

export const atJoint = prepared((_: JointInputs) => joint, dowelsIn);

export const allDowels = ({ dowels }: JointInputs): readonly Vertical[] => dowels.flatMap(({ vertical }) => vertical);

export const jointField = (support: Support) => support.foundation?.fields["joint dowels"] ?? support.foundation;

