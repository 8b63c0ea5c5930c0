/**
 * The wall shears across its thickness along an inclined crack above its footing, or below a post. In the field a slanting crack across the end of the wall.
 *
 * ACI 318-19 22.5.5.1 without ties, with the size effect: 13.2.6.2 exempts footings and not walls. Pull takes strength away. ACI 318-14 22.5.6, 22.5.7.
 * At d above the footing and at every height over it (7.4.3.2). Along the wall the concrete carries the post's push by itself, so that least bars are enough (11.6.1).
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { areaBySpacing, padEditions } from "../footing/pad.js";
import { axialStress, concreteEarlier, concreteWithoutTies, shearStrength, tensionRatio } from "../pier/concrete-shear.js";
import { isWall } from "./body.js";
import type { Situation } from "./situations.js";
import { fromOtherFace, readStem, type StemInputs, stressAt } from "./stem.js";
import { combinedAt, type Combined, forcesAt, shearAt, shearOf, stemForceFormulas, type StemSection } from "./stem-forces.js";
import { heightsOf } from "./stem-heights.js";
import { prepared, type Tried, worstOfStem } from "./stem-worst.js";

const width = { kind: "distance", meaning: "length of wall that carries the forces of the post" } as const;
const thickness = { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" } as const;

export const sectionArea = formula({
  id: "wall.section-area",
  text: "A_g = b * t_w",
  source: "geometry",
  symbols: { A_g: { kind: "planArea", meaning: "area of the section" }, b: width, t_w: thickness },
});

export const axialOver = formula({
  id: "wall.axial-over-width",
  text: "N_u = N_w * b",
  source: "statics",
  symbols: { N_u: { kind: "force", meaning: "axial force over that length, compression positive", range: [-1e6, 1e6] }, N_w: { kind: "lineLoad", meaning: "axial force per length of wall, compression positive", range: [-1e6, 1e6] }, b: width },
});

export const workingArea = formula({
  id: "wall.working-bars",
  text: "A_s = A_o + A_n * f_s / f_y",
  source: "ACI 318-19 25.4.10.1: bars by the part of their yield strength they are developed for",
  symbols: {
    A_s: { kind: "area", meaning: "bars at the face that is pulled, as far as they are developed" },
    A_o: { kind: "area", meaning: "those counted before" },
    A_n: { kind: "area", meaning: "bars of one kind over that length" },
    f_s: { kind: "steelStress", meaning: "stress they can take up at the section" },
    f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" },
  },
});

export const alongStrength = formula({
  id: "wall.strength-along",
  text: "phiV_l = phi * 0.5 * 2 * s_c * A_g",
  source: "ACI 318-19 11.6.1, 11.6.2, 11.5.4.3, alpha_c = 2: half of the concrete's part, beyond which more bars are asked for (from memory)",
  symbols: { phiV_l: { kind: "force", meaning: "push along the wall that its least bars are enough for" }, s_c: { kind: "stress", meaning: "square root of the concrete strength, as a stress" }, A_g: { kind: "planArea", meaning: "area of the section" } },
  constants: { phi: "0.75" },
});

/** Bars at a face: as far as they are developed, and their effective depth. */
interface Web {
  readonly area: number;
  readonly d: number;
}

interface Webs {
  readonly fill: Web;
  readonly free: Web;
}

const pulledNames = { fill: ["fill face", "middle"], free: ["free face", "middle"] } as const;

function webOf(inputs: StemInputs, face: "fill" | "free", section: StemSection, calc: Calc): Web {
  const { thickness: t_w, f_y } = inputs;
  let area = 0;
  let d = Number.POSITIVE_INFINITY;
  for (const { name, vertical } of inputs.faces) {
    if (!(pulledNames[face] as readonly string[]).includes(name)) continue;
    for (const one of vertical) {
      area = calc(workingArea, { A_o: area, A_n: calc(areaBySpacing, { A_b: one.area, b: section.width, s: one.spacing }), f_s: stressAt(inputs, one, section.depth, calc), f_y });
      d = Math.min(d, face === "fill" ? calc(fromOtherFace, { t_w, x_b: one.from }) : one.from);
    }
  }
  return { area, d: Number.isFinite(d) ? d : 0 };
}

