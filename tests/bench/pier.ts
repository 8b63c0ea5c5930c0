/** Time to solve one pier under one combination: elastic springs and each p-y curve. */
import { solveBeamOnSprings, type BeamArgs } from "../../server/src/mechanics/beam-on-springs.js";
import type { SoilLaw } from "../../server/src/mechanics/soil-curves.js";
import { printRows, time, type Row } from "./measure.js";

const laws: readonly (readonly [string, SoilLaw])[] = [
  ["springs that grow with depth", { type: "springs", k: 0, growth: 1.6e7 }],
  ["soft clay", { type: "clay", c: 24e3, eps50: 0.02 }],
  ["sand", { type: "sand", phi: 0.576, k: 1.6e7 }],
  ["weak rock", { type: "rock", q: 1.4e6, rqd: 50, strain: 2e-4 }],
];

const pier: Omit<BeamArgs, "H" | "M" | "layers"> = { length: 3, width: 0.61, E: 8.7e9, I: 0.0068, P: 2e4 };

export function benchPiers(turns: number): void {
  const rows = laws.map(([what, law]): Row => {
    const solve = (turn: number) => time(() => solveBeamOnSprings({ ...pier, H: 4e3 + 10 * turn, M: 15e3, layers: [{ top: 0, law, weight: 17e3 }] }));
    for (let turn = 0; turn < 200; turn += 1) solve(turn);
    return { what, times: Array.from({ length: turns }, (_, turn) => solve(turn)), budget: { at: "p95", ms: 2 } };
  });
  printRows("One pier under one combination", rows);
}
