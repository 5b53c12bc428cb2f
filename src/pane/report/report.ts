import { sentenceOfFinding } from "../state/sentence-of-finding";
import { WEIGHTS } from "../../fieldsheet/rule";
import { say } from "../../messages/pane-catalogue";
import { badge, badgeWord } from "../kit/badge";
import { cautionsView } from "../kit/cautions-view";
import { countsOf, STATES, VERDICTS } from "../state/counts";
import { element } from "../kit/element";
import { notCheckedView } from "../state/not-checked-view";
import { whereOf } from "../state/where-of";
import { correctedSentence, decisionSentence } from "../state/review/decision-sentence";
import { DECIDED_AS, reviewOf, type ReviewOfCheck } from "../state/review/review-of";
import type { ReviewOnSheet } from "../state/review/review-on-sheet";
import type { FindingDecided } from "../../review/reviewed-findings";
import type { CheckedArea } from "../state/checked-area";

/** More lines than this are not for paper; the results sheet holds them all. */
const MOST_LINES = 5000;

/**
 * A report of a check for print: counts, findings, method and cautions.
 *
 * @param review What the workbook holds of decisions about them.
 * @param most Findings that are listed at most.
 */
export function report(
  checked: CheckedArea,
  review: ReviewOnSheet,
  most = MOST_LINES,
): HTMLElement {
  const { read, result } = checked;
  const { tests, states, verdicts, weights } = countsOf(result);
  const counted = (kinds: readonly (keyof typeof counts)[]) =>
    kinds.map((kind) => `${badgeWord(kind)} ${counts[kind]}`).join(", ");
  const counts = { ...states, ...verdicts };
  const compared = VERDICTS.some((verdict) => verdicts[verdict] > 0);
  const reviewed = reviewOf(checked, review);
  const decided = DECIDED_AS.map((kind) => `${say(`word-${kind}`)} ${reviewed.counts[kind]}`).join(
    ", ",
  );
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
      element("li", {}, say("review-report", { counts: decided })),
    ),
    notCheckedView(result),
    findingsTable(checked, reviewed, most),
    ...correctedList(reviewed),
    element("h3", {}, say("report-method")),
    element("p", {}, say("report-method-text")),
    cautionsView("fresh-report-cautions"),
  );
}

function findingsTable(checked: CheckedArea, { of }: ReviewOfCheck, most: number): HTMLElement {
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
        element("td", {}, sentenceOfFinding(finding, checked), ...decisionLine(of(finding))),
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

/** What was decided of a finding, on a line of its own. */
function decisionLine(decided: FindingDecided): HTMLElement[] {
  const said = decisionSentence(decided);
  return said === "" ? [] : [element("p", { class: `decision ${decided.decision}` }, said)];
}

/** What was found before, and was corrected. */
function correctedList({ corrected }: ReviewOfCheck): HTMLElement[] {
  if (corrected.length === 0) return [];
  return [
    element("h3", {}, say("review-corrected-before", { count: corrected.length })),
    element("ul", {}, ...corrected.map((entry) => element("li", {}, correctedSentence(entry)))),
  ];
}
