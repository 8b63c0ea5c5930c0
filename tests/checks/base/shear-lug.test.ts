import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { forcesBelow } from "../../../server/src/checks/base/distribution.js";
import { readBase } from "../../../server/src/checks/base/geometry.js";
import { lugBearingDepth } from "../../../server/src/checks/base/lug.js";
import { lugBreakout, lugEdgeUsed, lugFlexure, lugPressed, lugPulled, lugWedge } from "../../../server/src/checks/base/lug-strength.js";
import { shearLug } from "../../../server/src/checks/base/shear-lug.js";
import type { Demand } from "../../../server/src/actions/demand.js";
import { basicShearByEdge, shearDepth, shearEnd, singleWedge } from "../../../server/src/checks/anchors/shear-wedge.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, kipInch, ratioOf, run, say, sourced, strength } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.005) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const [mm, kN, MPa] = [1e-3, 1e3, 1e6];
const lugged = (width: number, depth: number, thickness: number, resists: string, given: Given = {}): Given => ({
  ...given,
  base: { "shear lug": { width: width * inch, depth: depth * inch, thickness: thickness * inch, resists }, ...given.base },
});
const read = (given: Given) => {
  const gather = gatherer();
  const inputs = shearLug.inputs(supportWith(given), gather, 0);
  return { inputs, said: [...new Set([...gather.missing, ...gather.blocks])].join("; ") };
};

describe("a shear lug (ACI 318-19 17.11; worked memo in SI, second hand)", () => {
  it("bears 2 t deep at most: 90 mm through 40 mm of grout, 25 mm thick, is 50 mm; 20 mm thick 40 mm; and nothing in the grout", () => {
    near(lugBearingDepth.value({ h_l: 90, t_g: 40, t_sl: 25 }), 50, 1e-9);
    near(lugBearingDepth.value({ h_l: 90, t_g: 40, t_sl: 20 }), 40, 1e-9);
    expect(lugBearingDepth.value({ h_l: 30, t_g: 40, t_sl: 25 })).toBe(0);
  });

  it("A_Vc 926,900 of 1,300,100 mm² = 0.713, psi_ed 0.849, psi_h 1: 90.7 kN with the SI basic strength of 230.5 kN", () => {
    const [c_1, h_a] = [537.5 * mm, 1200 * mm];
    const A_Vc = lugWedge.value({ b_l: 300 * mm, c_1, c_l: 400 * mm, c_r: 400 * mm, h_a, h_sl: 50 * mm });
    const A_Vco = singleWedge.value({ c_1 });
    near(A_Vc / mm ** 2, 926900, 1e-4);
    near(A_Vco / mm ** 2, 1300100, 1e-4);
    const psi_edV = shearEnd.value({ c_a2: 400 * mm, c_1 });
    near(psi_edV, 0.849);
    const psi_hV = shearDepth.value({ c_1, h_a });
    expect(psi_hV).toBe(1);
    near(lugBreakout.value({ A_Vc, A_Vco, psi_edV, psi_cV: 1, psi_hV, V_bb: 230.5 * kN }) / kN, 90.7);
    // 9 sqrt(3626 psi) (21.16 in)^1.5 = 52.75 kip, 1.8 % above 3.7 sqrt(25) 537.5^1.5 = 230.5 kN.
    near(basicShearByEdge.value({ f_c: 25 * MPa, c_1 }) / kN, 234.66, 0.001);
  });

  it("narrow and thin concrete limits the edge distance: c_2 5, h_a 6 of c_a1 8 gives 4 (ACI 318-19 17.7.2.1.2)", () => {
    near(lugEdgeUsed.value({ c_a1: 8, c_a2_max: 5, h_a: 6 }), 4, 1e-9);
    expect(lugEdgeUsed.value({ c_a1: 8, c_a2_max: 15, h_a: 6 })).toBe(8);
  });

  it("uplift of half of what the rods hold halves the bearing, compression raises it to 2 at most", () => {
    near(lugPulled.value({ T: 2, n: 4, A_se: 1, f_u: 1 }), 0.5, 1e-9);
    expect(lugPulled.value({ T: 9, n: 4, A_se: 1, f_u: 1 })).toBe(0);
    near(lugPressed.value({ P: 10, B: 10, N: 10, f_c: 4 }), 1.1, 1e-9);
    expect(lugPressed.value({ P: 1e4, B: 10, N: 10, f_c: 4 })).toBe(2);
  });

  it("bends as a plate of 300 x 25 mm of 250 MPa: 10.5 kN·m with phi 0.9", () => near(lugFlexure.value({ F_y: 250 * MPa, b_l: 300 * mm, t_sl: 25 * mm }) / (kN * 1), 10.55, 0.002));
});

