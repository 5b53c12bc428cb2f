import { element } from "./element";
import { itemHeights } from "./item-heights";

/** Height of an item before it was seen, px. */
const GUESSED_HEIGHT = 72;
/** So much above and below what is seen is kept ready, px. */
const MARGIN = 200;

/** What a list shows. */
export interface ListItems {
  readonly label: string;
  readonly count: number;
  /** The content of an item. */
  item(index: number): Node;
  /** The item was clicked, or Enter pressed on it. */
  open(index: number): void;
}

/** A list on the page. */
export interface VirtualList {
  readonly view: HTMLElement;
  /** @param stay Whether the place in the list is kept, as after a second check. */
  show(items: ListItems, stay?: boolean): void;
}

/**
 * A list of any length in which only the items in sight are in the page. Items may differ in height:
 * each is measured when it first comes into sight. Arrow keys, Page Up and Down, Home and End move.
 */
export function virtualList(id: string): VirtualList {
  const inner = element("div", { class: "list-inner", role: "presentation" });
  const view = element("div", { class: "list", role: "listbox", tabindex: 0, id }, inner);
  const inPage = new Map<number, HTMLElement>();
  let items: ListItems = { label: "", count: 0, item: () => element("span"), open() {} };
  let heights = itemHeights(0, GUESSED_HEIGHT);
  let active = 0;

  function place(): void {
    inner.style.height = `${heights.topOf(items.count)}px`;
    for (const [i, node] of inPage) node.style.transform = `translateY(${heights.topOf(i)}px)`;
  }

  function optionFor(index: number): HTMLElement {
    const node = element(
      "div",
      {
        role: "option",
        class: "list-item",
        id: `${id}-${index}`,
        "aria-setsize": items.count,
        "aria-posinset": index + 1,
      },
      items.item(index),
    );
    node.addEventListener("click", () => {
      moveTo(index);
      items.open(index);
    });
    return node;
  }

  /** Takes items out of sight off the page and puts those in sight there; tells whether any came. */
  function exchange(): boolean {
    const first = heights.indexAt(view.scrollTop - MARGIN);
    const last = heights.indexAt(view.scrollTop + view.clientHeight + MARGIN);
    for (const [i, node] of inPage) {
      if (i >= first && i <= last) continue;
      node.remove();
      inPage.delete(i);
    }
    const added = new Map<number, HTMLElement>();
    for (let i = first; i <= last && i < items.count; i++)
      if (!inPage.has(i)) added.set(i, optionFor(i));
    inner.append(...added.values());
    for (const [i, node] of added) inPage.set(i, node);

    const seen = heights.indexAt(view.scrollTop);
    const before = heights.topOf(seen);
    heights.measured(
      new Map([...added].map(([i, node]) => [i, node.offsetHeight || GUESSED_HEIGHT])),
    );
    place();
    // What is in sight stays where it is when items above turn out higher or lower than guessed.
    const moved = heights.topOf(seen) - before;
    if (moved !== 0) view.scrollTop += moved;
    return added.size > 0;
  }

  function render(): void {
    for (let pass = 0; pass < 4 && exchange(); pass++);
    for (const [i, node] of inPage) node.setAttribute("aria-selected", String(i === active));
    if (inPage.has(active)) view.setAttribute("aria-activedescendant", `${id}-${active}`);
    else view.removeAttribute("aria-activedescendant");
  }

  function moveTo(index: number): void {
    active = Math.max(0, Math.min(items.count - 1, index));
    // The second time the height of the item is known.
    for (let pass = 0; pass < 2 && items.count > 0; pass++) {
      const [top, bottom] = [heights.topOf(active), heights.topOf(active + 1)];
      if (top < view.scrollTop) view.scrollTop = top;
      else if (bottom > view.scrollTop + view.clientHeight)
        view.scrollTop = bottom - view.clientHeight;
      render();
    }
  }

  function reset(): void {
    for (const node of inPage.values()) node.remove();
    inPage.clear();
    heights = itemHeights(items.count, GUESSED_HEIGHT);
    place();
    render();
  }

  view.addEventListener("keydown", (event) => {
    if (items.count === 0) return;
    const step = stepOf(event.key, Math.max(1, Math.floor(view.clientHeight / GUESSED_HEIGHT)));
    if (step !== undefined) moveTo(active + step);
    else if (event.key === "Enter") items.open(active);
    else return;
    event.preventDefault();
  });
  let asked = false;
  view.addEventListener("scroll", () => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      render();
    });
  });
  let width = 0;
  new ResizeObserver(() => {
    if (view.clientWidth !== width) reset();
    width = view.clientWidth;
    if (width > 0) moveTo(active);
  }).observe(view);

  return {
    view,
    show(next, stay = false) {
      const scrolled = stay ? view.scrollTop : 0;
      items = next;
      active = stay ? Math.max(0, Math.min(active, items.count - 1)) : 0;
      view.setAttribute("aria-label", items.label);
      reset();
      view.scrollTop = scrolled;
      render();
    },
  };
}

/** How far a key moves in a list; `undefined` for any other key. */
function stepOf(key: string, page: number): number | undefined {
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: 1,
    ArrowUp: -1,
    PageDown: page,
    PageUp: -page,
    Home: -Infinity,
    End: Infinity,
  };
  return steps[key];
}
