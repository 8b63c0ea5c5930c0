/** Base plates with their anchor rods. */
import { choice, list, named, number, point, quantity, record, yesNo } from "../fields.js";
import { anchorsShortForm, lugShortForm, plateShortForm, washerShortForm } from "../short-forms.js";
import { noted, practice } from "./shared.js";

export const bases = named(
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
    grout: quantity("length", "Thickness of the grout under the plate; 0 in where the plate stands on its leveling nuts for good.", { bounds: "zero or more" }),
    "leveling nuts": yesNo("Whether the plate stands on leveling nuts."),
    "gap below nuts": quantity("length", "Clear height from the concrete to the underside of the leveling nuts or their washers, where no grout is placed.", { bounds: "zero or more" }),
    anchors: record(
      "The anchor rods cast into the foundation.",
      {
        count: number("How many rods.", { integer: true, least: 1, most: 16 }),
        diameter: quantity("length", "Rod diameter."),
        grade: choice(["F1554 Gr 36", "F1554 Gr 55", "F1554 Gr 105"], "Rod grade.", { also: { "F1554 Gr. 36": "F1554 Gr 36", "F1554 Gr. 55": "F1554 Gr 55", "F1554 Gr. 105": "F1554 Gr 105" } }),
        end: choice(["headed", "hooked", "set in adhesive"], "How the rod ends in the concrete: a head (nut) or a hook, cast in; or straight, set in adhesive in a drilled hole."),
        head: choice(["heavy hex nut", "hex nut"], "The head at the embedded end.", { assumed: { text: "heavy hex nut", source: practice } }),
        "hook length": quantity("length", "From the inner face of the shaft to the tip of the hook."),
        embedment: quantity("length", "From the top of the concrete to the bearing face of the head, or to the inside of the hook."),
        "spacing x": quantity("length", "Spacing of the rods along x."),
        "spacing y": quantity("length", "Spacing of the rods along y."),
        "bolt circle": quantity("length", "Diameter of the circle through the middles of the rods, in place of spacings: rods evenly spaced, the first half a step north of east."),
        places: list("Where each rod stands, in place of a spacing.", point("Place of one rod from the middle of the plate, east and north.")),
        "stretch length": quantity("length", "Length over which a rod can stretch freely, in a sleeve or wrapped; upset ends do not count."),
        adhesive: record("What the rods are set in, where they stand in drilled holes.", {
          "cracked bond": quantity("stress", "Characteristic bond stress in cracked concrete by the product's report, for its temperatures and how the holes are made."),
          "uncracked bond": quantity("stress", "Characteristic bond stress in uncracked concrete by the product's report."),
          conditions: choice(["outdoor", "indoor"], "In place of a report, for a product of ACI 355.4: the least bond of ACI 318-19 Table 17.6.5.2.5, outdoor (dry to wet, to 175 °F) or indoor (dry, to 110 °F)."),
          category: number("Category of the product by its report, for how sure its installation is.", { integer: true, least: 1, most: 3, assumed: { text: "3", source: "the least sure, on the safe side; ACI 318-19 Table 17.5.3" } }),
          "sustained tension": quantity("force", "Factored tension of one rod that stays: of dead load that pulls on it for good; 0 kip where dead load presses the base down.", { bounds: "zero or more", units: ["kip", "lb", "kN"] }),
        }),
        torqued: yesNo("Whether the nuts are tightened by torque or turn beyond snug, which wedges the concrete apart.", { assumed: { text: "yes", source: "the safe side for spacing and edge distance; ACI 318-19 Table 17.9.2(a)" } }),
      },
      anchorsShortForm,
    ),
    "washers welded": yesNo("Whether plate washers with tight holes are welded to the plate, so that every rod takes shear.", { assumed: { text: "no", source: "loose washers are the usual detail" } }),
    hole: quantity("length", "Diameter of the holes for the rods in the plate."),
    washer: record("The washer under the nut, square or round.", { width: quantity("length", "Side or diameter of the washer."), thickness: quantity("length", "Thickness of the washer.") }, washerShortForm),
    projection: quantity("length", "How far the rods stand above the concrete."),
    thread: quantity("length", "Length of thread from the top of the rod down."),
    friction: yesNo("Whether friction between plate and grout is counted on for shear. It carries a combination alone or not at all, and never one that lifts the base."),
    "shear lug": record(
      "A plate welded under the base plate and cast into a pocket of the concrete, or a cross of two, that takes the shear.",
      {
        width: quantity("length", "Width of the lug, across the shear."),
        depth: quantity("length", "Depth of the lug below the underside of the base plate, through the grout."),
        thickness: quantity("length", "Thickness of the lug."),
        resists: choice(["along x", "along y", "both ways"], "The shear it stands against; a cross stands against both."),
      },
      lugShortForm,
    ),
    "finish above plate": quantity("length", "Height of the finish above the top of the plate.", { bounds: "zero or more" }),
    protection: choice(["none", "galvanized", "coated", "galvanized and coated", "encased in concrete"], "How plate, nuts and rods are kept from rust."),
    "rod finish": choice(["plain", "hot-dip galvanized", "mechanically galvanized", "stainless"], "Finish of the anchor rods."),
    "nut finish": choice(["plain", "hot-dip galvanized", "mechanically galvanized", "stainless"], "Finish of their nuts and washers."),
    "metals kept apart": yesNo("Whether sleeves and washers keep stainless steel from touching zinc or plain steel."),
    "pocket drains": yesNo("Whether water runs out of the pocket round a plate below the finish."),
    "as built": record("What was found on site where it differs from what was drawn; the checks run on what was built.", {
      noted,
      grout: quantity("length", "Thickness of the grout as found.", { bounds: "zero or more" }),
      "leveling nuts": yesNo("Whether the plate was found standing on leveling nuts."),
      "gap below nuts": quantity("length", "Clear height below the leveling nuts as found.", { bounds: "zero or more" }),
      projection: quantity("length", "How far the rods were found to stand above the concrete."),
      anchors: record("The rods as found.", {
        count: number("How many rods were found.", { integer: true, least: 1, most: 16 }),
        diameter: quantity("length", "Rod diameter as found."),
        embedment: quantity("length", "Embedment as set."),
        "hook length": quantity("length", "Hook as set."),
        "spacing x": quantity("length", "Spacing along x as set."),
        "spacing y": quantity("length", "Spacing along y as set."),
        places: list("Where each rod was found, in the order southwest, southeast, northeast, northwest, then those between.", point("Place of one rod as found, from the middle of the plate as drawn, east and north.")),
        lean: quantity("slope", "How far the rod that leans most is out of plumb, over its height.", { bounds: "zero or more" }),
        bent: quantity("angle", "How far a rod was found bent, or is to be bent back.", { bounds: "zero or more" }),
      }),
    }),
    "anchor reinforcement": choice(["none", "pier bars", "wall bars"], "What takes the tension where concrete breakout does not: nothing, or the vertical bars near the rods, of the pier or pedestal or of the wall, developed on both sides of the breakout surface.", {
      assumed: { text: "none", source: "the safe side; ACI 318-19 17.5.2.1 leaves it to the designer" },
    }),
    "seismic anchors": choice(["overstrength", "overstrength included", "stretch length"], "How the anchors are designed for an earthquake in seismic design category C to F: for forces with the overstrength of the system, or for stated reactions that have it in them already (ACI 318-19 17.10.5.3(d) and 17.10.6.3(c)); or in tension as ductile rods that stretch before the concrete breaks (17.10.5.3(a)), with the overstrength in shear."),
    "overstrength factor": number("Overstrength factor of the seismic system, for stated reactions by load case.", { least: 1, most: 3 }),
    "edge bars": choice(["none", "no. 4", "no. 4 in ties at 4 in"], "Bars in the concrete between the rods and its edges, of no. 4 or larger, alone or inside ties no more than 4 in apart: they raise the strength of cracked concrete against breakout in shear.", {
      assumed: { text: "none", source: "the safe side; ACI 318-19 Table 17.7.2.5.1" },
    }),
    "cracked concrete": yesNo("Whether the concrete at the rods is taken as cracked.", { assumed: { text: "yes", source: "the safe side; ACI 318-19 17.6.2.5" } }),
  }),
);
