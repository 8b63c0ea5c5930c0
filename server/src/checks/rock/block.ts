/** The concrete block on the rock that acts with one support: a pad, or the length of wall and footing that acts with one post. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { wallStretch } from "../../mechanics/wall-run.js";
import type { Sourced, Support } from "../../project/model.js";
import { readWallRun } from "../base/wall-place.js";
import type { Gather } from "../contract.js";
import { reachesOf, saidOf, stretchLength } from "../wall/body.js";

/** One side of a rectangle in plan and a thickness, m. */
interface Pad {
  readonly type: "pad";
  /** Along x. */
  readonly width: number;
  /** Along y. */
  readonly length: number;
  readonly thickness: number;
}

interface Wall {
  readonly type: "wall";
  readonly thickness: number;
  readonly height: number;
  readonly footingWidth: number;
  readonly footingThickness: number;
  /** As stated, m. */
  readonly statedPerPost: number;
  /** Cut short where the wall, or the post's share of it, ends. */
  readonly lengthPerPost: number;
  readonly stretch: string;
  /** Neighboring columns of the line, where there are some. */
  readonly neighbors?: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number };
  /** How far the footing reaches beyond the wall to each side, m; alike where the wall stands on its middle. */
  readonly toe: number;
  readonly heel: number;
  /** Height of soil held back, m. */
  readonly retains: number;
}

export interface RockBlock {
  readonly body: Pad | Wall;
  /** Depth of the underside and height of the top, m from grade; zero where not given. */
  readonly depth: number;
  readonly aboveGrade: number;
  readonly grout: number;
  readonly plate: number;
  /** Whether water can stand above the underside. */
  readonly isWet: boolean;
}

export const isPadOnRock = (support: Support): boolean => support.foundation?.fields.kind?.value === "footing on rock";

export const isWallOnRock = (support: Support): boolean =>
  support.foundation?.fields.kind?.value === "wall on footing" && support.ground?.fields.kind?.value === "rock";

export const isOnRock = (support: Support): boolean => isPadOnRock(support) || isWallOnRock(support);

/** On rock, and holding no soil back: bearing and sliding of walls that do are looked at among the walls. */
export const isFreeOnRock = (support: Support): boolean => isOnRock(support) && !(isWallOnRock(support) && (support.foundation?.fields.retains?.value ?? 0) > 0);

/** On rock, and with dowels that somebody has described. */
export const hasDowels = (support: Support): boolean => isOnRock(support) && support.foundation?.fields.dowels !== undefined;

/** Presumptive values are of sound rock: weathered or fractured rock needs its own. */
export function blockUnsound(support: Support, gather: Gather, stated: Sourced<number> | undefined, what: string): void {
  const condition = gather.may(support.ground?.fields.condition);
  if (stated === undefined && condition !== undefined && condition !== "sound") gather.block(`the rock is ${condition}, and presumptive values are of sound rock: state its ${what} from an investigation`);
}

export function readBlock(support: Support, gather: Gather, place: number): RockBlock {
  const f = support.foundation?.fields;
  const water = gather.may(support.ground?.fields["water table"]);
  const depth = water === undefined ? gather.may(f?.depth) : gather.need(f?.depth, "depth of the footing, to know whether it stands in water");
  return {
    body: isWallOnRock(support) ? readWall(support, gather, place) : readPad(support, gather),
    depth: depth ?? 0,
    aboveGrade: gather.may(f?.["above grade"]) ?? 0,
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
    isWet: water !== undefined && depth !== undefined && water < depth,
  };
}

function readPad(support: Support, gather: Gather): Pad {
  const f = support.foundation?.fields;
  if (f?.["off middle"]) gather.block("a column that stands off the middle of a pad on rock is not worked out: set it on the middle");
  return {
    type: "pad",
    width: gather.need(f?.width, "width of the pad"),
    length: gather.need(f?.length, "length of the pad"),
    thickness: gather.need(f?.thickness, "thickness of the pad"),
  };
}

/** Length of wall that acts with the post at `place`. Where the length of the whole wall is not told, no end of it is known. */
function actingLength(support: Support, gather: Gather, place: number): Pick<Wall, "statedPerPost" | "lengthPerPost" | "stretch"> {
  const f = support.foundation?.fields;
  const statedPerPost = gather.need(f?.["length per post"], "length of wall that acts with one post (`length per post`)");
  const whole = { statedPerPost, lengthPerPost: statedPerPost, stretch: "" };
  const length = gather.may(f?.length);
  if (length === undefined || Number.isNaN(statedPerPost)) return whole;
  const run = readWallRun(support, gather, place, length);
  if (!run) return whole;
  const found = wallStretch(support.places, place, run, statedPerPost);
  return { statedPerPost, lengthPerPost: stretchLength.value({ a_1: found.before, a_2: found.after }), stretch: saidOf(found, run.axis) };
}

function readWall(support: Support, gather: Gather, place: number): Wall {
  const f = support.foundation?.fields;
  const footing = f?.footing?.value;
  const thickness = gather.need(f?.thickness, "thickness of the wall");
  const footingWidth = gather.need(footing?.width, "width of the wall's footing");
  const { toe, heel } = reachesOf(footing, footingWidth, thickness, gather);
  const here = support.places[place];
  const next = support.places[place + 1] ?? support.places[place - 1];
  return {
    type: "wall",
    thickness,
    height: gather.need(f?.height, "height of the wall"),
    footingWidth,
    footingThickness: gather.need(footing?.thickness, "thickness of the wall's footing"),
    ...actingLength(support, gather, place),
    toe,
    heel,
    neighbors: here && next ? { x1: here.x, y1: here.y, x2: next.x, y2: next.y } : undefined,
    retains: gather.may(f?.retains) ?? 0,
  };
}

