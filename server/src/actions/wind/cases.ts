/** Every wind case of a roof: pressures by the figures and the least force, for each edge, with the drag of what stands in the wind beside them. */
import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";
import type { RoofColumn } from "../../mechanics/rigid-roof.js";
import type { ColumnLoad } from "../column-loads.js";
import type { Edge } from "../demand.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofInputs } from "../roof-inputs.js";
import { edges } from "../roof-plane.js";
import { columnsUnder, stripLoads } from "../way-down.js";
import { besideOf, caseWith, type Beside } from "./beside.js";
import { flowFrom } from "./blocked.js";
import { cornerCases, torsionCases, type OneWind, type PressureCaseOn } from "./corner.js";
import { dragOnColumns, dragOnMembers, type DragPost } from "./drag.js";
import { enclosedCases, enclosedCaseSource, enclosedParts, enclosedPatches, wallPressure } from "./enclosed.js";
import { dragOnFascia } from "./fascia.js";
import { directionOf, windCases, windParts, windPatches } from "./free-roof.js";
import { minimumCase, minimumLoad, minimumSource } from "./minimum.js";
import { figureFor } from "./net-coefficients.js";
import { once } from "./once.js";
import { seenBy } from "./posts.js";
import { ofBuildings, velocityPressureAt, withDirectionality } from "./velocity-pressure.js";
import { panelsAsWalls, wallDrag, wallsOnColumns, wallsOnRoof, type OnWall } from "./walls.js";

/** A direction of the wind in which the figure's range does not hold. */
export interface OutsideRange {
  readonly from: Edge;
  readonly figure: string;
  readonly because: string;
}

/** What all wind cases of a roof are found from. */
interface Setting extends RoofInputs {
  readonly columns: readonly RoofColumn[];
  readonly dragPosts: readonly DragPost[];
  readonly q_h: number;
}

/** Fascias and members by their coefficients; what is along the columns and on the walls as given. */
function besideBy(of: Setting, from: Edge, onWall: OnWall, alongColumns: (calc: Calc) => readonly ColumnLoad[]): Beside {
  const { plane, columns, fascia, members, site, walls, q_h } = of;
  return besideOf(
    columns,
    (calc) => [
      ...dragOnFascia(plane, columns, fascia, site, q_h, from, calc),
      ...dragOnMembers(plane, members, site, from, "by coefficient", calc),
      ...wallsOnRoof(plane, columns, walls, onWall, calc),
    ],
    (calc) => [...alongColumns(calc), ...wallsOnColumns(plane, columns, walls, onWall, calc)],
  );
}

/** Cases by the figures of free roofs. */
function freeRoofCases(of: Setting, from: Edge, outside: OutsideRange[]): OneWind {
  const { plane, flow, blocked, closed, site, columns, dragPosts, q_h } = of;
  const direction = directionOf(site.standard, plane, from);
  const use = figureFor(direction, plainCalc);
  if (use.outside !== undefined) outside.push({ from, figure: use.figure, because: use.outside });
  const beside = besideBy(of, from, wallDrag(plane, site, from, "by coefficient"), (calc) => dragOnColumns(columns, dragPosts, site, from, "by coefficient", calc));
  // A building that is not open has obstructed flow among its cases for every wind.
  const below = closed !== undefined && flow === "clear" ? "either" : flowFrom(flow, blocked, from);
  const cases = windCases(plane, below, [from]).map((wind): PressureCaseOn => {
    const named = { loadCase: wind.loadCase, source: use.source, outside: use.outside, parts: () => windParts(wind, direction, q_h) };
    return { one: caseWith(named, (calc) => stripLoads(plane, windPatches(plane, wind, direction, q_h, calc), calc), beside), beside };
  });
  return { from, cases, drag: beside };
}

/** Cases of a roof with walls, where it is no open building. */
function walledCases(of: Setting, from: Edge): readonly PressureCaseOn[] {
  const { plane, site, columns, dragPosts, q_h, closed } = of;
  if (closed === undefined) return [];
  const q_d = once((calc) => withDirectionality(site.standard, q_h, ofBuildings, calc));
  const barePosts = dragPosts.map((post) => ({ ...post, panel: undefined }));
  const besides = new Map<number, Beside>();
  return enclosedCases(plane, from, plainCalc).map((wind) => {
    const onEdge = (edge: Edge, calc: Calc): number => wallPressure(plane, wind, edge, q_d(plainCalc), calc);
    const beside =
      besides.get(wind.GC_pi) ??
      besideBy(of, from, ({ edge }, calc) => onEdge(edge, calc), (calc) => [
        ...dragOnColumns(columns, barePosts, site, from, "by coefficient", calc),
        ...panelsAsWalls(plane, columns, dragPosts, onEdge, calc),
      ]);
    besides.set(wind.GC_pi, beside);
    const named = { loadCase: wind.loadCase, source: enclosedCaseSource, parts: () => enclosedParts(plane, wind, q_d(plainCalc), plainCalc) };
    return { one: caseWith(named, (calc) => stripLoads(plane, enclosedPatches(plane, wind, q_d(calc), calc), calc), beside), beside };
  });
}

function leastCase(of: Setting, from: Edge): RoofCase {
  const { plane, edgeDepth, fascia, members, site, columns, dragPosts, walls } = of;
  const onWall = wallDrag(plane, site, from, "least");
  const beside = besideOf(
    columns,
    (calc) => [...dragOnMembers(plane, members, site, from, "least", calc), ...wallsOnRoof(plane, columns, walls, onWall, calc)],
    (calc) => [...dragOnColumns(columns, dragPosts, site, from, "least", calc), ...wallsOnColumns(plane, columns, walls, onWall, calc)],
  );
  const depth = Math.max(edgeDepth, fascia[from]);
  return caseWith({ loadCase: minimumCase(plane, from), source: minimumSource }, (calc) => [minimumLoad(plane, depth, from, calc)], beside);
}

/** The wind cases, and the directions in which they are information only. */
export function windRoofCases(inputs: RoofInputs): { readonly cases: readonly RoofCase[]; readonly outside: readonly OutsideRange[] } {
  const { plane, site, posts } = inputs;
  const of: Setting = {
    ...inputs,
    q_h: velocityPressureAt(plane.meanHeight, site, plainCalc),
    columns: columnsUnder(plane, posts, plainCalc),
    dragPosts: posts.map(({ section, deep, windWidth, panel }) => ({ ...seenBy(section, deep, windWidth), panel })),
  };
  const outside: OutsideRange[] = [];
  const winds = edges.map((from): OneWind => {
    const free = freeRoofCases(of, from, outside);
    return { ...free, cases: [...free.cases, ...walledCases(of, from)] };
  });
  const single = winds.flatMap(({ from, cases }) => [...cases.map(({ one }) => one), leastCase(of, from)]);
  const turned = inputs.rigid === "no" ? [] : torsionCases(plane, winds);
  return { cases: [...single, ...cornerCases(plane, winds), ...turned], outside };
}
