/** What holds each column against sway, by plan direction: which of its ends hold a moment, and the bays that are braced. */
import { steelModulus } from "../catalog/materials.js";
import { plainCalc } from "../formula/calc.js";
import { formula } from "../formula/declare.js";
import { isBelow } from "../mechanics/compare.js";
import { runsAlong } from "../mechanics/plan-line.js";
import type { EndsHeld } from "../mechanics/rigid-roof.js";
import type { RoofBrace } from "../mechanics/roof-frame.js";
import type { KneeBrace } from "../mechanics/sway-stiffness.js";
import type { Column } from "../project/model.js";
import type { NoActions } from "./demand.js";
import type { LoadedStructure } from "./roof-inputs.js";
import { listed } from "./wanted.js";

export type Ends = { readonly x: EndsHeld; readonly y: EndsHeld };
type SwayCondition = NonNullable<Column["sway along x"]>["value"];
type Axis = "x" | "y";
type RoofSupport = LoadedStructure["supports"][number];

const wayOf = { x: "east to west", y: "north to south" } as const;
const footHeight = formula({
  id: "actions.knee.foot",
  text: "f = H - a_k",
  source: "geometry",
  symbols: {
    f: { kind: "distance", meaning: "height of the foot of the brace above the base" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
    a_k: { kind: "length", meaning: "from the column top down to the foot of the brace", field: "columns.*.knee brace.below top" },
  },
});

const axes: readonly Axis[] = ["x", "y"];

/** A column that names no condition stands as the schema assumes. */
export const conditionOf = (column: Column, axis: Axis): SwayCondition => column[axis === "x" ? "sway along x" : "sway along y"]?.value ?? "fixed base";

/** The condition names a knee brace; the base is pinned unless it says otherwise. */
const isKneeBraced = (condition: SwayCondition): boolean => condition === "fixed base and knee brace" || condition === "knee brace";

const pinnedBases: readonly SwayCondition[] = ["braced bay", "pinned base", "knee brace"];

/** Whether the base holds the column against turning along an axis. */
export const isBaseHeld = (column: Column, axis: Axis): boolean => !pinnedBases.includes(conditionOf(column, axis));

/** A place in plan with the middle of the roof, m. */
interface Placed {
  readonly x: number;
  readonly y: number;
  readonly middle: { readonly x: number; readonly y: number };
}

function kneeOf(column: Column, axis: Axis, place: Placed): KneeBrace | undefined {
  const brace = column["knee brace"]?.value;
  if (!isKneeBraced(conditionOf(column, axis)) || !brace) return undefined;
  const foot = plainCalc(footHeight, { H: column.height?.value ?? Number.NaN, a_k: brace["below top"]?.value ?? Number.NaN });
  const sides = brace.sides?.value === "both" ? "both" : place[axis] > place.middle[axis] ? -1 : 1;
  return { foot, run: brace.run?.value ?? Number.NaN, E: steelModulus.value, area: brace.area?.value ?? Number.NaN, sides };
}

function heldIn(column: Column, axis: Axis, place: Placed): EndsHeld {
  const condition = conditionOf(column, axis);
  const isTopFixed = column["top of column"]?.value === "fixed";
  const spring = column["base rotation stiffness"]?.value;
  const base = isBaseHeld(column, axis);
  const knee = kneeOf(column, axis, place);
  const top = condition === "fixed base and top" || (isTopFixed && condition !== "braced bay");
  return { base, top: top && !knee, ...(base && spring !== undefined ? { baseSpring: spring } : {}), ...(knee ? { knee } : {}) };
}

/** Which ends of a column hold a moment, and what braces it below its top. */
export const endsFrom = (column: Column, place: Placed): Ends => ({ x: heldIn(column, "x", place), y: heldIn(column, "y", place) });

function kneeConflict(name: string, fields: Column, way: string): string | undefined {
  const top = fields["top of column"];
  if (top?.value === "fixed" && !top.assumed) return `column ${name} is held against swaying ${way} by a knee brace, and its \`top of column\` is stated as fixed: make it pinned, or leave the knee brace out`;
  const brace = fields["knee brace"]?.value;
  const missing = [
    ...(brace?.["below top"] ? [] : ["how far below the column top it meets the column (below top)"]),
    ...(brace?.run ? [] : ["how far from the column it meets the roof framing (run)"]),
    ...(brace?.area ? [] : ["its cross-section area (area)"]),
  ];
  if (missing.length > 0) return `column ${name} is held against swaying ${way} by a knee brace: under \`knee brace\` state ${listed(missing)}`;
  const H = fields.height?.value;
  const below = brace?.["below top"]?.value;
  if (H !== undefined && below !== undefined && !isBelow(below, H)) return `the knee brace of column ${name} meets it below its base: state a distance below the column top less than the column's height`;
  return undefined;
}

/** What contradicts itself or is missing in how a column is held, or undefined. */
export function swayConflict({ name, column }: RoofSupport): string | undefined {
  const fields = column?.fields;
  if (!fields) return undefined;
  const top = fields["top of column"];
  for (const axis of axes) {
    const condition = conditionOf(fields, axis);
    if (condition === "fixed base and top" && top?.value === "pinned" && !top.assumed) {
      return `column ${name} is fixed at base and top against swaying ${wayOf[axis]}, and its \`top of column\` is stated as pinned: change one of them`;
    }
    const unheld = isKneeBraced(condition) ? kneeConflict(name, fields, wayOf[axis]) : undefined;
    if (unheld) return unheld;
    if (condition === "bracket" && fields.bracket?.value["rated moment"] === undefined) {
      return `column ${name} is held against swaying ${wayOf[axis]} by a bracket: state its rated moment (bracket, rated moment)`;
    }
    if (condition === "braced bay" && fields.bracing?.value.area === undefined) {
      return `column ${name} is held against swaying ${wayOf[axis]} by a braced bay: state the area of one of its rods (bracing, area)`;
    }
  }
  return undefined;
}

interface Bay {
  readonly from: number;
  readonly to: number;
  readonly area: number;
}

/** Bays of one line that stand along an axis, or what is missing. `numbers` are those of each line's columns among all. */
function baysOf(support: RoofSupport, axis: Axis, supports: readonly RoofSupport[], numbers: ReadonlyMap<string, readonly number[]>): readonly Bay[] | NoActions {
  const { name, places } = support;
  const bracing = support.column?.fields.bracing?.value;
  const area = bracing?.area?.value ?? Number.NaN;
  const stated = bracing?.bays?.value.map(({ value }) => value);
  const own = numbers.get(name) ?? [];
  if (places.length > 1 && runsAlong(places[0], places[places.length - 1], axis)) {
    const bays = stated ?? (places.length === 2 ? [1] : undefined);
    if (!bays) return { unknown: `column line ${name} is braced along ${axis}: say which of its ${places.length - 1} bays are braced (bracing, bays)` };
    const beyond = bays.find((bay) => bay >= places.length);
    if (beyond !== undefined) return { unknown: `column line ${name} has ${places.length - 1} bays, and bay ${beyond} is stated as braced` };
    return bays.map((bay) => ({ from: own[bay - 1], to: own[bay], area }));
  }
  const other = supports.find((one) => one.name === bracing?.to?.value);
  if (!other) return { unknown: `column ${name} is braced along ${axis}, across its own line: say which other column or line its bays lead to (bracing, to)` };
  const most = Math.min(places.length, other.places.length);
  const bays = stated ?? (most === 1 ? [1] : undefined);
  if (!bays) return { unknown: `column line ${name} is braced to ${other.name}: say between which columns, counted from the first of each line (bracing, bays)` };
  const beyond = bays.find((bay) => bay > most);
  if (beyond !== undefined) return { unknown: `column line ${name} is braced to ${other.name} at column ${beyond}, and one of them has only ${most}` };
  const crooked = bays.find((bay) => !runsAlong(places[bay - 1], other.places[bay - 1], axis));
  if (crooked !== undefined) return { unknown: `columns ${crooked} of ${name} and ${other.name} do not stand along ${axis} from each other, so that a bay between them cannot brace that way` };
  const across = numbers.get(other.name) ?? [];
  return bays.map((bay) => ({ from: own[bay - 1], to: across[bay - 1], area }));
}

/** Every braced bay once, or what is missing. Columns are numbered through the supports in their order. */
export function bracesOf(supports: readonly RoofSupport[]): readonly RoofBrace[] | NoActions {
  const numbers = new Map<string, readonly number[]>();
  let next = 0;
  for (const { name, places } of supports) {
    numbers.set(
      name,
      places.map(() => {
        next += 1;
        return next - 1;
      }),
    );
  }
  const found = new Map<string, RoofBrace>();
  for (const support of supports) {
    for (const axis of axes) {
      if (!support.column || conditionOf(support.column.fields, axis) !== "braced bay") continue;
      const bays = baysOf(support, axis, supports, numbers);
      if ("unknown" in bays) return bays;
      for (const { from, to, area } of bays) {
        const key = `${Math.min(from, to)} ${Math.max(from, to)}`;
        if (!found.has(key)) found.set(key, { from, to, E: steelModulus.value, area });
      }
    }
  }
  return [...found.values()];
}
