/**
 * Loads and the way down: from site, roof and columns to the forces at every column, by load case and by combination. Nothing here
 * depends on bases, foundations or ground, but for reactions stated at a foundation that stands alone.
 */
import { plainCalc } from "../formula/calc.js";
import { besideBuilding, blockedRemarks, wallsRemark } from "./blocked-inputs.js";
import { actionsByHand, isByHand } from "./by-hand.js";
import type { ColumnActions, LoadDerivation, NoActions } from "./demand.js";
import { roofInputs, roofSupports, type LoadedStructure, type RoofInputs } from "./roof-inputs.js";
import { isLeftOut, seismicRemarks } from "./seismic/inputs.js";
import type { LoadPage } from "./load-page.js";
import { generalRemarks, type LoadInformation, type Show } from "./remarks.js";
import { methodOf } from "./steel-method.js";
import { roofSystem, type CaseResultant, type OutsideRange, type RoofSystem } from "./roof-system.js";

export type { CaseResultant, LoadedStructure, LoadInformation, Show };

export interface StructureActions {
  /** What reaches each column of a support, in the order of its places; or why nothing is known. */
  readonly of: (support: { readonly path: string }) => readonly ColumnActions[] | NoActions;
  /** How the roof's loads were found; made when asked for. */
  readonly derivations: () => readonly LoadDerivation[];
  readonly information: readonly LoadInformation[];
  /** The loads case by case, each with where it comes from; made when asked for. */
  readonly loadPage: () => LoadPage | undefined;
  /** What each case puts on the whole roof; empty where the roof's loads are not known. */
  readonly resultants: readonly CaseResultant[];
  /** For the next call. */
  readonly kept: Kept;
}

/** What was computed, by what it was computed from, so that an equal input gives the same objects again. */
interface Kept {
  readonly roof?: { readonly key: string; readonly system: RoofSystem };
  readonly byHand: ReadonlyMap<object, { readonly rules: string; readonly actions: readonly ColumnActions[] | NoActions }>;
  readonly bySupport: ReadonlyMap<string, readonly ColumnActions[]>;
}

const noSupport: NoActions = { unknown: "no loads are known here" };
const nothingStated: NoActions = { unknown: "no loads reach it: describe the roof, or state reactions" };

const isUnknown = <T extends object>(value: T | NoActions): value is NoActions => "unknown" in value;

/**
 * The actions of a structure. `earlier` is what an earlier text gave: where the numbers are the same, so are the objects. Pure, and
 * never throws on a structure the notebook can describe.
 */
export function actionsOf(structure: LoadedStructure, earlier?: StructureActions): StructureActions {
  const known = new Map<string, readonly ColumnActions[] | NoActions>();
  const byHand = new Map<object, { readonly rules: string; readonly actions: readonly ColumnActions[] | NoActions }>();
  const standard = structure.codes.loads?.value;
  const alternative = structure.codes["alternative combinations"]?.value ?? false;
  const steel = methodOf(structure.codes);
  const S_DS = structure.site["short-period acceleration"]?.value;
  const rules = `${standard} ${alternative} ${steel} ${S_DS}`;
  for (const { path, places, column, foundation } of structure.supports) {
    const stated = column?.fields ?? foundation?.fields;
    if (!stated || !isByHand(stated)) continue;
    if (standard === undefined) {
      known.set(path, { unknown: "the loads need the load standard (codes, loads)" });
      continue;
    }
    const before = earlier?.kept.byHand.get(stated);
    const actions = before?.rules === rules ? before.actions : handed(actionsByHand(stated, column?.fields.height?.value, standard, plainCalc, { alternative, steel, S_DS }), places.length);
    byHand.set(stated, { rules, actions });
    known.set(path, actions);
  }
  const under = readRoof(structure, earlier);
  const bySupport = new Map<string, readonly ColumnActions[]>();
  for (const { path } of roofSupports(structure)) {
    const columns = under.columns;
    if (isUnknown(columns)) known.set(path, columns);
    else {
      const own = columns.filter((_, i) => under.inputs?.posts[i].support === path);
      const before = earlier?.kept.bySupport.get(path);
      const kept = before && before.length === own.length && before.every((one, i) => one === own[i]) ? before : own;
      bySupport.set(path, kept);
      known.set(path, kept);
    }
  }
  const { system } = under;
  return {
    of: ({ path }) => known.get(path) ?? noSupport,
    derivations: () => system?.derivations() ?? [],
    loadPage: () => system?.loadPage(),
    information: [...generalRemarks(structure), ...(structure.roof && system && under.inputs ? informationOn(structure, under.inputs, system) : [])],
    resultants: system?.resultants ?? [],
    kept: { roof: under.key !== undefined && system ? { key: under.key, system } : undefined, byHand, bySupport },
  };
}

