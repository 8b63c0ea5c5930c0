/** What is worth knowing about the loads and is no finding: of the editions named, and of columns that state their own reactions. */
import { adoptedStandards } from "../catalog/adopted-standards.js";
import type { Codes, Named, Sourced } from "../project/model.js";
import type { KindName } from "../units/kinds.js";
import { mostOverMean } from "../mechanics/roof-spans.js";
import { isByHand, typeOfName } from "./by-hand.js";
import { roofSupports, type LoadedStructure } from "./roof-inputs.js";
import { listed } from "./wanted.js";

/** Shows a quantity in the notebook's units. */
export type Show = (value: number, kind: KindName) => string;

/** Something worth knowing about the loads that is no finding. */
export interface LoadInformation {
  readonly message: (show: Show) => string;
  readonly at: Sourced<unknown> | Named<unknown>;
}

/** Said where the code named refers to another edition of the loads or of concrete than the notebook; the steel goes along. */
function editionRemark({ building, loads, concrete, steel }: Codes): LoadInformation | undefined {
  const adopted = building && adoptedStandards[building.value];
  if (!adopted || !loads || (loads.value === adopted.loads && (!concrete || concrete.value === adopted.concrete))) return undefined;
  const pairs = ([[loads, adopted.loads], [concrete, adopted.concrete], [steel, adopted.steel]] as const).filter(([named, own]) => named && named.value !== own);
  const named = listed(pairs.flatMap(([one]) => (one ? [one.value] : [])));
  const text = `${building.value} adopts ${listed(pairs.map(([, own]) => own))}, and this notebook goes by ${named}. The building official decides whether it may: ask before the drawings are made, or name the editions the code adopts.`;
  return { at: building.assumed && !loads.assumed ? loads : building, message: () => text };
}

/** Said of each line of columns under a roof whose own reactions stand in place of the roof's loads. */
function byHandRemarks(structure: LoadedStructure): readonly LoadInformation[] {
  if (!structure.roof) return [];
  const stated = structure.supports.filter(({ column }) => column !== undefined && isByHand(column.fields));
  if (stated.length === 0) return [];
  const others = roofSupports(structure).length > 0;
  return stated.flatMap(({ name, column }): readonly LoadInformation[] => {
    const at = column?.fields.reactions ?? column?.fields.combined;
    const rest = others ? "The roof is carried by the other columns alone, as if these were not there" : "No column is left to carry the roof's loads, which reach no foundation here";
    return at ? [{ at, message: () => `The reactions stated for ${name} stand in place of the roof's loads. ${rest}. Take them out to have the roof's loads followed down to ${name}.` }] : [];
  });
}

/** Said of stated reactions with an earthquake among them, where the vertical part of it cannot be found. */
function verticalRemarks(structure: LoadedStructure): readonly LoadInformation[] {
  const { site } = structure;
  const category = site["seismic design category"];
  if (!category || category.value === "A" || category.value === "B" || site["short-period acceleration"]) return [];
  return structure.supports.flatMap(({ name, column, foundation }): readonly LoadInformation[] => {
    const at = (column?.fields ?? foundation?.fields)?.reactions;
    if (!at || ![...at.value.keys()].some((entry) => typeOfName(entry) === "E")) return [];
    return [{ at, message: () => `An earthquake is among the reactions stated for ${name}, and its vertical part, 0.2 S_DS D, is not: state short-period acceleration to have it pressed and lifted beside them.` }];
  });
}

/** Said where the depth of the roof's edge is stated and it is not said whether a solid band closes it, which the wind meets in every case. */
function edgeRemarks(structure: LoadedStructure): readonly LoadInformation[] {
  const { roof } = structure;
  const depth = roof?.fields["edge depth"];
  if (!roof || !depth || depth.assumed || depth.value <= 0 || roof.fields.fascia || roofSupports(structure).length === 0) return [];
  return [
    {
      at: depth,
      message: (show) =>
        `The roof's edge, ${show(depth.value, "distance")} deep, counts in the least wind force alone. A solid band there, a fascia or a deep channel, is met by the wind in every case and can push as much as the whole roof: describe it under fascia, or state its depth as 0 in where the edge is open.`,
    },
  ];
}

/** From here on a column's part of a roof on one line is worth a word, over the mean of all. */
const worthAWord = 1.05;

/** Said of a roof on one line of columns whose spans bring more to one of them than an equal part. */
function oneLineRemarks(structure: LoadedStructure): readonly LoadInformation[] {
  const { roof } = structure;
  const { length, width, "rigid in plane": rigid } = roof?.fields ?? {};
  if (!roof || !length || !width || (rigid?.value ?? "yes") !== "yes") return [];
  const most = mostOverMean(roofSupports(structure).flatMap(({ places }) => places), { x1: 0, x2: length.value, y1: 0, y2: width.value });
  if (most === undefined || !(most > worthAWord)) return [];
  return [
    {
      at: rigid ?? roof,
      message: (show) =>
        `The roof stands on one line of columns. What turns it about that line is shared alike among them, as by a roof that does not twist; by its spans one of them takes ${show(most, "number")} times the mean. State rigid in plane: envelope to have the worse of both, unless the roof is stiff against twisting.`,
    },
  ];
}

export function generalRemarks(structure: LoadedStructure): readonly LoadInformation[] {
  const edition = editionRemark(structure.codes);
  return [...(edition ? [edition] : []), ...byHandRemarks(structure), ...verticalRemarks(structure), ...edgeRemarks(structure), ...oneLineRemarks(structure)];
}
