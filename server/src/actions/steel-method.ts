/**
 * The method steel is designed by. AISC 360 gives every strength both ways: strength combinations against phi R_n, or allowable-stress
 * combinations against R_n / Omega. Concrete and anchors have strength design only, and soil takes allowable stresses.
 */
import type { Codes } from "../project/model.js";
import type { Demand } from "./demand.js";

export type SteelMethod = NonNullable<Codes["method"]>["value"];

export const methodOf = (codes: Codes): SteelMethod => codes.method?.value ?? "LRFD";

export const takesAllowable = (method: SteelMethod): boolean => method !== "LRFD";

type Steel = readonly Demand<"strength" | "allowable">[];

/** The demands on steel; the strength ones stay the same list where they are all. */
export const steelDemands = (method: SteelMethod, strength: readonly Demand<"strength">[], allowable: readonly Demand<"allowable">[]): Steel =>
  method === "LRFD" ? strength : method === "ASD" ? allowable : [...strength, ...allowable];

export const isAllowable = (demand: Demand): demand is Demand<"allowable"> => demand.level === "allowable";
