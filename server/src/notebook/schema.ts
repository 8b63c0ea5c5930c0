/** The notebook format, as data. Every field says what it is; a default says what it is taken from. */
import { deadWeightNames } from "../catalog/dead-weights.js";
import { seismicSystemNames } from "../catalog/seismic-systems.js";
import { bar, choice, list, named, number, point, quantity, record, reference, section, text, yesNo } from "./fields.js";
import { anchorsShortForm, barsShortForm, layerShortForm, plateShortForm, spacedShortForm, stripShortForm } from "./short-forms.js";

export const newestVersion = 1;

const practice = "common practice, no source";

const project = record("What the job is called and how its results are shown.", {
  name: text("Name of the job, as it heads the summary."),
  stage: text("Stage the drawings are at, for the summary's heading."),
  units: choice(["US", "SI"], "Units results are shown in; inputs may mix both.", {
    assumed: { text: "US", source: "the codes named are US codes" },
  }),
  notes: text("Free text for the summary."),
  "near from": number("Demand over capacity from which a check that holds is called near.", {
    least: 0,
    most: 1,
    assumed: { text: "0.95", source: practice },
  }),
});

const codes = record("The editions the job is checked by.", {
  building: choice(["IBC 2021"], "Building code.", { assumed: { text: "IBC 2021", source: "the edition covered" } }),
  loads: choice(["ASCE 7-10", "ASCE 7-16", "ASCE 7-22"], "Load standard; the wind speed and the snow load are those of its own maps.", { assumed: { text: "ASCE 7-22", source: "the newest edition covered" } }),
  "alternative combinations": yesNo(
    "Whether soil checks take the alternative basic allowable-stress combinations of IBC 2021 1605.2 in place of those of ASCE 7: two thirds of the least dead load against wind, and no rise of a soil pressure by a third beside them. Steel, concrete and anchors always take strength combinations, soil always allowable-stress ones.",
    { assumed: { text: "no", source: "the basic combinations of ASCE 7-22 2.4; the alternative ones only where asked for" } },
  ),
  concrete: choice(["ACI 318-19"], "Concrete and anchor standard.", { assumed: { text: "ACI 318-19", source: "the edition covered" } }),
  steel: choice(["AISC 360-22"], "Steel standard.", { assumed: { text: "AISC 360-22", source: "the edition covered" } }),
});

const site = record("The criteria of the place.", {
  "risk category": choice(["I", "II", "III", "IV"], "Risk category of the structure (ASCE 7-22 Table 1.5-1); the wind speed belongs to it."),
  "wind speed": quantity("speed", "Basic wind speed V: 3-second gust at 33 ft in open country, from the map of the risk category.", { units: ["mph", "m/s"] }),
  "service wind": choice(["10 years", "25 years", "50 years", "100 years"], "How often the wind returns, on average, under which the sway of the columns is judged.", {
    assumed: { text: "10 years", source: "common for sway where nothing brittle depends on it; ASCE 7-22 commentary CC.2.2 (from memory)" },
  }),
  "service wind speed": quantity("speed", "Wind speed of that return period from a map, in place of the one reckoned from the basic wind speed. Near a hurricane coast it is needed.", { units: ["mph", "m/s"] }),
  exposure: choice(["B", "C", "D"], "Exposure category: B built-up or wooded, C open, D along open water.", { also: { b: "B", c: "C", d: "D" } }),
  "topographic factor": number("Kzt of ASCE 7-22 Section 26.8, for a hill, ridge or escarpment.", {
    least: 1,
    most: 4,
    assumed: { text: "1.0", source: "flat ground; ASCE 7-22 Section 26.8.1" },
  }),
  hill: record("A ridge, an escarpment or a single hill the structure stands on, in place of a topographic factor.", {
    shape: choice(["ridge", "escarpment", "hill"], "A long ridge, an escarpment with flat ground behind its crest, or a single hill round in plan."),
    height: quantity("distance", "Height of the crest above the ground upwind.", { units: ["ft", "m"] }),
    "half length": quantity("distance", "Level distance upwind from the crest to where the ground is at half the height.", { units: ["ft", "m"] }),
    distance: quantity("distance", "Level distance from the crest to the structure.", { bounds: "zero or more", units: ["ft", "m"] }),
    side: choice(["upwind", "downwind"], "The side of the crest the structure stands on, seen by the wind that crosses the hill."),
  }),
  "ground elevation": quantity("distance", "Height of the ground above sea level, for the air density factor Ke.", {
    bounds: "any",
    assumed: { text: "0 ft", source: "Ke = 1.0 is always permitted; ASCE 7-22 Section 26.9" },
  }),
  "ground snow": quantity("pressure", "Ground snow load pg, from the map of the load standard: in ASCE 7-22 that of the risk category, at strength level. 0 psf where none falls.", { bounds: "zero or more" }),
  "snow exposure": choice(["fully exposed", "partially exposed", "sheltered"], "How the wind reaches the roof in winter: fully exposed with no shelter, sheltered tight among conifers or higher roofs, for the factor Ce.", {
    assumed: { text: "partially exposed", source: "roofs neither wholly without shelter nor tight among trees; ASCE 7-22 Table 7.3-1" },
  }),
  "winter wind": number("Winter wind parameter W2 of ASCE 7-22, from its map, for drifting snow.", { least: 0.1, most: 1 }),
  "frost depth": quantity("distance", "Depth the ground freezes to, from the building official.", { bounds: "zero or more", units: ["in", "mm"] }),
  "seismic design category": choice(["A", "B", "C", "D", "E", "F"], "Seismic design category (ASCE 7-22 Section 11.6)."),
  "short-period acceleration": number("Design spectral acceleration SDS at short periods, as a part of gravity, from the map and the site class (ASCE 7-22 11.4).", { least: 0, most: 5 }),
  "one-second acceleration": number("Design spectral acceleration SD1 at one second, as a part of gravity.", { least: 0, most: 5 }),
  "mapped one-second acceleration": number("Mapped acceleration S1 at one second, as a part of gravity, for the least force near a great fault; asked for in categories D to F.", { least: 0, most: 5 }),
  air: choice(["dry", "humid", "salt spray", "pool"], "Air the steel stands in, for corrosion rules."),
});

