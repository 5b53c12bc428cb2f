import type { Words, WriteNumber } from "../sentence";

/** The sentence of each rule, under the rule's own id. */
export const ruleMessages = {
  "foam-over-limit": ({ foam, limit }: Words<"foam" | "limit">) =>
    `${foam} divisions of foam are more than the ${limit} allowed. The test is void: repeat it with more alcohol.`,
  "slow-to-settle": ({ minutes, limit }: Words<"minutes" | "limit">) =>
    `the level needed ${minutes} minutes to settle, more than the ${limit} allowed. The test is void: repeat it with more alcohol.`,
  "readings-disagree": ({ third, second }: Words<"third" | "second">, n: WriteNumber) =>
    `The third reading, ${third} %, differs from the second, ${second} %, by more than ${n("0.25")} %. The test is void: repeat it with more alcohol.`,
  "packed-concrete-left":
    "undisturbed, packed concrete was left in the bowl. The test is void: repeat it and invert until all of it is free.",
  "reading-missing": "there is no meter reading. Enter it, or clear the row if no test was made.",
  "second-reading-missing":
    "the second reading is missing. Enter the reading that was taken after rolling again.",
  "third-reading-missing": ({ second, first }: Words<"second" | "first">, n: WriteNumber) =>
    `The second reading, ${second} %, differs from the first, ${first} %, by more than ${n("0.25")} %, and there is no third. Enter the third reading.`,
  "alcohol-missing":
    "the amount of alcohol is missing, so no correction can be applied. Enter it, or 0 if there was none.",
  "negative-value": ({ value }: Words<"value">) =>
    `${value} is below zero, which cannot be. Look at the record again.`,
  "reported-air-wrong": (
    {
      reported,
      air,
      reading,
      subtracted,
      cups,
    }: Words<"reported" | "air" | "reading" | "subtracted" | "cups">,
    n: WriteNumber,
  ) =>
    `${reported} % is reported, but the record gives ${air} %: reading ${reading} less ${subtracted} for alcohol plus ${cups} for cups, to the nearest ${n("0.25")}.`,
  "below-specification": ({ air, limit }: Words<"air" | "limit">) =>
    `The air content, ${air} %, is below the low limit of ${limit} %. A check test on another portion of the same sample decides.`,
  "above-specification": ({ air, limit }: Words<"air" | "limit">) =>
    `The air content, ${air} %, is above the high limit of ${limit} %. A check test on another portion of the same sample decides.`,
  "reported-below": ({ air, limit }: Words<"air" | "limit">) =>
    `The air as reported, ${air} %, is below the low limit of ${limit} %. There are no readings to check it by; a check test on another portion of the same sample decides.`,
  "reported-above": ({ air, limit }: Words<"air" | "limit">) =>
    `The air as reported, ${air} %, is above the high limit of ${limit} %. There are no readings to check it by; a check test on another portion of the same sample decides.`,
  "readings-not-in-sheet":
    "the sheet records no meter readings, so the air that it reports cannot be checked, and its tests are incomplete. What else it records was looked at.",
  "alcohol-not-in-sheet": (_: Words<never>, n: WriteNumber) =>
    `The sheet has no column for alcohol, so every result is computed without a correction. From ${n("2.5")} pt (40 oz, ${n("1.2")} L) on it would be lower: add a column such as Alcohol (oz).`,
  "agreement-not-recorded":
    "the sheet records one reading a test, so it cannot be judged whether two readings agreed. Record the first and the second reading.",
  "readings-between-missing": ({ tests }: Words<"tests">, n: WriteNumber) =>
    `the first and the final reading differ by more than ${n("0.25")} %, and no reading between them is in the sheet, so it cannot be judged whether two readings agreed. Tests with that: ${tests}. Record every reading that was taken.`,
  leak: "the meter leaked. The test is void: stop the leak and repeat it.",
  "alcohol-added-late":
    "alcohol was added after the meter had been filled to zero. The test is void: repeat it with all of the alcohol before zeroing.",
  "wrong-method-for-aggregate": ({ method, aggregate }: Words<"method" | "aggregate">) =>
    `the pressure method, “${method}”, counts in the air inside ${aggregate} aggregate. The test does not stand: repeat it by the volumetric method.`,
  "other-method": ({ method }: Words<"method">) =>
    `“${method}” is not the volumetric method, so the air of this test is not judged here.`,
  "cups-not-needed": ({ level, cups, end }: Words<"level" | "cups" | "end">) =>
    `the level stood at ${level} % with the cups counted in (${cups}), and the scale reaches ${end} %. Without cups it would have been on the scale: count them again.`,
  "short-inversion": ({ seconds, least }: Words<"seconds" | "least">) =>
    `${seconds} s of inverting are less than the ${least} s that the method asks for. Air may have stayed in the concrete.`,
  "long-inversion": ({ seconds, most }: Words<"seconds" | "most">) =>
    `${seconds} s upside down are more than the ${most} s allowed at a time. Aggregate may have jammed the neck.`,
  "short-roll": ({ seconds }: Words<"seconds">) =>
    `${seconds} s of rolling are less than the minute that the method asks for. Air may have stayed in the concrete.`,
  "little-water": ({ value, unit, least }: Words<"value" | "unit" | "least">) =>
    `${value} ${unit} of water before the alcohol are less than the ${least} ${unit} that the method asks for. Look at the record again.`,
  "other-alcohol-strength": ({ usual, percent }: Words<"usual" | "percent">) =>
    `the correction is for alcohol of ${usual} %, not ${percent} %. Look at the bottle and at the record.`,
  "alcohol-over-capacity": ({
    water,
    unit,
    most,
    value,
  }: Words<"water" | "unit" | "most" | "value">) =>
    `with ${water} ${unit} of water first, a top section of the least size takes ${most} ${unit} of alcohol, not ${value} ${unit}. Look at the amount, or see which correction belongs to the larger meter.`,
  "interpolated-correction": ({
    value,
    unit,
    subtracted,
  }: Words<"value" | "unit" | "subtracted">) =>
    `${value} ${unit} lies between two rows of the correction table. ${subtracted} % was interpolated.`,
  "off-grid-reading": (
    { value, below, above }: Words<"value" | "below" | "above">,
    n: WriteNumber,
  ) =>
    `${value} % lies between two graduations, ${below} and ${above}. The scale is read to ${n("0.25")}; this result rests on an estimate.`,
  "called-void": ({ written, header }: Words<"written" | "header">) =>
    `The tester calls the test void: “${written}” in the column “${header}”. It gives no air content; repeat it.`,
  "may-be-called-void": ({ written, header }: Words<"written" | "header">) =>
    `“${written}” in the column “${header}” can be read in two ways: that the test is void, or something else. Write “test void” if it is, or say what it is about.`,
  "unit-does-not-fit": ({
    value,
    unit,
    low,
    high,
    otherUnit,
  }: Words<"value" | "unit" | "low" | "high" | "otherUnit">) =>
    `${value} ${unit} cannot be, it lies from ${low} to ${high} ${unit}; it looks like ${otherUnit}. Write the unit behind the number, or correct the header.`,
  "value-in-no-unit": ({ value, unit, low, high }: Words<"value" | "unit" | "low" | "high">) =>
    `${value} ${unit} cannot be, it lies from ${low} to ${high} ${unit}. Look at the record again.`,
  "limits-in-some-rows": ({ count }: Words<"count">) =>
    `some tests have no limits, though others have, so they were compared with nothing; such tests: ${count}. Write the limits into each row.`,
  "may-tell-of-fault": ({ written, header }: Words<"written" | "header">) =>
    `“${written}” in the column “${header}” tells of something that may void the test. Write “test void” if it does; if there was nothing, say “no …” there, such as “no leak”.`,
  "final-reading-wrong": ({ recorded, reading }: Words<"recorded" | "reading">) =>
    `${recorded} % is recorded as final, but the readings give ${reading} %. Correct it, and see what was worked out from it.`,
  "void-test-reported": ({ reported }: Words<"reported">) =>
    `${reported} % is reported, but the test is void. Take the result out, and report that of the repeat.`,
  "void-without-repeat":
    "the test is void, and no later test of the same sample is in the sheet. Repeat it, or enter the repeat below it.",
  "repeat-without-more-alcohol": ({ before, unit, after }: Words<"before" | "unit" | "after">) =>
    `the test before was void with ${before} ${unit} of alcohol, and this repeat used ${after} ${unit}. Repeat a void test with more.`,
  "stale-sample": ({ minutes, most }: Words<"minutes" | "most">) =>
    `the test started ${minutes} minutes after the last portion of the sample was taken; ${most} are allowed. Look at the times, or sample again.`,
  "sampling-took-long": ({ minutes, most }: Words<"minutes" | "most">) =>
    `sampling took ${minutes} minutes from the first portion to the last; ${most} are allowed. Look at the times, or sample again.`,
  "times-out-of-order": ({ time, before, what }: Words<"time" | "before" | "what">) =>
    `${time} is before ${before}, the time for “${what}”. Look at both times.`,
  "meter-found-out": ({ failed, since, tests }: Words<"failed" | "since" | "tests">) =>
    `the meter failed its check of ${failed}; it last passed on ${since}. Results since then are in doubt: ${tests} in this sheet. Find out by how much it was off, and judge them again.`,
  "meter-found-out-since-ever": ({ failed, tests }: Words<"failed" | "tests">) =>
    `the meter failed its check of ${failed}, and the sheet shows none before that it passed. Its earlier results are in doubt: ${tests} in this sheet. Find out since when and by how much it was off.`,
  "meter-check-overdue": ({ checked, tested, tests }: Words<"checked" | "tested" | "tests">) =>
    `the meter was last checked on ${checked}, more than a year before the test on ${tested}. Tests in the sheet that rest on it: ${tests}. Have the meter checked.`,
  "wet-sieving-due": ({ size, unit, most }: Words<"size" | "unit" | "most">) =>
    `aggregate of ${size} ${unit} is larger than the ${most} ${unit} that the bowl takes. Remove it by wet sieving, and record that it was done.`,
  "check-test-due":
    "the result is outside the specification, and no check test of it is in the sheet. Make one at once on another portion of the same sample, or enter it below.",
  "check-test-failed": ({ check, first }: Words<"check" | "first">) =>
    `The check test, ${check} %, is outside the specification as well, after ${first} % at first. By the check-test rule of ASTM C94 the concrete fails, and the two are not averaged; see whether the specification names another rule.`,
  "on-limit": ({ air }: Words<"air">) =>
    `within, on the limit: the air content is ${air} %, and a limit itself is within. One graduation on the neck decides here: see that the readings were taken with care.`,
  "near-limit": ({ air, margin }: Words<"air" | "margin">) =>
    `The air content, ${air} %, is within the specification by ${margin} %. One graduation on the neck decides here: see that the readings were taken with care.`,
  "duplicate-test": ({ before }: Words<"before">) =>
    `this row says the same as row ${before} in every column that was recognised. Take one of them out if the test was made once.`,
  "methods-disagree": ({ gravimetric, volumetric }: Words<"gravimetric" | "volumetric">) =>
    `the density gives ${gravimetric} % of air and the meter ${volumetric} %. Look at the batch masses, the tare, the moisture of the aggregate and the readings.`,
} as const;
