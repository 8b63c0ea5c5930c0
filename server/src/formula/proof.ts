import type { EvalFunction } from "mathjs";
import { kinds, type KindName, type UnitSystem } from "../units/kinds.js";
import { dimensionOfKind, plain, sameDimension } from "../units/dimension.js";
import { compile } from "./closure.js";
import { parsedOf } from "./declare.js";
import { isUnit, math, mathjsUnit, withoutAngles, zerosFit } from "./exact-units.js";
import { printCondition, negated } from "./print.js";
import { plainMarks, symbolText } from "./plain.js";
import { visit, type Choice, type Tree } from "./tree.js";
import type { Formula } from "./types.js";

/**
 * The units proof: a formula is evaluated once by mathjs, with a unit on every value and constant, and once by the closure
 * that runs, with SI numbers. Both must agree, and the result must have the dimension of its kind. A constant that hides
 * units fails, because mathjs is then left with a wrong dimension. Used by tests; it imports all of mathjs.
 */
export interface Proof {
  readonly ok: boolean;
  /** Points at which both evaluations gave a number. */
  readonly points: number;
  /** Points by branch of each choice; one row, "always", for a formula without a choice. */
  readonly branches: readonly { readonly name: string; readonly points: number }[];
  /** Why it failed; empty where it did not. */
  readonly message: string;
}

const perBranch = 20;
const mostSamples = 20_000;
const tolerance = 1e-8;

/** Ordinary sizes by kind, in SI, from small parts to large structures. */
const sizes: Readonly<Record<KindName, readonly [number, number]>> = {
  number: [0.1, 20],
  ratio: [0.05, 2],
  length: [0.005, 2],
  distance: [0.1, 30],
  area: [1e-5, 1],
  planArea: [0.1, 500],
  sectionModulus: [1e-6, 1e-2],
  volume: [0.01, 50],
  inertia: [1e-8, 1e-3],
  force: [100, 1e6],
  smallForce: [10, 1e5],
  moment: [100, 1e6],
  smallMoment: [100, 1e6],
  stress: [1e5, 1e8],
  steelStress: [1e8, 1e9],
  pressure: [100, 1e6],
  lineLoad: [100, 1e5],
  forcePerLength: [1e4, 1e7],
  momentPerLength: [100, 1e5],
  unitWeight: [1e3, 3e4],
  pressurePerDepth: [1e3, 1e5],
  subgradeModulus: [1e6, 1e8],
  rotationalStiffness: [1e5, 1e8],
  stiffness: [1e5, 1e9],
  speed: [10, 90],
  time: [0.02, 3],
  angle: [0.01, 1.5],
  slope: [0.01, 1],
};

/** Numbers between 0 and 1 that are the same at every run (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const seedOf = (text: string) => [...text].reduce((hash, c) => (Math.imul(hash, 31) + c.charCodeAt(0)) | 0, 7);

interface Branch {
  readonly choice: Choice | undefined;
  readonly yes: boolean;
  readonly name: string;
  points: number;
}

/** Proves the units of one formula, at 20 points for each way each of its choices can go. Never throws. */
export function proveUnits(of: Formula<any, any>): Proof {
  let branches: Branch[] = [];
  let points = 0;
  const outcome = (message: string): Proof => ({ ok: message === "", points, branches: branches.map(({ name, points: p }) => ({ name, points: p })), message });
  try {
    const { tree, constantValues } = parsedOf(of);
    branches = branchesOf(tree);
    const taken = new Set<Branch>();
    const byChoice = new Map<Choice, Branch[]>();
    for (const b of branches) if (b.choice) byChoice.set(b.choice, [...(byChoice.get(b.choice) ?? []), b]);
    const closure = compile(tree, constantValues, (choice, yes) => {
      for (const b of byChoice.get(choice) ?? []) if (b.yes === yes) taken.add(b);
    });
    const withUnits = unitEvaluation(of);
    const names = Object.keys(of.symbols).filter((name) => name !== of.result);
    const random = seeded(seedOf(of.id));

    for (let sample = 0; sample < mostSamples && branches.some((b) => b.points < perBranch); sample++) {
      const args = Object.fromEntries(names.map((name) => [name, draw(of, name, random)]));
      taken.clear();
      const value = closure(args);
      const reached = branches.filter((b) => b.choice === undefined || taken.has(b));
      if (!Number.isFinite(value) || !reached.some((b) => b.points < perBranch)) continue;
      const system: UnitSystem = points % 2 === 0 ? "US" : "SI";
      const proved = withUnits(args, system);
      const wrong = compare(of, args, value, proved, reached);
      if (wrong !== "") return outcome(wrong);
      if (of.value(args) !== value) return outcome(`the declared value differs from its tree at ${at(args)}.`);
      points++;
      for (const b of reached) b.points++;
    }
  } catch (error) {
    return outcome(error instanceof Error ? error.message : String(error));
  }
  const short = branches.find((b) => b.points < perBranch);
  if (!short) return outcome("");
  const where = short.choice ? `the branch "${short.name}"` : "the formula";
  return outcome(`${where} has a value at only ${short.points} of ${mostSamples} points; give its symbols a range that reaches it.`);
}

