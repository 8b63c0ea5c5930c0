/**
 * Notebooks to begin with. Their comments teach the format; every number in them is to be replaced by the job's own.
 */

export interface Starter {
  readonly kind: string;
  /** As the list of starters names it. */
  readonly label: string;
  readonly detail: string;
  readonly text: string;
}

const head = (name: string, comment: string) => `# ${comment}
# Every number below is an example: replace it with the number of your job. Each one carries its unit;
# US and SI units may be mixed. Text after a # that follows a space is a comment, so write bars as no. 6.
rootfast: 1

project:
  name: ${name}
  stage: concept
  units: US                        # how results are shown

codes:
  building: IBC 2024
  loads: ASCE 7-22
  concrete: ACI 318-19
  steel: AISC 360-22
`;

const site = `
site:
  risk category: II
  wind speed: 115 mph              # basic wind speed of the risk category, from the map
  exposure: C                      # B built-up or wooded, C open, D along open water
  ground elevation: 100 ft
  ground snow: 25 psf
  frost depth: 30 in               # from the building official
  seismic design category: B
  air: humid                       # dry, humid, salt spray or pool
`;

const siteOfReactions = `
site:
  risk category: II
  frost depth: 30 in               # from the building official
  seismic design category: B
  air: humid                       # dry, humid, salt spray or pool
`;

const roof = `
given:                             # values named once; "= clear height + 1 ft" uses one
  clear height: 9 ft

roof:                              # plan axes: x east, y north, origin at the southwest corner
  shape: monoslope
  slope: 2 in 12
  length: 36 ft                    # along x
  width: 20 ft                     # along y
  low edge: south                  # the edge the roof slopes down to
  mean height: 11 ft
  dead: 15 psf                     # roofing, deck and framing, on plan
  flow below: clear                # obstructed where goods or walls block more than half
  rigid in plane: yes              # a fastened deck or bracing; open purlins are not
`;

const soil = `  gravel:
    kind: soil
    class: GP                      # soil symbol, for the presumptive values of the building code
    unit weight: 120 pcf
    water table: 12 ft
`;

const rock = `  ledge:
    kind: rock
    class: crystalline bedrock
    condition: sound               # sound, weathered or fractured, at the bearing surface
    drained: yes                   # water runs off the rock below the footing
    unit weight: 165 pcf
    dowel bond: 180 psi            # ask the geotechnical engineer, prove it by pull tests
    cone angle: 45 deg
`;

const column = (name: string, y: string, height: string, standsOn: string) => `  ${name}:
    line of: 3
    from: 4 ft, ${y}
    to: 32 ft, ${y}
    section: HSS6x6x3/8
    height: ${height}
    weep hole: 1/2 in              # just above the base plate, the concrete or the finish, whichever is highest
    base weld: 1/4 in fillet all around
    top connection:
      detail: cap plate with four 5/8 in bolts
      uplift: 12 kip               # its design strength; what holds the roof down to the column
      shear: 8 kip                 # and sideways
    base: A
    stands on: ${standsOn}
`;

const columns = (north: string, south: string) => `
columns:
${column("north", "17 ft", "= clear height + 2 ft 4 in", north)}${column("south", "3 ft", "= clear height", south)}`;

const bases = `
bases:
  A:
    plate: 14 in x 14 in x 1 in    # along x, along y, thick
    grout: 1-1/2 in
    leveling nuts: yes
    anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square
    projection: 4-1/2 in           # rods above the concrete: grout, plate, washer, nut and three threads
    finish above plate: 0 in       # paving above the plate hides it from air and inspection
`;

const pier = `  pier:
    kind: pier
    ground: gravel
    concrete: 4000 psi
    diameter: 36 in
    depth: 8 ft                    # underside below grade
    above grade: 6 in
    ignored depth: 30 in           # soil at the top that frost or digging may loosen
    bars: 12 no. 6
    ties: no. 4 at 12 in           # closed, or a bar wound at that pitch
    top ties: 2 no. 4              # within 5 in of the top, round the rods
`;

const footing = `  footing:
    kind: footing
    ground: gravel
    concrete: 4000 psi
    width: 5.5 ft                  # of the pad, along x
    length: 5.5 ft                 # along y
    thickness: 20 in
    depth: 4 ft                    # underside below grade
    above grade: 6 in              # top of the pedestal
    pedestal: 24 in x 24 in
    bars: 8 no. 6                  # of the pedestal, down into the pad, with hooks
    ties:
      bar: no. 4
      spacing: 12 in
      inner: yes                   # inner ties hold the bars between the corners
    top ties: 2 no. 4              # within 5 in of the top, round the rods
    bottom bars: no. 5 at 8 in, each way
    top bars: no. 5 at 12 in, each way
    backfill: compacted and tested # loose soil is not counted to hold the footing
    held down by: weight           # or soil cone, or side friction
`;