const ground = named(
  "The kinds of ground the supports stand on.",
  record("One kind of ground.", {
    kind: choice(["soil", "rock"], "Soil or rock."),
    class: text("Soil symbol (SM, GP, CL ...) or rock class (crystalline bedrock, sedimentary rock), read against IBC 2021 Table 1806.2."),
    source: text("Where the values come from, for example the report's number; carried to the summary."),
    bearing: quantity("pressure", "Allowable bearing pressure."),
    "lateral bearing": quantity("pressurePerDepth", "Allowable lateral bearing pressure per foot of depth.", { units: ["psf/ft", "kPa/m"] }),
    "isolated poles": yesNo("Whether half an inch of movement at grade does no harm, so that the lateral bearing may be doubled (IBC 2021 1806.3.4).", {
      assumed: { text: "no", source: "IBC 2021 1806.3.4 allows the doubling only where 1/2 in. of movement does no harm" },
    }),
    "side resistance": quantity("pressure", "Allowable side resistance of a pier in uplift. Left out: one sixth of the presumptive bearing, at most 500 psf (IBC 2021 1810.3.3.1.4)."),
    "unit weight": quantity("unitWeight", "Unit weight of the soil or rock."),
    "water table": quantity("distance", "Depth of the water below grade.", { bounds: "zero or more" }),
    condition: choice(["sound", "weathered", "fractured"], "Condition of the rock at the bearing surface."),
    drained: yesNo("Whether water drains from the rock surface under the footing."),
    "dowel bond": quantity("stress", "Ultimate bond between grout or adhesive and rock. It has no default: ask the geotechnical engineer and prove it by pull tests."),
    "bond safety": number("Factor of safety on rock bond and on the rock cone.", { least: 1.5, most: 5, assumed: { text: "3", source: "from memory: working factor 2 to 3 for rock anchors" } }),
    "cone angle": quantity("angle", "Half apex angle of the rock cone: 45° in sound rock, 30° in fractured rock.", { units: ["deg"] }),
  }),
);

const given = named("Values named once and used in any field as `= clear height + 6 in`.", record("A named value.", {}));

