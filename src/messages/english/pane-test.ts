import type { Words, WriteNumber } from "../sentence";

/** What the page about one test says. */
export const paneTestMessages = {
  "test-title-none": "One test",
  "test-title": ({ row }: Words<"row">) => `The test in row ${row}`,
  "test-title-sample": ({ row, sample }: Words<"row" | "sample">) =>
    `The test in row ${row}, ${sample}`,
  "test-check-first":
    "Press Check and select a test in the sheet, or type the numbers of a test here.",
  "test-select-row": "Select a test in the checked table, or type the numbers of a test here.",
  "test-found": "Found in this test:",
  "test-is-void":
    "Its result does not stand and is not compared with the specification. What follows is what the numbers alone would give.",
  "test-is-incomplete":
    "It decides nothing until its record is complete. What follows takes what is missing as none.",
  "reading-title": "The final reading",
  "reading-second-missing": ({ first }: Words<"first">) =>
    `There is a first reading, ${first} %, and no second one to agree with it.`,
  "reading-second-agrees": ({ first, second }: Words<"first" | "second">, n: WriteNumber) =>
    `The second reading, ${second} %, agrees with the first, ${first} %, within ${n("0.25")} %: the second is final.`,
  "reading-third-unneeded": ({ third }: Words<"third">) =>
    `The third, ${third} %, was not needed and does not count.`,
  "reading-second-differs": ({ first, second }: Words<"first" | "second">, n: WriteNumber) =>
    `The second reading, ${second} %, differs from the first, ${first} %, by more than ${n("0.25")} %, so a third is needed.`,
  "reading-third-missing": "There is none.",
  "reading-third-agrees": ({ second, third }: Words<"second" | "third">, n: WriteNumber) =>
    `The third, ${third} %, agrees with the second, ${second} %, within ${n("0.25")} %: the third is final.`,
  "reading-third-differs": ({ second, third }: Words<"second" | "third">) =>
    `The third, ${third} %, differs from the second, ${second} %, as well: the test is void.`,
  "test-no-final-reading":
    "The readings of this row do not give a final reading. Type one to see what it would give.",
  "test-inputs": "Try other numbers",
  "test-changes-nothing": "Numbers typed here change nothing in the sheet.",
  "test-reset": "Back to the record",
  "test-input-reading": "Final reading, %",
  "test-input-cups": "Calibrated cups",
  "test-input-alcohol": "Alcohol (such as 48 oz)",
  "test-input-low": "Low limit, %",
  "test-input-high": "High limit, %",
  "test-input-check": "Check test, %",
  "test-input-deviation": "Your own deviation, %",
  "test-no-limits": "Without limits there is nothing to compare the result with.",
  "test-margin-inside": ({ amount }: Words<"amount">) =>
    `It lies ${amount} % inside the nearer limit.`,
  "test-margin-outside": ({ amount }: Words<"amount">) => `It lies ${amount} % outside the limit.`,
  "test-margin-on-limit":
    "Within, on the limit: a limit itself is within. The true air content is then about as likely beyond the limit as inside it, which changes nothing about the verdict.",
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
  "steps-rounding": (_: Words<never>, n: WriteNumber) =>
    `rounded to the nearest ${n("0.25")}, halves to even`,

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
} as const;
