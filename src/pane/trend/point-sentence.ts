import { runRuleWords } from "../../acceptance/control-chart/run-rule-words";
import type { TrendPoint } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { inLine, say } from "../../messages/pane-catalogue";
import { badgeWord } from "../kit/badge";
import { shownPercent } from "../kit/shown-number";
import { pointName } from "./trend-groups";

/** A point of a trend in words: its name and place, air, verdict and signals. */
export function pointSentence(
  point: TrendPoint,
  number: number,
  of: number,
  decimal: DecimalMark,
): string {
  const { verdict, signals, value } = point;
  const air = shownPercent(value, decimal);
  let what = say("trend-point", { name: pointName(point), number, of, air });
  if (verdict) what = say("trend-point-compared", { what, verdict: badgeWord(verdict) });
  if (signals.length > 0)
    what = say("trend-point-signals", {
      what,
      signals: runRuleWords(signals, (rule) => inLine(rule)),
    });
  return what;
}
