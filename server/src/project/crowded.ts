/** Piers that stand so near to each other that they act as a group in the ground. */
import type { Support } from "./model.js";

/** Widths, center to center, below which piers act as a group (IBC 2021 1810.2.5, from memory). */
const apart = 3;

interface Pier {
  readonly support: Support;
  /** Number in its line. */
  readonly place: number;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

/** Piers whose place in plan is stated, with their diameter or side, from west to east. */
function piersOf(supports: readonly Support[]): readonly Pier[] {
  return supports
    .flatMap((support): Pier[] => {
      const fields = support.foundation?.fields;
      const column = support.column?.fields;
      const size = fields?.diameter?.value ?? fields?.width?.value;
      if (fields?.kind?.value !== "pier" || size === undefined || !(column?.at ?? (column?.from && column.to))) return [];
      return support.places.map(({ x, y }, place) => ({ support, place, x, y, size }));
    })
    .sort((a, b) => a.x - b.x);
}

/** Distance from each pier of a support to the nearest other pier, m, where it is less than three widths of the wider one. */
function nearOnes(supports: readonly Support[]): ReadonlyMap<Support, readonly (number | undefined)[]> {
  const piers = piersOf(supports);
  const reach = apart * Math.max(0, ...piers.map(({ size }) => size));
  const found = new Map<Support, (number | undefined)[]>();
  const meet = ({ support, place }: Pier, distance: number) => {
    let near = found.get(support);
    if (!near) found.set(support, (near = support.places.map(() => undefined)));
    near[place] = Math.min(near[place] ?? distance, distance);
  };
  for (const [i, a] of piers.entries()) {
    for (let next = i + 1; next < piers.length && piers[next].x - a.x < reach; next += 1) {
      const b = piers[next];
      const distance = Math.hypot(b.x - a.x, b.y - a.y);
      if (distance >= apart * Math.max(a.size, b.size)) continue;
      meet(a, distance);
      meet(b, distance);
    }
  }
  return found;
}

const isSame = (a: Support["crowded"], b: Support["crowded"]): boolean => a === b || (a !== undefined && b !== undefined && a.length === b.length && a.every((one, i) => one === b[i]));

/** The supports, those whose piers stand in a group with their distances; the same objects where nothing is new. */
export function withCrowds(supports: readonly Support[]): readonly Support[] {
  const near = nearOnes(supports);
  return supports.map((support) => {
    const crowded = near.get(support);
    if (isSame(crowded, support.crowded)) return support;
    const { crowded: _before, ...alone } = support;
    return crowded ? { ...alone, crowded } : alone;
  });
}
