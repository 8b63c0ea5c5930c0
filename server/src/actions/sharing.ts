/**
 * How loads on the roof are shared among the columns under it: as one plate, by a frame in space with the hand route beside it, or by tributary
 * width where the roof is not rigid in its plane.
 */
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import { largestDifference } from "../mechanics/largest-difference.js";
import { withoutRounding } from "../mechanics/noise.js";
import { rigidRoof, type RoofColumn, type RoofLoad, type RoofMechanism } from "../mechanics/rigid-roof.js";
import { framedRoof, roofFrame, storyStiffness, topMovement, type RoofBrace, type RoofFrame } from "../mechanics/roof-frame.js";
import { pressedBy, roofSpans, sharedBySpans, splitBySpans, type RoofSpans } from "../mechanics/roof-spans.js";
import { sharedByTributary, tributaryRoof, type TributaryRoof } from "../mechanics/tributary-roof.js";
import type { NoActions } from "./demand.js";
import { atReach } from "./knee-braces.js";
import type { RoofPlane } from "./roof-plane.js";
import type { Reaction } from "./way-down.js";

/** Columns that sway together along an axis, and the push that moves them by a unit, N/m. */
export interface Story {
  readonly columns: readonly number[];
  readonly stiffness: number;
}

/** One way of sharing, with what it needs found once for all load cases. */
export interface Sharing {
  readonly way: "as one plate" | "by tributary width";
  /** Shares loads on the roof among its columns, in their order. */
  readonly carry: (loads: readonly RoofLoad[], calc: Calc) => readonly Reaction[] | NoActions;
  readonly stories: { readonly x: readonly Story[]; readonly y: readonly Story[] };
  /** Shows the same by a second route beside this one; left out where there is none. */
  readonly beside?: (loads: readonly RoofLoad[], calc: Calc) => void;
}

export type RigidInPlane = "yes" | "no" | "envelope";

/** How far the frame and the hand route may lie apart, as a part of the largest force or moment; a test holds them to it. */
export const routesAgreeWithin = 0.001;

export const besideTitle = "hand route beside the frame";

function carryByFrame(frame: RoofFrame, spans: RoofSpans | undefined, loads: readonly RoofLoad[], calc: Calc): readonly Reaction[] | NoActions {
  const bySpans = spans && calc.routine(sharedBySpans, { spans, loads });
  const shared = calc.routine(framedRoof, { frame, loads: bySpans?.left ?? loads });
  if ("mechanism" in shared) return { unknown: shared.mechanism };
  const pressed = (forces: Forces, i: number): Forces => (bySpans ? pressedBy(forces, bySpans, i) : forces);
  const tops = withoutRounding(shared.columns.map(({ top }, i) => pressed(top, i)));
  const bases = withoutRounding(shared.columns.map(({ base }, i) => pressed(base, i)));
  return frame.columns.map((column, i) => ({ top: atReach(column, tops[i], bases[i], calc), base: bases[i], sway: topMovement(shared, column) }));
}

function frameStories(frame: RoofFrame): Sharing["stories"] {
  const columns = frame.columns.map((_, i) => i);
  const { x, y } = storyStiffness(frame);
  return { x: [{ columns, stiffness: x }], y: [{ columns, stiffness: y }] };
}

/** The roof as one plate, rigid in its plane, on a frame of columns, what presses or lifts brought to them by its spans; or in which way it can move freely. */
export function sharedByFrame(columns: readonly RoofColumn[], braces: readonly RoofBrace[] = []): Sharing | NoActions {
  const frame = roofFrame(columns, braces);
  if ("mechanism" in frame) return { unknown: frame.mechanism };
  const spans = roofSpans(columns);
  return {
    way: "as one plate",
    carry: (loads, calc) => carryByFrame(frame, spans, loads, calc),
    stories: frameStories(frame),
    // The hand route knows no rods.
    beside:
      braces.length > 0
        ? undefined
        : (all, calc) => {
            const loads = spans ? splitBySpans(spans, all).left : all;
            const first = calc.routine(framedRoof, { frame, loads });
            const second = calc.routine(rigidRoof, { columns, loads });
            if ("mechanism" in first || "mechanism" in second) return;
            calc.routine(largestDifference, { first: first.columns.map(({ base }) => base), second: second.columns.map(({ base }) => base) });
          },
  };
}

const carryByWidth = (roof: TributaryRoof, loads: readonly RoofLoad[], calc: Calc): readonly Reaction[] =>
  calc.routine(sharedByTributary, { roof, loads }).columns.map((one, i) => ({ ...one, top: atReach(roof.columns[i], one.top, one.base, calc) }));

/** The roof as purlins and beams in simple spans; or why it cannot be shared so. */
export function sharedByWidth(columns: readonly RoofColumn[], braces: readonly RoofBrace[], { length, width }: Pick<RoofPlane, "length" | "width">): Sharing | NoActions {
  const roof: TributaryRoof | RoofMechanism = tributaryRoof(columns, braces, { x1: 0, x2: length, y1: 0, y2: width });
  if ("mechanism" in roof) return { unknown: roof.mechanism };
  return { way: "by tributary width", carry: (loads, calc) => carryByWidth(roof, loads, calc), stories: roof.groups };
}

/** The ways a roof's loads are to be shared: one, or both where the worse of them counts. */
export function sharingsFor(rigid: RigidInPlane, columns: readonly RoofColumn[], braces: readonly RoofBrace[], plane: RoofPlane): readonly (Sharing | NoActions)[] {
  const asPlate = () => sharedByFrame(columns, braces);
  const byWidth = () => sharedByWidth(columns, braces, plane);
  return rigid === "yes" ? [asPlate()] : rigid === "no" ? [byWidth()] : [asPlate(), byWidth()];
}
