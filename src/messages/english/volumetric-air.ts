import type { Words, WriteNumber } from "../sentence";

/** Sentences about the volumetric air method. */
export const volumetricAirMessages = {
  "reading-negative": ({ value }: Words<"value">) =>
    `a meter reading of ${value} % cannot be; the scale begins at 0. Look at the record again.`,
  "reading-beyond-scale": ({ value, end }: Words<"value" | "end">) =>
    `a meter reading of ${value} % is beyond the ${end} % that the neck scale is sure to reach. Add calibrated cups of water until the level is on the scale, and give the cups separately.`,
  "reading-as-share": ({ value, percent }: Words<"value" | "percent">) =>
    `a meter reading of ${value} looks like ${percent} % in a cell with a percentage format. Type ${percent} into a cell with a number format.`,
  "cups-negative": ({ value }: Words<"value">) =>
    `${value} calibrated cups cannot be. Give the number of cups added, or 0.`,
  "cups-not-whole-number": ({ value }: Words<"value">, n: WriteNumber) =>
    `${value} is not a whole number of calibrated cups. Only full cups count, each ${n("1.00")} %.`,
  "air-beyond-most": ({ cups, air, most }: Words<"cups" | "air" | "most">, n: WriteNumber) =>
    `with ${cups} calibrated cups the air content comes out at ${air} %, and no concrete that is tested so holds more than ${most} %. Count the cups again; each is ${n("1.00")} %.`,
  "alcohol-negative": ({ value }: Words<"value">) =>
    `an amount of alcohol of ${value} cannot be. Give the amount added, or 0.`,
  "alcohol-beyond-table": ({ end, unit, value }: Words<"end" | "unit" | "value">) =>
    `the correction table ends at ${end} ${unit}, and ${value} ${unit} lies beyond it, so no correction can be given. Look at the amount and its unit again.`,
  "air-below-zero": ({ air, reading, subtract }: Words<"air" | "reading" | "subtract">) =>
    `The air content comes out at ${air} %, below zero: reading ${reading} % less ${subtract} % for the alcohol. Look at the reading and the alcohol again.`,
  "second-reading-needed":
    "A second reading is needed: roll the meter again for about a minute and read it.",
  "third-reading-needed": ({ second, first }: Words<"second" | "first">, n: WriteNumber) =>
    `A third reading is needed: the second, ${second} %, differs from the first, ${first} %, by more than ${n("0.25")} %.`,
  "readings-void": ({ third, second }: Words<"third" | "second">, n: WriteNumber) =>
    `The test is void: the third reading, ${third} %, differs from the second, ${second} %, by more than ${n("0.25")} %. Repeat it with more alcohol.`,
  "level-not-settled":
    "The level did not settle within 6 minutes. The test is void: repeat it with more alcohol.",
  "level-not-yet-known": ({ minute }: Words<"minute">, n: WriteNumber) =>
    `The level has not settled by minute ${minute}, where the record ends. Record it until it changes no more than ${n("0.25")} % in 2 minutes, 6 minutes at most.`,
  "minutes-negative": ({ value }: Words<"value">) =>
    `Minute ${value} cannot be. Count from the end of rolling.`,
  "minutes-out-of-order": ({ value, before }: Words<"value" | "before">) =>
    `Minute ${value} comes after minute ${before}. List the levels in the order in which they were read.`,
} as const;
