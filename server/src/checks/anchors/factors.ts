/** Strength reduction factors and limits for cast-in anchors and for rods set in adhesive, by edition. */
import type { Calc } from "../../formula/types.js";
import type { Codes } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { editionBlock } from "../editions.js";

/** A factor of the formulas in cracked and in uncracked concrete. */
export interface ByCracking {
  readonly cracked: number;
  readonly uncracked: number;
}

/** Reinforcement between the rods and an edge, as the notebook names it. */
export type EdgeBars = "none" | "no. 4" | "no. 4 in ties at 4 in";

export interface AnchorFactors {
  readonly edition: string;
  /** Steel: ductile, and brittle, in tension and in shear. */
  readonly steelTension: { readonly ductile: number; readonly brittle: number };
  readonly steelShear: { readonly ductile: number; readonly brittle: number };
  /** Concrete breakout in tension, cast-in, without supplementary reinforcement. */
  readonly breakout: number;
  readonly pullout: number;
  readonly blowout: number;
  /** Concrete breakout in shear, without supplementary reinforcement. */
  readonly shearBreakout: number;
  readonly pryout: number;
  /** Breakout and bond of adhesive anchors in tension, by the category of the product, 1 to 3. */
  readonly adhesive: readonly [number, number, number];
  /** psi_c of breakout in tension, and of pullout. */
  readonly breakoutCracking: ByCracking;
  readonly drilledCracking: ByCracking;
  readonly pulloutCracking: ByCracking;
  /** psi_c of breakout in shear: in uncracked concrete, and in cracked concrete by the bars at the edge. */
  readonly shearUncracked: number;
  readonly shearCracked: Readonly<Record<EdgeBars, number>>;
  readonly source: string;
  /** Clauses of this edition, where they are numbered otherwise than in ACI 318-19. */
  readonly clauses?: Readonly<Record<AnchorPart, string>>;
}

/** Parts of the anchor chapter that the checks stand on. */
export type AnchorPart = "steelTension" | "breakoutTension" | "pullout" | "blowout" | "steelShear" | "breakoutShear" | "pryout" | "bond" | "interaction";

const values = {
  steelTension: { ductile: 0.75, brittle: 0.65 },
  steelShear: { ductile: 0.65, brittle: 0.6 },
  breakout: 0.7,
  pullout: 0.7,
  blowout: 0.7,
  shearBreakout: 0.7,
  pryout: 0.7,
  adhesive: [0.65, 0.55, 0.45],
  breakoutCracking: { cracked: 1, uncracked: 1.25 },
  drilledCracking: { cracked: 1, uncracked: 1.4 },
  pulloutCracking: { cracked: 1, uncracked: 1.4 },
  shearUncracked: 1.4,
  shearCracked: { none: 1, "no. 4": 1.2, "no. 4 in ties at 4 in": 1.4 },
} as const;

/** One row an edition. From ACI 318-14 to ACI 318-19 the rules for cast-in anchors were renumbered and their numbers kept (from memory). */
export const anchorFactors: Readonly<Record<string, AnchorFactors>> = {
  "ACI 318-19": {
    edition: "ACI 318-19",
    ...values,
    source: "ACI 318-19 Table 17.5.3, without supplementary reinforcement; psi_c by 17.6.2.5.1, 17.6.3.3.1 and Table 17.7.2.5.1",
  },
  "ACI 318-14": {
    edition: "ACI 318-14",
    ...values,
    source: "ACI 318-14 17.3.3, condition B; psi_c by 17.4.2.6, 17.4.3.6 and 17.5.2.7 (from memory)",
    clauses: {
      steelTension: "17.4.1",
      breakoutTension: "17.4.2",
      pullout: "17.4.3",
      blowout: "17.4.4",
      steelShear: "17.5.1",
      breakoutShear: "17.5.2",
      pryout: "17.5.3",
      bond: "17.4.5",
      interaction: "17.6",
    },
  },
};

/** Editions by which the checks of cast-in anchors are right. */
export const anchorEditions: readonly string[] = Object.keys(anchorFactors).sort();

/** The row of the notebook's concrete edition. */
export function readFactors(codes: Codes, gather: Gather): AnchorFactors | undefined {
  const edition = gather.needs(codes.concrete, "edition of the concrete standard");
  const found = edition === undefined ? undefined : anchorFactors[edition];
  const because = editionBlock({ clause: found?.source ?? "ACI 318", editions: anchorEditions }, codes);
  if (because !== undefined) gather.block(because);
  return found;
}

/** Says under which clause an earlier edition has the rule, where the formulas name the clause of ACI 318-19. */
export function noteEdition(edition: string, part: AnchorPart, calc: Calc): void {
  const clause = anchorFactors[edition]?.clauses?.[part];
  if (clause) calc.note(`By ${edition} ${clause} (from memory): the rule is the same there, and the clause numbers beside the formulas are those of ACI 318-19.`);
}
