/** A wall with a post on it, in the trade's units, for the checks of its stem and of its joint. */
import { foot, inch, psi } from "../given.js";
import { pcf, psfPerFoot, standing } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

const bars = { 3: [0.375, 0.11], 4: [0.5, 0.2], 5: [0.625, 0.31], 6: [0.75, 0.44], 8: [1, 0.79] } as const;

/** A bar by its number. */
export const no = (number: keyof typeof bars) => ({ name: `no. ${number}`, diameter: bars[number][0] * inch, area: bars[number][1] * inch ** 2 });

export const spaced = (number: keyof typeof bars, spacing: number) => ({ bar: no(number), spacing: spacing * inch });

export const face = (vertical: Fields, horizontal: Fields = spaced(4, 12)) => ({ vertical, horizontal });

/** Soil to 45 psf a foot, on the north. */
export const fluid = { side: "north", method: "equivalent fluid", "unit weight": 120 * pcf, "equivalent fluid": 45 * psfPerFoot, surcharge: 0, drained: true };

export interface WallGiven {
  readonly more?: Fields;
  readonly base?: Fields | null;
  readonly site?: Fields;
  readonly places?: readonly { x: number; y: number }[];
  readonly concrete?: string;
}

/** 15 in thick and 4 ft high, a plate 10 in square and rods 12 in deep; bars no. 5 at 12 in at both faces, outermost. */
export const stemOf = ({ more = {}, base = {}, site = {}, places, concrete }: WallGiven = {}) => {
  const made = standing({
    places,
    site: { "seismic design category": "B", ...site },
    ground: { kind: "soil", class: "GP", "unit weight": 120 * pcf },
    column: base === null ? undefined : {},
    base: base === null ? undefined : { plate: { width: 10 * inch, length: 10 * inch, thickness: 0 }, grout: 0, anchors: { embedment: 12 * inch }, ...base },
    foundation: {
      kind: "wall on footing",
      concrete: 4000 * psi,
      "bar grade": "Gr 60",
      "bar tops": "hooked",
      cover: 3 * inch,
      "stem cover": 2 * inch,
      length: 40 * foot,
      thickness: 15 * inch,
      height: 4 * foot,
      depth: 1 * foot,
      retains: 0,
      "post spread": "45 degrees",
      footing: { width: 5 * foot, thickness: 1 * foot, "bottom bars": spaced(4, 9), "long bars": { bar: no(4), count: 8 } },
      "stem bars": { "fill face": face(spaced(5, 12)), "free face": face(spaced(5, 12)), "outer bars": "vertical" },
      ...more,
    },
  });
  const text = (value: string) => ({ value, path: "", span: made.span });
  return { ...made, codes: { ...made.codes, overturning: text("factored dead load"), ...(concrete ? { concrete: text(concrete) } : {}) } } as typeof made;
};
