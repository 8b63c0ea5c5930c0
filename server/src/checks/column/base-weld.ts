/**
 * The weld of the column to its base plate tears. In the field the column lies beside its plate, the weld broken along the side the wind came
 * from, the plate still bolted down.
 *
 * AISC 360-22 J2.4, the weld an elastic line all around. The least size of a fillet is J2.2b, Table J2.4.
 */
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import { check, sameInAll, weigh } from "../contract.js";
import { steelLevels } from "../steel-strength.js";
import { adviseWeld, electrodeStrength, readWeld, thinnerOf, weighWeld, weldFormulas } from "./weld.js";

export const leastFillet = formula({
  id: "column.least-fillet",
  text: "w_min = t <= t_1 ? w_1 : t <= t_2 ? w_2 : t <= t_3 ? w_3 : w_4",
  source: "AISC 360-22 Table J2.4",
  symbols: { w_min: { kind: "length", meaning: "least leg of the fillet" }, t: { kind: "length", meaning: "thinner part joined", range: [0.003, 0.03] } },
  constants: { t_1: "0.25 inch", t_2: "0.5 inch", t_3: "0.75 inch", w_1: "0.125 inch", w_2: "0.1875 inch", w_3: "0.25 inch", w_4: "0.3125 inch" },
});

export const thinner = formula({
  id: "column.thinner-part",
  text: "t = min(t_w, t_p)",
  source: "AISC 360-22 Table J2.4, note",
  symbols: { t: { kind: "length", meaning: "thinner part joined" }, t_w: { kind: "length", meaning: "wall of the column", field: "columns.*.section" }, t_p: { kind: "length", meaning: "base plate", field: "bases.*.plate.thickness" } },
});

const isWelded = (support: Support): boolean => support.column !== undefined && support.base !== undefined;
const what = "fillet weld of the column to its base plate (base weld)";
const weldOf = (support: Support) => support.column?.fields["base weld"];

export const baseWeld = check({
  id: "column.base-weld",
  title: "Weld of the column to its base plate",
  link: "column",
  level: steelLevels,
  clause: "AISC 360-22 J2.4, Table J2.5",
  fails: "The fillet weld between column and base plate, or the wall beside it, tears.",
  seen: "The column beside its plate after a storm, the weld torn along one side, the rods whole.",
  range: "A fillet all around, as an elastic line; axial force, both moments, shear and twist at their worst place together. Bearing of the column on its plate is not counted on, nor the increase by direction. The twist of a W comes as a couple of its flanges. The plate beside the weld is taken as thicker than the wall.",
  formulas: [...weldFormulas, electrodeStrength],
  applies: isWelded,
  inputs: (support, gather) => readWeld(support, gather, weldOf(support), what),
  fixedBy: (support) => weldOf(support)?.value.fillet ?? weldOf(support) ?? support.column,
  evaluate: (inputs, demand, calc) => weighWeld(inputs, demand, demand.base, calc),
  advise: adviseWeld,
});

interface SizeInputs {
  readonly w: number;
  readonly t_w: number;
  readonly t_p: number;
}

export const baseWeldSize = check({
  id: "column.base-weld-size",
  title: "Least size of the fillet at the base plate",
  link: "column",
  level: steelLevels,
  clause: "AISC 360-22 J2.2b, Table J2.4",
  fails: "A small fillet on thick steel cools so fast that it cracks.",
  seen: "Hairline cracks along a thin bead on a heavy plate.",
  range: "By the thinner part joined, as low-hydrogen welding allows.",
  formulas: [thinner, leastFillet],
  applies: isWelded,
  inputs: (support, gather): SizeInputs => {
    const section = gather.needs(support.column?.fields.section, "column section");
    return {
      w: gather.need(weldOf(support)?.value.fillet, what),
      t_w: section ? thinnerOf({ t: section.wall, t_f: section.flange }) : Number.NaN,
      t_p: gather.need(support.base?.fields.plate?.value.thickness, "thickness of the base plate"),
    };
  },
  measures: sameInAll,
  fixedBy: (support) => weldOf(support)?.value.fillet ?? weldOf(support) ?? support.column,
  evaluate: ({ w, t_w, t_p }, _, calc) => weigh(calc(leastFillet, { t: calc(thinner, { t_w, t_p }) }), w, "length"),
  advise: (_, outcome, say) => `Fillet ${say.show(outcome.capacity, "length")}; ${say.show(outcome.demand, "length")} is the least on steel of this thickness. Take a larger fillet.`,
});
