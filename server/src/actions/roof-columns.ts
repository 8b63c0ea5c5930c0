/** What the load cases of a roof bring to each of its columns, combined at every level; one way of sharing, or the worse of two. */
import { plainCalc } from "../formula/calc.js";
import type { Forces } from "../mechanics/forces.js";
import { edgeDemands } from "./column-tops.js";
import { chosenCases, combine } from "./combinations.js";
import type { ColumnActions, Demand, Level, LoadCase, NoActions } from "./demand.js";
import type { RoofInputs } from "./roof-inputs.js";
import { withSecondOrder } from "./second-order.js";
import { serviceDemands, serviceRatio } from "./service.js";
import type { Sharing } from "./sharing.js";
import { isAllowable, steelDemands, takesAllowable, type SteelMethod } from "./steel-method.js";
import { forcesAtTop } from "./knee-braces.js";
import type { Reaction, RoofPost } from "./way-down.js";

const allFinite = ({ P, Vx, Vy, Mx, My }: Forces): boolean => [P, Vx, Vy, Mx, My].every(Number.isFinite);

/** What the connection at the top of a knee-braced column is left with; of any other the same demands. */
const connectionDemands = <L extends Level>(demands: readonly Demand<L>[], { ends, height }: RoofPost): readonly Demand<L>[] =>
  ends?.x.knee || ends?.y.knee ? demands.map((demand) => ({ ...demand, top: forcesAtTop(demand.top, ends, height, plainCalc) })) : demands;

/** The actions of every column for one way of sharing; the reactions stand by case, then by column. */
export function columnActions(inputs: RoofInputs, loadCases: readonly LoadCase[], reactions: readonly (readonly Reaction[])[], sharing: Sharing): readonly ColumnActions[] | NoActions {
  if (!reactions.flat().every(({ top, base }) => allFinite(top) && allFinite(base))) return { unknown: "the roof's loads leave the range of numbers that can be calculated with" };
  const { site, posts, service } = inputs;
  const strength = chosenCases(site.standard, "strength", loadCases);
  const allowable = chosenCases(site.standard, "allowable", loadCases, inputs.alternative);
  const edgesAtTop = edgeDemands(inputs, "strength");
  const own = posts.map((_, place) => reactions.map((ofCase) => ofCase[place]));
  const firstOrder = own.map((of) => combine(strength, of, plainCalc));
  const heights = posts.map(({ height }) => height);
  const atStrength = withSecondOrder(firstOrder, heights, sharing.stories, plainCalc);
  if ("unknown" in atStrength) return atStrength;
  // Steel takes the basic combinations also where soil takes the alternative ones.
  const topsTake = takesAllowable(inputs.steel) || inputs.topsAtAllowable;
  const ofSteel = topsTake ? chosenCases(site.standard, "allowable", loadCases) : [];
  const edgesAllowed = topsTake ? edgeDemands(inputs, "allowable") : [];
  const steel = withSecondOrder(own.map((of) => combine(ofSteel, of, plainCalc)), heights, sharing.stories, plainCalc);
  if ("unknown" in steel) return steel;
  const k_s = serviceRatio(site.standard, site.V, service, plainCalc);
  return own.map((of, place) => {
    const atTop = [...connectionDemands(atStrength[place], posts[place]), ...edgesAtTop[place]];
    const atTopAllowable = topsTake ? [...connectionDemands(steel[place], posts[place]), ...edgesAllowed[place]] : [];
    return {
      cases: of.map(({ top, base }, i) => ({ loadCase: loadCases[i], top, base })),
      strength: atStrength[place],
      atTop,
      atTopAllowable,
      atTopSteel: steelDemands(inputs.steel, atTop, atTopAllowable),
      allowable: combine(allowable, of, plainCalc),
      service: serviceDemands(loadCases, of, k_s, plainCalc),
      steel: steelDemands(inputs.steel, atStrength[place], steel[place]),
    };
  });
}

const said = <L extends Level>(demands: readonly Demand<L>[], way: Sharing["way"]): readonly Demand<L>[] => demands.map((demand) => ({ ...demand, label: `${demand.label}; roof shared ${way}` }));

/** Both ways of sharing side by side: every check takes the worse. */
export function envelope(ways: readonly { readonly way: Sharing["way"]; readonly columns: readonly ColumnActions[] }[]): readonly ColumnActions[] {
  const [first] = ways;
  if (ways.length === 1) return first.columns;
  return first.columns.map((_, place) => {
    const each = <T>(pick: (actions: ColumnActions, way: Sharing["way"]) => readonly T[]): readonly T[] => ways.flatMap(({ way, columns }) => pick(columns[place], way));
    const strength = each((of, way) => said(of.strength, way));
    const atTop = each((of, way) => said(of.atTop, way));
    const atTopAllowable = each((of, way) => said(of.atTopAllowable, way));
    const { steel } = first.columns[place];
    const method: SteelMethod = !steel.some(isAllowable) ? "LRFD" : steel.every(isAllowable) ? "ASD" : "both";
    const allowableSteel = each((of, way) => said(of.steel.filter(isAllowable), way));
    return {
      cases: each(({ cases }, way) => cases.map((one) => ({ ...one, loadCase: { ...one.loadCase, ...sharedCase(one.loadCase, way) } }))),
      strength,
      atTop,
      atTopAllowable,
      atTopSteel: steelDemands(method, atTop, atTopAllowable),
      allowable: each(({ allowable }, way) => said(allowable, way)),
      service: each(({ service }, way) => said(service, way)),
      steel: steelDemands(method, strength, allowableSteel),
    };
  });
}

/** A case keeps its name as one plate, so that it stays the same case when the roof is enveloped. */
export const sharedCase = ({ id, title }: LoadCase, way: Sharing["way"]): Pick<LoadCase, "id" | "title"> =>
  way === "as one plate" ? { id, title } : { id: `${id}/tributary`, title: `${title}, by tributary width` };
