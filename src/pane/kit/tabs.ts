import { element } from "./element";

/** One page of the pane. */
export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly view: HTMLElement;
  /** Told when the page comes into sight and when it goes. */
  readonly onShown?: (shown: boolean) => void;
}

/** Pages of which one is in sight. Left and right arrow, Home and End move between them. */
export function tabs(
  label: string,
  pages: readonly Tab[],
): { readonly list: HTMLElement; readonly panels: readonly HTMLElement[] } {
  const buttons = pages.map(({ id, label: name }) =>
    element("button", { type: "button", role: "tab", id: `${id}-tab`, "aria-controls": id }, name),
  );
  const panels = pages.map(({ id, view }) =>
    element("div", { role: "tabpanel", id, "aria-labelledby": `${id}-tab`, hidden: true }, view),
  );
  let current = -1;
  const show = (index: number) => {
    if (index === current) return;
    pages[current]?.onShown?.(false);
    current = index;
    buttons.forEach((each, i) => {
      each.setAttribute("aria-selected", String(i === index));
      each.tabIndex = i === index ? 0 : -1;
      panels[i]!.hidden = i !== index;
    });
    pages[index]!.onShown?.(true);
  };
  buttons.forEach((each, i) => each.addEventListener("click", () => show(i)));
  const list = element("div", { role: "tablist", class: "tabs", "aria-label": label }, ...buttons);
  list.addEventListener("keydown", (event) => {
    const last = pages.length - 1;
    const goal = {
      ArrowRight: current === last ? 0 : current + 1,
      ArrowLeft: current === 0 ? last : current - 1,
      Home: 0,
      End: last,
    }[event.key];
    if (goal === undefined) return;
    event.preventDefault();
    show(goal);
    buttons[goal]!.focus();
  });
  show(0);
  return { list, panels };
}
