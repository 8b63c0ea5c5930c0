/**
 * A deep headed rod near the side of a pier bursts the concrete beside its head sideways, where the cover is thin against the depth.
 *
 * ACI 318-19 17.6.4, for headed rods set deeper than 2.5 times their edge distance, a row of them along each side.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { edgeNames, edgeRows, rowMeasures, type EdgeName, type EdgeRow } from "../../mechanics/edge-rows.js";
import { rodGroup, type RodGroup } from "../../mechanics/rod-group.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { check, unchecked, weigh } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { concreteStrengthUsed } from "./concrete.js";
import { readCone, roundNote, type ConeInputs } from "./cone.js";
import { anchorEditions, noteEdition } from "./factors.js";
import { readHead } from "./head.js";
import { usedPart } from "./ratio.js";
import { concreteInEarthquake, readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";

export interface BlowoutInputs extends ConeInputs {
  readonly seismic: SeismicAnchors;
  readonly A_brg: number;
  readonly phi: number;
}

const sideDistance = { kind: "length", meaning: "from the rods to the side of the concrete" } as const;
const single = { kind: "force", meaning: "nominal side-face blowout strength of one rod" } as const;

export const deepFrom = formula({
  id: "anchors.deep-from",
  text: "h_deep = 2.5 * c_a1",
  source: "ACI 318-19 17.6.4.1",
  symbols: { h_deep: { kind: "length", meaning: "embedment from which a rod is deep against its edge distance" }, c_a1: sideDistance },
});

export const sideFaceBlowoutSingle = formula({
  id: "anchors.blowout-single",
  text: "N_sb = k_sb * c_a1 * sqrt(A_brg) * lambda_a * sqrt(f_c)",
  source: "ACI 318-19 Eq. 17.6.4.1; lambda_a = 1.0, normalweight concrete",
  symbols: {
    N_sb: single,
    c_a1: sideDistance,
    A_brg: { kind: "area", meaning: "bearing area of the head", field: "bases.*.anchors.head" },
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
  },
  constants: { k_sb: "160 lbf^0.5/inch", lambda_a: "1.0" },
});

export const blowoutCorner = formula({
  id: "anchors.blowout-corner",
  text: "N_sc = c_a2 < 3 * c_a1 ? N_sb * (1 + max(1, c_a2 / c_a1)) / 4 : N_sb",
  source: "ACI 318-19 17.6.4.1.1",
  symbols: {
    N_sc: { kind: "force", meaning: "nominal side-face blowout strength of one rod near a corner" },
    N_sb: single,
    c_a1: sideDistance,
    c_a2: { kind: "length", meaning: "from the rod to the other side at the corner" },
  },
});

export const blowoutReach = formula({
  id: "anchors.blowout-reach",
  text: "s_cr = 6 * c_a1",
  source: "ACI 318-19 17.6.4.2",
  symbols: { s_cr: { kind: "length", meaning: "spacing below which rods along a side act as a group" }, c_a1: sideDistance },
});

export const blowoutGroup = formula({
  id: "anchors.blowout-group",
  text: "N_sbg = (1 + s / (6 * c_a1)) * N_sb",
  source: "ACI 318-19 Eq. 17.6.4.2",
  symbols: {
    N_sbg: { kind: "force", meaning: "nominal side-face blowout strength of the row" },
    s: { kind: "length", meaning: "from the first rod of the row to the last" },
    c_a1: sideDistance,
    N_sb: single,
  },
});

export const rowPull = formula({
  id: "anchors.row-pull",
  text: "N_ua = n * T_max",
  source: "every rod of the row taken with the tension of the one that pulls most; on the safe side, since ACI 318-19 17.6.4 has no factor for eccentricity",
  symbols: {
    N_ua: { kind: "force", meaning: "tension of the row" },
    n: { kind: "number", meaning: "rods of the row in tension" },
    T_max: { kind: "force", meaning: "largest tension of a rod in the row" },
  },
});

export const blowoutStrength = formula({
  id: "anchors.blowout-strength",
  text: "phiN_sb = phi * N_s",
  source: "ACI 318-19 Table 17.5.3(b), cast-in, without supplementary reinforcement",
  symbols: {
    phiN_sb: { kind: "force", meaning: "design side-face blowout strength" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    N_s: { kind: "force", meaning: "nominal side-face blowout strength of the row, or of one rod" },
  },
});

/** A row of rods that pull, along one side. */
interface PulledRow {
  readonly edge: EdgeName;
  readonly row: EdgeRow;
  readonly strength: RowStrength;
  readonly T_max: number;
}

/** Strength of a row, N, and whether its rods burst the side together. */
interface RowStrength {
  readonly N_s: number;
  readonly isRow: boolean;
}

type SideRow = Omit<PulledRow, "T_max">;

/** Rows along the sides by the rods that pull, of each base: the same few groups come back in every combination. */
const knownRows = oncePerInputs((_: BlowoutInputs) => new Map<number, readonly SideRow[]>());

function sideRows(inputs: BlowoutInputs, group: RodGroup, f_c: number): readonly SideRow[] {
  const known = knownRows(inputs);
  const member = inputs.member.edges;
  const found =
    known.get(group.pattern) ??
    edgeNames.flatMap((edge) => edgeRows({ rods: group.rods, member, edge }).map((row) => ({ edge, row, strength: rowStrength(inputs, row, f_c, plainCalc) })));
  known.set(group.pattern, found);
  return found;
}

