/** Steels of columns by what the column is made as; the name of a grade alone does not settle its strength. */
import { kinds } from "../units/kinds.js";
import { findSteel, type Steel } from "./materials.js";
import { isMissing, type NotInCatalog } from "./lookup.js";
import type { SectionMake } from "./sections.js";

const ksi = kinds.steelStress.US.factor;

const steel = (name: string, fy: number, fu: number, form: Steel["form"], source: string): Steel => ({ name, fy: fy * ksi, fu: fu * ksi, form, source });

/** A500 gave round sections less than shaped ones until its 2021 edition; the lesser values are the safe side. */
const round: readonly Steel[] = [
  steel("A500 Gr B", 42, 58, "hollow section", "ASTM A500/A500M, round sections, grade B, editions before 2021 (from memory)"),
  steel("A500 Gr C", 46, 62, "hollow section", "ASTM A500/A500M, round sections, grade C, editions before 2021 (from memory)"),
];

const pipe = steel("A53 Gr B", 35, 60, "pipe", "ASTM A53/A53M, grade B (from memory)");
const wide = steel("A992", 50, 65, "W shape", "ASTM A992/A992M (from memory)");

const makes: Readonly<Record<SectionMake, readonly string[]>> = {
  "shaped HSS": ["A500 Gr C", "A500 Gr B", "A1085"],
  "round HSS": ["A500 Gr C", "A500 Gr B", "A1085"],
  pipe: ["A53 Gr B"],
  W: ["A992", "A36", "A572 Gr 50"],
};

const words: Readonly<Record<SectionMake, string>> = { "shaped HSS": "square and rectangular HSS", "round HSS": "round HSS", pipe: "pipe", W: "W shapes" };

/** The steel of a grade in a section of this make; or that the two do not go together. */
export function steelOfSection(grade: string, make: SectionMake): Steel | NotInCatalog {
  if (!makes[make].includes(grade)) return { problem: `${grade} is not a steel of ${words[make]}: state the grade, ${makes[make].join(" or ")}`, nearest: makes[make] };
  if (make === "pipe") return pipe;
  if (grade === wide.name) return wide;
  const ofRound = make === "round HSS" ? round.find(({ name }) => name === grade) : undefined;
  const found = ofRound ?? findSteel(grade);
  return isMissing(found) ? { ...found, nearest: makes[make] } : found;
}
