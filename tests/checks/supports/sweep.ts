/** Ten thousand supports drawn at random, from one seed: piers, pads, pads on rock and walls, each with its ground, as plain values for the tests of what stands in or on the ground. */
import type { Demand, Level, Term } from "../../../server/src/actions/demand.js";
import { readBar } from "../../../server/src/catalog/bars.js";
import type { Support } from "../../../server/src/project/model.js";
import { foot, inch, kip, kipFoot, psi, sourced } from "../given.js";
import { allowable, degree, pcf, psf, psfPerFoot, standing, strengthOf } from "../ground.js";
import { lb } from "../ground.js";

const kinds = ["pier", "pier", "pier", "pad", "pad", "pad", "rock pad", "rock pad", "wall", "wall on rock"] as const;
const soils = ["by its class", "sand", "clay", "even springs", "growing springs", "layers"] as const;

/** A support: choices that are made once, and sizes that may be moved a little. */
export interface Drawn {
  readonly choices: {
    readonly kind: (typeof kinds)[number];
    readonly isRound: boolean;
    readonly className: string;
    readonly soil: (typeof soils)[number];
    readonly bars: number;
    readonly bar: string;
    readonly ties: "none" | "ties" | "spiral";
    readonly tie: string;
    readonly held: "free" | "tied slab" | "pavers";
    readonly isolated: boolean;
    readonly hasBell: boolean;
    readonly heldDownBy: string;
    readonly takenAs: string;
    readonly sideBy: string;
    readonly backfill: string;
    readonly isWet: boolean;
    readonly matBar: string;
    readonly hasTopBars: boolean;
    readonly hooked: boolean;
    readonly isOff: boolean;
    readonly concrete: string;
    readonly overturning: string;
    readonly dowels: "one" | "four" | "six" | "two rows";
    readonly dowelBar: string;
    readonly rock: string;
    readonly hasKey: boolean;
    readonly fill: "none" | "at rest" | "Rankine" | "Coulomb" | "equivalent fluid";
    readonly side: string;
    readonly category: string;
    readonly load: "full" | "light" | "earthquake" | "combined";
  };
  readonly sizes: Readonly<Record<SizeName, number>>;
}

const concrete = ["fc", "cover", "pitch"] as const;
const soil = ["weight", "phi", "cohesion", "modulus", "growth", "bearing", "lateral", "friction", "adfreeze", "coneAngle", "safety", "water", "frost"] as const;
const rock = ["bond", "safety", "coneAngle", "lateral", "bearing", "friction", "intoRock", "dowelSpacing", "hole", "water"] as const;
const wall = ["size", "thickness", "depth", "height", "ignored", "matSpacing", "weight", "phi", "retains", "surcharge", "run", "water", "lateral", "friction"] as const;

/** The sizes that a kind of support has. */
export const sizesOfKind = {
  pier: ["size", "depth", "aboveGrade", "ignored", "bellSize", ...concrete, ...soil],
  pad: ["size", "length", "thickness", "depth", "aboveGrade", "pedestal", "ignored", "matSpacing", "off", ...concrete, ...soil],
  "rock pad": ["size", "length", "thickness", "depth", "fc", ...rock],
  wall: [...wall, "bearing", "fc", "cover"],
  "wall on rock": [...wall, ...rock, "fc"],
} as const satisfies Readonly<Record<(typeof kinds)[number], readonly string[]>>;
export const forceNames = ["P", "Vx", "Vy", "Mx", "My", "dead"] as const;
export type SizeName = (typeof sizesOfKind)[keyof typeof sizesOfKind][number] | (typeof forceNames)[number];

