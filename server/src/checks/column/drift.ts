/**
 * The column tops move sideways in a wind that comes every few years. Nothing falls down: glass cracks, a fixed ceiling tears at its edges,
 * doors bind, and whoever stands below sees the roof move and does not come back.
 *
 * Movement of the column top under dead load and the service wind against a part of the column's height. No code limits it; the limits are common
 * practice by what hangs at the roof. At strength the same is judged only where a limit is stated. Where the notebook says how stiff the soil beside
 * the column's pier is, the pier's own movement and lean are added.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Demand } from "../../actions/demand.js";
import type { Roof, Sourced, Support } from "../../project/model.js";
import { isBaseHeld } from "../../actions/sway-inputs.js";
import { check, unchecked, weigh, type Gather, type Outcome } from "../contract.js";
import { isPier } from "../pier/body.js";
import { heightOf, pierLoad, pierResponse, readPierInGround, responseFormulas, type PierInGround } from "../pier/response.js";
import { hasPierSoil } from "../pier/soil.js";

export const topSway = formula({
  id: "column.drift-sway",
  text: "u = sqrt(u_x^2 + u_y^2)",
  source: "geometry",
  symbols: {
    u: { kind: "length", meaning: "sway of the column top" },
    u_x: { kind: "length", meaning: "movement to the east" },
    u_y: { kind: "length", meaning: "movement to the north" },
  },
});

export const swayOnPier = formula({
  id: "column.drift-on-pier",
  text: "u_t = u + y_0 + theta_0 * (a + H)",
  source: "statics: the column stands on the head of the pier and leans with it",
  symbols: {
    u_t: { kind: "length", meaning: "sway of the column top with that of the pier" },
    u: { kind: "length", meaning: "sway of the column top on a rigid base" },
    y_0: { kind: "length", meaning: "movement of the pier at grade" },
    theta_0: { kind: "angle", meaning: "lean of the pier at grade" },
    a: { kind: "length", meaning: "height of the column base above grade" },
    H: { kind: "distance", meaning: "column height that leans with the pier; nothing where the column turns freely on its base", field: "columns.*.height" },
  },
});

export const swayLimit = formula({
  id: "column.drift-limit",
  text: "u_max = H / n",
  source: "common practice, no source: H/100 of a bare roof, H/200 with a ceiling, H/400 with glass or stone",
  symbols: {
    u_max: { kind: "length", meaning: "limit of the sway" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
    n: { kind: "number", meaning: "height over sway at the limit", field: "roof.sway limit", range: [50, 600] },
  },
});

/** Height over sway by what could break; common practice, no source. */
const byFinish = { bare: 100, ceiling: 200, "glass or stone": 400 } as const;

type Limit = NonNullable<Roof["sway limit"]>["value"];

/** The number below the line of `H/100`. */
const numberOf = (limit: Limit): number => Number(limit.slice("H/".length));

interface DriftInputs {
  readonly H: number;
  readonly n: number;
  /** What at the roof could break, where the limit goes by it. */
  readonly finish?: keyof typeof byFinish;
  /** The pier below, where the notebook says how the soil beside it moves. */
  readonly pier?: PierInGround;
  /** The column is fixed to its base along an axis and leans with it. */
  readonly leans: boolean;
  /** The turning of its base is stated. */
  readonly onSpring: boolean;
}

const silent: Gather = { need: (value) => value?.value ?? Number.NaN, needs: (value) => value?.value, may: (value) => value?.value, block: () => undefined };

/** The pier below, unless something of it is missing: the sway itself is not to wait for that. */
function pierBelow(support: Support, gather: Gather): Pick<DriftInputs, "pier" | "leans" | "onSpring"> {
  const fields = support.column?.fields;
  const onSpring = gather.may(fields?.["base rotation stiffness"]) !== undefined;
  // Where the turning of the base is stated, that of the pier is in the sway already.
  const leans = fields !== undefined && !onSpring && (["x", "y"] as const).some((axis) => isBaseHeld(fields, axis));
  if (!isPier(support) || !hasPierSoil(support)) return { leans, onSpring };
  let isWhole = true;
  const lacking = (): void => void (isWhole = false);
  readPierInGround(support, {
    ...silent,
    need: (value) => (value ? value.value : (lacking(), Number.NaN)),
    needs: (value) => (value ? value.value : (lacking(), undefined)),
    block: lacking,
  });
  return isWhole ? { leans, onSpring, pier: readPierInGround(support, gather) } : { leans, onSpring };
}

const isUnderRoof = ({ column, roof }: Support): boolean => column !== undefined && roof !== undefined && column.fields.reactions === undefined && column.fields.combined === undefined;

