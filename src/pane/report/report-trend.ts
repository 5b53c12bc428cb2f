import { trends, type Trend } from "../../acceptance/trend";
import type { TestResult } from "../../fieldsheet/test-result";
import { trendTestsOf } from "../../fieldsheet/trend-tests";
import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import type { CheckedArea } from "../state/checked-area";
import { chartDrawing } from "../trend/chart-picture";
import { groupName } from "../trend/trend-groups";
import { trendSentences } from "../trend/trend-words";

/** So many mixes have a picture in a report. */
const MOST_MIXES = 6;

/** The trends of the tests of a report, one a mix; none where there are fewer than two results. */
export function trendsOfReport(checked: CheckedArea, inReport: readonly TestResult[]): Trend[] {
  const records = new Set(inReport.map(({ record }) => record));
  const tests = trendTestsOf(checked.result).filter(({ record }) => records.has(record));
  const grouping = checked.result.columns.mix ? "mix" : "all";
  return trends(tests, grouping).filter(({ points }) => points.length > 1);
}

/** The pictures of the trends with what they show. */
export function trendPictures(checked: CheckedArea, found: readonly Trend[]): Node[] {
  const { decimal, read } = checked;
  const shown = found.slice(0, MOST_MIXES).map((trend) => {
    const title = say("trend-title", { group: groupName(trend), address: read.address });
    const sentences = trendSentences(trend, decimal);
    const picture = chartDrawing(trend, title, decimal);
    picture.setAttribute("role", "img");
    picture.setAttribute("aria-label", [title, ...sentences].join(" "));
    return element("figure", {}, picture, element("figcaption", {}, sentences.join(" ")));
  });
  const left = found.length - shown.length;
  if (left === 0) return shown;
  return [...shown, element("p", {}, say("report-more-mixes", { shown: MOST_MIXES, left }))];
}

/** What the trends show, in sentences. */
export function trendsInWords({ decimal }: CheckedArea, found: readonly Trend[]): string[] {
  return found.map((trend) => `${groupName(trend)}: ${trendSentences(trend, decimal).join(" ")}`);
}
