import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { airFor, mixNeeded } from "../../../server/src/catalog/concrete-exposure.js";
import { corrosion } from "../../../server/src/checks/site/corrosion.js";
import { cover } from "../../../server/src/checks/site/cover.js";
import { cure } from "../../../server/src/checks/site/cure.js";
import { exposure } from "../../../server/src/checks/site/exposure.js";
import { isolation } from "../../../server/src/checks/site/isolation.js";
import { neighbors } from "../../../server/src/checks/site/neighbors.js";
import { sizes } from "../../../server/src/checks/site/sizes.js";
import { ties } from "../../../server/src/checks/site/ties.js";
import { water } from "../../../server/src/checks/site/water.js";
import { inch, psi } from "../given.js";
import { pad, pier, post } from "./small-notebooks.js";
import { saidOf, structuresOf } from "./structures.js";

const structureOf = (text: string) => structuresOf(text)[0];

const more = (...lines: readonly string[]) => lines.map((line) => `\n    ${line}`).join("");
const wet = (strength: string, ...lines: readonly string[]) => pier({ site: "frost depth: 42 in", more: more(...lines) }).replace("4000 psi", strength);

// ACI 318-19 Tables 19.3.2.1 and 19.3.3.1, from memory.
describe("Mix of the concrete by its exposure, ACI 318-19 Tables 19.3.2.1 and 19.3.3.1", () => {
  it.each([
    ["F0", 2500, undefined], ["F1", 3500, 0.55], ["F2", 4500, 0.45], ["F3", 5000, 0.4],
    ["S0", 2500, undefined], ["S1", 4000, 0.5], ["S2", 4500, 0.45], ["S3", 4500, 0.45],
    ["W0", 2500, undefined], ["W1", 2500, undefined], ["W2", 4000, 0.5],
    ["C0", 2500, undefined], ["C1", 2500, undefined], ["C2", 5000, 0.4],
  ] as const)("%s asks for %d psi", (name, strength, ratio) => {
    expect(mixNeeded[name].strength / psi).toBeCloseTo(strength, 6);
    expect(mixNeeded[name].waterCement).toBe(ratio);
  });

  it.each([
    [0.375, 6, 7.5], [0.5, 5.5, 7], [0.75, 5, 6], [1, 4.5, 6], [1.5, 4.5, 5.5], [2, 4, 5], [3, 3.5, 4.5],
    // Between two rows the smaller aggregate's air counts.
    [0.9, 5, 6],
  ])("aggregate of %d in takes %d % of air in F1 and %d % in F2", (size, F1, F2) => {
    expect((airFor("F1", size * inch) ?? 0) * 100).toBeCloseTo(F1, 9);
    expect((airFor("F2", size * inch) ?? 0) * 100).toBeCloseTo(F2, 9);
    expect(airFor("F3", size * inch)).toBe(airFor("F2", size * inch));
  });

  it("has no air for an aggregate smaller than the table's", () => {
    expect(airFor("F1", 0.25 * inch)).toBeUndefined();
  });

  const F2 = "freezing exposure: F2";
  it.each([
    ["too weak", "4400 psi", [F2, "water-cement ratio: 0.45", "air content: 6 %", "aggregate size: 3/4 in"], "over", /Concrete 4400 psi; 4500 psi needed in exposure F2/],
    ["enough of everything", "4500 psi", [F2, "water-cement ratio: 0.45", "air content: 6 %", "aggregate size: 3/4 in"], "holds", /4500 psi in exposure F2/],
    ["too much water", "4500 psi", [F2, "water-cement ratio: 0.46", "air content: 6 %", "aggregate size: 3/4 in"], "over", /Water-cement ratio 0\.46; 0\.45 is the most in exposure F2/],
    ["too little air", "4500 psi", [F2, "water-cement ratio: 0.45", "air content: 5.9 %", "aggregate size: 3/4 in"], "over", /Air 5\.9 %; 6 % needed/],
    // A point less above 5000 psi.
    ["a point less air in strong concrete", "5100 psi", [F2, "water-cement ratio: 0.40", "air content: 5 %", "aggregate size: 3/4 in"], "holds", /5100 psi/],
    ["still too little air in strong concrete", "5100 psi", [F2, "water-cement ratio: 0.40", "air content: 4.9 %", "aggregate size: 3/4 in"], "over", /Air 4\.9 %; 5 % needed/],
    ["5000 psi is not yet strong", "5000 psi", [F2, "water-cement ratio: 0.40", "air content: 5.9 %", "aggregate size: 3/4 in"], "over", /6 % needed/],
    ["no ratio stated", "4500 psi", [F2, "air content: 6 %", "aggregate size: 3/4 in"], "unchecked", /ratio of the mix is not stated; 0\.45 is the most/],
    ["no air stated", "4500 psi", [F2, "water-cement ratio: 0.45"], "unchecked", /Air in the concrete is not stated/],
    ["no aggregate stated", "4500 psi", [F2, "water-cement ratio: 0.45", "air content: 6 %"], "unchecked", /goes by the aggregate size/],
    ["the strictest class governs", "4600 psi", ["freezing exposure: F0", "sulfate exposure: S1", "corrosion exposure: C2", "water-cement ratio: 0.42"], "over", /5000 psi needed in exposure C2.*0\.42; 0\.4 is the most in exposure C2/],
    ["no class, and the least for freezing is missed", "3400 psi", [], "over", /3500 psi is the least/],
  ] as const)("%s", (_, strength, lines, verdict, words) => {
    expect(saidOf(exposure, wet(strength, ...lines))).toMatchObject({ verdict, message: expect.stringMatching(words) });
  });

  it("says nothing where no class is stated and the mildest one holds, or the ground does not freeze, or the pad lies below the frost", () => {
    expect(saidOf(exposure, wet("3500 psi"))).toBeUndefined();
    expect(saidOf(exposure, pier({ site: "frost depth: 0 in" }).replace("4000 psi", "2500 psi"))).toBeUndefined();
    expect(saidOf(exposure, pad({ site: "frost depth: 24 in", depth: "3.5 ft" }).replace("4000 psi", "2500 psi"))).toBeUndefined();
    expect(saidOf(exposure, pad({ site: "frost depth: 36 in", depth: "3.5 ft" }).replace("4000 psi", "2500 psi"))?.verdict).toBe("over");
  });

  it("asks for chlorides in salt air, and does not answer by an edition it does not know", () => {
    expect(saidOf(exposure, pier({ site: "air: salt spray" }))).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("corrosion exposure") });
    expect(saidOf(exposure, wet("4000 psi", F2).replace("foundations:", "codes: { concrete: ACI 318-25 }\nfoundations:"))).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("ACI 318-25") });
  });
});

