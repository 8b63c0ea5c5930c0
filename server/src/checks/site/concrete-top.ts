/** Where the concrete ends above or below grade. */
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";

export const padTop = formula({
  id: "site.pad-top",
  text: "h_a = t - d",
  source: "geometry: a pad without a pedestal ends where its thickness does",
  symbols: {
    h_a: { kind: "length", meaning: "top of concrete above grade, negative below it" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    d: { kind: "distance", meaning: "depth of the underside", field: "foundations.*.depth" },
  },
});

/** Top of the pad where a footing has no pedestal and says no top of concrete; undefined where that is said, or a size is missing. */
export function topOfConcrete({ foundation }: Support): number | undefined {
  const fields = foundation?.fields;
  if (fields?.kind?.value !== "footing" || fields.pedestal || !fields["above grade"]?.assumed || !fields.thickness || !fields.depth) return undefined;
  return padTop.value({ t: fields.thickness.value, d: fields.depth.value });
}

/** Whether all of the concrete lies below the depth the ground freezes to. */
export function isBelowFrost(support: Support, frost: number): boolean {
  const top = topOfConcrete(support);
  return top !== undefined && -top >= frost;
}
