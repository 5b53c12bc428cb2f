import type { Words } from "../sentence";

/** What the task pane says and how its parts are labelled. */
export const paneMessages = {
  "pane-title": "Fresh concrete",
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

  "test-title-none": "One test",
  "test-title": ({ row }: Words<"row">) => `The test in row ${row}`,
  "test-title-sample": ({ row, sample }: Words<"row" | "sample">) =>
    `The test in row ${row}, ${sample}`,
  "test-check-first":
    "Check a table and select a cell in one of its rows, or type the numbers of a test here.",
  "test-select-row":
    "Select a cell in a row of the checked table, or type the numbers of a test here.",
  "test-is-void":
    "This test is void: its result does not stand. What follows is what the numbers alone would give.",
  "test-no-final-reading":
    "The readings of this row do not give a final reading. Type one to see what it would give.",
  "test-no-result":
    "This row gives no result; see its findings. What follows takes what is missing as none.",
  "test-inputs": "Try other numbers",
  "test-changes-nothing": "Numbers typed here change nothing in the sheet.",
  "test-reset": "Back to the record",
  "test-input-reading": "Final reading, %",
  "test-input-cups": "Calibrated cups",
  "test-input-alcohol": "Alcohol, as 48 oz",
  "test-input-low": "Low limit, %",
  "test-input-high": "High limit, %",
  "test-input-check": "Check test, %",
  "test-input-deviation": "Your own deviation, %",
  "test-no-limits": "Without limits there is nothing to compare the result with.",
  "test-decides-nothing":
    "A void or incomplete test decides nothing. Repeat it, or complete its record.",
  "test-margin-inside": ({ amount }: Words<"amount">) =>
    `It lies ${amount} % inside the nearer limit.`,
  "test-margin-outside": ({ amount }: Words<"amount">) => `It lies ${amount} % outside the limit.`,
  "test-margin-on-limit": "It lies on the limit, which is within.",
  "test-chance-given": ({ chance, deviation }: Words<"chance" | "deviation">) =>
    `The chance that the true air content lies within the limits is ${chance}, with the deviation of ${deviation} % that you gave.`,
  "test-chance-published": ({
    chance,
    deviation,
    method,
    source,
  }: Words<"chance" | "deviation" | "method" | "source">) =>
    `The chance that the true air content lies within the limits is ${chance}, with a deviation of ${deviation} % of one result by ${method}. That figure is ${source}; you can give your own.`,
  "test-decision-accept": "The check-test rule asks for nothing more: accept.",
  "test-decision-accept-by-check": "The check test is within: by the check-test rule, accept.",
  "test-decision-check":
    "The check-test rule asks for a check test at once, on another portion of the same sample. The two results are not averaged.",
  "test-decision-reject": "The check test is outside as well: by the check-test rule, reject.",

  "steps-title": "Step by step",
  "steps-step": "Step",
  "steps-change": "Change",
  "steps-value": "Air, %",
  "steps-reading": "final reading",
  "steps-alcohol": ({ amount, unit }: Words<"amount" | "unit">) =>
    `correction for ${amount} ${unit} of alcohol`,
  "steps-alcohol-between": ({ amount, unit }: Words<"amount" | "unit">) =>
    `correction for ${amount} ${unit} of alcohol, read between two rows of the table`,
  "steps-alcohol-none": "correction for alcohol, none recorded",
  "steps-cups": ({ cups }: Words<"cups">) => `calibrated cups, ${cups}`,
  "steps-rounding": "rounded to the nearest 0.25, halves to even",

  "grid-title": "If the record were off by one step",
  "grid-reading": "Reading differs by",
  "grid-as-recorded": "as recorded",
  "grid-cups": ({ cups }: Words<"cups">) => `cups: ${cups}`,
  "grid-less-alcohol": ({ amount, unit }: Words<"amount" | "unit">) =>
    `less alcohol: ${amount} ${unit}`,
  "grid-more-alcohol": ({ amount, unit }: Words<"amount" | "unit">) =>
    `more alcohol: ${amount} ${unit}`,
  "grid-key": "Framed: as recorded. Underlined: another verdict than that.",

  "turning-title": "How much it would take",
  "turning-nothing": "No change of a single number would change the verdict.",
  "turning-reading": ({
    change,
    to,
    from,
    air,
    verdict,
  }: Words<"change" | "to" | "from" | "air" | "verdict">) =>
    `Reading ${change} % (${to} instead of ${from}): ${air} %, ${verdict}.`,
  "turning-cups": ({
    change,
    to,
    from,
    air,
    verdict,
  }: Words<"change" | "to" | "from" | "air" | "verdict">) =>
    `Cups ${change} (${to} instead of ${from}): ${air} %, ${verdict}.`,
  "turning-alcohol": ({
    change,
    unit,
    to,
    from,
    air,
    verdict,
  }: Words<"change" | "unit" | "to" | "from" | "air" | "verdict">) =>
    `Alcohol ${change} ${unit} (${to} instead of ${from}): ${air} %, ${verdict}.`,

  "trend-heading": "Trend",
  "trend-check-first":
    "Check a table first; its valid tests make the trend. Or select a column of air contents and take that.",
  "trend-take-column": "Take the selected column",
  "trend-take-table": "Take the checked table",
  "trend-one-column":
    "The trend needs one column of air contents. Select its cells, two rows or more, then try again.",
  "trend-unreadable": ({ cells }: Words<"cells">) =>
    `Left out, because they hold no number: ${cells}.`,
  "trend-by": "Tests together",
  "trend-by-all": "all",
  "trend-by-mix": "by mix",
  "trend-by-day": "by day",
  "trend-by-mix-and-day": "by mix and day",
  "trend-group": "Shown",
  "trend-all-tests": "all tests",
  "trend-no-mix": "without a mix",
  "trend-no-day": "without a day",
  "trend-test-number": ({ number }: Words<"number">) => `test ${number}`,
  "trend-title": ({ group, address }: Words<"group" | "address">) =>
    `Air content, ${group}, ${address}`,
  "trend-key":
    "Line in the middle: mean. Broken lines: control limits. Band with dotted edges: specification. Triangle: outside it. Ring: signal.",
  "trend-points": ({ points }: Words<"points">) => `Results: ${points}.`,
  "trend-left-out": ({ voids, incomplete }: Words<"voids" | "incomplete">) =>
    `Left out: ${voids} void and ${incomplete} incomplete.`,
  "trend-limits": ({ mean, lower, upper }: Words<"mean" | "lower" | "upper">) =>
    `Mean ${mean} %, control limits ${lower} % to ${upper} %.`,
  "trend-specification": ({ low, high }: Words<"low" | "high">) =>
    `Specification ${low} % to ${high} %.`,
  "trend-specification-low": ({ low }: Words<"low">) => `Specification: at least ${low} %.`,
  "trend-specification-high": ({ high }: Words<"high">) => `Specification: at most ${high} %.`,
  "trend-specifications-differ":
    "The tests have different specifications; the band is each test's own.",
  "trend-outside": ({ outside }: Words<"outside">) => `Outside the specification: ${outside}.`,
  "trend-signals-count": ({ signals }: Words<"signals">) => `Tests with a signal: ${signals}.`,
  "trend-no-signals": "No signals.",
  "trend-signals": "Signals",
  "trend-table": "The numbers as a table",
  "trend-table-test": "Test",
  "trend-table-air": "Air, %",
  "trend-table-spec": "Specification",
  "trend-table-signals": "Signals",
  "trend-save-picture": "Save the picture",
  "trend-add-chart": "Put a chart into the workbook",
  "trend-chart-added": ({ sheet }: Words<"sheet">) => `The chart is on the sheet “${sheet}”.`,
  "trend-sheet-name": "Trend",
  "trend-line-air": "Air, %",
  "trend-line-mean": "Mean",
  "trend-line-lower": "Lower control limit",
  "trend-line-upper": "Upper control limit",
  "trend-line-low": "Low limit",
  "trend-line-high": "High limit",

  "report-check-first": "Check a table first; then its report can be printed.",
  "report-print": "Print",
  "report-print-hint":
    "If no window to print opens, write a results sheet on the page “Check” and print that.",
  "report-title": "Check of field tests of fresh concrete",
  "report-of": ({ address, tests }: Words<"address" | "tests">) => `${address}, ${tests} tests.`,
  "report-tests": ({ counts }: Words<"counts">) => `Tests: ${counts}.`,
  "report-specification": ({ counts }: Words<"counts">) =>
    `Valid tests against the specification: ${counts}.`,
  "report-no-specification": "No test was compared with a specification.",
  "report-findings": ({ counts }: Words<"counts">) => `Findings: ${counts}.`,
  "report-where": "Where",
  "report-finding": "Finding",
  "report-cut": ({ shown, left }: Words<"shown" | "left">) =>
    `The first ${shown} findings are printed; ${left} more are on the results sheet.`,
  "report-method": "Method",
  "report-method-text":
    "Air content by the volumetric method, as ASTM C173/C173M and AASHTO T 196 are understood here: final meter reading, less the correction for the alcohol, plus 1.00 % for each calibrated cup, reported to the nearest 0.25 %, halves to the even step. Some of the values behind it are from memory and wait to be compared with the standard in force.",
} as const;
