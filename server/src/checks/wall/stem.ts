/** The concrete and the bars of a wall above its footing, read once for every check of it. */
import { isMissing } from "../../catalog/lookup.js";
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { developmentFormulas, hooked, straight } from "../footing/bar-development.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { readSpread, type Spread } from "./spread.js";
import { readStability, type StabilityInputs } from "./safety.js";

export type FaceName = "fill face" | "free face" | "middle";

/** Vertical bars of one kind at one face. */
export interface Vertical {
  readonly name: string;
  readonly diameter: number;
  /** Of one bar, m². */
  readonly area: number;
  readonly spacing: number;
  /** From the fill face to the middle of the bars, m. */
  readonly from: number;
  /** Depth of their upper end below the top of the wall, m. */
  readonly end: number;
  /** End in a standard hook at the top. */
  readonly isHooked: boolean;
}

export interface Horizontal {
  readonly name: string;
  readonly diameter: number;
  readonly area: number;
  readonly spacing: number;
}

export interface Face {
  readonly name: FaceName;
  readonly vertical: readonly Vertical[];
  readonly horizontal: Horizontal | undefined;
  /** Diameter of the bars that lie nearer to the face than the vertical ones, m. */
  readonly outer: number;
}

export interface StemInputs extends StabilityInputs {
  readonly edition: string;
  readonly fprime_c: number;
  readonly f_y: number;
  /** Clear cover of the outer bars, m. */
  readonly cover: number;
  readonly faces: readonly Face[];
  readonly spread: Spread | undefined;
  /** Depth of the rods' ends below the top of the wall, m; undefined where no rods are known. */
  readonly rods: number | undefined;
}

