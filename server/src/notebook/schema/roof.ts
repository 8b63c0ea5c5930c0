/** The roof and the loads added to it. */
import { deadWeightNames } from "../../catalog/dead-weights.js";
import { seismicSystemNames } from "../../catalog/seismic-systems.js";
import { choice, named, number, point, quantity, record, reference, yesNo } from "../fields.js";
import { layerShortForm } from "../short-forms.js";
import { practice } from "./shared.js";

const layers = named(
  "The layers the roof's dead load is built up from, framing among them, each under a name; in place of the one number `dead`.",
  record(
    "One layer of the roof, by its material or its weight over the sloped surface.",
    {
      material: choice(deadWeightNames, "Material with a usual weight."),
      weight: quantity("pressure", "Weight over the surface; counts before the material's usual weight.", { bounds: "zero or more" }),
      light: quantity("pressure", "The least it may weigh; it holds the roof down.", { bounds: "zero or more" }),
      heavy: quantity("pressure", "The most it may weigh.", { bounds: "zero or more" }),
      thickness: quantity("length", "Thickness, for a material with a weight per thickness."),
    },
    layerShortForm,
  ),
);

const swayLimits = ["H/50", "H/60", "H/75", "H/100", "H/120", "H/150", "H/200", "H/250", "H/300", "H/400", "H/500", "H/600"] as const;

const shareOfOpening = (edge: string, what: string) => quantity("ratio", `Share of the opening below the ${edge} edge that ${what}.`, { bounds: "zero or more" });

const sharesOf = (what: string) => ({
  "north edge": shareOfOpening("north", what),
  "east edge": shareOfOpening("east", what),
  "south edge": shareOfOpening("south", what),
  "west edge": shareOfOpening("west", what),
});

