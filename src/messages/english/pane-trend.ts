import type { Words } from "../sentence";

/** What the page about the trend says. */
export const paneTrendMessages = {
  "trend-heading": "Trend",
  "trend-check-first":
    "Press Check: the valid tests make the trend. Or select a column of air contents and take that.",
  "trend-take-column": "Take the selected column",
  "trend-take-table": "Take the checked table",
  "trend-one-column":
    "The trend needs one column of air contents. Select its cells, two rows or more, then try again.",
  "trend-cell-changed": ({ held }: Words<"held">) =>
    `This cell held ${held} when the column was taken and holds something else now. Take the column again to see it as it is.`,
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
  "trend-axis-air": "Air content, %",
  "trend-axis-tests": "Tests in the order of the sheet",
  "trend-key-result": "result",
  "trend-key-columns": ({ count }: Words<"count">) =>
    `lowest to highest of ${count} results, and their mean`,
  "trend-key-mean": "mean",
  "trend-key-limits": "control limits",
  "trend-key-specification": "specification",
  "trend-key-above": "above it",
  "trend-key-below": "below it",
  "trend-key-signal": "signal",
  "trend-read-off": "Result in the chart, with the arrow keys",
  "trend-read-off-hint":
    "Point at a result, or move along with the arrow keys. Enter or a click leads to its row.",
  "trend-point": ({ name, number, of, air }: Words<"name" | "number" | "of" | "air">) =>
    `${name} (${number} of ${of}): ${air} %`,
  "trend-point-compared": ({ what, verdict }: Words<"what" | "verdict">) => `${what}. ${verdict}.`,
  "trend-point-signals": ({ what, signals }: Words<"what" | "signals">) => `${what} ${signals}.`,
  "trend-few": ({ points, enough }: Words<"points" | "enough">) =>
    `These control limits rest on ${points} results only. Below ${enough} (common practice) they may still move a good deal: do not act on them alone.`,
  "trend-table-cut": ({ shown, all }: Words<"shown" | "all">) =>
    `The first ${shown} of ${all}. The others are in the sheet itself, and the chart is drawn from all.`,
  "trend-signals-cut": ({ left }: Words<"left">) => `And ${left} more tests with a signal.`,
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
  "trend-save-png": "Save as a picture",
  "trend-save-svg": "Save as a drawing (SVG)",
  "trend-add-chart": "Put a chart into the workbook",
  "trend-chart-added": ({ sheet }: Words<"sheet">) => `The chart is on the sheet “${sheet}”.`,
  "trend-sheet-name": "Trend",
  "trend-line-air": "Air, %",
  "trend-line-mean": "Mean",
  "trend-line-lower": "Lower control limit",
  "trend-line-upper": "Upper control limit",
  "trend-line-low": "Low limit",
  "trend-line-high": "High limit",
} as const;
