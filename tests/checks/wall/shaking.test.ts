import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { wallBearing } from "../../../server/src/checks/wall/bearing.js";
import { coulomb, rankine } from "../../../server/src/checks/wall/coefficients.js";
import { wallOverturning } from "../../../server/src/checks/wall/overturning.js";
import { mononobeOkabe, shakeAngle } from "../../../server/src/checks/wall/shaking.js";
import { wallSliding } from "../../../server/src/checks/wall/sliding.js";
import { foot, kip, kipFoot } from "../given.js";
import { allowable, degree, outcomeOf, pcf, psf, psfPerFoot, standing, stepsFor, weigh } from "../ground.js";

type Angles = { readonly phi: number; readonly delta: number; readonly beta: number; readonly k_h: number };

const K_AE = ({ phi, delta, beta, k_h }: Angles): number => mononobeOkabe.value({ phi, psi: shakeAngle.value({ k_h }), delta, beta });

/**
 * A wedge of soil between a vertical wall and a plane that rises at `alpha`, under ground that rises at `beta`; its weight pulls down and k_h of it
 * outward. Push on the wall from the balance of forces, over gamma H²/2; the plane with the largest is looked for.
 */
function worstWedge({ phi, delta, beta, k_h }: Angles): number {
  const pushOf = (alpha: number): number => {
    const weight = 1 / (Math.tan(alpha) - Math.tan(beta));
    const theta = alpha - phi;
    return (weight * (k_h + Math.tan(theta))) / (Math.cos(delta) + Math.sin(delta) * Math.tan(theta));
  };
  let [low, high] = [Math.max(beta + 1e-4, phi - Math.PI / 2 + 0.01), Math.PI / 2 - 1e-4];
  let best = low;
  for (let round = 0; round < 3; round += 1) {
    const step = (high - low) / 400;
    for (let alpha = low; alpha <= high; alpha += step) if (pushOf(alpha) > pushOf(best)) best = alpha;
    [low, high] = [Math.max(low, best - step), Math.min(high, best + step)];
  }
  return pushOf(best);
}

describe("Earth pressure in an earthquake (Mononobe and Okabe)", () => {
  it("is that of the worst of all plane wedges", () => {
    fc.assert(
      fc.property(
        fc.record({
          phi: fc.double({ min: 25 * degree, max: 42 * degree, noNaN: true }),
          share: fc.double({ min: 0, max: 0.8, noNaN: true }),
          beta: fc.double({ min: 0, max: 12 * degree, noNaN: true }),
          k_h: fc.double({ min: 0, max: 0.2, noNaN: true }),
        }),
        ({ phi, share, beta, k_h }) => {
          const angles = { phi, delta: share * phi, beta, k_h };
          fc.pre(phi - Math.atan(k_h) - beta > 0.5 * degree);
          expect(K_AE(angles) / worstWedge(angles)).toBeCloseTo(1, 4);
        },
      ),
      { numRuns: 150 },
    );
  });

  // Printed in many books for level ground and a smooth wall (from memory): 30 degrees, 0.1, 0.2 and 0.3.
  it.each([[0.1, 0.397], [0.2, 0.473], [0.3, 0.569]])("for sand of 30 degrees and k_h %d is %f", (k_h, K) => {
    expect(K_AE({ phi: 30 * degree, delta: 0, beta: 0, k_h })).toBeCloseTo(K, 2);
  });

  it("is Coulomb's where nothing shakes, and Rankine's where its pressure slopes with the ground", () => {
    fc.assert(
      fc.property(fc.double({ min: 25 * degree, max: 42 * degree, noNaN: true }), fc.double({ min: 0, max: 20 * degree, noNaN: true }), (phi, beta) => {
        expect(K_AE({ phi, delta: 0.5 * phi, beta, k_h: 0 })).toBeCloseTo(coulomb.value({ phi, delta: 0.5 * phi, beta }), 9);
        expect(K_AE({ phi, delta: beta, beta, k_h: 0 })).toBeCloseTo(rankine.value({ phi, beta }), 6);
      }),
    );
  });
});

type Fields = Readonly<Record<string, unknown>>;

