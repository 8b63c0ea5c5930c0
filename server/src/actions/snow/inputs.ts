/** Reads what the snow on the roof needs. */
import { plainCalc } from "../../formula/calc.js";
import type { Roof, Site } from "../../project/model.js";
import type { Edition } from "../edition.js";
import type { RoofPlane } from "../roof-plane.js";
import type { Wanted } from "../wanted.js";
import type { SnowInputs } from "./cases.js";
import { isAtStrength, type SnowSite } from "./editions.js";
import type { HigherRoof } from "./higher-roof.js";
import { isUnbalanced, mayBeShort } from "./unbalanced.js";

function readHigher(roof: Roof, wanted: Wanted): HigherRoof | undefined {
  const higher = roof["higher roof"]?.value;
  return (
    higher && {
      edge: wanted.need(higher.edge, "the edge the higher roof stands along (higher roof, edge)"),
      above: wanted.need(higher["height above"], "the height of the higher roof above this one"),
      upwind: wanted.need(higher["length upwind"], "the length of the higher roof upwind"),
      sliding: wanted.need(higher["sliding length"], "the length of the higher roof that slopes down to this one (sliding length, 0 ft where none does)"),
    }
  );
}

/** The snow on the roof, with what it lacks noted; nothing where no snow falls. */
export function readSnow(site: Site, roof: Roof, plane: RoofPlane, standard: Edition, wanted: Wanted): SnowInputs | undefined {
  const groundSnow = wanted.need(site["ground snow"], "the ground snow of the site (0 psf where none falls)");
  if (!(groundSnow > 0)) return undefined;
  const higher = readHigher(roof, wanted);
  const isPitched = plane.shape === "pitched" && isUnbalanced(plane.slope);
  const asksForRafters = isPitched && mayBeShort(plane, plainCalc);
  const simpleRafters = asksForRafters ? wanted.need(roof["simple rafters"], "whether simple rafters span from ridge to eave (roof, simple rafters), for unbalanced snow") : false;
  const drifts = higher !== undefined || (isPitched && simpleRafters === false);
  const snowSite: SnowSite = {
    standard,
    groundSnow,
    terrain: site.exposure?.value ?? "C",
    roofExposure: wanted.need(site["snow exposure"], "the snow exposure of the site"),
    riskCategory: wanted.need(site["risk category"], "the risk category"),
    winterWind: drifts && isAtStrength(standard) ? wanted.need(site["winter wind"], "the winter wind parameter of the site, for drifting snow") : undefined,
  };
  return { site: snowSite, slippery: wanted.need(roof.slippery, "whether the roof is slippery"), simpleRafters, ...(higher ? { higher } : {}) };
}
