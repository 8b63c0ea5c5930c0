/**
 * A pier less than two widths deep, taken as a block: it stands on its underside and leans against the soil beside it, which pushes back with its
 * allowable lateral bearing as far as the push of the column and friction under the block can balance it. One moment, the resultant, stands for every
 * direction.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { areaOf, isShort, type PierBody, pierWeight, readPier, roundArea, squareArea, weightOf } from "../pier/body.js";
import { baseHeight, lateralAt, momentResultant, momentX, momentY, shearResultant } from "../pier/grade-forces.js";
import { countedLength } from "../pier/response.js";
import { levelGround } from "../pier/slope.js";
import { deadFactor } from "../site/dead-factor.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { netLoad, purposeOf } from "./forces.js";
import { frictionForce, type Grip, readGrip, restingDead } from "./sliding.js";

const b = { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" } as const;
const L_c = { kind: "distance", meaning: "length of the pier in the ground that is counted" } as const;
const R_h = { kind: "force", meaning: "allowable push of the soil beside the block" } as const;
const R_f = { kind: "force", meaning: "allowable friction or cohesion under the block" } as const;
const V = { kind: "force", meaning: "push of the column, resultant of both directions" } as const;
const M_s = { kind: "moment", meaning: "moment that the soil beside the block takes, about its underside" } as const;

export const heightOverUnderside = formula({
  id: "pier.block-arm",
  text: "a_b = a + d",
  source: "geometry",
  symbols: { a_b: { kind: "distance", meaning: "height of the column base above the underside" }, a: { kind: "length", meaning: "height of the top of the base plate above grade" }, d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" } },
});

export const sidePush = formula({
  id: "pier.block-side-push",
  text: "R_h = p * b * L_c^2 / 2",
  source: "IBC 2021 Table 1806.2: lateral bearing grows with the depth",
  symbols: { R_h, p: { kind: "pressurePerDepth", meaning: "allowable lateral bearing per depth", field: "ground.*.lateral bearing" }, b, L_c },
});

export const sideMoment = formula({
  id: "pier.block-side-moment",
  text: "M_s = min(R_h, V + R_f) * L_c / 3",
  source: "statics: the soil pushes back at a third of the height, and no harder than the column and friction under the block balance",
  symbols: { M_s, R_h, V, R_f, L_c },
});

export const cohesionUnder = formula({
  id: "pier.block-cohesion",
  text: "R_f = min(c_s * A_b, N_D / 2)",
  source: "IBC 2021 Table 1806.2, 1806.3.2 (from memory)",
  symbols: { R_f, c_s: { kind: "pressure", meaning: "presumptive cohesion", field: "ground.*.class" }, A_b: { kind: "planArea", meaning: "area of the pier" }, N_D: { kind: "force", meaning: "dead load that rests on the ground, uplift taken off" } },
});

export const blockFormulas = [baseHeight, heightOverUnderside, momentX, momentY, shearResultant, momentResultant, roundArea, squareArea, pierWeight, netLoad, restingDead, frictionForce, cohesionUnder, countedLength, sidePush, sideMoment] as const;

export interface BlockInputs extends PierBody {
  readonly lateral: GroundValue;
  readonly grip: Grip;
  readonly ignored: number;
  readonly water: number | undefined;
  readonly grout: number;
  readonly plate: number;
}

/** A straight pier less than two widths deep, where it is not said to be a pole alone. */
export function isBlock(support: Support): boolean {
  const pier = support.foundation?.fields;
  return isShort(support) && pier?.["taken as"]?.value !== "pole" && pier?.bell === undefined && support.ground?.fields.kind?.value !== "rock" && pier?.["restrained at grade"]?.value !== true;
}

export function readBlock(support: Support, gather: Gather): BlockInputs {
  gather.may(support.foundation?.fields["taken as"]);
  const ignored = gather.may(support.foundation?.fields["ignored depth"]) ?? 0;
  const body = readPier(support, gather);
  if (ignored >= body.depth) gather.block("the ignored depth reaches the underside of the pier: nothing beside it is left to hold it. Deepen the pier");
  const lateral = groundValue(support, gather, support.ground?.fields["lateral bearing"], "lateral bearing", (soil) => soil.lateralPerDepth);
  if (lateral.isPresumptive) levelGround(support, gather, "presumptive lateral bearing", "state a lateral bearing found for that slope, or bring the ground level around the pier");
  return {
    ...body,
    lateral,
    grip: readGrip(support, gather),
    ignored,
    water: gather.may(support.ground?.fields["water table"]),
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
  };
}

export interface OnBlock {
  /** Down positive, N. */
  readonly N: number;
  /** Push, N, and moment at the underside, N·m, as resultants. */
  readonly V: number;
  readonly M: number;
  /** Allowable push of the soil beside and friction under the block, N; the moment the side takes, N·m. */
  readonly R_h: number;
  readonly R_f: number;
  readonly M_s: number;
}

/** What acts on the block in one combination, and what soil beside and below give. */
export function onBlock(inputs: BlockInputs, demand: Demand, purpose: "holds" | "by factor", calc: Calc): OnBlock {
  const { base } = demand;
  const { depth, size, lateral, grip, ignored } = inputs;
  const a = calc(baseHeight, { h_a: inputs.aboveGrade, t_g: inputs.grout, t_p: inputs.plate });
  const { force: V, moment: M } = lateralAt(base, calc(heightOverUnderside, { a, d: depth }), calc);
  const { factor: f_D, note } = deadFactor(demand);
  calc.note(note);
  const holds = purpose === "holds" || purposeOf(f_D) === "holds";
  const A_b = areaOf(inputs, calc);
  const W_c = weightOf(inputs, A_b, holds ? (inputs.water ?? depth) : depth, calc);
  const N = calc(netLoad, { P: base.P, f_D, W_c, W_s: 0 });
  if (demand.dead === undefined) calc.note("The reaction is given already combined, and what of it is dead load is not known: only the weight of the block gives friction.");
  const N_D = calc(restingDead, { N, P_D: demand.dead ?? 0, f_D, W_c, W_s: 0 });
  calc.note(grip.from);
  const R_f = grip.by === "friction" ? calc(frictionForce, { mu: grip.mu, N_D }) : calc(cohesionUnder, { c_s: grip.cohesion, A_b, N_D });
  calc.note(lateral.from);
  const L_c = calc(countedLength, { d: depth, z_i: ignored });
  const R_h = calc(sidePush, { p: lateral.value, b: size, L_c });
  return { N, V, M, R_h, R_f, M_s: calc(sideMoment, { R_h, V, R_f, L_c }) };
}
