/** Making elements. Text always becomes a text node, never markup. */

export type Child = Node | string | undefined | false | readonly Child[];

/** An attribute left undefined or false is not set; true sets it empty. */
export type Attributes = Readonly<Record<string, string | boolean | undefined>>;

const append = (parent: Node, child: Child): void => {
  if (child === undefined || child === false || child === "") return;
  if (typeof child === "string") parent.appendChild(document.createTextNode(child));
  else if (child instanceof Node) parent.appendChild(child);
  else for (const one of child) append(parent, one);
};

export const h = <K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Attributes = {}, ...children: Child[]): HTMLElementTagNameMap[K] => {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) element.setAttribute(name, value === true ? "" : value);
  }
  append(element, children);
  return element;
};

/** A term and what it is, for description lists; nothing where there is nothing to say. */
export const fact = (term: string, said: Child): Child => said !== undefined && said !== "" && said !== false && [h("dt", {}, term), h("dd", {}, said)];

interface Column {
  readonly head: string;
  readonly numeric?: boolean;
}

/** A table whose first cell of a row is its heading. */
export const table = (caption: string, columns: readonly Column[], rows: readonly { readonly attributes?: Attributes; readonly cells: readonly Child[] }[]): HTMLElement => {
  const style = (column: number) => (columns[column].numeric ? "number" : undefined);
  // A wide table scrolls by itself; the stop for the keyboard makes that possible without a mouse.
  return h(
    "div",
    { class: "wide", tabindex: "0", role: "region", "aria-label": caption },
    h(
      "table",
      {},
      h("caption", {}, caption),
      h("thead", {}, h("tr", {}, columns.map(({ head }, i) => h("th", { scope: "col", class: style(i) }, head)))),
      h(
        "tbody",
        {},
        rows.map(({ attributes, cells }) =>
          h("tr", attributes, cells.map((cell, i) => (i === 0 ? h("th", { scope: "row", class: style(i) }, cell) : h("td", { class: style(i) }, cell)))),
        ),
      ),
    ),
  );
};