const forcesFields = {
  down: quantity("force", "Force pressing down on the support.", { bounds: "zero or more", units: ["kip", "lb", "kN"] }),
  up: quantity("force", "Force lifting the support.", { bounds: "zero or more", units: ["kip", "lb", "kN"] }),
  "shear x": quantity("force", "Horizontal force on the support toward the east.", { bounds: "any", units: ["kip", "lb", "kN"] }),
  "shear y": quantity("force", "Horizontal force on the support toward the north.", { bounds: "any", units: ["kip", "lb", "kN"] }),
  "moment x": quantity("moment", "Moment about the east axis, right-handed: a push to the north gives a negative one.", { bounds: "any", units: ["kip-ft", "kN-m"] }),
  "moment y": quantity("moment", "Moment about the north axis, right-handed: a push to the east gives a positive one.", { bounds: "any", units: ["kip-ft", "kN-m"] }),
};

const reactions = named(
  "Unfactored reactions by load case, each named `dead`, `roof live`, `snow`, `wind ...` or `earthquake ...`, at the column base. Every wind entry is its own case.",
  record("The reaction of one load case at the column base.", forcesFields),
);
const combined = named(
  "Reactions already combined, each under a name of its own.",
  record("One combined reaction at the column base.", { level: choice(["strength", "allowable"], "Load level the numbers are at."), ...forcesFields }),
);

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

const sharesByEdge = (what: string) =>
  record(`The share of the opening below each edge that ${what}. Left out: none.`, {
    "north edge": shareOfOpening("north", what),
    "east edge": shareOfOpening("east", what),
    "south edge": shareOfOpening("south", what),
    "west edge": shareOfOpening("west", what),
  });

