/** Reads what blocks the flow below the roof: walls, panels, goods, a building close by. */
import { plainCalc } from "../formula/calc.js";
import { isAbove } from "../mechanics/compare.js";
import type { Roof } from "../project/model.js";
import type { Edge } from "./demand.js";
import { edges, middleOfSide, type RoofPlane } from "./roof-plane.js";
import type { Wanted } from "./wanted.js";
import { blockedShare, isOverHalf, mostClosed, neighborShare, panelShare, wallShare, type EdgeShares } from "./wind/blocked.js";
import type { PostPanel } from "./wind/panels.js";
import type { FlowBelow } from "./wind/free-roof.js";

interface PanelPost {
  readonly support: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly panel?: PostPanel;
}

const byEdge = (of: (edge: Edge) => number): EdgeShares => ({ north: of("north"), east: of("east"), south: of("south"), west: of("west") });

/** The edge of the roof a line of panels stands along: the nearer one. */
function edgeOf({ x, y, panel }: PanelPost, { length, width }: RoofPlane): Edge {
  if (panel?.across === "x") return isAbove(x, plainCalc(middleOfSide, { b: length })) ? "east" : "west";
  return isAbove(y, plainCalc(middleOfSide, { b: width })) ? "north" : "south";
}

function panelShares(plane: RoofPlane, posts: readonly PanelPost[]): EdgeShares {
  const shares = { north: 0, east: 0, south: 0, west: 0 };
  for (const support of new Set(posts.filter(({ panel }) => panel).map((post) => post.support))) {
    const line = posts.filter((post) => post.support === support);
    const [first] = line;
    const { panel } = first;
    if (!panel) continue;
    const edge = edgeOf(first, plane);
    const share = plainCalc(panelShare, { epsilon: panel.solidity, s: panel.height, n: line.length - 1, B: panel.bay, H: first.height, l: panel.across === "y" ? plane.length : plane.width });
    // Of two lines behind one edge the one that closes more counts.
    shares[edge] = Math.max(shares[edge], share);
  }
  return shares;
}

/** What is blocked below each edge, and how much of each wall is closed. */
export interface Blocked {
  readonly shares: EdgeShares;
  readonly closed: EdgeShares;
}

/** Shares below each edge. `posts` are all columns under the roof. */
export function readBlocked(roof: Roof, plane: RoofPlane, posts: readonly PanelPost[], wanted: Wanted): Blocked {
  const blocked = roof.blocked?.value;
  const building = blocked?.building?.value;
  const before = building && {
    edge: wanted.need(building.edge, "the edge the building close by stands before (blocked, building, edge)"),
    gap: wanted.need(building.gap, "the gap to the building close by (blocked, building, gap)"),
    height: wanted.need(building.height, "the height of the building close by (blocked, building, height)"),
  };
  const panels = panelShares(plane, posts);
  const shareOf = (of: "walls" | "goods", edge: Edge): number => blocked?.[of]?.value[`${edge} edge`]?.value ?? 0;
  const neighbor = (edge: Edge): number => (before?.edge === edge ? plainCalc(neighborShare, { g: before.gap, h: plane.meanHeight, h_n: before.height }) : 0);
  return {
    shares: byEdge((edge) => blockedShare({ walls: shareOf("walls", edge), panels: panels[edge], goods: shareOf("goods", edge), neighbor: neighbor(edge) }, plainCalc)),
    closed: byEdge((edge) => plainCalc(wallShare, { k_w: shareOf("walls", edge), k_p: panels[edge] })),
  };
}

/** What is blocked so far that the flow of some winds is no longer clear, in words; none where the flow is stated as obstructed anyway. */
export function blockedRemarks(flow: FlowBelow, shares: EdgeShares): readonly string[] {
  if (flow !== "clear") return [];
  return ([["north", "south"], ["east", "west"]] as const).flatMap(([one, other]) => {
    const blocked = ([one, other] as const).filter((edge) => isOverHalf(shares, edge));
    if (blocked.length === 0) return [];
    const said = blocked.map((edge) => `${percent(shares[edge])} of the opening below the ${edge} edge is blocked`).join(", ");
    return [`${said}: wind from the ${one} and ${other} is taken in obstructed flow too, as more than half blocked is no clear flow (ASCE 7-22 Figure 27.3-4).`];
  });
}

const percent = (share: number): string => share.toLocaleString("en-US", { style: "percent", maximumFractionDigits: 0 }).replace("%", " %");

/** Why the figures of free roofs do not hold, in words with what to do, or undefined. */
export function notOpen({ closed }: Blocked): string | undefined {
  const walls = edges.filter((edge) => isAbove(closed[edge], mostClosed));
  if (walls.length === 0) return undefined;
  const said = walls.map((edge) => `${percent(closed[edge])} of the ${edge} edge`).join(", ");
  return (
    `walls or panels close ${said}: with a wall less than 80 % open the building is not open (ASCE 7-22 26.2), and coefficients of free roofs do not hold, ` +
    "neither for clear nor for obstructed flow. Find the wind as the worst of an enclosed, a partially enclosed (internal pressure coefficient 0.55) and, from ASCE 7-16 on, a partially open building (0.18), and state the reactions; or open the wall to 80 %"
  );
}
