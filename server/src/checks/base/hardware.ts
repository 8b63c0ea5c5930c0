/** Nut, washer and hole of one rod: what the notebook says, or what the trade's table has for the rod. */
import { plateHole, rodByDiameter, type PlateHole } from "../../catalog/rods.js";
import { formula } from "../../formula/declare.js";
import type { Base } from "../../project/model.js";

export const nutHeight = formula({
  id: "base.nut-height",
  text: "h_n = d_a",
  source: "ASME B18.2.2: a heavy hex nut is as high as its rod is thick, less 1/64 to 1/32 in (from memory)",
  symbols: { h_n: { kind: "length", meaning: "height of the nut" }, d_a: { kind: "length", meaning: "diameter of the rod", field: "bases.*.anchors.diameter" } },
});

export const washerThicknessNeeded = formula({
  id: "base.washer-thickness-needed",
  text: "t_w = d_a / 3",
  source: "AISC, answers to frequent questions, 7.2.4: a washer at least a third of the rod's diameter thick",
  symbols: { t_w: { kind: "length", meaning: "thickness of the washer" }, d_a: { kind: "length", meaning: "diameter of the rod", field: "bases.*.anchors.diameter" } },
});

export const washerWidthNeeded = formula({
  id: "base.washer-width-needed",
  text: "b_w = d_h + b_1",
  source: "AISC, answers to frequent questions, 7.2.4: a washer at least an inch larger than the hole",
  symbols: { b_w: { kind: "length", meaning: "width of the washer" }, d_h: { kind: "length", meaning: "diameter of the hole", field: "bases.*.hole" } },
  constants: { b_1: "1 inch" },
});

export interface Hardware {
  readonly nut: number;
  /** Row of the trade's table; none for some rods. */
  readonly row?: PlateHole;
  /** Diameter of the hole, m, stated or by the table; not a number where neither is there. */
  readonly hole: number;
  readonly isHoleStated: boolean;
  /** Washer, m, stated or by the table. */
  readonly washerWidth: number;
  readonly washerThickness: number;
  readonly isWasherStated: boolean;
  readonly threadsPerInch: number;
}

/** Undefined where the rod's diameter is missing or not known. */
export function readHardware(base: Base | undefined): Hardware | undefined {
  const d_a = base?.anchors?.value.diameter?.value;
  const rod = d_a === undefined ? undefined : rodByDiameter(d_a);
  if (d_a === undefined || !rod) return undefined;
  const row = plateHole(d_a);
  const hole = base?.hole?.value ?? row?.hole ?? Number.NaN;
  const washer = base?.washer?.value;
  return {
    nut: nutHeight.value({ d_a }),
    row,
    hole,
    isHoleStated: base?.hole !== undefined,
    washerWidth: washer?.width?.value ?? row?.washer?.width ?? (Number.isFinite(hole) ? washerWidthNeeded.value({ d_h: hole }) : Number.NaN),
    washerThickness: washer?.thickness?.value ?? row?.washer?.thickness ?? washerThicknessNeeded.value({ d_a }),
    isWasherStated: washer?.width !== undefined || washer?.thickness !== undefined,
    threadsPerInch: rod.threadsPerInch,
  };
}
