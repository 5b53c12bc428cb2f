import { say } from "../../messages/pane-catalogue";
import { cautionMessages } from "../../messages/english/cautions";
import { element } from "./element";

/** What everyone at the test must know, and what the results do not replace. */
export function cautionsView(id: string): HTMLElement {
  return element(
    "section",
    { class: "cautions", "aria-labelledby": id },
    element("h2", { id }, say("pane-cautions")),
    element(
      "ul",
      {},
      ...Object.values(cautionMessages).map((sentence) => element("li", {}, sentence)),
    ),
  );
}
