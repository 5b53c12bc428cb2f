import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import { notChecked } from "./not-checked";
import type { CheckResult } from "../../fieldsheet/check-result";

/** What the check could not look at, so that nothing found is not taken for nothing wrong. */
export function notCheckedView(result: CheckResult): HTMLElement {
  const { askedFor, others } = notChecked(result);
  const more = element(
    "details",
    {},
    element("summary", {}, say("pane-not-checked-others", { count: others.length })),
    element("p", {}, others.join(", ")),
  );
  return element(
    "section",
    { class: "not-checked", "aria-label": say("pane-not-checked") },
    element("h3", {}, say("pane-not-checked")),
    askedFor.length > 0
      ? element("ul", {}, ...askedFor.map((words) => element("li", {}, words)))
      : element("p", {}, say("pane-not-checked-nothing")),
    ...(others.length > 0 ? [more] : []),
  );
}
