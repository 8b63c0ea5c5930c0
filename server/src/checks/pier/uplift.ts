/**
 * The pier is drawn out of the ground: the wind under the roof pulls more than the pier weighs and the soil holds. In the field the pier rises a
 * little with every storm and does not go back.
 *
 * Weight of pier and bell by statics, buoyant below the water table, times the dead load factor of the combination. Beside it one of three: side
 * resistance, the soil straight above the bell, or the cone of soil lifted with it; never two of them.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { nearestNeighbors } from "../../mechanics/nearest-neighbor.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { calculatedOnce } from "../once.js";
import { deadFactor } from "../site/dead-factor.js";
import { bellFormulas, bellOf, coneAt, belowFrost, coneWeight, coneWidth, heightInWater, leastNothing, prismAbove, waterBelowFrost, withBell } from "./bell.js";
import { standsAlone } from "./crowd.js";
import { areaOf, isPier, type PierBody, pierWeight, readPier, roundArea, squareArea, weightOf } from "./body.js";
import { allowableSide, readSide, readWithoutSide, sideFormulas, sideHeld, type Side, type WithoutSide } from "./side.js";

export const upliftResistance = formula({
  id: "pier.uplift-resistance",
  text: "R_a = f_D * (W_p + W_s) + R_s",
  source: "ASCE 7-22 2.4.1; side resistance is already allowable",
  symbols: {
    R_a: { kind: "force", meaning: "allowable uplift resistance" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W_p: { kind: "force", meaning: "weight of the pier with its bell" },
    W_s: { kind: "force", meaning: "weight of the soil above the bell that is counted" },
    R_s: { kind: "force", meaning: "side resistance of the pier" },
  },
});

export const netUplift = formula({
  id: "pier.net-uplift",
  text: "T = -P",
  source: "statics",
  symbols: { T: { kind: "force", meaning: "net pull of the column" }, P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, -1e2] } },
});

export interface UpliftInputs extends PierBody, WithoutSide {
  readonly by: "weight" | "soil cone" | "side friction";
  /** What the side holds by; left out where it is not counted. */
  readonly side: Side | undefined;
  readonly water: number | undefined;
  /** Of the soil above the bell, N/m³, and of the cone, rad; nothing where neither counts. */
  readonly soilWeight: number;
  readonly coneAngle: number;
  /** Depth below grade up to which the soil above the bell counts, m: grade itself, or the frost that lifts it. */
  readonly soilFrom: number;
  /** Distance to the nearest other pier of its line, m. */
  readonly neighbor: number | undefined;
}

/** A straight pier counts its side where nothing else is said. */
function heldBy(support: Support, gather: Gather): UpliftInputs["by"] {
  const stated = support.foundation?.fields["held down by"];
  return stated === undefined || stated.assumed ? "side friction" : (gather.may(stated) ?? "side friction");
}

export function readUplift(support: Support, gather: Gather, place: number): UpliftInputs {
  const ground = support.ground?.fields;
  standsAlone(support, gather, place, "the uplift");
  const body = readPier(support, gather);
  const by = heldBy(support, gather);
  const lifts = by === "soil cone" || (by === "weight" && body.bell !== undefined);
  const side = by === "side friction" ? readSide(support, gather) : undefined;
  if (by === "soil cone" && !body.bell) gather.block("a straight pier slips through the soil and lifts no cone: give it a bell, or let it be held down by side friction");
  return {
    ...body,
    ...readWithoutSide(support, gather, by === "side friction"),
    by,
    side,
    water: gather.may(ground?.["water table"]),
    soilWeight: lifts ? gather.need(ground?.["unit weight"], "unit weight of the ground") : 0,
    coneAngle: by === "soil cone" ? gather.need(ground?.["cone angle"], "cone angle of the ground (20° to 30° from the vertical in soil)") : 0,
    soilFrom: 0,
    neighbor: by === "soil cone" ? nearestNeighbors(support.places)[place]?.distance : undefined,
  };
}

export interface Held {
  readonly weight: number;
  readonly soil: number;
  /** Allowable, or ultimate where the factor of safety is still to come, N. */
  readonly side: number;
}

export const heldFormulas = [roundArea, squareArea, pierWeight, ...bellFormulas, withBell, belowFrost, waterBelowFrost, prismAbove, coneAt, heightInWater, coneWeight, leastNothing] as const;

const isShortTerm = (demand: Demand): boolean => demand.combination.terms.some(({ type }) => type === "W" || type === "E");

