import type { Words } from "../sentence";

/** Sentences of the workbench, the page with a spreadsheet of its own. */
export const workbenchMessages = {
  "function-failed":
    "The function stopped for a reason it does not know. Please report the formula and what its cells hold.",
  "spreadsheet-failed":
    "The spreadsheet did not do this. Leave the cell that is being edited, then try again.",
  "arguments-too-few": ({ name, needed }: Words<"name" | "needed">) =>
    `${name} needs more: ${needed}. Give a value or a cell for each.`,
  "arguments-too-many": ({ name, count, taken }: Words<"name" | "count" | "taken">) =>
    `${name} is given ${count} values and takes only these: ${taken}.`,
  "changes-would-be-lost":
    "The workbook has been changed and the changes are not saved. Open another one and lose them?",
  "workbench-not-started":
    "The workbench could not start, because a part of it is missing. Run npm start again, then load the page again.",
  "cell-error": ({ error }: Words<"error">) =>
    `The cell holds the error ${error}; the formula in it says nothing more.`,
  "cell-error-#NAME?":
    "A name in the formula is not known here. Look at how it is written; the functions of this workbench begin with FRESH.",
  "cell-error-#SPILL!":
    "The result needs more cells than are free below and beside. Clear the cells that are in the way.",
  "cell-error-#BUSY!": "The result is still being worked out.",
  "cell-error-#REF!": "The formula names cells that are not there any more.",
  "cell-error-#DIV/0!": "The formula divides by zero or by a blank cell.",
  "cell-error-#N/A": "A value that the formula looks for is not there.",
  "cell-says-hint": "A cell that shows an error says here why, once it is selected.",

  "page-title": "Fresh Concrete workbench",
  "page-lead":
    "Type `=FRESH.` in a cell to compute, or check a sheet of field tests in the pane. Files stay in this browser; nothing is sent. `F6` moves between files, spreadsheet and pane.",
  "page-skip-to-sheet": "Go to the spreadsheet",
  "page-skip-to-pane": "Go to the pane",
  "page-files": "Files",
  "page-open-file": "Open a CSV or XLSX file…",
  "page-save-file": "Save as XLSX",
  "page-open-sample": "Open the sample",
  "page-open-empty": "Start with an empty sheet",
  "page-sheet": "Spreadsheet",
  "page-sheet-loading": "The spreadsheet is being loaded…",
  "page-pane": "Task pane",
  "page-pane-loading":
    "The pane checks records of fresh concrete tests: what is wrong, where, and what to do.",
  "sample-not-loaded":
    "The sample could not be loaded, so the sheet is empty. Open a file of your own, or load the page again.",
} as const;
