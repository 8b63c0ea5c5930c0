/** Lets markup of the server into the page: named elements and attributes and nothing else; with any other element it is refused as a whole. */

/** What is read of a parsed node; the DOM's nodes have this shape. */
export interface MarkupNode {
  readonly nodeType: number;
  readonly nodeValue: string | null;
  readonly localName?: string;
  readonly attributes?: Iterable<{ readonly name: string; readonly value: string }>;
  readonly childNodes: Iterable<MarkupNode>;
}

export interface CleanNode {
  readonly name: string;
  readonly attributes: readonly (readonly [string, string])[];
  readonly children: readonly (CleanNode | string)[];
}

export interface Vocabulary {
  readonly root: string;
  readonly elements: ReadonlySet<string>;
  readonly attributes: ReadonlySet<string>;
}

export const words = (text: string): ReadonlySet<string> => new Set(text.split(" "));

const elementNode = 1;
const textNode = 3;

const cleaned = (node: MarkupNode, vocabulary: Vocabulary): CleanNode | undefined => {
  const name = node.localName;
  if (node.nodeType !== elementNode || name === undefined || !vocabulary.elements.has(name)) return undefined;
  const children: (CleanNode | string)[] = [];
  for (const child of node.childNodes) {
    if (child.nodeType === textNode) {
      if (child.nodeValue?.trim()) children.push(child.nodeValue);
      continue;
    }
    const clean = cleaned(child, vocabulary);
    if (!clean) return undefined;
    children.push(clean);
  }
  const kept = [...(node.attributes ?? [])].filter((one) => vocabulary.attributes.has(one.name)).map((one) => [one.name, one.value] as const);
  return { name, attributes: kept, children };
};

/** The root as a plain tree, or undefined where it holds anything the vocabulary does not name. */
export const cleanedRoot = (root: MarkupNode, vocabulary: Vocabulary): CleanNode | undefined => (root.localName === vocabulary.root ? cleaned(root, vocabulary) : undefined);
