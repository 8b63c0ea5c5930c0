/**
 * The grade beam that ties one foundation to the next in an earthquake: what is stated of it, for every check of it. It is declared once and holds for
 * piers and for footings.
 */
import { isMissing } from "../../catalog/lookup.js";
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Sourced, Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { isPier } from "../pier/body.js";
import { isTiedByBeams } from "../site/ties.js";
import { isFooting } from "./body.js";

/** What the beam ties, for which its checks are declared. */
export interface TiedFoundation {
  readonly word: "pier" | "footing";
  readonly id: (name: string) => string;
  readonly is: (support: Support) => boolean;
}

export const tiedPier: TiedFoundation = { word: "pier", id: (name) => `pier.grade-beam-${name}`, is: (support) => isPier(support) && isTiedByBeams(support) };
export const tiedFooting: TiedFoundation = { word: "footing", id: (name) => `footing.grade-beam-${name}`, is: (support) => isFooting(support) && isTiedByBeams(support) };

export interface BeamInputs {
  readonly width: number;
  readonly depth: number;
  readonly bar: { readonly name: string; readonly diameter: number; readonly area: number };
  readonly count: number;
}

export interface BeamConcrete {
  readonly fprime_c: number;
  readonly f_y: number;
  readonly edition: string;
  readonly cover: number;
}

type Beam = NonNullable<NonNullable<Support["foundation"]>["fields"]["grade beam"]>["value"];

const stated = (support: Support): Sourced<Beam> | undefined => support.foundation?.fields["grade beam"];

/** The beam itself; its absence is named as one thing. */
export const needBeam = (support: Support, gather: Gather): Beam | undefined => gather.needs(stated(support), "grade beam between the foundations (`grade beam`)");

const noBar = { name: "", diameter: Number.NaN, area: Number.NaN };
const noBeam: BeamInputs = { width: Number.NaN, depth: Number.NaN, bar: noBar, count: Number.NaN };

export function readBeam(support: Support, gather: Gather): BeamInputs {
  const beam = needBeam(support, gather);
  if (!beam) return noBeam;
  const bars = gather.needs(beam.bars, "bars of the grade beam");
  return {
    width: gather.need(beam.width, "width of the grade beam"),
    depth: gather.need(beam.depth, "depth of the grade beam"),
    bar: (bars && gather.needs(bars.bar, "size of the bars of the grade beam")) ?? noBar,
    count: bars ? gather.need(bars.count, "number of the bars of the grade beam") : Number.NaN,
  };
}

export function readBeamConcrete(support: Support, gather: Gather): BeamConcrete {
  const fields = support.foundation?.fields;
  const grade = findBarGrade(gather.needs(fields?.["bar grade"], "grade of the bars") ?? "");
  return {
    fprime_c: gather.need(fields?.concrete, "concrete strength"),
    f_y: isMissing(grade) ? Number.NaN : grade.fy,
    edition: gather.needs(support.codes.concrete, "edition of the concrete standard") ?? "",
    cover: gather.need(fields?.cover, "clear cover"),
  };
}

/** The field of the beam a finding stands at; the beam, or the foundation, where that is not stated. */
export const beamField =
  (field?: keyof Beam) =>
  (support: Support): Sourced<unknown> | Support["foundation"] => {
    const beam = stated(support);
    return (field && beam?.value[field]) ?? beam ?? support.foundation?.fields["tied by"] ?? support.foundation;
  };

export const beamArea = formula({
  id: "footing.grade-beam-area",
  text: "A_g = b_g * h_g",
  source: "geometry",
  symbols: {
    A_g: { kind: "planArea", meaning: "area of the section of the grade beam" },
    b_g: { kind: "length", meaning: "width of the grade beam", field: "foundations.*.grade beam.width" },
    h_g: { kind: "length", meaning: "depth of the grade beam", field: "foundations.*.grade beam.depth" },
  },
});

export const beamSide = formula({
  id: "footing.grade-beam-least-side",
  text: "h_l = min(b_g, h_g)",
  source: "geometry",
  symbols: {
    h_l: { kind: "length", meaning: "least side of the grade beam" },
    b_g: { kind: "length", meaning: "width of the grade beam", field: "foundations.*.grade beam.width" },
    h_g: { kind: "length", meaning: "depth of the grade beam", field: "foundations.*.grade beam.depth" },
  },
});
