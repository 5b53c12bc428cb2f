type Attributes = Readonly<Record<string, string | number | undefined>>;

/**
 * Makes an element of a drawing.
 *
 * @param attributes What is `undefined` is left out.
 * @param children Elements, and texts, which are never read as markup.
 */
export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): SVGElementTagNameMap[K] {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined) made.setAttribute(name, String(value));
  made.append(...children);
  return made;
}

/** A way through points, as SVG writes it. */
export function wayThrough(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("");
}
