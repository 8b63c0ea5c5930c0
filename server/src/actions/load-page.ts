/** The loads of a roof as a reviewer reads them: case by case, each pressure with where it comes from, and what the case puts on the whole roof. */
import { plainCalc } from "../formula/calc.js";
import { pressureOver, type RoofLoad } from "../mechanics/rigid-roof.js";
import { pushOf } from "../mechanics/superposition.js";
import type { LoadPart, RoofCase } from "./roof-case.js";
import type { CaseResultant } from "./roof-system.js";

export interface CasePage extends CaseResultant {
  /** Clause or figure the loads are found by. */
  readonly source: string;
  readonly parts: readonly LoadPart[];
}

export interface LoadPage {
  /** Velocity pressure at mean roof height, Pa, with what it is by the edition. */
  readonly q_h: number;
  readonly q_hClause: string;
  readonly cases: readonly CasePage[];
}

function pressures(loads: readonly RoofLoad[], source: string): readonly LoadPart[] {
  return loads.flatMap((load): readonly LoadPart[] => {
    if (load.Fz === 0) return [];
    const pressure = pressureOver(load);
    const isWhole = loads.length === 1;
    return [{ where: isWhole ? "whole roof" : "a part of the roof", area: isWhole ? undefined : load.over, pressure, read: source }];
  });
}

/** Pushes that come with no pressure on the roof: drag, the least wind force, earthquake. */
function pushes(loads: readonly RoofLoad[], { source, parts }: RoofCase): readonly LoadPart[] {
  const push = pushOf(loads.filter(({ Fz }) => Fz === 0));
  if (push.x === 0 && push.y === 0) return [];
  return [{ where: parts ? "columns, members, fascias" : "sideways, on all of the structure", push, read: parts ? "chapter 29; the steps are in the derivation" : source }];
}

/** A case with its parts, for reading. */
export function pageOf(roofCase: RoofCase, resultant: CaseResultant): CasePage {
  const loads = roofCase.loads(plainCalc);
  const all = [...loads, ...(roofCase.beside?.(plainCalc) ?? [])];
  return { ...resultant, source: roofCase.source, parts: [...(roofCase.parts?.() ?? pressures(loads, roofCase.source)), ...pushes(all, roofCase)] };
}
