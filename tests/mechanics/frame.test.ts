/** Closed forms of statics and of the theory of beams, then laws. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frameModel, solveFrame } from "../../server/src/mechanics/frame.js";
import type { Frame, FrameLoad, FrameMember, FrameNode, FrameResult, Vector } from "../../server/src/mechanics/frame-types.js";

const E = 200e9;
const I = 2e-5;
const GJ = 3e6;
const area = 6e-3;
const held = { x: "held", y: "held", z: "held", rx: "held", ry: "held", rz: "held" } as const;
const node = (x: number, y: number, z: number, more: Partial<FrameNode> = {}): FrameNode => ({ x, y, z, ...more });
const beam = (start: number, end: number, more: Partial<FrameMember> = {}): FrameMember => ({ start, end, E, area, Iy: I, Iz: I, GJ, ...more });
const v = (x: number, y: number, z: number): Vector => ({ x, y, z });

function solved(frame: Frame, loads: readonly FrameLoad[], compression?: readonly number[]): FrameResult {
  const model = frameModel(frame, compression);
  if ("fault" in model) throw new Error(JSON.stringify(model));
  return solveFrame(model, loads);
}

describe("a single member, closed forms of beam theory", () => {
  const L = 4;
  const cantilever: Frame = { nodes: [node(0, 0, 0, { holds: held }), node(L, 0, 0)], members: [beam(0, 1, { Iy: 3e-5, Iz: 1e-5 })] };
  const builtIn: Frame = { nodes: [node(0, 0, 0, { holds: held }), node(L, 0, 0, { holds: held })], members: [beam(0, 1)] };
  const propped: Frame = { nodes: builtIn.nodes, members: [beam(0, 1, { freeAtEnd: ["ry", "rz"] })] };

  it("a cantilever bends by F L³/3EI and F L²/2EI about each of its axes, and lengthens by F L/EA", () => {
    const { displacements, reactions } = solved(cantilever, [{ node: 1, force: v(7e3, 5e3, -9e3) }]);
    const [x, y, z, rx, ry, rz] = displacements[1];
    expect(x).toBeCloseTo((7e3 * L) / (E * area), 12);
    expect(y).toBeCloseTo((5e3 * L ** 3) / (3 * E * 1e-5), 12);
    expect(z).toBeCloseTo((-9e3 * L ** 3) / (3 * E * 3e-5), 12);
    expect([rx, ry, rz]).toEqual([0, (9e3 * L ** 2) / (2 * E * 3e-5), (5e3 * L ** 2) / (2 * E * 1e-5)].map((r) => expect.closeTo(r, 12)));
    expect([...reactions[0]]).toEqual([-7e3, -5e3, 9e3, 0, -9e3 * L, -5e3 * L].map((f) => expect.closeTo(f, 6)));
  });

  it("a couple at the tip turns it by M L/EI, a torque by T L/GJ", () => {
    const [, y, , rx, , rz] = solved(cantilever, [{ node: 1, moment: v(2e3, 0, 3e3) }]).displacements[1];
    expect([y, rx, rz]).toEqual([(3e3 * L ** 2) / (2 * E * 1e-5), (2e3 * L) / GJ, (3e3 * L) / (E * 1e-5)].map((r) => expect.closeTo(r, 12)));
  });

  it("an even load bends the tip by w L⁴/8EI and turns it by w L³/6EI", () => {
    const { displacements, reactions } = solved(cantilever, [{ member: 0, from: 0, to: L, intensity: v(0, 0, -2e3) }]);
    expect(displacements[1][2]).toBeCloseTo((-2e3 * L ** 4) / (8 * E * 3e-5), 12);
    expect(displacements[1][4]).toBeCloseTo((2e3 * L ** 3) / (6 * E * 3e-5), 12);
    expect(reactions[0][4]).toBeCloseTo((-2e3 * L ** 2) / 2, 6);
  });

  it("built in at both ends: w L²/12 under an even load, w L²/30 and w L²/20 under a triangle", () => {
    expect(solved(builtIn, [{ member: 0, from: 0, to: L, intensity: v(0, 3e3, 0) }]).reactions.map((r) => r[5])).toEqual([-4e3, 4e3].map((m) => expect.closeTo(m, 6)));
    const triangle = solved(builtIn, [{ member: 0, from: 0, to: L, intensity: v(0, 0, 0), atTo: v(0, 3e3, 0) }]).reactions;
    expect(triangle.map((r) => r[5])).toEqual([-(3e3 * 16) / 30, (3e3 * 16) / 20].map((m) => expect.closeTo(m, 6)));
    expect(triangle.map((r) => r[1])).toEqual([-0.15 * 3e3 * L, -0.35 * 3e3 * L].map((f) => expect.closeTo(f, 6)));
  });

  it("built in at both ends, a force at a: F a b²/L² and F a² b/L²; a force along the member goes to the ends as b to a", () => {
    const [near, far] = solved(builtIn, [{ member: 0, at: 1, force: v(8e3, 0, -8e3) }]).reactions;
    expect([near[4], far[4]]).toEqual([(-8e3 * 1 * 9) / 16, (8e3 * 1 * 3) / 16].map((m) => expect.closeTo(m, 6)));
    expect([near[0], far[0]]).toEqual([-6e3, -2e3].map((f) => expect.closeTo(f, 6)));
  });

  it("propped: 5/8 and 3/8 of an even load, w L²/8 at the fixed end", () => {
    const [near, far] = solved(propped, [{ member: 0, from: 0, to: L, intensity: v(0, 0, -2e3) }]).reactions;
    expect([near[2], far[2], near[4], far[4]]).toEqual([5e3, 3e3, -4e3, 0].map((f) => expect.closeTo(f, 6)));
  });

  it("a load over a part: the same as the forces it is made of, by statics of a simple beam", () => {
    const simple: Frame = {
      nodes: [node(0, 0, 0, { holds: held }), node(L, 0, 0, { holds: held })],
      members: [beam(0, 1, { freeAtStart: ["ry", "rz"], freeAtEnd: ["ry", "rz"] })],
    };
    const [near, far] = solved(simple, [{ member: 0, from: 1, to: 2, intensity: v(0, 0, -4e3) }]).reactions;
    expect([near[2], far[2], near[4], far[4]]).toEqual([2.5e3, 1.5e3, 0, 0].map((f) => expect.closeTo(f, 6)));
  });

  it("on a spring that turns, a cantilever's tip moves by F L³/3EI + F L²/k", () => {
    const k = 4e6;
    const { displacements, reactions } = solved({ nodes: [node(0, 0, 0, { holds: { ...held, ry: k } }), node(L, 0, 0)], members: [beam(0, 1)] }, [{ node: 1, force: v(0, 0, -1e3) }]);
    expect(displacements[1][2]).toBeCloseTo(-(1e3 * L ** 3) / (3 * E * I) - (1e3 * L ** 2) / k, 12);
    expect(reactions[0][4]).toBeCloseTo(-4e3, 6);
  });
});

describe("plane and space frames, closed forms", () => {
  const h = 3;
  const L = 5;
  const stiff = 1e3 * area;
  const portal = (column: Partial<FrameMember>, beamI: number): Frame => ({
    nodes: [node(0, 0, 0, { holds: held }), node(0, 0, h, { holds: { y: "held" } }), node(L, 0, h, { holds: { y: "held" } }), node(L, 0, 0, { holds: held })],
    members: [beam(0, 1, { area: stiff, ...column }), beam(1, 2, { area: stiff, Iy: beamI, Iz: beamI }), beam(3, 2, { area: stiff, ...column })],
  });

  // Slope deflection of the fixed portal with k = (I_beam/I_column)(h/L): foot H h/2 (3k + 1)/(6k + 1), knee H h/2 3k/(6k + 1).
  it.each([1e-5, 2e-5, 8e-5])("a fixed portal pushed at its knee, beam I = %s", (beamI) => {
    const k = (beamI / I) * (h / L);
    const { reactions, members } = solved(portal({}, beamI), [{ node: 1, force: v(5e3, 0, 0) }, { node: 2, force: v(5e3, 0, 0) }]);
    const foot = ((10e3 * h) / 2) * ((3 * k + 1) / (6 * k + 1));
    const knee = ((10e3 * h) / 2) * ((3 * k) / (6 * k + 1));
    for (const at of [0, 3]) expect(reactions[at][4] / -foot).toBeCloseTo(1, 4);
    expect(members[0].end[4] / -knee).toBeCloseTo(1, 4);
    expect([reactions[0][2], reactions[3][2]]).toEqual([(-2 * knee) / L, (2 * knee) / L].map((f) => expect.closeTo(f, 0)));
  });

  // Pinned portal under an even beam load: thrust w L²/(4 h (2k + 3)).
  it("a portal on pins under an even load has the thrust w L²/(4h(2k + 3))", () => {
    const k = (4e-5 / I) * (h / L);
    const { reactions } = solved(portal({ freeAtStart: ["ry", "rz"] }, 4e-5), [{ member: 1, from: 0, to: L, intensity: v(0, 0, -6e3) }]);
    const thrust = (6e3 * L ** 2) / (4 * h * (2 * k + 3));
    expect(reactions[0][0] / thrust).toBeCloseTo(1, 3);
    expect(reactions[3][0] / -thrust).toBeCloseTo(1, 3);
    expect(reactions[0][4]).toBeCloseTo(0, 6);
  });

  // Unit load: bending of both legs and torsion of the first.
  it("a bent cantilever, square in plan, sinks by F(a³ + b³)/3EI + F b² a/GJ", () => {
    const [a, b] = [2, 1.5];
    const { displacements } = solved({ nodes: [node(0, 0, 0, { holds: held }), node(a, 0, 0), node(a, b, 0)], members: [beam(0, 1), beam(1, 2)] }, [{ node: 2, force: v(0, 0, -1e3) }]);
    expect(displacements[2][2]).toBeCloseTo((-1e3 * (a ** 3 + b ** 3)) / (3 * E * I) - (1e3 * b ** 2 * a) / GJ, 12);
  });

  it("three ties from one point to a circle on the ground share a load as F/(3 cos)", () => {
    const feet = [0, 1, 2].map((i) => node(2 * Math.cos((i * 2 * Math.PI) / 3), 2 * Math.sin((i * 2 * Math.PI) / 3), 0, { holds: held }));
    const top = node(0, 0, 3, { holds: { rx: "held", ry: "held", rz: "held" } });
    const { members, displacements } = solved({ nodes: [...feet, top], members: [0, 1, 2].map((i) => ({ start: i, end: 3, E, area, isTie: true })) }, [{ node: 3, force: v(0, 0, -9e3) }]);
    const length = Math.hypot(2, 3);
    for (const { compression } of members) expect(compression).toBeCloseTo((3e3 * length) / 3, 6);
    expect(displacements[3][2]).toBeCloseTo(-((3e3 * length) / 3 / (E * area / length)) * (length / 3), 12);
  });

  it("one tie braces a hinged bay: horizontal force H in it, a couple of H h/L in the columns", () => {
    const hinged = { freeAtStart: ["ry", "rz"], freeAtEnd: ["ry", "rz"] } as const;
    const { nodes } = portal(hinged, I);
    // On hinged columns the beam could roll about its own line.
    const frame: Frame = { nodes: nodes.map((one, i) => (i === 1 ? { ...one, holds: { ...one.holds, rx: "held" } } : one)), members: [beam(0, 1, hinged), beam(1, 2), beam(3, 2, hinged), { start: 0, end: 2, E, area: 1e-3, isTie: true }] };
    const { members, reactions } = solved(frame, [{ node: 1, force: v(10e3, 0, 0) }]);
    expect(members[3].compression).toBeCloseTo((-10e3 * Math.hypot(h, L)) / L, 6);
    expect([reactions[0][0], reactions[0][2], reactions[3][0], reactions[3][2]]).toEqual([-10e3, (-10e3 * h) / L, 0, (10e3 * h) / L].map((f) => expect.closeTo(f, 6)));
  });

  it("nodes of one rigid body move as it moves, and a load anywhere on it counts with its arm", () => {
    const nodes = [node(1, 1, 3), node(-1, -1, 0, { holds: held }), node(-1, -1, 3, { follows: 0 })];
    const { displacements, reactions } = solved({ nodes, members: [beam(1, 2)] }, [{ node: 0, place: v(4, 0, 3.5), force: v(1e3, 2e3, -3e3) }]);
    const [u, w] = [displacements[0], displacements[2]];
    expect(w[0]).toBeCloseTo(u[0] - u[5] * -2, 12);
    expect(w[2]).toBeCloseTo(u[2] + u[3] * -2 - u[4] * -2, 12);
    // About the foot at (-1, -1, 0): arm (5, 1, 3.5).
    const moment = [1 * -3e3 - 3.5 * 2e3, 3.5 * 1e3 - 5 * -3e3, 5 * 2e3 - 1 * 1e3];
    expect([...reactions[1]]).toEqual([-1e3, -2e3, 3e3, ...moment.map((m) => -m)].map((f) => expect.closeTo(f, 5)));
  });
});

describe("second order", () => {
  const L = 4;
  const euler = (Math.PI ** 2 * E * I) / (4 * L ** 2);
  const pole = (parts: number): Frame => ({
    nodes: Array.from({ length: parts + 1 }, (_, i) => node(0, 0, (L * i) / parts, i === 0 ? { holds: held } : {})),
    members: Array.from({ length: parts }, (_, i) => beam(i, i + 1)),
  });

  // Beam column theory: tip H/P (tan(kL)/k - L) with k² = P/EI.
  it.each([0.1, 0.3, 0.5, 0.8])("a pole under %s of its buckling load leans by the exact beam column solution", (part) => {
    const P = part * euler;
    const k = Math.sqrt(P / (E * I));
    const exact = (1e3 / P) * (Math.tan(k * L) / k - L);
    const one = solved(pole(1), [{ node: 1, force: v(1e3, 0, 0) }], [P]);
    const four = solved(pole(4), [{ node: 4, force: v(1e3, 0, 0) }], [P, P, P, P]);
    expect(one.displacements[1][0] / exact).toBeCloseTo(1, part < 0.6 ? 2 : 1);
    expect(four.displacements[4][0] / exact).toBeCloseTo(1, 3);
    // The foot feels the push and the load on the leaning top.
    expect(four.reactions[0][4]).toBeCloseTo(-(1e3 * L + P * four.displacements[4][0]), 3);
  });

  it("above its buckling load a pole has buckled, just below it stands", () => {
    const at = (part: number) => frameModel(pole(4), Array(4).fill(part * euler));
    expect(at(0.999)).not.toHaveProperty("fault");
    expect(at(1.001)).toHaveProperty("fault", "buckled");
  });

  it("tension stiffens", () => {
    const lean = (P: number) => solved(pole(2), [{ node: 2, force: v(1e3, 0, 0) }], [P, P]).displacements[2][0];
    expect(lean(-0.5 * euler)).toBeLessThan(lean(0));
  });
});

describe("frames that do not stand say where they move", () => {
  it.each<[string, Frame, unknown]>([
    ["a column on a pin", { nodes: [node(0, 0, 0, { holds: held }), node(0, 0, 3)], members: [beam(0, 1, { freeAtStart: ["rz"] })] }, { fault: "free", node: 1 }],
    ["a node of its own", { nodes: [node(0, 0, 0, { holds: held }), node(0, 0, 3), node(1, 0, 0)], members: [beam(0, 1)] }, { fault: "free", node: 2, motion: "x" }],
    ["a member without length", { nodes: [node(0, 0, 0, { holds: held }), node(0, 0, 0)], members: [beam(0, 1)] }, { fault: "input", because: "member 1 has no length" }],
    ["a member to nowhere", { nodes: [node(0, 0, 0, { holds: held })], members: [beam(0, 7)] }, { fault: "input", because: "member 1 has no node at one end" }],
    ["a node that follows a follower", { nodes: [node(0, 0, 0), node(0, 0, 1, { follows: 0 }), node(0, 0, 2, { follows: 1 })], members: [] }, { fault: "input" }],
    ["a place that is no number", { nodes: [node(Number.NaN, 0, 0)], members: [] }, { fault: "input" }],
  ])("%s", (_, frame, expected) => {
    expect(frameModel(frame)).toMatchObject(expected as object);
  });
});

const spot = fc.double({ min: -8, max: 8, noNaN: true });
const push = fc.double({ min: -1e4, max: 1e4, noNaN: true });
const anyVector = fc.record({ x: push, y: push, z: push });

/** A tree of members from one held node, with some bars across, so that it always stands. */
const anyFrame = fc
  .record({
    places: fc.array(fc.record({ x: spot, y: spot, z: spot }), { minLength: 3, maxLength: 8 }),
    from: fc.array(fc.nat(), { minLength: 8, maxLength: 8 }),
    inertia: fc.array(fc.double({ min: 1e-6, max: 1e-4, noNaN: true }), { minLength: 16, maxLength: 16 }),
  })
  .filter(({ places }) => places.every((a, i) => places.every((b, j) => i === j || Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) > 1)))
  .map(({ places, from, inertia }): Frame => ({
    nodes: places.map((place, i) => ({ ...place, holds: i === 0 || i === places.length - 1 ? held : undefined })),
    members: [
      ...places.slice(1).map((_, i) => beam(from[i] % (i + 1), i + 1, { Iy: inertia[i], Iz: inertia[i + 8] })),
      { start: 0, end: places.length - 1, E, area, isTie: true },
    ],
  }));
