/**
 * Side resistance of a pier in uplift: as stated, presumptive, or from the strength of the soil by the alpha method in clay and the beta method in
 * sand. The first two are allowable values; the third is ultimate, and its factor of safety is put on once.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { shaftSide, type SideLaw, type SideLayer } from "../../mechanics/shaft-side.js";
import type { Ground, Sourced, Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { perimeterOf, type PierBody, roundPerimeter, squarePerimeter } from "./body.js";
import { inOrder } from "./soil.js";

export const presumptiveSide = formula({
  id: "pier.presumptive-side-resistance",
  text: "f_s = min(q_a / 6, f_max)",
  source: "IBC 2021 1810.3.3.1.4",
  symbols: {
    f_s: { kind: "pressure", meaning: "allowable side resistance" },
    q_a: { kind: "pressure", meaning: "presumptive bearing", field: "ground.*.class", range: [1e4, 6e5] },
  },
  constants: { f_max: "500 lbf/ft^2" },
});

export const sideLength = formula({
  id: "pier.side-length",
  text: "L_s = d - min(z_s, d)",
  source: "practice: the depth that freezes or dries out holds nothing",
  symbols: {
    L_s: { kind: "distance", meaning: "length of pier with side resistance" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" },
    z_s: { kind: "distance", meaning: "depth without side resistance", field: "foundations.*.ignored depth" },
  },
});

export const sideForce = formula({
  id: "pier.side-force",
  text: "R_s = f_s * p_s * L_s",
  source: "statics",
  symbols: {
    R_s: { kind: "force", meaning: "side resistance of the pier" },
    f_s: { kind: "pressure", meaning: "allowable side resistance", field: "ground.*.side resistance" },
    p_s: { kind: "distance", meaning: "perimeter of the pier" },
    L_s: { kind: "distance", meaning: "length of pier with side resistance" },
  },
});

export const sideEnd = formula({
  id: "pier.side-end",
  text: "z_2 = d - h_b",
  source: "practice: the bell has no side resistance of its own",
  symbols: {
    z_2: { kind: "distance", meaning: "depth to which the side holds" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth", range: [2, 10] },
    h_b: { kind: "length", meaning: "height of the bell", field: "foundations.*.bell.height", range: [0, 1] },
  },
});

export const sideSafety = formula({
  id: "pier.side-safety",
  text: "R_s = R_u / F_s",
  source: "IBC 2021 1810.3.3.1.5: 3 by analysis, 2 under wind or earthquake; 2 and 1.5 where pull tests are made",
  symbols: {
    R_s: { kind: "force", meaning: "allowable side resistance of the pier" },
    R_u: { kind: "force", meaning: "ultimate side resistance of the shaft" },
    F_s: { kind: "number", meaning: "factor of safety", field: "ground.*.uplift safety", range: [1.5, 6] },
  },
});

export const sideFormulas = [presumptiveSide, sideLength, sideForce, roundPerimeter, squarePerimeter, sideEnd, sideSafety] as const;

/** The factor of safety where the notebook states none: by analysis, and under wind or earthquake. */
const usualSafety = 3;
const shortTermSafety = 2;

export type Side =
  | { readonly by: "value"; readonly value: GroundValue }
  | { readonly by: "soil strength"; readonly layers: readonly SideLayer[]; readonly safety: number | undefined; readonly water: number | undefined };

/** The upper part of a pier that no soil holds. */
export interface WithoutSide {
  /** m */
  readonly withoutSide: number;
  readonly withoutSideBy: "ignored depth" | "frost depth";
}

/** Neither the soil that freezes nor the soil that is left out holds the pier. */
export function readWithoutSide(support: Support, gather: Gather, isNeeded: boolean): WithoutSide {
  const ignored = support.foundation?.fields["ignored depth"];
  const frost = support.site["frost depth"];
  const governs = ignored && frost && frost.value > ignored.value ? frost : (ignored ?? frost);
  return {
    withoutSide: isNeeded ? gather.need(governs, "frost depth of the site, or the ignored depth of the pier") : 0,
    withoutSideBy: governs !== undefined && governs === ignored ? "ignored depth" : "frost depth",
  };
}