describe("the check of a lug", () => {
  it.each<[string, Given, Parameters<typeof strength>[0], string, number, number]>([
    ["bending: 20 kip x (1.5 + 0.5/2) in = 35 kip-in on 0.9 x 36 x 6 x 0.5²/4", lugged(6, 2, 0.5, "along x", { pier: 240, embedment: 40 }), { Vx: 20 * kip }, "smallMoment", 35 * kipInch, ((0.9 * 36 * 6 * 0.25) / 4) * kipInch],
    ["bearing under uplift on a stub: 0.65 x 1.7 x 4 x 6 x 0.25 x (1 - 40/(4 x 35.1))", lugged(6, 1.75, 3, "along x", { pier: 240, embedment: 40 }), { Vx: 4 * kip, P: -40 * kip }, "force", 4 * kip, 0.65 * 1.7 * 4 * 6 * 0.25 * (1 - 40 / (4 * 0.6057 * 58)) * kip],
    // c_1 = 12 - 0.5 = 11.5; c_2 = 9; A_Vc = 24 (17.25 + 2) - 12 = 450; A_Vco = 595.1; psi_ed = 0.7 + 0.3 x 9/17.25 = 0.8565; V_bb = 9 x 63.25 x 39.0 = 22.2 kip.
    ["breakout toward the edge of a 24 in pier: 0.65 x 450/595.1 x 0.8565 x 22.2", lugged(6, 3.5, 1, "both ways", { pier: 24, embedment: 40 }), { Vy: -4 * kip }, "force", 4 * kip, 0.65 * (450 / 595.125) * 0.85652 * 22.199 * kip],
  ])("%s", (_, given, forces, quantity, demand, capacity) => {
    const outcome = run(shearLug, read(given).inputs, strength(forces));
    // Rods in tension behind a lug ask for embedment besides; here they are deep.
    expect(outcome.quantity).toBe(quantity);
    near(outcome.demand, demand);
    near(outcome.capacity, capacity);
  });

  it("along a long wall the side edge breaks: 9 in to the face, twice its strength with psi_ed = 1", () => {
    const given = lugged(6, 3.5, 1, "along x", { foundation: { kind: "wall on footing", thickness: 18 * inch, height: 400 * inch, length: 400 * inch }, embedment: 40 });
    const outcome = run(shearLug, read(given).inputs, strength({ Vx: 6 * kip }));
    // c_1 = 9 - 3 = 6; A_Vc = (1 + 9 + 9)(9 + 2) - 2 = 207 of 162; V_bb = 9 x 63.25 x 14.70 = 8.366 kip.
    near(outcome.capacity / kip, 2 * 0.65 * (207 / 162) * 8.366);
  });

  it("needs rods in tension embedded 2.5 times their distance from it: 12.5 in for 5 in", () => {
    const outcome = run(shearLug, read(lugged(6, 3.5, 1, "along x", { pier: 240, embedment: 8 })).inputs, strength({ Vx: 0.1 * kip, P: -kip }));
    expect([outcome.quantity, outcome.demand / inch, outcome.capacity / inch].map((v) => (typeof v === "number" ? Number(v.toFixed(6)) : v))).toEqual(["length", 12.5, 8]);
    expect(shearLug.advise!({} as never, outcome, say)).toMatch(/^Embedment 8 in; 12\.5 in needed/);
  });

  it("puts the couple of the shear on the plate, the way a push turns it", () => {
    const base = readBase(supportWith(lugged(6, 3.5, 1, "both ways")), gatherer(), 0);
    near(base.lugArmX / inch, 2.5, 1e-9);
    const forces = forcesBelow(base, { ...strength({ Vx: 2 * kip, Vy: 3 * kip, Mx: -kipInch, My: kipInch }).base }, plainCalc);
    near(forces.My / kipInch, 6, 1e-9);
    near(forces.Mx / kipInch, -8.5, 1e-9);
    const oneWay = readBase(supportWith(lugged(6, 3.5, 1, "along y")), gatherer(), 0);
    expect([oneWay.lugArmX, oneWay.lugArmY > 0]).toEqual([0, true]);
  });

  it("is not tried by shear it does not stand against", () => {
    expect(run(shearLug, read(lugged(6, 3.5, 1, "along x")).inputs, strength({ Vy: 9 * kip })).demand).toBe(0);
  });

  it("more shear never uses less of it, whichever way it points", () => {
    const { inputs } = read(lugged(6, 3.5, 1, "both ways", { pier: 36, embedment: 40 }));
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), fc.double({ min: 1, max: 3, noNaN: true }), fc.boolean(), (V, times, isX) => {
        const at = (shear: number) => ratioOf(run(shearLug, inputs, strength(isX ? { Vx: shear * kip } : { Vy: shear * kip })));
        expect(at(V * times)).toBeGreaterThanOrEqual(at(V) * (1 - 1e-9));
        expect(at(-V)).toBeCloseTo(at(V), 9);
      }),
    );
  });

  it.each<[string, Given, RegExp]>([
    ["two rods", lugged(6, 3.5, 1, "along x", { count: 2, spacing: [10, undefined] }), /at least four rods/],
    ["a lug that ends in the grout", lugged(6, 1.5, 1, "along x"), /ends in the grout/],
    ["no grout on leveling nuts", lugged(6, 3.5, 1, "along x", { base: { "leveling nuts": true, grout: 0, "shear lug": { width: 0.1, depth: 0.1, thickness: 0.02, resists: "along x" } } }), /grout that fills its pocket/],
    ["a lug without a direction", { base: { "shear lug": { width: 0.1, depth: 0.1, thickness: 0.02 } } }, /direction of shear/],
    ["an earthquake of which nothing is said", lugged(6, 3.5, 1, "along x", { site: { "seismic design category": "D" } }), /17\.10/],
  ])("does not answer for %s", (_, given, words) => expect(read(given).said).toMatch(words));
});

