/** The loads of a roof and the governing forces of a support as parts of the report. */
import type { ForcesReport, GoverningForces, LoadCaseReport, StructureReport, SupportReport } from "../../../shared/report.js";
import type { ColumnActions, Forces } from "../actions/demand.js";
import type { CasePage } from "../actions/load-page.js";
import type { LoadPart } from "../actions/roof-case.js";
import type { Support } from "../project/model.js";
import { forceColumns } from "../summary/force-cells.js";
import { forceRows, governingRows } from "../summary/force-rows.js";
import { format } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import { amount } from "./amount.js";
import type { CheckedDocument } from "./check-text.js";

export const forces = (from: Forces, system: UnitSystem): ForcesReport => ({
  P: amount(from.P, "force", system),
  Vx: amount(from.Vx, "force", system),
  Vy: amount(from.Vy, "force", system),
  Mx: amount(from.Mx, "moment", system),
  My: amount(from.My, "moment", system),
  ...(from.Mz ? { Mz: amount(from.Mz, "moment", system) } : {}),
});

/** Where a part of the roof is: its name, and its ends by distance from the windward edge or by plan coordinates. */
function place({ where, between, area }: LoadPart, { from }: CasePage["loadCase"], system: UnitSystem): string {
  const length = (value: number): string => format(value, "distance", system);
  if (between) return `${where}, ${length(between[0])} to ${length(between[1])} from the ${from ?? "windward"} edge`;
  return area ? `${where}, x ${length(area.x1)} to ${length(area.x2)}, y ${length(area.y1)} to ${length(area.y2)}` : where;
}

function caseReport(page: CasePage, system: UnitSystem): LoadCaseReport {
  const { loadCase, source, outside, total, parts } = page;
  const { id, title, type } = loadCase;
  return {
    id,
    title,
    type,
    source,
    outside,
    parts: parts.map((part) => ({
      where: place(part, loadCase, system),
      coefficient: part.coefficient,
      pressure: part.pressure === undefined ? undefined : amount(part.pressure, "pressure", system),
      pushX: part.push && amount(part.push.x, "force", system),
      pushY: part.push && amount(part.push.y, "force", system),
      read: part.read,
    })),
    total: forces(total, system),
  };
}

export function loadsReport({ actions, system }: CheckedDocument): StructureReport["loads"] {
  const page = actions.loadPage();
  return page && { velocityPressure: amount(page.q_h, "pressure", system), velocityPressureSource: page.q_hClause, cases: page.cases.map((one) => caseReport(one, system)) };
}

/** The reactions of every column by load case, their forces also as cells of tables. */
export function reactionsReport(columns: readonly ColumnActions[], system: UnitSystem): Pick<SupportReport, "reactions" | "reactionHeads"> {
  const rows = columns.flatMap(({ cases }, i) =>
    cases.map(({ loadCase, base }) => ({ column: i + 1, caseId: loadCase.id, case: loadCase.title, type: loadCase.type, base: forces(base, system) })),
  );
  const { heads, rows: cells } = forceColumns(
    rows.map(({ base }) => base),
    system,
  );
  return { reactions: rows.map((row, i) => ({ ...row, cells: cells[i] })), reactionHeads: heads };
}

/** What an engineer looks for first: the base at strength, the underside at allowable level. */
export function governingReport(support: Support, columns: readonly ColumnActions[], system: UnitSystem): readonly GoverningForces[] {
  const rows = forceRows(support, columns);
  return ([["strength", "base"], ["allowable", "underside"]] as const).flatMap(([level, section]) =>
    governingRows(rows, level, section).map(
      (row): GoverningForces => ({ level, section, component: row.component, extreme: row.extreme, column: row.column, combination: row.what, forces: forces(row.forces, system) }),
    ),
  );
}
