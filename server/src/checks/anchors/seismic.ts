/**
 * Anchors in an earthquake, seismic design category C to F: ACI 318-19 17.10. They are designed for forces with the overstrength of the system
 * (17.10.5.3(d), 17.10.6.3(c)), and concrete in tension, cracked by the shaking, counts with three quarters (17.10.5.4). In tension rods that stretch
 * before the concrete breaks are another way (17.10.5.3(a)): forces without overstrength, and checks of their own for the stretch. The exemption
 * of 17.10.5.1 for anchors that an earthquake hardly pulls is not taken.
 */
import type { Demand } from "../../actions/demand.js";
import { seismicSystemOf } from "../../catalog/seismic-systems.js";
import { formula } from "../../formula/declare.js";
import type { Calc, Formula } from "../../formula/types.js";
import type { Forces } from "../../mechanics/forces.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

const strong = "CDEF";

export interface SeismicAnchors {
  /** Category C to F: the rules of 17.10 apply. */
  readonly isStrong: boolean;
  /** What the earthquake's part of the forces is multiplied by; 1 where the overstrength is in it. */
  readonly k_o: number;
  /** Forces are taken as they are: the overstrength is in the stated reactions, or rods that stretch need none. */
  readonly isIncluded: boolean;
}

const factor = { kind: "ratio", meaning: "what the earthquake's part of the forces is multiplied by" } as const;

export const overstrengthFactor = formula({
  id: "anchors.overstrength-factor",
  text: "k_o = max(1, Omega_0 / rho)",
  source: "ACI 318-19 17.10.5.3(d), 17.10.6.3(c); ASCE 7-22 12.4.3.1, 12.3.4.1: overstrength takes the place of the redundancy factor",
  symbols: {
    k_o: factor,
    Omega_0: { kind: "ratio", meaning: "overstrength factor of the system", field: "roof.earthquake system" },
    rho: { kind: "ratio", meaning: "redundancy factor that is in the forces", field: "roof.redundancy factor" },
  },
});

export const withOverstrength = formula({
  id: "anchors.with-overstrength",
  text: "F_o = F + (k_o - 1) * F_E",
  source: "ASCE 7-22 12.4.3",
  symbols: {
    F_o: { kind: "force", meaning: "force at the column base with overstrength" },
    F: { kind: "force", meaning: "force at the column base" },
    k_o: factor,
    F_E: { kind: "force", meaning: "earthquake's part of it" },
  },
});

export const momentWithOverstrength = formula({
  id: "anchors.moment-with-overstrength",
  text: "M_o = M + (k_o - 1) * B_2 * M_E",
  source: "ASCE 7-22 12.4.3; second order as for the story",
  symbols: {
    M_o: { kind: "moment", meaning: "moment at the column base with overstrength" },
    M: { kind: "moment", meaning: "moment at the column base" },
    k_o: factor,
    B_2: { kind: "ratio", meaning: "magnifier of the story" },
    M_E: { kind: "moment", meaning: "earthquake's part of it, before second order" },
  },
});

export const seismicConcrete = formula({
  id: "anchors.seismic-concrete",
  text: "phiN_q = 0.75 * phiN",
  source: "ACI 318-19 17.10.5.4: concrete breakout, pullout and side-face blowout in tension",
  symbols: { phiN_q: { kind: "force", meaning: "design strength of the concrete in an earthquake" }, phiN: { kind: "force", meaning: "design strength without one" } },
});

/** The formulas of {@link shaken} and {@link concreteInEarthquake}. */
export const seismicFormulas: readonly Formula<any, any>[] = [withOverstrength, momentWithOverstrength, seismicConcrete];

export const calm: SeismicAnchors = { isStrong: false, k_o: 1, isIncluded: false };

/** Overstrength and redundancy: of the roof's system where its loads come down here, else as stated for the reactions. */
function factorOf(support: Support, gather: Gather): number {
  const column = support.column?.fields;
  const isByHand = column === undefined || column.reactions !== undefined || column.combined !== undefined;
  if (isByHand) return overstrengthFactor.value({ Omega_0: gather.need(support.base?.fields["overstrength factor"], "overstrength factor of the seismic system (overstrength factor, of the base)"), rho: 1 });
  const name = gather.needs(support.roof?.fields["earthquake system"], "what resists earthquakes (roof, earthquake system)");
  const system = name === undefined ? undefined : seismicSystemOf(name);
  if (!system) return Number.NaN;
  // The loads of cantilevered columns have their overstrength in them, since the foundation is designed for it too.
  if (system.cantilevered) return 1;
  const category = support.site["seismic design category"]?.value ?? "";
  const usual = "DEF".includes(category) ? 1.3 : 1;
  return overstrengthFactor.value({ Omega_0: system.overstrength, rho: gather.may(support.roof?.fields["redundancy factor"]) ?? usual });
}

