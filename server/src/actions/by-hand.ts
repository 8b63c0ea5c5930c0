/**
 * Reactions somebody else found: unfactored by load case, which go through the combinations, or already combined at a stated level.
 * They act at the column base, at the top of the base plate, or on the top of a foundation that stands alone.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { Column, Foundation, Sourced } from "../project/model.js";
import { chosenCases, combine, type CombinedLevel } from "./combinations.js";
import type { ColumnActions, Demand, LoadCase, LoadType, NoActions } from "./demand.js";
import { steelDemands, takesAllowable, type SteelMethod } from "./steel-method.js";
import { verticalFactor } from "./seismic/coefficient.js";
import type { Reaction } from "./way-down.js";
import type { LoadStandard } from "./wind/velocity-pressure.js";

const axialForce = formula({
  id: "actions.by-hand.axial",
  text: "P = F_down - F_up",
  source: "sign convention: compression positive",
  symbols: {
    P: { kind: "force", meaning: "axial force, compression positive" },
    F_down: { kind: "force", meaning: "force pressing down", field: "columns.*.reactions.*.down" },
    F_up: { kind: "force", meaning: "force lifting", field: "columns.*.reactions.*.up" },
  },
});

const topMomentX = formula({
  id: "actions.by-hand.top-moment-x",
  text: "M_xt = M_x + V_y * H",
  source: "statics of a column without load between its ends",
  symbols: {
    M_xt: { kind: "moment", meaning: "moment about the east axis at the column top" },
    M_x: { kind: "moment", meaning: "the same at the base" },
    V_y: { kind: "force", meaning: "push to the north" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
});

const topMomentY = formula({
  id: "actions.by-hand.top-moment-y",
  text: "M_yt = M_y - V_x * H",
  source: "statics of a column without load between its ends",
  symbols: {
    M_yt: { kind: "moment", meaning: "moment about the north axis at the column top" },
    M_y: { kind: "moment", meaning: "the same at the base" },
    V_x: { kind: "force", meaning: "push to the east" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
});

const reversed = formula({
  id: "actions.by-hand.reversed",
  text: "F_r = -F",
  source: "ASCE 7-22 12.4: the earthquake acts in either sense",
  symbols: {
    F_r: { kind: "force", meaning: "force in the other sense" },
    F: { kind: "force", meaning: "force as stated" },
  },
});

const reversedMoment = formula({
  id: "actions.by-hand.reversed-moment",
  text: "M_r = -M",
  source: "ASCE 7-22 12.4: the earthquake acts in either sense",
  symbols: {
    M_r: { kind: "moment", meaning: "moment in the other sense" },
    M: { kind: "moment", meaning: "moment as stated" },
  },
});

const verticalPart = formula({
  id: "actions.by-hand.vertical-part",
  text: "F_v = f_v * F_D",
  source: "ASCE 7-16 Eq. 12.4-4a: E_v = 0.2 S_DS D",
  symbols: {
    F_v: { kind: "force", meaning: "vertical part of the earthquake" },
    f_v: { kind: "ratio", meaning: "that part of the dead load" },
    F_D: { kind: "force", meaning: "the same of the dead load" },
  },
});

const verticalPartMoment = formula({
  id: "actions.by-hand.vertical-part-moment",
  text: "M_v = f_v * M_D",
  source: "ASCE 7-16 Eq. 12.4-4a: E_v = 0.2 S_DS D",
  symbols: {
    M_v: { kind: "moment", meaning: "moment of the vertical part of the earthquake" },
    f_v: { kind: "ratio", meaning: "that part of the dead load" },
    M_D: { kind: "moment", meaning: "the same of the dead load" },
  },
});

type Reactions = NonNullable<Column["reactions"]>;
type Combined = NonNullable<Column["combined"]>;
/** The fields of a column or of a foundation that hold stated reactions. */
export type Stated = Pick<Column | Foundation, "reactions" | "combined">;

