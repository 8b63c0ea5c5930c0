/**
 * Pull on one dowel: net uplift after the weight of the concrete, and the moment at the underside that lifts an edge.
 *
 * The footing is rigid and bears by linear pressure without tension. The compressed strip ends at or before the dowels that pull, so
 * the resultant of the pressure stands at least g from the center: B/3 for one row in the middle, (2B - s)/6 for two rows s apart. With
 * that least arm the pull is the exact one where a dowel just begins to pull, and more than it beyond, whatever the stiffness of rock
 * and bars. Moments in both directions are two states of equilibrium that add up to the real one (static theorem of limit analysis).
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { deadFactor } from "../site/dead-factor.js";
import { momentResultant, momentX, momentY } from "../pier/grade-forces.js";
import { blockArm, blockWeight, readBlock, sharedLength, type RockBlock } from "./block.js";

export interface DowelInputs {
  readonly block: RockBlock;
  /** Dowels that act with one support, where stated. */
  readonly count: number | undefined;
  /** Spacing, m; NaN where neither needed nor given. */
  readonly spacing: number;
}

export function readDowels(support: Support, gather: Gather, place: number): DowelInputs {
  const dowels = support.foundation?.fields.dowels?.value;
  const block = readBlock(support, gather, place);
  const stated = gather.may(dowels?.count);
  const isWall = block.body.type === "wall";
  const count = isWall || stated !== undefined ? stated : gather.need(dowels?.count, "number of dowels in the pad");
  const needsSpacing = isWall ? count === undefined : count !== 1;
  const spacing = needsSpacing ? gather.need(dowels?.spacing, "spacing of the dowels") : (gather.may(dowels?.spacing) ?? Number.NaN);
  return { block, count, spacing };
}

const axial = { kind: "force", meaning: "axial force on the rock, compression positive", range: [-1e5, 1e5] } as const;
const moment = (axis: string) => ({ kind: "moment", meaning: `moment at the underside about the ${axis} axis`, range: [-1e5, 1e5] }) as const;
const across = { kind: "moment", meaning: "moment at the underside", range: [1, 1e5] } as const;
const side = { kind: "length", meaning: "side of the footing across the axis of the moment" } as const;
const spacing = { kind: "length", meaning: "spacing of the dowels", field: "foundations.*.dowels.spacing" } as const;

export const netAxial = formula({
  id: "rock.net-axial",
  text: "N = P + f_D * W",
  source: "statics",
  symbols: {
    N: axial,
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W: { kind: "force", meaning: "weight of the concrete that acts with the support" },
  },
});

export const dowelsPerPost = formula({
  id: "rock.dowels-per-post",
  text: "n = L_p / s",
  source: "statics: each dowel holds a length of wall equal to the spacing",
  symbols: {
    n: { kind: "number", meaning: "dowels that act with one post" },
    L_p: { kind: "distance", meaning: "length of wall that acts with one post", field: "foundations.*.length per post" },
    s: spacing,
  },
});

export const oneRowPull = formula({
  id: "rock.one-row-pull",
  text: "T_r = max(3 * M_c / B_c, N) - N",
  source: "statics with the least arm B/3; derived",
  symbols: { T_r: { kind: "force", meaning: "pull on the row of dowels" }, M_c: across, B_c: side, N: axial },
});

export const leastArm = formula({
  id: "rock.least-arm",
  text: "g = (2 * B_c - s) / 6",
  source: "linear pressure from the edge to the far row; derived",
  symbols: { g: { kind: "length", meaning: "least distance of the bearing resultant from the center" }, B_c: side, s: spacing },
});

export const farRowPull = formula({
  id: "rock.far-row-pull",
  text: "T_r = N * s <= -2 * M_c ? M_c / s - N / 2 : (max(M_c, N * g) - N * g) / (g + s / 2)",
  source: "statics of two rows, both pulling or the far one alone; derived",
  symbols: {
    T_r: { kind: "force", meaning: "pull on the far row of dowels" },
    N: axial,
    s: spacing,
    M_c: across,
    g: { kind: "length", meaning: "least distance of the bearing resultant from the center" },
  },
});

export const shareX = formula({
  id: "rock.share-x",
  text: "N_x = N * abs(M_x) * B / (abs(M_x) * B + abs(M_y) * L)",
  source: "the axial force goes with each moment in proportion to what it lifts",
  symbols: {
    N_x: { ...axial, meaning: "part of the axial force that goes with the moment about the east axis" },
    N: axial,
    M_x: moment("east"),
    M_y: moment("north"),
    B: { kind: "length", meaning: "width of the pad", field: "foundations.*.width" },
    L: { kind: "length", meaning: "length of the pad", field: "foundations.*.length" },
  },
});

export const shareRest = formula({
  id: "rock.share-y",
  text: "N_y = N - N_x",
  source: "statics",
  symbols: { N_y: { ...axial, meaning: "part of the axial force that goes with the moment about the north axis" }, N: axial, N_x: axial },
});

