/**
 * The bolts between cap plate and roof beam break or pull the cap plate up around them. In the field the roof is gone, and the cap plates
 * are dished upward with the bolts' shanks broken in them.
 *
 * AISC 360-22 J3.7 and J3.8 (J3.6 and J3.7 before 2022): tension, shear, and both; bearing, tear-out and slip in a file of their own. Prying by
 * the AISC Manual, Part 9, where the cap plate is described.
 */
import { boltGrades, pretensionOf, slipCoefficients, type BoltGrade } from "../../catalog/bolts.js";
import { steelOfSection } from "../../catalog/column-steels.js";
import { findSteel } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, unchecked, weigh, type Gather, type Outcome } from "../contract.js";
import { allowableForce, available, ofConnectors, steelLevels, type SteelDemand, type SteelFactors } from "../steel-strength.js";
import { resultantShear } from "./shear.js";
import { gripLeft, holeFormulas, slipStrength, strengthAtHole, type Grip, type Part } from "./top-bolt-holes.js";
import { netUplift } from "./top-connection.js";
import { carriesTop, topOf } from "./top-parts.js";

const stress = (meaning: string) => ({ kind: "steelStress", meaning }) as const;
const length = (meaning: string, field?: string) => ({ kind: "length", meaning, field }) as const;
const force = (meaning: string) => ({ kind: "force", meaning }) as const;
const ratio = (meaning: string) => ({ kind: "ratio", meaning }) as const;

export const boltArea = formula({ id: "column.bolt-area", text: "A_b = pi * d^2 / 4", source: "AISC 360-22 J3.7, nominal area", symbols: { A_b: { kind: "area", meaning: "nominal area of one bolt" }, d: length("diameter of the bolts", "columns.*.top connection.bolts.diameter") } });

export const boltTension = formula({
  id: "column.bolt-tension",
  text: "T_b = T / n + 2 * abs(M_x) / (n * s_y) + 2 * abs(M_y) / (n * s_x)",
  source: "statics: bolts in two rows each way, a moment pulls on one row and presses on the other",
  symbols: {
    T_b: force("tension of one bolt"),
    T: force("net uplift at the column top"),
    n: { kind: "number", meaning: "bolts", field: "columns.*.top connection.bolts.count" },
    M_x: { kind: "moment", meaning: "moment about the east axis" },
    M_y: { kind: "moment", meaning: "moment about the north axis" },
    s_x: length("spacing of the bolts along x", "columns.*.top connection.bolts.spacing x"),
    s_y: length("spacing of the bolts along y", "columns.*.top connection.bolts.spacing y"),
  },
});

export const boltShear = formula({
  id: "column.bolt-shear",
  text: "V_b = V / n + 2 * abs(M_z) / (n * sqrt(s_x^2 + s_y^2))",
  source: "statics: even shares, and the twist at the corners of the pattern",
  symbols: {
    V_b: force("shear of one bolt"),
    V: force("shear at the column top"),
    n: { kind: "number", meaning: "bolts", field: "columns.*.top connection.bolts.count" },
    M_z: { kind: "moment", meaning: "twist at the column top" },
    s_x: length("spacing of the bolts along x"),
    s_y: length("spacing of the bolts along y"),
  },
});

export const boltShearStrength = formula({
  id: "column.bolt-shear-strength",
  text: "V_s = phi * F_nv * A_b",
  source: "AISC 360-22 Eq. J3-1 and Table J3.2, phi = 0.75",
  symbols: { V_s: force("design shear strength of one bolt"), F_nv: stress("nominal shear stress"), A_b: { kind: "area", meaning: "nominal area of one bolt" } },
  constants: { phi: "0.75" },
});

export const tensionWithShear = formula({
  id: "column.bolt-tension-with-shear",
  text: "F_ntp = max(0, min(F_nt, 1.3 * F_nt - F_nt * V_b / V_s))",
  source: "AISC 360-22 Eq. J3-3a and J3-3b: the shear over the shear strength of the bolt, by either method",
  symbols: { F_ntp: stress("nominal tensile stress left beside the shear"), F_nt: stress("nominal tensile stress"), V_b: force("shear of one bolt"), V_s: force("shear strength of one bolt that is available") },
});

export const boltTensionStrength = formula({
  id: "column.bolt-tension-strength",
  text: "B_c = phi * F_ntp * A_b",
  source: "AISC 360-22 Eq. J3-1 and J3-2, phi = 0.75",
  symbols: { B_c: force("design tensile strength of one bolt"), F_ntp: stress("nominal tensile stress left beside the shear"), A_b: { kind: "area", meaning: "nominal area of one bolt" } },
  constants: { phi: "0.75" },
});

