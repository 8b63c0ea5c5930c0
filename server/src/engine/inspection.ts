/** The special inspections a structure calls for, by what it has. IBC 2021 chapter 17 (from memory); the building official decides. */
import type { Structure, Support } from "../project/model.js";

export interface Inspection {
  readonly what: string;
  /** Whether the inspector stands by all the time or comes at set times. */
  readonly extent: "continuous" | "periodic";
  /** Clause with its edition. */
  readonly clause: string;
  /** Names of the supports it concerns. */
  readonly at: readonly string[];
}

interface Row extends Omit<Inspection, "at"> {
  readonly concerns: (support: Support) => boolean;
}

const kindOf = ({ foundation }: Support) => foundation?.fields.kind?.value;
const hasConcrete = ({ foundation }: Support): boolean => foundation !== undefined;
/** Fields of a foundation that are bars of its own. */
const barFields = ["bars", "bottom bars", "top bars", "dowels", "spiral", "ties", "top ties", "hairpins", "stem bars", "joint dowels"] as const;
const stripFields = ["bottom bars", "top bars", "long bars"] as const;
const hasBars = ({ foundation }: Support): boolean =>
  foundation !== undefined && (barFields.some((name) => foundation.fields[name] !== undefined) || stripFields.some((name) => foundation.fields.footing?.value[name] !== undefined));

/** Rods in drilled holes filled with adhesive. */
export const hasAdhesiveRods = ({ base }: Support): boolean => base?.fields.anchors?.value.end?.value === "set in adhesive";
/** Dowels into rock set in adhesive. */
export const hasAdhesiveDowels = ({ foundation }: Support): boolean => foundation?.fields.dowels?.value["set in"]?.value === "epoxy";

const rows: readonly Row[] = [
  { what: "drilling of each pier: place, plumb, diameter, depth and what it stands on", extent: "continuous", clause: "IBC 2021 Table 1705.8", concerns: (support) => kindOf(support) === "pier" },
  { what: "ground below the footings and its depth, before concrete is placed", extent: "periodic", clause: "IBC 2021 Table 1705.6", concerns: (support) => hasConcrete(support) && kindOf(support) !== "pier" },
  { what: "placing and compacting of the fill that is counted", extent: "continuous", clause: "IBC 2021 Table 1705.6", concerns: ({ foundation }) => foundation?.fields.backfill?.value === "compacted and tested" },
  { what: "bars: size, place, laps and cover", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: hasBars },
  { what: "anchor rods, before and while concrete is placed round them", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: (support) => support.base?.fields.anchors !== undefined && !hasAdhesiveRods(support) },
  { what: "fresh concrete: samples for strength, slump and air, and how it is placed", extent: "continuous", clause: "IBC 2021 Table 1705.3", concerns: hasConcrete },
  { what: "curing of the concrete, its temperature and its strength before the columns are set", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: hasConcrete },
  { what: "anchor rods set in adhesive: product, hole, cleaning, depth, edge distance; continuous where they point up or level and stay in tension", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: hasAdhesiveRods },
  { what: "dowels set in adhesive: product, hole, cleaning, depth; continuous where they point up or level and stay in tension", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: hasAdhesiveDowels },
  { what: "dowels set in cement grout: hole, cleaning, depth, grout and pull tests", extent: "periodic", clause: "IBC 2021 1705.1.1", concerns: ({ foundation }) => foundation?.fields.dowels !== undefined && foundation.fields.dowels.value["set in"]?.value !== "epoxy" },
  { what: "welds of the columns to base plates and tops", extent: "periodic", clause: "AISC 360-22 N5.4", concerns: ({ column }) => column?.fields["base weld"] !== undefined || column?.fields["top connection"]?.value.weld !== undefined },
  { what: "bolts at the column tops", extent: "periodic", clause: "AISC 360-22 N5.6", concerns: ({ column }) => column?.fields["top connection"]?.value.bolts !== undefined || /\bbolts?\b/iu.test(column?.fields["top connection"]?.value.detail?.value ?? "") },
  { what: "grout below the base plates: its mix, that it fills the whole gap, and its cure", extent: "periodic", clause: "common practice, no source", concerns: ({ base }) => (base?.fields.grout?.value ?? 0) > 0 },
  { what: "zinc and coating of steel and rods, and its repair where erection scraped it", extent: "periodic", clause: "common practice, no source", concerns: ({ site, column, base }) => (column ?? base) !== undefined && (site.air?.value === "salt spray" || site.air?.value === "pool") },
];

/** What is to be inspected, in the order of the work; what the structure has not is left out. */
export function inspectionsOf({ supports }: Pick<Structure, "supports">): readonly Inspection[] {
  return rows.flatMap(({ concerns, ...row }) => {
    const at = supports.filter(concerns).map(({ name }) => name);
    return at.length === 0 ? [] : [{ ...row, at }];
  });
}
