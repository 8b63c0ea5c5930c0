/**
 * What the notebook says of the soil beside a pier, read into layers with a spring or a p-y curve each. A curve goes before a spring, as it knows
 * where the soil gives way; what is missing is named, and nothing is taken from the class of the soil.
 */
import type { SoilLayer } from "../../mechanics/beam-on-springs.js";
import type { SoilLaw } from "../../mechanics/soil-curves.js";
import type { Ground, Sourced, Support } from "../../project/model.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Gather } from "../contract.js";
import { levelGround } from "./slope.js";

type Layer = NonNullable<Ground["layers"]>["value"][number]["value"];
type Values = Pick<Layer, Exclude<keyof Layer, "from">>;

export interface PierSoil {
  /** From grade down; spring stiffness is that of the ground, not yet times the width, N/m³. */
  readonly layers: readonly (SoilLayer & { readonly modulus?: number })[];
  readonly water: number | undefined;
  /** What each layer is followed by, in words. */
  readonly words: readonly string[];
}

export const springStiffness = formula({
  id: "pier.spring-stiffness",
  text: "k_s = k_h * D",
  source: "definition of the modulus of horizontal subgrade reaction",
  symbols: {
    k_s: { kind: "pressure", meaning: "spring stiffness per length of pier", range: [1e6, 1e9] },
    k_h: { kind: "subgradeModulus", meaning: "modulus of horizontal subgrade reaction", field: "ground.*.subgrade modulus" },
    D: { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" },
  },
});

const isSome = (value: Sourced<number> | undefined): value is Sourced<number> => value !== undefined && value.value > 0;

const isGiven = (of: Values): boolean =>
  [of["subgrade modulus"], of["modulus growth"], of["rock strength"], of["strain at half strength"]].some((value) => value !== undefined);

/** Whether the notebook says anything of how the soil beside the pier moves. */
export const hasPierSoil = ({ ground }: Support): boolean => ground !== undefined && (isGiven(ground.fields) || (ground.fields.layers?.value ?? []).some(({ value }) => isGiven(value)));

const anyOf = "modulus growth (sand), subgrade modulus (stiff clay), or cohesion and strain at half strength (soft clay) of the ground";

interface Read {
  readonly law: SoilLaw;
  readonly modulus?: number;
  readonly weight?: number;
  readonly words: string;
}

function readLaw(of: Values, gather: Gather, where: string): Read {
  const weight = () => gather.need(of["unit weight"], `unit weight of the ${where}`);
  if (of["rock strength"]) {
    const q = gather.need(of["rock strength"], "rock strength");
    const rqd = gather.need(of.rqd, `rock quality designation (rqd) of the ${where}`);
    return { law: { type: "rock", q, rqd, strain: gather.need(of["rock strain"], `rock strain of the ${where}`) }, words: "p-y curve of weak rock" };
  }
  const isSand = isSome(of["friction angle"]);
  const isClay = isSome(of.cohesion);
  if (isClay && !isSand && of["strain at half strength"]) {
    const c = gather.need(of.cohesion, "cohesion");
    return { law: { type: "clay", c, eps50: gather.need(of["strain at half strength"], "strain at half strength") }, weight: weight(), words: "p-y curve of soft clay" };
  }
  if (isSand && !isClay && of["modulus growth"]) {
    const phi = gather.need(of["friction angle"], "friction angle");
    return { law: { type: "sand", phi, k: gather.need(of["modulus growth"], "modulus growth") }, weight: weight(), words: "p-y curve of sand" };
  }
  if (of["subgrade modulus"]) {
    return { law: { type: "springs", k: 0, growth: 0 }, modulus: gather.need(of["subgrade modulus"], "subgrade modulus"), words: "springs the same at every depth, which do not give way" };
  }
  const growth = gather.need(of["modulus growth"], where === "ground" ? anyOf : `${anyOf}, for the ${where}`);
  return { law: { type: "springs", k: 0, growth }, words: "springs that grow with depth, which do not give way" };
}

/** Blocks where the layers are not written from the top down. */
export function inOrder(layers: readonly { readonly top: number }[], gather: Gather): void {
  if (layers.some(({ top }, i) => i > 0 && top <= layers[i - 1].top)) gather.block("the layers of the ground do not go down in order: write them from the top, each with a larger depth (from)");
}

/** The ground along the pier as layers, or what is missing. */
export function readPierSoil(support: Support, gather: Gather): PierSoil {
  const ground = support.ground?.fields;
  if (!ground) {
    gather.needs(undefined, "ground the foundation stands in");
    return { layers: [], water: undefined, words: [] };
  }
  levelGround(support, gather, "the movement of a pier by springs or p-y curves", "have it found for that slope by a geotechnical engineer, or bring the ground level around the pier");
  const below = ground.layers?.value ?? [];
  const all: readonly { readonly top: number; readonly of: Values; readonly where: string }[] = [
    { top: 0, of: ground, where: below.length > 0 ? "top layer" : "ground" },
    ...below.map(({ value }, i) => ({ top: gather.need(value.from, `depth (from) of layer ${i + 1} below the top one`), of: value as Values, where: `layer ${i + 1} below the top one` })),
  ];
  inOrder(all, gather);
  const needsWeight = all.some(({ of }) => isSome(of["friction angle"]) || isSome(of.cohesion));
  const read = all.map(({ top, of, where }) => {
    const { law, modulus, weight, words } = readLaw(of, gather, where);
    // Layers above a curve weigh on it, whatever they are followed by themselves.
    const w = weight ?? (needsWeight && all.length > 1 ? gather.need(of["unit weight"], `unit weight of the ${where}`) : gather.may(of["unit weight"]));
    return { layer: { top, law, weight: w, modulus }, words };
  });
  return { layers: read.map(({ layer }) => layer), water: gather.may(ground["water table"]), words: read.map(({ words }) => words) };
}

/** The layers with springs of the pier's width. */
export const layersOf = ({ layers }: PierSoil, D: number, calc: Calc): readonly SoilLayer[] =>
  layers.map(({ modulus, top, law, weight }) => (modulus === undefined ? { top, law, weight } : { top, weight, law: { type: "springs", k: calc(springStiffness, { k_h: modulus, D }), growth: 0 } }));

