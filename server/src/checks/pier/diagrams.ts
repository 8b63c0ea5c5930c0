/**
 * Shear and moment along a pier, for its concrete. Where the notebook says how the soil beside it moves, they come from springs or p-y curves. Where it
 * does not, the pier is taken as rigid: then they depend only on how the soil's stiffness is spread over the depth, and the worse of two spreads counts.
 */
import type { Forces } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { rigidPier } from "../../mechanics/rigid-pier.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { readPier, type PierBody } from "./body.js";
import { baseHeight, lateralAt, loweredGround } from "./grade-forces.js";
import { countedLength, pierResponse, readPierInGround, responseFormulas, type PierInGround } from "./response.js";
import { isHeld, readHold } from "./slab.js";
import { hasPierSoil } from "./soil.js";

export interface PierDiagrams {
  /** From grade down, m; moments N·m, shears N. */
  readonly depth: readonly number[];
  readonly moment: readonly number[];
  readonly shear: readonly number[];
  /** Largest, without sign. */
  readonly maxMoment: number;
  /** Depth of the largest moment below grade, m. */
  readonly maxMomentAt: number;
  readonly maxShear: number;
}

/** Plain data that {@link pierDiagrams} needs. */
export interface PierForDiagrams extends PierBody {
  readonly held: boolean;
  readonly ignored: number;
  readonly grout: number;
  readonly plate: number;
  /** Set where the movement of the soil is stated. */
  readonly inGround?: PierInGround;
}

export function readPierForDiagrams(support: Support, gather: Gather): PierForDiagrams {
  const body = readPier(support, gather);
  const ignored = gather.may(support.foundation?.fields["ignored depth"]) ?? 0;
  if (ignored >= body.depth) gather.block("the ignored depth reaches the underside of the pier: nothing is left to hold it. Deepen the pier");
  return {
    ...body,
    held: isHeld(readHold(support, gather)),
    ignored,
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
    ...(hasPierSoil(support) ? { inGround: readPierInGround(support, gather) } : {}),
  };
}

/** For the list of formulas of a check that uses the diagrams. */
export const diagramFormulas = [...responseFormulas, loweredGround, countedLength];

/** The larger of the two, as what a section is to be made for. */
const worse = (a: PierDiagrams, b: PierDiagrams): PierDiagrams => ({
  ...(a.maxMoment >= b.maxMoment ? a : b),
  maxShear: Math.max(a.maxShear, b.maxShear),
});

/**
 * Shear and moment under the forces at a column base, of any load level. Push and moment are taken in one plane and one sense. Undefined where the
 * soil beside the pier gives way under the load: then there is no diagram to make the concrete for.
 */
export function pierDiagrams(pier: PierForDiagrams, base: Forces, calc: Calc): PierDiagrams | undefined {
  if (pier.inGround) {
    const found = pierResponse(pier.inGround, base, calc);
    return found?.givesWay ? undefined : found;
  }
  calc.note("How the soil beside the pier moves is not stated: the pier is taken as rigid, once on springs that are even with depth and once on springs that grow with it, and the worse counts.");
  const a = calc(baseHeight, { h_a: pier.aboveGrade, t_g: pier.grout, t_p: pier.plate });
  const below = pier.ignored > 0 ? calc(loweredGround, { a, z_i: pier.ignored }) : a;
  const { force: H, moment: M } = lateralAt(base, below, calc);
  const length = calc(countedLength, { d: pier.depth, z_i: pier.ignored });
  const of = (spread: "even" | "growing"): PierDiagrams => calc.routine(rigidPier, { spread, length, H, M, held: pier.held, from: pier.ignored });
  return worse(of("even"), of("growing"));
}
