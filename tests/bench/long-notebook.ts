/** A notebook with many supports, each a column with reactions by hand on a pier of its own: 20 lines a support. */
export function longNotebook(supports: number): string {
  const many = (text: (i: number) => string) => Array.from({ length: supports }, (_, i) => text(i + 1)).join("");
  return `rootfast: 1

project:
  name: Long pier row

codes:
  building: IBC 2024

site:
  frost depth: 36 in
  seismic design category: B

ground:
  sand:
    kind: soil
    class: SM
    unit weight: 110 pcf

columns:
${many(
  (i) => `  C${i}:
    at: ${i * 10} ft, 0 ft
    section: HSS6x6x3/8
    height: 10 ft
    base: A
    stands on: P${i}
    reactions:
      dead: { down: ${(1 + (i % 7) / 10).toFixed(1)} kip }
      wind from the south: { up: 3 kip, shear y: 0.6 kip, moment x: -6 kip-ft }
      wind from the west: { up: 1 kip, shear x: 0.5 kip, moment y: 5 kip-ft }
`,
)}
bases:
  A:
    plate: 14 in x 14 in x 1 in
    grout: 1-1/2 in
    leveling nuts: yes
    anchors: 4 x 3/4 in F1554 Gr 36, headed, 18 in deep, 10 in square

foundations:
${many(
  (i) => `  P${i}:
    kind: pier
    ground: sand
    concrete: 4000 psi
    diameter: 30 in
    depth: ${7 + (i % 3)} ft
    above grade: 6 in
    ignored depth: 1 ft
    bars: 8 no. 6
    spiral: no. 4 at 3 in
`,
)}`;
}
