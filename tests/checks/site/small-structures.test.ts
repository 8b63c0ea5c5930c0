import { describe, expect, it } from "vitest";
import { checkText } from "../../../server/src/engine/check-text.js";
import { buildReport } from "../../../server/src/engine/report.js";
import { pad, pavilion, pier, post, rockPad, shelter, wallPost } from "./small-notebooks.js";

const more = (...lines: readonly string[]) => lines.map((line) => `\n    ${line}`).join("");
const soil = (fields: string) => `\nground:\n  sand: { kind: soil, ${fields} }`;
const quiet = "seismic design category: A";
/** The stated reaction at both levels. */
const atBoth = (text: string, strength: string) => text.replace("combined: { ", `combined: { factored: { level: strength, ${strength} }, `);
const cube = (load: string) => pier({ size: "width: 5 ft", depth: "5 ft", load });
const hooked = "{ count: 4, diameter: 3/4 in, grade: F1554 Gr 36, end: hooked, hook length: 3.375 in, embedment: 12 in, spacing x: 10 in, spacing y: 10 in }";
const narrow = (deep: string) => post({ site: quiet, pier: "width: 16 in", plate: "12 in x 12 in x 1 in", anchors: `4 x 3/4 in F1554 Gr 36, headed, ${deep} deep, 8 in square`, load: "up: 25 kip" });
const pins = "count: 4, bar: no. 6, spacing: 24 in, into rock: 7 in, in concrete: 12 in, hole: 7/8 in, set in: epoxy, bar bond: 1000 psi";

const reported = (text: string) => buildReport(checkText(text), { file: "x" });
const found = (text: string, check: string) => reported(text).structures.flatMap(({ supports }) => supports.flatMap(({ findings }) => findings)).filter((finding) => finding.check === check);
const remarks = (text: string) => reported(text).structures.flatMap((structure) => structure.remarks.map(({ message }) => message)).join("\n");

type Row = readonly [what: string, text: string, check: string, state: string, words: RegExp];

