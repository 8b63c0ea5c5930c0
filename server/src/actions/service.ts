/**
 * Service wind: how often a wind returns that a structure should stand without harm to what hangs on it, far less rare than the one of its
 * strength. Only pressures of the wind are taken, scaled by the square of the speeds; the least wind force is one of strength.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import { superposition } from "../mechanics/superposition.js";
import { swaySum } from "../mechanics/story.js";
import type { Combination, Demand, LoadCase } from "./demand.js";
import type { Reaction } from "./way-down.js";
import type { LoadStandard } from "./wind/velocity-pressure.js";

export const serviceSource = "ASCE 7-22 Appendix C and commentary CC.2.2; the speed for a return period by ASCE 7-16 Eq. C26.5-2 (from memory)";

export const servicePeriods = { "10 years": 10, "25 years": 25, "50 years": 50, "100 years": 100 } as const;
export type ServicePeriod = keyof typeof servicePeriods;

export type RiskCategory = "I" | "II" | "III" | "IV";

/** Mean recurrence interval of the basic wind speed, years. */
const basicPeriods: Readonly<Record<LoadStandard, Readonly<Record<RiskCategory, number>>>> = {
  "ASCE 7-10": { I: 300, II: 700, III: 1700, IV: 1700 },
  "ASCE 7-16": { I: 300, II: 700, III: 1700, IV: 3000 },
  "ASCE 7-22": { I: 300, II: 700, III: 1700, IV: 3000 },
};

export const serviceSpeed = formula({
  id: "wind.service-speed",
  text: "V_s = V * (c_0 + c_1 * log(12 * T_s)) / (c_0 + c_1 * log(12 * T_b))",
  source: "ASCE 7-16 commentary Eq. C26.5-2 (from memory): speeds by return period where hurricanes do not rule; near a hurricane coast state the speed from a map",
  symbols: {
    V_s: { kind: "speed", meaning: "service wind speed" },
    V: { kind: "speed", meaning: "basic wind speed", field: "site.wind speed" },
    T_s: { kind: "number", meaning: "return period of the service wind, years", field: "site.service wind", range: [5, 100] },
    T_b: { kind: "number", meaning: "return period of the basic wind speed, years", field: "site.risk category", range: [300, 3000] },
  },
  constants: { c_0: "0.36", c_1: "0.1" },
});

export const serviceFactor = formula({
  id: "wind.service-factor",
  text: "k_s = (V_s / V)^2",
  source: "pressure goes with the square of the speed; ASCE 7-22 Eq. 26.10-1",
  symbols: {
    k_s: { kind: "ratio", meaning: "service wind pressure over that of the basic wind speed" },
    V_s: { kind: "speed", meaning: "service wind speed", field: "site.service wind speed" },
    V: { kind: "speed", meaning: "basic wind speed", field: "site.wind speed" },
  },
});

/** What the service wind is found from; the speed, where one is stated, goes before the period. */
export interface ServiceWind {
  readonly speed?: number;
  readonly period?: ServicePeriod;
  readonly category?: RiskCategory;
}

/** Pressure of the service wind over that of the basic wind speed, or undefined where it cannot be found. */
export function serviceRatio(standard: LoadStandard, V: number, { speed, period, category }: ServiceWind, calc: Calc): number | undefined {
  if (speed !== undefined) return calc(serviceFactor, { V_s: speed, V });
  if (period === undefined || category === undefined) return undefined;
  const T_b = basicPeriods[standard][category];
  calc.note("Where hurricanes rule the wind, the speed of a short return period is to be read from a map and stated (service wind speed).");
  const V_s = calc(serviceSpeed, { V, T_s: servicePeriods[period], T_b });
  return calc(serviceFactor, { V_s, V });
}

/** Whether a case of the wind is a pressure that scales with the speed. */
const isScaled = ({ type, id }: LoadCase): boolean => type === "W" && !id.includes("/minimum");

/** Dead load and the service wind from every side, at one column whose reactions stand in the order of the load cases. */
export function serviceDemands(loadCases: readonly LoadCase[], reactions: readonly Reaction[], k_s: number | undefined, calc: Calc): readonly Demand<"service">[] {
  if (k_s === undefined) return [];
  const combination: Combination<"service"> = {
    level: "service",
    label: "D + Wa",
    terms: [
      { factor: 1, type: "D" },
      { factor: k_s, type: "W" },
    ],
    clause: serviceSource,
  };
  const dead = [...loadCases.keys()].filter((i) => loadCases[i].type === "D");
  const wind = [...loadCases.keys()].filter((i) => isScaled(loadCases[i]));
  return dead.flatMap((d) =>
    wind.map((w): Demand<"service"> => {
      const parts = [
        { factor: 1, at: reactions[d] },
        { factor: k_s, at: reactions[w] },
      ];
      const sum = (end: "top" | "base") =>
        calc.routine(
          superposition,
          parts.map(({ factor, at }) => ({ factor, forces: at[end] })),
        );
      const cases = [loadCases[d], loadCases[w]];
      const named = cases.filter(({ type, estimate }) => type !== "D" || estimate !== undefined).map(({ title }) => title);
      const sways = parts.flatMap(({ factor, at: { sway } }) => (sway ? [{ factor, sway }] : []));
      return {
        level: "service",
        label: `${combination.label}: ${named.join("; ")}`,
        combination,
        cases,
        top: sum("top"),
        base: sum("base"),
        sway: sways.length === parts.length ? calc.routine(swaySum, sways) : undefined,
      };
    }),
  );
}
