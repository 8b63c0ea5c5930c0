/**
 * The rod ends inside its nut. Seen on the day of erection: the nut shows an empty thread at its top, or does not catch at all.
 *
 * Projection needed: grout, plate, washer, nut and three threads; on leveling nuts at least the lower nut with its washer in place of the grout.
 * Common practice. A nut filled to 0.80 of its height develops a rod of grade 36 (practice, for a 1 in rod): whether that is accepted is
 * the engineer's word.
 */
import { formula } from "../../formula/declare.js";
import { isBelow as isLess } from "../../mechanics/compare.js";
import type { Base } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { readHardware } from "./hardware.js";
import { judgeBases, type Show } from "./judge.js";

const nut = { kind: "length", meaning: "height of the nut" } as const;
const washer = { kind: "length", meaning: "thickness of the washer", field: "bases.*.washer.thickness" } as const;
const belowPlate = { kind: "length", meaning: "from the concrete to the underside of the plate" } as const;
const plate = { kind: "length", meaning: "thickness of the plate", field: "bases.*.plate.thickness" } as const;

export const plateUnderside = formula({
  id: "base.plate-underside",
  text: "h_0 = max(t_g, g + h_n + t_w)",
  source: "geometry: the leveling nut and its washer below the plate",
  symbols: {
    h_0: belowPlate,
    t_g: { kind: "length", meaning: "grout", field: "bases.*.grout" },
    g: { kind: "length", meaning: "clear height below the leveling nut, where no grout is placed", field: "bases.*.gap below nuts" },
    h_n: nut,
    t_w: washer,
  },
});

export const threadsBeyond = formula({
  id: "base.threads-beyond",
  text: "l_t = 3 * l_1 / n_t",
  source: "two to three threads beyond the nut; common practice, no source",
  symbols: { l_t: { kind: "length", meaning: "three threads" }, n_t: { kind: "number", meaning: "threads per inch" } },
  constants: { l_1: "1 inch" },
});

export const abovePlate = formula({
  id: "base.above-plate",
  text: "h_r = t_w + h_n + l_t",
  source: "geometry: washer, nut and three threads",
  symbols: { h_r: { kind: "length", meaning: "height of washer, nut and rod above the plate" }, t_w: washer, h_n: nut, l_t: { kind: "length", meaning: "three threads" } },
});

export const projectionNeeded = formula({
  id: "base.projection-needed",
  text: "h_p = h_0 + t_p + h_r",
  source: "common practice, no source",
  symbols: { h_p: { kind: "length", meaning: "projection needed above the concrete" }, h_0: belowPlate, t_p: plate, h_r: { kind: "length", meaning: "height of washer, nut and rod above the plate" } },
});

export const nutEngaged = formula({
  id: "base.nut-engaged",
  text: "h_e = min(h_n, h_g - h_0 - t_p - t_w)",
  source: "geometry",
  symbols: {
    h_e: { kind: "distance", meaning: "height of the nut that holds thread" },
    h_n: nut,
    h_g: { kind: "length", meaning: "projection given", field: "bases.*.projection" },
    h_0: belowPlate,
    t_p: plate,
    t_w: washer,
  },
});

export const engagementThatDevelops = formula({
  id: "base.engagement-that-develops",
  text: "h_d = 0.80 * h_n",
  source: "0.80 in of a 1 in heavy hex nut develops the rod; practice, no source",
  symbols: { h_d: { kind: "length", meaning: "height of nut that develops the rod" }, h_n: nut },
});

export const missingProjection = formula({
  id: "base.missing-projection",
  text: "h_m = h_p - h_g",
  source: "geometry",
  symbols: { h_m: { kind: "distance", meaning: "projection that is missing" }, h_p: { kind: "length", meaning: "projection needed above the concrete" }, h_g: { kind: "length", meaning: "projection given", field: "bases.*.projection" } },
});

export const threadNeeded = formula({
  id: "base.thread-needed",
  text: "l_n = h_g - h_0 - t_p",
  source: "geometry: down to the top of the plate",
  symbols: {
    l_n: { kind: "distance", meaning: "thread needed from the top of the rod" },
    h_g: { kind: "length", meaning: "projection of the rod", field: "bases.*.projection" },
    h_0: belowPlate,
    t_p: plate,
  },
});

export const threadNeededLeveled = formula({
  id: "base.thread-needed-leveled",
  text: "l_n = h_g - h_0 + h_n + t_w",
  source: "geometry: down to the underside of the leveling nut",
  symbols: {
    l_n: { kind: "distance", meaning: "thread needed from the top of the rod" },
    h_g: { kind: "length", meaning: "projection of the rod", field: "bases.*.projection" },
    h_0: belowPlate,
    h_n: nut,
    t_w: washer,
  },
});

