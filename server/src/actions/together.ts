/** The forces of all columns that stand on one pad, combination by combination, about the middle of their line. */
import { forcesTogether, placesFromMiddle, sumOf } from "../mechanics/forces-together.js";
import type { Demand } from "./demand.js";

type Lists = readonly (readonly Demand[])[];
type Places = readonly { readonly x: number; readonly y: number }[];

interface Known {
  readonly lists: Lists;
  readonly places: Places;
  readonly merged: readonly Demand[];
}

/** The last answer for each first list, so that the same loads give the same objects. */
const known = new WeakMap<readonly Demand[], Known>();

/** One demand a combination, of the columns at `places` together; the first column's names of combinations lead. */
export function demandsTogether(lists: Lists, places: Places): readonly Demand[] {
  const first = lists[0];
  if (!first || lists.length < 2) return first ?? [];
  const kept = known.get(first);
  if (kept && kept.places === places && kept.lists.length === lists.length && kept.lists.every((list, i) => list === lists[i])) return kept.merged;
  const from = placesFromMiddle(places);
  const byLabel = lists.map((list) => new Map(list.map((demand) => [demand.label, demand])));
  const merged = first.map((demand): Demand => {
    const all = byLabel.map((of) => of.get(demand.label));
    const found = all.flatMap((one) => one ?? []);
    const parts = found.map(({ base }, i) => ({ ...from[i], base }));
    const beyond = found.find((one) => one.beyond !== undefined)?.beyond ?? (found.length < all.length ? `not every column on the pad has the combination ${demand.label}` : undefined);
    return { ...demand, base: forcesTogether(parts), dead: sumOf(found.map(({ dead }) => dead)), parts, beyond };
  });
  known.set(first, { lists, places, merged });
  return merged;
}
