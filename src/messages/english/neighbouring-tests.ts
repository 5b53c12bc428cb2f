import type { Words, WriteNumber } from "../sentence";

/** Sentences about the other tests of the sample: density, pressure air, water, evaporation, strength … */
export const neighbouringTestsMessages = {
  "system-unknown": ({ value }: Words<"value">) =>
    `“${value}” is not a system of units. Give "us" or "si".`,
  "value-in-other-system": ({
    quantity,
    value,
    unit,
    other,
    otherUnit,
    low,
    high,
  }: Words<"quantity" | "value" | "unit" | "other" | "otherUnit" | "low" | "high">) =>
    `${quantity} of ${value} ${unit} cannot be. Give "${other}" as units if it is in ${otherUnit}; in ${unit} it lies from ${low} to ${high}.`,
  "value-cannot-be": ({
    quantity,
    value,
    unit,
    low,
    high,
    other,
    otherUnit,
  }: Words<"quantity" | "value" | "unit" | "low" | "high" | "other" | "otherUnit">) =>
    `${quantity} of ${value} ${unit} cannot be: it lies from ${low} to ${high} ${unit}. Look at the value again, and give "${other}" as units if it is in ${otherUnit}.`,
  "not-above-zero": ({ value }: Words<"value">) => `${value} cannot be. Give a number above 0.`,
  "below-zero": ({ value }: Words<"value">) => `${value} cannot be. Give 0 or more.`,
  "not-a-percentage": ({ value }: Words<"value">) =>
    `${value} cannot be. Give a percentage from 0 to 100.`,
  "size-looks-like-date": ({ value }: Words<"value">, n: WriteNumber) =>
    `${value} is the number of a date; Excel makes a date out of 3/4. Write the size as ${n("0.75")}, or as a text: 3/4 in.`,

  "full-not-heavier": ({ full, empty }: Words<"full" | "empty">) =>
    `The full measure, ${full}, is not heavier than the empty one, ${empty}. Look at both masses.`,
  "yield-unit-unknown": ({ value }: Words<"value">) =>
    `“${value}” is not a unit of yield. Give "ft3", "yd3" or "m3".`,
  "relative-yield-cannot-be": ({ yielded, design }: Words<"yielded" | "design">) =>
    `A yield of ${yielded} for a design volume of ${design} cannot be. Give both in one unit of volume.`,
  "density-above-theoretical": ({ density, theoretical }: Words<"density" | "theoretical">) =>
    `The density, ${density}, lies above the theoretical density, ${theoretical}: there would be less than no air. Look at the masses and at the batch again.`,

  "pressure-air-below-zero": ({ gauge, factor }: Words<"gauge" | "factor">) =>
    `The air content comes out below zero: gauge ${gauge} % less an aggregate correction factor of ${factor} %. Look at both.`,
  "mortar-over-passing": ({ mortar, passing }: Words<"mortar" | "passing">) =>
    `The volume of mortar, ${mortar}, is more than all that passes the sieve, ${passing}. Look at both.`,
  "suspended-not-lighter": ({ suspended, saturated }: Words<"suspended" | "saturated">) =>
    `The specimen weighs ${suspended} in water and ${saturated} saturated in air. It must be lighter in water: look at both.`,
  "dried-over-saturated": ({ dried, saturated }: Words<"dried" | "saturated">) =>
    `The specimen weighs ${dried} dried and ${saturated} saturated. It cannot be heavier when dry: look at both.`,

  "cup-and-bowl-in-two-units": ({ cup, bowl, percent }: Words<"cup" | "bowl" | "percent">) =>
    `A cup of ${cup} in a bowl of ${bowl} would be ${percent} % of it, which cannot be. Give both volumes in one unit.`,

  "specified-air-source-unknown": ({ value, names }: Words<"value" | "names">) =>
    `“${value}” is not a table that is held here. Give one of: ${names}.`,
  "exposure-not-in-table": ({
    value,
    source,
    exposures,
  }: Words<"value" | "source" | "exposures">) =>
    `“${value}” is not an exposure in the table of ${source}. It has: ${exposures}.`,
  "size-not-in-table": ({ source, value, sizes }: Words<"source" | "value" | "sizes">) =>
    `the table of ${source} has no aggregate size of ${value}. It has: ${sizes}.`,

  "specified-not-one":
    "the results have more than one specified strength. Give those of one mix at a time.",
  "mean-takes-in-unreadable":
    "The mean of three takes in a result that cannot be read. Correct that result first.",
  "deviation-from-too-few": ({ tests, least }: Words<"tests" | "least">) =>
    `a standard deviation from so few tests (${tests}) is not enough; at least ${least} are needed. Use the increase that the code gives for a mix without a record.`,
  "tests-not-whole": ({ value }: Words<"value">) =>
    `${value} is not a number of tests. Give a whole number.`,
  "cylinders-not-pairs-or-triples": ({ columns }: Words<"columns">) =>
    `the number of columns is ${columns}. Give one test in a row, 2 or 3 cylinders beside each other.`,
  "cylinders-row": ({ row }: Words<"row">) => `cylinders, row ${row}`,
  "cylinders-not-of-one-test": ({ row, least, most }: Words<"row" | "least" | "most">) =>
    `row ${row} holds ${least} and ${most}, which cannot be cylinders of one test. Give one test in a row, all in one unit, and only its strengths.`,
  "cylinder-alone": ({ row }: Words<"row">) =>
    `row ${row} holds a single cylinder, which has no range. Give 2 or 3 in each row, or leave the row blank.`,
  "no-cylinders": "the range is blank. Give 2 or 3 cylinders in each row.",

  "methods-disagree-weighing": ({
    gravimetric,
    volumetric,
    yielded,
  }: Words<"gravimetric" | "volumetric" | "yielded">) =>
    `the density gives ${gravimetric} % of air and the meter ${volumetric} %. The yield, ${yielded}, is off to the same side and rests on the same density: look first at the tare, the full mass and the volume of the measure.`,
  "methods-disagree-batch": ({
    gravimetric,
    volumetric,
    yielded,
  }: Words<"gravimetric" | "volumetric" | "yielded">) =>
    `the density gives ${gravimetric} % of air and the meter ${volumetric} %. The yield, ${yielded}, is off to the other side: look first at the batch masses and the moisture of the aggregate.`,
  "methods-disagree-meter": ({
    gravimetric,
    volumetric,
    yielded,
  }: Words<"gravimetric" | "volumetric" | "yielded">) =>
    `the density gives ${gravimetric} % of air and the meter ${volumetric} %. The yield, ${yielded}, is near 1 and speaks for the density: look first at the readings of the meter.`,
  "density-below-specification": ({ density, unit, limit }: Words<"density" | "unit" | "limit">) =>
    `the fresh density, ${density} ${unit}, is below the ${limit} ${unit} allowed. Look at the air content and at the weighing; a check test decides.`,
  "density-above-specification": ({ density, unit, limit }: Words<"density" | "unit" | "limit">) =>
    `the fresh density, ${density} ${unit}, is above the ${limit} ${unit} allowed. Look at the air content and at the weighing; a check test decides.`,
  "slump-below-limit": ({ slump, unit, limit }: Words<"slump" | "unit" | "limit">) =>
    `the slump, ${slump} ${unit}, is below the ${limit} ${unit} specified. A check test on another portion of the same sample decides.`,
  "slump-above-limit": ({ slump, unit, limit }: Words<"slump" | "unit" | "limit">) =>
    `the slump, ${slump} ${unit}, is above the ${limit} ${unit} specified. A check test on another portion of the same sample decides.`,
  "slump-outside-tolerance": ({
    slump,
    unit,
    nominal,
    low,
    high,
  }: Words<"slump" | "unit" | "nominal" | "low" | "high">) =>
    `a slump of ${slump} ${unit} is too far from the ${nominal} ${unit} specified; ${low} to ${high} ${unit} are allowed. A check test on another portion of the same sample decides.`,
  "concrete-too-warm": ({ temperature, unit, limit }: Words<"temperature" | "unit" | "limit">) =>
    `the concrete, at ${temperature} ${unit}, is warmer than ${limit} ${unit}. Look at what the specification says of hot weather.`,
  "concrete-too-cold": ({ temperature, unit, limit }: Words<"temperature" | "unit" | "limit">) =>
    `the concrete, at ${temperature} ${unit}, is colder than ${limit} ${unit}. Look at what the specification says of cold weather.`,
  "measure-too-small": ({ size, unit, ft3, litres }: Words<"size" | "unit" | "ft3" | "litres">) =>
    `for aggregate of ${size} ${unit} the measure must hold at least ${ft3} ft³ (${litres} L). The density cannot be relied on: use a larger measure.`,
  "bowl-too-small": ({ bowl, least }: Words<"bowl" | "least">) =>
    `a bowl of ${bowl} is smaller than the ${least} that the method asks for. Standardise the bowl again, or use another meter.`,
  "cup-out-of-tolerance": (
    { percent, low, high }: Words<"percent" | "low" | "high">,
    n: WriteNumber,
  ) =>
    `the calibrated cup holds ${percent} % of the bowl; ${low} to ${high} % are allowed. Each cup is counted as ${n("1.00")} %: standardise it again.`,
  "humidity-as-share": ({ value, percent }: Words<"value" | "percent">) =>
    `a humidity of ${value} looks like ${percent} % in a cell with a percentage format. Type ${percent} into a cell with a number format.`,
  "evaporation-high": ({ rate, unit, from }: Words<"rate" | "unit" | "from">) =>
    `${rate} ${unit} of water evaporate, and care is due from ${from} ${unit} on. Shade, screen or fog the concrete, and begin curing at once.`,
  "pressure-check-due": ({ factor, from }: Words<"factor" | "from">) =>
    `with an aggregate correction factor of ${factor} %, ${from} % or more, a pressure meter is verified by the volumetric method. Make a volumetric test.`,
  "pressure-check-may-be-due": ({ slump, unit, most }: Words<"slump" | "unit" | "most">) =>
    `with a slump of ${slump} ${unit}, ${most} ${unit} or less, the pressure meter may have to be verified by the volumetric method. See what the specification says.`,
  "too-many-revolutions": ({ revolutions, most }: Words<"revolutions" | "most">) =>
    `the drum turned ${revolutions} times; ${most} are allowed. See whether the purchaser agreed to more.`,
  "discharged-late": ({ minutes, most }: Words<"minutes" | "most">) =>
    `discharge ended ${minutes} minutes after batching; ${most} are allowed. See whether the purchaser agreed to more.`,
} as const;
