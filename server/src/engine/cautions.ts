/** The cautions that go wherever results leave the editor: those that hold always, and those a structure gives cause for. */
import { readQuantity } from "../units/parse.js";
import type { Structure, Support } from "../project/model.js";
import { hasAdhesiveDowels, hasAdhesiveRods, inspectionsOf } from "./inspection.js";
import { toConfirm } from "./others.js";

/** They hold for every structure, and come first. */
export const cautions: readonly string[] = [
  "Preliminary. Not for construction until a licensed design professional of the project's jurisdiction has reviewed and sealed it; the local code and its amendments come first, and the building official decides.",
  "The results rest on the inputs shown. Defaults are listed as assumptions; limit states listed as not covered have not been looked at.",
  "Soil and rock values are presumptive unless a report is named. Bearing, water, frost and rock are to be verified in the open hole before concrete is placed.",
  "Existing walls, slabs, pools and footings carry nothing until somebody has shown what they can.",
  "Members, connections and bracing that no check names, and anything that ties the structure to a house, lie outside these results.",
];

const read = readQuantity("5 ft", "distance");
/** Holes deeper than this are shored, sloped or entered by nobody: 29 CFR 1926.652(a)(1), m. */
const deepHole = read.ok ? read.value : Number.NaN;

interface Cause {
  readonly text: string;
  readonly concerns: (support: Support, structure: Structure) => boolean;
}

const freezes = ({ site }: Support): boolean => (site["frost depth"]?.value ?? 0) > 0;

const causes: readonly Cause[] = [
  {
    text: "Brace the columns both ways until the roof is fixed to all of them. Each column has at least four rods and holds 300 lb at its top, 18 in out from its face, before it is let go; a competent person says whether guys are needed (29 CFR 1926.755(a)). Wind on the bare frame is not part of the results: stop work above the site's wind limit.",
    concerns: ({ column, base }) => column !== undefined && base !== undefined,
  },
  { text: "Before the columns are set, the erector has it in writing that the concrete has three quarters of its strength, or enough for the erection (29 CFR 1926.752(a)).", concerns: ({ base }) => base !== undefined },
  { text: "No rod is cut, bent, replaced or welded, and no hole burned, without the written word of the engineer of record, and the erector has it in writing before the steel goes up (29 CFR 1926.755(b)).", concerns: ({ base }) => base?.fields.anchors !== undefined },
  { text: "Leveling nuts carry erection loads only as far as the engineer allows; grout before the structure is loaded.", concerns: ({ base }) => base?.fields["leveling nuts"]?.value === true && (base.fields.grout?.value ?? 0) > 0 },
  { text: "Plates that stand on their nuts without grout are tightened in a set way and looked at again after the first months.", concerns: ({ base }) => base?.fields["leveling nuts"]?.value === true && base.fields.grout?.value === 0 },
  { text: "Do not place concrete on frozen ground, and keep frost from it until it has set and from below it until the structure is closed in.", concerns: (support) => support.foundation !== undefined && freezes(support) },
  { text: "Locate buried lines before digging. Nobody enters a hole deeper than 5 ft that is not shored or sloped (29 CFR 1926.652); cover open holes.", concerns: ({ foundation }) => (foundation?.fields.depth?.value ?? 0) > deepHole },
  { text: "Adhesive for dowels and rods is a product approved for this rock or concrete, wet or dry and as cold as it will be; the printed instructions govern the hole, its cleaning and the cure. Installers are certified where dowels or rods point up or level and stay in tension (ACI 318-19 26.7.2, from memory).", concerns: (support) => hasAdhesiveDowels(support) || hasAdhesiveRods(support) },
  { text: "Bond to the rock has no value from a table: prove it by pull tests on the first dowels and on some of the rest, as the engineer says.", concerns: ({ foundation }) => foundation?.fields.dowels !== undefined },
  { text: "Water stands above an underside: keep the hole dry or place the concrete from the bottom up, and let nobody fill a hole that has caved in.", concerns: ({ foundation, ground }) => (ground?.fields["water table"]?.value ?? Number.POSITIVE_INFINITY) < (foundation?.fields.depth?.value ?? 0) },
  { text: "Chlorides of sea or pool eat zinc, rods and bars: coat over zinc, look at the feet of the columns every year, and ask before stainless steel is set beside zinc.", concerns: ({ site }) => site.air?.value === "salt spray" || site.air?.value === "pool" },
  { text: "Anchors, ties and welds in this seismic design category have rules of detailing beyond strength; the engineer of record sees to them.", concerns: ({ site }) => ["C", "D", "E", "F"].includes(site["seismic design category"]?.value ?? "") },
];

/** Columns in one straight line stand without a second way for the load, should one of them fail. */
function inOneLine(structure: Structure): boolean {
  if (!structure.roof) return false;
  const places = structure.supports.filter(({ column }) => column !== undefined).flatMap((support) => support.places);
  return places.length > 1 && [places.map(({ x }) => x), places.map(({ y }) => y)].some((along) => new Set(along.map((at) => at.toFixed(3))).size === 1);
}

function ofStructure(structure: Structure): readonly string[] {
  const inspections = inspectionsOf(structure);
  const confirm = toConfirm(structure);
  const all = structure.supports.length;
  const where = (at: readonly string[]): string => (at.length === all ? "" : ` (${at.join(", ")})`);
  return [
    ...causes.filter(({ concerns }) => structure.supports.some((support) => concerns(support, structure))).map(({ text }) => text),
    ...(inOneLine(structure) ? ["The columns stand in one line: should one of them fail, there is no second way for the load."] : []),
    ...confirm.map(({ who, what }) => `To be confirmed by ${who}: ${what}.`),
    ...(inspections.length > 0
      ? [
          "Special inspections follow, with whether the inspector stands by all the time (continuous) or comes at set times (periodic). The building official may except small accessory structures and isolated footings, and often does (IBC 2021 1704.2, 1705.3; from memory).",
          ...inspections.map(({ what, extent, clause, at }) => `Special inspection, ${extent}${where(at)}: ${what} [${clause}].`),
        ]
      : []),
  ];
}

/** All cautions for these structures: first those that hold always, then what each gives cause for, each once. */
export const cautionsFor = (structures: readonly Structure[]): readonly string[] => [...new Set([...cautions, ...structures.flatMap(ofStructure)])];
