import type { Words, WriteNumber } from "../sentence";

/** Sentences about results against a specification, agreement and control charts. */
export const acceptanceMessages = {
  "precision-method-unknown": ({ value, methods }: Words<"value" | "methods">) =>
    `no precision is on file for “${value}”. Use one of ${methods}, or give the deviation yourself.`,
  "precision-not-established": ({ method }: Words<"method">) =>
    `no precision is established for one operator by ${method}. Give "several" for the operators.`,
  "value-not-in-unit": ({ value, unit, method }: Words<"value" | "unit" | "method">) =>
    `${value} ${unit} cannot be a result by ${method}. Look at the number and its unit; SI units have the method number with an M, such as C138M.`,
  "operators-unknown": ({ value }: Words<"value">) =>
    `“${value}” does not say who made the tests. Type "one" for one operator or "several".`,
  "tolerance-negative": ({ value }: Words<"value">) =>
    `a tolerance of ${value} cannot be. Give how far a result may lie from the target, without a sign.`,
  "limits-missing": "No limit is given. Give a low limit, a high limit, or both.",
  "limits-the-wrong-way-round": ({ low, high }: Words<"low" | "high">) =>
    `The low limit, ${low}, lies above the high limit, ${high}. Look at both.`,
  "places-not-whole": ({ value }: Words<"value">) =>
    `${value} is not a number of decimal places. Give 0, 1, 2 …, or leave it out to compare the number as it is.`,
  "risk-out-of-range": ({ value }: Words<"value">, n: WriteNumber) =>
    `a risk of ${value} cannot be held. Give a chance above 0 and at most ${n("0.5")}, such as ${n("0.05")}.`,
  "guard-leaves-nothing": ({ risk }: Words<"risk">) =>
    `No result can hold a risk of ${risk}: the limits are too near to each other for the deviation of the test. Accept a greater risk or use a more precise method.`,
  "deviation-not-above-zero": ({ value }: Words<"value">) =>
    `${value} is not a standard deviation. Give a number above 0 in the unit of the result.`,
  "lambda-out-of-range": ({ value }: Words<"value">, n: WriteNumber) =>
    `a weight of ${value} cannot be. Give a number above 0 and at most 1; ${n("0.2")} to ${n("0.3")} is usual.`,
  "allowance-negative": ({ value }: Words<"value">) =>
    `an allowance of ${value} cannot be. Give half the shift that matters, in the unit of the values.`,
  "decision-not-above-zero": ({ value }: Words<"value">) =>
    `${value} is not a decision value. Give a number above 0 in the unit of the values.`,
  "chart-limits-needed":
    "lower limit, mean and upper limit are needed, in rising order, as CHART.LIMITS gives them.",
  "one-column-needed": ({ columns }: Words<"columns">) =>
    `the range has ${columns} columns. Give one column, because each result takes several cells side by side.`,
  "one-series-needed": ({ rows, columns }: Words<"rows" | "columns">) =>
    `the range has ${rows} rows and ${columns} columns. Give the results of one series, in one column or one row.`,
  "one-value-needed": ({ cells }: Words<"cells">) =>
    `${cells} cells are given. Give a single value.`,
  "place-in-series": ({ name, cell }: Words<"name" | "cell">) => `${name}, cell ${cell}`,
  "chart-needs-two-values":
    "A control chart needs two values or more. Give more results of the same mix.",
  "source-memory": "from memory, to be verified against the standard in force",
  "source-memory-type-a":
    "from memory, to be verified against the standard in force; for meters of Type A and air up to 7 %, Type B has no statement of its own",
  "beyond-a-limit": "beyond a control limit",
  "two-of-three-near-a-limit": "two of three near the same control limit",
  "four-of-five-off-the-mean": "four of five well off the mean on the same side",
  "eight-on-one-side": "eight in a row on one side of the mean",
  "six-rising": "six in a row rising",
  "six-falling": "six in a row falling",
  "fourteen-up-and-down": "fourteen in a row up and down by turns",
} as const;
