/**
 * The least sideways force: where no earthquake is asked for, in category A, a structure still is pushed by a hundredth of its weight toward each edge
 * in turn, so that it holds together and stands.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { plainCalc } from "../../formula/calc.js";
import { deadOnPlan } from "../dead.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofInputs } from "../roof-inputs.js";
import { edges, middleOf } from "../roof-plane.js";
import { outward, weightBeside } from "./cases.js";

export const wholeWeight = formula({
  id: "seismic.whole-weight",
  text: "W = D * l * w + W_c",
  source: "ASCE 7-16 1.4.2, ASCE 7-22 1.4.2, ASCE 7-10 1.4.3 (from memory): total dead load",
  symbols: {
    W: { kind: "force", meaning: "dead load of the structure" },
    D: { kind: "pressure", meaning: "dead load of the roof on plan" },
    l: { kind: "distance", meaning: "length of the roof in plan", field: "roof.length" },
    w: { kind: "distance", meaning: "width of the roof in plan", field: "roof.width" },
    W_c: { kind: "force", meaning: "weight of the columns and of added dead loads" },
  },
});

export const leastSideways = formula({
  id: "seismic.least-sideways",
  text: "F = k * 0.01 * W",
  source: "ASCE 7-16 Eq. 1.4-1, ASCE 7-22 Eq. 1.4-1, ASCE 7-10 Eq. 1.4-1 (from memory); each direction by itself",
  symbols: {
    F: { kind: "force", meaning: "push along a plan axis" },
    k: { kind: "ratio", meaning: "sense of the push", range: [-1, 1] },
    W: { kind: "force", meaning: "dead load of the structure" },
  },
});

/** Dead load of the structure, N. */
export function weightOf(inputs: RoofInputs, calc: Calc): number {
  const { plane, dead } = inputs;
  const W_c = weightBeside(inputs, calc);
  return calc(wholeWeight, { D: deadOnPlan(dead, plane.slope, "heavy", calc), l: plane.length, w: plane.width, W_c });
}

/** The cases of the least sideways force, one toward each edge. */
export function leastSidewaysCases(inputs: RoofInputs): readonly RoofCase[] {
  const { plane, site } = inputs;
  const known = weightOf(inputs, plainCalc);
  return edges.map((edge): RoofCase => {
    const way = outward(edge);
    return {
      loadCase: { id: `least-sideways/${edge}`, type: "N", title: `least sideways force toward the ${edge}` },
      source: `${site.standard} ${site.standard === "ASCE 7-10" ? "1.4.3" : "1.4.2"} (from memory)`,
      loads: (calc) => {
        const W = calc === plainCalc ? known : weightOf(inputs, calc);
        const push = (k: number): number => (k === 0 ? 0 : calc(leastSideways, { k, W }));
        return [{ ...middleOf(plane, calc), Fx: push(way.x), Fy: push(way.y), Fz: 0 }];
      },
    };
  });
}
