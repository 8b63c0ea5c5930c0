/** Forces at the underside of a footing in one combination, and the pressure they make, shared by every check that asks. */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc, Routine } from "../../formula/types.js";
import { footingContact, type FootingArgs, type FootingPressure } from "../../mechanics/partial-contact.js";
import type { Unstable } from "../../mechanics/plate-contact.js";
import { momentX, momentY } from "../pier/grade-forces.js";
import { deadFactor } from "../site/dead-factor.js";
import { armOf, bodyFormulas, type FootingBody, type Purpose, weightsOf } from "./body.js";

export const netLoad = formula({
  id: "footing.net-load",
  text: "N = P + f_D * (W_c + W_s)",
  source: "statics",
  symbols: {
    N: { kind: "force", meaning: "vertical force on the ground, down positive", range: [-1e5, 1e5] },
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W_c: { kind: "force", meaning: "weight of pad and pedestal" },
    W_s: { kind: "force", meaning: "weight of the soil on the pad" },
  },
});

export interface Underside {
  /** Down positive, N. */
  readonly N: number;
  /** About the east and the north axis, N·m. */
  readonly M_x: number;
  readonly M_y: number;
  /** Weight of concrete and soil without factor, N, and the factor. */
  readonly W_c: number;
  readonly W_s: number;
  readonly f_D: number;
}

/** A dead load that is reduced is one that holds down. */
export const purposeOf = (factor: number): Purpose => (factor < 1 ? "holds" : "presses");

export function atUnderside(body: FootingBody, demand: Demand, purpose: Purpose | "by factor", calc: Calc): Underside {
  const { base } = demand;
  const { factor: f_D, note } = deadFactor(demand);
  const { concrete: W_c, soil: W_s } = weightsOf(body, purpose === "by factor" ? purposeOf(f_D) : purpose, calc);
  calc.note(note);
  const a = armOf(body, calc);
  const N = calc(netLoad, { P: base.P, f_D, W_c, W_s });
  return { N, M_x: calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a }), M_y: calc(momentY, { M_yb: base.My, V_x: base.Vx, a }), W_c, W_s, f_D };
}

export const undersideFormulas = [...bodyFormulas, netLoad, momentX, momentY] as const;

export interface ContactArgs extends FootingArgs {
  readonly demand: Demand;
}

/** The last solution of each demand; the checks of one footing ask for the same one in turn. */
const solved = new WeakMap<Demand, { readonly args: FootingArgs; readonly pressure: FootingPressure | Unstable }>();

export const sharedContact: Routine<ContactArgs, FootingPressure | Unstable> = {
  id: "footing.contact",
  title: footingContact.title,
  method: footingContact.method,
  source: footingContact.source,
  run: (args) => {
    const known = solved.get(args.demand);
    if (known && known.args.P === args.P && known.args.Mx === args.Mx && known.args.My === args.My && known.args.width === args.width && known.args.length === args.length) return known.pressure;
    const pressure = footingContact.run(args);
    solved.set(args.demand, { args, pressure });
    return pressure;
  },
  show: (args, pressure) => footingContact.show(args, pressure),
};

export const pressureUnder = (body: FootingBody, { N, M_x, M_y }: Underside, demand: Demand, calc: Calc): FootingPressure | Unstable =>
  calc.routine(sharedContact, { demand, width: body.width, length: body.length, P: N, Mx: M_x, My: M_y });
