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
    "The air content, {air} %, is below the low limit of {limit} %. A check test on another portion of the same sample decides.",
  "above-specification":
    "The air content, {air} %, is above the high limit of {limit} %. A check test on another portion of the same sample decides.",
  "alcohol-not-in-sheet":
    "The sheet has no column for alcohol, so every result is computed without a correction. From 2.5 pt (40 oz, 1.2 L) on it would be lower: add a column such as Alcohol (oz).",
  "agreement-not-recorded":
    "{where}: the sheet records one reading a test, so it cannot be judged whether two readings agreed. Record the first and the second reading.",
  "readings-between-missing":
    "{where}: the first and the final reading differ by more than 0.25 %, and no reading between them is in the sheet, so it cannot be judged whether two readings agreed. Tests with that: {tests}. Record every reading that was taken.",
  leak: "{where}: the meter leaked. The test is void: stop the leak and repeat it.",
  "alcohol-added-late":
    "{where}: alcohol was added after the meter had been filled to zero. The test is void: repeat it with all of the alcohol before zeroing.",
  "wrong-method-for-aggregate":
    "{where}: the pressure method, “{method}”, counts in the air inside {aggregate} aggregate. The test does not stand: repeat it by the volumetric method.",
  "other-method":
    "{where}: “{method}” is not the volumetric method, so the air of this test is not judged here.",
  "cups-not-needed":
    "{where}: the level stood at {level} % with the cups counted in ({cups}), and the scale reaches {end} %. Without cups it would have been on the scale: count them again.",
  "short-inversion":
    "{where}: {seconds} s of inverting are less than the {least} s that the method asks for. Air may have stayed in the concrete.",
  "long-inversion":
    "{where}: {seconds} s upside down are more than the {most} s allowed at a time. Aggregate may have jammed the neck.",
  "short-roll":
    "{where}: {seconds} s of rolling are less than the minute that the method asks for. Air may have stayed in the concrete.",
  "little-water":
    "{where}: {value} {unit} of water before the alcohol are less than the {least} {unit} that the method asks for. Look at the record again.",
  "other-alcohol-strength":
    "{where}: the correction is for alcohol of {usual} %, not {percent} %. Look at the bottle and at the record.",
  "alcohol-over-capacity":
    "{where}: with {water} {unit} of water first, a top section of the least size takes {most} {unit} of alcohol, not {value} {unit}. Look at the amount, or see which correction belongs to the larger meter.",
  "interpolated-correction":
    "{where}: {value} {unit} lies between two rows of the correction table. {subtracted} % was interpolated.",
  "final-reading-wrong":
    "{where}: {recorded} % is recorded as final, but the readings give {reading} %. Correct it, and see what was worked out from it.",
  "void-test-reported":
    "{where}: {reported} % is reported, but the test is void. Take the result out, and report that of the repeat.",
  "void-without-repeat":
    "{where}: the test is void, and no later test of the same sample is in the sheet. Repeat it, or enter the repeat below it.",
  "repeat-without-more-alcohol":
    "{where}: the test before was void with {before} {unit} of alcohol, and this repeat used {after} {unit}. Repeat a void test with more.",
  "stale-sample":
    "{where}: the test started {minutes} minutes after the last portion of the sample was taken; {most} are allowed. Look at the times, or sample again.",
  "sampling-took-long":
    "{where}: sampling took {minutes} minutes from the first portion to the last; {most} are allowed. Look at the times, or sample again.",
  "times-out-of-order":
    "{where}: {time} is before {before}, the time for “{what}”. Look at both times.",
  "meter-check-overdue":
    "{where}: the meter was last checked on {checked}, more than a year before the test on {tested}. Tests in the sheet that rest on it: {tests}. Have the meter checked.",
  "wet-sieving-due":
    "{where}: aggregate of {size} {unit} is larger than the {most} {unit} that the bowl takes. Remove it by wet sieving, and record that it was done.",
  "check-test-due":
    "{where}: the result is outside the specification, and no check test of it is in the sheet. Make one at once on another portion of the same sample, or enter it below.",
  "check-test-failed":
    "The check test, {check} %, is outside the specification as well, after {first} % at first. The concrete fails; the two results are not averaged.",
  "on-limit":
    "The air content, {air} %, lies on a limit of the specification, which is within. One graduation on the neck decides here: see that the readings were taken with care.",
  "near-limit":
    "The air content, {air} %, is within the specification by {margin} %. One graduation on the neck decides here: see that the readings were taken with care.",
  "duplicate-test":
    "{where}: this row says the same as row {before} in every column that was recognised. Take one of them out if the test was made once.",
  "methods-disagree":
    "{where}: the density gives {gravimetric} % of air and the meter {volumetric} %. Look at the batch masses, the tare, the moisture of the aggregate and the readings.",
} as const;