/** How the name of an entry begins, and the load type it stands for; longer beginnings first. */
const beginnings: readonly (readonly [string, LoadType])[] = [
  ["dead", "D"],
  ["roof live", "Lr"],
  ["live", "L"],
  ["snow", "S"],
  ["rain", "R"],
  ["wind", "W"],
  ["earthquake", "E"],
];

/** The load type an entry's name stands for. */
export const typeOfName = (name: string): LoadType | undefined => {
  const plain = name.trim().toLowerCase();
  return beginnings.find(([start]) => plain === start || (plain.startsWith(start) && !/[a-z]/u.test(plain.charAt(start.length))))?.[1];
};

/** Whether reactions are stated, so that the roof's loads do not pass through here. */
export const isByHand = (stated: Stated): boolean => (stated.reactions?.value.size ?? 0) > 0 || (stated.combined?.value.size ?? 0) > 0;

type ForceFields = Omit<Combined["value"] extends ReadonlyMap<string, Sourced<infer F>> ? F : never, "level">;

function baseForces(entry: ForceFields, calc: Calc): Forces {
  const of = (field: Sourced<number> | undefined): number => field?.value ?? 0;
  return {
    P: calc(axialForce, { F_down: of(entry.down), F_up: of(entry.up) }),
    Vx: of(entry["shear x"]),
    Vy: of(entry["shear y"]),
    Mx: of(entry["moment x"]),
    My: of(entry["moment y"]),
    ...(entry.twist && { Mz: entry.twist.value }),
  };
}

/** The column top by statics where the height is known; otherwise the forces stand as stated. */
function ends(base: Forces, height: number | undefined, calc: Calc): Reaction {
  if (height === undefined) return { top: base, base };
  const top = { ...base, Mx: calc(topMomentX, { M_x: base.Mx, V_y: base.Vy, H: height }), My: calc(topMomentY, { M_y: base.My, V_x: base.Vx, H: height }) };
  return { top, base };
}

const inOtherSense = (f: Forces, calc: Calc): Forces => ({
  P: calc(reversed, { F: f.P }),
  Vx: calc(reversed, { F: f.Vx }),
  Vy: calc(reversed, { F: f.Vy }),
  Mx: calc(reversedMoment, { M: f.Mx }),
  My: calc(reversedMoment, { M: f.My }),
  ...(f.Mz !== undefined && { Mz: calc(reversedMoment, { M: f.Mz }) }),
});

const shakenDown = (f: Forces, f_v: number, calc: Calc): Forces => ({
  P: calc(verticalPart, { f_v, F_D: f.P }),
  Vx: calc(verticalPart, { f_v, F_D: f.Vx }),
  Vy: calc(verticalPart, { f_v, F_D: f.Vy }),
  Mx: calc(verticalPartMoment, { f_v, M_D: f.Mx }),
  My: calc(verticalPartMoment, { f_v, M_D: f.My }),
});

interface StatedCase extends Reaction {
  readonly loadCase: LoadCase;
}

/** Which estimate of the dead load an entry's name says it is. */
const estimateIn = (name: string): LoadCase["estimate"] => (/\blight\b/iu.test(name) ? "light" : /\bheavy\b/iu.test(name) ? "heavy" : undefined);

const idOf = (name: string): string => name.trim().toLowerCase().replace(/\s+/gu, "-");

