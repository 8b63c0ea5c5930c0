import { isAbove } from "./compare.js";

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Columns farther off a direction than 10 degrees do not stand along it. */
const mostOff = (10 * Math.PI) / 180;

/** Whether the line through two places runs along a plan axis. */
export function runsAlong(from: Place, to: Place, axis: "x" | "y"): boolean {
  const east = Math.abs(to.x - from.x);
  const north = Math.abs(to.y - from.y);
  return !isAbove(axis === "x" ? Math.atan2(north, east) : Math.atan2(east, north), mostOff);
}
