/** Where anchors need the rules for earthquake that are not done here. */
import type { Site } from "../../project/model.js";
import type { Gather } from "../contract.js";

/**
 * ACI 318-19 17.10: in seismic design category C to F anchors need 0.75 on the concrete strengths in tension and a ductile or an
 * overstrength route. Where the category is not stated nothing can be said.
 */
export function blockSeismic(site: Site, gather: Gather): void {
  const category = gather.needs(site["seismic design category"], "seismic design category of the site");
  if (category !== undefined && "CDEF".includes(category)) {
    gather.block(`seismic design category ${category}: the anchor rules for earthquake (ACI 318-19 17.10) are not done here; the engineer has to check these anchors`);
  }
}
