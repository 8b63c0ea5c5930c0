/**
 * The cases of snow on the roof, each by itself: even snow (with the rain that may fall on it), the least load of a low slope, unbalanced
 * snow on a pitched roof, a drift against a higher roof, and snow that slides from it.
 */
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { plainCalc } from "../../formula/calc.js";
import { uniformCase } from "../gravity/vertical.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofPlane } from "../roof-plane.js";
import type { SnowSite } from "./editions.js";
import { driftedSnow, slidSnow, type HigherRoof } from "./higher-roof.js";
import { evenSnowWithRain, leastOnRoof } from "./sloped.js";
import { isUnbalanced, leeEaves, unbalancedSnow } from "./unbalanced.js";

export interface SnowInputs {
  readonly site: SnowSite;
  /** An unobstructed slippery roof, so that snow can slide off. */
  readonly slippery: boolean;
  /** Simple rafters span from eave to ridge. */
  readonly simpleRafters: boolean;
  readonly higher?: HigherRoof;
}

const caseOf = (id: string, title: string, source: string, loads: (calc: Calc) => readonly RoofLoad[]): RoofCase => ({ loadCase: { id: `snow/${id}`, type: "S", title }, source, loads });

export function snowCases(roof: RoofPlane, { site, slippery, simpleRafters, higher }: SnowInputs): readonly RoofCase[] {
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
  if (higher) {
    cases.push(caseOf("drift", `snow drifted against the higher roof on the ${higher.edge}`, clause("7.7.1"), (calc) => driftedSnow(roof, site, slippery, higher, calc)));
    if (higher.sliding > 0) cases.push(caseOf("sliding", `snow slid from the higher roof on the ${higher.edge}`, clause("7.9"), (calc) => slidSnow(roof, site, slippery, higher, calc)));
  }
  return cases;
}