export function drawOne(next: () => number): Drawn {
  const among = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)];
  const between = (least: number, most: number): number => least + next() * (most - least);
  const kind = among(kinds);
  const isPier = kind === "pier";
  const isWall = kind === "wall" || kind === "wall on rock";
  const size = isPier ? between(1, 4) : isWall ? between(2.5, 8) : between(3, 9);
  return {
    choices: {
      kind,
      isRound: next() < 0.6,
      className: among(["SM", "GP", "SW", "CL"]),
      soil: among(soils),
      bars: 2 * (2 + Math.floor(next() * 5)),
      bar: among(["no. 5", "no. 6", "no. 7", "no. 8", "no. 9"]),
      ties: among(["none", "ties", "ties", "spiral"] as const),
      tie: among(["no. 3", "no. 4"]),
      held: among(["free", "free", "free", "tied slab", "pavers"] as const),
      isolated: next() < 0.3,
      hasBell: next() < 0.15,
      heldDownBy: among(["weight", "soil cone", "side friction"]),
      takenAs: among(["pole and block", "pole", "block"]),
      sideBy: among(["value", "value", "soil strength"]),
      backfill: among(["loose", "compacted and tested"]),
      isWet: next() < 0.3,
      matBar: among(["no. 4", "no. 5", "no. 6", "no. 8"]),
      hasTopBars: next() < 0.5,
      hooked: next() < 0.5,
      isOff: next() < 0.2,
      concrete: among(["ACI 318-19", "ACI 318-19", "ACI 318-14"]),
      overturning: among(["factored dead load", "1.5 on the net weight", "1.5 with uplift as a load"]),
      dowels: among(["one", "four", "six", "two rows"] as const),
      dowelBar: among(["no. 5", "no. 6", "no. 8"]),
      rock: among(["crystalline bedrock", "sedimentary rock"]),
      hasKey: next() < 0.3,
      fill: among(["none", "at rest", "Rankine", "Coulomb", "equivalent fluid"] as const),
      side: among(["north", "south", "east", "west"]),
      category: among(["B", "B", "C", "D"]),
      load: among(["full", "light", "earthquake", "combined"] as const),
    },
    sizes: {
      size,
      length: size * between(0.7, 1.5),
      thickness: isWall ? between(0.7, 1.7) : between(0.9, 2.5),
      depth: isPier ? between(3, 14) : isWall ? between(1, 2.5) : between(2.6, 6),
      height: between(2, 6),
      aboveGrade: between(1, 18),
      pedestal: between(12, 24),
      ignored: between(0.2, 2.5),
      frost: between(0.5, 4),
      water: between(0.5, 8),
      cover: between(2, 3.5),
      fc: between(2500, 6000),
      pitch: between(1.5, 14),
      matSpacing: between(4, 14),
      off: between(-10, 10),
      bellSize: between(1.2, 2.5),
      weight: between(100, 130),
      phi: between(26, 40),
      cohesion: between(300, 4000),
      modulus: between(20, 400),
      growth: between(10, 150),
      bearing: between(1500, 8000),
      lateral: between(100, 400),
      friction: between(0.25, 0.6),
      adfreeze: between(5, 15),
      coneAngle: between(20, 45),
      bond: between(80, 300),
      safety: between(2, 3.5),
      intoRock: between(6, 60),
      dowelSpacing: between(10, 30),
      hole: between(1, 2.5),
      retains: between(0.5, 3),
      surcharge: between(20, 300),
      run: between(4, 14),
      P: between(-25, 45),
      Vx: between(-6, 6),
      Vy: between(-6, 6),
      Mx: between(-35, 35),
      My: between(-35, 35),
      dead: between(0.5, 8),
    },
  };
}

type Fields = Record<string, unknown>;

/** A list of records, which the maker of supports leaves as it is. */
const listOf = (...records: readonly Fields[]): unknown =>
  Object.assign(records.map((fields) => sourced(Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, sourced(value)])))), { name: "list" });

function soilOf({ choices, sizes }: Drawn): Fields {
  const sand = { "friction angle": sizes.phi * degree, "modulus growth": sizes.growth * (lb / inch ** 3), "unit weight": sizes.weight * pcf, "blow count": 20 };
  const clay = { cohesion: sizes.cohesion * psf, "strain at half strength": 0.01, "unit weight": sizes.weight * pcf };
  const by: Readonly<Record<(typeof soils)[number], Fields>> = {
    "by its class": {},
    sand,
    clay,
    "even springs": { "subgrade modulus": sizes.modulus * (lb / inch ** 3) },
    "growing springs": { "modulus growth": sizes.growth * (lb / inch ** 3) },
    layers: { ...sand, layers: listOf({ from: 4 * foot, ...clay }) },
  };
  return {
    kind: "soil",
    class: choices.className,
    "unit weight": sizes.weight * pcf,
    "isolated poles": choices.isolated,
    "side resistance by": choices.sideBy,
    "lateral safety": sizes.safety,
    "bearing safety": sizes.safety,
    "adfreeze stress": sizes.adfreeze * psi,
    "cone angle": Math.min(sizes.coneAngle, 30) * degree,
    bearing: sizes.bearing * psf,
    ...(choices.hasTopBars ? { "lateral bearing": sizes.lateral * psfPerFoot, friction: sizes.friction } : {}),
    ...(choices.isWet ? { "water table": sizes.water * foot } : {}),
    ...by[choices.soil],
  };
}

