/**
 * The design wind load cases beside a full wind along one axis. Case 3, the winds along both axes at once with three quarters of each: the roof's own pressures are those of one
 * of the two winds, as a free roof has no sides to press on, and of the other wind comes its drag. It is taken where the push of both together can be more, summed along
 * the axes, than that of one wind by itself; else case 1 covers it. Cases 2 and 4, the pushes of one wind or of both off the middle of the roof: buildings of one story up to
 * 30 ft are free of them, so that they are taken on rigid roofs that are higher. In case 4 both pushes are moved so that they turn the roof the same way, as the other two
 * ways to move them turn it less.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { pushOf, resultantOf, superpose } from "../../mechanics/superposition.js";
import { withEffects, type ColumnEffect } from "../column-loads.js";
import type { Edge } from "../demand.js";
import type { RoofCase } from "../roof-case.js";
import { extents, type RoofPlane } from "../roof-plane.js";
import type { Beside } from "./beside.js";
import { once } from "./once.js";
import { axisOf, senseAlong } from "./push.js";

const clause = "ASCE 7-22 and 7-16 27.3.5 and Figure 27.3-8, ASCE 7-10 27.4.6 and Figure 27.4-8";

/** Part of each wind: three quarters in cases 2 and 3, three quarters of that in case 4. */
const parts = {
  "case 2": { of: 0.75, words: "three quarters" },
  "case 3": { of: 0.75, words: "three quarters" },
  "case 4": { of: 0.563, words: "0.563" },
} as const;

type PartCase = keyof typeof parts;

const k_c = { kind: "ratio", meaning: "part of the wind: 0.75 in cases 2 and 3, 0.563 in case 4", range: [0.5, 0.8] } as const;

const partOfForce = formula({
  id: "wind.load-case-part",
  text: "F = k_c * F_1",
  source: `${clause}, cases 2 to 4`,
  symbols: { F: { kind: "force", meaning: "force in the load case" }, k_c, F_1: { kind: "force", meaning: "force of the full wind", range: [-1e5, 1e5] } },
});

const partOfPressure = formula({
  id: "wind.load-case-pressure",
  text: "p = k_c * p_1",
  source: `${clause}, cases 2 to 4`,
  symbols: { p: { kind: "pressure", meaning: "pressure in the load case" }, k_c, p_1: { kind: "pressure", meaning: "pressure of the full wind", range: [-3000, 3000] } },
});

const bothPushes = formula({
  id: "wind.push-of-both",
  text: "V_c = 0.75 * (abs(V_x) + abs(V_y) + abs(V_x2) + abs(V_y2))",
  source: `${clause}, case 3: what both winds push, summed along the axes`,
  symbols: {
    V_c: { kind: "force", meaning: "push of both winds, summed along the axes" },
    V_x: { kind: "force", meaning: "push of the one wind to the east" },
    V_y: { kind: "force", meaning: "push of the one wind to the north" },
    V_x2: { kind: "force", meaning: "drag of the other wind to the east" },
    V_y2: { kind: "force", meaning: "drag of the other wind to the north" },
  },
});

const onePush = formula({
  id: "wind.push-of-one",
  text: "V_s = abs(V_x) + abs(V_y)",
  source: `${clause}, case 1: what one wind pushes, summed along the axes`,
  symbols: { V_s: { kind: "force", meaning: "push of the wind, summed along the axes" }, V_x: { kind: "force", meaning: "push to the east" }, V_y: { kind: "force", meaning: "push to the north" } },
});

const offMiddle = formula({
  id: "wind.push-off-middle",
  text: "t = t_0 + k * 0.15 * B",
  source: `${clause}, cases 2 and 4: 0.15 of the width off the middle`,
  symbols: {
    t: { kind: "distance", meaning: "place of the push across the wind" },
    t_0: { kind: "distance", meaning: "its place in case 1" },
    k: { kind: "ratio", meaning: "1 or -1, to either side", range: [-1, 1] },
    B: { kind: "distance", meaning: "plan width of the roof across the wind" },
  },
});

/** Up to this mean height, m, 30 ft, a building of one story is free of cases 2 and 4. */
const freeOfTorsionUpTo = 9.144;

/** A pressure case with what the wind does beside the roof's pressures. */
export interface PressureCaseOn {
  readonly one: RoofCase;
  readonly beside: Beside;
}

/** The pressure cases of the wind from one edge, and its drag where another wind leads. */
export interface OneWind {
  readonly from: Edge;
  readonly cases: readonly PressureCaseOn[];
  readonly drag: Beside;
}

const origin = { x: 0, y: 0, z: 0 };

