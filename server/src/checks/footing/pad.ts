/** The concrete and the bars of a pad, and where its column ends, read once for every check of its strength. */
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import { halfOf } from "../base/member.js";
import type { Gather } from "../contract.js";
import { farFace } from "./sections.js";
import { type FootingBody, readFooting } from "./body.js";

/** Bars of one direction. */
export interface Mat {
  readonly name: string;
  readonly diameter: number;
  /** Center to center, m. */
  readonly spacing: number;
  /** Of all the bars of the direction, m². */
  readonly area: number;
}

export interface BothWays {
  /** Bars along x, which lie across the length of the pad. */
  readonly x: Mat;
  readonly y: Mat;
  /** Mean effective depth of the two layers, m. */
  readonly d: number;
}

export interface PadInputs extends FootingBody {
  readonly edition: string;
  readonly fprime_c: number;
  readonly f_y: number;
  readonly cover: number;
  /** Distance from the middle to the section in bending, along x and y, m. */
  readonly face: { readonly x: number; readonly y: number };
  readonly bottom: BothWays;
  readonly top: BothWays | undefined;
}

const barArea = { kind: "area", meaning: "area of one bar" } as const;
const matArea = { kind: "area", meaning: "area of the bars of the direction" } as const;
const across = { kind: "length", meaning: "side of the pad across the bars" } as const;
const cover = { kind: "length", meaning: "clear cover", field: "foundations.*.cover" } as const;
const diameter = { kind: "length", meaning: "bar diameter" } as const;
const spacing = { kind: "length", meaning: "spacing of the bars" } as const;
const count = { kind: "number", meaning: "bars of the direction" } as const;

export const areaByCount = formula({
  id: "footing.bars-by-count",
  text: "A_s = n * A_b",
  source: "arithmetic",
  symbols: { A_s: matArea, n: count, A_b: barArea },
});

export const areaBySpacing = formula({
  id: "footing.bars-by-spacing",
  text: "A_s = A_b * b / s",
  source: "arithmetic",
  symbols: { A_s: matArea, A_b: barArea, b: across, s: spacing },
});

export const spacingByCount = formula({
  id: "footing.spacing-by-count",
  text: "s = (b - 2 * c_c - d_b) / (n - 1)",
  source: "geometry: evenly spaced between the side covers",
  symbols: { s: spacing, b: across, c_c: cover, d_b: diameter, n: { ...count, range: [2, 40] } },
});

