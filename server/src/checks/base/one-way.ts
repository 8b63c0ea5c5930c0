/**
 * A second opinion on the rods: the one-way formulas most bases are designed by, beside the exact contact of plate and concrete. Where both
 * tell of about the same pull, neither has gone wrong; where the concrete has no room for the block of bearing, the plate is too small.
 *
 * AISC Design Guide 1, 3rd ed., 4.3: an even block of the full bearing strength along the pressed edge, rods in one row on the other side, each
 * direction by itself with the whole axial force. Under moments both ways the pulls of both are added at the corner rod. Rods by the AISC
 * strength, 0.75 of F_u on the nominal area.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Point } from "../../mechanics/rectangles.js";
import { readRod, type RodSteel } from "../anchors/rod.js";
import { check, weigh, type Outcome } from "../contract.js";
import { bearingStrength, confinedRatio, confinedRatioFormulas } from "./bearing.js";
import { concreteModulus, distribute, forcesBelow, isUnstable, modularRatio } from "./distribution.js";
import { readBase, type BaseInputs } from "./geometry.js";

const source = "AISC Design Guide 1, 3rd ed., 4.3";
const force = (meaning: string) => ({ kind: "force", meaning }) as const;
const P = force("axial force, compression positive");
const q_m = { kind: "forcePerLength", meaning: "bearing strength per length of the plate" } as const;
const M = { kind: "moment", meaning: "moment in this direction" } as const;
const N_l = { kind: "length", meaning: "plate along the push" } as const;
const f = { kind: "length", meaning: "from the middle of the plate to the row of rods in tension" } as const;
const Y = { kind: "length", meaning: "length of the block of bearing" } as const;
const M_r = { kind: "moment", meaning: "moment about the row of rods" } as const;

export const bearingPerLength = formula({
  id: "base.bearing-per-length",
  text: "q_m = f_d * B_w",
  source,
  symbols: { q_m, f_d: { kind: "stress", meaning: "design bearing strength, as a stress" }, B_w: { kind: "length", meaning: "plate across the push" } },
});

export const criticalEccentricity = formula({ id: "base.critical-eccentricity", text: "e_c = N_l / 2 - P / (2 * q_m)", source, symbols: { e_c: { kind: "length", meaning: "eccentricity up to which no rod pulls" }, N_l, P, q_m } });

export const eccentricity = formula({ id: "base.eccentricity", text: "e = abs(M) / P", source, symbols: { e: { kind: "length", meaning: "eccentricity of the axial force" }, M, P } });

export const smallMomentBlock = formula({ id: "base.small-moment-block", text: "Y = N_l - 2 * e", source: `${source}, small moment (from memory)`, symbols: { Y, N_l: { ...N_l, range: [0.3, 0.4] }, e: { kind: "length", meaning: "eccentricity of the axial force", range: [0, 0.1] } } });

export const aboutRods = formula({ id: "base.moment-about-rods", text: "M_r = abs(M) + P * f", source: `${source}; uplift counts against it`, symbols: { M_r, M, P, f } });

export const mostAboutRods = formula({
  id: "base.most-about-rods",
  text: "M_q = q_m * (f + N_l / 2)^2 / 2",
  source: `${source}: beyond it the block of bearing has no room`,
  symbols: { M_q: { kind: "moment", meaning: "largest moment about the rods that bearing can balance" }, q_m, f, N_l },
});

export const largeMomentBlock = formula({
  id: "base.large-moment-block",
  text: "Y = f + N_l / 2 - sqrt(max(0, (f + N_l / 2)^2 - 2 * M_r / q_m))",
  source: `${source}, large moment`,
  symbols: { Y, f, N_l, M_r: { ...M_r, range: [0, 1000] }, q_m: { ...q_m, range: [1e6, 1e7] } },
});

export const rowPull = formula({ id: "base.row-pull", text: "T = max(0, q_m * Y - P)", source: `${source}, large moment`, symbols: { T: force("tension of the row of rods"), q_m, Y, P: { ...P, range: [-1e6, 1e5] } } });

export const rodOfRow = formula({ id: "base.rod-of-row", text: "T_1 = T / n_r", source: "statics", symbols: { T_1: force("tension of one rod by this direction"), T: force("tension of the row of rods"), n_r: { kind: "number", meaning: "rods in the row" } } });

export const evenRod = formula({
  id: "base.even-rod",
  text: "T_1 = -P / n",
  source: "statics: uplift without moment, shared by all rods",
  symbols: { T_1: force("tension of one rod by this direction"), P, n: { kind: "number", meaning: "rods", field: "bases.*.anchors.count" } },
});

export const liftedRod = formula({
  id: "base.lifted-rod",
  text: "T_1 = -P / n + abs(M) / (2 * f * n_r)",
  source: "statics: uplift so large that no side of the plate bears, shared by all rods, the moment by the outer rows",
  symbols: { T_1: force("tension of one rod by this direction"), P, n: { kind: "number", meaning: "rods", field: "bases.*.anchors.count" }, M, f, n_r: { kind: "number", meaning: "rods in the row" } },
});

export const cornerPull = formula({
  id: "base.corner-pull",
  text: "T_c = max(0, T_1x + T_1y - max(0, -P) / n)",
  source: "statics: both directions added at the corner rod, what uplift alone gives counted once",
  symbols: { T_c: force("tension of the corner rod by the one-way formulas"), T_1x: force("by moments along x"), T_1y: force("by moments along y"), P, n: { kind: "number", meaning: "rods", field: "bases.*.anchors.count" } },
});

export const againstExact = formula({
  id: "base.one-way-against-exact",
  text: "k_T = T_c / T_e",
  source: "one-way formulas over exact contact: near 1 where the plate is pushed one way, and the two rows share it",
  symbols: { k_T: { kind: "ratio", meaning: "tension by the one-way formulas over that of the exact contact" }, T_c: force("by the one-way formulas"), T_e: force("by the exact contact, of the rod that is pulled most") },
});

export const rodStrength = formula({
  id: "base.rod-strength",
  text: "R_c = phi * 0.75 * F_u * pi * d_a^2 / 4",
  source: "AISC 360-22 Eq. J3-1 and Table J3.2 for threaded parts, phi = 0.75",
  symbols: { R_c: force("design tensile strength of one rod"), F_u: { kind: "steelStress", meaning: "specified tensile strength", field: "bases.*.anchors.grade" }, d_a: { kind: "length", meaning: "diameter of the rod", field: "bases.*.anchors.diameter" } },
  constants: { phi: "0.75" },
});

/** Rods within an inch of each other's line pull as one row, m. */
const oneRow = 0.0254;

