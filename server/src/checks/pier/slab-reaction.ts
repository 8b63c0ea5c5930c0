/**
 * The slab that holds the pier at grade gives way: it slides, cracks off its tie or was never a slab. In the field the paving has moved a finger's
 * width away from the pier, and the column leans.
 *
 * IBC 2021 1807.3.2.2 lets a pier be restrained at grade by a rigid floor. The slab takes the push and, on top, what the soil below presses back
 * with: its pressure grows with the square of the depth in that formula, so that its middle lies at three quarters of the depth.
 */
import { formula } from "../../formula/declare.js";
import { check, weigh } from "../contract.js";
import { isPier, readPier, type PierBody } from "./body.js";
import { baseHeight, lateralAt, momentResultant, momentX, momentY, shearResultant } from "./grade-forces.js";
import { readHold } from "./slab.js";

export const slabForce = formula({
  id: "pier.slab-force",
  text: "R_s = P_h + M_g / (0.75 * d)",
  source: "statics of a pier held at grade, with the soil pressure growing as the square of the depth (ASAE EP486, from memory)",
  symbols: {
    R_s: { kind: "force", meaning: "force of the slab on the pier" },
    P_h: { kind: "force", meaning: "lateral force" },
    M_g: { kind: "moment", meaning: "moment at grade" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" },
  },
});

export interface SlabInputs extends PierBody {
  readonly capacity: number;
  readonly grout: number;
  readonly plate: number;
}

export const pierSlab = check({
  id: "pier.slab-reaction",
  title: "Slab that holds the pier at grade",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1807.3.2.2",
  fails: "The slab cannot take what the pier leans against it with, and the pier is not restrained at grade.",
  seen: "A gap between pier and paving, and a column that leans.",
  range:
    "The force on the slab against the capacity the notebook states; how the slab passes it on (friction, its tie to the pier, its own bending) is whoever states the capacity. One pier at a time.",
  formulas: [baseHeight, momentX, momentY, shearResultant, momentResultant, slabForce],
  applies: (support) => isPier(support) && support.foundation?.fields["restrained at grade"]?.value === true,
  inputs: (support, gather): SlabInputs => {
    const slab = support.foundation?.fields["slab at grade"]?.value;
    const { kind } = readHold(support, gather);
    if (kind === undefined) gather.needs(undefined, "kind of slab at grade (slab at grade, kind: tied slab)");
    if (kind === "loose slab" || kind === "pavers")
      gather.block(`${kind === "pavers" ? "pavers are no rigid floor" : "a slab that is not tied to the pier does not hold it"}: tie a rigid slab to the pier, or write restrained at grade: no`);
    return {
      ...readPier(support, gather),
      capacity: gather.need(slab?.capacity, "capacity of the slab at grade (slab at grade, capacity)"),
      grout: gather.may(support.base?.fields.grout) ?? 0,
      plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
    };
  },
  fixedBy: (support) => support.foundation?.fields["slab at grade"]?.value.capacity ?? support.foundation?.fields["restrained at grade"] ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const a = calc(baseHeight, { h_a: inputs.aboveGrade, t_g: inputs.grout, t_p: inputs.plate });
    const { force: P_h, moment: M_g } = lateralAt(demand.base, a, calc);
    return weigh(calc(slabForce, { P_h, M_g, d: inputs.depth }), inputs.capacity, "force");
  },
  advise: (_inputs, outcome, say) =>
    `the pier leans on the slab with ${say.show(outcome.demand, "force")}; ${say.show(outcome.capacity, "force")} is stated. Deepen the pier, tie the slab for more, or design the pier free at grade.`,
});
