/**
 * The bars of the pad lie too far apart: between two of them the concrete cracks wide.
 *
 * ACI 318-19 13.3.2.1 and 13.3.3.1 with 7.7.2.3 and 8.7.2.2: at most three times the thickness and 18 in.
 */
import { formula } from "../../formula/declare.js";
import { check, sameInAll, weigh } from "../contract.js";
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";

export const largestSpacing = formula({
  id: "footing.largest-spacing",
  text: "s_max = min(3 * t, s_18)",
  source: "ACI 318-19 7.7.2.3 (from memory)",
  symbols: { s_max: { kind: "length", meaning: "largest spacing" }, t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" } },
  constants: { s_18: "18 inch" },
});

export const barSpacingOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("bar-spacing"),
    title: `Spacing of the bars of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 7.7.2.3",
    editions: padEditions,
    fails: "The bars lie so far apart that the concrete between them cracks wide.",
    seen: "Wide cracks between rusting bars.",
    range: "Largest spacing of bottom and top bars both ways. The least clear distance is not checked.",
    formulas: [largestSpacing],
    applies: on.applies,
    inputs: on.read,
    measures: sameInAll,
    fixedBy: (support) => support.foundation?.fields["bottom bars"] ?? support.foundation,
    evaluate: (inputs, _demand, calc) => {
      const { bottom, top } = inputs;
      const widest = Math.max(bottom.x.spacing, bottom.y.spacing, top?.x.spacing ?? 0, top?.y.spacing ?? 0);
      return weigh(widest, calc(largestSpacing, { t: inputs.thickness }), "length");
    },
    advise: (_inputs, outcome, say) => `bars ${say.show(outcome.demand, "length")} apart; at most ${say.show(outcome.capacity, "length")} allowed. Add bars.`,
  });

export const footingBarSpacing = barSpacingOf(onSoil);