export const standardHole = formula({
  id: "column.standard-hole",
  text: "d_h = d < d_1 ? d + c_1 : d + c_2",
  source: "AISC 360-22 Table J3.3, standard holes",
  symbols: { d_h: length("hole"), d: { ...length("diameter of the bolts"), range: [0.012, 0.04] } },
  constants: { d_1: "0.999 inch", c_1: "0.0625 inch", c_2: "0.125 inch" },
});

export const pryingInner = formula({ id: "column.prying-b", text: "b_i = b - d / 2", source: "AISC Manual, 16th ed., Part 9, Eq. 9-18 (from memory)", symbols: { b_i: length("from the edge of the bolt to the face of the column"), b: { ...length("from the middle of the bolt to the face of the column", "columns.*.top connection.cap plate.bolt to face"), range: [0.03, 0.06] }, d: { ...length("diameter of the bolts"), range: [0.01, 0.03] } } });

export const pryingRatio = formula({
  id: "column.prying-rho",
  text: "rho = b_i / min(a + d / 2, 1.25 * b + d / 2)",
  source: "AISC Manual, 16th ed., Part 9, Eq. 9-22 and 9-23 (from memory)",
  symbols: { rho: ratio("lever arms of pull and pry"), b_i: length("from the edge of the bolt to the face of the column"), a: length("from the middle of the bolt to the edge of the plate", "columns.*.top connection.cap plate.edge"), b: length("from the middle of the bolt to the face of the column"), d: length("diameter of the bolts") },
});

export const pryingDelta = formula({ id: "column.prying-delta", text: "delta = 1 - d_h / p", source: "AISC Manual, 16th ed., Part 9, Eq. 9-20 (from memory)", symbols: { delta: ratio("net over gross width of the plate at a bolt"), d_h: { ...length("hole"), range: [0.01, 0.03] }, p: { ...length("width of the plate that goes with one bolt", "columns.*.top connection.cap plate.pitch"), range: [0.06, 0.2] } } });

export const plateWithoutPrying = formula({
  id: "column.prying-thickness",
  text: "t_c = sqrt(4 * B_c * b_i / (phi_b * p * F_y))",
  source: "AISC Manual, 16th ed., Part 9, Eq. 9-26 (from memory); AISC Companion to the Manual, 16th ed., Example K.10, with the yield strength",
  symbols: { t_c: length("plate at which the bolts break before anything pries"), B_c: force("design tensile strength of one bolt"), b_i: length("from the edge of the bolt to the face of the column"), p: length("width of the plate that goes with one bolt"), F_y: stress("yield strength of the cap plate") },
  constants: { phi_b: "0.90" },
});

export const pryingAlpha = formula({
  id: "column.prying-alpha",
  text: "alpha = min(1, max(0, ((t_c / t_p)^2 - 1) / (delta * (1 + rho))))",
  source: "AISC Manual, 16th ed., Part 9, Eq. 9-28 (from memory)",
  symbols: { alpha: ratio("share of the plate's moment at the bolt line"), t_c: length("plate at which nothing pries"), t_p: length("cap plate", "columns.*.top connection.cap plate.thickness"), delta: ratio("net over gross width"), rho: ratio("lever arms of pull and pry") },
});

export const availableTension = formula({
  id: "column.prying-tension",
  text: "T_c = B_c * min(1, (t_p / t_c)^2 * (1 + delta * alpha))",
  source: "AISC Manual, 16th ed., Part 9, Eq. 9-27 to 9-29 (from memory)",
  symbols: { T_c: force("tension one bolt carries beside what pries"), B_c: force("design tensile strength of one bolt"), t_p: length("cap plate"), t_c: length("plate at which nothing pries"), delta: ratio("net over gross width"), alpha: ratio("share of the plate's moment at the bolt line") },
});

export const boltUse = formula({
  id: "column.bolt-use",
  text: "U = max(V_b / V_c, T_b / T_c)",
  source: "AISC 360-22 J3.7 and J3.8: shear by itself, tension beside it",
  symbols: { U: ratio("the bolt against its strength"), V_b: force("shear of one bolt"), V_c: force("shear strength at one bolt"), T_b: force("tension of one bolt"), T_c: force("tension one bolt carries") },
});

interface Cap {
  readonly t_p: number;
  readonly a: number;
  readonly b: number;
  readonly p: number;
  readonly F_y: number;
  readonly F_u: number;
}

export interface BoltInputs {
  readonly n: number;
  readonly d: number;
  readonly F_nt: number;
  readonly F_nv: number;
  readonly s_x?: number;
  readonly s_y?: number;
  readonly cap?: Cap;
  /** Flange of the roof beam, or a plate below it. */
  readonly flange?: Part;
  /** Of bolts that may not slip. */
  readonly grip?: Grip;
}

