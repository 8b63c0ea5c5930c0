/**
 * Allowable values of the ground: as the notebook states them, or presumptive by the class of the material. Presumptive values
 * are allowable ones, so that they go with allowable-stress loads and take no further factor of safety.
 */
import { isMissing } from "../../catalog/lookup.js";
import { findSoil, type SoilClass } from "../../catalog/soils.js";
import type { Sourced, Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

/** One value, SI, and where it comes from, in words. */
export interface GroundValue {
  readonly value: number;
  readonly isPresumptive: boolean;
  readonly from: string;
}

const noValue: GroundValue = { value: Number.NaN, isPresumptive: false, from: "" };

/**
 * The stated value where there is one; otherwise the presumptive value of the material's class (IBC 2021 Table 1806.2). Fill,
 * organic and expansive ground have none, and the reason is given to `gather`.
 */
export function groundValue(
  support: Support,
  gather: Gather,
  stated: Sourced<number> | undefined,
  what: string,
  presumptive: (soil: SoilClass) => number,
): GroundValue {
  const ground = support.ground?.fields;
  if (!ground) {
    gather.needs(undefined, "ground the foundation stands in");
    return noValue;
  }
  if (stated) {
    const source = gather.may(ground.source);
    return { value: gather.need(stated, what), isPresumptive: false, from: `The ${what} is as stated${source ? ` (${source})` : ""}.` };
  }
  const name = gather.needs(ground.class, `${what}, or the class of the ground`);
  if (name === undefined) return noValue;
  const found = findSoil(name);
  if ("blocked" in found || isMissing(found)) {
    gather.block(`no presumptive ${what}: ${"blocked" in found ? found.blocked : found.problem}`);
    return noValue;
  }
  const note = found.note ? ` Note: ${found.note}.` : "";
  return {
    value: presumptive(found.soil),
    isPresumptive: true,
    from: `The ${what} is presumptive for ${found.by}, class ${found.soil.class}, ${found.soil.name} (${found.soil.source}).${note}`,
  };
}
