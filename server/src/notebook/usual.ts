/**
 * Ranges no value in use leaves: a number outside is a slip of the digits or the unit, and nothing may rest on it. Wide on
 * purpose, common practice without a source; a real job at the edge of one is a job for other methods.
 */
import type { KindName } from "../units/kinds.js";
import { readQuantity } from "../units/parse.js";

type Range = readonly [least: string, most: string];

const size: Range = ["3 in", "20 ft"];
const plan: Range = ["3 ft", "2000 ft"];

/** Reactions and added forces of an open-sided structure: a larger one is pounds written as kips. */
const force: Range = ["0 kip", "2000 kip"];
const sideways: Range = ["-2000 kip", "2000 kip"];
const turning: Range = ["-20000 kip-ft", "20000 kip-ft"];
const reactions = ["columns", "foundations"].flatMap((section) =>
  ["reactions", "combined"].flatMap((kind) => {
    const path = `${section}.*.${kind}.*`;
    return [[`${path}.down`, force], [`${path}.up`, force], [`${path}.shear x`, sideways], [`${path}.shear y`, sideways], [`${path}.moment x`, turning], [`${path}.moment y`, turning]] as const;
  }),
);

const ranges: Readonly<Record<string, Range>> = {
  ...Object.fromEntries(reactions),
  "loads.*.down": force,
  "loads.*.up": force,
  "loads.*.push x": sideways,
  "loads.*.push y": sideways,
  "loads.*.pressure": ["-500 psf", "500 psf"],
  "site.wind speed": ["60 mph", "300 mph"],
  "site.supplied design.wind speed": ["60 mph", "300 mph"],
  "site.supplied design.ground snow": ["0 psf", "500 psf"],
  "site.supplied design.frost depth": ["0 ft", "15 ft"],
  "site.ground elevation": ["-1500 ft", "15000 ft"],
  "site.ground snow": ["0 psf", "500 psf"],
  "site.frost depth": ["0 ft", "15 ft"],
  "ground.*.bearing": ["100 psf", "200 ksf"],
  "ground.*.lateral bearing": ["10 psf/ft", "5000 psf/ft"],
  "ground.*.side resistance": ["1 psf", "20 ksf"],
  "ground.*.adfreeze stress": ["0.5 psi", "150 psi"],
  "ground.*.unit weight": ["50 pcf", "250 pcf"],
  "ground.*.elastic modulus": ["10 ksf", "1000000 ksf"],
  "ground.*.friction angle": ["0 deg", "50 deg"],
  "ground.*.cohesion": ["0 psf", "20 ksf"],
  "ground.*.subgrade modulus": ["5 pci", "20000 pci"],
  "ground.*.modulus growth": ["1 pci", "1000 pci"],
  "ground.*.rock strength": ["10 psi", "40000 psi"],
  "ground.*.dowel bond": ["10 psi", "1000 psi"],
  "roof.slope": ["0 in 12", "24 in 12"],
  "roof.length": plan,
  "roof.width": plan,
  "roof.mean height": ["4 ft", "200 ft"],
  "roof.dead": ["0 psf", "300 psf"],
  "columns.*.height": ["2 ft", "100 ft"],
  "columns.*.base weld.fillet": ["1/16 in", "1-1/2 in"],
  "columns.*.top connection.weld.fillet": ["1/16 in", "1-1/2 in"],
  "columns.*.top connection.bolts.diameter": ["1/4 in", "2 in"],
  "columns.*.top connection.cap plate.thickness": ["0.1 in", "4 in"],
  "columns.*.top connection.beam flange.thickness": ["0.1 in", "4 in"],
  "columns.*.base rotation stiffness": ["1 kip-ft/rad", "10000000 kip-ft/rad"],
  "columns.*.knee brace.below top": ["3 in", "30 ft"],
  "columns.*.knee brace.run": ["3 in", "30 ft"],
  "columns.*.knee brace.area": ["0.05 in²", "200 in²"],
  "columns.*.weep hole": ["0 in", "3 in"],
  "columns.*.vent hole": ["0 in", "6 in"],
  "bases.*.plate.width": ["3 in", "6 ft"],
  "bases.*.plate.length": ["3 in", "6 ft"],
  "bases.*.plate.thickness": ["0.1 in", "8 in"],
  "bases.*.grout": ["0 in", "12 in"],
  "bases.*.gap below nuts": ["0 in", "12 in"],
  "bases.*.hole": ["0.3 in", "6 in"],
  "bases.*.washer.width": ["0.5 in", "8 in"],
  "bases.*.washer.thickness": ["0.05 in", "2 in"],
  "bases.*.projection": ["0.5 in", "3 ft"],
  "bases.*.thread": ["0.5 in", "5 ft"],
  "bases.*.shear lug.width": ["1 in", "4 ft"],
  "bases.*.shear lug.depth": ["1 in", "2 ft"],
  "bases.*.shear lug.thickness": ["0.2 in", "4 in"],
  "bases.*.finish above plate": ["0 in", "6 ft"],
  "bases.*.anchors.diameter": ["0.2 in", "4 in"],
  "bases.*.anchors.embedment": ["1 in", "10 ft"],
  "bases.*.anchors.spacing x": ["1 in", "6 ft"],
  "bases.*.anchors.spacing y": ["1 in", "6 ft"],
  "bases.*.anchors.adhesive.cracked bond": ["50 psi", "4000 psi"],
  "bases.*.anchors.adhesive.uncracked bond": ["50 psi", "4000 psi"],
  "bases.*.anchors.stretch length": ["1 in", "10 ft"],
  "bases.*.anchors.bolt circle": ["2 in", "6 ft"],
  "bases.*.as built.anchors.lean": ["0 in 12", "12 in 12"],
  "bases.*.as built.anchors.bent": ["0 deg", "120 deg"],
  "foundations.*.concrete": ["1500 psi", "20000 psi"],
  "foundations.*.strength at erection": ["100 psi", "20000 psi"],
  "foundations.*.air content": ["0 %", "15 %"],
  "foundations.*.aggregate size": ["0.2 in", "6 in"],
  "foundations.*.slab at grade.joint": ["0 in", "4 in"],
  "foundations.*.as built.rock met at": ["0 ft", "100 ft"],
  "ground.*.cushion": ["0 in", "20 ft"],
  "foundations.*.diameter": size,
  "foundations.*.width": ["3 in", "60 ft"],
  "foundations.*.bell.diameter": ["6 in", "30 ft"],
  "foundations.*.bell.height": ["3 in", "20 ft"],
  "foundations.*.length": ["3 in", "2000 ft"],
  "foundations.*.thickness": ["3 in", "20 ft"],
  "foundations.*.depth": ["1 in", "100 ft"],
  "foundations.*.pedestal.width": size,
  "foundations.*.pedestal.length": size,
  "foundations.*.pedestal.diameter": size,
  "foundations.*.bottom bars.along x.spacing": ["2 in", "36 in"],
  "foundations.*.bottom bars.along y.spacing": ["2 in", "36 in"],
  "foundations.*.top bars.along x.spacing": ["2 in", "36 in"],
  "foundations.*.top bars.along y.spacing": ["2 in", "36 in"],
  "foundations.*.cover": ["0.5 in", "12 in"],
  "foundations.*.hairpins.from rods": ["0.2 in", "3 ft"],
  "foundations.*.hairpins.leg": ["2 in", "20 ft"],
  "foundations.*.hairpins.below top": ["0.5 in", "2 ft"],
  "foundations.*.joint distance": ["1 in", "30 ft"],
  "foundations.*.post width": ["0.5 ft", "100 ft"],
  "foundations.*.stem cover": ["0.5 in", "6 in"],
  "foundations.*.stem bars.fill face.vertical.spacing": ["2 in", "36 in"],
  "foundations.*.stem bars.fill face.lower vertical.spacing": ["2 in", "36 in"],
  "foundations.*.stem bars.fill face.horizontal.spacing": ["2 in", "36 in"],
  "foundations.*.joint dowels.fill face.spacing": ["2 in", "48 in"],
  "foundations.*.stem bars.free face.vertical.spacing": ["2 in", "36 in"],
  "foundations.*.stem bars.free face.lower vertical.spacing": ["2 in", "36 in"],
  "foundations.*.stem bars.free face.horizontal.spacing": ["2 in", "36 in"],
  "foundations.*.joint dowels.free face.spacing": ["2 in", "48 in"],
  "foundations.*.stem bars.middle.vertical.spacing": ["2 in", "36 in"],
  "foundations.*.stem bars.middle.lower vertical.spacing": ["2 in", "36 in"],
  "foundations.*.stem bars.middle.horizontal.spacing": ["2 in", "36 in"],
  "foundations.*.joint dowels.middle.spacing": ["2 in", "48 in"],
  "foundations.*.joint dowels.into wall": ["3 in", "20 ft"],
  "foundations.*.joint dowels.into footing": ["3 in", "10 ft"],
  "foundations.*.spiral.pitch": ["0.5 in", "24 in"],
  "foundations.*.ties.spacing": ["1 in", "48 in"],
  "foundations.*.grade beam.width": ["4 in", "10 ft"],
  "foundations.*.grade beam.depth": ["4 in", "10 ft"],
  "foundations.*.grade beam.clear span": ["1 ft", "100 ft"],
  "foundations.*.grade beam.ties.spacing": ["1 in", "48 in"],
  "foundations.*.grade beam.into foundation": ["1 in", "20 ft"],
  "foundations.*.backfill weight": ["50 pcf", "250 pcf"],
  "foundations.*.fill.unit weight": ["50 pcf", "250 pcf"],
  "foundations.*.fill.saturated weight": ["65 pcf", "250 pcf"],
  "foundations.*.fill.friction angle": ["0 deg", "50 deg"],
  "foundations.*.fill.equivalent fluid": ["15 psf/ft", "130 psf/ft"],
  "foundations.*.fill.surcharge": ["0 psf", "5 ksf"],
  "foundations.*.retains": ["0 ft", "40 ft"],
  "foundations.*.height": ["0.2 ft", "40 ft"],
  "foundations.*.above grade": ["0 in", "40 ft"],
  "foundations.*.movement limit": ["0.05 in", "6 in"],
  "foundations.*.bar lap": ["3 in", "20 ft"],
  "foundations.*.settlement limit": ["0.05 in", "12 in"],
  "foundations.*.rotation limit": ["0.02 deg", "5 deg"],
  "foundations.*.dowels.into rock": ["1 in", "60 ft"],
  "foundations.*.dowels.hole": ["0.3 in", "12 in"],
  "foundations.*.dowels.spacing": ["2 in", "12 ft"],
  "foundations.*.dowels.row spacing": ["2 in", "12 ft"],
  "foundations.*.dowels.in concrete": ["1 in", "20 ft"],
  "foundations.*.dowels.lap": ["1 in", "12 ft"],
  "foundations.*.dowels.bar bond": ["10 psi", "4000 psi"],
  "foundations.*.dowels.rock face": ["0.1 ft", "500 ft"],
  "ground.*.weathered depth": ["0 ft", "60 ft"],
  "ground.*.rock slope": ["0 in 12", "24 in 12"],
};

const named = new Set(["ground", "columns", "bases", "foundations", "loads"]);
/** Fields of an entry that hold entries of their own. */
const nested = new Set(["reactions", "combined"]);

/** A little more room than written, so that the same bound in another unit is not refused by rounding. */
const room = 1e-9;

/** The range a value leaves, as it is written; undefined where it stays inside or none is known. */
export function leftRange(keys: readonly string[], value: number, kind: KindName): Range | undefined {
  const range = ranges[keys.map((key, i) => ((i === 1 && named.has(keys[0])) || (i === 3 && nested.has(keys[2])) ? "*" : key)).join(".")];
  if (!range) return undefined;
  const [least, most] = range.map((text) => readQuantity(text, kind));
  if (!least.ok || !most.ok) return undefined;
  const slack = room * Math.abs(most.value);
  return value < least.value - slack || value > most.value + slack ? range : undefined;
}

/** Every range, for the test that each is readable and belongs to a field. */
export const usualRanges: readonly (readonly [path: string, range: Range])[] = Object.entries(ranges);
