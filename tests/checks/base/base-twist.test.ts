import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Demand, Forces } from "../../../server/src/actions/demand.js";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { hairpins } from "../../../server/src/checks/anchors/hairpins.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { steelShear } from "../../../server/src/checks/anchors/steel-shear.js";
import { levelingNuts } from "../../../server/src/checks/base/leveling-nuts.js";
import { twistOf } from "../../../server/src/mechanics/rod-twist.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { readBar } from "../../../server/src/catalog/bars.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, kipInch, ratioOf, run, sourced, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 1e-6) => expect(Math.abs((found ?? Number.NaN) / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
const inputsOf = <I extends object>(of: CheckDecl<I, "strength">, given: Given): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const loose: Given = { pier: 40, spacing: [10, 10], rod: 0.75 };
const welded: Given = { ...loose, base: { "washers welded": true } };
const shears: readonly CheckDecl<any, "strength">[] = [steelShear, breakoutShear, pryout];

describe("rods of a twisted base (statics)", () => {
  it("four 10 in square: 7.071 in from the middle, 200 in² together, 10 in apart", () => {
    const found = twistOf([-5, 5].flatMap((x) => [-5, 5].map((y) => ({ x: x + 30, y: y - 7 }))))!;
    expect([found.x, found.y, found.r, found.squares, found.pair].map((v) => Number(v.toFixed(6)))).toEqual([5, 5, 7.071068, 200, 10]);
    expect(twistOf([{ x: 1, y: 1 }])).toBeUndefined();
    expect(twistOf([{ x: 1, y: 1 }, { x: 1, y: 1 }])).toBeUndefined();
  });

  it("welded washers: 40 kip-in are 40 x 7.071/200 = 1.414 kip a rod, beside 3 and 4 kip over four", () => {
    const inputs = inputsOf(steelShear, welded);
    near(run(steelShear, inputs, strength({ Mz: 40 * kipInch })).demand / kip, 1.414214);
    near(run(steelShear, inputs, strength({ Vx: 3 * kip, Vy: 4 * kip, Mz: -40 * kipInch })).demand / kip, 1.25 + 1.414214);
  });

  it("loose washers: two rods 10 in apart hold 40 kip-in by 4 kip each, beside half the shear", () => {
    near(run(steelShear, inputsOf(steelShear, loose), strength({ Vx: 3 * kip, Vy: 4 * kip, Mz: 40 * kipInch })).demand / kip, 2.5 + 4);
    near(run(steelShear, inputsOf(steelShear, { ...loose, count: 2, spacing: [8, undefined] }), strength({ Mz: 40 * kipInch })).demand / kip, 5);
  });

  it("the concrete about them is asked for 4 x 40 x 5/200 = 4 kip each way with welded washers, and 2 x 4 = 8 with loose ones", () => {
    const twisted = strength({ Vx: 2 * kip, Mz: 40 * kipInch });
    near(run(pryout, inputsOf(pryout, welded), twisted).demand / kip, Math.hypot(6, 4));
    near(run(pryout, inputsOf(pryout, loose), twisted).demand / kip, Math.hypot(10, 8));
    for (const given of [welded, loose]) {
      const inputs = inputsOf(breakoutShear, given);
      const [x, y] = given === welded ? [6, 4] : [10, 8];
      near(ratioOf(run(breakoutShear, inputs, twisted)), ratioOf(run(breakoutShear, inputs, strength({ Vx: x * kip, Vy: y * kip }))));
    }
  });

  it("and toward an edge the push points away from: 15 in to the west, 45 in to the other sides", () => {
    const given: Given = { ...welded, foundation: { kind: "wall on footing", thickness: 100 * inch, height: 100 * inch, length: 200 * inch }, places: [{ x: 20 * inch, y: 0 }, { x: 180 * inch, y: 0 }] };
    const inputs = inputsOf(breakoutShear, given);
    // 1 kip to the east and 4 by the twist leave 3 kip toward the west.
    near(valuesOf(breakoutShear, inputs, strength({ Vx: kip, Mz: 40 * kipInch })).get("V_ua")! / kip, run(breakoutShear, inputs, strength({ Vx: -3 * kip, Vy: 4 * kip })).demand / kip);
  });

  it("hairpins are pulled toward both edges", () => {
    const pins = { count: 4, bar: readBar("no. 4"), resists: "both ways", "around rods": true, leg: 20 * inch, "leg ends": "straight", "below top": 2 * inch };
    const inputs = inputsOf(hairpins, { ...welded, foundation: { cover: 2 * inch, "bar grade": "Gr 60", hairpins: pins } });
    near(run(hairpins, inputs, strength({ Mz: 40 * kipInch })).demand, run(hairpins, inputs, strength({ Vx: 4 * kip })).demand);
    near(run(hairpins, inputs, strength({ Vx: kip, Mz: 40 * kipInch })).demand, run(hairpins, inputs, strength({ Vx: 5 * kip })).demand);
  });

  it("rods that stand free below leveling nuts bend by it", () => {
    const free: Given = { ...welded, base: { ...welded.base, "leveling nuts": true, grout: 0, "gap below nuts": 1.5 * inch } };
    const values = valuesOf(levelingNuts, inputsOf(levelingNuts, free), strength({ P: kip, Mz: 40 * kipInch }));
    near(values.get("V_ua")! / kip, 1.414214);
  });

  it("one rod cannot hold it, and says so; without a twist one rod does", () => {
    const single: Given = { section: "HSS3x3x1/4", plate: [8, 8, 1], count: 1, spacing: [undefined, undefined], pier: 40 };
    for (const of of shears) {
      const inputs = inputsOf(of, single);
      expect(of.evaluate(inputs, strength({ Vx: kip, Mz: kipInch }), plainCalc)).toMatchObject({ type: "unchecked", because: expect.stringMatching(/one rod cannot hold it/) });
      expect(run(of, inputs, strength({ Vx: kip })).demand).toBeGreaterThan(0);
    }
  });

  it("friction is not counted beside a twist, and a lug leaves it to the rods", () => {
    const pressed = { P: 100 * kip, Vx: kip };
    const rough = inputsOf(steelShear, { ...welded, base: { ...welded.base, friction: true } });
    expect(run(steelShear, rough, strength(pressed)).demand).toBe(0);
    near(run(steelShear, rough, strength({ ...pressed, Mz: 40 * kipInch })).demand / kip, 0.25 + 1.414214);
    const lugged = inputsOf(steelShear, { ...welded, base: { ...welded.base, "shear lug": { width: 3 * inch, depth: 4 * inch, thickness: inch, resists: "both ways" } } });
    near(run(steelShear, lugged, strength({ ...pressed, Mz: 40 * kipInch })).demand / kip, 1.414214);
  });

  it("the twist of an earthquake comes with the overstrength", () => {
    const support = supportWith({ ...welded, site: { "seismic design category": "D" }, base: { ...welded.base, "seismic anchors": "overstrength", "overstrength factor": 2 } });
    (support.column!.fields as unknown as Record<string, unknown>).reactions = sourced(new Map());
    const gather = gatherer();
    const inputs = steelShear.inputs(support, gather, 0);
    expect([...gather.missing, ...gather.blocks]).toEqual([]);
    const part: Forces = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0, Mz: 20 * kipInch };
    const demand: Demand<"strength"> = { ...strength(part), combination: { level: "strength", label: "E", terms: [{ factor: 1, type: "E" }], clause: "given" }, earthquake: part };
    near(run(steelShear, inputs, demand).demand / kip, 1.414214);
  });

  it("more twist never helps, its sense does not matter, and turned by 90 degrees all say the same", () => {
    const size = fc.double({ min: 0.1, max: 50, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 0, max: 60, noNaN: true }), fc.boolean(), (Vx, Vy, T, isWelded) => {
        const of = (given: Given) => ({ ...given, base: { "washers welded": isWelded } });
        const here = of({ pier: 40, plate: [14, 16, 1], spacing: [8, 12], rod: 0.75 });
        const turned = of({ pier: 40, plate: [16, 14, 1], spacing: [12, 8], rod: 0.75 });
        for (const check of shears) {
          const ratio = (given: Given, forces: Partial<Forces>) => ratioOf(run(check, inputsOf(check, given), strength(forces)));
          const forces = { Vx: Vx * kip, Vy: Vy * kip, Mz: T * kipInch };
          const first = ratio(here, forces);
          expect(ratio(here, { ...forces, Mz: 1.1 * T * kipInch })).toBeGreaterThanOrEqual(first * (1 - 1e-9));
          expect(ratio(here, { ...forces, Mz: -T * kipInch })).toBeCloseTo(first, 9);
          expect(ratio(turned, { Vx: -forces.Vy, Vy: forces.Vx, Mz: forces.Mz })).toBeCloseTo(first, 9);
        }
      }),
      { numRuns: 40 },
    );
  });
});
