/**
 * Changes a tree into a newly made one in place. What stays the same keeps its nodes, and with them focus, selection,
 * scrolling and whether a part is open. Elements with `data-key` are matched by it, the others by position and name. One with
 * `data-same` stands for the old one as it is.
 */

/** Held by the reader, not by the data. */
const kept = new Set(["open"]);

const keyOf = (node: Node): string | undefined => (node instanceof Element ? (node.getAttribute("data-key") ?? undefined) : undefined);

const sameKind = (a: Node, b: Node): boolean => a.nodeType === b.nodeType && a.nodeName === b.nodeName && keyOf(a) === keyOf(b);

const morphAttributes = (from: Element, to: Element): void => {
  for (const { name } of [...from.attributes]) if (!kept.has(name) && !to.hasAttribute(name)) from.removeAttribute(name);
  for (const { name, value } of to.attributes) if (!kept.has(name) && from.getAttribute(name) !== value) from.setAttribute(name, value);
};

const morphNode = (from: Node, to: Node): void => {
  if (from instanceof Element && to instanceof Element) {
    if (to.hasAttribute("data-same")) return;
    morphAttributes(from, to);
    morphChildren(from, to);
  } else if (from.nodeValue !== to.nodeValue) {
    from.nodeValue = to.nodeValue;
  }
};

export const morphChildren = (from: Element, to: Element): void => {
  const wantedKeys = new Set([...to.childNodes].map(keyOf));
  const keyed = new Map<string, Node>();
  for (const node of [...from.childNodes]) {
    const key = keyOf(node);
    if (key === undefined) continue;
    if (wantedKeys.has(key)) keyed.set(key, node);
    else node.remove();
  }
  let at: ChildNode | null = from.firstChild;
  for (const wanted of [...to.childNodes]) {
    const key = keyOf(wanted);
    const match = key === undefined ? at : keyed.get(key);
    if (match && sameKind(match, wanted)) {
      if (match === at) at = at.nextSibling;
      else from.insertBefore(match, at);
      morphNode(match, wanted);
    } else {
      from.insertBefore(wanted, at);
      // A node without a key that is of another kind has been replaced.
      if (at && key === undefined && keyOf(at) === undefined) {
        const replaced = at;
        at = at.nextSibling;
        replaced.remove();
      }
    }
  }
  while (at) {
    const next: ChildNode | null = at.nextSibling;
    at.remove();
    at = next;
  }
};
