import { describe, expect, it } from "vitest";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { wallStemCover, wallStemCurtains, wallStemSpacing, wallStemSteel } from "../../../server/src/checks/wall/stem-details.js";
import { foot, inch } from "../given.js";
import { read, strengthOf, weigh } from "../ground.js";
import { face, fluid, spaced, stemOf } from "./stem-given.js";

type Fields = Readonly<Record<string, unknown>>;

const found = (check: CheckDecl<any, any>, more: Fields = {}) => weigh(check, stemOf({ more }), strengthOf({}));
const faces = (vertical: Fields, horizontal: Fields) => ({ "stem bars": { "fill face": face(vertical, horizontal), "free face": face(vertical, horizontal), "outer bars": "vertical" } });
const held = { retains: 4 * foot, fill: fluid };

describe("Least bars of a wall", () => {
  it.each([
    // Thickness, vertical, horizontal; then what governs. Ratios of ACI 318-19 Table 11.6.1 by hand.
    [10, spaced(4, 18), spaced(4, 12), "Gr 60", 0.002, 0.4 / (12 * 10)],
    [15, spaced(4, 18), spaced(5, 6), "Gr 60", 0.0012, 0.4 / (18 * 15)],
    [15, spaced(6, 18), spaced(6, 18), "Gr 60", 0.0025, 0.88 / (18 * 15)],
    [15, spaced(6, 18), spaced(5, 6), "Gr 60", 0.0015, 0.88 / (18 * 15)],
  ])("%s in thick", (t, vertical, horizontal, grade, least, there) => {
    const { demand, capacity, isLimit } = found(wallStemSteel, { thickness: t * inch, "bar grade": grade, ...faces(vertical, horizontal) });
    expect([demand, capacity]).toEqual([expect.closeTo(least, 9), expect.closeTo(there, 9)]);
    expect(isLimit).toBe(true);
  });

  it("of a cantilever that holds soil back are 0.0018 at the face against it, and along it in both faces", () => {
    const upright = found(wallStemSteel, { ...held, ...faces(spaced(4, 12), spaced(5, 6)) });
    expect([upright.demand, upright.capacity]).toEqual([expect.closeTo(0.0018, 9), expect.closeTo(0.2 / (12 * 15), 9)]);
    const level = found(wallStemSteel, { ...held, ...faces(spaced(6, 12), spaced(4, 12)) });
    expect(level.capacity).toBeCloseTo(0.4 / (12 * 15), 9);
  });

  it("do not count bars that end below the top of a wall that holds nothing back", () => {
    const lower = { ...face(spaced(4, 18), spaced(5, 6)), "lower vertical": { ...spaced(6, 6), reach: 2 * foot } };
    const { capacity } = found(wallStemSteel, { "stem bars": { "fill face": lower, "free face": face(spaced(4, 18), spaced(5, 6)), "outer bars": "vertical" } });
    expect(capacity).toBeCloseTo(0.4 / (18 * 15), 9);
  });

  it("ask for horizontal bars", () => {
    const { missing } = read(wallStemSteel, stemOf({ more: { "stem bars": { middle: { vertical: spaced(5, 12) } } } }));
    expect(missing.join()).toMatch(/horizontal bars of the wall/);
  });
});

describe("Curtains, spacing and cover of the bars of a wall", () => {
  const middle = { "stem bars": { middle: face(spaced(5, 12)) } };
  it.each([
    ["10 in thick has one curtain", { thickness: 10 * inch, ...middle }, 1, 1],
    ["12 in thick needs two", { thickness: 12 * inch, ...middle }, 2, 1],
    ["15 in thick has them", {}, 2, 2],
    ["12 in thick that holds soil back is excepted", { thickness: 12 * inch, ...middle, ...held }, 1, 1],
    ["15 in thick with horizontal bars at one face has one", { "stem bars": { "fill face": face(spaced(5, 12)), "free face": { vertical: spaced(5, 12) }, "outer bars": "vertical" } }, 2, 1],
  ])("a wall %s", (_, more, demand, capacity) => {
    expect(found(wallStemCurtains, more)).toMatchObject({ demand, capacity, quantity: "number" });
  });

  it("bars stand at most three times the thickness apart, and 18 in", () => {
    const thin = found(wallStemSpacing, { thickness: 5 * inch, "stem bars": { middle: face(spaced(4, 16), spaced(4, 12)) } });
    expect([thin.demand / inch, thin.capacity / inch]).toEqual([expect.closeTo(16, 9), expect.closeTo(15, 9)]);
    const thick = found(wallStemSpacing, faces(spaced(5, 12), spaced(4, 20)));
    expect([thick.demand / inch, thick.capacity / inch]).toEqual([expect.closeTo(20, 9), expect.closeTo(18, 9)]);
  });

  it.each([
    ["1.5 in over no. 5", {}, 1.5],
    ["2 in over no. 6", faces(spaced(6, 12), spaced(4, 12)), 2],
    ["3 in where cast against the ground", { "cast against": "the ground" }, 3],
  ])("cover is %s", (_, more, needed) => {
    const { demand, capacity } = found(wallStemCover, more);
    expect([demand / inch, capacity / inch]).toEqual([expect.closeTo(needed, 9), expect.closeTo(2, 9)]);
  });
});
