/** Size and weight of a footing on its ground: a pad, alone or with a pedestal, and the soil on it. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { type Gather, sharesPad } from "../contract.js";

export interface Pedestal {
  readonly shape: "none" | "rectangle" | "round";
  /** Along x and y, m; the diameter of a round one twice; zero where there is none. */
  readonly width: number;
  readonly length: number;
  /** Above the pad, m. */
  readonly height: number;
  /** How many stand on the pad, where it is more than one. */
  readonly count?: number;
}

export interface FootingBody {
  /** Along x and y, m. */
  readonly width: number;
  readonly length: number;
  readonly thickness: number;
  /** Depth of the underside below grade, m. */
  readonly depth: number;
  readonly pedestal: Pedestal;
  /** How far the column stands off the middle of the pad, to the east and to the north, m. */
  readonly offset: { readonly x: number; readonly y: number };
  readonly grout: number;
  readonly plate: number;
  /** Soil on the pad: its height, m, and its unit weight, N/m³. */
  readonly soilHeight: number;
  readonly soilWeight: number;
  /** Whether the soil may be counted to hold the footing. */
  readonly isSoilCounted: boolean;
  /** Height of the water above the underside, m. */
  readonly waterHeight: number;
}

export const isFooting = (support: Support): boolean => support.foundation?.fields.kind?.value === "footing";

