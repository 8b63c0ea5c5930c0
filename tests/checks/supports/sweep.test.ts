import { expect, it } from "vitest";
import type { Level } from "../../../server/src/actions/demand.js";
import type { CheckDecl, Outcome } from "../../../server/src/checks/contract.js";
import { footingChecks } from "../../../server/src/checks/footing/index.js";
import { pierChecks } from "../../../server/src/checks/pier/index.js";
import { rockChecks } from "../../../server/src/checks/rock/index.js";
import { wallChecks } from "../../../server/src/checks/wall/index.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import { drawing } from "../anchors/sweep.js";
import { gatherer, inputsOfAll } from "../given.js";
import { demandOf, drawOne, forceNames, sizesOfKind, supportOf, type Drawn, type SizeName } from "./sweep.js";

const checks = [...pierChecks, ...footingChecks, ...wallChecks, ...rockChecks] as readonly CheckDecl<any, any>[];

/** Half of the supports are drawn; the other half are the same, each with one size or force moved by this. */
const drawn = 5000;
const step = 0.05;

/**
 * Where the ratio of a check jumps with a size or force, by the check that jumps and by what differs on the way to the answer just before and just
 * after:
 *
 * - ties that stand farther apart than half the depth are not counted in shear (ACI 318-19 9.7.6.2.2), and with fewer than the least ties the
 *   concrete has its strength by another formula (22.5.5.1);
 * - least ties are asked for from half the strength of the concrete on (10.6.2.1);
 * - a pier or pedestal is slender from a ratio on, and its moment grows by no more than 1.4 (6.2.5.1, 6.2.5.3): its ratio to that limit, its moment and
 *   its growth are weighed one instead of the other;
 * - closer ties of an earthquake are no. 3 or no. 4 by the size of the pier (IBC 2021 1810.3.9.4, from memory);
 * - a bar that begins to pull is developed over 12 in at once (25.4.2.1), or in full where its length is not shortened or ends in a hook (25.4.10.2),
 *   and 1.5 or 1.6 times as long where bars stand close (25.4.2.3, 25.4.3.2);
 * - the depth of a footing counts by its arc tangent from a depth of one width on (Hansen's depth factors);
 * - a section round the pedestal that reaches the edge of the pad cannot punch (22.6.4.1);
 * - soil that gives way holds nothing more: the movement is then given as the width of the pier, the lean as half a radian;
 * - dowels count as pins from a depth of eight diameters on, and go as deep as an anchor as soon as they pull (practice); a pull that cannot be told
 *   leaves them out of sliding;
 * - water above the underside of a footing on rock makes all of its concrete buoyant, and soil beside a short pier is under water from the top where
 *   water stands along it (the safe side);
 * - once a dowel of a pad pulls, the pressure is the sum of two states of equilibrium, one for each direction, and no longer that of the contact both
 *   ways.
 */
const jumpsOfTheStandard: readonly (readonly [RegExp, RegExp])[] = [
  [/shear$/u, /^pier\.(tie-shear|shear-with-ties)/u],
  [/least-ties$/u, /^/u],
  [/development$/u, /length-needed|hook-development|straight-development|development-needed/u],
  [/^footing\.bearing-capacity$/u, /^footing\.depth-ratio/u],
  [/^footing\.two-way-shear$/u, /reaches the edge of the pad/u],
  [/slender$/u, /magnifier|magnified/u],
  [/seismic-tie/u, /^pier\.seismic-tie/u],
  [/^pier\.(movement|rotation)/u, /gives way before this load is reached/u],
  [/^rock\.dowel-depth$/u, /No dowel pulls/u],
  [/^rock\.sliding$/u, /not deep enough to be pins|What the dowels pull is not known/u],
  [/^rock\./u, /Water can stand above the underside/u],
  [/^pier\.broms$/u, /Water stands along the pier/u],
  [/^rock\.bearing$/u, /The dowels hold an edge of the pad down/u],
];

const levelOf = (check: CheckDecl): Level => (typeof check.level === "string" ? check.level : check.level[0]) as Level;

const move = (of: Drawn, name: SizeName, by: number): Drawn => ({ ...of, sizes: { ...of.sizes, [name]: of.sizes[name] * (1 + by) } });

/** Demand as a part of demand and capacity together, 0 to 1: a capacity of nothing is the end of a row and no jump. */
const shareOf = (outcome: Outcome | undefined): number | undefined => {
  if (!outcome || outcome.type === "unchecked") return undefined;
  return outcome.demand === 0 ? 0 : outcome.demand / (outcome.demand + outcome.capacity);
};

