/** Reads what the wind needs out of the site, as plain numbers. */
import type { Codes, Site } from "../project/model.js";
import type { Wanted } from "./wanted.js";
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

/** Two statements about the wind of which only one can hold, in words. */
export function windConflict(site: Site): string | undefined {
  const factor = site["topographic factor"];
  if (site.hill && factor && !factor.assumed) return "the site states a hill and a topographic factor: take out one of them";
  return undefined;
}
