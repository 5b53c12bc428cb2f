import type { Words } from "../sentence";

/** What is said of a setup: of its lines that cannot be used, and where it does not fit a sheet. */
export const setupMessages = {
  "setup-without-headings":
    "Nothing of the setup was applied: none of its lines is headed Header and Taken for, Setting and Value, or Mix and what is specified for it, such as Low and High.",
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
  "setup-target-alone": ({ line, heading, target }: Words<"line" | "heading" | "target">) =>
    `setup, line ${line}, ${heading}: ${target} alone is no limit, so the line was not applied. Give the tolerance as well, or a low and a high limit.`,
  "setup-tolerance-alone": ({ line, heading }: Words<"line" | "heading">) =>
    `setup, line ${line}, ${heading}: it is not said around what, so the line was not applied. Give the target as well.`,
  "setup-value-unreadable": ({ line, heading, why }: Words<"line" | "heading" | "why">) =>
    `setup, line ${line}, ${heading}: the line was not applied. ${why}`,
  "setup-units-differ": ({
    line,
    heading,
    one,
    other,
  }: Words<"line" | "heading" | "one" | "other">) =>
    `setup, line ${line}, ${heading}: one limit is in ${one} and the other in ${other}, so the line was not applied. Give both in one unit.`,
  "setup-limits-crossed": ({
    line,
    heading,
    low,
    high,
  }: Words<"line" | "heading" | "low" | "high">) =>
    `setup, line ${line}, ${heading}: the low limit, ${low}, lies above the high one, ${high}, so the line was not applied. Look at both.`,
  "setup-mix-twice": ({ line, mix, before }: Words<"line" | "mix" | "before">) =>
    `setup, line ${line}: line ${before} says something else of mix “${mix}”, so neither was applied. Leave one of them.`,
  "setup-no-setting": ({ line }: Words<"line">) =>
    `setup, line ${line}: it names no setting, so it was not applied.`,
  "setup-setting-unknown": ({ line, setting }: Words<"line" | "setting">) =>
    `setup, line ${line}: “${setting}” is no setting that is known here, so it was not applied. There are: end of the scale, days counted from, delivery standard, time allowed for discharge, revolutions allowed, aggregate, aggregate size.`,
  "setup-setting-twice": ({ line, before }: Words<"line" | "before">) =>
    `setup, line ${line}: line ${before} sets the same to another value, so neither was applied. Leave one of them.`,
  "setup-no-scale-end": ({
    line,
    value,
    least,
    most,
  }: Words<"line" | "value" | "least" | "most">) =>
    `setup, line ${line}: no scale of a meter ends at “${value}”, so it was not applied. Give the last number of the scale in %, from ${least} to ${most}.`,
  "setup-no-date-system": ({ line, value }: Words<"line" | "value">) =>
    `setup, line ${line}: no workbook counts its days from “${value}”, so it was not applied. Write 1900 or 1904.`,
  "setup-header-missing": ({ header }: Words<"header">) =>
    `the setup was not applied to “${header}”: nothing that is read in this sheet is headed so.`,
  "setup-header-of-several": ({ header }: Words<"header">) =>
    `the setup was not applied to “${header}”: several columns of this sheet are headed so. Give each its own header.`,
  "setup-mixes-missing": ({ mixes }: Words<"mixes">) =>
    `The setup gives no air limits for mix ${mixes}, and the sheet has none, so these tests were compared with nothing. Give them in a line for it in the setup.`,
  "setup-cannot-compare": ({
    mix,
    field,
    value,
    limit,
  }: Words<"mix" | "field" | "value" | "limit">) =>
    `The ${field} of mix “${mix}” was not compared with the setup: it cannot be told that ${value} in the sheet and ${limit} in the setup are in one unit. Write the unit with both, in the headers or in the cells.`,
  "setup-no-mix-column":
    "The setup gives specifications by mix, and no column of this sheet is read as the mix, so they were not applied. Head one Mix.",
} as const;
