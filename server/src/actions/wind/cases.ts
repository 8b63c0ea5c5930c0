/** Every wind case of a roof: pressures by the figures and the least force, for each edge, with the drag of what stands in the wind beside them. */
import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { forcesOfColumnLoads, propsBack, propsOnRoof, withColumnLoads } from "../column-loads.js";
import type { Edge } from "../demand.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofInputs } from "../roof-inputs.js";
import { edges } from "../roof-plane.js";
import { columnsUnder, stripLoads } from "../way-down.js";
import { flowFrom } from "./blocked.js";
import { dragOnColumns, dragOnFascia, dragOnMembers, type DragPressure } from "./drag.js";
import { directionOf, windCases, windParts, windPatches } from "./free-roof.js";
import { minimumCase, minimumLoad, minimumSource } from "./minimum.js";
import { figureFor } from "./net-coefficients.js";
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
  const dragPosts = posts.map(({ section, windWidth, ends, panel }) => ({ width: windWidth ?? section.width, ends, panel }));
  const cases: RoofCase[] = [];
  const outside: OutsideRange[] = [];

  /** A case whose roof loads have the drag on members and columns beside them. */
  const add = (from: Edge, by: DragPressure, of: Pick<RoofCase, "loadCase" | "source" | "outside" | "parts">, onRoof: (calc: Calc) => readonly RoofLoad[]): void => {
    // The drag on the columns does not depend on the pressures of the roof: found once, and shown once.
    const drag = dragOnColumns(columns, dragPosts, site, from, by, plainCalc);
    cases.push({
      ...of,
      loads: (calc) => {
        const roof = [...onRoof(calc), ...dragOnMembers(plane, members, site, from, by, calc)];
        calc.note("Drag on the columns, propped by the roof at their tops:");
        return [...roof, ...propsOnRoof(columns, dragOnColumns(columns, dragPosts, site, from, by, calc), calc)];
      },
      beside: (calc) => [...forcesOfColumnLoads(columns, drag, calc), ...propsBack(columns, drag, calc)],
      finish: (reactions, calc) => withColumnLoads(reactions, columns, drag, calc),
    });
  };

  for (const from of edges) {
    const direction = directionOf(site.standard, plane, from);
    const use = figureFor(direction, plainCalc);
    if (use.outside !== undefined) outside.push({ from, figure: use.figure, because: use.outside });
    for (const wind of windCases(plane, flowFrom(flow, blocked, from), [from])) {
      add(from, "by coefficient", { loadCase: wind.loadCase, source: use.source, outside: use.outside, parts: () => windParts(wind, direction, q_h) }, (calc) => [
        ...stripLoads(plane, windPatches(plane, wind, direction, q_h, calc), calc),
        ...dragOnFascia(plane, fascia, site, q_h, from, calc),
      ]);
    }
    const depth = Math.max(edgeDepth, fascia[from]);
    add(from, "least", { loadCase: minimumCase(plane, from), source: minimumSource }, (calc) => [minimumLoad(plane, depth, from, calc)]);
  }
  return { cases, outside };
}