const formulas = [netUplift, resultantShear, boltTension, boltShear, boltArea, boltShearStrength, tensionWithShear, boltTensionStrength, standardHole, pryingInner, pryingRatio, pryingDelta, plateWithoutPrying, pryingAlpha, availableTension, ...holeFormulas, boltUse, allowableForce];

/** Tension one bolt carries with the cap plate that bends under it. */
function withPrying(B_c: number, d: number, { t_p, a, b, p, F_y }: Cap, calc: Calc): number | undefined {
  const b_i = calc(pryingInner, { b, d });
  const delta = calc(pryingDelta, { d_h: calc(standardHole, { d }), p });
  if (!(b_i > 0 && delta > 0)) return undefined;
  const rho = calc(pryingRatio, { b_i, a, b, d });
  const t_c = calc(plateWithoutPrying, { B_c, b_i, p, F_y });
  const alpha = calc(pryingAlpha, { t_c, t_p, delta, rho });
  return calc(availableTension, { B_c, t_p, t_c, delta, alpha });
}

/** Grip of bolts whose grade the table has no pretension for leaves the check without an answer. */
function readGrip(support: Support, grade: BoltGrade | undefined, d: number, gather: Gather): Grip | undefined {
  const surfaces = gather.may(topOf(support)?.value.bolts?.value["slip critical"]);
  if (surfaces === undefined || surfaces === "no") return undefined;
  const T_m = grade ? pretensionOf(grade, d) : undefined;
  if (grade && Number.isFinite(d) && T_m === undefined) gather.block(`no pretension is known here for ${grade.name} bolts of this size; take A325 or A490 bolts of 1/2 to 1-1/2 in, or bolts that bear (slip critical: no)`);
  return { mu: slipCoefficients[surfaces], T_m: T_m ?? Number.NaN };
}

function readFlange(support: Support, gather: Gather): Part | undefined {
  const flange = topOf(support)?.value["beam flange"]?.value;
  if (!flange) return undefined;
  const name = gather.needs(flange.grade, "steel grade of the roof beam at the column top");
  const steel = name === undefined ? undefined : name === "A992" ? steelOfSection(name, "W") : findSteel(name);
  return {
    t: gather.need(flange.thickness, "thickness of the roof beam's flange at the column top"),
    a: gather.need(flange.edge, "edge distance of the bolts in the roof beam's flange"),
    F_u: steel && !isMissing(steel) ? steel.fu : Number.NaN,
  };
}

/** With allowable-stress loads grip lost to tension counts by half more: Eq. J3-5b. */
const tensionOnGrip = { strength: 1, allowable: 1.5 } as const;

const ofSlip: SteelFactors = { phi: 1, Omega: 1.5 };

/** Shear strength at one bolt: the bolt, the steel before it, and its grip; the least, with the bolt's own. */
function shearStrengthAt(inputs: BoltInputs, demand: SteelDemand, V_s: number, T_b: number, calc: Calc): number {
  const { d, cap, flange, grip, s_x, s_y } = inputs;
  let V_c = V_s;
  const parts: readonly (readonly [string, Part])[] = [...(cap ? [["cap plate", { t: cap.t_p, a: cap.a, F_u: cap.F_u }] as const] : []), ...(flange ? [["roof beam's flange", flange] as const] : [])];
  for (const [called, part] of parts) {
    const R_c = available(demand, strengthAtHole(part, d, calc(standardHole, { d }), [s_x, s_y], calc), allowableForce, ofConnectors, calc);
    if (R_c >= V_c) continue;
    calc.note(`The ${called} gives before the bolts do in shear.`);
    V_c = R_c;
  }
  if (grip) {
    const k_sc = calc(gripLeft, { alpha: tensionOnGrip[demand.level], T_u: T_b, T_m: grip.T_m });
    const R_s = available(demand, calc(slipStrength, { mu: grip.mu, T_m: grip.T_m, k_sc }), allowableForce, ofSlip, calc);
    if (R_s < V_c) {
      calc.note("The bolts slip before they bear.");
      V_c = R_s;
    }
  }
  return V_c;
}

