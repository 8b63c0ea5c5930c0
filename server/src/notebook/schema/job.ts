/** The job itself: its name, the editions it is checked by, named values, what is left open and what is accepted. */
import { choice, list, named, number, record, text, yesNo } from "../fields.js";
import { practice } from "./shared.js";

export const project = record("What the job is called and how its results are shown.", {
  name: text("Name of the job, as it heads the summary."),
  stage: text("Stage the drawings are at, for the summary's heading."),
  units: choice(["US", "SI"], "Units results are shown in; inputs may mix both.", {
    assumed: { text: "US", source: "the codes named are US codes" },
  }),
  notes: text("Free text for the summary."),
  "near from": number("Demand over capacity from which a check that holds is called near.", {
    least: 0,
    most: 1,
    assumed: { text: "0.95", source: practice },
  }),
});

export const codes = record("The editions the job is checked by.", {
  building: choice(
    ["IBC 2018", "IBC 2021", "IBC 2024"],
    "Building code. Clauses are named by their numbers in IBC 2021; the presumptive soil values, pole equations and alternative combinations taken from it are the same in 2018 and 2024 (from memory).",
    { assumed: { text: "IBC 2024", source: "the edition that adopts ASCE 7-22, ACI 318-19 and AISC 360-22 (from memory)" } },
  ),
  loads: choice(["ASCE 7-10", "ASCE 7-16", "ASCE 7-22"], "Load standard; the wind speed and the snow load are those of its own maps.", { assumed: { text: "ASCE 7-22", source: "the newest edition covered; IBC 2024 adopts it, IBC 2018 and IBC 2021 adopt ASCE 7-16 (from memory)" } }),
  method: choice(
    ["LRFD", "ASD", "both"],
    "Method the steel of columns, base plates, welds and bolts is designed by (AISC 360): LRFD holds strength combinations against phi Rn, ASD holds the allowable-stress combinations of ASCE 7 2.4 against Rn/Omega, both does each and the worse counts. Strengths stated for the connection at a column top go by the level they are stated at; concrete, bearing on it and anchor rods have strength design only (ACI 318-19 gives no allowable stresses), and soil always takes allowable-stress combinations.",
    { assumed: { text: "LRFD", source: "AISC 360-22 B3 gives both methods; one level of loads then serves steel, concrete and anchors" } },
  ),
  "alternative combinations": yesNo(
    "Whether soil checks take the alternative basic allowable-stress combinations of IBC 2021 1605.2 in place of those of ASCE 7: two thirds of the least dead load against wind, and no rise of a soil pressure by a third beside them. Concrete and anchors always take strength combinations, steel those of its method and of ASCE 7.",
    { assumed: { text: "no", source: "the basic combinations of ASCE 7-22 2.4; the alternative ones only where asked for" } },
  ),
  overturning: choice(
    ["factored dead load", "1.5 on the net weight", "1.5 with uplift as a load"],
    "How the safety of a footing against overturning is counted: by combinations with the dead load reduced; or 1.5 by unreduced weight, where the uplift takes from the weight; or 1.5 where the uplift adds to the overturning moment. Never two of them at once.",
    { assumed: { text: "factored dead load", source: "ASCE 7-22 2.4.1, combination 7: 0.6D + 0.6W" } },
  ),
  concrete: choice(["ACI 318-14", "ACI 318-19", "ACI 318-25"], "Concrete and anchor standard. By ACI 318-14 the cast-in anchors, bearing and dowel steel are checked, by ACI 318-25 nothing is: its rules are not covered.", {
    assumed: { text: "ACI 318-19", source: "the edition IBC 2021 and IBC 2024 refer to" },
  }),
  steel: choice(["AISC 360-22"], "Steel standard. IBC 2018 and IBC 2021 adopt AISC 360-16, which is not covered.", { assumed: { text: "AISC 360-22", source: "the edition covered" } }),
});

export const given = named("Values named once and used in any field as `= clear height + 6 in`.", record("A named value.", {}));

export const confirm = list("What others must confirm; carried to the summary as open items.", text("One open item."));
export const accept = list(
  "Findings somebody decided to live with: kept, shown, never hidden.",
  record("One accepted finding.", {
    check: text("The check's title or id."),
    at: text("The support it is accepted at."),
    because: text("The reason, for the summary."),
  }),
);
