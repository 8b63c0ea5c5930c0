/** Reads what blocks the flow below the roof: walls, panels, goods, a building close by. */
import { plainCalc } from "../formula/calc.js";
import { isAbove } from "../mechanics/compare.js";
import type { Roof } from "../project/model.js";
import type { Edge } from "./demand.js";
import { edges, type RoofPlane } from "./roof-plane.js";
import type { Wanted } from "./wanted.js";
import { blockedShare, isOverHalf, mostClosed, neighborShare, panelShare, wallShare, type EdgeShares } from "./wind/blocked.js";
import type { PostPanel } from "./wind/panels.js";
import type { FlowBelow } from "./wind/free-roof.js";
import { edgeBeside, type Wall } from "./wind/walls.js";

interface PanelPost {
  readonly support: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly panel?: PostPanel;
}

const byEdge = (of: (edge: Edge) => number): EdgeShares => ({ north: of("north"), east: of("east"), south: of("south"), west: of("west") });

function panelShares(plane: RoofPlane, posts: readonly PanelPost[]): EdgeShares {
  const shares = { north: 0, east: 0, south: 0, west: 0 };
  for (const support of new Set(posts.filter(({ panel }) => panel).map((post) => post.support))) {
    const line = posts.filter((post) => post.support === support);
    const [first] = line;
    const { panel } = first;
    if (!panel) continue;
    const edge = edgeBeside(plane, first, panel.across);
    const share = plainCalc(panelShare, { epsilon: panel.solidity, s: panel.height, n: line.length - 1, B: panel.bay, H: first.height, l: panel.across === "y" ? plane.length : plane.width });
    // Of two lines behind one edge the one that closes more counts.
    shares[edge] = Math.max(shares[edge], share);
  }
  return shares;
}

/** What is blocked below each edge, how much of each wall is closed, and the walls themselves. */
export interface Blocked {
  readonly shares: EdgeShares;
  readonly closed: EdgeShares;
  readonly walls: readonly Wall[];
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
    walls: edges.flatMap((edge): readonly Wall[] => {
      const share = shareOf("walls", edge);
      return share > 0 ? [{ edge, share: Math.min(share, 1), carriedBy: wanted.need(blocked?.walls?.value["carried by"], "what carries the walls (blocked, walls, carried by)") }] : [];
    }),
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

/** What the figures of free roofs leave out beside a building close by that is higher than the roof, in words; undefined where none is. */
export function besideBuilding({ blocked, "mean height": height }: Roof, show: (value: number) => string): string | undefined {
  const { edge, gap, height: top } = blocked?.value.building?.value ?? {};
  if (!edge || !gap || !top || !height || gap.value === 0 || !isAbove(top.value, height.value) || isAbove(gap.value, height.value)) return undefined;
  return (
    `A building ${show(top.value)} high stands ${show(gap.value)} from the ${edge.value} edge. Beside the obstructed flow, wind that meets its wall turns down and up there and can lift a roof so close by more: ` +
    "hold the uplift against that of a canopy fastened to a building (ASCE 7-22 30.9, 7-16 30.11), which is not covered here, and give the footings the greater."
  );
}

const percent = (share: number): string => share.toLocaleString("en-US", { style: "percent", maximumFractionDigits: 0 }).replace("%", " %");

/** Edges with a wall that is less than 80 percent open, in words; undefined where the building is open. */
export function closedEdges(closed: EdgeShares): string | undefined {
  const walls = edges.filter((edge) => isAbove(closed[edge], mostClosed));
  return walls.length === 0 ? undefined : walls.map((edge) => `${percent(closed[edge])} of the ${edge} edge`).join(", ");
}

/** Why there are no loads for a trough with walls, in words with what to do; undefined for any other roof. */
export function troughWithWalls({ shape }: RoofPlane, closed: string | undefined): string | undefined {
  if (shape !== "troughed" || closed === undefined) return undefined;
  return (
    `walls or panels close ${closed}: with a wall less than 80 % open the building is not open (ASCE 7-22 26.2), and for a troughed roof on walls the standard has no coefficients. ` +
    "Find the wind another way and state the reactions, or open the wall to 80 %"
  );
}

/** Why there are no loads for a roof that meets a building, in words with what to do; undefined where there is a gap. */
export function fastenedToBuilding({ blocked }: Roof): string | undefined {
  const building = blocked?.value.building?.value;
  if (building?.gap?.value !== 0) return undefined;
  return (
    `no gap is left between the roof and the building${building.edge ? ` at its ${building.edge.value} edge` : ""}: the wind on a canopy fastened to a building does not go by the figures of free roofs (ASCE 7-22 30.9 and 7-16 30.11 have canopies of their own, ASCE 7-10 has none), and is not covered here. ` +
    "If the roof stands free, state its gap (blocked, building, gap); if it hangs on the building, find its wind another way and state the reactions"
  );
}

/** How a roof with walls is taken, in words. */
export const wallsRemark = (closed: string): string =>
  `Walls or panels close ${closed}: with a wall less than 80 % open the building is not open (ASCE 7-22 26.2). The wind is taken as the worst of a free roof, in obstructed flow too, and of a roof with walls: ` +
  "outer pressures of Figure 27.3-1 with the internal pressure coefficient of a partially enclosed building, 0.55 either way, between which the 0.18 of enclosed and partially open buildings lies (from memory). Each result names the case that governs it.";

/** Why edge pressures at the column tops do not hold for a roof with walls, in words. */
export const wallsAtEdges = (closed: string): string =>
  `walls or panels close ${closed}, and the edge and corner pressures of an open roof (ASCE 7-22 30.5) do not hold: find those of an enclosed or partially enclosed building for the connection another way, or open the wall to 80 %`;
