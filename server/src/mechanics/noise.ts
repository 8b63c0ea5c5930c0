/** Rounding left over by a solution: what is nothing beside the largest number of the same solution is zero. */
import type { Forces } from "./forces.js";

/** Share of the largest component below which a component is rounding; the solver's own residual is about 1e-12. */
const share = 1e-10;

const components = ({ P, Vx, Vy, Mx, My }: Forces): readonly number[] => [P, Vx, Vy, Mx, My];

/** The same forces with rounding set to zero; `all` is everything the one solution gave. */
export function withoutRounding(all: readonly Forces[]): readonly Forces[] {
  const least = share * Math.max(0, ...all.flatMap(components).map(Math.abs));
  const clean = (value: number): number => (Math.abs(value) <= least ? 0 : value);
  return all.map(({ P, Vx, Vy, Mx, My, Mz }) => ({ P: clean(P), Vx: clean(Vx), Vy: clean(Vy), Mx: clean(Mx), My: clean(My), ...(Mz === undefined ? {} : { Mz: clean(Mz) }) }));
}