function rowStrength({ A_brg }: BlowoutInputs, row: EdgeRow, f_c: number, calc: Calc): RowStrength {
  const c_a1 = row.distance;
  const { spacing, extent: s, leastEnd } = calc.routine(rowMeasures, row);
  const N_sb = calc(sideFaceBlowoutSingle, { c_a1, A_brg, f_c });
  if (row.along.length > 1 && spacing < calc(blowoutReach, { c_a1 })) return { N_s: calc(blowoutGroup, { s, c_a1, N_sb }), isRow: true };
  return { N_s: calc(blowoutCorner, { c_a1, c_a2: leastEnd, N_sb }), isRow: false };
}

/** The rows along every side, of the rods that pull; of all rods where none does. */
function pulledRows(inputs: BlowoutInputs, group: RodGroup, tensions: readonly number[], f_c: number): readonly PulledRow[] {
  const tensionOf = (index: number): number => tensions[inputs.rods.indexOf(group.rods[index])];
  return sideRows(inputs, group, f_c).map(({ edge, row, strength }) => ({ edge, row, strength, T_max: Math.max(...row.indices.map(tensionOf)) }));
}

export const sideFaceBlowout = sharedMode(check({
  id: "anchors.side-face-blowout",
  title: "Side-face blowout at the heads of the rods",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.6.4; ACI 318-14 17.4.4",
  editions: anchorEditions,
  fails: "The concrete beside the head of a deep rod near a side bursts outward.",
  seen: "A shallow crater on the side of a pier at the depth of the heads.",
  range:
    "Cast-in headed rods in normalweight concrete, deeper than 2.5 times their edge distance; others are not tried. A row is taken as if each rod in it pulled as the most loaded one does. As in ACI 318, the factor for a corner is taken on rods that act alone, and none on rows. A round pier is taken as the square inside it. " +
    "Anchor reinforcement does not replace it.",
  formulas: [concreteModulus, modularRatio, concreteStrengthUsed, deepFrom, blowoutReach, sideFaceBlowoutSingle, blowoutGroup, blowoutCorner, rowPull, blowoutStrength, ...seismicFormulas],
  applies: (support) => support.base !== undefined && (support.base.fields.anchors?.value.end?.value ?? "headed") === "headed",
  inputs: (support, gather, place): BlowoutInputs => {
    const { factors, ...cone } = readCone(support, gather, place);
    gather.needs(support.base?.fields.anchors?.value.end, "end of the rods, headed or hooked");
    return { ...cone, seismic: readSeismic(support, gather, "tension"), A_brg: readHead(support, gather, cone.d_a), phi: factors?.blowout ?? Number.NaN };
  },
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation?.fields.thickness ?? support.base?.fields.anchors,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    noteEdition(inputs.edition, "blowout", calc);
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    if (inputs.member.shape === "round") calc.note(roundNote);
    const { h_ef, phi } = inputs;
    const group = calc.routine(rodGroup, { rods: inputs.rods, tensions: contact.tensions, member: inputs.member.edges });
    const f_c = calc(concreteStrengthUsed, { fprime_c: inputs.fprime_c });
    const rows = pulledRows(inputs, group, contact.tensions, f_c);
    const nearest = rows.reduce((least, each) => (each.row.distance < least.row.distance ? each : least));
    const isDeep = ({ row }: PulledRow): boolean => h_ef > deepFrom.value({ c_a1: row.distance });
    const deep = rows.filter(isDeep);

    // Strengths were found before by the same steps; they run again for a reader.
    const strengthOf = ({ row, strength }: PulledRow): RowStrength => (calc === plainCalc ? strength : rowStrength(inputs, row, f_c, calc));
    const demandOf = ({ row, strength, T_max }: PulledRow, on: Calc): number => (strength.isRow ? on(rowPull, { n: row.along.length, T_max }) : T_max);

    calc(deepFrom, { c_a1: nearest.row.distance });
    if (deep.length === 0) {
      calc.note("The rods are not deep against their edge distance: side-face blowout does not govern.");
      return weigh(0, calc(blowoutStrength, { phi, N_s: strengthOf(nearest).N_s }), "force");
    }
    let governing = deep[0];
    let most = -1;
    for (const each of deep) {
      const used = usedPart.value({ S_u: demandOf(each, plainCalc), S_d: each.strength.N_s });
      if (used > most) [governing, most] = [each, used];
    }
    calc.note(`The row along the ${governing.edge} side governs.`);
    const { N_s, isRow } = strengthOf(governing);
    calc.note(isRow ? "The rods along this side are nearer to each other than 6 c_a1: they burst it together." : "Each rod along this side bursts it alone.");
    return weigh(demandOf(governing, calc), concreteInEarthquake(calc(blowoutStrength, { phi, N_s }), inputs.seismic, demand, calc), "force");
  },
  advise: (_, outcome, say) =>
    `${say.show(outcome.demand, "force")} tension along one side; the concrete beside the heads holds ${say.show(outcome.capacity, "force")}. Set the rods farther from the side, widen the concrete or take larger heads.`,
}));
