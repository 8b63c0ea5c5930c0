/**
 * Source: F = q_z K_d G C_f A_f of ASCE 7-22 Eq. 29.4-1 with the coefficients of Figures 29.3-1, 29.4-1 and 29.4-2; parapets 27.3.4; numbers by hand.
 * Given: 150 mph, exposure C, below 15 ft, q = 49.03 psf without the directionality factor.
 */
import { describe, expect, it } from "vitest";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { dragOnMembers, postDrag } from "../../../server/src/actions/wind/drag.js";
import { dragOnFascia, type Fascia } from "../../../server/src/actions/wind/fascia.js";
import { panelLoad, type PostPanel } from "../../../server/src/actions/wind/panels.js";
import type { WindSite } from "../../../server/src/actions/wind/velocity-pressure.js";
import { Wanted } from "../../../server/src/actions/wanted.js";
import { readPanels } from "../../../server/src/actions/wind-inputs.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import type { RoofColumn } from "../../../server/src/mechanics/rigid-roof.js";
import { kinds } from "../../../server/src/units/kinds.js";
import { allEdges, baseOf, entries, foot, fourColumns, kip, mph, pound, psf, recordOf, solved, totalOf, unknownOf, type Line } from "../given.js";

const inch = kinds.length.US.factor;
const site: WindSite = { standard: "ASCE 7-22", V: 150 * mph, exposure: "C", K_zt: 1, groundElevation: 0 };
const q_h = 49.029 * psf;
const roof = (degrees: number): RoofPlane => ({ shape: "monoslope", slope: Math.tan((degrees * Math.PI) / 180), length: 24 * foot, width: 20 * foot, lowEdge: "south", meanHeight: 12 * foot });
const near = (value: number, expected: number, share = 0.002) => expect(Math.abs(value - expected)).toBeLessThanOrEqual(share * Math.abs(expected));

describe("a square column", () => {
  it.each([
    ["ASCE 7-22", 71.26],
    // 41.50 psf with 0.85 in it: times 0.90/0.85, 0.85 and 1.9.
    ["ASCE 7-16", 70.97],
    ["ASCE 7-10", 70.97],
  ] as const)("6 in wide and 11 ft high by %s: %f psf", (standard, expected) => {
    near(postDrag({ base: 0, height: 11 * foot }, 6 * inch, { ...site, standard }, plainCalc) / psf, expected);
  });

  it("stands as a cantilever under its own drag where all columns are alike", () => {
    const lines = fourColumns.map((line) => ({ ...line, fields: { height: 11 * foot } }));
    const bare = solved({ lines }).columns;
    const wide = solved({ lines: lines.map((line) => ({ ...line, fields: { ...line.fields, "width in the wind": 6 * inch } })) }).columns;
    bare.forEach((column, i) => {
      for (const id of ["wind/west/A/clear", "wind/west/B/clear"]) {
        const [before, after] = [baseOf(column, id), baseOf(wide[i], id)];
        near((after.Vx - before.Vx) / pound, 391.9);
        near((after.My - before.My) / (pound * foot), 2155.6);
        expect(Math.abs(after.Vy - before.Vy) / pound).toBeLessThan(1e-6);
        expect(Math.abs(after.P - before.P) / pound).toBeLessThan(1e-6);
      }
      near((baseOf(wide[i], "wind/east/minimum").Vx - baseOf(column, "wind/east/minimum").Vx) / pound, -88);
    });
  });

  it("is what the total has more, and the bases balance it", () => {
    const lines = fourColumns.map((line) => ({ ...line, fields: { ...line.fields, "width in the wind": 8 * inch } }));
    const { actions, columns } = solved({ lines });
    for (const edge of allEdges) {
      for (const id of [`wind/${edge}/A/clear`, `wind/${edge}/minimum`]) {
        const total = totalOf(actions, id);
        for (const part of ["P", "Vx", "Vy"] as const) {
          const sum = columns.reduce((so, column) => so + baseOf(column, id)[part], 0);
          expect(Math.abs(sum - total[part]) / kip).toBeLessThan(1e-9);
        }
      }
    }
  });
});

