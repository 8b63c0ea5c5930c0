/** The concrete, the plate and the rods seen from above: what every plan of a base has in common. */
import type { BaseInputs } from "../checks/base/geometry.js";
import { overlap, type Point, type Rectangle } from "../mechanics/rectangles.js";
import { around, fitted, type Frame, type Scale } from "./scale.js";
import { circle, disk, line, rectangle, words } from "./svg.js";

export const plateOf = ({ B, N }: Pick<BaseInputs, "B" | "N">): Rectangle => ({ west: -B / 2, east: B / 2, south: -N / 2, north: N / 2 });

const grown = ({ west, east, south, north }: Rectangle, by: number): Rectangle => ({ west: west - by, east: east + by, south: south - by, north: north + by });

/** Of a long wall the part about the plate, as far as what is drawn there reaches and a little more; of a pier all of it. */
export function partShown(base: BaseInputs, drawn: readonly Rectangle[]): Rectangle {
  const { member } = base;
  const round = member.shape === "round" ? member.diameter / 2 : 0;
  const whole = around([{ x: -round, y: -round }, { x: round, y: round }], [member.edges]);
  if (round > 0) return whole;
  const needed = around([], [plateOf(base), ...drawn]);
  return overlap(whole, grown(needed, 0.35 * Math.max(needed.east - needed.west, needed.north - needed.south)));
}

/** Edges of the concrete; an edge beyond the part shown is left open. */
function edges({ member }: BaseInputs, shown: Rectangle, scale: Scale): string {
  const { x, y, of } = scale;
  const { west, east, south, north } = member.edges;
  if (member.shape === "round") return circle(x(0), y(0), of(member.diameter / 2), "cut") + rectangle(x(west), y(north), of(east - west), of(north - south), "thin", "6 3");
  const [w, e, s, n] = [Math.max(west, shown.west), Math.min(east, shown.east), Math.max(south, shown.south), Math.min(north, shown.north)];
  return [
    west >= shown.west ? line(x(w), y(s), x(w), y(n), "cut") : "",
    east <= shown.east ? line(x(e), y(s), x(e), y(n), "cut") : "",
    south >= shown.south ? line(x(w), y(s), x(e), y(s), "cut") : "",
    north <= shown.north ? line(x(w), y(n), x(e), y(n), "cut") : "",
  ].join("");
}

export interface PlanOfBase {
  readonly scale: Scale;
  readonly shown: Rectangle;
  readonly strokes: readonly string[];
}

/** Plan to scale of the concrete with the plate on it; `drawn` is what else must find room. */
export function planOfBase(base: BaseInputs, drawn: readonly Rectangle[], frame: Frame): PlanOfBase {
  const shown = partShown(base, drawn);
  const scale = fitted(shown, frame);
  const plate = plateOf(base);
  return { scale, shown, strokes: [edges(base, shown, scale), rectangle(scale.x(plate.west), scale.y(plate.north), scale.of(base.B), scale.of(base.N), "seen")] };
}

/** Rods with their numbers: solid where they pull, open where not. */
export function rodMarks(rods: readonly Point[], d: number, { x, y, of }: Scale, isPulled: (rod: number) => boolean): readonly string[] {
  const radius = Math.max(2.5, of(d / 2));
  return rods.map((rod, i) => {
    const [px, py] = [x(rod.x), y(rod.y)];
    return (isPulled(i) ? disk(px, py, radius) : circle(px, py, radius)) + words(px + (rod.x < 0 ? -1 : 1) * (radius + 3), py - radius - 1, String(i + 1), rod.x < 0 ? "end" : "start");
  });
}

/** The arrow that points north, with its letter. */
export const northMark = (px: number, py: number): string => line(px, py, px, py - 26, "thin") + line(px, py - 26, px - 4, py - 17, "thin") + line(px, py - 26, px + 4, py - 17, "thin") + words(px, py - 30, "N", "middle", 10);

/** A list in words beside a plan. */
export const listed = (px: number, py: number, rows: readonly string[]): readonly string[] => rows.map((row, i) => words(px, py + 15 * i, row));
