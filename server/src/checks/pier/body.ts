/** Size and weight of a pier cast in soil: round by its diameter, square by its side, straight from top to bottom or with a bell at its foot. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { type Bell, readBell } from "./bell.js";

export interface PierBody {
  readonly shape: "round" | "square";
  /** Diameter, or side of the square, m. */
  readonly size: number;
  /** Depth of the underside below grade, m. */
  readonly depth: number;
  /** Height of the top of concrete above grade, m. */
  readonly aboveGrade: number;
  readonly bell?: Bell;
}

export const isPier = (support: Support): boolean => support.foundation?.fields.kind?.value === "pier";

/** A pier whose soil is looked at as that beside a pole: every one but a short one taken as a block alone. */
export const isPole = (support: Support): boolean => isPier(support) && !(isShort(support) && support.foundation?.fields["taken as"]?.value === "block");

export function readPier(support: Support, gather: Gather): PierBody {
  const pier = support.foundation?.fields;
  if (pier?.diameter && pier.width) gather.block("the pier has both a diameter and a width: keep the diameter if it is round, the width if it is square");
  const isSquare = pier?.width !== undefined && pier.diameter === undefined;
  const bell = readBell(support, gather, isSquare);
  return {
    ...(bell && { bell }),
    shape: isSquare ? "square" : "round",
    size: gather.need(isSquare ? pier.width : pier?.diameter, "diameter (round pier) or width (square pier)"),
    depth: gather.need(pier?.depth, "depth of the pier"),
    aboveGrade: gather.may(pier?.["above grade"]) ?? 0,
  };
}

export const depthRatio = formula({
  id: "pier.depth-ratio",
  text: "r_d = d / D",
  source: "geometry",
  symbols: { r_d: { kind: "ratio", meaning: "depth over width" }, d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" }, D: { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" } },
});

/** Depth over width below which a pier is as much a block as a pole; common practice, no source. */
const stubby = 2;

/** A pier less than two widths deep. */
export function isShort(support: Support): boolean {
  const pier = support.foundation?.fields;
  const size = pier?.diameter ?? pier?.width;
  return isPier(support) && pier?.depth !== undefined && size !== undefined && depthRatio.value({ d: pier.depth.value, D: size.value }) < stubby;
}

const diameter = { kind: "length", meaning: "diameter of the pier", field: "foundations.*.diameter" } as const;
const side = { kind: "length", meaning: "side of the square pier", field: "foundations.*.width" } as const;

export const roundArea = formula({
  id: "pier.round-area",
  text: "A_b = pi * D^2 / 4",
  source: "geometry",
  symbols: { A_b: { kind: "planArea", meaning: "area of the pier" }, D: diameter },
});

export const squareArea = formula({
  id: "pier.square-area",
  text: "A_b = w^2",
  source: "geometry",
  symbols: { A_b: { kind: "planArea", meaning: "area of the pier" }, w: side },
});

export const roundPerimeter = formula({
  id: "pier.round-perimeter",
  text: "p_s = pi * D",
  source: "geometry",
  symbols: { p_s: { kind: "distance", meaning: "perimeter of the pier" }, D: diameter },
});

export const squarePerimeter = formula({
  id: "pier.square-perimeter",
  text: "p_s = 4 * w",
  source: "geometry",
  symbols: { p_s: { kind: "distance", meaning: "perimeter of the pier" }, w: side },
});

/** The submerged length is d - min(z_w, d), which is nothing when the water stands below the pier. */
export const pierWeight = formula({
  id: "pier.weight",
  text: "W = gamma_c * A_b * (d + h_a) - gamma_w * A_b * (d - min(z_w, d))",
  source: "statics: weight of concrete less the weight of the water it displaces",
  symbols: {
    W: { kind: "force", meaning: "weight of the pier, buoyant below the water table" },
    A_b: { kind: "planArea", meaning: "area of the pier" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" },
    h_a: { kind: "length", meaning: "height of the top of concrete above grade", field: "foundations.*.above grade" },
    z_w: { kind: "distance", meaning: "depth of the water below grade", field: "ground.*.water table" },
  },
  constants: { gamma_c: "150 lbf/ft^3", gamma_w: "62.4 lbf/ft^3" },
});

export const areaOf = (body: PierBody, calc: Calc): number =>
  body.shape === "round" ? calc(roundArea, { D: body.size }) : calc(squareArea, { w: body.size });

export const perimeterOf = (body: PierBody, calc: Calc): number =>
  body.shape === "round" ? calc(roundPerimeter, { D: body.size }) : calc(squarePerimeter, { w: body.size });

/** Weight of the pier; pass the depth of the water only where it may take weight away. */
export const weightOf = (body: PierBody, area: number, waterDepth: number, calc: Calc): number =>
  calc(pierWeight, { A_b: area, d: body.depth, h_a: body.aboveGrade, z_w: waterDepth });