const rockOf = ({ choices, sizes }: Drawn): Fields => ({
  kind: "rock",
  class: choices.rock,
  condition: "sound",
  "unit weight": 165 * pcf,
  "dowel bond": sizes.bond * psi,
  "bond safety": sizes.safety,
  "cone angle": sizes.coneAngle * degree,
  "lateral bearing": sizes.lateral * psfPerFoot,
  bearing: 4 * sizes.bearing * psf,
  ...(choices.hooked ? { friction: sizes.friction } : {}),
  ...(choices.isWet ? { "water table": sizes.water * foot } : {}),
});

/** What all kinds share: concrete, bars and the ties round them. */
function concreteOf({ choices, sizes }: Drawn): Fields {
  const tie = readBar(choices.tie);
  const round: Fields =
    choices.ties === "ties" ? { ties: { bar: tie, spacing: sizes.pitch * inch, inner: true } } : choices.ties === "spiral" ? { spiral: { bar: tie, pitch: (sizes.pitch / 2) * inch } } : {};
  return { concrete: sizes.fc * psi, cover: sizes.cover * inch, "bar grade": "Gr 60", bars: choices.ties === "none" ? undefined : { count: choices.bars, bar: readBar(choices.bar) }, ...round };
}

function pierOf(drawn: Drawn): Fields {
  const { choices, sizes } = drawn;
  const width = sizes.size * foot;
  return {
    kind: "pier",
    ...(choices.isRound ? { diameter: width } : { width }),
    depth: sizes.depth * foot,
    "above grade": sizes.aboveGrade * inch,
    "ignored depth": sizes.ignored * foot,
    "taken as": choices.takenAs,
    "movement limit": 0.5 * inch,
    "rotation limit": 0.5 * degree,
    "held down by": choices.hasBell && choices.isRound ? choices.heldDownBy : choices.heldDownBy === "soil cone" ? "side friction" : choices.heldDownBy,
    "restrained at grade": choices.held !== "free",
    ...(choices.held === "free" ? {} : { "slab at grade": { kind: choices.held, capacity: 10 * kip, joint: 0, "frost protected": true } }),
    ...(choices.hasBell && choices.isRound ? { bell: { diameter: width * sizes.bellSize, height: width * 0.5 } } : {}),
    combined: new Map(),
    ...concreteOf(drawn),
  };
}

const matOf = ({ choices, sizes }: Drawn): Fields => {
  const one = { bar: readBar(choices.matBar), spacing: sizes.matSpacing * inch };
  return { "along x": one, "along y": one };
};

function padOf(drawn: Drawn): Fields {
  const { choices, sizes } = drawn;
  const pedestal = sizes.pedestal * inch;
  return {
    kind: "footing",
    width: sizes.size * foot,
    length: sizes.length * foot,
    thickness: sizes.thickness * foot,
    depth: sizes.depth * foot,
    "above grade": sizes.aboveGrade * inch,
    pedestal: choices.isRound ? { diameter: pedestal } : { width: pedestal, length: pedestal * 1.2 },
    "bottom bars": matOf(drawn),
    ...(choices.hasTopBars ? { "top bars": matOf(drawn) } : {}),
    "hooked bars": choices.hooked,
    backfill: choices.backfill,
    "held down by": choices.heldDownBy,
    "ignored depth": sizes.ignored * foot,
    ...(choices.isOff ? { "off middle": { x: sizes.off * inch, y: -0.6 * sizes.off * inch } } : {}),
    ...concreteOf(drawn),
  };
}

const dowelsOf = ({ choices, sizes }: Drawn): Fields => ({
  ...({ one: { count: 1 }, four: { count: 4 }, six: { count: 6, "along x": 3, "along y": 2 }, "two rows": { count: 4, rows: 2, "row spacing": 1.5 * foot } } as const)[choices.dowels],
  bar: readBar(choices.dowelBar),
  grade: "Gr 60",
  spacing: sizes.dowelSpacing * inch,
  "into rock": sizes.intoRock * inch,
  "in concrete": 14 * inch,
  "ends in concrete": choices.hooked ? "hooked" : "straight",
  hole: sizes.hole * inch,
  "set in": "cement grout",
  "hole condition": "dry",
  "rock temperature": "50 F or more",
});