const roof = record("The roof, taken as rigid in its plane.", {
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
    goods: sharesByEdge("stored goods, vehicles or the like close, at the worst"),
    walls: sharesByEdge("walls close. A wall less than 80 % open leaves the coefficients of open roofs"),
    building: record("A building close to one edge of the roof.", {
      edge: choice(["north", "east", "south", "west"], "The edge it stands before."),
      gap: quantity("distance", "Gap between the roof and the building.", { bounds: "zero or more", units: ["in", "ft", "mm"] }),
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
  "rigid in plane": choice(["yes", "no", "envelope"], "Whether deck or bracing makes the roof act as one plate that shares side loads between the columns. Open purlins do not: each column then takes what comes to it by tributary width. envelope takes the worse of both.", {
    also: { true: "yes", false: "no", either: "envelope" },
    assumed: { text: "yes", source: "to be shown: a fastened deck or bracing in the plane of the roof" },
  }),
});

const loads = named(
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

const sway = (way: string) =>
  choice(["fixed base", "fixed base and top", "braced bay", "bracket", "pinned base"], `What holds the column against swaying ${way}. A column on a pinned base leans on the others.`, {
    assumed: { text: "fixed base", source: "a cantilever from its base, whose moment the checks below it take; the top as `top of column` says" },
  });

const columns = named(
  "Lines of columns, or single columns.",
  record("A line of like columns, or one column.", {
    "line of": number("How many columns stand in the line, evenly spaced.", { integer: true, least: 2, most: 200 }),
    from: point("First column of the line in plan: x, y."),
    to: point("Last column of the line in plan: x, y."),
    at: point("Place of a single column in plan: x, y."),
    section: section("Square hollow section by its designation, HSS6x6x3/8."),
    grade: choice(["A500 Gr C", "A500 Gr B", "A1085"], "Steel grade of the column.", { assumed: { text: "A500 Gr C", source: "the usual grade of square HSS; AISC 360-22 A3" } }),
    height: quantity("distance", "Height of the column from the top of its base plate to the roof framing."),
    "top of column": choice(["pinned", "fixed"], "How the column meets the roof: pinned carries no moment, fixed does.", {
      assumed: { text: "pinned", source: "the safe side for the column base of a cantilevered column" },
    }),
    "sway along x": sway("east to west"),
    "sway along y": sway("north to south"),
    bracing: record("Bays braced by two crossing rods, of which the one that is pulled works. For a column whose sway is held by a braced bay.", {
      area: quantity("area", "Cross-section area of one rod.", { units: ["in²", "mm²"] }),
      bays: list("Which bays are braced, counted from the first column of the line. A line of two has but one.", number("The number of a bay.", { integer: true, least: 1, most: 200 })),
      to: reference("columns", "The other line, for bays across from this line to that one: first column to first column, second to second."),
    }),
    bracket: record("A bracket at the column base with a rated moment. For a column whose sway is held by a bracket.", {
      "rated moment": quantity("moment", "Moment the bracket is rated for at allowable-stress level, as its maker or designer states it.", { units: ["kip-ft", "kN-m"] }),
    }),
    "width in the wind": quantity("length", "Width the wind sees, where the column is wrapped or clad, or 0 in where something else takes its wind. Left out: the width of the section.", { bounds: "zero or more", units: ["in", "mm"] }),
    panels: record("Panels between the columns of the line, in every bay: a railing, a screen, a bench back.", {
      height: quantity("distance", "Height of the panel itself."),
      bottom: quantity("distance", "Height of its lower edge above the column base.", { bounds: "zero or more" }),
      solidity: quantity("ratio", "Solid part of the panel.", { assumed: { text: "1", source: "the safe side: a panel without openings" } }),
    }),
    "top connection": record("What ties the roof to the column top.", {
      detail: text("The connection in words."),
      uplift: quantity("force", "Its design uplift strength.", { units: ["kip", "lb", "kN"] }),
    }),
    base: reference("bases", "The base the column stands on, by its name under bases."),
    "stands on": reference("foundations", "The foundation below the base, by its name under foundations."),
    reactions,
    combined,
  }),
);

const noted = text("What was seen, when and by whom; carried to the summary.");

const bases = named(
  "Base plates with their anchor rods.",
  record("A base plate with its anchor rods.", {
    plate: record(
      "The base plate.",
      {
        width: quantity("length", "Plate width, along x."),
        length: quantity("length", "Plate length, along y."),
        thickness: quantity("length", "Plate thickness."),
        grade: choice(["A36", "A572 Gr 50", "A588"], "Steel grade of the plate.", { assumed: { text: "A36", source: "the weaker of the usual plate grades" } }),
      },
      plateShortForm,
    ),
    grout: quantity("length", "Thickness of the grout under the plate.", { bounds: "zero or more" }),
    "leveling nuts": yesNo("Whether the plate stands on leveling nuts."),
    anchors: record(
      "The anchor rods cast into the foundation.",
      {
        count: number("How many rods.", { integer: true, least: 1, most: 16 }),
        diameter: quantity("length", "Rod diameter."),
        grade: choice(["F1554 Gr 36", "F1554 Gr 55", "F1554 Gr 105"], "Rod grade.", { also: { "F1554 Gr. 36": "F1554 Gr 36", "F1554 Gr. 55": "F1554 Gr 55", "F1554 Gr. 105": "F1554 Gr 105" } }),
        end: choice(["headed", "hooked"], "How the rod ends in the concrete: a head (nut) or a hook."),
        head: choice(["heavy hex nut", "hex nut"], "The head at the embedded end.", { assumed: { text: "heavy hex nut", source: practice } }),
        "hook length": quantity("length", "From the inner face of the shaft to the tip of the hook."),
        embedment: quantity("length", "From the top of the concrete to the bearing face of the head, or to the inside of the hook."),
        "spacing x": quantity("length", "Spacing of the rods along x."),
        "spacing y": quantity("length", "Spacing of the rods along y."),
      },
      anchorsShortForm,
    ),
    "washers welded": yesNo("Whether plate washers with tight holes are welded to the plate, so that every rod takes shear.", { assumed: { text: "no", source: "loose washers are the usual detail" } }),
    "finish above plate": quantity("length", "Height of the finish above the top of the plate.", { bounds: "zero or more" }),
    "as built": record("What was found on site where it differs from what was drawn; the checks run on what was built.", {
      noted,
      grout: quantity("length", "Thickness of the grout as found.", { bounds: "zero or more" }),
      "leveling nuts": yesNo("Whether the plate was found standing on leveling nuts."),
      anchors: record("The rods as found.", {
        count: number("How many rods were found.", { integer: true, least: 1, most: 16 }),
        diameter: quantity("length", "Rod diameter as found."),
        embedment: quantity("length", "Embedment as set."),
        "hook length": quantity("length", "Hook as set."),
        "spacing x": quantity("length", "Spacing along x as set."),
        "spacing y": quantity("length", "Spacing along y as set."),
      }),
    }),
    "cracked concrete": yesNo("Whether the concrete at the rods is taken as cracked.", { assumed: { text: "yes", source: "the safe side; ACI 318-19 17.6.2.5" } }),
  }),
);

const foundations = named(
  "What the supports stand on, down to the ground.",
  record("One kind of foundation.", {
    kind: choice(["pier", "footing on rock", "wall on footing"], "Kind of foundation."),
    ground: reference("ground", "The ground it stands in or on, by its name under ground."),
    concrete: quantity("stress", "Concrete strength f'c at 28 days.", { assumed: { text: "3000 psi", source: "a usual lower strength; ACI 318-19 19.2.1 allows no less than 2500 psi" }, units: ["psi", "MPa"] }),
    diameter: quantity("length", "Diameter of a round pier.", { units: ["in", "mm"] }),
    width: quantity("length", "Side of a square pier or pad along x.", { units: ["in", "ft", "mm"] }),
    length: quantity("length", "Length of the pad along y, or of the whole wall.", { units: ["ft", "m"] }),
    depth: quantity("distance", "Depth of the underside below grade."),
    "above grade": quantity("length", "Height of the top of concrete above grade.", { bounds: "zero or more", assumed: { text: "0 in", source: "top of concrete at grade" } }),
    "ignored depth": quantity("distance", "Depth of soil at the top left out of side resistance and lateral bearing.", { bounds: "zero or more" }),
    bars: record("Vertical bars.", { count: number("How many bars.", { integer: true, least: 3, most: 60 }), bar: bar("Bar size.") }, barsShortForm),
    spiral: record("Spiral or ties round the vertical bars.", { bar: bar("Bar size."), pitch: quantity("length", "Pitch.") }, spacedShortForm("pitch")),
    "restrained at grade": yesNo("Whether a rigid slab that can take the reaction holds the pier at grade.", {
      assumed: { text: "no", source: "IBC 2021 1807.3.2.1: unrestrained unless a rigid floor is stated" },
    }),
    thickness: quantity("length", "Thickness of the wall or of the pad."),
    height: quantity("distance", "Height of the wall above its footing."),
    footing: record("The strip footing under a wall.", { width: quantity("length", "Width of the footing."), thickness: quantity("length", "Thickness of the footing.") }, stripShortForm),
    "length per post": quantity("distance", "Length of wall that acts with one post in uplift."),
    dowels: record("Bars drilled and set into the rock.", {
      count: number("How many dowels act with one support.", { integer: true, least: 1, most: 100 }),
      bar: bar("Dowel size."),
      spacing: quantity("length", "Spacing of the dowels along the wall or pad."),
      "into rock": quantity("length", "Depth of the hole in sound rock."),
      "in concrete": quantity("length", "Length of the bar developed in the footing above the rock."),
      hole: quantity("length", "Diameter of the drilled hole."),
      "set in": choice(["cement grout", "epoxy"], "What fills the hole."),
      grade: choice(["Gr 60", "Gr 80"], "Bar grade.", { assumed: { text: "Gr 60", source: "the usual grade; ASTM A615" } }),
    }),
    "as built": record("What was found on site where it differs from what was drawn; the checks run on what was built.", {
      noted,
      ground: reference("ground", "The ground that was met, by its name under ground: rock met early, fill."),
      concrete: quantity("stress", "Concrete strength by the cylinders.", { units: ["psi", "MPa"] }),
      diameter: quantity("length", "Diameter as poured.", { units: ["in", "mm"] }),
      width: quantity("length", "Side along x as poured.", { units: ["in", "ft", "mm"] }),
      length: quantity("length", "Length along y as poured.", { units: ["ft", "m"] }),
      depth: quantity("distance", "Depth of the underside as dug."),
      "above grade": quantity("length", "Height of the top of concrete above grade as poured.", { bounds: "zero or more" }),
      thickness: quantity("length", "Thickness as poured."),
    }),
    retains: quantity("distance", "Height of soil retained by the wall.", { bounds: "zero or more" }),
    reactions,
    combined,
  }),
);

const confirm = list("What others must confirm; carried to the summary as open items.", text("One open item."));
const accept = list(
  "Findings somebody decided to live with: kept, shown, never hidden.",
  record("One accepted finding.", {
    check: text("The check's title or id."),
    at: text("The support it is accepted at."),
    because: text("The reason, for the summary."),
  }),
);

export const notebook = record("A structural project notebook.", {
  rootfast: number("Version of the notebook format.", { integer: true, least: 1 }),
  project,
  codes,
  site,
  ground,
  given,
  roof,
  loads,
  columns,
  bases,
  foundations,
  confirm,
  accept,
});

export type NotebookShape = (typeof notebook)["fields"];
