/**
 * Pull on one dowel: net uplift after the weight of the concrete, and the moment at the underside that lifts an edge.
 *
 * Each direction by itself is in `rows.ts`. Moments in both directions are two states of equilibrium that add up to the real one (static theorem of
 * limit analysis); the axial force goes with each moment in proportion to what it lifts.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { FromBelow } from "../../mechanics/footing-section.js";
import { evenPlaces } from "../../mechanics/held-rows.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { deadFactor } from "../site/dead-factor.js";
import { readStability, type StabilityInputs } from "../wall/safety.js";
import { momentResultant, momentX, momentY } from "../pier/grade-forces.js";
import { blockArm, blockFormulas, blockWeight, readBlock, sharedLength, type RockBlock } from "./block.js";
import { retainingFormulas, retainingPull } from "./retaining.js";
import { bearingFormulas, type Direction, heldIn, oneRowPull, outerRows, pressureFormulas, pressureIn, pullFormulas, pullIn, readWallRows } from "./rows.js";

/** Where the dowels of a pad stand: so many side by side, evenly, about its middle. */
export interface Grid {
  readonly alongX: number;
  readonly alongY: number;
}

export interface DowelInputs {
  readonly block: RockBlock;
  /** Dowels that act with one support, where stated. */
  readonly count: number | undefined;
  /** Spacing, m; NaN where neither needed nor given. */
  readonly spacing: number;
  /** Of a pad, where it can be told. */
  readonly grid: Grid | undefined;
  /** Rows along a wall, and the distance between two of them, m. */
  readonly rows: number;
  readonly rowSpacing: number;
  /** Set where soil is held back. */
  readonly retaining: StabilityInputs | undefined;
}

/** Where so many dowels stand in a pad, if their number alone tells it. */
export const gridOf = (count: number | undefined): Grid | undefined => (count === 1 ? { alongX: 1, alongY: 1 } : count === 4 ? { alongX: 2, alongY: 2 } : undefined);

export const gridCount = formula({
  id: "rock.grid-count",
  text: "n = n_x * n_y",
  source: "arithmetic",
  symbols: {
    n: { kind: "number", meaning: "dowels in the pad" },
    n_x: { kind: "number", meaning: "dowels side by side along x", field: "foundations.*.dowels.along x" },
    n_y: { kind: "number", meaning: "dowels side by side along y", field: "foundations.*.dowels.along y" },
  },
});

function readGrid(support: Support, gather: Gather): { readonly count: number | undefined; readonly grid: Grid | undefined } {
  const dowels = support.foundation?.fields.dowels?.value;
  const stated = gather.may(dowels?.count);
  if (!dowels?.["along x"] && !dowels?.["along y"]) {
    const count = stated ?? gather.need(undefined, "number of dowels in the pad");
    return { count, grid: gridOf(count) };
  }
  const grid = { alongX: gather.need(dowels["along x"], "how many dowels stand along x"), alongY: gather.need(dowels["along y"], "how many dowels stand along y") };
  const count = gridCount.value({ n_x: grid.alongX, n_y: grid.alongY });
  if (stated !== undefined && stated !== count) gather.block(`${stated} dowels are counted, and ${grid.alongX} by ${grid.alongY} of them stand in the grid: correct one of the two`);
  return { count, grid };
}

export function readDowels(support: Support, gather: Gather, place: number): DowelInputs {
  const dowels = support.foundation?.fields.dowels?.value;
  const block = readBlock(support, gather, place);
  if (block.body.type === "pad") {
    const { count, grid } = readGrid(support, gather);
    const spacing = count !== 1 ? gather.need(dowels?.spacing, "spacing of the dowels") : (gather.may(dowels?.spacing) ?? Number.NaN);
    return { block, count, grid, spacing, rows: 1, rowSpacing: Number.NaN, retaining: undefined };
  }
  const count = gather.may(dowels?.count);
  const { rows, rowSpacing } = readWallRows(support, gather, block.body.footingWidth);
  const spacing = count === undefined ? gather.need(dowels?.spacing, "spacing of the dowels") : (gather.may(dowels?.spacing) ?? Number.NaN);
  const retaining = block.body.retains > 0 ? readStability(support, gather, place) : undefined;
  return { block, count, grid: undefined, spacing, rows, rowSpacing, retaining };
}

const axial = { kind: "force", meaning: "axial force on the rock, compression positive", range: [-1e5, 1e5] } as const;
const moment = (axis: string) => ({ kind: "moment", meaning: `moment at the underside about the ${axis} axis`, range: [-1e5, 1e5] }) as const;
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
  text: "T_1 = T_x + T_y",
  source: "statics: the corner dowel stands in the far row of both directions",
  symbols: {
    T_1: { kind: "force", meaning: "pull on one dowel" },
    T_x: { kind: "force", meaning: "pull on it by the moment about the east axis" },
    T_y: { kind: "force", meaning: "pull on it by the moment about the north axis" },
  },
});