const anyLoads = (frame: Frame): fc.Arbitrary<FrameLoad[]> =>
  fc.array(
    fc.oneof(
      fc.record({ node: fc.nat(frame.nodes.length - 1), force: anyVector, moment: anyVector }),
      fc.record({ member: fc.nat(frame.members.length - 1), at: fc.double({ min: 0, max: 1, noNaN: true }), force: anyVector }),
      fc.record({ member: fc.nat(frame.members.length - 1), from: fc.constant(0.1), to: fc.double({ min: 0.2, max: 1, noNaN: true }), intensity: anyVector, atTo: anyVector }),
    ),
    { minLength: 1, maxLength: 4 },
  );

/** Total force and moment about the origin, with the sum of their sizes. */
function total(frame: Frame, loads: readonly FrameLoad[]): { sum: number[]; size: number } {
  const sum = [0, 0, 0, 0, 0, 0];
  let size = 0;
  const add = (at: Vector, f: Vector, m: Vector = v(0, 0, 0)) => {
    const six = [f.x, f.y, f.z, at.y * f.z - at.z * f.y + m.x, at.z * f.x - at.x * f.z + m.y, at.x * f.y - at.y * f.x + m.z];
    six.forEach((value, i) => {
      sum[i] += value;
      size += Math.abs(value);
    });
  };
  for (const load of loads) {
    if ("node" in load) {
      add(frame.nodes[load.node], load.force ?? v(0, 0, 0), load.moment);
      continue;
    }
    const { start, end } = frame.members[load.member];
    const [a, b] = [frame.nodes[start], frame.nodes[end]];
    const length = Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);
    const along = (d: number) => v(a.x + ((b.x - a.x) * d) / length, a.y + ((b.y - a.y) * d) / length, a.z + ((b.z - a.z) * d) / length);
    if ("at" in load) add(along(load.at), load.force);
    else {
      const to = load.atTo ?? load.intensity;
      const span = load.to - load.from;
      for (const c of ["x", "y", "z"] as const) {
        const [p, q] = [load.intensity[c], to[c]];
        const f = (span * (p + q)) / 2;
        // An even load and a triangle, each at its own middle.
        const even = p * span;
        const rest = f - even;
        add(along(load.from + span / 2), { ...v(0, 0, 0), [c]: even });
        add(along(load.from + (2 * span) / 3), { ...v(0, 0, 0), [c]: rest });
      }
    }
  }
  return { sum, size };
}

