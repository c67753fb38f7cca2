type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
type Child = Node | string | undefined;

/** Makes an element of the page. Text goes in as text nodes only, so nothing a person types is read as markup. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined && value !== false)
      element.setAttribute(name, value === true ? "" : String(value));
  element.append(...children.filter((child) => child !== undefined));
  return element;
}

/** Returns an element that the page has. */
export function byId<E extends HTMLElement>(id: string): E {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no #${id}`);
  return found as E;
}

/** A button that does something. */
export function button(text: string, onPress: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const built = el("button", { type: "button", ...attributes }, text);
  built.addEventListener("click", onPress);
  return built;
}

/** A field with its label, a hint, and a place for what is wrong with it. */
export function textField(
  id: string,
  label: string,
  value: string,
  { hint, onInput }: { readonly hint?: string | undefined; readonly onInput?: (value: string) => void } = {},
): HTMLDivElement {
  const described = [hint === undefined ? "" : `${id}-hint`, `${id}-fault`].filter(Boolean).join(" ");
  const input = el("input", { type: "text", id, value, "aria-describedby": described });
  if (onInput !== undefined) input.addEventListener("input", () => onInput(input.value));
  return el(
    "div",
    { class: "field" },
    el("label", { for: id }, label),
    hint === undefined ? undefined : el("p", { class: "hint", id: `${id}-hint` }, hint),
    input,
    el("p", { class: "fault", id: `${id}-fault` }),
  );
}

/** Radio buttons for one choice. */
export function radios<T extends string>(
  name: string,
  legend: string,
  choices: Readonly<Record<T, string>>,
  chosen: T,
  onChange: (choice: T) => void,
): HTMLFieldSetElement {
  const options = (Object.entries(choices) as [T, string][]).map(([value, text]) => {
    const input = el("input", { type: "radio", name, value, checked: value === chosen });
    input.addEventListener("change", () => onChange(value));
    return el("label", {}, input, text);
  });
  return el("fieldset", { class: "choices" }, el("legend", {}, legend), ...options);
}

/** A box to tick. */
export function tickBox(
  text: string,
  isTicked: boolean,
  onChange: (isTicked: boolean) => void,
  attributes: Attributes = {},
): HTMLLabelElement {
  const input = el("input", { type: "checkbox", checked: isTicked, ...attributes });
  input.addEventListener("change", () => onChange(input.checked));
  return el("label", {}, input, text);
}

/** Shows beside a field what is wrong with it; with no text, that nothing is. */
export function showFault(id: string, message = ""): void {
  byId(`${id}-fault`).textContent = message;
  const field = byId(id);
  if (field instanceof HTMLInputElement) field.ariaInvalid = message === "" ? null : "true";
}
