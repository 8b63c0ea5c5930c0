import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { withCrowds } from "../../server/src/project/crowded.js";
import type { CheckDecl } from "../../server/src/checks/contract.js";
import { pierEmbedment } from "../../server/src/checks/pier/embedment.js";
import { pierUplift } from "../../server/src/checks/pier/uplift.js";
import { foot, inch } from "../checks/given.js";
import { read, standing } from "../checks/ground.js";

/** A line of piers at these places, ft. */
const line = (name: string, places: readonly (readonly [number, number])[], size = 24) =>
  standing({
    name,
    column: places.length === 1 ? { at: { name: "at", x: 0, y: 0 } } : { from: { name: "from" }, to: { name: "to" } },
    foundation: { kind: "pier", diameter: size * inch, depth: 8 * foot },
    ground: { kind: "soil", class: "SM" },
    places: places.map(([x, y]) => ({ x: x * foot, y: y * foot })),
  });
const near = (...lines: ReturnType<typeof line>[]) => withCrowds(lines).map(({ crowded }) => crowded?.map((one) => one && Math.round((one / foot) * 100) / 100));

describe("Piers nearer than three widths", () => {
  it.each([
    ["in one line", [line("a", [[0, 0], [5, 0], [20, 0]])], [[5, 5, undefined]]],
    ["of two lines", [line("a", [[0, 0], [20, 0]]), line("b", [[0, 4], [40, 0]])], [[4, undefined], [4, undefined]]],
    ["by the wider of the two", [line("a", [[0, 0], [20, 0]], 12), line("b", [[0, 5], [40, 0]])], [[5, undefined], [5, undefined]]],
    ["the nearest of several", [line("a", [[0, 0], [5, 0], [8, 0]])], [[5, 3, 3]]],
  ] as const)("are found %s", (_, lines, expected) => {
    expect(near(...lines)).toEqual(expected);
  });

  it("are none at three widths, and none where the places are not stated", () => {
    const alone = [line("a", [[0, 0], [6.001, 0]])];
    expect(withCrowds(alone)).toEqual(alone);
    expect(withCrowds(alone)[0]).toBe(alone[0]);
    const unplaced = [standing({ foundation: { kind: "pier", diameter: 24 * inch } }), standing({ foundation: { kind: "pier", diameter: 24 * inch } })];
    expect(withCrowds(unplaced).map(({ crowded }) => crowded)).toEqual([undefined, undefined]);
  });

  it("keep their objects where nothing changed, and lose what no longer holds", () => {
    const once = withCrowds([line("a", [[0, 0], [5, 0]])]);
    expect(withCrowds(once)[0]).toBe(once[0]);
    const apart = withCrowds([{ ...once[0], places: [{ x: 0, y: 0 }, { x: 20, y: 0 }] }]);
    expect("crowded" in apart[0]).toBe(false);
  });

  it("are the same looked at pair by pair", () => {
    const place = fc.tuple(fc.double({ min: 0, max: 30, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true }));
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 12 }), (places) => {
        const slow = places.map(([x, y], i) => {
          const all = places.flatMap(([u, v], j) => (i === j ? [] : [Math.hypot(u - x, v - y)])).filter((d) => d < 6 - 1e-9);
          return all.length > 0 ? Math.min(...all) : undefined;
        });
        const found = withCrowds([line("a", places)])[0].crowded ?? places.map(() => undefined);
        found.forEach((one, i) => (slow[i] === undefined ? expect(one === undefined || one > 5.999 * foot).toBe(true) : expect(one! / foot).toBeCloseTo(slow[i]!, 9)));
      }),
      { numRuns: 60 },
    );
  });

  it("are not checked for uplift and embedment, and the others are", () => {
    const checks: readonly CheckDecl[] = [pierUplift, pierEmbedment];
    const [group] = withCrowds([line("a", [[0, 0], [20, 0]]), line("b", [[0, 4]])]);
    for (const check of checks) expect(read(check, group).blocks.join()).toMatch(/nearer than three widths.*group/);
    const [alone] = withCrowds([line("a", [[0, 0], [20, 0]])]);
    for (const check of checks) expect(read(check, alone).blocks.join()).not.toMatch(/three widths/);
  });

  it("say so in a notebook, whichever line they belong to", () => {
    const text = (y: number) => `rootfast: 1
site:
  frost depth: 0 in
ground:
  sand:
    kind: soil
    class: SM
columns:
  a:
    at: 0 ft, 0 ft
    stands on: pier
    combined: { storm: { level: allowable, up: 1 kip, shear x: 200 lb } }
  b:
    at: 0 ft, ${y} ft
    stands on: pier
    combined: { storm: { level: allowable, up: 1 kip, shear x: 200 lb } }
foundations:
  pier:
    kind: pier
    ground: sand
    diameter: 24 in
    depth: 8 ft
`;
    const told = (y: number) => checkText(text(y)).documents[0].checks.filter(({ state, because }) => state === "not checked" && /nearer than three widths/.test(because ?? "")).length;
    expect(told(5)).toBeGreaterThan(0);
    expect(told(7)).toBe(0);
  });
});
