import type { TurningPoint } from "../../acceptance/turning-points";
import type { WhatIf } from "../../acceptance/what-if";
import type { DecimalMark } from "../../measure/number-from-cell";
import { inLine, say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import { shownPercent, typedText } from "../kit/shown-number";

/** How much it would take: the smallest change in each input that changes the verdict. */
export function turningPointsView({ turningPoints, verdict }: WhatIf, decimal: DecimalMark) {
  const sentences = turningPoints.map((point) => turningPointSentence(point, decimal));
  const nothing = say(verdict ? "turning-nothing" : "test-no-limits");
  return element(
    "section",
    { "aria-labelledby": "fresh-turning-title" },
    element("h3", { id: "fresh-turning-title" }, say("turning-title")),
    sentences.length > 0
      ? element("ul", {}, ...sentences.map((sentence) => element("li", {}, sentence)))
      : element("p", { class: "hint" }, nothing),
  );
}

/** One change of one input in words. */
export function turningPointSentence(point: TurningPoint, decimal: DecimalMark): string {
  const { input, from, to, change, unit, air, verdict } = point;
  const number = input === "reading" ? shownPercent : typedText;
  return say(`turning-${input}`, {
    from: number(from, decimal),
    to: number(to, decimal),
    change: (change < 0 ? "−" : "+") + number(Math.abs(change), decimal),
    unit,
    air: shownPercent(air, decimal),
    verdict: inLine(`word-${verdict}`),
  });
}
