import type { Words, WriteNumber } from "../sentence";

/** Sentences about what follows a result: disposition, bias, tests due, registers, water. */
export const decisionMessages = {
  "disposition-rule-unknown": ({ value, names }: Words<"value" | "names">) =>
    `“${value}” is not a rule that is held here. Give one of: ${names}.`,
  "far-below-zero": ({ value }: Words<"value">) =>
    `a result cannot lie ${value} outside. Give how far outside its limits is far outside, without a sign.`,
  "left-below-zero": ({ value }: Words<"value">) =>
    `${value} cannot be left. Give what is left of the time or the revolutions that the ticket allows, 0 for nothing.`,
  "reading-not-decided":
    "The reading is blank, and nothing bounds the air content without one. Give the final meter reading, or the first.",
  "air-takes-all": ({ air }: Words<"air">) =>
    `an air content of ${air} % leaves no concrete. Give a percentage from 0 to below 100.`,
  "density-not-by-air": ({ density, reference }: Words<"density" | "reference">) =>
    `Air alone cannot turn a density of ${reference} into ${density}. Give both in one unit, and look at both.`,
  "nobody-to-compare":
    "Nobody can be compared: no mix has tests by two. Give a column in which two or more names test the same mix.",
  "mix-of-test-missing":
    "the cell is blank, and a test is compared only within its mix; of split samples within its sample. Enter it.",
  "times-needed": ({ rule }: Words<"rule">) =>
    `The rule “${rule}” counts by hours, and the time of day of a load is missing. Give each day with its time, or another rule.`,
  "tested-or-zero":
    "0 can be read in two ways: that no test was made, or that one found 0. Leave the cell blank where none was made.",
  "tests-rule-unknown": ({ value, names }: Words<"value" | "names">) =>
    `“${value}” is not a rule of testing that is held here. Give one of: ${names}.`,
  "volumes-needed": ({ rule }: Words<"rule">) =>
    `The rule “${rule}” counts by volume, and a volume is missing. Give the volume of each load.`,
  "register-columns": ({ columns }: Words<"columns">) =>
    `the register has ${columns} ${columns === "1" ? "column" : "columns"}. Give id and day of the check beside each other, and the months until the next as a third if they differ.`,
  "register-row": ({ row }: Words<"row">) => `register, row ${row}`,
  "register-blank": "the register is blank. Give its ids and the dates of their last checks.",
  "interval-not-whole": ({ value }: Words<"value">) =>
    `an interval of ${value} months cannot be. Give whole months, 1 to 120.`,
  "register-current": "current",
  "register-due": ({ days }: Words<"days">) =>
    days === "0" ? "due today" : `due in ${days} ${days === "1" ? "day" : "days"}`,
  "register-overdue": ({ days }: Words<"days">) =>
    `overdue by ${days} ${days === "1" ? "day" : "days"}`,
  "register-unknown": "unknown",
  "en206-quantity-unknown": ({ value }: Words<"value">) =>
    `“${value}” is not a quantity that EN 206 has a single result for here. Give "air", "lightweight density" or "w/c".`,
  "by-not-in-sheet": ({ value }: Words<"value">) =>
    `“${value}” is no column of the table. Give "mix", "day", "meter", "load", "method", "technician" or "plant", or the header of a column as it stands.`,
  "moulded-late": ({ minutes, most }: Words<"minutes" | "most">) =>
    `moulding began ${minutes} minutes after the last portion of the sample was taken; ${most} are allowed. Look at the times, or sample again for the specimens.`,
  "sampled-from-an-end": ({ share, from, to }: Words<"share" | "from" | "to">) =>
    `the sample was taken when ${share} % of the load was discharged; a sample for acceptance is taken between ${from} and ${to} %. Sample again from the middle of the load.`,
  "water-added-again": ({ times }: Words<"times">) =>
    `water was added ${times} times; it is added once, on arrival. See who allowed it, and work out w/cm with all of it.`,
  "too-few-revolutions-after": ({ turns, least }: Words<"turns" | "least">) =>
    `the drum turned ${turns} times after the addition; at least ${least} at mixing speed are asked for. Mix on, and test again.`,
  "too-few-cylinders": ({ cylinders, least, size }: Words<"cylinders" | "least" | "size">) =>
    `${cylinders} of ${size} are fewer than the ${least} cylinders of which a strength test is the mean. Make the missing ones from the same sample, or say that there is no strength test.`,
  "too-few-cylinders-of-any-size": ({
    cylinders,
    large,
    small,
  }: Words<"cylinders" | "large" | "small">) =>
    `${cylinders} cylinder is too few: a strength test is the mean of ${large} of 6 × 12 in or ${small} of 4 × 8 in. Make the missing ones from the same sample, or say that there is no strength test.`,
  "cylinders-apart": ({ count, range, most }: Words<"count" | "range" | "most">) =>
    `The ${count} cylinders of this sample differ by ${range} % of their mean; ${most} % should not be passed. Look at how they were made, capped and loaded before the mean is used.`,
  "cylinders-apart-on-average": ({
    pairs,
    mean,
    most,
    unit,
  }: Words<"pairs" | "mean" | "most" | "unit">) =>
    `The ${pairs} pairs of cylinders differ by ${mean} ${unit} on average; up to ${most} ${unit} is held to be acceptable. Look at how specimens are made, cured and tested.`,
  "water-cement-over-limit": ({ ratio, most }: Words<"ratio" | "most">) =>
    `The w/cm is ${ratio} with all water counted; ${most} is the most allowed. Hold the load and ask the engineer.`,
  "water-cement-over-limit-on-site": ({ ratio, most }: Words<"ratio" | "most">) =>
    `The w/cm is ${ratio} with all water counted, also what was added on site; ${most} is the most allowed. Hold the load and ask the engineer.`,
  "water-cement-not-compared":
    "The w/cm was not compared with its limit, because water and binder are not in one system of units. Write the unit of each into its header: lb or gal, or kg or L.",
  "cured-too-cold": ({ temperature, limit, unit }: Words<"temperature" | "limit" | "unit">) =>
    `the specimens were as cold as ${temperature} ${unit}; in initial curing ${limit} ${unit} are the least. Their strength may be lower than that of the concrete: say so with it.`,
  "cured-too-warm": ({ temperature, limit, unit }: Words<"temperature" | "limit" | "unit">) =>
    `the specimens were as warm as ${temperature} ${unit}; in initial curing ${limit} ${unit} are the most. Their later strength may be lower than that of the concrete: say so with it.`,
  "density-and-air": ({
    off,
    byAir,
    left,
    air,
    aim,
    unit,
  }: Words<"off" | "byAir" | "left" | "air" | "aim" | "unit">) =>
    `the density lies ${off} ${unit} off its target. ${air} % of air in place of ${aim} % makes ${byAir} of it; ${left} ${unit} are left for moisture, batching or weighing.`,
  "decided-all-the-same": ({ least, most, verdict }: Words<"least" | "most" | "verdict">) =>
    `whatever is missing, the air content ${least === most ? `is ${least}` : `lies between ${least} and ${most}`} %, which is ${verdict}. The load is decided; complete the record all the same.`,
  "decided-within": "within the limits",
  "decided-below": "below the limits",
  "decided-above": "above the limits",
  "places-of-sampling": ({ mix, means }: Words<"mix" | "means">) =>
    `${mix === "" ? "the tests were" : `the tests of ${mix} were`} sampled in different places, with these mean air contents: ${means}. Compare them apart.`,
  "mean-of-place": ({ place, mean, tests }: Words<"place" | "mean" | "tests">) =>
    `${place} ${mean} % (${tests})`,
  "exposure-without-limit": ({ value, classes }: Words<"value" | "classes">) =>
    `“${value}” has no limit of w/cm in the table of ACI 318-19. It has: ${classes}; or give the limit as a number.`,
  "water-cement-limit-cannot-be": (
    { value, low, high }: Words<"value" | "low" | "high">,
    n: WriteNumber,
  ) =>
    `a limit of w/cm of ${value} cannot be: it lies from ${low} to ${high}. Type it as ${n("0.45")}, or leave the cell blank for none.`,
  "water-cement-cannot-be": ({ ratio }: Words<"ratio">) =>
    `A w/cm of ${ratio} cannot be. Give all water and the cementitious material for the same volume, in one unit of mass.`,
} as const;
