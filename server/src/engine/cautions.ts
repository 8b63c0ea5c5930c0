/** The cautions that go wherever results leave the editor. */
export const cautions: readonly string[] = [
  "Preliminary. Not for construction until a licensed design professional of the project's jurisdiction has reviewed and sealed it; the adopted code and the building official decide.",
  "The results rest on the inputs shown. Defaults are listed as assumptions; limit states listed as not covered have not been looked at.",
  "Soil and rock values are presumptive unless a report is named. Bearing, water, frost and rock are to be verified in the open hole before concrete is placed.",
  "Anchors, reinforcement, bearing surface and drilled dowels usually need special inspection; the building official says which apply.",
  "Brace the columns until the roof is fixed. Leveling nuts and rods carry erection loads only as far as the engineer allows; grout before the structure is loaded.",
];