export const edgesTogether = formula({
  id: "rock.edges-together",
  text: "q_max = q_x + q_y",
  source: "statics: both states press the same corner",
  symbols: {
    q_max: { kind: "pressure", meaning: "largest pressure on the rock" },
    q_x: { kind: "pressure", meaning: "pressure by the moment about the east axis" },
    q_y: { kind: "pressure", meaning: "pressure by the moment about the north axis" },
  },
});

export const offMiddle = formula({
  id: "rock.off-middle",
  text: "M_c = M_h + abs(N) * abs(l_h - l_t) / 2",
  source: "statics: the wall stands off the middle of its footing; taken to the worse side",
  symbols: {
    M_c: { kind: "moment", meaning: "moment at the middle of the underside" },
    M_h: { kind: "moment", meaning: "moment below the wall" },
    N: axial,
    l_h: { kind: "length", meaning: "heel of the footing", field: "foundations.*.footing.heel" },
    l_t: { kind: "length", meaning: "toe of the footing", field: "foundations.*.footing.toe" },
  },
});

export const inEachRow = formula({
  id: "rock.in-each-row",
  text: "n_r = n / m",
  source: "arithmetic",
  symbols: { n_r: { kind: "number", meaning: "dowels in one row" }, n: { kind: "number", meaning: "dowels that act with the support" }, m: { kind: "number", meaning: "rows one behind the other" } },
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
  /** Weight of the concrete without load factor, N, and its factor. */
  readonly W: number;
  readonly f_D: number;
}

export function atUnderside(block: RockBlock, demand: Demand, calc: Calc): Underside {
  const { base } = demand;
  const { factor: f_D, note } = deadFactor(demand);
  const W = blockWeight(block, calc);
  calc.note(note);
  const a = blockArm(block, calc);
  return { N: calc(netAxial, { P: base.P, f_D, W }), M_x: calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a }), M_y: calc(momentY, { M_yb: base.My, V_x: base.Vx, a }), W, f_D };
}

/** Both directions of a grid of dowels in a pad: first the one that answers the moment about x. */
const directionsOf = (B: number, L: number, { alongX, alongY }: Grid, spacing: number): readonly [Direction, Direction] => [
  { across: L, along: B, rows: alongY, inRow: alongX, spacing },
  { across: B, along: L, rows: alongX, inRow: alongY, spacing },
];

/** The one direction of a wall, across it. */
export function wallDirection({ block: { body }, count, spacing, rows, rowSpacing, retaining }: DowelInputs, calc: Calc): Direction | undefined {
  if (body.type !== "wall") return undefined;
  const L_p = retaining ? retaining.run : body.lengthPerPost;
  const inRow = count !== undefined ? calc(inEachRow, { n: count, m: rows }) : calc(dowelsPerPost, { L_p, s: spacing });
  return { across: body.footingWidth, along: L_p, rows, inRow, spacing: rowSpacing };
}

/** Moment across a wall at the middle of its footing. */
export function acrossWall({ body }: RockBlock, forces: Underside, calc: Calc): number {
  calc.note("The moment at the underside is taken across the wall.");
  const M_h = calc(momentResultant, forces);
  return body.type === "wall" && body.heel !== body.toe ? calc(offMiddle, { M_h, N: forces.N, l_h: body.heel, l_t: body.toe }) : M_h;
}

export function dowelPull(inputs: DowelInputs, demand: Demand, calc: Calc): Pull {
  const { block } = inputs;
  const shared = sharedLength(block, calc);
  if (shared !== undefined) return { because: shared };
  const direction = wallDirection(inputs, calc);
  if (direction && inputs.retaining) return retainingPull(inputs.retaining, demand, ({ N, M_c }) => pullIn(direction, N, M_c, calc), calc);
  const forces = atUnderside(block, demand, calc);
  return direction ? { pull: pullIn(direction, forces.N, acrossWall(block, forces, calc), calc) } : padPull(inputs, forces, calc);
}

/** Says why the dowels of a pad cannot be followed once an edge lifts. */
function gridTrouble(grid: Grid | undefined, count: number | undefined, s: number, B: number, L: number, calc: Calc): string | undefined {
  if (!grid)
    return `the column's moment lifts an edge of the pad, and where ${count ?? 0} dowels stand in it is not known: say how many stand side by side, \`along x\` and \`along y\``;
  const reach = (rows: number): number => (rows > 1 ? calc(outerRows, { s, m: rows }) : 0);
  return reach(grid.alongX) < B && reach(grid.alongY) < L ? undefined : "the dowels are spaced wider than the pad: reduce their spacing";
}

