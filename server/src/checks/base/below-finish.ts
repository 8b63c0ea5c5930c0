/**
 * A plate hidden below the paving: nuts and rod ends that stand up through it, and steel that rusts where nobody looks. Seen as bolt ends
 * broken off by a plow, a brown stain at the foot of a post, a tube rusted through just below the paving.
 *
 * Common practice, no source: outside keep the plate above the finish; where it has to be hidden, encase it or coat it over zinc, and let the
 * pocket drain. Water in a tube has to come out above the finish.
 */
import { isClosed } from "../../catalog/sections.js";
import { formula } from "../../formula/declare.js";
import { isBelow as isLess } from "../../mechanics/compare.js";
import type { Base, Site } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeBases, type Found } from "./judge.js";
import { stackOf } from "./projection.js";

export const rodAbovePlate = formula({
  id: "base.rod-above-plate",
  text: "h_t = max(h_r, h_g - h_0 - t_p)",
  source: "geometry: washer, nut and three threads, or the rod as it stands",
  symbols: {
    h_t: { kind: "length", meaning: "height of nut and rod above the plate" },
    h_r: { kind: "length", meaning: "height of washer, nut and three threads" },
    h_g: { kind: "length", meaning: "projection of the rod", field: "bases.*.projection" },
    h_0: { kind: "length", meaning: "from the concrete to the underside of the plate" },
    t_p: { kind: "length", meaning: "thickness of the plate", field: "bases.*.plate.thickness" },
  },
});

type Air = NonNullable<Site["air"]>["value"];
type Protection = NonNullable<Base["protection"]>["value"];

/** What keeps steel that nobody sees from rust, by the air. Common practice, no source. */
const enough: Readonly<Record<Air, readonly Protection[]>> = {
  dry: ["galvanized", "coated", "galvanized and coated", "encased in concrete"],
  humid: ["galvanized", "galvanized and coated", "encased in concrete"],
  "salt spray": ["galvanized and coated", "encased in concrete"],
  pool: ["galvanized and coated", "encased in concrete"],
};

export const belowFinish: RuleDecl = {
  id: "base.below-finish",
  title: "Plate below the finish",
  link: "base",
  clause: "common practice, no source",
  fails: "Nuts and rods stand up through the finish, or plate and rods rust below it.",
  seen: "Rod ends broken off by a plow, a brown stain at the foot of a post, a tube rusted through just below the paving.",
  range: "Height of nut and rod against the cover of the finish, protection by the air of the site, drainage of the pocket, and the weep of a closed column above the finish. Zinc and stainless steel touching, and chlorides in the fill, are for the engineer.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (support, base, show) => {
      const finish = base["finish above plate"];
      const nothing = { message: "" };
      if (!finish) return { over: [], unchecked: [{ message: "Whether the plate lies below the finish is not said (finish above plate; 0 in where it lies level with it or above).", at: base.plate }], holds: nothing };
      if (finish.value <= 0) return { over: [], unchecked: [], holds: { message: "The plate is not below the finish: plate and nuts stay in view.", at: finish } };
      const over: Found[] = [];
      const unchecked: Found[] = [];
      const stack = stackOf(base);
      if ("missing" in stack) unchecked.push({ message: `To see whether nut and rod stay below the finish ${stack.missing} is needed.`, at: base.anchors });
      else {
        const h_t = rodAbovePlate.value({ h_r: stack.h_r, h_g: base.projection?.value ?? 0, h_0: stack.h_0, t_p: stack.t_p });
        if (isLess(finish.value, h_t)) over.push({ message: `Finish ${show(finish.value)} above the plate, and nut and rod stand ${show(h_t)} above it. Set the plate ${show(h_t)} or more below the finish, or above it.`, at: finish });
      }
      const protection = base.protection;
      const air = support.site.air;
      if (!protection) unchecked.push({ message: "How the hidden plate, nuts and rods are kept from rust is not said (protection).", at: finish });
      else if (!air) unchecked.push({ message: "The air the steel stands in is not said (site: air).", at: protection });
      else if (!enough[air.value].includes(protection.value)) {
        over.push({ message: `Protection ${protection.value} below the finish in ${air.value} air; it takes ${enough[air.value].join(" or ")}.`, at: protection });
      }
      if (protection?.value !== "encased in concrete") {
        const drains = base["pocket drains"];
        if (!drains) unchecked.push({ message: "Whether water runs out of the pocket round the plate is not said (pocket drains).", at: finish });
        else if (!drains.value) over.push({ message: "Water stands in the pocket round the plate. Drain it, or encase the plate in concrete sloped away from the column.", at: drains });
      }
      const column = support.column?.fields;
      const weep = column?.["weep hole"];
      if (weep && weep.value > 0 && column.section && isClosed(column.section.value)) {
        const height = column["weep height"];
        if (!height) unchecked.push({ message: "Whether the weep hole of the tube lies above the finish is not said (weep height, above the plate).", at: weep });
        else if (!isLess(finish.value, height.value)) over.push({ message: `The weep hole is ${show(height.value)} above the plate, below the finish ${show(finish.value)} above it: it lets water in and not out. Drill it higher, and fill the tube below it.`, at: height });
      }
      return { over, unchecked, holds: { message: `Plate ${show(finish.value)} below the finish: nut and rod have room, ${protection?.value ?? ""}, and water has a way out.`, at: finish } };
    }),
};
