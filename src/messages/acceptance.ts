/** Sentences about results against a specification, agreement and control charts. */
export const acceptanceMessages = {
  "precision-method-unknown":
    "{where}: no precision is on file for “{value}”. Use one of {methods}, or give the deviation yourself.",
  "precision-not-established":
    'No precision is established for one operator by {method}. Give "several" for the operators.',
  "value-not-in-unit":
    "{value} {unit} cannot be a result by {method}. Look at the number and its unit; SI units have the method number with an M, such as C138M.",
  "chart-needs-two-values":
    "A control chart needs two values or more. Give more results of the same mix.",
  "beyond-a-limit": "beyond a control limit",
  "two-of-three-near-a-limit": "two of three near the same control limit",
  "four-of-five-off-the-mean": "four of five well off the mean on the same side",
  "eight-on-one-side": "eight in a row on one side of the mean",
  "six-rising": "six in a row rising",
  "six-falling": "six in a row falling",
  "fourteen-up-and-down": "fourteen in a row up and down by turns",
} as const;
