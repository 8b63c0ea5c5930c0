/** Builds the structure out of what was read: links by name, places of columns, supports that stand alone. */
import type { Values } from "../notebook/fields.js";
import { notebook, type NotebookShape } from "../notebook/schema.js";
import type { Span } from "../notebook/tree.js";
import type { Assumption, Column, Named, Resolved, Roof, RoofTilts, Sourced, Structure, Support } from "./model.js";
import { withCrowds } from "./crowded.js";
import { asBuilt } from "./as-built.js";
import { assumptionsIn, resolveNamed, resolveRecord } from "./resolve.js";

type Place = { readonly x: number; readonly y: number };

const fields = notebook.fields;

/** Evenly spaced places from the first column of a line to the last. */
function placesOf(column: Column): readonly Place[] {
  const at = column.at?.value;
  const from = column.from?.value;
  const to = column.to?.value;
  const count = column["line of"]?.value;
  if (from && to && count !== undefined && count >= 2) {
    return Array.from({ length: count }, (_, i) => ({
      x: from.x + ((to.x - from.x) * i) / (count - 1),
      y: from.y + ((to.y - from.y) * i) / (count - 1),
    }));
  }
  return [at ?? from ?? { x: 0, y: 0 }];
}

/** Columns that stand no farther apart than this along an axis do not keep a roof from tilting along it, m. */
const noArm = 0.3;

/** A roof on one line of columns tilts across the line, on one column both ways. */
function tiltsOf(places: readonly Place[]): RoofTilts | undefined {
  const isNarrow = (at: (place: Place) => number): boolean => Math.max(...places.map(at)) - Math.min(...places.map(at)) <= noArm;
  const [x, y] = [isNarrow((place) => place.x), isNarrow((place) => place.y)];
  return x && y ? "both ways" : x ? "along x" : y ? "along y" : undefined;
}

const named = <T>(name: string, entry: Sourced<T> | undefined): Named<T> | undefined =>
  entry && { name, path: entry.path, span: entry.span, fields: entry.value };

/** Whether a linked entry is the one it was, by its name as well: two names may stand for the same values. */
const isSame = <T>(known: Named<T> | undefined, name: string | undefined, entry: Sourced<T> | undefined): boolean =>
  known?.fields === entry?.value && (entry === undefined || (known?.name === name && known?.path === entry.path));

/** Keeps the earlier object where nothing in it changed, so that what depends on it is not computed again. */
function keep<T extends object>(fresh: T, earlier: T | undefined): T {
  if (!earlier) return fresh;
  const keys = new Set([...Object.keys(fresh), ...Object.keys(earlier)]);
  for (const key of keys) {
    const a = fresh[key as keyof T] as unknown;
    const b = earlier[key as keyof T] as unknown;
    if (a === b) continue;
    if (isNamed(a) && isNamed(b) && a.fields === b.fields && a.name === b.name && a.path === b.path) continue;
    if (key === "places" && JSON.stringify(a) === JSON.stringify(b)) continue;
    return fresh;
  }
  return earlier;
}

const isNamed = (value: unknown): value is Named<unknown> => typeof value === "object" && value !== null && "fields" in value && "name" in value;

/**
 * The structure of one notebook document. `earlier` is the structure of the text before the edit: supports whose parts are
 * unchanged keep their identity.
 */
