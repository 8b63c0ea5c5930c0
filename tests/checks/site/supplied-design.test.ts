import { describe, expect, it } from "vitest";
import { pressureRatio, suppliedDesign } from "../../../server/src/checks/site/supplied-design.js";
import { saidOf } from "./structures.js";
import { pier } from "./small-notebooks.js";

const said = (place: string, design: string) => saidOf(suppliedDesign, pier({ site: `${place}, supplied design: { ${design} }` }));
const place = (speed: number, exposure: string) => `wind speed: ${speed} mph, exposure: ${exposure}`;

describe("A supplied design held against this place", () => {
  // Pressures in psf at 15 ft by ASCE 7: 0.00256 K_z K_d V² with 0.85 and K_z of 0.57, 0.85 and 1.03 for exposures B, C and D.
  const pressures = { "115 B": 16.4, "115 C": 24.5, "120 C": 26.6, "130 D": 37.9, "140 D": 43.9, "150 D": 50.4 };
  const rows = Object.entries(pressures).flatMap(([kit, low]) => Object.entries(pressures).flatMap(([here, high]) => (high > low ? [[kit, here, high / low] as const] : [])));

  it.each(rows)("made for %s and set up at %s: %f times the wind", (kit, here, ratio) => {
    const found = said(place(...(here.split(" ") as [never, string])), place(...(kit.split(" ") as [never, string])));
    expect(found?.verdict).toBe("over");
    expect(Math.abs(Number(/Wind ([\d.]+) times as hard/u.exec(found?.message ?? "")?.[1]) / ratio - 1)).toBeLessThan(0.015);
  });

  it("holds in the place it was made for, and in a milder one", () => {
    expect(said(place(115, "C"), place(115, "C"))?.verdict).toBe("holds");
    expect(said(place(115, "B"), place(130, "D"))).toMatchObject({ verdict: "holds", message: expect.stringMatching(/no milder than this one/) });
  });

  it("on a hill is met by more wind than its papers say", () => {
    const found = said(`${place(115, "C")}, topographic factor: 1.5`, place(115, "C"));
    expect(found?.message).toMatch(/^Wind 1\.5 times .* exposure C on a hill\./);
  });

  it.each([
    ["ground snow", `${place(115, "C")}, ground snow: 30 psf`, "ground snow: 20 psf", "over", /^Ground snow 30 psf here; the supplied design takes 20 psf\. Have it designed for this place\.$/],
    ["no less snow", `${place(115, "C")}, ground snow: 20 psf`, "ground snow: 20 psf", "holds", /./],
    ["frost", "frost depth: 42 in", "frost depth: 24 in", "over", /^Frost depth 3\.5 ft here; the supplied design takes 2 ft\. Set its foundations deeper\.$/],
    ["frost not stated here", place(115, "C"), "frost depth: 24 in", "unchecked", /^The frost depth of this place is not stated/],
    ["a speed without its exposure", place(115, "C"), "wind speed: 110 mph", "unchecked", /^The exposure the supplied design was made for is not stated/],
    ["an exposure without its speed", place(115, "C"), "exposure: B", "unchecked", /^The wind speed the supplied design was made for is not stated/],
    ["a place without its wind", "frost depth: 42 in", place(110, "B"), "unchecked", /^To hold the supplied design against this place, the wind speed of the site and the exposure of the site is needed\.$/],
    ["two things at once", `${place(130, "D")}, ground snow: 30 psf`, `${place(110, "B")}, ground snow: 20 psf`, "over", /^Wind 2\.52 times .* Ground snow 30 psf here/],
  ])("%s", (_, here, design, verdict, words) => {
    expect(said(here, design)).toMatchObject({ verdict, message: expect.stringMatching(words) });
  });

  it("says nothing where no supplied design is named", () => {
    expect(saidOf(suppliedDesign, pier({ site: place(115, "C") }))).toBeUndefined();
    expect(pressureRatio.value({ q_s: 3, q_k: 2 })).toBeCloseTo(1.5, 12);
  });
});
