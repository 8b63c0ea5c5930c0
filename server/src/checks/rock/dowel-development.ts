/**
 * The bar is not deep enough in the concrete above the rock, and pulls out of the footing. In the field the footing has lifted off bars that stand
 * up clean out of the rock.
 *
 * ACI 318-19 25.4.2.3 for a straight bar, shortened by the part of its strength that is asked for (25.4.10.1) and at least 12 in (25.4.2.1); 25.4.3
 * for a hook, which may not be shortened. Where the dowels lap bars of the wall above, the lap is of class B (25.5.2.1) and not shortened.
 */
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, type Outcome, unchecked, weigh } from "../contract.js";
import { developmentFormulas, hooked, straight } from "../footing/bar-development.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { padEditions } from "../footing/pad.js";
import { hasDowels } from "./block.js";
import { dowelPull, type DowelInputs, dowelPullFormulas, readDowels } from "./dowel-force.js";
import { barStrength } from "./dowel-steel.js";

export const neededLength = formula({
  id: "rock.development-needed",
  text: "l_n = max(l_d * min(T_1 / phiT_n, 1), l_12)",
  source: "ACI 318-19 25.4.10.1, 25.4.2.1 (from memory)",
  symbols: {
    l_n: { kind: "length", meaning: "length of the bar needed in the concrete" },
    l_d: { kind: "length", meaning: "development length of a straight bar in tension" },
    T_1: { kind: "force", meaning: "pull on one dowel" },
    phiT_n: { kind: "force", meaning: "design strength of one bar in tension" },
  },
  constants: { l_12: "12 inch" },
});

export const lapNeeded = formula({
  id: "rock.lap-needed",
  text: "l_st = max(1.3 * l_d, l_12)",
  source: "ACI 318-19 25.5.2.1, class B (from memory)",
  symbols: { l_st: { kind: "length", meaning: "length of a lap in tension" }, l_d: { kind: "length", meaning: "development length of a straight bar in tension" } },
  constants: { l_12: "12 inch" },
});

export interface DevelopmentInputs extends DowelInputs {
  readonly edition: string;
  readonly bar: string;
  readonly diameter: number;
  readonly area: number;
  readonly f_y: number;
  readonly fprime_c: number;
  readonly cover: number;
  readonly isHooked: boolean;
  readonly inConcrete: number;
  readonly lap: number | undefined;
  /** Earthquakes in which a length may not be shortened by excess steel. */
  readonly isSeismic: boolean;
}

const seismic = new Set(["D", "E", "F"]);

function readDevelopment(support: Support, gather: Gather, place: number): DevelopmentInputs {
  const f = support.foundation?.fields;
  const dowels = f?.dowels?.value;
  const read = readDowels(support, gather, place);
  const bar = gather.needs(dowels?.bar, "size of the dowel bars");
  const grade = findBarGrade(gather.needs(dowels?.grade, "grade of the dowel bars") ?? "60");
  const inConcrete = gather.need(dowels?.["in concrete"], "length of the dowels in the concrete (`in concrete`)");
  const { body } = read.block;
  // Dowels along the middle of a wall may go on into it; others end below the top of the footing.
  const isDeep = inConcrete >= (body.type === "pad" ? body.thickness : body.footingThickness);
  if (isDeep && (body.type === "pad" || read.rows > 1)) gather.block("the dowels are longer than the concrete above the rock is thick: correct `in concrete`, or thicken the footing");
  const lone = read.count === 1 && body.type === "pad";
  return {
    ...read,
    spacing: lone ? 1 : gather.need(dowels?.spacing, "spacing of the dowels"),
    edition: gather.needs(support.codes.concrete, "edition of the concrete standard") ?? "",
    bar: bar?.name ?? "",
    diameter: bar?.diameter ?? Number.NaN,
    area: bar?.area ?? Number.NaN,
    f_y: "fy" in grade ? grade.fy : Number.NaN,
    fprime_c: gather.need(f?.concrete, "concrete strength"),
    cover: gather.need(f?.cover, "clear cover of the bars"),
    isHooked: gather.needs(dowels?.["ends in concrete"], "how the dowels end in the concrete") === "hooked",
    inConcrete,
    lap: gather.may(dowels?.lap),
    isSeismic: seismic.has(gather.may(support.site["seismic design category"]) ?? ""),
  };
}

