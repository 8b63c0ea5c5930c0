/**
 * Two things the notebook says contradict each other, so that an answer would rest on one of them by chance: rock by its kind and soil by its
 * class, a column that does not reach from its concrete to the roof, two columns in one place.
 *
 * Common practice, no source. In the field such a slip is found when the steel does not fit.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import { elevationAt, middleOf } from "../../actions/roof-plane.js";
import { roofInputs } from "../../actions/roof-inputs.js";
import { isMissing } from "../../catalog/lookup.js";
import { findSoil } from "../../catalog/soils.js";
import { isBelow } from "../../mechanics/compare.js";
import { nearestNeighbors } from "../../mechanics/nearest-neighbor.js";
import type { Structure, Support } from "../../project/model.js";
import { formatBuildable } from "../../units/format.js";
import type { UnitSystem } from "../../units/kinds.js";
import { type RuleDecl, type RuleFinding, sharesPad } from "../contract.js";
import { topOfConcrete } from "./concrete-top.js";

export const baseByColumn = formula({
  id: "site.base-by-column",
  text: "z_b = z_t - H",
  source: "geometry: the column top is in the roof plane",
  symbols: {
    z_b: { kind: "distance", meaning: "underside of the column above grade" },
    z_t: { kind: "distance", meaning: "roof plane over the column, above grade" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
});

export const baseByConcrete = formula({
  id: "site.base-by-concrete",
  text: "z_c = h_a + t_g + t_p",
  source: "geometry",
  symbols: {
    z_c: { kind: "distance", meaning: "top of the base plate above grade" },
    h_a: { kind: "length", meaning: "top of concrete above grade", field: "foundations.*.above grade" },
    t_g: { kind: "length", meaning: "grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "base plate", field: "bases.*.plate.thickness" },
  },
});

export const elevationGap = formula({
  id: "site.elevation-gap",
  text: "g = abs(z_b - z_c)",
  source: "geometry",
  symbols: {
    g: { kind: "distance", meaning: "what the elevations fail to close by" },
    z_b: { kind: "distance", meaning: "underside of the column above grade" },
    z_c: { kind: "distance", meaning: "top of the base plate above grade" },
  },
});

export const groupSpacing = formula({
  id: "site.group-spacing",
  text: "s_g = 3 * D",
  source: "IBC 2021 1810.3.3.1.6: elements nearer than three times their least dimension act as a group (from memory)",
  symbols: { s_g: { kind: "length", meaning: "spacing from which piers stand alone" }, D: { kind: "length", meaning: "diameter or side of the pier" } },
});

/** What elevations may miss by before they contradict, m: half a foot. */
const slack = 0.1524;

/** Columns nearer than this stand in one place, m. */
const onePlace = 0.05;

type Finding = RuleFinding;
type Show = (value: number) => string;

function groundAgrees(support: Support): Finding | undefined {
  const ground = support.ground;
  const kind = ground?.fields.kind;
  const name = ground?.fields.class;
  if (!ground || !kind || !name) return undefined;
  const found = findSoil(name.value);
  if (isMissing(found) || "blocked" in found) return undefined;
  const isRock = found.soil.class <= 2;
  if (isRock === (kind.value === "rock")) return undefined;
  return {
    support,
    verdict: "over",
    message: `${ground.name}: its kind is ${kind.value}, and "${name.value}" is ${isRock ? "rock" : "soil"}. Correct the one that is wrong; the checks take the values of the class.`,
    at: kind,
    related: [{ at: name, message: "class" }],
  };
}

function* elevationsClose(structure: Structure, show: Show): Generator<Finding> {
  const { roof } = structure;
  if (!roof) return;
  const inputs = roofInputs(structure, roof.fields);
  if ("unknown" in inputs) return;
  const center = middleOf(inputs.plane, plainCalc);
  const told = new Set<string>();
  for (const post of inputs.posts) {
    const support = structure.supports.find(({ path }) => path === post.support);
    const height = support?.column?.fields.height;
    const above = support?.foundation?.fields["above grade"];
    if (!support || !height || !above || told.has(support.path)) continue;
    const z_b = baseByColumn.value({ z_t: elevationAt(inputs.plane, post.x, post.y, center, plainCalc), H: post.height });
    const z_c = baseByConcrete.value({ h_a: topOfConcrete(support) ?? above.value, t_g: support.base?.fields.grout?.value ?? 0, t_p: support.base?.fields.plate?.value.thickness?.value ?? 0 });
    if (elevationGap.value({ z_b, z_c }) <= slack) continue;
    told.add(support.path);
    yield {
      support,
      verdict: "over",
      message: `${support.name}: by slope, mean height and column height the column would begin ${show(z_b)} above grade; by concrete, grout and plate it begins at ${show(z_c)}. Correct the height, the low edge, the mean height or the top of concrete.`,
      at: height,
    };
  }
}

/** A foundation that a column stands on and that has reactions of its own stands in the notebook twice. */
function* namedTwice({ supports }: Structure): Generator<Finding> {
  const columns = new Map(supports.flatMap((support) => (support.column && support.foundation ? [[support.foundation.path, support.name] as const] : [])));
  for (const support of supports) {
    const fields = support.foundation?.fields;
    const at = fields?.reactions ?? fields?.combined;
    const column = support.foundation && columns.get(support.foundation.path);
    if (!at || support.column || column === undefined) continue;
    yield {
      support,
      verdict: "over",
      message: `${support.name}: it carries reactions of its own, and column ${column} stands on it too: each is checked without the other. Take out the reactions, or give the column a foundation of its own.`,
      at,
    };
  }
}

