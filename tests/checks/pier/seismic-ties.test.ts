import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { pierSeismicConfinement, pierSeismicTieSize, pierSeismicTieSpacing } from "../../../server/src/checks/pier/concrete-seismic-ties.js";
import { foot, inch, psi, ratioOf, sourced } from "../given.js";
import { read, standing, strengthOf, weigh } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

/** Round, 24 in, eight no. 7 in no. 4 ties at 4 in, 4 ksi, cover 3 in, category D on site class D. */
function pier(foundation: Fields = {}, site: Fields = {}) {
  const made = standing({
    foundation: { kind: "pier", diameter: 24 * inch, depth: 8 * foot, concrete: 4000 * psi, bars: { count: 8, bar: readBar("no. 7")! }, ties: ties("no. 4", 4), "bar grade": "Gr 60", cover: 3 * inch, ...foundation },
    ground: { kind: "soil" },
    site: { "seismic design category": "D", "site class": "D", ...site },
  });
  return { ...made, codes: { ...made.codes, concrete: sourced("ACI 318-19") } } as typeof made;
}
const ties = (name: string, spacing: number) => ({ bar: readBar(name)!, spacing: spacing * inch });
const square = { diameter: undefined, width: 24 * inch } as const;
const none = strengthOf({});
const C = { "seismic design category": "C" };

describe("Closer ties of a pier for earthquakes", () => {
  it.each([
    ["C: six inches", {}, C, 6],
    ["C: eight diameters of a no. 5", { bars: { count: 8, bar: readBar("no. 5")! } }, C, 5],
    ["D: six diameters of a no. 7", {}, {}, 5.25],
    ["D: six inches", { bars: { count: 8, bar: readBar("no. 9")! } }, {}, 6],
    ["D: five diameters of Gr 80", { "bar grade": "Gr 80" }, {}, 4.375],
    ["D: a quarter of 18 in", { diameter: 18 * inch }, {}, 4.5],
    ["D: four inches in a square", square, {}, 4],
  ])("%s", (_, foundation, site, s) => {
    const found = weigh(pierSeismicTieSpacing, pier(foundation, site), none);
    expect(found.demand / inch).toBeCloseTo(4, 9);
    expect(found.capacity / inch).toBeCloseTo(s, 9);
  });

  it.each([
    ["A", false],
    ["B", false],
    ["C", true],
    ["F", true],
  ])("category %s asks for them: %s", (category, asked) => {
    expect(pierSeismicTieSpacing.applies(pier({}, { "seismic design category": category }))).toBe(asked);
    expect(pierSeismicConfinement.applies(pier({}, { "seismic design category": category }))).toBe(category === "F");
  });

  it.each([
    ["C, 24 in", {}, C, 0.37],
    ["D, 24 in", {}, {}, 0.47],
    ["D, 20 in", { diameter: 20 * inch }, {}, 0.37],
  ])("size of the ties: %s", (_, foundation, site, d) => {
    expect(weigh(pierSeismicTieSize, pier(foundation, site), none).demand / inch).toBeCloseTo(d, 9);
  });
});

describe("Ties that confine the core of a pier", () => {
  // Core 18 in: A_g/A_c = 1.7778; 0.45 x 0.7778 x 4/60 = 0.023333. No. 4 at 4 in: 4 x 0.20 x 17.5 / (4 x 324) = 0.010802.
  it.each([
    ["half on site class D", {}, "D", 0.0116667],
    ["half on site class CD", {}, "CD", 0.0116667],
    ["all on site class E", {}, "E", 0.0233333],
    ["all on site class DE", {}, "DE", 0.0233333],
    // Core 35 in of 36: 0.45 x 0.05796 < 0.12.
    ["0.12 under little cover", { diameter: 36 * inch, cover: 0.5 * inch }, "E", (0.12 * 4) / 60],
  ])("%s", (_, foundation, site, ratio) => {
    expect(weigh(pierSeismicConfinement, pier(foundation, { "site class": site }), none).demand).toBeCloseTo(ratio, 6);
  });

  it("is what the ties have round the core", () => {
    expect(weigh(pierSeismicConfinement, pier(), none).capacity).toBeCloseTo(0.0108025, 6);
  });

  it("of a square counts two legs across a side", () => {
    // Core 18 in: 4 x 18 x 0.3 x 0.7778 x 4/60 = 1.12 in².
    const found = weigh(pierSeismicConfinement, pier(square), none);
    expect(found.demand / inch ** 2).toBeCloseTo(1.12, 6);
    expect(found.capacity / inch ** 2).toBeCloseTo(0.4, 9);
    // Core 35 of 36 in: 0.3 x 0.05796 < 0.09.
    expect(weigh(pierSeismicConfinement, pier({ diameter: undefined, width: 36 * inch, cover: 0.5 * inch }), none).demand / inch ** 2).toBeCloseTo((4 * 35 * 0.09 * 4) / 60, 6);
  });

  it("needs the site class", () => {
    expect(read(pierSeismicConfinement, pier({}, { "site class": undefined })).missing).toEqual(["site class of the ground"]);
  });

  it("is helped by closer and larger ties", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 10, noNaN: true }), fc.double({ min: 1.01, max: 3, noNaN: true }), fc.boolean(), (s, k, isSquare) => {
        const at = (name: string, spacing: number) => ratioOf(weigh(pierSeismicConfinement, pier({ ...(isSquare ? square : {}), ties: ties(name, spacing) }), none));
        expect(at("no. 4", s)).toBeLessThan(at("no. 4", s * k));
        expect(at("no. 5", s)).toBeLessThan(at("no. 4", s));
      }),
      { numRuns: 50 },
    );
  });
});
