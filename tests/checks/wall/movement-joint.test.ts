import { describe, expect, it } from "vitest";
import { wallMovementJoint } from "../../../server/src/checks/wall/movement-joint.js";
import { foot, inch } from "../given.js";
import { read, strengthOf, weigh } from "../ground.js";
import { stemOf } from "./stem-given.js";

type Fields = Readonly<Record<string, unknown>>;

const joints = (...at: readonly number[]) => Object.assign(at.map((value) => ({ value: value * foot })), { name: "joints" });
const wall = (at: ReturnType<typeof joints> | undefined, more: Fields = {}) =>
  stemOf({ base: { anchors: { embedment: 12 * inch, count: 4, "spacing x": 6 * inch, "spacing y": 6 * inch } }, more: { "first post": 10 * foot, "movement joints": at, ...more } });
const found = (support: ReturnType<typeof wall>) => weigh(wallMovementJoint, support, strengthOf({}));

describe("A movement joint beside a post", () => {
  it.each([
    ["2 ft to the east", joints(12), 21],
    ["1.5 ft to the west", joints(8.5), 15],
    ["the nearer of two", joints(8, 11.5), 15],
  ])("%s stands that far from the outermost rod, 3 in off the middle; 1.5 x 12 in are the reach of the cone", (_, at, gap) => {
    const { demand, capacity, isLimit } = found(wall(at));
    expect([demand / inch, capacity / inch, isLimit]).toEqual([expect.closeTo(18, 6), expect.closeTo(gap, 6), true]);
  });

  it("may be nearer where the notebook states a distance", () => {
    const { demand, capacity } = found(wall(joints(8.5), { "joint distance": 12 * inch }));
    expect([demand / inch, capacity / inch]).toEqual([expect.closeTo(12, 6), expect.closeTo(15, 6)]);
  });

  it("is looked at only where joints are stated, and asks for the rods", () => {
    expect(wallMovementJoint.applies(wall(undefined))).toBe(false);
    expect(wallMovementJoint.applies(wall(joints(12)))).toBe(true);
    expect(wallMovementJoint.applies(stemOf({ base: null, more: { "movement joints": joints(12) } }))).toBe(false);
    const { missing, blocks } = read(wallMovementJoint, stemOf({ base: { anchors: {} }, more: { "movement joints": joints(12), "first post": 10 * foot } }));
    expect([...missing, ...blocks].join("; ")).toMatch(/anchor embedment/);
  });

  it("under the post itself is not answered but stopped", () => {
    expect(read(wallMovementJoint, wall(joints(10))).blocks.join()).toMatch(/stands on a movement joint/);
  });
});
