/** What a pad stands on, for the checks of its concrete, which are the same on soil and on rock but for what presses and what pulls. */
import type { Demand } from "../../actions/demand.js";
import type { Calc, Formula } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { isFooting, type Purpose } from "./body.js";
import { type PadInputs, readPad } from "./pad.js";
import { type Acting, actingOn, sectionFormulas } from "./sections.js";
import { isOwn } from "./shared-pad.js";

export interface PadOn<I extends PadInputs> {
  /** Id of a check by its limit state. */
  readonly id: (limit: string) => string;
  readonly link: "footing" | "rock";
  /** As it stands in a title. */
  readonly words: string;
  /** Pads with those bars, and of these the ones under one column. */
  readonly applies: (support: Support) => boolean;
  readonly isOwn: (support: Support) => boolean;
  readonly read: (support: Support, gather: Gather, place: number) => I;
  readonly acting: (inputs: I, demand: Demand<"strength">, purpose: Purpose | "by factor", calc: Calc) => Acting;
  /** Whether the size of what stands on the pad is not known, and it is taken as a point. */
  readonly isPoint: (inputs: I) => boolean;
  /** Ways the weights on the pad are looked at where its top is bent. */
  readonly purposes: readonly Purpose[];
  readonly formulas: readonly Formula<any, any>[];
  /** What is taken off the pressure, and what goes with it, as a sentence of a range. */
  readonly net: string;
  /** How the top of the pad fails, and how that is looked at. */
  readonly top: { readonly title: string; readonly fails: string; readonly seen: string; readonly range: string };
}

export const onSoil: PadOn<PadInputs> = {
  id: (limit) => `footing.${limit}`,
  link: "footing",
  words: "the pad",
  applies: isFooting,
  isOwn,
  read: readPad,
  acting: actingOn,
  isPoint: () => false,
  purposes: ["holds", "presses"],
  formulas: sectionFormulas,
  net: "Net of the weight of the pad and of the soil on it.",
  top: {
    title: "Top of the pad where it lifts",
    fails: "The lifted side of the pad hangs by its own weight and the soil on it, and cracks at its top.",
    seen: "A pad broken beside its pedestal after the first storm that lifted it.",
    range: "Weight of the soil above is counted both ways: as it holds, and in full as it hangs on the pad. Soil held by a cone or by friction is not hung on the pad.",
  },
};
