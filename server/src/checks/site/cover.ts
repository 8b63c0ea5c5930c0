/**
 * Bars too near the face of the concrete: water and air reach them, they rust, and the rust bursts the concrete off. In the field: brown lines
 * along a pier, a corner that comes away in the hand.
 *
 * ACI 318-19 Table 20.5.1.3.1: 3 in where cast against the ground; in forms, and then in the ground or the weather, 2 in for no. 6 bars and larger
 * and 1-1/2 in for smaller ones.
 */
import { formula } from "../../formula/declare.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { unchangedSince14 } from "../editions.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

export const coverInGround = formula({
  id: "site.cover-in-ground",
  text: "c_n = c_0",
  source: "ACI 318-19 Table 20.5.1.3.1, cast against the ground",
  symbols: { c_n: { kind: "length", meaning: "clear cover needed" } },
  constants: { c_0: "3 inch" },
});

export const coverInForms = formula({
  id: "site.cover-in-forms",
  text: "c_n = max(d_t > d_5 ? c_2 : c_1, (d_b > d_5 ? c_2 : c_1) - d_t)",
  source: "ACI 318-19 Table 20.5.1.3.1, in forms and then in the ground or the weather",
  symbols: {
    c_n: { kind: "length", meaning: "clear cover of the ties that is needed" },
    d_t: { kind: "length", meaning: "diameter of the ties or spiral", field: "foundations.*.spiral" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
  constants: { d_5: "0.65 inch", c_1: "1.5 inch", c_2: "2 inch" },
});

function judgeCover(support: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const kind = fields.kind?.value;
  const isPier = kind === "pier";
  const hasBars = isPier ? fields.bars !== undefined || fields.spiral !== undefined : fields["bottom bars"] !== undefined || fields["top bars"] !== undefined;
  const cover = fields.cover;
  if (!hasBars || !cover) return undefined;
  const nothing = { message: "" };
  const edition = support.codes.concrete;
  if (edition && !unchangedSince14.includes(edition.value)) return { over: [], unchecked: [{ message: `Cover by ${edition.value} is not covered here.`, at: edition }], holds: nothing };
  // The underside of a pad lies on the ground, whatever its sides were cast against.
  const isFormed = isPier && fields["cast against"]?.value === "forms";
  const d_t = fields.spiral?.value.bar?.value.diameter;
  const d_b = fields.bars?.value.bar?.value.diameter;
  if (isFormed && d_t === undefined && d_b === undefined) return { over: [], unchecked: [{ message: "The sizes of the bars are needed to see whether their cover suffices.", at: cover }], holds: nothing };
  const needed = isFormed ? coverInForms.value({ d_t: d_t ?? 0, d_b: d_b ?? 0 }) : coverInGround.value({});
  const where = isFormed ? "cast in forms and exposed to ground or weather" : "cast against the ground";
  if (!isBelow(cover.value, needed)) return { over: [], unchecked: [], holds: { message: `Cover ${show(cover.value, "length")}; ${show(needed, "length")} needed ${where}.`, at: cover } };
  const way = isPier && !isFormed ? "Give more cover, or say that it is cast in forms (cast against: forms)." : "Give more cover.";
  return { over: [{ message: `Cover ${show(cover.value, "length")}; ${show(needed, "length")} needed ${where}. ${way}`, at: cover }], unchecked: [], holds: nothing };
}

export const cover: RuleDecl = {
  id: "site.cover",
  title: "Cover of the bars",
  link: "site",
  clause: "ACI 318-19 Table 20.5.1.3.1",
  fails: "Water and air reach the bars, they rust, and the concrete over them bursts off.",
  seen: "Brown lines along a pier; a corner that comes away in the hand.",
  range: "Piers, and pads by their undersides, with one cover all round. Walls, more cover where chlorides are, and bars set out of place are not looked at.",
  judge: (structure) => judgeFoundations(structure, judgeCover),
};
