/** Structural bolts. */
import { kinds } from "../units/kinds.js";

const ksi = kinds.steelStress.US.factor;
const kip = kinds.force.US.factor;
const inch = kinds.length.US.factor;

/** Nominal stresses, Pa. */
export interface BoltGrade {
  readonly name: string;
  readonly F_nt: number;
  /** Shear with threads in the shear plane, and with threads excluded from it. */
  readonly F_nvN: number;
  readonly F_nvX: number;
  /** Least pretension by diameter, N and m; none where the grade is not pretensioned. */
  readonly pretension: readonly (readonly [number, number])[];
  readonly source: string;
}

const sizes = [1 / 2, 5 / 8, 3 / 4, 7 / 8, 1, 9 / 8, 5 / 4, 11 / 8, 3 / 2] as const;

/** AISC 360-22 Table J3.1 (from memory, all but the 28 kip of 3/4 in A325, which AISC Companion 16th ed., Example J.5 has). */
const pretensions = { A325: [12, 19, 28, 39, 51, 64, 81, 97, 118], A490: [15, 24, 35, 49, 64, 80, 102, 121, 148], A307: [] } as const;

const grade = (name: keyof typeof pretensions, F_nt: number, F_nvN: number, F_nvX: number): BoltGrade => ({ name, F_nt: F_nt * ksi, F_nvN: F_nvN * ksi, F_nvX: F_nvX * ksi, pretension: pretensions[name].map((T, i) => [sizes[i] * inch, T * kip]), source: "AISC 360-22 Table J3.2" });

/** Groups 120 and 150 by the grade a drawing names, and A307, whose threads are always taken as in the shear plane. */
export const boltGrades: readonly BoltGrade[] = [grade("A325", 90, 54, 68), grade("A490", 113, 68, 84), grade("A307", 45, 27, 27)];

/** Least pretension of a bolt, N, or undefined where the table has none. */
export const pretensionOf = ({ pretension }: BoltGrade, diameter: number): number | undefined => pretension.find(([d]) => Math.abs(d - diameter) < 1e-6)?.[1];

/** Mean slip coefficients by the class of the surfaces: AISC 360-22 J3.9. */
export const slipCoefficients: Readonly<Record<"class A" | "class B", number>> = { "class A": 0.3, "class B": 0.5 };
