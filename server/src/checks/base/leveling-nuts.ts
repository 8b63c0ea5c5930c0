/**
 * The column stands on its rods: below each leveling nut the rod is a short column that shear bends. So it is before the grout is placed, and for
 * good where none is. Seen as rods leaning all one way under a plate with daylight below it.
 *
 * Axial force of each rod by the stiff plate, P/n and M c over the sum of c²; bending V l/2 where the clear gap is more than one rod
 * diameter (up to that it may be left out: sign structures of AASHTO, from memory); buckling by AISC 360-22 E3. A grouted base is looked at
 * under its factored dead load alone, as it stands between the setting of the steel and the grout.
 */
import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { rodsBothWays } from "../../mechanics/rods-both-ways.js";
import type { Support } from "../../project/model.js";
import { readFactors } from "../anchors/factors.js";
import { readRod, tensileStrengthUsed, type RodSteel } from "../anchors/rod.js";
import { readSeismic, shaken, type SeismicAnchors, withOverstrength, momentWithOverstrength } from "../anchors/seismic.js";
import { rodShear, rodShearDemand, rodShearTwisted } from "../anchors/steel-shear.js";
import { check, unchecked, weigh, type Outcome } from "../contract.js";
import { elasticStress, nominalStress } from "../steel-buckling.js";
import { twistFormulas, twistOnRods } from "./base-twist.js";
import { tipsOver } from "./distribution.js";
import { readBase, type BaseInputs } from "./geometry.js";
import { readHardware } from "./hardware.js";
import { gapInGrout, rodBending, rodCompressive, rodFlexure, rodFreeLength, rodNetDiameter, rodSlenderness, rodUse, rodYielding } from "./rod-bending.js";

export interface LevelingInputs extends BaseInputs, RodSteel {
  readonly phi: number;
  readonly seismic: SeismicAnchors;
  readonly n_v: number;
  readonly isWelded: boolean;
  /** Clear gap below the leveling nuts, m. */
  readonly g: number;
}

/** Rods that bear when the washers are loose in wide holes. */
const bearingLoose = 2;

/** Which loads a combination holds, for the stage before the grout. */
function isDeadAlone({ combination }: Demand): boolean | undefined {
  return combination.terms.length === 0 ? undefined : combination.terms.every(({ type }) => type === "D");
}

const isLeveled = (support: Support): boolean => support.base?.fields["leveling nuts"]?.value === true;

function axialStrength(inputs: LevelingInputs, isPushed: boolean, d_n: number, l_b: number, calc: Calc): number {
  const { f_ya: F_y, A_se } = inputs;
  if (!isPushed) return calc(rodYielding, { F_y, A_se });
  const F_e = calc(elasticStress, { KLr: calc(rodSlenderness, { l_b, d_n }) });
  return calc(rodCompressive, { F_n: calc(nominalStress, { F_y, F_e }), A_se });
}

function weighRods(inputs: LevelingInputs, demand: Demand<"strength">, calc: Calc): Outcome {
  const { g, d_a, A_se, f_uta, f_ya, phi, n_v, rods } = inputs;
  const { P, Vx, Vy, Mx, My, Mz = 0 } = demand.base;
  const found = calc.routine(rodsBothWays, { rods, P, Mx, My });
  if ("unstable" in found) return unchecked(tipsOver(found));
  const twist = Mz === 0 ? undefined : twistOnRods(inputs, Mz, calc);
  if (twist && "because" in twist) return unchecked(twist.because);
  const V_1 = calc(rodShearDemand, { V_x: Vx, V_y: Vy, n_v });
  const V_ua = twist ? calc(rodShearTwisted, { V_1, V_t: twist.ofRod }) : V_1;
  const d_n = calc(rodNetDiameter, { A_se });
  const l_b = calc(rodFreeLength, { g, d_a });
  const phiM_n = calc(rodFlexure, { F_y: f_ya, d_n });
  const phiV_sa = calc(rodShear, { phi, A_se, f_u: calc(tensileStrengthUsed, { f_uta, f_ya }) });
  if (g <= d_a) calc.note("The gap is no more than one rod diameter: bending of the rods may be left out.");
  const M_r = g <= d_a ? 0 : calc(rodBending, { V_ua, l_b });
  const most = Math.max(...found.forces);
  const least = Math.min(...found.forces);
  const pushed = most > 0 ? calc(rodUse, { N_r: most, phiN_n: axialStrength(inputs, true, d_n, l_b, calc), M_r, phiM_n, V_ua, phiV_sa }) : 0;
  const pulled = least < 0 ? calc(rodUse, { N_r: -least, phiN_n: axialStrength(inputs, false, d_n, l_b, calc), M_r, phiM_n, V_ua, phiV_sa }) : 0;
  const sheared = most > 0 || least < 0 ? 0 : calc(rodUse, { N_r: 0, phiN_n: calc(rodYielding, { F_y: f_ya, A_se }), M_r, phiM_n, V_ua, phiV_sa });
  calc.note(pushed > pulled ? "The rod that presses most governs." : "The rod that pulls most governs.");
  return weigh(Math.max(pushed, pulled, sheared), 1, "ratio");
}

