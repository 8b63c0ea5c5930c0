/**
 * Nothing holds the top of a pier together where the rods push sideways: its corners break off under the plate.
 *
 * ACI 318-19 10.7.6.1.5: rods in the top of a column or pedestal are enclosed by ties round them and at least four vertical bars, two no. 4 or
 * three no. 3 within 5 in of the top of the concrete; grout does not count into the 5 in.
 */
import { formula } from "../../formula/declare.js";
import { judgeBases } from "../base/judge.js";
import type { RuleDecl } from "../contract.js";
import { unchangedSince14 } from "../editions.js";
import { hasPier } from "./pier-bars.js";

export const tiesNeeded = formula({
  id: "anchors.ties-needed",
  text: "n_t = d_t >= d_4 ? 2 : 3",
  source: "ACI 318-19 10.7.6.1.5",
  symbols: { n_t: { kind: "number", meaning: "ties needed within 5 in of the top" }, d_t: { kind: "length", meaning: "diameter of the ties", field: "foundations.*.top ties" } },
  constants: { d_4: "0.49 inch" },
});

/** No. 3, the least bar of the rule; one of 9.5 mm is one, m. */
const leastTie = 0.0094;

export const topTies: RuleDecl = {
  id: "anchors.top-ties",
  title: "Ties at the top of the pier round the rods",
  link: "anchors",
  clause: "ACI 318-19 10.7.6.1.5",
  fails: "A corner of the pier's top breaks off beside a rod that pushes sideways.",
  seen: "A pier top split along the line of its rods; ties that begin a foot below the top.",
  range: "Number and size of the ties within 5 in of the top of a pier or pedestal. That they enclose the rods and four vertical bars, and their cover, is for the drawing.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (support, base) => {
      const nothing = { message: "" };
      const foundation = support.foundation?.fields;
      const edition = support.codes.concrete;
      if (!hasPier(support)) return { over: [], unchecked: [], holds: { message: "The rods do not stand in a pier or pedestal: no ties round them are asked for.", at: base.anchors } };
      if (edition && !unchangedSince14.includes(edition.value)) return { over: [], unchecked: [{ message: `Ties at the top of a pier by ${edition.value} are not covered here.`, at: edition }], holds: nothing };
      const ties = foundation?.["top ties"];
      const bar = ties?.value.bar?.value;
      const count = ties?.value.count?.value;
      if (!bar || count === undefined) return { over: [], unchecked: [{ message: "Which ties stand within 5 in of the top of the concrete is not given (top ties); two no. 4 or three no. 3 round the rods are needed.", at: foundation?.bars ?? support.foundation }], holds: nothing };
      const needed = tiesNeeded.value({ d_t: bar.diameter });
      const given = `${count} ${bar.name} within 5 in of the top`;
      if (bar.diameter < leastTie || count < needed) return { over: [{ message: `${given}; two no. 4 or three no. 3 needed round the rods. Add ties at the top.`, at: ties }], unchecked: [], holds: nothing };
      return { over: [], unchecked: [], holds: { message: `${given} round the rods and vertical bars; ${needed} needed.`, at: ties } };
    }),
};