/** Pull on the worst dowel of a pad, N. */
export function padPull({ block: { body }, count, grid, spacing }: DowelInputs, { N, M_x, M_y }: Underside, calc: Calc): Pull {
  if (body.type !== "pad") return { pull: 0 };
  const { width: B, length: L } = body;
  if (N > 0 && calc(kernRatio, { M_x, M_y, B, L, N }) <= 1) {
    calc.note("The whole underside is pressed: no dowel pulls.");
    return { pull: 0 };
  }
  if (M_x === 0 && M_y === 0) return { pull: calc(evenPull, { T_r: calc(pureUplift, { N }), n: count ?? 0 }) };
  if (count === 1) {
    const M_c = calc(momentResultant, { M_x, M_y });
    return { pull: calc(evenPull, { T_r: calc(oneRowPull, { M_c, B_c: L < B ? L : B, N }), n: 1 }) };
  }
  const trouble = gridTrouble(grid, count, spacing, B, L, calc);
  if (trouble !== undefined || !grid) return { because: trouble ?? "" };
  const N_x = calc(shareX, { N, M_x, M_y, B, L });
  const N_y = calc(shareRest, { N, N_x });
  const [x, y] = directionsOf(B, L, grid, spacing);
  const T_x = pullIn(x, N_x, M_x < 0 ? -M_x : M_x, calc);
  const T_y = pullIn(y, N_y, M_y < 0 ? -M_y : M_y, calc);
  return { pull: calc(cornerPull, { T_x, T_y }) };
}

/** Largest pressure under a pad one edge of which its dowels hold down, Pa, in the state the pull is found from; or why it cannot be told. */
export function heldPressure({ block: { body }, count, grid, spacing }: DowelInputs, { N, M_x, M_y }: Underside, calc: Calc): { readonly pressure: number } | { readonly because: string } {
  if (body.type !== "pad") return { because: "only pads are held in both directions" };
  const { width: B, length: L } = body;
  if (M_x === 0 && M_y === 0) return { pressure: 0 };
  const trouble = gridTrouble(grid, count, spacing, B, L, calc);
  if (trouble !== undefined || !grid) return { because: trouble ?? "" };
  const N_x = calc(shareX, { N, M_x, M_y, B, L });
  const N_y = calc(shareRest, { N, N_x });
  const [x, y] = directionsOf(B, L, grid, spacing);
  return { pressure: calc(edgesTogether, { q_x: pressureIn(x, N_x, M_x < 0 ? -M_x : M_x, calc), q_y: pressureIn(y, N_y, M_y < 0 ? -M_y : M_y, calc) }) };
}

/** What presses and what pulls below such a pad, laid out over its underside, in the same state; or why it cannot be told. */
export function heldBelow({ block: { body }, count, grid, spacing }: DowelInputs, { N, M_x, M_y }: Underside, calc: Calc): FromBelow | { readonly because: string } {
  if (body.type !== "pad") return { because: "only pads are held in both directions" };
  const { width: B, length: L } = body;
  const isPulledAlone = M_x === 0 && M_y === 0;
  const trouble = isPulledAlone && !grid ? unknownPlaces(count) : gridTrouble(grid, count, spacing, B, L, calc);
  if (trouble !== undefined || !grid) return { because: trouble ?? "" };
  const [x, y] = directionsOf(B, L, grid, spacing);
  const acrossX = evenPlaces(grid.alongX, spacing);
  if (isPulledAlone) return heldIn(x, "y", acrossX, N, 0, calc);
  const N_x = calc(shareX, { N, M_x, M_y, B, L });
  // A moment about the east axis presses the south edge.
  const one = heldIn(x, "y", acrossX, N_x, -M_x, calc);
  const other = heldIn(y, "x", evenPlaces(grid.alongY, spacing), calc(shareRest, { N, N_x }), M_y, calc);
  return { pressure: one.pressure, beside: other.pressure, pulls: [...one.pulls, ...other.pulls] };
}

const unknownPlaces = (count: number | undefined): string => `where ${count ?? 0} dowels stand in the pad is not known: say how many stand side by side, \`along x\` and \`along y\``;

/** What brings the forces down to the underside. */
export const undersideFormulas = [...blockFormulas, netAxial, momentX, momentY, momentResultant, offMiddle] as const;

/** What the pull on a dowel is found by. */
export const dowelPullFormulas = [...undersideFormulas, ...retainingFormulas, kernRatio, evenPull, pureUplift, shareX, shareRest, ...pullFormulas, cornerPull, dowelsPerPost, inEachRow] as const;

/** What presses and pulls below a held pad is found by, beside its pull. */
export const heldBelowFormulas = [shareX, shareRest, ...bearingFormulas] as const;

export const heldPressureFormulas = [shareX, shareRest, ...pressureFormulas, edgesTogether, dowelsPerPost, inEachRow] as const;
