/**
 * The short wide pier as a block: it turns over its edge, crushes the ground under its pressed edge, or slides. In the field a stout tube of little
 * depth leans with its column after a storm, its heel out of the ground.
 *
 * Statics of a block on ground that takes no pull, with allowable lateral bearing beside it (IBC 2021 1806). Common practice beside the building code's
 * formula for poles, which is for slender ones.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { footingContact } from "../../mechanics/partial-contact.js";
import type { Unstable } from "../../mechanics/plate-contact.js";
import { roundContact } from "../../mechanics/circular-contact.js";
import { check, unchecked, weigh } from "../contract.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { blockFormulas, type BlockInputs, isBlock, onBlock, readBlock } from "./block.js";
import { slidingTogether } from "./sliding.js";

const M = { kind: "moment", meaning: "moment at the underside, resultant of both directions" } as const;
const M_s = { kind: "moment", meaning: "moment that the soil beside the block takes" } as const;

export const blockHold = formula({
  id: "pier.block-hold",
  text: "M_r = max(N, 0 * abs(N)) * b / 2 + M_s",
  source: "statics about the edge of the underside",
  symbols: {
    M_r: { kind: "moment", meaning: "moment that holds the block on its edge" },
    N: { kind: "force", meaning: "vertical force on the ground, down positive", range: [-1e5, 1e5] },
    b: { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" },
    M_s,
  },
});

export const momentLeft = formula({
  id: "pier.block-moment-left",
  text: "M_b = max(M - M_s, 0 * M)",
  source: "statics: what the soil beside the block does not take comes to the underside",
  symbols: { M_b: { kind: "moment", meaning: "moment on the underside" }, M, M_s },
});

export const diagonalPart = formula({
  id: "pier.block-diagonal",
  text: "M_d = M_b / sqrt(2)",
  source: "geometry: a moment along the diagonal of a square has this much along each side",
  symbols: { M_d: { kind: "moment", meaning: "moment about each side" }, M_b: { kind: "moment", meaning: "moment on the underside" } },
});

/** Largest pressure under the block, and whether some of it has lifted: of a square the worse of a moment along its side and one along its diagonal. */
function pressureOf({ shape, size }: BlockInputs, P: number, M: number, calc: Calc): { readonly qmax: number; readonly contactRatio: number } | Unstable {
  if (shape === "round") return calc.routine(roundContact, { diameter: size, P, M });
  const along = calc.routine(footingContact, { width: size, length: size, P, Mx: 0, My: M });
  if ("unstable" in along) return along;
  const part = calc(diagonalPart, { M_b: M });
  const across = calc.routine(footingContact, { width: size, length: size, P, Mx: part, My: part });
  return "unstable" in across || across.qmax > along.qmax ? across : along;
}

const range =
  "A straight pier less than two widths deep and free at grade, in level ground or with a lateral bearing stated for its slope, rigid. The resultant moment of a square one is taken along its side and along its diagonal. Cohesion counts on the whole underside. Lateral bearing is not doubled here. Side friction is not counted.";

export const blockOverturning = check({
  id: "pier.block-overturning",
  title: "Overturning of a short pier as a block",
  link: "pier",
  level: "allowable",
  clause: "statics; IBC 2021 1806, ASCE 7-22 2.4.1",
  fails: "The pull and the push of the roof turn the pier over its edge.",
  seen: "A stout, shallow pier that leans with its column, its heel out of the ground.",
  range,
  formulas: [...blockFormulas, blockHold],
  applies: isBlock,
  inputs: readBlock,
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { N, M, M_s } = onBlock(inputs, demand, "holds", calc);
    return weigh(M, calc(blockHold, { N, b: inputs.size, M_s }), "moment");
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "moment")} turns the pier over its edge; ${say.show(outcome.capacity, "moment")} holds it. Deepen the pier or widen it.`,
});

export interface BlockBearingInputs extends BlockInputs {
  readonly bearing: GroundValue;
}

export const blockBearing = check({
  id: "pier.block-bearing",
  title: "Bearing under a short pier as a block",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1806.2, Table 1806.2",
  fails: "The ground under the pressed edge of the pier gives way.",
  seen: "A stout, shallow pier that has gone down on one side.",
  range,
  formulas: [...blockFormulas, momentLeft, diagonalPart],
  applies: isBlock,
  inputs: (support, gather): BlockBearingInputs => ({ ...readBlock(support, gather), bearing: groundValue(support, gather, support.ground?.fields.bearing, "bearing", (soil) => soil.verticalBearing) }),
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { N, M, M_s } = onBlock(inputs, demand, "by factor", calc);
    calc.note(inputs.bearing.from);
    const left = calc(momentLeft, { M, M_s });
    if (N <= 0 && left === 0) return weigh(0, inputs.bearing.value, "pressure");
    const pressure = pressureOf(inputs, N, left, calc);
    if ("unstable" in pressure) return unchecked(`${pressure.unstable}; while it does, no pressure balances the load. Deepen or widen the pier until it stands as a block`);
    if (pressure.contactRatio < 1) calc.note("A part of the underside has lifted; the pressure is that of the part in contact.");
    return weigh(pressure.qmax, inputs.bearing.value, "pressure");
  },
  advise: (_inputs, outcome, say) => `as a block the pressed edge bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed. Deepen the pier or widen it.`,
});

export const blockSliding = check({
  id: "pier.block-sliding",
  title: "Sliding of a short pier as a block",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1806.3, Table 1806.2",
  fails: "The push of the roof is more than friction under the pier and the soil before it hold.",
  seen: "A gap behind a shallow pier and a bulge before it.",
  range,
  formulas: [...blockFormulas, slidingTogether],
  applies: isBlock,
  inputs: readBlock,
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { V, R_f, R_h } = onBlock(inputs, demand, "holds", calc);
    return weigh(V, calc(slidingTogether, { R_f, R_p: R_h }), "force");
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "force")} pushes the pier; ${say.show(outcome.capacity, "force")} holds it as a block. Deepen the pier or widen it.`,
});

export const blockChecks = [blockOverturning, blockBearing, blockSliding] as const;
