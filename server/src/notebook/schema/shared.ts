/** Parts of the format that several sections use. */
import { choice, named, quantity, record, text } from "../fields.js";

export const practice = "common practice, no source";

const forcesFields = {
  down: quantity("force", "Force pressing down on the support.", { bounds: "zero or more", units: ["kip", "lb", "kN"] }),
  up: quantity("force", "Force lifting the support.", { bounds: "zero or more", units: ["kip", "lb", "kN"] }),
  "shear x": quantity("force", "Horizontal force on the support toward the east.", { bounds: "any", units: ["kip", "lb", "kN"] }),
  "shear y": quantity("force", "Horizontal force on the support toward the north.", { bounds: "any", units: ["kip", "lb", "kN"] }),
  "moment x": quantity("moment", "Moment about the east axis, right-handed: a push to the north gives a negative one.", { bounds: "any", units: ["kip-ft", "kN-m"] }),
  "moment y": quantity("moment", "Moment about the north axis, right-handed: a push to the east gives a positive one.", { bounds: "any", units: ["kip-ft", "kN-m"] }),
  twist: quantity("moment", "Moment about the column's own axis, counterclockwise seen from above. The column and the rods of its base are checked for it, the foundation below is not.", { bounds: "any", units: ["kip-ft", "kN-m"] }),
};

export const reactions = named(
  "Unfactored reactions by load case, each named `dead`, `roof live`, `snow`, `wind ...` or `earthquake ...`, at the column base. Every wind entry is its own case.",
  record("The reaction of one load case at the column base.", forcesFields),
);
export const combined = named(
  "Reactions already combined, each under a name of its own.",
  record("One combined reaction at the column base.", { level: choice(["strength", "allowable"], "Load level the numbers are at."), ...forcesFields }),
);

export const noted = text("What was seen, when and by whom; carried to the summary.");
