import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { steelShear } from "../../../server/src/checks/anchors/steel-shear.js";
import { frictionStrength, readShearPath, shearOnRods } from "../../../server/src/checks/base/shear-path.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, run, strength } from "../given.js";
import { supportWith, type Given } from "./base.js";

const pathOf = (base: Given["base"]) => readShearPath(supportWith({ base }), gatherer());
const left = (base: Given["base"], forces: Parameters<typeof strength>[0], more: object = {}) => {
  const found = shearOnRods(pathOf(base), { ...strength(forces), ...more }, plainCalc);
  if ("because" in found) throw new Error(found.because);
  const { Vx, Vy } = found;
  return [Vx / kip, Vy / kip].map((value) => Number(value.toFixed(9)));
};
const lug = (resists: string) => ({ "shear lug": { width: 6 * inch, depth: 3.5 * inch, thickness: inch, resists } });

describe("what carries the shear before the rods", () => {
  it("friction is 0.75 x 0.40 of the compression: 3 kip of 10", () => expect(frictionStrength.value({ P: 10 * kip }) / kip).toBeCloseTo(3, 9));

  it.each<[string, Given["base"], Parameters<typeof strength>[0], readonly number[]]>([
    ["nothing where nothing is stated", {}, { P: 100 * kip, Vx: 2 * kip, Vy: kip }, [2, 1]],
    ["friction where 10 kip press and 2.9 kip push", { friction: true }, { P: 10 * kip, Vx: 2.9 * kip }, [0, 0]],
    ["not friction where 3.1 kip push: the rods take all of it, not the rest", { friction: true }, { P: 10 * kip, Vx: 3.1 * kip }, [3.1, 0]],
    ["not friction where the base lifts (3 kip up, 1.5 kip sideways)", { friction: true }, { P: -3 * kip, Vy: 1.5 * kip }, [0, 1.5]],
    ["not friction where it is weightless", { friction: true }, { Vy: kip }, [0, 1]],
    ["not friction on leveling nuts without grout", { friction: true, "leveling nuts": true, grout: 0 }, { P: 10 * kip, Vx: kip }, [1, 0]],
    ["a lug along x", lug("along x"), { Vx: 2 * kip, Vy: kip }, [0, 1]],
    ["a lug along y", lug("along y"), { Vx: 2 * kip, Vy: kip }, [2, 0]],
    ["a cross", lug("both ways"), { Vx: 2 * kip, Vy: kip }, [0, 0]],
    ["a lug one way and friction the other", { ...lug("along x"), friction: true }, { P: 10 * kip, Vx: 9 * kip, Vy: 2 * kip }, [0, 0]],
  ])("%s", (_, base, forces, expected) => expect(left(base, forces)).toEqual(expected));

  it("not friction in an earthquake", () => expect(left({ friction: true }, { P: 10 * kip, Vx: kip }, { earthquake: {} })).toEqual([1, 0]));

  it("the checks of the rods in shear follow it", () => {
    const checks: readonly CheckDecl<any, "strength">[] = [steelShear, breakoutShear, pryout];
    for (const of of checks) {
      const demandOf = (base: Given["base"], forces: Parameters<typeof strength>[0]) => run(of, of.inputs(supportWith({ base }), gatherer(), 0), strength(forces)).demand;
      expect(demandOf(lug("along x"), { Vx: kip })).toBe(0);
      expect(demandOf(lug("along x"), { Vy: kip })).toBeGreaterThan(0);
      expect(demandOf({ friction: true }, { P: 10 * kip, Vx: kip })).toBe(0);
      expect(demandOf({ friction: true }, { P: -kip, Vx: kip })).toBeGreaterThan(0);
    }
  });

  it("never leaves the rods more than the shear, and never counts friction with uplift", () => {
    const any = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(any, any, any, fc.boolean(), (P, Vx, Vy, friction) => {
        const [x, y] = left({ friction }, { P: P * kip, Vx: Vx * kip, Vy: Vy * kip });
        expect(Math.hypot(x, y)).toBeLessThanOrEqual(Math.hypot(Vx, Vy) + 1e-9);
        if (P <= 0) expect(Math.hypot(x - Vx, y - Vy)).toBeLessThan(1e-8);
      }),
    );
  });
});
