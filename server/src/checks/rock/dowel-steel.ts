/**
 * The bar itself yields: the dowel stretches and the footing lifts off the rock.
 *
 * ACI 318-19 22.4.3.1 and 21.2.2: tension on a reinforcing bar, fy Ab with phi 0.9. Strength-level loads.
 */
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import { check } from "../contract.js";
import { unchangedSince14 } from "../editions.js";
import { isOnRock } from "./block.js";
import { type DowelInputs, dowelPullFormulas, readDowels } from "./dowel-force.js";
import { weighDowel } from "./settle.js";

export const barStrength = formula({
  id: "rock.bar-strength",
  text: "phiT_n = phi * f_y * A_s",
  source: "ACI 318-19 22.4.3.1, 21.2.2",
  symbols: {
    phiT_n: { kind: "force", meaning: "design strength of one bar in tension" },
    f_y: { kind: "steelStress", meaning: "yield strength of the bar", field: "foundations.*.dowels.grade" },
    A_s: { kind: "area", meaning: "nominal area of the bar", field: "foundations.*.dowels.bar" },
  },
  constants: { phi: "0.9" },
});

export interface DowelSteelInputs extends DowelInputs {
  readonly bar: string;
  readonly area: number;
  readonly yield: number;
}

export const dowelSteel = check({
  id: "rock.dowel-steel",
  title: "Steel of the rock dowels",
  link: "rock",
  level: "strength",
  clause: "ACI 318-19 22.4.3.1",
  editions: unchangedSince14,
  fails: "The dowel bar yields and the footing lifts off the rock.",
  seen: "An open joint under the footing after a storm, with the bars still fast in the rock.",
  range:
    "Tension; shear on the dowels is in the check of sliding. The footing is rigid. Dowels stand evenly about the middle of a pad, in a grid that is known where the moment lifts an edge; a wall has one row along its middle or two, and the moment is taken across it; behind a wall that holds soil back its pressure is counted, with the fill and without it.",
  formulas: [...dowelPullFormulas, barStrength],
  applies: isOnRock,
  inputs: (support, gather, place): DowelSteelInputs => {
    const dowels = support.foundation?.fields.dowels?.value;
    const bar = gather.needs(dowels?.bar, "size of the dowel bars");
    const grade = findBarGrade(gather.needs(dowels?.grade, "grade of the dowel bars") ?? "60");
    return { ...readDowels(support, gather, place), bar: bar?.name ?? "", area: bar?.area ?? Number.NaN, yield: "fy" in grade ? grade.fy : Number.NaN };
  },
  fixedBy: (support) => support.foundation?.fields.dowels?.value.bar ?? support.foundation?.fields.dowels ?? support.foundation,
  evaluate: (inputs, demand, calc) => weighDowel(inputs, demand, calc(barStrength, { f_y: inputs.yield, A_s: inputs.area }), calc),
  advise: (inputs, outcome, say) =>
    `one ${inputs.bar} dowel pulls ${say.show(outcome.demand, "force")}; its steel holds ${say.show(outcome.capacity, "force")}. Use a larger bar or more dowels.`,
});
