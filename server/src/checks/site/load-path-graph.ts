/**
 * The load path as a graph: what carries the load from the roof, or from the reactions given, down to the ground, and what hands it on to what. A
 * link that nobody named or described is part of it, with its state, so that the first one missing can be named and drawn.
 *
 * IBC 2021 1604.4: a complete load path from the point of origin to the resisting elements.
 */
import type { Column, Named, Structure, Support } from "../../project/model.js";
import type { RuleFinding } from "../contract.js";

/** Whether something is named, only not described so far that it can be counted on, or missing. */
export type PathState = "named" | "not described" | "missing";

export type PathPart = "roof" | "reactions" | "column top" | "column" | "base plate" | "anchor rods" | "foundation" | "ground";

/** Something that carries load. */
export interface PathNode {
  /** Unique in the graph. */
  readonly id: string;
  readonly part: PathPart;
  /** As the notebook calls it; the part's own word where it has no name. */
  readonly name: string;
  readonly state: PathState;
  /** The support it belongs to; the roof and the kinds of ground belong to all. */
  readonly support?: Support;
  /** How many of them stand in the line. */
  readonly count: number;
}

/** Hands the load on, from above to below. */
export interface PathLink {
  readonly from: string;
  readonly to: string;
  readonly state: PathState;
}

/** Something that breaks a path, in words. */
export interface PathFault {
  readonly support: Support;
  readonly state: Exclude<PathState, "named">;
  readonly part: PathPart;
  /** Id of the node. */
  readonly node: string;
  readonly message: string;
  readonly at: RuleFinding["at"];
}

export interface LoadPathGraph {
  readonly nodes: readonly PathNode[];
  readonly links: readonly PathLink[];
  /** Every fault, support by support, from the roof down. */
  readonly faults: readonly PathFault[];
  /** The first missing link: of the faults a missing one before one that is not described. */
  readonly first?: PathFault;
}

type Loaded = Pick<Structure, "roof" | "supports">;

interface Step {
  readonly part: PathPart;
  readonly name: string;
  readonly state: PathState;
  readonly message?: string;
  readonly at?: RuleFinding["at"];
}

const hasReactions = (fields: { readonly reactions?: unknown; readonly combined?: unknown } | undefined): boolean => fields?.reactions !== undefined || fields?.combined !== undefined;

const named = (part: PathPart, name: string = part): Step => ({ part, name, state: "named" });
const missing = (part: PathPart, message: string, at: RuleFinding["at"]): Step => ({ part, name: part, state: "missing", message, at });
const unsaid = (part: PathPart, message: string, at: RuleFinding["at"], name: string = part): Step => ({ part, name, state: "not described", message, at });

function topStep(name: string, column: Named<Column>): Step {
  const top = column.fields["top connection"];
  if (!top) return unsaid("column top", `${name}: what ties the roof to the column top is not described. State the connection under \`top connection\`, with its design uplift strength.`, column);
  if (!top.value.uplift && !top.value.bolts && !top.value.weld)
    return unsaid("column top", `${name}: the connection at the column top has no stated uplift strength. Give the strength its maker or designer states, or describe its bolts or its weld.`, top);
  return named("column top", top.value.detail?.value);
}

/** From where the load comes down to the column. */
function aboveBase({ roof }: Loaded, support: Support): readonly Step[] {
  const { name, column, foundation } = support;
  if (!column) return [hasReactions(foundation?.fields) ? named("reactions", "reactions given") : unsaid("reactions", `${name}: no column stands on it and no reactions are given, so that no load path begins here.`, support)];
  const own = named("column", name);
  if (hasReactions(column.fields)) return [named("reactions", "reactions given"), own];
  if (!roof) return [unsaid("reactions", `${name}: nothing loads it. Describe the roof, or give the column's reactions.`, column), own];
  return [named("roof"), topStep(name, column), own];
}

function baseSteps({ name, column, base }: Support): readonly Step[] {
  if (!base) {
    if (!column) return [];
    const said = column.fields.base;
    return [missing("base plate", said ? `${name}: the load path ends at the column: there is no base named ${said.value}.` : `${name}: the load path ends at the column: it names no base. Say which base plate it stands on under \`base\`.`, said ?? column)];
  }
  return [
    base.fields.plate ? named("base plate", base.name) : missing("base plate", `${name}: the load path ends above base ${base.name}: it has no plate.`, base),
    base.fields.anchors ? named("anchor rods") : missing("anchor rods", `${name}: the load path ends at base plate ${base.name}: no anchor rods tie it to the concrete.`, base),
  ];
}

function groundSteps(support: Support): readonly Step[] {
  const { name, column, base, foundation, ground } = support;
  if (!foundation) {
    const said = column?.fields["stands on"];
    const message = said ? `${name}: the load path ends at the base: there is no foundation named ${said.value}.` : `${name}: the load path ends at the base: no foundation below it is named. Say what the column stands on under \`stands on\`.`;
    return [missing("foundation", message, said ?? column ?? base ?? support), missingGround(support)];
  }
  const own = named("foundation", foundation.name);
  if (!ground) {
    const said = foundation.fields.ground;
    const message = said ? `${name}: the load path ends at foundation ${foundation.name}: there is no ground named ${said.value}.` : `${name}: the load path ends at foundation ${foundation.name}: it names no ground. Say what it stands in under \`ground\`.`;
    return [own, missing("ground", message, said ?? foundation)];
  }
  return [own, ground.fields.kind ? named("ground", ground.name) : unsaid("ground", `${name}: whether ground ${ground.name} is soil or rock is not said.`, ground, ground.name)];
}

/** Ground below a foundation that is missing itself: one fault is said once. */
const missingGround = (support: Support): Step => ({ part: "ground", name: "ground", state: "missing", at: support });

/** The chain of one support, roof to ground. */
const stepsOf = (structure: Loaded, support: Support): readonly Step[] => [...aboveBase(structure, support), ...baseSteps(support), ...groundSteps(support)];

/** The roof is one for all; so is a ground that is known by its name. */
function idOf({ part, state }: Step, { path, ground }: Support): string {
  if (part === "roof") return "roof";
  if (part === "ground" && ground && state !== "missing") return ground.path;
  return `${path}/${part}`;
}

const worst = (a: PathState, b: PathState): PathState => (a === "missing" || b === "missing" ? "missing" : a === "not described" || b === "not described" ? "not described" : "named");

/** The first fault of a chain: a missing link is worse news than one not described, wherever it is. */
export const firstFault = (faults: readonly PathFault[]): PathFault | undefined => faults.find(({ state }) => state === "missing") ?? faults[0];

/** The load path of a structure. Pure; a structure without supports gives an empty graph. */
export function loadPathGraph(structure: Loaded): LoadPathGraph {
  const nodes = new Map<string, PathNode>();
  const links: PathLink[] = [];
  const faults: PathFault[] = [];
  for (const support of structure.supports) {
    let above: PathNode | undefined;
    for (const step of stepsOf(structure, support)) {
      const id = idOf(step, support);
      const isShared = id === "roof" || id === support.ground?.path;
      const node = nodes.get(id) ?? { id, part: step.part, name: step.name, state: step.state, support: isShared ? undefined : support, count: isShared ? 1 : support.places.length };
      nodes.set(id, node);
      if (above) links.push({ from: above.id, to: id, state: worst(above.state, step.state) });
      if (step.state !== "named" && step.message !== undefined) faults.push({ support, state: step.state, part: step.part, node: id, message: step.message, at: step.at ?? support });
      above = node;
    }
  }
  return { nodes: [...nodes.values()], links, faults, first: firstFault(faults) };
}
