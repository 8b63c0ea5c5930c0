/** Effective length of a column by what holds it against sway: AISC 360-22 Commentary Table C-A-7.1, recommended design values. */
import { placedSection } from "../../catalog/sections.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Column, RoofTilts } from "../../project/model.js";
import type { Gather } from "../contract.js";

type Condition = NonNullable<Column["sway along x"]>["value"];
type Top = NonNullable<Column["top of column"]>["value"];

/** Cases d, e, c and f of the table; with pins at both ends the column leans and is kept from swaying by others. */
const factors = { "both pinned": 1, cantilever: 2.1, "both fixed": 1.2, "fixed top on a pin": 2 } as const;

/** Knee-braced columns take the full height, where only the piece below the brace bends like one whose top is held: the safe side. */
function factorOf(condition: Condition, top: Top, doesRoofTilt: boolean): number {
  if (condition === "braced bay") return factors["both pinned"];
  // No other column stands off in this direction: a fixed top turns with the roof.
  if (doesRoofTilt && (condition === "fixed base" || condition === "fixed base and top")) return factors.cantilever;
  if (condition === "knee brace") return factors["fixed top on a pin"];
  if (condition === "pinned base") return top === "fixed" ? factors["fixed top on a pin"] : factors["both pinned"];
  return condition === "fixed base and top" || condition === "fixed base and knee brace" || top === "fixed" ? factors["both fixed"] : factors.cantilever;
}

export const bendingAgainstSpring = formula({
  id: "column.bending-against-spring",
  text: "k_c = pi^2 * E * I / L",
  source: "theory of elasticity; no clause",
  symbols: {
    k_c: { kind: "rotationalStiffness", meaning: "bending of the column as a turning stiffness" },
    I: { kind: "inertia", meaning: "second moment of area in that direction", field: "columns.*.section" },
    L: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
  constants: { E: "29000 ksi" },
});

export const factorOnSpring = formula({
  id: "column.effective-length-on-spring",
  text: "K_s = sqrt(K^2 + k_c / k_b)",
  source: "Dunkerley's sum of the load of a cantilever, pi^2 E I / (K L)^2, and of a stiff column on the spring, k_b / L: below the exact load; no clause",
  symbols: {
    K_s: { kind: "ratio", meaning: "effective length factor of a cantilever whose base gives" },
    K: { kind: "ratio", meaning: "the same on a base that does not turn" },
    k_c: { kind: "rotationalStiffness", meaning: "bending of the column as a turning stiffness" },
    k_b: { kind: "rotationalStiffness", meaning: "turning stiffness of the base", field: "columns.*.base rotation stiffness" },
  },
});

/** A base that gives: a cantilever by its spring, any other as if its base were pinned, the safe side. */
const onSpring = (K: number, k_b: number | undefined, I: number, L: number): number => {
  if (k_b === undefined) return K;
  if (K === factors.cantilever) return plainCalc(factorOnSpring, { K, k_c: plainCalc(bendingAgainstSpring, { I, L }), k_b });
  return K === factors["both fixed"] ? factors["fixed top on a pin"] : K;
};

/** Factors for swaying along x and along y; NaN where it is not known how the top is held. */
export function effectiveLengthFactors(fields: Column | undefined, gather: Gather, tilts?: RoofTilts): { readonly x: number; readonly y: number } {
  const top = gather.needs(fields?.["top of column"], "top of column, pinned or fixed");
  const x = gather.may(fields?.["sway along x"]) ?? "fixed base";
  const y = gather.may(fields?.["sway along y"]) ?? "fixed base";
  if (top === undefined) return { x: Number.NaN, y: Number.NaN };
  const K = { x: factorOf(x, top, tilts === "along x" || tilts === "both ways"), y: factorOf(y, top, tilts === "along y" || tilts === "both ways") };
  const k_b = gather.may(fields?.["base rotation stiffness"]);
  const section = gather.may(fields?.section);
  if (k_b === undefined || !section) return K;
  const { aboutX, aboutY } = placedSection(section, gather.may(fields?.["deep side"]) ?? "along x");
  const L = gather.may(fields?.height) ?? Number.NaN;
  return { x: onSpring(K.x, k_b, aboutY.inertia, L), y: onSpring(K.y, k_b, aboutX.inertia, L) };
}
