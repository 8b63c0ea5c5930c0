/**
 * The base plate is larger than the pier or pedestal it is to stand on: its corners hang over, and its rods come out near the face. Found when the steel
 * is set.
 *
 * Geometry; common practice, no source.
 */
import { formula } from "../../formula/declare.js";
import { worseOf } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, sameInAll, weighLimit } from "../contract.js";
import { concreteEditions, type ConcreteMember, type MemberShape, pedestalMember, pierMember, readShape } from "./concrete-member.js";

interface PlateInputs extends MemberShape {
  readonly plate: { readonly x: number; readonly y: number };
}

export const plateDiagonal = formula({
  id: "pier.plate-diagonal",
  text: "d_p = sqrt(B^2 + N^2)",
  source: "geometry",
  symbols: {
    d_p: { kind: "length", meaning: "base plate over its corners" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
  },
});

const hasPlate = (member: ConcreteMember) => (support: Support): boolean => member.is(support) && support.base?.fields.plate !== undefined;

const declare = (member: ConcreteMember) =>
  check({
    id: member.id("plate-fit"),
    title: `Plate on its ${member.word}`,
    link: member.link,
    level: "strength",
    clause: "geometry",
    editions: concreteEditions,
    fails: `The base plate is larger than the ${member.word}.`,
    seen: `Corners of a plate that hang over the edge of a ${member.word}, grout that falls off below them.`,
    range: "Corners of the plate against a round section, sides against a rectangle, both on one middle. How far the rods stand from the face is a rule of their own.",
    formulas: [plateDiagonal],
    applies: hasPlate(member),
    inputs: (support: Support, gather: Gather): PlateInputs => {
      const plate = support.base?.fields.plate?.value;
      return { ...readShape(member, support, gather), plate: { x: gather.need(plate?.width, "width of the base plate"), y: gather.need(plate?.length, "length of the base plate") } };
    },
    measures: sameInAll,
    fixedBy: (support) => support.base?.fields.plate ?? support.foundation,
    evaluate: (inputs, _demand, calc) => {
      const { x, y } = inputs.plate;
      if (inputs.shape === "round") return weighLimit(calc(plateDiagonal, { B: x, N: y }), inputs.width, "length");
      const worst = worseOf({ demand: x, capacity: inputs.width }, { demand: y, capacity: inputs.length });
      return weighLimit(worst.demand, worst.capacity, "length");
    },
    advise: (inputs, outcome, say) =>
      `the plate is ${say.show(outcome.demand, "length")} ${inputs.shape === "round" ? "over its corners" : "wide"} on a ${member.word} of ${say.show(outcome.capacity, "length")}. Widen the ${member.word} or take a smaller plate.`,
  });

export const pierPlateFit = declare(pierMember);
export const pedestalPlateFit = declare(pedestalMember);
