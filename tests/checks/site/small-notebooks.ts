/** The smallest notebooks that show what goes wrong on such jobs: no more in them than the message needs. */

const soil = `
ground:
  sand: { kind: soil, class: SM, unit weight: 110 pcf }`;

interface Pier {
  readonly site?: string;
  readonly ground?: string;
  readonly load?: string;
  readonly more?: string;
  readonly depth?: string;
  readonly size?: string;
}

/** One pier under a stated reaction. */
export const pier = ({ site = "", ground = soil, load = "down: 2 kip", more = "", depth = "4 ft", size = "diameter: 18 in" }: Pier = {}): string => `rootfast: 1
site: { ${site} }${ground}
foundations:
  pier:
    kind: pier
    ground: ${/^ {2}([\w ]+):/mu.exec(ground)?.[1] ?? "sand"}
    concrete: 4000 psi
    ${size}
    depth: ${depth}${more}
    combined: { given: { level: allowable, ${load} } }
`;

/** One pad under a stated reaction. */
export const pad = ({ site = "", ground = soil, load = "down: 2 kip", more = "", depth = "3.5 ft", size = "width: 3 ft\n    length: 3 ft\n    thickness: 12 in" }: Pier = {}): string => `rootfast: 1
site: { ${site} }${ground}
foundations:
  pad:
    kind: footing
    ground: ${/^ {2}([\w ]+):/mu.exec(ground)?.[1] ?? "sand"}
    concrete: 4000 psi
    ${size}
    depth: ${depth}${more}
    combined: { given: { level: allowable, ${load} } }
`;

interface Post {
  readonly site?: string;
  readonly column?: string;
  readonly base?: string;
  readonly pier?: string;
  readonly load?: string;
  readonly anchors?: string;
  readonly plate?: string;
}

/** One column on a plate on a pier, under a stated reaction. */
export const post = ({ site = "", column = "", base = "", pier: under = "diameter: 24 in", load = "down: 2 kip", anchors = "4 x 3/4 in F1554 Gr 36, headed, 12 in deep, 10 in square", plate = "14 in x 14 in x 1 in" }: Post = {}): string => `rootfast: 1
site: { ${site} }${soil}
columns:
  P1:
    at: 0 ft, 0 ft
    section: HSS6x6x3/8
    height: 10 ft
    base: A
    stands on: pier
    combined: { given: { level: strength, ${load} } }${column}
bases:
  A:
    plate: ${plate}
    anchors: ${anchors}${base}
foundations:
  pier: { kind: pier, ground: sand, concrete: 4000 psi, depth: 4 ft, ${under} }
`;

/** No band at the roof's edge where none is described. */
const withEdge = (roof = ""): string => (roof.includes("fascia") ? roof : `${roof}, fascia: { depth: 0 in }`);

/** A roof on four columns, each on a pier of its own. */
export const shelter = (more: { readonly site?: string; readonly roof?: string; readonly column?: string; readonly depth?: string } = {}): string => `rootfast: 1
site: { risk category: I, wind speed: 115 mph, exposure: C, frost depth: 42 in, ground snow: 0 psf, seismic design category: A${more.site ?? ""} }
ground:
  sand: { kind: soil, class: SM, unit weight: 110 pcf }
roof: { shape: monoslope, slope: 2.5 in 12, length: 24 ft, width: 14 ft, low edge: south, mean height: 9 ft, dead: 10 psf, flow below: clear, edge depth: 8 in, rigid in plane: yes${withEdge(more.roof)} }
columns:
  P1:
    line of: 4
    from: 1 ft, 7 ft
    to: 23 ft, 7 ft
    section: HSS6x6x3/8
    height: 8 ft
    base: A
    stands on: pier${more.column ?? ""}
bases:
  A: { plate: 12 in x 12 in x 1 in, anchors: "4 x 3/4 in F1554 Gr 36, headed, 12 in deep, 8 in square" }
foundations:
  pier: { kind: pier, ground: sand, concrete: 4000 psi, depth: ${more.depth ?? "4 ft"}, diameter: 24 in }
`;

interface Pavilion {
  readonly site?: string;
  readonly roof?: string;
  readonly column?: string;
  readonly section?: string;
  readonly pier?: string;
}

/** A roof of 14 by 24 ft on four posts, each on a pier of its own. */
export const pavilion = ({ site = "", roof = "", column = "", section = "HSS6x6x3/8", pier: under = "diameter: 24 in, depth: 4 ft" }: Pavilion = {}): string => `rootfast: 1
site: { risk category: II, wind speed: 115 mph, exposure: C, frost depth: 42 in, ground snow: 0 psf, seismic design category: A${site} }
ground:
  sand: { kind: soil, class: SM, unit weight: 110 pcf }
roof: { shape: monoslope, slope: 2.5 in 12, length: 24 ft, width: 14 ft, low edge: south, mean height: 10 ft, dead: 10 psf, flow below: clear, edge depth: 8 in, rigid in plane: yes${withEdge(roof)} }
columns:
  south: &post
    line of: 2
    from: 2 ft, 2 ft
    to: 22 ft, 2 ft
    section: ${section}
    height: 8 ft
    base: A
    stands on: pier${column}
  north: { <<: *post, from: "2 ft, 12 ft", to: "22 ft, 12 ft", height: 10 ft }
bases:
  A: { plate: 12 in x 12 in x 1 in, anchors: "4 x 3/4 in F1554 Gr 36, headed, 12 in deep, 8 in square" }
foundations:
  pier: { kind: pier, ground: sand, concrete: 4000 psi, ${under} }
`;

/** One post on a wall that stands 4 ft above the lower ground. */
export const wallPost = (wall: string, load = "down: 0.5 kip", ground = "kind: rock, class: granite, condition: sound, drained: yes, unit weight: 165 pcf"): string => `rootfast: 1
site: { seismic design category: A }
ground:
  ledge: { ${ground} }
columns:
  P1: { at: "5 ft, 0 ft", section: HSS4x4x1/4, height: 10 ft, base: A, stands on: wall, combined: { given: { level: allowable, ${load} } } }
bases:
  A: { plate: 8 in x 8 in x 3/4 in, anchors: "4 x 5/8 in F1554 Gr 36, headed, 8 in deep, 4 in square" }
foundations:
  wall: { kind: wall on footing, ground: ledge, concrete: 4000 psi, length: 10 ft, height: 4 ft, depth: 1 ft, above grade: 4 ft, length per post: 4 ft, wall runs: east-west, ${wall} }
`;

/** One pad on rock, held by dowels. */
export const rockPad = (dowels: string, load = "up: 4 kip", ledge = ", dowel bond: 200 psi"): string => `rootfast: 1
site: { seismic design category: A }
ground:
  ledge: { kind: rock, class: granite, condition: sound, drained: yes, cone angle: 45 deg, unit weight: 165 pcf${ledge} }
foundations:
  pad: { kind: footing on rock, ground: ledge, concrete: 4000 psi, width: 3 ft, length: 3 ft, thickness: 18 in, depth: 12 in, above grade: 6 in, dowels: { ${dowels} }, combined: { given: { level: allowable, ${load} } } }
`;
