import { kinds } from "../units/kinds.js";

/** Seismic force-resisting systems of small open structures. */
export type SeismicCategory = "A" | "B" | "C" | "D" | "E" | "F";

/** Greatest height, m, with the feet it is written in; or whether the system may be used at all. */
export type HeightLimit = { readonly feet: number; readonly height: number } | "any height" | "not permitted";

export interface SeismicSystem {
  readonly name: string;
  /** Response modification coefficient R. */
  readonly R: number;
  /** Overstrength factor. */
  readonly overstrength: number;
  /** Columns that stand up from the ground by themselves; the other systems hold the roof by frames or braces. */
  readonly cantilevered: boolean;
  /** A moment frame of steel, for its period. */
  readonly steelMomentFrame: boolean;
  /** Height limit by category: none where the system is not permitted. */
  readonly limit: Readonly<Record<Exclude<SeismicCategory, "A">, HeightLimit>>;
  readonly source: string;
}

const no = "not permitted";
const any = "any height";

type Limit = number | typeof no | typeof any;
const limitOf = (limit: Limit): HeightLimit => (typeof limit === "number" ? { feet: limit, height: limit * kinds.distance.US.factor } : limit);

type Row = readonly [name: string, R: number, overstrength: number, limits: readonly [B: Limit, C: Limit, D: Limit, E: Limit, F: Limit]];

const cantilevered: readonly Row[] = [
  ["special steel cantilevered columns", 2.5, 1.25, [35, 35, 35, 35, 35]],
  ["ordinary steel cantilevered columns", 1.25, 1.25, [35, 35, no, no, no]],
  ["special concrete cantilevered columns", 2.5, 1.25, [35, 35, 35, 35, 35]],
  ["intermediate concrete cantilevered columns", 1.5, 1.25, [35, 35, no, no, no]],
  ["ordinary concrete cantilevered columns", 1, 1.25, [35, no, no, no, no]],
  ["cantilevered timber frames", 1.5, 1.5, [35, 35, 35, no, no]],
];

const framed: readonly Row[] = [
  ["special steel moment frames", 8, 3, [any, any, any, any, any]],
  ["intermediate steel moment frames", 4.5, 3, [any, any, 35, no, no]],
  ["ordinary steel moment frames", 3.5, 3, [any, any, no, no, no]],
  ["special steel braced frames", 6, 2, [any, any, 160, 160, 100]],
  ["ordinary steel braced frames", 3.25, 2, [any, any, 35, 35, no]],
  ["steel not detailed for earthquake", 3, 3, [any, any, no, no, no]],
];

const source = "ASCE 7-16 Table 12.2-1, the same in 7-10 and 7-22 (from memory)";

const made =
  (isCantilevered: boolean) =>
  ([name, R, overstrength, [B, C, D, E, F]]: Row): SeismicSystem => ({
    name,
    R,
    overstrength,
    cantilevered: isCantilevered,
    steelMomentFrame: name.endsWith("steel moment frames"),
    limit: { B: limitOf(B), C: limitOf(C), D: limitOf(D), E: limitOf(E), F: limitOf(F) },
    source,
  });

export const seismicSystems: readonly SeismicSystem[] = [...cantilevered.map(made(true)), ...framed.map(made(false))];

export const seismicSystemNames: readonly string[] = seismicSystems.map(({ name }) => name);

export const seismicSystemOf = (name: string): SeismicSystem | undefined => seismicSystems.find((system) => system.name === name);
