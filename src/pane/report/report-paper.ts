import { say } from "../../messages/pane-catalogue";
import { badge } from "../kit/badge";
import { cautionsView } from "../kit/cautions-view";
import { element } from "../kit/element";
import { shownPercent, typedText } from "../kit/shown-number";
import type { ReportColumn } from "./report-columns";
import { wholeWords } from "./whole-words";
import type { FindingsOfTest, ReportContent } from "./report-content";

/** How much of a report is shown: in the pane only its beginning. */
export interface ReportLengths {
  readonly tests: number;
  readonly findings: number;
}

/** More lines than these are not for paper; the report sheet holds them all. */
export const ON_PAPER: ReportLengths = { tests: 5000, findings: 5000 };
export const IN_THE_PANE: ReportLengths = { tests: 20, findings: 40 };

/**
 * A report as it is printed.
 *
 * @param trend The pictures of the trend with what they show.
 */
export function reportPaper(
  content: ReportContent,
  trend: readonly Node[],
  lengths: ReportLengths,
): HTMLElement {
  const { heading, about, counts } = content;
  return element(
    "article",
    { class: "report" },
    element("h2", {}, say("report-title")),
    element("p", { class: "report-about" }, about.join(" ")),
    element(
      "dl",
      { class: "report-head" },
      ...heading.map(({ field, value }) =>
        element(
          "div",
          {},
          element("dt", {}, say(`report-head-${field}`)),
          element("dd", {}, ...wholeWords(value)),
        ),
      ),
    ),
    section(
      say("report-counts"),
      element("ul", {}, ...counts.map((each) => element("li", {}, each))),
    ),
    testsTable(content, lengths),
    findingsTable(content.findings, lengths),
    ...(content.corrected.length > 0
      ? [
          section(
            say("review-corrected-before", { count: content.corrected.length }),
            element("ul", {}, ...content.corrected.map((each) => element("li", {}, each))),
          ),
        ]
      : []),
    section(
      say("pane-not-checked"),
      element("ul", {}, ...content.notChecked.map((each) => element("li", {}, each))),
    ),
    ...(trend.length > 0 ? [section(say("trend-heading"), ...trend)] : []),
    section(say("report-method"), element("p", {}, say("report-method-text"))),
    cautionsView("fresh-report-cautions"),
    signatures(),
  );
}

/** A heading with what stands below it, which paper keeps together at its beginning. */
function section(title: string, ...content: readonly Node[]): HTMLElement {
  return element("section", {}, element("h3", {}, title), ...content);
}

function testsTable({ columns, tests, decimal }: ReportContent, { tests: most }: ReportLengths) {
  const lines = tests.slice(0, most).map((test) =>
    element(
      "tr",
      {},
      ...columns.map((column) => {
        const value = column.cell(test);
        const look = typeof value === "string" && column.words ? undefined : "number";
        return element("td", { class: look }, ...wholeWords(shown(value, column, decimal)));
      }),
    ),
  );
  const table = element(
    "table",
    { class: "report-tests" },
    element("caption", {}, say("report-table")),
    head(columns.map(({ label }) => label)),
    element("tbody", {}, ...lines),
  );
  return element(
    "div",
    {},
    scrolling(table),
    ...cutSentence(tests.length, most),
    element("p", { class: "hint" }, say("report-table-key")),
  );
}

function shown(value: string | number, { percent }: ReportColumn, decimal: "." | ","): string {
  if (typeof value === "string") return value;
  return percent ? shownPercent(value, decimal) : typedText(value, decimal);
}

/** One part of the table for each test, which paper keeps together. */
function findingsTable(groups: readonly FindingsOfTest[], { findings: most }: ReportLengths) {
  const count = groups.reduce((sum, { findings }) => sum + findings.length, 0);
  if (count === 0)
    return section(say("pane-findings"), element("p", {}, say("pane-nothing-found")));
  let left = most;
  const parts = groups.flatMap(({ test, findings }) => {
    const listed = findings.slice(0, left);
    left -= listed.length;
    if (listed.length === 0) return [];
    return element(
      "tbody",
      {},
      element("tr", {}, element("th", { scope: "rowgroup", colspan: 3 }, ...wholeWords(test))),
      ...listed.map(({ where, weight, sentence, decision }) =>
        element(
          "tr",
          {},
          element("td", { class: "report-where" }, badge(weight), element("span", {}, where)),
          element("td", {}, ...wholeWords(sentence)),
          element("td", { class: "report-decision" }, ...wholeWords(decision)),
        ),
      ),
    );
  });
  const heads = ["report-where", "report-finding", "report-decision"] as const;
  const table = element(
    "table",
    { class: "report-findings" },
    element("caption", {}, say("pane-findings")),
    head(heads.map((id) => say(id))),
    ...parts,
  );
  return element("div", {}, scrolling(table), ...cutSentence(count, most));
}

function head(labels: readonly string[]): HTMLElement {
  const cells = labels.map((label) => element("th", { scope: "col" }, label));
  return element("thead", {}, element("tr", {}, ...cells));
}

/** In the pane a wide table is moved sideways, also by keyboard. */
function scrolling(table: HTMLTableElement): HTMLElement {
  const name = table.caption!.textContent!;
  return element(
    "div",
    { class: "wide-table", tabindex: 0, role: "group", "aria-label": name },
    table,
  );
}

function cutSentence(count: number, most: number): HTMLElement[] {
  if (count <= most) return [];
  const id = most === ON_PAPER.tests ? "report-cut" : "report-cut-here";
  return [element("p", {}, say(id, { shown: most, left: count - most }))];
}

function signatures(): HTMLElement {
  const lines = (["report-signed-tester", "report-signed-reviewer"] as const).map((id) =>
    element(
      "div",
      { class: "report-signature" },
      element("p", {}, say(id)),
      element("p", { class: "report-line" }, say("report-name-signature-date")),
    ),
  );
  return element(
    "section",
    { class: "report-signatures" },
    element("h3", {}, say("report-signatures")),
    ...lines,
  );
}