const concrete = { gamma_c: "150 lbf/ft^3" } as const;
const weight = { kind: "force", meaning: "weight of the concrete that acts with the support" } as const;

export const padWeight = formula({
  id: "rock.pad-weight",
  text: "W = gamma_c * B * L * t",
  source: "statics",
  symbols: {
    W: weight,
    B: { kind: "length", meaning: "width of the pad", field: "foundations.*.width" },
    L: { kind: "length", meaning: "length of the pad", field: "foundations.*.length" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
  },
  constants: concrete,
});

export const wallWeight = formula({
  id: "rock.wall-weight",
  text: "W = gamma_c * L_p * (t_w * h_w + B_f * t_f)",
  source: "statics",
  symbols: {
    W: weight,
    L_p: { kind: "distance", meaning: "length of wall that acts with one post", field: "foundations.*.length per post" },
    t_w: { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" },
    h_w: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" },
    B_f: { kind: "length", meaning: "width of the wall's footing", field: "foundations.*.footing.width" },
    t_f: { kind: "length", meaning: "thickness of the wall's footing", field: "foundations.*.footing.thickness" },
  },
  constants: concrete,
});

export const buoyantWeight = formula({
  id: "rock.buoyant-weight",
  text: "W_b = W * (gamma_c - gamma_w) / gamma_c",
  source: "statics: all of the concrete taken as standing in water",
  symbols: { W_b: { kind: "force", meaning: "buoyant weight of the concrete" }, W: weight },
  constants: { ...concrete, gamma_w: "62.4 lbf/ft^3" },
});

export const padArm = formula({
  id: "rock.pad-arm",
  text: "a = max(t, d + h_a) + t_g + t_p",
  source: "geometry",
  symbols: {
    a: { kind: "length", meaning: "height of the column base above the underside" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    d: { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" },
    h_a: { kind: "length", meaning: "height of the top of concrete above grade", field: "foundations.*.above grade" },
    t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" },
  },
});

export const wallArm = formula({
  id: "rock.wall-arm",
  text: "a = h_w + t_f + t_g + t_p",
  source: "geometry",
  symbols: {
    a: { kind: "length", meaning: "height of the column base above the underside" },
    h_w: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" },
    t_f: { kind: "length", meaning: "thickness of the wall's footing", field: "foundations.*.footing.thickness" },
    t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" },
  },
});

export const neighborDistance = formula({
  id: "rock.neighbor-distance",
  text: "s_c = sqrt((x_2 - x_1)^2 + (y_2 - y_1)^2)",
  source: "geometry",
  symbols: {
    s_c: { kind: "distance", meaning: "distance to the neighboring column" },
    x_1: { kind: "distance", meaning: "this column, east", field: "columns.*.from" },
    y_1: { kind: "distance", meaning: "this column, north", field: "columns.*.from" },
    x_2: { kind: "distance", meaning: "neighboring column, east", field: "columns.*.to" },
    y_2: { kind: "distance", meaning: "neighboring column, north", field: "columns.*.to" },
  },
});

/** Weight that acts with the support, buoyant where it stands in water; no factor yet. */
export function blockWeight(block: RockBlock, calc: Calc): number {
  const { body } = block;
  if (body.type === "wall" && body.stretch !== "") calc.note(body.stretch);
  const W =
    body.type === "pad"
      ? calc(padWeight, { B: body.width, L: body.length, t: body.thickness })
      : calc(wallWeight, { L_p: body.lengthPerPost, t_w: body.thickness, h_w: body.height, B_f: body.footingWidth, t_f: body.footingThickness });
  if (!block.isWet) return W;
  calc.note("Water can stand above the underside: all of the concrete is taken as buoyant, the safe side.");
  return calc(buoyantWeight, { W });
}

/** Height of the column base above the underside, m. */
export function blockArm({ body, depth, aboveGrade, grout, plate }: RockBlock, calc: Calc): number {
  return body.type === "pad"
    ? calc(padArm, { t: body.thickness, d: depth, h_a: aboveGrade, t_g: grout, t_p: plate })
    : calc(wallArm, { h_w: body.height, t_f: body.footingThickness, t_g: grout, t_p: plate });
}

/** Says why the length per post cannot be right: two posts would count the same wall. */
export function sharedLength({ body }: RockBlock, calc: Calc): string | undefined {
  if (body.type !== "wall" || !body.neighbors) return undefined;
  const { x1: x_1, y1: y_1, x2: x_2, y2: y_2 } = body.neighbors;
  const spacing = calc(neighborDistance, { x_1, y_1, x_2, y_2 });
  return spacing > 0 && isAbove(body.statedPerPost, spacing) ? "the length of wall per post is more than the distance between the columns, so that the same wall would be counted twice: shorten `length per post`" : undefined;
}

export const blockFormulas = [neighborDistance, padWeight, wallWeight, buoyantWeight, padArm, wallArm] as const;
