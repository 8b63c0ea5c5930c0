/** Part of a strength that a force uses up. */
import { formula } from "../../formula/declare.js";

export const usedPart = formula({
  id: "anchors.used-part",
  text: "r = S_u / S_d",
  source: "ACI 318-19 17.8, terms of Eq. 17.8.3",
  symbols: {
    r: { kind: "ratio", meaning: "part of the design strength that is used" },
    S_u: { kind: "force", meaning: "force by strength-level loads" },
    S_d: { kind: "force", meaning: "design strength" },
  },
});
