/** Columns on springs and with knee braces: closed forms, limits, and the frame held against the hand route. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { propsOf } from "../../server/src/mechanics/propped-column.js";
import { solveRigidRoof, type RoofColumn, type RoofLoad } from "../../server/src/mechanics/rigid-roof.js";
import { roofFrame, solveRoofFrame } from "../../server/src/mechanics/roof-frame.js";
import { planeStiffness, type EndsHeld, type KneeBrace } from "../../server/src/mechanics/sway-stiffness.js";
import { solveTributary, tributaryRoof } from "../../server/src/mechanics/tributary-roof.js";

const E = 200e9;
const I = 1.6e-5;
const EI = E * I;
const h = 3;
const brace = (foot: number, more: Partial<KneeBrace> = {}): KneeBrace => ({ foot, run: 0.8, E, area: 4e-3, sides: "both", ...more });
const push = (ends: EndsHeld): number => planeStiffness(ends, EI, h)[0];

describe("one column pushed sideways with a roof that stays level", () => {
  it("as a cantilever on a spring gives by the bending of the column and the turning of its base, h³/3EI + h²/k", () => {
    for (const k of [1e4, 1e6, 1e8]) expect(1 / push({ base: true, top: false, baseSpring: k })).toBeCloseTo(h ** 3 / (3 * EI) + h ** 2 / k, 12);
  });

  it("with a level top on a spring meets 12EI/h³ (1 + m/3) over 4/3 (1 + m) of it, m = 3EI/(kh) over 4 of a slope-deflection", () => {
    // Turning of the base: (4EI/h + k) theta = 6EI u / h²; push 12EI u / h³ - 6EI theta / h².
    for (const k of [1e5, 3e6]) {
      const theta = (6 * EI) / h ** 2 / ((4 * EI) / h + k);
      expect(push({ base: true, top: true, baseSpring: k }) / ((12 * EI) / h ** 3 - ((6 * EI) / h ** 2) * theta)).toBeCloseTo(1, 9);
    }
  });

  it("with a knee brace on a pinned base meets 3EI/(f² h): the piece above the brace turns the foot back", () => {
    for (const f of [1.5, 2.2, 2.7]) expect(push({ base: false, top: false, knee: brace(f) }) / ((3 * EI) / (f ** 2 * h))).toBeCloseTo(1, 9);
  });

  it("with a knee brace on a fixed base goes by slope-deflection: 4EI/f and 3EI/a turn the foot against 6EI u/f²", () => {
    for (const f of [1.5, 2.2, 2.7]) {
      const theta = (6 * EI) / f ** 2 / ((4 * EI) / f + (3 * EI) / (h - f));
      expect(push({ base: true, top: false, knee: brace(f) }) / ((12 * EI) / f ** 3 - ((6 * EI) / f ** 2) * theta)).toBeCloseTo(1, 9);
    }
  });

  it("stands on a very stiff spring as on a fixed base, on a very weak one as on a pinned one", () => {
    for (const top of [false, true]) {
      planeStiffness({ base: true, top }, EI, h).forEach((term, i) => expect(planeStiffness({ base: true, top, baseSpring: 1e16 }, EI, h)[i]).toBeCloseTo(term, -1));
      planeStiffness({ base: false, top }, EI, h).forEach((term, i) => expect(Math.abs(planeStiffness({ base: true, top, baseSpring: 1e-3 }, EI, h)[i] - term)).toBeLessThan(1));
    }
  });
});

const column = (x: number, y: number, ends: EndsHeld): RoofColumn => ({ x, y, base: 0, height: h, E, area: 4.9e-3, Ix: I, Iy: I, GJ: 2e6, top: "pinned", ends: { x: ends, y: ends } });
const places = [[0, 0], [6, 0], [0, 4], [6, 4]] as const;
const four = (ends: EndsHeld): readonly RoofColumn[] => places.map(([x, y]) => column(x, y, ends));
const anyEnds = fc.record({ base: fc.boolean(), spring: fc.option(fc.double({ min: 1e5, max: 1e8, noNaN: true })), foot: fc.double({ min: 1.2, max: 2.6, noNaN: true }), hasKnee: fc.boolean() });
const anyLoad = fc.record({ x: fc.integer({ min: 0, max: 6 }), y: fc.integer({ min: 0, max: 4 }), Fx: fc.integer({ min: -20, max: 20 }), Fy: fc.integer({ min: -20, max: 20 }), Fz: fc.integer({ min: -50, max: 50 }) });
const toLoad = ({ x, y, Fx, Fy, Fz }: { x: number; y: number; Fx: number; Fy: number; Fz: number }): RoofLoad => ({ x, y, z: h, Fx: Fx * 1e3, Fy: Fy * 1e3, Fz: Fz * 1e3 });
const toEnds = ({ base, spring, foot, hasKnee }: { base: boolean; spring: number | null; foot: number; hasKnee: boolean }, area: number): EndsHeld => ({
  base: base || !hasKnee,
  top: false,
  ...(spring !== null && (base || !hasKnee) ? { baseSpring: spring } : {}),
  ...(hasKnee ? { knee: brace(foot, { area }) } : {}),
});

describe("the frame and the hand route", () => {
  it("agree on springs and on knee braces that hardly stretch", () => {
    fc.assert(
      fc.property(fc.array(anyEnds, { minLength: 4, maxLength: 4 }), anyLoad, (ends, load) => {
        const columns = places.map(([x, y], i) => column(x, y, toEnds(ends[i], 10)));
        const frame = roofFrame(columns);
        const first = "mechanism" in frame ? frame : solveRoofFrame(frame, [toLoad(load)]);
        const second = solveRigidRoof({ columns, loads: [toLoad(load)] });
        if ("mechanism" in first || "mechanism" in second) throw new Error("it stands");
        const size = 1 + Math.abs(load.Fx) + Math.abs(load.Fy) + Math.abs(load.Fz);
        first.columns.forEach(({ base, top }, i) => {
          for (const part of ["P", "Vx", "Vy", "Mx", "My"] as const) {
            expect(Math.abs(base[part] - second.columns[i].base[part])).toBeLessThan(5 * size);
            expect(Math.abs(top[part] - second.columns[i].top[part])).toBeLessThan(5 * size);
          }
        });
      }),
      { numRuns: 60 },
    );
  });

  it("balance the load to 1e-9 with braces that stretch", () => {
    fc.assert(
      fc.property(fc.array(anyEnds, { minLength: 4, maxLength: 4 }), anyLoad, (ends, load) => {
        const columns = places.map(([x, y], i) => column(x, y, toEnds(ends[i], 1e-3)));
        const frame = roofFrame(columns);
        const found = "mechanism" in frame ? frame : solveRoofFrame(frame, [toLoad(load)]);
        if ("mechanism" in found) throw new Error(found.mechanism);
        const { x, y, z, Fx, Fy, Fz } = toLoad(load);
        const sum = [0, 0, 0, 0, 0, 0];
        found.columns.forEach(({ base }, i) => {
          const [px, py] = places[i];
          [base.Vx, base.Vy, -base.P, base.Mx - py * base.P, base.My + px * base.P, (base.Mz ?? 0) + px * base.Vy - py * base.Vx].forEach((part, k) => (sum[k] += part));
        });
        const applied = [Fx, Fy, Fz, y * Fz - z * Fy, z * Fx - x * Fz, x * Fy - y * Fx];
        const size = 1e4 + Math.max(...applied.map(Math.abs));
        applied.forEach((one, k) => expect(Math.abs(sum[k] - one) / size).toBeLessThan(1e-9));
      }),
      { numRuns: 60 },
    );
  });

  it("let a brace that stretches hold less: the roof sways farther", () => {
    const sway = (area: number): number => {
      const frame = roofFrame(four({ base: false, top: false, knee: brace(2.2, { area }) }));
      const found = "mechanism" in frame ? frame : solveRoofFrame(frame, [toLoad({ x: 3, y: 2, Fx: 10, Fy: 0, Fz: 0 })]);
      return "mechanism" in found ? Number.NaN : found.displacement.x;
    };
    expect(sway(1e-4)).toBeGreaterThan(sway(1e-3));
    expect(sway(1e-3)).toBeGreaterThan(sway(10));
  });

  it("share a push less to a column whose base gives more", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e5, max: 1e7, noNaN: true }), fc.double({ min: 1.05, max: 20, noNaN: true }), (k, times) => {
        const at = (own: number): number => {
          const columns = places.map(([x, y], i) => column(x, y, { base: true, top: false, baseSpring: i === 0 ? own : k }));
          const found = solveRigidRoof({ columns, loads: [toLoad({ x: 3, y: 2, Fx: 12, Fy: 0, Fz: 0 })] });
          return "mechanism" in found ? Number.NaN : found.columns[0].base.Vx;
        };
        expect(at(k * times)).toBeGreaterThan(at(k));
      }),
      { numRuns: 40 },
    );
  });

  it("say what moves where nothing but pins holds the roof", () => {
    const frame = roofFrame(places.map(([x, y]) => ({ ...column(x, y, { base: false, top: false }), ends: { x: { base: false, top: false, knee: brace(2.2) }, y: { base: false, top: false } } })));
    expect("mechanism" in frame && frame.mechanism).toMatch(/nothing holds the roof against swaying north to south/u);
  });
});

describe("a roof shared by tributary width", () => {
  it("takes knee-braced columns of a line together, with the moment of a level beam", () => {
    const roof = tributaryRoof(four({ base: false, top: false, knee: brace(2.2) }), [], { x1: 0, x2: 6, y1: 0, y2: 4 });
    if ("mechanism" in roof) throw new Error(roof.mechanism);
    const { columns } = solveTributary(roof, [{ x: 3, y: 2, z: h, Fx: 8e3, Fy: 0, Fz: 0 }]);
    for (const { base, top } of columns) {
      expect([base.Vx, base.My]).toEqual([expect.closeTo(2e3, 6), expect.closeTo(0, 6)]);
      expect(top.My).toBeCloseTo(-2e3 * h, 6);
    }
  });
});

describe("a load along a column", () => {
  const along = { EI, h, w: 900, from: 0, to: h };

  it("is propped as beam theory has it where the ends are plain", () => {
    expect(propsOf({ ...along, ends: { base: true, top: false } }).R).toBeCloseTo((3 / 8) * 900 * h, 6);
    expect(propsOf({ ...along, ends: { base: true, top: true } }).R).toBeCloseTo((900 * h) / 2, 6);
    expect(propsOf({ ...along, ends: { base: true, top: true } }).M).toBeCloseTo((900 * h ** 2) / 12, 6);
    expect(propsOf({ ...along, ends: { base: false, top: true } }).M).toBeCloseTo((900 * h ** 2) / 8, 6);
  });

  it("on a base that gives is propped between 3/8 and 1/2 of it: M of the base k/(k + 3EI/h) of w h²/8", () => {
    for (const k of [1e5, 1e6, 1e7]) {
      const M_b = ((900 * h ** 2) / 8) * (k / (k + (3 * EI) / h));
      expect(propsOf({ ...along, ends: { base: true, top: false, baseSpring: k } }).R).toBeCloseTo((900 * h) / 2 - M_b / h, 6);
    }
  });

  it("meets a knee brace as a beam over two spans: on a pinned base w (f³ + a³)/(8h) at its foot", () => {
    // Three-moment equation: 2 M (f + a) = w (f³ + a³) / 4.
    for (const f of [1.5, 2.2]) {
      const a = h - f;
      const M = (900 * (f ** 3 + a ** 3)) / (8 * h);
      const top = (900 * a) / 2 - M / a;
      const foot = 900 * h - top - ((900 * f) / 2 - M / f);
      const props = propsOf({ ...along, ends: { base: false, top: false, knee: brace(f) } });
      expect(props.R).toBeCloseTo(top + foot, 6);
      expect(props.M).toBeCloseTo(foot * a, 6);
    }
  });
});