export function buildStructure(values: Values<NotebookShape>, span: Span, earlier?: Structure): Structure {
  // A section that is left out would stand at the top; the whole text would change with every edit.
  const top: Span = { ...span, end: span.start };
  const section = <K extends "project" | "codes" | "site" | "roof">(name: K) =>
    resolveRecord<NotebookShape[K]["fields"]>(
      fields[name] as never,
      values[name]?.value as Values<NotebookShape[K]["fields"]> | undefined,
      name,
      values[name]?.entry?.keySpan ?? top,
    );
  const ground = resolveNamed(fields.ground, values.ground?.value);
  const bases = asBuilt(resolveNamed(fields.bases, values.bases?.value));
  const foundations = asBuilt(resolveNamed(fields.foundations, values.foundations?.value));
  const columns = resolveNamed(fields.columns, values.columns?.value);

  const shared = {
    codes: keepResolved(section("codes"), earlier?.codes),
    site: keepResolved(section("site"), earlier?.site),
  };
  const roof: Named<Roof> | undefined = values.roof && { name: "roof", path: "roof", span: values.roof.entry?.keySpan ?? values.roof.span, fields: section("roof") };
  const roofTilts = roof && columns.size > 0 ? tiltsOf([...columns.values()].flatMap(({ value }) => placesOf(value))) : undefined;
  const before = new Map(earlier?.supports.map((support) => [support.path, support]));
  const supports: Support[] = [];
  const add = (support: Support) => supports.push(keep(support, before.get(support.path)));

  for (const [name, column] of columns) {
    const baseName = column.value.base?.value;
    const foundationName = column.value["stands on"]?.value;
    const base = baseName === undefined ? undefined : bases.get(baseName);
    const foundation = foundationName === undefined ? undefined : foundations.get(foundationName);
    const groundName = foundation?.value.ground?.value;
    const groundEntry = groundName === undefined ? undefined : ground.get(groundName);
    const known = before.get(column.path);
    const isKept =
      known?.column?.fields === column.value &&
      isSame(known.base, baseName, base) &&
      isSame(known.foundation, foundationName, foundation) &&
      isSame(known.ground, groundName, groundEntry) &&
      known.roof?.fields === roof?.fields &&
      known.roofTilts === roofTilts &&
      known.codes === shared.codes &&
      known.site === shared.site;
    if (isKept) {
      supports.push(known);
      continue;
    }
    add({
      name,
      path: column.path,
      span: column.span,
      places: placesOf(column.value),
      column: named(name, column),
      base: named(baseName ?? "", base),
      foundation: named(foundationName ?? "", foundation),
      ground: named(groundName ?? "", groundEntry),
      roof,
      roofTilts,
      ...shared,
    });
  }
  for (const [name, foundation] of foundations) {
    if (!foundation.value.reactions && !foundation.value.combined) continue;
    const groundName = foundation.value.ground?.value;
    add({
      name,
      path: foundation.path,
      span: foundation.span,
      places: [{ x: 0, y: 0 }],
      foundation: named(name, foundation),
      ground: groundName === undefined ? undefined : named(groundName, ground.get(groundName)),
      ...shared,
    });
  }

  const project = keepResolved(section("project"), earlier?.project);
  const collect = (): readonly Assumption[] => [
    ...assumptionsIn(project),
    ...assumptionsIn(shared.codes),
    ...assumptionsIn(shared.site),
    ...(roof ? assumptionsIn(roof.fields) : []),
    ...[...ground.values(), ...columns.values(), ...bases.values(), ...foundations.values()].flatMap((entry) => assumptionsIn(entry.value as Record<string, unknown>)),
  ];
  let assumptions: readonly Assumption[] | undefined;
  return {
    project,
    ...shared,
    roof,
    loads: resolveNamed(fields.loads, values.loads?.value),
    supports: withCrowds(supports),
    // Asked for by the report and the summary only, not at each edit.
    get assumptions() {
      return (assumptions ??= collect());
    },
    confirm: resolveList(values.confirm),
    accept: resolveAccept(values.accept),
    span,
  };
}

function keepResolved<T extends Resolved<any>>(fresh: T, earlier: T | undefined): T {
  if (!earlier || fresh === earlier) return fresh;
  for (const key of Object.keys(fresh)) {
    const a = fresh[key];
    const b = earlier[key];
    if (a === b) continue;
    if (!a || !b || !Object.is(a.value, b.value) || Boolean(a.assumed) !== Boolean(b.assumed)) return fresh;
    // A kept value would point into a block that is gone.
    if (a.span.block !== b.span.block || a.span.start !== b.span.start) return fresh;
  }
  return earlier;
}

function resolveList(located: Values<NotebookShape>["confirm"]): readonly Sourced<string>[] {
  return (located?.value ?? []).map((item) => ({ value: item.value, path: item.path, span: item.span }));
}

function resolveAccept(located: Values<NotebookShape>["accept"]): Structure["accept"] {
  return (located?.value ?? []).map((item) => ({
    value: resolveRecord(fields.accept.of, item.value, item.path, item.span),
    path: item.path,
    span: item.span,
  }));
}
