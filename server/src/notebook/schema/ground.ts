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
    "cone angle": quantity("angle", "Half apex angle of the rock cone: 45° in sound rock, 30° in fractured rock.", { units: ["deg"] }),
  }),
);