function rockPadOf(drawn: Drawn): Fields {
  const { choices, sizes } = drawn;
  return {
    kind: "footing on rock",
    width: sizes.size * foot,
    length: sizes.length * foot,
    thickness: sizes.thickness * foot,
    depth: 0.5 * sizes.depth * foot,
    dowels: dowelsOf(drawn),
    ...(choices.hasKey ? { key: { width: 10 * inch, depth: 8 * inch } } : {}),
    ...concreteOf(drawn),
  };
}

function wallOf(drawn: Drawn): Fields {
  const { choices, sizes } = drawn;
  const bar = readBar(choices.matBar);
  const retains = choices.fill === "none" ? 0 : Math.min(sizes.retains, 0.8 * sizes.height) * foot;
  const fill = {
    side: choices.side,
    method: choices.fill,
    "unit weight": sizes.weight * pcf,
    "friction angle": sizes.phi * degree,
    "wall friction": 0.6 * sizes.phi * degree,
    ...(choices.fill === "equivalent fluid" ? { "equivalent fluid": 0.4 * sizes.weight * psfPerFoot } : {}),
    ...(choices.fill === "Rankine" && choices.hooked ? { slope: 0.2 } : {}),
    surcharge: sizes.surcharge * psf,
    ...(choices.isWet && choices.fill !== "equivalent fluid" ? { drained: false, water: sizes.water * foot } : { drained: true }),
  };
  const axis = choices.side === "north" || choices.side === "south" ? "east-west" : "north-south";
  return {
    kind: "wall on footing",
    "wall runs": axis,
    length: 3 * sizes.run * foot,
    "length per post": sizes.run * foot,
    thickness: sizes.thickness * foot,
    height: (sizes.height + 2.5) * foot,
    depth: sizes.depth * foot,
    footing: { width: (sizes.size + sizes.thickness) * foot, thickness: 0.8 * sizes.thickness * foot, "bottom bars": { bar, spacing: sizes.matSpacing * inch }, "long bars": { bar, count: 6 }, ...(choices.hasTopBars ? { "top bars": { bar, spacing: sizes.matSpacing * inch } } : {}) },
    backfill: choices.backfill,
    "ignored depth": 0.3 * sizes.ignored * foot,
    retains,
    ...(retains > 0 ? { fill } : {}),
    ...(choices.hasKey ? { key: { width: 10 * inch, depth: 8 * inch } } : {}),
    ...(drawn.choices.kind === "wall on rock" ? { dowels: dowelsOf(drawn) } : {}),
    ...concreteOf(drawn),
  };
}

/** The drawn values as a support. */
export function supportOf(drawn: Drawn): Support {
  const { choices, sizes } = drawn;
  const onRock = choices.kind === "rock pad" || choices.kind === "wall on rock";
  const made = standing({
    foundation: ({ pier: pierOf, pad: padOf, "rock pad": rockPadOf, wall: wallOf, "wall on rock": wallOf } as const)[choices.kind](drawn),
    ground: onRock ? rockOf(drawn) : soilOf(drawn),
    site: { "seismic design category": choices.category, "frost depth": sizes.frost * foot },
  });
  return { ...made, codes: { ...made.codes, overturning: sourced(choices.overturning), concrete: sourced(choices.concrete) } } as unknown as Support;
}

const terms: Readonly<Record<Exclude<Drawn["choices"]["load"], "combined">, Readonly<Record<"allowable" | "strength", readonly Term[]>>>> = {
  full: { allowable: [{ factor: 1, type: "D" }, { factor: 0.6, type: "W" }], strength: [{ factor: 1.2, type: "D" }, { factor: 1, type: "W" }] },
  light: { allowable: [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }], strength: [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }] },
  earthquake: { allowable: [{ factor: 1, type: "D" }, { factor: 0.7, type: "E" }], strength: [{ factor: 1.2, type: "D" }, { factor: 1, type: "E" }] },
};

/** The forces at its base at a load level. */
export function demandOf({ choices, sizes }: Drawn, level: Level): Demand {
  const by = level === "strength" ? "strength" : "allowable";
  const base = { P: sizes.P * kip, Vx: sizes.Vx * kip, Vy: sizes.Vy * kip, Mx: sizes.Mx * kipFoot, My: sizes.My * kipFoot };
  const given = choices.load === "combined" ? [] : terms[choices.load][by];
  const made = by === "strength" ? strengthOf(base, given) : allowable(base, given);
  return { ...made, level, ...(choices.load === "combined" ? {} : { dead: sizes.dead * (given[0]?.factor ?? 1) * kip }) } as Demand;
}
