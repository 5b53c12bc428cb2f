import type { Words, WriteNumber } from "../sentence";

/** Which slip explains a wrong result, under the slip's own id. `{reported}` is the reported air. */
export const slipMessages = {
  "correction-forgotten": ({ reported, subtracted }: Words<"reported" | "subtracted">) =>
    `${reported} % comes out when the correction for alcohol, ${subtracted}, is forgotten. Subtract it.`,
  "correction-added": ({ reported, subtracted }: Words<"reported" | "subtracted">) =>
    `${reported} % comes out when the correction for alcohol, ${subtracted}, is added. Subtract it.`,
  "correction-not-due": (
    { reported, subtracted, amount, unit }: Words<"reported" | "subtracted" | "amount" | "unit">,
    n: WriteNumber,
  ) =>
    `${reported} % comes out when ${subtracted} is subtracted for ${amount} ${unit} of alcohol. Under ${n("2.5")} pt, 40 oz or ${n("1.2")} L nothing is subtracted.`,
  "unit-mistaken": ({
    reported,
    amount,
    unit,
    other,
    subtracted,
  }: Words<"reported" | "amount" | "unit" | "other" | "subtracted">) =>
    `${reported} % comes out when ${amount} ${unit} of alcohol is read as ${amount} ${other}, with a correction of ${subtracted}. See which unit is right.`,
  "aggregate-factor-subtracted": ({ reported, factor }: Words<"reported" | "factor">) =>
    `${reported} % comes out when the aggregate correction factor, ${factor}, is subtracted. It belongs to the pressure method only.`,
  "cups-forgotten": ({ reported, cups }: Words<"reported" | "cups">) =>
    `${reported} % comes out when the calibrated cups, ${cups}, are forgotten. Add them.`,
  "cups-counted-twice": ({ reported, cups }: Words<"reported" | "cups">) =>
    `${reported} % comes out when the calibrated cups, ${cups}, are added twice. Add them once.`,
  "cups-subtracted": ({ reported, cups }: Words<"reported" | "cups">) =>
    `${reported} % comes out when the calibrated cups, ${cups}, are subtracted. Add them.`,
  "first-reading-used": ({ reported, used, reading }: Words<"reported" | "used" | "reading">) =>
    `${reported} % comes out when an earlier reading, ${used} %, is used. The final one is ${reading} %.`,
  "readings-averaged": ({
    reported,
    average,
    reading,
  }: Words<"reported" | "average" | "reading">) =>
    `${reported} % comes out when the readings are averaged to ${average} %. The final one, ${reading} %, counts alone.`,
  "recorded-final-used": ({ reported, used, reading }: Words<"reported" | "used" | "reading">) =>
    `${reported} % comes out of the recorded final reading, ${used} %. The readings give ${reading} %.`,
  "rounded-to-other-step": (
    { reported, unrounded, step }: Words<"reported" | "unrounded" | "step">,
    n: WriteNumber,
  ) =>
    `${reported} % comes out when ${unrounded} % is rounded to the nearest ${step} %. Round to the nearest ${n("0.25")} %.`,
  "digits-swapped": ({ reported, air }: Words<"reported" | "air">) =>
    `${reported} % is ${air} % with two digits changed over. Write it again.`,
  "half-rounded-up": ({ reported, unrounded }: Words<"reported" | "unrounded">, n: WriteNumber) =>
    `${reported} % comes out when ${unrounded} %, half-way between two steps of ${n("0.25")} %, is rounded up. Round it to the even step.`,
  "left-unrounded": ({ reported }: Words<"reported">, n: WriteNumber) =>
    `${reported} % comes out when the result is not rounded. Round it to the nearest ${n("0.25")} %.`,
  unexplained: ({ reported }: Words<"reported">) =>
    `No slip that is known here gives ${reported} %. Work the result out again from the readings, the cups and the alcohol.`,
} as const;
