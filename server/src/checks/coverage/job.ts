/** Rules of the site and the job, and what is left to others. */
import { carriesRoof, everywhere, isSeismic, linesOf } from "./line.js";

const ruleLines = linesOf("site", everywhere, [
  { id: "site.path", line: "The load path as a graph: every load arrives at the ground, and the first missing link is named.", by: ["site.load-path"] },
  { id: "site.depth", line: "Frost depth, with the exceptions of sound rock and of small free-standing structures.", by: ["site.frost"], left: "Insulated foundations, and limits of the local official for small structures." },
  {
    id: "site.durability",
    line: "Cover, exposure of the concrete, galvanizing by the air the steel stands in.",
    by: ["site.cover", "wall.stem-cover", "site.exposure", "site.corrosion"],
    left: "Mix of the concrete by exposures that are not stated (freezing, sulfate, water and corrosion exposure), cement against sulfate, more cover against chlorides; rust in dry and humid air of steel that is in view.",
  },
  {
    id: "site.neighbors",
    line: "Slabs isolated from the piers; pools, trenches and walls below a 1:1 line from the foundation; setback from a slope; water.",
    by: ["site.isolation", "site.neighbors", "site.slope-setback", "site.water", "site.paving"],
    left: "What lies beside the foundation where it is not stated (slab at grade, neighbors), ground that asks for a flatter line than 1 in 1, surface water and drains.",
  },
  { id: "site.ties", line: "Ties between piers by seismic design category.", by: ["site.ties", "pier.grade-beam-strength", "pier.grade-beam-size", "pier.grade-beam-ties", "pier.grade-beam-bars", "pier.grade-beam-development", "footing.grade-beam-strength", "footing.grade-beam-size", "footing.grade-beam-ties", "footing.grade-beam-bars", "footing.grade-beam-development"], left: "A slab that ties the foundations; of a grade beam the moment its columns put into it, what it carries or settles with, the closer hoops at its ends and its laps; a heavier column of another line at its far end, where the beam is not described there.", applies: isSeismic },
  {
    id: "site.construction",
    line: "Tolerance of the rods, erection, cure before erection, special inspection, what others must confirm.",
    by: ["anchors.as-built", "anchors.groups-as-built", "base.erection", "site.cure"],
    left: "Cure before the columns are set, where neither strength at erection nor days before erection is stated; the distance from one group of rods to the next, where the places found are not stated; guys and braces of the bare frame. Special inspections and what others must confirm are listed among the cautions.",
  },
  { id: "site.consistency", line: "Consistency of sizes: rods longer than the pier, plates larger than the pedestal, a foundation named twice, elevations that do not close.", by: ["site.agreement", "site.sizes", "anchors.fit"] },
]);

const outside = linesOf("job", everywhere, [
  { id: "job.flood", line: "Flood and scour.", by: [] },
  { id: "job.impact", line: "Impact of vehicles.", by: [] },
  { id: "job.ice", line: "Ice on the structure, and the wind on iced members (ASCE 7 chapter 10).", by: [] },
  { id: "job.thermal", line: "Thermal movement.", by: [] },
  { id: "job.fatigue", line: "Fatigue.", by: [] },
  {
    id: "job.existing",
    line: "Existing slabs and walls: a post bolted to an old slab, or to a wall of blocks.",
    by: ["site.slab-as-footing"],
    left: "Existing slabs and walls: what an old slab or its edge holds under a post, and posts on or just behind a wall of blocks, whose blocks take neither pull nor twist.",
  },
  {
    id: "job.supplied",
    line: "A design supplied for another place: its wind speed, exposure and snow held against those of this one.",
    by: ["site.supplied-design"],
    left: "A kit or a design supplied for another place, where what it was made for is not stated (site, supplied design); its ground, its earthquakes and its sizes.",
  },
  { id: "job.additions", line: "Solar panels or curtains added later.", by: [] },
  { id: "job.erection-wind", line: "Wind during erection.", by: [] },
]);

const roofParts = linesOf("job", carriesRoof, [
  { id: "job.skin", line: "Roof skin and its fasteners.", by: [] },
  { id: "job.beams", line: "Purlins, beams and cantilever tips, also where the wind reverses their bending.", by: [] },
  { id: "job.roof-plane", line: "Bracing or deck in the plane of the roof.", by: [] },
]);

const person = linesOf("job", everywhere, [
  { id: "job.smallest", line: "The smallest size that works for each number, and the range over which everything holds.", by: [] },
  { id: "job.quantities", line: "Quantities of concrete, bars, rods, grout and excavation.", by: [] },
]);

/** Aids for the person are no limit states and are not said beside a support. */
const silent = person.map((line) => ({ ...line, applies: () => false }));

export const jobLines = [...ruleLines, ...outside, ...roofParts, ...silent];
