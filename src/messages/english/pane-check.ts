import type { Words } from "../sentence";

/** What the page about the check says. */
export const paneCheckMessages = {
  "pane-filter": "Show findings that weigh",
  "pane-findings": "Findings",
  "pane-findings-keys":
    "Click a finding to go to its cell, or move with the arrow keys and press Enter.",
  "pane-nothing-found": "Nothing was found in what was looked at.",
  "pane-group-by": "Together by",
  "pane-group-by-test": "test",
  "pane-group-by-rule": "rule",
  "pane-sort-by": "First comes",
  "pane-sort-by-row": "the upper row",
  "pane-sort-by-weight": "the graver finding",
  "pane-copy": "Copy the list",
  "pane-new": "new",
  "pane-explanations": "What may be behind it:",
  "pane-group-test": ({ row, sample }: Words<"row" | "sample">) => `Row ${row}, ${sample}`,
  "pane-group-test-state": ({ test, state }: Words<"test" | "state">) => `${test}: ${state}`,
  "pane-group-rule": ({ rule, count }: Words<"rule" | "count">) => `${rule}: ${count}`,

  "pane-tests-counted": ({ tests }: Words<"tests">) => `Tests: ${tests}`,
  "pane-against-specification": "Against the specification",
  "pane-findings-counted": ({ findings }: Words<"findings">) => `Findings: ${findings}`,
  "pane-not-checked": "Not checked",
  "pane-not-checked-nothing": "The sheet records all that the method asks for.",
  "pane-not-checked-others": ({ count }: Words<"count">) => `Not recorded either: ${count}`,

  "pane-purpose": "Volumetric air tests: ASTM C173, AASHTO T 196",
  "pane-begin":
    "Press Check. It finds the tests on the sheet, says what is wrong and leaves your cells alone.",
  "pane-area-checked": ({ address }: Words<"address">) => `Checked: ${address}`,
  "pane-area-change": "Check other cells",
  "pane-area": "Cells, with their headers",
  "pane-area-check": "Check these",
  "pane-area-selection": "Check the selected cells",
  "pane-sheets-with-tests": "Sheets with tests",
  "pane-check-sheet": ({ sheet }: Words<"sheet">) => `Check “${sheet}”`,
  "pane-more": "More",
  "pane-whole-sheet": "whole sheet",
  "pane-row": ({ row }: Words<"row">) => `row ${row}`,

  "pane-columns": ({ recognised, others }: Words<"recognised" | "others">) =>
    `Columns: ${recognised} recognised, ${others} not`,

  "pane-limits": "Specification",
  "pane-limits-hint":
    "For tests of which neither the sheet nor its setup gives limits. What the sheet says goes first.",
  "pane-low": "Low limit, %",
  "pane-high": "High limit, %",
  "pane-compare": "Compare",

  "pane-in-the-sheet": "In the sheet",
  "pane-mark-found": "Mark what is found",
  "pane-with-notes": "Write a note beside each mark",
  "pane-unmark": "Remove marks",
  "pane-write-results": "Write a results sheet",
  "pane-live": "Check again after every edit",
  "pane-marked": ({ cells, notes }: Words<"cells" | "notes">) =>
    `Marked cells: ${cells}. With a note: ${notes}.`,
  "pane-marks-kept-of": ({ addresses }: Words<"addresses">) =>
    `The marks of ${addresses} are among them: nothing was changed there since.`,
  "pane-marks-gone-of": ({ addresses }: Words<"addresses">) =>
    `The earlier marks of ${addresses} were taken off, because something else stands there by now: check it again.`,
  "pane-unmarked": ({ cells, notes }: Words<"cells" | "notes">) =>
    `Marks removed: ${cells}. Notes removed: ${notes}.`,
  "pane-results-sheet-name": "Findings",
  "pane-results-written": ({ sheet }: Words<"sheet">) => `The results are on the sheet “${sheet}”.`,
} as const;
