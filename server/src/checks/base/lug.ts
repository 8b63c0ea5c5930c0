/** A shear lug's own sizes: how deep it bears in the concrete, and how far below the plate. */
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

export const lugBearingDepth = formula({
  id: "base.lug-bearing-depth",
  text: "h_sl = max(0, min(h_l - t_g, 2 * t_sl))",
  source: "ACI 318-19 17.11.2: of a lug's face only the part within twice its thickness below the concrete bears",
  symbols: {
    h_sl: { kind: "length", meaning: "effective depth of the lug in the concrete" },
    h_l: { kind: "length", meaning: "depth of the lug below the plate", field: "bases.*.shear lug.depth" },
    t_g: { kind: "length", meaning: "grout below the plate", field: "bases.*.grout" },
    t_sl: { kind: "length", meaning: "thickness of the lug", field: "bases.*.shear lug.thickness" },
  },
});

export const lugArm = formula({
  id: "base.lug-arm",
  text: "e = t_g + h_sl / 2",
  source: "statics: bearing at the middle of the effective depth",
  symbols: {
    e: { kind: "length", meaning: "from the plate down to the middle of the lug's bearing" },
    t_g: { kind: "length", meaning: "grout below the plate", field: "bases.*.grout" },
    h_sl: { kind: "length", meaning: "effective depth of the lug in the concrete" },
  },
});

/** SI. */
export interface LugSizes {
  readonly width: number;
  readonly depth: number;
  readonly thickness: number;
  readonly grout: number;
  readonly resistsX: boolean;
  readonly resistsY: boolean;
}

/** The lug where the base has one. */
export function readLug(support: Support, gather: Gather): LugSizes | undefined {
  const fields = support.base?.fields;
  const lug = gather.may(fields?.["shear lug"]);
  if (!lug) return undefined;
  const resists = gather.needs(lug.resists, "direction of shear the lug stands against (shear lug: resists)");
  return {
    width: gather.need(lug.width, "width of the shear lug"),
    depth: gather.need(lug.depth, "depth of the shear lug"),
    thickness: gather.need(lug.thickness, "thickness of the shear lug"),
    grout: gather.need(fields?.grout, "thickness of the grout"),
    resistsX: resists === "along x" || resists === "both ways",
    resistsY: resists === "along y" || resists === "both ways",
  };
}

/** Arms of the couple that a lug puts on the plate, along x and along y, m; 0 where it takes no shear that way. */
export function readLugArms(support: Support, gather: Gather): { readonly x: number; readonly y: number } {
  const lug = readLug(support, gather);
  if (!lug) return { x: 0, y: 0 };
  const e = lugArm.value({ t_g: lug.grout, h_sl: lugBearingDepth.value({ h_l: lug.depth, t_g: lug.grout, t_sl: lug.thickness }) });
  return { x: lug.resistsX ? e : 0, y: lug.resistsY ? e : 0 };
}
