/**
 * Grout that does not fill the space under the plate: too thin to flow past the leveling nuts, or so thick that plain grout cracks. Seen as a
 * hollow sound under the plate, or as a crumbling collar of grout after a winter.
 *
 * 3/4 to 2 in is usual, and up to 3 in with coarse aggregate in it; common practice. What the bag says comes first.
 */
import { formula } from "../../formula/declare.js";
import { isAbove as isMore } from "../../mechanics/compare.js";
import type { RuleDecl } from "../contract.js";
import { readHardware } from "./hardware.js";
import { judgeBases } from "./judge.js";

export const groutNeeded = formula({
  id: "base.grout-needed",
  text: "t_need = max(t_1, h_n + t_w)",
  source: "3/4 in, or the leveling nut with its washer, which take no height where there is none; common practice, no source",
  symbols: {
    t_need: { kind: "length", meaning: "least thickness of the grout" },
    h_n: { kind: "length", meaning: "height of the nut" },
    t_w: { kind: "length", meaning: "thickness of the washer" },
  },
  constants: { t_1: "0.75 inch" },
});

export const groutMost = formula({
  id: "base.grout-most",
  text: "t_most = t_0",
  source: "3 in the most for plain grout; common practice, no source",
  symbols: { t_most: { kind: "length", meaning: "largest thickness of the grout" } },
  constants: { t_0: "3 inch" },
});

export const groutUsual = formula({
  id: "base.grout-usual",
  text: "t_most = t_0",
  source: "3/4 to 2 in usual; common practice, no source",
  symbols: { t_most: { kind: "length", meaning: "largest usual thickness of the grout" } },
  constants: { t_0: "2 inch" },
});

export const groutThickness: RuleDecl = {
  id: "base.grout-thickness",
  title: "Thickness of the grout under the plate",
  link: "base",
  clause: "common practice, no source",
  fails: "The grout does not fill the space under the plate, or cracks in a thick bed.",
  seen: "A hollow sound under the plate; a crumbling collar of grout after a winter.",
  range: "By the leveling nut with its washer and by the thicknesses in use. The least and the most of the product are on its bag and come first.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (_, base, show) => {
      const grout = base.grout;
      const isLeveled = base["leveling nuts"]?.value ?? false;
      const none = { over: [], unchecked: [] };
      if (!grout) return { over: [], unchecked: [{ message: "The thickness of the grout is not given (0 in where none is placed).", at: base["leveling nuts"] }], holds: { message: "" } };
      if (grout.value === 0) return { ...none, holds: { message: isLeveled ? "No grout: the plate stands on its leveling nuts." : "No grout: the plate stands on the concrete itself, which has to be level and flat.", at: grout } };
      const hardware = readHardware(base);
      if (isLeveled && !hardware) return { over: [], unchecked: [{ message: "The size of the rods is needed to see whether the leveling nuts fit into the grout.", at: base.anchors ?? grout }], holds: { message: "" } };
      const needed = groutNeeded.value(isLeveled && hardware ? { h_n: hardware.nut, t_w: hardware.washerThickness } : { h_n: 0, t_w: 0 });
      const most = groutMost.value({});
      const usual = groutUsual.value({});
      if (isMore(needed, grout.value)) {
        const why = isLeveled && needed > groutNeeded.value({ h_n: 0, t_w: 0 }) ? `the leveling nut and its washer take ${show(needed)}` : `${show(needed)} is the least in use`;
        return { ...none, over: [{ message: `Grout ${show(grout.value)}; ${why}. Set the plate higher.`, at: grout }], holds: { message: "" } };
      }
      if (isMore(grout.value, most)) return { ...none, over: [{ message: `Grout ${show(grout.value)}; ${show(most)} is the most in use. Raise the concrete, or have a grout with coarse aggregate specified for it.`, at: grout }], holds: { message: "" } };
      const remark = isMore(grout.value, usual) ? ` That is more than the usual ${show(usual)}: a grout extended with pea gravel is usual there.` : "";
      return { ...none, holds: { message: `Grout ${show(grout.value)}, at least ${show(needed)} needed.${remark} The bag's own least and most come first.`, at: grout } };
    }),
};
