/** The loads on the roof, case by case, and what each brings to every column. */
import { plainCalc, recordingCalc } from "../formula/calc.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { RoofColumn } from "../mechanics/rigid-roof.js";
import { roofResultant } from "../mechanics/superposition.js";
import { edgeDemands, edgeDerivations } from "./column-tops.js";
import { chosenCases, combine } from "./combinations.js";
import { deadCases } from "./dead.js";
import type { ColumnActions, Edge, LoadCase, LoadDerivation, NoActions } from "./demand.js";
import type { RoofCase } from "./roof-case.js";
import type { RoofInputs } from "./roof-inputs.js";
import { edges, middleOf } from "./roof-plane.js";
import { carryDown, columnsUnder, stripLoads, type Reaction } from "./way-down.js";
import { minimumCase, minimumLoad, minimumSource } from "./wind/minimum.js";
import { directionOf, windCases, windPatches } from "./wind/free-roof.js";
import { figureFor } from "./wind/net-coefficients.js";
import { velocityPressureAt, velocityPressureClause } from "./wind/velocity-pressure.js";

/** What one load case puts on the whole roof, about the middle of the roof at mean height; `P` is positive downward. */
export interface CaseResultant {
  readonly loadCase: LoadCase;
  readonly total: Forces;
  /** In words, why the case is information only: its coefficients are used outside their range. */
  readonly outside?: string;
}

/** A direction of the wind in which the figure's range does not hold. */
export interface OutsideRange {
  readonly from: Edge;
  readonly figure: string;
  readonly because: string;
}

export interface RoofSystem {
  /** The actions of each column in the order of the inputs, or why there are none. */
  readonly columns: readonly ColumnActions[] | NoActions;
  readonly resultants: readonly CaseResultant[];
  readonly outside: readonly OutsideRange[];
  readonly derivations: () => readonly LoadDerivation[];
}

interface Cases {
  readonly cases: readonly RoofCase[];
  readonly outside: readonly OutsideRange[];
}

function roofCases(inputs: RoofInputs, q_h: number): Cases {
  const { plane, flow, edgeDepth, site, dead, posts } = inputs;
  const cases: RoofCase[] = [...deadCases(plane, dead, posts)];
  const outside: OutsideRange[] = [];
  for (const from of edges) {
    const direction = directionOf(site.standard, plane, from);
    const use = figureFor(direction, plainCalc);
    if (use.outside !== undefined) outside.push({ from, figure: use.figure, because: use.outside });
    for (const wind of windCases(plane, flow, [from])) {
      cases.push({
        loadCase: wind.loadCase,
        source: use.source,
        outside: use.outside,
        loads: (calc) => stripLoads(plane, windPatches(plane, wind, direction, q_h, calc), calc),
      });
    }
    cases.push({ loadCase: minimumCase(plane, from), source: minimumSource, loads: (calc) => [minimumLoad(plane, edgeDepth, from, calc)] });
  }
  return { cases, outside };
}

/** Runs one case to the column bases. */
function runCase(roofCase: RoofCase, columns: readonly RoofColumn[], inputs: RoofInputs, calc: Calc) {
  const loads = roofCase.loads(calc);
  const total = calc.routine(roofResultant, { loads, about: middleOf(inputs.plane, plainCalc) });
  const shared = carryDown(columns, loads, calc);
  const reactions = "unknown" in shared ? shared : (roofCase.finish?.(shared, calc) ?? shared);
  return { total, reactions };
}

const allFinite = ({ P, Vx, Vy, Mx, My }: Forces): boolean => [P, Vx, Vy, Mx, My].every(Number.isFinite);

/** The edges from which the wind can be calculated, said beside those from which it cannot. */
const within = (outside: readonly OutsideRange[]): string => {
  const others = edges.filter((edge) => !outside.some(({ from }) => from === edge));
  return others.length === 0 ? "" : `; wind from the ${others.join(" and ")} is within it`;
};

const sameReasons = (outside: readonly OutsideRange[]): string =>
  [...new Set(outside.map(({ because }) => because))]
    .map((because) => `wind from the ${outside.filter((one) => one.because === because).map(({ from }) => from).join(" and ")}: ${because}`)
    .join("; ");

function columnActions(inputs: RoofInputs, cases: readonly RoofCase[], reactions: readonly (readonly Reaction[])[]): readonly ColumnActions[] | NoActions {
  if (!reactions.flat().every(({ top, base }) => allFinite(top) && allFinite(base))) return { unknown: "the roof's loads leave the range of numbers that can be calculated with" };
  const { standard } = inputs.site;
  const loadCases = cases.map(({ loadCase }) => loadCase);
  const strength = chosenCases(standard, "strength", loadCases);
  const allowable = chosenCases(standard, "allowable", loadCases);
  const edgesAtTop = edgeDemands(inputs);
  return inputs.posts.map((_, place) => {
    const own = reactions.map((ofCase) => ofCase[place]);
    const atStrength = combine(strength, own, plainCalc);
    return {
      cases: own.map(({ top, base }, i) => ({ loadCase: loadCases[i], top, base })),
      strength: atStrength,
      atTop: [...atStrength, ...edgesAtTop[place]],
      allowable: combine(allowable, own, plainCalc),
    };
  });
}

/** Finds the loads on a roof and carries them down. Pure and total. */
export function roofSystem(inputs: RoofInputs): RoofSystem {
  const q_h = velocityPressureAt(inputs.plane.meanHeight, inputs.site, plainCalc);
  const { cases, outside } = roofCases(inputs, q_h);
  const columns = columnsUnder(inputs.plane, inputs.posts, plainCalc);
  const ran = cases.map((one) => runCase(one, columns, inputs, plainCalc));
  const resultants = ran.map(({ total }, i): CaseResultant => ({ loadCase: cases[i].loadCase, total, outside: cases[i].outside }));
  const stopped = ran.map(({ reactions }) => reactions).find((one): one is NoActions => "unknown" in one);
  const reactions = ran.map(({ reactions: one }) => ("unknown" in one ? [] : one));
  const beyond =
    outside.length > 0
      ? { unknown: `the wind loads are outside the range of the method (${sameReasons(outside)}${within(outside)}). State reactions that were found another way` }
      : undefined;
  let derived: readonly LoadDerivation[] | undefined;
  return {
    columns: stopped ?? beyond ?? columnActions(inputs, cases, reactions),
    resultants,
    outside,
    derivations: () => (derived ??= derive(inputs, cases)),
  };
}

function derive(inputs: RoofInputs, cases: readonly RoofCase[]): readonly LoadDerivation[] {
  const wind = recordingCalc();
  velocityPressureAt(inputs.plane.meanHeight, inputs.site, wind.calc);
  const geometry = recordingCalc();
  const columns = columnsUnder(inputs.plane, inputs.posts, geometry.calc);
  return [
    { title: "velocity pressure at mean roof height", source: velocityPressureClause(inputs.site.standard), steps: wind.steps },
    { title: "columns under the roof plane", source: "geometry", steps: geometry.steps },
    ...cases.map((one): LoadDerivation => {
      const { calc, steps } = recordingCalc();
      if (one.outside !== undefined) calc.note(`Information only: ${one.outside}.`);
      runCase(one, columns, inputs, calc);
      return { title: one.loadCase.title, source: one.source, steps };
    }),
    ...edgeDerivations(inputs),
  ];
}
