/**
 * The soil beside a short, rigid pier reaches its strength along the whole length and the pier turns over: a second opinion beside the building
 * code's formula, from the strength of the soil and not from a table.
 *
 * Broms 1964, free head. Clay: 9 c D below a depth of 1.5 D, nothing above. Sand: three times the passive pressure of Rankine over the width. The
 * pressures are ultimate ones: the allowable-stress load goes in times the factor of safety that the notebook states.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { cubicRoot } from "../../mechanics/cubic.js";
import type { Support } from "../../project/model.js";
import { check, weigh, type Gather } from "../contract.js";
import { countedLength } from "./response.js";
import { isPole, readPier, type PierBody } from "./body.js";
import { depthFromGrade } from "./embedment.js";
import { standsAlone } from "./crowd.js";
import { baseHeight, type Lateral, lateralAt, loweredGround, momentResultant, momentX, momentY, shearResultant } from "./grade-forces.js";
import { readStiffness, relativeLengthFormulas, sayLength, type Stiffness } from "./relative-length.js";
import { isHeld, readHold } from "./slab.js";
import { levelGround } from "./slope.js";

const clay = "Broms 1964, piles in cohesive soil (ultimate pressure and depth from memory)";
const sand = "Broms 1964, piles in cohesionless soil (from memory)";

const D = { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" } as const;
const H_u = { kind: "force", meaning: "lateral force times the factor of safety" } as const;
const M_u = { kind: "moment", meaning: "moment at the ground that counts times the factor of safety" } as const;
const c_u = { kind: "pressure", meaning: "undrained shear strength", field: "ground.*.cohesion" } as const;
const f = { kind: "distance", meaning: "depth in the soil that yields down to where the shear is nothing" } as const;
const K_p = { kind: "number", meaning: "passive pressure coefficient of Rankine", range: [1, 8] } as const;
const gamma = { kind: "unitWeight", meaning: "effective unit weight of the soil", field: "ground.*.unit weight" } as const;
const d_r = { kind: "distance", meaning: "depth needed in the ground that is counted" } as const;
const M_max = { kind: "moment", meaning: "largest moment in the pier at that load" } as const;

export const factoredForce = formula({
  id: "pier.broms-force",
  text: "H_u = F_s * P_h",
  source: "common practice: the factor of safety goes on the load",
  symbols: { H_u, F_s: { kind: "number", meaning: "factor of safety", field: "ground.*.lateral safety", range: [1.5, 6] }, P_h: { kind: "force", meaning: "lateral force" } },
});

export const factoredMoment = formula({
  id: "pier.broms-moment",
  text: "M_u = F_s * M_h",
  source: "common practice: the factor of safety goes on the load",
  symbols: { M_u, F_s: { kind: "number", meaning: "factor of safety", field: "ground.*.lateral safety", range: [1.5, 6] }, M_h: { kind: "moment", meaning: "moment at the ground that is counted" } },
});

export const clayShearDepth = formula({ id: "pier.broms-clay-f", text: "f = H_u / (9 * c_u * D)", source: clay, symbols: { f, H_u, c_u, D } });

export const clayMoment = formula({ id: "pier.broms-clay-moment", text: "M_max = M_u + H_u * (1.5 * D + 0.5 * f)", source: clay, symbols: { M_max, M_u, H_u, D, f } });

export const clayTurning = formula({
  id: "pier.broms-clay-g",
  text: "g = sqrt(M_max / (2.25 * c_u * D))",
  source: clay,
  symbols: { g: { kind: "distance", meaning: "depth below that in which the soil turns the pier back" }, M_max, c_u, D },
});

export const clayDepth = formula({
  id: "pier.broms-clay-depth",
  text: "d_r = 1.5 * D + f + g",
  source: clay,
  symbols: { d_r, D, f, g: { kind: "distance", meaning: "depth in which the soil turns the pier back" } },
});

export const passive = formula({
  id: "pier.passive-coefficient",
  text: "K_p = tan(q_p + phi / 2)^2",
  source: "Rankine",
  symbols: { K_p, phi: { kind: "angle", meaning: "friction angle", field: "ground.*.friction angle", range: [0.1, 0.85] } },
  constants: { q_p: "45 deg" },
});

export const buoyantWeight = formula({
  id: "pier.buoyant-weight",
  text: "gamma = gamma_s - gamma_w",
  source: "statics: soil below the water",
  symbols: { gamma, gamma_s: { kind: "unitWeight", meaning: "unit weight of the soil", field: "ground.*.unit weight", range: [1.1e4, 2.5e4] } },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const sandLinear = formula({
  id: "pier.broms-sand-linear",
  text: "a_1 = 2 * H_u / (gamma * D * K_p)",
  source: `${sand}: equilibrium of moments about the toe as a cubic in the depth`,
  symbols: { a_1: { kind: "planArea", meaning: "linear term of the cubic" }, H_u, gamma, D, K_p },
});

export const sandConstant = formula({
  id: "pier.broms-sand-constant",
  text: "a_0 = 2 * M_u / (gamma * D * K_p)",
  source: `${sand}: equilibrium of moments about the toe as a cubic in the depth`,
  symbols: { a_0: { kind: "volume", meaning: "constant term of the cubic" }, M_u, gamma, D, K_p },
});

export const sandShearDepth = formula({ id: "pier.broms-sand-f", text: "f = sqrt(H_u / (1.5 * gamma * D * K_p))", source: sand, symbols: { f, H_u, gamma, D, K_p } });

export const sandMoment = formula({ id: "pier.broms-sand-moment", text: "M_max = M_u + H_u * 2 * f / 3", source: sand, symbols: { M_max, M_u, H_u, f } });

export interface BromsInputs extends PierBody, Stiffness {
  readonly soil: "clay" | "sand";
  readonly cohesion: number;
  readonly angle: number;
  readonly weight: number;
  readonly water: number | undefined;
  readonly safety: number;
  readonly ignored: number;
  readonly grout: number;
  readonly plate: number;
}

const isMore = (value: { readonly value: number } | undefined): boolean => value !== undefined && value.value > 0;

/** One soil along the pier, clay or sand, with its strength stated, and a head free at grade. */
function applies(support: Support): boolean {
  const ground = support.ground?.fields;
  if (!isPole(support) || !ground || ground.kind?.value === "rock" || ground.layers !== undefined) return false;
  if (support.foundation?.fields["restrained at grade"]?.value === true && support.foundation.fields["slab at grade"]?.value.kind?.value === "tied slab") return false;
  return isMore(ground["friction angle"]) !== isMore(ground.cohesion);
}