interface Direction {
  readonly along: "x" | "y";
  readonly M: number;
  /** The rods in tension stand on the side of the larger coordinate. */
  readonly isPositive: boolean;
}

/** Tension of one rod by one direction, or the outcome of a plate without room for its bearing. */
function pullAlong({ B, N, rods }: BaseInputs, { along, M: moment, isPositive }: Direction, axial: number, f_d: number, calc: Calc): number | Outcome {
  const [N_l, B_w] = along === "x" ? [B, N] : [N, B];
  const out = (rod: Point): number => (isPositive ? rod[along] : -rod[along]);
  const f = Math.max(...rods.map(out));
  const n_r = rods.filter((rod) => isWithinRow(f, out(rod))).length;
  const q_m = calc(bearingPerLength, { f_d, B_w });
  if (axial > 0) {
    const e = calc(eccentricity, { M: moment, P: axial });
    if (e <= calc(criticalEccentricity, { N_l, P: axial, q_m })) {
      calc(smallMomentBlock, { N_l, e });
      calc.note("Small moment: no rod pulls.");
      return 0;
    }
  }
  const M_r = calc(aboutRods, { M: moment, P: axial, f });
  if (M_r <= 0 && moment === 0) return calc(evenRod, { P: axial, n: rods.length });
  if (M_r <= 0) return calc(liftedRod, { P: axial, n: rods.length, M: moment, f, n_r });
  const M_q = calc(mostAboutRods, { q_m, f, N_l });
  if (M_r > M_q) {
    calc.note("The block of bearing has no room under the plate.");
    return weigh(M_r, M_q, "moment");
  }
  return calc(rodOfRow, { T: calc(rowPull, { q_m, Y: calc(largeMomentBlock, { f, N_l, M_r, q_m }), P: axial }), n_r });
}

