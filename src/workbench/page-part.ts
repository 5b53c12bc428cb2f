/** The element of workbench.html with the id. */
export function pagePart(id: string): HTMLElement {
  const part = document.getElementById(id);
  if (!part) throw new Error(`workbench.html has no element "${id}"`);
  return part;
}
