import type { Words } from "../sentence";

/** What the task pane says and how its parts are labelled. */
export const paneMessages = {
  "pane-title": "Fresh concrete",
  "pane-version": ({ version }: Words<"version">) => `Fresh Concrete Functions, version ${version}`,
  "pane-pages": "Pages of the pane",
  "pane-page-check": "Check",
  "pane-page-test": "This test",
  "pane-page-trend": "Trend",
  "pane-page-report": "Report",
  "pane-open-in-excel": "Open this pane from the ribbon in Excel. Here it has no sheet to work on.",
  "pane-unexpected":
    "Something happened that was not foreseen. Your cells are as they were; try again.",

  "pane-scope": "What to check",
  "pane-scope-table": "The table around the selected cell",
  "pane-scope-selection": "The selected cells, with their headers",
  "pane-check": "Check",
  "pane-no-tests":
    "There are no tests below the headers. Select the headers together with the rows below them.",
  "pane-progress": "Progress",
  "pane-stop": "Stop",
  "pane-stopped": "Stopped. The sheet was not changed.",
  "pane-checking": "Checking",
  "pane-reading": ({ rows }: Words<"rows">) => `Reading, ${rows} rows so far`,
  "pane-reading-column": "Reading",
  "pane-marking": "Marking",
  "pane-unmarking": "Removing the marks",
  "pane-writing": "Writing",
  "pane-checked": ({ address, tests, findings }: Words<"address" | "tests" | "findings">) =>
    `${address} is checked. Tests: ${tests}. Findings: ${findings}.`,
  "pane-not-read-below": ({ from, to }: Words<"from" | "to">) =>
    from === to
      ? `Row ${from} below it was not read.`
      : `Not read: what stands further below, in rows ${from} to ${to}.`,
  "pane-not-read-beside":
    "Cells next to the selected ones hold something and were not read, because they were not selected.",
  "pane-checked-anew": ({ address }: Words<"address">) =>
    `The sheet was changed since the check, so ${address} was checked again first.`,
  "pane-test-moved": ({ row, sample, now }: Words<"row" | "sample" | "now">) =>
    `What was row ${row} ${inBrackets(sample)}is row ${now} now. Check again to renew the list.`,
  "pane-test-edited": ({ row, sample, now }: Words<"row" | "sample" | "now">) =>
    `What was row ${row} ${inBrackets(sample)}was edited since the check and is row ${now} now. Check again to renew the list.`,
  "pane-test-gone": ({ row, sample }: Words<"row" | "sample">) =>
    `What was checked in row ${row} ${inBrackets(sample)}is not in the table any more, or it was edited so that it cannot be found. Check again to renew the list.`,
  "pane-marks-are-older":
    "The marks in the sheet are from before; mark again to renew them, or remove them.",

  "word-void": "void",
  "word-error": "error",
  "word-doubt": "doubt",
  "word-note": "note",
  "word-valid": "valid",
  "word-incomplete": "incomplete",
  "word-within": "within",
  "word-below": "below",
  "word-above": "above",

  "pane-filter": "Show findings that weigh",
  "pane-findings": "Findings",
  "pane-findings-keys":
    "Click a finding to go to its cell, or move with the arrow keys and press Enter.",
  "pane-nothing-found": "Nothing was found.",
  "pane-all-filtered": "No finding of the weights chosen above.",
  "pane-whole-sheet": "whole sheet",
  "pane-row": ({ row }: Words<"row">) => `row ${row}`,

  "pane-columns": ({ recognised, others }: Words<"recognised" | "others">) =>
    `Columns: ${recognised} recognised, ${others} not`,
  "pane-column": "Column",
  "pane-column-header": "Header",
  "pane-column-read-as": "Read as",
  "pane-every-column-known": "Every column with a header was recognised.",
  "pane-columns-unknown": ({ names }: Words<"names">) =>
    `Not recognised, so not looked at: ${names}. Give a column another header if it should be.`,

  "pane-limits": "Specification",
  "pane-limits-hint":
    "The sheet does not hold both limits. Give what is missing to compare the results with it.",
  "pane-low": "Low limit, %",
  "pane-high": "High limit, %",
  "pane-compare": "Compare",

  "pane-in-the-sheet": "In the sheet",
  "pane-mark": "Mark in the sheet",
  "pane-with-notes": "With notes",
  "pane-unmark": "Remove every mark",
  "pane-write-results": "Write a results sheet",
  "pane-live": "Check again after every edit",
  "pane-marked": ({ cells, notes }: Words<"cells" | "notes">) =>
    `Marked cells: ${cells}. With a note: ${notes}.`,
  "pane-unmarked": ({ cells, notes }: Words<"cells" | "notes">) =>
    `Marks removed: ${cells}. Notes removed: ${notes}.`,
  "pane-results-sheet-name": "Findings",
  "pane-results-written": ({ sheet }: Words<"sheet">) => `The results are on the sheet “${sheet}”.`,
  "pane-cautions": "Cautions",
} as const;

function inBrackets(sample: string | number): string {
  return sample === "" ? "" : `(${sample}) `;
}