/** m. */
export interface Stack {
  readonly h_0: number;
  readonly t_p: number;
  readonly t_w: number;
  readonly h_n: number;
  readonly h_r: number;
  readonly h_p: number;
  readonly isLeveled: boolean;
}

/** What stands on the concrete, from the bottom up; or what is missing to know it. */
export function stackOf(base: Base): Stack | { readonly missing: string } {
  const hardware = readHardware(base);
  if (!hardware) return { missing: "the size of the rods" };
  const t_p = base.plate?.value.thickness?.value;
  if (t_p === undefined) return { missing: "the thickness of the plate" };
  const t_g = base.grout?.value;
  if (t_g === undefined) return { missing: "the thickness of the grout" };
  const isLeveled = base["leveling nuts"]?.value ?? false;
  const gap = base["gap below nuts"]?.value;
  if (isLeveled && t_g === 0 && gap === undefined) return { missing: "the clear gap below the leveling nuts (gap below nuts)" };
  const { nut: h_n, washerThickness: t_w } = hardware;
  const h_0 = isLeveled ? plateUnderside.value({ t_g, g: t_g > 0 ? 0 : (gap ?? 0), h_n, t_w }) : t_g;
  const h_r = abovePlate.value({ t_w, h_n, l_t: threadsBeyond.value({ n_t: hardware.threadsPerInch }) });
  return { h_0, t_p, t_w, h_n, h_r, h_p: projectionNeeded.value({ h_0, t_p, h_r }), isLeveled };
}

/** Grout, plate, washer, nut and threads in one line. */
const parts = ({ h_0, t_p, t_w, h_n, h_p }: Stack, show: Show): string => `${show(h_p)} needed: ${show(h_0)} below the plate, plate ${show(t_p)}, washer ${show(t_w)}, nut ${show(h_n)} and three threads`;

export const projection: RuleDecl = {
  id: "base.projection",
  title: "Projection and thread of the rods",
  link: "base",
  clause: "common practice, no source",
  fails: "The rod ends inside its nut, or the nut comes to the end of the thread before it is tight.",
  seen: "An empty thread at the top of the nut, a stack of washers under it, or a nut welded to the rod.",
  range: "Nut as high as its rod is thick, washer as stated or by the trade's table, three threads beyond. Set rods may be half an inch off in height; couplers and welded extensions are not in it.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (_, base, show) => {
      const nothing = { message: "" };
      const stack = stackOf(base);
      if ("missing" in stack) return { over: [], unchecked: [{ message: `To say how far the rods have to stand above the concrete ${stack.missing} is needed.`, at: base.anchors }], holds: nothing };
      const given = base.projection;
      if (!given) return { over: [], unchecked: [{ message: `How far the rods stand above the concrete is not given (projection); ${parts(stack, show)}.`, at: base.anchors }], holds: nothing };
      const { h_0, t_p, t_w, h_n, h_p, isLeveled } = stack;
      const h_g = given.value;
      const missing = missingProjection.value({ h_p, h_g });
      const engaged = nutEngaged.value({ h_n, h_g, h_0, t_p, t_w });
      if (isLess(engaged, h_n)) {
        const develops = engagementThatDevelops.value({ h_n });
        const how = engaged <= 0 ? "the nut does not catch" : `the nut holds ${show(engaged)} of thread, and ${show(develops)} develop the rod${isLess(engaged, develops) ? "" : ": the engineer may accept it"}`;
        return { over: [{ message: `Projection ${show(h_g)}, ${parts(stack, show)}; ${show(missing)} short, ${how}. Ask the engineer of record before anything is welded, coupled or ground.`, at: given }], unchecked: [], holds: nothing };
      }
      const l_n = isLeveled ? threadNeededLeveled.value({ h_g, h_0, h_n, t_w }) : threadNeeded.value({ h_g, h_0, t_p });
      const thread = base.thread;
      if (thread && isLess(thread.value, l_n)) return { over: [{ message: `Thread ${show(thread.value)}; ${show(l_n)} needed from the top of the rod to below its lowest nut. Order rods with more thread.`, at: thread }], unchecked: [], holds: nothing };
      const few = isLess(h_g, h_p) ? " The nut is filled, with fewer than three threads beyond." : "";
      return { over: [], unchecked: [], holds: { message: `Projection ${show(h_g)}, ${parts(stack, show)}.${few} Thread needed from the top of the rod: ${show(l_n)}${thread ? `, ${show(thread.value)} given` : ""}.`, at: given } };
    }),
};