// A line of 1 in 1 from the edge of the underside; common practice, no source.
describe("What is dug or built beside a foundation", () => {
  const beside = (kind: string, distance: string, depth: string, under: (more: Parameters<typeof pad>[0]) => string = pad, lines: readonly string[] = []) =>
    saidOf(neighbors, under({ more: more(`neighbors: { it: { kind: ${kind}, distance: ${distance}, depth: ${depth} } }`, ...lines) }));

  it.each([
    ["trench", "2.4 ft", "6 ft", "over"],
    ["trench", "2.5 ft", "6 ft", "holds"],
    ["trench", "0 ft", "3.5 ft", "holds"],
    ["pool", "1 ft", "5 ft", "over"],
    ["retaining wall", "1 ft", "5 ft", "over"],
    // The pad at 3.5 ft undermines a footing at 2 ft that is nearer than 1.5 ft; a trench has nothing to be undermined.
    ["footing", "1.4 ft", "2 ft", "over"],
    ["footing", "1.5 ft", "2 ft", "holds"],
    ["trench", "1 ft", "2 ft", "holds"],
  ])("a %s %s away, %s deep, beside a pad at 3.5 ft: %s", (kind, distance, depth, verdict) => {
    expect(beside(kind, distance, depth)?.verdict).toBe(verdict);
  });

  it("names the depth that clears the line, both ways", () => {
    expect(beside("trench", "2 ft", "6 ft")?.message).toContain("go down to 4 ft");
    expect(beside("footing", "1 ft", "2 ft")?.message).toContain("stop at 3 ft or less");
  });

  it("takes the soil a pier leans on for missing down to the trench, unless it is left out already", () => {
    expect(beside("trench", "3.9 ft", "3 ft", pier)).toMatchObject({ verdict: "over", message: expect.stringMatching(/Leave out 3 ft \(ignored depth\), or move them 4 ft apart/) });
    expect(beside("trench", "4 ft", "3 ft", pier)?.verdict).toBe("holds");
    expect(beside("trench", "3.9 ft", "3 ft", pier, ["ignored depth: 3 ft"])?.verdict).toBe("holds");
    expect(beside("footing", "3.9 ft", "3 ft", pier)?.verdict).toBe("holds");
  });

  it("asks for what is not stated", () => {
    expect(saidOf(neighbors, pad({ more: more("neighbors: { it: { kind: pool } }") }))).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("its distance and its depth are needed") });
    expect(saidOf(neighbors, pad())).toBeUndefined();
  });

  it("never speaks against a neighbor that moves away", () => {
    const meters = fc.double({ min: 0.1, max: 9, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom("pool", "trench", "basement", "retaining wall", "footing"), meters, meters, meters, (kind, a, more_, z) => {
        const at = (distance: number) => beside(kind, `${distance} m`, `${z} m`)?.verdict;
        return at(a) !== "holds" || at(a + more_) === "holds";
      }),
      { numRuns: 40 },
    );
  });
});

