/** A fillet weld all around a column, as its checks at base and top use it: AISC 360-22 J2.4, elastic line. */
import type { Forces } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { weldLine } from "../../mechanics/weld-line.js";
import type { Column } from "../../project/model.js";
import type { Sourced, Support } from "../../project/model.js";
import { weigh, type Gather, type Outcome, type Say, type Weighed } from "../contract.js";
import { resultantMoment } from "./interaction.js";
import { readSection, type SectionInputs } from "./member.js";

type Weld = NonNullable<Column["base weld"]>["value"];

const perLength = (meaning: string) => ({ kind: "forcePerLength", meaning }) as const;

export const weldNormal = formula({
  id: "column.weld-normal",
  text: "q_n = abs(P) / L_w + abs(M_x) / S_wx + abs(M_y) / S_wy",
  source: "elastic line method, AISC Manual Part 8 (from memory); bearing of the column on the plate is not counted on",
  symbols: {
    q_n: perLength("force along the column per length of weld, at its worst place"),
    P: { kind: "force", meaning: "axial force" },
    L_w: { kind: "length", meaning: "length of the weld" },
    M_x: { kind: "moment", meaning: "moment about the east axis" },
    M_y: { kind: "moment", meaning: "moment about the north axis" },
    S_wx: { kind: "area", meaning: "modulus of the line about the east axis" },
    S_wy: { kind: "area", meaning: "modulus of the line about the north axis" },
  },
});

export const weldShear = formula({
  id: "column.weld-shear",
  text: "q_v = sqrt(V_x^2 + V_y^2) / L_w",
  source: "elastic line method, AISC Manual Part 8 (from memory)",
  symbols: { q_v: perLength("shear per length of weld"), V_x: { kind: "force", meaning: "shear to the east" }, V_y: { kind: "force", meaning: "shear to the north" }, L_w: { kind: "length", meaning: "length of the weld" } },
});

export const weldTwist = formula({
  id: "column.weld-twist",
  text: "q_t = abs(T) / (2 * A_w)",
  source: "Bredt's shear flow round a closed line",
  symbols: { q_t: perLength("twist per length of weld"), T: { kind: "moment", meaning: "torsion" }, A_w: { kind: "area", meaning: "area within the weld" } },
});

export const weldForce = formula({
  id: "column.weld-force",
  text: "q = sqrt(q_n^2 + (q_v + q_t)^2)",
  source: "statics",
  symbols: { q: perLength("force per length of weld"), q_n: perLength("along the column"), q_v: perLength("across it"), q_t: perLength("of twist") },
});

export const weldMetal = formula({
  id: "column.weld-metal",
  text: "q_w = phi * 0.60 * F_EXX * w / sqrt(2)",
  source: "AISC 360-22 J2.4 and Table J2.5, phi = 0.75, without the increase by direction, which does not hold at the ends of hollow sections in tension",
  symbols: { q_w: perLength("design strength of the weld metal"), F_EXX: { kind: "steelStress", meaning: "strength of the electrode", field: "columns.*.base weld.electrode" }, w: { kind: "length", meaning: "leg of the fillet", field: "columns.*.base weld.fillet" } },
  constants: { phi: "0.75" },
});

export const weldWall = formula({
  id: "column.weld-wall",
  text: "q_b = phi * 0.60 * F_u * t",
  source: "AISC 360-22 J2.4(b) and J4.2(b), phi = 0.75: rupture of the wall beside the weld",
  symbols: { q_b: perLength("design strength of the wall"), F_u: { kind: "steelStress", meaning: "tensile strength of the column", field: "columns.*.grade" }, t: { kind: "length", meaning: "design wall, or the thinner of web and flange", field: "columns.*.section" } },
  constants: { phi: "0.75" },
});

export const legNeeded = formula({
  id: "column.weld-leg-needed",
  text: "w_min = q * sqrt(2) / (phi * 0.60 * F_EXX)",
  source: "AISC 360-22 J2.4 and Table J2.5, solved for the leg",
  symbols: { w_min: { kind: "length", meaning: "leg needed" }, q: perLength("force per length of weld"), F_EXX: { kind: "steelStress", meaning: "strength of the electrode" } },
  constants: { phi: "0.75" },
});

export const electrodeStrength = formula({
  id: "column.electrode-strength",
  text: "F_EXX = n_E * F_1",
  source: "AWS classification: the number of the electrode in ksi",
  symbols: { F_EXX: { kind: "steelStress", meaning: "strength of the electrode" }, n_E: { kind: "number", meaning: "number of the electrode" } },
  constants: { F_1: "1 ksi" },
});

export interface WeldInputs extends SectionInputs {
  /** Leg of the fillet, m. */
  readonly w: number;
  readonly F_EXX: number;
}

export function readWeld(support: Support, gather: Gather, weld: Sourced<Weld> | undefined, what: string): WeldInputs {
  const section = readSection(support, gather);
  const w = gather.need(weld?.value.fillet, what);
  const electrode = weld ? gather.needs(weld.value.electrode, "electrode of that weld") : undefined;
  return { ...section, w, F_EXX: electrode === undefined ? Number.NaN : electrodeStrength.value({ n_E: Number(electrode.slice(1)) }) };
}

export const thinnerOf = ({ t, t_f }: Pick<SectionInputs, "t" | "t_f">): number => (t <= t_f ? t : t_f);

/** The weld against the forces of one end. */
export function weighWeld(inputs: WeldInputs, forces: Forces, calc: Calc): Outcome {
  const line = calc.routine(weldLine, { shape: inputs.shape, depth: inputs.H, width: inputs.B, wall: inputs.t, flange: inputs.t_f, deep: inputs.deep });
  const isRound = inputs.shape === "round";
  const M_x = isRound ? calc(resultantMoment, { M_x: forces.Mx, M_y: forces.My }) : forces.Mx;
  const q_n = calc(weldNormal, { P: forces.P, L_w: line.length, M_x, M_y: isRound ? 0 : forces.My, S_wx: line.aboutX, S_wy: line.aboutY });
  const q_v = calc(weldShear, { V_x: forces.Vx, V_y: forces.Vy, L_w: line.length });
  const T = forces.Mz ?? 0;
  const q_t = T === 0 || line.enclosed === 0 ? 0 : calc(weldTwist, { T, A_w: line.enclosed });
  const q = calc(weldForce, { q_n, q_v, q_t });
  const q_w = calc(weldMetal, { F_EXX: inputs.F_EXX, w: inputs.w });
  const q_b = calc(weldWall, { F_u: inputs.F_u, t: thinnerOf(inputs) });
  if (q_b < q_w) calc.note("The wall beside the weld is weaker than the weld: a larger fillet gains nothing.");
  return weigh(q, q_b < q_w ? q_b : q_w, "forcePerLength");
}

export const weldFormulas = [resultantMoment, weldNormal, weldShear, weldTwist, weldForce, weldMetal, weldWall];

/** Leg first; where the wall is what gives, a larger fillet is no way out. */
export function adviseWeld(inputs: WeldInputs, outcome: Weighed, say: Say): string {
  const wall = weldWall.value({ F_u: inputs.F_u, t: thinnerOf(inputs) });
  if (outcome.demand > wall) return `Wall ${say.show(thinnerOf(inputs), "length")} carries ${say.show(wall, "forcePerLength")} beside the weld; ${say.show(outcome.demand, "forcePerLength")} needed. Take a thicker wall or a wider section.`;
  return `Fillet ${say.show(inputs.w, "length")}; ${say.show(legNeeded.value({ q: outcome.demand, F_EXX: inputs.F_EXX }), "length")} needed. Take a larger fillet.`;
}