const rowGap = formula({ id: "base.row-gap", text: "g = f - x", source: "geometry", symbols: { g: { kind: "length", meaning: "from the row to a rod" }, f, x: { kind: "length", meaning: "from the middle of the plate to the rod" } } });

const isWithinRow = (row: number, x: number): boolean => rowGap.value({ f: row, x }) < oneRow;

type OneWayInputs = BaseInputs & RodSteel;

export const oneWay = check({
  id: "base.one-way",
  title: "Rods by the one-way formulas, a second opinion",
  link: "base",
  level: "strength",
  clause: "AISC Design Guide 1, 3rd ed., 4.3; AISC 360-22 J3.7",
  fails: "The rods break in tension, or the concrete crushes along the pressed edge, by the formulas most bases are designed by.",
  seen: "Rods necked or snapped on the windward side, grout crushed on the other.",
  range:
    "Each direction by itself with the whole axial force and a block of the full bearing strength; their pulls added at the corner rod, which is more than the exact contact gives where the axial force presses. Not for a plate on leveling nuts without grout. Shear of the rods and the concrete round them are for the checks of the anchors.",
  formulas: [
    ...confinedRatioFormulas, bearingStrength, bearingPerLength, eccentricity, criticalEccentricity, smallMomentBlock, aboutRods, mostAboutRods, largeMomentBlock, rowPull, rodOfRow, evenRod, liftedRod, cornerPull, rodStrength, concreteModulus,
    modularRatio, againstExact,
  ],
  applies: ({ base }) => base !== undefined && !(base.fields["leveling nuts"]?.value === true && base.fields.grout?.value === 0),
  inputs: (support, gather, place): OneWayInputs => ({ ...readBase(support, gather, place), ...readRod(support, gather) }),
  fixedBy: (support) => support.base?.fields.anchors ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { rods, d_a, f_uta, fprime_c } = inputs;
    const below = forcesBelow(inputs, demand.base, calc);
    const f_d = calc(bearingStrength, { fprime_c, psi_A: confinedRatio(inputs, calc) });
    calc.note("Along x:");
    const T_1x = pullAlong(inputs, { along: "x", M: below.My, isPositive: below.My < 0 }, below.P, f_d, calc);
    if (typeof T_1x !== "number") return T_1x;
    calc.note("Along y:");
    const T_1y = pullAlong(inputs, { along: "y", M: below.Mx, isPositive: below.Mx > 0 }, below.P, f_d, calc);
    if (typeof T_1y !== "number") return T_1y;
    const T_c = calc(cornerPull, { T_1x, T_1y, P: below.P, n: rods.length });
    const exact = distribute(inputs, demand, calc);
    const T_e = isUnstable(exact) ? 0 : Math.max(...exact.tensions);
    if (T_e > 0) calc(againstExact, { T_c, T_e });
    return weigh(T_c, calc(rodStrength, { F_u: f_uta, d_a }), "force");
  },
  advise: (_, outcome, say) =>
    outcome.quantity === "moment"
      ? `Moment about the rods ${say.show(outcome.demand, "moment")}; bearing balances ${say.show(outcome.capacity, "moment")}. Take a larger plate, or rods farther apart.`
      : `Tension of a rod ${say.show(outcome.demand, "force")} by the one-way formulas; it carries ${say.show(outcome.capacity, "force")}. Take larger rods, or set them farther apart.`,
});
