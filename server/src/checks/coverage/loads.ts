/** Loads, and their way down to the column base. */
import { carriesRoof, isOnRock, linesOf, mayShake } from "./line.js";

/** Parts of the load calculation, as lines name them in place of a check. */
export const loadsDone = ["loads.wind", "loads.dead", "loads.combinations", "loads.rigid-roof", "loads.tributary", "loads.frame", "loads.second-order", "loads.roof-live", "loads.snow", "loads.rain", "loads.seismic", "loads.least-sideways", "loads.added"] as const;

export const loadLines = linesOf("loads", carriesRoof, [
  {
    id: "loads.levels",
    line: "Every load carries its level, allowable or strength, and every check takes the one its method asks for; columns and the bending of base plates go by LRFD, ASD or both, as the notebook says.",
    by: ["loads.combinations"],
  },
  {
    id: "loads.wind-open-roof",
    line: "Wind on the main frame of an open roof by ASCE 7-10, 7-16 or 7-22: clear and obstructed flow, cases A and B, wind from each edge, within the range of the figures; three quarters of the winds along both axes at once where they push more together, and the pushes of one wind, or of both, off the middle of a rigid roof that is higher than the 30 ft up to which a single story is free of that.",
    by: ["loads.wind"],
  },
  {
    id: "loads.wind-drag",
    line: "Drag of the wind on fascias, parapets, columns, beams and panels between columns.",
    by: ["loads.wind"],
    left: "Wind along the ridge on several frames of a pitched roof (ASCE 7-22 28.3.5), drag of the wind on beams, braces, panels and fascias that the notebook does not describe, the higher pressure near the ends of walls given by their share of an edge (case C of ASCE 7-22 Figure 29.3-1), and bending between the ends of columns that no base holds.",
  },
  { id: "loads.wind-blocked", line: "Flow blocked by a wall, stored goods or a building close by, and roofs with a wall less than 80 % open.", by: ["loads.wind"], left: "Troughed roofs with a wall less than 80 % open, the edge and corner pressures of roofs with walls, their enclosure class by the openings they have (the worst of all classes is taken), and the wind on a canopy fastened to a building, or so close to one that the wind along its wall lifts the canopy too." },
  { id: "loads.wind-edges", line: "Pressures on roof edges and corners for the connector at each column top.", by: ["column.top-connection"] },
  { id: "loads.dead", line: "Dead load of the roof: one number, a light and a heavy one, or layers.", by: ["loads.dead"] },
  { id: "loads.roof-live", line: "Roof live load, reduced by area and slope.", by: ["loads.roof-live"], left: "Roof live load on a part of a roof that stands on more than one line of columns, or on a line askew to the roof." },
  {
    id: "loads.snow",
    line: "Snow: flat, least, sloped, unbalanced on a pitched roof, gathered in a trough, on one side of a single line of columns, drift against a higher roof, snow slid from it, rain on snow.",
    by: ["loads.snow"],
    left: "Partial snow loads on continuous and cantilevered beams over more than one line of columns, drifts behind projections, and a higher roof set apart by a gap, which is taken as touching.",
  },
  { id: "loads.rain", line: "Rain on a roof that can hold it.", by: ["loads.rain"], left: "Water that gathers as the roof bends (ponding), beyond a stated head." },
  { id: "loads.added", line: "Loads of other kinds that the user adds.", by: ["loads.added"], left: "Loads added to a column between its ends." },
  {
    id: "loads.seismic",
    line: "Earthquake on columns that cantilever from the ground, with overstrength where the code asks for it.",
    by: ["loads.seismic", "column.seismic-axial"],
    left: "Earthquakes where no accelerations are stated in category B, detailing that R asks for, turning by accident (ASCE 7 12.8.4.2) of a roof shared by tributary width, which as a flexible diaphragm is not asked for it, and periods beyond the long-period transition.",
    applies: (support) => carriesRoof(support) && mayShake(support),
  },
  { id: "loads.least-sideways", line: "The least sideways force in seismic design category A, 1 % of the weight.", by: ["loads.least-sideways"], applies: (support) => carriesRoof(support) && !mayShake(support) },
  {
    id: "loads.combinations",
    line: "Combinations of ASCE 7-10, 7-16 and 7-22 for strength and for allowable stress, the alternative basic ones where asked for, the governing one named by its terms.",
    by: ["loads.combinations"],
    left: "Combinations with flood, ice, tornado and self-straining loads.",
  },
  {
    id: "loads.way-down",
    line: "The way down from the roof to the columns: by a roof rigid in its plane, with torsion and unequal columns, its weight and lift by its spans, by tributary width, or the worse of both; columns fixed, knee-braced, braced or leaning in each plan direction, on bases that do not turn or give by a stated stiffness.",
    by: ["loads.rigid-roof", "loads.tributary", "loads.frame", "column.bracket", "column.knee-brace"],
    left: "The shear of a column between its knee brace and its top, the bending of roof framing where a knee brace meets it, roofs neither rigid nor free in their plane, the strength of the rods of a braced bay and of what ties them, purlins continuous over more than one span, which press more on the columns they run over, and the twisting of a roof along its one line of columns, all of which are taken to share alike what turns it about the line.",
  },
  {
    id: "loads.second-order",
    line: "The added moment of vertical loads on swayed columns (P-delta), story by story, in the combinations steel is designed by and in those of strength.",
    by: ["loads.second-order"],
    left: "Second order in the allowable combinations that soil takes, whose forces are first order, and the turning of bases whose stiffness is not stated.",
  },
  { id: "loads.frame", line: "A three-dimensional frame solution with its base springs and braces, and the hand route held against it on the way down.", by: ["loads.frame", "loads.rigid-roof"] },
  {
    id: "loads.net-uplift",
    line: "Net uplift at every column, top and bottom, and what holds it there.",
    by: ["site.load-path", "column.top-connection"],
  },
  { id: "loads.own-weight-wall", line: "Earth pressure and water on a wall below the columns.", by: [], applies: (support) => isOnRock(support) && (support.foundation?.fields.retains?.value ?? 0) > 0 },
]);
