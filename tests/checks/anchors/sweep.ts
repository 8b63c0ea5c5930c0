/** Ten thousand connections drawn at random, from one seed, as plain values for the tests of plate and rods. */
import type { Combination, Demand, Forces } from "../../../server/src/actions/demand.js";
import { readBar } from "../../../server/src/catalog/bars.js";
import type { Support } from "../../../server/src/project/model.js";
import { supportWith, type Given } from "../base/base.js";
import { foot, inch, kip, kipFoot, psi, sourced, strength } from "../given.js";

/** Numbers from 0 to 1 by a seed, the same on every machine. */
export function drawing(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A connection: choices that are made once, and sizes that may be moved a little. */
export interface Drawn {
  readonly choices: {
    readonly concrete: "square pier" | "round pier" | "wall" | "pad";
    readonly pattern: "one" | "row" | "four" | "six" | "eight" | "circle" | "anywhere";
    readonly count: number;
    readonly rod: number;
    readonly grade: string;
    readonly end: "headed" | "hooked" | "set in adhesive";
    readonly isWelded: boolean;
    readonly isCracked: boolean;
    readonly edgeBars: string;
    readonly helpers: "none" | "pier bars" | "hairpins round the rods" | "hairpins beside the rods";
    readonly standsFree: boolean;
    readonly friction: boolean;
    readonly lug: boolean;
    readonly category: string;
    readonly inEarthquake: "overstrength" | "overstrength included" | "stretch length";
    readonly isShaken: boolean;
    readonly isTwisted: boolean;
  };
  readonly sizes: Readonly<Record<SizeName, number>>;
}

export const sizeNames = ["pier", "depth", "plate", "thickness", "spacingX", "spacingY", "embedment", "fc", "hook", "grout", "up", "Vx", "Vy", "Mx", "My", "leg", "gap", "shaking", "overstrength", "Mz"] as const;
export const forceNames = ["up", "Vx", "Vy", "Mx", "My", "Mz"] as const;
export type SizeName = (typeof sizeNames)[number];

export function drawOne(next: () => number): Drawn {
  const among = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)];
  const between = (least: number, most: number): number => least + next() * (most - least);
  const pattern = among(["one", "row", "four", "four", "four", "six", "eight", "circle", "anywhere"] as const);
  const rod = among([0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5]);
  const spacingX = between(3, 16);
  const spacingY = between(3, 16);
  const category = among(["A", "B", "C", "D", "E", "F"]);
  return {
    choices: {
      concrete: among(["square pier", "square pier", "round pier", "wall", "pad"] as const),
      pattern,
      count: pattern === "circle" ? 3 + Math.floor(next() * 6) : pattern === "anywhere" ? 2 + Math.floor(next() * 4) : { one: 1, row: 2, four: 4, six: 6, eight: 8 }[pattern],
      rod,
      grade: among(["F1554 Gr 36", "F1554 Gr 55", "F1554 Gr 105"]),
      end: among(["headed", "headed", "headed", "hooked", "set in adhesive"] as const),
      isWelded: next() < 0.5,
      // Concrete that is not cracked is not for an earthquake (ACI 318-19 17.10.5.4).
      isCracked: next() < 0.6 || category > "B",
      edgeBars: among(["none", "none", "no. 4", "no. 4 in ties at 4 in"]),
      helpers: among(["none", "none", "pier bars", "hairpins round the rods", "hairpins beside the rods"] as const),
      standsFree: next() < 0.1,
      friction: next() < 0.2,
      lug: next() < 0.1,
      category,
      inEarthquake: among(["overstrength", "overstrength included", "stretch length"] as const),
      isShaken: next() < 0.7,
      // One rod cannot hold a twist.
      isTwisted: next() < 0.2 && pattern !== "one",
    },
    sizes: {
      pier: between(14, 60),
      depth: between(2, 8),
      plate: Math.max(spacingX, spacingY) + between(2.5, 8),
      thickness: between(0.5, 2),
      spacingX,
      spacingY,
      embedment: between(4, 30),
      fc: between(2500, 9000),
      hook: rod * between(3.1, 6),
      grout: between(0.5, 3),
      up: between(-60, 60),
      Vx: between(-15, 15),
      Vy: between(-15, 15),
      Mx: between(-40, 40),
      My: between(-40, 40),
      leg: between(3, 40),
      gap: between(0.2, 3),
      shaking: between(0.1, 1),
      overstrength: between(1, 3),
      Mz: between(-15, 15),
    },
  };
}

const bars = { count: 8, bar: readBar("no. 6") };
const ties = { bar: readBar("no. 3"), pitch: 3 * inch };

