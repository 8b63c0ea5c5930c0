/**
 * What tries the connection at each column top: beside the main frame's forces, the edge pressures of components and cladding on the
 * roof area nearest to the column, against the dead load of the same area.
 */
import { plainCalc, recordingCalc } from "../formula/calc.js";
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import { tributaryByZone, type ZonedAreas } from "../mechanics/tributary.js";
import { wallsAtEdges } from "./blocked-inputs.js";
import { chosenCases, combine, type CombinedLevel } from "./combinations.js";
import { deadCases, deadOnPlan } from "./dead.js";
import type { Demand, LoadCase, LoadDerivation } from "./demand.js";
import type { RoofInputs } from "./roof-inputs.js";
import type { Reaction } from "./way-down.js";
import { flowAnywhere } from "./wind/blocked.js";
import { edgeUplift, edgeVelocityPressure, edgeZones } from "./wind/edge-pressures.js";
import { edgeTable } from "./wind/edge-tables.js";
import { flowsOf } from "./wind/free-roof.js";
import type { Flow } from "./wind/free-roof-tables.js";

const deadOnArea = formula({
  id: "actions.column-top.dead",
  text: "P_D = D * A",
  source: "statics: the dead load of the tributary area",
  symbols: {
    P_D: { kind: "force", meaning: "dead load of the tributary area" },
    D: { kind: "pressure", meaning: "dead load of the roof on plan", field: "roof.dead" },
    A: { kind: "planArea", meaning: "tributary area" },
  },
});

const upward = formula({
  id: "actions.column-top.upward",
  text: "P = -W_u",
  source: "sign convention: compression positive",
  symbols: { P: { kind: "force", meaning: "axial force at the column top, compression positive" }, W_u: { kind: "force", meaning: "uplift on the tributary area" } },
});

const atTop = (P: number): Reaction => {
  const forces: Forces = { P, Vx: 0, Vy: 0, Mx: 0, My: 0 };
  return { top: forces, base: forces };
};

const edgeCase = (flow: Flow): LoadCase => ({ id: `wind/edges/${flow}`, type: "W", title: `wind on the roof area at the column top, with edge and corner pressures, ${flow} flow` });

interface Geometry {
  readonly theta: number;
  readonly a: number;
  readonly areas: ZonedAreas;
}

function geometryAt(inputs: RoofInputs, place: number, zones: ReturnType<typeof edgeZones>, calc: Calc): Geometry {
  const { plane, posts } = inputs;
  const areas = calc.routine(tributaryByZone, { whole: { x1: 0, x2: plane.length, y1: 0, y2: plane.width }, columns: posts, of: place, zones: zones.zones });
  return { theta: zones.theta, a: zones.a, areas };
}

const upliftAt = (inputs: RoofInputs, { theta, a, areas }: Geometry, flow: Flow, q_h: number, calc: Calc): number =>
  calc(upward, { W_u: edgeUplift(inputs, theta, a, areas, flow, q_h, calc) });

/** Combinations of edge pressures with the dead load of the tributary area, for each column in the order of the inputs. */
export function edgeDemands<L extends CombinedLevel>(inputs: RoofInputs, level: L): readonly (readonly Demand<L>[])[] {
  const { plane, dead, posts, site } = inputs;
  const q_h = edgeVelocityPressure(site, plane.meanHeight, plainCalc);
  const zones = edgeZones(plane, plainCalc);
  const flows = flowsOf(flowAnywhere(inputs.flow, inputs.blocked));
  const estimates = deadCases(plane, dead, posts).map(({ loadCase }) => ({ loadCase, D: deadOnPlan(dead, plane.slope, loadCase.estimate ?? "light", plainCalc) }));
  const chosen = chosenCases(site.standard, level, [...estimates.map(({ loadCase }) => loadCase), ...flows.map(edgeCase)]).filter(({ cases }) => cases.some(({ type }) => type === "W"));
  return posts.map((_, place) => {
    const geometry = geometryAt(inputs, place, zones, plainCalc);
    const reactions = [
      ...estimates.map(({ D }) => atTop(plainCalc(deadOnArea, { D, A: geometry.areas.all }))),
      ...flows.map((flow) => atTop(upliftAt(inputs, geometry, flow, q_h, plainCalc))),
    ];
    const demands = combine(chosen, reactions, plainCalc);
    return inputs.closed === undefined ? demands : demands.map((demand) => ({ ...demand, beyond: wallsAtEdges(inputs.closed ?? "") }));
  });
}

/** The same with its steps, one derivation for each column. */
export function edgeDerivations(inputs: RoofInputs): readonly LoadDerivation[] {
  const { plane, dead, posts, site } = inputs;
  const { source } = edgeTable(site.standard, plane.shape);
  return posts.map(({ support }, place): LoadDerivation => {
    const { calc, steps } = recordingCalc();
    const number = posts.slice(0, place + 1).filter((post) => post.support === support).length;
    const geometry = geometryAt(inputs, place, edgeZones(plane, calc), calc);
    calc.note("The dead load of the area, by the light estimate where there are two:");
    calc(deadOnArea, { D: deadOnPlan(dead, plane.slope, "light", plainCalc), A: geometry.areas.all });
    const q_h = edgeVelocityPressure(site, plane.meanHeight, calc);
    for (const flow of flowsOf(flowAnywhere(inputs.flow, inputs.blocked))) {
      calc.note(`In ${flow} flow, zones 1, 2 and 3 in turn:`);
      upliftAt(inputs, geometry, flow, q_h, calc);
    }
    return { title: `edge pressures at the top of column ${number} of ${support.replace(/^columns\./u, "")}`, source, steps };
  });
}