function read(support: Support, gather: Gather, place: number): BromsInputs {
  standsAlone(support, gather, place, "the lateral strength");
  const ground = support.ground?.fields;
  const pier = support.foundation?.fields;
  const isSand = isMore(ground?.["friction angle"]);
  if (isHeld(readHold(support, gather))) gather.block("a pier held at grade turns another way: state the slab at grade, or write restrained at grade: no");
  levelGround(support, gather, "this method", "have the pier designed for that slope by a geotechnical engineer, or bring the ground level around it");
  return {
    ...readPier(support, gather),
    ...readStiffness(support, gather),
    soil: isSand ? "sand" : "clay",
    cohesion: isSand ? 0 : gather.need(ground?.cohesion, "cohesion"),
    angle: isSand ? gather.need(ground?.["friction angle"], "friction angle") : 0,
    weight: isSand ? gather.need(ground?.["unit weight"], "unit weight of the ground") : 0,
    water: gather.may(ground?.["water table"]),
    safety: gather.need(ground?.["lateral safety"], "factor of safety on the soil's lateral strength (lateral safety of the ground)"),
    ignored: gather.may(pier?.["ignored depth"]) ?? 0,
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
  };
}

function depthInClay(inputs: BromsInputs, H_u: number, M_u: number, calc: Calc): number {
  const { size, cohesion: c_u } = inputs;
  const f = calc(clayShearDepth, { H_u, c_u, D: size });
  const M_max = calc(clayMoment, { M_u, H_u, D: size, f });
  return calc(clayDepth, { D: size, f, g: calc(clayTurning, { M_max, c_u, D: size }) });
}

