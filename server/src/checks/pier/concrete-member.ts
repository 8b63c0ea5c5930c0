/**
 * The reinforced concrete that stands under a column: a pier in soil, or the pedestal of a footing. What is read here is shared by every check of its
 * section, which is declared once and holds for both.
 */
import { findBarGrade, steelModulus } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { ColumnSection } from "../../mechanics/column-section.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Support } from "../../project/model.js";
import { barPlaces } from "../anchors/pier-bars.js";
import type { Gather, Link } from "../contract.js";
import { pedestalAreaOf, readFooting, roundPedestal, squaredPedestal } from "../footing/body.js";
import { areaOf, isPier, readPier, roundArea, squareArea, type PierBody } from "./body.js";
import type { FootingBody } from "../footing/body.js";

/** Which of the two a check is declared for. */
export interface ConcreteMember {
  readonly word: "pier" | "pedestal";
  readonly link: Link;
  readonly id: (name: string) => string;
  readonly is: (support: Support) => boolean;
}

export const pierMember: ConcreteMember = { word: "pier", link: "pier", id: (name) => `pier.${name}`, is: isPier };

export const pedestalMember: ConcreteMember = {
  word: "pedestal",
  link: "footing",
  id: (name) => `footing.pedestal-${name}`,
  is: ({ foundation }) => foundation?.fields.kind?.value === "footing" && foundation.fields.pedestal !== undefined,
};

/** The editions of the concrete standard these checks are right by. */
export const concreteEditions: readonly string[] = ["ACI 318-19", "ACI 318-14"];

/** Of the member and with vertical bars given. */
export const withBars = (member: ConcreteMember) => (support: Support): boolean => member.is(support) && support.foundation?.fields.bars !== undefined;

/** Bars round the vertical ones. */
export interface Transverse {
  readonly kind: "spiral" | "ties";
  readonly name: string;
  readonly diameter: number;
  readonly area: number;
  /** Pitch or spacing, m. */
  readonly spacing: number;
  /** Inner ties hold the bars between the corners. */
  readonly inner: boolean;
}

/** The body of the member: sizes above and below grade. */
export type MemberBody = { readonly of: "pier"; readonly pier: PierBody } | { readonly of: "pedestal"; readonly footing: FootingBody };

export interface MemberShape {
  readonly body: MemberBody;
  readonly shape: "round" | "rectangle";
  /** Diameter, or sides along x and y; m. */
  readonly width: number;
  readonly length: number;
  readonly fprime_c: number;
  readonly edition: string;
}

export interface MemberInputs extends MemberShape {
  readonly f_y: number;
  readonly bar: { readonly name: string; readonly diameter: number; readonly area: number };
  readonly count: number;
  readonly places: readonly Point[];
  /** Clear cover of the ties or spiral, m. */
  readonly cover: number;
  /** Least distance of two neighboring bars, m. */
  readonly barSpacing: number;
  readonly transverse: Transverse;
}

/** Sizes and concrete of the member, with or without bars. */
export function readShape(member: ConcreteMember, support: Support, gather: Gather): MemberShape {
  const fields = support.foundation?.fields;
  const shared = {
    fprime_c: gather.need(fields?.concrete, "concrete strength"),
    edition: gather.needs(support.codes.concrete, "edition of the concrete standard") ?? "",
  };
  if (member.word === "pier") {
    const pier = readPier(support, gather);
    return { body: { of: "pier", pier }, shape: pier.shape === "round" ? "round" : "rectangle", width: pier.size, length: pier.size, ...shared };
  }
  const footing = readFooting(support, gather);
  const { shape, width, length } = footing.pedestal;
  return { body: { of: "pedestal", footing }, shape: shape === "round" ? "round" : "rectangle", width, length, ...shared };
}

const nothing = { name: "", diameter: Number.NaN, area: Number.NaN };

