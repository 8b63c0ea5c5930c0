/** Second order of a story: the approximate magnifier against the frame with the terms of second order, and where it is applied. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Demand } from "../../server/src/actions/demand.js";
import { magnifierLeftOut, storyMagnifier, withSecondOrder } from "../../server/src/actions/second-order.js";
import { sharedByFrame } from "../../server/src/actions/sharing.js";
import { plainCalc } from "../../server/src/formula/calc.js";
import type { RoofColumn } from "../../server/src/mechanics/rigid-roof.js";
import { roofFrame, solveRoofFrame } from "../../server/src/mechanics/roof-frame.js";
import { columnsOf, foot, psf, solved, structureOf } from "./given.js";
import { actionsOf } from "../../server/src/actions/index.js";

const E = 200e9;
const I = 1.6e-5;
const column = (x: number, y: number, other: Partial<RoofColumn> = {}): RoofColumn => ({ x, y, base: 0, height: 3, E, area: 4.9e-3, Ix: I, Iy: I, GJ: 2e6, top: "pinned", ...other });

const storiesOf = (columns: readonly RoofColumn[]) => {
  const sharing = sharedByFrame(columns);
  if ("unknown" in sharing) throw new Error(sharing.unknown);
  return sharing.stories;
};

const demand = (P: number, Mx: number, My: number): Demand<"strength"> => ({
  level: "strength",
  label: "1.2D",
  combination: { level: "strength", label: "1.2D", terms: [], clause: "" },
  cases: [],
  top: { P, Vx: 0, Vy: 0, Mx: 0, My: 0 },
  base: { P, Vx: 0, Vy: 0, Mx, My },
  sway: { x: 0.01, y: 0.02 },
});

const magnified = (columns: readonly RoofColumn[], loads: readonly number[]) => {
  const result = withSecondOrder(
    loads.map((P) => [demand(P, -2e3, 1e3)]),
    columns.map(({ height }) => height),
    storiesOf(columns),
    plainCalc,
  );
  if ("unknown" in result) throw new Error(result.unknown);
  return result.map(([one]) => one);
};

describe("the magnifier of a story", () => {
  it("by hand: four cantilevers of 100 kN each, 3 m high, 3EI/h³ each", () => {
    const K = (4 * 3 * E * I) / 27;
    const B_2 = 1 / (1 - 4e5 / 3 / (0.85 * 0.8 * K));
    const columns = [column(-4, -3), column(4, -3), column(-4, 3), column(4, 3)];
    for (const { base, sway, magnified: by } of magnified(columns, [1e5, 1e5, 1e5, 1e5])) {
      expect(by).toEqual({ x: expect.closeTo(B_2, 6), y: expect.closeTo(B_2, 6) });
      expect([base.Mx, base.My, sway?.x, sway?.y]).toEqual([-2e3 * B_2, 1e3 * B_2, 0.01 * B_2, 0.02 * B_2].map((value) => expect.closeTo(value, 3)));
      expect(base.P).toBe(1e5);
    }
  });

  it("counts columns that lean on others: one loaded and hinged, three that hold it", () => {
    const hinged = { x: { base: false, top: false }, y: { base: false, top: false } };
    const columns = [column(-4, -3), column(4, -3), column(-4, 3), column(4, 3, { ends: hinged })];
    const [{ magnified: by }] = magnified(columns, [0, 0, 0, 4e5]);
    // The story turns, as its stiffness is not in its middle: the magnifier is more than with three columns that only shift.
    expect(by?.x).toBeGreaterThan(1 / (1 - 4e5 / 3 / (0.85 * 0.8 * ((3 * 3 * E * I) / 27))));
  });

  it("out of plumb by 0.002: four cantilevers of 100 kN, 3 m high, each bent by B_2 x 0.002 x 100 kN x 3 m (AISC 360-22 C2.2b)", () => {
    const columns = [column(-4, -3), column(4, -3), column(-4, 3), column(4, 3)];
    for (const { magnified: by, outOfPlumb } of magnified(columns, [1e5, 1e5, 1e5, 1e5])) {
      for (const axis of ["x", "y"] as const) expect((3 * E * I * outOfPlumb![axis]) / 9).toBeCloseTo(by![axis] * 0.002 * 1e5 * 3, 6);
    }
    // One that leans on three others puts its load on them.
    const hinged = { x: { base: false, top: false }, y: { base: false, top: false } };
    const [first] = magnified([...columns.slice(0, 3), column(4, 3, { ends: hinged })], [0, 0, 0, 3e4]);
    expect((3 * 3 * E * I * first.outOfPlumb!.x) / 27).toBeGreaterThanOrEqual(0.002 * 3e4);
  });

  it("out of plumb is not looked at under tension, nor beside wind, until the magnifier is more than 1.7", () => {
    const columns = [column(-4, -3), column(4, -3), column(-4, 3), column(4, 3)];
    const under = (P: number, type: "D" | "W" | "E" | "N") => {
      const one = { ...demand(P, 0, 0), combination: { level: "strength", label: "", terms: [{ factor: 1, type }], clause: "" } } as Demand<"strength">;
      const result = withSecondOrder(columns.map(() => [one]), columns.map(() => 3), storiesOf(columns), plainCalc);
      if ("unknown" in result) throw new Error(result.unknown);
      return result[0][0];
    };
    expect(under(-1e5, "D").outOfPlumb).toBeUndefined();
    expect(under(1e5, "D").outOfPlumb).toBeDefined();
    for (const type of ["W", "E", "N"] as const) {
      expect(under(1e5, type).outOfPlumb).toBeUndefined();
      // P h²/(0.85 x 0.8 x 3 E I) of 0.40 and of 0.42: B_2 of 1.67 and 1.72.
      const at = (share: number) => under((share * 0.85 * 0.8 * 3 * E * I) / 9, type);
      expect([at(0.4).outOfPlumb, at(0.42).magnified!.x > 1.7]).toEqual([undefined, true]);
      expect(at(0.42).outOfPlumb!.x).toBeGreaterThan(0);
    }
  });

  it("leaves the demand as it is within one part in a hundred, and under tension", () => {
    const columns = [column(-4, -3), column(4, -3), column(0, 3)];
    for (const P of [1e3, -2e5]) {
      for (const { base, magnified: by } of magnified(columns, [P, P, P])) {
        expect([base.Mx, base.My]).toEqual([-2e3, 1e3]);
        expect(by).toEqual({ x: 1, y: 1 });
      }
    }
  });

  it("agrees with the frame with the terms of second order at 0.8 of the stiffness, within 4 % up to 1.6", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e4, max: 2.5e5, noNaN: true }), fc.constantFrom("pinned" as const, "fixed" as const), (P, top) => {
        const columns = [column(-4, -3, { top }), column(4, -3, { top }), column(-4, 3, { top }), column(4, 3, { top })];
        const soft = columns.map((c) => ({ ...c, E: 0.8 * E, GJ: 1.6e6 }));
        const move = (compression?: readonly number[]) => {
          const frame = roofFrame(soft, [], compression);
          const result = "mechanism" in frame ? frame : solveRoofFrame(frame, [{ x: 0, y: 0, z: 3, Fx: 1e3, Fy: 0, Fz: 0 }]);
          return "mechanism" in result ? Number.NaN : result.displacement.x;
        };
        const exact = move([P, P, P, P]) / move();
        const B_2 = storyMagnifier.value({ alpha: 1, k_P: (4 * P) / 3, K_s: storiesOf(columns).x[0].stiffness });
        fc.pre(Number.isFinite(exact) && exact < 1.6 && B_2 >= 1);
        expect(B_2).toBeGreaterThan(exact * 0.96);
        expect(B_2).toBeLessThan(exact * 1.04);
      }),
      { numRuns: 60 },
    );
  });

  it("a story that does not stand is said in words", () => {
    const columns = [column(-4, -3), column(4, -3), column(0, 3)];
    const result = withSecondOrder([0, 1, 2].map(() => [demand(9e5, 0, 0)]), [3, 3, 3], storiesOf(columns), plainCalc);
    expect(result).toMatchObject({ unknown: expect.stringMatching(/do not stand up to 1\.2D: leaning east to west.*brace a bay/u) });
  });
});

describe("on a roof", () => {
  const slender = { roof: { dead: 60 * psf }, lines: [
    { name: "south", places: [{ x: 3, y: 3 }, { x: 21, y: 3 }], fields: { height: 14 * foot } },
    { name: "north", places: [{ x: 3, y: 17 }, { x: 21, y: 17 }], fields: { height: 14 * foot } },
  ] };

  it("strength demands are magnified, allowable ones are not", () => {
    const { columns } = solved(slender);
    const by = columns.flatMap(({ strength }) => strength.map(({ magnified: one }) => one?.x ?? 0));
    expect(Math.max(...by)).toBeGreaterThan(magnifierLeftOut);
    expect(by.every((one) => one === 1 || one > magnifierLeftOut)).toBe(true);
    for (const { strength, cases } of columns) {
      for (const { cases: acting, combination, base, magnified: m } of strength) {
        const first = acting.reduce((sum, { id }, i) => sum + combination.terms[i].factor * (cases.find(({ loadCase }) => loadCase.id === id)?.base.My ?? 0), 0);
        expect(base.My).toBeCloseTo((m?.x ?? 0) * first, 4);
      }
    }
    expect(columns.every(({ allowable }) => allowable.every(({ magnified: one }) => one === undefined))).toBe(true);
  });

  it("the derivation shows the worst of them", () => {
    const actions = actionsOf(structureOf(slender));
    const found = actions.derivations().find(({ title }) => title === "second order");
    const values = found?.steps.flatMap((step) => (step.type === "formula" && step.formula.id === "actions.second-order.magnifier" ? [step.value] : [])) ?? [];
    const most = Math.max(...columnsOf(actions, slender.lines).flatMap(({ strength }) => strength.flatMap(({ magnified: m }) => [m?.x ?? 0, m?.y ?? 0])));
    expect(Math.max(...values)).toBeCloseTo(most, 12);
  });
});
