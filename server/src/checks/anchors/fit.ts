/**
 * A rod drawn longer than its concrete: its head comes out at the bottom or into the last of the cover, or meets the vertical bars on the way
 * down. Found with the pier's hole open and the truck waiting.
 *
 * Geometry, with the cover of ACI 318-19 Table 20.5.1.3.1 below the head and the clear distance of bars of 25.2.3 round it.
 */
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import { nutHeight } from "../base/hardware.js";
import { judgeBases, type Found, type Show } from "../base/judge.js";
import type { RuleDecl } from "../contract.js";
import { isSetInAdhesive } from "./cone.js";
import { barPlaces } from "./pier-bars.js";
import { distanceBetween, listening, rodsInConcrete, type RodsInConcrete } from "./rod-edges.js";
import { endWidth } from "./spacing.js";

export const depthNeeded = formula({
  id: "anchors.depth-needed",
  text: "h_n = h_ef + t_e + c_b",
  source: "geometry; 3 in cover on concrete cast against the ground by ACI 318-19 Table 20.5.1.3.1",
  symbols: {
    h_n: { kind: "length", meaning: "depth of concrete the rod needs" },
    h_ef: { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" },
    t_e: { kind: "length", meaning: "height of the head, or thickness of the hook" },
  },
  constants: { c_b: "3 inch" },
});

export const clearOfBars = formula({
  id: "anchors.clear-of-bars",
  text: "a_b = s - (b_h + d_b) / 2",
  source: "geometry",
  symbols: {
    a_b: { kind: "length", meaning: "clear distance between the head of a rod and a vertical bar", range: [-1, 1] },
    s: { kind: "length", meaning: "from the middle of the rod to the middle of the bar" },
    b_h: { kind: "length", meaning: "width of the head across its corners, or the rod's diameter" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
});

export const clearNeeded = formula({
  id: "anchors.clear-needed",
  text: "a_n = max(a_1, 1.5 * d_b)",
  source: "ACI 318-19 25.2.3: 1.5 in and 1.5 bar diameters between longitudinal bars of columns and pedestals; for rods beside them common practice",
  symbols: { a_n: { kind: "length", meaning: "clear distance needed for concrete to pass" }, d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" } },
  constants: { a_1: "1.5 inch" },
});

function depthFound(support: Support, { d_a, members }: RodsInConcrete, show: Show): Found | undefined {
  const embedment = support.base?.fields.anchors?.value.embedment;
  if (!embedment) return undefined;
  const isHooked = support.base?.fields.anchors?.value.end?.value === "hooked";
  const isAdhesive = isSetInAdhesive(support);
  const h_n = depthNeeded.value({ h_ef: embedment.value, t_e: isAdhesive ? 0 : isHooked ? d_a : nutHeight.value({ d_a }) });
  const depth = Math.min(...members.map((member) => member.depth));
  if (!isAbove(h_n, depth)) return undefined;
  return { message: `Concrete ${show(depth)} deep; ${show(h_n)} needed for rods ${show(embedment.value)} deep${isAdhesive ? "" : `, the ${isHooked ? "hook" : "head"}`} and 3 in of cover below. Shorten the rods or deepen the concrete.`, at: embedment };
}

/** Nearest a head comes to a bar, with what it needs; nothing where the bars' places are not known. */
function barsNear(support: Support, { rods, d_a }: RodsInConcrete): { readonly clear: number; readonly needed: number } | undefined {
  const gather = listening();
  const bars = barPlaces(support, gather);
  if (gather.lacks.length > 0 || !bars) return undefined;
  const b_h = endWidth(support, d_a);
  const d_b = bars.bar.diameter;
  // How a ring of bars is turned about a round pier is not known: the nearest it can come counts.
  const s = Math.min(...(bars.isRing ? rods.map(({ x, y }) => distanceBetween({ x: distanceBetween({ x: 0, y: 0 }, { x, y }), y: 0 }, bars.places[0])) : rods.flatMap((rod) => bars.places.map((bar) => distanceBetween(rod, bar)))));
  return { clear: clearOfBars.value({ s, b_h, d_b }), needed: clearNeeded.value({ d_b }) };
}

export const fit: RuleDecl = {
  id: "anchors.fit",
  title: "Room for the rods in their concrete",
  link: "anchors",
  clause: "ACI 318-19 Table 20.5.1.3.1, 25.2.3; geometry",
  fails: "A rod comes out at the bottom of its concrete, or its head does not pass the vertical bars.",
  seen: "Rods cut short on the site, or a cage bent aside to let them in.",
  range: "Embedment, head and 3 in of cover against the depth of the concrete; heads against the vertical bars of a pier or pedestal where they are given, a ring of bars in a round pier turned to its worst. Bars of pads and walls are not looked at.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (support, base, show) => {
      const found = rodsInConcrete(support);
      const embedment = base.anchors?.value.embedment;
      if ("lacks" in found || !embedment) {
        return { over: [], unchecked: [{ message: `To see whether the rods fit into their concrete these are needed: ${"lacks" in found ? found.lacks : "their embedment"}.`, at: base.anchors }], holds: { message: "" } };
      }
      const depth = depthFound(support, found, show);
      const near = barsNear(support, found);
      const over: Found[] = depth ? [depth] : [];
      const bars = support.foundation?.fields.bars;
      if (near && isBelow(near.clear, near.needed)) {
        const gap = near.clear < 0 ? "The heads of the rods meet the vertical bars" : `Head to vertical bar ${show(near.clear)} clear`;
        over.push({ message: `${gap}; ${show(near.needed)} needed for the concrete to pass. Bring the rods in, widen the concrete, or draw where the bars stand between the rods.`, at: bars });
      }
      const clear = near ? `; ${show(near.clear)} clear between heads and vertical bars, ${show(near.needed)} needed` : "";
      return { over, unchecked: [], holds: { message: `Rods ${show(embedment.value)} deep in ${show(Math.min(...found.members.map((member) => member.depth)))} of concrete${clear}.`, at: base.anchors } };
    }),
};