export const topBolts = check({
  id: "column.top-bolts",
  title: "Bolts at the column top",
  link: "column",
  level: steelLevels,
  demands: "column top",
  clause: "AISC 360-22 J3.7, J3.8, J3.9, J3.11, Table J3.2; AISC Manual, 16th ed., Part 9",
  fails: "The bolts of the cap plate break in tension and shear, or pry themselves off a thin plate.",
  seen: "Cap plates dished upward around broken bolts.",
  range: "Vertical bolts in standard holes through a cap plate, in two rows each way, sharing evenly; single shear. Prying counts where the cap plate's thickness, edge, bolt to face and pitch are stated, and is left out otherwise. So do bearing and tear-out in the cap plate, and in the flange of the roof beam where it is stated. Slip counts where it is not allowed. The column stands between the rows, so that no block of the cap plate tears out other than before each bolt. The roof beam itself is not in it.",
  formulas,
  applies: (support) => carriesTop(support) && topOf(support)?.value.bolts !== undefined,
  inputs: (support, gather): BoltInputs => {
    const top = topOf(support)?.value;
    const bolts = top?.bolts?.value;
    const name = gather.needs(bolts?.grade, "grade of the bolts at the column top");
    const threads = gather.needs(bolts?.threads, "whether threads are in the shear plane of the bolts at the column top");
    const grade: BoltGrade | undefined = boltGrades.find((one) => one.name === name);
    const plate = top?.["cap plate"]?.value;
    const steelName = plate && gather.needs(plate.grade, "grade of the cap plate");
    const steel = steelName === undefined ? undefined : findSteel(steelName);
    const cap: Cap | undefined = plate && {
      t_p: gather.need(plate.thickness, "thickness of the cap plate"),
      a: gather.need(plate.edge, "edge distance of the bolts in the cap plate"),
      b: gather.need(plate["bolt to face"], "distance from bolt to column face in the cap plate"),
      p: gather.need(plate.pitch, "pitch of the bolts in the cap plate"),
      F_y: steel && !isMissing(steel) ? steel.fy : Number.NaN,
      F_u: steel && !isMissing(steel) ? steel.fu : Number.NaN,
    };
    const flange = readFlange(support, gather);
    const d = gather.need(bolts?.diameter, "diameter of the bolts at the column top");
    const grip = readGrip(support, grade, d, gather);
    return {
      n: gather.need(bolts?.count, "number of bolts at the column top"),
      d,
      F_nt: grade?.F_nt ?? Number.NaN,
      F_nv: (threads === "excluded" ? grade?.F_nvX : grade?.F_nvN) ?? Number.NaN,
      s_x: gather.may(bolts?.["spacing x"]),
      s_y: gather.may(bolts?.["spacing y"]),
      ...(cap && { cap }),
      ...(flange && { flange }),
      ...(grip && { grip }),
    };
  },
  fixedBy: (support) => topOf(support)?.value.bolts?.value.diameter ?? topOf(support)?.value.bolts ?? support.column,
  evaluate: (inputs, demand, calc): Outcome => {
    const { n, d, F_nt, F_nv, s_x, s_y, cap } = inputs;
    const { top } = demand;
    const M_z = top.Mz ?? 0;
    const isTurned = top.Mx !== 0 || top.My !== 0 || M_z !== 0;
    if (isTurned && (s_x === undefined || s_y === undefined)) return unchecked("the column top carries a moment or a twist, and the spacing of its bolts is not stated; state spacing x and spacing y of the bolts");
    const T = calc(netUplift, { P: top.P });
    const V = calc(resultantShear, { V_x: top.Vx, V_y: top.Vy });
    const spacing = { s_x: s_x ?? 1, s_y: s_y ?? 1 };
    const T_b = calc(boltTension, { T, n, M_x: top.Mx, M_y: top.My, ...spacing });
    const V_b = calc(boltShear, { V, n, M_z, ...spacing });
    const A_b = calc(boltArea, { d });
    const V_s = available(demand, calc(boltShearStrength, { F_nv, A_b }), allowableForce, ofConnectors, calc);
    const V_c = V_b > 0 ? shearStrengthAt(inputs, demand, V_s, T_b, calc) : V_s;
    if (V_b >= V_c) return weigh(V_b, V_c, "force");
    // A bolt that may not slip carries no shear in its shank.
    const F_ntp = inputs.grip ? F_nt : calc(tensionWithShear, { F_nt, V_b, V_s });
    const B_c = calc(boltTensionStrength, { F_ntp, A_b });
    const T_d = cap && T_b > 0 ? withPrying(B_c, d, cap, calc) : B_c;
    if (T_d === undefined) return unchecked("the bolts overlap the column or each other in the cap plate; state bolt to face and pitch larger than the bolt");
    if (!cap && T_b > 0) calc.note("The cap plate is not described: prying is left out.");
    const T_c = available(demand, T_d, allowableForce, ofConnectors, calc);
    return weigh(calc(boltUse, { V_b, V_c, T_b, T_c }), 1, "ratio");
  },
  advise: (inputs, outcome, say) =>
    outcome.quantity === "force"
      ? `Shear ${say.show(outcome.demand, "force")} a bolt; it carries ${say.show(outcome.capacity, "force")}. Take larger or more bolts${inputs.cap ? ", or more steel before them" : ""}.`
      : `${say.show(outcome.demand, "ratio")} times what a ${say.show(inputs.d, "length")} bolt holds. Take larger or more bolts${inputs.cap ? ", or a thicker cap plate" : ""}.`,
});
