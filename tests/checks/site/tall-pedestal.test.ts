import { describe, expect, it } from "vitest";
import { slabAsFooting } from "../../../server/src/checks/site/slab-as-footing.js";
import { tallPedestal } from "../../../server/src/checks/site/tall-pedestal.js";
import { pad, pier } from "./small-notebooks.js";
import { saidOf } from "./structures.js";

const more = (...lines: readonly string[]) => lines.map((line) => `\n    ${line}`).join("");
const pedestal = (size: string, above: string, ...lines: readonly string[]) => saidOf(tallPedestal, pad({ more: more(`pedestal: ${size}`, `above grade: ${above}`, ...lines) }));
const bars = ["bars: 4 no. 5", "ties: no. 3 at 8 in"];

// ACI 318-19 2.3 and 14.3.3.1: three times the least width.
describe("Height of a pedestal without bars", () => {
  it.each([
    ["12 in x 12 in", "36 in", "holds"],
    ["12 in x 24 in", "36.1 in", "over"],
    ["20 in x 24 in", "60 in", "holds"],
    ["19 in x 24 in", "60 in", "over"],
    ["{ diameter: 16 in }", "49 in", "over"],
    ["{ diameter: 16 in }", "48 in", "holds"],
  ] as const)("%s, %s above grade: %s", (size, above, verdict) => {
    expect(pedestal(size, above)?.verdict).toBe(verdict);
  });

  it("says how wide it has to be", () => {
    expect(pedestal("12 in x 12 in", "48 in")?.message).toMatch(/48 in out of the ground; 36 in is the most for a pedestal 12 in wide without bars\. Shorten it .*, widen it to 16 in, or give it bars and ties/);
  });

  it("is not for pedestals with bars, nor for piers, which have checks of their own", () => {
    expect(pedestal("12 in x 12 in", "48 in", ...bars)).toBeUndefined();
    expect(saidOf(tallPedestal, pier({ size: "diameter: 12 in", more: more("above grade: 5 ft") }))).toBeUndefined();
  });
});

describe("A slab is no footing where it freezes", () => {
  const said = (name: string, site = "frost depth: 42 in") => saidOf(slabAsFooting, pad({ site, ground: `\nground:\n  bed: { kind: soil, class: ${name} }` }));

  it.each([
    ["concrete slab", "frost depth: 42 in", "over"],
    ["existing slab on grade", "frost depth: 1 in", "over"],
    ["concrete slab", "frost depth: 0 in", "unchecked"],
    ["concrete slab", "", "unchecked"],
    ["SM", "frost depth: 42 in", undefined],
    // Paving has a rule of its own.
    ["slabs of paving", "frost depth: 42 in", undefined],
  ] as const)("%s, %s: %s", (name, site, verdict) => {
    expect(said(name, site)?.verdict).toBe(verdict);
  });

  it("asks for the frost depth where it is not given", () => {
    expect(said("concrete slab", "")?.message).toContain("The frost depth of the site is not given.");
    expect(said("concrete slab", "frost depth: 0 in")?.message).not.toContain("frost depth of the site");
  });
});
