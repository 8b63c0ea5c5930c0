/** Reads what the roof's loads need out of the structure, as plain numbers; or names everything that is missing. */
import { isAlike } from "../catalog/sections.js";
import { plainCalc } from "../formula/calc.js";
import type { RoofBrace } from "../mechanics/roof-frame.js";
import type { Column, Roof, Structure, Support } from "../project/model.js";
import type { AddedLoad } from "./added.js";
import { addedConflict, readAdded } from "./added-inputs.js";
import { isByHand } from "./by-hand.js";
import type { RoofDead } from "./dead.js";
import { deadConflict, readDead } from "./dead-inputs.js";
import type { NoActions } from "./demand.js";
import { closedEdges, fastenedToBuilding, readBlocked, troughWithWalls } from "./blocked-inputs.js";
import { middleOfSide, type RoofPlane, type RoofShape } from "./roof-plane.js";
import { readWater, type HeldWater } from "./gravity/rain.js";
import type { SeismicInputs } from "./seismic/cases.js";
import { readSeismic, seismicConflict, takesLeastSideways } from "./seismic/inputs.js";
import type { SnowInputs } from "./snow/cases.js";
import { readSnow } from "./snow/inputs.js";
import type { ServiceWind } from "./service.js";
import type { RigidInPlane } from "./sharing.js";
import { methodOf, type SteelMethod } from "./steel-method.js";
import { bracesOf, endsFrom, swayConflict } from "./sway-inputs.js";
import { listed, Wanted } from "./wanted.js";
import { readFascia, readMembers, readPanels, readWindSite, windConflict } from "./wind-inputs.js";
import type { RoofPost } from "./way-down.js";
import type { EdgeShares } from "./wind/blocked.js";
import type { WindMember } from "./wind/drag.js";
import type { Fascia } from "./wind/fascia.js";
import type { PostPanel } from "./wind/panels.js";
import type { FlowBelow } from "./wind/free-roof.js";
import type { WindSite } from "./wind/velocity-pressure.js";
import type { Wall } from "./wind/walls.js";

/** The parts of a structure that loads depend on. Bases and ground are not among them. */
export interface LoadedStructure extends Pick<Structure, "codes" | "site" | "roof"> {
  readonly loads?: Structure["loads"];
  readonly supports: readonly Pick<Support, "name" | "path" | "places" | "column" | "foundation">[];
}

/** A column under the roof, with where it belongs. */
export interface PlacedPost extends RoofPost {
  /** Path of its support. */
  readonly support: string;
  /** Width the wind sees, m; left out: that of the section. */
  readonly windWidth?: number;
  readonly panel?: PostPanel;
}

/** Plain data: equal data give equal loads. SI. */
export interface RoofInputs {
  readonly plane: RoofPlane;
  readonly flow: FlowBelow;
  readonly edgeDepth: number;
  /** Blocked share of the opening below each edge. */
  readonly blocked: EdgeShares;
  /** Edges with a wall less than 80 percent open, in words; left out where the building is open. */
  readonly closed?: string;
  readonly walls: readonly Wall[];
  readonly fascia: Fascia;
  readonly members: readonly WindMember[];
  readonly dead: RoofDead;
  /** Roof live load before reduction, Pa. */
  readonly live: number;
  readonly snow?: SnowInputs;
  readonly water?: HeldWater;
  readonly seismic?: SeismicInputs;
  /** The least sideways force, where no earthquake is asked for. */
  readonly leastSideways: boolean;
  readonly added: readonly AddedLoad[];
  /** The alternative basic combinations at allowable-stress level. */
  readonly alternative: boolean;
  /** The method steel is designed by. */
  readonly steel: SteelMethod;
  /** Strengths of a connection at a column top are stated at allowable-stress level. */
  readonly topsAtAllowable: boolean;
  readonly site: WindSite;
  readonly posts: readonly PlacedPost[];
  /** Braced bays, between posts by their places in the list. */
  readonly braces: readonly RoofBrace[];
  readonly rigid: RigidInPlane;
  readonly service: ServiceWind;
}

