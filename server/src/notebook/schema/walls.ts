/** Fields of a wall on a strip footing, beside those it shares with other foundations. */
import { bar, choice, list, number, quantity, record, yesNo } from "../fields.js";
import { barsShortForm, keyShortForm, lowerBarsShortForm, spacedShortForm, stripShortForm } from "../short-forms.js";

const spaced = (doc: string) => record(doc, { bar: bar("Bar size."), spacing: quantity("length", "Spacing of the bars.", { units: ["in", "mm"] }) }, spacedShortForm("spacing"));

const face = (doc: string) =>
  record(doc, {
    vertical: spaced("Vertical bars of that face, from its footing to the top of the wall."),
    "lower vertical": record(
      "More vertical bars of that face, from its footing up, that end below the top of the wall.",
      {
        bar: bar("Bar size."),
        spacing: quantity("length", "Spacing of these bars.", { units: ["in", "mm"] }),
        reach: quantity("distance", "Height above the footing at which they end."),
      },
      lowerBarsShortForm,
    ),
    horizontal: spaced("Horizontal bars of that face."),
  });

export const stripFooting = record(
  "The strip footing under a wall.",
  {
    width: quantity("length", "Width of the footing."),
    thickness: quantity("length", "Thickness of the footing."),
    toe: quantity("length", "How far the footing reaches out before the wall, on the side away from the soil it holds back. Left out, with `heel`: the wall stands on the middle.", { bounds: "zero or more" }),
    heel: quantity("length", "How far the footing reaches under the soil that is held back.", { bounds: "zero or more" }),
    "bottom bars": spaced("Bars across the wall at the bottom of the footing."),
    "top bars": spaced("Bars across the wall at the top of the footing."),
    "long bars": record("Bars along the wall in the footing, all of them.", { count: number("How many bars.", { integer: true, least: 1, most: 60 }), bar: bar("Bar size.") }, barsShortForm),
  },
  stripShortForm,
);

const fill = record("The soil a wall holds back, and how it presses.", {
  side: choice(["north", "east", "south", "west"], "Side of the wall the soil is on; the footing's toe is on the other."),
  method: choice(["at rest", "Rankine", "Coulomb", "equivalent fluid"], "How the earth pressure is found. At rest where the wall is held from moving; active pressure (Rankine, Coulomb) where its top can give way (IBC 2021 1610.1)."),
  "unit weight": quantity("unitWeight", "Unit weight of the soil as it lies above the water."),
  "saturated weight": quantity("unitWeight", "Unit weight of the soil below the water, water included. Left out: that above the water."),
  "friction angle": quantity("angle", "Angle of internal friction of the soil held back.", { bounds: "zero or more", units: ["deg"] }),
  cohesion: quantity("pressure", "Cohesion of the soil held back; it takes pressure off by Rankine's method alone, on level ground.", { bounds: "zero or more" }),
  "equivalent fluid": quantity("pressurePerDepth", "Weight of the fluid that presses like the drained soil, from the report: pressure per depth.", { units: ["psf/ft", "kPa/m"] }),
  "wall friction": quantity("angle", "Angle of friction between soil and wall, for Coulomb's method; two thirds of the friction angle is usual against rough concrete (from memory).", { bounds: "zero or more", units: ["deg"] }),
  slope: quantity("slope", "Slope of the ground that rises behind the wall; left out, it is level.", { bounds: "zero or more" }),
  surcharge: quantity("pressure", "Load on the ground behind the wall, the same all over: 250 psf where vehicles come near is usual (from memory). Write 0 psf where nothing can stand there.", { bounds: "zero or more" }),
  "seismic coefficient": number("Horizontal coefficient k_h by which an earthquake shakes the soil held back, from the geotechnical report; half of the peak ground acceleration is usual where the wall can give way (from memory).", { least: 0, most: 0.6 }),
  drained: yesNo("Whether a drain behind the wall with free outlets keeps water from standing there."),
  water: quantity("distance", "Depth of the standing water below the top of the soil at the wall, where no drain keeps it out.", { bounds: "zero or more" }),
});

/** Fields of a foundation that only a wall has. */
export const wallFields = {
  "length per post": quantity("distance", "Length of wall that acts with one post, half to each side of it; ends, movement joints and neighboring posts cut it short."),
  retains: quantity("distance", "Height of soil retained by the wall: from the lower ground before it to the higher ground at it.", { bounds: "zero or more" }),
  fill,
  "wall runs": choice(["east-west", "north-south"], "Which way the wall runs, where neither a line of posts nor the side of its fill tells."),
  "first post": quantity("distance", "From the wall's west or south end to the first post on it. Left out: the posts stand on the middle of its length.", { bounds: "zero or more" }),
  "wall ends": choice(["free", "corner"], "Whether the wall ends free or turns a corner, where its return holds it.", { assumed: { text: "free", source: "no return wall is drawn" } }),
  "movement joints": list("Joints that part the wall and its footing, by their distance from the wall's west or south end.", quantity("distance", "Distance of one joint from the wall's west or south end.")),
  "joint distance": quantity("distance", "Least distance kept between a movement joint and the rods of a post. Left out: the reach of their breakout cone.", { units: ["in", "ft", "mm"] }),
  "post spread": choice(["45 degrees", "30 degrees", "plate alone"], "How the forces of a post spread down the wall from its base plate to each side. Practice differs and no standard settles it, so it has no default."),
  "post width": quantity("distance", "Length of wall that carries the forces of one post at every height, in place of a spread from its base plate; ends, movement joints and neighboring posts cut it short."),
  key: record(
    "Key below the strip footing of a wall, or below a pad on rock, against sliding.",
    { width: quantity("length", "Width of the key across the wall."), depth: quantity("length", "Depth of the key below the footing."), "from toe": quantity("length", "From the toe's edge to the near face of the key.", { bounds: "zero or more" }) },
    keyShortForm,
  ),
  "stem bars": record("Bars of the wall above its footing. Where nothing is held back, the fill face is the north or east one.", {
    "fill face": face("Bars at the face against the soil that is held back."),
    "free face": face("Bars at the other face."),
    middle: face("Bars of a wall with one curtain, in the middle of its thickness."),
    "outer bars": choice(["vertical", "horizontal"], "Which bars lie nearest to the faces. Left out, the vertical ones lie behind the horizontal ones where their depth counts, and before them where their distance from the rods does: the safe side of each."),
  }),
  "stem cover": quantity("length", "Clear cover of the outer bars of the wall.", { assumed: { text: "2 in", source: "formed faces against soil or weather, no. 6 bars and larger; ACI 318-19 Table 20.5.1.3.1" }, units: ["in", "mm"] }),
  "joint dowels": record("Bars that tie the wall to its footing.", {
    "stem bars go on": yesNo("Whether the vertical bars of the wall themselves go on into the footing, so that no dowels lie beside them."),
    "fill face": spaced("Dowels at the face against the soil."),
    "free face": spaced("Dowels at the other face."),
    middle: spaced("One row of dowels in the middle of the wall."),
    "into wall": quantity("length", "Length of the dowels above the joint.", { units: ["in", "mm"] }),
    "into footing": quantity("length", "Length of the dowels below the joint, to the outside of the hook where they have one.", { units: ["in", "mm"] }),
    hooked: yesNo("Whether the dowels end in standard hooks in the footing.", { assumed: { text: "no", source: "the safe side for their development" } }),
    surface: choice(["not roughened", "roughened 1/4 in", "cast in one"], "Surface of the footing below the wall as the wall is cast on it.", { assumed: { text: "not roughened", source: "the safe side; ACI 318-19 Table 22.9.4.2" } }),
  }),
} as const;
