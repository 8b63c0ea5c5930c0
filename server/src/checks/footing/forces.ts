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

const axial = { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] } as const;

export const offMiddleX = formula({
  id: "footing.moment-x-off-middle",
  text: "M_x = M_x0 - P * e_y",
  source: "statics",
  symbols: {
    M_x: { kind: "moment", meaning: "moment about the east axis through the middle of the pad" },
    M_x0: { kind: "moment", meaning: "the same about the column", range: [-1e5, 1e5] },
    P: axial,
    e_y: { kind: "length", meaning: "column off the middle to the north", field: "foundations.*.off middle.y", range: [-1, 1] },
  },
});

export const offMiddleY = formula({
  id: "footing.moment-y-off-middle",
  text: "M_y = M_y0 + P * e_x",
  source: "statics",
  symbols: {
    M_y: { kind: "moment", meaning: "moment about the north axis through the middle of the pad" },
    M_y0: { kind: "moment", meaning: "the same about the column", range: [-1e5, 1e5] },
    P: axial,
    e_x: { kind: "length", meaning: "column off the middle to the east", field: "foundations.*.off middle.x", range: [-1, 1] },
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
  const M_x = calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a });
  const M_y = calc(momentY, { M_yb: base.My, V_x: base.Vx, a });
  const { x: e_x, y: e_y } = body.offset;
  if (e_x === 0 && e_y === 0) return { N, M_x, M_y, W_c, W_s, f_D };
  calc.note("The column stands off the middle of the pad: its axial force has a moment about the middle. The pedestal's own weight counts at the middle.");
  return { N, M_x: calc(offMiddleX, { M_x0: M_x, P: base.P, e_y }), M_y: calc(offMiddleY, { M_y0: M_y, P: base.P, e_x }), W_c, W_s, f_D };
}

export const undersideFormulas = [...bodyFormulas, netLoad, momentX, momentY, offMiddleX, offMiddleY] as const;

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
