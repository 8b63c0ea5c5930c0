/**
 * A knee brace buckles or tears off, and the column sways that it held. In the field a brace hangs by one bolt after a storm, with the post beside it
 * out of plumb.
 *
 * The force along the brace, by statics from the column below it, against the strength stated for the brace and its ends.
 */
import { isByHand } from "../../actions/by-hand.js";
import { braceAxial, braceLevel, pieceShear } from "../../actions/knee-braces.js";
import type { Forces } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import type { Column } from "../../project/model.js";
import { check, unchecked, weigh } from "../contract.js";

interface BraceInputs {
  /** The brace holds the column in this direction. */
  readonly alongX: boolean;
  readonly alongY: boolean;
  readonly a_k: number;
  readonly b_k: number;
  readonly n_k: number;
  readonly strength: number;
}

const isHeld = (fields: Column | undefined, way: "sway along x" | "sway along y"): boolean => fields?.[way]?.value === "knee brace" || fields?.[way]?.value === "fixed base and knee brace";

function axialIn({ a_k, b_k, n_k }: BraceInputs, V: number, M_f: number, k: 1 | -1, calc: Calc): number {
  const V_t = calc(pieceShear, { k, M_f, a_k });
  return calc(braceAxial, { H_k: calc(braceLevel, { V, V_t }), a_k, b_k, n_k });
}

/** The larger force of the braces of both directions. */
function axialOf(inputs: BraceInputs, { Vx, Vy, Mx, My }: Forces, calc: Calc): number {
  const x = inputs.alongX ? axialIn(inputs, Vx, My, 1, calc) : 0;
  const y = inputs.alongY ? axialIn(inputs, Vy, Mx, -1, calc) : 0;
  return Math.max(x, y);
}

export const columnKneeBrace = check({
  id: "column.knee-brace",
  title: "Force in the knee brace",
  link: "column",
  level: "strength",
  clause: "AISC 360-22 D2 and E3 by way of a stated strength; statics of the joint at the foot of the brace",
  fails: "The knee brace buckles, or the bolts at one of its ends tear out, and the column sways that it held.",
  seen: "A brace hanging by one bolt after a storm, the post beside it out of plumb.",
  range:
    "The force along the brace from shear and moment of the column below its foot, the top of the column pinned; each direction by itself. What the wind puts on the short piece of column above the foot is left out. " +
    "The strength is a stated one, for pull and press alike; the bending of column and roof framing where the brace meets them is not in it.",
  formulas: [pieceShear, braceLevel, braceAxial],
  applies: ({ column }) => column !== undefined && !isByHand(column.fields) && (isHeld(column.fields, "sway along x") || isHeld(column.fields, "sway along y")),
  inputs: (support, gather): BraceInputs => {
    const fields = support.column?.fields;
    const brace = fields?.["knee brace"]?.value;
    gather.may(fields?.["sway along x"]);
    gather.may(fields?.["sway along y"]);
    return {
      alongX: isHeld(fields, "sway along x"),
      alongY: isHeld(fields, "sway along y"),
      a_k: gather.need(brace?.["below top"], "distance of the knee brace below the column top"),
      b_k: gather.need(brace?.run, "run of the knee brace"),
      n_k: gather.may(brace?.sides) === "both" ? 2 : 1,
      strength: gather.need(brace?.strength, "design strength of the knee brace and its ends"),
    };
  },
  fixedBy: (support) => support.column?.fields["knee brace"]?.value.strength ?? support.column?.fields["knee brace"] ?? support.column,
  evaluate: (inputs, { top }, calc) => {
    const N_k = axialOf(inputs, top, calc);
    return Number.isFinite(N_k) ? weigh(N_k, inputs.strength, "force") : unchecked("the force in the knee brace leaves the range of numbers; look at its distance below the top and its run");
  },
  advise: ({ a_k }, outcome, say) =>
    `Strength ${say.show(outcome.capacity, "force")}; ${say.show(outcome.demand, "force")} needed along a brace that meets the column ${say.show(a_k, "length")} below its top. Take a stronger brace, or let it meet the column lower down.`,
});