type Values = Pick<Ground, "cohesion" | "blow count" | "unit weight">;

const isSome = (value: Sourced<number> | undefined): boolean => value !== undefined && value.value > 0;

function readLaw(of: Values, gather: Gather, where: string): SideLaw {
  if (isSome(of.cohesion)) return { type: "clay", c: gather.need(of.cohesion, "cohesion") };
  return { type: "sand", blows: gather.need(of["blow count"], `cohesion (clay) or blow count (sand) of ${where}`) };
}

function readLayers(support: Support, gather: Gather): readonly SideLayer[] {
  const ground = support.ground?.fields;
  if (!ground) {
    gather.needs(undefined, "ground the foundation stands in");
    return [];
  }
  if (ground.kind?.value === "rock") gather.block("the side resistance of rock is not found from its strength here: state it as a side resistance");
  const below = ground.layers?.value ?? [];
  const all: readonly { readonly top: number; readonly of: Values; readonly where: string }[] = [
    { top: 0, of: ground, where: "the ground" },
    ...below.map(({ value }, i) => ({ top: gather.need(value.from, `depth (from) of layer ${i + 1} below the top one`), of: value, where: `layer ${i + 1} below the top one` })),
  ];
  inOrder(all, gather);
  const laws = all.map(({ of, where }) => readLaw(of, gather, where));
  const isWeightNeeded = laws.some(({ type }) => type === "sand");
  return all.map(({ top, of, where }, i) => ({ top, law: laws[i], weight: isWeightNeeded ? gather.need(of["unit weight"], `unit weight of ${where}`) : 0 }));
}

export function readSide(support: Support, gather: Gather): Side {
  const ground = support.ground?.fields;
  if (gather.may(ground?.["side resistance by"]) === "soil strength")
    return { by: "soil strength", layers: readLayers(support, gather), safety: gather.may(ground?.["uplift safety"]), water: gather.may(ground?.["water table"]) };
  return { by: "value", value: groundValue(support, gather, ground?.["side resistance"], "side resistance", (soil) => soil.verticalBearing) };
}

/** What the side holds, N: allowable by a value, ultimate by the strength of the soil. */
export function sideHeld(body: PierBody, side: Side, { withoutSide, withoutSideBy }: WithoutSide, calc: Calc): number {
  calc.note(`The ${withoutSideBy} at the top gives no side resistance.`);
  const d = body.bell ? calc(sideEnd, { d: body.depth, h_b: body.bell.height }) : body.depth;
  const p_s = perimeterOf(body, calc);
  if (side.by === "soil strength") {
    if (side.layers.some(({ law }) => law.type === "clay")) calc.note("The top 5 ft of clay dry and swell with the seasons and hold nothing.");
    return calc.routine(shaftSide, { layers: side.layers, perimeter: p_s, from: withoutSide, to: d, water: side.water }).force;
  }
  calc.note(side.value.from);
  const f_s = side.value.isPresumptive ? calc(presumptiveSide, { q_a: side.value.value }) : side.value.value;
  return calc(sideForce, { f_s, p_s, L_s: calc(sideLength, { d, z_s: withoutSide }) });
}

/** The allowable side resistance, N, of what {@link sideHeld} found; `isShortTerm` under wind or earthquake. */
export function allowableSide(side: Side, held: number, isShortTerm: boolean, calc: Calc): number {
  if (side.by === "value") return held;
  calc.note(side.safety === undefined ? `No factor of safety is stated: ${isShortTerm ? "2 under wind or earthquake" : "3"}, of an analysis without pull tests.` : "The factor of safety on side resistance is as stated.");
  return calc(sideSafety, { R_u: held, F_s: side.safety ?? (isShortTerm ? shortTermSafety : usualSafety) });
}
