import type { ResultStep } from "../../acceptance/result-steps";
import type { WhatIf } from "../../acceptance/what-if";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import { shownChange, shownStep, typedText } from "../kit/shown-number";

/** The way from the reading to the result, one line a step. */
export function stepsView({ steps, test }: WhatIf, decimal: DecimalMark): HTMLElement {
  const heads = ["steps-step", "steps-change", "steps-value"] as const;
  return element(
    "table",
    { class: "steps" },
    element("caption", {}, say("steps-title")),
    element(
      "thead",
      {},
      element("tr", {}, ...heads.map((id) => element("th", { scope: "col" }, say(id)))),
    ),
    element(
      "tbody",
      {},
      ...steps.map((step) =>
        element(
          "tr",
          {},
          element("th", { scope: "row" }, stepName(step, test, decimal)),
          element("td", {}, step.name === "reading" ? "" : shownChange(step.change, decimal)),
          element("td", {}, shownStep(step.value, decimal)),
        ),
      ),
    ),
  );
}

function stepName(
  { name, interpolated }: ResultStep,
  { alcohol, cups = 0 }: WhatIf["test"],
  decimal: DecimalMark,
): string {
  if (name !== "alcohol") return say(`steps-${name}`, { cups });
  if (!alcohol?.amount) return say("steps-alcohol-none");
  const amount = typedText(alcohol.amount, decimal);
  return say(interpolated ? "steps-alcohol-between" : "steps-alcohol", { ...alcohol, amount });
}