describe("Joints, water, cure, cover", () => {
  const slab = (text: string, site = "frost depth: 42 in") => saidOf(isolation, pier({ site, more: more(`slab at grade: { ${text} }`) }));
  it.each([
    ["kind: tied slab", "frost depth: 42 in", "unchecked"],
    ["kind: tied slab, frost protected: no", "frost depth: 42 in", "over"],
    ["kind: tied slab, frost protected: yes", "frost depth: 42 in", "holds"],
    ["kind: tied slab", "frost depth: 0 in", "holds"],
    ["kind: tied slab", "", "unchecked"],
    ["kind: loose slab", "", "unchecked"],
    ["kind: loose slab, joint: 0 in", "frost depth: 0 in", "over"],
    ["kind: loose slab, joint: 0.49 in", "", "over"],
    ["kind: loose slab, joint: 0.5 in", "", "holds"],
    ["kind: loose slab, joint: 12.7 mm", "", "holds"],
    ["kind: pavers", "frost depth: 42 in", "holds"],
  ])("%s, %s: %s", (text, site, verdict) => {
    expect(slab(text, site)?.verdict).toBe(verdict);
  });

  const inWater = (table: string, placed = "", under = pier) => saidOf(water, under({ ground: `\nground:\n  sand: { kind: soil, class: SM, water table: ${table} }`, more: placed && more(`water in the hole: ${placed}`) }));
  it("asks about water only where it stands above the underside", () => {
    expect(inWater("4 ft")).toBeUndefined();
    expect(inWater("3.9 ft")?.verdict).toBe("unchecked");
    expect(inWater("3.9 ft", "placed under water")?.verdict).toBe("holds");
    expect(inWater("3 ft", "placed under water", pad)?.verdict).toBe("over");
    expect(inWater("3 ft", "pumped dry", pad)?.verdict).toBe("holds");
  });

  // 29 CFR 1926.752(a)(1): 75 percent of 4000 psi.
  it.each([
    ["strength at erection: 2990 psi", "over"],
    ["strength at erection: 3000 psi", "holds"],
    ["days before erection: 6", "over"],
    ["days before erection: 7", "holds"],
  ])("%s: %s", (line, verdict) => {
    expect(saidOf(cure, pier({ more: more(line) }))?.verdict).toBe(verdict);
  });

  it("prefers tested strength to days, and asks nothing where neither is stated", () => {
    expect(saidOf(cure, pier({ more: more("strength at erection: 3100 psi", "days before erection: 3") }))?.verdict).toBe("holds");
    expect(saidOf(cure, pier())).toBeUndefined();
  });

  it.each([["2.95 in", "over"], ["3 in", "holds"], ["76.2 mm", "holds"]])("cover of %s below the bars of a pad: %s", (given, verdict) => {
    expect(saidOf(cover, pad({ more: more("bottom bars: no. 5 at 8 in, each way", `cover: ${given}`) }))?.verdict).toBe(verdict);
    expect(saidOf(cover, pad({ more: more(`cover: ${given}`) }))).toBeUndefined();
  });

  it.each([
    ["2.95 in", "over", /below the bars of the strip footing of a wall, which is cast against the ground/],
    ["3 in", "holds", /strip footing of a wall/],
  ])("cover of %s below the bars of a strip footing: %s", (given, verdict, words) => {
    const wall = (footing: string) => `rootfast: 1\nfoundations:\n  f:\n    kind: wall on footing\n    footing:\n      width: 3 ft\n      thickness: 1 ft${footing}\n    cover: ${given}\n    combined: { g: { level: allowable, down: 1 kip } }\n`;
    const said = saidOf(cover, wall("\n      bottom bars: no. 4 at 9 in"));
    expect(said?.verdict).toBe(verdict);
    expect(said?.message).toMatch(words);
    expect(saidOf(cover, wall(""))).toBeUndefined();
  });

  it("cover below the bars of a pad on rock is looked at too", () => {
    const on = (given: string) => saidOf(cover, `rootfast: 1\nfoundations:\n  f:\n    kind: footing on rock\n    bottom bars: no. 5 at 8 in, each way\n    cover: ${given}\n    combined: { g: { level: allowable, down: 1 kip } }\n`);
    expect(on("2.9 in")?.message).toMatch(/which is cast against the rock\. Set the bars higher/);
    expect(on("3 in")?.verdict).toBe("holds");
  });
});

