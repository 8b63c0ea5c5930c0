/**
 * The concrete crushes under the base plate. Seen as spalled grout and a broken rim on the side the column leans to.
 *
 * AISC 360-22 J8: phi_c 0.85 f'c, raised by sqrt(A2/A1) up to 2, where A2 is the largest area of the plate's own shape that fits on
 * the concrete around the plate's center (for a round pier, the rectangle inside the circle). With a moment, the largest bearing stress
 * of the cracked elastic section is set against that stress.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, unchecked, weigh } from "../contract.js";
import { unchangedSince14 } from "../editions.js";
import { concreteModulus, distribute, forcesBelow, isUnstable, modularRatio, tipsOver } from "./distribution.js";
import { fitRectangle, fitRound, nearerEdges, readBase, type BaseInputs } from "./geometry.js";

export const confinement = formula({
  id: "base.confinement",
  text: "psi_A = min(2, k_A, 1 + 4 * h / max(B, N))",
  source: "AISC 360-22 Eq. J8-2, sqrt(A2/A1) at most 2; ACI 318-19 22.8.3.2, A2 within a spread of 2 to 1 inside the depth of concrete",
  symbols: {
    psi_A: { kind: "ratio", meaning: "sqrt(A2/A1)" },
    k_A: { kind: "ratio", meaning: "side of the largest like area in the concrete over the plate's" },
    h: { kind: "length", meaning: "depth of concrete below the plate" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
  },
});

export const bearingStrength = formula({
  id: "base.bearing-strength",
  text: "f_d = phi_c * 0.85 * fprime_c * psi_A",
  source: "AISC 360-22 Eq. J8-2, phi_c = 0.65",
  symbols: {
    f_d: { kind: "stress", meaning: "design bearing strength, as a stress" },
    fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
    psi_A: { kind: "ratio", meaning: "sqrt(A2/A1)" },
  },
  constants: { phi_c: "0.65" },
});

export const bearingForce = formula({
  id: "base.bearing-force",
  text: "P_d = f_d * B * N",
  source: "AISC 360-22 J8",
  symbols: {
    P_d: { kind: "force", meaning: "design bearing strength of the whole plate" },
    f_d: { kind: "stress", meaning: "design bearing strength, as a stress" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
  },
});

/** sqrt(A2/A1) of the plate on its concrete. */
export function confinedRatio({ B, N, member }: Pick<BaseInputs, "B" | "N" | "member">, calc: Calc): number {
  const k_A = member.shape === "round" ? calc(fitRound, { D: member.diameter, B, N }) : calc(fitRectangle, { ...nearerEdges(member), B, N });
  return calc(confinement, { k_A, h: member.depth, B, N });
}

export const confinedRatioFormulas = [fitRound, fitRectangle, confinement];

export const baseBearing = check({
  id: "base.bearing",
  title: "Bearing on the concrete under the base plate",
  link: "base",
  level: "strength",
  clause: "AISC 360-22 J8; ACI 318-19 22.8",
  editions: unchangedSince14,
  fails: "The concrete or grout under the plate crushes.",
  seen: "Spalled grout and a broken edge of the pier on the side the column leans to.",
  range:
    "A stiff plate, fully bedded on grout or concrete no weaker than the foundation, inside the edges of the foundation. Largest stress of an elastic contact; the even stress of a plastic one would be less. A plate that stands on leveling nuts without grout bears on its rods alone.",
  formulas: [...confinedRatioFormulas, bearingStrength, bearingForce, concreteModulus, modularRatio],
  applies: (support) => support.base !== undefined,
  inputs: readBase,
  fixedBy: (support) => support.base?.fields.plate ?? support.base,
  evaluate: (inputs, demand, calc) => {
    const { B, N, fprime_c } = inputs;
    const f_d = calc(bearingStrength, { fprime_c, psi_A: confinedRatio(inputs, calc) });
    const P_d = calc(bearingForce, { f_d, B, N });
    const { P, Mx, My } = forcesBelow(inputs, demand.base, calc);
    if (inputs.standsFree) {
      calc.note("The plate stands on its leveling nuts without grout: the concrete below it carries nothing.");
      return weigh(0, P_d, "force");
    }
    if (Mx === 0 && My === 0) {
      calc.note("No moment: the whole plate bears evenly.");
      return weigh(P > 0 ? P : 0, P_d, "force");
    }
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    return weigh(contact.maxBearing, f_d, "stress");
  },
  advise: (_, outcome, say) =>
    `Bearing ${say.show(outcome.demand, outcome.quantity)}; the concrete carries ${say.show(outcome.capacity, outcome.quantity)}. Take a larger plate, stronger concrete or a wider foundation.`,
});
