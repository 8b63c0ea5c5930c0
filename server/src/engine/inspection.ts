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
const hasBars = ({ foundation }: Support): boolean =>
  foundation !== undefined && ["bars", "bottom bars", "top bars", "dowels", "spiral"].some((name) => foundation.fields[name as "bars"] !== undefined);

const rows: readonly Row[] = [
  { what: "drilling of each pier: place, plumb, diameter, depth and what it stands on", extent: "continuous", clause: "IBC 2021 Table 1705.8", concerns: (support) => kindOf(support) === "pier" },
  { what: "ground below the footings and its depth, before concrete is placed", extent: "periodic", clause: "IBC 2021 Table 1705.6", concerns: (support) => hasConcrete(support) && kindOf(support) !== "pier" },
  { what: "placing and compacting of the fill that is counted", extent: "continuous", clause: "IBC 2021 Table 1705.6", concerns: ({ foundation }) => foundation?.fields.backfill?.value === "compacted and tested" },
  { what: "bars: size, place, laps and cover", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: hasBars },
  { what: "anchor rods, before and while concrete is placed round them", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: ({ base }) => base?.fields.anchors !== undefined },
  { what: "fresh concrete: samples for strength, slump and air, and how it is placed", extent: "continuous", clause: "IBC 2021 Table 1705.3", concerns: hasConcrete },
  { what: "curing of the concrete, its temperature and its strength before the columns are set", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: hasConcrete },
  { what: "dowels set in adhesive: product, hole, cleaning, depth; all the time where they point up or level and stay in tension", extent: "periodic", clause: "IBC 2021 Table 1705.3", concerns: ({ foundation }) => foundation?.fields.dowels?.value["set in"]?.value === "epoxy" },
  { what: "dowels set in cement grout: hole, cleaning, depth, grout and pull tests", extent: "periodic", clause: "IBC 2021 1705.1.1", concerns: ({ foundation }) => foundation?.fields.dowels !== undefined && foundation.fields.dowels.value["set in"]?.value !== "epoxy" },
  { what: "welds of the columns to base plates and tops", extent: "periodic", clause: "AISC 360-22 N5.4", concerns: ({ column }) => column?.fields["base weld"] !== undefined || column?.fields["top connection"]?.value.weld !== undefined },
  { what: "bolts at the column tops", extent: "periodic", clause: "AISC 360-22 N5.6", concerns: ({ column }) => column?.fields["top connection"]?.value.bolts !== undefined || /\bbolts?\b/iu.test(column?.fields["top connection"]?.value.detail?.value ?? "") },
];

/** What is to be inspected, in the order of the work; what the structure has not is left out. */
export function inspectionsOf({ supports }: Pick<Structure, "supports">): readonly Inspection[] {
  return rows.flatMap(({ concerns, ...row }) => {
    const at = supports.filter(concerns).map(({ name }) => name);
    return at.length === 0 ? [] : [{ ...row, at }];
  });
}