describe("Ties between foundations, IBC 2021 1809.13 and 1810.3.13", () => {
  const of = (site: string, kind: "pier" | "footing", tied = "", ground = "kind: soil, class: SM") => {
    const foundation = (name: string) => `  ${name}: { kind: ${kind}, ground: g, width: 3 ft, length: 3 ft, thickness: 1 ft, depth: 4 ft${tied}, combined: { given: { level: allowable, down: 1 kip } } }\n`;
    return [`rootfast: 1\nsite: { ${site} }\nground:\n  g: { ${ground} }\nfoundations:\n${foundation("a")}`, foundation("b")] as const;
  };
  const verdicts = (...given: Parameters<typeof of>) => {
    const [one, second] = of(...given);
    return { alone: saidOf(ties, one)?.verdict, both: ties.judge(structureOf(one + second)).map(({ verdict }) => verdict) };
  };

  it.each([
    ["seismic design category: B", "pier", "", "holds"],
    ["seismic design category: C", "pier", "", "unchecked"],
    ["seismic design category: C", "pier", ", tied by: nothing", "over"],
    ["seismic design category: C", "pier", ", tied by: grade beams", "holds"],
    ["seismic design category: C", "footing", "", "holds"],
    ["seismic design category: D", "footing", "", "unchecked"],
    ["seismic design category: D, site class: D", "footing", "", "holds"],
    ["seismic design category: D, site class: E", "footing", "", "unchecked"],
    ["seismic design category: D, site class: E", "footing", ", tied by: nothing", "over"],
    ["seismic design category: D, site class: E", "footing", ", tied by: slab", "holds"],
  ] as const)("%s, %s%s: %s", (site, kind, tied, verdict) => {
    expect(verdicts(site, kind, tied)).toEqual({ alone: undefined, both: [verdict, verdict] });
  });

  it("asks for none on rock, and says nothing without a category", () => {
    expect(verdicts("seismic design category: D", "pier", "", "kind: rock, class: granite").both).toEqual(["holds", "holds"]);
    expect(verdicts("", "pier").both).toEqual([]);
  });
});

describe("Rust by the air, and unlike metals", () => {
  const of = (air: string, column: readonly string[], base: readonly string[]) => saidOf(corrosion, post({ site: `air: ${air}`, column: more(...column), base: more(...base) }));
  const set = ["rod finish: hot-dip galvanized", "nut finish: hot-dip galvanized"];
  it.each([
    ["salt spray", ["galvanized: yes"], ["protection: galvanized and coated", ...set], "holds"],
    ["pool", ["coated: yes"], ["protection: galvanized", ...set], "holds"],
    ["salt spray", [], ["protection: galvanized", ...set], "unchecked"],
    ["salt spray", ["galvanized: no"], ["protection: galvanized", ...set], "over"],
    ["salt spray", ["galvanized: yes"], set, "unchecked"],
    ["salt spray", ["galvanized: yes"], ["protection: none", ...set], "over"],
    ["salt spray", ["galvanized: yes"], ["protection: galvanized"], "unchecked"],
    // A plate below the finish has a rule of its own.
    ["salt spray", ["galvanized: yes"], ["finish above plate: 6 in", ...set], "holds"],
    ["dry", [], set, "holds"],
    ["dry", [], ["rod finish: plain"], "unchecked"],
    ["dry", [], ["nut finish: plain"], "unchecked"],
    ["dry", [], ["rod finish: stainless", "nut finish: stainless"], "holds"],
    ["humid", [], ["rod finish: stainless", "nut finish: stainless"], "over"],
    ["humid", [], ["rod finish: stainless", "nut finish: stainless", "metals kept apart: yes"], "holds"],
  ] as const)("%s air, %j, %j: %s", (air, column, base, verdict) => {
    expect(of(air, column, base)?.verdict).toBe(verdict);
  });

  it("asks nothing in dry or humid air where no finish is stated", () => {
    expect(of("humid", [], [])).toBeUndefined();
  });
});

