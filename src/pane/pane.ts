import { findingSentence } from "../fieldsheet/finding-sentence";
import { findingsList } from "../fieldsheet/result-tables";
import type { ReadScope, SheetHost } from "../hosts/sheet-host";
import { say } from "../messages/catalogue";
import { cautionMessages } from "../messages/cautions";
import { checkArea, placeOf, type CheckedArea } from "./checked-area";
import { button, element } from "./element";
import { marksOfFindings } from "./marks-of-findings";
import { problemSentence } from "./problem-sentence";
import "./pane.css";

/** What the place that the pane stands in can do beyond the port. */
export interface PaneOptions {
  /** Saves a picture to a file. Without it the pane offers none. */
  readonly savePicture?: (name: string, picture: Blob) => void;
}

/**
 * Puts the task pane into a page.
 *
 * @param root The element to fill.
 * @param host The spreadsheet to work on.
 */
export function mountPane(root: HTMLElement, host: SheetHost, _options: PaneOptions = {}): void {
  let checked: CheckedArea | undefined;
  const error = element("p", { role: "alert", class: "error" });
  const status = element("p", { role: "status" });
  const list = element("ul", { class: "findings", "aria-label": say("pane-findings") });
  const scope = element(
    "select",
    { "aria-label": say("pane-scope") },
    element("option", { value: "table" }, say("pane-scope-table")),
    element("option", { value: "selection" }, say("pane-scope-selection")),
  );
  const notes = element("input", { type: "checkbox" });

  const attempt = (work: () => Promise<void>) => async () => {
    error.textContent = "";
    try {
      await work();
    } catch (problem) {
      error.textContent = problemSentence(problem);
    }
  };
  const check = attempt(async () => {
    const decimal = await host.decimalMark();
    const result = (checked = checkArea(await host.read(scope.value as ReadScope), { decimal }));
    const { rows, findings, columns } = result.result;
    status.textContent = say("pane-checked", {
      address: result.read.address,
      tests: rows.filter(({ test }) => test !== "").length,
      findings: findings.length,
    });
    list.replaceChildren(
      ...findings.map((finding) =>
        element(
          "li",
          {},
          button(
            `${finding.weight}: ${findingSentence(finding, columns)}`,
            attempt(() => host.select(placeOf(result, finding))),
          ),
        ),
      ),
    );
  });
  const mark = attempt(async () => {
    if (!checked) return;
    const report = await host.mark(marksOfFindings(checked), notes.checked);
    status.textContent = [say("pane-marked", { ...report, remarks: "" }), ...report.remarks].join(
      " ",
    );
  });
  const unmark = attempt(async () => {
    const report = await host.unmark();
    status.textContent = say("pane-unmarked", { cells: report.cells, notes: report.notes });
  });
  const write = attempt(async () => {
    if (!checked) return;
    const name = say("pane-results-sheet-name");
    const sheet = await host.writeResultsSheet(name, findingsList(checked.result));
    status.textContent = say("pane-results-written", { sheet });
  });

  root.replaceChildren(
    element(
      "main",
      { class: "pane" },
      element("h1", {}, say("pane-title")),
      scope,
      button(say("pane-check"), check),
      error,
      status,
      list,
      button(say("pane-mark"), mark),
      element("label", {}, notes, say("pane-with-notes")),
      button(say("pane-unmark"), unmark),
      button(say("pane-write-results"), write),
      element("h2", {}, say("pane-cautions")),
      element("ul", {}, ...Object.values(cautionMessages).map((text) => element("li", {}, text))),
    ),
  );
}
