/**
 * A post on a slab that is there already: the slab is thin, nothing says what is below it, and frost lifts it. In the field: a roof bolted to the patio
 * "because it is heavy", its corner slabs tipped by the first storm or raised by the first winter.
 *
 * The appendix on patio covers of the residential code lets a slab of 3-1/2 in or more carry columns of no more than 750 lb each, only where the
 * ground does not freeze (IRC 2021 Appendix AH, from memory).
 */
import { formula } from "../../formula/declare.js";
import type { RuleDecl, RuleFinding } from "../contract.js";
import { isPaved } from "./paving.js";
import { showAs } from "./judge.js";

const appendix = "IRC 2021 Appendix AH, footings of patio covers (from memory)";

export const leastSlab = formula({ id: "site.least-slab", text: "t_s = t_0", source: appendix, symbols: { t_s: { kind: "length", meaning: "least thickness of a slab that carries a post" } }, constants: { t_0: "3.5 inch" } });
export const mostOnSlab = formula({ id: "site.most-on-slab", text: "P_s = P_0", source: appendix, symbols: { P_s: { kind: "smallForce", meaning: "most a column may bring onto it" } }, constants: { P_0: "750 lbf" } });

const words = /\bslabs?\b/iu;

export const slabAsFooting: RuleDecl = {
  id: "site.slab-as-footing",
  title: "A slab is no footing where it freezes",
  link: "site",
  clause: "IRC 2021 Appendix AH (from memory)",
  fails: "A thin slab breaks under its post, is lifted off with it, or is raised by frost.",
  seen: "A patio roof whose corner bolts pulled wedges out of the slab's edge.",
  range: "By the words of the ground's class. How thick the slab is, what lies below it and what it carries are not seen here, neither how anchors near its edge hold.",
  alone: true,
  judge: (structure) => {
    const show = showAs(structure);
    return structure.supports.flatMap((support): RuleFinding[] => {
      const name = support.ground?.fields.class;
      if (!name || !words.test(name.value) || isPaved(name.value)) return [];
      const frost = support.site["frost depth"];
      const limits = `${show(leastSlab.value({}), "length")} thick or more and ${show(mostOnSlab.value({}), "smallForce")} a column or less`;
      if (frost && frost.value > 0)
        return [{ support, verdict: "over", message: `${support.name}: it stands on a ${name.value} where the ground freezes to ${show(frost.value, "distance")}; a slab carries a post only where nothing freezes, ${limits}. Cut the slab open and pour a footing below the frost.`, at: name }];
      const missing = frost ? "" : " The frost depth of the site is not given.";
      return [{ support, verdict: "unchecked", message: `${support.name}: it stands on a ${name.value}, which carries a post only where nothing freezes, ${limits}.${missing} Have its thickness and its load shown, and what holds it down; or pour a footing below it.`, at: name }];
    });
  },
};
