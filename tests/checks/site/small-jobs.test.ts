import { describe, expect, it } from "vitest";
import { checkText } from "../../../server/src/engine/check-text.js";
import { buildReport } from "../../../server/src/engine/report.js";
import { pad, pier, post, shelter } from "./small-notebooks.js";

const ground = (fields: string, name = "ledge") => `\nground:\n  ${name}: { ${fields} }`;
const soil = (fields: string) => ground(`kind: soil, ${fields}`, "sand");
const more = (...lines: readonly string[]) => lines.map((line) => `\n    ${line}`).join("");

/** Two lines of columns on two kinds of ground. */
const twoGrounds = (south: string) => `rootfast: 1
ground:
  ledge: { kind: rock, class: granite, condition: sound, drained: yes }
  sand: { kind: soil, class: SM }
columns:
  north: { line of: 2, from: "0 ft, 10 ft", to: "10 ft, 10 ft", stands on: one, combined: { given: { level: allowable, down: 1 kip } } }
  south: { line of: 2, from: "0 ft, 0 ft", to: "10 ft, 0 ft", stands on: other, combined: { given: { level: allowable, down: 1 kip } } }
foundations:
  one: { kind: pier, ground: sand, diameter: 18 in, depth: 4 ft }
  other: { kind: pier, ground: ${south}, diameter: 18 in, depth: 4 ft }
`;
const asBuilt = (built: string) => twoGrounds("sand").replace(/ {2}other: \{ (.*) \}/u, `  other: { $1, as built: { ${built} } }`);

const twoPiers = (site: string, tied = "") => `rootfast: 1
site: { ${site} }
ground:
  sand: { kind: soil, class: SM }
foundations:
  a: { kind: pier, ground: sand, diameter: 18 in, depth: 4 ft${tied}, combined: { given: { level: allowable, down: 1 kip } } }
  b: { kind: pier, ground: sand, diameter: 18 in, depth: 4 ft, tied by: slab, combined: { given: { level: allowable, down: 1 kip } } }
`;

type Row = readonly [what: string, text: string, check: string, state: string, words: RegExp];

/**
 * What goes wrong on such jobs, each by its smallest notebook. Numbers are statics on the sizes shown, the building code's pole formula, or the rules
 * named beside each check.
 */
