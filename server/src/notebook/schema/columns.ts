/** Lines of columns, and what holds them. */
import { choice, list, named, number, point, quantity, record, reference, section, text, yesNo } from "../fields.js";
import { weldShortForm } from "../short-forms.js";
import { combined, reactions } from "./shared.js";

const sway = (way: string) =>
  choice(["fixed base", "fixed base and top", "braced bay", "bracket", "pinned base", "fixed base and knee brace", "knee brace"], `What holds the column against swaying ${way}. A column on a pinned base leans on the others; a knee brace alone stands for one on a pinned base.`, {
    assumed: { text: "fixed base", source: "a cantilever from its base, whose moment the checks below it take; the top as `top of column` says" },
  });

const weld = (doc: string) =>
  record(
    doc,
    {
      fillet: quantity("length", "Leg of the fillet."),
      electrode: choice(["E60", "E70", "E80"], "Electrode by its strength in ksi.", { assumed: { text: "E70", source: "the usual electrode, matching the steels here; AISC 360-22 Table J2.5 and AWS D1.1 (from memory)" } }),
    },
    weldShortForm,
  );

const bolts = record("The bolts through the cap plate, in two rows each way.", {
  count: number("How many bolts.", { integer: true, least: 2, most: 16 }),
  diameter: quantity("length", "Bolt diameter."),
  grade: choice(["A325", "A490", "A307"], "Bolt grade."),
  threads: choice(["in the shear plane", "excluded"], "Whether threads lie in the shear plane.", { assumed: { text: "in the shear plane", source: "the safe side; AISC 360-22 Table J3.2" } }),
  "spacing x": quantity("length", "Spacing of the bolts along x."),
  "spacing y": quantity("length", "Spacing of the bolts along y."),
  "slip critical": choice(["no", "class A", "class B"], "Whether the bolts are pretensioned and may not slip, by the class of their surfaces: A for clean mill scale or zinc, B for blasted steel.", {
    assumed: { text: "no", source: "bolts that bear are the usual detail where load does not reverse often; AISC 360-22 J3.2" },
  }),
});

const beamFlange = record("The flange of the roof beam, or the plate below it, that the bolts go through. Described, bearing at its holes counts.", {
  thickness: quantity("length", "Its thickness."),
  edge: quantity("length", "From the middle of a bolt to its edge or end."),
  grade: choice(["A992", "A36", "A572 Gr 50", "A588"], "Steel grade of the roof beam.", { assumed: { text: "A36", source: "the weaker of the usual grades" } }),
});

const capPlate = record("The plate on the column top that the bolts go through. Described, its prying counts.", {
  thickness: quantity("length", "Plate thickness."),
  edge: quantity("length", "From the middle of a bolt to the edge of the plate."),
  "bolt to face": quantity("length", "From the middle of a bolt to the face of the column."),
  pitch: quantity("length", "Width of the plate that goes with one bolt."),
  grade: choice(["A36", "A572 Gr 50", "A588"], "Steel grade of the plate.", { assumed: { text: "A36", source: "the weaker of the usual plate grades" } }),
});

export const columns = named(
  "Lines of columns, or single columns.",
  record("A line of like columns, or one column.", {
    "line of": number("How many columns stand in the line, evenly spaced.", { integer: true, least: 2, most: 200 }),
    from: point("First column of the line in plan: x, y."),
    to: point("Last column of the line in plan: x, y."),
    at: point("Place of a single column in plan: x, y."),
    section: section("Section by its designation: HSS6x6x3/8, HSS8x4x1/4, HSS6.000x0.280, Pipe 6 STD or W8x31; a W of other sizes as W 8 x 8 in, flange 0.435 in, web 0.285 in, fillet 0.394 in."),
    "deep side": choice(["along x", "along y"], "Which way the depth of a rectangular section or W lies in plan: the long side, or the web."),
    grade: choice(["A500 Gr C", "A500 Gr B", "A1085", "A53 Gr B", "A992", "A36", "A572 Gr 50"], "Steel grade of the column.", { assumed: { text: "A500 Gr C", source: "the usual grade of square HSS; AISC 360-22 A3; pipe and W shapes need theirs stated" } }),
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
    "knee brace": record("Braces from the column up to the roof framing. For a column whose sway is held by a knee brace, in each direction that says so.", {
      "below top": quantity("length", "From the column top down to where the brace meets the column.", { units: ["ft", "in", "mm"] }),
      run: quantity("distance", "Level distance from the column to where the brace meets the roof framing.", { units: ["ft", "in", "mm"] }),
      area: quantity("area", "Cross-section area of one brace, of steel.", { units: ["in²", "mm²"] }),
      sides: choice(["one", "both"], "Whether braces go up to both sides of the column, or one toward the middle of the roof.", {
        assumed: { text: "one", source: "the safe side for the connection at the column top, which a single brace lifts or presses; statics" },
      }),
      strength: quantity("force", "Design strength of one brace and its ends along its line, pulled or pressed, as its designer states it.", { units: ["kip", "lb", "kN"] }),
    }),
    "base rotation stiffness": quantity("rotationalStiffness", "Moment per turning of the column base, where what stands below gives: of the pier or footing in its ground, and of the base plate. Left out: the base does not turn.", {
      units: ["kip-ft/rad", "kN·m/rad"],
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
      level: choice(["strength", "allowable"], "Level its strengths are stated at: design strengths against strength loads, or allowable ones, as ratings often are, against allowable-stress loads.", {
        assumed: { text: "strength", source: "the safe side: an allowable strength is less than the design strength of the same connection" },
      }),
      uplift: quantity("force", "Its uplift strength, at the level stated.", { units: ["kip", "lb", "kN"] }),
      shear: quantity("force", "Its shear strength in any direction, at the level stated.", { units: ["kip", "lb", "kN"] }),
      moment: quantity("moment", "Its moment strength about either axis, at the level stated, for a top that is fixed.", { units: ["kip-ft", "kN-m"] }),
      bolts,
      "cap plate": capPlate,
      "beam flange": beamFlange,
      weld: weld("A fillet all around the column top."),
    }),
    "base weld": weld("The fillet weld all around the column to its base plate."),
    "weep hole": quantity("length", "Diameter of the hole that drains a closed section just above its base plate, the concrete or the finish, whichever is highest; 0 in where there is none.", { bounds: "zero or more", units: ["in", "mm"] }),
    "weep height": quantity("length", "Height of the middle of that hole above the top of the base plate.", { bounds: "zero or more", units: ["in", "mm"] }),
    "vent hole": quantity("length", "Diameter of the hole near the top of a closed section; 0 in where there is none.", { bounds: "zero or more", units: ["in", "mm"] }),
    galvanized: yesNo("Whether the column is dipped in zinc after it is made."),
    coated: yesNo("Whether the column carries a coating made for the air it stands in."),
    base: reference("bases", "The base the column stands on, by its name under bases."),
    "stands on": reference("foundations", "The foundation below the base, by its name under foundations."),
    reactions,
    combined,
  }),
);
