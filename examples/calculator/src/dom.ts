type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
type Child = Node | string | undefined;

const SVG = "http://www.w3.org/2000/svg";

function filled<E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false)
      element.setAttribute(name, value === true ? "" : String(value));
  }
  // Text goes in as text nodes only, so nothing a person types is read as markup.
  element.append(...children.filter((child) => child !== undefined));
  return element;
}

/** Makes an element of the page. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  return filled(document.createElement(tag), attributes, children);
}

/** Makes an element of a drawing. */
export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Child[]
): SVGElementTagNameMap[K] {
  return filled(document.createElementNS(SVG, tag) as SVGElementTagNameMap[K], attributes, children);
}

/** Returns an element that the page has. */
export function byId<E extends HTMLElement>(id: string): E {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no #${id}`);
  return found as E;
}
