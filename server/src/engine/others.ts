/** What the results rest on that only others can confirm, by what the notebook states. */
import type { Structure, Support } from "../project/model.js";

export interface ToConfirm {
  readonly who: string;
  readonly what: string;
}

const unique = (words: readonly string[]): readonly string[] => [...new Set(words)];

/** Names of entries that answer a question, each once. */
const namesOf = (supports: readonly Support[], name: (support: Support) => string | undefined): readonly string[] => unique(supports.flatMap((support) => name(support) ?? []));

const siteWords = [
  ["wind speed", "wind speed and exposure"],
  ["ground snow", "ground snow"],
  ["frost depth", "frost depth"],
  ["seismic design category", "seismic design category"],
] as const;

function ofOfficial({ site }: Structure): readonly ToConfirm[] {
  const stated = siteWords.flatMap(([field, words]) => (site[field] ? [words] : []));
  return [{ who: "the building official", what: ["adopted codes with their local amendments", ...stated].join(", ") }];
}

function ofGround(supports: readonly Support[]): readonly ToConfirm[] {
  const bond = namesOf(supports, ({ ground, foundation }) => (ground?.fields["dowel bond"] && foundation?.fields.dowels ? ground.name : undefined));
  const bare = namesOf(supports, ({ ground }) => (ground && !ground.fields.source ? ground.name : undefined));
  const known = namesOf(supports, ({ ground }) => (ground?.fields.source ? `${ground.name} (${ground.fields.source.value})` : undefined));
  return [
    ...(bare.length > 0 ? [{ who: "a geotechnical engineer", what: `the values of ${bare.join(", ")}, for which no source is named` }] : []),
    ...(known.length > 0 ? [{ who: "whoever looks into the open hole", what: `that the ground is the one described: ${known.join(", ")}` }] : []),
    ...(bond.length > 0 ? [{ who: "a geotechnical engineer, and pull tests", what: `the bond of the dowels in ${bond.join(", ")}` }] : []),
  ];
}

function ofMakers({ supports, roof }: Structure): readonly ToConfirm[] {
  const top = namesOf(supports, ({ column, name }) => {
    const given = column?.fields["top connection"]?.value;
    return given && (given.uplift || given.shear || given.moment) ? name : undefined;
  });
  const bracket = namesOf(supports, ({ column, name }) => (column?.fields.bracket?.value["rated moment"] ? name : undefined));
  const reactions = namesOf(supports, ({ column, foundation, name }) => {
    const fields = column?.fields ?? foundation?.fields;
    return fields?.reactions ?? fields?.combined ? name : undefined;
  });
  const slab = namesOf(supports, ({ foundation }) => (foundation?.fields["slab at grade"]?.value.capacity ? foundation.name : undefined));
  const beside = namesOf(supports, ({ foundation }) => foundation?.fields.neighbors && [...foundation.fields.neighbors.value.keys()].join(", "));
  return [
    ...(roof?.fields["rigid in plane"]?.value ? [{ who: "the designer of the roof", what: "that it is rigid in its plane and carries its loads to the columns" }] : []),
    ...(top.length > 0 ? [{ who: "the maker or designer of the connection", what: `the strengths stated at the column tops of ${top.join(", ")}` }] : []),
    ...(bracket.length > 0 ? [{ who: "the maker of the bracket", what: `the rated moment at ${bracket.join(", ")}` }] : []),
    ...(reactions.length > 0 ? [{ who: "whoever designed the structure above", what: `the reactions given for ${reactions.join(", ")}, their signs and their load level` }] : []),
    ...(slab.length > 0 ? [{ who: "the designer of the slab", what: `that it takes the push of ${slab.join(", ")}` }] : []),
    ...(beside.length > 0 ? [{ who: "the owners of what stands beside it", what: `where it is and what it carries: ${beside.join(", ")}` }] : []),
  ];
}

/** What others must confirm, with who they are. */
export const toConfirm = (structure: Structure): readonly ToConfirm[] => [...ofOfficial(structure), ...ofGround(structure.supports), ...ofMakers(structure)];
