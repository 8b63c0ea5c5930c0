/**
 * Something dug or built beside the foundation within the line that falls 1 in 1 from the edge of its underside: the soil below it runs out into the
 * trench, it presses on the wall of the pool, or its own hole undermines the footing next to it.
 *
 * The line of 1 in 1 is common practice, no source; soft clay and loose sand ask for a flatter one. That a pier leans on soil which a trench has
 * taken away: geometry.
 */
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Found, type Judgment, type ShowAs } from "./judge.js";

const lower = { kind: "distance", meaning: "depth of the lower of the two undersides" } as const;
const upper = { kind: "distance", meaning: "depth of the upper of the two undersides" } as const;

export const lineReach = formula({
  id: "site.line-reach",
  text: "a_n = max(0, z_l - z_u)",
  source: "a line of 1 in 1 from the edge of the underside; common practice, no source",
  symbols: { a_n: { kind: "distance", meaning: "level distance needed between the two" }, z_l: lower, z_u: upper },
});

export const depthAlongLine = formula({
  id: "site.depth-along-line",
  text: "z_m = z_l - a",
  source: "a line of 1 in 1 from the edge of the underside; common practice, no source",
  symbols: { z_m: { kind: "distance", meaning: "depth of the upper underside from which the line clears" }, z_l: lower, a: { kind: "distance", meaning: "level distance between the two", field: "foundations.*.neighbors.*.distance" } },
});

export const depthAllowed = formula({
  id: "site.depth-allowed",
  text: "z_m = z_u + a",
  source: "a line of 1 in 1 from the edge of the underside; common practice, no source",
  symbols: { z_m: { kind: "distance", meaning: "largest depth that does not undermine the neighbor" }, z_u: upper, a: { kind: "distance", meaning: "level distance between the two", field: "foundations.*.neighbors.*.distance" } },
});

type Kind = "pool" | "trench" | "basement" | "retaining wall" | "footing";

/** What the foundation does to a neighbor whose underside is lower. */
const harm: Readonly<Record<Kind, string>> = {
  pool: "it presses on the shell of the pool, and the soil below it runs out when the pool is dug or emptied",
  trench: "the soil below it runs out into the trench",
  basement: "it presses on the wall of the basement",
  "retaining wall": "it presses on the wall",
  footing: "it presses on the footing",
};

const hollow: readonly Kind[] = ["pool", "trench", "basement"];
const undermined: readonly Kind[] = ["pool", "basement", "retaining wall", "footing"];

interface Beside {
  readonly name: string;
  readonly kind: Kind;
  readonly a: number;
  readonly z: number;
  readonly at: Found["at"];
}

function besideLine({ name, kind, a, z, at }: Beside, d: number, show: ShowAs): Found | undefined {
  const shown = (value: number) => show(value, "distance");
  const needed = lineReach.value({ z_l: z, z_u: d });
  if (isBelow(a, needed))
    return { message: `${name}: ${shown(a)} away and ${shown(z)} deep, underside at ${shown(d)}; ${shown(needed)} needed (a line of 1 in 1): ${harm[kind]}. Move one of them, or go down to ${shown(depthAlongLine.value({ z_l: z, a }))}.`, at };
  const undermines = lineReach.value({ z_l: d, z_u: z });
  if (undermined.includes(kind) && isBelow(a, undermines))
    return { message: `${name}: ${shown(a)} away and ${shown(z)} deep; the hole goes to ${shown(d)} and undermines it, ${shown(undermines)} needed (a line of 1 in 1). Move one of them, or stop at ${shown(depthAllowed.value({ z_u: z, a }))} or less.`, at };
  return undefined;
}

/** The soil a pier leans on is gone where a trench stands nearer than the pier is deep, down to the depth of the trench. */
function leaningFound({ name, kind, a, z, at }: Beside, fields: Foundation, d: number, show: ShowAs): Found | undefined {
  if (fields.kind?.value !== "pier" || !hollow.includes(kind) || !isBelow(a, d)) return undefined;
  const ignored = fields["ignored depth"]?.value ?? 0;
  if (!isAbove(z, ignored)) return undefined;
  const shown = (value: number) => show(value, "distance");
  return { message: `${name}: ${shown(a)} away, and the pier is ${shown(d)} deep: the soil it leans on is missing there down to ${shown(z)}, and ${shown(ignored)} of it is left out. Leave out ${shown(z)} (ignored depth), or move them ${shown(d)} apart.`, at };
}

function judgeNeighbors(support: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const stated = [...(fields.neighbors?.value ?? new Map())];
  const air = support.site.air;
  const over: Found[] = [];
  const unchecked: Found[] = [];
  if (air?.value === "pool" && !stated.some(([, { value }]) => value.kind?.value === "pool"))
    unchecked.push({ message: "The air is that of a pool; how far from it the foundation stands, and how deep the pool is, is not stated (neighbors).", at: air });
  else if (stated.length === 0) return undefined;
  const depth = fields.depth;
  if (!depth) unchecked.push({ message: "The depth of the underside is needed to look at what is beside it.", at: fields.neighbors });
  for (const [name, neighbor] of stated) {
    const { kind, distance, depth: deep } = neighbor.value;
    if (!kind || !distance || !deep) {
      unchecked.push({ message: `${name}: what it is, its distance and its depth are needed.`, at: neighbor });
      continue;
    }
    if (!depth) continue;
    const beside: Beside = { name, kind: kind.value, a: distance.value, z: deep.value, at: distance };
    const found = besideLine(beside, depth.value, show);
    const leaning = leaningFound(beside, fields, depth.value, show);
    if (found) over.push(found);
    if (leaning) over.push(leaning);
  }
  return { over, unchecked, holds: { message: `${stated.map(([name]) => name).join(", ")}: outside the line of 1 in 1 from the underside.`, at: fields.neighbors } };
}

export const neighbors: RuleDecl = {
  id: "site.neighbors",
  title: "Pools, trenches, walls and footings beside it",
  link: "site",
  clause: "a line of 1 in 1; common practice, no source",
  fails: "The foundation loses the soil below or beside it, or presses on a wall that was not made for it.",
  seen: "A pier that leans into a new sewer trench; a cracked pool wall below a pavilion post.",
  range: "What is stated beside a foundation, by a line of 1 in 1 from its underside; where nothing is stated and the air is not that of a pool, nothing is asked. Soft clay, loose sand and water in the soil ask for a flatter line. Slopes have a rule of their own.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeNeighbors),
};
