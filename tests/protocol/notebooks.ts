/** A small notebook with every kind of name and value; reactions by hand, so that it stands on no roof. */
export const notebook = `# Two signs beside a path, with the reactions their maker gave.
rootfast: 1

project:
  name: Path signs
  units: US

site:
  frost depth: 30 in
  seismic design category: B

ground:
  sand:
    kind: soil
    class: SM
    unit weight: 115 pcf
    water table: 15 ft

given:
  clear height: 9 ft
  above: 6 in          # of the pier

columns:
  west sign:
    at: 0 ft, 0 ft
    weep hole: 1/2 in
    base weld: 1/4 in fillet all around
    section: HSS6x6x3/8
    height: = clear height + 1 ft
    base: A
    stands on: round pier
    reactions:
      dead: { down: 1 kip }
      wind from the south: { up: 2 kip, shear y: 0.4 kip, moment x: -4 kip-ft }
  east sign:
    at: 12 ft, 0 ft
    weep hole: 1/2 in
    base weld: 5/16 in fillet all around
    section: HSS6x6x3/8
    height: = clear height
    base: A
    stands on: round pier
    reactions:
      dead: { down: 1 kip }
      wind from the west: { up: 1 kip, shear x: 0.3 kip, moment y: 3 kip-ft }

bases:
  A:
    plate: 14 in x 14 in x 1 in
    grout: 1-1/2 in
    leveling nuts: yes
    anchors: 4 x 3/4 in F1554 Gr 36, headed, 18 in deep, 10 in square
    projection: 4 in
    finish above plate: 0 in

foundations:
  round pier:
    kind: pier
    ground: sand
    concrete: 4000 psi
    diameter: 30 in
    depth: 8 ft
    above grade: = above
    ignored depth: 1 ft
    bars: 8 no. 7
    top ties: 2 no. 4
    ties: no. 4 at 10 in
`;

/** The same with another stretch in place of one that occurs once. */
export function withChange(text: string, old: string, fresh: string): string {
  if (text.split(old).length !== 2) throw new Error(`${JSON.stringify(old)} does not stand once in the text.`);
  return text.replace(old, () => fresh);
}

export const crlf = (text: string): string => text.replaceAll("\n", "\r\n");