const hasPlace = (column: Column): boolean => Boolean(column.at ?? (column["line of"] && column.from && column.to));

/** Columns that carry the roof: those without reactions of their own. */
export const roofSupports = (structure: LoadedStructure) => structure.supports.filter(({ column }) => column !== undefined && !isByHand(column.fields));

function readPosts(structure: LoadedStructure, { length, width }: RoofPlane, wanted: Wanted): readonly PlacedPost[] {
  const middle = { x: plainCalc(middleOfSide, { b: length }), y: plainCalc(middleOfSide, { b: width }) };
  return roofSupports(structure).flatMap(({ name, path, places, column }) => {
    const fields = column?.fields as Column;
    if (!hasPlace(fields)) wanted.missing.push(`the place of column ${name} (at, or line of with from and to)`);
    const section = wanted.need(fields.section, `the section of column ${name}`);
    const deep = section && !isAlike(section) ? wanted.need(fields["deep side"], `which way the ${section.name} of column ${name} stands (deep side: along x or along y)`) : undefined;
    const height = wanted.need(fields.height, `the height of column ${name}`);
    const top = wanted.need(fields["top of column"], `how column ${name} meets the roof (top of column)`);
    const panels = readPanels(name, fields, places, wanted);
    return places.map(({ x, y }, i) => ({ support: path, x, y, section, deep, height, top, ends: endsFrom(fields, { x, y, middle }), windWidth: fields["width in the wind"]?.value, panel: panels[i] }));
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
  const supports = roofSupports(structure);
  const crossed = supports.map(swayConflict).find((one) => one !== undefined);
  if (crossed) return { unknown: crossed };
  const braces = bracesOf(supports);
  if ("unknown" in braces) return braces;
  const wanted = new Wanted();
  const { site, codes } = structure;
  const wind = readWindSite(codes, site, wanted);
  const plane = readPlane(roof, wanted);
  const posts = readPosts(structure, plane, wanted);
  const misplaced = addedConflict(structure.loads, posts);
  if (misplaced) return { unknown: misplaced };
  const blocked = readBlocked(roof, plane, posts, wanted);
  const inputs: RoofInputs = {
    plane,
    flow: wanted.need(roof["flow below"], "the flow below the roof (clear, obstructed or either)"),
    edgeDepth: wanted.need(roof["edge depth"], "the edge depth of the roof"),
    blocked: blocked.shares,
    closed: closedEdges(blocked.closed),
    walls: blocked.walls,
    fascia: readFascia(roof),
    members: readMembers(roof, wanted),
    dead: readDead(roof, wanted),
    live: wanted.need(roof.live, "the roof live load"),
    water: readWater(roof, wind.standard, wanted),
    seismic: readSeismic(site, roof, wind.standard, wanted),
    leastSideways: takesLeastSideways(site),
    snow: readSnow(site, roof, plane, wind.standard, wanted),
    site: wind,
    posts,
    added: readAdded(structure.loads, posts, wanted),
    alternative: codes["alternative combinations"]?.value ?? false,
    steel: methodOf(codes),
    topsAtAllowable: roofSupports(structure).some(({ column }) => column?.fields["top connection"]?.value.level?.value === "allowable"),
    braces,
    rigid: wanted.need(roof["rigid in plane"], "whether the roof is rigid in its plane (yes, no or envelope)"),
    service: { speed: site["service wind speed"]?.value, period: site["service wind"]?.value, category: site["risk category"]?.value },
  };
  if (wanted.missing.length > 0) return { unknown: `the loads need ${listed(wanted.missing)}` };
  const beyond = troughWithWalls(plane, inputs.closed) ?? fastenedToBuilding(roof);
  if (beyond) return { unknown: beyond };
  const unfit = inputs.seismic && seismicConflict(inputs.seismic, inputs.posts);
  if (unfit) return { unknown: unfit };
  return inputs;
}
