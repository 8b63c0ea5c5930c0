/**
 * Lets MathML of the server into the page: elements and attributes of presentation MathML and nothing else. A formula with
 * a part left out would be a wrong formula, so one with any other element is refused as a whole.
 */

/** What is read of a parsed node; the DOM's nodes have this shape. */
export interface MarkupNode {
  readonly nodeType: number;
  readonly nodeValue: string | null;
  readonly localName?: string;
  readonly attributes?: Iterable<{ readonly name: string; readonly value: string }>;
  readonly childNodes: Iterable<MarkupNode>;
}

export interface MathNode {
  readonly name: string;
  readonly attributes: readonly (readonly [string, string])[];
  readonly children: readonly (MathNode | string)[];
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(" "));

const elements = words(
  "math mrow mi mn mo ms mtext mspace mfrac msqrt mroot mstyle mpadded mphantom msub msup msubsup munder mover munderover mtable mtr mtd",
);
const attributes = words(
  "display displaystyle scriptlevel mathvariant stretchy symmetric fence separator form lspace rspace largeop movablelimits minsize maxsize " +
    "accent accentunder linethickness width height depth voffset columnspan rowspan dir",
);

const elementNode = 1;
const textNode = 3;

/** The node as a plain tree, or undefined where it holds anything that is not presentation MathML. */
export const cleaned = (node: MarkupNode): MathNode | undefined => {
  const name = node.localName;
  if (node.nodeType !== elementNode || name === undefined || !elements.has(name)) return undefined;
  const children: (MathNode | string)[] = [];
  for (const child of node.childNodes) {
    if (child.nodeType === textNode) {
      if (child.nodeValue?.trim()) children.push(child.nodeValue);
      continue;
    }
    const clean = cleaned(child);
    if (!clean) return undefined;
    children.push(clean);
  }
  const kept = [...(node.attributes ?? [])].filter((one) => attributes.has(one.name)).map((one) => [one.name, one.value] as const);
  return { name, attributes: kept, children };
};

/** As `cleaned`, for the root of a formula. */
export const cleanedFormula = (root: MarkupNode): MathNode | undefined => (root.localName === "math" ? cleaned(root) : undefined);
