import { describe, expect, it } from "vitest";
import { pierEmbedment } from "../../../server/src/checks/pier/embedment.js";
import { pierSlab } from "../../../server/src/checks/pier/slab-reaction.js";
import { foot, kip, kipFoot, say } from "../given.js";
import { allowable, lb, lbFoot, psfPerFoot, read, standing, stepsFor, weigh } from "../ground.js";

const pier = (slab: object | undefined, more: object = {}) =>
  standing({ foundation: { kind: "pier", diameter: 2 * foot, depth: 8 * foot, "restrained at grade": true, "slab at grade": slab, ...more } as never, ground: { kind: "soil", "lateral bearing": 150 * psfPerFoot } });
const tied = { kind: "tied slab", capacity: 3 * kip };

describe("The slab that holds a pier at grade", () => {
  // Statics: pressure as the square of the depth has its middle at 3/4 of it. 1.2 kip at 10 ft on 8 ft: 1.2 + 12/6 = 3.2 kip.
  it("takes the push and what the soil below pushes back with", () => {
    const found = weigh(pierSlab, pier(tied), allowable({ Vx: 1.2 * kip, My: 12 * kipFoot }));
    expect(found.demand / kip).toBeCloseTo(3.2, 9);
    expect(found.capacity / kip).toBeCloseTo(3, 9);
    expect(pierSlab.advise!(read(pierSlab, pier(tied)).inputs, found, say)).toBe("the pier leans on the slab with 3.2 kip; 3 kip is stated. Deepen the pier, tie the slab for more, or design the pier free at grade.");
  });

  it("takes more than the push wherever the push stands above grade", () => {
    for (const h of [0.1, 1, 10]) expect(weigh(pierSlab, pier(tied), allowable({ Vx: kip, My: h * kipFoot })).demand).toBeGreaterThan(kip);
  });

  it("needs a kind and a capacity, and is no slab where it is loose or of pavers", () => {
    expect(read(pierSlab, pier(undefined)).missing).toEqual(["kind of slab at grade (slab at grade, kind: tied slab)", "capacity of the slab at grade (slab at grade, capacity)"]);
    expect(read(pierSlab, pier({ kind: "pavers", capacity: kip })).blocks.join()).toMatch(/^pavers are no rigid floor/);
    expect(read(pierSlab, pier({ kind: "loose slab", capacity: kip })).blocks.join()).toMatch(/^a slab that is not tied/);
    expect(read(pierSlab, pier(tied))).toMatchObject({ missing: [], blocks: [] });
  });

  it("is asked for where the pier is said to be restrained, and nowhere else", () => {
    expect(pierSlab.applies(pier(tied))).toBe(true);
    expect(pierSlab.applies(pier(tied, { "restrained at grade": false }))).toBe(false);
  });

  // IBC 2021 Eq. 18-1 and 18-2: 1,200 lb at 10 ft on 2 ft, 150 psf/ft: 8.1123 ft free, 5.5397 ft restrained.
  it.each([
    ["tied slab", 5.5397],
    ["loose slab", 8.1123],
    ["pavers", 8.1123],
  ])("%s: the pier needs %d ft", (kind, depth) => {
    const support = pier({ kind, capacity: kip });
    const demand = allowable({ Vx: 1200 * lb, My: 12000 * lbFoot });
    expect(weigh(pierEmbedment, support, demand).demand / foot).toBeCloseTo(depth, 3);
    expect(stepsFor(pierEmbedment, support, demand).notes.some((note) => note.includes("free at grade"))).toBe(kind !== "tied slab");
  });

  it("leaves presumptive lateral bearing to level ground, and takes a stated one at its word", () => {
    const on = (ground: object, slope: number) => standing({ foundation: { kind: "pier", diameter: 2 * foot, depth: 8 * foot, "ground slope": slope }, ground: { kind: "soil", ...ground } });
    expect(read(pierEmbedment, on({ class: "SM" }, 0.3)).blocks.join()).toContain("presumptive lateral bearing is for level ground");
    expect(read(pierEmbedment, on({ class: "SM" }, 0.05)).blocks).toEqual([]);
    expect(read(pierEmbedment, on({ "lateral bearing": 80 * psfPerFoot }, 0.3)).blocks).toEqual([]);
    expect(stepsFor(pierEmbedment, on({ "lateral bearing": 80 * psfPerFoot }, 0.3), allowable({ Vx: kip })).notes.join(" ")).toContain("found for that slope");
  });

  it("says that a pier less than two widths deep is a block as well", () => {
    const of = (depth: number) => stepsFor(pierEmbedment, pier(tied, { depth: depth * foot }), allowable({ Vx: kip, My: kipFoot })).notes.join(" ");
    expect(of(3.9)).toContain("less than two widths deep");
    expect(of(4.1)).not.toContain("less than two widths deep");
  });
});
