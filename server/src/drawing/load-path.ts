/** The load path drawn as a graph, roof at the top and ground at the bottom, a column of boxes to each support. */
import type { LoadPathGraph, PathNode, PathPart } from "../checks/site/load-path-graph.js";
import type { Support } from "../project/model.js";
import type { Picture } from "./picture.js";
import { arrow, drawing, line, rectangle, words } from "./svg.js";

const rows: readonly (readonly PathPart[])[] = [["roof", "reactions"], ["column top"], ["column"], ["base plate"], ["anchor rods"], ["foundation"], ["ground"]];
const [boxWidth, boxHeight, columnWidth, rowHeight, left, top] = [118, 30, 130, 56, 84, 40] as const;
/** Supports in one drawing; more go into a further one. */
const mostAbreast = 5;

const dashOf = { named: undefined, "not described": "5 3", missing: "2 3" } as const;

const cut = (text: string, most = 21): string => (text.length > most ? `${text.slice(0, most - 1)}…` : text);

interface Box {
  readonly node: PathNode;
  readonly from: number;
  readonly to: number;
  readonly row: number;
}

const rowOf = (part: PathPart): number => rows.findIndex((parts) => parts.includes(part));

/** A node stands over the supports whose chain goes through it. */
function boxesOf(graph: LoadPathGraph, supports: readonly Support[]): readonly Box[] {
  const below = new Map<string, string[]>();
  for (const { from, to } of graph.links) below.set(from, [...(below.get(from) ?? []), to]);
  const above = new Map<string, string[]>();
  for (const { from, to } of graph.links) above.set(to, [...(above.get(to) ?? []), from]);
  const touches = (id: string, next: ReadonlyMap<string, readonly string[]>, at: Support): boolean => {
    const seen = new Set<string>();
    const waiting = [id];
    for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
      if (seen.has(one)) continue;
      seen.add(one);
      const node = graph.nodes.find((each) => each.id === one);
      if (node?.support === at) return true;
      waiting.push(...(next.get(one) ?? []));
    }
    return false;
  };
  return graph.nodes.flatMap((node) => {
    const places = supports.flatMap((support, i) => (node.support ? (node.support === support ? [i] : []) : touches(node.id, below, support) || touches(node.id, above, support) ? [i] : []));
    return places.length === 0 ? [] : [{ node, from: Math.min(...places), to: Math.max(...places), row: rowOf(node.part) }];
  });
}

function drawn(graph: LoadPathGraph, supports: readonly Support[]): Picture {
  const boxes = boxesOf(graph, supports);
  const middle = (place: number): number => left + columnWidth * (place + 0.5);
  // Rows in which nothing stands are left out.
  const used = rows.map((_, row) => row).filter((row) => boxes.some((box) => box.row === row));
  const y = (row: number): number => top + rowHeight * used.indexOf(row);
  const first = graph.first;
  const strokes = boxes.flatMap(({ node, from, to, row }) => {
    const [x1, x2] = [middle(from) - boxWidth / 2, middle(to) + boxWidth / 2];
    const isOne = node.support?.foundation?.fields.kind?.value === "wall on footing" && node.part === "foundation";
    const label = node.count > 1 && !isOne ? `${node.count} × ${node.name}` : node.name;
    return [
      rectangle(x1, y(row), x2 - x1, boxHeight, node.id === first?.node ? "cut" : "seen", dashOf[node.state]),
      words((x1 + x2) / 2, y(row) + (node.state === "named" ? 19 : 13), cut(label, Math.floor((x2 - x1) / 5.6)), "middle"),
      node.state === "named" ? "" : words((x1 + x2) / 2, y(row) + 25, node.id === first?.node ? `${node.state}, look here first` : node.state, "middle", 9),
    ];
  });
  const joined = graph.links.flatMap(({ from, to, state }) => {
    const [upper, lower] = [from, to].map((id) => boxes.find(({ node }) => node.id === id));
    if (!upper || !lower) return [];
    // Between a wide box and a narrow one the line runs over the narrow one.
    const narrow = upper.to - upper.from <= lower.to - lower.from ? upper : lower;
    const x = middle((narrow.from + narrow.to) / 2);
    const [y1, y2] = [y(upper.row) + boxHeight, y(lower.row)];
    return [state === "missing" ? line(x, y1, x, y2, "thin", "2 4") : arrow(x, y1, x, y2, "seen")];
  });
  const caption =
    "Load path, roof to ground, a column of boxes to each support. " +
    (first ? `${first.state === "missing" ? "First missing link" : "First link not described"}: ${first.message.replaceAll("`", '"')}` : "Every link is named.") +
    (graph.faults.length > 0 ? " Dotted boxes are missing, dashed ones not described." : "");
  const width = Math.max(560, left + columnWidth * supports.length + 20);
  return {
    caption,
    svg: drawing(width, top + rowHeight * used.length, caption, [
      words(20, 20, "Load path", "start", 12),
      ...supports.map((support, i) => words(middle(i), 20, cut(support.name), "middle")),
      ...used.map((row) => words(20, y(row) + 19, row === 0 ? "from" : rows[row][0], "start", 10)),
      ...strokes,
      ...joined,
    ]),
  };
}

/** One drawing to every few supports; none for a structure without supports. */
export function loadPathPictures(graph: LoadPathGraph, supports: readonly Support[]): readonly Picture[] {
  const pictures: Picture[] = [];
  for (let at = 0; at < supports.length; at += mostAbreast) pictures.push(drawn(graph, supports.slice(at, at + mostAbreast)));
  return pictures;
}
