import { kinds } from "../units/kinds.js";
import { plainText, type NotInCatalog } from "./lookup.js";

const ksi = kinds.steelStress.US.factor;
const pcf = kinds.unitWeight.US.factor;

/** A number the program assumes where a notebook is silent; SI, with the place it comes from. */
export interface AssumedValue {
  readonly value: number;
  readonly source: string;
}

/** Unit weight of reinforced normalweight concrete, N/m³. */
export const concreteUnitWeight: AssumedValue = { value: 150 * pcf, source: "common practice, no source: normalweight concrete of about 145 pcf and its bars" };

/** Unit weight of water, N/m³. */
export const waterUnitWeight: AssumedValue = { value: 62.4 * pcf, source: "fresh water at 50 °F" };

/** Modulus of elasticity of structural steel and of reinforcing bars, Pa. */
export const steelModulus: AssumedValue = { value: 29000 * ksi, source: "AISC 360-22, symbols (E); ACI 318-19, 20.2.2.2" };

/** Shear modulus of structural steel, Pa. */
export const steelShearModulus: AssumedValue = { value: 11200 * ksi, source: "AISC 360-22, symbols (G)" };

/** A structural steel; stresses Pa. */
export interface Steel {
  readonly name: string;
  readonly fy: number;
  readonly fu: number;
  readonly form: "hollow section" | "plate" | "pipe" | "W shape";
  readonly source: string;
}

const steel = (name: string, fy: number, fu: number, form: Steel["form"], source: string): Steel => ({ name, fy: fy * ksi, fu: fu * ksi, form, source });

/** Steels of columns and base plates. The values of A500 are those of shaped sections, which include square HSS. */
export const steels: readonly Steel[] = [
  steel("A500 Gr B", 46, 58, "hollow section", "ASTM A500/A500M, shaped sections, grade B"),
  steel("A500 Gr C", 50, 62, "hollow section", "ASTM A500/A500M-21, shaped sections, grade C"),
  steel("A1085", 50, 65, "hollow section", "ASTM A1085/A1085M"),
  steel("A36", 36, 58, "plate", "ASTM A36/A36M (from memory)"),
  steel("A588", 50, 70, "plate", "ASTM A588/A588M, plates to 4 in. (from memory)"),
  steel("A572 Gr 50", 50, 65, "plate", "ASTM A572/A572M, grade 50"),
];

const letters = (text: string): string => plainText(text).replace(/\bastm\b|\bgrade\b|\bgr\b|[^a-z0-9]/g, "");

/** A steel by name: `A500 Gr C`, `ASTM A500 grade C`, `A572-50`; or why there is none. */
export function findSteel(text: string): Steel | NotInCatalog {
  const wanted = letters(text.slice(0, 80));
  const found = steels.find(({ name }) => letters(name) === wanted);
  return found ?? { problem: `"${text.trim().slice(0, 40)}" is not a steel known here`, nearest: steels.filter(({ name }) => letters(name).startsWith(wanted.slice(0, 4))).map(({ name }) => name) };
}

/** A grade of reinforcing bar; stresses Pa. */
export interface BarGrade {
  readonly name: string;
  readonly grade: 60 | 80;
  readonly fy: number;
  readonly fu: number;
  readonly source: string;
}

export const barGrades: readonly BarGrade[] = [
  { name: "A615 Gr 60", grade: 60, fy: 60 * ksi, fu: 80 * ksi, source: "ASTM A615/A615M-20, Table 2" },
  { name: "A615 Gr 80", grade: 80, fy: 80 * ksi, fu: 100 * ksi, source: "ASTM A615/A615M-20, Table 2" },
];

/** A bar grade by text: `60`, `Gr 60`, `A615 Gr 80`; or why there is none. */
export function findBarGrade(text: string): BarGrade | NotInCatalog {
  const read = /^(?:a615)?(60|80)$/.exec(letters(text.slice(0, 80)));
  const found = read ? barGrades.find(({ grade }) => grade === Number(read[1])) : undefined;
  return found ?? { problem: `"${text.trim().slice(0, 40)}" is not a bar grade known here`, nearest: barGrades.map(({ name }) => name) };
}
