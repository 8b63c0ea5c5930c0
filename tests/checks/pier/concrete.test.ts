import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { pierAxial } from "../../../server/src/checks/pier/concrete-axial.js";
import { interactionPicture, pedestalBending, pierBending } from "../../../server/src/checks/pier/concrete-bending.js";
import { pierBarGap } from "../../../server/src/checks/pier/concrete-bar-layout.js";
import { pierCover } from "../../../server/src/checks/pier/concrete-cover.js";
import { leastTies, pierShear } from "../../../server/src/checks/pier/concrete-shear.js";
import { pierPlain, seismicBars } from "../../../server/src/checks/pier/concrete-plain.js";
import { pierSpiralRatio, spiralNeeded, spiralRatio } from "../../../server/src/checks/pier/concrete-spiral.js";
import { pierBarsHeld, pierTieSpacing, tieSize } from "../../../server/src/checks/pier/concrete-ties.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, inch, kip, kipFoot, ksi, psi, ratioOf, say, sourced } from "../given.js";
import { outcomeOf, read, standing, stepsFor, strengthOf, weigh } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

const bars = (count: number, name: string) => ({ count, bar: readBar(name)! });
const tied = (name: string, spacing: number, inner?: boolean) => ({ bar: readBar(name)!, spacing: spacing * inch, inner });
const wound = (name: string, pitch: number) => ({ spiral: { bar: readBar(name)!, pitch: pitch * inch }, ties: undefined });

/** Round, 24 in, 8 ft deep, eight no. 7 in no. 4 ties at 8 in, 4 ksi. */
function pier(foundation: Fields = {}, more: { readonly site?: Fields; readonly concrete?: string } = {}) {
  const made = standing({
    foundation: { kind: "pier", diameter: 24 * inch, depth: 8 * foot, concrete: 4000 * psi, bars: bars(8, "no. 7"), ties: tied("no. 4", 8), "bar grade": "Gr 60", cover: 3 * inch, ...foundation },
    ground: { kind: "soil" },
    site: { "seismic design category": "B", ...more.site },
  });
  return more.concrete ? ({ ...made, codes: { ...made.codes, concrete: sourced(more.concrete) } } as typeof made) : made;
}

const square = { diameter: undefined, width: 24 * inch } as const;

