/** Reads what the wind needs out of site, roof and columns, as plain numbers. */
import { formula } from "../formula/declare.js";
import { runsAlong } from "../mechanics/plan-line.js";
import type { Codes, Column, Roof, Site } from "../project/model.js";
import type { Edge } from "./demand.js";
import type { Wanted } from "./wanted.js";
import type { WindMember } from "./wind/drag.js";
import type { Fascia } from "./wind/fascia.js";
import { mostSolidFrame } from "./wind/force-coefficients.js";
import type { PostPanel } from "./wind/panels.js";
import type { Hill } from "./wind/topography.js";
import type { WindSite } from "./wind/velocity-pressure.js";

function readHill(site: Site, wanted: Wanted): Hill | undefined {
  const hill = site.hill?.value;
  if (!hill) return undefined;
  return {
    shape: wanted.need(hill.shape, "the shape of the hill (ridge, escarpment or hill)"),
    height: wanted.need(hill.height, "the height of the hill"),
    halfLength: wanted.need(hill["half length"], "the half length of the hill"),
    distance: wanted.need(hill.distance, "the distance from the crest of the hill"),
    side: wanted.need(hill.side, "the side of the hill (upwind or downwind)"),
  };
}

/** The criteria of the place for wind. */
export const readWindSite = (codes: Codes, site: Site, wanted: Wanted): WindSite => ({
  standard: wanted.need(codes.loads, "the load standard (codes, loads)"),
  V: wanted.need(site["wind speed"], "the wind speed of the site"),
  exposure: wanted.need(site.exposure, "the exposure of the site"),
  K_zt: wanted.need(site["topographic factor"], "the topographic factor of the site"),
  hill: readHill(site, wanted),
  groundElevation: wanted.need(site["ground elevation"], "the ground elevation of the site"),
});

/** Depth of the fascia on each edge, m; 0 where there is none. */
export function readFascia(roof: Roof): Fascia {
  const fascia = roof.fascia?.value;
  const depth = (edge: Edge): number => (fascia?.[`${edge} edge`] ?? fascia?.depth)?.value ?? 0;
  return { north: depth("north"), east: depth("east"), south: depth("south"), west: depth("west") };
}

/** Beams, braces and frames in the wind below the roof. */
export function readMembers(roof: Roof, wanted: Wanted): readonly WindMember[] {
  return [...(roof["in the wind"]?.value ?? [])].map(([name, { value }]): WindMember => {
    const faces = wanted.need(value.faces, `which way ${name} faces (in the wind, faces)`);
    const solidity = wanted.need(value.solidity, `how much of ${name} is solid (in the wind, solidity)`);
    if (solidity > mostSolidFrame) wanted.missing.push(`${name} as panels of a column line, as more than 70 % of it is solid`);
    return {
      name,
      area: wanted.need(value.area, `the area of ${name} (in the wind, area)`),
      along: faces === "east and west" ? "x" : "y",
      height: wanted.need(value.height, `the height of ${name} above grade (in the wind, height)`),
      solidity,
      diameter: value.diameter?.value,
    };
  });
}

/** The panels between the columns of a line as each of its columns sees them, or none; or what stands in the way, in words. */
export function readPanels(name: string, column: Column, places: readonly { readonly x: number; readonly y: number }[], wanted: Wanted): readonly (PostPanel | undefined)[] {
  const panels = column.panels?.value;
  if (!panels) return places.map(() => undefined);
  const [first, second] = places;
  if (!second) {
    wanted.missing.push(`a line of columns for the panels of ${name} to stand between`);
    return places.map(() => undefined);
  }
  const isAlongX = runsAlong(first, second, "x");
  if (!isAlongX && !runsAlong(first, second, "y")) wanted.missing.push(`the column line ${name} along x or along y, as it has panels`);
  const of = {
    height: wanted.need(panels.height, `the height of the panels of ${name}`),
    bottom: wanted.need(panels.bottom, `the bottom of the panels of ${name}, above the column base`),
    solidity: wanted.need(panels.solidity, `how much of the panels of ${name} is solid`),
    bay: distanceBetween(first, second),
    across: isAlongX ? ("y" as const) : ("x" as const),
  };
  return places.map((_, i) => ({ ...of, bays: i === 0 || i === places.length - 1 ? (1 as const) : (2 as const), ofLine: places.length - 1, place: i }));
}

const bayLength = formula({
  id: "actions.bay-length",
  text: "B = sqrt((x_2 - x_1)^2 + (y_2 - y_1)^2)",
  source: "geometry",
  symbols: {
    B: { kind: "distance", meaning: "distance between two columns of a line" },
    x_1: { kind: "distance", meaning: "place of the first, east" },
    y_1: { kind: "distance", meaning: "place of the first, north" },
    x_2: { kind: "distance", meaning: "place of the second, east" },
    y_2: { kind: "distance", meaning: "place of the second, north" },
  },
});

const distanceBetween = (a: { readonly x: number; readonly y: number }, b: { readonly x: number; readonly y: number }): number => bayLength.value({ x_1: a.x, y_1: a.y, x_2: b.x, y_2: b.y });

/** Two statements about the wind of which only one can hold, in words. */
export function windConflict(site: Site): string | undefined {
  const factor = site["topographic factor"];
  if (site.hill && factor && !factor.assumed) return "the site states a hill and a topographic factor: take out one of them";
  return undefined;
}