const rows: readonly Row[] = [
  ["A roof held down by its own weight alone", shelter(), "site.load-path", "not checked", /what ties the roof to the column top is not described/],
  ["A pavilion that nothing holds in one of the two directions", shelter({ column: more("sway along x: pinned base") }), "column.interaction", "not checked", /nothing holds the roof against swaying east to west/],
  // 0.6 of a tube of 471 lb.
  ["A 12 in tube under an uplift of 1,180 lb", pier({ site: "frost depth: 0 in", size: "diameter: 12 in", load: "up: 1180 lb", more: more("ignored depth: 4 ft") }), "pier.uplift", "over", /1180 lb.*283 lb|1\.18 kip.*0\.28/],
  ["A pole of 8 ft pulled by 3,000 lb, 6 ft deep", pier({ size: "diameter: 12 in", depth: "6 ft", load: "down: 1 kip, shear x: 3 kip, moment y: 24 kip-ft", ground: soil("class: SM, lateral bearing: 150 psf/ft, isolated poles: yes") }), "pier.embedment", "over", /Depth 6 ft; 11\.18 ft needed/],
  ["A patio of pavers taken for a restraint", pier({ more: more("restrained at grade: yes", "slab at grade: { kind: pavers }"), load: "shear x: 3 kip, moment y: 24 kip-ft", size: "diameter: 12 in", ground: soil("class: SM, lateral bearing: 150 psf/ft, isolated poles: yes") }), "pier.embedment", "over", /11\.18 ft needed/],
  ["Loose backfill counted against sliding", pad({ load: "shear x: 1 kip, moment y: 5 kip-ft, down: 1 kip" }), "footing.sliding", "over", /compact and test the backfill/],
  ["A tube taken for a square foot", pier({ size: "diameter: 12 in", load: "down: 3.2 kip", ground: soil("class: SM, bearing: 1500 psf") }), "pier.bearing", "over", /1500 psf allowed. Widen the pier/],
  ["Two piers that need no tie", twoPiers("seismic design category: B"), "site.ties", "holds", /No ties .* category B: each takes its own shear/],
  ["Two piers in an earthquake with nothing between them", twoPiers("seismic design category: D", ", tied by: nothing"), "site.ties", "over", /Tie them at grade, both ways/],
  // 3 x 3 x 1 ft and 2.5 ft of soil: 1,859 lb in water, 0.6 of it.
  ["Water at grade over a pad", pad({ load: "up: 1180 lb", ground: soil("class: SM, unit weight: 110 pcf, water table: 0 ft"), more: more("backfill: compacted and tested") }), "footing.uplift", "over", /The pull is 1\.18 kip; the footing and its soil hold 1\.116 kip/],
  ["Water in the hole of a pad", pad({ ground: soil("class: SM, water table: 2 ft") }), "site.water", "not checked", /Water at 2 ft, underside at 3\.5 ft: how the concrete is placed is not stated/],
  ["A pad poured under water", pad({ ground: soil("class: SM, water table: 2 ft"), more: more("water in the hole: placed under water") }), "site.water", "over", /only a pier is filled under water.*Pump the hole dry/],
  ["A shelter too large for the exception from frost", shelter({ site: ", frost exception: other framing", roof: ", fascia: { depth: 1 in }", depth: "12 in" }).replace("length: 24 ft, width: 14 ft", "length: 24 ft, width: 20 ft"), "site.frost", "over", /underside at 1 ft, 3 ft 6 in needed.*ends at 400 ft² of other framing, and the roof has 480 ft²\. Go deeper/],
  ["A small shelter excepted from frost", shelter({ site: ", frost exception: light frame", depth: "12 in" }).replace("slope: 2.5 in 12", "slope: 1 in 12"), "site.frost", "holds", /a small free-standing structure is excepted/],
  ["A post on pavers", pier({ ground: ground("kind: soil, class: pavers on sand", "bed") }), "site.paving", "over", /carries neither pull nor push. Lift the paving, pour a footing/],
  ["Sound ledge above the frost line", pad({ site: "frost depth: 42 in", depth: "24 in", ground: ground("kind: rock, class: granite, condition: sound, drained: yes") }), "site.frost", "holds", /sound rock, not by depth/],
  ["Weathered ledge above the frost line", pad({ site: "frost depth: 42 in", depth: "24 in", ground: ground("kind: rock, class: granite, condition: weathered") }), "site.frost", "over", /3 ft 6 in needed.*weathered rock does not take the place of depth. Go deeper/],
  ["Half on ledge, half on soil", twoGrounds("ledge"), "site.one-ground", "over", /south on rock, north on soil.*down to rock; or bench .* cushion .*; or separate/],
  ["Rock met early below one line", asBuilt("rock met at: 30 in"), "site.one-ground", "over", /south \(as built: rock met at 2\.5 ft\) on rock, north on soil/],
  ["Rock met early at one pier of two", asBuilt("rock met at: 30 in, rock met by: 1"), "site.one-ground", "over", /1 of the 2 foundations of south met rock at 2\.5 ft/],
  ["Another ground found when the pier was dug", asBuilt("ground: ledge"), "site.one-ground", "over", /south \(as built\) on rock, north on soil/],
  ["A column that stands on its rods", post({ site: "seismic design category: A", base: more("grout: 0 in", "leveling nuts: yes", "gap below nuts: 2 in", "projection: 5 in"), load: "down: 6.2 kip, shear x: 2 kip" }), "base.leveling-nuts", "over", /one rod diameter|gap/i],
  ["Grout thinner than the bag allows", post({ base: more("grout: 0.5 in") }), "base.grout-thickness", "over", /Grout 0\.5 in; 0\.75 in is the least in use/],
  ["A tube without a drain where it freezes", post({ site: "frost depth: 42 in", column: more("weep hole: 0 in") }), "site.closed-sections", "over", /splits its wall. Drill 0\.5 in/],
  ["A slab poured tight to a post", pier({ site: "frost depth: 42 in", more: more("slab at grade: { kind: loose slab, joint: 0 in }") }), "site.isolation", "over", /Joint 0 in.*frost lifts the slab and the pier with it. Part them by a joint of 0\.5 in/],
  // 12 in round, rods on a 6 in square: 6 - 3 sqrt 2.
  ["Rods near the face of a round pier", post({ pier: "diameter: 12 in", plate: "8 in x 8 in x 3/4 in", anchors: "4 x 3/4 in F1554 Gr 36, headed, 12 in deep, 6 in square" }), "anchors.spacing", "over", /Rod to face of concrete 1\.757 in; 4\.5 in needed/],
  ["One tie at the top of a pier", post({ pier: "diameter: 24 in, bars: 8 no. 6, spiral: no. 3 at 3 in, top ties: 1 no. 3" }), "anchors.top-ties", "over", /1 no\. 3 within 5 in of the top; two no\. 4 or three no\. 3 needed/],
  ["A bent rod of grade 55", post({ anchors: "4 x 3/4 in F1554 Gr 55, headed, 12 in deep, 10 in square", base: more("as built: { anchors: { bent: 30 deg } }") }), "anchors.rod-steel", "over", /Rod bent 30°: field bending is for grade 36 alone/],
  // 1.5 + 1 + 3/8 + 1 + 3 threads of 1/8.
  ["A rod 0.65 in too short", post({ anchors: "4 x 1 in F1554 Gr 36, headed, 12 in deep, 10 in square", base: more("grout: 1.5 in", "projection: 3.6 in", "washer: 3 in x 3/8 in") }), "base.projection", "over", /Projection 3\.6 in, 4\.25 in needed.*0\.65 in short/],
  ["Two rods below a column", post({ site: "seismic design category: A", anchors: '{ count: 2, diameter: 3/4 in, grade: F1554 Gr 36, end: headed, embedment: 12 in, places: ["-4 in, 0 in", "4 in, 0 in"] }' }), "base.erection", "over", /2 rods; 4 are needed to set the column/],
  ["Weak concrete where it freezes", pier({ site: "frost depth: 42 in" }).replace("4000 psi", "3000 psi"), "site.exposure", "over", /Concrete 3000 psi where the ground freezes; 3500 psi is the least \(F1\), 4500 psi where it is often wet \(F2\)/],
  ["Often wet concrete without air", pier({ site: "frost depth: 42 in", more: more("freezing exposure: F2", "water-cement ratio: 0.45", "air content: 4 %", "aggregate size: 3/4 in") }).replace("4000 psi", "4500 psi"), "site.exposure", "over", /Air 4 %; 6 % needed in exposure F2 with aggregate of 0\.75 in. Order more entrained air/],
  ["Bars near the ground below a pad", pad({ more: more("bottom bars: no. 5 at 8 in, each way", "cover: 2 in") }), "site.cover", "over", /Cover 2 in; 3 in needed/],
  ["A trench beside a pad", pad({ more: more("neighbors: { sewer: { kind: trench, distance: 2 ft, depth: 6 ft } }") }), "site.neighbors", "over", /sewer: 2 ft away and 6 ft deep, underside at 3\.5 ft; 2\.5 ft needed \(a line of 1 in 1\).*go down to 4 ft/],
  ["A pavilion by a pool nobody measured", pad({ site: "air: pool" }), "site.neighbors", "not checked", /how far from it the foundation stands, and how deep the pool is, is not stated/],
  ["Plain rods in salt spray", post({ site: "air: salt spray", column: more("galvanized: yes"), base: more("protection: galvanized", "rod finish: plain", "nut finish: plain") }), "site.corrosion", "over", /Plain anchor rods in this air. Have them hot-dip galvanized/],
  ["Galvanized rods with plain nuts", post({ base: more("rod finish: hot-dip galvanized", "nut finish: plain") }), "site.corrosion", "over", /one set with one finish/],
  ["Columns set on green concrete", pier({ more: more("strength at erection: 2000 psi") }), "site.cure", "over", /Concrete 2000 psi when the columns are set; 3000 psi needed, three quarters of 4000 psi. Wait/],
  ["Columns set three days after the pour", pier({ more: more("days before erection: 3") }), "site.cure", "over", /3 days from the pour to the columns; 7 is the least without tests/],
  ["A pier both round and square", pier({ size: "diameter: 18 in\n    width: 16 in" }), "site.sizes", "over", /a diameter of 18 in and a side of 16 in: a pier is round or square/],
  ["A pad thicker than its depth leaves for the pedestal", pad({ more: more("pedestal: 16 in x 16 in"), size: "width: 3 ft\n    length: 3 ft\n    thickness: 42 in" }), "site.sizes", "over", /Pad 42 in thick, .* there are 42 in: nothing is left for the pedestal/],
  ["A pedestal wider than its pad", pad({ more: more("pedestal: 40 in x 16 in") }), "site.sizes", "over", /Pedestal 40 in along x, on a pad of 36 in. Widen the pad/],
  ["A pad whose elevations do not close", pad({ more: more("above grade: 6 in") }), "site.sizes", "over", /Depth and top of concrete make 48 in, and its thickness 12 in/],
  ["A column outside its roof", shelter().replace("to: 23 ft, 7 ft", "to: 32 ft, 7 ft"), "site.sizes", "over", /A column stands at 32 ft, 7 ft, outside the roof of 24 ft by 14 ft/],
  ["Six bolts called four", shelter({ column: more("top connection: { detail: four 5/8 in bolts, bolts: { count: 6, diameter: 3/4 in } }") }), "site.sizes", "over", /The detail at the column top says four bolts, and 6 are given.*bolts of 0\.625 in, and 0\.75 in is given/],
  ["A foundation with reactions of its own below a column", post().replace("diameter: 24 in }", "diameter: 24 in, combined: { own: { level: strength, down: 1 kip } } }"), "site.agreement", "over", /carries reactions of its own, and column P1 stands on it too/],
  ["A rod longer than its pier", post({ anchors: "4 x 3/4 in F1554 Gr 36, headed, 50 in deep, 10 in square" }), "anchors.fit", "over", /Concrete 48 in deep; .* needed for rods 50 in deep/],
  ["A column that does not reach its roof", shelter().replace("height: 8 ft\n", "height: 6 ft\n"), "site.agreement", "over", /the column would begin 3 ft above grade; by concrete, grout and plate it begins at 1 in\. Correct the height/],
];

