/** Which pictures belong to which check. They are drawn when a reader asks, never while checking. */
import type { Demand } from "../actions/demand.js";
import type { CheckResult } from "../findings/result.js";
import { breakoutPlan } from "./breakout-plan.js";
import { contactPlan } from "./contact-plan.js";
import { interactionDrawing } from "./interaction-curve.js";
import { padPressure } from "./pad-pressure.js";
import { pierDiagramsPicture } from "./pier-diagrams.js";
import type { Picture, Show } from "./picture.js";
import { wallPressure } from "./wall-pressure.js";
import { wedgePicture } from "./wedge-picture.js";

/** `demands` are the strength combinations at all columns of the support. */
type Draw = (result: CheckResult, show: Show, demands: readonly Demand[]) => Picture | undefined;

const drawn: Readonly<Record<string, readonly Draw[]>> = {
  "anchors.breakout-tension": [breakoutPlan],
  "anchors.pryout": [breakoutPlan],
  "anchors.breakout-shear": [wedgePicture],
  "anchors.steel-tension": [contactPlan],
  "base.bearing": [contactPlan],
  "base.plate-compression": [contactPlan],
  "base.plate-uplift": [contactPlan],
  "pier.bending": [interactionDrawing, pierDiagramsPicture],
  "footing.pedestal-bending": [interactionDrawing],
  "pier.shear": [pierDiagramsPicture],
  "pier.movement": [pierDiagramsPicture],
  "pier.rotation": [pierDiagramsPicture],
  "pier.rotation-stated": [pierDiagramsPicture],
  "footing.bearing": [padPressure],
  "footing.bearing-capacity": [padPressure],
  "footing.overturning": [padPressure],
  "rock.bearing": [padPressure],
  "wall.bearing": [padPressure],
  "wall.overturning": [wallPressure],
  "wall.sliding": [wallPressure],
};

/** Ids of the checks that have pictures. */
export const picturedChecks: readonly string[] = Object.keys(drawn);

/** The pictures of one result, in the order a reader meets them; none where the check came to no answer. */
export function picturesOf(result: CheckResult, show: Show, demands: readonly Demand[] = []): readonly Picture[] {
  if (result.state === "not checked") return [];
  return (drawn[result.check.id] ?? []).flatMap((draw) => draw(result, show, demands) ?? []);
}