const inPart = (loads: readonly RoofLoad[], by: PartCase, calc: Calc): readonly RoofLoad[] => {
  const part = parts[by].of;
  const of = (F_1: number): number => calc(partOfForce, { k_c: part, F_1 });
  return loads.map((load) => ({ ...load, Fx: of(load.Fx), Fy: of(load.Fy), Fz: of(load.Fz) }));
};

const partsInPart = ({ parts: all }: RoofCase, by: PartCase): RoofCase["parts"] =>
  all &&
  (() =>
    all().map((one) => ({
      ...one,
      pressure: one.pressure === undefined ? undefined : plainCalc(partOfPressure, { k_c: parts[by].of, p_1: one.pressure }),
      read: `${one.read}; ${parts[by].words}`,
    })));

const effectsInPart = (effects: readonly ColumnEffect[], by: PartCase): readonly ColumnEffect[] => {
  const factor = parts[by].of;
  return effects.map(({ at, top, base }) => ({ at, top: superpose([{ factor, forces: top }]), base: superpose([{ factor, forces: base }]) }));
};

const allOf = ({ one }: PressureCaseOn): readonly RoofLoad[] => [...one.loads(plainCalc), ...(one.beside?.(plainCalc) ?? [])];

const summed = ({ x, y }: { readonly x: number; readonly y: number }): number => plainCalc(onePush, { V_x: x, V_y: y });

/** The greatest push of one of the wind's cases. */
const mostOf = ({ cases }: OneWind): number => Math.max(...cases.map((one) => summed(pushOf(allOf(one)))));

/** What the wind pushes beside the pressures on the roof. */
const dragPush = ({ drag }: OneWind) => pushOf([...drag.onRoof(plainCalc), ...drag.offRoof(plainCalc)]);

const dragOf = (wind: OneWind): number => summed(dragPush(wind));

/** Whether three quarters of both winds can push more than all of one. */
function pushesMore(main: OneWind, cross: OneWind, single: number): boolean {
  const drag = dragPush(cross);
  return main.cases.some((one) => {
    const push = pushOf(allOf(one));
    return isAbove(plainCalc(bothPushes, { V_x: push.x, V_y: push.y, V_x2: drag.x, V_y2: drag.y }), single);
  });
}

/** The case that lifts the most and the one that presses the most, as far as there are such; of cases alike the first. */
function extremes(cases: readonly PressureCaseOn[]): readonly PressureCaseOn[] {
  let [lift, press] = [0, 0];
  let lifting: PressureCaseOn | undefined;
  let pressing: PressureCaseOn | undefined;
  for (const of of cases) {
    const { P } = resultantOf({ loads: of.one.loads(plainCalc), about: origin });
    if (isBelow(P, lift)) [lifting, lift] = [of, P];
    if (isAbove(P, press)) [pressing, press] = [of, P];
  }
  return [lifting, pressing].filter((one) => one !== undefined);
}

function together({ one, beside }: PressureCaseOn, { from: across, drag }: OneWind): RoofCase {
  const { id, title, type, from } = one.loadCase;
  const effects = once((calc) => [...effectsInPart(beside.effects(calc), "case 3"), ...effectsInPart(drag.effects(calc), "case 3")]);
  return {
    loadCase: { id: `${id}/and-${across}`, type, title: `${title}, with the drag of wind from the ${across}, three quarters of both`, from },
    source: `${clause}, case 3 (from memory); the pressures by ${one.source}`,
    outside: one.outside,
    parts: partsInPart(one, "case 3"),
    loads: once((calc) => {
      calc.note(`Three quarters of the ${title}, and of the drag of wind from the ${across}:`);
      return inPart([...one.loads(calc), ...drag.onRoof(calc)], "case 3", calc);
    }),
    beside: once((calc) => inPart([...beside.offRoof(calc), ...drag.offRoof(calc)], "case 3", calc)),
    finish: (reactions, calc) => withEffects(reactions, effects(calc)),
  };
}

/** Case 3 for the four corners the wind can come from, where it is not covered by case 1. */
export function cornerCases(roof: RoofPlane, winds: readonly OneWind[]): readonly RoofCase[] {
  return winds
    .filter(({ from }) => axisOf(from) === "y")
    .flatMap((north) =>
      winds
        .filter(({ from }) => axisOf(from) === "x")
        .flatMap((east) => {
          const [n, e] = [mostOf(north), mostOf(east)];
          // Of two winds that push alike the one that meets the longer side leads.
          const isNorthFirst = isAbove(n, e) || (!isAbove(e, n) && roof.length >= roof.width);
          const [main, cross] = isNorthFirst ? [north, east] : [east, north];
          return pushesMore(main, cross, Math.max(n, e)) ? extremes(main.cases).map((one) => together(one, cross)) : [];
        }),
    );
}

