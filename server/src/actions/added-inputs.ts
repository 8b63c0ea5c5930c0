/** Reads the loads somebody adds to those of the roof. */
import type { Added, Sourced } from "../project/model.js";
import type { AddedLoad } from "./added.js";
import type { PlacedPost } from "./roof-inputs.js";
import type { Wanted } from "./wanted.js";

const types: Readonly<Record<string, AddedLoad["type"]>> = { dead: "D", live: "L", "roof live": "Lr", snow: "S", rain: "R", wind: "W", earthquake: "E" };

type Entries = ReadonlyMap<string, Sourced<Added>>;

const numbersOf = (fields: Added, posts: readonly PlacedPost[]): readonly number[] | undefined => {
  const line = fields.column?.value;
  if (line === undefined) return undefined;
  const own = [...posts.keys()].filter((at) => posts[at].support === `columns.${line}`);
  const number = fields.number?.value;
  return number === undefined ? own : own.slice(number - 1, number);
};

const zero = (field: Sourced<number> | undefined): number => field?.value ?? 0;

/** The added loads, with what they lack noted. */
export const readAdded = (entries: Entries | undefined, posts: readonly PlacedPost[], wanted: Wanted): readonly AddedLoad[] =>
  [...(entries ?? [])].map(([name, { value: fields }]): AddedLoad => {
    const type = wanted.need(fields.type, `the type of the load ${name}`);
    const at = numbersOf(fields, posts);
    const forces = [fields.down, fields.up, fields["push x"], fields["push y"], fields.pressure];
    if (forces.every((force) => force === undefined)) wanted.missing.push(`a force or a pressure of the load ${name}`);
    return {
      name,
      type: types[type] ?? "D",
      ...(at ? { posts: at } : {}),
      ...(fields.place ? { place: fields.place.value } : {}),
      down: zero(fields.down),
      up: zero(fields.up),
      pushX: zero(fields["push x"]),
      pushY: zero(fields["push y"]),
      pressure: zero(fields.pressure),
      ...(fields.from ? { from: fields.from.value } : {}),
    };
  });

/** What is wrong with where an added load acts, in words. */
export function addedConflict(entries: Entries | undefined, posts: readonly PlacedPost[]): string | undefined {
  for (const [name, { value: fields }] of entries ?? []) {
    const line = fields.column?.value;
    if (line === undefined) {
      if (fields.number) return `the load ${name} names a column's number and no line: state its \`column\``;
      continue;
    }
    const count = posts.filter(({ support }) => support === `columns.${line}`).length;
    if (count === 0) return `the load ${name} acts at ${line}, which is not among the columns under the roof: add it to the reactions stated there`;
    if (fields.number && fields.number.value > count) return `the load ${name} acts at column ${fields.number.value} of ${line}, which has ${count}`;
    if (fields.place || fields.pressure) return `the load ${name} acts at ${line}, so that it has no place and no pressure on the roof: state one or the other`;
  }
  return undefined;
}
