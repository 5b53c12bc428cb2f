import { element } from "./element";

/** One page of the pane. */
export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly view: HTMLElement;
  /** Told when the page comes into sight and when it goes. */
  readonly onShown?: (shown: boolean) => void;
}

/**
 * Pages of which one is in sight. Left and right arrow, Home and End move between them, and each page
 * is found again where it was left.
 *
 * @param onChange Told when another page comes into sight.
 */
export function tabs(
  label: string,
  pages: readonly Tab[],
  onChange: () => void = () => {},
): { readonly list: HTMLElement; readonly panels: readonly HTMLElement[] } {
  const buttons = pages.map(({ id, label: name }) =>
    element("button", { type: "button", role: "tab", id: `${id}-tab`, "aria-controls": id }, name),
  );
  const panels = pages.map(({ id, view }) =>
    element("div", { role: "tabpanel", id, "aria-labelledby": `${id}-tab`, hidden: true }, view),
  );
  const list = element("div", { role: "tablist", class: "tabs", "aria-label": label }, ...buttons);
  const scrolled = pages.map(() => 0);
  let current = -1;
  const show = (index: number) => {
    if (index === current) return;
    const scroller = scrollerOf(list);
    scrolled[current] = scroller?.scrollTop ?? 0;
    pages[current]?.onShown?.(false);
    current = index;
    buttons.forEach((each, i) => {
      each.setAttribute("aria-selected", String(i === index));
      each.tabIndex = i === index ? 0 : -1;
      panels[i]!.hidden = i !== index;
    });
    pages[index]!.onShown?.(true);
    if (scroller) scroller.scrollTop = scrolled[index]!;
    onChange();
  };
  buttons.forEach((each, i) => each.addEventListener("click", () => show(i)));
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

/** What scrolls when a page is longer than there is room for. */
function scrollerOf(part: Element): Element | null {
  for (let each = part.parentElement; each; each = each.parentElement)
    if (/auto|scroll/.test(getComputedStyle(each).overflowY)) return each;
  return document.scrollingElement;
}