/** The pushes of a load off the middle of the roof, the lift where it is. */
function moved(load: RoofLoad, axis: "x" | "y", k: number, B: number, calc: Calc): readonly RoofLoad[] {
  const t = calc(offMiddle, { t_0: axis === "x" ? load.y : load.x, k, B });
  const push: RoofLoad = { ...load, Fz: 0, ...(axis === "x" ? { y: t } : { x: t }) };
  return load.Fz === 0 ? [push] : [push, { ...load, Fx: 0, Fy: 0 }];
}

function offSide(roof: RoofPlane, { one, beside }: PressureCaseOn, from: Edge, k: 1 | -1): RoofCase {
  const { id, title, type } = one.loadCase;
  const axis = axisOf(from);
  const toward = axis === "x" ? (k > 0 ? "north" : "south") : k > 0 ? "east" : "west";
  const B = extents(roof, from).across;
  const effects = once((calc) => effectsInPart(beside.effects(calc), "case 2"));
  return {
    loadCase: { id: `${id}/toward-${toward}`, type, title: `${title}, three quarters of it, its push off the middle toward the ${toward}`, from },
    source: `${clause}, case 2 (from memory); the pressures by ${one.source}`,
    outside: one.outside,
    parts: partsInPart(one, "case 2"),
    loads: once((calc) => {
      calc.note(`Three quarters of the ${title}, with the pushes off the middle toward the ${toward}:`);
      return inPart(one.loads(calc).flatMap((load) => moved(load, axis, k, B, calc)), "case 2", calc);
    }),
    beside: once((calc) => inPart(beside.offRoof(calc), "case 2", calc)),
    finish: (reactions, calc) => withEffects(reactions, effects(calc)),
  };
}

type Turning = "anticlockwise" | "clockwise";

/** The side to which the push of a wind is moved so that it turns the roof that way, seen from above. */
const sideFor = (from: Edge, turning: Turning): 1 | -1 => {
  const isLeft = axisOf(from) === "y" ? senseAlong(from) > 0 : senseAlong(from) < 0;
  return isLeft === (turning === "anticlockwise") ? 1 : -1;
};

function bothOffSide(roof: RoofPlane, { one, beside }: PressureCaseOn, main: Edge, { from: across, drag }: OneWind, turning: Turning): RoofCase {
  const { id, title, type } = one.loadCase;
  const effects = once((calc) => [...effectsInPart(beside.effects(calc), "case 4"), ...effectsInPart(drag.effects(calc), "case 4")]);
  const off = (load: RoofLoad, from: Edge, calc: Calc): readonly RoofLoad[] => moved(load, axisOf(from), sideFor(from, turning), extents(roof, from).across, calc);
  return {
    loadCase: { id: `${id}/and-${across}/${turning}`, type, title: `${title}, with the drag of wind from the ${across}, 0.563 of both, their pushes off the middle so that they turn the roof ${turning}`, from: main },
    source: `${clause}, case 4; the pressures by ${one.source}`,
    outside: one.outside,
    parts: partsInPart(one, "case 4"),
    loads: once((calc) => {
      calc.note(`0.563 of the ${title}, and of the drag of wind from the ${across}, with the pushes off the middle so that they turn the roof ${turning}:`);
      return inPart([...one.loads(calc).flatMap((load) => off(load, main, calc)), ...drag.onRoof(calc).flatMap((load) => off(load, across, calc))], "case 4", calc);
    }),
    beside: once((calc) => inPart([...beside.offRoof(calc), ...drag.offRoof(calc)], "case 4", calc)),
    finish: (reactions, calc) => withEffects(reactions, effects(calc)),
  };
}

/** Case 4: either wind with the drag of one across it. Where that has no drag, case 2 covers it. */
const turnedByBoth = (roof: RoofPlane, winds: readonly OneWind[]): readonly RoofCase[] =>
  winds.flatMap(({ from, cases }) =>
    winds
      .filter((cross) => axisOf(cross.from) !== axisOf(from) && dragOf(cross) !== 0)
      .flatMap((cross) => extremes(cases).flatMap((one) => (["anticlockwise", "clockwise"] as const).map((turning) => bothOffSide(roof, one, from, cross, turning)))),
  );

/** Cases 2 and 4 of roofs higher than a building that is free of them. Only a roof rigid in its plane can turn. */
export const torsionCases = (roof: RoofPlane, winds: readonly OneWind[]): readonly RoofCase[] =>
  isAbove(roof.meanHeight, freeOfTorsionUpTo)
    ? [...winds.flatMap(({ from, cases }) => cases.flatMap((one) => ([1, -1] as const).map((k) => offSide(roof, one, from, k)))), ...turnedByBoth(roof, winds)]
    : [];