export const cornerPull = formula({
  id: "rock.corner-pull",
  text: "T_1 = T_x / 2 + T_y / 2",
  source: "statics: the corner dowel is one of two in each row",
  symbols: {
    T_1: { kind: "force", meaning: "pull on one dowel" },
    T_x: { kind: "force", meaning: "pull on the far row by the moment about the east axis" },
    T_y: { kind: "force", meaning: "pull on the far row by the moment about the north axis" },
  },
});

export const evenPull = formula({
  id: "rock.even-pull",
  text: "T_1 = T_r / n",
  source: "statics",
  symbols: { T_1: { kind: "force", meaning: "pull on one dowel" }, T_r: { kind: "force", meaning: "pull on all of the dowels" }, n: { kind: "number", meaning: "dowels that act with the support" } },
});

export const pureUplift = formula({
  id: "rock.pure-uplift",
  text: "T_r = -N",
  source: "statics",
  symbols: { T_r: { kind: "force", meaning: "pull on all of the dowels" }, N: { ...axial, range: [-1e5, -1e2] } },
});

/** One or less while the whole underside is pressed. */
export const kernRatio = formula({
  id: "rock.kern-ratio",
  text: "k = (6 * abs(M_y) / B + 6 * abs(M_x) / L) / N",
  source: "linear pressure under a rigid rectangle, kern of the section",
  symbols: {
    k: { kind: "ratio", meaning: "eccentricity over the kern; the whole underside is pressed up to 1" },
    M_x: moment("east"),
    M_y: moment("north"),
    B: { kind: "length", meaning: "width of the pad", field: "foundations.*.width" },
    L: { kind: "length", meaning: "length of the pad", field: "foundations.*.length" },
    N: { ...axial, range: [1e2, 1e5] },
  },
});

/** Pull on the worst dowel, N; or why it cannot be told. */
export type Pull = { readonly pull: number } | { readonly because: string };

/** Forces at the underside: N down positive, moments about x and y. */
export interface Underside {
  readonly N: number;
  readonly M_x: number;
  readonly M_y: number;
}

export function atUnderside(block: RockBlock, demand: Demand, calc: Calc): Underside {
  const { base } = demand;
  const { factor: f_D, note } = deadFactor(demand);
  const W = blockWeight(block, calc);
  calc.note(note);
  const a = blockArm(block, calc);
  return { N: calc(netAxial, { P: base.P, f_D, W }), M_x: calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a }), M_y: calc(momentY, { M_yb: base.My, V_x: base.Vx, a }) };
}

export function dowelPull(inputs: DowelInputs, demand: Demand, calc: Calc): Pull {
  const { block, count, spacing } = inputs;
  const shared = sharedLength(block, calc);
  if (shared !== undefined) return { because: shared };
  const forces = atUnderside(block, demand, calc);
  const { body } = block;
  if (body.type === "pad") return padPull(body.width, body.length, count ?? 0, spacing, forces, calc);
  calc.note("The moment at the underside is taken across the wall, on one row of dowels along its middle.");
  const M_c = calc(momentResultant, forces);
  const T_r = calc(oneRowPull, { M_c, B_c: body.footingWidth, N: forces.N });
  const n = count ?? calc(dowelsPerPost, { L_p: body.lengthPerPost, s: spacing });
  return { pull: calc(evenPull, { T_r, n }) };
}

function padPull(B: number, L: number, count: number, s: number, { N, M_x, M_y }: Underside, calc: Calc): Pull {
  if (N > 0 && calc(kernRatio, { M_x, M_y, B, L, N }) <= 1) {
    calc.note("The whole underside is pressed: no dowel pulls.");
    return { pull: 0 };
  }
  if (M_x === 0 && M_y === 0) return { pull: calc(evenPull, { T_r: calc(pureUplift, { N }), n: count }) };
  if (count === 1) {
    const M_c = calc(momentResultant, { M_x, M_y });
    return { pull: calc(oneRowPull, { M_c, B_c: L < B ? L : B, N }) };
  }
  if (count !== 4)
    return { because: `the column's moment lifts an edge of the pad, and where ${count} dowels stand in the pad is not known: only one in the middle or four in a square are worked out` };
  if (!(s < B && s < L)) return { because: "the dowels are spaced wider than the pad: reduce their spacing" };
  const N_x = calc(shareX, { N, M_x, M_y, B, L });
  const N_y = calc(shareRest, { N, N_x });
  const T_x = calc(farRowPull, { N: N_x, s, M_c: M_x < 0 ? -M_x : M_x, g: calc(leastArm, { B_c: L, s }) });
  const T_y = calc(farRowPull, { N: N_y, s, M_c: M_y < 0 ? -M_y : M_y, g: calc(leastArm, { B_c: B, s }) });
  return { pull: calc(cornerPull, { T_x, T_y }) };
}