describe("Sizes held against each other", () => {
  it.each([
    ["a column wider than its plate", post({ plate: "5 in x 14 in x 1 in" }), /Column 6 in along x, plate 5 in/],
    ["a headed rod with a hook", post({ anchors: "{ count: 4, diameter: 3/4 in, end: headed, hook length: 3 in }" }), /headed, and a hook of 3 in is given/],
    ["a gap below nuts in grout", post({ base: more("grout: 1 in", "gap below nuts: 1 in") }), /Grout 1 in, and a gap of 1 in below the nuts/],
    ["an ignored depth as deep as the pier", pier({ more: more("ignored depth: 4 ft") }), /nothing of the pier is left in the ground/],
    ["bars that do not go into a pier", pier({ size: "diameter: 8 in", more: more("bars: 4 no. 6", "spiral: no. 4 at 3 in") }), /Pier 8 in wide; its bars with ties and cover take 8\.5 in/],
    ["more piers met rock than there are", pier({ more: more("as built: { rock met at: 2 ft, rock met by: 3 }") }), /Rock met by 3 of 1 foundations/],
  ] as const)("%s", (_, text, words) => {
    expect(saidOf(sizes, text)).toMatchObject({ verdict: "over", message: expect.stringMatching(words) });
  });

  const wall = (fields: string) => `rootfast: 1
ground:
  ledge: { kind: rock }
columns:
  a: { line of: 2, from: "0 ft, 0 ft", to: "10 ft, 0 ft", stands on: wall, base: A, combined: { given: { level: strength, down: 1 kip } } }
bases:
  A: { plate: 12 in x 12 in x 1 in }
foundations:
  wall: { kind: wall on footing, ground: ledge, footing: 42 in x 12 in, height: 3 ft, ${fields} }
`;
  it.each([
    ["length: 12 ft, thickness: 16 in, depth: 3.5 ft, above grade: 6 in", "holds", /No size contradicts/],
    ["length: 9 ft, thickness: 16 in", "over", /reach over 10 ft, and the wall is 9 ft long/],
    ["length: 12 ft, thickness: 11 in", "over", /Plate 12 in on a wall of 11 in/],
    ["length: 12 ft, thickness: 16 in, depth: 3 ft, above grade: 6 in", "over", /make 42 in, and its height with its footing 48 in/],
  ])("a wall of %s: %s", (fields, verdict, words) => {
    expect(saidOf(sizes, wall(fields))).toMatchObject({ verdict, message: expect.stringMatching(words) });
  });

  const rockPad = (fields: string) => `rootfast: 1\nground:\n  ledge: { kind: rock }\nfoundations:\n  pad: { kind: footing on rock, ground: ledge, width: 4 ft, length: 4 ft, thickness: 24 in, ${fields}, combined: { given: { level: allowable, down: 1 kip } } }\n`;
  it.each([
    ["depth: 18 in, above grade: 6 in", "holds"],
    ["depth: 18 in, above grade: 6.5 in", "holds"],
    ["depth: 18 in, above grade: 7 in", "over"],
    ["depth: 24 in, dowels: { count: 4, in concrete: 25 in }", "over"],
    ["depth: 24 in, dowels: { count: 4, in concrete: 24 in }", "holds"],
  ])("a pad on rock of %s: %s", (fields, verdict) => {
    expect(saidOf(sizes, rockPad(fields))?.verdict).toBe(verdict);
  });
});
