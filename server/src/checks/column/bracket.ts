/**
 * The bracket that holds the foot of a column turns: its screws pull, its plate bends, and the column leans although nothing in the column
 * itself has failed. A bracket without a rated moment holds a column down and in place, and not upright.
 *
 * The moment at the base about the axis the bracket is relied on for, against the moment its maker or designer rates it for. Allowable-stress
 * loads, as such ratings are.
 */
import { formula } from "../../formula/declare.js";
import type { Column } from "../../project/model.js";
import { check, weigh } from "../contract.js";

export const bracketMoment = formula({
  id: "column.bracket-moment",
  text: "M = max(n_x * abs(M_y), n_y * abs(M_x))",
  source: "statics: a push along x bends about the north axis, one along y about the east axis",
  symbols: {
    M: { kind: "moment", meaning: "moment on the bracket" },
    n_x: { kind: "number", meaning: "1 where the bracket holds the column along x, otherwise 0", field: "columns.*.sway along x" },
    n_y: { kind: "number", meaning: "1 where the bracket holds the column along y, otherwise 0", field: "columns.*.sway along y" },
    M_x: { kind: "moment", meaning: "moment about the east axis at the base" },
    M_y: { kind: "moment", meaning: "moment about the north axis at the base" },
  },
});

interface BracketInputs {
  readonly n_x: number;
  readonly n_y: number;
  readonly rated: number;
}

const isHeld = (fields: Column | undefined, way: "sway along x" | "sway along y"): boolean => fields?.[way]?.value === "bracket";

export const columnBracket = check({
  id: "column.bracket",
  title: "Moment on the bracket at the column base",
  link: "column",
  level: "allowable",
  clause: "rating of the bracket by its maker or designer",
  fails: "The bracket at the column base turns or tears under the moment of a push at the roof.",
  seen: "A post that can be rocked by hand in its bracket; screws drawn out on the side the wind comes from.",
  range:
    "Each direction by itself, against one rated moment. The bracket counts as rigid in sharing loads and in the sway: its own turning is not in them. " +
    "Shear and uplift on the bracket are for its maker's ratings.",
  formulas: [bracketMoment],
  applies: (support) => isHeld(support.column?.fields, "sway along x") || isHeld(support.column?.fields, "sway along y"),
  inputs: (support, gather): BracketInputs => {
    const fields = support.column?.fields;
    return {
      n_x: gather.may(fields?.["sway along x"]) === "bracket" ? 1 : 0,
      n_y: gather.may(fields?.["sway along y"]) === "bracket" ? 1 : 0,
      rated: gather.need(fields?.bracket?.value["rated moment"], "rated moment of the bracket"),
    };
  },
  fixedBy: (support) => support.column?.fields.bracket?.value["rated moment"] ?? support.column?.fields.bracket ?? support.column,
  evaluate: ({ n_x, n_y, rated }, { base }, calc) => weigh(calc(bracketMoment, { n_x, n_y, M_x: base.Mx, M_y: base.My }), rated, "moment"),
  advise: (_, outcome, say) =>
    `Moment ${say.show(outcome.demand, "moment")}; the bracket is rated for ${say.show(outcome.capacity, "moment")}. Take a stronger bracket, brace a bay in that direction, or fix more columns.`,
});