describe("a lug in an earthquake of category C to F (ACI 318-19 17.10.6.3)", () => {
  const wide = lugged(6, 3.5, 1, "along x", { pier: 60, embedment: 40 });
  const inputs = (base: Record<string, unknown>, category = "D") => {
    const gather = gatherer();
    const support = supportWith({ ...wide, base: { ...wide.base, ...base }, site: { "seismic design category": category } });
    (support.column!.fields as unknown as Record<string, unknown>).reactions = sourced(new Map());
    const found = shearLug.inputs(support, gather, 0);
    expect([...gather.missing, ...gather.blocks]).toEqual([]);
    return found;
  };
  const pushed: Demand<"strength"> = {
    ...strength({ P: 9 * kip, Vx: 4 * kip }),
    combination: { level: "strength", label: "0.9D + 1.0E", terms: [{ factor: 0.9, type: "D" }, { factor: 1, type: "E" }], clause: "given" },
    earthquake: { P: 0, Vx: 4 * kip, Vy: 0, Mx: 0, My: 0 },
  };

  it("stands against twice 4 kip where the overstrength is 2, and against 4 where it is in the reactions or in category B", () => {
    const twice = inputs({ "seismic anchors": "overstrength", "overstrength factor": 2 });
    const outcome = run(shearLug, twice, pushed);
    expect(outcome).toEqual(run(shearLug, inputs({}, "B"), { ...pushed, base: { ...pushed.base, Vx: 8 * kip } }));
    // It bends: 8 kip on 1.5 + 2/2 in.
    near(outcome.demand / kipInch, 20, 1e-9);
    near(run(shearLug, inputs({ "seismic anchors": "overstrength included" }), pushed).demand / kipInch, 10, 1e-9);
    near(run(shearLug, inputs({}, "B"), pushed).demand / kipInch, 10, 1e-9);
  });

  it("does not answer where combined reactions do not tell what of them is earthquake", () => {
    expect(shearLug.evaluate(inputs({ "seismic anchors": "overstrength", "overstrength factor": 2 }), strength({ Vx: kip }), plainCalc)).toMatchObject({ type: "unchecked", because: expect.stringMatching(/by load case/) });
  });
});
