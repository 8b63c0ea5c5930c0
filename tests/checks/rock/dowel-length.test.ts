import { describe, expect, it } from "vitest";
import { barBond, barBondResistance, groutBond } from "../../../server/src/checks/rock/bar-bond.js";
import { dowelBond } from "../../../server/src/checks/rock/dowel-bond.js";
import { dowelDepth } from "../../../server/src/checks/rock/dowel-depth.js";
import { dowelDevelopment, dowelLap } from "../../../server/src/checks/rock/dowel-development.js";
import { foot, inch, kip, ksi, psi, say } from "../given.js";
import { allowable, outcomeOf, read, standing, strengthOf, weigh } from "../ground.js";

const bar = { name: "no. 6", diameter: 0.75 * inch, area: 0.44 * inch ** 2 };
const pad = (dowels: object = {}, more: object = {}) =>
  standing({
    foundation: {
      kind: "footing on rock", width: 4 * foot, length: 4 * foot, thickness: 18 * inch, concrete: 4000 * psi, cover: 3 * inch,
      dowels: { count: 4, spacing: 24 * inch, bar, grade: "Gr 60", hole: 1.25 * inch, "into rock": 24 * inch, "in concrete": 14 * inch, "set in": "cement grout", "ends in concrete": "straight", ...dowels },
    },
    ground: { kind: "rock", class: "granite", "dowel bond": 200 * psi, "bond safety": 3 },
    ...more,
  });

