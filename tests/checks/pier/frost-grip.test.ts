import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { footingFrostGrip } from "../../../server/src/checks/footing/frost-grip.js";
import { pierFrostGrip } from "../../../server/src/checks/pier/frost-grip.js";
import { foot, inch, kip, psi } from "../given.js";
import { allowable, degree, lb, pcf, read, standing, stepsFor, weigh } from "../ground.js";

const frozen = (foundation: object, ground: object = {}, frost = 42 * inch) =>
  standing({ foundation: { kind: "pier", diameter: 12 * inch, depth: 8 * foot, ...foundation }, ground: { kind: "soil", class: "SM", "adfreeze stress": 5 * psi, ...ground }, site: { "frost depth": frost } });
const least = [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }] as const;
const dead = (of: number) => ({ ...allowable({ P: -1 }, least), dead: of * lb });

describe("Grip of frost on a pier", () => {
  // A 12 in tube gripped along 42 in at 5 to 10 psi: 7.9 to 15.8 kip upward.
  it.each([
    [5, 7.9],
    [10, 15.8],
  ])("at %s psi", (stress, force) => {
    expect(weigh(pierFrostGrip, frozen({}, { "adfreeze stress": stress * psi }), dead(600)).demand / kip).toBeCloseTo(force, 1);
  });

  it("is held by six tenths of the weight, the column's dead load as the combination has it, and the side below the frost", () => {
    // Weight 0.7854 x 8 x 150 = 942.5 lb; side 333.3 psf x pi x 4.5 ft = 4,712 lb.
    expect(weigh(pierFrostGrip, frozen({}), dead(600)).capacity / lb).toBeCloseTo(600 + 0.6 * 942.5 + 4712.4, 0);
    expect(weigh(pierFrostGrip, frozen({}), allowable({ P: 5000 })).capacity / lb).toBeCloseTo(0.6 * 942.5 + 4712.4, 0);
  });

  it("stops at the underside of a pier that ends in the frost", () => {
    const found = weigh(pierFrostGrip, frozen({ depth: 3 * foot }), dead(0));
    expect(found.demand / lb).toBeCloseTo(5 * 144 * Math.PI * 3, 0);
    expect(found.capacity / lb).toBeCloseTo(0.6 * 353.4, 0);
  });

  it("counts the soil above a bell below the frost alone", () => {
    const bell = frozen({ diameter: 2 * foot, bell: { diameter: 4 * foot, height: 1.5 * foot }, "held down by": "weight" }, { "unit weight": 110 * pcf }, 3 * foot);
    // pi/4 (16 - 4) x 5 - 6.2832 = 40.841 ft³.
    expect(stepsFor(pierFrostGrip, bell, dead(0)).values.get("W_s")! / lb).toBeCloseTo(40.841 * 110, -1);
    const cone = frozen({ diameter: 2 * foot, bell: { diameter: 4 * foot, height: 1.5 * foot }, "held down by": "soil cone" }, { "unit weight": 110 * pcf, "cone angle": 30 * degree, "water table": 3 * foot }, 3 * foot);
    const volume = 5 * Math.PI * (4 + 2 * 5 * Math.tan(Math.PI / 6) + (5 * Math.tan(Math.PI / 6)) ** 2 / 3) - 5 * Math.PI - 6.2832;
    expect(stepsFor(pierFrostGrip, cone, dead(0)).values.get("W_s")! / lb).toBeCloseTo(volume * 47.6, -1);
  });

  it("takes three as the factor of safety on the strength of the soil, wind or not", () => {
    const clay = frozen({}, { "side resistance by": "soil strength", cohesion: 1000 * 47.880259 });
    // 3 ft below the seasonal 5 ft: 0.55 x 1000 x pi x 3 / 3.
    expect(stepsFor(pierFrostGrip, clay, dead(0)).values.get("R_s")! / lb).toBeCloseTo(0.55 * 1000 * Math.PI, 0);
  });

  it("applies only where a stress is stated, and has no default", () => {
    expect(pierFrostGrip.applies(frozen({}))).toBe(true);
    expect(pierFrostGrip.applies(frozen({}, { "adfreeze stress": undefined }))).toBe(false);
  });

  it("never holds less where the pier is deeper, and never grips less where the frost is", () => {
    const length = fc.double({ min: 0.5, max: 6, noNaN: true });
    fc.assert(
      fc.property(length, length, length, (a, b, frost) => {
        const of = (depth: number, z: number) => weigh(pierFrostGrip, frozen({ depth }, {}, z), dead(100));
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(of(high, frost).capacity).toBeGreaterThanOrEqual(of(low, frost).capacity * (1 - 1e-12));
        expect(of(frost, high).demand).toBeGreaterThanOrEqual(of(frost, low).demand);
      }),
    );
  });
});

describe("Grip of frost on a footing", () => {
  const footing = (foundation: object = {}, frost = 2 * foot) =>
    standing({
      foundation: { kind: "footing", width: 4 * foot, length: 4 * foot, thickness: foot, depth: 4 * foot, pedestal: { width: 18 * inch, length: 18 * inch }, "above grade": 0, backfill: "compacted and tested", ...foundation },
      ground: { kind: "soil", "unit weight": 110 * pcf, "adfreeze stress": 5 * psi },
      site: { "frost depth": frost },
    });

  // 6 ft of perimeter over 2 ft at 720 psf: 8.64 kip. Held: 2.4 and 1.0125 kip of concrete, (16 - 2.25) x 1 ft x 110 pcf of soil below the frost.
  it("grips the pedestal", () => {
    const found = weigh(footingFrostGrip, footing(), dead(1000));
    expect(found.demand / kip).toBeCloseTo(8.64, 3);
    expect(found.capacity / lb).toBeCloseTo(1000 + 0.6 * (2400 + 1012.5 + 1512.5), 0);
  });

  it("does not count loose soil", () => {
    expect(weigh(footingFrostGrip, footing({ backfill: "loose" }), dead(1000)).capacity / lb).toBeCloseTo(1000 + 0.6 * 3412.5, 0);
  });

  it("grips a round pedestal by its own perimeter, and the pad's side where that reaches up into the frost", () => {
    expect(weigh(footingFrostGrip, footing({ pedestal: { diameter: 18 * inch } }), dead(0)).demand / lb).toBeCloseTo(720 * Math.PI * 1.5 * 2, 0);
    expect(weigh(footingFrostGrip, footing({}, 3.5 * foot), dead(0)).demand / lb).toBeCloseTo(720 * (6 * 3 + 16 * 0.5), 0);
  });

  it("asks for the frost depth", () => {
    expect(read(footingFrostGrip, standing({ foundation: { kind: "footing" }, ground: { "adfreeze stress": 1 } })).missing).toContain("frost depth of the site");
  });
});
