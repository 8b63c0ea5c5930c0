/** The concrete of a pad on rock and what bends it: pressure of the rock and pull of the dowels, in the state their forces are found from. */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { footingContact } from "../../mechanics/partial-contact.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { type FootingBody, type Pedestal, pedestalInPlan } from "../footing/body.js";
import { columnSides, type PadInputs, readConcrete } from "../footing/pad.js";
import type { PadOn } from "../footing/pad-on.js";
import type { Acting } from "../footing/sections.js";
import { hasPinsAlone } from "../wall/body.js";
import { isPadOnRock, readBlock, type RockBlock } from "./block.js";
import { atUnderside, type DowelInputs, dowelPullFormulas, heldBelow, heldBelowFormulas, padPull, readDowels } from "./dowel-force.js";

export interface RockPadInputs extends PadInputs {
  readonly block: RockBlock;
  /** Dowels that hold the pad down. */
  readonly dowels: DowelInputs | undefined;
  /** Nothing tells the size of what stands on the pad. */
  readonly isPoint: boolean;
}

export const padDown = formula({
  id: "rock.weight-on-underside",
  text: "w = f_D * W / (B * L)",
  source: "statics",
  symbols: {
    w: { kind: "pressure", meaning: "weight of the pad over its underside" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W: { kind: "force", meaning: "weight of the concrete that acts with the support" },
    B: { kind: "length", meaning: "width of the pad", field: "foundations.*.width" },
    L: { kind: "length", meaning: "length of the pad", field: "foundations.*.length" },
  },
});

function readRockPad(support: Support, gather: Gather, place: number): RockPadInputs {
  const f = support.foundation?.fields;
  const block = readBlock(support, gather, place);
  const { body } = block;
  const [width, length] = body.type === "pad" ? [body.width, body.length] : [Number.NaN, Number.NaN];
  const stated = f?.pedestal?.value;
  const pedestal: Pedestal = stated ? { ...pedestalInPlan(stated, gather), height: 0 } : { shape: "none", width: 0, length: 0, height: 0 };
  const inPlan: FootingBody = {
    width,
    length,
    thickness: body.thickness,
    depth: block.depth,
    pedestal,
    offset: { x: 0, y: 0 },
    grout: block.grout,
    plate: block.plate,
    soilHeight: 0,
    soilWeight: 0,
    isSoilCounted: false,
    waterHeight: 0,
  };
  const isPoint = !stated && support.base === undefined;
  return {
    ...readConcrete(support, gather, inPlan, isPoint ? { x: 0, y: 0 } : columnSides(support, inPlan, gather)),
    block,
    dowels: f?.dowels && !hasPinsAlone(support) ? readDowels(support, gather, place) : undefined,
    isPoint,
  };
}

function actingBelow(inputs: RockPadInputs, demand: Demand<"strength">, calc: Calc): Acting {
  const { block, dowels, width: B, length: L } = inputs;
  if (inputs.isPoint) calc.note("What stands on the pad is not described: it is taken as a point on its middle, the safe side.");
  const forces = atUnderside(block, demand, calc);
  const { N, M_x, M_y, W, f_D } = forces;
  if (N <= 0 && M_x === 0 && M_y === 0 && demand.base.P === 0) return undefined;
  const down = calc(padDown, { f_D, W, B, L });
  if (dowels) {
    const found = padPull(dowels, forces, calc);
    if ("because" in found) return found;
    if (found.pull > 0) {
      calc.note("The dowels pull the pad down where the column lifts or turns it.");
      const held = heldBelow(dowels, forces, calc);
      return "because" in held ? held : { ...held, down };
    }
  }
  const pressure = calc.routine(footingContact, { width: B, length: L, P: N, Mx: M_x, My: M_y });
  if ("unstable" in pressure) return { because: `${pressure.unstable} under this factored load, and no dowels hold it down. Widen or thicken the pad, or hold it down by dowels` };
  return { pressure, down };
}

export const onRock: PadOn<RockPadInputs> = {
  id: (limit) => `rock.pad-${limit}`,
  link: "rock",
  words: "the pad on rock",
  applies: isPadOnRock,
  isOwn: isPadOnRock,
  read: readRockPad,
  acting: (inputs, demand, _purpose, calc) => actingBelow(inputs, demand, calc),
  isPoint: (inputs) => inputs.isPoint,
  purposes: ["holds"],
  formulas: [...dowelPullFormulas, ...heldBelowFormulas, padDown],
  net: "By the pressure of the rock and the pull of the dowels in the state their forces are found from, less the weight of the pad; soil on it is not counted, nor the weight of a pedestal.",
  top: {
    title: "Top of the pad on rock where its dowels pull",
    fails: "The dowels hold an edge of the pad down while the column lifts, and the pad cracks at its top.",
    seen: "A pad on ledge broken beside its column, its outer part still fast to the rock.",
    range: "The pull of the dowels and the weight of the pad bend it downward beside the column.",
  },
};
