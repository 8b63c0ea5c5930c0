/**
 * The cases of snow on the roof, each by itself: even snow (with the rain that may fall on it), the least load of a low slope, unbalanced
 * snow on a pitched roof, snow gathered in a trough, snow on
 * one side of a single line of columns, a drift against a higher roof, and snow that slides from it.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { plainCalc } from "../../formula/calc.js";
import type { OneSide } from "../gravity/one-side.js";
import { rectangleLoad, uniformCase } from "../gravity/vertical.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofPlane } from "../roof-plane.js";
import type { SnowSite } from "./editions.js";
import { driftedSnow, slidSnow, type HigherRoof } from "./higher-roof.js";
import { evenSnow, evenSnowWithRain, leastOnRoof } from "./sloped.js";
import { gatheredSnow, gathers } from "./trough.js";
import { isUnbalanced, leeEaves, unbalancedSnow } from "./unbalanced.js";

export interface SnowInputs {
  readonly site: SnowSite;
  /** An unobstructed slippery roof, so that snow can slide off. */
  readonly slippery: boolean;
  /** Simple rafters span from eave to ridge. */
  readonly simpleRafters: boolean;
  readonly higher?: HigherRoof;
}

export const halfBalanced = formula({
  id: "snow.half-balanced",
  text: "p_h = 0.5 * p_s",
  source: "ASCE 7-16 and 7-22 7.5, ASCE 7-10 7.5 (from memory): half of the balanced snow on the other spans, a cantilever counting as one",
  symbols: { p_h: { kind: "pressure", meaning: "snow on the other side of the columns" }, p_s: { kind: "pressure", meaning: "sloped roof snow load on plan" } },
});

const caseOf = (id: string, title: string, source: string, loads: (calc: Calc) => readonly RoofLoad[]): RoofCase => ({ loadCase: { id: `snow/${id}`, type: "S", title }, source, loads });

/** `sides` are those of a single line of columns. */
export function snowCases(roof: RoofPlane, { site, slippery, simpleRafters, higher }: SnowInputs, sides: readonly OneSide[] = []): readonly RoofCase[] {
  if (!(site.groundSnow > 0)) return [];
  const clause = (section: string): string => `${site.standard} ${section}`;
  const cases: RoofCase[] = [
    uniformCase(roof, { id: "snow/even", type: "S", title: "even snow" }, clause("7.3, 7.4 and 7.10"), (calc) => evenSnowWithRain(roof, site, slippery, calc)),
  ];
  if (leastOnRoof(roof, site, plainCalc) !== undefined) {
    cases.push(
      uniformCase(roof, { id: "snow/least", type: "S", title: "least snow of a low slope" }, clause(site.standard === "ASCE 7-22" ? "7.3.3" : "7.3.4"), (calc) => leastOnRoof(roof, site, calc) ?? NaN),
    );
  }
  if (roof.shape === "pitched" && isUnbalanced(roof.slope)) {
    for (const lee of leeEaves(roof)) {
      cases.push(caseOf(`unbalanced/${lee}`, `unbalanced snow, blown to the ${lee} eave`, clause("7.6.1"), (calc) => unbalancedSnow(roof, site, slippery, simpleRafters, lee, calc)));
    }
  }
  if (roof.shape === "troughed" && gathers(roof.slope)) cases.push(caseOf("valley", "snow gathered in the valley", clause("7.6.3 (from memory)"), (calc) => gatheredSnow(roof, site, calc)));
  for (const { toward, there, rest } of sides) {
    cases.push(
      caseOf(`one-side/${toward}`, `snow ${toward} of the columns, half of it on the other side`, clause("7.5 (from memory)"), (calc) => {
        const p_s = evenSnow(roof, site, slippery, calc);
        return [rectangleLoad(roof, there, p_s, calc), rectangleLoad(roof, rest, calc(halfBalanced, { p_s }), calc)];
      }),
    );
  }
  if (higher) {
    cases.push(caseOf("drift", `snow drifted against the higher roof on the ${higher.edge}`, clause("7.7.1"), (calc) => driftedSnow(roof, site, slippery, higher, calc)));
    if (higher.sliding > 0) cases.push(caseOf("sliding", `snow slid from the higher roof on the ${higher.edge}`, clause("7.9"), (calc) => slidSnow(roof, site, slippery, higher, calc)));
  }
  return cases;
}
