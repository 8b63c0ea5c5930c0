/** Structures made by hand for the load tests, in the trade's units. */
import { sections, type ColumnSection } from "../../server/src/catalog/sections.js";
import type { ColumnActions, Edge, Forces } from "../../server/src/actions/demand.js";
import { actionsOf, type LoadedStructure, type StructureActions } from "../../server/src/actions/index.js";
import { kinds } from "../../server/src/units/kinds.js";
import { kip, kipFoot, sourced } from "../checks/given.js";

export const foot = kinds.distance.US.factor;
export const psf = kinds.pressure.US.factor;
export const mph = kinds.speed.US.factor;
export const pound = kinds.smallForce.US.factor;
export { kip, kipFoot };

const span = { block: 0, start: 0, end: 0 } as never;

type Plain = Readonly<Record<string, unknown>>;

class Assumed {
  constructor(readonly value: unknown) {}
}

/** A value the notebook leaves out, as a default of the schema gives it. */
export const assumed = (value: unknown): unknown => new Assumed(value);

const fieldOf = (name: string, value: unknown) =>
  value === undefined ? undefined : value instanceof Assumed ? { ...sourced(value.value, name), assumed: { path: name } } : sourced(value, name);

/** Fields as the notebook would give them. */
export const recordOf = (fields: Plain) => Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, fieldOf(name, value)]));

const named = (name: string, fields: Plain) => ({ name, path: name, span, fields: recordOf(fields) });

/** Fields of a record inside a record. */
export const sourcedFields = recordOf;

/** Entries under names, as `reactions` and `combined` hold them. */
export const entries = (of: Readonly<Record<string, Plain>>) => new Map(Object.entries(of).map(([name, fields]) => [name, sourced(recordOf(fields), name)]));

const section = sections.find(({ name }) => name === "HSS6x6x3/8") as ColumnSection;

/** Monoslope on four columns: 7.5 degrees, 24 ft by 20 ft, low edge south, 150 mph, exposure C, mean height 12 ft. */
export const roofFields: Plain = {
  shape: "monoslope",
  slope: Math.tan((7.5 * Math.PI) / 180),
  length: 24 * foot,
  width: 20 * foot,
  "low edge": "south",
  "mean height": 12 * foot,
  dead: 10 * psf,
  live: 20 * psf,
  slippery: false,
  "flow below": "clear",
  "edge depth": 1 * foot,
  fascia: recordOf({ depth: 0 }),
  "rigid in plane": "yes",
};

export const siteFields: Plain = { "wind speed": 150 * mph, exposure: "C", "topographic factor": 1, "ground elevation": 0, "risk category": "II", "ground snow": 0, "snow exposure": "partially exposed", "seismic design category": "A" };

/** The wind does not see the columns, so that what the roof brings can be told from their own drag, which has tests of its own. */
export const columnFields: Plain = { at: { x: 0, y: 0 }, section, height: 11 * foot, "width in the wind": 0, "top of column": "pinned" };

export interface Line {
  readonly name: string;
  readonly places: readonly { readonly x: number; readonly y: number }[];
  readonly fields?: Plain;
}

/** Two lines of two columns, plan places in feet. */
export const fourColumns: readonly Line[] = [
  { name: "south", places: [{ x: 3, y: 3 }, { x: 21, y: 3 }], fields: { height: 10 * foot } },
  { name: "north", places: [{ x: 3, y: 17 }, { x: 21, y: 17 }], fields: { height: 12 * foot } },
];

export interface Given {
  readonly roof?: Plain;
  readonly site?: Plain;
  readonly lines?: readonly Line[];
  readonly noRoof?: boolean;
  readonly standard?: string;
  readonly codes?: Plain;
}

export function structureOf({ roof = {}, site = {}, lines = fourColumns, noRoof = false, standard = "ASCE 7-22", codes = {} }: Given = {}): LoadedStructure {
  return {
    codes: recordOf({ loads: standard, ...codes }),
    site: recordOf({ ...siteFields, ...site }),
    roof: noRoof ? undefined : named("roof", { ...roofFields, ...roof }),
    supports: lines.map(({ name, places, fields = {} }) => ({
      name,
      path: `columns.${name}`,
      places: places.map(({ x, y }) => ({ x: x * foot, y: y * foot })),
      column: named(name, { ...columnFields, ...fields }),
    })),
  } as unknown as LoadedStructure;
}

/** The actions of every column, by line; what stands in the way fails the test with its words. */
export function columnsOf(actions: StructureActions, lines: readonly Line[] = fourColumns): readonly ColumnActions[] {
  return lines.flatMap(({ name }) => {
    const of = actions.of({ path: `columns.${name}` });
    if ("unknown" in of) throw new Error(of.unknown);
    return of;
  });
}

export const solved = (given: Given = {}): { readonly actions: StructureActions; readonly columns: readonly ColumnActions[] } => {
  const actions = actionsOf(structureOf(given));
  return { actions, columns: columnsOf(actions, given.lines) };
};

export const unknownOf = (given: Given, name = "south"): string => {
  const of = actionsOf(structureOf(given)).of({ path: `columns.${name}` });
  return "unknown" in of ? of.unknown : "";
};

/** Forces at the base of a column under a case. */
export function baseOf(column: ColumnActions, id: string): Forces {
  const found = column.cases.find(({ loadCase }) => loadCase.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found.base;
}

export const totalOf = (actions: StructureActions, id: string): Forces => {
  const found = actions.resultants.find(({ loadCase }) => loadCase.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found.total;
};

export const allEdges: readonly Edge[] = ["north", "east", "south", "west"];
