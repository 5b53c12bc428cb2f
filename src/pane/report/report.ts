import { sentenceOfFinding } from "../state/sentence-of-finding";
import { WEIGHTS } from "../../fieldsheet/rule";
import { say } from "../../messages/pane-catalogue";
import { badge, badgeWord } from "../kit/badge";
import { cautionsView } from "../kit/cautions-view";
import { countsOf, STATES, VERDICTS } from "../state/counts";
import { element } from "../kit/element";
import { notCheckedView } from "../state/not-checked-view";
import { whereOf } from "../state/where-of";
import type { CheckedArea } from "../state/checked-area";

/** More lines than this are not for paper; the results sheet holds them all. */
const MOST_LINES = 5000;

/**
 * A report of a check for print: counts, findings, method and cautions.
 *
 * @param most Findings that are listed at most.
 */
export function report(checked: CheckedArea, most = MOST_LINES): HTMLElement {
  const { read, result } = checked;
  const { tests, states, verdicts, weights } = countsOf(result);
  const counted = (kinds: readonly (keyof typeof counts)[]) =>
    kinds.map((kind) => `${badgeWord(kind)} ${counts[kind]}`).join(", ");
  const counts = { ...states, ...verdicts };
  const compared = VERDICTS.some((verdict) => verdicts[verdict] > 0);
  const weighed = WEIGHTS.map((weight) => `${badgeWord(weight)} ${weights[weight]}`).join(", ");
  return element(
    "article",
    { class: "report" },
    element("h2", {}, say("report-title")),
    element("p", {}, say("report-of", { address: read.address, tests })),
    element(
      "ul",
      {},
      element("li", {}, say("report-tests", { counts: counted(STATES) })),
      element(
        "li",
        {},
        compared
          ? say("report-specification", { counts: counted(VERDICTS) })
          : say("report-no-specification"),
      ),
      element("li", {}, say("report-findings", { counts: weighed })),
    ),
    notCheckedView(result),
    findingsTable(checked, most),
    element("h3", {}, say("report-method")),
    element("p", {}, say("report-method-text")),
    cautionsView("fresh-report-cautions"),
  );
}

function findingsTable(checked: CheckedArea, most: number): HTMLElement {
  const { findings, results } = checked.result;
  if (findings.length === 0) return element("p", {}, say("pane-nothing-found"));
  const heads = ["report-where", "report-finding"] as const;
  const lines = findings
    .slice(0, most)
    .map((finding) =>
      element(
        "tr",
        {},
        element(
          "td",
          { class: "report-where" },
          element("span", {}, whereOf(finding, checked)),
          element("span", {}, finding.record === null ? "" : results[finding.record]!.sample),
          badge(finding.weight),
        ),
        element("td", {}, sentenceOfFinding(finding, checked)),
      ),
    );
  const table = element(
    "table",
    {},
    element("caption", {}, say("pane-findings")),
    element(
      "thead",
      {},
      element("tr", {}, ...heads.map((id) => element("th", { scope: "col" }, say(id)))),
    ),
    element("tbody", {}, ...lines),
  );
  const left = findings.length - lines.length;
  if (left === 0) return table;
  return element(
    "div",
    {},
    table,
    element(
      "p",
      {},
      say(most < MOST_LINES ? "report-cut-here" : "report-cut", { shown: most, left }),
    ),
  );
}
