/** The sentence of each rule, under the rule's own id. `{where}` is the column's header. */
export const ruleMessages = {
  "foam-over-limit":
    "{where}: {foam} divisions of foam are more than the {limit} allowed. The test is void: repeat it with more alcohol.",
  "slow-to-settle":
    "{where}: the level needed {minutes} minutes to settle, more than the {limit} allowed. The test is void: repeat it with more alcohol.",
  "readings-disagree":
    "The third reading, {third} %, differs from the second, {second} %, by more than 0.25 %. The test is void: repeat it with more alcohol.",
  "packed-concrete-left":
    "{where}: concrete was left packed in the bowl. The test is void: repeat it and invert until all of it is free.",
  "reading-missing":
    "{where}: there is no meter reading. Enter it, or clear the row if no test was made.",
  "second-reading-missing":
    "{where}: the second reading is missing. Enter the reading that was taken after rolling again.",
  "third-reading-missing":
    "The second reading, {second} %, differs from the first, {first} %, by more than 0.25 %, and there is no third. Enter the third reading.",
  "alcohol-missing":
    "{where}: the amount of alcohol is missing, so no correction can be applied. Enter it, or 0 if there was none.",
  "alcohol-unit-missing":
    "{where}: {value} has no unit. Write it as “{value} oz” or the like, or put the unit into the header, such as Alcohol (oz).",
  "cannot-be-read": "{where}: the cell cannot be read. Look at it again.",
  "negative-value": "{where}: {value} is below zero, which cannot be. Look at the record again.",
  "beyond-scale":
    "{where}: {value} % is beyond the {end} % that the neck scale is sure to reach. Enter the level that was read on the scale, and the calibrated cups in a column of their own.",
  "off-grid-reading":
    "{where}: {value} % is not on the quarter-percent grid. Readings are taken to the nearest 0.25 %: {below} or {above}.",
  "cups-not-whole":
    "{where}: {value} is not a whole number of calibrated cups. Only full cups count, each 1.00 %.",
  "reported-air-wrong":
    "{where}: {reported} % is reported, but the record gives {air} %: reading {reading} less {subtracted} for alcohol plus {cups} for cups, to the nearest 0.25.",
  "outside-specification": "The air content is outside the specification.",
  "below-specification":
    "The air content, {air} %, is below the low limit of {limit} %. Make a check test on another portion of the same sample at once.",
  "above-specification":
    "The air content, {air} %, is above the high limit of {limit} %. Make a check test on another portion of the same sample at once.",
  "alcohol-not-in-sheet":
    "The sheet has no column for alcohol, so every result is computed without a correction. From 2.5 pt (40 oz, 1.2 L) on it would be lower: add a column such as Alcohol (oz).",
  "agreement-not-recorded":
    "{where}: the sheet records one reading a test, so it cannot be judged whether two readings agreed. Record the first and the second reading.",
} as const;
