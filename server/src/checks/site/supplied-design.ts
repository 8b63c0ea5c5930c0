/**
 * A kit or a design made for another place: its wind, snow or frost is less than that of this one. In the field: a pergola sold with one footing for
 * every town, set up beside a lake.
 *
 * Common practice, no source: what was designed elsewhere is held against the criteria of the place before anything of it is built. The pressures are
 * those of the load standard, at the mean height of the roof, or at 15 ft where no roof is described.
 */
import { velocityPressureAt } from "../../actions/wind/velocity-pressure.js";
import { readWindSite } from "../../actions/wind-inputs.js";
import { Wanted } from "../../actions/wanted.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Sourced, Structure } from "../../project/model.js";
import type { KindName } from "../../units/kinds.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { showAs, type Found, type ShowAs } from "./judge.js";

export const pressureRatio = formula({
  id: "site.pressure-ratio",
  text: "n_q = q_s / q_k",
  source: "ASCE 7-22 Eq. 26.10-1, 7-16 Eq. 26.10-1, 7-10 Eq. 27.3-1: the pressure of the wind here over that of the supplied design",
  symbols: {
    n_q: { kind: "ratio", meaning: "how many times harder the wind presses here" },
    q_s: { kind: "pressure", meaning: "velocity pressure of the place" },
    q_k: { kind: "pressure", meaning: "velocity pressure the design was made for" },
  },
});

export const heightWithoutRoof = formula({
  id: "site.height-without-roof",
  text: "h = h_0",
  source: "ASCE 7-22 Table 26.10-1: the height up to which the pressure does not change",
  symbols: { h: { kind: "distance", meaning: "height the pressures are compared at" } },
  constants: { h_0: "15 ft" },
});

interface Judged {
  readonly over: readonly Found[];
  readonly unchecked: readonly Found[];
}

const nothing: Judged = { over: [], unchecked: [] };

function judgeWind({ site, codes, roof }: Structure, show: ShowAs): Judged {
  const kit = site["supplied design"]?.value;
  const speed = kit?.["wind speed"];
  const exposure = kit?.exposure;
  if (!speed && !exposure) return nothing;
  if (!speed || !exposure) return { over: [], unchecked: [{ message: `The ${speed ? "exposure" : "wind speed"} the supplied design was made for is not stated; its papers name both.`, at: speed ?? exposure }] };
  const wanted = new Wanted();
  const here = readWindSite(codes, site, wanted);
  if (wanted.missing.length > 0) return { over: [], unchecked: [{ message: `To hold the supplied design against this place, ${wanted.missing.join(" and ")} is needed.`, at: speed }] };
  const h = roof?.fields["mean height"]?.value ?? heightWithoutRoof.value({});
  const n_q = pressureRatio.value({ q_s: velocityPressureAt(h, here, plainCalc), q_k: velocityPressureAt(h, { ...here, V: speed.value, exposure: exposure.value, K_zt: 1, hill: undefined }, plainCalc) });
  if (!isAbove(n_q, 1)) return nothing;
  const places = `made for ${show(speed.value, "speed")} in exposure ${exposure.value}, and this place has ${show(here.V, "speed")} in exposure ${here.exposure}${here.hill || here.K_zt > 1 ? " on a hill" : ""}`;
  return { over: [{ message: `Wind ${show(n_q, "ratio")} times as hard as the supplied design takes: it was ${places}. Have it designed for this place, footings and all.`, at: speed }], unchecked: [] };
}

function judgeValue(what: string, kit: Sourced<number> | undefined, here: Sourced<number> | undefined, kind: KindName, show: ShowAs): Judged {
  if (!kit) return nothing;
  if (!here) return { over: [], unchecked: [{ message: `The ${what} of this place is not stated, to hold the supplied design against.`, at: kit }] };
  if (!isAbove(here.value, kit.value)) return nothing;
  const wants = kind === "pressure" ? "Have it designed for this place." : "Set its foundations deeper.";
  return { over: [{ message: `${what === "ground snow" ? "Ground snow" : "Frost depth"} ${show(here.value, kind)} here; the supplied design takes ${show(kit.value, kind)}. ${wants}`, at: kit }], unchecked: [] };
}

function judgeDesign(structure: Structure, show: ShowAs): RuleFinding | undefined {
  const stated = structure.site["supplied design"];
  const [support] = structure.supports;
  if (!stated || !support) return undefined;
  const { "ground snow": snow, "frost depth": frost } = stated.value;
  const parts = [
    judgeWind(structure, show),
    judgeValue("ground snow", snow, structure.site["ground snow"], "pressure", show),
    judgeValue("frost depth", frost, structure.site["frost depth"], "distance", show),
  ];
  const over = parts.flatMap((part) => part.over);
  const unchecked = parts.flatMap((part) => part.unchecked);
  const [verdict, found] = over.length > 0 ? (["over", over] as const) : unchecked.length > 0 ? (["unchecked", unchecked] as const) : (["holds", [{ message: "The supplied design was made for a place no milder than this one, by what is stated of it.", at: stated }]] as const);
  return { support, verdict, message: found.map(({ message }) => message).join(" "), at: found[0].at ?? stated };
}

export const suppliedDesign: RuleDecl = {
  id: "site.supplied-design",
  title: "A supplied design held against this place",
  link: "site",
  clause: "common practice, no source; pressures by ASCE 7-22 26.10",
  fails: "A kit or a design made for a milder place is built in a harsher one.",
  seen: "A kit pergola with one footing for every town, gone from the lake shore after the first storm.",
  range: "Wind by speed and exposure, ground snow and frost depth, as far as they are stated of the supplied design. Kinds of ground, earthquakes, the edition it was designed by and the sizes themselves are not compared.",
  judge: (structure) => {
    const found = judgeDesign(structure, showAs(structure));
    return found ? [found] : [];
  },
};
