/** The criteria of the place. */
import { choice, number, quantity, record } from "../fields.js";

export const site = record("The criteria of the place.", {
  "risk category": choice(["I", "II", "III", "IV"], "Risk category of the structure (ASCE 7-22 Table 1.5-1); the wind speed belongs to it."),
  "wind speed": quantity("speed", "Basic wind speed V: 3-second gust at 33 ft in open country, from the map of the risk category.", { units: ["mph", "m/s"] }),
  "service wind": choice(["10 years", "25 years", "50 years", "100 years"], "How often the wind returns, on average, under which the sway of the columns is judged.", {
    assumed: { text: "10 years", source: "common for sway where nothing brittle depends on it; ASCE 7-22 commentary CC.2.2 (from memory)" },
  }),
  "service wind speed": quantity("speed", "Wind speed of that return period from a map, in place of the one reckoned from the basic wind speed. Near a hurricane coast it is needed.", { units: ["mph", "m/s"] }),
  exposure: choice(["B", "C", "D"], "Exposure category: B built-up or wooded, C open, D along open water.", { also: { b: "B", c: "C", d: "D" } }),
  "topographic factor": number("Kzt of ASCE 7-22 Section 26.8, for a hill, ridge or escarpment.", {
    least: 1,
    most: 4,
    assumed: { text: "1.0", source: "flat ground; ASCE 7-22 Section 26.8.1" },
  }),
  hill: record("A ridge, an escarpment or a single hill the structure stands on, in place of a topographic factor.", {
    shape: choice(["ridge", "escarpment", "hill"], "A long ridge, an escarpment with flat ground behind its crest, or a single hill round in plan."),
    height: quantity("distance", "Height of the crest above the ground upwind.", { units: ["ft", "m"] }),
    "half length": quantity("distance", "Level distance upwind from the crest to where the ground is at half the height.", { units: ["ft", "m"] }),
    distance: quantity("distance", "Level distance from the crest to the structure.", { bounds: "zero or more", units: ["ft", "m"] }),
    side: choice(["upwind", "downwind"], "The side of the crest the structure stands on, seen by the wind that crosses the hill."),
  }),
  "ground elevation": quantity("distance", "Height of the ground above sea level, for the air density factor Ke.", {
    bounds: "any",
    assumed: { text: "0 ft", source: "Ke = 1.0 is always permitted; ASCE 7-22 Section 26.9" },
  }),
  "ground snow": quantity("pressure", "Ground snow load pg, from the map of the load standard: in ASCE 7-22 that of the risk category, at strength level. 0 psf where none falls.", { bounds: "zero or more" }),
  "snow exposure": choice(["fully exposed", "partially exposed", "sheltered"], "How the wind reaches the roof in winter: fully exposed with no shelter, sheltered tight among conifers or higher roofs, for the factor Ce.", {
    assumed: { text: "partially exposed", source: "roofs neither wholly without shelter nor tight among trees; ASCE 7-22 Table 7.3-1" },
  }),
  "winter wind": number("Winter wind parameter W2 of ASCE 7-22, from its map, for drifting snow.", { least: 0.1, most: 1 }),
  "frost depth": quantity("distance", "Depth the ground freezes to, from the building official.", { bounds: "zero or more", units: ["in", "mm"] }),
  "supplied design": record("What a kit or a supplied design was made for, by its papers, where it comes from elsewhere; it is held against this place.", {
    "wind speed": quantity("speed", "Basic wind speed it was designed for.", { units: ["mph", "m/s"] }),
    exposure: choice(["B", "C", "D"], "Exposure category it was designed for.", { also: { b: "B", c: "C", d: "D" } }),
    "ground snow": quantity("pressure", "Ground snow load it was designed for.", { bounds: "zero or more" }),
    "frost depth": quantity("distance", "Frost depth its foundations were drawn for.", { bounds: "zero or more", units: ["in", "mm"] }),
  }),
  "frost exception": choice(
    ["light frame", "other framing"],
    "The framing, where the exception from frost depth for small free-standing structures is taken: risk category I, eaves no higher than 10 ft, an area of no more than 600 ft² of light framing or 400 ft² of any other (IBC 2021 1809.5). The local official may have other limits.",
  ),
  "site class": choice(["A", "B", "BC", "C", "CD", "D", "DE", "E", "F"], "Site class of the ground for earthquakes (ASCE 7-22 Table 20.2-1), for the rule on ties between footings."),
  "seismic design category": choice(["A", "B", "C", "D", "E", "F"], "Seismic design category (ASCE 7-22 Section 11.6)."),
  "short-period acceleration": number("Design spectral acceleration SDS at short periods, as a part of gravity, from the map and the site class (ASCE 7-22 11.4).", { least: 0, most: 5 }),
  "one-second acceleration": number("Design spectral acceleration SD1 at one second, as a part of gravity.", { least: 0, most: 5 }),
  "mapped one-second acceleration": number("Mapped acceleration S1 at one second, as a part of gravity, for the least force near a great fault; asked for in categories D to F.", { least: 0, most: 5 }),
  air: choice(["dry", "humid", "salt spray", "pool"], "Air the steel stands in, for corrosion rules."),
});