/** Sides in plan of a pad along x and y, where it is one. */
function padOf({ foundation }: Support): { readonly x: number; readonly y: number } | undefined {
  const fields = foundation?.fields;
  return fields?.kind?.value === "footing" && fields.width && fields.length ? { x: fields.width.value, y: fields.length.value } : undefined;
}

export const halfSum = formula({
  id: "site.half-sum",
  text: "r = (b_1 + b_2) / 2",
  source: "geometry",
  symbols: { r: { kind: "length", meaning: "distance at which two pads touch" }, b_1: { kind: "length", meaning: "side of one pad" }, b_2: { kind: "length", meaning: "side of the other" } },
});

export const offset = formula({
  id: "site.offset",
  text: "s = abs(x_2 - x_1)",
  source: "geometry",
  symbols: { s: { kind: "distance", meaning: "distance of two columns along an axis" }, x_1: { kind: "distance", meaning: "one column" }, x_2: { kind: "distance", meaning: "the other" } },
});

interface Placed {
  readonly support: Support;
  readonly x: number;
  readonly y: number;
}

/** Whether the pads below two columns lie over each other. */
function padsMeet(a: Placed, b: Placed): boolean {
  const [one, other] = [padOf(a.support), padOf(b.support)];
  if (!one || !other || (a.support === b.support && sharesPad(a.support))) return false;
  const isNear = (axis: "x" | "y"): boolean => isBelow(offset.value({ x_1: a[axis], x_2: b[axis] }), halfSum.value({ b_1: one[axis], b_2: other[axis] }));
  return isNear("x") && isNear("y");
}

const sizeOf = (support: Support): number | undefined =>
  support.foundation?.fields.kind?.value === "pier" ? (support.foundation.fields.diameter?.value ?? support.foundation.fields.width?.value) : undefined;

function* placesApart(structure: Structure, show: Show): Generator<Finding> {
  const placed = structure.supports.filter(({ column }) => column?.fields.at ?? (column?.fields.from && column.fields.to));
  const points = placed.flatMap((support) => support.places.map((place) => ({ support, ...place })));
  const told = new Set<Support>();
  for (const [i, neighbor] of nearestNeighbors(points).entries()) {
    const { support } = points[i];
    if (!neighbor || told.has(support)) continue;
    const other = points[neighbor.index].support;
    const at = support.column?.fields.at ?? support.column?.fields.to ?? support;
    const who = other === support ? "two of its columns" : `it and ${other.name}`;
    const size = sizeOf(support);
    if (neighbor.distance < onePlace) {
      told.add(support);
      yield { support, verdict: "over", message: `${support.name}: ${who} stand in one place. Correct the places; the same column counted twice takes half the load.`, at };
    } else if (padsMeet(points[i], points[neighbor.index])) {
      told.add(support);
      yield { support, verdict: "over", message: `${support.name}: ${who} stand ${show(neighbor.distance)} apart, and their pads lie over each other. Correct the places, or make one footing of them.`, at };
    } else if (size !== undefined && neighbor.distance < size && sizeOf(other) !== undefined) {
      told.add(support);
      yield { support, verdict: "over", message: `${support.name}: ${who} stand ${show(neighbor.distance)} apart, and the pier is ${show(size)} wide. Correct the places or make one pier of them.`, at };
    } else if (size !== undefined && neighbor.distance < groupSpacing.value({ D: size }) && sizeOf(other) !== undefined) {
      told.add(support);
      yield {
        support,
        verdict: "unchecked",
        message: `${support.name}: ${who} stand ${show(neighbor.distance)} apart, less than three pier widths: they act as a group in the ground, and neither their uplift nor their lateral strength is checked. Set them farther apart, or have the group looked at.`,
        at,
      };
    }
  }
}

export const agreement: RuleDecl = {
  id: "site.agreement",
  title: "What the notebook says agrees",
  link: "site",
  clause: "common practice, no source",
  fails: "Two entries contradict each other, and an answer rests on one of them by chance.",
  seen: "Steel that does not reach the roof, or a pier where another stands already.",
  range: "Kind and class of the ground, elevations from the roof plane down to the concrete within half a foot, places of columns and piers, foundations that stand in the notebook twice. Other sizes are held against each other by a rule of their own.",
  judge: (structure) => {
    const system: UnitSystem = structure.project.units?.value ?? "US";
    const show: Show = (value) => formatBuildable(value, "distance", system);
    const found: Finding[] = [...elevationsClose(structure, show), ...placesApart(structure, show), ...namedTwice(structure)];
    for (const support of structure.supports) {
      const ground = groundAgrees(support);
      if (ground) found.push(ground);
    }
    const told = new Set(found.map(({ support }) => support));
    const rest = structure.supports.filter((support) => !told.has(support));
    return [...found, ...rest.map((support): Finding => ({ support, verdict: "holds", message: `${support.name}: nothing it says contradicts the rest.`, at: support }))];
  },
};
