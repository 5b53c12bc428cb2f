import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import { notChecked } from "./not-checked";
import type { CheckResult } from "../../fieldsheet/check-result";

/** What the check could not look at, so that nothing found is not taken for nothing wrong. */
export function notCheckedView(result: CheckResult): HTMLElement {
  const { grave, others, limits } = notChecked(result);
  const sentences = [
    grave.length > 0
      ? say("pane-not-checked-grave", { fields: grave.join(", ") })
      : say("pane-not-checked-nothing"),
    ...(limits ? [say("pane-not-compared")] : []),
  ];
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
    ...sentences.map((sentence) => element("p", {}, sentence)),
    ...(others.length > 0 ? [more] : []),
  );
}