function depthInSand(inputs: BromsInputs, H_u: number, M_u: number, calc: Calc): number {
  const K_p = calc(passive, { phi: inputs.angle });
  const isWet = inputs.water !== undefined && inputs.water < inputs.depth;
  if (isWet) calc.note("Water stands along the pier: the soil counts as under water from the top, the safe side.");
  if (inputs.water === undefined) calc.note("No water table is given: the soil is taken as dry along the pier.");
  const gamma = isWet ? calc(buoyantWeight, { gamma_s: inputs.weight }) : inputs.weight;
  const a_1 = calc(sandLinear, { H_u, gamma, D: inputs.size, K_p });
  const a_0 = calc(sandConstant, { M_u, gamma, D: inputs.size, K_p });
  const f = calc(sandShearDepth, { H_u, gamma, D: inputs.size, K_p });
  calc(sandMoment, { M_u, H_u, f });
  return calc.routine(cubicRoot, { a: a_1, b: a_0 });
}

const sized = (load: Lateral): boolean => load.force > 0 || load.moment > 0;

export const pierBroms = check({
  id: "pier.broms",
  title: "Lateral strength of the soil beside the pier",
  link: "pier",
  level: "allowable",
  clause: "Broms 1964 (from memory); a second opinion, asked for by no code",
  fails: "The soil beside the pier is at its strength along the whole length, and the pier turns over.",
  seen: "A pier that lies over after a storm, with soil heaped before it.",
  range:
    "A short rigid pier, free at grade, alone in level ground of one kind, clay or sand: layers are left to the p-y curves. The largest moment is that of a pier that does not break; its concrete has to carry it. " +
    "In sand the force at the toe is taken as a single one, which flatters a stubby pier: the factor of safety is not to be spared.",
  formulas: [baseHeight, loweredGround, momentX, momentY, shearResultant, momentResultant, factoredForce, factoredMoment, clayShearDepth, clayMoment, clayTurning, clayDepth, passive, buoyantWeight, sandLinear, sandConstant, sandShearDepth, sandMoment, depthFromGrade, countedLength, ...relativeLengthFormulas],
  applies,
  inputs: read,
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { ignored, safety: F_s } = inputs;
    const a = calc(baseHeight, { h_a: inputs.aboveGrade, t_g: inputs.grout, t_p: inputs.plate });
    const load = lateralAt(demand.base, ignored > 0 ? calc(loweredGround, { a, z_i: ignored }) : a, calc);
    if (!sized(load)) return weigh(0, inputs.depth, "distance");
    const H_u = calc(factoredForce, { F_s, P_h: load.force });
    const M_u = calc(factoredMoment, { F_s, M_h: load.moment });
    sayLength(inputs, inputs.soil === "sand", ignored > 0 ? calc(countedLength, { d: inputs.depth, z_i: ignored }) : inputs.depth, calc);
    const counted = inputs.soil === "clay" ? depthInClay(inputs, H_u, M_u, calc) : depthInSand(inputs, H_u, M_u, calc);
    return weigh(ignored > 0 ? calc(depthFromGrade, { d_r: counted, z_i: ignored }) : counted, inputs.depth, "distance");
  },
  advise: (inputs, outcome, say) =>
    `depth ${say.show(outcome.capacity, "distance")}; ${say.show(outcome.demand, "distance")} needed for the soil's strength with a factor of ${say.show(inputs.safety, "number")}. Deepen the pier or widen it.`,
});
