/** What a pier does along its depth under the combination that governs: movement, moment, shear and what the soil pushes back. */
import type { CheckResult } from "../findings/result.js";
import { beamOnSprings } from "../mechanics/beam-on-springs.js";
import { rigidPier } from "../mechanics/rigid-pier.js";
import { depthCurve, depthScale, type Curve } from "./depth-chart.js";
import { observed } from "./observe.js";
import type { Picture, Show } from "./picture.js";
import { drawing, line, words } from "./svg.js";

const [left, width, gap] = [62, 96, 30] as const;
const frame = { left, top: 56, width, height: 270 } as const;

interface Along {
  readonly depth: readonly number[];
  readonly curves: readonly Curve[];
  readonly how: string;
}

function alongOf(result: CheckResult, show: Show): Along | undefined {
  const found = observed(result);
  const moment = (values: readonly number[]): Curve => ({ title: "moment", values, show: (value) => show(Math.abs(value), "moment") });
  const shear = (values: readonly number[]): Curve => ({ title: "shear", values, show: (value) => show(Math.abs(value), "force") });
  const beam = found?.routine(beamOnSprings)?.result;
  if (beam && !beam.givesWay) {
    const movement: Curve = { title: "movement", values: beam.deflection, show: (value) => show(Math.abs(value), "length") };
    const reaction: Curve = { title: "soil on the pier", values: beam.reaction.map((p) => -p), show: (value) => show(Math.abs(value), "lineLoad") };
    return { depth: beam.depth, curves: [movement, moment(beam.moment), shear(beam.shear), reaction], how: "the soil followed by the springs or p-y curves of the notebook" };
  }
  const rigid = found?.routine(rigidPier);
  if (!rigid) return undefined;
  return { depth: rigid.result.depth, curves: [moment(rigid.result.moment), shear(rigid.result.shear)], how: "the pier taken as rigid, on springs that grow with depth" };
}

/** Undefined where the check did not follow the pier along its depth. */
export function pierDiagramsPicture(result: CheckResult, show: Show): Picture | undefined {
  const along = alongOf(result, show);
  if (!along || along.depth.length < 2) return undefined;
  const from = along.depth[0];
  const depth = along.depth.map((z) => z - from);
  const deepest = along.depth[along.depth.length - 1];
  const caption = `Diagrams along the pier from ${from > 0 ? `${show(from, "distance")} below grade` : "grade"} down to ${show(deepest, "distance")}, ${along.how}. The greatest of each is written at its depth; to the right is to the side of the push.`;
  return {
    caption,
    svg: drawing(560, 350, caption, [
      words(20, 20, "Along the pier", "start", 12),
      ...depthScale(left - 14, frame, show(deepest, "distance")),
      line(left - 14, frame.top, left + along.curves.length * (width + gap) - gap, frame.top, "thin"),
      ...along.curves.flatMap((curve, i) => depthCurve(curve, depth, { ...frame, left: left + i * (width + gap) })),
    ]),
  };
}
