import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";
import { report } from "./report";

/** Findings that are shown before the report is printed. */
const SHOWN_LINES = 200;

/** The report of a check, and the button that prints it. */
export function reportView(store: PaneStore): {
  readonly view: HTMLElement;
  onShown(shown: boolean): void;
} {
  const nothing = element("p", { class: "hint" }, say("report-check-first"));
  const paper = element("div");
  const print = button(say("report-print"), () => window.print(), "main-button");
  let shown = false;
  const show = () => {
    const { checked, review } = store.get();
    nothing.hidden = checked !== undefined;
    print.hidden = checked === undefined;
    if (shown && checked) paper.replaceChildren(report(checked, review, SHOWN_LINES));
  };
  store.watch(({ checked }) => checked, show);
  store.watch(({ review }) => review, show);
  const hint = element("p", { class: "hint" }, say("report-print-hint"));
  const view = element("div", {}, nothing, print, hint, paper);
  printInsteadOfPage(store, view);
  return {
    view,
    onShown(now) {
      shown = now;
      show();
    },
  };
}

/** Whatever stands on the page, paper gets the report alone, also from the browser's own command. */
function printInsteadOfPage(store: PaneStore, view: HTMLElement): void {
  let paper: HTMLElement | undefined;
  addEventListener("beforeprint", () => {
    const { checked, review } = store.get();
    // A pane that was replaced by another has nothing to print.
    if (!view.isConnected) return;
    const content = checked ? report(checked, review) : element("p", {}, say("report-check-first"));
    paper = element("div", { class: "fresh-paper" }, content);
    document.body.append(paper);
  });
  addEventListener("afterprint", () => {
    paper?.remove();
    paper = undefined;
  });
}
