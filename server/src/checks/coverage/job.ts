/** Rules of the site and the job, and what is left to others. */
import { carriesRoof, everywhere, isSeismic, linesOf } from "./line.js";

const ruleLines = linesOf("site", everywhere, [
  { id: "site.path", line: "The load path as a graph: every load arrives at the ground, and the first missing link is named.", by: ["site.load-path"] },
  { id: "site.depth", line: "Frost depth, and the exemption of sound rock.", by: ["site.frost"], left: "Exceptions from frost depth for small free-standing structures, insulated foundations, heave of the soil beside a pier." },
  { id: "site.durability", line: "Cover, exposure of the concrete, galvanizing by the air the steel stands in.", by: [] },
  { id: "site.neighbors", line: "Slabs isolated from the piers; pools, trenches and walls below a 1:1 line from the foundation; water.", by: [] },
  { id: "site.ties", line: "Ties between piers by seismic design category.", by: [], applies: isSeismic },
  { id: "site.construction", line: "Tolerance of the rods, erection, cure before erection, special inspection, what others must confirm.", by: [], left: "Tolerance of the rods, erection, cure before erection, and special inspection." },
  { id: "site.consistency", line: "Consistency of sizes: rods longer than the pier, plates larger than the pedestal, elevations that do not close.", by: ["site.agreement"], left: "Rods longer than the pier, and plates, pedestals and footings held against each other." },
]);

const outside = linesOf("job", everywhere, [
  { id: "job.flood", line: "Flood and scour.", by: [] },
  { id: "job.impact", line: "Impact of vehicles.", by: [] },
  { id: "job.ice", line: "Ice on the structure, and the wind on iced members (ASCE 7 chapter 10).", by: [] },
  { id: "job.thermal", line: "Thermal movement.", by: [] },
  { id: "job.fatigue", line: "Fatigue.", by: [] },
  { id: "job.existing", line: "Existing slabs and walls.", by: [] },
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