/** Full development length of the dowel as it ends, m. */
function fullLength(inputs: DevelopmentInputs, asStraight: boolean, calc: Calc): number {
  const { f_y, fprime_c, edition } = inputs;
  const s_c = calc(rootStrength, { fprime_c });
  const bar = { diameter: inputs.diameter, spacing: inputs.spacing };
  return asStraight ? straight(bar, inputs.cover, f_y, s_c, false, edition, calc) : hooked(bar, f_y, fprime_c, s_c, edition, calc);
}

export const dowelDevelopment = check({
  id: "rock.dowel-development",
  title: "Dowels in the concrete above the rock",
  link: "rock",
  level: "strength",
  clause: "ACI 318-19 25.4.2, 25.4.3, 25.4.10.1",
  editions: padEditions,
  fails: "The bar is not deep enough in the footing and pulls out of it.",
  seen: "Bars that stand up clean out of the rock, and a footing beside them.",
  range: "Normalweight concrete, uncoated bars. A straight bar is shortened where less than its strength is asked for, in seismic design categories D to F it is not; a hook never. The bar's top is taken to be clear of the upper face by its cover.",
  formulas: [...dowelPullFormulas, barStrength, rootStrength, ...developmentFormulas, neededLength],
  applies: hasDowels,
  inputs: readDevelopment,
  fixedBy: (support) => support.foundation?.fields.dowels?.value["in concrete"] ?? support.foundation?.fields.dowels ?? support.foundation,
  evaluate: (inputs, demand, calc): Outcome => {
    const found = dowelPull(inputs, demand, calc);
    if ("because" in found) return unchecked(found.because);
    if (found.pull <= 0) return weigh(0, inputs.inConcrete, "length");
    const l_d = fullLength(inputs, !inputs.isHooked, calc);
    if (inputs.isHooked) return weigh(l_d, inputs.inConcrete, "length");
    if (inputs.isSeismic) {
      calc.note("In this seismic design category the length is not shortened by excess steel (ACI 318-19 25.4.10.2).");
      return weigh(l_d, inputs.inConcrete, "length");
    }
    const needed = calc(neededLength, { l_d, T_1: found.pull, phiT_n: calc(barStrength, { f_y: inputs.f_y, A_s: inputs.area }) });
    return weigh(needed, inputs.inConcrete, "length");
  },
  advise: (inputs, outcome, say) =>
    `the ${inputs.bar} dowels are ${say.show(outcome.capacity, "length")} in the concrete; ${say.show(outcome.demand, "length")} needed for what they pull. ${inputs.isHooked ? "Thicken the footing, or use more and smaller bars" : "Take them higher, hook them, or use more and smaller bars"}.`,
});

export const dowelLap = check({
  id: "rock.dowel-lap",
  title: "Lap of the dowels with the bars above",
  link: "rock",
  level: "strength",
  clause: "ACI 318-19 25.5.2.1",
  editions: padEditions,
  fails: "The dowels are too short beside the bars of the wall to pass their pull to them.",
  seen: "A crack across the wall at the top of the dowels.",
  range: "A contact lap of class B for the full strength of the dowel, of bars no smaller than it; spacing and cover as for the dowels.",
  formulas: [...dowelPullFormulas, rootStrength, ...developmentFormulas, lapNeeded],
  applies: (support) => hasDowels(support) && support.foundation?.fields.dowels?.value.lap !== undefined,
  inputs: readDevelopment,
  fixedBy: (support) => support.foundation?.fields.dowels?.value.lap ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const found = dowelPull(inputs, demand, calc);
    if ("because" in found) return unchecked(found.because);
    const lap = inputs.lap ?? 0;
    if (found.pull <= 0) return weigh(0, lap, "length");
    return weigh(calc(lapNeeded, { l_d: fullLength(inputs, true, calc) }), lap, "length");
  },
  advise: (inputs, outcome, say) => `the ${inputs.bar} dowels lap the bars above by ${say.show(outcome.capacity, "length")}; ${say.show(outcome.demand, "length")} needed. Lengthen them.`,
});
