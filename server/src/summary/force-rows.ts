/**
 * Forces at every column, case by case and combination by combination: at the top, at the base and at the underside of the foundation. What an
 * engineer asks for first, and what another one checks the roof's designer against. The upper end of a knee-braced column is the section just
 * below the foot of its brace, and the table says so: the roof takes hold of the column there.
 */
import { isByHand } from "../actions/by-hand.js";
import type { ColumnActions, Forces, Level } from "../actions/demand.js";
import { baseHeight } from "../checks/pier/grade-forces.js";
import { armToPedestal } from "../checks/footing/body.js";
import { padArm, wallArm } from "../checks/rock/block.js";
import { plainCalc } from "../formula/calc.js";
import { lowered } from "../mechanics/transfer.js";
import type { Support } from "../project/model.js";

export type Section = "top" | "section below the knee brace" | "base" | "underside";
/** Allowable-stress combinations stand twice where steel goes by them: as soil takes them, and with second order in them. */
export type RowLevel = "unfactored" | Level | "allowable, second order";

/** Forces on one section of one column. The weight of the foundation is not in those at its underside. */
export interface ForceRow {
  /** Name of the column line, or of the foundation that stands alone. */
  readonly support: string;
  /** Number of the column in its line, from 1. */
  readonly column: number;
  /** Plan place, m; left out of a foundation that stands alone. */
  readonly place?: { readonly x: number; readonly y: number };
  readonly level: RowLevel;
  /** The load case, or the combination by its terms and cases. */
  readonly what: string;
  readonly section: Section;
  readonly forces: Forces;
}

/** Height of the column base above the underside of its foundation, m; undefined where a size is missing. */
export function undersideArm({ base, foundation }: Pick<Support, "base" | "foundation">): number | undefined {
  const fields = foundation?.fields;
  if (!fields) return undefined;
  const t_g = base?.fields.grout?.value ?? 0;
  const t_p = base?.fields.plate?.value.thickness?.value ?? 0;
  const h_a = fields["above grade"]?.value ?? 0;
  const d = fields.depth?.value;
  let arm = Number.NaN;
  if (fields.kind?.value === "wall on footing") {
    arm = plainCalc(wallArm, { h_w: fields.height?.value ?? Number.NaN, t_f: fields.footing?.value.thickness?.value ?? Number.NaN, t_g, t_p });
  } else if (fields.kind?.value === "footing on rock") {
    arm = plainCalc(padArm, { t: fields.thickness?.value ?? Number.NaN, d: d ?? 0, h_a, t_g, t_p });
  } else if (fields.kind?.value === "footing" && !fields.pedestal) {
    arm = plainCalc(armToPedestal, { t: fields.thickness?.value ?? Number.NaN, h_p: 0, t_g, t_p });
  } else if (d !== undefined) arm = plainCalc(baseHeight, { h_a, t_g, t_p }) + d;
  return Number.isFinite(arm) ? arm : undefined;
}

interface Stated {
  readonly level: RowLevel;
  readonly what: string;
  readonly top: Forces;
  readonly base: Forces;
}

const levels: readonly Level[] = ["strength", "allowable", "service"];

const statedIn = (actions: ColumnActions): readonly Stated[] => [
  ...actions.cases.map(({ loadCase, top, base }): Stated => ({ level: "unfactored", what: loadCase.title, top, base })),
  ...levels.flatMap((level) => actions[level].map(({ label, top, base }): Stated => ({ level, what: label, top, base }))),
  ...actions.steel.flatMap(({ level, magnified, label, top, base }): readonly Stated[] =>
    level === "allowable" && magnified ? [{ level: "allowable, second order", what: label, top, base }] : [],
  ),
];

/** Sway that a knee brace holds. */
const holds = (sway: string | undefined): boolean => sway === "knee brace" || sway === "fixed base and knee brace";

/** The upper end of the columns, as a table names it. */
function upperEnd({ column }: Support): Section {
  const fields = column?.fields;
  const isBraced = fields !== undefined && !isByHand(fields) && (holds(fields["sway along x"]?.value) || holds(fields["sway along y"]?.value));
  return isBraced ? "section below the knee brace" : "top";
}

/** Every row of a support, column by column. */
export function forceRows(support: Support, columns: readonly ColumnActions[]): readonly ForceRow[] {
  const arm = undersideArm(support);
  const upper = upperEnd(support);
  return columns.flatMap((actions, i) =>
    statedIn(actions).flatMap(({ level, what, top, base }): readonly ForceRow[] => {
      const row = (section: Section, forces: Forces): ForceRow => ({ support: support.name, column: i + 1, place: support.column && support.places[i], level, what, section, forces });
      return [...(support.column ? [row(upper, top)] : []), row("base", base), ...(arm === undefined ? [] : [row("underside", lowered(base, arm))])];
    }),
  );
}

export const components = ["P", "Vx", "Vy", "Mx", "My"] as const;
export type Component = (typeof components)[number];

/** The row in which one component is the largest, or the smallest. */
export interface GoverningRow extends ForceRow {
  readonly component: Component;
  readonly extreme: "largest" | "smallest";
}

/** For each component the row in which it is largest and the one in which it is smallest, of those at one level on one section. */
export function governingRows(rows: readonly ForceRow[], level: RowLevel, section: Section): readonly GoverningRow[] {
  const among = rows.filter((row) => row.level === level && row.section === section);
  if (among.length === 0) return [];
  return components.flatMap((component) =>
    (["largest", "smallest"] as const).map((extreme): GoverningRow => {
      const sign = extreme === "largest" ? 1 : -1;
      const found = among.reduce((best, row) => (sign * row.forces[component] > sign * best.forces[component] ? row : best));
      return { ...found, component, extreme };
    }),
  );
}