const quake = [{ factor: 0.6, type: "D" }, { factor: 0.7, type: "E" }] as const;
const wallOf = (fill: Fields = {}, category = "D", more: Fields = {}) => {
  const made = standing({
    site: { "seismic design category": category },
    ground: { kind: "soil", class: "GP", "unit weight": 120 * pcf },
    foundation: {
      kind: "wall on footing", concrete: 4000, length: 10 * foot, thickness: 1 * foot, height: 6 * foot, depth: 1 * foot, "length per post": 10 * foot, backfill: "loose", retains: 6 * foot,
      footing: { width: 5 * foot, thickness: 1 * foot, toe: 1 * foot, heel: 3 * foot },
      fill: { side: "north", method: "Rankine", "friction angle": 30 * degree, "unit weight": 120 * pcf, "seismic coefficient": 0.2, surcharge: 0, drained: true, ...fill },
      ...more,
    },
  });
  return { ...made, codes: { ...made.codes, overturning: { value: "factored dead load", path: "", span: made.span } } } as typeof made;
};
const checks: readonly CheckDecl<any, any>[] = [wallOverturning, wallSliding, wallBearing];
const pushed = allowable({ P: 2 * kip, Vy: -0.2 * kip, Mx: 1 * kipFoot }, quake);

describe("A wall that an earthquake shakes", () => {
  it("is tried no less by a stronger one, nor for a load on the ground behind it", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.25, noNaN: true }), fc.double({ min: 0.005, max: 0.1, noNaN: true }), (k_h, more) => {
        for (const check of [wallOverturning, wallSliding] as readonly CheckDecl<any, any>[]) {
          const at = (coefficient: number, q = 0) => weigh(check, wallOf({ "seismic coefficient": coefficient, surcharge: q }), pushed).demand;
          expect(at(k_h + more)).toBeGreaterThan(at(k_h));
          expect(at(k_h, 100 * psf)).toBeGreaterThan(at(k_h));
        }
      }),
      { numRuns: 25 },
    );
  });

  it("stands as one that nothing shakes where the coefficient is nought, or no earthquake is in the combination", () => {
    const still = wallOf({ "seismic coefficient": undefined }, "B");
    for (const check of checks) {
      expect(weigh(check, wallOf({ "seismic coefficient": 0 }), pushed).demand).toBeCloseTo(weigh(check, still, pushed).demand, 3);
      const windy = allowable({ P: 2 * kip, Vy: -0.2 * kip }, [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }]);
      expect(weigh(check, wallOf(), windy)).toEqual(weigh(check, still, windy));
    }
  });

  it("has the push of the combination's share of it: 0.7 of 4.114 + 7.62 kip beside 9.8 kip and the post's 0.2 kip", () => {
    expect(weigh(wallSliding, wallOf(), pushed).demand / kip).toBeCloseTo(9.8 + 0.2 + 0.7 * (4.1141 + 7.62), 3);
    expect(stepsFor(wallSliding, wallOf(), pushed).notes.join(" ")).toMatch(/throws wall, footing and the soil on the heel outward/);
  });

  it("is also looked at with its post pushed toward the fill, as if the soil did not shake then", () => {
    const toward = allowable({ P: 2 * kip, Vy: 30 * kip }, quake);
    expect(weigh(wallOverturning, wallOf(), toward)).toEqual(weigh(wallOverturning, wallOf({ "seismic coefficient": undefined }, "B"), toward));
  });

  it.each([
    ["no coefficient", { "seismic coefficient": undefined }, /category D the soil behind a wall presses more.*state the seismic coefficient/],
    ["soil at rest", { method: "at rest" }, /at rest .* geotechnical report/],
    ["water behind it", { drained: false, water: 2 * foot }, /stands in water .* drain the wall/],
    ["no friction angle", { method: "equivalent fluid", "equivalent fluid": 40 * psfPerFoot, "friction angle": undefined }, /state it beside the equivalent fluid/],
    ["too strong a shaking", { "seismic coefficient": 0.45, slope: 0.25 }, /brings the ground behind the wall down/],
  ])("is not answered with %s", (_, fill, words) => {
    const found = outcomeOf(wallOverturning, wallOf(fill), pushed);
    expect(found.type === "unchecked" && found.because).toMatch(words);
  });

  it("takes the friction angle stated beside an equivalent fluid", () => {
    const fluid = wallOf({ method: "equivalent fluid", "equivalent fluid": 40 * psfPerFoot });
    // 40 psf/ft on 7 ft is K = 1/3 as before.
    expect(weigh(wallSliding, fluid, pushed).demand).toBeCloseTo(weigh(wallSliding, wallOf(), pushed).demand, 3);
  });
});