export const meanDepth = formula({
  id: "footing.effective-depth",
  text: "d = t - c_c - (d_bx + d_by) / 2",
  source: "common practice: mean of the two layers",
  symbols: {
    d: { kind: "length", meaning: "effective depth, mean of the two layers" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    c_c: cover,
    d_bx: { kind: "length", meaning: "diameter of the bars along x" },
    d_by: { kind: "length", meaning: "diameter of the bars along y" },
  },
});

export const equalSquare = formula({
  id: "footing.equal-square",
  text: "c = D_p * sqrt(pi) / 2",
  source: "ACI 318-19 13.2.7.3: a round pedestal counts as the square of equal area",
  symbols: { c: { kind: "length", meaning: "side of the square of equal area" }, D_p: { kind: "length", meaning: "diameter of the pedestal", field: "foundations.*.pedestal.diameter" } },
});

export const halfwayPlate = formula({
  id: "footing.halfway-plate",
  text: "c = (b_p + b_c) / 2",
  source: "ACI 318-19 Table 13.2.7.1: halfway between the face of the steel column and the edge of its plate (from memory)",
  symbols: { c: { kind: "length", meaning: "size of the column that the section is taken at" }, b_p: { kind: "length", meaning: "side of the base plate", field: "bases.*.plate.width" }, b_c: { kind: "length", meaning: "smaller width of the column", field: "columns.*.section" } },
});

type MatFields = NonNullable<NonNullable<NonNullable<Support["foundation"]>["fields"]["bottom bars"]>["value"]["along x"]>;

const noMat: Mat = { name: "", diameter: Number.NaN, spacing: Number.NaN, area: Number.NaN };

function readMat(stated: MatFields | undefined, b: number, c_c: number, where: string, gather: Gather): Mat {
  const fields = gather.needs(stated, where);
  if (!fields) return noMat;
  const bar = gather.needs(fields.bar, `size of the ${where}`);
  if (!bar) return noMat;
  const n = gather.may(fields.count);
  if (n !== undefined && fields.spacing) gather.block(`the ${where} have both a number and a spacing; give one of them`);
  if (n !== undefined) {
    const room = spacingByCount.value({ b, c_c, d_b: bar.diameter, n });
    if (room <= bar.diameter) gather.block(`${n} ${bar.name} do not fit across the pad`);
    return { name: bar.name, diameter: bar.diameter, spacing: room, area: areaByCount.value({ n, A_b: bar.area }) };
  }
  const s = gather.need(fields.spacing, `spacing or number of the ${where}`);
  return { name: bar.name, diameter: bar.diameter, spacing: s, area: areaBySpacing.value({ A_b: bar.area, b, s }) };
}

/** Sides of the square or rectangle the critical sections are taken round: the pedestal, or halfway out on the base plate. */
export function columnSides(support: Support, body: FootingBody, gather: Gather): { readonly x: number; readonly y: number } {
  const { pedestal } = body;
  if (pedestal.shape === "rectangle") return { x: pedestal.width, y: pedestal.length };
  if (pedestal.shape === "round") {
    const c = equalSquare.value({ D_p: pedestal.width });
    return { x: c, y: c };
  }
  const plate = gather.needs(support.base?.fields.plate, "pedestal, or the base plate that stands on the pad");
  const section = plate && gather.needs(support.column?.fields.section, "section of the column on the base plate");
  if (!plate || !section) return { x: Number.NaN, y: Number.NaN };
  const b_c = section.width;
  return {
    x: halfwayPlate.value({ b_p: gather.need(plate.width, "width of the base plate"), b_c }),
    y: halfwayPlate.value({ b_p: gather.need(plate.length, "length of the base plate"), b_c }),
  };
}

function bothWays(stated: NonNullable<Support["foundation"]>["fields"]["bottom bars"], body: FootingBody, c_c: number, which: string, gather: Gather): BothWays {
  const fields = gather.needs(stated, `${which} bars of the pad`);
  if (!fields) return { x: noMat, y: noMat, d: Number.NaN };
  const x = readMat(fields["along x"], body.length, c_c, `${which} bars along x`, gather);
  const y = readMat(fields["along y"], body.width, c_c, `${which} bars along y`, gather);
  const d = meanDepth.value({ t: body.thickness, c_c, d_bx: x.diameter, d_by: y.diameter });
  if (d <= 0) gather.block(`the ${which} bars with their cover do not fit into the thickness of the pad`);
  return { x, y, d };
}

export function readPad(support: Support, gather: Gather): PadInputs {
  const body = readFooting(support, gather);
  return readConcrete(support, gather, body, columnSides(support, body, gather));
}

/** Concrete and bars of a pad of that body, under a column of those sides. */
export function readConcrete(support: Support, gather: Gather, body: FootingBody, sides: { readonly x: number; readonly y: number }): PadInputs {
  const f = support.foundation?.fields;
  const c_c = gather.need(f?.cover, "clear cover of the bars");
  const grade = findBarGrade(gather.needs(f?.["bar grade"], "grade of the bars") ?? "60");
  const isOff = (e: number, side: number, b: number): boolean => e !== 0 && farFace.value({ e, x_f: halfOf.value({ b: side }) }) > halfOf.value({ b });
  if (isOff(body.offset.x, sides.x, body.width) || isOff(body.offset.y, sides.y, body.length)) gather.block("the column stands so far off the middle that it leaves the pad: widen the pad or set the column nearer to its middle");
  else if (sides.x > body.width || sides.y > body.length) gather.block("the pad is narrower than what stands on it: widen the pad");
  return {
    ...body,
    edition: gather.needs(support.codes.concrete, "edition of the concrete standard") ?? "",
    fprime_c: gather.need(f?.concrete, "concrete strength"),
    f_y: "fy" in grade ? grade.fy : Number.NaN,
    cover: c_c,
    face: { x: halfOf.value({ b: sides.x }), y: halfOf.value({ b: sides.y }) },
    bottom: bothWays(f?.["bottom bars"], body, c_c, "bottom", gather),
    top: f?.["top bars"] ? bothWays(f["top bars"], body, c_c, "top", gather) : undefined,
  };
}

/** The editions by which the strength of a footing is right. */
export const padEditions: readonly string[] = ["ACI 318-19", "ACI 318-14"];
