import { say } from "../../messages/pane-catalogue";
import { Problem } from "../../measure/problem";
import { button, element } from "../kit/element";
import type { CheckedArea } from "../state/checked-area";
import type { PaneCommands, ReportKept } from "../state/commands";
import { reportContent, type ReportGiven } from "./report-content";
import { reportSheetInSteps } from "./report-sheet";
import { shownTrends, trendsOfReport } from "./report-trend";

/**
 * The ways to keep a report: on paper, on a sheet and, where the spreadsheet keeps no files itself, as a file.
 *
 * @param given What the report is made with; `undefined` where no test is chosen.
 */
export function keepReportButtons(
  commands: PaneCommands,
  given: (checked: CheckedArea) => ReportGiven | undefined,
): HTMLElement {
  const print = async () => {
    if (await commands.bringUpToDate()) window.print();
  };
  const keep = (as: ReportKept) => () =>
    void commands.keepReport(as, function* (checked) {
      const with_ = given(checked);
      if (!with_) throw new Problem("report-select-test");
      const content = reportContent(checked, with_);
      const found = trendsOfReport(checked, content.tests);
      const drawn = as === "xlsx" || (as === "sheet" && commands.sheetsShowPictures);
      const trend = yield* shownTrends(checked, found, drawn);
      const sheet = yield* reportSheetInSteps(content, trend, as !== "csv");
      const file = with_.file.replace(/\.[^.]*$/, "") || say("report-no-name");
      return { ...sheet, file: say("report-file-name", { file }) };
    });
  return element(
    "div",
    {},
    element(
      "div",
      { class: "actions" },
      button(say("report-print"), () => void print(), "main-button"),
      button(say("report-write-sheet"), keep("sheet")),
      ...(commands.keepsFiles
        ? [
            button(say("report-save-xlsx"), keep("xlsx")),
            button(say("report-save-csv"), keep("csv")),
          ]
        : []),
    ),
    element("p", { class: "hint" }, say("report-print-hint")),
  );
}