function branchesOf(tree: Tree): Branch[] {
  const found: Branch[] = [];
  visit(tree, (t) => {
    if (t.type !== "choice") return;
    const reading = { name: (n: string) => ({ text: symbolText(n), binds: 6 }) };
    for (const yes of [true, false])
      found.push({ choice: t, yes, name: printCondition(yes ? t.when : negated(t.when), plainMarks, reading), points: 0 });
  });
  return found.length ? found : [{ choice: undefined, yes: true, name: "always", points: 0 }];
}

/** Evenly over a range that holds zero or less, evenly over its logarithm elsewhere. */
function draw(of: Formula<any, any>, name: string, random: () => number): number {
  const symbol = of.symbols[name];
  const [low, high] = symbol.range ?? sizes[symbol.kind as KindName];
  return low > 0 ? low * (high / low) ** random() : low + (high - low) * random();
}

type Evaluation = { readonly value: number; readonly unitless: boolean; readonly fits: boolean; readonly shown: string } | { readonly fault: string };

/** The formula as mathjs evaluates it, with every value in US or SI units. Its own parser reads the text. */
function unitEvaluation(of: Formula<any, any>): (args: Record<string, number>, system: UnitSystem) => Evaluation {
  const { expression } = parsedOf(of);
  const code: EvalFunction = zerosFit(math.parse(expression)).compile();
  const constants = Object.fromEntries(Object.entries(of.constants ?? {}).map(([name, text]) => [name, withoutAngles(math.evaluate(text as string))]));
  const kind = kinds[of.symbols[of.result].kind as KindName];
  return (args, system) => {
    try {
      const scope: Record<string, unknown> = { ...constants };
      for (const [name, value] of Object.entries(args)) scope[name] = withUnit(value, of.symbols[name].kind, system);
      const result: unknown = code.evaluate(scope);
      if (typeof result === "number") return { value: result, unitless: true, fits: kind.si === "1" || kind.si === "rad", shown: "a plain number" };
      if (!isUnit(result)) return { fault: `mathjs gives a ${math.typeOf(result)}` };
      const [mass, length, time, ...others] = (result as unknown as { dimensions: number[] }).dimensions;
      const dimension = { mass, length, time };
      const fits = sameDimension(dimension, dimensionOfKind(of.symbols[of.result].kind)) && others.every((d) => Math.abs(d) < 1e-9);
      return { value: fits ? siValue(result) : NaN, unitless: sameDimension(dimension, plain), fits, shown: `a quantity in ${result.toSI().formatUnits() || "no unit"}` };
    } catch (error) {
      return { fault: error instanceof Error ? error.message : String(error) };
    }
  };
}

/** A unit of mathjs keeps its value in SI. */
const siValue = (unit: unknown): number => Number((unit as { value: unknown }).value);

/** A value with its unit; plain numbers and angles, which count as plain, have none. */
function withUnit(value: number, kindName: KindName, system: UnitSystem): unknown {
  const kind = kinds[kindName];
  if (kind.si === "1" || kind.si === "rad") return value;
  const shown = kind[system];
  return math.unit(value / shown.factor, mathjsUnit(shown.unit));
}

function compare(of: Formula<any, any>, args: Record<string, number>, value: number, proved: Evaluation, reached: readonly Branch[]): string {
  const where = reached[0].choice ? ` in the branch "${reached.map((b) => b.name).join(", ")}"` : "";
  if ("fault" in proved) return `with units it cannot be evaluated${where}: ${proved.fault}, at ${at(args)}.`;
  const kind = kinds[of.symbols[of.result].kind as KindName];
  // A branch that is the literal zero fits every dimension.
  if (proved.unitless && proved.value === 0 && value === 0) return "";
  if (!proved.fits) return `the result is ${proved.shown}${where}, and "${of.result}" is ${kind.words} (${kind.si}): a symbol has the wrong kind, or a constant hides its units.`;
  const size = Math.max(Math.abs(value), Math.abs(proved.value));
  if (!(Math.abs(value - proved.value) <= tolerance * size)) return `gives ${value} and with units ${proved.value}${where}, at ${at(args)}.`;
  return "";
}

const at = (args: Record<string, number>) =>
  Object.entries(args)
    .map(([name, value]) => `${name} = ${Number(value.toPrecision(6))}`)
    .join(", ");
