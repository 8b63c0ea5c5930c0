/** A fillet weld all around a column, as its checks at base and top use it: AISC 360-22 J2.4, elastic line. */
import type { Forces } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { weldLine } from "../../mechanics/weld-line.js";
import type { Column } from "../../project/model.js";
import type { Sourced, Support } from "../../project/model.js";
import { weigh, type Gather, type Outcome, type Say, type Weighed } from "../contract.js";
import { allowableWeld, available, ofConnectors, type SteelDemand } from "../steel-strength.js";
import { resultantMoment } from "./interaction.js";
import { readSection, type SectionInputs } from "./member.js";
import { flangeDistance } from "./elements.js";
import { flangeBendingFormulas, flangeMomentOf } from "./warping.js";

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

export const weldFlangeTwist = formula({
  id: "column.weld-flange-twist",
  text: "q_t = abs(T) / (h_o * (2 * B - t_w))",
  source: "statics: at the end of a W the twist is a couple of shears in its flanges, on both sides of each",
  symbols: {
    q_t: perLength("twist per length of weld"),
    T: { kind: "moment", meaning: "torsion" },
    h_o: { kind: "length", meaning: "between the middles of the flanges" },
    B: { kind: "length", meaning: "flange width", field: "columns.*.section" },
    t_w: { kind: "length", meaning: "web", field: "columns.*.section" },
  },
});

export const weldWarping = formula({
  id: "column.weld-warping",
  text: "q_n = q_0 + 3 * M_f / B^2",
  source: "elastic line method: the moment of a flange in its own plane on the two lines along it, at its tips",
  symbols: { q_n: perLength("force along the column per length of weld, with that of warping"), q_0: perLength("force along the column without it"), M_f: { kind: "moment", meaning: "moment of each flange in its own plane" }, B: { kind: "length", meaning: "flange width", field: "columns.*.section" } },
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

export const atDesignLevel = formula({
  id: "column.weld-at-design-level",
  text: "q = q_r * min(q_w, q_b) / q_c",
  source: "AISC 360-22 B3.1, B3.2: the same share of the strength by either method",
  symbols: { q: perLength("force per length of weld, as it stands to the design strength"), q_r: perLength("force per length of weld"), q_w: perLength("design strength of the weld metal"), q_b: perLength("design strength of the wall"), q_c: perLength("strength that is available") },
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
  /** Height of the column, m; needed of a W alone, whose twist goes by it. */
  readonly L: number;
}

export function readWeld(support: Support, gather: Gather, weld: Sourced<Weld> | undefined, what: string): WeldInputs {
  const section = readSection(support, gather);
  const w = gather.need(weld?.value.fillet, what);
  const electrode = weld ? gather.needs(weld.value.electrode, "electrode of that weld") : undefined;
  const height = support.column?.fields.height;
  const L = section.shape === "W" ? gather.need(height, "column height") : 0;
  return { ...section, w, L, F_EXX: electrode === undefined ? Number.NaN : electrodeStrength.value({ n_E: Number(electrode.slice(1)) }) };
}

export const thinnerOf = ({ t, t_f }: Pick<SectionInputs, "t" | "t_f">): number => (t <= t_f ? t : t_f);

/** Twist on a W's weld: what it adds along the column and across it. */
function twistOfWide(inputs: WeldInputs, T: number, q_0: number, calc: Calc): { readonly q_n: number; readonly q_t: number } {
  const M_f = flangeMomentOf(inputs, T, calc);
  const q_n = calc(weldWarping, { q_0, M_f, B: inputs.B });
  return { q_n, q_t: calc(weldFlangeTwist, { T, h_o: calc(flangeDistance, { H: inputs.H, t_f: inputs.t_f }), B: inputs.B, t_w: inputs.t }) };
}

/** The weld against the forces of one end of the column. */
export function weighWeld(inputs: WeldInputs, demand: SteelDemand, forces: Forces, calc: Calc): Outcome {
  const line = calc.routine(weldLine, { shape: inputs.shape, depth: inputs.H, width: inputs.B, wall: inputs.t, flange: inputs.t_f, deep: inputs.deep });
  const isRound = inputs.shape === "round";
  const M_x = isRound ? calc(resultantMoment, { M_x: forces.Mx, M_y: forces.My }) : forces.Mx;
  const q_0 = calc(weldNormal, { P: forces.P, L_w: line.length, M_x, M_y: isRound ? 0 : forces.My, S_wx: line.aboutX, S_wy: line.aboutY });
  const q_v = calc(weldShear, { V_x: forces.Vx, V_y: forces.Vy, L_w: line.length });
  const T = forces.Mz ?? 0;
  const { q_n, q_t } = T === 0 ? { q_n: q_0, q_t: 0 } : inputs.shape === "W" ? twistOfWide(inputs, T, q_0, calc) : { q_n: q_0, q_t: calc(weldTwist, { T, A_w: line.enclosed }) };
  const q = calc(weldForce, { q_n, q_v, q_t });
  const q_w = calc(weldMetal, { F_EXX: inputs.F_EXX, w: inputs.w });
  const q_b = calc(weldWall, { F_u: inputs.F_u, t: thinnerOf(inputs) });
  if (q_b < q_w) calc.note("The wall beside the weld is weaker than the weld: a larger fillet gains nothing.");
  return weigh(q, available(demand, q_b < q_w ? q_b : q_w, allowableWeld, ofConnectors, calc), "forcePerLength");
}

export const weldFormulas = [resultantMoment, weldNormal, weldShear, weldTwist, ...flangeBendingFormulas, weldWarping, weldFlangeTwist, weldForce, weldMetal, weldWall, allowableWeld];

/** Leg first; where the wall is what gives, a larger fillet is no way out. */
export function adviseWeld(inputs: WeldInputs, outcome: Weighed, say: Say): string {
  const { F_EXX, F_u, w } = inputs;
  const t = thinnerOf(inputs);
  const q_w = weldMetal.value({ F_EXX, w });
  const q_b = weldWall.value({ F_u, t });
  const q = atDesignLevel.value({ q_r: outcome.demand, q_w, q_b, q_c: outcome.capacity });
  const needed = `${say.show(outcome.demand, "forcePerLength")} needed. Take a thicker wall or a wider section.`;
  if (q > q_b) return q_b < q_w ? `Wall ${say.show(t, "length")} carries ${say.show(outcome.capacity, "forcePerLength")} beside the weld; ${needed}` : `Wall ${say.show(t, "length")} is too thin for any weld here: ${needed}`;
  return `Fillet ${say.show(w, "length")}; ${say.show(legNeeded.value({ q, F_EXX }), "length")} needed. Take a larger fillet.`;
}
