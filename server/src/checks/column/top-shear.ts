/**
 * The connection at the column top slides or turns off. In the field a roof has walked sideways off its cap plates, or a rigid joint has
 * opened on one side.
 *
 * Uplift, shear and moment of one combination against the stated strengths, added: stated strengths come each for itself, and how
 * they hold together is for their maker to say. The sum is the safe side of that, common practice without a source.
 */
import { formula } from "../../formula/declare.js";
import { check, unchecked, weigh } from "../contract.js";
import { resultantMoment } from "./interaction.js";
import { resultantShear } from "./shear.js";
import { carriesTop, isDescribed, readLevel, statedLevels, topOf } from "./top-parts.js";
import { netUplift } from "./top-connection.js";

export const topUse = formula({
  id: "column.top-use",
  text: "U = T / T_n + V / V_n + M / M_n",
  source: "common practice, no source: stated strengths used together are summed",
  symbols: {
    U: { kind: "ratio", meaning: "uplift, shear and moment against stated strengths" },
    T: { kind: "force", meaning: "net uplift at the column top" },
    T_n: { kind: "force", meaning: "stated uplift strength", field: "columns.*.top connection.uplift" },
    V: { kind: "force", meaning: "shear at the column top" },
    V_n: { kind: "force", meaning: "stated shear strength", field: "columns.*.top connection.shear" },
    M: { kind: "moment", meaning: "moment at the column top" },
    M_n: { kind: "moment", meaning: "stated moment strength", field: "columns.*.top connection.moment" },
  },
});

interface TopInputs {
  readonly T_n: number;
  readonly V_n: number;
  /** Left out where none is stated. */
  readonly M_n?: number;
}

export const topShear = check({
  id: "column.top-shear",
  title: "Uplift, shear and moment at the column top",
  link: "column",
  level: ["strength", "allowable"],
  tried: statedLevels,
  demands: "column top",
  clause: "IBC 2021 1604.4; ratings of the connection by its maker or designer",
  fails: "The connection between roof and column top lets go sideways, or by sideways force, moment and uplift together.",
  seen: "A roof shifted off its cap plates; straps torn at a slant.",
  range: "Stated strengths, summed, under loads of the level they are stated at. Where bolts or a weld are described, their own checks take the place of this one. Where reactions are given by hand the connection is not looked at.",
  formulas: [netUplift, resultantShear, resultantMoment, topUse],
  applies: (support) => carriesTop(support) && !isDescribed(support),
  inputs: (support, gather): TopInputs => {
    const top = topOf(support)?.value;
    readLevel(support, gather);
    const M_n = gather.may(top?.moment);
    return {
      T_n: gather.need(top?.uplift, "uplift strength of the connection at the column top"),
      V_n: gather.need(top?.shear, "shear strength of the connection at the column top"),
      ...(M_n === undefined ? {} : { M_n }),
    };
  },
  fixedBy: (support) => topOf(support)?.value.shear ?? topOf(support) ?? support.column,
  evaluate: ({ T_n, V_n, M_n }, { top }, calc) => {
    const T = calc(netUplift, { P: top.P });
    const V = calc(resultantShear, { V_x: top.Vx, V_y: top.Vy });
    if (top.Mx === 0 && top.My === 0) return weigh(calc(topUse, { T, T_n, V, V_n, M: 0, M_n: 1 }), 1, "ratio");
    if (M_n === undefined) return unchecked("the column top carries a moment, and no moment strength of its connection is stated; state it (top connection, moment), or describe the bolts or the weld");
    return weigh(calc(topUse, { T, T_n, V, V_n, M: calc(resultantMoment, { M_x: top.Mx, M_y: top.My }), M_n }), 1, "ratio");
  },
  advise: (_, outcome, say) => `${say.show(outcome.demand, "ratio")} times what is stated, with uplift, shear and moment together. Take a stronger connection, or move the columns closer together.`,
});
