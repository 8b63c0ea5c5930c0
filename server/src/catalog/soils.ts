import { kinds } from "../units/kinds.js";
import { nearestNames, plainText, type NotInCatalog } from "./lookup.js";

/** A class of material with presumptive values. Pressures Pa, lateral bearing Pa per m of depth. */
export interface SoilClass {
  readonly class: 1 | 2 | 3 | 4 | 5;
  readonly name: string;
  /** Allowable vertical foundation pressure. */
  readonly verticalBearing: number;
  /** Allowable lateral bearing pressure per depth below natural grade. */
  readonly lateralPerDepth: number;
  /** Coefficient of friction, times the dead load; absent for class 5. */
  readonly friction?: number;
  /** Cohesion, times the contact area; class 5 alone. Sliding resistance is then capped at half the dead load (1806.3.2). */
  readonly cohesion?: number;
  readonly source: string;
}

const psf = kinds.pressure.US.factor;
const psfPerFoot = kinds.pressurePerDepth.US.factor;
const source = "IBC 2021, Table 1806.2";

/** Presumptive load-bearing values, IBC Table 1806.2; the values have stood unchanged since the 2009 edition. */
export const soilClasses: readonly SoilClass[] = [
  { class: 1, name: "crystalline bedrock", verticalBearing: 12000 * psf, lateralPerDepth: 1200 * psfPerFoot, friction: 0.7, source },
  { class: 2, name: "sedimentary and foliated rock", verticalBearing: 4000 * psf, lateralPerDepth: 400 * psfPerFoot, friction: 0.35, source },
  { class: 3, name: "sandy gravel and gravel", verticalBearing: 3000 * psf, lateralPerDepth: 200 * psfPerFoot, friction: 0.35, source },
  {
    class: 4,
    name: "sand, silty or clayey sand, silty or clayey gravel",
    verticalBearing: 2000 * psf,
    lateralPerDepth: 150 * psfPerFoot,
    friction: 0.25,
    source,
  },
  { class: 5, name: "clay, silt and their mixtures", verticalBearing: 1500 * psf, lateralPerDepth: 100 * psfPerFoot, cohesion: 130 * psf, source },
];

/** Group symbols of the Unified Soil Classification System (ASTM D2487) in each class. */
const symbols: Readonly<Record<string, SoilClass["class"]>> = {
  gw: 3, gp: 3,
  sw: 4, sp: 4, sm: 4, sc: 4, gm: 4, gc: 4,
  cl: 5, ml: 5, mh: 5, ch: 5,
};

/** Names of materials; those of rock beyond the table's own words follow the common geological grouping. */
const names: Readonly<Record<string, SoilClass["class"]>> = {
  "crystalline bedrock": 1, "crystalline rock": 1, granite: 1, diorite: 1, gabbro: 1,
  "sedimentary rock": 2, "foliated rock": 2, "sedimentary and foliated rock": 2, sandstone: 2, limestone: 2, dolomite: 2, conglomerate: 2,
  shale: 2, slate: 2, schist: 2, gneiss: 2,
  gravel: 3, "sandy gravel": 3, "gravel with sand": 3,
  sand: 4, "gravelly sand": 4, "silty sand": 4, "clayey sand": 4, "silty gravel": 4, "clayey gravel": 4,
  "sand with gravel": 4, "sand with silt": 4, "sand with clay": 4, "gravel with silt": 4, "gravel with clay": 4,
  clay: 5, "sandy clay": 5, "silty clay": 5, "gravelly clay": 5, silt: 5, "clayey silt": 5, "sandy silt": 5, "gravelly silt": 5,
  "lean clay": 5, "fat clay": 5, "elastic silt": 5,
};

/** Every text the lookup offers in a completion: symbols as the field writes them, then names. */
export const soilNames: readonly string[] = [...Object.keys(symbols).map((symbol) => symbol.toUpperCase()), ...Object.keys(names)];

/** A material that has no presumptive value, and why. */
export interface NoPresumptiveValue {
  readonly blocked: string;
}