const found = (text: string, check: string) =>
  buildReport(checkText(text), { file: "x" }).structures.flatMap(({ supports }) => supports.flatMap(({ findings }) => findings)).filter((finding) => finding.check === check);

describe("What goes wrong on such jobs, each by its smallest notebook", () => {
  it.each(rows)("%s", (_, text, check, state, words) => {
    expect(checkText(text).problems.filter(({ severity }) => severity === "error").map(({ message }) => message)).toEqual([]);
    const said = found(text, check);
    expect(said.map((finding) => finding.state)).toContain(state);
    expect(said.filter((finding) => finding.state === state).map(({ message }) => message).join("\n")).toMatch(words);
  });
});

/** What is left to others on such jobs, and the words that say so beside the support. */
const left: readonly (readonly [what: string, text: string, words: RegExp])[] = [
  ["a wall of blocks, and what the edge of an old slab holds", pier(), /posts on or just behind a wall of blocks, whose blocks take neither pull nor twist/],
  ["a kit whose papers nobody has", pier(), /where what it was made for is not stated \(site, supplied design\)/],
  ["a canopy fastened to a house, or a few inches from it", shelter(), /a canopy fastened to a building, or so close to one that the wind along its wall lifts the canopy too/],
  ["limits of the local official for small structures", pier({ site: "frost depth: 42 in" }), /limits of the local official for small structures/],
  ["the settlement of a footing on soil", pad(), /settlement/],
  ["special inspections and what others must confirm, which are listed elsewhere", pier(), /Special inspections and what others must confirm are listed among the cautions/],
  ["flood, vehicles and what is hung up later", pier(), /Flood and scour\.[^]*Impact of vehicles\.[^]*Solar panels or curtains added later\./],
];

describe("What is left to others on such jobs is said", () => {
  it.each(left)("%s", (_, text, words) => {
    const { structures } = buildReport(checkText(text), { file: "x" });
    expect(structures.flatMap(({ supports }) => supports.flatMap(({ notCovered }) => notCovered.map((line) => line.text))).join("\n")).toMatch(words);
  });
});
