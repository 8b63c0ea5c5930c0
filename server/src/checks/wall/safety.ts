/** Load factors and factors of safety of a wall's stability, and what an earthquake leaves unanswered. */
import type { Demand } from "../../actions/demand.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import type { Definition } from "../footing/overturning.js";
import { type WallBody, readWall } from "./body.js";

export interface StabilityInputs extends WallBody {
  readonly definition: Definition;
  /** Seismic design category, where known. */
  readonly category: string | undefined;
}

export function readStability(support: Support, gather: Gather, place: number): StabilityInputs {
  return {
    ...readWall(support, gather, place),
    definition: gather.needs(support.codes.overturning, "how the safety against overturning is counted") ?? "factored dead load",
    category: gather.may(support.site["seismic design category"]),
  };
}

/** ASCE 7-22 2.3.1 and 2.4.1: lateral earth pressure where it adds to the effect looked at, and where it resists and is permanent. */
export const earthFactor = { allowable: { adds: 1, resists: 0.6 }, strength: { adds: 1.6, resists: 0.9 } } as const;

export const isShaken = (demand: Demand): boolean => demand.combination.terms.some(({ type }) => type === "E");

/** Factor of the earthquake in the combination. */
export const quakeFactor = (demand: Demand): number => Math.max(0, ...demand.combination.terms.map(({ type, factor }) => (type === "E" ? Math.abs(factor) : 0)));

const dynamic = new Set(["D", "E", "F"]);

/** Why a combination with earthquake cannot be answered for a wall that holds soil back. */
export function shakenFill({ earth, category }: Pick<StabilityInputs, "earth" | "category">, demand: Demand): string | undefined {
  if (!earth || category === undefined || !dynamic.has(category) || !isShaken(demand)) return undefined;
  return `in seismic design category ${category} the soil behind a wall presses more while it shakes (IBC 2021 1803.5.12), and by how much is not known here: state the seismic coefficient of the fill, as the geotechnical report gives it, or have the wall designed by hand`;
}

export interface Safety {
  readonly factor: number;
  readonly note: string;
}

/**
 * IBC 2021 1807.2.3: 1.5 against overturning and sliding of a wall that holds soil back, 1.1 with earthquake, on loads whose dead load is not reduced.
 * With reduced dead load (ASCE 7-22 2.4.1) the wall has to stand, without a further factor. `drives`: the soil held back pushes the way looked at.
 */
export function safetyOf(inputs: StabilityInputs, drives: boolean, factor: number, demand: Demand): Safety {
  if (factor < 1) return { factor: 1, note: "The dead load is reduced in this combination: no further factor of safety (ASCE 7-22 2.4.1)." };
  if (drives) {
    return isShaken(demand)
      ? { factor: 1.1, note: `A wall that holds soil back is held to a factor of safety of 1.1 with earthquake (IBC 2021 1807.2.3)${inputs.earth?.shaking === undefined ? "; the earthquake on the soil itself is left out in seismic design categories A to C" : ""}.` }
      : { factor: 1.5, note: "A wall that holds soil back is held to a factor of safety of 1.5 on dead load that is not reduced (IBC 2021 1807.2.3)." };
  }
  return inputs.definition === "factored dead load" ? { factor: 1, note: "" } : { factor: 1.5, note: "The job asks for a factor of safety of 1.5 on dead load that is not reduced." };
}
