/**
 * The pier is drawn out of the ground: the wind under the roof pulls more than the pier weighs and the soil on its side holds. In the
 * field the pier rises a little with every storm, or jacks up with frost, and does not go back.
 *
 * Weight by statics, buoyant below the water table, times the dead load factor of the combination. Side resistance as stated, or one
 * sixth of the presumptive bearing and at most 500 psf (IBC 2021 1810.3.3.1.4): an allowable value, no further factor. The greater of
 * the depth that freezes and the ignored depth gives no side resistance.
 */
import { formula } from "../../formula/declare.js";
import { check, weigh } from "../contract.js";
import { deadFactor } from "../site/dead-factor.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { areaOf, isPier, perimeterOf, type PierBody, pierWeight, readPier, roundArea, roundPerimeter, squareArea, squarePerimeter, weightOf } from "./body.js";

export const presumptiveSide = formula({
  id: "pier.presumptive-side-resistance",
  text: "f_s = min(q_a / 6, f_max)",
  source: "IBC 2021 1810.3.3.1.4",
  symbols: {
    f_s: { kind: "pressure", meaning: "allowable side resistance" },
    q_a: { kind: "pressure", meaning: "presumptive bearing", field: "ground.*.class", range: [1e4, 6e5] },
  },
  constants: { f_max: "500 lbf/ft^2" },
});

export const sideLength = formula({
  id: "pier.side-length",
  text: "L_s = d - min(z_s, d)",
  source: "practice: the depth that freezes or dries out holds nothing",
  symbols: {
    L_s: { kind: "distance", meaning: "length of pier with side resistance" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" },
    z_s: { kind: "distance", meaning: "depth without side resistance", field: "foundations.*.ignored depth" },
  },
});

export const sideForce = formula({
  id: "pier.side-force",
  text: "R_s = f_s * p_s * L_s",
  source: "statics",
  symbols: {
    R_s: { kind: "force", meaning: "side resistance of the pier" },
    f_s: { kind: "pressure", meaning: "allowable side resistance", field: "ground.*.side resistance" },
    p_s: { kind: "distance", meaning: "perimeter of the pier" },
    L_s: { kind: "distance", meaning: "length of pier with side resistance" },
  },
});

export const upliftResistance = formula({
  id: "pier.uplift-resistance",
  text: "R_a = f_D * W + R_s",
  source: "ASCE 7-22 2.4.1; side resistance is already allowable",
  symbols: {
    R_a: { kind: "force", meaning: "allowable uplift resistance" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W: { kind: "force", meaning: "weight of the pier" },
    R_s: { kind: "force", meaning: "side resistance of the pier" },
  },
});

export const netUplift = formula({
  id: "pier.net-uplift",
  text: "T = -P",
  source: "statics",
  symbols: { T: { kind: "force", meaning: "net pull of the column" }, P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, -1e2] } },
});

export interface UpliftInputs extends PierBody {
  /** Side resistance as stated, or the presumptive bearing it is to be taken from. */
  readonly side: GroundValue;
  /** Depth at the top that gives no side resistance, m. */
  readonly withoutSide: number;
  readonly withoutSideBy: "ignored depth" | "frost depth";
  readonly water: number | undefined;
}

export const pierUplift = check({
  id: "pier.uplift",
  title: "Uplift of the pier",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1810.3.3.1.4",
  fails: "The pull of the roof is more than the pier weighs and the soil on its side holds.",
  seen: "A pier that has risen after a storm and does not go back.",
  range:
    "A straight pier that stands alone: no bell, no soil cone, no group of piers, no grip of frozen soil on its side. Side resistance is an allowable value and takes no further factor; the weight takes the factor of dead load.",
  formulas: [roundArea, squareArea, pierWeight, presumptiveSide, sideLength, sideForce, roundPerimeter, squarePerimeter, upliftResistance, netUplift],
  applies: isPier,
  inputs: (support, gather): UpliftInputs => {
    const ground = support.ground?.fields;
    const ignored = support.foundation?.fields["ignored depth"];
    const frost = support.site["frost depth"];
    // Neither the soil that freezes nor the soil that is left out holds the pier.
    const governs = ignored && frost && frost.value > ignored.value ? frost : (ignored ?? frost);
    return {
      ...readPier(support, gather),
      side: groundValue(support, gather, ground?.["side resistance"], "side resistance", (soil) => soil.verticalBearing),
      withoutSide: gather.need(governs, "frost depth of the site, or the ignored depth of the pier"),
      withoutSideBy: governs !== undefined && governs === ignored ? "ignored depth" : "frost depth",
      water: gather.may(ground?.["water table"]),
    };
  },
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const area = areaOf(inputs, calc);
    if (inputs.water === undefined) calc.note("No water table is given: the pier is taken as standing above the water.");
    const W = weightOf(inputs, area, inputs.water ?? inputs.depth, calc);
    const { factor: f_D, note } = deadFactor(demand);
    calc.note(note);
    calc.note(inputs.side.from);
    const f_s = inputs.side.isPresumptive ? calc(presumptiveSide, { q_a: inputs.side.value }) : inputs.side.value;
    calc.note(`The ${inputs.withoutSideBy} at the top gives no side resistance.`);
    const L_s = calc(sideLength, { d: inputs.depth, z_s: inputs.withoutSide });
    const R_s = calc(sideForce, { f_s, p_s: perimeterOf(inputs, calc), L_s });
    const capacity = calc(upliftResistance, { f_D, W, R_s });
    if (!(demand.base.P < 0)) return weigh(0, capacity, "force");
    return weigh(calc(netUplift, { P: demand.base.P }), capacity, "force");
  },
  advise: (_inputs, outcome, say) =>
    `the pull is ${say.show(outcome.demand, "force")}; the pier's weight and side hold ${say.show(outcome.capacity, "force")}. Deepen the pier or widen it.`,
});
