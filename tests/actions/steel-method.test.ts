/** What steel is tried by, as the notebook names the method of its design. */
import { describe, expect, it } from "vitest";
import { storyMagnifier } from "../../server/src/actions/second-order.js";
import { actionsOf } from "../../server/src/actions/index.js";
import { entries, foot, kip, psf, solved, structureOf, type Line } from "./given.js";

const lines: readonly Line[] = [
  { name: "south", places: [{ x: 3, y: 3 }, { x: 21, y: 3 }], fields: { height: 14 * foot } },
  { name: "north", places: [{ x: 3, y: 17 }, { x: 21, y: 17 }], fields: { height: 14 * foot } },
];
const asked = (method?: string, more: Record<string, unknown> = {}, rigid = "yes") => solved({ roof: { dead: 60 * psf, "rigid in plane": rigid }, lines, codes: { ...(method ? { method } : {}), ...more } });

describe("demands on steel", () => {
  it("are the strength demands themselves by LRFD, so that nothing is found twice", () => {
    for (const { strength, steel } of asked().columns) expect(steel).toBe(strength);
    for (const { strength, steel } of asked("LRFD", {}, "envelope").columns) expect(steel).toBe(strength);
  });

  it("are the allowable-stress ones by ASD, with the combinations and axial forces that soil takes", () => {
    for (const { allowable, steel } of asked("ASD").columns) {
      expect(steel.map(({ label, level, base }) => [label, level, base.P])).toEqual(allowable.map(({ label, level, base }) => [label, level, base.P]));
      expect(steel.every(({ magnified }) => magnified !== undefined)).toBe(true);
    }
  });

  it("lean under 1.6 of their vertical loads (AISC 360-22 C2.1(d)): 1.6 x 0.068/(0.85 x 0.8) = 0.16", () => {
    expect(storyMagnifier.value({ alpha: 1.6, k_P: 0.068, K_s: 1 })).toBeCloseTo(1 / (1 - 0.16), 12);
    expect(storyMagnifier.value({ alpha: 1, k_P: 0.068, K_s: 1 })).toBeCloseTo(1 / (1 - 0.1), 12);
    const { columns } = asked("both");
    for (const { strength, steel } of columns) {
      // 1.6 D at allowable level leans more than 1.4 D at strength.
      const dead = steel.find(({ label }) => label === "1.0D")?.magnified?.x ?? 0;
      const factored = strength.find(({ label }) => label === "1.4D")?.magnified?.x ?? 0;
      expect((1 - 1 / dead) / (1 - 1 / factored)).toBeCloseTo(1.6 / 1.4, 6);
    }
  });

  it("are both lists by both, the strength ones the same objects", () => {
    for (const rigid of ["yes", "envelope"]) {
      for (const { strength, steel, allowable } of asked("both", {}, rigid).columns) {
        expect(steel).toHaveLength(strength.length + allowable.length);
        strength.forEach((demand, i) => expect(steel[i]).toBe(demand));
        expect(new Set(steel.map(({ level, label }) => `${level} ${label}`)).size).toBe(steel.length);
      }
    }
  });

  it("are the basic combinations also where soil takes the alternative ones", () => {
    for (const { steel, allowable } of asked("ASD", { "alternative combinations": true }).columns) {
      expect(steel.some(({ label }) => label.startsWith("0.6D + 0.6W"))).toBe(true);
      expect(allowable.some(({ label }) => label.startsWith("0.6D + 0.6W"))).toBe(false);
    }
  });

  it("show both levels in the derivation of second order", () => {
    const found = actionsOf(structureOf({ roof: { dead: 60 * psf }, lines, codes: { method: "ASD" } })).derivations().find(({ title }) => title === "second order");
    const alphas = found?.steps.flatMap((step) => (step.type === "formula" && step.formula.id === storyMagnifier.id ? [step.args.alpha] : [])) ?? [];
    expect([...new Set(alphas)]).toEqual([1, 1.6]);
  });

  it("come of stated reactions as well, and a change of method is not kept from them", () => {
    const reactions = entries({ dead: { down: 4 * kip }, wind: { up: 6 * kip } });
    const given = (method: string) => structureOf({ noRoof: true, lines: [{ name: "south", places: [{ x: 0, y: 0 }], fields: { reactions } }], codes: { method } });
    const first = given("LRFD");
    const before = actionsOf(first);
    const after = actionsOf({ ...first, codes: given("ASD").codes }, before);
    const of = (actions: typeof before) => {
      const found = actions.of({ path: "columns.south" });
      if ("unknown" in found) throw new Error(found.unknown);
      return found[0].steel.map(({ base }) => base.P / kip);
    };
    // 0.9 x 4 - 6 = -2.4 by 7-22 5a; 0.6 x 4 - 0.6 x 6 = -1.2 by 7a.
    expect(Math.min(...of(before))).toBeCloseTo(-2.4, 9);
    expect(Math.min(...of(after))).toBeCloseTo(-1.2, 9);
  });
});
