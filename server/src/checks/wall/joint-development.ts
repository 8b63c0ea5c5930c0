/**
 * The bars between wall and footing are too short on one side of the joint: they pull out of the footing, or slip beside the bars of the wall. In the field a
 * wall tipped off its footing with its dowels drawn out whole.
 *
 * ACI 318-19 22.9.5.1, 16.3.5, 25.4: developed for their yield strength on both sides, whatever their force; 25.5.2 where they lap the bars of the wall.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, sameInAll, weighLimit } from "../contract.js";
import { developmentFormulas, hooked, straight } from "../footing/bar-development.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { padEditions } from "../footing/pad.js";
import { isWall } from "./body.js";
import { allDowels, jointField, type JointInputs, readJoint } from "./joint.js";
import type { Vertical } from "./stem.js";

const need = { kind: "length", meaning: "development length of a straight bar in tension" } as const;

export const lapLength = formula({
  id: "wall.dowel-lap",
  text: "l_st = max(1.3 * l_ds, l_dl, l_12)",
  source: "ACI 318-19 25.5.2.1, class B, 25.5.2.2 (from memory)",
  symbols: { l_st: { kind: "length", meaning: "lap of the dowels with the bars of the wall" }, l_ds: { ...need, meaning: "development length of the smaller of the two bars" }, l_dl: { ...need, meaning: "development length of the larger of the two bars" } },
  constants: { l_12: "12 inch" },
});

function aboveOf(inputs: JointInputs, dowel: Vertical, beside: readonly Vertical[], calc: Calc): number {
  const { f_y, fprime_c, cover, edition } = inputs;
  const s_c = calc(rootStrength, { fprime_c });
  const l_d = straight(dowel, cover, f_y, s_c, false, edition, calc);
  if (beside.length === 0) return l_d;
  const others = beside.map((one) => (one.diameter === dowel.diameter && one.spacing === dowel.spacing ? l_d : straight(one, cover, f_y, s_c, false, edition, calc)));
  const longest = Math.max(...others);
  return calc(lapLength, { l_ds: Math.min(l_d, longest), l_dl: Math.max(l_d, longest) });
}

function belowOf({ f_y, fprime_c, footingCover, isHooked, edition }: JointInputs, dowel: Vertical, calc: Calc): number {
  const s_c = calc(rootStrength, { fprime_c });
  return isHooked ? hooked(dowel, f_y, fprime_c, s_c, edition, calc) : straight(dowel, footingCover, f_y, s_c, false, edition, calc);
}

export const wallJointDevelopment = check({
  id: "wall.joint-development",
  title: "Dowels in the footing and beside the bars of the wall",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 22.9.5.1, 16.3.5, 25.4, 25.5.2",
  editions: padEditions,
  fails: "The dowels are too short: they pull out of the footing, or slip beside the bars of the wall.",
  seen: "A wall tipped off its footing, its dowels drawn out whole.",
  range: "Uncoated deformed bars, developed for their full yield strength on both sides of the joint. In the footing straight or with standard hooks; in the wall as a class B lap with the vertical bars of their face, which stand within reach of them. Bars of the wall that go on into the footing have no lap.",
  formulas: [rootStrength, ...developmentFormulas, lapLength],
  applies: isWall,
  inputs: readJoint,
  measures: sameInAll,
  fixedBy: jointField,
  evaluate: (inputs, _demand, calc) => {
    let found: Pair = { demand: 0, capacity: inputs.intoFooting };
    for (const dowel of allDowels(inputs)) found = worseOf(found, { demand: belowOf(inputs, dowel, calc), capacity: inputs.intoFooting });
    if (!inputs.isOne) {
      calc.note("Above the joint, beside the bars of the wall:");
      for (const { name, vertical } of inputs.dowels) {
        const beside = inputs.faces.find((face) => face.name === name)?.vertical ?? [];
        for (const dowel of vertical) found = worseOf(found, { demand: aboveOf(inputs, dowel, beside, calc), capacity: inputs.intoWall });
      }
    }
    return weighLimit(found.demand, found.capacity, "length");
  },
  advise: (inputs, outcome, say) =>
    `the dowels need ${say.show(outcome.demand, "length")} on one side of the joint; ${say.show(outcome.capacity, "length")} there. ${inputs.isHooked ? "Lengthen them, take smaller bars closer together, or thicken the footing" : "Hook them in the footing, lengthen them, or take smaller bars closer together"}.`,
});
