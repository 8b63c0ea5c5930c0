/**
 * The wall slides on its footing along the joint. In the field the foot of the wall has moved out over its footing, and the dowels are bent.
 *
 * ACI 318-19 22.9: shear friction. The bars across the joint clamp it; permanent compression adds, a pull takes its share of the bars (22.9.4.5, 22.9.4.6).
 * The moment presses one side as much as it opens the other and takes nothing.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, unchecked, weigh } from "../contract.js";
import { padEditions } from "../footing/pad.js";
import { isWall } from "./body.js";
import { allDowels, atJoint, jointField, type JointInputs, readJoint, type Surface } from "./joint.js";
import type { Situation } from "./situations.js";
import { axialOver, sectionArea } from "./stem-shear.js";
import { type Combined, combinedAt, forcesAt, shearAt, shearOf, stemForceFormulas, type StemSection } from "./stem-forces.js";
import { type Tried, worstOfStem } from "./stem-worst.js";

const wide = [-1e6, 1e6] as const;
const width = { kind: "distance", meaning: "length of wall that carries the forces of the post" } as const;
const area = { kind: "planArea", meaning: "area of the joint over that length" } as const;
const axial = { kind: "force", meaning: "axial force over that length, compression positive", range: wide } as const;
const clamping = { kind: "force", meaning: "axial force that counts: what is permanent of a push, a pull as the steel it takes", range: wide } as const;
const limit = { kind: "stress", meaning: "largest shear stress of the joint" } as const;
const strength = { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } as const;
const bars = { kind: "area", meaning: "bars across the joint over that length" } as const;

export const barsAcross = formula({
  id: "wall.bars-across",
  text: "A_vf = A_o + A_b * b / s",
  source: "arithmetic",
  symbols: { A_vf: bars, A_o: { kind: "area", meaning: "those counted before" }, A_b: { kind: "area", meaning: "area of one bar" }, b: width, s: { kind: "length", meaning: "spacing of the bars" } },
});

export const permanentOver = formula({
  id: "wall.permanent-over-width",
  text: "N_D = P_D + f_D * gamma_c * t_w * h * b",
  source: "statics: dead load of the post and the wall's own weight",
  symbols: {
    N_D: { kind: "force", meaning: "permanent axial force over that length", range: wide },
    P_D: { kind: "force", meaning: "dead load in the axial force at the column base", range: wide },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    t_w: { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" },
    h: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" },
    b: width,
  },
  constants: { gamma_c: "150 lbf/ft^3" },
});

export const clampingForce = formula({
  id: "wall.clamping-force",
  text: "N_s = N_u < 0 * N_u ? N_u / phi : min(N_u, max(N_D, 0 * N_D))",
  source: "ACI 318-19 22.9.4.5, 22.9.4.6 (from memory)",
  symbols: { N_s: clamping, N_u: axial, N_D: { kind: "force", meaning: "permanent axial force over that length", range: wide } },
  constants: { phi: "0.75" },
});

export const roughLimit = formula({
  id: "wall.rough-joint-limit",
  text: "v_c = min(0.2 * fprime_c, v_480 + 0.08 * fprime_c, v_1600)",
  source: "ACI 318-19 Table 22.9.4.4: roughened to 1/4 in, or cast in one (from memory)",
  symbols: { v_c: limit, fprime_c: strength },
  constants: { v_480: "480 psi", v_1600: "1600 psi" },
});

export const otherLimit = formula({
  id: "wall.smooth-joint-limit",
  text: "v_c = min(0.2 * fprime_c, v_800)",
  source: "ACI 318-19 Table 22.9.4.4: not roughened (from memory)",
  symbols: { v_c: limit, fprime_c: strength },
  constants: { v_800: "800 psi" },
});

export const jointStrength = formula({
  id: "wall.joint-strength",
  text: "phiV_n = phi * max(0 * v_c * A_g, min(mu * (A_vf * min(f_y, f_60) + N_s), v_c * A_g))",
  source: "ACI 318-19 Eq. 22.9.4.2, Tables 22.9.4.2, 22.9.4.4, 20.2.2.4(a) (from memory)",
  symbols: {
    phiV_n: { kind: "force", meaning: "design strength of the joint against sliding" },
    v_c: limit,
    A_g: area,
    mu: { kind: "ratio", meaning: "coefficient of friction: 0.6 not roughened, 1.0 roughened to 1/4 in, 1.4 cast in one", field: "foundations.*.joint dowels.surface", range: [0.6, 1.4] },
    A_vf: bars,
    f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" },
    N_s: clamping,
  },
  constants: { phi: "0.75", f_60: "60 ksi" },
});

export const bothShears = formula({
  id: "wall.joint-shear-force",
  text: "V_u = sqrt(V_w^2 + V_l^2)",
  source: "statics",
  symbols: { V_u: { kind: "force", meaning: "push along the joint, across and along the wall together" }, V_w: { kind: "force", meaning: "shear across the wall over the length that carries the post" }, V_l: { kind: "force", meaning: "push of the post along the wall", range: wide } },
});

/** ACI 318-19 Table 22.9.4.2, normalweight concrete. */
const friction: Readonly<Record<Surface, number>> = { "not roughened": 0.6, "roughened 1/4 in": 1, "cast in one": 1.4 };

