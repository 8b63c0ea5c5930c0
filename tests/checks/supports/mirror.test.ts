import { expect, it } from "vitest";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { footingChecks } from "../../../server/src/checks/footing/index.js";
import { pierChecks } from "../../../server/src/checks/pier/index.js";
import { rockChecks } from "../../../server/src/checks/rock/index.js";
import { wallChecks } from "../../../server/src/checks/wall/index.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { drawing } from "../anchors/sweep.js";
import { gatherer } from "../given.js";
import { demandOf, drawOne, supportOf, type Drawn } from "./sweep.js";

const checks = [...pierChecks, ...footingChecks, ...wallChecks, ...rockChecks] as readonly CheckDecl<any, any>[];

/** The forces of the storm from the other side: along x, along y, or both. */
const mirrored = ({ choices, sizes }: Drawn, x: 1 | -1, y: 1 | -1): Drawn => ({ choices, sizes: { ...sizes, Vx: x * sizes.Vx, My: x * sizes.My, Vy: y * sizes.Vy, Mx: y * sizes.Mx } });

/** The axis across which a support is alike on both sides: not one where its column stands off the middle, not that across a wall that holds soil. */
function likeness({ choices: { kind, isOff, fill, side } }: Drawn): readonly (readonly [1 | -1, 1 | -1])[] {
  if (kind === "pad" && isOff) return [];
  const isHolding = kind.startsWith("wall") && fill !== "none";
  const isAcrossY = side === "north" || side === "south";
  if (isHolding) return isAcrossY ? [[-1, 1]] : [[1, -1]];
  return [[-1, 1], [1, -1], [-1, -1]];
}

it("a storm from the other side tries every support alike, whatever it stands on", () => {
  const next = drawing(31415);
  let compared = 0;
  for (let i = 0; i < 1500; i += 1) {
    const one = drawOne(next);
    const support = supportOf(one);
    for (const check of checks) {
      if (!check.applies(support)) continue;
      const gather = gatherer();
      const inputs = check.inputs(support, gather, 0) as object;
      if (gather.missing.length + gather.blocks.length > 0) continue;
      const level = typeof check.level === "string" ? check.level : check.level[0];
      const first = check.evaluate(inputs, demandOf(one, level), plainCalc);
      for (const [x, y] of likeness(one)) {
        const other = check.evaluate(inputs, demandOf(mirrored(one, x, y), level), plainCalc);
        expect(other.type, `${i} ${check.id}`).toBe(first.type);
        if (first.type === "unchecked" || other.type === "unchecked") continue;
        compared += 1;
        expect(Math.abs(other.demand - first.demand), `${i} ${check.id} demand ${first.demand} and ${other.demand}`).toBeLessThanOrEqual(1e-6 * (first.demand + 1e-6 * first.capacity));
        expect(Math.abs(other.capacity - first.capacity), `${i} ${check.id} capacity ${first.capacity} and ${other.capacity}`).toBeLessThanOrEqual(1e-6 * first.capacity);
      }
    }
  }
  expect(compared).toBeGreaterThan(20_000);
}, 120_000);
