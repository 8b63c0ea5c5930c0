/**
 * The connection at the column top lets go. In the field the roof lifts off its columns whole, and lies upside down beside them with the
 * bolts or straps still in its beams.
 *
 * The greater of two uplifts counts: that of the main frame at the column top, and that of the edge and corner pressures (components and
 * cladding) on the roof area nearest to the column, each less the dead load of its combination. Range: the stated strength of the
 * connection, at its own load level; IBC 2021 1604.8.1 asks that it resist the uplift.
 */
import { formula } from "../../formula/declare.js";
import { check, weigh } from "../contract.js";
import { carriesTop, isDescribed, readLevel, statedLevels, topOf } from "./top-parts.js";

export const netUplift = formula({
  id: "column.top-uplift",
  text: "T = max(0, -P)",
  source: "statics; axial force is compression positive",
  symbols: {
    T: { kind: "force", meaning: "net uplift at the column top" },
    P: { kind: "force", meaning: "axial force at the column top", range: [-1e5, 1e5] },
  },
});

interface TopInputs {
  /** Strength in uplift, N. */
  readonly strength: number;
}

export const topConnection = check({
  id: "column.top-connection",
  title: "Uplift at the column top",
  link: "column",
  level: ["strength", "allowable"],
  tried: statedLevels,
  demands: "column top",
  clause: "IBC 2021 1604.8.1; ASCE 7-22 Chapter 27 and 30.5, and their earlier editions",
  fails: "The bolts, weld, strap or connector that ties the roof to the column top lets go in uplift.",
  seen: "The roof lies beside its columns after a storm, the straps still on its beams.",
  range:
    "Uplift alone, against the strength that is stated for the connection, under loads of the level it is stated at; shear and moment beside it have a check of their own, and the members it is fastened to are not looked at. " +
    "Edge pressures act on the roof area nearest to the column, with the dead load of that area. Where reactions are given by hand the connection is not looked at.",
  formulas: [netUplift],
  applies: (support) => carriesTop(support) && !(isDescribed(support) && topOf(support)?.value.uplift === undefined),
  inputs: (support, gather): TopInputs => {
    readLevel(support, gather);
    return { strength: gather.need(topOf(support)?.value.uplift, "uplift strength of the connection at the column top") };
  },
  triedBy: "lifts the roof there",
  fixedBy: (support) => support.column?.fields["top connection"]?.value.uplift ?? support.column?.fields["top connection"] ?? support.column,
  evaluate: (inputs, demand, calc) => weigh(calc(netUplift, { P: demand.top.P }), inputs.strength, "force"),
  advise: (_, outcome, say) => `Strength ${say.show(outcome.capacity, "force")}; ${say.show(outcome.demand, "force")} needed in uplift. Take a stronger connection, or move the columns closer together.`,
});
