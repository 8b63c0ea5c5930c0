/** The heights at which a wall is looked at: from the ends of the rods down to its footing, wherever bars, soil or the spread change, and between. */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import { depthOfLimit } from "./spread.js";
import { type StemInputs, straightNeed } from "./stem.js";
import { sectionDepth, sectionHeight } from "./stem-forces.js";

const depth = { kind: "distance", meaning: "depth below the top of the wall" } as const;

export const depthDeveloped = formula({
  id: "wall.depth-developed",
  text: "z_d = z_b + l_d",
  source: "ACI 318-19 25.4.2.1",
  symbols: { z_d: depth, z_b: { ...depth, meaning: "depth of the bars' end below the top of the wall" }, l_d: { kind: "length", meaning: "development length of a straight bar in tension" } },
});

export const depthBetween = formula({
  id: "wall.depth-between",
  text: "z = z_0 + i * (h - z_0) / 8",
  source: "arithmetic",
  symbols: { z: depth, z_0: { ...depth, meaning: "depth from which the wall is looked at" }, i: { kind: "number", meaning: "number of the section" }, h: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" } },
});

export interface Height {
  /** Above the footing, m. */
  readonly y: number;
  readonly words: string;
  /** Deep enough that the bars are developed, so that a length without a post is looked at too. */
  readonly isDeveloped: boolean;
}

const parts = 8;

/** From the uppermost down; the joint to the footing is the last. `least`: no section lower than this height above the footing, m. */
export function heightsOf(inputs: StemInputs, least = 0): readonly Height[] {
  const { height: h, spread, earth, faces } = inputs;
  const bars = faces.flatMap(({ vertical }) => vertical);
  const developed = bars.map((one) => depthDeveloped.value({ z_b: one.end, l_d: straightNeed(inputs, one, plainCalc) }));
  const z_d = Math.min(...developed);
  const bottom = sectionDepth.value({ h, y: least });
  const z_0 = Math.min(inputs.rods ?? z_d, bottom);
  const isRods = inputs.rods !== undefined && z_0 === inputs.rods;
  const found: { readonly z: number; readonly words: string }[] = [{ z: z_0, words: isRods ? "at the ends of the rods" : least > 0 || z_0 < h ? "at the top of what is looked at" : "at the footing" }];
  const add = (z: number, words: string): void => {
    if (isAbove(z, z_0) && isBelow(z, bottom)) found.push({ z, words });
  };
  for (const [i, one] of bars.entries()) {
    add(one.end, "where bars end");
    add(developed[i], "where bars are developed");
  }
  if (spread && spread.perDepth > 0) {
    const { half: b_h, perDepth: k_s } = spread;
    for (const l_s of [spread.before, spread.after]) add(depthOfLimit.value({ l_s, b_h, k_s }), "where the spread is cut short");
  }
  if (earth) {
    const top = sectionDepth.value({ h, y: inputs.high });
    add(top, "at the top of the soil");
    if (earth.water !== undefined) add(waterLevel.value({ z_t: top, z_w: earth.water }), "at the water behind the wall");
  }
  for (let i = 1; i < parts; i += 1) add(depthBetween.value({ z_0, i, h: bottom }), "between");
  if (isAbove(bottom, z_0)) found.push({ z: bottom, words: least > 0 ? "one effective depth above the footing" : "at the footing" });
  found.sort((a, b) => (a.z < b.z ? -1 : 1));
  return found.map(({ z, words }, i) => ({ y: i === found.length - 1 ? least : sectionHeight.value({ h, z }), words, isDeveloped: i === found.length - 1 || !isBelow(z, z_d) }));
}

export const waterLevel = formula({
  id: "wall.water-level",
  text: "z = z_t + z_w",
  source: "geometry",
  symbols: { z: depth, z_t: { ...depth, meaning: "depth of the top of the soil below the top of the wall" }, z_w: { kind: "distance", meaning: "depth of the water below the top of that soil", field: "foundations.*.fill.water" } },
});
