import { pagePart } from "./page-part";

/** A part of the page that the keyboard goes to as a whole. */
interface Region {
  readonly name: string;
  readonly part: HTMLElement;
  /** What has the focus there first. */
  readonly first: string;
}

/** What takes the keys of the spreadsheet: an editor that is laid over its picture of cells. */
const KEYS_OF_SHEET = "#__editor___INTERNAL_EDITOR__DOCS_NORMAL";

/**
 * Lets F6 lead from one part of the page to the next, and Shift with F6 back, since the spreadsheet
 * keeps Tab and the arrow keys to itself. Each part is found again where it was left.
 */
export function connectRegions(): void {
  const regions: readonly Region[] = [
    { name: "files", part: pagePart("heading"), first: "button" },
    { name: "sheet", part: pagePart("grid"), first: KEYS_OF_SHEET },
    { name: "pane", part: pagePart("pane"), first: ".main-button" },
  ];
  const left = new Map<Region, HTMLElement>();
  const regionOf = (node: EventTarget | null) =>
    regions.find(({ part }) => node instanceof Node && part.contains(node));

  function enter(region: Region): void {
    const before = left.get(region);
    const keep = before?.isConnected && before.offsetParent !== null ? before : undefined;
    (keep ?? region.part.querySelector<HTMLElement>(region.first) ?? region.part).focus();
    region.part.scrollIntoView({ block: "nearest" });
  }

  addEventListener("focusin", ({ target }) => {
    const region = regionOf(target);
    if (region && region.name !== "sheet") left.set(region, target as HTMLElement);
  });
  // Before the spreadsheet hears of it.
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
      const at = regions.indexOf(regionOf(document.activeElement)!);
      const next = event.shiftKey ? at - 1 + (at < 0 ? 1 : 0) : at + 1;
      enter(regions.at(next % regions.length)!);
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    { capture: true },
  );
  for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-region]"))
    link.addEventListener("click", (event) => {
      event.preventDefault();
      enter(regions.find(({ name }) => name === link.dataset.region)!);
    });
}