const know = (inputs: StemInputs, section: StemSection, calc: Calc): Webs => ({ fill: webOf(inputs, "fill", section, calc), free: webOf(inputs, "free", section, calc) });

/** The least depth of any bars from the face opposite: the lowest section stands that far above the footing. */
function leastDepth({ faces, thickness: t_w }: StemInputs): number {
  const depths = faces.flatMap(({ name, vertical }) => vertical.flatMap(({ from }) => [...(name === "free face" ? [] : [fromOtherFace.value({ t_w, x_b: from })]), ...(name === "fill face" ? [] : [from])]));
  return Math.min(...depths);
}

const sections = prepared((inputs: StemInputs) => heightsOf(inputs, Math.min(leastDepth(inputs), inputs.height)), know);

function strengthOf(inputs: StemInputs, { area: A_s, d }: Web, section: StemSection, N_w: number, calc: Calc): number {
  if (!(d > 0 && A_s > 0)) return 0;
  const { width: b_w } = section;
  const { fprime_c, edition } = inputs;
  const s_c = calc(rootStrength, { fprime_c });
  const A_g = calc(sectionArea, { b: b_w, t_w: inputs.thickness });
  const N_u = calc(axialOver, { N_w, b: b_w });
  const V_c =
    edition === "ACI 318-14"
      ? calc(concreteEarlier, { N_u, A_g, s_c, b_w, d })
      : calc(concreteWithoutTies, { rho_w: calc(tensionRatio, { A_s, b_w, d }), s_c, n_u: calc(axialStress, { N_u, A_g, fprime_c }), b_w, d });
  return calc(shearStrength, { V_c, V_s: 0 });
}

function shearedAt(inputs: StemInputs, combined: Combined, section: StemSection, known: Webs, situation: Situation, calc: Calc): Tried<"across" | "along"> {
  const { mean, pulled } = forcesAt(inputs, section, situation, combined, calc);
  const { top } = combined;
  const V_l = situation.hasPost ? Math.abs(top.along) : 0;
  const demand = shearOf(section, situation, combined, calc);
  const across = { demand, capacity: strengthOf(inputs, known[pulled], section, mean, calc), of: "across" as const };
  if (V_l === 0) return across;
  const capacity = calc(alongStrength, { s_c: calc(rootStrength, { fprime_c: inputs.fprime_c }), A_g: calc(sectionArea, { b: section.width, t_w: inputs.thickness }) });
  return worseOf<Pair & { readonly of: "across" | "along" }>(across, { demand: V_l, capacity, of: "along" });
}

export const wallStemShear = check({
  id: "wall.stem-shear",
  title: "Wall in shear across its thickness",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 22.5.5.1, 22.5.5.1.3, 13.3.6.1, 11.6.1",
  editions: padEditions,
  fails: "The wall shears across its thickness above its footing or below a post.",
  seen: "A slanting crack across the end of the wall, and the wall moved out above it.",
  range:
    "Normalweight concrete without ties, by the bars of the face that is pulled as far as they are developed; from the ends of the rods down to one effective depth above the footing. Over the length that carries the post, with the mean axial force. With the fill and without it, and on a length without a post; earth pressure with a load factor of 1.6, and what an earthquake adds where the fill states its coefficient. The push along the wall is held against half of the concrete's part, so that the least bars are enough.",
  formulas: [...stemForceFormulas, shearAt, sectionArea, axialOver, areaBySpacing, workingArea, tensionRatio, axialStress, concreteWithoutTies, concreteEarlier, shearStrength, alongStrength],
  applies: isWall,
  inputs: readStem,
  fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const combined = combinedAt(inputs, demand, calc);
    if ("because" in combined) return unchecked(combined.because);
    const attempt = (section: StemSection, known: Webs, situation: Situation, c: Calc): Tried<"across" | "along"> => shearedAt(inputs, combined, section, known, situation, c);
    const found = worstOfStem({ inputs, combined, all: sections(inputs), know, attempt }, calc);
    return weigh(found.demand, found.capacity, "force");
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "force")} shears the length of wall that carries the post; it holds ${say.show(outcome.capacity, "force")}. Thicken the wall, or add vertical bars, which raise the strength by the cube root.`,
});
