/** The plate, its rods and the concrete below, read once for every check of the base and of the anchors. */
import { rodByDiameter } from "../../catalog/rods.js";
import { formula } from "../../formula/declare.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { readLugArms } from "./lug.js";
import { halfOf, readMember, type Member } from "./member.js";
import { rodPlaces } from "./rod-places.js";

/** SI. */
export interface BaseInputs {
  /** Plate along x and y, m. */
  readonly B: number;
  readonly N: number;
  /** Rods from the center of the plate, m. */
  readonly rods: readonly Point[];
  readonly d_a: number;
  /** Net tensile area of one rod, m². */
  readonly A_se: number;
  readonly fprime_c: number;
  readonly member: Member;
  /** On leveling nuts, and no grout is placed. */
  readonly standsFree: boolean;
  /** From the underside of the plate to the middle of the bearing of a lug that stands against shear along x, and along y, m; 0 without. */
  readonly lugArmX: number;
  readonly lugArmY: number;
  /** Tells one base from another by everything the distribution of its forces depends on. */
  readonly key: string;
}

/** How many times the plate fits into the concrete, round a common center. */
export const fitRound = formula({
  id: "base.fit-round",
  text: "k_A = D / sqrt(B^2 + N^2)",
  source: "geometry: rectangle of the plate's shape inside the circle",
  symbols: {
    k_A: { kind: "ratio", meaning: "side of the largest like area in the concrete over the plate's" },
    D: { kind: "length", meaning: "diameter of the pier", field: "foundations.*.diameter" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
  },
});

export const fitRectangle = formula({
  id: "base.fit-rectangle",
  text: "k_A = min(2 * c_x / B, 2 * c_y / N)",
  source: "geometry: rectangle of the plate's shape inside the rectangle",
  symbols: {
    k_A: { kind: "ratio", meaning: "side of the largest like area in the concrete over the plate's" },
    c_x: { kind: "length", meaning: "from the middle of the plate to the nearer edge of concrete along x" },
    c_y: { kind: "length", meaning: "from the middle of the plate to the nearer edge of concrete along y" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
  },
});

/** Nearer edges of a rectangle about the plate's center, along x and y. */
export const nearerEdges = ({ edges }: Member): { readonly c_x: number; readonly c_y: number } => ({
  c_x: Math.min(-edges.west, edges.east),
  c_y: Math.min(-edges.south, edges.north),
});

const isWithin = ({ x, y }: Point, halfWidth: number, halfLength: number): boolean => Math.abs(x) < halfWidth && Math.abs(y) < halfLength;

/** Slack on the fit of a plate on its concrete, for a pier exactly as wide as its plate. */
const flush = 0.999999;

export function readBase(support: Support, gather: Gather, place: number): BaseInputs {
  const fields = support.base?.fields;
  const plate = gather.needs(fields?.plate, "base plate");
  const anchors = gather.needs(fields?.anchors, "anchor rods");
  const B = plate ? gather.need(plate.width, "width of the base plate") : Number.NaN;
  const N = plate ? gather.need(plate.length, "length of the base plate") : Number.NaN;
  const count = anchors ? gather.need(anchors.count, "number of anchor rods") : Number.NaN;
  const d_a = anchors ? gather.need(anchors.diameter, "diameter of the anchor rods") : Number.NaN;
  const grout = gather.may(fields?.grout);
  const isLeveled = gather.may(fields?.["leveling nuts"]) ?? false;
  if (isLeveled && grout === undefined) {
    gather.block("the plate stands on leveling nuts, and whether grout fills the gap is not said; state the grout's thickness, 0 in where none is placed");
  }
  const fprime_c = gather.need(support.foundation?.fields.concrete, "concrete strength below the base");
  const member = readMember(support, gather, place);

  const rod = Number.isFinite(d_a) ? rodByDiameter(d_a) : undefined;
  if (Number.isFinite(d_a) && !rod) gather.block("no anchor rod of this diameter is known here: 1/2 to 2 in in the sizes of ASTM F1554");
  for (const place of [anchors?.places, anchors?.["spacing x"], anchors?.["spacing y"], anchors?.["bolt circle"]]) gather.may<unknown>(place);
  const pattern = (Number.isFinite(count) ? rodPlaces(anchors) : undefined) ?? [];
  const rods = "problem" in pattern ? [] : pattern;
  if ("problem" in pattern) gather.block(pattern.problem);

  if (Number.isFinite(B) && Number.isFinite(N)) {
    const halfWidth = halfOf.value({ b: B });
    const halfLength = halfOf.value({ b: N });
    if (!rods.every((at) => isWithin(at, halfWidth, halfLength))) gather.block("the rods stand outside the base plate; widen the plate or bring the rods in");
    const k_A = member.shape === "round" ? fitRound.value({ D: member.diameter, B, N }) : fitRectangle.value({ ...nearerEdges(member), B, N });
    if (k_A < flush) gather.block("the base plate reaches past the edge of the concrete below it; widen the foundation or take a smaller plate");
  }
  const A_se = rod?.tensileArea ?? Number.NaN;
  const { x: lugArmX, y: lugArmY } = readLugArms(support, gather);
  const key = `${lugArmX} ${lugArmY} ${B} ${N} ${A_se} ${fprime_c} ${rods.map(({ x, y }) => `${x},${y}`).join(" ")}`;
  return { B, N, rods, d_a, A_se, fprime_c, member, standsFree: isLeveled && grout === 0, lugArmX, lugArmY, key };
}
