/** How a wall runs under a line of posts, and how far its ends are from each of them. */
export interface WallRun {
  /** Axis of the plan the wall runs along. */
  readonly axis: "x" | "y";
  /** From one post to the wall's two ends, toward smaller and larger coordinates, m; negative where the post stands beyond the end. */
  readonly before: number;
  readonly after: number;
}

/**
 * A wall `length` m long, centered under the posts at `places`. A single post gives no direction: the wall then runs along x. Gives
 * undefined where the posts stand in a line askew to the plan axes.
 */
export function wallRun(places: readonly { readonly x: number; readonly y: number }[], place: number, length: number): WallRun | undefined {
  const first = places[0];
  const last = places[places.length - 1];
  const dx = last.x - first.x;
  const dy = last.y - first.y;
  const long = Math.max(Math.abs(dx), Math.abs(dy));
  if (Math.min(Math.abs(dx), Math.abs(dy)) > 1e-6 * long) return undefined;
  const axis = Math.abs(dy) > Math.abs(dx) ? "y" : "x";
  const middle = (first[axis] + last[axis]) / 2;
  const along = (places[place] ?? first)[axis] - middle;
  return { axis, before: length / 2 + along, after: length / 2 - along };
}