/** Numbers are statics on the sizes shown, or those of the standard named beside each check. */
const rows: readonly Row[] = [
  ["A roof held down by its weight alone: what lifts it is said, and what is missing", pavilion(), "column.top-connection", "not checked", /needs the uplift strength of the connection at the column top; [\d.]+ kip lifts the roof there \(0\.9D \+ 1\.0W: wind/],
  // K_z of 1.03 and 0.57, ASCE 7-22 Table 26.10-1: (130 / 110)² x 1.03 / 0.57.
  ["A kit made for 110 mph in the woods, set up at 130 mph by the water", pavilion({ site: ", supplied design: { wind speed: 110 mph, exposure: B }" }).replace("wind speed: 115 mph, exposure: C", "wind speed: 130 mph, exposure: D"), "site.supplied-design", "over", /Wind 2\.52 times as hard as the supplied design takes: it was made for 110 mph in exposure B, and this place has 130 mph in exposure D\. Have it designed for this place/],
  ["A roof of glass on posts that sway", pavilion({ roof: ", finish: glass or stone", section: "HSS4x4x1/4" }), "column.drift", "over", /over 8 ft; 0\.24 in is the limit \(H\/400 with glass or stone\)\. Take a wider section/],
  ["Thin posts that stand as flagpoles for want of braces", pavilion({ section: "HSS3x3x1/8" }), "column.interaction", "over", /times what HSS3x3x1\/8 holds over 8 ft\. Take a thicker wall or a wider section, fix the column top, or add knee braces/],
  // 9 x 9 x 5 ft of concrete and 3 ft of soil: 87.48 kip, 0.6 of it.
  ["A footing whose weight is factored once", pad({ load: "up: 55 kip", size: "width: 9 ft\n    length: 9 ft\n    thickness: 5 ft", depth: "8 ft", more: more("backfill: compacted and tested") }), "footing.uplift", "over", /The pull is 55 kip; the footing and its soil hold 52\.49 kip, their weight reduced once, by the combination\. Thicken or widen/],
  ["A cube of a footing is looked at as a pole", cube("down: 3 kip, shear x: 2 kip, moment y: 35 kip-ft"), "pier.embedment", "over", /Depth 5 ft; [\d.]+ ft needed/],
  ["and as a block", cube("down: 3 kip, shear x: 2 kip, moment y: 35 kip-ft"), "pier.block-bearing", "over", /As a block the pressed edge bears \d+ psf; 2000 psf allowed/],
  // Three times 12 in, and a third of 60 in.
  ["A thin pedestal five feet out of its pad", pad({ size: "width: 2 ft\n    length: 2 ft\n    thickness: 8 in", depth: "1 ft", load: "down: 4 kip", more: more("pedestal: 12 in x 12 in", "above grade: 5 ft") }), "site.tall-pedestal", "over", /60 in out of the ground; 36 in is the most for a pedestal 12 in wide without bars\. Shorten it and run the column down, widen it to 20 in, or give it bars and ties and count a push of 2 % of its load/],
  ["A post on an old slab where it freezes", pad({ site: "frost depth: 42 in", ground: soil("class: concrete slab") }), "site.slab-as-footing", "over", /stands on a concrete slab where the ground freezes to 3\.5 ft; .* 3\.5 in thick or more and 750 lb a column or less\. Cut the slab open and pour a footing/],
  ["A post on an old slab where it does not", pad({ site: "frost depth: 0 in", ground: soil("class: concrete slab") }), "site.slab-as-footing", "not checked", /Have its thickness and its load shown, and what holds it down/],
  // 8 in of wall, rods 4 in apart.
  ["Rods near the face of a wall", wallPost("thickness: 8 in, retains: 0 ft, footing: { width: 3 ft, thickness: 12 in }", "shear x: 0.35 kip, moment y: 4.2 kip-ft"), "anchors.spacing", "over", /Rod to face of concrete 2 in; 3\.75 in needed/],
  ["Short pins in rock that lifts", rockPad(pins), "rock.dowel-depth", "over", /Dowels 7 in into the rock; .* Short pins stop sliding and are no anchors/],
  ["A narrow wall on rock, its dowels in rock of unknown bond", wallPost("thickness: 10 in, retains: 4 ft, fill: { side: north, method: equivalent fluid, equivalent fluid: 40 psf/ft, unit weight: 120 pcf, surcharge: 0 psf, drained: yes }, footing: { width: 3 ft, thickness: 12 in }, dowels: { bar: no. 6, spacing: 12 in, into rock: 24 in, in concrete: 12 in, hole: 1-1/4 in, set in: cement grout }"), "rock.dowel-bond", "not checked", /needs the ultimate bond between grout or adhesive and rock \(ask the geotechnical engineer, and prove it by pull tests\)/],
  ["Adhesive in cold wet rock", rockPad(`${pins}, hole condition: damp, rock temperature: below 50 F`), "rock.dowel-setting", "over", /adhesive in damp holes in rock below 50 °F\. It must be one whose printed instructions cover that/],
  ["Holes of which nobody says how wet and cold they are", rockPad(pins), "rock.dowel-setting", "not checked", /pad: state how wet the holes are \(`hole condition`\) and how cold the rock is \(`rock temperature`\)\./],
  ["A plate left open on its nuts, twice as high as its rods are thick", post({ site: quiet, base: more("grout: 0 in", "leveling nuts: yes", "gap below nuts: 1.5 in"), load: "down: 1 kip, shear x: 4 kip" }), "base.leveling-nuts", "over", /1\.\d+ times what the rods hold with 1\.5 in clear below the leveling nuts\. Place grout, lower the plate to a gap of 0\.75 in, one rod diameter/],
  ["A plate of a quarter inch", post({ plate: "8 in x 8 in x 1/4 in", anchors: "4 x 1/2 in F1554 Gr 36, headed, 8 in deep, 6 in square", load: "up: 4 kip" }), "base.details", "over", /The plate is 0\.25 in thick; 0\.5 in is the least in use\. Take a thicker plate/],
  // 10 kip at each rod, its bend line as wide as the way out to it is long twice: 10 / 2 = 5 kip-in/in; 36 ksi, 3/4 in, 0.9: 4.556.
  ["A plate bent by 40 kip up at its corners", post({ plate: "14 in x 14 in x 3/4 in", anchors: "4 x 3/4 in F1554 Gr 36, headed, 12 in deep, 11 in square", load: "up: 40 kip" }).replace("HSS6x6x3/8", "HSS8x8x3/8"), "base.plate-uplift", "over", /5 kip-in\/in against 4\.556 kip-in\/in, ratio 1\.10 .*Plate 0\.75 in; 0\.7857 in needed where the rods pull/],
  ["Loose washers over large holes: two rods of four take the shear", post({ site: quiet, base: more("hole: 1-5/16 in", "washer: 2 in x 1/4 in", "grout: 1.5 in"), load: "up: 3 kip, shear x: 15 kip" }), "anchors.steel-shear", "over", /7\.5 kip shear in one rod; .*Weld plate washers to the plate so that every rod takes shear/],
  ["A weep hole below the paving", post({ site: "frost depth: 42 in", base: more("finish above plate: 24 in"), column: more("weep hole: 1/2 in", "weep height: 2 in") }), "base.below-finish", "over", /The weep hole is 2 in above the plate, below the finish 24 in above it: .*Drill it higher/],
  // 26.4 kip by 0.70, whether the rods are 12 or 20 in deep.
  ["Rods 12 in deep in a narrow pier", narrow("12 in"), "anchors.breakout-tension", "over", /25 kip against 18\.\d+ kip.*deeper rods help only while fewer than three edges are near/],
  ["and 20 in deep hold no more", narrow("20 in"), "anchors.breakout-tension", "over", /25 kip against 18\.\d+ kip/],
  // 0.9 x 4,000 psi x 3.375 in x 0.75 in by 0.70.
  ["A hooked rod in uplift", post({ site: quiet, anchors: hooked, load: "up: 28 kip" }), "anchors.pullout", "over", /7 kip in one rod; its hook holds 6\.379 kip\. Change the hooks to headed rods/],
  // Half of 1 % of 256 in².
  ["A pier with 0.31 % of steel", pier({ site: quiet, size: "width: 16 in", depth: "8 ft", load: "up: 2 kip, shear x: 5 kip, moment y: 5 kip-ft", more: more("bars: 4 no. 4", "ties: no. 3 at 8 in") }).replace("allowable", "strength"), "pier.least-bars", "over", /4 no\. 4 have 0\.8 in²; 1\.28 in² needed, half of 1 % of the section/],
  ["A sign on a 16 in tube in clay, 4 ft deep", pier({ size: "diameter: 16 in", load: "down: 0.5 kip, shear x: 0.6 kip, moment y: 6 kip-ft", ground: soil("class: CL") }), "pier.embedment", "over", /Depth 4 ft; 8\.49\d? ft needed/],
  ["and its concrete has no bars", atBoth(pier({ site: `${quiet}, frost depth: 0 in`, size: "diameter: 16 in", load: "down: 0.5 kip, shear x: 0.6 kip, moment y: 6 kip-ft", ground: soil("class: CL") }), "down: 0.5 kip, shear x: 1 kip, moment y: 10 kip-ft"), "pier.plain", "over", /bends the pier; without bars it may take [\d.]+ kip-ft\. State `bars` and `ties`/],
];

describe("What goes wrong on such jobs along the chain from roof to ground, each by its smallest notebook", () => {
  it.each(rows)("%s", (_, text, check, state, words) => {
    expect(checkText(text).problems.filter(({ severity }) => severity === "error").map(({ message }) => message)).toEqual([]);
    const said = found(text, check);
    expect(said.map((finding) => finding.state)).toContain(state);
    expect(said.filter((finding) => finding.state === state).map(({ message }) => message).join("\n")).toMatch(words);
  });
});

describe("What goes wrong with the wind on such jobs", () => {
  it.each([
    ["stored goods that close 60 % of one side", "goods: { west edge: 60 % }", /60 % of the opening below the west edge is blocked: wind from the east and west is taken in obstructed flow too/],
    ["a wall that closes 60 % of one side", "walls: { west edge: 60 % }", /Walls or panels close 60 % of the west edge: .* the building is not open .* Each result names the case that governs it/],
    ["a building 36 ft high half a foot away", "building: { edge: south, gap: 0.5 ft, height: 36 ft }", /A building 36 ft high stands 0\.5 ft from the south edge\. .* give the footings the greater/],
  ])("%s is said, with what it changes", (_, blocked, words) => {
    expect(remarks(pavilion())).not.toMatch(words);
    expect(remarks(pavilion({ roof: `, blocked: { ${blocked} }` }))).toMatch(words);
  });

  const deepest = (roof: string) => Math.max(...found(pavilion({ roof }), "pier.embedment").map(({ demand }) => demand?.value ?? 0));

  it("a fascia 5 ft deep asks for deeper piers, and a wall that closes one side does", () => {
    expect(deepest(", fascia: { depth: 5 ft }")).toBeGreaterThan(1.4 * deepest(""));
    expect(deepest(", blocked: { walls: { west edge: 60 % } }")).toBeGreaterThan(deepest(""));
  });

  it("columns in a single line are a caution: there is no second way for the load", () => {
    expect(reported(shelter()).cautions.join("\n")).toContain("no second way for the load");
    expect(reported(pavilion()).cautions.join("\n")).not.toContain("no second way for the load");
  });
});

describe("What a builder asks the inspector", () => {
  it("dowels set in adhesive are listed, without a break where they point up or level", () => {
    expect(reported(rockPad(pins)).cautions.join("\n")).toMatch(/The building official may except small accessory structures[^]*Special inspection, periodic: dowels set in adhesive: product, hole, cleaning, depth; continuous where they point up or level and stay in tension \[IBC 2021 Table 1705\.3\]\./);
  });

  it("rods set in adhesive are, and not as rods with concrete placed round them", () => {
    const drilled = post({ anchors: "{ count: 4, diameter: 3/4 in, grade: F1554 Gr 36, end: set in adhesive, embedment: 12 in, spacing x: 10 in, spacing y: 10 in }" });
    const said = reported(drilled).cautions.join("\n");
    expect(said).toMatch(/anchor rods set in adhesive: product, hole, cleaning, depth/);
    expect(said).not.toMatch(/while concrete is placed round them/);
    expect(reported(post()).cautions.join("\n")).toMatch(/while concrete is placed round them/);
  });
});