const width = { kind: "length", meaning: "pad along x", field: "foundations.*.width" } as const;
const length = { kind: "length", meaning: "pad along y", field: "foundations.*.length" } as const;
const thickness = { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" } as const;
const depth = { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" } as const;
const top = { kind: "length", meaning: "height of the top of concrete above grade", field: "foundations.*.above grade" } as const;
const pedestalHeight = { kind: "length", meaning: "height of the pedestal above the pad" } as const;
const soilOn = { kind: "distance", meaning: "height of the soil on the pad" } as const;
const soilUnit = { kind: "unitWeight", meaning: "unit weight of the soil above the pad", field: "foundations.*.backfill weight" } as const;
const water = { kind: "distance", meaning: "height of the water above the underside" } as const;
const pedestalArea = { kind: "planArea", meaning: "area of the pedestal in plan" } as const;
const unitWeights = { gamma_c: "150 lbf/ft^3", gamma_w: "62.4 lbf/ft^3" } as const;

export const soilDepth = formula({
  id: "footing.soil-on-pad",
  text: "h_s = max(d - t, 0 * t)",
  source: "geometry",
  symbols: { h_s: soilOn, d: depth, t: thickness },
});

export const pedestalRise = formula({
  id: "footing.pedestal-height",
  text: "h_p = d + h_a - t",
  source: "geometry",
  symbols: { h_p: pedestalHeight, d: depth, h_a: top, t: thickness },
});

export const waterRise = formula({
  id: "footing.water-height",
  text: "h_w = max(d - z_w, 0 * d)",
  source: "geometry",
  symbols: { h_w: water, d: depth, z_w: { kind: "distance", meaning: "depth of the water below grade", field: "ground.*.water table" } },
});

export const roundPedestal = formula({
  id: "footing.round-pedestal",
  text: "A_p = pi * D_p^2 / 4",
  source: "geometry",
  symbols: { A_p: pedestalArea, D_p: { kind: "length", meaning: "diameter of the pedestal", field: "foundations.*.pedestal.diameter" } },
});

export const squaredPedestal = formula({
  id: "footing.rectangular-pedestal",
  text: "A_p = c_x * c_y",
  source: "geometry",
  symbols: {
    A_p: pedestalArea,
    c_x: { kind: "length", meaning: "pedestal along x", field: "foundations.*.pedestal.width" },
    c_y: { kind: "length", meaning: "pedestal along y", field: "foundations.*.pedestal.length" },
  },
});

export const concreteWeight = formula({
  id: "footing.concrete-weight",
  text: "W_c = gamma_c * (B * L * t + A_p * h_p) - gamma_w * (B * L * min(t, h_w) + A_p * max(h_w - t, 0 * t))",
  source: "statics: weight of concrete less that of the water it displaces",
  symbols: { W_c: { kind: "force", meaning: "weight of pad and pedestal, buoyant below the water" }, B: width, L: length, t: thickness, A_p: pedestalArea, h_p: pedestalHeight, h_w: water },
  constants: unitWeights,
});

export const soilOverPad = formula({
  id: "footing.soil-weight",
  text: "W_s = (B * L - A_p) * (gamma_s * h_s - gamma_w * min(max(h_w - t, 0 * t), h_s))",
  source: "statics: the soil straight above the pad, less the water it displaces",
  symbols: { W_s: { kind: "force", meaning: "weight of the soil straight above the pad" }, B: width, L: length, A_p: pedestalArea, gamma_s: soilUnit, h_s: soilOn, h_w: water, t: thickness },
  constants: { gamma_w: unitWeights.gamma_w },
});

export const armToPedestal = formula({
  id: "footing.arm",
  text: "a = t + h_p + t_g + t_p",
  source: "geometry",
  symbols: {
    a: { kind: "length", meaning: "height of the column base above the underside" },
    t: thickness,
    h_p: pedestalHeight,
    t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" },
  },
});

/** Slack between a stated top of concrete and the top of the pad, m: half an inch. */
const slack = 0.0127;

export function readFooting(support: Support, gather: Gather): FootingBody {
  const f = support.foundation?.fields;
  const t = gather.need(f?.thickness, "thickness of the pad");
  const d = gather.need(f?.depth, "depth of the underside of the pad");
  const soilHeight = soilDepth.value({ d, t });
  const table = gather.may(support.ground?.fields["water table"]);
  const soil = f?.["backfill weight"] ?? support.ground?.fields["unit weight"];
  return {
    width: gather.need(f?.width, "width of the pad"),
    length: gather.need(f?.length, "length of the pad"),
    thickness: t,
    depth: d,
    pedestal: sharesPad(support) ? { ...readPedestal(support, gather, t, d), count: support.places.length } : readPedestal(support, gather, t, d),
    offset: { x: gather.may(f?.["off middle"]?.value.x) ?? 0, y: gather.may(f?.["off middle"]?.value.y) ?? 0 },
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
    soilHeight,
    soilWeight: soilHeight > 0 ? gather.need(soil, "unit weight of the soil above the pad (`backfill weight`, or the ground's `unit weight`)") : 0,
    isSoilCounted: gather.may(f?.backfill) === "compacted and tested",
    waterHeight: table === undefined ? 0 : waterRise.value({ d, z_w: table }),
  };
}

function readPedestal(support: Support, gather: Gather, t: number, d: number): Pedestal {
  const f = support.foundation?.fields;
  const stated = f?.pedestal?.value;
  const height = pedestalRise.value({ d, h_a: f?.["above grade"]?.value ?? 0, t });
  if (!stated) {
    // The pad ends where its thickness does; a top of concrete that says otherwise leaves a pedestal unsaid.
    const said = f?.["above grade"];
    if (said && !said.assumed && (height > slack || height < -slack)) gather.block("by its depth and thickness the pad does not end at the stated top of concrete: describe the pedestal, or correct `above grade`, the depth or the thickness");
    return { shape: "none", width: 0, length: 0, height: 0 };
  }
  gather.may(f?.["above grade"]);
  if (height <= 0) gather.block("the pad reaches up to the top of concrete, so that its pedestal has no height: correct the depth, the thickness or `above grade`");
  return { ...pedestalInPlan(stated, gather), height };
}

type PedestalFields = NonNullable<NonNullable<Support["foundation"]>["fields"]["pedestal"]>["value"];

/** Shape and sides of a pedestal that is stated. */
export function pedestalInPlan(stated: PedestalFields, gather: Gather): Omit<Pedestal, "height"> {
  if (stated.diameter) {
    if (stated.width ?? stated.length) gather.block("the pedestal has both a diameter and sides; give the one it is");
    const diameter = gather.need(stated.diameter, "diameter of the pedestal");
    return { shape: "round", width: diameter, length: diameter };
  }
  return { shape: "rectangle", width: gather.need(stated.width, "width of the pedestal"), length: gather.need(stated.length, "length of the pedestal") };
}

export const allPedestals = formula({
  id: "footing.pedestals",
  text: "A_p = n * A_1",
  source: "arithmetic",
  symbols: { A_p: pedestalArea, n: { kind: "number", meaning: "columns on the pad" }, A_1: { kind: "planArea", meaning: "area of one pedestal in plan" } },
});

/** Area of the pedestals in plan, m²; zero where there is none. */
export function pedestalAreaOf({ pedestal }: FootingBody, calc: Calc): number {
  if (pedestal.shape === "none") return 0;
  const one = areaOfOne(pedestal, calc);
  return pedestal.count === undefined ? one : calc(allPedestals, { n: pedestal.count, A_1: one });
}

function areaOfOne(pedestal: Pedestal, calc: Calc): number {
  return pedestal.shape === "round" ? calc(roundPedestal, { D_p: pedestal.width }) : calc(squaredPedestal, { c_x: pedestal.width, c_y: pedestal.length });
}

/** Whether the weight is looked at as what holds down, with water and without loose soil, or as what presses, in full. */
export type Purpose = "holds" | "presses";

/** Weight of concrete and of the soil on it, N; no load factor yet. */
export function weightsOf(body: FootingBody, purpose: Purpose, calc: Calc): { readonly concrete: number; readonly soil: number } {
  const A_p = pedestalAreaOf(body, calc);
  const h_w = purpose === "holds" ? body.waterHeight : 0;
  const { width: B, length: L, thickness: t } = body;
  const concrete = calc(concreteWeight, { B, L, t, A_p, h_p: body.pedestal.height, h_w });
  if (body.soilHeight <= 0) return { concrete, soil: 0 };
  if (purpose === "holds" && !body.isSoilCounted) {
    calc.note("The backfill is loose, or not said to be compacted and tested: the soil above the pad is not counted to hold it.");
    return { concrete, soil: 0 };
  }
  return { concrete, soil: calc(soilOverPad, { B, L, A_p, gamma_s: body.soilWeight, h_s: body.soilHeight, h_w, t }) };
}

/** Height of the column base above the underside, m. */
export const armOf = ({ thickness, pedestal, grout, plate }: FootingBody, calc: Calc): number => calc(armToPedestal, { t: thickness, h_p: pedestal.height, t_g: grout, t_p: plate });

export const bodyFormulas = [roundPedestal, squaredPedestal, allPedestals, concreteWeight, soilOverPad, armToPedestal] as const;