function statedCases(reactions: Reactions, height: number | undefined, calc: Calc): readonly StatedCase[] | NoActions {
  const cases: StatedCase[] = [];
  for (const [name, entry] of reactions.value) {
    const type = typeOfName(name);
    if (!type) return { unknown: `the reaction "${name}" has no load type: begin its name with dead, live, roof live, snow, rain, wind or earthquake` };
    const base = baseForces(entry.value, calc);
    cases.push({ loadCase: { id: idOf(name), type, title: name }, ...ends(base, height, calc) });
    if (type === "E") {
      cases.push({ loadCase: { id: `${idOf(name)}/reversed`, type, title: `${name}, in the other sense` }, ...ends(inOtherSense(base, calc), height, calc) });
    }
  }
  const dead = cases.filter(({ loadCase }) => loadCase.type === "D");
  if (dead.length === 0) return { unknown: "the reactions name no dead load: state it, as 0 kip if there is none" };
  if (dead.length === 1) return cases;
  const estimates = dead.map(({ loadCase }) => estimateIn(loadCase.title));
  const isPair = dead.length === 2 && estimates.includes("light") && estimates.includes("heavy");
  if (!isPair) return { unknown: "the reactions name more than one dead load: add them up into one, or name two `dead, light` and `dead, heavy`" };
  return cases.map((one) => (one.loadCase.type === "D" ? { ...one, loadCase: { ...one.loadCase, estimate: estimateIn(one.loadCase.title) } } : one));
}

/** The vertical part of an earthquake, by the dead load stated: the heavy one where there are two, the safe side with either sign. */
function verticalCases(cases: readonly StatedCase[], S_DS: number | undefined, calc: Calc): readonly StatedCase[] {
  const dead = cases.find(({ loadCase: { type, estimate } }) => type === "D" && estimate !== "light");
  if (!dead || S_DS === undefined || !(S_DS > 0) || !cases.some(({ loadCase }) => loadCase.type === "E")) return [];
  const f_v = calc(verticalFactor, { S_DS });
  return [{ loadCase: { id: "earthquake/vertical", type: "Ev", title: "vertical part of the earthquake" }, top: shakenDown(dead.top, f_v, calc), base: shakenDown(dead.base, f_v, calc) }];
}

function statedDemands(combined: Combined | undefined, height: number | undefined, calc: Calc): readonly Demand<CombinedLevel>[] | NoActions {
  const demands: Demand<CombinedLevel>[] = [];
  for (const [name, entry] of combined?.value ?? []) {
    const level = entry.value.level?.value;
    if (level === undefined) return { unknown: `the combined reaction "${name}" does not say its level: strength or allowable` };
    const combination = { level, label: name, terms: [], clause: "combined by others" };
    demands.push({ level, label: name, combination, cases: [], ...ends(baseForces(entry.value, calc), height, calc) });
  }
  return demands;
}

const isAt =
  <L extends CombinedLevel>(level: L) =>
  (demand: Demand<CombinedLevel>): demand is Demand<L> =>
    demand.level === level;

/**
 * What stated reactions bring to one column or foundation, or what they lack. `height` is the column's, where there is one and it is
 * known. A level nothing is stated at stays empty.
 */
export function actionsByHand(
  stated: Stated,
  height: number | undefined,
  standard: LoadStandard,
  calc: Calc,
  { alternative = false, steel = "LRFD", S_DS }: { readonly alternative?: boolean; readonly steel?: SteelMethod; readonly S_DS?: number } = {},
): ColumnActions | NoActions {
  const found = stated.reactions?.value.size ? statedCases(stated.reactions, height, calc) : [];
  if ("unknown" in found) return found;
  const cases = [...found, ...verticalCases(found, S_DS, calc)];
  const combined = statedDemands(stated.combined, height, calc);
  if ("unknown" in combined) return combined;
  const loadCases = cases.map(({ loadCase }) => loadCase);
  const allowable = combined.filter(isAt("allowable"));
  const strength = [...combine(chosenCases(standard, "strength", loadCases), cases, calc), ...combined.filter(isAt("strength"))];
  return {
    cases,
    strength,
    // No check of a column top looks at stated reactions.
    atTop: strength,
    atTopAllowable: [],
    atTopSteel: strength,
    allowable: [...combine(chosenCases(standard, "allowable", loadCases, alternative), cases, calc), ...allowable],
    service: [],
    steel: steelDemands(steel, strength, takesAllowable(steel) ? [...combine(chosenCases(standard, "allowable", loadCases), cases, calc), ...allowable] : []),
  };
}
