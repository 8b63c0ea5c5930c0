/** Strength reduction factors and limits for cast-in anchors, by edition. */
import type { Codes } from "../../project/model.js";
import type { Gather } from "../contract.js";

export interface AnchorFactors {
  /** Steel: ductile, and brittle, in tension and in shear. */
  readonly steelTension: { readonly ductile: number; readonly brittle: number };
  readonly steelShear: { readonly ductile: number; readonly brittle: number };
  /** Concrete breakout in tension, cast-in, without supplementary reinforcement. */
  readonly breakout: number;
  readonly pullout: number;
  readonly source: string;
}

export const anchorFactors: Readonly<Record<string, AnchorFactors>> = {
  "ACI 318-19": {
    steelTension: { ductile: 0.75, brittle: 0.65 },
    steelShear: { ductile: 0.65, brittle: 0.6 },
    breakout: 0.7,
    pullout: 0.7,
    source: "ACI 318-19 Table 17.5.3",
  },
};

/** The row of the notebook's concrete edition. */
export function readFactors(codes: Codes, gather: Gather): AnchorFactors | undefined {
  const edition = gather.needs(codes.concrete, "edition of the concrete standard");
  const found = edition === undefined ? undefined : anchorFactors[edition];
  if (edition !== undefined && !found) gather.block(`anchors by ${edition} are not covered`);
  return found;
}
