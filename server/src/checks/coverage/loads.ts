/** Loads, and their way down to the column base. */
import { carriesRoof, isOnRock, linesOf, mayShake } from "./line.js";

/** Parts of the load calculation, as lines name them in place of a check. */
export const loadsDone = ["loads.wind", "loads.dead", "loads.combinations", "loads.rigid-roof"] as const;

export const loadLines = linesOf("loads", carriesRoof, [
  {
    id: "loads.levels",
    line: "Every load carries its level, allowable or strength, and every check takes the one its method asks for.",
    by: ["loads.combinations"],
  },
  {
    id: "loads.wind-open-roof",
    line: "Wind on the main frame of an open roof by ASCE 7-10, 7-16 or 7-22: clear and obstructed flow, cases A and B, wind from each edge, within the range of the figures.",
    by: ["loads.wind"],
  },
  { id: "loads.wind-drag", line: "Drag of the wind on fascias, parapets, posts and beams.", by: [], left: "Drag of the wind on fascias, parapets, posts and beams, beyond the least wind force on the roof's edge." },
  { id: "loads.wind-blocked", line: "Flow blocked by a wall, stored goods or a building close by, and roofs with a wall less than 80 % open.", by: [], left: "Roofs with walls less than 80 % open, which leave the open-roof figures, and buildings close by." },
  { id: "loads.wind-edges", line: "Pressures on roof edges and corners for the connector at each column top.", by: ["column.top-connection"] },
  { id: "loads.dead", line: "Dead load of the roof.", by: ["loads.dead"], left: "Dead load built up from layers: the roof's dead load is taken as one stated number." },
  { id: "loads.roof-live", line: "Roof live load, reduced by area and slope.", by: [] },
  { id: "loads.snow", line: "Snow: flat, least, sloped, unbalanced, drift against a higher roof, rain on snow.", by: [] },
  { id: "loads.added", line: "Loads of other kinds that the user adds.", by: [], left: "Loads added to those of the roof: give all of a column's reactions by hand where there are some." },
  { id: "loads.seismic", line: "Earthquake on columns that cantilever from the ground, with overstrength where the code asks for it.", by: [], applies: (support) => carriesRoof(support) && mayShake(support) },
  {
    id: "loads.combinations",
    line: "Combinations of ASCE 7-22 for strength and for allowable stress, the governing one named by its terms.",
    by: ["loads.combinations"],
    left: "Combinations with roof live load, snow, rain and earthquake, and of earlier editions of ASCE 7.",
  },
  {
    id: "loads.way-down",
    line: "The way down from the roof to the columns: by a roof rigid in its plane, with torsion and unequal columns, or by tributary width.",
    by: ["loads.rigid-roof"],
    left: "Roofs not rigid in their plane, knee braces, and the added moment of vertical loads on swayed columns (P-delta) in the way down.",
  },
  { id: "loads.frame", line: "A three-dimensional frame solution as a second opinion on the way down.", by: [] },
  {
    id: "loads.net-uplift",
    line: "Net uplift at every column, top and bottom, and what holds it there.",
    by: ["site.load-path", "column.top-connection"],
  },
  { id: "loads.own-weight-wall", line: "Earth pressure and water on a wall below the columns.", by: [], applies: (support) => isOnRock(support) && (support.foundation?.fields.retains?.value ?? 0) > 0 },
]);
