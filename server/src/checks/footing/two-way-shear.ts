/**
 * The column punches through the pad: a truncated pyramid of concrete is pushed out round it. In the field it is hidden below grade; above,
 * the column has dropped and leans.
 *
 * ACI 318-19 22.6.5.2 at d/2 round the pedestal, lambda_s = 1 by 13.2.6.2; moments transferred both ways by eccentricity of shear (8.4.4.2.2),
 * their stresses added at the worst corner. Near an edge or a corner the section is open there where that makes it shorter (22.6.4.1). ACI 318-14 has the same without the size effect.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { momentX, momentY } from "../pier/grade-forces.js";
import { type Outside, outsideForces } from "../../mechanics/footing-section.js";
import { openSection } from "../../mechanics/open-section.js";
import { check, unchecked, weigh } from "../contract.js";
import { armOf } from "./body.js";
import { rootStrength } from "./one-way-shear.js";
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";
import { placeOnPad, towardHigh } from "./combined.js";
import { criticalPerimeter, leastSection, middleOf, type PunchingSection, sectionChoice, sideOf } from "./punching-section.js";
import { isShared, readShared } from "./shared-pad.js";

const along = { kind: "length", meaning: "critical section along x" } as const;
const acrossIt = { kind: "length", meaning: "critical section along y" } as const;
const depth = { kind: "length", meaning: "effective depth" } as const;
const perimeter = { kind: "length", meaning: "perimeter of the critical section" } as const;

export const criticalSide = formula({
  id: "footing.critical-side",
  text: "b_1 = 2 * x_f + d",
  source: "ACI 318-19 22.6.4.1: at d/2 from the faces (from memory)",
  symbols: { b_1: { kind: "length", meaning: "side of the critical section" }, x_f: { kind: "length", meaning: "face of the pedestal, from the middle" }, d: depth },
});

export const sideRatio = formula({
  id: "footing.side-ratio",
  text: "beta = max(x_f / y_f, y_f / x_f)",
  source: "ACI 318-19 22.6.5.3: long side over short side of the column",
  symbols: { beta: { kind: "ratio", meaning: "long side over short side of the pedestal" }, x_f: { kind: "length", meaning: "half of the pedestal along x" }, y_f: { kind: "length", meaning: "half of the pedestal along y" } },
});

export const punchingStress = formula({
  id: "footing.punching-strength",
  text: "phiv_c = phi * min(4, 2 + 4 / beta, 2 + alpha_s * d / b_o) * s_c",
  source: "ACI 318-19 Table 22.6.5.2, 13.2.6.2, 21.2.1; alpha_s by 22.6.5.3 (from memory)",
  symbols: {
    phiv_c: { kind: "stress", meaning: "design strength in two-way shear, as a stress" },
    beta: { kind: "ratio", meaning: "long side over short side of the pedestal", range: [1, 8] },
    alpha_s: { kind: "number", meaning: "40 of a section on four sides, 30 on three at an edge, 20 on two at a corner" },
    d: depth,
    b_o: perimeter,
    s_c: { kind: "stress", meaning: "square root of the concrete strength, as a stress" },
  },
  constants: { phi: "0.75" },
});

export const shearShare = formula({
  id: "footing.shear-share",
  text: "gamma_v = 1 - 1 / (1 + 2 / 3 * sqrt(b_1 / b_2))",
  source: "ACI 318-19 8.4.2.2.2, 8.4.4.2.2 (from memory)",
  symbols: {
    gamma_v: { kind: "ratio", meaning: "part of the moment transferred by shear" },
    b_1: { kind: "length", meaning: "side of the critical section in the direction of the moment" },
    b_2: { kind: "length", meaning: "the other side" },
  },
});

export const sectionProperty = formula({
  id: "footing.critical-inertia",
  text: "J_c = d * b_1^3 / 6 + b_1 * d^3 / 6 + d * b_2 * b_1^2 / 2",
  source: "ACI 318-19 R8.4.4.2.3 (from memory)",
  symbols: {
    J_c: { kind: "inertia", meaning: "property of the critical section analogous to a polar moment of inertia" },
    d: depth,
    b_1: { kind: "length", meaning: "side of the critical section in the direction of the moment" },
    b_2: { kind: "length", meaning: "the other side" },
  },
});

export const punchingDemand = formula({
  id: "footing.punching-stress",
  text: "v_u = abs(V_u) / (b_o * d) + gamma_vx * abs(M_ux) * b_x / (2 * J_cx) + gamma_vy * abs(M_uy) * b_y / (2 * J_cy)",
  source: "ACI 318-19 8.4.4.2.3, both directions added at the worst corner (from memory)",
  symbols: {
    v_u: { kind: "stress", meaning: "largest shear stress on the critical section" },
    V_u: { kind: "force", meaning: "force through the section" },
    b_o: perimeter,
    d: depth,
    gamma_vx: { kind: "ratio", meaning: "part of the moment toward the east transferred by shear" },
    M_ux: { kind: "moment", meaning: "moment through the section toward the east" },
    b_x: along,
    J_cx: { kind: "inertia", meaning: "property of the section along x" },
    gamma_vy: { kind: "ratio", meaning: "part of the moment toward the north transferred by shear" },
    M_uy: { kind: "moment", meaning: "moment through the section toward the north" },
    b_y: acrossIt,
    J_cy: { kind: "inertia", meaning: "property of the section along y" },
  },
});

interface Shared {
  /** Place of the column from the middle of a pad that it shares with others, m. */
  readonly onShared?: { readonly x: number; readonly y: number };
}

export type PunchingInputs = PadInputs & Shared;