export const levelingNuts = check({
  id: "base.leveling-nuts",
  title: "Rods below the leveling nuts",
  link: "base",
  level: "strength",
  clause: "AISC 360-22 E3, D2, F11.1, H3-6; ACI 318-19 17.7.1",
  fails: "The rods buckle or bend between the leveling nuts and the concrete.",
  seen: "Rods leaning all one way under a plate with daylight below it; a column out of plumb before the grout came, or where it never came.",
  range:
    "Rods of ASTM F1554 in a pattern about the plate's center, held at the nut and in the concrete; the plate stiff. Bending by shear counts from a clear gap of more than one rod diameter. A base that gets grout is looked at before it under the combinations of dead load alone: wind on bare steel is not in it. What the rods that press do to the concrete is not in it, nor fatigue, nor the tightening of the nuts.",
  formulas: [gapInGrout, rodShearDemand, rodShearTwisted, ...twistFormulas, rodNetDiameter, rodFreeLength, rodFlexure, tensileStrengthUsed, rodShear, rodBending, rodSlenderness, elasticStress, nominalStress, rodCompressive, rodYielding, rodUse, withOverstrength, momentWithOverstrength],
  applies: isLeveled,
  inputs: (support, gather, place): LevelingInputs => {
    const base = readBase(support, gather, place);
    const rod = readRod(support, gather);
    const fields = support.base?.fields;
    const isWelded = gather.may(fields?.["washers welded"]) ?? false;
    const factors = readFactors(support.codes, gather);
    const hardware = readHardware(fields);
    const grout = gather.may(fields?.grout) ?? Number.NaN;
    const g = base.standsFree
      ? gather.need(fields?.["gap below nuts"], "clear gap below the leveling nuts (gap below nuts)")
      : hardware
        ? gapInGrout.value({ t_g: grout, h_n: hardware.nut, t_w: hardware.washerThickness })
        : Number.NaN;
    const count = base.rods.length;
    return { ...base, ...rod, seismic: readSeismic(support, gather, "shear"), phi: factors?.steelShear[rod.isDuctile ? "ductile" : "brittle"] ?? Number.NaN, isWelded, n_v: isWelded ? count : Math.min(count, bearingLoose), g };
  },
  fixedBy: (support) => support.base?.fields["gap below nuts"] ?? support.base?.fields.grout ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    if (inputs.standsFree) return weighRods(inputs, demand, calc);
    const isBefore = isDeadAlone(demand);
    if (isBefore === undefined) return unchecked("before the grout the rods carry the dead load, and which part of the combined reactions is dead load is not said; give reactions by load case");
    if (!isBefore) {
      calc.note("The grout is in place before this combination.");
      return weigh(0, 1, "ratio");
    }
    calc.note("Before the grout: the steel stands on its leveling nuts.");
    return weighRods(inputs, demand, calc);
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "ratio")} times what the rods hold with ${say.show(inputs.g, "length")} clear below the leveling nuts. ${
      inputs.standsFree ? `Place grout, lower the plate to a gap of ${say.show(inputs.d_a, "length")}, one rod diameter, or take thicker rods.` : "Shim the plate until the grout is in, lower it, or take thicker rods."
    }`,
});
