/** A footing made by hand: 5 ft square, 18 in thick, 4 ft deep, with a 16 in pedestal, in sand. */
import type { Support } from "../../../server/src/project/model.js";
import { foot, inch, psi, sourced } from "../given.js";
import { pcf, standing } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

export const bar = (number: 4 | 5 | 6 | 8) => ({ name: `no. ${number}`, diameter: (number / 8) * inch, area: { 4: 0.2, 5: 0.31, 6: 0.44, 8: 0.79 }[number] * inch ** 2 });
export const mats = (number: 4 | 5 | 6 | 8, spacing: number) => ({ "along x": { bar: bar(number), spacing: spacing * inch }, "along y": { bar: bar(number), spacing: spacing * inch } });

export interface Given {
  readonly foundation?: Fields;
  readonly ground?: Fields;
  readonly site?: Fields;
  readonly base?: Fields;
  readonly column?: Fields;
  readonly overturning?: string;
  readonly concrete?: string;
  readonly places?: readonly { x: number; y: number }[];
}

export function pad({ foundation, ground, site, base, column, overturning = "factored dead load", concrete = "ACI 318-19", places }: Given = {}): Support {
  const made = standing({
    foundation: {
      kind: "footing",
      width: 5 * foot,
      length: 5 * foot,
      thickness: 18 * inch,
      depth: 4 * foot,
      "above grade": 6 * inch,
      pedestal: { width: 16 * inch, length: 16 * inch },
      bars: { count: 8, bar: bar(5) },
      concrete: 4000 * psi,
      "bottom bars": mats(5, 9),
      "hooked bars": false,
      "bar grade": "Gr 60",
      cover: 3 * inch,
      backfill: "compacted and tested",
      "held down by": "weight",
      ...foundation,
    },
    ground: { kind: "soil", class: "SM", "unit weight": 110 * pcf, ...ground },
    site: { "frost depth": 30 * inch, ...site },
    base,
    column,
    places,
  });
  return { ...made, codes: { ...made.codes, overturning: sourced(overturning), concrete: sourced(concrete) } } as unknown as Support;
}
