import { say } from "../../messages/pane-catalogue";
import { cautionSentences } from "./caution-sentences";
import { element } from "./element";

/** What everyone at the test must know, and what the results do not replace. */
export function cautionsView(id: string): HTMLElement {
  return element(
    "section",
    { class: "cautions", "aria-labelledby": id },
    element("h2", { id }, say("pane-cautions")),
    element("ul", {}, ...cautionSentences().map((sentence) => element("li", {}, sentence))),
  );
}