export const roof = record("The roof, taken as rigid in its plane.", {
  shape: choice(["monoslope", "pitched", "troughed"], "Shape of the roof: one slope, two halves rising to a ridge, or two halves falling to a valley.", { also: { gable: "pitched", gabled: "pitched", butterfly: "troughed" } }),
  slope: quantity("slope", "Slope of the roof, or of each half of it, rise in run.", { bounds: "zero or more" }),
  length: quantity("distance", "Length of the roof in plan, along x (east)."),
  width: quantity("distance", "Width of the roof in plan, along y (north)."),
  "low edge": choice(["north", "east", "south", "west"], "The edge a monoslope roof slopes down to. Plan axes: x east, y north, origin at the roof's southwest corner."),
  ridge: choice(["along x", "along y"], "The way the ridge of a pitched roof runs, at the middle of the plan: along x (east to west) or along y (south to north)."),
  valley: choice(["along x", "along y"], "The way the valley of a troughed roof runs, at the middle of the plan: along x (east to west) or along y (south to north)."),
  "mean height": quantity("distance", "Mean height of the roof above grade."),
  dead: quantity("pressure", "Dead load of the roof on plan, all layers and framing.", { bounds: "zero or more" }),
  "light dead": quantity("pressure", "The least the roof's dead load may be, on plan; it holds the roof down. Left out: the dead load.", { bounds: "zero or more" }),
  "heavy dead": quantity("pressure", "The most the roof's dead load may be, on plan; it presses and shakes. Left out: the dead load.", { bounds: "zero or more" }),
  layers,
  live: quantity("pressure", "Roof live load before its reduction for area and slope; more or less than 20 psf is taken as it is.", {
    bounds: "zero or more",
    assumed: { text: "20 psf", source: "usual roofs; ASCE 7-22 Table 4.3-1, the same in 7-16 and 7-10" },
  }),
  slippery: yesNo("Whether the roof is slippery (metal, slate, smooth membrane) and nothing below keeps snow from sliding off.", {
    assumed: { text: "no", source: "the safe side; ASCE 7-22 7.4" },
  }),
  "simple rafters": yesNo("Whether rafters of one depth span simply from ridge to eave of a pitched roof, for unbalanced snow (ASCE 7-22 7.6.1)."),
  "earthquake system": choice(seismicSystemNames, "What resists earthquakes, with its coefficient R (ASCE 7-22 Table 12.2-1)."),
  "redundancy factor": number("Redundancy factor of ASCE 7-22 12.3.4. Left out: 1.0 in categories B and C, 1.3 in D to F.", { least: 1, most: 1.3 }),
  "holds water": record("Water on a roof that can hold it when its drains are blocked; left out where rain runs off over the edge.", {
    "static head": quantity("length", "Depth of water up to the overflow.", { bounds: "zero or more" }),
    "hydraulic head": quantity("length", "Depth above the overflow that the rain of the place needs to flow off.", { bounds: "zero or more" }),
    "ponding head": quantity("length", "Depth added as the roof bends under the water; asked for by ASCE 7-22.", { bounds: "zero or more" }),
  }),
  "higher roof": record("A higher roof that touches an edge of this one, for drifts and sliding snow.", {
    edge: choice(["north", "east", "south", "west"], "The edge of this roof it stands along."),
    "height above": quantity("distance", "From this roof up to the eave of the higher one."),
    "length upwind": quantity("distance", "Length of the higher roof away from this one, from which snow is blown."),
    "sliding length": quantity("distance", "Plan length of the higher roof, eave to ridge, that slopes down to this one; 0 ft where none does.", { bounds: "zero or more" }),
  }),
  "flow below": choice(["clear", "obstructed", "either"], "Whether wind can flow below the roof: clear where not more than half the opening is blocked (ASCE 7-22 Figure 27.3-4)."),
  "edge depth": quantity("distance", "Depth of the roof edge seen from the side, for the least wind force.", {
    bounds: "zero or more",
    assumed: { text: "12 in", source: practice },
    units: ["in", "mm"],
  }),
  blocked: record("What stands in the opening below the roof and blocks the wind.", {
    goods: record("The share of the opening below each edge that stored goods, vehicles or the like close, at the worst. Left out: none.", sharesOf("stored goods, vehicles or the like close, at the worst")),
    walls: record("The share of the opening below each edge that walls close. A wall less than 80 % open makes it a building that is not open, whose wind is found as the worst of several kinds. Left out: none.", {
      ...sharesOf("walls close"),
      "carried by": choice(["columns", "footing and roof", "themselves"], "What carries the wind on the walls: the columns nearest to them, along their height; a footing below and the edge of the roof above, half each; or the walls themselves, standing free of the roof.", {
        assumed: { text: "columns", source: "the safe side; common practice, no source" },
      }),
    }),
    building: record("A building close to one edge of the roof.", {
      edge: choice(["north", "east", "south", "west"], "The edge it stands before."),
      gap: quantity("distance", "Gap between the roof and the building; a roof without one is fastened to it, and its wind is not covered.", { bounds: "zero or more", units: ["in", "ft", "mm"] }),
      height: quantity("distance", "Height of the building above grade."),
    }),
  }),
  fascia: record("A solid band that hangs from or stands on the edge of the roof, a fascia or a parapet, which the wind meets like a sign.", {
    depth: quantity("distance", "Depth of the fascia on every edge that states no depth of its own.", { bounds: "zero or more", units: ["ft", "in", "mm"] }),
    "north edge": quantity("distance", "Depth of the fascia on the north edge.", { bounds: "zero or more", units: ["ft", "in", "mm"] }),
    "east edge": quantity("distance", "Depth of the fascia on the east edge.", { bounds: "zero or more", units: ["ft", "in", "mm"] }),
    "south edge": quantity("distance", "Depth of the fascia on the south edge.", { bounds: "zero or more", units: ["ft", "in", "mm"] }),
    "west edge": quantity("distance", "Depth of the fascia on the west edge.", { bounds: "zero or more", units: ["ft", "in", "mm"] }),
  }),
  "in the wind": named(
    "Beams, braces and open frames below the roof that the wind meets, each under a name of its own; the columns are counted without being named here.",
    record("A beam, a brace or a frame in the wind.", {
      area: quantity("planArea", "Solid area the wind sees, of all that are alike.", { units: ["ft²", "m²"] }),
      faces: choice(["east and west", "north and south"], "The winds that meet it broadside."),
      height: quantity("distance", "Height of its middle above grade."),
      solidity: quantity("ratio", "Solid part of the outline it fills: of a single beam next to nothing, of a lattice more.", {
        assumed: { text: "0.05", source: "the safe side: a single flat member has the highest coefficient; ASCE 7-22 Figure 29.4-2" },
      }),
      diameter: quantity("length", "Diameter, where the members are round.", { units: ["in", "mm"] }),
    }),
  ),
  finish: choice(["bare", "ceiling", "glass or stone"], "What at the roof could break when it sways; it gives the limit of sway where none is stated: H/100 bare, H/200 with a ceiling, H/400 with glass or stone (common practice).", {
    assumed: { text: "bare", source: "nothing brittle at the roof, so that H/100 is the limit of sway; common practice, no source" },
  }),
  "sway limit": choice(swayLimits, "Largest sway of a column top under the service wind, as a part of the column's height H."),
  "sway limit at strength": choice(swayLimits, "The same under the strength combinations; judged only where it is stated."),
  "rigid in plane": choice(["yes", "no", "envelope"], "Whether deck or bracing makes the roof act as one plate that shares side loads between the columns. Open purlins do not: each column then takes what comes to it by tributary width. envelope takes the worse of both. Weight, snow and lift come to the columns by the spans between them in any case.", {
    also: { true: "yes", false: "no", either: "envelope" },
    assumed: { text: "yes", source: "to be shown: a fastened deck or bracing in the plane of the roof" },
  }),
});

export const loads = named(
  "Loads added to those of the roof, each under a name. One that presses or lifts joins the loads of its type; wind from an edge joins the wind from there; other wind and earthquakes are cases of their own.",
  record("One added load, at the roof or at column tops.", {
    type: choice(["dead", "live", "roof live", "snow", "rain", "wind", "earthquake"], "Type of the load, for its factors in the combinations."),
    column: reference("columns", "The column or line of columns it acts at, at the top of each; left out: it acts on the roof."),
    number: number("Which column of the line, counted from its first; left out: each of them.", { integer: true, least: 1, most: 200 }),
    place: point("Place on the roof; left out: the middle."),
    down: quantity("force", "Force pressing down.", { bounds: "zero or more", units: ["lb", "kip", "kN"] }),
    up: quantity("force", "Force lifting.", { bounds: "zero or more", units: ["lb", "kip", "kN"] }),
    "push x": quantity("force", "Sideways force toward the east; negative toward the west.", { bounds: "any", units: ["lb", "kip", "kN"] }),
    "push y": quantity("force", "Sideways force toward the north; negative toward the south.", { bounds: "any", units: ["lb", "kip", "kN"] }),
    pressure: quantity("pressure", "Pressure on plan over all of the roof, down; negative up.", { bounds: "any" }),
    from: choice(["north", "east", "south", "west"], "Of wind, the edge it comes from."),
  }),
);
