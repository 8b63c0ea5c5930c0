/**
 * The exception from frost depth for small free-standing structures. IBC 2021 1809.5: risk category I, 600 ft² or less of light framing or 400 ft²
 * or less of any other, eaves no higher than 10 ft (from memory).
 */
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import { format } from "../../units/format.js";
import type { UnitSystem } from "../../units/kinds.js";

const iBC = "IBC 2021 1809.5, exceptions (from memory)";
const across = { kind: "distance", meaning: "roof from its low to its high edge, on plan" } as const;

export const roofArea = formula({
  id: "site.roof-area",
  text: "A = L * B",
  source: "geometry",
  symbols: { A: { kind: "planArea", meaning: "area of the roof on plan" }, L: { kind: "distance", meaning: "length of the roof", field: "roof.length" }, B: { kind: "distance", meaning: "width of the roof", field: "roof.width" } },
});

export const areaOfLightFrame = formula({ id: "site.area-of-light-frame", text: "A_m = A_0", source: iBC, symbols: { A_m: { kind: "planArea", meaning: "largest area excepted" } }, constants: { A_0: "600 ft^2" } });
export const areaOfOthers = formula({ id: "site.area-of-others", text: "A_m = A_0", source: iBC, symbols: { A_m: { kind: "planArea", meaning: "largest area excepted" } }, constants: { A_0: "400 ft^2" } });
export const eaveAllowed = formula({ id: "site.eave-allowed", text: "h_m = h_0", source: iBC, symbols: { h_m: { kind: "distance", meaning: "largest height of the eaves excepted" } }, constants: { h_0: "10 ft" } });

export const highEave = formula({
  id: "site.high-eave",
  text: "h_e = h + b * s / 2",
  source: "geometry: the high edge of a roof sloped one way",
  symbols: { h_e: { kind: "distance", meaning: "height of the high eave" }, h: { kind: "distance", meaning: "mean height of the roof", field: "roof.mean height" }, b: across, s: { kind: "slope", meaning: "slope of the roof", field: "roof.slope" } },
});

export type Refused = { readonly because: string } | { readonly unknown: string };

/** Why the exception does not hold, or what is missing to say; undefined where it holds. */
export function exceptionFails(support: Support, framing: "light frame" | "other framing", system: UnitSystem): Refused | undefined {
  const category = support.site["risk category"];
  if (!category) return { unknown: "the risk category" };
  if (category.value !== "I") return { because: `the exception for small structures is for risk category I, and this is ${category.value}` };
  const roof = support.roof?.fields;
  if (!roof?.length || !roof.width || !roof["mean height"]) return { unknown: "the length, width and mean height of the roof" };
  const A = roofArea.value({ L: roof.length.value, B: roof.width.value });
  const most = framing === "light frame" ? areaOfLightFrame.value({}) : areaOfOthers.value({});
  if (isAbove(A, most)) return { because: `the exception for small structures ends at ${format(most, "planArea", system)} of ${framing}, and the roof has ${format(A, "planArea", system)}` };
  const edge = roof["low edge"]?.value;
  const run = edge === "east" || edge === "west" ? roof.length.value : roof.width.value;
  const eave = roof.shape?.value === "monoslope" ? highEave.value({ h: roof["mean height"].value, b: run, s: roof.slope?.value ?? 0 }) : roof["mean height"].value;
  const highest = eaveAllowed.value({});
  if (isAbove(eave, highest)) return { because: `the exception for small structures ends at eaves of ${format(highest, "distance", system)}, and these are ${format(eave, "distance", system)} high` };
  return undefined;
}
