import type { Words } from "../sentence";

/** What is said of a setup: of its lines that cannot be used, and where it does not fit a sheet. */
export const setupMessages = {
  "setup-without-headings":
    "Nothing of the setup was applied: none of its lines is headed Header and Taken for, or Mix and Low, High, Target or Tolerance.",
  "setup-line-above-headings": ({ line }: Words<"line">) =>
    `setup, line ${line}: it stands above the headings and was not read. Move it below them.`,
  "setup-column-not-used": ({ line, heading }: Words<"line" | "heading">) =>
    `setup, line ${line}: nothing is done with the column “${heading}”.`,
  "setup-no-header": ({ line }: Words<"line">) =>
    `setup, line ${line}: it names no header, so it was not applied. Write the header as it stands in the sheet.`,
  "setup-nothing-taken-for": ({ line, header }: Words<"line" | "header">) =>
    `setup, line ${line}: it does not say what “${header}” is taken for, so it was not applied. Write the name of a field, or "not ours".`,
  "setup-field-unknown": ({ line, header, field }: Words<"line" | "header" | "field">) =>
    `setup, line ${line}: “${field}”, for which “${header}” is to be taken, is no field that is known here, so it was not applied. Write the name of a field, such as "first reading", or "not ours".`,
  "setup-unit-unknown": ({ line, header, unit }: Words<"line" | "header" | "unit">) =>
    `setup, line ${line}: “${unit}” is no unit that is known here, so nothing was applied to “${header}”.`,
  "setup-unit-does-not-fit": ({ line, unit, field }: Words<"line" | "unit" | "field">) =>
    `setup, line ${line}: ${field} is not given in ${unit}, so the line was not applied. Correct the unit or what the column is taken for.`,
  "setup-header-twice": ({ line, header, before }: Words<"line" | "header" | "before">) =>
    `setup, line ${line}: line ${before} says something else of “${header}”, so neither was applied. Leave one of them.`,
  "setup-no-mix": ({ line }: Words<"line">) =>
    `setup, line ${line}: it names no mix, so it was not applied. Write the mix as it stands in the sheet.`,
  "setup-no-limits": ({ line, mix }: Words<"line" | "mix">) =>
    `setup, line ${line}: it gives no limit for mix “${mix}”. Give a low or a high one, or a target with its tolerance.`,
  "setup-limit-unreadable": ({ line, heading, why }: Words<"line" | "heading" | "why">) =>
    `setup, line ${line}, ${heading}: the line was not applied. ${why}`,
  "setup-limits-crossed": ({ line, low, high }: Words<"line" | "low" | "high">) =>
    `setup, line ${line}: the low limit, ${low} %, lies above the high one, ${high} %, so the line was not applied. Look at both.`,
  "setup-mix-twice": ({ line, mix, before }: Words<"line" | "mix" | "before">) =>
    `setup, line ${line}: line ${before} says something else of mix “${mix}”, so neither was applied. Leave one of them.`,
  "setup-header-missing": ({ header }: Words<"header">) =>
    `the setup was not applied to “${header}”: nothing that is read in this sheet is headed so.`,
  "setup-header-of-several": ({ header }: Words<"header">) =>
    `the setup was not applied to “${header}”: several columns of this sheet are headed so. Give each its own header.`,
  "setup-mixes-missing": ({ mixes }: Words<"mixes">) =>
    `The setup has no specification for mix ${mixes}, and the sheet has none, so these tests were compared with nothing. Add a line for it to the setup.`,
  "setup-no-mix-column":
    "The setup gives specifications by mix, and no column of this sheet is read as the mix, so they were not applied. Head one Mix.",
} as const;