export interface FoundSoil {
  readonly soil: SoilClass;
  /** The symbol or name that decided. */
  readonly by: string;
  /** Something the reader should know about this reading. */
  readonly note?: string;
}

const noValue = "the building code gives it no presumptive value (IBC 1806.2): state values from an investigation";
const blockers: readonly (readonly [RegExp, string])[] = [
  [/\b(?:made ground|fill(?:ed)?|backfill|rubble|debris)\b/, `fill: ${noValue}`],
  [/\b(?:ol|oh|pt|peat|muck|mud|organics?|topsoil|loam)\b/, `organic soil or mud: ${noValue}`],
  [/\b(?:expansive|swelling|shrink-swell|bentonite|gumbo)\b/, "expansive soil: presumptive values do not cover its movement (IBC 1808.6): state values from an investigation"],
  [/\b(?:collapsible|loess|liquefiable|sensitive|quick)\b/, `collapsible, sensitive or liquefiable soil: ${noValue}`],
  [/\b(?:weathered|decomposed|fractured|rotten)\b/, "weathered or broken rock is not a class of IBC Table 1806.2: state values from an investigation, or the soil class it behaves as"],
];

/** Words that say how a soil lies, which the table does not ask about. */
const conditions = /\b(?:very|medium|moderately|well[- ]graded|poorly[- ]graded|dense|stiff|hard|firm|sound|massive|compact|glacial|native|undisturbed|dry|damp|moist|fine|coarse|brown|gr[ae]y|red)\b,?/g;
const weak = /\b(?:loose|soft)\b/g;

/**
 * Class of a material by group symbol (`SM`, `SP-SM`), by name (`sandy gravel`, `crystalline bedrock`) or by `class 4`. A double
 * symbol takes the weaker class. Fill, organic and expansive materials have no presumptive value, whatever else the text says.
 */
export function findSoil(text: string): FoundSoil | NoPresumptiveValue | NotInCatalog {
  const shown = text.trim().slice(0, 40);
  const said = plainText(text.slice(0, 200));
  for (const [words, because] of blockers) if (words.test(said)) return { blocked: because };
  const isWeak = said.search(weak) >= 0;
  const bare = said.replace(conditions, " ").replace(weak, " ").replace(/\s+/g, " ").trim();
  const found = byClass(bare) ?? bySymbol(bare) ?? byName(bare);
  if (!found) {
    const nearest = /\brock|\bledge\b|bedrock/.test(bare) ? soilClasses.slice(0, 2).map(({ name }) => name) : nearestNames(bare, soilNames);
    return { problem: `"${shown}" is no soil or rock known here. Write a group symbol such as SM, or a class 1 to 5`, nearest };
  }
  const notes = [
    isWeak ? "presumptive values ask for no density or stiffness; a loose or soft soil may carry less" : "",
    found.by === "CH" || found.by === "MH" || found.by === "fat clay" ? "highly plastic: ask whether it is expansive (IBC 1803.5.3)" : "",
  ].filter((note) => note !== "");
  return notes.length === 0 ? found : { ...found, note: notes.join("; ") };
}

const classOf = (number: number): SoilClass => soilClasses[number - 1];

function byClass(text: string): FoundSoil | undefined {
  const read = /^(?:class ?)?([1-5])$/.exec(text);
  return read ? { soil: classOf(Number(read[1])), by: `class ${read[1]}` } : undefined;
}

function bySymbol(text: string): FoundSoil | undefined {
  // A symbol may stand in brackets behind the name, as in `silty sand (SM)`.
  const read = /(?:^|\()([a-z]{2}(?:[-/][a-z]{2})?)\)?$/.exec(text);
  if (!read) return undefined;
  const classes = read[1].split(/[-/]/).map((symbol) => symbols[symbol]);
  if (classes.some((found) => found === undefined)) return undefined;
  return { soil: classOf(Math.max(...classes)), by: read[1].toUpperCase() };
}

function byName(text: string): FoundSoil | undefined {
  const name = text.replace(/ bedrock$/, (end) => (text === "crystalline bedrock" ? end : ""));
  return Object.hasOwn(names, name) ? { soil: classOf(names[name]), by: name } : undefined;
}
