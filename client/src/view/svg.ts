/** Drawings of the server: lines and words of SVG and nothing else. */
import { cleanedRoot, words, type CleanNode, type MarkupNode, type Vocabulary } from "./markup.js";

export const strokes: Vocabulary = {
  root: "svg",
  elements: words("svg g line rect path polygon circle text"),
  attributes: words(
    "viewBox width height role aria-label x y x1 y1 x2 y2 cx cy r d points fill stroke stroke-width stroke-dasharray font-size font-family text-anchor",
  ),
};

/** The drawing as a plain tree, or undefined where it holds anything else. */
export const cleanedDrawing = (root: MarkupNode): CleanNode | undefined => cleanedRoot(root, strokes);