/** Places of rods that stand anywhere, fixed by their number alone and spread by the spacings. */
const anywhere = (count: number, { spacingX, spacingY }: Drawn["sizes"]) =>
  Array.from({ length: count }, (_, i) => sourced({ x: ((Math.sin(7 * i + count) * spacingX) / 2) * inch, y: ((Math.cos(5 * i + 2 * count) * spacingY) / 2) * inch }));

/** The same connection as values of a notebook. */
function givenOf({ choices, sizes }: Drawn): Given {
  const { concrete, pattern, count, helpers } = choices;
  const isRow = pattern === "row";
  const isPlaced = pattern === "circle" || pattern === "anywhere" || pattern === "one";
  const hairpins = {
    count: 4,
    bar: readBar("no. 4"),
    resists: "both ways",
    "around rods": helpers === "hairpins round the rods",
    "from rods": 1.5 * inch,
    leg: sizes.leg * inch,
    "leg ends": "straight",
    "below top": 2 * inch,
  };
  const foundation: Record<string, unknown> = {
    depth: sizes.depth * foot,
    cover: 2 * inch,
    "bar grade": "Gr 60",
    "bar tops": "straight",
    bars,
    spiral: ties,
    ...(helpers.startsWith("hairpins") ? { hairpins } : {}),
    ...(concrete === "wall" ? { kind: "wall on footing", thickness: sizes.pier * 0.6 * inch, height: sizes.depth * foot, length: 12 * foot } : {}),
    ...(concrete === "pad" ? { kind: "footing", width: 1.5 * sizes.pier * inch, length: 2 * sizes.pier * inch, thickness: sizes.depth * 0.6 * foot } : {}),
  };
  return {
    section: "HSS4x4x1/4",
    site: { "seismic design category": choices.category },
    plate: [sizes.plate, sizes.plate, sizes.thickness],
    pier: sizes.pier,
    ...(concrete === "round pier" ? { diameter: sizes.pier * 1.3 } : {}),
    foundation,
    fc: sizes.fc,
    count,
    rod: choices.rod,
    grade: choices.grade,
    spacing: isPlaced ? [undefined, undefined] : [sizes.spacingX, isRow ? undefined : sizes.spacingY],
    embedment: choices.end === "set in adhesive" ? Math.min(sizes.embedment, 19 * choices.rod) : sizes.embedment,
    anchors: {
      end: choices.end,
      "hook length": sizes.hook * inch,
      ...(pattern === "circle" ? { "bolt circle": Math.min(sizes.spacingX, sizes.spacingY) * inch } : {}),
      ...(choices.end === "set in adhesive" ? { adhesive: { "cracked bond": 600 * psi, "uncracked bond": 1200 * psi, category: 1, "sustained tension": 0.5 * kip } } : {}),
    },
    base: {
      grout: choices.standsFree ? 0 : sizes.grout * inch,
      "leveling nuts": choices.standsFree,
      "gap below nuts": sizes.gap * inch,
      "seismic anchors": choices.inEarthquake,
      "overstrength factor": sizes.overstrength,
      "washers welded": choices.isWelded,
      "cracked concrete": choices.isCracked,
      "edge bars": choices.edgeBars,
      friction: choices.friction,
      "anchor reinforcement": helpers === "pier bars" ? "pier bars" : "none",
      ...(choices.lug ? { "shear lug": { width: 3 * inch, depth: 4 * inch, thickness: 1 * inch, resists: "along x" } } : {}),
    },
  };
}

/** The same connection as a support. */
export function supportOf(drawn: Drawn): Support {
  const support = supportWith(givenOf(drawn));
  // Reactions given by hand, whose overstrength is stated at the base.
  (support.column!.fields as unknown as Record<string, unknown>).reactions = sourced(new Map());
  if (drawn.choices.pattern === "anywhere") (support.base!.fields.anchors!.value as unknown as Record<string, unknown>).places = sourced(anywhere(drawn.choices.count, drawn.sizes));
  return support;
}

/** What tries it: forces at its base, part of them by an earthquake in most, and a twist in some. */
export function demandOf({ choices, sizes }: Drawn): Demand<"strength"> {
  const base: Forces = { P: -sizes.up * kip, Vx: sizes.Vx * kip, Vy: sizes.Vy * kip, Mx: sizes.Mx * kipFoot, My: sizes.My * kipFoot, ...(choices.isTwisted && { Mz: sizes.Mz * kipFoot }) };
  const terms: Combination["terms"] = [{ factor: 0.9, type: "D" }, { factor: 1, type: choices.isShaken ? "E" : "W" }];
  const part = (force: number): number => force * sizes.shaking;
  return {
    ...strength(base),
    combination: { level: "strength", label: "drawn", terms, clause: "drawn" },
    ...(choices.isShaken && { earthquake: { P: part(base.P), Vx: part(base.Vx), Vy: part(base.Vy), Mx: part(base.Mx), My: part(base.My), ...(base.Mz !== undefined && { Mz: part(base.Mz) }) } }),
  };
}
