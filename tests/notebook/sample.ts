/** A notebook with every section, and helpers that show a tree and problems with absolute places. */
import { absolute, type Node } from "../../server/src/notebook/tree.js";
import type { Problem } from "../../server/src/notebook/problem.js";

export const sample = `# Landing shelter, criteria and schedules
rootfast: 1

project:
  name: Ferry landing shelter
  units: US
  notes: |
    North line on granite: sound where seen.
    South line in till.

site:
  risk category: II
  wind speed: 140 mph   # from the map
  exposure: D
  ground snow: 30 psf
  frost depth: 48 in

ground:
  granite:
    kind: rock
    class: crystalline bedrock
    dowel bond: 200 psi
  # the south side
  till:
    kind: soil
    class: SM
    water table: 9 ft

given:
  clear height: 9 ft

roof:
  shape: monoslope
  slope: 2 in 12
  length: 44 ft
  width: 24 ft
  low edge: south
  mean height: 11 ft
  dead: 16 psf
  flow below: clear

columns:
  north:
    line of: 4
    from: 3 ft, 21 ft
    to: 41 ft, 21 ft
    section: HSS6x6x3/8
    height: = clear height + 3 ft
    base: A
    stands on: granite wall
  south:
    line of: 4
    from: 3 ft, 3 ft
    to: 41 ft, 3 ft
    section: HSS6x6x3/8
    height: = clear height
    base: A
    stands on: pier

bases:
  A:
    plate: 14 in x 14 in x 1 in
    grout: 1-1/2 in
    leveling nuts: yes
    anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square
    finish above plate: 4 in

foundations:
  pier:
    kind: pier
    diameter: 30 in
    depth: 7 ft
    bars: 8 no. 6
    spiral: no. 4 at 3 in
    ground: till
  granite wall:
    kind: wall on footing
    thickness: 18 in
    height: 4 ft
    footing: 42 in x 14 in
    dowels:
      bar: no. 6
      spacing: 16 in
      into rock: 20 in
      set in: epoxy
    retains: 3 ft
    ground: granite

confirm:
  - ground.granite.dowel bond: by pull test, two dowels a line
accept:
  - check: column drift
    at: south
    because: bare roof, no glass or ceiling
`;

const place = (span: Parameters<typeof absolute>[0]): string => {
  const { start, end } = absolute(span);
  return `${start}-${end}`;
};

/** A tree as nested arrays with absolute places, for comparing two trees. */
export function shown(node: Node): unknown {
  const via = node.via ? ` via ${place(node.via)}` : "";
  const at = `${node.type} ${place(node.span)}${via}`;
  if (node.type === "scalar") return [at, node.text, node.style, node.verbatim];
  if (node.type === "seq") return [at, node.items.map(shown)];
  if (node.type === "map")
    return [at, node.flow, node.entries.map((entry) => [entry.key, place(entry.keySpan), entry.via ? place(entry.via) : "", shown(entry.value)])];
  return at;
}

export const shownProblem = (problem: Problem): string =>
  [
    place(problem.span),
    problem.code,
    problem.severity,
    problem.message,
    ...(problem.related ?? []).map((related) => `see ${place(related.span)} ${related.message}`),
    ...(problem.fixes ?? []).map((fix) => `fix ${fix.title}: ${fix.edits.map((edit) => `${place(edit.span)}=${edit.text}`).join(" ")}`),
  ].join(" | ");

/** The text after a fix's edits. */
export function applied(text: string, problem: Problem | undefined, index = 0): string {
  const edits = [...(problem?.fixes?.[index]?.edits ?? [])].sort((a, b) => absolute(b.span).start - absolute(a.span).start);
  return edits.reduce((current, edit) => {
    const { start, end } = absolute(edit.span);
    return current.slice(0, start) + edit.text + current.slice(end);
  }, text);
}
