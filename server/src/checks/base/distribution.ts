/**
 * How one combination's axial force and moments are shared between bearing under the plate and tension in the rods. Every check of the
 * base and of the anchors takes the same solution, found once per combination.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc, Routine } from "../../formula/types.js";
import type { Forces } from "../../mechanics/forces.js";
import { plateContact, type PlateArgs, type PlateContact, type Unstable } from "../../mechanics/plate-contact.js";
import { rodsBothWays } from "../../mechanics/rods-both-ways.js";
import type { SteelDemand } from "../steel-strength.js";
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

export const lugMomentX = formula({
  id: "base.lug-moment-x",
  text: "M_xb = M_x - V_y * e",
  source: "statics: the shear is taken below the plate by the lug",
  symbols: {
    M_xb: { kind: "moment", meaning: "moment about the east axis with the couple of the lug" },
    M_x: { kind: "moment", meaning: "moment about the east axis at the plate" },
    V_y: { kind: "force", meaning: "shear toward the north" },
    e: { kind: "length", meaning: "from the plate down to the middle of the lug's bearing" },
  },
});

export const lugMomentY = formula({
  id: "base.lug-moment-y",
  text: "M_yb = M_y + V_x * e",
  source: "statics: the shear is taken below the plate by the lug",
  symbols: {
    M_yb: { kind: "moment", meaning: "moment about the north axis with the couple of the lug" },
    M_y: { kind: "moment", meaning: "moment about the north axis at the plate" },
    V_x: { kind: "force", meaning: "shear toward the east" },
    e: { kind: "length", meaning: "from the plate down to the middle of the lug's bearing" },
  },
});

export interface DistributionArgs {
  readonly demand: Demand;
  readonly key: string;
  readonly plate: PlateArgs;
}

/** The last solution of each demand. One is enough: a demand belongs to one column, and a column to one base. */
const solved = new WeakMap<Demand, { readonly key: string; readonly contact: PlateContact | Unstable }>();

export const sharedContact: Routine<DistributionArgs, PlateContact | Unstable> = {
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

/** What the underside of the plate has to pass on: the forces at the column base, and the couple of the lug where there is one. */
export function forcesBelow({ lugArmX, lugArmY }: BaseInputs, { P, Vx, Vy, Mx, My }: Forces, calc: Calc): Pick<Forces, "P" | "Mx" | "My"> {
  if (lugArmX === 0 && lugArmY === 0) return { P, Mx, My };
  calc.note("The shear is taken by the lug below the plate, and its couple is in the moments.");
  return { P, Mx: lugMomentX.value({ M_x: Mx, V_y: Vy, e: lugArmY }), My: lugMomentY.value({ M_y: My, V_x: Vx, e: lugArmX }) };
}

const clear = { compression: 0, maxBearing: 0, contact: [], contactRatio: 0, plane: { atCenter: 0, alongX: 0, alongY: 0 }, residual: { P: 0, Mx: 0, My: 0, relative: 0 } } as const;

const atLeastNone = (force: number): number => Math.max(0, force);

/** The plate on its rods alone. */
function standOnRods(base: BaseInputs, forces: Pick<Forces, "P" | "Mx" | "My">, calc: Calc): PlateContact | Unstable {
  calc.note("The plate stands on its leveling nuts without grout: the rods press and pull, the concrete below the plate carries nothing.");
  const found = calc.routine(rodsBothWays, { rods: base.rods, ...forces });
  if ("unstable" in found) return found;
  return { ...clear, tensions: found.forces.map((force) => atLeastNone(-force)), pushes: found.forces.map(atLeastNone) };
}

/** Bearing and rod tensions of this combination, or why there is no equilibrium. */
export function distribute(base: BaseInputs, demand: SteelDemand, calc: Calc): PlateContact | Unstable {
  const forces = forcesBelow(base, demand.base, calc);
  if (base.standsFree) return standOnRods(base, forces, calc);
  const E_c = calc(concreteModulus, { fprime_c: base.fprime_c });
  const n = calc(modularRatio, { E_c });
  const contact = calc.routine(sharedContact, {
    demand,
    key: base.key,
    plate: { width: base.B, length: base.N, rods: base.rods, rodArea: base.A_se, modularRatio: n, ...forces },
  });
  if (!isUnstable(contact) && contact.note !== undefined) calc.note(`The plate is ${contact.note}.`);
  return contact;
}

/** True where no equilibrium was found. */
export const isUnstable = (found: PlateContact | Unstable): found is Unstable => "unstable" in found;

/** The sentence for a base that cannot stand. */
export const tipsOver = ({ unstable }: Unstable): string => `the rods and the bearing cannot hold this combination: ${unstable}`;
