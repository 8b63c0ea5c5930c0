/** Reads what the roof's loads need out of the structure, as plain numbers; or names everything that is missing. */
import type { Column, Roof, Structure, Support } from "../project/model.js";
import { isByHand } from "./by-hand.js";
import type { RoofDead } from "./dead.js";
import { deadConflict, readDead } from "./dead-inputs.js";
import type { NoActions } from "./demand.js";
import type { RoofPlane, RoofShape } from "./roof-plane.js";
import { listed, Wanted } from "./wanted.js";
import { readWindSite, windConflict } from "./wind-inputs.js";
import type { RoofPost } from "./way-down.js";
import type { FlowBelow } from "./wind/free-roof.js";
import type { WindSite } from "./wind/velocity-pressure.js";

/** The parts of a structure that loads depend on. Bases and ground are not among them. */
export interface LoadedStructure extends Pick<Structure, "codes" | "site" | "roof"> {
  readonly supports: readonly Pick<Support, "name" | "path" | "places" | "column" | "foundation">[];
}

/** A column under the roof, with where it belongs. */
export interface PlacedPost extends RoofPost {
  /** Path of its support. */
  readonly support: string;
}

/** Plain data: equal data give equal loads. SI. */
export interface RoofInputs {
  readonly plane: RoofPlane;
  readonly flow: FlowBelow;
  readonly edgeDepth: number;
  readonly dead: RoofDead;
  readonly site: WindSite;
  readonly posts: readonly PlacedPost[];
}

const hasPlace = (column: Column): boolean => Boolean(column.at ?? (column["line of"] && column.from && column.to));

/** Columns that carry the roof: those without reactions of their own. */
export const roofSupports = (structure: LoadedStructure) => structure.supports.filter(({ column }) => column !== undefined && !isByHand(column.fields));

function readPosts(structure: LoadedStructure, wanted: Wanted): readonly PlacedPost[] {
  return roofSupports(structure).flatMap(({ name, path, places, column }) => {
    const fields = column?.fields as Column;
    if (!hasPlace(fields)) wanted.missing.push(`the place of column ${name} (at, or line of with from and to)`);
    const section = wanted.need(fields.section, `the section of column ${name}`);
    const height = wanted.need(fields.height, `the height of column ${name}`);
    const top = wanted.need(fields["top of column"], `how column ${name} meets the roof (top of column)`);
    return places.map(({ x, y }) => ({ support: path, x, y, section, height, top }));
  });
}

function readPlane(roof: Roof, wanted: Wanted): RoofPlane {
  const shape: RoofShape = wanted.need(roof.shape, "the shape of the roof");
  const size = {
    slope: wanted.need(roof.slope, "the slope of the roof"),
    length: wanted.need(roof.length, "the length of the roof"),
    width: wanted.need(roof.width, "the width of the roof"),
  };
  if (shape === "pitched" || shape === "troughed") {
    const line = shape === "pitched" ? "ridge" : "valley";
    const runs = wanted.need(roof[line], `the way the ${line} of the roof runs (${line}: along x or along y)`);
    return { shape, ...size, ridge: runs === "along x" ? "x" : "y", meanHeight: wanted.need(roof["mean height"], "the mean height of the roof") };
  }
  // Which edge is wanted is known only with the shape.
  const lowEdge = shape === undefined ? "south" : wanted.need(roof["low edge"], "the low edge of the roof");
  return { shape, ...size, lowEdge, meanHeight: wanted.need(roof["mean height"], "the mean height of the roof") };
}

/** The fields of a roof that do not belong to its shape: they would be passed over in silence. */
function strangerOf(roof: Roof): string | undefined {
  const shape = roof.shape?.value;
  if (!shape) return undefined;
  const own = { monoslope: "low edge", pitched: "ridge", troughed: "valley" } as const;
  const stranger = (["low edge", "ridge", "valley"] as const).find((field) => field !== own[shape] && roof[field] !== undefined);
  return stranger && `the roof is ${shape} and states a ${stranger}, which it has not: take out \`${stranger}\` and state \`${own[shape]}\`, or change the shape`;
}

/** The inputs of the roof's loads, or what stands in the way. Only called where a roof is described. */
export function roofInputs(structure: LoadedStructure, roof: Roof): RoofInputs | NoActions {
  const stranger = strangerOf(roof);
  if (stranger) return { unknown: stranger };
  const conflict = deadConflict(roof) ?? windConflict(structure.site);
  if (conflict) return { unknown: conflict };
  const wanted = new Wanted();
  const { site, codes } = structure;
  const wind = readWindSite(codes, site, wanted);
  const plane = readPlane(roof, wanted);
  const inputs: RoofInputs = {
    plane,
    flow: wanted.need(roof["flow below"], "the flow below the roof (clear, obstructed or either)"),
    edgeDepth: wanted.need(roof["edge depth"], "the edge depth of the roof"),
    dead: readDead(roof, wanted),
    site: wind,
    posts: readPosts(structure, wanted),
  };
  if (wanted.missing.length > 0) return { unknown: `the loads need ${listed(wanted.missing)}` };
  if (roof["rigid in plane"]?.value === false) {
    return {
      unknown:
        "the roof is stated as not rigid in its plane, and sharing by tributary width is not done yet. State each column's reactions, or rigid in plane: yes where a fastened deck or bracing makes it so",
    };
  }
  return inputs;
}
