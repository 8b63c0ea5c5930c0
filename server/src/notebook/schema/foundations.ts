/** What the supports stand on, down to the ground. */
import { bar, choice, named, number, quantity, record, reference, yesNo } from "../fields.js";
import { barsShortForm, eachWayShortForm, matShortForm, pedestalShortForm, spacedShortForm } from "../short-forms.js";
import { combined, noted, reactions } from "./shared.js";
import { stripFooting, wallFields } from "./walls.js";

const mat = (along: string, across: string) =>
  record(
    `Bars along ${along}, by their spacing or by their number.`,
    {
      bar: bar("Bar size."),
      spacing: quantity("length", "Spacing of the bars."),
      count: number(`How many bars lie across ${across} of the pad.`, { integer: true, least: 2, most: 200 }),
    },
    matShortForm,
  );

const mats = (where: string) =>
  record(`Bars at the ${where} of a footing's pad, both ways.`, { "along x": mat("x", "the length"), "along y": mat("y", "the width") }, eachWayShortForm);

export const foundations = named(
  "What the supports stand on, down to the ground.",
  record("One kind of foundation.", {
    kind: choice(["pier", "footing", "footing on rock", "wall on footing"], "Kind of foundation: a pier, a footing (a pad, alone or with a pedestal, that bears on its ground), a footing doweled to rock, a wall on a strip footing."),
    ground: reference("ground", "The ground it stands in or on, by its name under ground."),
    concrete: quantity("stress", "Concrete strength f'c at 28 days.", { assumed: { text: "3000 psi", source: "a usual lower strength; ACI 318-19 19.2.1 allows no less than 2500 psi" }, units: ["psi", "MPa"] }),
    "cast against": choice(["the ground", "forms"], "What the concrete is cast against: the cut ground, or forms such as a fiber tube. Left out: the ground, which asks for the larger cover."),
    "freezing exposure": choice(["F0", "F1", "F2", "F3"], "Exposure of the concrete to freezing (ACI 318-19 Table 19.3.1.1): F0 none, F1 with little water, F2 often wet, F3 often wet and with deicing salts."),
    "sulfate exposure": choice(["S0", "S1", "S2", "S3"], "Exposure of the concrete to sulfate in soil or water (ACI 318-19 Table 19.3.1.1), from the soil report."),
    "water exposure": choice(["W0", "W1", "W2"], "Contact of the concrete with water (ACI 318-19 Table 19.3.1.1): W0 dry, W1 wet where low permeability is not asked for, W2 wet where it is."),
    "corrosion exposure": choice(["C0", "C1", "C2"], "Exposure of the bars to rust (ACI 318-19 Table 19.3.1.1): C0 dry, C1 moist, C2 moist and with chlorides from salt, sea or pool."),
    "water-cement ratio": number("Largest ratio of water to cementitious materials of the mix, by weight.", { least: 0.25, most: 1 }),
    "air content": quantity("ratio", "Air entrained in the fresh concrete, as the mix is ordered: 6 %.", { bounds: "zero or more" }),
    "aggregate size": quantity("length", "Largest nominal size of the aggregate, for the air that is needed.", { units: ["in", "mm"] }),
    "strength at erection": quantity("stress", "Strength of the concrete on the day the columns are set, by samples cured on the site.", { units: ["psi", "MPa"] }),
    "days before erection": number("Days from the pour to the day the columns are set, where no samples are tested.", { least: 0, most: 365 }),
    "tied by": choice(["nothing", "grade beams", "slab"], "What ties the foundation to the others at grade, for earthquakes."),
    "grade beam": record("The grade beam between this foundation and the next, where it ties them in an earthquake; its concrete, cover and bar grade are those of the foundation.", {
      width: quantity("length", "Width of the beam.", { units: ["in", "mm"] }),
      depth: quantity("length", "Depth of the beam, top to bottom.", { units: ["in", "mm"] }),
      "clear span": quantity("distance", "Clear length of the longest beam between the foundations it ties."),
      bars: record("Bars along the beam, half of them at its top and half at its bottom, without a break from one foundation to the next.", { count: number("How many bars.", { integer: true, least: 2, most: 40 }), bar: bar("Bar size.") }, barsShortForm),
      ties: record("Closed ties round the bars of the beam.", { bar: bar("Bar size."), spacing: quantity("length", "Spacing of the ties.") }, spacedShortForm("spacing")),
      "into foundation": quantity("length", "How far the bars go into the foundation at the end of the beam, from its face.", { units: ["in", "mm"] }),
      "bar ends": choice(["straight", "hooked"], "How the bars end in the foundation.", { assumed: { text: "straight", source: "the safe side for their development" } }),
    }),
    "water in the hole": choice(["pumped dry", "placed under water"], "How concrete is placed where the hole reaches below the water: the hole is kept dry, or the concrete goes in through a pipe from the bottom up."),
    neighbors: named(
      "What is dug or built beside the foundation, each under a name of its own: a pool, a trench, a wall, a footing.",
      record("One thing beside the foundation.", {
        kind: choice(["pool", "trench", "basement", "retaining wall", "footing"], "What it is."),
        distance: quantity("distance", "Level distance from the side of the foundation to its nearest face.", { bounds: "zero or more" }),
        depth: quantity("distance", "Depth of its underside below grade."),
      }),
    ),
    "slope below": record("Ground that falls away in a slope near the foundation; left out, nothing is asked of it.", {
      slope: quantity("slope", "Rise of the slope over its run."),
      height: quantity("distance", "Height of the slope, from its foot to the grade at the foundation."),
      distance: quantity("distance", "Level distance from the side of the foundation to the top of the slope.", { bounds: "zero or more" }),
    }),
    diameter: quantity("length", "Diameter of a round pier.", { units: ["in", "mm"] }),
    width: quantity("length", "Side of a square pier or pad along x.", { units: ["in", "ft", "mm"] }),
    length: quantity("length", "Length of the pad along y, or of the whole wall.", { units: ["ft", "m"] }),
    depth: quantity("distance", "Depth of the underside below grade."),
    "above grade": quantity("length", "Height of the top of concrete above grade.", { bounds: "zero or more", assumed: { text: "0 in", source: "top of concrete at grade" } }),
    "taken as": choice(["pole and block", "pole", "block"], "What a pier less than two widths deep is taken as: a pole held by the soil beside it, a block that stands on its underside, or both, and then both have to hold. A pier of more depth is a pole.", {
      assumed: { text: "pole and block", source: "the safe side; common practice, no source" },
    }),
    "ignored depth": quantity("distance", "Depth of soil at the top left out of side resistance and lateral bearing.", { bounds: "zero or more" }),
    bell: record("The bell at the foot of a round pier, its sides sloping out to the underside.", {
      diameter: quantity("length", "Diameter of the bell at the underside.", { units: ["in", "mm"] }),
      height: quantity("length", "Height of the bell.", { units: ["in", "mm"] }),
    }),
    bars: record("Vertical bars of a pier, or of a footing's pedestal; those of a pedestal go down into the pad and end there in hooks.", { count: number("How many bars.", { integer: true, least: 3, most: 60 }), bar: bar("Bar size.") }, barsShortForm),
    spiral: record("Spiral round the vertical bars of a round pier or pedestal; where it is wound wider than a spiral has to be, state it as ties.", { bar: bar("Bar size."), pitch: quantity("length", "Pitch.") }, spacedShortForm("pitch")),
    ties: record(
      "Closed ties round the vertical bars, or a bar wound round them at that pitch.",
      {
        bar: bar("Bar size."),
        spacing: quantity("length", "Spacing of the ties."),
        inner: yesNo("Whether inner ties hold the bars between the corners of a rectangular pier or pedestal."),
      },
      spacedShortForm("spacing"),
    ),
    "rods lap bars": yesNo("Whether the anchor rods are to pass their tension to the vertical bars by a lap beside them. Left out: no."),
    "bar tops": choice(["straight", "hooked", "headed"], "How the vertical bars end at the top of the pier or pedestal.", { assumed: { text: "straight", source: "the safe side for their development" } }),
    "top ties": record("Ties within 5 in of the top of the concrete, round the anchor rods and at least four vertical bars.", { count: number("How many ties.", { integer: true, least: 1, most: 10 }), bar: bar("Bar size.") }, barsShortForm),
    hairpins: record(
      "U bars lying flat in the top of the concrete, their bend toward the edge, that take the shear of the rods in place of the concrete before them.",
      {
        count: number("How many hairpins stand against a push toward one edge.", { integer: true, least: 1, most: 20 }),
        bar: bar("Bar size, to no. 5."),
        resists: choice(["along x", "along y", "both ways"], "The shear they stand against, toward both edges across it."),
        "around rods": yesNo("Whether each goes round a rod and touches it.", { assumed: { text: "no", source: "the safe side; ACI 318-19 17.5.2.1(b)" } }),
        "from rods": quantity("length", "From a rod to the farthest leg that counts, along the edge, where they do not touch the rods."),
        leg: quantity("length", "From the line of the rods nearest the edge to the ends of the legs, away from the edge.", { units: ["in", "mm"] }),
        "leg ends": choice(["straight", "hooked"], "How the legs end, away from the edge.", { assumed: { text: "straight", source: "the safe side for their development" } }),
        "below top": quantity("length", "From the top of the concrete to the middle of the hairpins.", { units: ["in", "mm"] }),
      },
    ),
    "restrained at grade": yesNo("Whether a rigid slab that can take the reaction holds the pier at grade.", {
      assumed: { text: "no", source: "IBC 2021 1807.3.2.1: unrestrained unless a rigid floor is stated" },
    }),
    "slab at grade": record("What lies against the pier at grade, where it is to be restrained there.", {
      kind: choice(["tied slab", "loose slab", "pavers"], "A rigid slab tied to the pier by bars or cast round it; a slab that only lies against it; or pavers, which hold nothing."),
      capacity: quantity("force", "Sideways force, allowable, that the slab can take from one pier and pass on to the ground.", { units: ["kip", "kN"] }),
      joint: quantity("length", "Width of the joint filled with soft board between the slab and the pier or column, through the whole depth of the slab; 0 in where it is poured tight.", { bounds: "zero or more", units: ["in", "mm"] }),
      "frost protected": yesNo("Whether frost is kept from lifting the slab, by insulation or by a drained bed of clean gravel down to the frost depth."),
    }),
    "ground slope": quantity("slope", "Slope of the ground that falls away beside the pier; left out, the ground is level.", { bounds: "zero or more" }),
    "movement limit": quantity("length", "Limit of the movement at grade; half an inch at most where the ground's lateral bearing is doubled.", { units: ["in", "mm"] }),
    "settlement limit": quantity("length", "Limit of the settlement of a pad as it is loaded; no code gives one, and without it settlement is not looked at.", { units: ["in", "mm"] }),
    "rotation limit": quantity("angle", "Limit of the pier's lean under a service wind.", { units: ["deg"] }),
    thickness: quantity("length", "Thickness of the wall or of the pad."),
    height: quantity("distance", "Height of the wall above its footing."),
    footing: stripFooting,
    pedestal: record(
      "The pedestal on a footing's pad, on its middle where nothing else is said. Its height follows from the depth, the top of concrete and the thickness of the pad.",
      {
        width: quantity("length", "Side of the pedestal along x.", { units: ["in", "mm"] }),
        length: quantity("length", "Side of the pedestal along y.", { units: ["in", "mm"] }),
        diameter: quantity("length", "Diameter of a round pedestal.", { units: ["in", "mm"] }),
      },
      pedestalShortForm,
    ),
    "shared by line": yesNo("Whether all the columns of a line stand on this one pad, its middle under that of the line; otherwise each column has a pad of its own.", {
      assumed: { text: "no", source: "the usual case: a pad under each column" },
    }),
    "off middle": record("How far the column and its pedestal stand off the middle of the pad; left out, they stand on it.", {
      x: quantity("length", "To the east; to the west negative.", { bounds: "any", units: ["in", "mm"] }),
      y: quantity("length", "To the north; to the south negative.", { bounds: "any", units: ["in", "mm"] }),
    }),
    "bottom bars": mats("bottom"),
    "top bars": mats("top"),
    "hooked bars": yesNo("Whether the bars of the pad end in standard hooks.", { assumed: { text: "no", source: "the safe side for their development" } }),
    "bar lap": quantity("length", "Length over which the bars of a pad lie beside each other where they are not in one piece.", { units: ["in", "mm"] }),
    "bar grade": choice(["Gr 60", "Gr 80"], "Grade of the bars of a footing, and of the vertical bars of a pier.", { assumed: { text: "Gr 60", source: "the usual grade; ASTM A615" } }),
    cover: quantity("length", "Clear cover of the bars: those of a footing, and the ties of a pier or pedestal that holds rods.", { assumed: { text: "3 in", source: "concrete cast against the ground; ACI 318-19 Table 20.5.1.3.1" }, units: ["in", "mm"] }),
    backfill: choice(["loose", "compacted and tested"], "How the soil beside and above a footing is put back. Loose soil loads the ground but is not counted to hold the footing down or to stand against its side.", {
      assumed: { text: "loose", source: "the safe side; common practice, no source" },
    }),
    "backfill weight": quantity("unitWeight", "Unit weight of the soil above the pad. Left out: that of the ground."),
    "held down by": choice(["weight", "soil cone", "side friction"], "What holds a footing or a pier against uplift beyond its own weight: the soil straight above the pad or bell, the cone of soil lifted with it, or friction on the side. A cone and friction are never counted together. Left out, the side of a pier counts.", {
      assumed: { text: "weight", source: "the least of the three for a footing; the side of a pier counts; common practice, no source" },
    }),
    ...wallFields,
    dowels: record("Bars drilled and set into the rock.", {
      count: number("How many dowels act with one support.", { integer: true, least: 1, most: 100 }),
      bar: bar("Dowel size."),
      spacing: quantity("length", "Spacing of the dowels along the wall, or both ways in a pad."),
      "along x": number("How many dowels stand side by side along x in the grid of a pad; with `along y` it says where they are. Left out: one in the middle, or four in a square.", { integer: true, least: 1, most: 20 }),
      "along y": number("How many dowels stand side by side along y in the grid of a pad.", { integer: true, least: 1, most: 20 }),
      rows: number("Rows of dowels along a wall: one along the middle of its footing, or two, one to each side.", { integer: true, least: 1, most: 2, assumed: { text: "1", source: "one row along the middle, the smaller arm" } }),
      "row spacing": quantity("length", "Distance between the two rows, across the wall.", { units: ["in", "mm"] }),
      "into rock": quantity("length", "Depth of the hole in sound rock, below what is weathered."),
      "in concrete": quantity("length", "Length of the bar developed in the footing above the rock, to the outside of its hook where it has one."),
      "ends in concrete": choice(["straight", "hooked"], "How the bar ends in the concrete.", { assumed: { text: "straight", source: "the safe side for its development" } }),
      lap: quantity("length", "Length over which the dowels lie beside the bars of the wall above, where they are to pass their pull to them.", { units: ["in", "mm"] }),
      hole: quantity("length", "Diameter of the drilled hole."),
      "set in": choice(["cement grout", "epoxy", "nothing"], "What fills the hole: cement grout, epoxy or another adhesive, or nothing where the bar is driven in dry."),
      "bar bond": quantity("stress", "Ultimate bond between the bar and what it is set in. Of cement grout 2 MPa is taken where it is left out; of an adhesive the maker's report gives it, for rock and for the temperature at hand.", { units: ["psi", "MPa"] }),
      "hole condition": choice(["dry", "damp", "under water"], "How wet the holes are when the dowels are set."),
      "rock temperature": choice(["50 F or more", "below 50 F", "frozen"], "Temperature of the rock when the dowels are set and while they cure."),
      listed: yesNo("Whether the maker's printed instructions cover these holes: rock, as wet and as cold as they are."),
      "proof test": choice(["none", "some", "all"], "How many of the dowels are pulled to prove them."),
      "rock face": quantity("distance", "Distance from the nearest dowel to a free face of the rock: a step, the edge of the ledge, an open joint.", { units: ["in", "ft", "mm"] }),
      grade: choice(["Gr 60", "Gr 80"], "Bar grade.", { assumed: { text: "Gr 60", source: "the usual grade; ASTM A615" } }),
    }),
    "as built": record("What was found on site where it differs from what was drawn; the checks run on what was built.", {
      noted,
      ground: reference("ground", "The ground that was met, by its name under ground: rock met early, fill."),
      "rock met at": quantity("distance", "Depth below grade at which rock was met, where the drawing has soil."),
      "rock met by": number("How many of the foundations of the line met it; left out: all of them.", { integer: true, least: 1, most: 200 }),
      concrete: quantity("stress", "Concrete strength by the cylinders.", { units: ["psi", "MPa"] }),
      diameter: quantity("length", "Diameter as poured.", { units: ["in", "mm"] }),
      width: quantity("length", "Side along x as poured.", { units: ["in", "ft", "mm"] }),
      length: quantity("length", "Length along y as poured.", { units: ["ft", "m"] }),
      depth: quantity("distance", "Depth of the underside as dug."),
      "above grade": quantity("length", "Height of the top of concrete above grade as poured.", { bounds: "zero or more" }),
      thickness: quantity("length", "Thickness as poured."),
    }),
    reactions,
    combined,
  }),
);