function readTransverse(support: Support, isRound: boolean, gather: Gather): Transverse {
  const fields = support.foundation?.fields;
  if (fields?.ties && fields.spiral) gather.block("both ties and a spiral are given round the vertical bars: keep the one there is");
  if (fields?.spiral && !fields.ties) {
    const bar = gather.needs(fields.spiral.value.bar, "size of the spiral") ?? nothing;
    const spacing = gather.need(fields.spiral.value.pitch, "pitch of the spiral");
    // A spiral round a rectangle of bars holds it no better than ties.
    return { kind: isRound ? "spiral" : "ties", name: bar.name, diameter: bar.diameter, area: bar.area, spacing, inner: false };
  }
  const ties = gather.needs(fields?.ties, "ties or spiral round the vertical bars");
  const bar = (ties && gather.needs(ties.bar, "size of the ties")) ?? nothing;
  return { kind: "ties", name: bar.name, diameter: bar.diameter, area: bar.area, spacing: ties ? gather.need(ties.spacing, "spacing of the ties") : Number.NaN, inner: gather.may(ties?.inner) ?? false };
}

export function readMember(member: ConcreteMember, support: Support, gather: Gather): MemberInputs {
  const shape = readShape(member, support, gather);
  const grade = findBarGrade(gather.needs(support.foundation?.fields["bar grade"], "grade of the bars") ?? "");
  const transverse = readTransverse(support, shape.shape === "round", gather);
  const bars = barPlaces(support, gather);
  return {
    ...shape,
    f_y: isMissing(grade) ? Number.NaN : grade.fy,
    bar: bars?.bar ?? nothing,
    count: bars?.places.length ?? Number.NaN,
    places: bars?.places ?? [],
    cover: bars?.cover ?? Number.NaN,
    barSpacing: bars?.spacing ?? Number.NaN,
    transverse,
  };
}

/** Area of the member in plan, m². */
export const memberArea = ({ body }: MemberShape, calc: Calc): number => (body.of === "pier" ? areaOf(body.pier, calc) : pedestalAreaOf(body.footing, calc));

export const areaFormulas = [roundArea, squareArea, roundPedestal, squaredPedestal] as const;

const area = { kind: "planArea", meaning: "area of the section" } as const;
const steel = { kind: "area", meaning: "area of the vertical bars" } as const;

export const verticalBars = formula({
  id: "pier.vertical-bars",
  text: "A_st = n * A_b",
  source: "arithmetic",
  symbols: { A_st: steel, n: { kind: "number", meaning: "vertical bars", field: "foundations.*.bars" }, A_b: { kind: "area", meaning: "area of one bar", field: "foundations.*.bars" } },
});

/** Below one in a hundred, as much of the concrete is left out as makes it one in a hundred. */
export const countedShare = formula({
  id: "pier.counted-share",
  text: "k_A = min(1, A_st / (rho_1 * A_g))",
  source: "ACI 318-19 10.3.1.2, 10.6.1.1: strength on a reduced area of which the bars are 1 %",
  symbols: { k_A: { kind: "ratio", meaning: "share of the concrete that is counted" }, A_st: steel, A_g: area },
  constants: { rho_1: "0.01" },
});

export const memberFormulas = [...areaFormulas, verticalBars, countedShare] as const;

/** The section for its strength: all bars, and the share of the concrete they allow. */
export function sectionOf(inputs: MemberInputs, calc: Calc): ColumnSection {
  const A_g = memberArea(inputs, calc);
  const A_st = calc(verticalBars, { n: inputs.count, A_b: inputs.bar.area });
  const share = calc(countedShare, { A_st, A_g });
  if (share < 1) calc.note("The bars are less than 1 % of the section: each strip of its concrete is narrowed until they are, and the strength is that of the section left.");
  return { shape: inputs.shape, width: inputs.width, length: inputs.length, bars: inputs.places, barArea: inputs.bar.area, fprime_c: inputs.fprime_c, f_y: inputs.f_y, E_s: steelModulus.value, share };
}
