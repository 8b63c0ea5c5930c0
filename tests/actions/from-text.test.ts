/** Loads of a notebook's text: units are a matter of writing and showing, and no value a field can hold stops the calculation. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../server/src/actions/index.js";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { readNotebook } from "../../server/src/notebook/read-notebook.js";
import { buildStructure } from "../../server/src/project/structure.js";
import { baseOf, structureOf } from "./given.js";

const structureFrom = (text: string) => {
  const parsed = parseNotebook(text);
  return buildStructure(readNotebook(parsed, 0).values, parsed.documents[0].span);
};

const inFeet = {
  units: "US", speed: "150 mph", elevation: "1000 ft", length: "24 ft", width: "20 ft", mean: "12 ft", dead: "10 psf", snow: "30 psf", edge: "12 in",
  from: "3 ft, 3 ft", to: "21 ft, 3 ft", from2: "3 ft, 17 ft", to2: "21 ft, 17 ft", height: "10 ft",
};
// Exact by the definition of the foot and the mile; 10 psf is 478.80258980335845 Pa.
const inMeters: typeof inFeet = {
  units: "SI", speed: "67.056 m/s", elevation: "304.8 m", length: "7.3152 m", width: "6.096 m", mean: "3.6576 m", dead: "0.47880258980335845 kPa", snow: "1.4364077694100753 kPa", edge: "304.8 mm",
  from: "0.9144 m, 0.9144 m", to: "6.4008 m, 0.9144 m", from2: "0.9144 m, 5.1816 m", to2: "6.4008 m, 5.1816 m", height: "3.048 m",
};

const text = (of: typeof inFeet): string => `rootfast: 1
project:
  units: ${of.units}
site:
  wind speed: ${of.speed}
  exposure: C
  ground elevation: ${of.elevation}
  risk category: II
  ground snow: ${of.snow}
  seismic design category: A
roof:
  shape: monoslope
  slope: 2 in 12
  length: ${of.length}
  width: ${of.width}
  low edge: west
  mean height: ${of.mean}
  dead: ${of.dead}
  flow below: either
  edge depth: ${of.edge}
columns:
  south:
    line of: 2
    from: ${of.from}
    to: ${of.to}
    section: HSS6x6x3/8
    height: ${of.height}
  north:
    line of: 2
    from: ${of.from2}
    to: ${of.to2}
    section: HSS6x6x3/8
    height: ${of.height}
`;

const columnsIn = (of: typeof inFeet) => {
  const reaching = actionsOf(structureFrom(text(of))).of({ path: "columns.south" });
  if ("unknown" in reaching) throw new Error(reaching.unknown);
  return reaching;
};

describe("the unit system", () => {
  it.each([
    ["results are shown in changes nothing", { ...inFeet, units: "SI" }],
    ["a notebook is written in changes nothing", inMeters],
  ])("%s", (_, of) => {
    const there = columnsIn(of);
    columnsIn(inFeet).forEach((column, i) => {
      expect(there[i].cases).toHaveLength(4 + 4 + 4 * 5);
      for (const { loadCase, base } of column.cases) {
        for (const part of ["P", "Vx", "Vy", "Mx", "My"] as const) {
          expect(Math.abs(baseOf(there[i], loadCase.id)[part] - base[part])).toBeLessThan(1e-6);
        }
      }
    });
  });
});

describe("whatever the fields hold", () => {
  it("every force handed on is a number, or the words say why there is none", () => {
    const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.constantFrom(0, -1, 1e-300, 1e300, 3, 8));
    fc.assert(
      fc.property(
        fc.record({ slope: number, length: number, width: number, "mean height": number, dead: number, "edge depth": number }, { requiredKeys: [] }),
        fc.record({ "wind speed": number, "ground elevation": number, "topographic factor": number }, { requiredKeys: [] }),
        fc.record({ height: number }, { requiredKeys: [] }),
        (roof, site, fields) => {
          const lines = [{ name: "south", places: [{ x: 3, y: 3 }, { x: 21, y: 3 }, { x: 12, y: 17 }], fields }];
          const actions = actionsOf(structureOf({ roof, site, lines }));
          const of = actions.of({ path: "columns.south" });
          if ("unknown" in of) expect(of.unknown).not.toBe("");
          else for (const { cases } of of) for (const { base } of cases) expect(Object.values(base).every(Number.isFinite)).toBe(true);
          actions.derivations();
          for (const { message } of actions.information) expect(message(String)).not.toBe("");
        },
      ),
      { numRuns: 300 },
    );
  });
});
