/**
 * Bars of a pad or a strip footing too near the ground they were cast on: water and air reach them, they rust, and the rust bursts the concrete off.
 *
 * ACI 318-19 Table 20.5.1.3.1: 3 in where cast against the ground and always in contact with it.
 */
import { formula } from "../../formula/declare.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { unchangedSince14 } from "../editions.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

export const coverOfPad = formula({
  id: "site.cover-of-pad",
  text: "c_n = c_0",
  source: "ACI 318-19 Table 20.5.1.3.1, cast against the ground",
  symbols: { c_n: { kind: "length", meaning: "clear cover needed" } },
  constants: { c_0: "3 inch" },
});

function judgeCover(support: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const cover = fields.cover;
  const kind = fields.kind?.value;
  const strip = kind === "wall on footing" ? fields.footing?.value : undefined;
  const isPad = kind === "footing" || kind === "footing on rock";
  const bars = strip ?? (isPad ? fields : undefined);
  if (!cover || (!bars?.["bottom bars"] && !bars?.["top bars"])) return undefined;
  const what = strip ? "the strip footing of a wall" : "a pad";
  const nothing = { message: "" };
  const edition = support.codes.concrete;
  if (edition && !unchangedSince14.includes(edition.value)) return { over: [], unchecked: [{ message: `Cover by ${edition.value} is not covered here.`, at: edition }], holds: nothing };
  const needed = coverOfPad.value({});
  const says = `Cover ${show(cover.value, "length")}; ${show(needed, "length")} needed below the bars of ${what}, which is cast against ${kind === "footing on rock" ? "the rock" : "the ground"}`;
  if (isBelow(cover.value, needed)) return { over: [{ message: `${says}. Set the bars higher and count the smaller depth.`, at: cover }], unchecked: [], holds: nothing };
  return { over: [], unchecked: [], holds: { message: `${says}.`, at: cover } };
}

export const cover: RuleDecl = {
  id: "site.cover",
  title: "Cover of the bars of a pad or a strip footing",
  link: "site",
  clause: "ACI 318-19 Table 20.5.1.3.1",
  fails: "Water and air reach the bars, they rust, and the concrete over them bursts off.",
  seen: "Bars lying in the mud at the bottom of the hole when the concrete comes.",
  range: "Pads and strip footings with bars, by their undersides, with one cover all round. Piers, pedestals and walls have checks of their own; more cover where chlorides are, and bars set out of place are not looked at.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeCover),
};
