import { describe, expect, it } from "vitest";
import { sameInAll } from "../../server/src/checks/contract.js";
import { allChecks } from "../../server/src/checks/registry.js";
import { checkText } from "../../server/src/engine/check-text.js";

const pier = (reactions: string): string => `rootfast: 1
site: { frost depth: 30 in, seismic design category: B }
ground:
  sand: { kind: soil, class: SM, unit weight: 110 pcf }
foundations:
  pier:
    kind: pier
    ground: sand
    concrete: 4000 psi
    diameter: 30 in
    depth: 9 ft
    above grade: 6 in
    bars: 8 no. 7
    ties: no. 4 at 10 in
    combined:
      wind: { ${reactions} }
`;

const statesOf = (text: string): ReadonlyMap<string, string> => new Map(checkText(text).documents[0].checks.map(({ check, state, because }) => [check.id, because === undefined ? state : `${state}: ${because}`]));

describe("A check that looks at no force", () => {
  const free = allChecks.filter(({ measures, level }) => measures === sameInAll && level === "strength").map(({ id }) => id);
  const strength = statesOf(pier("level: strength, down: 5 kip, shear x: 1 kip"));
  const allowable = statesOf(pier("level: allowable, down: 5 kip, shear x: 1 kip"));
  const asked = free.filter((id) => strength.has(id));

  it("is there for the bars of a pier", () => {
    expect(asked).toEqual(expect.arrayContaining(["pier.least-bars", "pier.cover", "pier.tie-spacing"]));
  });

  it.each(asked)("%s is answered alike where allowable reactions alone are given", (id) => {
    expect(allowable.get(id)).toBe(strength.get(id));
    expect(allowable.get(id)).not.toContain("reactions");
  });

  it("is no way round for one that does", () => {
    expect(allowable.get("pier.bending")).toMatch(/no strength-level reactions are given/u);
  });
});
