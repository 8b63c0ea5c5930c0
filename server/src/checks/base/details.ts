/**
 * Details that come out wrong in the shop or on the site: a plate too thin to stay flat, a hole that the rod does not pass or that the edge of
 * the plate cuts, a washer that falls into its hole, a nut no wrench can turn beside the column.
 *
 * AISC Design Guide 1, 2nd ed., 2.2 and Table 2.3; edge distances of AISC 360-22 Table J3.4 (from memory).
 */
import { leastPlateEdge } from "../../catalog/rods.js";
import { placedSection, type ColumnSection } from "../../catalog/sections.js";
import { formula } from "../../formula/declare.js";
import { isBelow as isLess } from "../../mechanics/compare.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Base, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { readHardware, washerThicknessNeeded, washerWidthNeeded, type Hardware } from "./hardware.js";
import { judgeBases, type Found, type Show } from "./judge.js";
import { rodPlaces } from "./rod-places.js";

const holeSymbol = { kind: "length", meaning: "diameter of the hole", field: "bases.*.hole" } as const;
const place = (axis: "x" | "y") => ({ kind: "length", meaning: `place of the rod along ${axis}` }) as const;

export const leastPlateOfTubes = formula({
  id: "base.least-plate-of-tubes",
  text: "t_least = t_0",
  source: "AISC Design Guide 1, 2nd ed., 2.2: 1/2 in for posts and light HSS",
  symbols: { t_least: { kind: "length", meaning: "least thickness of the plate" } },
  constants: { t_0: "0.5 inch" },
});

export const leastPlateOfOthers = formula({
  id: "base.least-plate-of-others",
  text: "t_least = t_0",
  source: "AISC Design Guide 1, 2nd ed., 2.2: 3/4 in for other columns",
  symbols: { t_least: { kind: "length", meaning: "least thickness of the plate" } },
  constants: { t_0: "0.75 inch" },
});