/** Every column of a line takes the same stated reactions. */
const handed = (actions: ColumnActions | NoActions, places: number): readonly ColumnActions[] | NoActions =>
  isUnknown(actions) ? actions : Array.from({ length: places }, () => actions);

interface UnderRoof {
  readonly columns: readonly ColumnActions[] | NoActions;
  readonly inputs?: RoofInputs;
  readonly system?: RoofSystem;
  readonly key?: string;
}

function readRoof(structure: LoadedStructure, earlier: StructureActions | undefined): UnderRoof {
  const { roof } = structure;
  if (!roof || roofSupports(structure).length === 0) return { columns: nothingStated };
  const inputs = roofInputs(structure, roof.fields);
  if (isUnknown(inputs)) return { columns: inputs };
  const key = JSON.stringify(inputs);
  const before = earlier?.kept.roof;
  const system = before?.key === key ? before.system : roofSystem(inputs);
  return { columns: system.columns, inputs, system, key };
}

function informationOn({ roof, site }: LoadedStructure, { seismic, plane, flow, blocked, closed }: RoofInputs, system: RoofSystem): readonly LoadInformation[] {
  const found: LoadInformation[] = [];
  const at = roof?.fields["mean height"] ?? roof;
  if (at) for (const outside of system.outside) found.push({ at, message: nearestResult(outside, system.resultants) });
  const blocking = roof?.fields.blocked ?? roof;
  if (blocking) for (const remark of closed ? [wallsRemark(closed)] : blockedRemarks(flow, blocked)) found.push({ at: blocking, message: () => remark });
  const building = roof?.fields.blocked?.value.building;
  if (roof && building && besideBuilding(roof.fields, () => "") !== undefined) found.push({ at: building, message: (show) => besideBuilding(roof.fields, (value) => show(value, "distance")) ?? "" });
  const category = site["seismic design category"];
  if (category && isLeftOut(site)) found.push({ at: category, message: () => leftOut });
  const named = roof?.fields["earthquake system"];
  if (named && seismic) for (const remark of seismicRemarks(seismic, plane.meanHeight)) found.push({ at: named, message: () => remark });
  return found;
}

const leftOut =
  "No earthquake is among the loads: category B, and no accelerations are stated. On heavy roofs over columns that stand up from the ground by themselves an earthquake can still govern: state short-period acceleration and one-second acceleration to have it checked.";

/** The result the nearest coefficients give, for information only. */
function nearestResult({ from, figure, because }: OutsideRange, resultants: readonly CaseResultant[]) {
  const totals = resultants.filter((one) => one.outside !== undefined && one.loadCase.from === from).map(({ total }) => total);
  const up = Math.max(0, ...totals.map(({ P }) => -P));
  const down = Math.max(0, ...totals.map(({ P }) => P));
  const side = Math.max(0, ...totals.map(({ Vx, Vy }) => Math.max(Math.abs(Vx), Math.abs(Vy))));
  return (show: Show): string =>
    `Wind from the ${from}, for information only, as ${because}: with the nearest coefficients of ${figure} the whole roof takes up to ${show(up, "force")} up, ${show(down, "force")} down and ${show(side, "force")} sideways.`;
}
