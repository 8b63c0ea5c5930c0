/**
 * Short bars drilled into ledge are pins: they stop a footing from sliding, and are taken for anchors once a roof pulls on them. In the field they
 * come out with a collar of rock, or turn over in their holes.
 *
 * Common practice, no source: pins of no. 6 go 6 to 8 in into hard rock, about 2 ft apart; eight bar diameters and 6 in are the least here. A
 * dowel that is to pull goes 12 in and twelve bar diameters deep at least, and then its steel, bond and cone are weighed.
 */
import { formula } from "../../formula/declare.js";
import { check, unchecked, weigh } from "../contract.js";
import { hasDowels } from "./block.js";
import { dowelPull, type DowelInputs, dowelPullFormulas, readDowels } from "./dowel-force.js";

const depth = { kind: "length", meaning: "least depth in sound rock" } as const;
const diameter = { kind: "length", meaning: "diameter of the bar", field: "foundations.*.dowels.bar" } as const;

export const pinDepth = formula({
  id: "rock.pin-depth",
  text: "D_n = max(8 * d_b, l_6)",
  source: "common practice, no source: pins of no. 6 go 6 to 8 in into hard rock",
  symbols: { D_n: depth, d_b: diameter },
  constants: { l_6: "6 inch" },
});

export const anchorDepth = formula({
  id: "rock.anchor-depth",
  text: "D_n = max(12 * d_b, l_12)",
  source: "common practice, no source",
  symbols: { D_n: depth, d_b: diameter },
  constants: { l_12: "12 inch" },
});

export interface DepthInputs extends DowelInputs {
  readonly diameter: number;
  readonly intoRock: number;
}

export const dowelDepth = check({
  id: "rock.dowel-depth",
  title: "Depth of the dowels: anchors or pins",
  link: "rock",
  level: "allowable",
  clause: "common practice, no source",
  fails: "Short pins, set to stop sliding, are taken for anchors against uplift.",
  seen: "Pins pulled out of the ledge, each with a collar of rock.",
  range: "The least depth alone; what a dowel of that depth holds is for its steel, bond and cone. Where no dowel pulls, the depth is that of a pin.",
  formulas: [...dowelPullFormulas, pinDepth, anchorDepth],
  applies: hasDowels,
  inputs: (support, gather, place): DepthInputs => {
    const dowels = support.foundation?.fields.dowels?.value;
    return {
      ...readDowels(support, gather, place),
      diameter: gather.needs(dowels?.bar, "size of the dowel bars")?.diameter ?? Number.NaN,
      intoRock: gather.need(dowels?.["into rock"], "depth of the dowel holes in rock"),
    };
  },
  fixedBy: (support) => support.foundation?.fields.dowels?.value["into rock"] ?? support.foundation?.fields.dowels ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const found = dowelPull(inputs, demand, calc);
    if ("because" in found) return unchecked(found.because);
    const d_b = inputs.diameter;
    if (found.pull > 0) return weigh(calc(anchorDepth, { d_b }), inputs.intoRock, "length");
    calc.note("No dowel pulls: as pins against sliding they go this deep at least.");
    return weigh(calc(pinDepth, { d_b }), inputs.intoRock, "length");
  },
  advise: (_inputs, outcome, say) =>
    `dowels ${say.show(outcome.capacity, "length")} into the rock; ${say.show(outcome.demand, "length")} is the least for what they do. Short pins stop sliding and are no anchors: drill deeper where the footing lifts, and have steel, bond and cone hold the pull.`,
});
