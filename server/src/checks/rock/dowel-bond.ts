/**
 * The grout or adhesive slips along the wall of the hole: the dowel comes out with its grout still on it.
 *
 * Uniform bond on the wall of the hole, pi d L tau over a factor of safety; bond as stated, since it depends on the rock, the drilling and
 * the cleaning. Allowable-stress loads. Practice of rock anchors (Littlejohn and Bruce 1975; PTI recommendations), from memory.
 */
import { formula } from "../../formula/declare.js";
import { check } from "../contract.js";
import { isOnRock } from "./block.js";
import { type DowelInputs, dowelPullFormulas, readDowels } from "./dowel-force.js";
import { weighDowel } from "./settle.js";

export const bondResistance = formula({
  id: "rock.bond-resistance",
  text: "T_b = pi * d_h * L_b * tau_u / FS",
  source: "uniform bond on the wall of the hole; practice of rock anchors, Littlejohn and Bruce 1975 (from memory)",
  symbols: {
    T_b: { kind: "force", meaning: "allowable pull of one dowel by bond to the rock" },
    d_h: { kind: "length", meaning: "diameter of the hole", field: "foundations.*.dowels.hole" },
    L_b: { kind: "length", meaning: "depth of the hole in sound rock", field: "foundations.*.dowels.into rock" },
    tau_u: { kind: "stress", meaning: "ultimate bond to the rock", field: "ground.*.dowel bond" },
    FS: { kind: "ratio", meaning: "factor of safety", field: "ground.*.bond safety" },
  },
});

export interface DowelBondInputs extends DowelInputs {
  readonly hole: number;
  readonly intoRock: number;
  readonly bond: number;
  readonly safety: number;
  /** Set in nothing: no bond at all. */
  readonly isDry: boolean;
}

export const dowelBond = check({
  id: "rock.dowel-bond",
  title: "Bond of the dowels to the rock",
  link: "rock",
  level: "allowable",
  clause: "practice of rock anchors (from memory)",
  fails: "The grout or adhesive slips along the wall of the hole.",
  seen: "A dowel that comes out with its grout still on it, from a dusty, wet or cold hole.",
  range:
    "Uniform bond over the whole hole in sound rock. The bond has no default: the geotechnical engineer gives it and pull tests prove it. The bond between bar and grout is a check of its own. The footing is rigid; dowel forces as for their steel.",
  formulas: [...dowelPullFormulas, bondResistance],
  applies: isOnRock,
  inputs: (support, gather, place): DowelBondInputs => {
    const dowels = support.foundation?.fields.dowels?.value;
    const ground = support.ground?.fields;
    const isDry = gather.may(dowels?.["set in"]) === "nothing";
    return {
      ...readDowels(support, gather, place),
      hole: gather.need(dowels?.hole, "diameter of the dowel holes"),
      intoRock: gather.need(dowels?.["into rock"], "depth of the dowel holes in rock"),
      isDry,
      bond: isDry ? 0 : gather.need(ground?.["dowel bond"], "ultimate bond between grout or adhesive and rock (ask the geotechnical engineer, and prove it by pull tests)"),
      safety: gather.need(ground?.["bond safety"], "factor of safety on rock bond"),
    };
  },
  fixedBy: (support) => support.foundation?.fields.dowels?.value["into rock"] ?? support.foundation?.fields.dowels ?? support.foundation,
  evaluate: (inputs, demand, calc) =>
    inputs.isDry ? weighDowel(inputs, demand, 0, calc) : weighDowel(inputs, demand, calc(bondResistance, { d_h: inputs.hole, L_b: inputs.intoRock, tau_u: inputs.bond, FS: inputs.safety }), calc),
  advise: (inputs, outcome, say) =>
    `one dowel pulls ${say.show(outcome.demand, "force")}; bond over ${say.show(inputs.intoRock, "length")} holds ${say.show(outcome.capacity, "force")}. Drill deeper, or use more dowels.`,
});
