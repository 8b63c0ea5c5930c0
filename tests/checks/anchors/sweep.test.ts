import { expect, it } from "vitest";
import { anchorChecks } from "../../../server/src/checks/anchors/index.js";
import { baseChecks } from "../../../server/src/checks/base/index.js";
import type { CheckDecl, Outcome } from "../../../server/src/checks/contract.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inputsOfAll } from "../given.js";
import { demandOf, drawing, drawOne, forceNames, sizeNames, supportOf, type Drawn, type SizeName } from "./sweep.js";

const checks = [...anchorChecks, ...baseChecks] as readonly CheckDecl<any, any>[];

/** Half of the connections are drawn; the other half are the same, each with one size or force moved by this. */
const drawn = 5000;
const step = 0.005;

/**
 * Where the ratio of a check jumps with a size or force, the standard jumps there:
 *
 * - a rod begins to pull and joins the group, whose area and middle change at once (ACI 318-19 17.5.1.3, 17.6.2.3);
 * - tension and shear count together from a fifth of either strength on, and not below (17.8.1, 17.8.2);
 * - a rod becomes deep against its edge distance: side-face blowout is looked at from h_ef = 2.5 c_a1 on (17.6.4.1), for a row where rods stand
 *   nearer than 6 c_a1 and for single rods beyond (17.6.4.2);
 * - rods nearer than an inch to one line become a row, or two (practice, since no row is built straight);
 * - hooks and heads of bars count in full from their development length on, and not at all below (25.4.10.2);
 * - bars and hairpins count within their reach and not beyond (R17.5.2.1);
 * - pryout doubles at 2.5 in of embedment (17.7.3.1.1);
 * - friction carries all of a shear or nothing, and nothing where the base lifts (practice);
 * - the plate bends on a line along a side of the tube, or on the diagonal across its corner, by where the rod stands, and the diagonal counts less
 *   width (practice);
 * - the one-way formulas ask the far row of rods alone while the plate bears at all, and every rod where it is lifted clear (AISC Design Guide 1, 4.3);
 * - rods below leveling nuts bend from a clear gap of one diameter on, and not below (sign structures of AASHTO).
 *
 * Each is known by what differs on the way to the answer just before and just after the jump.
 */
const jumpsOfTheStandard: readonly RegExp[] = [
  /mechanics\.rod-group n=/u,
  /uses at most 0\.2 of its strength/u,
  /not deep against their edge distance|burst it together|bursts it alone|The row along/u,
  /mechanics\.edge-row n=/u,
  /anchors\.developed-or-not k=/u,
  /beyond the reach of the rods|No vertical bar stands within reach|anchors\.reinforcement-strength n_b=/u,
  /anchors\.pryout-factor k_cp=/u,
  /Friction|friction/u,
  /off a corner of the tube|off a side of the tube/u,
  /base\.lifted-rod/u,
  /no more than one rod diameter/u,
];

const move = (of: Drawn, name: SizeName, by: number): Drawn => ({ ...of, sizes: { ...of.sizes, [name]: of.sizes[name] * (1 + by) } });

const ratioOf = (outcome: Outcome | undefined): number | undefined => {
  if (!outcome || outcome.type === "unchecked") return undefined;
  return outcome.demand === 0 ? 0 : outcome.demand / outcome.capacity;
};

const ratioAt = (check: CheckDecl, of: Drawn): number | undefined => {
  const inputs = inputsOfAll(checks, supportOf(of)).get(check);
  return inputs && ratioOf(check.evaluate(inputs, demandOf(of), plainCalc));
};

/** Ten times the move, with a hundredth of the strength beside it for ratios near none. */
const isSmooth = (a: number, b: number): boolean => a === b || (Number.isFinite(a) === Number.isFinite(b) && Math.abs(a - b) <= 10 * step * Math.max(a, b) + 0.01);

