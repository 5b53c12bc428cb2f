import type { CheckResult } from "../../fieldsheet/check-result";
import { notLookedAtSentence } from "../../fieldsheet/not-looked-at";
import { inWords, say } from "../../messages/pane-catalogue";
import { fieldName } from "../../reading/fields";
import { element } from "../kit/element";
import { fieldsNotThere } from "./not-checked";

/** What the check could not look at, so that nothing found is not taken for nothing wrong. */
export function notCheckedView(result: CheckResult): HTMLElement {
  const others = fieldsNotThere(result);
  const sentence = notLookedAtSentence(result.notLookedAt) ?? say("pane-not-checked-nothing");
  const more = element(
    "details",
    {},
    element("summary", {}, say("pane-not-checked-others", { count: others.length })),
    element("p", {}, inWords({ all: others.map(fieldName) })),
  );
  return element(
    "section",
    { class: "not-checked", "aria-label": say("pane-not-checked") },
    element("h3", {}, say("pane-not-checked")),
    element("p", {}, sentence),
    ...(others.length > 0 ? [more] : []),
  );
}
