/** The loads on the roof, case by case, and what each brings to every column. */
import { plainCalc, recordingCalc } from "../formula/calc.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import { roofResultant } from "../mechanics/superposition.js";
import { edgeDerivations } from "./column-tops.js";
import { casesWithAdded } from "./added.js";
import { deadCases } from "./dead.js";
import type { ColumnActions, LoadCase, LoadDerivation, NoActions } from "./demand.js";
import { gravityCases } from "./gravity/cases.js";
import { pageOf, type LoadPage } from "./load-page.js";
import type { RoofCase } from "./roof-case.js";
import type { RoofInputs } from "./roof-inputs.js";
import { seismicCases, verticalPartOf } from "./seismic/cases.js";
import { leastSidewaysCases } from "./seismic/least.js";
import { edges, middleOf } from "./roof-plane.js";
import { columnActions, envelope, sharedCase } from "./roof-columns.js";
import { deriveSecondOrder, secondOrderSource } from "./second-order.js";
import { serviceRatio, serviceSource } from "./service.js";
import { isAllowable } from "./steel-method.js";
import { besideTitle, sharingsFor, type Sharing } from "./sharing.js";
import { columnsUnder } from "./way-down.js";
import { windRoofCases, type OutsideRange } from "./wind/cases.js";
import { velocityPressureAt, velocityPressureClause } from "./wind/velocity-pressure.js";

export type { OutsideRange };

/** What one load case puts on the whole roof, about the middle of the roof at mean height; `P` is positive downward. */
export interface CaseResultant {
  readonly loadCase: LoadCase;
  readonly total: Forces;
  /** In words, why the case is information only: its coefficients are used outside their range. */
  readonly outside?: string;
}

export interface RoofSystem {
  /** The actions of each column in the order of the inputs, or why there are none. */
  readonly columns: readonly ColumnActions[] | NoActions;
  readonly resultants: readonly CaseResultant[];
  readonly outside: readonly OutsideRange[];
  readonly derivations: () => readonly LoadDerivation[];
  readonly loadPage: () => LoadPage;
}

interface Cases {
  readonly cases: readonly RoofCase[];
  readonly outside: readonly OutsideRange[];
}

function roofCases(inputs: RoofInputs, sharing: Sharing | NoActions): Cases {
  const { plane, dead, posts } = inputs;
  const { cases: wind, outside } = windRoofCases(inputs);
  const cases = [...deadCases(plane, dead, posts), ...gravityCases(inputs, sharing), ...(inputs.seismic ? seismicCases(inputs, inputs.seismic) : []), ...(inputs.leastSideways ? leastSidewaysCases(inputs) : []), ...wind];
  return { cases: casesWithAdded(cases, inputs.added, plane, posts, verticalPartOf(inputs.seismic)), outside };
}

/** Runs one case to the column bases. */
function runCase(roofCase: RoofCase, sharing: Sharing | NoActions, inputs: RoofInputs, calc: Calc) {
  const loads = roofCase.loads(calc);
  const total = calc.routine(roofResultant, { loads: [...loads, ...(roofCase.beside?.(plainCalc) ?? [])], about: middleOf(inputs.plane, plainCalc) });
  const shared = "unknown" in sharing ? sharing : sharing.carry(loads, calc);
  const reactions = "unknown" in shared ? shared : (roofCase.finish?.(shared, calc) ?? shared);
  return { total, reactions };
}

/** The edges from which the wind can be calculated, said beside those from which it cannot. */
const within = (outside: readonly OutsideRange[]): string => {
  const others = edges.filter((edge) => !outside.some(({ from }) => from === edge));
  return others.length === 0 ? "" : `; wind from the ${others.join(" and ")} is within it`;
};

const sameReasons = (outside: readonly OutsideRange[]): string =>
  [...new Set(outside.map(({ because }) => because))]
    .map((because) => `wind from the ${outside.filter((one) => one.because === because).map(({ from }) => from).join(" and ")}: ${because}`)
    .join("; ");

/** Runs every case one way of sharing, to the columns. */
function runWay(inputs: RoofInputs, cases: readonly RoofCase[], sharing: Sharing | NoActions) {
  const ran = cases.map((one) => runCase(one, sharing, inputs, plainCalc));
  const stopped = ran.map(({ reactions }) => reactions).find((one): one is NoActions => "unknown" in one);
  const reactions = ran.map(({ reactions: one }) => ("unknown" in one ? [] : one));
  const loadCases = cases.map(({ loadCase }) => loadCase);
  const columns = "unknown" in sharing ? sharing : (stopped ?? columnActions(inputs, loadCases, reactions, sharing));
  return { totals: ran.map(({ total }) => total), columns, sharing };
}