/** Halves the move until the jump stands alone between two connections; undefined where the change is steep and no jump. */
function findJump(check: CheckDecl, of: Drawn, name: SizeName, a: number, b: number): readonly [Drawn, Drawn] | undefined {
  let [low, high] = [0, step];
  let [before, after] = [a, b];
  for (let k = 0; k < 34; k += 1) {
    const middle = (low + high) / 2;
    const between = ratioAt(check, move(of, name, middle));
    if (between === undefined) return undefined;
    if (isSmooth(before, between) && isSmooth(between, after)) return undefined;
    if (isSmooth(before, between)) [low, before] = [middle, between];
    else [high, after] = [middle, between];
  }
  return [move(of, name, low), move(of, name, high)];
}

/** Results by which branches show that no note tells. */
const telling = new Set(["n", "n_b", "k", "k_cp"]);

/** What was done on the way to an answer: its notes and steps, with the numbers of choices and without those of sizes. */
function way(check: CheckDecl, of: Drawn): readonly string[] {
  const { calc, steps } = recordingCalc();
  check.evaluate(check.inputs(supportOf(of), gatherer(), 0), demandOf(of), calc);
  return steps.map((one) => {
    if (one.type === "note") return one.text;
    if (one.type === "formula") {
      const chosen = Object.entries({ ...one.args, [one.formula.result]: one.value }).filter(([symbol, value]) => telling.has(symbol) && Number.isInteger(value * 2));
      return `${one.formula.id} ${chosen.map(([symbol, value]) => `${symbol}=${value}`).join(" ")}`;
    }
    return `${one.routine.id} ${[...one.given, ...one.found].filter(({ symbol }) => symbol === "n").map(({ value }) => `n=${value}`).join(" ")}`;
  });
}

const differing = (a: readonly string[], b: readonly string[]): readonly string[] => [...a.filter((one) => !b.includes(one)), ...b.filter((one) => !a.includes(one))];

it(
  "ten thousand connections at random: every number is one, no strength is below zero, and no ratio jumps but where the standard does",
  () => {
    const next = drawing(20260901);
    const wrong: string[] = [];
    const jumps: string[] = [];
    const weighedBy = new Map<string, number>();
    for (let i = 0; i < drawn; i += 1) {
      const one = drawOne(next);
      const isForce = next() < 0.65;
      const names: readonly SizeName[] = isForce ? forceNames : sizeNames;
      const name = names[Math.floor(next() * names.length)];
      const other = move(one, name, step);
      const inputs = inputsOfAll(checks, supportOf(one));
      // A force that moves leaves what is read as it is.
      const otherInputs = isForce ? inputs : inputsOfAll(checks, supportOf(other));
      const [demand, otherDemand] = [demandOf(one), demandOf(other)];
      for (const [check, own] of inputs) {
        const otherOwn = otherInputs.get(check);
        const first: Outcome = check.evaluate(own, demand, plainCalc);
        const second: Outcome | undefined = otherOwn && check.evaluate(otherOwn, otherDemand, plainCalc);
        for (const outcome of [first, second]) {
          if (!outcome || outcome.type === "unchecked") continue;
          weighedBy.set(check.id, (weighedBy.get(check.id) ?? 0) + 1);
          const { demand: S_u, capacity: S_d } = outcome;
          if (!(Number.isFinite(S_u) && Number.isFinite(S_d) && S_d >= 0 && S_u >= 0)) wrong.push(`${i} ${check.id}: ${S_u} of ${S_d}`);
        }
        const [a, b] = [ratioOf(first), ratioOf(second)];
        if (a === undefined || b === undefined || isSmooth(a, b)) continue;
        const jump = findJump(check, one, name, a, b);
        if (!jump) continue;
        const between = differing(way(check, jump[0]), way(check, jump[1]));
        if (!between.some((step) => jumpsOfTheStandard.some((known) => known.test(step)))) jumps.push(`${i} ${check.id} with ${name}: ${a} to ${b}; ${between.join(" | ")}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(jumps).toEqual([]);
    // Each check has been tried often enough for the sweep to say something about it.
    for (const check of [...anchorChecks, ...baseChecks] as readonly CheckDecl[]) {
      expect(weighedBy.get(check.id) ?? 0, check.id).toBeGreaterThan(200);
    }
  },
  // About 17 s of one core alone; more where it is shared.
  240_000,
);
