/** Of two demands against their capacities the one nearer to failing, or farther beyond it. */
export interface Pair {
  readonly demand: number;
  readonly capacity: number;
}

/** By the ratio of demand to capacity; where neither has a capacity, by the demand. A demand of zero never is the worse. */
export function worseOf<T extends Pair>(a: T, b: T): T {
  if (!(b.demand > 0)) return a;
  if (!(a.demand > 0)) return b;
  const left = a.demand * Math.max(b.capacity, 0);
  const right = b.demand * Math.max(a.capacity, 0);
  if (left === right) return a.demand >= b.demand ? a : b;
  return left > right ? a : b;
}