function slidesAt(inputs: JointInputs, combined: Combined, P_D: number, section: StemSection, situation: Situation, calc: Calc): Tried<"joint"> {
  const { width: b } = section;
  const { thickness: t_w, height: h, fprime_c, f_y, surface } = inputs;
  const { top, f_D } = combined;
  const { mean } = forcesAt(inputs, section, situation, combined, calc);
  const V_l = situation.hasPost ? top.along : 0;
  const V_w = shearOf(section, situation, combined, calc);
  const demand = V_l === 0 ? V_w : calc(bothShears, { V_w, V_l });
  const A_vf = allDowels(inputs).reduce((A_o, { area: A_b, spacing: s }) => calc(barsAcross, { A_o, A_b, b, s }), 0);
  const N_D = calc(permanentOver, { P_D: situation.hasPost ? P_D : 0, f_D, t_w, h, b });
  const N_s = calc(clampingForce, { N_u: calc(axialOver, { N_w: mean, b }), N_D });
  const v_c = surface === "not roughened" ? calc(otherLimit, { fprime_c }) : calc(roughLimit, { fprime_c });
  return { demand, capacity: calc(jointStrength, { v_c, A_g: calc(sectionArea, { b, t_w }), mu: friction[surface], A_vf, f_y, N_s }), of: "joint" };
}

const nothing = (): undefined => undefined;

export const wallJointShear = check({
  id: "wall.joint-shear",
  title: "Sliding of the wall on its footing",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 22.9.4",
  editions: padEditions,
  fails: "The wall slides on its footing along the joint between them.",
  seen: "A wall moved out over its footing, its dowels bent.",
  range:
    "Shear friction of normalweight concrete, clean and free of laitance; bars at a right angle to the joint, developed on both sides. Both directions together, over the length that carries the post. Of a push only dead load counts; a reaction given already combined has none but the wall's own weight. A key in the joint is not counted. With the fill and without it, and on a length without a post; earth pressure with a load factor of 1.6, and what an earthquake adds where the fill states its coefficient.",
  formulas: [...stemForceFormulas, shearAt, bothShears, barsAcross, axialOver, permanentOver, clampingForce, sectionArea, roughLimit, otherLimit, jointStrength],
  applies: isWall,
  inputs: readJoint,
  fixedBy: jointField,
  evaluate: (inputs, demand, calc) => {
    const combined = combinedAt(inputs, demand, calc);
    if ("because" in combined) return unchecked(combined.because);
    const P_D = demand.dead ?? Math.min(demand.base.P, 0);
    const attempt = (section: StemSection, _known: unknown, situation: Situation, c: Calc): Tried<"joint"> => slidesAt(inputs, combined, P_D, section, situation, c);
    const found = worstOfStem<JointInputs, unknown, "joint">({ inputs, combined, all: atJoint(inputs), know: nothing, attempt }, calc);
    return weigh(found.demand, found.capacity, "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} pushes the wall along its joint; shear friction holds ${say.show(outcome.capacity, "force")}. Add dowels${inputs.surface === "not roughened" ? ", or roughen the footing to 1/4 in below the wall" : ""}.`,
});
