/**
 * Frost reaches under the foundation: water in the ground freezes into lenses and lifts it, a little each winter and not evenly.
 *
 * IBC 2021 1809.5: the underside is at or below the frost depth, or the footing is erected on solid rock. 1809.4: at least 12 in below undisturbed
 * ground. Rock that is weathered or fractured holds water in its seams and does not count as solid, neither does rock below a cushion. 1809.5,
 * exceptions: a small free-standing structure.
 */
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import { format, formatBuildable } from "../../units/format.js";
import type { UnitSystem } from "../../units/kinds.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { exceptionFails } from "./frost-exception.js";

/** A depth given in other units may miss the limit by the rounding of its last digit, m. */
const rounding = 1e-6;

const depthSymbol = { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" } as const;

export const neededDepth = formula({
  id: "site.needed-depth",
  text: "d_n = max(z_f, d_min)",
  source: "IBC 2021 1809.4, 1809.5",
  symbols: { d_n: { kind: "distance", meaning: "least depth of the underside" }, z_f: { kind: "distance", meaning: "frost depth", field: "site.frost depth" } },
  constants: { d_min: "12 inch" },
});

export const missingDepth = formula({
  id: "site.missing-depth",
  text: "d_m = d_n - d",
  source: "IBC 2021 1809.4, 1809.5",
  symbols: { d_m: { kind: "distance", meaning: "depth that is missing" }, d_n: { kind: "distance", meaning: "least depth of the underside" }, d: depthSymbol },
});

type Judged = Pick<RuleFinding, "verdict" | "message" | "at">;

function byDepth(support: Support, system: UnitSystem, reasons: string): Judged {
  const depth = support.foundation?.fields.depth;
  const frost = support.site["frost depth"];
  if (!frost) return { verdict: "unchecked", message: `${support.name}: the frost depth of the site is not given${reasons}. The building official has it.`, at: support };
  if (!depth) return { verdict: "unchecked", message: `${support.name}: the depth of its underside is not given${reasons}.`, at: support.foundation ?? support };
  const exception = support.site["frost exception"];
  const refused = exception && exceptionFails(support, exception.value, system);
  if (refused && "unknown" in refused) return { verdict: "unchecked", message: `${support.name}: the exception from frost depth asks for ${refused.unknown}, which is not given.`, at: exception };
  const isExcepted = exception !== undefined && refused === undefined;
  const needed = neededDepth.value({ z_f: isExcepted ? 0 : frost.value });
  // As it is built, in feet and inches, unless that hides what is missing.
  const built = (value: number): string => formatBuildable(value, "distance", system);
  const show = (value: number): string => (depth.value !== needed && built(depth.value) === built(needed) ? format(value, "distance", system) : built(value));
  const isFrostMore = !isExcepted && frost.value >= needed;
  const why = isExcepted ? `${reasons}, and a small free-standing structure is excepted from frost depth; the local official may have other limits` : refused ? `${reasons}, and ${refused.because}` : reasons;
  const reason = isFrostMore ? `the ground freezes to ${show(frost.value)}` : `${show(needed)} below undisturbed ground is the least (IBC 2021 1809.4)`;
  return missingDepth.value({ d_n: needed, d: depth.value }) <= rounding
    ? { verdict: "holds", message: `${support.name}: underside at ${show(depth.value)}; ${reason}${why}.`, at: depth }
    : { verdict: "over", message: `${support.name}: underside at ${show(depth.value)}, ${show(needed)} needed: ${reason}${why}. Go deeper.`, at: depth };
}

function judgeSupport(support: Support, system: UnitSystem): Judged {
  const { name, foundation, ground } = support;
  if (!foundation) return { verdict: "unchecked", message: `${name}: it has no foundation whose depth could be held against the frost.`, at: support };
  const kind = ground?.fields.kind?.value;
  if (!ground || kind === undefined) return { verdict: "unchecked", message: `${name}: whether its foundation stands on soil or rock is not said.`, at: foundation.fields.ground ?? foundation };
  if (kind === "soil") return byDepth(support, system, "");
  const { condition, drained, cushion } = ground.fields;
  if (cushion && cushion.value > 0) return byDepth(support, system, ", and rock below a cushion does not take the place of depth");
  if (!condition) {
    return {
      verdict: "unchecked",
      message: `${name}: only sound, drained rock takes the place of frost depth. State the condition of the rock (sound, weathered or fractured) and whether it is drained.`,
      at: ground.fields.kind ?? ground,
    };
  }
  if (condition.value !== "sound") return byDepth(support, system, `, and ${condition.value} rock does not take the place of depth`);
  if (drained?.value === false) return byDepth(support, system, ", and rock on which water stands does not take the place of depth");
  return { verdict: "holds", message: `${name}: frost is answered by sound rock, not by depth. The rock has to be clean, tight and drained; the engineer should see it.`, at: condition };
}

export const frost: RuleDecl = {
  id: "site.frost",
  title: "Frost and least depth",
  link: "site",
  clause: "IBC 2021 1809.4, 1809.5",
  fails: "The ground under the foundation freezes and lifts it.",
  seen: "Piers jacked up over the winters, unevenly, and a roof out of level.",
  range: "By the depth of the underside, or by sound and drained rock. The exception for small free-standing structures is taken where the notebook names it, by the roof it describes; whether the structure is attached to a house, and the limits of the place, are not seen. Insulated foundations and the grip of frozen soil on the side of a pier are left out.",
  alone: true,
  judge: (structure) => structure.supports.map((support) => ({ support, ...judgeSupport(support, structure.project.units?.value ?? "US") })),
};
