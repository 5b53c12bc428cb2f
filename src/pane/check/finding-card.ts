import { sentenceOfFinding } from "../state/sentence-of-finding";
import type { Finding } from "../../fieldsheet/finding";
import { say, sentenceOf } from "../../messages/pane-catalogue";
import { ruleName } from "../kit/rule-name";
import { badge, badgeWord } from "../kit/badge";
import { element } from "../kit/element";
import { shownPercent } from "../kit/shown-number";
import { placeOf, type CheckedArea } from "../state/checked-area";
import type { FindingGroup, FindingGrouping } from "../state/finding-groups";
import { decisionSentence } from "../state/review/decision-sentence";
import type { FindingDecided } from "../../review/reviewed-findings";
import { whereOf } from "../state/where-of";

/** A finding in the list: how much it weighs, where it is, what is wrong and what may be behind it. */
export function findingCard(
  finding: Finding,
  checked: CheckedArea,
  grouping: FindingGrouping,
  fresh: ReadonlySet<Finding>,
  decided: FindingDecided,
): HTMLElement {
  const { results } = checked.result;
  const { causes = [] } = finding;
  const said = decisionSentence(decided);
  const sample = finding.record === null ? "" : results[finding.record]!.sample;
  const head = [
    badge(finding.weight),
    element("span", { class: "finding-cell" }, whereOf(finding, checked)),
    ...(grouping === "rule" ? [element("span", { class: "finding-sample" }, sample)] : []),
    ...(fresh.has(finding) ? [element("span", { class: "finding-new" }, say("pane-new"))] : []),
  ];
  return element(
    "div",
    { class: "finding" },
    element("div", { class: "finding-head" }, ...head.flatMap((part) => [part, " "])),
    element(
      "p",
      { class: "finding-sentence" },
      sentenceOfFinding({ ...finding, causes: [] }, checked),
    ),
    ...(said ? [element("p", { class: `decision ${decided.decision}` }, said)] : []),
    ...(causes.length > 0
      ? [
          element("p", { class: "finding-explanations" }, say("pane-explanations")),
          element(
            "ul",
            {},
            ...causes.map((cause) => element("li", {}, sentenceOf(cause.say, cause.values))),
          ),
        ]
      : []),
  );
}

/** What stands over the findings of one test, or of one rule. */
export function groupHeading(
  group: FindingGroup,
  checked: CheckedArea,
  grouping: FindingGrouping,
): string {
  const finding = group[0]!;
  if (grouping === "rule") {
    const rule = ruleName(finding.rule);
    return say("pane-group-rule", { rule, count: group.length });
  }
  if (finding.record === null) return say("pane-whole-sheet");
  const { sample, state, air } = checked.result.results[finding.record]!;
  const row = placeOf(checked, { record: finding.record, field: null }).row + 1;
  const named = sample ? say("pane-group-test", { row, sample }) : say("pane-row", { row });
  if (state === "") return named;
  const stands = air === undefined ? badgeWord(state) : `${shownPercent(air, checked.decimal)} %`;
  return say("pane-group-test-state", { test: named, state: stands });
}
