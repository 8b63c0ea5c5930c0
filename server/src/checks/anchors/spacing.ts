/**
 * Rods too near to each other or to a face of the concrete: tightening them splits it, and water reaches the steel.
 *
 * ACI 318-19 17.9.2: 4 d_a between cast-in rods and the cover of reinforcement to a face; 6 d_a for both where the nuts are torqued. Cover of
 * rods and of their heads by Table 20.5.1.3.1.
 */
import { rodByDiameter } from "../../catalog/rods.js";
import { formula } from "../../formula/declare.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeBases, type Found } from "../base/judge.js";
import { unchangedSince14 } from "../editions.js";
import { isSetInAdhesive } from "./cone.js";
import { rodsInConcrete } from "./rod-edges.js";

const rod = { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" } as const;
const torqued = { kind: "number", meaning: "1 for torqued rods, 0 otherwise", range: [-1, 1], field: "bases.*.anchors.torqued" } as const;

export const leastSpacing = formula({
  id: "anchors.least-spacing",
  text: "s_min = is_torqued > 0 ? 6 * d_a : 4 * d_a",
  source: "ACI 318-19 Table 17.9.2(a)",
  symbols: { s_min: { kind: "length", meaning: "least distance between two rods" }, is_torqued: torqued, d_a: rod },
});

export const leastTorquedEdge = formula({
  id: "anchors.least-edge",
  text: "c_min = 6 * d_a",
  source: "ACI 318-19 Table 17.9.2(a), torqued",
  symbols: { c_min: { kind: "length", meaning: "least distance from a torqued rod to a face of the concrete" }, d_a: rod },
});

export const coverNeeded = formula({
  id: "anchors.cover",
  text: "c_c = is_on_ground > 0 ? c_g : (d_a > d_5 ? c_6 : c_5)",
  source: "ACI 318-19 Table 20.5.1.3.1: cast against and always in contact with ground, or exposed to weather with bars to no. 5 and larger",
  symbols: {
    c_c: { kind: "length", meaning: "clear cover needed" },
    is_on_ground: { kind: "number", meaning: "1 where the concrete is cast against the ground, 0 where it is formed", range: [-1, 1] },
    d_a: rod,
  },
  constants: { c_g: "3 inch", c_6: "2 inch", c_5: "1.5 inch", d_5: "0.626 inch" },
});

export const edgeForCover = formula({
  id: "anchors.edge-for-cover",
  text: "c_h = c_c + b_h / 2",
  source: "geometry: cover of the widest part",
  symbols: {
    c_h: { kind: "length", meaning: "least distance from the middle of the rod to a face, for cover" },
    c_c: { kind: "length", meaning: "clear cover needed" },
    b_h: { kind: "length", meaning: "width of the head across its corners, or the rod's diameter" },
  },
});

export const headAcrossCorners = formula({
  id: "anchors.head-across-corners",
  text: "b_h = (is_heavy > 0 ? 1.5 * d_a + c_n : 1.5 * d_a) / cos_30",
  source: "ASME B18.2.1 and B18.2.2: F = 1.5 d, heavy F = 1.5 d + 1/8 in, a hexagon",
  symbols: {
    b_h: { kind: "length", meaning: "width of the head across its corners" },
    is_heavy: { kind: "number", meaning: "1 for a heavy hex nut, 0 for a hex nut", range: [-1, 1], field: "bases.*.anchors.head" },
    d_a: rod,
  },
  constants: { c_n: "0.125 inch", cos_30: "0.8660254037844386" },
});

/** Width of what is at the embedded end, m. */
export function endWidth(support: Support, d_a: number): number {
  const anchors = support.base?.fields.anchors?.value;
  if (anchors?.end?.value !== "headed" || !rodByDiameter(d_a)) return d_a;
  return headAcrossCorners.value({ is_heavy: anchors.head?.value === "hex nut" ? 0 : 1, d_a });
}

/** Piers and bare pads are cast against the ground; walls and pedestals are formed. */
export function isCastOnGround(support: Support): boolean {
  const foundation = support.foundation?.fields;
  const kind = foundation?.kind?.value;
  return kind === "pier" || ((kind === "footing" || kind === "footing on rock") && !foundation?.pedestal);
}

export const spacing: RuleDecl = {
  id: "anchors.spacing",
  title: "Spacing, edge distance and cover of the rods",
  link: "anchors",
  clause: "ACI 318-19 17.9.2, Table 20.5.1.3.1",
  fails: "The concrete splits as the nuts are tightened, or water reaches rods and heads near a face.",
  seen: "A crack from rod to rod or from a rod to the face of the pier; rust stains below it.",
  range:
    "Rods cast in, and rods set in adhesive like torqued ones (Table 17.9.2(b)): their spacing, their distance to the true face of the concrete, round piers by their circle, and the clear cover of rods and heads. A pier or pad is taken as cast against the ground, a wall or pedestal as formed and exposed to weather. A concrete edition not read here is named.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (support, base, show) => {
      const edition = support.codes.concrete;
      if (edition && !unchangedSince14.includes(edition.value)) return { over: [], unchecked: [{ message: `Least spacings by ${edition.value} are not covered here.`, at: edition }], holds: { message: "" } };
      const found = rodsInConcrete(support);
      if ("lacks" in found) return { over: [], unchecked: [{ message: `To hold the rods against their least spacing and edge distance these are needed: ${found.lacks}.`, at: base.anchors }], holds: { message: "" } };
      const { d_a, least, edge } = found;
      const isAdhesive = isSetInAdhesive(support);
      const isTorqued = isAdhesive || (base.anchors?.value.torqued?.value ?? true);
      const how = isAdhesive ? "6 rod diameters for rods set in adhesive" : isTorqued ? "6 rod diameters where nuts are torqued" : "4 rod diameters where nuts are not torqued";
      const foundation = support.foundation?.fields;
      const concrete = foundation?.pedestal ?? foundation?.diameter ?? foundation?.width ?? foundation?.thickness ?? base.anchors;
      const over: Found[] = [];
      const s_min = leastSpacing.value({ is_torqued: isTorqued ? 1 : 0, d_a });
      if (isBelow(least, s_min)) over.push({ message: `Rods stand ${show(least)} apart; ${show(s_min)} needed (${how}). Set them farther apart.`, at: base.anchors });
      const c_min = leastTorquedEdge.value({ d_a });
      const c_c = coverNeeded.value({ is_on_ground: isCastOnGround(support) ? 1 : 0, d_a });
      const c_h = edgeForCover.value({ c_c, b_h: endWidth(support, d_a) });
      if (isTorqued && isBelow(edge, c_min)) over.push({ message: `Rod to face of concrete ${show(edge)}; ${show(c_min)} needed (${how}). Widen the concrete or bring the rods in.`, at: concrete });
      else if (isBelow(edge, c_h)) over.push({ message: `Rod to face of concrete ${show(edge)}; ${show(c_h)} needed for ${show(c_c)} of cover at its widest part. Widen the concrete or bring the rods in.`, at: concrete });
      const apart = Number.isFinite(least) ? `Rods ${show(least)} apart, ${show(s_min)} needed; ` : "";
      const needed = isTorqued ? Math.max(c_min, c_h) : c_h;
      return { over, unchecked: [], holds: { message: `${apart}${show(edge)} to the face of the concrete, ${show(needed)} needed.`, at: base.anchors } };
    }),
};
