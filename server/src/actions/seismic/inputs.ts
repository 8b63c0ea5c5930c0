/** Reads what an earthquake on the roof needs, and what is worth saying about it. */
import { seismicSystemOf, type SeismicCategory, type SeismicSystem } from "../../catalog/seismic-systems.js";
import { isAbove } from "../../mechanics/compare.js";
import { holdsTop } from "../../mechanics/sway-stiffness.js";
import type { Roof, Site } from "../../project/model.js";
import type { Edition } from "../edition.js";
import type { Wanted } from "../wanted.js";
import type { RoofPost } from "../way-down.js";
import type { SeismicInputs } from "./cases.js";

const isStrong = (category: SeismicCategory): boolean => category === "D" || category === "E" || category === "F";

/** Whether an earthquake stays without numbers where the code would still ask for one: category B with no accelerations stated. */
export const isLeftOut = (site: Site): boolean => site["seismic design category"]?.value === "B" && site["short-period acceleration"] === undefined;

/** Whether the least sideways force takes the place of an earthquake. */
export const takesLeastSideways = (site: Site): boolean => site["seismic design category"]?.value === "A";

/** The earthquake, with what it lacks noted; nothing in category A, and in B where no acceleration is stated. */
export function readSeismic(site: Site, roof: Roof, standard: Edition, wanted: Wanted): SeismicInputs | undefined {
  const category = wanted.need(site["seismic design category"], "the seismic design category of the site");
  if (category === undefined || category === "A" || isLeftOut(site)) return undefined;
  const name = wanted.need(roof["earthquake system"], "what resists earthquakes (roof, earthquake system)");
  const system = seismicSystemOf(name ?? "");
  const S_1 = site["mapped one-second acceleration"]?.value;
  if (isStrong(category) && S_1 === undefined) wanted.missing.push("the mapped one-second acceleration of the site");
  return {
    category,
    site: {
      standard,
      S_DS: wanted.need(site["short-period acceleration"], "the short-period acceleration of the site"),
      S_D1: wanted.need(site["one-second acceleration"], "the one-second acceleration of the site"),
      S_1: S_1 ?? 0,
      riskCategory: wanted.need(site["risk category"], "the risk category"),
      system: system as SeismicSystem,
      redundancy: roof["redundancy factor"]?.value ?? (isStrong(category) ? 1.3 : 1),
    },
  };
}

/** A column whose ends are not told apart stands as the way down takes it: fixed at its base, at its top as stated. */
const isCantilevered = ({ ends, top }: RoofPost): boolean => (ends ? [ends.x, ends.y].some((held) => held.base && !holdsTop(held)) : top === "pinned");

/** A system that does not fit how the columns are held, in words. */
export function seismicConflict({ site: { system } }: SeismicInputs, posts: readonly RoofPost[]): string | undefined {
  if (system.cantilevered || !posts.some(isCantilevered)) return undefined;
  return `the earthquake system, ${system.name} (R = ${system.R}), is not for columns that stand up from the ground by themselves: name one of the cantilevered column systems, or hold the column tops or brace the bays`;
}

/** What is worth knowing about the system in this category, in words. */
export function seismicRemarks({ site: { system, standard }, category }: SeismicInputs, height: number): readonly string[] {
  const limit = system.limit[category];
  const remarks: string[] = [];
  const table = `${standard} Table 12.2-1`;
  if (limit === "not permitted") remarks.push(`The ${system.name} are not permitted in seismic design category ${category} (${table}), but for exceptions of light one-story structures: show which one holds.`);
  else if (limit !== "any height" && isAbove(height, limit.height)) remarks.push(`The ${system.name} are permitted to ${limit.feet} ft in seismic design category ${category} (${table}), and the roof is higher.`);
  if (system.name.startsWith("special")) remarks.push(`R = ${system.R} asks for the special detailing of ${system.name}, which is not checked here.`);
  return remarks;
}
