/** The nearest other point of each point in plan, by a sweep along x. Lengths in and out in one unit. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

export interface Neighbor {
  /** Number of the nearest other point. */
  readonly index: number;
  readonly distance: number;
}

/** For each point its nearest other; undefined for a point that stands alone. */
export function nearestNeighbors(points: readonly PlanPoint[]): readonly (Neighbor | undefined)[] {
  const order = points.map((_, i) => i).sort((a, b) => points[a].x - points[b].x);
  const nearest: (Neighbor | undefined)[] = points.map(() => undefined);
  const meet = (a: number, b: number, distance: number) => {
    if (distance < (nearest[a]?.distance ?? Number.POSITIVE_INFINITY)) nearest[a] = { index: b, distance };
  };
  for (const [rank, a] of order.entries()) {
    for (let next = rank + 1; next < order.length; next += 1) {
      const b = order[next];
      const dx = points[b].x - points[a].x;
      // Later points are farther along x than anything already found for this one; they still look back at it themselves.
      if (dx > (nearest[a]?.distance ?? Number.POSITIVE_INFINITY) && next > rank + 1) break;
      const distance = Math.hypot(dx, points[b].y - points[a].y);
      meet(a, b, distance);
      meet(b, a, distance);
    }
    for (let back = rank - 1; back >= 0; back -= 1) {
      const b = order[back];
      const dx = points[a].x - points[b].x;
      if (dx > (nearest[a]?.distance ?? Number.POSITIVE_INFINITY)) break;
      meet(a, b, Math.hypot(dx, points[b].y - points[a].y));
    }
  }
  return nearest;
}

/** Number of the set of points that comes nearest to a set; undefined where there is none. */
export function leastBetween(points: readonly PlanPoint[], sets: readonly (readonly PlanPoint[])[]): number | undefined {
  let nearest: Neighbor | undefined;
  sets.forEach((set, index) => {
    for (const a of points)
      for (const b of set) {
        const distance = Math.hypot(b.x - a.x, b.y - a.y);
        if (!nearest || distance < nearest.distance) nearest = { index, distance };
      }
  });
  return nearest?.index;
}
