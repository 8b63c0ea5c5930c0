import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { depthForSetback, setbackNeeded, setbackThere, slopeSetback } from "../../../server/src/checks/site/slope-setback.js";
import { faultsOf, saidOf } from "./structures.js";

const foot = 0.3048;

const pier = (below: string, depth = "7 ft"): string => `rootfast: 1
foundations:
  pier: { kind: pier, depth: ${depth}, diameter: 24 in, slope below: { ${below} }, combined: { own: { level: strength, down: 1 kip } } }
`;

describe("A foundation beside a slope", () => {
  // IBC 1808.7.2: a third of the height, 40 ft at most.
  it.each([
    [30, 10],
    [12, 4],
    [120, 40],
    [300, 40],
  ])("%i ft high stands %i ft back", (H, expected) => {
    expect(setbackNeeded.value({ H: H * foot }) / foot).toBeCloseTo(expected, 9);
  });

  // By geometry: the face at 1 in 2 runs out 2 ft for each foot down; above 1 in 1 the plane at 45 degrees cuts the top of the slope off.
  it.each([
    [0.5, 20, 1, 4, 9],
    [1, 30, 2, 7, 9],
    [2, 20, 3, 4, -3],
    [2, 20, 18, 4, 12],
  ])("at a slope of %f, %i ft high, %i ft from its top and %i ft deep is %i ft back", (s, H, a, d, expected) => {
    expect(setbackThere.value({ s, H: H * foot, a: a * foot, d: d * foot }) / foot).toBeCloseTo(expected, 9);
  });

  it("stands back enough at the depth it is told to go to", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.34, max: 5, noNaN: true }), fc.double({ min: 2, max: 40, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }), (s, H, a) => {
        const a_m = setbackNeeded.value({ H });
        expect(setbackThere.value({ s, H, a, d: depthForSetback.value({ s, H, a, a_m }) })).toBeCloseTo(a_m, 9);
      }),
    );
  });

  it.each([
    ["near a slope of 1 in 1", pier("slope: 12 in 12, height: 30 ft, distance: 1 ft"), "over", /Underside 8 ft back from the face of the slope, 30 ft high; 10 ft needed, a third of its height\. Move the foundation away from the slope, go down to 9 ft/],
    ["in front of the plane from the foot of a cut", pier("slope: 24 in 12, height: 20 ft, distance: 2 ft"), "over", /It stands in front of that plane/],
    ["far enough from it", pier("slope: 12 in 12, height: 30 ft, distance: 3 ft"), "holds", /Underside 10 ft back/],
    ["above a gentle slope", pier("slope: 3 in 12, height: 30 ft, distance: 0 ft"), "holds", /no steeper than 1 in 3/],
    ["as deep as the slope is high", pier("slope: 24 in 12, height: 6 ft, distance: 0 ft"), "holds", /no higher than the foot/],
    ["above a slope nobody measured", pier("slope: 12 in 12"), "unchecked", /its height, how far the foundation stands from its top are needed/],
  ])("%s", (_, text, verdict, says) => {
    expect(saidOf(slopeSetback, text)).toMatchObject({ verdict, message: expect.stringMatching(says) });
  });

  it("has nothing said of a slope where none is stated", () => {
    expect(faultsOf(slopeSetback, "rootfast: 1\nfoundations:\n  pier: { kind: pier, depth: 7 ft, diameter: 24 in, combined: { own: { level: strength, down: 1 kip } } }\n")).toEqual([]);
  });
});
