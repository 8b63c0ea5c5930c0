/**
 * Whether a pier is short beside the stiffness of its soil, so that it turns as a rigid body and the soil along it comes to its strength before the
 * pier bends; or long, so that it bends first and only its upper part pushes on the soil.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { concreteModulus } from "../base/distribution.js";
import type { Gather } from "../contract.js";
import type { PierBody } from "./body.js";
import { crackedModulus, roundInertia, squareInertia } from "./response.js";

const length = { kind: "distance", meaning: "length of the pier in the ground that is counted", range: [1, 10] } as const;
const modulus = { kind: "steelStress", meaning: "modulus of the concrete reduced for cracks" } as const;
const inertia = { kind: "inertia", meaning: "second moment of area of the whole section" } as const;
const lengths = "Broms 1964; limits as in the FHWA manual on driven piles, FHWA-HI-97-013, 9.7.3.2 (read in a worksheet)";

export const clayLength = formula({
  id: "pier.relative-length-clay",
  text: "beta_L = L_c * sqrt(sqrt(k_h * D / (4 * E_r * I_g)))",
  source: lengths,
  symbols: {
    beta_L: { kind: "ratio", meaning: "length of the pier over its stiffness length in clay" },
    L_c: length,
    k_h: { kind: "subgradeModulus", meaning: "modulus of horizontal subgrade reaction", field: "ground.*.subgrade modulus" },
    D: { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" },
    E_r: modulus,
    I_g: inertia,
  },
});

export const sandLength = formula({
  id: "pier.relative-length-sand",
  text: "eta_L = L_c * (n_h / (E_r * I_g))^0.2",
  source: lengths,
  symbols: {
    eta_L: { kind: "ratio", meaning: "length of the pier over its stiffness length in sand" },
    L_c: length,
    n_h: { kind: "subgradeModulus", meaning: "growth of the subgrade modulus with depth", field: "ground.*.modulus growth" },
    E_r: modulus,
    I_g: inertia,
  },
});

/** A pier in clay up to this is short, and long beyond; in sand it is short up to the first and long from the second on. */
const shortInClay = 2.25;
const shortInSand = 2;
const longInSand = 4;

/** What of the soil's stiffness the notebook states; plain data. */
export interface Stiffness {
  readonly subgrade: number | undefined;
  readonly growth: number | undefined;
  readonly concrete: number | undefined;
}

export function readStiffness({ ground, foundation }: Support, gather: Gather): Stiffness {
  return { subgrade: gather.may(ground?.fields["subgrade modulus"]), growth: gather.may(ground?.fields["modulus growth"]), concrete: gather.may(foundation?.fields.concrete) };
}

/**
 * Says how long the pier is beside its soil. By the static theorem of limit analysis what a short pier needs holds for a long one as well, as long as
 * its concrete carries the largest moment of that state: so nothing is refused, and the reader is told what it hangs on.
 */
export function sayLength(pier: PierBody & Stiffness, isSand: boolean, L_c: number, calc: Calc): void {
  const { concrete: fprime_c, size, shape, subgrade: k_h, growth: n_h } = pier;
  const stiffness = isSand ? n_h : k_h;
  if (stiffness === undefined || fprime_c === undefined) {
    calc.note("How stiff the soil is has not been stated: the pier is taken as short and rigid beside it.");
    return;
  }
  const E_r = calc(crackedModulus, { E_c: calc(concreteModulus, { fprime_c }) });
  const I_g = shape === "round" ? calc(roundInertia, { D: size }) : calc(squareInertia, { w: size });
  const relative = isSand ? calc(sandLength, { L_c, n_h: stiffness, E_r, I_g }) : calc(clayLength, { L_c, k_h: stiffness, D: size, E_r, I_g });
  calc.note(
    relative <= (isSand ? shortInSand : shortInClay)
      ? "The pier is short beside its soil: it turns as a rigid body."
      : isSand && relative <= longInSand
        ? "The pier is neither short nor long beside its soil: it bends besides turning, and its concrete has to carry the largest moment shown."
        : "The pier is long beside its soil: it bends before the soil comes to its strength all along, and holds by the largest moment its concrete can carry.",
  );
}

export const relativeLengthFormulas = [concreteModulus, crackedModulus, roundInertia, squareInertia, clayLength, sandLength] as const;
