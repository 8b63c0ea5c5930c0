/**
 * The rods push a wedge of concrete off the edge: a half cone that spalls from the side of a narrow pier or the free face of a wall, or a
 * corner that breaks away.
 *
 * ACI 318-19 17.7.2, toward each of the four edges and along it. Shear askew to an edge counts by both of its parts, squared and added.
 */
import { formula } from "../../formula/declare.js";
import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";
import { edgeNames, type EdgeName, type EdgeRow } from "../../mechanics/edge-rows.js";
import type { Support } from "../../project/model.js";
import { towardWithTwist } from "../base/base-twist.js";
import { readShearPath, shearOnRods, shearPathFormulas, type RodShear, type ShearPath } from "../base/shear-path.js";
import { check, unchecked, weigh, type Gather } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { readCone } from "./cone.js";
import { anchorEditions, noteEdition } from "./factors.js";
import { readHairpinSides, type HairpinSides } from "./hairpins.js";
import { usedPart } from "./ratio.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";
import { rowsToward, wedgeFormulas, wedgeStrength, type WedgeInputs, type WedgeStrength } from "./shear-wedge.js";

export interface ShearBreakoutInputs extends WedgeInputs {
  readonly path: ShearPath;
  readonly seismic: SeismicAnchors;
  readonly phi: number;
  /** Shear that hairpins take in place of the concrete. */
  readonly hairpins: HairpinSides;
}