const shareAt = (check: CheckDecl, of: Drawn): number | undefined => {
  const support = supportOf(of);
  if (!check.applies(support)) return undefined;
  const gather = gatherer();
  const inputs = check.inputs(support, gather, 0) as object;
  return gather.missing.length + gather.blocks.length > 0 ? undefined : shareOf(check.evaluate(inputs, demandOf(of, levelOf(check)), plainCalc));
};

/** Less than two hundredths of a ratio near one. */
const isSmooth = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005;

/** Halves the move, toward the larger change, until the jump stands alone between two supports; undefined where the change is steep and no jump. */
function findJump(check: CheckDecl, of: Drawn, name: SizeName, a: number, b: number): readonly [Drawn, Drawn] | undefined {
  let [low, high] = [0, step];
  let [before, after] = [a, b];
  for (let k = 0; k < 34; k += 1) {
    const middle = (low + high) / 2;
    const between = shareAt(check, move(of, name, middle));
    if (between === undefined || (isSmooth(before, between) && isSmooth(between, after))) return undefined;
    if (Math.abs(before - between) < Math.abs(between - after)) [low, before] = [middle, between];
    else [high, after] = [middle, between];
  }
  return [move(of, name, low), move(of, name, high)];
}

/** What was done on the way to an answer: its notes, and what its steps found, to four digits. Values just before and just after a jump are alike to more. */
function way(check: CheckDecl, of: Drawn): readonly string[] {
  const { calc, steps } = recordingCalc();
  check.evaluate(check.inputs(supportOf(of), gatherer(), 0), demandOf(of, levelOf(check)), calc);
  return steps.map((one) => {
    if (one.type === "note") return one.text;
    return one.type === "formula" ? `${one.formula.id} ${one.value.toPrecision(4)}` : `${one.routine.id} ${one.found.map(({ value }) => value.toPrecision(4)).join(" ")}`;
  });
}

/** What one of two ways has and the other has not, or has more often. */
function differing(a: readonly string[], b: readonly string[]): readonly string[] {
  const times = (list: readonly string[], one: string) => list.filter((other) => other === one).length;
  return [...new Set([...a, ...b])].filter((one) => times(a, one) !== times(b, one));
}

it(
  "ten thousand supports at random: every number is one, no capacity is below zero, and no ratio jumps but where the standard does",
  () => {
    const next = drawing(20260902);
    const wrong: string[] = [];
    const jumps: string[] = [];
    const weighedBy = new Map<string, number>();
    for (let i = 0; i < drawn; i += 1) {
      const one = drawOne(next);
      const isForce = next() < 0.5;
      const names: readonly SizeName[] = isForce ? forceNames : sizesOfKind[one.choices.kind];
      const name = names[Math.floor(next() * names.length)];
      const other = move(one, name, step);
      const inputs = inputsOfAll(checks, supportOf(one));
      const otherInputs = isForce ? inputs : inputsOfAll(checks, supportOf(other));
      for (const [check, own] of inputs) {
        const otherOwn = otherInputs.get(check);
        const level = levelOf(check);
        const first: Outcome = check.evaluate(own, demandOf(one, level), plainCalc);
        const second: Outcome | undefined = otherOwn && check.evaluate(otherOwn, demandOf(other, level), plainCalc);
        for (const outcome of [first, second]) {
          if (!outcome || outcome.type === "unchecked") continue;
          weighedBy.set(check.id, (weighedBy.get(check.id) ?? 0) + 1);
          const { demand: S_u, capacity: S_d } = outcome;
          if (!(Number.isFinite(S_u) && Number.isFinite(S_d) && S_d >= 0 && S_u >= 0)) wrong.push(`${i} ${check.id}: ${S_u} of ${S_d}`);
        }
        const [a, b] = [shareOf(first), shareOf(second)];
        if (a === undefined || b === undefined || isSmooth(a, b)) continue;
        const jump = findJump(check, one, name, a, b);
        if (!jump) continue;
        const between = differing(way(check, jump[0]), way(check, jump[1]));
        if (!jumpsOfTheStandard.some(([who, known]) => who.test(check.id) && (between.length === 0 ? known.test("") : between.some((step) => known.test(step))))) jumps.push(`${i} ${one.choices.kind} ${check.id} with ${name}: ${a} to ${b}; ${between.join(" | ")}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(jumps).toEqual([]);
    // The checks of single supports have been tried often enough for the sweep to say something about them.
    expect([...weighedBy.values()].filter((times) => times > 60).length).toBeGreaterThan(60);
  },
  // About 20 s of one core alone; more where it is shared.
  240_000,
);
