/** The loads that press straight down on the roof beside its own weight. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { NoActions } from "../demand.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofInputs } from "../roof-inputs.js";
import type { RoofPlane } from "../roof-plane.js";
import type { Sharing } from "../sharing.js";
import { snowCases } from "../snow/cases.js";
import { rainCase } from "./rain.js";
import { sidesOfLine } from "./one-side.js";
import { roofLiveCase, roofLiveOnOneSide } from "./roof-live.js";
import { uniformLoad } from "./vertical.js";

const shareOfColumn = formula({
  id: "actions.gravity.share",
  text: "k = max(P_i / W_u, 0)",
  source: "the way down of a load alike all over the roof",
  symbols: {
    k: { kind: "ratio", meaning: "share of a column of a load alike all over the roof" },
    P_i: { kind: "force", meaning: "force at the top of the column" },
    W_u: { kind: "force", meaning: "load on the whole roof" },
  },
});

/** 1 kPa, of which only the shares are read. */
const unitPressure = 1000;

/** The smallest share any column takes of a load alike all over the roof. */
function smallestShare(plane: RoofPlane, sharing: Sharing | NoActions, calc: Calc): number {
  const load = uniformLoad(plane, unitPressure, calc);
  const shared = "unknown" in sharing ? sharing : sharing.carry([load], calc);
  if ("unknown" in shared) return 0;
  const least = Math.min(...shared.map(({ top }) => top.P));
  return calc(shareOfColumn, { P_i: least, W_u: -load.Fz });
}

export function gravityCases({ plane, live, snow, water, site, posts }: RoofInputs, sharing: Sharing | NoActions): readonly RoofCase[] {
  const sides = sidesOfLine(plane, posts);
  const share = (calc: Calc): number => smallestShare(plane, sharing, calc);
  return [
    roofLiveCase(site.standard, plane, live, share),
    ...roofLiveOnOneSide(site.standard, plane, live, sides, share),
    ...(snow ? snowCases(plane, snow, sides) : []),
    ...(water ? [rainCase(site.standard, plane, water)] : []),
  ];
}
