/** What the supports stand on, down to the ground. */
import { bar, choice, named, number, quantity, record, reference, yesNo } from "../fields.js";
import { barsShortForm, spacedShortForm, stripShortForm } from "../short-forms.js";
import { combined, noted, reactions } from "./shared.js";

export const foundations = named(
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
