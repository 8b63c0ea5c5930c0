/**
 * The wall breaks above its footing: its bars yield at the face that is pulled, or its concrete crushes at the other, under the post, the soil behind it, or both.
 * In the field a level crack along the wall, widest below the posts, and a post that leans.
 *
 * ACI 318-19 22.2, 22.4, 21.2.2 by strain compatibility, per length of wall, at every height: just below the rods the post has little wall to carry it, at the
 * footing the soil pushes most. Wind comes from all sides; the fill is there or not.
 */
import type { Calc } from "../../formula/types.js";
import { wallBending } from "../../mechanics/wall-section.js";
import { worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { padEditions } from "../footing/pad.js";
import { isWall } from "./body.js";
import type { Situation } from "./situations.js";
import { readStem, type StemInputs } from "./stem.js";
import { type Barred, type Combined, combinedAt, forcesAt, pulledApart, stemBarsAt, stemForceFormulas, type StemSection } from "./stem-forces.js";
import { heightsOf } from "./stem-heights.js";
import { prepared, type Tried, worstOfStem } from "./stem-worst.js";

type Of = "moment" | "pull" | "push";

export const quantityOf = { moment: "momentPerLength", pull: "lineLoad", push: "lineLoad" } as const;

/** Bending with the axial force at both ends of the length that carries the post; and the axial force alone. */
export function bendingAt(inputs: StemInputs, combined: Combined, section: StemSection, { section: concrete, strength }: Barred, situation: Situation, calc: Calc): Tried<Of> {
  const { least, most, moment, pulled } = forcesAt(inputs, section, situation, combined, calc);
  const demand = Math.abs(moment);
  const at = (N: number): Tried<Of> => ({ demand, capacity: calc.routine(wallBending, { section: concrete, strength, pulled, N }).phiM_n, of: "moment" });
  let worst = at(least);
  if (most !== least) worst = worseOf(worst, at(most));
  if (least < 0) worst = worseOf(worst, { demand: calc(pulledApart, { N_w: least }), capacity: strength.pull, of: "pull" });
  return most > 0 ? worseOf(worst, { demand: most, capacity: strength.push, of: "push" }) : worst;
}

const know = (inputs: StemInputs, { depth }: StemSection, calc: Calc): Barred => stemBarsAt(inputs, depth, calc);
const sections = prepared(heightsOf, know);

export const wallStemFlexure = check({
  id: "wall.stem-flexure",
  title: "Wall in bending with its axial force",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 22.2, 22.4, 21.2.2, 13.3.6.1",
  editions: padEditions,
  fails: "The wall breaks above its footing: its bars yield at one face or its concrete crushes at the other.",
  seen: "A level crack along the wall, widest below the posts, and a post that leans.",
  range:
    "Per length of wall, from the ends of the rods down to the footing: above them the rods carry the post. The post's forces spread as `post spread` or `post width` says, cut short by ends, joints and half the way to the next post, with its moment along the wall straight over that length. Vertical bars count as far as they are developed below their upper ends, and go on into the footing. With the fill and without it, and on a length without a post. " +
    "Earth pressure with a load factor of 1.6, and what an earthquake adds where the fill states its coefficient; soil before the wall holds nothing. Slender walls by the magnified moment. Wind on the wall itself, its bending along its length, and friction of the soil on its back are left out.",
  formulas: [...stemForceFormulas, pulledApart],
  applies: isWall,
  inputs: readStem,
  fixedBy: (support) => support.foundation?.fields["stem bars"] ?? support.foundation?.fields.thickness ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const combined = combinedAt(inputs, demand, calc);
    if ("because" in combined) return unchecked(combined.because);
    const attempt = (section: StemSection, known: Barred, situation: Situation, c: Calc): Tried<Of> => bendingAt(inputs, combined, section, known, situation, c);
    const { demand: acts, capacity, of } = worstOfStem({ inputs, combined, all: sections(inputs), know, attempt }, calc);
    return weigh(acts, capacity, quantityOf[of]);
  },
  advise: (inputs, outcome, say) =>
    outcome.quantity === "momentPerLength"
      ? `${say.show(outcome.demand, "momentPerLength")} bends the wall; it holds ${say.show(outcome.capacity, "momentPerLength")}. Add vertical bars at the face that is pulled, thicken the wall${inputs.rods === undefined ? "" : ", or set the rods deeper, where more of the wall carries the post"}.`
      : `${say.show(outcome.demand, "lineLoad")} along the wall; it holds ${say.show(outcome.capacity, "lineLoad")}. Add vertical bars at both faces, or let more of the wall carry the post.`,
});