describe("laws", () => {
  const framesAndLoads = anyFrame.chain((frame) => anyLoads(frame).map((loads) => ({ frame, loads })));

  it("reactions balance the loads to 1e-9 in all six equations", () => {
    fc.assert(
      fc.property(framesAndLoads, ({ frame, loads }) => {
        const { reactions } = solved(frame, loads);
        const { sum, size } = total(frame, loads);
        let scale = size;
        reactions.forEach((r, n) => {
          const { x, y, z } = frame.nodes[n];
          const six = [r[0], r[1], r[2], y * r[2] - z * r[1] + r[3], z * r[0] - x * r[2] + r[4], x * r[1] - y * r[0] + r[5]];
          six.forEach((value, i) => (sum[i] += value));
          scale += six.reduce((a, value) => a + Math.abs(value), 0);
        });
        for (const rest of sum) expect(Math.abs(rest)).toBeLessThanOrEqual(1e-9 * scale + 1e-12);
      }),
      { numRuns: 100 },
    );
  });

  // The sideways axis of a member almost plumb comes from a difference of nearly equal numbers.
  it.each([1e-8, 2.248e-7, 1e-5, 1e-3])("a strut %s m off plumb over 8 m balances a load along it", (off) => {
    const frame: Frame = { nodes: [node(0, 0, 0, { holds: held }), node(off, off / 3, 8)], members: [beam(0, 1)] };
    const { reactions } = solved(frame, [{ node: 1, force: v(0, 0, -3e4) }]);
    expect(Math.abs(reactions[0][0])).toBeLessThan(1e-10 * 3e4);
    expect(Math.abs(reactions[0][1])).toBeLessThan(1e-10 * 3e4);
    expect(reactions[0][2]).toBeCloseTo(3e4, 4);
  });

  it("movements are mutual: a push at one node moves another as a push there moves the first", () => {
    fc.assert(
      fc.property(anyFrame, fc.nat(), fc.nat(), (frame, a, b) => {
        const free = frame.nodes.map((_, n) => n).filter((n) => frame.nodes[n].holds === undefined);
        const [i, j] = [free[a % free.length], free[b % free.length]];
        const first = solved(frame, [{ node: i, force: v(1e3, 0, 0) }]).displacements;
        const second = solved(frame, [{ node: j, force: v(0, 0, 1e3) }]).displacements;
        // Two movements may both be nothing; rounding is measured by how far the frame moves at all.
        const size = Math.max(...[...first, ...second].flatMap((node) => [...node].map(Math.abs)));
        expect(Math.abs(first[j][2] - second[i][0])).toBeLessThanOrEqual(1e-10 * size);
      }),
      { numRuns: 60 },
    );
  });

  it("a mirrored frame under mirrored loads moves as the mirror shows", () => {
    fc.assert(
      fc.property(framesAndLoads, ({ frame, loads }) => {
        const flip = (a: Vector): Vector => ({ ...a, x: -a.x });
        const turn = (a: Vector): Vector => ({ x: a.x, y: -a.y, z: -a.z });
        const mirrored: Frame = { ...frame, nodes: frame.nodes.map((one) => ({ ...one, x: -one.x })) };
        const same = loads.map((load): FrameLoad => {
          if ("node" in load) return { ...load, force: load.force && flip(load.force), moment: load.moment && turn(load.moment) };
          return "at" in load ? { ...load, force: flip(load.force) } : { ...load, intensity: flip(load.intensity), atTo: load.atTo && flip(load.atTo) };
        });
        // Without a z axis of its own a member's section is round enough to be its own mirror image when both inertias are the same.
        const round = (one: Frame): Frame => ({ ...one, members: one.members.map((member) => (member.isTie ? member : { ...member, Iz: member.Iy })) });
        const [first, second] = [solved(round(frame), loads), solved(round(mirrored), same)];
        first.displacements.forEach((one, n) => {
          const [x, y, z, rx, ry, rz] = second.displacements[n];
          const other = [-x, y, z, rx, -ry, -rz];
          const size = Math.max(...[...one].map(Math.abs), 1e-6);
          [...one].forEach((value, i) => expect(Math.abs(value - other[i])).toBeLessThanOrEqual(1e-7 * size));
        });
      }),
      { numRuns: 60 },
    );
  });

  it("a grid of a hundred nodes carries its load to its held nodes", () => {
    const n = 10;
    const nodes = Array.from({ length: n * n }, (_, i) => node(3 * (i % n), 3 * Math.floor(i / n), 4, i % 11 === 0 ? { holds: held } : {}));
    const members = nodes.flatMap((_, i) => [...(i % n < n - 1 ? [beam(i, i + 1)] : []), ...(i < n * (n - 1) ? [beam(i, i + n)] : [])]);
    const { reactions } = solved({ nodes, members }, nodes.map((_, i) => ({ node: i, force: v(0, 0, -1e3) })));
    expect(reactions.reduce((sum, r) => sum + r[2], 0)).toBeCloseTo(1e5, 4);
  });
});
