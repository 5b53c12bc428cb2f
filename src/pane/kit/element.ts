type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/**
 * Makes an element of the page.
 *
 * @param tag Such as "button".
 * @param attributes `true` sets an attribute without a value, `false` and `undefined` leave it out.
 * @param children Elements, and texts, which are never read as markup.
 */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    made.setAttribute(name, value === true ? "" : String(value));
  }
  made.append(...children);
  return made;
}

/** A button with a label. */
export function button(label: string, onClick: () => void, look = ""): HTMLButtonElement {
  const made = element("button", { type: "button", class: look || undefined }, label);
  made.addEventListener("click", onClick);
  return made;
}
