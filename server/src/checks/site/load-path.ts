/**
 * A link of the chain from roof to ground is missing: roof, column top, column, base plate, anchor rods, foundation, ground. In the field a roof
 * that only rests on its columns is found beside them after the storm.
 *
 * IBC 2021 1604.4: a complete load path from the point of origin to the resisting elements.
 */
import type { RuleDecl, RuleFinding } from "../contract.js";
import { firstFault, loadPathGraph, type LoadPathGraph } from "./load-path-graph.js";

const shown = { roof: "roof", reactions: "the reactions given", "column top": "column top", column: "column", "base plate": "base plate", "anchor rods": "anchor rods" } as const;

/** The parts a load passes on its way from a support's beginning to the ground, in words. */
function wayDown({ nodes, links }: LoadPathGraph, start: string): string {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const below = new Map(links.map(({ from, to }) => [from, to]));
  const words: string[] = [];
  for (let node = byId.get(start); node !== undefined; node = byId.get(below.get(node.id) ?? "")) words.push(node.part === "foundation" || node.part === "ground" ? `${node.part} ${node.name}` : shown[node.part]);
  return words.join(", ");
}

export const loadPath: RuleDecl = {
  id: "site.load-path",
  title: "Load path from roof to ground",
  link: "site",
  clause: "IBC 2021 1604.4",
  fails: "A link between roof and ground is missing, and the load has nowhere to go.",
  seen: "A roof that only rested on its columns, found beside them after the storm.",
  range: "Whether each link is named; its strength is for the checks. Where reactions are given by hand, the path begins at the column base. The strength of the connection at the column top is for its own check.",
  alone: true,
  judge: ({ roof, supports }) =>
    supports.map((support): RuleFinding => {
      const graph = loadPathGraph({ roof, supports: [support] });
      const fault = firstFault(graph.faults);
      if (fault) return { support, verdict: fault.state === "missing" ? "over" : "unchecked", message: fault.message, at: fault.at };
      return { support, verdict: "holds", message: `${support.name}: ${wayDown(graph, graph.nodes[0].id)}: every link is named.`, at: support };
    }),
};