const thickness = { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" } as const;
const cover = { kind: "length", meaning: "clear cover of the outer bars of the wall", field: "foundations.*.stem cover" } as const;
const diameter = { kind: "length", meaning: "bar diameter" } as const;

export const barFromFace = formula({
  id: "wall.bar-from-face",
  text: "x_b = c_c + d_h + d_b / 2",
  source: "geometry: d_h of the horizontal bars where they are the outer ones",
  symbols: { x_b: { kind: "length", meaning: "from the face to the middle of the vertical bars" }, c_c: cover, d_h: { kind: "length", meaning: "diameter of the bars that lie nearer to the face" }, d_b: diameter },
});

export const fromOtherFace = formula({
  id: "wall.bar-from-other-face",
  text: "x_o = t_w - x_b",
  source: "geometry",
  symbols: { x_o: { kind: "length", meaning: "from the other face to the middle of the bars" }, t_w: thickness, x_b: { kind: "length", meaning: "from the face to the middle of the vertical bars" } },
});

export const middleOf = formula({
  id: "wall.middle",
  text: "x_b = t_w / 2",
  source: "geometry",
  symbols: { x_b: { kind: "length", meaning: "from the face to the middle of the vertical bars" }, t_w: thickness },
});

export const depthOfEnd = formula({
  id: "wall.depth-of-bar-end",
  text: "z_b = h - h_b",
  source: "geometry",
  symbols: { z_b: { kind: "distance", meaning: "depth of the bars' end below the top of the wall" }, h: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" }, h_b: { kind: "distance", meaning: "height above the footing at which the bars end", field: "foundations.*.stem bars.*.lower vertical.reach" } },
});

export const lengthAbove = formula({
  id: "wall.bar-length-above",
  text: "l_a = z - z_b",
  source: "geometry",
  symbols: { l_a: { kind: "length", meaning: "length of the bars above the section", range: [-3, 3] }, z: { kind: "distance", meaning: "depth of the section below the top of the wall" }, z_b: { kind: "distance", meaning: "depth of the bars' end below the top of the wall" } },
});

export const developedStress = formula({
  id: "wall.developed-stress",
  text: "f_s = f_y * min(max(l_a, 0 * l_d) / l_d, 1)",
  source: "ACI 318-19 25.4.10.1: a bar shorter than its development length takes up that part of its yield strength",
  symbols: { f_s: { kind: "steelStress", meaning: "stress the bars can take up at the section" }, f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" }, l_a: { kind: "length", meaning: "length of the bars above the section", range: [-3, 3] }, l_d: { kind: "length", meaning: "development length of a straight bar in tension" } },
});

export const areaPerLength = formula({
  id: "wall.bars-per-length",
  text: "a_s = A_b / s",
  source: "arithmetic",
  symbols: { a_s: { kind: "length", meaning: "area of the bars per length of wall" }, A_b: { kind: "area", meaning: "area of one bar" }, s: { kind: "length", meaning: "spacing of the bars" } },
});

export const stemFormulas = [rootStrength, ...developmentFormulas, barFromFace, fromOtherFace, middleOf, depthOfEnd, lengthAbove, developedStress, areaPerLength] as const;

type StemFields = NonNullable<NonNullable<Support["foundation"]>["fields"]["stem bars"]>["value"];

export const faceNames: readonly FaceName[] = ["fill face", "free face", "middle"];
/** Place of the vertical bars of a face, from the fill face. */
export function placeOf(name: FaceName, t_w: number, c_c: number, d_h: number, d_b: number): number {
  if (name === "middle") return middleOf.value({ t_w });
  const x_b = barFromFace.value({ c_c, d_h, d_b });
  return name === "fill face" ? x_b : fromOtherFace.value({ t_w, x_b });
}

function readFace(stem: StemFields, name: FaceName, body: StabilityInputs, c_c: number, isHooked: boolean, gather: Gather): Face | undefined {
  const fields = gather.may(stem[name]);
  if (!fields) return undefined;
  const flat = gather.may(fields.horizontal);
  const flatBar = flat && gather.needs(flat.bar, `size of the horizontal bars (${name})`);
  const horizontal = flat && flatBar ? { name: flatBar.name, diameter: flatBar.diameter, area: flatBar.area, spacing: gather.need(flat.spacing, `spacing of the horizontal bars (${name})`) } : undefined;
  const isOuter = gather.may(stem["outer bars"]) !== "vertical";
  const d_h = name === "middle" || !isOuter ? 0 : (horizontal?.diameter ?? gather.need(undefined, `horizontal bars of the wall (${name}), or that its vertical bars are the \`outer bars\``));
  const vertical: Vertical[] = [];
  const upright = gather.may(fields.vertical);
  const bar = upright && gather.needs(upright.bar, `size of the vertical bars (${name})`);
  const add = (found: NonNullable<typeof bar>, spacing: number, end: number, hook: boolean): void => {
    vertical.push({ name: found.name, diameter: found.diameter, area: found.area, spacing, end, isHooked: hook, from: placeOf(name, body.thickness, c_c, d_h, found.diameter) });
  };
  if (upright && bar) add(bar, gather.need(upright.spacing, `spacing of the vertical bars (${name})`), c_c, isHooked);
  const lower = gather.may(fields["lower vertical"]);
  const short = lower && gather.needs(lower.bar, `size of the lower vertical bars (${name})`);
  if (lower && short) {
    const h_b = gather.need(lower.reach, `height the lower vertical bars reach (${name})`);
    const end = depthOfEnd.value({ h: body.height, h_b });
    if (isBelow(end, c_c)) gather.block(`the lower vertical bars (${name}) reach out of the wall: correct their height`);
    add(short, gather.need(lower.spacing, `spacing of the lower vertical bars (${name})`), end, false);
  }
  for (const one of vertical)
    if (!(one.from > 0 && one.from < body.thickness)) gather.block("the vertical bars with their cover do not fit into the wall");
  return { name, vertical, horizontal, outer: d_h };
}

export function readStem(support: Support, gather: Gather, place: number): StemInputs {
  const f = support.foundation?.fields;
  const body = readStability(support, gather, place);
  const stem = gather.needs(f?.["stem bars"], "bars of the wall (`stem bars`)");
  const c_c = gather.need(f?.["stem cover"], "clear cover of the wall's bars");
  const grade = findBarGrade(gather.needs(f?.["bar grade"], "grade of the bars") ?? "60");
  const isHooked = gather.may(f?.["bar tops"]) === "hooked";
  const faces = stem ? faceNames.flatMap((name) => readFace(stem, name, body, c_c, isHooked, gather) ?? []) : [];
  if (stem && faces.every(({ vertical }) => vertical.length === 0)) gather.block("the wall has no vertical bars that are known (stem bars: fill face, free face or middle, vertical)");
  const anchors = support.base?.fields.anchors;
  return {
    ...body,
    edition: gather.needs(support.codes.concrete, "edition of the concrete standard") ?? "",
    fprime_c: gather.need(f?.concrete, "concrete strength"),
    f_y: isMissing(grade) ? Number.NaN : grade.fy,
    cover: c_c,
    faces,
    spread: readSpread(support, gather, place),
    rods: anchors ? gather.need(anchors.value.embedment, "anchor embedment") : undefined,
  };
}

/** Length over which a bar takes up its yield strength as a straight bar, m. */
export const straightNeed = ({ fprime_c, f_y, cover: c, edition }: StemInputs, bar: Vertical, calc: Calc): number => straight(bar, c, f_y, calc(rootStrength, { fprime_c }), false, edition, calc);

/** Stress a bar can take up at the depth `z`, Pa: by its straight length above, or all of it where a hook has its length. */
export function stressAt(inputs: StemInputs, bar: Vertical, z: number, calc: Calc): number {
  const { f_y, fprime_c, edition } = inputs;
  const l_a = calc(lengthAbove, { z, z_b: bar.end });
  if (bar.isHooked && !isBelow(l_a, hooked(bar, f_y, fprime_c, calc(rootStrength, { fprime_c }), edition, calc))) return f_y;
  return calc(developedStress, { f_y, l_a, l_d: straightNeed(inputs, bar, calc) });
}