/** What holds the pier, before any factor. */
export const heldOf = calculatedOnce((inputs: UpliftInputs, calc: Calc): Held => {
  if (inputs.water === undefined) calc.note("No water table is given: the pier is taken as standing above the water.");
  const shaft = weightOf(inputs, areaOf(inputs, calc), inputs.water ?? inputs.depth, calc);
  const { bell } = inputs;
  const found = bell && bellOf(bell, inputs.size, inputs.water !== undefined && inputs.water < inputs.depth, calc);
  const weight = found ? calc(withBell, { W: shaft, W_b: found.weight }) : shaft;
  if (inputs.side) return { weight, soil: 0, side: sideHeld(inputs, inputs.side, inputs, calc) };
  if (!bell || !found) {
    calc.note("The pier is held down by its weight alone.");
    return { weight, soil: 0, side: 0 };
  }
  calc.note("Side resistance of the shaft is not counted beside the soil above the bell.");
  return { weight, soil: soilAbove(inputs, bell.diameter, found.volume, calc), side: 0 };
});

/** Weight of the soil above the bell that counts, up to grade, N. */
function soilAbove(inputs: UpliftInputs, D_b: number, V_b: number, calc: Calc): number {
  const { size: D, soilWeight: gamma_s, coneAngle: theta, soilFrom } = inputs;
  const isFrozen = soilFrom > 0;
  if (isFrozen && soilFrom >= inputs.depth) return 0;
  if (isFrozen) calc.note("The soil in the frost depth lifts by itself and does not hold the bell.");
  const d = isFrozen ? calc(belowFrost, { d: inputs.depth, z_f: soilFrom }) : inputs.depth;
  const z_w = inputs.water === undefined ? d : isFrozen ? calc(waterBelowFrost, { z_w: inputs.water, z_f: soilFrom }) : inputs.water;
  if (inputs.by === "weight") return calc(leastNothing, { W_c: calc(prismAbove, { D_b, D, gamma_s, d, z_w, V_b }) });
  const V_c = calc(coneAt, { h: d, D_b, theta });
  const h = calc(heightInWater, { d, z_w });
  return calc(leastNothing, { W_c: calc(coneWeight, { gamma_s, V_c, D, d, V_b, V_w: calc(coneAt, { h, D_b, theta }), z_w }) });
}

/** Two cones that meet would count the same soil twice. */
const conesMeet = (inputs: UpliftInputs, calc: Calc): boolean =>
  inputs.neighbor !== undefined && inputs.bell !== undefined && inputs.neighbor > 0 && isAbove(calc(coneWidth, { D_b: inputs.bell.diameter, d: inputs.depth, theta: inputs.coneAngle }), inputs.neighbor);

export const pierUplift = check({
  id: "pier.uplift",
  title: "Uplift of the pier",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1810.3.3.1.4, 1810.3.3.1.5",
  fails: "The pull of the roof is more than the pier weighs and the soil holds.",
  seen: "A pier that has risen after a storm and does not go back.",
  range:
    "The weight takes the factor of dead load. A side resistance stated or presumptive is an allowable value and takes no further factor; one from the strength of the soil is divided by the factor of safety once. " +
    "No side resistance in the depth that freezes or is ignored, in the top 5 ft of clay by its strength, or along the bell. A cone that meets that of the next pier of its line is not worked out. Piers nearer than three widths act as a group and are not checked. The grip of frost is looked at on its own.",
  formulas: [...heldFormulas, ...sideFormulas, coneWidth, upliftResistance, netUplift],
  applies: isPier,
  inputs: readUplift,
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    if (conesMeet(inputs, calc)) return unchecked("the cones of soil of neighboring piers meet before grade, and the same soil would be counted twice: let the pier be held down by weight or by side friction, or set the columns farther apart");
    const held = heldOf(inputs, calc);
    const { factor: f_D, note } = deadFactor(demand);
    calc.note(note);
    const R_s = inputs.side ? allowableSide(inputs.side, held.side, isShortTerm(demand), calc) : 0;
    const capacity = calc(upliftResistance, { f_D, W_p: held.weight, W_s: held.soil, R_s });
    if (!(demand.base.P < 0)) return weigh(0, capacity, "force");
    return weigh(calc(netUplift, { P: demand.base.P }), capacity, "force");
  },
  advise: (inputs, outcome, say) =>
    `the pull is ${say.show(outcome.demand, "force")}; the pier and the soil hold ${say.show(outcome.capacity, "force")}. Deepen the pier or widen ${inputs.bell ? "its bell" : "it"}.`,
});
