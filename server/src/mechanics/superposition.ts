/** Adding up: forces of several load cases with their factors, and loads on a body about a point. Statics, no approximation. */
import { routine } from "../formula/calc.js";
import type { Forces } from "./forces.js";
import type { RoofLoad, Vector } from "./rigid-roof.js";

export interface FactoredForces {
  readonly factor: number;
  readonly forces: Forces;
}

/** Sum of factor times forces. */
export function superpose(parts: readonly FactoredForces[]): Forces {
  let P = 0;
  let Vx = 0;
  let Vy = 0;
  let Mx = 0;
  let My = 0;
  let Mz = 0;
  for (const { factor, forces } of parts) {
    P += factor * forces.P;
    Vx += factor * forces.Vx;
    Vy += factor * forces.Vy;
    Mx += factor * forces.Mx;
    My += factor * forces.My;
    Mz += factor * (forces.Mz ?? 0);
  }
  return Mz === 0 ? { P, Vx, Vy, Mx, My } : { P, Vx, Vy, Mx, My, Mz };
}

/** {@link superpose} as a step of a calculation. */
export const superposition = routine<readonly FactoredForces[], Forces>({
  id: "mechanics.superposition",
  title: "Forces of a combination",
  method: "each force is the sum of factor times force over the load cases",
  source: "linear superposition; common practice, no single source",
  run: superpose,
  show: (parts, sum) => ({
    given: parts.flatMap(({ factor, forces }, i) => [
      { symbol: `f_${i + 1}`, meaning: `factor of case ${i + 1}`, kind: "number" as const, value: factor },
      { symbol: `P_${i + 1}`, meaning: `axial force of case ${i + 1}, compression positive`, kind: "force" as const, value: forces.P },
    ]),
    found: shown(sum),
  }),
});

/** Sideways forces of loads together, N. */
export const pushOf = (loads: readonly RoofLoad[]): { readonly x: number; readonly y: number } => ({ x: loads.reduce((sum, { Fx }) => sum + Fx, 0), y: loads.reduce((sum, { Fy }) => sum + Fy, 0) });

export interface ResultantArgs {
  readonly loads: readonly RoofLoad[];
  readonly about: Vector;
}

/** Force and moment that the loads stand for at a point; `P` is positive downward. */
export function resultantOf({ loads, about }: ResultantArgs): Forces {
  let P = 0;
  let Vx = 0;
  let Vy = 0;
  let Mx = 0;
  let My = 0;
  for (const load of loads) {
    const x = load.x - about.x;
    const y = load.y - about.y;
    const z = load.z - about.z;
    P -= load.Fz;
    Vx += load.Fx;
    Vy += load.Fy;
    Mx += y * load.Fz - z * load.Fy;
    My += z * load.Fx - x * load.Fz;
  }
  return { P, Vx, Vy, Mx, My };
}

/** {@link resultantOf} as a step of a calculation. */
export const roofResultant = routine<ResultantArgs, Forces>({
  id: "mechanics.roof-resultant",
  title: "Resultant on the roof about its middle",
  method: "sum of the forces, and of their moments about the middle of the roof",
  source: "statics; common practice, no single source",
  run: resultantOf,
  show: ({ loads }, sum) => ({
    given: loads.flatMap((load, i) => [
      { symbol: `x_${i + 1}`, meaning: `place of load ${i + 1}, east`, kind: "distance" as const, value: load.x },
      { symbol: `y_${i + 1}`, meaning: `place of load ${i + 1}, north`, kind: "distance" as const, value: load.y },
      { symbol: `F_z${i + 1}`, meaning: `lift of load ${i + 1}`, kind: "force" as const, value: load.Fz },
    ]),
    found: shown(sum),
  }),
});

const shown = ({ P, Vx, Vy, Mx, My }: Forces) => [
  { symbol: "P", meaning: "vertical force, downward positive", kind: "force" as const, value: P },
  { symbol: "V_x", meaning: "push to the east", kind: "force" as const, value: Vx },
  { symbol: "V_y", meaning: "push to the north", kind: "force" as const, value: Vy },
  { symbol: "M_x", meaning: "moment about the east axis", kind: "moment" as const, value: Mx },
  { symbol: "M_y", meaning: "moment about the north axis", kind: "moment" as const, value: My },
];
