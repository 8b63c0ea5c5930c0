/** A base on a square pier, made of plain values, for the tests of plate and rods. */
import { findSection } from "../../../server/src/catalog/sections.js";
import { foot, inch, psi, supportOf } from "../given.js";

export interface Given {
  readonly section?: string;
  /** Plate, in. */
  readonly plate?: readonly [number, number, number];
  readonly plateGrade?: string;
  /** Square pier, in; `diameter` in its place where round. */
  readonly pier?: number;
  readonly diameter?: number;
  readonly foundation?: Record<string, unknown>;
  readonly fc?: number;
  readonly count?: number;
  readonly rod?: number;
  readonly grade?: string;
  /** Spacings, in. */
  readonly spacing?: readonly [number | undefined, number | undefined];
  readonly embedment?: number;
  readonly base?: Record<string, unknown>;
  readonly anchors?: Record<string, unknown>;
  readonly site?: Record<string, unknown>;
  readonly column?: Record<string, unknown>;
  readonly places?: readonly { x: number; y: number }[];
}

export function supportWith(given: Given = {}) {
  const { plate = [14, 14, 1], spacing = [10, 10], pier = 60 } = given;
  const section = findSection(given.section ?? "HSS6x6x3/8");
  if ("problem" in section) throw new Error(section.problem);
  const size = (value: number | undefined) => (value === undefined ? undefined : value * inch);
  return supportOf({
    places: given.places,
    site: { "seismic design category": "B", ...given.site },
    column: { section, grade: "A500 Gr C", "top of column": "pinned", height: 10 * foot, ...given.column },
    base: {
      plate: { width: plate[0] * inch, length: plate[1] * inch, thickness: plate[2] * inch, grade: given.plateGrade ?? "A36" },
      grout: 1.5 * inch,
      "cracked concrete": true,
      "washers welded": false,
      anchors: {
        count: given.count ?? 4,
        diameter: (given.rod ?? 1) * inch,
        grade: given.grade ?? "F1554 Gr 36",
        end: "headed",
        head: "heavy hex nut",
        embedment: (given.embedment ?? 12) * inch,
        "spacing x": size(spacing[0]),
        "spacing y": size(spacing[1]),
        ...given.anchors,
      },
      ...given.base,
    },
    foundation: {
      kind: "pier",
      concrete: (given.fc ?? 4000) * psi,
      depth: 6 * foot,
      ...(given.diameter === undefined ? { width: pier * inch } : { diameter: given.diameter * inch }),
      ...given.foundation,
    },
  });
}