type Way = ReturnType<typeof runWay>;

function together(ways: readonly Way[]): readonly ColumnActions[] | NoActions {
  const known: { way: Sharing["way"]; columns: readonly ColumnActions[] }[] = [];
  for (const { columns, sharing } of ways) {
    if ("unknown" in columns) return columns;
    if ("way" in sharing) known.push({ way: sharing.way, columns });
  }
  return envelope(known);
}

/** Finds the loads on a roof and carries them down. Pure and total. */
export function roofSystem(inputs: RoofInputs): RoofSystem {
  const sharings = sharingsFor(inputs.rigid, columnsUnder(inputs.plane, inputs.posts, plainCalc), inputs.braces, inputs.plane);
  const { cases, outside } = roofCases(inputs, sharings[0]);
  const ways = sharings.map((sharing) => runWay(inputs, cases, sharing));
  const resultants = ways[0].totals.map((total, i): CaseResultant => ({ loadCase: cases[i].loadCase, total, outside: cases[i].outside }));
  const beyond =
    outside.length > 0
      ? { unknown: `the wind loads are outside the range of the method (${sameReasons(outside)}${within(outside)}). State reactions that were found another way` }
      : undefined;
  const columns = together(ways);
  let derived: readonly LoadDerivation[] | undefined;
  return {
    columns: "unknown" in columns ? columns : (beyond ?? columns),
    resultants,
    outside,
    derivations: () => (derived ??= derive(inputs, cases, ways)),
    loadPage: () => ({
      q_h: velocityPressureAt(inputs.plane.meanHeight, inputs.site, plainCalc),
      q_hClause: velocityPressureClause(inputs.site.standard),
      cases: cases.map((one, i) => pageOf(one, resultants[i])),
    }),
  };
}

function derive(inputs: RoofInputs, cases: readonly RoofCase[], ways: readonly Way[]): readonly LoadDerivation[] {
  const wind = recordingCalc();
  velocityPressureAt(inputs.plane.meanHeight, inputs.site, wind.calc);
  const geometry = recordingCalc();
  columnsUnder(inputs.plane, inputs.posts, geometry.calc);
  return [
    { title: "velocity pressure at mean roof height", source: velocityPressureClause(inputs.site.standard), steps: wind.steps },
    { title: "columns under the roof plane", source: "geometry", steps: geometry.steps },
    ...ways.flatMap(({ sharing }) =>
      cases.map((one): LoadDerivation => {
        const { calc, steps } = recordingCalc();
        if (one.outside !== undefined) calc.note(`Information only: ${one.outside}.`);
        runCase(one, sharing, inputs, calc);
        const title = "way" in sharing && ways.length > 1 ? sharedCase(one.loadCase, sharing.way).title : one.loadCase.title;
        return { title, source: one.source, steps };
      }),
    ),
    ...edgeDerivations(inputs),
    ...ways.flatMap((way) => secondOrderOf(inputs, way, ways.length > 1)),
    serviceOf(inputs),
    ...ways.flatMap(({ sharing }) => besideOf(cases, sharing)),
  ];
}

function secondOrderOf({ posts }: RoofInputs, { columns, sharing }: Way, isOneOfTwo: boolean): readonly LoadDerivation[] {
  if ("unknown" in columns || "unknown" in sharing) return [];
  const { calc, steps } = recordingCalc();
  const heights = posts.map(({ height }) => height);
  deriveSecondOrder(
    columns.map(({ strength }) => strength),
    heights,
    sharing.stories,
    calc,
  );
  deriveSecondOrder(
    columns.map(({ steel }) => steel.filter(isAllowable)),
    heights,
    sharing.stories,
    calc,
  );
  return [{ title: isOneOfTwo ? `second order, roof shared ${sharing.way}` : "second order", source: secondOrderSource, steps }];
}

function serviceOf({ site, service }: RoofInputs): LoadDerivation {
  const { calc, steps } = recordingCalc();
  if (serviceRatio(site.standard, site.V, service, calc) === undefined) calc.note("The service wind needs the risk category of the site, or a stated service wind speed.");
  return { title: "service wind", source: serviceSource, steps };
}

/** The second route, case by case. */
function besideOf(cases: readonly RoofCase[], sharing: Sharing | NoActions): readonly LoadDerivation[] {
  if ("unknown" in sharing || !sharing.beside) return [];
  const { calc, steps } = recordingCalc();
  for (const { loadCase, loads } of cases) {
    calc.note(`Under the ${loadCase.title}:`);
    sharing.beside(loads(plainCalc), calc);
  }
  return [{ title: besideTitle, source: "two routes to the same reactions; the weight of the columns is in neither", steps }];
}