describe("members below the roof", () => {
  const member = { name: "beams", area: 20 * foot ** 2, along: "y" as const, height: 9 * foot, solidity: 0.05 };
  const force = (more: Partial<typeof member> & { diameter?: number }, from: "south" | "north" | "east" = "south") => dragOnMembers(roof(10), [{ ...member, ...more }], site, from, "by coefficient", plainCalc);

  it("a flat beam: 49.03 * 0.85 * 0.85 * 2.0 on 20 ft²", () => {
    const [load] = force({});
    near(load.Fy / pound, 49.029 * 0.7225 * 2 * 20);
    expect([load.x, load.y, load.z].map((value) => value / foot)).toEqual([12, 10, 9].map((value) => expect.closeTo(value, 9)));
    near(force({}, "north")[0].Fy / pound, -49.029 * 0.7225 * 2 * 20);
  });

  it("is not met by wind along it", () => {
    expect(force({}, "east")).toEqual([]);
  });

  it.each([
    // sqrt(49.03 * 0.85) = 6.455: 4 in gives 2.15, 6 in gives 3.23.
    ["4 in round", 4, 1.2],
    ["6 in round", 6, 0.8],
  ])("%s: coefficient of %f in of diameter", (_, inches, C_f) => {
    near(force({ diameter: inches * inch })[0].Fy / pound, 49.029 * 0.7225 * C_f * 20);
  });

  it("has at least 16 psf", () => {
    expect(dragOnMembers(roof(10), [member], site, "south", "least", plainCalc)[0].Fy / pound).toBeCloseTo(320, 6);
  });

  it("reaches the columns through the notebook", () => {
    const members = entries({ beams: { area: 20 * foot ** 2, faces: "north and south", height: 12 * foot, solidity: 0.05 } });
    const before = totalOf(solved().actions, "wind/south/A/clear");
    const after = totalOf(solved({ roof: { "in the wind": members } }).actions, "wind/south/A/clear");
    near((after.Vy - before.Vy) / pound, 49.029 * 0.7225 * 2 * 20);
  });

  it("more than 70 % solid is asked for as panels", () => {
    expect(unknownOf({ roof: { "in the wind": entries({ screen: { area: 4, faces: "east and west", height: 2, solidity: 0.8 } }) } })).toMatch(/screen as panels of a column line/u);
  });
});

describe("a fascia", () => {
  const corners = [3, 21].flatMap((x) => [3, 17].map((y) => ({ x: x * foot, y: y * foot })));
  const all: Fascia = { north: 2 * foot, east: 2 * foot, south: 2 * foot, west: 2 * foot };

  it("up to 5 degrees is a parapet turned down: 1.5 windward and 1.0 leeward, both downwind", () => {
    const loads = dragOnFascia(roof(4), corners, all, site, q_h, "south", plainCalc);
    // 49.03 * 0.85 psf on 2 ft by 24 ft.
    near(loads[0].Fy / pound, 49.029 * 0.85 * 1.5 * 48);
    near(loads[1].Fy / pound, 49.029 * 0.85 * 1.0 * 48);
    // Low edge 10 tan 4 below mean height, high edge above.
    expect(loads.map(({ y, z }) => [y / foot, z / foot])).toEqual([[0, expect.closeTo(12 - 0.6993, 3)], [20, expect.closeTo(12 + 0.6993, 3)]]);
  });

  it("of one edge counts on that edge, windward or leeward", () => {
    const south: Fascia = { ...all, north: 0, east: 0, west: 0 };
    near(dragOnFascia(roof(4), corners, south, site, q_h, "north", plainCalc)[0].Fy / pound, -49.029 * 0.85 * 48);
    expect(dragOnFascia(roof(4), corners, south, site, q_h, "west", plainCalc)).toEqual([]);
  });

  it("above 5 degrees is a solid panel, and that this is practice is said", () => {
    const { calc, steps } = recordingCalc();
    const loads = dragOnFascia(roof(10), corners, all, site, q_h, "west", calc);
    // B/s of 10, s/h of 2/12: between 1.85 at 0.16 and at 0.2; both edges.
    for (const load of loads) near(load.Fx / pound, 49.029 * 0.7225 * 1.85 * 40);
    expect(steps.filter((step) => step.type === "note" && step.text.includes("common practice"))).toHaveLength(2);
  });

  it("adds to shear and moment at the base, and deepens the area of the least force", () => {
    const fascia = recordOf({ depth: 2 * foot });
    const flat = { slope: 0.05 };
    const [before, after] = [solved({ roof: flat }), solved({ roof: { ...flat, fascia } })];
    near((totalOf(after.actions, "wind/west/A/clear").Vx - totalOf(before.actions, "wind/west/A/clear").Vx) / pound, 49.029 * 0.85 * 2.5 * 40);
    near((totalOf(after.actions, "wind/west/minimum").Vx - totalOf(before.actions, "wind/west/minimum").Vx) / pound, 16 * 20);
    expect(Math.abs(baseOf(after.columns[0], "wind/west/A/clear").My)).toBeGreaterThan(2 * Math.abs(baseOf(before.columns[0], "wind/west/A/clear").My));
  });
});

