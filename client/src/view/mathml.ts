/**
 * MathML of the server: elements and attributes of presentation MathML and nothing else. A formula with a part left out would be a wrong
 * formula, so one with any other element is refused as a whole.
 */
import { cleanedRoot, words, type CleanNode, type MarkupNode, type Vocabulary } from "./markup.js";

export type { MarkupNode };
export type MathNode = CleanNode;

const presentation: Vocabulary = {
  root: "math",
  elements: words("math mrow mi mn mo ms mtext mspace mfrac msqrt mroot mstyle mpadded mphantom msub msup msubsup munder mover munderover mtable mtr mtd"),
  attributes: words(
    "display displaystyle scriptlevel mathvariant stretchy symmetric fence separator form lspace rspace largeop movablelimits minsize maxsize " +
      "accent accentunder linethickness width height depth voffset columnspan rowspan dir",
  ),
};

/** The formula as a plain tree, or undefined where it holds anything that is not presentation MathML. */
export const cleanedFormula = (root: MarkupNode): MathNode | undefined => cleanedRoot(root, presentation);
