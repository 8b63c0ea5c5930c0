/** Area and bending properties of sections from their geometry. Lengths m. */

/** Bending about one of the two axes of symmetry. */
export interface AxisProperties {
  readonly inertia: number;
  readonly sectionModulus: number;
  readonly plasticModulus: number;
  readonly gyration: number;
}

/** A closed figure with two axes of symmetry; `depth` stands across the strong axis, `width` across the weak one. */
interface Figure {
  readonly area: number;
  readonly strong: Moments;
  readonly weak: Moments;
}

interface Moments {
  readonly inertia: number;
  /** First moment of one half about the middle. */
  readonly halfMoment: number;
}

export interface SectionProperties {
  readonly area: number;
  /** About the axis across the depth. */
  readonly strong: AxisProperties;
  /** About the axis across the width. */
  readonly weak: AxisProperties;
}

/** Four corner spandrels of radius r whose square corners lie `half` off the axis: what a rounded corner takes away, or a fillet adds. */
function spandrels(half: number, r: number): { readonly area: number } & Moments {
  const quarter = (Math.PI / 4) * r ** 2;
  const toQuarter = half - r + (4 * r) / (3 * Math.PI);
  const toCorner = half - r / 2;
  const cornerInertia = r ** 4 / 12 + r ** 2 * toCorner ** 2;
  const quarterInertia = (Math.PI / 16 - 4 / (9 * Math.PI)) * r ** 4 + quarter * toQuarter ** 2;
  return { area: 4 * (r ** 2 - quarter), inertia: 4 * (cornerInertia - quarterInertia), halfMoment: 2 * (r ** 2 * toCorner - quarter * toQuarter) };
}

function roundedRectangle(depth: number, width: number, r: number): Figure {
  const about = (across: number, along: number): Moments => {
    const cut = spandrels(across / 2, r);
    return { inertia: (along * across ** 3) / 12 - cut.inertia, halfMoment: (along * across ** 2) / 8 - cut.halfMoment };
  };
  return { area: depth * width - spandrels(depth / 2, r).area, strong: about(depth, width), weak: about(width, depth) };
}

function disk(diameter: number): Figure {
  const moments: Moments = { inertia: (Math.PI / 64) * diameter ** 4, halfMoment: diameter ** 3 / 12 };
  return { area: (Math.PI / 4) * diameter ** 2, strong: moments, weak: moments };
}

const less = (a: Moments, b: Moments): Moments => ({ inertia: a.inertia - b.inertia, halfMoment: a.halfMoment - b.halfMoment });
const without = (outer: Figure, inner: Figure): Figure => ({ area: outer.area - inner.area, strong: less(outer.strong, inner.strong), weak: less(outer.weak, inner.weak) });

const axis = ({ inertia, halfMoment }: Moments, across: number, area: number): AxisProperties => ({
  inertia,
  sectionModulus: inertia / (across / 2),
  plasticModulus: 2 * halfMoment,
  gyration: Math.sqrt(inertia / area),
});

const propertiesOf = ({ area, strong, weak }: Figure, depth: number, width: number): SectionProperties => ({ area, strong: axis(strong, depth, area), weak: axis(weak, width, area) });

/** A rectangular tube with corner radii of two walls outside and one inside. */
export const tube = (depth: number, width: number, wall: number): SectionProperties =>
  propertiesOf(without(roundedRectangle(depth, width, 2 * wall), roundedRectangle(depth - 2 * wall, width - 2 * wall, wall)), depth, width);

/** A round tube. */
export const ring = (diameter: number, wall: number): SectionProperties => propertiesOf(without(disk(diameter), disk(diameter - 2 * wall)), diameter, diameter);

/** A rolled I section with parallel flanges. */
export interface Rolled {
  readonly depth: number;
  readonly width: number;
  readonly flange: number;
  readonly web: number;
  readonly fillet: number;
}

export function rolled({ depth, width, flange, web, fillet }: Rolled): SectionProperties {
  const clear = depth - 2 * flange;
  // A fillet's square corner lies where web and flange meet.
  const onDepth = spandrels(clear / 2, fillet);
  // Seen along the web, the spandrel widens the web from its face outward.
  const r = fillet;
  const quarter = (Math.PI / 4) * r ** 2;
  const toSquare = web / 2 + r / 2;
  const toQuarter = web / 2 + r - (4 * r) / (3 * Math.PI);
  const acrossInertia = 4 * (r ** 4 / 12 + r ** 2 * toSquare ** 2 - ((Math.PI / 16 - 4 / (9 * Math.PI)) * r ** 4 + quarter * toQuarter ** 2));
  const acrossHalf = 2 * (r ** 2 * toSquare - quarter * toQuarter);
  const figure: Figure = {
    area: 2 * width * flange + clear * web + onDepth.area,
    strong: {
      inertia: (width * depth ** 3 - (width - web) * clear ** 3) / 12 + onDepth.inertia,
      halfMoment: (width * depth ** 2 - (width - web) * clear ** 2) / 8 + onDepth.halfMoment,
    },
    weak: { inertia: (2 * flange * width ** 3 + clear * web ** 3) / 12 + acrossInertia, halfMoment: (2 * flange * width ** 2 + clear * web ** 2) / 8 + acrossHalf },
  };
  return propertiesOf(figure, depth, width);
}

/** Torsional constant of a tube, m⁴: Bredt's thin wall, 4 A² t / p on the middle line with a corner radius of 1.5 walls. */
export function tubeTorsion(depth: number, width: number, wall: number): number {
  const radius = 1.5 * wall;
  const enclosed = (depth - wall) * (width - wall) - (4 - Math.PI) * radius ** 2;
  const perimeter = 2 * (depth + width - 2 * wall) - 2 * (4 - Math.PI) * radius;
  return (4 * enclosed ** 2 * wall) / perimeter;
}

/** Torsional constant of an open section, m⁴: a third of length times thickness cubed, fillets left out. */
export const rolledTorsion = ({ depth, width, flange, web }: Rolled): number => (2 * width * flange ** 3 + (depth - flange) * web ** 3) / 3;
