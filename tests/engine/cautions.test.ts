import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { cautions, cautionsFor } from "../../server/src/engine/cautions.js";
import { inspectionsOf } from "../../server/src/engine/inspection.js";
import { toConfirm } from "../../server/src/engine/others.js";
import { structuresOf } from "../checks/site/structures.js";

const sample = (name: string) => structuresOf(readFileSync(join(__dirname, `../../samples/${name}.rootfast`), "utf8"));
const landing = sample("landing-shelter");
const stops = sample("bus-stop-reactions");
const text = (structures: ReturnType<typeof sample>) => cautionsFor(structures).join("\n");

describe("Cautions", () => {
  it("begin with those that hold always, the local code among them, and say nothing twice", () => {
    const all = cautionsFor(landing);
    expect(all.slice(0, cautions.length)).toEqual(cautions);
    expect(all[0]).toContain("the local code and its amendments come first");
    expect(new Set(all).size).toBe(all.length);
    expect(cautionsFor([])).toEqual(cautions);
  });

  it.each([
    ["bracing and the rods of erection, where there are columns", /at least four rods and holds 300 lb .* 1926\.755\(a\)/, true, false],
    ["written word before a rod is changed", /1926\.755\(b\)/, true, false],
    ["strength of the concrete in writing", /1926\.752\(a\)/, true, false],
    ["grout before the load", /grout before the structure is loaded/, true, false],
    ["holes deeper than 5 ft", /deeper than 5 ft/, false, true],
    ["pull tests of the dowels", /pull tests on the first dowels/, true, true],
    ["frozen ground", /frozen ground/, true, true],
    ["chlorides", /Chlorides/, false, false],
    ["detailing for earthquakes", /detailing beyond strength/, false, false],
  ])("speak of %s", (_, words, atLanding, atStops) => {
    expect(words.test(text(landing))).toBe(atLanding);
    expect(words.test(text(stops))).toBe(atStops);
  });

  it("speak of salt, earthquakes, adhesive, open nuts and water in the hole only where the notebook has them", () => {
    const harsh = `rootfast: 1
site: { air: pool, seismic design category: D }
ground:
  g: { kind: soil, water table: 2 ft }
columns:
  P: { base: A, stands on: f, combined: { g: { level: strength, down: 1 kip } } }
bases:
  A: { grout: 0 in, leveling nuts: yes, anchors: { count: 4 } }
foundations:
  f: { kind: footing on rock, ground: g, depth: 4 ft, dowels: { set in: epoxy } }
`;
    const said = text(structuresOf(harsh));
    for (const words of [/zinc and coating of steel and rods/, /Chlorides of sea or pool/, /detailing beyond strength/, /printed instructions govern/, /tightened in a set way/, /Water stands above an underside/]) {
      expect(said).toMatch(words);
      expect(text(landing)).not.toMatch(words);
    }
    expect(said).not.toMatch(/grout before the structure is loaded|deeper than 5 ft/);
  });

  it("name a single line of columns", () => {
    const one = "rootfast: 1\nroof: { length: 20 ft, width: 10 ft }\ncolumns:\n  P: { line of: 3, from: \"2 ft, 5 ft\", to: \"18 ft, 5 ft\" }\n";
    expect(text(structuresOf(one))).toContain("no second way for the load");
    expect(text(landing)).not.toContain("no second way for the load");
  });
});

describe("Special inspections, IBC 2021 chapter 17", () => {
  it("are those of what the structure has", () => {
    expect(inspectionsOf(landing[0]).map(({ what, extent, at }) => [what.split(/[:,]/u)[0], extent, at.join()])).toEqual([
      ["drilling of each pier", "continuous", "south"],
      ["ground below the footings and its depth", "periodic", "north"],
      ["bars", "periodic", "north,south"],
      ["anchor rods", "periodic", "north,south"],
      ["fresh concrete", "continuous", "north,south"],
      ["curing of the concrete", "periodic", "north,south"],
      ["dowels set in cement grout", "periodic", "north"],
      ["welds of the columns to base plates and tops", "periodic", "north,south"],
      ["bolts at the column tops", "periodic", "north,south"],
      ["grout below the base plates", "periodic", "north,south"],
    ]);
  });

  it.each([
    ["ties of a pier", "kind: pier, ties: no. 3 at 8 in"],
    ["bars of a wall", "kind: wall on footing, stem bars: { middle: { vertical: no. 5 at 12 in } }"],
    ["dowels below a wall", "kind: wall on footing, joint dowels: { middle: no. 5 at 12 in }"],
    ["bars of a strip footing", "kind: wall on footing, footing: { width: 3 ft, bottom bars: no. 4 at 9 in }"],
  ])("ask for a look at %s, and not where there are none", (_, fields) => {
    const of = (inner: string) => inspectionsOf(structuresOf(`rootfast: 1\nfoundations:\n  a: { ${inner}, combined: { g: { level: allowable, down: 1 kip } } }\n`)[0]).some(({ what }) => what.startsWith("bars"));
    expect(of(fields)).toBe(true);
    expect(of(fields.split(",")[0])).toBe(false);
  });

  it("ask for compacted fill and adhesive dowels only where they are", () => {
    const with_ = "rootfast: 1\nfoundations:\n  a: { kind: footing, backfill: compacted and tested, combined: { g: { level: allowable, down: 1 kip } } }\n  b: { kind: footing on rock, dowels: { set in: epoxy }, combined: { g: { level: allowable, down: 1 kip } } }\n";
    const words = inspectionsOf(structuresOf(with_)[0]).map(({ what }) => what).join("\n");
    expect(words).toMatch(/compacting of the fill/);
    expect(words).toMatch(/dowels set in adhesive/);
    expect(words).not.toMatch(/pier|cement grout|anchor rods|welds|bolts/);
    expect(inspectionsOf(structuresOf("rootfast: 1\n")[0])).toEqual([]);
  });
});

describe("What others must confirm", () => {
  const of = (structures: ReturnType<typeof sample>, i = 0) => toConfirm(structures[i]).map(({ who, what }) => `${who}: ${what}`).join("\n");

  it("names who and what, by what the notebook states", () => {
    expect(of(landing)).toMatch(/the building official: adopted codes with their local amendments, wind speed and exposure, ground snow, frost depth, seismic design category/);
    expect(of(landing)).toMatch(/pull tests: the bond of the dowels in ledge/);
    expect(of(landing)).toMatch(/the strengths stated at the column tops of north, south/);
    expect(of(landing)).toMatch(/the designer of the roof: that it is rigid in its plane/);
    expect(of(landing)).not.toMatch(/reactions given/);
    expect(of(stops)).toMatch(/whoever designed the structure above: the reactions given for mill pier/);
    expect(of(stops)).not.toMatch(/column tops|rigid/);
  });

  it("asks a geotechnical engineer where no source is named", () => {
    const bare = "rootfast: 1\nground:\n  sand: { kind: soil, class: SM }\nfoundations:\n  a: { kind: pier, ground: sand, combined: { g: { level: allowable, down: 1 kip } } }\n";
    expect(of(structuresOf(bare))).toMatch(/a geotechnical engineer: the values of sand, for which no source is named/);
    expect(of(landing)).toMatch(/open hole: that the ground is the one described: ledge \(two test pits along the north line\), sand \(one test pit/);
  });
});
