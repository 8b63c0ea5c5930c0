/** Axial force, moment and shear that the section of a pier or pedestal is tried by, along its height. */
import type { Demand } from "../../actions/demand.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { jointArm, jointAxial } from "../footing/pedestal.js";
import { deadFactor } from "../site/dead-factor.js";
import { diagramFormulas, pierDiagrams, readPierForDiagrams, type PierForDiagrams } from "./diagrams.js";
import { baseHeight, lateralAt, momentResultant, momentX, momentY, shearResultant } from "./grade-forces.js";
import { memberArea, type ConcreteMember, type MemberShape } from "./concrete-member.js";

/** What the forces along the member depend on; plain data. */
export interface AlongMember {
  /** Of a pier alone: how the soil beside it holds it. */
  readonly diagrams?: PierForDiagrams;
}

export const readAlong = (member: ConcreteMember, support: Support, gather: Gather): AlongMember => (member.word === "pier" ? { diagrams: readPierForDiagrams(support, gather) } : {});

export const axialAtToe = formula({
  id: "pier.axial-at-toe",
  text: "N_b = P + f_D * gamma_c * A_g * (d + h_a)",
  source: "statics: the pier's own weight, with nothing taken off by the soil along it",
  symbols: {
    N_b: { kind: "force", meaning: "axial force at the underside, compression positive", range: [-1e5, 1e5] },
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    A_g: { kind: "planArea", meaning: "area of the section" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" },
    h_a: { kind: "length", meaning: "height of the top of concrete above grade", field: "foundations.*.above grade" },
  },
  constants: { gamma_c: "150 lbf/ft^3" },
});

/** One section with what acts on it. Moments toward x and y where their direction is known. */
export interface AtSection {
  readonly N: number;
  readonly M: number;
  readonly toward?: { readonly x: number; readonly y: number };
}

/** Least and most axial force along the member, N, compression positive. */
export interface AxialRange {
  readonly least: number;
  readonly most: number;
}

export function axialAlong({ body, ...shape }: MemberShape, demand: Demand, calc: Calc): AxialRange {
  const { P } = demand.base;
  const { factor: f_D } = deadFactor(demand);
  const A_g = memberArea({ body, ...shape }, calc);
  const foot = body.of === "pier" ? calc(axialAtToe, { P, f_D, A_g, d: body.pier.depth, h_a: body.pier.aboveGrade }) : calc(jointAxial, { P, f_D, A_p: A_g, h_p: body.footing.pedestal.height });
  return { least: P, most: foot };
}

export const axialFormulas = [axialAtToe, jointAxial] as const;

const soilGivesWay = "the soil beside the pier gives way under this combination, so that there is no moment its concrete could be made for: mend the embedment first";

/** Sections that stand for all along the member; or why there are none. */
export function bentSections(inputs: MemberShape & AlongMember, demand: Demand, calc: Calc): readonly AtSection[] | { readonly because: string } {
  const { base } = demand;
  const { least, most } = axialAlong(inputs, demand, calc);
  const top = calc(momentResultant, { M_x: base.Mx, M_y: base.My });
  const { body, diagrams } = inputs;
  if (body.of === "pedestal") {
    const { pedestal, grout: t_g, plate: t_p } = body.footing;
    const a = calc(jointArm, { h_p: pedestal.height, t_g, t_p });
    const M_x = calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a });
    const M_y = calc(momentY, { M_yb: base.My, V_x: base.Vx, a });
    return [
      { N: least, M: top, toward: { x: base.My, y: base.Mx } },
      { N: most, M: calc(momentResultant, { M_x, M_y }), toward: { x: M_y, y: M_x } },
    ];
  }
  const found = diagrams && pierDiagrams(diagrams, base, calc);
  if (!found) return { because: soilGivesWay };
  // Where shear and moment act against each other, the moment is largest at the top.
  const M = Math.max(found.maxMoment, top);
  // How much of the pier's weight stands above that depth is left open: none and all of it are tried.
  return [{ N: least, M }, { N: most, M }];
}

export const bentFormulas = [...axialFormulas, jointArm, baseHeight, ...diagramFormulas.filter((one) => one !== baseHeight)] as const;

/** Shear along the member: resultant of a pier, along x and y of a pedestal. */
export function shearAlong(inputs: MemberShape & AlongMember, demand: Demand, calc: Calc): { readonly x: number; readonly y: number; readonly most: number } | { readonly because: string } {
  const { base } = demand;
  const V = calc(shearResultant, { V_x: base.Vx, V_y: base.Vy });
  if (inputs.body.of === "pedestal") return { x: Math.abs(base.Vx), y: Math.abs(base.Vy), most: V };
  const found = inputs.diagrams && pierDiagrams(inputs.diagrams, base, calc);
  if (!found) return { because: soilGivesWay };
  const most = Math.max(found.maxShear, V);
  return { x: most, y: most, most };
}

/**
 * What makes moment and shear along the member grow, besides the axial force: push, moment at grade or at the foot, moment at the top. The push of the
 * soil on a pier goes with the first two.
 */
export function lateralMeasures(inputs: MemberShape & AlongMember, { base }: Demand): readonly number[] {
  const top = momentResultant.value({ M_x: base.Mx, M_y: base.My });
  if (inputs.body.of === "pedestal") {
    const { pedestal, grout: t_g, plate: t_p } = inputs.body.footing;
    const a = jointArm.value({ h_p: pedestal.height, t_g, t_p });
    const M_x = momentX.value({ M_xb: base.Mx, V_y: base.Vy, a });
    const M_y = momentY.value({ M_yb: base.My, V_x: base.Vx, a });
    return [base.Vx, base.Vy, base.Mx, base.My, M_x, M_y].map(Math.abs);
  }
  const { aboveGrade: h_a } = inputs.body.pier;
  const a = baseHeight.value({ h_a, t_g: inputs.diagrams?.grout ?? 0, t_p: inputs.diagrams?.plate ?? 0 });
  const { force, moment } = lateralAt(base, a, plainCalc);
  return [force, moment, top];
}
