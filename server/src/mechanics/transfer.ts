import type { Forces } from "./forces.js";

/** The same forces on a section lower by `arm`, m: shears add to the moments. Weight between the two is not in it. */
export const lowered = (forces: Forces, arm: number): Forces => ({ ...forces, Mx: forces.Mx - forces.Vy * arm, My: forces.My + forces.Vx * arm });