/** Whether the rods of a base are to stretch in an earthquake of category C to F before the concrete breaks. */
export const stretches = (support: Support): boolean =>
  support.base?.fields["seismic anchors"]?.value === "stretch length" && strong.includes(support.site["seismic design category"]?.value ?? "A");

/** How the anchors of a base are designed for an earthquake, in tension or in shear: stretching is a way for tension alone (17.10.6.3). */
export function readSeismic(support: Support, gather: Gather, action: "tension" | "shear"): SeismicAnchors {
  const category = gather.needs(support.site["seismic design category"], "seismic design category of the site");
  if (category === undefined || !strong.includes(category)) return calm;
  if (gather.may(support.base?.fields["cracked concrete"]) === false) gather.block("in an earthquake the concrete at anchors is taken as cracked unless it is shown not to crack (ACI 318-19 17.10.5.4); state cracked concrete: yes");
  const way = gather.may(support.base?.fields["seismic anchors"]);
  if (way === undefined) {
    gather.block(
      `seismic design category ${category}: how the anchors are designed for an earthquake is not stated; say so at the base (seismic anchors: overstrength, or stretch length), or have the engineer check these anchors by ACI 318-19 17.10`,
    );
    return { ...calm, isStrong: true };
  }
  if (way === "overstrength included" || (way === "stretch length" && action === "tension")) return { isStrong: true, k_o: 1, isIncluded: true };
  return { isStrong: true, k_o: factorOf(support, gather), isIncluded: false };
}

/** Whether this combination shakes the anchors. Of reactions combined by others nobody knows; they are taken as an earthquake's. */
export const isShaken = ({ combination, earthquake }: Demand): boolean => earthquake !== undefined || combination.terms.length === 0;

const known = new WeakMap<Demand, { readonly k_o: number; readonly demand: Demand<"strength"> }>();

/** The demand with the overstrength of the system, or in words why it is not known. */
export function shaken({ isStrong, k_o, isIncluded }: SeismicAnchors, demand: Demand<"strength">, calc: Calc): Demand<"strength"> | { readonly because: string } {
  if (!isStrong || isIncluded || !isShaken(demand)) return demand;
  const part = demand.earthquake;
  if (!part) return { because: "reactions combined by others do not tell which part of them is earthquake; give them by load case, or with the overstrength in them and say so (seismic anchors: overstrength included)" };
  if (k_o === 1) return demand;
  const { P, Vx, Vy, Mx, My } = demand.base;
  const force = (F: number, F_E: number): number => calc(withOverstrength, { F, k_o, F_E });
  const moment = (M: number, M_E: number, B_2: number): number => calc(momentWithOverstrength, { M, k_o, B_2, M_E });
  calc.note("Forces of the earthquake with the overstrength of the system:");
  const base: Forces = {
    ...demand.base,
    P: force(P, part.P),
    Vx: force(Vx, part.Vx),
    Vy: force(Vy, part.Vy),
    Mx: moment(Mx, part.Mx, demand.magnified?.y ?? 1),
    My: moment(My, part.My, demand.magnified?.x ?? 1),
    ...(part.Mz !== undefined && { Mz: moment(demand.base.Mz ?? 0, part.Mz, 1) }),
  };
  const before = known.get(demand);
  if (before?.k_o === k_o) return before.demand;
  const made = { ...demand, base };
  known.set(demand, { k_o, demand: made });
  return made;
}

/** Design strength of concrete in tension: three quarters of it in an earthquake of category C to F. */
export function concreteInEarthquake(strength: number, { isStrong }: SeismicAnchors, demand: Demand, calc: Calc): number {
  if (!isStrong || !isShaken(demand)) return strength;
  calc.note("The combination holds an earthquake, and concrete in tension counts with three quarters.");
  return calc(seismicConcrete, { phiN: strength });
}
