import type { Words, WriteNumber } from "../sentence";

/** Sentences about single values. */
export const measureMessages = {
  "amount-in-unit": ({ amount, unit }: Words<"amount" | "unit">) => `${amount} ${unit}`,
  "from-to": ({ from, to }: Words<"from" | "to">) => `${from} to ${to}`,
  "more-than": ({ value }: Words<"value">) => `more than ${value}`,
  "not-a-number": ({ value }: Words<"value">, n: WriteNumber) =>
    `“${value}” is not a number. Type a number, such as ${n("5.25")}.`,
  "comma-is-unclear": ({ value, read }: Words<"value" | "read">) =>
    `“${value}” can be read in two ways. Type ${read} if the comma is a decimal comma.`,
  "point-is-unclear": ({ value, whole, read }: Words<"value" | "whole" | "read">) =>
    `“${value}” can be read in two ways. Type ${whole} if the point sets off thousands, ${read} if it is a decimal point.`,
  "cell-error": ({ value }: Words<"value">) =>
    `the cell holds the error ${value}. Correct that cell first.`,
  "duration-as-clock": ({ value, clock }: Words<"value" | "clock">, n: WriteNumber) =>
    `${value} is what a spreadsheet makes of ${clock}, which it takes for a time of day. Type the minutes as a number, such as ${n("7.5")}, or as a text, such as 7 min 30 s.`,
  "minutes-as-clock": ({ value, clock }: Words<"value" | "clock">, n: WriteNumber) =>
    `${value} is what a spreadsheet makes of ${clock}, which it takes for a time of day. Give the minutes as a number, such as ${n("7.5")}.`,
  "percent-as-share": ({ value, percent }: Words<"value" | "percent">) =>
    `${value} looks like ${percent} % in a cell with a percentage format. Type ${percent} into a cell with a number format.`,
  "may-sum-up":
    "nothing in the row names a test, and each of its numbers is the total or the mean of those above. Begin the row with “Total” or “Mean”, or name its test.",
  "zero-or-blank":
    'the cell is 0 or blank: this Excel may hand over a blank cell as 0. Write a 0 as a text (\'0 in a cell, "0" in a formula), or try =FRESH.BLANK.TEST on a blank cell, which has to give “blank”.',
  "not-a-blank-cell": ({ value }: Words<"value">) =>
    `“${value}” stands in it. Point to a cell that is blank.`,
  "step-not-positive": ({ value }: Words<"value">) =>
    `${value} is not a step. Give a number above 0, or 0 for no rounding.`,
  "step-not-reported": ({ value, least, most }: Words<"value" | "least" | "most">) =>
    `no air content is reported in steps of ${value} %. Give a step from ${least} to ${most}, or 0 for no rounding.`,
  "result-beyond-a-cell":
    "The result is larger than a cell can hold. Look for a number that is far too large or too small.",
  "argument-missing": "nothing is given. Point to a cell that holds a value.",
  "blank-among-others":
    "the cell is blank, and a blank is not a zero. Enter the amount, or 0 if there was none.",
  "sizes-differ": ({
    rows,
    columns,
    otherRows,
    otherColumns,
  }: Words<"rows" | "columns" | "otherRows" | "otherColumns">) =>
    `the range is ${rows} × ${columns} cells (rows × columns), the others ${otherRows} × ${otherColumns}. Give ranges of one size, or single values.`,
  "whole-column":
    "a whole column is given. Give only the rows that hold data, such as A2:A200, or a table column.",
  "alcohol-has-no-unit": ({ value }: Words<"value">) =>
    `${value} has no unit. Give "pt", "oz", "L" or "mL", or write the amount as "48 oz".`,
  "alcohol-not-an-amount": ({ value }: Words<"value">) =>
    `“${value}” is not an amount. Write it with its unit, such as 48 oz, or 0 if there was none.`,
  "alcohol-unit-unknown": ({ value }: Words<"value">) =>
    `“${value}” is not a unit of alcohol that the correction table lists. Use pt, oz, L or mL.`,
  "not-yes-or-no": ({ value }: Words<"value">) =>
    `“${value}” is neither yes nor no. Type yes, no, or nothing.`,
  "not-a-date": ({ value }: Words<"value">) =>
    `“${value}” is not a date. Type it as a date, or as 2026-05-31.`,
  "date-is-unclear": ({ value, one, other }: Words<"value" | "one" | "other">) =>
    `“${value}” can be read in two ways, day or month first: ${one} or ${other}. Type it as a date, or as 2026-05-31.`,
  "two-ways": ({ value, one, other }: Words<"value" | "one" | "other">) =>
    `“${value}” can be read in two ways: ${one} or ${other}. Type the one that is meant.`,
  "bound-leaves-open": ({ value, limit }: Words<"value" | "limit">) =>
    `“${value}” can be read in two ways: more than ${limit}, or not. Type what was measured.`,
  "tick-is-unclear": ({ value }: Words<"value">) =>
    `“${value}” can be read in two ways: that it happened, or that somebody looked and it had not. Type yes or no.`,
  "found-or-tested": ({ value }: Words<"value">) =>
    `“${value}” can be read in two ways: what the test found, or whether it was made. Type pass or fail.`,
  "nothing-above": ({ value }: Words<"value">) =>
    `“${value}” stands for the cell above, and there is nothing above it. Type the value.`,
  "not-a-specification": ({ value }: Words<"value">, n: WriteNumber) =>
    `“${value}” is not a specification. Type it as 6 ± ${n("1.5")}, ${n("4.5")} to ${n("7.5")}, min 4 or max ${n("7.5")}.`,
  "specification-looks-like-date": ({ value }: Words<"value">) =>
    `${value} cannot be a content of air; spreadsheets make a date of 5-8. Type it as 5 to 8.`,
  "aggregate-size-cannot-be": ({ value }: Words<"value">) =>
    `“${value}” cannot be an aggregate size. Write it with its unit, such as 3/4 in or 19 mm.`,
  "not-a-time": ({ value }: Words<"value">) => `“${value}” is not a time of day. Type it as 14:05.`,
} as const;
