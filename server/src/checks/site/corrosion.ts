/**
 * Steel that rusts in salt air or beside a pool, rods and nuts of two finishes that do not go together, stainless steel against zinc.
 *
 * Common practice, no source: by the sea or a pool, zinc or a coating on all that is in view; rods, nuts and washers bought as one set with one
 * finish (AISC Design Guide 1, 2nd ed., 2.6); stainless steel kept from touching zinc where it gets wet.
 */
import type { Base, Column, Structure, Support } from "../../project/model.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { spoken, type Found } from "./judge.js";

type Speak = (found: Found) => void;

function hardwareFound(base: Base, isHarsh: boolean, isDry: boolean, galvanized: boolean, over: Speak, unchecked: Speak): void {
  const rod = base["rod finish"];
  const nut = base["nut finish"];
  if (!rod && (nut || isHarsh)) unchecked({ message: "The finish of the anchor rods is not stated (rod finish).", at: nut ?? base.anchors });
  if (rod && !nut) unchecked({ message: "The finish of the nuts and washers is not stated (nut finish).", at: rod });
  if (rod && isHarsh && rod.value === "plain") over({ message: "Plain anchor rods in this air. Have them hot-dip galvanized, with their nuts and washers.", at: rod });
  if (rod && nut && rod.value !== nut.value) {
    over({ message: `Rods ${rod.value}, nuts ${nut.value}: the threads do not fit, or one eats the other. Buy rods, nuts and washers as one set with one finish.`, at: nut });
  } else if (rod?.value === "stainless" && !isDry && base["metals kept apart"]?.value !== true) {
    const plate = galvanized ? "the zinc of the plate" : "the steel of the plate";
    over({ message: `Stainless rods against ${plate} in damp air: ${galvanized ? "the zinc" : "the steel"} goes first. Part them with sleeves and washers (metals kept apart: yes), or take hot-dip galvanized rods.`, at: rod });
  }
}

function steelFound(column: Column | undefined, base: Base | undefined, over: Speak, unchecked: Speak): void {
  if (column?.section) {
    const { galvanized, coated } = column;
    if (!galvanized?.value && !coated?.value) {
      if (galvanized || coated) over({ message: "The column is neither galvanized nor coated for this air. Do one of them.", at: galvanized ?? coated });
      else unchecked({ message: "How the column is kept from rust is not stated (galvanized, coated).", at: column.section });
    }
  }
  const protection = base?.protection;
  // A plate below the finish has a rule of its own.
  if (!base || (base["finish above plate"]?.value ?? 0) > 0) return;
  if (!protection) unchecked({ message: "How plate, nuts and rods are kept from rust is not stated (protection).", at: base.plate });
  else if (protection.value === "none") over({ message: "Plate, nuts and rods have no protection in this air. Have them galvanized, and better also coated.", at: protection });
}

function judgeSupport(support: Support): RuleFinding[] {
  const air = support.site.air;
  const base = support.base?.fields;
  const isHarsh = air?.value === "salt spray" || air?.value === "pool";
  if (!isHarsh && !base?.["rod finish"] && !base?.["nut finish"]) return [];
  const over: Found[] = [];
  const unchecked: Found[] = [];
  if (isHarsh) steelFound(support.column?.fields, base, (found) => over.push(found), (found) => unchecked.push(found));
  const protection = base?.protection?.value;
  if (base) hardwareFound(base, isHarsh, air?.value === "dry", protection === "galvanized" || protection === "galvanized and coated", (found) => over.push(found), (found) => unchecked.push(found));
  if (!support.column?.fields.section && !base) return [];
  return [spoken(support, { over, unchecked, holds: { message: `Column, plate, rods and nuts are kept from rust as ${air ? `${air.value} air` : "the air"} asks.`, at: air } }, support)];
}

export const corrosion: RuleDecl = {
  id: "site.corrosion",
  title: "Rust by the air, and unlike metals",
  link: "site",
  clause: "common practice, no source; AISC Design Guide 1, 2nd ed., 2.6 for galvanized rods",
  fails: "The foot of a column rusts through; a nut does not go on its rod, or eats it.",
  seen: "White and brown streaks below the nuts of a pool pavilion; threads stripped of their zinc by a tap on site.",
  range: "By the air of the site where it is salt spray or that of a pool, and by the finishes stated in any air. The thickness of zinc or coating, repair of what erection scraped off, aluminum, and wood treated with copper are not looked at.",
  alone: true,
  judge: (structure: Structure) => structure.supports.flatMap(judgeSupport),
};
