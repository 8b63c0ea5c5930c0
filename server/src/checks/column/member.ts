/** The column as its checks read it: section, steel, length, and what holds it in each plan direction. */
import { steelOfSection } from "../../catalog/column-steels.js";
import { isMissing } from "../../catalog/lookup.js";
import { isAlike, type ColumnSection, type DeepSide } from "../../catalog/sections.js";
import type { Column } from "../../project/model.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { effectiveLengthFactors } from "./effective-length.js";

/** Bending about one axis of the section; SI. */
export interface AxisInputs {
  readonly I: number;
  readonly S: number;
  readonly Z: number;
  readonly r: number;
}

/** SI. */
export interface SectionInputs {
  readonly section: string;
  readonly shape: ColumnSection["shape"];
  /** Outside size across the strong axis, m: long side, diameter, depth. */
  readonly H: number;
  /** Outside size across the weak axis, m. */
  readonly B: number;
  /** Design wall, or web, m. */
  readonly t: number;
  /** Flange and fillet of a W, m; elsewhere the wall and 0. */
  readonly t_f: number;
  readonly fillet: number;
  readonly A: number;
  readonly J: number;
  readonly strong: AxisInputs;
  readonly weak: AxisInputs;
  /** Which plan axis the depth lies along. */
  readonly deep: DeepSide;
  readonly F_y: number;
  readonly F_u: number;
}

export interface ColumnInputs extends SectionInputs {
  readonly L: number;
  /** Effective length factors for sway along x and along y. */
  readonly K_x: number;
  readonly K_y: number;
}

const axisOf = (axis: ColumnSection["strong"] | undefined): AxisInputs => ({
  I: axis?.inertia ?? Number.NaN,
  S: axis?.sectionModulus ?? Number.NaN,
  Z: axis?.plasticModulus ?? Number.NaN,
  r: axis?.gyration ?? Number.NaN,
});

/** Which way a section stands that is not alike both ways; of others it does not matter. */
export function deepSideOf(fields: Column | undefined, section: ColumnSection | undefined, gather: Gather): DeepSide {
  if (!section || isAlike(section)) return "along x";
  return gather.needs(fields?.["deep side"], `which way the ${section.name} stands (deep side: along x or along y)`) ?? "along x";
}

/** Reads the section of a support's column and its steel. */
export function readSection(support: Support, gather: Gather): SectionInputs {
  const fields = support.column?.fields;
  const section = gather.needs(fields?.section, "column section");
  const grade = gather.needs(fields?.grade, "column steel grade");
  const steel = grade === undefined || section === undefined ? undefined : steelOfSection(grade, section.make);
  if (steel && isMissing(steel)) gather.block(steel.problem);
  const strength = steel && !isMissing(steel) ? steel : undefined;
  return {
    section: section?.name ?? "",
    shape: section?.shape ?? "square",
    H: section?.depth ?? Number.NaN,
    B: section?.width ?? Number.NaN,
    t: section?.wall ?? Number.NaN,
    t_f: section?.flange ?? Number.NaN,
    fillet: section?.fillet ?? Number.NaN,
    A: section?.area ?? Number.NaN,
    J: section?.torsion ?? Number.NaN,
    strong: axisOf(section?.strong),
    weak: axisOf(section?.weak),
    deep: deepSideOf(fields, section, gather),
    F_y: strength?.fy ?? Number.NaN,
    F_u: strength?.fu ?? Number.NaN,
  };
}

/** Reads the column of a support. */
export function readColumn(support: Support, gather: Gather): ColumnInputs {
  const fields = support.column?.fields;
  const section = readSection(support, gather);
  const L = gather.need(fields?.height, "column height");
  const K = effectiveLengthFactors(fields, gather, support.roofTilts);
  return { ...section, L, K_x: K.x, K_y: K.y };
}

/** What bends about each plan axis. */
export const axesOf = ({ strong, weak, deep }: Pick<SectionInputs, "strong" | "weak" | "deep">): { readonly aboutX: AxisInputs; readonly aboutY: AxisInputs } =>
  deep === "along x" ? { aboutX: weak, aboutY: strong } : { aboutX: strong, aboutY: weak };
