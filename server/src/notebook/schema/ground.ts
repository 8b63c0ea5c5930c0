/** The kinds of ground the supports stand on. */
import { choice, named, number, quantity, record, text, yesNo } from "../fields.js";

export const ground = named(
  "The kinds of ground the supports stand on.",
  record("One kind of ground.", {
    kind: choice(["soil", "rock"], "Soil or rock."),
    class: text("Soil symbol (SM, GP, CL ...) or rock class (crystalline bedrock, sedimentary rock), read against IBC 2021 Table 1806.2."),
    source: text("Where the values come from, for example the report's number; carried to the summary."),
    bearing: quantity("pressure", "Allowable bearing pressure."),
    "lateral bearing": quantity("pressurePerDepth", "Allowable lateral bearing pressure per foot of depth.", { units: ["psf/ft", "kPa/m"] }),
    "isolated poles": yesNo("Whether half an inch of movement at grade does no harm, so that the lateral bearing may be doubled (IBC 2021 1806.3.4).", {
      assumed: { text: "no", source: "IBC 2021 1806.3.4 allows the doubling only where 1/2 in. of movement does no harm" },
    }),
    "side resistance": quantity("pressure", "Allowable side resistance of a pier in uplift. Left out: one sixth of the presumptive bearing, at most 500 psf (IBC 2021 1810.3.3.1.4)."),
    "unit weight": quantity("unitWeight", "Unit weight of the soil or rock."),
    "water table": quantity("distance", "Depth of the water below grade.", { bounds: "zero or more" }),
    condition: choice(["sound", "weathered", "fractured"], "Condition of the rock at the bearing surface."),
    drained: yesNo("Whether water drains from the rock surface under the footing."),
    "dowel bond": quantity("stress", "Ultimate bond between grout or adhesive and rock. It has no default: ask the geotechnical engineer and prove it by pull tests."),
    "bond safety": number("Factor of safety on rock bond and on the rock cone.", { least: 1.5, most: 5, assumed: { text: "3", source: "from memory: working factor 2 to 3 for rock anchors" } }),
    friction: number("Coefficient of friction between the footing and the ground, an allowable value, in place of the presumptive one of IBC 2021 Table 1806.2.", { least: 0, most: 1 }),
    "friction angle": quantity("angle", "Angle of internal friction of the soil, from the report, for the bearing capacity equation.", { bounds: "zero or more", units: ["deg"] }),
    cohesion: quantity("pressure", "Cohesion of the soil, from the report, for the bearing capacity equation.", { bounds: "zero or more" }),
    "bearing safety": number("Factor of safety on the bearing capacity equation; it has no default: the report states it.", { least: 1.5, most: 6 }),
    "cone angle": quantity("angle", "Half apex angle of the cone that is lifted: of rock 45° where sound, 30° where fractured; of soil above a footing 20° to 30° from the vertical (from memory).", { units: ["deg"] }),
  }),
);
