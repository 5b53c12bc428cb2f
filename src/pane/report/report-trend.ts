import { trends, type Trend } from "../../acceptance/trend";
import type { TestResult } from "../../fieldsheet/test-result";
import { trendTestsOf } from "../../fieldsheet/trend-tests";
import type { Steps } from "../../hosts/in-slices";
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

/** A trend of a report: what it shows in words, and its picture unless there are too many. */
export interface ShownTrend {
  readonly group: string;
  readonly title: string;
  readonly words: string;
  readonly drawing: SVGSVGElement | undefined;
}

/** The trends as a report shows them, and how many of them are without a picture, where any are. */
export interface ShownTrends {
  readonly trends: readonly ShownTrend[];
  readonly left: readonly string[];
}

/** Trends in words and pictures, in steps. @param drawn Whether there are to be pictures. */
export function* shownTrends(
  { decimal, read }: CheckedArea,
  found: readonly Trend[],
  drawn: boolean,
): Steps<ShownTrends> {
  const shown: ShownTrend[] = [];
  for (const trend of found) {
    const group = groupName(trend);
    const title = say("trend-title", { group, address: read.address });
    const words = trendSentences(trend, decimal).join(" ");
    const pictured = drawn && shown.length < MOST_MIXES;
    const drawing = pictured ? chartDrawing(trend, title, decimal) : undefined;
    shown.push({ group, title, words, drawing });
    yield shown.length / found.length;
  }
  const left = found.length - MOST_MIXES;
  const said = drawn && left > 0 ? [say("report-more-mixes", { shown: MOST_MIXES, left })] : [];
  return { trends: shown, left: said };
}

/** What a report on paper shows of trends: pictures with their words below. */
export function trendFigures({ trends: shown, left }: ShownTrends): Node[] {
  const figures = shown.flatMap(({ title, words, drawing }) => {
    if (!drawing) return [];
    drawing.setAttribute("role", "img");
    drawing.setAttribute("aria-label", `${title} ${words}`);
    return [element("figure", {}, drawing, element("figcaption", {}, words))];
  });
  return [...figures, ...left.map((sentence) => element("p", {}, sentence))];
}