const dowels = (count: string, spacing: string) => `    dowels:
${count}      bar: no. 6
      spacing: ${spacing}
      into rock: 30 in
      in concrete: 14 in
      hole: 1-1/4 in
      set in: cement grout         # or epoxy
      hole condition: dry          # damp or under water asks for more
      rock temperature: 50 F or more
`;

const wall = `  wall:
    kind: wall on footing
    ground: ledge
    concrete: 4000 psi
    length: 36 ft
    thickness: 22 in
    height: 3 ft                   # above its footing
    above grade: 6 in
    footing:
      width: 42 in
      thickness: 14 in
      bottom bars: no. 4 at 7 in   # across the wall
      top bars: no. 4 at 7 in
      long bars: 6 no. 5           # along the wall
    hooked bars: yes
    length per post: 14 ft         # length of wall that acts with one post in uplift
    post spread: 45 degrees        # down the wall from the plate; or 30 degrees, plate alone
    retains: 0 ft                  # height of soil held back
    bar tops: hooked               # straight bars count less above the rods' ends
    stem bars:                     # where nothing is held back, the fill face is the north or east one
      fill face: { vertical: no. 5 at 12 in, horizontal: no. 5 at 12 in }
      free face: { vertical: no. 5 at 12 in, horizontal: no. 5 at 12 in }
    joint dowels:
      stem bars go on: yes         # or dowels by size and spacing, with their length into wall
      into footing: 10 in
      hooked: yes
${dowels("", "16 in")}`;

const pad = `  pad:
    kind: footing on rock
    ground: ledge
    concrete: 4000 psi
    width: 5 ft                    # along x
    length: 5 ft                   # along y
    thickness: 24 in
    depth: 18 in
    above grade: 6 in
    bottom bars: no. 6 at 9 in, each way
${dowels("      count: 4\n", "36 in")}`;

const bondToConfirm = `
confirm:                           # carried to the summary as open items
  - dowel bond in the ledge, by pull test on two dowels
`;

const reactions = `    reactions:                     # not factored, at the top of the foundation, one entry per load case
      dead:
        down: 2 kip
      roof live:
        down: 1.5 kip
      snow:
        down: 2 kip
      wind from west:              # every entry that begins with wind is a case of its own
        up: 2.5 kip
        shear x: 0.8 kip           # toward the east
        moment y: 6 kip-ft         # a push to the east gives a positive one
      wind from south:
        up: 2.5 kip
        shear y: 0.8 kip           # toward the north
        moment x: -6 kip-ft        # a push to the north gives a negative one
`;

export const starters: readonly Starter[] = [
  {
    kind: "piers",
    label: "Open shelter on piers",
    detail: "A sloped roof on two lines of columns, each column on a drilled pier in soil.",
    text: `${head("Trailhead shelter", "An open shelter on two lines of columns, all of them on drilled piers.")}${site}
ground:
${soil}${roof}${columns("pier", "pier")}${bases}
foundations:
${pier}`,
  },
  {
    kind: "footings",
    label: "Open shelter on footings",
    detail: "A sloped roof on two lines of columns, each column on a pad with a pedestal, in soil.",
    text: `${head("Orchard shelter", "An open shelter on two lines of columns, all of them on pads with pedestals.")}${site}
ground:
${soil}${roof}${columns("footing", "footing")}${bases}
foundations:
${footing}`,
  },
  {
    kind: "rock",
    label: "Open shelter on rock",
    detail: "One line of columns on a wall, the other on pads, all of them on rock and held by dowels.",
    text: `${head(
      "River landing shelter",
      "An open shelter on rock, one line of columns on a wall, the other on pads: all on the same kind of ground.",
    )}${site}
ground:
${rock}${roof}${columns("wall", "pad")}${bases}
foundations:
${wall}${pad}${bondToConfirm}`,
  },
  {
    kind: "reactions",
    label: "Reactions given, one pier",
    detail: "A pier alone, with the reactions of somebody else's structure stated by load case.",
    text: `${head("Bus stop pier", "A pier below a structure of somebody else, with the reactions they gave.")}${siteOfReactions}
ground:
${soil}
foundations:
${pier}${reactions}`,
  },
];

/** The starter of this kind, if there is one. */
export const starterOf = (kind: string): Starter | undefined => starters.find((starter) => starter.kind === kind);