function serviceInputs(support: Support, gather: Gather): DriftInputs {
  const { column, roof, site } = support;
  const stated = gather.may(roof?.fields["sway limit"]);
  const finish = stated === undefined ? gather.needs(roof?.fields.finish, "finish at the roof (bare, ceiling, glass or stone)") : undefined;
  if (gather.may(site["service wind speed"]) === undefined) {
    gather.may(site["service wind"]);
    gather.needs(site["risk category"], "risk category of the site, or a stated service wind speed");
  }
  return {
    H: gather.need(column?.fields.height, "column height"),
    n: stated !== undefined ? numberOf(stated) : finish === undefined ? Number.NaN : byFinish[finish],
    ...(finish === undefined ? {} : { finish }),
    ...pierBelow(support, gather),
  };
}

function evaluate({ H, n, pier, leans, onSpring }: DriftInputs, { sway, base }: Demand, calc: Calc): Outcome {
  if (!sway) return unchecked("the movement of the column top is not known where reactions are given by hand");
  const u = calc(topSway, { u_x: sway.x, u_y: sway.y });
  const limit = calc(swayLimit, { H, n });
  if (!pier) {
    calc.note(onSpring ? "The base gives by the stiffness stated for it, and the sway holds that." : "The column stands on a rigid base here: what a bracket, pier or footing turns by is not in it.");
    return weigh(u, limit, "length");
  }
  const below = pierResponse(pier, base, calc);
  if (!below || below.givesWay) return unchecked("the soil beside the pier gives way under this load, so that the sway has no end: deepen the pier or widen it");
  calc.note(
    onSpring
      ? "The movement of the pier at grade is added; its lean is in the turning stated for the base."
      : "Movement and lean of the pier are added as if all went the same way, with the forces of columns on rigid bases.",
  );
  const u_t = calc(swayOnPier, { u, y_0: Math.abs(below.deflection[0]), theta_0: Math.abs(below.slope[0]), a: heightOf(pier, calc), H: leans ? H : 0 });
  return weigh(u_t, limit, "length");
}

/** Sway on a rigid base, and what moves the pier. */
const measures = ({ pier }: DriftInputs, { sway, base }: Demand, calc: Calc): readonly number[] => [
  sway ? calc(topSway, { u_x: sway.x, u_y: sway.y }) : 0,
  ...(pier ? pierLoad(pier, base, calc) : []),
];

const range =
  "Columns on rigid bases, or on bases that give by a stated stiffness, with the movement of a pier added where the stiffness of the soil beside it is stated; the turning of a bracket or a footing that is not stated adds to it. The roof is rigid in itself; the bending of cantilevered roof beams is not in it.";

const limitOf = (field: Sourced<unknown> | undefined, support: Support) => field ?? support.column?.fields.section ?? support.column;

export const columnDrift = check({
  id: "column.drift",
  title: "Sway at the column top",
  link: "column",
  level: "service",
  clause: "no code limit; ASCE 7-22 Appendix C (from memory)",
  fails: "The column top moves farther than what hangs at the roof can follow.",
  seen: "Cracked glass or ceiling edges after an ordinary storm; a roof that is seen to move.",
  range: `${range} The service wind is that of the return period named, reckoned from the basic wind speed unless its speed is stated.`,
  formulas: [topSway, ...responseFormulas, swayOnPier, swayLimit],
  applies: isUnderRoof,
  inputs: serviceInputs,
  fixedBy: (support) => limitOf(support.roof?.fields["sway limit"], support),
  measures,
  evaluate,
  advise: ({ H, n, finish }, outcome, say) =>
    `Sway ${say.show(outcome.demand, "length")} over ${say.show(H, "distance")}; ${say.show(outcome.capacity, "length")} is the limit (H/${say.show(n, "number")}${finish === undefined ? "" : finish === "bare" ? " for a bare roof" : ` with ${finish}`}). Take a wider section, fix the column tops, or brace a bay in that direction.`,
});

export const columnDriftAtStrength = check({
  id: "column.drift-strength",
  title: "Sway at the column top at strength",
  link: "column",
  level: "strength",
  clause: "limit of the notebook; no code limit",
  fails: "The column top moves farther in the design storm than is wanted.",
  seen: "A roof that strikes what stands beside it.",
  range: `${range} Second order is in it where the story's magnifier is more than a trifle.`,
  formulas: [topSway, ...responseFormulas, swayOnPier, swayLimit],
  applies: (support) => isUnderRoof(support) && support.roof?.fields["sway limit at strength"] !== undefined,
  inputs: (support, gather): DriftInputs => {
    const { column, roof } = support;
    const limit = gather.needs(roof?.fields["sway limit at strength"], "sway limit at strength");
    return { H: gather.need(column?.fields.height, "column height"), n: limit === undefined ? Number.NaN : numberOf(limit), ...pierBelow(support, gather) };
  },
  fixedBy: (support) => limitOf(support.roof?.fields["sway limit at strength"], support),
  measures,
  evaluate,
  advise: ({ H }, outcome, say) =>
    `Sway ${say.show(outcome.demand, "length")} over ${say.show(H, "distance")} at strength; ${say.show(outcome.capacity, "length")} is the limit stated. Take a wider section, fix the column tops, or brace a bay in that direction.`,
});