describe("panels between columns", () => {
  const panels = (more = {}) => recordOf({ height: 2.5 * foot, bottom: 0, solidity: 1, ...more });
  const given = (more = {}) => ({ lines: [{ ...fourColumns[0], fields: { ...fourColumns[0].fields, panels: panels(more) } }, fourColumns[1]] });
  const difference = (id: string, more = {}) => totalOf(solved(given(more)).actions, id).Vy - totalOf(solved().actions, id).Vy;

  // One bay of 18 ft by 2.5 ft; bases 12 - 7 tan 7.5 - 10 = 1.078 ft above grade: B/s = 7.2, s/h = 2.5/3.578 = 0.6986, between 1.70 at 0.5 and 1.55 at 0.7.
  // Each column takes 0.7 of the bay.
  it("are met broadside", () => {
    const C_f = 1.55 + (0.15 * 0.0014) / 0.2;
    near(difference("wind/south/A/clear") / pound, 49.029 * 0.7225 * C_f * 2 * 0.7 * 18 * 2.5);
  });

  it("are not met by wind along them", () => {
    expect(totalOf(solved(given()).actions, "wind/west/A/clear").Vx).toBeCloseTo(totalOf(solved().actions, "wind/west/A/clear").Vx, 6);
  });

  it("half open count as an open frame, 1.6 on the solid part", () => {
    near(difference("wind/south/A/clear", { solidity: 0.5 }) / pound, 49.029 * 0.7225 * 1.6 * 0.5 * 2 * 0.7 * 18 * 2.5);
  });

  it("need a line to stand in", () => {
    const single = { name: "south", places: [{ x: 3, y: 3 }], fields: { panels: panels() } };
    expect(unknownOf({ lines: [single, fourColumns[1]] })).toMatch(/a line of columns for the panels of south/u);
  });

  const line = (places: readonly number[], more = {}) => ({ name: "south", places: places.map((x) => ({ x, y: 3 })), fields: { ...fourColumns[0].fields, panels: panels(more) } });
  /** Load along each column from its panels, in coefficient times feet. */
  const lengths = (of: Line): readonly number[] => {
    const columns = hssColumns(of);
    const [post] = [...readPanels("south", recordOf({ panels: of.fields?.panels }) as never, of.places.map(({ x, y }) => ({ x: x * foot, y: y * foot })), new Wanted())];
    return columns.map((column, i) => panelLoad(column, { ...(post as PostPanel), bays: i === 0 || i === columns.length - 1 ? 1 : 2, place: i }, site, 1, "by coefficient", plainCalc) / (q_h * 0.7225 * foot));
  };
  // Tops of the panels 2.5 ft above bases at 1.078 ft: s/h = 0.6986.
  const hssColumns = (of: Line): readonly RoofColumn[] => of.places.map(({ x, y }) => ({ x: x * foot, y: y * foot, base: 1.078 * foot, height: 10 * foot, E: 2e11, area: 1e-3, Ix: 1e-5, Iy: 1e-5, top: "pinned" }));

  // Two bays of 9 ft, B/s = 7.2 in all: 3.43 up to 2.5 ft from the windward end, 2.26 up to 5 ft, 1.66 up to 7.5 ft, then 1.05. By lever, the windward column:
  // 2.5 (3.43 * 0.8611 + 2.26 * 0.5833 + 1.66 * 0.3056) + 1.5 * 1.05 * 0.0833 = 12.08 ft, against 1.6007 * 0.7 * 9 = 10.08 ft by case B.
  // The middle column: 1.6007 * 0.7 * 18 = 20.17 ft by case B, against 12.60 ft.
  it("at the ends of a long line take the higher pressure near the windward end, from whichever side the wind comes", () => {
    const [first, middle, last] = lengths(line([3, 12, 21]));
    near(first, 12.08, 0.001);
    near(middle, 20.17, 0.001);
    expect(last).toBeCloseTo(first, 9);
  });

  // s/h = 2.5/2.5: factor 0.8; coefficients at s/h = 1 for case B.
  it("that stand on the ground have eight tenths of it", () => {
    const columns = hssColumns(line([3, 12, 21])).map((column) => ({ ...column, base: 0 }));
    const panel: PostPanel = { bottom: 0, height: 2.5 * foot, solidity: 1, bay: 9 * foot, bays: 1, ofLine: 2, place: 0, across: "y" };
    near(panelLoad(columns[0], panel, site, -1, "by coefficient", plainCalc) / (q_h * 0.7225 * foot), -0.8 * 12.08, 0.001);
  });

  it("in a line shorter than twice their height know no windward end", () => {
    // One bay of 4.9 ft by 2.5 ft: B/s = 1.96, C_f between 1.65 and 1.60 near s/h of 0.7.
    const [first] = lengths(line([3, 7.9]));
    near(first, 1.603 * 0.7 * 4.9, 0.003);
  });

  it("in the middle of a line are taken from both sides", () => {
    const shear = (of: Line) => solved({ lines: [of, fourColumns[1]] }).columns.map((column) => baseOf(column, "wind/south/A/clear").Vy);
    const bare = shear({ ...line([3, 12, 21]), fields: fourColumns[0].fields });
    const more = shear(line([3, 12, 21])).map((value, i) => value - bare[i]);
    // The base of a low panel takes nearly all of it there.
    near(more[1] / more[0], 20.17 / 12.08, 0.03);
  });
});