export const rodToEdge = formula({
  id: "base.rod-to-edge",
  text: "a_e = min(B / 2 - abs(x), N / 2 - abs(y))",
  source: "geometry",
  symbols: {
    a_e: { kind: "length", meaning: "from the middle of the rod to the nearest edge of the plate" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
    x: place("x"),
    y: place("y"),
  },
});

export const edgeNeeded = formula({
  id: "base.edge-needed",
  text: "e_min = e_t + max(0, d_h - (d_a < d_1 ? d_a + c_1 : d_a + c_2)) / 2",
  source: "AISC 360-22 Table J3.4 (from memory) for a standard hole; the steel beyond a wider hole is kept the same",
  symbols: {
    e_min: { kind: "length", meaning: "least distance from the rod to the edge of the plate" },
    e_t: { kind: "length", meaning: "least edge distance of a standard hole" },
    d_h: holeSymbol,
    d_a: { kind: "length", meaning: "diameter of the rod", field: "bases.*.anchors.diameter" },
  },
  constants: { d_1: "1 inch", c_1: "0.0625 inch", c_2: "0.125 inch" },
});

export const radiusOf = formula({
  id: "base.radius-of",
  text: "r = d / 2",
  source: "geometry",
  symbols: { r: { kind: "length", meaning: "half of it" }, d: { kind: "length", meaning: "diameter or width" } },
});

export const cornerRadius = formula({
  id: "base.corner-radius",
  text: "r_c = 2 * t",
  source: "AISC Shapes Database v15.0: outer corner radius of a tube twice its wall",
  symbols: { r_c: { kind: "length", meaning: "outer corner radius of the tube" }, t: { kind: "length", meaning: "wall of the tube", field: "columns.*.section" } },
});

export const rodToColumn = formula({
  id: "base.rod-to-column",
  text: "d_c = sqrt(max(0, abs(x) - (h_x - r_c))^2 + max(0, abs(y) - (h_y - r_c))^2) - r_c",
  source: "geometry: distance to a rectangle with rounded corners",
  symbols: {
    d_c: { kind: "distance", meaning: "from the middle of the rod to the face of the column" },
    x: place("x"),
    y: place("y"),
    h_x: { kind: "length", meaning: "half the column along x" },
    h_y: { kind: "length", meaning: "half the column along y" },
    r_c: { kind: "length", meaning: "outer corner radius of the column" },
  },
});

export const rodInWide = formula({
  id: "base.rod-between-flanges",
  text: "d_c = min(abs(u) - t_w / 2, d / 2 - t_f - abs(v))",
  source: "geometry: a rod beside the web, between the flanges",
  symbols: {
    d_c: { kind: "length", meaning: "from the middle of the rod to the nearest face of web or flange" },
    u: { kind: "length", meaning: "place of the rod across the web" },
    v: { kind: "length", meaning: "place of the rod along the web" },
    t_w: { kind: "length", meaning: "web", field: "columns.*.section" },
    d: { kind: "length", meaning: "depth of the W", field: "columns.*.section" },
    t_f: { kind: "length", meaning: "flange thickness", field: "columns.*.section" },
  },
});

export const roomNeeded = formula({
  id: "base.room-needed",
  text: "d_min = b_w / 2 + a_w",
  source: "half the washer and half an inch for the weld and a wrench; common practice, no source",
  symbols: { d_min: { kind: "length", meaning: "from the middle of the rod to the face of the column, at least" }, b_w: { kind: "length", meaning: "width of the washer", field: "bases.*.washer.width" } },
  constants: { a_w: "0.5 inch" },
});

export const rodToRod = formula({
  id: "base.rod-to-rod",
  text: "s = sqrt((x_1 - x_2)^2 + (y_1 - y_2)^2)",
  source: "geometry",
  symbols: {
    s: { kind: "distance", meaning: "from rod to rod" },
    x_1: place("x"),
    y_1: place("y"),
    x_2: { kind: "length", meaning: "place of the other rod along x" },
    y_2: { kind: "length", meaning: "place of the other rod along y" },
  },
});


function* thicknessFound(support: Support, base: Base, show: Show): Generator<Found> {
  const t = base.plate?.value.thickness;
  if (!t) return;
  const least = support.column?.fields.section?.value.shape === "W" ? leastPlateOfOthers.value({}) : leastPlateOfTubes.value({});
  if (isLess(t.value, least)) yield { message: `The plate is ${show(t.value)} thick; ${show(least)} is the least in use. Take a thicker plate.`, at: t };
}

function* holeFound(base: Base, { hole, row, isHoleStated }: Hardware, d_a: number, show: Show): Generator<Found> {
  if (!isHoleStated) return;
  if (!isLess(d_a, hole)) yield { message: `The hole is ${show(hole)} and the rod ${show(d_a)}: the plate does not go over its rods. Take a hole of ${show(row?.hole ?? washerWidthNeeded.value({ d_h: d_a }))}.`, at: base.hole };
  const largest = row?.laterHole ?? row?.hole;
  if (largest !== undefined && isLess(largest, hole)) yield { message: `The hole is ${show(hole)}; ${show(largest)} is the largest in use for a rod of ${show(d_a)}. Take a smaller hole.`, at: base.hole };
}

function* washerFound(base: Base, hardware: Hardware, d_a: number, show: Show): Generator<Found> {
  const { hole, row, washerWidth, washerThickness, isWasherStated } = hardware;
  if (!isWasherStated) return;
  const width = row?.washer && !isLess(row.hole, hole) ? row.washer.width : washerWidthNeeded.value({ d_h: hole });
  const thickness = row?.washer?.thickness ?? washerThicknessNeeded.value({ d_a });
  if (isLess(washerWidth, width)) yield { message: `The washer is ${show(washerWidth)} wide; ${show(width)} is needed over a hole of ${show(hole)}.`, at: base.washer };
  if (isLess(washerThickness, thickness)) yield { message: `The washer is ${show(washerThickness)} thick; ${show(thickness)} is needed over a hole of ${show(hole)}.`, at: base.washer };
}

function* edgesFound(base: Base, rods: readonly Point[], hardware: Hardware, d_a: number, show: Show): Generator<Found> {
  const B = base.plate?.value.width?.value;
  const N = base.plate?.value.length?.value;
  if (B === undefined || N === undefined) return;
  const a_e = Math.min(...rods.map(({ x, y }) => rodToEdge.value({ B, N, x, y })));
  const at = base.plate;
  const { hole, washerWidth } = hardware;
  const needed = edgeNeeded.value({ e_t: leastPlateEdge(d_a), d_h: hole, d_a });
  if (isLess(a_e, radiusOf.value({ d: hole }))) yield { message: `A rod stands ${show(a_e)} from the plate's edge, and its hole of ${show(hole)} is cut by that edge. Widen the plate or bring the rods in.`, at };
  else if (isLess(a_e, needed)) yield { message: `A rod stands ${show(a_e)} from the plate's edge; ${show(needed)} is the least. Widen the plate or bring the rods in.`, at };
  else if (isLess(a_e, radiusOf.value({ d: washerWidth }))) yield { message: `A washer of ${show(washerWidth)} reaches past the plate's edge, ${show(a_e)} from its rod. Widen the plate or bring the rods in.`, at };
}

function* roomFound(base: Base, support: Support, rods: readonly Point[], { washerWidth }: Hardware, show: Show): Generator<Found> {
  const nearest = Math.min(...rods.flatMap((a, i) => rods.filter((_, j) => j > i).map((b) => rodToRod.value({ x_1: a.x, y_1: a.y, x_2: b.x, y_2: b.y }))));
  if (isLess(nearest, washerWidth)) yield { message: `Rods stand ${show(nearest)} apart, and their washers are ${show(washerWidth)} wide. Set them farther apart.`, at: base.anchors };
  const section: ColumnSection | undefined = support.column?.fields.section?.value;
  if (!section) return;
  const deep = support.column?.fields["deep side"]?.value;
  const { alongX, alongY } = placedSection(section, deep ?? "along x");
  const h_x = radiusOf.value({ d: alongX });
  const h_y = radiusOf.value({ d: alongY });
  const r_c = section.shape === "round" ? h_x : section.shape === "W" ? 0 : cornerRadius.value({ t: section.wall });
  const isBetween = ({ x, y }: Point): boolean => section.shape === "W" && Math.abs(x) < h_x && Math.abs(y) < h_y;
  const between = ({ x, y }: Point): number => rodInWide.value({ ...(deep === "along y" ? { u: x, v: y } : { u: y, v: x }), t_w: section.wall, d: section.depth, t_f: section.flange });
  const d_c = Math.min(...rods.map((rod) => (isBetween(rod) ? between(rod) : rodToColumn.value({ ...rod, h_x, h_y, r_c }))));
  const needed = roomNeeded.value({ b_w: washerWidth });
  if (d_c <= 0) yield { message: "A rod stands under the column itself: its nut cannot be set. Move the rods out.", at: base.anchors };
  else if (isLess(d_c, needed)) yield { message: `A rod stands ${show(d_c)} from the face of the column; ${show(needed)} is needed for half its washer, the weld and a wrench. Move the rods out.`, at: base.anchors };
}

function patternOf(base: Base): readonly Point[] {
  const found = rodPlaces(base.anchors?.value) ?? [];
  return "problem" in found ? [] : found;
}

export const details: RuleDecl = {
  id: "base.details",
  title: "Details of the base plate",
  link: "base",
  clause: "AISC Design Guide 1, 2nd ed., 2.2 and Table 2.3; AISC 360-22 Table J3.4 (from memory)",
  fails: "The plate does not go over its rods, its edge cuts a hole, a washer falls into its hole, or a nut cannot be turned.",
  seen: "Holes burned wider on the site, washers dished into them, nuts left loose on the side toward the column.",
  range:
    "Thickness, hole, washer, distance from the rod to the edge of the plate, to the next rod and to the column. Where hole and washer are not given, those of the trade's table for the rod are taken, and named. Between the flanges of a W the room to web and flange counts.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (support, base, show) => {
      const over: Found[] = [...thicknessFound(support, base, show)];
      const d_a = base.anchors?.value.diameter?.value;
      const hardware = readHardware(base);
      const rods = patternOf(base);
      if (!hardware || d_a === undefined || rods.length === 0 || !base.plate?.value.thickness) {
        return { over, unchecked: [{ message: "The plate's thickness, the size of the rods and their pattern are needed to look at its details.", at: base.anchors ?? base.plate }], holds: { message: "" } };
      }
      if (!Number.isFinite(hardware.hole)) {
        return { over, unchecked: [{ message: `The tables have no hole for a rod of ${show(d_a)}; state the hole in the plate (hole) and the washer.`, at: base.anchors }], holds: { message: "" } };
      }
      over.push(...holeFound(base, hardware, d_a, show), ...washerFound(base, hardware, d_a, show), ...edgesFound(base, rods, hardware, d_a, show), ...roomFound(base, support, rods, hardware, show));
      const taken = hardware.isHoleStated && hardware.isWasherStated ? "" : ` (by ${hardware.row?.source ?? "the rule of thumb for washers"}${hardware.row?.washer ? "" : ", washer an inch wider than its hole and a third of the rod thick"})`;
      return {
        over,
        unchecked: [],
        holds: { message: `Plate ${show(base.plate.value.thickness.value)}, holes ${show(hardware.hole)}, washers ${show(hardware.washerWidth)} by ${show(hardware.washerThickness)}${taken}: edges and room suffice.`, at: base.plate },
      };
    }),
};
