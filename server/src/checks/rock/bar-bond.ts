/**
 * The bar slips out of what it is set in: the grout or adhesive stays in the hole. In the field the bar comes out clean.
 *
 * Uniform bond on the bar, pi d_b L tau over the factor of safety. Cement grout: 2 MPa ultimate on deformed bars by the British practice of ground
 * anchors. An adhesive has no such value: it is a product, and its maker's report gives the bond for rock and for the temperature at hand.
 */
import { formula } from "../../formula/declare.js";
import { check } from "../contract.js";
import { hasDowels } from "./block.js";
import { type DowelInputs, dowelPullFormulas, readDowels } from "./dowel-force.js";
import { weighDowel } from "./settle.js";

export const barBondResistance = formula({
  id: "rock.bar-bond-resistance",
  text: "T_g = pi * d_b * L_b * tau_b / FS",
  source: "uniform bond on the bar; practice of rock anchors, Littlejohn and Bruce 1975 (from memory)",
  symbols: {
    T_g: { kind: "force", meaning: "allowable pull of one dowel by bond of the bar to what it is set in" },
    d_b: { kind: "length", meaning: "diameter of the bar", field: "foundations.*.dowels.bar" },
    L_b: { kind: "length", meaning: "depth of the hole in sound rock", field: "foundations.*.dowels.into rock" },
    tau_b: { kind: "stress", meaning: "ultimate bond between the bar and its grout or adhesive", field: "foundations.*.dowels.bar bond" },
    FS: { kind: "ratio", meaning: "factor of safety", field: "ground.*.bond safety" },
  },
});

export const groutBond = formula({
  id: "rock.grout-bond",
  text: "tau_b = tau_2",
  source: "BS 8081: 2 MPa ultimate between cement grout and deformed bars (from memory)",
  symbols: { tau_b: { kind: "stress", meaning: "ultimate bond between the bar and its grout" } },
  constants: { tau_2: "2 MPa" },
});

export interface BarBondInputs extends DowelInputs {
  readonly bar: string;
  readonly setIn: string;
  readonly diameter: number;
  readonly intoRock: number;
  /** Ultimate bond, Pa, where stated. */
  readonly bond: number | undefined;
  readonly safety: number;
}

export const barBond = check({
  id: "rock.bar-bond",
  title: "Bond of the bar to its grout or adhesive",
  link: "rock",
  level: "allowable",
  clause: "practice of rock anchors, BS 8081 (from memory)",
  fails: "The bar slips out of the grout or adhesive it is set in.",
  seen: "A bar that comes out clean, with its grout left in the hole: an oily or rusted bar, or adhesive that never set in the cold.",
  range: "Uniform bond over the whole hole in sound rock, deformed bars. The bond of cement grout is taken from practice where none is stated. That of an adhesive has no default: the maker's report gives it for rock, as wet and as cold as it is.",
  formulas: [...dowelPullFormulas, groutBond, barBondResistance],
  applies: hasDowels,
  inputs: (support, gather, place): BarBondInputs => {
    const dowels = support.foundation?.fields.dowels?.value;
    const bar = gather.needs(dowels?.bar, "size of the dowel bars");
    const setIn = gather.needs(dowels?.["set in"], "what the dowels are set in (`set in`: cement grout, epoxy or nothing)") ?? "";
    const stated = dowels?.["bar bond"];
    const asks = setIn === "epoxy" || stated !== undefined;
    return {
      ...readDowels(support, gather, place),
      bar: bar?.name ?? "",
      setIn,
      diameter: bar?.diameter ?? Number.NaN,
      intoRock: gather.need(dowels?.["into rock"], "depth of the dowel holes in rock"),
      bond: asks ? gather.need(stated, "ultimate bond between the bar and its adhesive (`bar bond`; the maker's report gives it for rock, ask the maker)") : undefined,
      safety: gather.need(support.ground?.fields["bond safety"], "factor of safety on bond"),
    };
  },
  fixedBy: (support) => support.foundation?.fields.dowels?.value["into rock"] ?? support.foundation?.fields.dowels ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    if (inputs.setIn === "nothing") {
      calc.note("The bars are set in nothing: no bond counts.");
      return weighDowel(inputs, demand, 0, calc);
    }
    const tau_b = inputs.bond ?? calc(groutBond, {});
    return weighDowel(inputs, demand, calc(barBondResistance, { d_b: inputs.diameter, L_b: inputs.intoRock, tau_b, FS: inputs.safety }), calc);
  },
  advise: (inputs, outcome, say) =>
    inputs.setIn === "nothing"
      ? `one dowel pulls ${say.show(outcome.demand, "force")}, and the bars are set in nothing. Grout them, or hold the footing down by weight.`
      : `one ${inputs.bar} dowel pulls ${say.show(outcome.demand, "force")}; bond of the bar over ${say.show(inputs.intoRock, "length")} holds ${say.show(outcome.capacity, "force")}. Drill deeper, or use more dowels.`,
});
