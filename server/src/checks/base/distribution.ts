/**
 * How one combination's axial force and moments are shared between bearing under the plate and tension in the rods. Every check of the
 * base and of the anchors takes the same solution, found once per combination.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc, Routine } from "../../formula/types.js";
import { plateContact, type PlateArgs, type PlateContact, type Unstable } from "../../mechanics/plate-contact.js";
import type { BaseInputs } from "./geometry.js";

export const concreteModulus = formula({
  id: "base.concrete-modulus",
  text: "E_c = k_E * sqrt(fprime_c)",
  source: "ACI 318-19 Eq. 19.2.2.1.b, normalweight concrete",
  symbols: {
    E_c: { kind: "steelStress", meaning: "modulus of elasticity of the concrete" },
    fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
  },
  constants: { k_E: "57000 lbf^0.5/inch" },
});

export const modularRatio = formula({
  id: "base.modular-ratio",
  text: "n = E_s / E_c",
  source: "elastic theory of cracked sections",
  symbols: {
    n: { kind: "ratio", meaning: "modular ratio" },
    E_c: { kind: "steelStress", meaning: "modulus of elasticity of the concrete" },
  },
  constants: { E_s: "29000 ksi" },
});

interface DistributionArgs {
  readonly demand: Demand;
  readonly key: string;
  readonly plate: PlateArgs;
}

/** The last solution of each demand. One is enough: a demand belongs to one column, and a column to one base. */
const solved = new WeakMap<Demand, { readonly key: string; readonly contact: PlateContact | Unstable }>();

const sharedContact: Routine<DistributionArgs, PlateContact | Unstable> = {
  id: "base.distribution",
  title: plateContact.title,
  method: plateContact.method,
  source: plateContact.source,
  run: ({ demand, key, plate }) => {
    const known = solved.get(demand);
    if (known?.key === key) return known.contact;
    const contact = plateContact.run(plate);
    solved.set(demand, { key, contact });
    return contact;
  },
  show: ({ plate }, contact) => plateContact.show(plate, contact),
};

/** Bearing and rod tensions of this combination, or why there is no equilibrium. */
export function distribute(base: BaseInputs, demand: Demand<"strength">, calc: Calc): PlateContact | Unstable {
  const E_c = calc(concreteModulus, { fprime_c: base.fprime_c });
  const n = calc(modularRatio, { E_c });
  const { P, Mx, My } = demand.base;
  const contact = calc.routine(sharedContact, {
    demand,
    key: base.key,
    plate: { width: base.B, length: base.N, rods: base.rods, rodArea: base.A_se, modularRatio: n, P, Mx, My },
  });
  if (!isUnstable(contact) && contact.note !== undefined) calc.note(`The plate is ${contact.note}.`);
  return contact;
}

/** True where no equilibrium was found. */
export const isUnstable = (found: PlateContact | Unstable): found is Unstable => "unstable" in found;

/** The sentence for a base that cannot stand. */
export const tipsOver = ({ unstable }: Unstable): string => `the rods and the bearing cannot hold this combination: ${unstable}`;