describe("Bending of a pier with its axial force", () => {
  // 0.9 of the nominal moments of a section integrated by hand, a bar on the axis, where that is the worse orientation.
  it.each([
    [0, 184.75],
    [-45, 157.87],
    [-135, 99.16],
  ])("at %s kip holds %s kip-ft", (P, M) => {
    expect(weigh(pierBending, pier(), strengthOf({ P: P * kip, My: 60 * kipFoot })).capacity / kipFoot / M).toBeCloseTo(1, 3);
  });

  it("counts a moment at the top that the shear takes off below", () => {
    const against = weigh(pierBending, pier({ "above grade": 3 * foot }), strengthOf({ My: 60 * kipFoot, Vx: -10 * kip }));
    expect(against.demand / kipFoot).toBeCloseTo(60, 6);
  });

  it("is the same from every side", () => {
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(number, number, number, number, fc.boolean(), (Vx, Vy, Mx, My, isSquare) => {
        const at = (s: number) => weigh(pierBending, pier(isSquare ? square : {}), strengthOf({ P: 5 * kip, Vx: s * Vx * 8 * kip, Vy: s * Vy * 8 * kip, Mx: s * Mx * 40 * kipFoot, My: s * My * 40 * kipFoot }));
        expect(at(1).demand).toBeCloseTo(at(-1).demand, 3);
        expect(at(1).capacity).toBeCloseTo(at(-1).capacity, 3);
      }),
      { numRuns: 40 },
    );
  });

  it("says that the soil gives way where it does", () => {
    const soft = standing({ foundation: { ...Object.fromEntries(Object.entries(pier().foundation!.fields).map(([key, value]) => [key, value?.value])) }, ground: { kind: "soil", cohesion: 5e3, "strain at half strength": 0.02, "unit weight": 17e3 } });
    expect(outcomeOf(pierBending, { ...soft, codes: pier().codes, foundation: pier().foundation } as typeof soft, strengthOf({ Vx: 1e6, My: 1e6 }))).toMatchObject({ type: "unchecked", because: expect.stringMatching(/gives way/) });
  });

  it("a combination that is no larger in each measure has no larger ratio", () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    const load = fc.record({ P: fc.double({ min: -150, max: 60, noNaN: true }), V: part, M: part });
    fc.assert(
      fc.property(load, load, (a, b) => {
        const inputs = read(pierBending, pier()).inputs;
        const demand = ({ P, V, M }: typeof a) => strengthOf({ P: P * kip, Vx: V * 10 * kip, My: M * 60 * kipFoot });
        const size = (l: typeof a) => pierBending.measures!(inputs, demand(l), plainCalc);
        const [sizeA, sizeB] = [size(a), size(b)];
        fc.pre(sizeA.every((one, i) => one <= sizeB[i]));
        expect(ratioOf(weigh(pierBending, pier(), demand(a)))).toBeLessThanOrEqual(ratioOf(weigh(pierBending, pier(), demand(b))) * (1 + 1e-6) + 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  it("gives its curve from pull to push, and a point for each section of a combination", () => {
    const picture = interactionPicture(read(pierBending, pier()).inputs, [strengthOf({ P: -20 * kip, My: 30 * kipFoot })]);
    expect(picture.curves).toHaveLength(2);
    expect(picture.curves[0].points[0].P_n / kip).toBeCloseTo(-288, 6);
    expect(picture.curves[0].points.at(-1)!.P_n / kip).toBeCloseTo(1809.8, 1);
    // 0.80 x 0.65 of 1,809.8 kip.
    expect(picture.cap / kip).toBeCloseTo(941.1, 1);
    expect(picture.points.map(({ M }) => M / kipFoot)).toEqual([expect.closeTo(30, 6), expect.closeTo(30, 6)]);
    expect(picture.points[0].N / kip).toBeCloseTo(-20, 9);
  });
});

describe("Push and pull", () => {
  it.each([
    ["ties", {}, 941.1],
    // 24 in under 3 in of cover needs 2.333 %; no. 4 at 1-3/4 in has 2.47 %. 0.85 x 0.75 of 1,809.8 kip.
    ["a spiral that suffices", wound("no. 4", 1.75), 1153.7],
    ["a spiral too wide to be one", wound("no. 4", 3), 941.1],
  ])("with %s", (_, round, most) => {
    expect(weigh(pierAxial, pier(round), strengthOf({ P: 100 * kip })).capacity / kip).toBeCloseTo(most, 1);
  });

  it("a pull is held by the bars alone", () => {
    const found = weigh(pierAxial, pier(), strengthOf({ P: -100 * kip }));
    expect([found.demand / kip, found.capacity / kip]).toEqual([expect.closeTo(100, 9), expect.closeTo(259.2, 6)]);
  });
});

describe("Spiral, ACI 318-19 Eq. 25.7.3.3", () => {
  // Core of 18 in diameter less 3 in, and piers under 3 in of cover.
  it.each([[18, 15, 0.0132], [24, 18, 0.02333], [30, 24, 0.01687], [36, 30, 0.0132]])("a section of %s in with a core of %s in needs %s", (D, D_c, ratio) => {
    expect(spiralNeeded.value({ A_g: (Math.PI * (D * inch) ** 2) / 4, D_c: D_c * inch, fprime_c: 4000 * psi, f_yt: 60 * ksi })).toBeCloseTo(ratio, 4);
  });

  it("no. 3 at 2.167 in in a core of 15 in gives 1.32 %", () => {
    expect(spiralRatio.value({ A_sp: 0.11 * inch ** 2, D_c: 15 * inch, d_s: 0.375 * inch, s: 2.167 * inch })).toBeCloseTo(0.0132, 4);
  });

  it("says what pitch would do, or that none does", () => {
    const words = (round: Fields): string => {
      const support = pier(round);
      return pierSpiralRatio.advise!(read(pierSpiralRatio, support).inputs, weigh(pierSpiralRatio, support, strengthOf({})), say);
    };
    expect(words(wound("no. 4", 3))).toMatch(/a pitch of 1\.852 in/);
    expect(words(wound("no. 3", 3))).toMatch(/No pitch of no\. 3 gives that/);
  });
});

describe("Shear", () => {
  const values = (support: ReturnType<typeof pier>, P: number) => stepsFor(pierShear, support, strengthOf({ P: P * kip, Vx: 10 * kip })).values;

  // 24 in round, no. 3 at 12 in: 50 x 24 x 12 / 60,000 = 0.24 in² of legs needed, 0.22 there.
  it("ties of no. 3 at 12 in in a pier of 24 in are fewer than the least, and the size effect is in it", () => {
    expect(leastTies.value({ s_c: 63.2456 * psi, b_w: 24 * inch, s: 12 * inch, f_yt: 60 * ksi }) / inch ** 2).toBeCloseTo(0.24, 6);
    // Two bars of 0.6 in² beyond two thirds: 8 x 0.8276 x 0.13757 x 63.25 psi x 24 in x 19.2 in.
    expect(values(pier({ ties: tied("no. 3", 12) }), 0).get("V_c")! / kip).toBeCloseTo(26.54, 1);
    expect(values(pier(), 0).get("V_c")! / kip).toBeCloseTo((2 * 63.2456 * 24 * 19.2) / 1000, 3);
  });

  // 10 in square under 3 in of cover: bars of no. 6 in no. 3 ties stand 3.75 in from the sides, 6.25 in deep, less than two thirds of 10 in. Ties more than a
  // quarter of that apart hold no more than 4 sqrt(f'c) b d beside the 2 of the concrete.
  it("a small pier under thick cover counts its farthest bars, 6.25 in deep", () => {
    const small = pier({ ...square, width: 10 * inch, bars: bars(4, "no. 6"), ties: tied("no. 3", 3) });
    expect(weigh(pierShear, small, strengthOf({ Vx: 1 * kip })).capacity / kip).toBeCloseTo((0.75 * 6 * 63.2456 * 10 * 6.25) / 1000, 2);
  });

  it("by the earlier edition a pull takes away by 500 psi, a push adds by 2,000", () => {
    const base = (2 * 63.2456 * 24 * 19.2) / 1000;
    const A = (Math.PI * 24 ** 2) / 4;
    const of = (P: number) => values(pier({}, { concrete: "ACI 318-14" }), P).get("V_c")! / kip;
    expect(of(-45)).toBeCloseTo(base * (1 - 45000 / (500 * A)), 2);
    expect(of(45)).toBeCloseTo(base * (1 + 45000 / (2000 * A)), 2);
  });

  it("ties farther apart than half the depth are not counted", () => {
    expect(values(pier({ ties: tied("no. 4", 10) }), 0).get("V_s")).toBe(0);
    expect(values(pier(), 0).get("V_s")! / kip).toBeCloseTo((0.4 * 60 * 19.2) / 8, 6);
  });
});

describe("A pier without bars", () => {
  const plain = (foundation: Fields = {}, site: Fields = {}) => pier({ bars: undefined, ties: undefined, "cast against": "forms", ...foundation }, { site });

  // 3 sqrt(f'c) S_m, kip-ft.
  it.each([[18, 3000, 7.84], [18, 4000, 9.05], [24, 3000, 18.58], [24, 4000, 21.46], [30, 4000, 41.91], [36, 3000, 62.72]])("of %s in and %s psi may be bent by %s kip-ft", (D, f, M) => {
    const { values } = stepsFor(pierPlain, plain({ diameter: D * inch, concrete: f * psi }), strengthOf({ My: kipFoot }));
    expect(values.get("phiM_n")! / kipFoot / M).toBeCloseTo(1, 3);
  });

  it("needs bars where it is pulled, where it stands tall, and in category C and up", () => {
    expect(weigh(pierPlain, plain(), strengthOf({ P: -1 * kip })).capacity).toBe(0);
    expect(weigh(pierPlain, plain({ "above grade": 7 * foot }), strengthOf({}))).toMatchObject({ quantity: "length", capacity: expect.closeTo(6 * foot, 9) });
    expect(weigh(pierPlain, plain({}, { "seismic design category": "C" }), strengthOf({})).demand / inch ** 2).toBeCloseTo(1.131, 3);
    expect(seismicBars.value({ A_g: (Math.PI * (18 * inch) ** 2) / 4 }) / inch ** 2).toBeCloseTo(0.636, 3);
  });

  it("is not asked for where bars are stated, nor the other way round", () => {
    expect([pierPlain.applies(plain()), pierPlain.applies(pier()), pierBending.applies(plain()), pierBending.applies(pier())]).toEqual([true, false, false, true]);
  });
});

describe("Details of the bars", () => {
  it.each([[{}, 3], [{ "cast against": "forms" }, 1.5], [{ "cast against": "forms", ties: tied("no. 6", 8) }, 2]])("cover of %j", (foundation, needed) => {
    expect(weigh(pierCover, pier(foundation), strengthOf({})).demand / inch).toBeCloseTo(needed, 9);
  });

  it("ties are 16 bars, 48 ties or one width apart at most", () => {
    const most = (foundation: Fields) => weigh(pierTieSpacing, pier(foundation), strengthOf({})).capacity / inch;
    expect(most({})).toBeCloseTo(14, 6);
    expect(most({ bars: bars(4, "no. 11"), ties: tied("no. 3", 8) })).toBeCloseTo(18, 6);
    expect(most({ diameter: 12 * inch, bars: bars(4, "no. 7") })).toBeCloseTo(12, 6);
  });

  it("no. 10 bars take no. 3 ties, no. 11 no. 4; bars of 10 and 12 mm count as these", () => {
    const size = (name: string) => tieSize.value({ d_b: readBar(name)!.diameter });
    expect(size("no. 10")).toBeLessThan(readBar("10 mm")!.diameter);
    expect(size("no. 11")).toBeGreaterThan(readBar("no. 3")!.diameter);
    expect(size("no. 11")).toBeLessThan(readBar("12 mm")!.diameter);
  });

  it("two bars between the corners need inner ties", () => {
    const of = (inner?: boolean) => weigh(pierBarsHeld, pier({ ...square, bars: bars(12, "no. 6"), ties: tied("no. 4", 8, inner) }), strengthOf({}));
    expect(of()).toMatchObject({ demand: 2, capacity: 1, quantity: "number" });
    expect(of(true).demand).toBe(0);
  });

  it("bars are 1.5 in, 1.5 diameters and four thirds of the aggregate apart", () => {
    const needed = (foundation: Fields) => weigh(pierBarGap, pier(foundation), strengthOf({})).demand / inch;
    expect(needed({})).toBeCloseTo(1.5, 9);
    expect(needed({ bars: bars(6, "no. 9") })).toBeCloseTo(1.692, 9);
    expect(needed({ "aggregate size": 1.5 * inch })).toBeCloseTo(2, 9);
  });

  it("ties and a spiral together are refused, and ties that are missing are asked for", () => {
    expect(read(pierBending, pier({ spiral: wound("no. 4", 2).spiral })).blocks.join()).toMatch(/keep the one there is/);
    expect(read(pierBending, pier({ ties: undefined })).missing).toContain("ties or spiral round the vertical bars");
  });
});

describe("A pedestal", () => {
  const pedestal = (width: number, length: number) =>
    standing({
      foundation: { kind: "footing", width: 6 * foot, length: 6 * foot, thickness: 18 * inch, depth: 4 * foot, "above grade": 6 * inch, pedestal: { width: width * inch, length: length * inch }, bars: bars(8, "no. 6"), ties: tied("no. 4", 8), concrete: 4000 * psi, "bar grade": "Gr 60", cover: 2 * inch },
      ground: { kind: "soil", "unit weight": 17e3 },
    });

  it("of 16 in by 24 in is stronger along its long side, and turned it changes places", () => {
    const at = (x: number, y: number, base: object) => weigh(pedestalBending, pedestal(x, y), strengthOf(base)).capacity / kipFoot;
    const alongLong = at(24, 16, { My: 30 * kipFoot });
    expect(alongLong).toBeGreaterThan(1.2 * at(24, 16, { Mx: 30 * kipFoot }));
    expect(at(16, 24, { Mx: 30 * kipFoot }) / alongLong).toBeCloseTo(1, 9);
  });
});

describe("Ten thousand piers", () => {
  it("have an answer each, never negative, and more bars are never weaker", () => {
    const sizes = ["no. 5", "no. 6", "no. 7", "no. 8", "no. 9", "no. 10"];
    const any = fc.record({
      D: fc.double({ min: 18, max: 60, noNaN: true }),
      count: fc.integer({ min: 2, max: 8 }).map((n) => 2 * n),
      size: fc.integer({ min: 0, max: 4 }),
      isSquare: fc.boolean(),
      isWound: fc.boolean(),
      spacing: fc.double({ min: 1, max: 16, noNaN: true }),
      f: fc.constantFrom(3000, 4000, 6000),
      concrete: fc.constantFrom("ACI 318-19", "ACI 318-14"),
      P: fc.double({ min: -200, max: 200, noNaN: true }),
      V: fc.double({ min: 0, max: 60, noNaN: true }),
      M: fc.double({ min: 0, max: 300, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ D, count, size, isSquare, isWound, spacing, f, concrete, P, V, M }) => {
        const of = (at: number) => pier({ ...(isSquare ? { diameter: undefined, width: D * inch } : { diameter: D * inch }), bars: bars(count, sizes[at]), concrete: f * psi, ...(isWound ? wound("no. 4", spacing) : { ties: tied("no. 4", spacing) }) }, { concrete });
        const demand = strengthOf({ P: P * kip, Vx: V * kip, My: M * kipFoot });
        const support = of(size);
        for (const check of [pierAxial, pierBending, pierShear]) {
          const { demand: tries, capacity } = weigh(check, support, demand);
          expect(Number.isFinite(tries) && tries >= 0).toBe(true);
          expect(Number.isFinite(capacity) && capacity >= 0).toBe(true);
        }
        expect(weigh(pierAxial, of(size + 1), demand).capacity).toBeGreaterThanOrEqual(weigh(pierAxial, support, demand).capacity * (1 - 1e-9));
        // Thicker bars stand a little farther in, which costs less than their area brings.
        expect(weigh(pierBending, of(size + 1), demand).capacity).toBeGreaterThanOrEqual(weigh(pierBending, support, demand).capacity * (1 - 0.02));
      }),
      { numRuns: 10_000 },
    );
  }, 180_000);
});
