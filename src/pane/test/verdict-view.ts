import type { AcceptanceDecision } from "../../acceptance/check-test";
import type { WhatIf } from "../../acceptance/what-if";
import type { DecimalMark } from "../../measure/number-from-cell";
import { phrase, say } from "../../messages/pane-catalogue";
import { badge } from "../kit/badge";
import { element } from "../kit/element";
import { shownChance, shownDeviation, shownPercent } from "../kit/shown-number";

/**
 * The result with its verdict, margin and chance, and what the check-test rule asks for next.
 *
 * @param decides Whether the result decides something; that of a void or incomplete test does not.
 */
export function verdictView(looked: WhatIf, decimal: DecimalMark, decides: boolean): HTMLElement {
  const { air, verdict } = looked;
  return element(
    "div",
    { class: "verdict" },
    element(
      "p",
      { class: "air" },
      element("strong", {}, `${shownPercent(air, decimal)} %`),
      " ",
      ...(verdict ? [badge(verdict)] : []),
    ),
    element(
      "ul",
      {},
      ...(decides ? verdictSentences(looked, decimal) : []).map((text) => element("li", {}, text)),
    ),
  );
}

/** What there is to say about a result, one sentence each. */
export function verdictSentences(looked: WhatIf, decimal: DecimalMark): string[] {
  const { margin, certainty, decision } = looked;
  if (margin === undefined || !certainty || !decision) return [say("test-no-limits")];
  const amount = shownPercent(Math.abs(margin), decimal);
  const deviation = shownDeviation(certainty.deviation, decimal);
  const chance = shownChance(certainty.chance);
  const { published } = certainty;
  return [
    margin === 0
      ? say("test-margin-on-limit")
      : say(margin > 0 ? "test-margin-inside" : "test-margin-outside", { amount }),
    published
      ? say("test-chance-published", {
          ...{ chance, deviation, method: published.method },
          source: phrase(published.source),
        })
      : say("test-chance-given", { chance, deviation }),
    decisionSentence(decision, margin),
  ];
}

function decisionSentence(decision: AcceptanceDecision, margin: number): string {
  if (decision === "accept" && margin < 0) return say("test-decision-accept-by-check");
  return say(`test-decision-${decision === "check test" ? "check" : decision}`);
}
