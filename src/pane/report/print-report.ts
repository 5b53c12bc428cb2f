import { element } from "../kit/element";
import { putPageFoot } from "./page-foot";

/** A report for paper, with what stands at the foot of its pages. */
export interface Printed {
  readonly paper: HTMLElement;
  readonly file: string;
  readonly sheet: string;
}

/**
 * Whatever stands on the page, paper gets the report alone, also from the browser's own command.
 *
 * @param made The report; or, where there is none, a sentence that says what to do.
 */
export function printInsteadOfPage(view: HTMLElement, made: () => Printed | string): void {
  let takeAway = () => {};
  addEventListener("beforeprint", () => {
    // A pane that was replaced by another has nothing to print.
    if (!view.isConnected) return;
    const printed = made();
    const isReport = typeof printed !== "string";
    const content = isReport ? printed.paper : element("p", {}, printed);
    const paper = element("div", { class: "fresh-paper" }, content);
    const withoutFoot = isReport ? putPageFoot(printed.file, printed.sheet) : () => {};
    document.body.append(paper);
    takeAway = () => {
      paper.remove();
      withoutFoot();
    };
  });
  addEventListener("afterprint", () => {
    takeAway();
    takeAway = () => {};
  });
}
