/** Every wind case of a roof: pressures by the figures and the least force, for each edge, with the drag of what stands in the wind beside them. */
import { plainCalc } from "../../formula/calc.js";
import type { Edge } from "../demand.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofInputs } from "../roof-inputs.js";
import { edges } from "../roof-plane.js";
import { columnsUnder, stripLoads } from "../way-down.js";
import { besideOf, caseWith } from "./beside.js";
import { flowFrom } from "./blocked.js";
import { dragOnColumns, dragOnMembers } from "./drag.js";
import { dragOnFascia } from "./fascia.js";
import { directionOf, windCases, windParts, windPatches } from "./free-roof.js";
import { minimumCase, minimumLoad, minimumSource } from "./minimum.js";
import { figureFor } from "./net-coefficients.js";
import { seenBy } from "./posts.js";
import { velocityPressureAt } from "./velocity-pressure.js";

/** A direction of the wind in which the figure's range does not hold. */
export interface OutsideRange {
  readonly from: Edge;
  readonly figure: string;
  readonly because: string;
}

/** The wind cases, and the directions in which they are information only. */
export function windRoofCases(inputs: RoofInputs): { readonly cases: readonly RoofCase[]; readonly outside: readonly OutsideRange[] } {
  const { plane, flow, blocked, edgeDepth, site, posts, fascia, members } = inputs;
  const q_h = velocityPressureAt(plane.meanHeight, site, plainCalc);
  const columns = columnsUnder(plane, posts, plainCalc);
  const dragPosts = posts.map(({ section, deep, windWidth, panel }) => ({ ...seenBy(section, deep, windWidth), panel }));
  const cases: RoofCase[] = [];
  const outside: OutsideRange[] = [];
  for (const from of edges) {
    const direction = directionOf(site.standard, plane, from);
    const use = figureFor(direction, plainCalc);
    if (use.outside !== undefined) outside.push({ from, figure: use.figure, because: use.outside });
    const beside = besideOf(
      columns,
      (calc) => [...dragOnFascia(plane, columns, fascia, site, q_h, from, calc), ...dragOnMembers(plane, members, site, from, "by coefficient", calc)],
      (calc) => dragOnColumns(columns, dragPosts, site, from, "by coefficient", calc),
    );
    for (const wind of windCases(plane, flowFrom(flow, blocked, from), [from])) {
      const named = { loadCase: wind.loadCase, source: use.source, outside: use.outside, parts: () => windParts(wind, direction, q_h) };
      cases.push(caseWith(named, (calc) => stripLoads(plane, windPatches(plane, wind, direction, q_h, calc), calc), beside));
    }
    const depth = Math.max(edgeDepth, fascia[from]);
    const least = besideOf(
      columns,
      (calc) => dragOnMembers(plane, members, site, from, "least", calc),
      (calc) => dragOnColumns(columns, dragPosts, site, from, "least", calc),
    );
    cases.push(caseWith({ loadCase: minimumCase(plane, from), source: minimumSource }, (calc) => [minimumLoad(plane, depth, from, calc)], least));
  }
  return { cases, outside };
}