describe("Bond of the bar to what it is set in", () => {
  it("takes 2 MPa, 290 psi, between cement grout and deformed bars (BS 8081)", () => {
    expect(groutBond.value({}) / psi).toBeCloseTo(290.08, 1);
    // pi x 0.75 in x 24 in x 290.08 psi / 3 = 5.468 kip.
    const found = weigh(barBond, pad(), allowable({ P: -30 * kip }));
    expect(found.capacity / kip).toBeCloseTo(5.468, 3);
    expect(found.demand / kip).toBeCloseTo((30 - 2.16) / 4, 9);
    expect(barBondResistance.value({ d_b: 1 * inch, L_b: 10 * inch, tau_b: 300 * psi, FS: 2 }) / kip).toBeCloseTo((Math.PI * 3) / 2, 9);
  });

  it("takes the stated bond before it", () => {
    expect(weigh(barBond, pad({ "bar bond": 600 * psi }), allowable({ P: -30 * kip })).capacity / kip).toBeCloseTo((Math.PI * 0.75 * 24 * 0.6) / 3, 6);
  });

  it("has no default for an adhesive and says whom to ask", () => {
    expect(read(barBond, pad({ "set in": "epoxy" })).missing.join()).toMatch(/maker's report gives it for rock, ask the maker/);
    expect(weigh(barBond, pad({ "set in": "epoxy", "bar bond": 1000 * psi }), allowable({ P: -30 * kip })).capacity / kip).toBeCloseTo((Math.PI * 0.75 * 24) / 3, 6);
  });

  it("finds no bond at all on bars that are set in nothing", () => {
    const dry = pad({ "set in": "nothing" });
    expect(weigh(barBond, dry, allowable({ P: -30 * kip })).capacity).toBe(0);
    expect(weigh(barBond, dry, allowable({ P: 30 * kip })).demand).toBe(0);
    expect(weigh(dowelBond, dry, allowable({ P: -30 * kip })).capacity).toBe(0);
    expect(barBond.advise!(read(barBond, pad({ "set in": "nothing" })).inputs, weigh(barBond, pad({ "set in": "nothing" }), allowable({ P: -30 * kip })), say)).toMatch(/^one dowel pulls 6.96 kip, and the bars are set in nothing/);
  });
});

describe("Dowels in the concrete above the rock, ACI 318-19 25.4", () => {
  // No. 6, 4000 psi, 60 ksi: 60,000/(25 x 63.246) x 0.75 = 28.46 in (28.5 in in the tables of the trade).
  it.each([
    ["of the pull to be anchored", -50, 28.46 * ((50 - 3.24) / 4 / 23.76)],
    ["in full where the bar yields", -120, 28.46],
    ["12 in at least", -10, 12],
  ])("a straight bar needs the length %s", (_, P, length) => {
    const found = weigh(dowelDevelopment, pad(), strengthOf({ P: P * kip }));
    expect(found.demand / inch).toBeCloseTo(length, 2);
    expect(found.capacity / inch).toBeCloseTo(14, 9);
  });

  it("a hook needs its own length, unshortened", () => {
    // 60,000 x 1.25 x (4000/15,000 + 0.6)/(55 x 63.246) x 0.75^1.5 = 12.14 in.
    expect(weigh(dowelDevelopment, pad({ "ends in concrete": "hooked" }), strengthOf({ P: -10 * kip })).demand / inch).toBeCloseTo(12.137, 2);
  });

  it("is not shortened in seismic design category D", () => {
    expect(weigh(dowelDevelopment, pad({}, { site: { "seismic design category": "D" } }), strengthOf({ P: -10 * kip })).demand / inch).toBeCloseTo(28.46, 2);
  });

  it("asks for nothing where no dowel pulls", () => {
    expect(weigh(dowelDevelopment, pad(), strengthOf({ P: 10 * kip })).demand).toBe(0);
  });

  it("refuses a bar longer in the concrete than the pad is thick", () => {
    expect(read(dowelDevelopment, pad({ "in concrete": 18 * inch })).blocks.join()).toMatch(/longer than the concrete above the rock is thick/);
  });

  it("laps the bars of the wall by a class B lap, 1.3 of the full length", () => {
    const lapped = pad({ lap: 30 * inch });
    expect(dowelLap.applies(lapped)).toBe(true);
    expect(dowelLap.applies(pad())).toBe(false);
    const found = weigh(dowelLap, lapped, strengthOf({ P: -10 * kip }));
    expect(found.demand / inch).toBeCloseTo(37, 1);
    expect(found.capacity / inch).toBeCloseTo(30, 9);
    // No. 5 is 0.625 in; Gr 80 takes 1.15: 80,000 x 1.15/(25 x 63.246) x 0.625 = 36.37 in.
    const five = pad({ bar: { name: "no. 5", diameter: 0.625 * inch, area: 0.31 * inch ** 2 }, grade: "Gr 80", lap: 30 * inch });
    expect(weigh(dowelLap, five, strengthOf({ P: -10 * kip })).demand / inch).toBeCloseTo(1.3 * 36.37, 1);
    expect(read(dowelLap, five).inputs.f_y / ksi).toBeCloseTo(80, 6);
  });
});

describe("Pins against sliding are no anchors against uplift", () => {
  // A builder's pins: no. 6 or 3/4 in rods, 6 to 8 in into hard rock, 24 in apart.
  const pins = pad({ "into rock": 7 * inch, hole: 0.875 * inch });

  it("pins 7 in deep hold where nothing pulls", () => {
    const found = weigh(dowelDepth, pins, allowable({ P: 4 * kip }));
    expect(found.demand / inch).toBeCloseTo(6, 9);
    expect(found.capacity / inch).toBeCloseTo(7, 9);
  });

  it("and are said to be no anchors where a post lifts 4 kip", () => {
    const found = weigh(dowelDepth, pins, allowable({ P: -4 * kip }));
    expect(found.demand / inch).toBeCloseTo(12, 9);
    expect(dowelDepth.advise!(read(dowelDepth, pins).inputs, found, say)).toBe(
      "dowels 7 in into the rock; 12 in is the least for what they do. Short pins stop sliding and are no anchors: drill deeper where the footing lifts, and have steel, bond and cone hold the pull.",
    );
  });

  it("goes by the bar where that is larger", () => {
    const thick = pad({ bar: { name: "no. 10", diameter: 1.27 * inch, area: 1.27 * inch ** 2 } });
    expect(weigh(dowelDepth, thick, allowable({ P: -40 * kip })).demand / inch).toBeCloseTo(15.24, 6);
    expect(weigh(dowelDepth, thick, allowable({ P: 40 * kip })).demand / inch).toBeCloseTo(10.16, 6);
  });

  it("cannot be told for pins of a pad whose edge lifts while their places are unknown", () => {
    expect(outcomeOf(dowelDepth, pad({ count: 6 }), allowable({ P: -4 * kip, My: 5e3 })).type).toBe("unchecked");
  });
});