/** Largest stress on a section that is open toward an edge or a corner. */
function stressWhenOpen({ openX, openY, inside }: PunchingSection, through: Outside, at: { readonly x: number; readonly y: number }, place: { readonly x: number; readonly y: number }, sides: { readonly width: number; readonly length: number }, d: number, calc: Calc): number {
  calc.note(`The section that is open toward the ${openX && openY ? "corner" : "edge"} of the pad is shorter than one on four sides: the column punches through that.`);
  const { width: b_x, length: b_y } = sides;
  return calc.routine(openSection, {
    inside,
    open: { west: openX && place.x < 0, east: openX && place.x > 0, south: openY && place.y < 0, north: openY && place.y > 0 },
    d,
    ...through,
    at,
    shareX: calc(shearShare, { b_1: b_x, b_2: b_y }),
    shareY: calc(shearShare, { b_1: b_y, b_2: b_x }),
  }).stress;
}

/** On a pad of several columns each one punches with all of its force: the pressure inside the section is not taken off, the safe side. */
function wholeColumn(inputs: PunchingInputs, { base }: Demand, calc: Calc): Outside {
  calc.note("The pad carries several columns: all of this one's force goes through the section, and the pressure inside it is not taken off.");
  const a = armOf(inputs, calc);
  return { force: base.P, alongX: calc(momentY, { M_yb: base.My, V_x: base.Vx, a }), alongY: calc(towardHigh, { M_x: calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a }) }) };
}

export const twoWayShearOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("two-way-shear"),
    title: `Punching of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 22.6.5, 8.4.4.2, 13.2.6.2",
    editions: padEditions,
    fails: "The pedestal or plate punches through the pad and pushes a pyramid of concrete out.",
    seen: "A column that has dropped and leans, the pad cracked in a ring round it.",
    range: `Normalweight concrete, no shear reinforcement. Of a column off the middle the least of the sections on four sides, on three at the nearer edge and on two at a corner. A pad no wider than the section cannot be punched; one-way shear answers there. A pull through the pad is held against the same strength. ${on.net}`,
    formulas: [...on.formulas, towardHigh, criticalSide, ...sectionChoice, sideRatio, rootStrength, punchingStress, shearShare, sectionProperty, punchingDemand],
    applies: on.applies,
    inputs: (support, gather, place): I & Shared => {
      const pad = on.read(support, gather, place);
      if (!isShared(support)) return pad;
      const { x, y } = readShared(support, gather).places[place];
      return { ...pad, onShared: { x: placeOnPad.value({ x_0: x, e: pad.offset.x }), y: placeOnPad.value({ x_0: y, e: pad.offset.y }) } };
    },
    fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const { face, width, length } = inputs;
      const { d } = inputs.bottom;
      const b_x = calc(criticalSide, { x_f: face.x, d });
      const b_y = calc(criticalSide, { x_f: face.y, d });
      const beta = face.x > 0 && face.y > 0 ? calc(sideRatio, { x_f: face.x, y_f: face.y }) : 1;
      const place = inputs.onShared ?? inputs.offset;
      const s_c = calc(rootStrength, { fprime_c: inputs.fprime_c });
      if (b_x >= width || b_y >= length) {
        calc.note("The section at d/2 round the pedestal reaches the edge of the pad: it cannot punch, and one-way shear answers.");
        return weigh(0, calc(punchingStress, { beta, alpha_s: 40, d, b_o: calc(criticalPerimeter, { b_x, b_y }), s_c }), "stress");
      }
      const section = leastSection({ width, length, ...place, b_x, b_y }, calc);
      const { b_o, alpha_s, openX, openY, inside } = section;
      const capacity = calc(punchingStress, { beta, alpha_s, d, b_o, s_c });
      const whole = inputs.onShared ? wholeColumn(inputs, demand, calc) : undefined;
      const acting = whole ? undefined : on.acting(inputs, demand, "by factor", calc);
      if (!acting && !whole) return weigh(0, capacity, "stress");
      if (acting && "because" in acting) return unchecked(acting.because);
      const isOpen = openX || openY;
      const middle = isOpen ? { x: calc(middleOf, { x_1: inside.west, x_2: inside.east }), y: calc(middleOf, { x_1: inside.south, x_2: inside.north }) } : place;
      const sides = isOpen ? { width: calc(sideOf, { x_1: inside.west, x_2: inside.east }), length: calc(sideOf, { x_1: inside.south, x_2: inside.north }) } : { width: b_x, length: b_y };
      const through = whole ?? calc.routine(outsideForces, { ...acting!, width, length, inside: { ...sides, ...middle } });
      // All of a column's force goes through where the column stands; what is outside was found about the middle of what is inside.
      if (isOpen) return weigh(stressWhenOpen(section, through, whole ? place : middle, place, sides, d, calc), capacity, "stress");
      const { force: V_u, alongX: M_ux, alongY: M_uy } = through;
      const v_u = calc(punchingDemand, {
        V_u,
        b_o,
        d,
        gamma_vx: calc(shearShare, { b_1: b_x, b_2: b_y }),
        M_ux,
        b_x,
        J_cx: calc(sectionProperty, { d, b_1: b_x, b_2: b_y }),
        gamma_vy: calc(shearShare, { b_1: b_y, b_2: b_x }),
        M_uy,
        b_y,
        J_cy: calc(sectionProperty, { d, b_1: b_y, b_2: b_x }),
      });
      return weigh(v_u, capacity, "stress");
    },
    advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "stress")} of shear round the pedestal; the pad holds ${say.show(outcome.capacity, "stress")}. Thicken the pad, or widen the pedestal or plate.`,
  });

export const footingTwoWayShear = twoWayShearOf(onSoil);
