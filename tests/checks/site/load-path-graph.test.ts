import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loadPathGraph, type LoadPathGraph } from "../../../server/src/checks/site/load-path-graph.js";
import { loadPath } from "../../../server/src/checks/site/load-path.js";
import { structuresOf } from "./structures.js";

interface Given {
  readonly roof: boolean;
  readonly top: boolean;
  readonly base: boolean;
  readonly plate: boolean;
  readonly anchors: boolean;
  readonly foundation: boolean;
  readonly ground: boolean;
  readonly kind: boolean;
}

const all: Given = { roof: true, top: true, base: true, plate: true, anchors: true, foundation: true, ground: true, kind: true };

const lines = (...texts: readonly (string | false)[]) => texts.filter((text) => text !== false).join("\n");

/** Two lines of columns; what is given of the second one varies. */
const notebook = (given: Given): string =>
  lines(
    "rootfast: 1",
    given.roof && "roof: { shape: monoslope, slope: 1 in 12, length: 20 ft, width: 20 ft, low edge: south, mean height: 10 ft }",
    "ground:",
    "  till: { kind: soil }",
    given.kind ? "  clay: { kind: soil }" : "  clay: { unit weight: 110 pcf }",
    "columns:",
    "  north: { line of: 2, from: \"0 ft, 20 ft\", to: \"20 ft, 20 ft\", base: A, stands on: pier, top connection: { detail: cap plate, uplift: 4 kip } }",
    `  south: { line of: 3, from: "0 ft, 0 ft", to: "20 ft, 0 ft"${given.top ? ", top connection: { uplift: 4 kip }" : ""}${given.base ? ", base: B" : ""}${given.foundation ? ", stands on: footing" : ""} }`,
    "bases:",
    "  A: { plate: 10 in x 10 in x 1 in, anchors: { count: 4 } }",
    `  B: { grout: 1 in${given.plate ? ", plate: 10 in x 10 in x 1 in" : ""}${given.anchors ? ", anchors: { count: 4 }" : ""} }`,
    "foundations:",
    "  pier: { kind: pier, ground: till }",
    `  footing: { kind: footing${given.ground ? ", ground: clay" : ""} }`,
    "",
  );

const structureOf = (given: Given) => structuresOf(notebook(given))[0];
const graphOf = (given: Given): LoadPathGraph => loadPathGraph(structureOf(given));

/** Whether a load that starts at a node arrives at a ground by links that are all named. */
function arrives({ nodes, links }: LoadPathGraph, start: string, by: string): boolean {
  const parts = new Map(nodes.map((node) => [node.id, node]));
  const seen = new Set<string>();
  const walk = (id: string): boolean => {
    const node = parts.get(id);
    if (!node || node.state !== "named" || seen.has(id)) return false;
    seen.add(id);
    if (node.part === "ground") return true;
    // From the roof only the way through this line of columns counts.
    return links.some(({ from, to, state }) => from === id && state === "named" && (to.startsWith(`${by}/`) || parts.get(to)?.part === "ground") && walk(to));
  };
  return walk(start);
}

describe("The load path as a graph", () => {
  it("goes from one roof through each line of columns down to its ground", () => {
    const graph = graphOf(all);
    expect(graph.nodes.filter(({ part }) => part === "roof")).toHaveLength(1);
    expect(graph.nodes.filter(({ support }) => support?.name === "south").map(({ part, name, count }) => [part, name, count])).toEqual([
      ["column top", "column top", 3], ["column", "south", 3], ["base plate", "B", 3], ["anchor rods", "anchor rods", 3], ["foundation", "footing", 3],
    ]);
    expect(graph.nodes.filter(({ part }) => part === "ground").map(({ name }) => name)).toEqual(["till", "clay"]);
    expect(graph.nodes.find(({ id }) => id === "columns.north/column top")?.name).toBe("cap plate");
    expect(graph.faults).toEqual([]);
    expect(graph.first).toBeUndefined();
    expect(arrives(graph, "roof", "columns.north") && arrives(graph, "roof", "columns.south")).toBe(true);
  });

  it.each([
    ["top", "column top", "not described"],
    ["base", "base plate", "missing"],
    ["plate", "base plate", "missing"],
    ["anchors", "anchor rods", "missing"],
    ["foundation", "foundation", "missing"],
    ["ground", "ground", "missing"],
    ["kind", "ground", "not described"],
  ] as const)("without its %s the %s is %s, and is the first missing link", (without, part, state) => {
    const graph = graphOf({ ...all, [without]: false });
    expect(graph.first).toMatchObject({ part, state, support: { name: "south" } });
    expect(graph.nodes.find(({ id }) => id === graph.first?.node)?.state).toBe(state);
    expect(graph.links.filter(({ to }) => to === graph.first?.node).map((link) => link.state)).toEqual([state]);
    expect(arrives(graph, "roof", "columns.south")).toBe(false);
    expect(arrives(graph, "roof", "columns.north")).toBe(true);
  });

  it("names a missing link before one that is not described", () => {
    expect(graphOf({ ...all, top: false, anchors: false }).first).toMatchObject({ part: "anchor rods", state: "missing" });
    expect(graphOf({ ...all, top: false, anchors: false }).faults.map(({ part }) => part)).toEqual(["column top", "anchor rods"]);
  });

  it("agrees with the rule, whatever is left out, and every node stands at the end of a link", () => {
    const some = fc.record({ roof: fc.boolean(), top: fc.boolean(), base: fc.boolean(), plate: fc.boolean(), anchors: fc.boolean(), foundation: fc.boolean(), ground: fc.boolean(), kind: fc.boolean() });
    fc.assert(
      fc.property(some, (given) => {
        const structure = structureOf(given);
        const graph = loadPathGraph(structure);
        const linked = new Set(graph.links.flatMap(({ from, to }) => [from, to]));
        expect(graph.nodes.filter(({ id }) => !linked.has(id))).toEqual([]);
        for (const finding of loadPath.judge(structure)) {
          const path = finding.support?.path ?? "";
          const start = given.roof ? "roof" : `${path}/reactions`;
          expect(arrives(graph, start, path), JSON.stringify(given)).toBe(finding.verdict === "holds");
        }
      }),
      { numRuns: 60 },
    );
  });

  it("begins at the reactions where they are given, and is empty without supports", () => {
    const graph = loadPathGraph(structuresOf("rootfast: 1\nground:\n  till: { kind: soil }\nfoundations:\n  pier: { kind: pier, ground: till, combined: { given: { level: allowable, down: 1 kip } } }\n")[0]);
    expect(graph.nodes.map(({ part }) => part)).toEqual(["reactions", "foundation", "ground"]);
    expect(loadPathGraph({ supports: [] })).toMatchObject({ nodes: [], links: [], faults: [] });
  });
});
