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

  "pane-blank-cells-zero":
    "In this Excel a blank cell reaches the worksheet functions as 0, so they say of each 0 that it may be a blank. Write a 0 as a text there ('0). The check here reads the cells itself and is not touched by it.",
  "pane-blank-cells-unknown":
    "It is not known whether blank cells reach the worksheet functions of this Excel as blanks, so they say of each 0 that it may be a blank. Type =FRESH.BLANK.TEST of a blank cell into a free cell once; “blank” settles it. The check here reads the cells itself and is not touched by it.",

  "pane-check": "Check",
  "pane-progress": "Progress",
  "pane-stop": "Stop",
  "pane-stopped": "Stopped. The sheet was not changed.",
  "pane-stopped-marking":
    "Stopped. None of the new marks is on the sheet; earlier ones may have been taken off.",
  "pane-stopped-unmarking":
    "Stopped. Some of our marks may still be there; remove the marks again to take off the rest.",
  "results-only-first": ({ shown, findings }: Words<"shown" | "findings">) =>
    `The list holds the first ${shown} of ${findings} findings. The command line writes all of them (fresh-check, see the documents); or check the table in parts.`,
  "pane-checking": "Checking",
  "pane-reading": ({ rows }: Words<"rows">) => `Reading, ${rows} rows so far`,
  "pane-reading-column": "Reading",
  "pane-marking": "Marking",
  "pane-unmarking": "Removing the marks",
  "pane-writing": "Writing",
  "pane-checked": ({ address, tests, findings }: Words<"address" | "tests" | "findings">) =>
    `Checked: ${address}. Tests: ${tests}. Findings: ${findings}.`,
  "pane-rows-are-no-tests":
    "The table holds several tests in a row, or a row for each value of a test.",
  "pane-forms": ({ forms }: Words<"forms">) =>
    forms === "1" ? "One form on this sheet." : `${forms} forms on this sheet.`,
  "pane-not-read-below": ({ from, to }: Words<"from" | "to">) =>
    from === to
      ? `Row ${from} below it was not read.`
      : `Not read: what stands further below, in rows ${from} to ${to}. If tests stand there too, select one of their cells and check again.`,
  "pane-columns-not-read": ({ from, to }: Words<"from" | "to">) =>
    from === to
      ? `Column ${from} beside it was not read.`
      : `Not read: what stands beside it, in columns ${from} to ${to}.`,
  "pane-not-read-above":
    "Cells above the selected ones hold something and were not read, because they were not selected.",
  "pane-row-changed": ({ row }: Words<"row">) =>
    `Row ${row} holds something else than was checked. Check again to see its test.`,
  "pane-still-shown": ({ address }: Words<"address">) =>
    `What is shown is still the earlier check of ${address}.`,
  "pane-checked-anew": ({ address }: Words<"address">) =>
    `The sheet was changed since the check, so ${address} was checked again first.`,
  "pane-test-moved": ({ row, sample, now }: Words<"row" | "sample" | "now">) =>
    `What was row ${row} ${inBrackets(sample)}is row ${now} now. Check again to renew the list.`,
  "pane-test-edited": ({ row, sample, now }: Words<"row" | "sample" | "now">) =>
    `What was row ${row} ${inBrackets(sample)}was edited since the check and is row ${now} now. Check again to renew the list.`,
  "pane-test-gone": ({ row, sample }: Words<"row" | "sample">) =>
    `What was checked in row ${row} ${inBrackets(sample)}is not in the table any more, or it was edited so that it cannot be found. Check again to renew the list.`,
  "pane-what-is-new": ({ fresh, gone }: Words<"fresh" | "gone">) =>
    `New findings: ${fresh}. No longer found: ${gone}.`,
  "tests-elsewhere":
    "No tests were found on this sheet. Other sheets of the workbook hold some: choose one below.",
  "no-area": ({ typed }: Words<"typed">) =>
    `“${typed}” is no area of cells. Type its corners, such as A1:R40.`,
  "pane-copied": ({ findings }: Words<"findings">) => `Findings copied: ${findings}.`,
  "pane-not-copied":
    "This program does not let the pane copy. Write a results sheet and copy from there.",
  "pane-marks-are-older":
    "The marks in the sheet are from before: check with marking to renew them, or remove them.",

  "word-void": "void",
  "word-error": "error",
  "word-doubt": "doubt",
  "word-note": "note",
  "word-valid": "valid",
  "word-incomplete": "incomplete",
  "word-within": "within",
  "word-below": "below",
  "word-above": "above",

  "pane-cautions": "Cautions",
} as const;

function inBrackets(sample: string): string {
  return sample === "" ? "" : `(${sample}) `;
}
