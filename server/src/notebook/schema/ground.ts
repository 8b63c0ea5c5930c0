/** The kinds of ground the supports stand on. */
import { choice, list, named, number, quantity, record, text, yesNo } from "../fields.js";

const resistance = {
  "strain at half strength": number("Strain of the clay at half its undrained strength, from the report: 0.02 soft, 0.01 medium, 0.005 stiff are usual (from memory).", { least: 0.001, most: 0.05 }),
  "subgrade modulus": quantity("subgradeModulus", "Modulus of horizontal subgrade reaction where it is the same at every depth, as of stiff clay, from the report.", { units: ["pci"] }),
  "modulus growth": quantity("subgradeModulus", "Growth with depth of the soil's sideways modulus, as of sand, from the report: n_h of springs, and with a friction angle the initial modulus of the p-y curves.", { units: ["pci"] }),
  "rock strength": quantity("stress", "Unconfined compressive strength of weak rock beside a pier, from cores.", { units: ["psi", "MPa"] }),
  rqd: number("Rock quality designation of the cores, percent.", { least: 0, most: 100 }),
  "rock strain": number("Strain constant k_rm of the p-y curve of weak rock, 0.00005 to 0.0005, from the report.", { least: 0.00001, most: 0.001 }),
};

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
    "side resistance by": choice(["value", "soil strength"], "What the side resistance of a pier is taken from: the value stated or presumptive, or the strength of the soil by the alpha method in clay (its cohesion) and the beta method in sand (its blow count).", {
      assumed: { text: "value", source: "the building code's route; IBC 2021 1810.3.3.1.4" },
    }),
    "uplift safety": number("Factor of safety on side resistance found from the strength of the soil. Left out: 3, and 2 under wind or earthquake (IBC 2021 1810.3.3.1.5); where pull tests are made, 2 and 1.5.", { least: 1.5, most: 6 }),
    "blow count": number("Blow count N60 of the standard penetration test at 60 % energy in sand, from the report.", { least: 1, most: 100 }),
    "adfreeze stress": quantity("stress", "Stress with which frozen ground grips the side of a pier or pedestal, from the geotechnical engineer; it has no default, and without it the grip of frost is not checked.", { units: ["psi", "kPa"] }),
    "unit weight": quantity("unitWeight", "Unit weight of the soil or rock."),
    "water table": quantity("distance", "Depth of the water below grade.", { bounds: "zero or more" }),
    condition: choice(["sound", "weathered", "fractured"], "Condition of the rock at the bearing surface."),
    drained: yesNo("Whether water drains from the rock surface under the footing."),
    "weathered depth": quantity("distance", "Thickness of weathered or broken rock on top of the sound rock, below the footing; the depth of dowels counts from under it.", { bounds: "zero or more", units: ["in", "ft", "mm"] }),
    "rock slope": quantity("slope", "Slope of the rock surface under the footing; left out, it is level.", { bounds: "zero or more" }),
    surface: choice(["as found", "roughened", "benched"], "The rock surface as the footing is cast on it: cleaned as it was found, roughened by 1/4 in, or cut into level benches.", { assumed: { text: "as found", source: "the safe side; common practice, no source" } }),
    cushion: quantity("distance", "Thickness of compacted sand or gravel laid on rock that was cut down, so that a support on it settles like those on soil.", { bounds: "zero or more", units: ["in", "mm"] }),
    "dowel bond": quantity("stress", "Ultimate bond between grout or adhesive and rock. It has no default: ask the geotechnical engineer and prove it by pull tests."),
    "bond safety": number("Factor of safety on rock bond and on the rock cone.", { least: 1.5, most: 5, assumed: { text: "3", source: "from memory: working factor 2 to 3 for rock anchors" } }),
    friction: number("Coefficient of friction between the footing and the ground, an allowable value, in place of the presumptive one of IBC 2021 Table 1806.2.", { least: 0, most: 1 }),
    "elastic modulus": quantity("pressure", "Modulus of elasticity of the soil under a pad, from the report, for its settlement.", { units: ["ksf", "MPa"] }),
    "poisson ratio": number("Poisson's ratio of the soil, from the report: 0.3 of sand and 0.5 of wet clay under quick load are usual (from memory).", { least: 0, most: 0.5 }),
    "friction angle": quantity("angle", "Angle of internal friction of the soil, from the report, for the bearing capacity equation.", { bounds: "zero or more", units: ["deg"] }),
    cohesion: quantity("pressure", "Cohesion of the soil, from the report; without a friction angle the undrained shear strength of clay.", { bounds: "zero or more" }),
    ...resistance,
    "lateral safety": number("Factor of safety on the soil's lateral strength beside a pier (Broms), 2 to 3 as a rule; it has no default.", { least: 1.5, most: 6 }),
    layers: list(
      "Layers below, from the top down, where the ground changes along a pier; the entry itself is the top layer.",
      record("One layer.", {
        from: quantity("distance", "Depth of its top below grade."),
        "unit weight": quantity("unitWeight", "Unit weight of the layer."),
        "friction angle": quantity("angle", "Angle of internal friction of the layer.", { bounds: "zero or more", units: ["deg"] }),
        cohesion: quantity("pressure", "Cohesion of the layer; without a friction angle the undrained shear strength of clay.", { bounds: "zero or more" }),
        "blow count": number("Blow count N60 of the layer, of sand.", { least: 1, most: 100 }),
        ...resistance,
      }),
    ),
    "bearing safety": number("Factor of safety on the bearing capacity equation; it has no default: the report states it.", { least: 1.5, most: 6 }),
    "cone angle": quantity("angle", "Half apex angle of the cone that is lifted: of rock 45° where sound, 30° where fractured; of soil above a footing 20° to 30° from the vertical (from memory).", { units: ["deg"] }),
  }),
);
