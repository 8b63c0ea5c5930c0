/** Structural bolts. */
import { kinds } from "../units/kinds.js";

const ksi = kinds.steelStress.US.factor;

/** Nominal stresses, Pa. */
export interface BoltGrade {
  readonly name: string;
  readonly F_nt: number;
  /** Shear with threads in the shear plane, and with threads excluded from it. */
  readonly F_nvN: number;
  readonly F_nvX: number;
  readonly source: string;
}

const grade = (name: string, F_nt: number, F_nvN: number, F_nvX: number): BoltGrade => ({ name, F_nt: F_nt * ksi, F_nvN: F_nvN * ksi, F_nvX: F_nvX * ksi, source: "AISC 360-22 Table J3.2" });

/** Groups 120 and 150 by the grade a drawing names, and A307, whose threads are always taken as in the shear plane. */
export const boltGrades: readonly BoltGrade[] = [grade("A325", 90, 54, 68), grade("A490", 113, 68, 84), grade("A307", 45, 27, 27)];