export const shearBreakoutStrength = formula({
  id: "anchors.shear-breakout-strength",
  text: "phiV_cbg = phi * V_cbg",
  source: "ACI 318-19 Table 17.5.3(b), cast-in, without supplementary reinforcement",
  symbols: {
    phiV_cbg: { kind: "force", meaning: "design breakout strength toward the edge" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    V_cbg: { kind: "force", meaning: "nominal breakout strength toward the edge" },
  },
});

export const alongEdgeStrength = formula({
  id: "anchors.along-edge-strength",
  text: "phiV_par = phi * V_par",
  source: "ACI 318-19 Table 17.5.3(b), cast-in, without supplementary reinforcement",
  symbols: {
    phiV_par: { kind: "force", meaning: "design breakout strength along the edge" },
    phi: { kind: "ratio", meaning: "strength reduction factor" },
    V_par: { kind: "force", meaning: "nominal breakout strength along the edge" },
  },
});

export const shearTowardEdge = formula({
  id: "anchors.shear-toward-edge",
  text: "V_ua = sqrt(V_n^2 + (V_t * V_cbg / V_par)^2)",
  source: "EN 1992-4:2018 7.2.2.5, factor psi_alpha,V (from memory), with the strengths of ACI 318-19 17.7.2.1; ACI 318 gives no rule for shear askew to an edge",
  symbols: {
    V_ua: { kind: "force", meaning: "shear that stands for both parts, toward the edge" },
    V_n: { kind: "force", meaning: "shear toward the edge" },
    V_t: { kind: "force", meaning: "shear along the edge" },
    V_cbg: { kind: "force", meaning: "nominal breakout strength toward the edge" },
    V_par: { kind: "force", meaning: "nominal breakout strength along the edge" },
  },
});

interface EdgeCase {
  readonly edge: EdgeName;
  readonly row: EdgeRow;
  readonly strength: WedgeStrength;
}

/** The cases of a base, which are the same for every combination: an edge, and the rods that stand for the group toward it. */
const casesOf = oncePerInputs((inputs: WedgeInputs): readonly EdgeCase[] =>
  edgeNames.flatMap((edge) => rowsToward(inputs, edge).map((row) => ({ edge, row, strength: wedgeStrength(inputs, row, plainCalc) }))),
);

/** The part of the shear that pushes toward an edge, 0 where it pushes away, and the part along it. A twist pushes toward every edge and along it. */
function partsAt(edge: EdgeName, { Vx, Vy, twist }: RodShear): { readonly V_n: number; readonly V_t: number } {
  const isAcross = edge === "west" || edge === "east";
  const outward = edge === "west" ? -Vx : edge === "east" ? Vx : edge === "south" ? -Vy : Vy;
  const sideways = Math.abs(isAcross ? Vy : Vx);
  if (!twist) return { V_n: Math.max(0, outward), V_t: sideways };
  const [toward, along] = isAcross ? [twist.x, twist.y] : [twist.y, twist.x];
  return { V_n: towardWithTwist.value({ V: outward, V_T: toward }), V_t: towardWithTwist.value({ V: sideways, V_T: along }) };
}

/** The shear that is left to the concrete. */
function shearOnConcrete({ hairpins: { takesX, takesY } }: ShearBreakoutInputs, forces: RodShear, calc: Calc): RodShear {
  if (!takesX && !takesY) return forces;
  calc.note(takesX && takesY ? "Hairpins take all of the shear in place of the concrete; that is a check of its own." : `Hairpins take the shear along ${takesX ? "x" : "y"} in place of the concrete; that is a check of its own.`);
  const { twist } = forces;
  return { ...forces, Vx: takesX ? 0 : forces.Vx, Vy: takesY ? 0 : forces.Vy, twist: twist && { ...twist, x: takesX ? 0 : twist.x, y: takesY ? 0 : twist.y } };
}

/** Reads what breakout in shear depends on. */
export function readWedge(support: Support, gather: Gather, place: number): ShearBreakoutInputs {
  const { factors, ...cone } = readCone(support, gather, place);
  const fields = support.base?.fields;
  const isCracked = gather.may(fields?.["cracked concrete"]) ?? true;
  const bars = gather.may(fields?.["edge bars"]) ?? "none";
  return {
    ...cone,
    path: readShearPath(support, gather),
    seismic: readSeismic(support, gather, "shear"),
    isWelded: gather.may(fields?.["washers welded"]) ?? false,
    psi_cV: (isCracked ? factors?.shearCracked[bars] : factors?.shearUncracked) ?? Number.NaN,
    phi: factors?.shearBreakout ?? Number.NaN,
    hairpins: readHairpinSides(support, gather),
  };
}

export const breakoutShear = sharedMode(check({
  id: "anchors.breakout-shear",
  title: "Concrete breakout by the rods in shear",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.7.2; ACI 318-14 17.5.2",
  editions: anchorEditions,
  fails: "The rods push off the concrete between them and an edge or a corner.",
  seen: "A spall on the side of a pier below the plate, or a corner of a wall's end broken off at the rods.",
  range:
    "Cast-in rods in normalweight concrete, without supplementary reinforcement; where hairpins are given it takes none of the shear they stand against. Bars at the edge count only where the notebook states them. With loose washers the row nearest the edge takes all the shear, two rods of it at most, on the safe side of sharing it; with washers welded to the plate the row farthest from the edge takes all. A round pier is taken as the square inside it. " +
    "A twist of the base stands as a shear of the group toward every edge, on the safe side; soil against the pier is not counted on.",
  formulas: [...wedgeFormulas, shearTowardEdge, shearBreakoutStrength, alongEdgeStrength, ...shearPathFormulas, ...seismicFormulas],
  applies: (support) => support.base !== undefined,
  inputs: (support, gather, place): ShearBreakoutInputs => {
    return readWedge(support, gather, place);
  },
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation?.fields.thickness ?? support.base?.fields.anchors,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const { phi } = inputs;
    noteEdition(inputs.edition, "breakoutShear", calc);
    const onRods = shearOnRods(inputs.path, demand, calc);
    if ("because" in onRods) return unchecked(onRods.because);
    const forces = shearOnConcrete(inputs, onRods, calc);
    const cases = casesOf(inputs);
    let governing = cases[0];
    let most = 0;
    for (const each of cases) {
      const { toward: V_cbg, along: V_par } = each.strength;
      const used = shearBreakoutStrength.value({ phi, V_cbg });
      // Of cases that are not tried the weakest is shown.
      const isWeaker = most === 0 && used < shearBreakoutStrength.value({ phi, V_cbg: governing.strength.toward });
      const { V_n, V_t } = partsAt(each.edge, forces);
      const tried = usedPart.value({ S_u: shearTowardEdge.value({ V_n, V_t, V_cbg, V_par }), S_d: used });
      if (tried > most || isWeaker) governing = each;
      most = Math.max(most, tried);
    }
    const { edge, row } = governing;
    calc.note(`The ${edge} edge governs.`);
    calc.note(
      inputs.isWelded
        ? "Washers are welded to the plate: the row farthest from the edge takes all the shear."
        : `Washers are loose in wide holes: the row nearest the edge takes all the shear${row.along.length < inputs.rods.length && row.along.length === 2 ? ", two rods of it" : ""}.`,
    );
    // Found before by the same steps; they run again for a reader.
    const { toward: V_cbg, along: V_par } = calc === plainCalc ? governing.strength : wedgeStrength(inputs, row, calc);
    const { V_n, V_t } = partsAt(edge, forces);
    if (V_n === 0 && V_t > 0) {
      calc.note("The shear runs along this edge.");
      return weigh(V_t, calc(alongEdgeStrength, { phi, V_par }), "force");
    }
    return weigh(calc(shearTowardEdge, { V_n, V_t, V_cbg, V_par }), calc(shearBreakoutStrength, { phi, V_cbg }), "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} shear toward the edge; the concrete before the rods holds ${say.show(outcome.capacity, "force")}. Set the rods farther from the edge or widen the concrete${inputs.isWelded ? "" : ", weld plate washers to the plate so that the far rods take it too"}, or give it hairpins for all of it (foundation, hairpins).`,
}));
