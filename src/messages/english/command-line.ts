import type { Words, WriteNumber } from "../sentence";

/** Sentences of the command line. */
export const commandLineMessages = {
  "option-unknown": ({ option }: Words<"option">) =>
    `${option} is no option. Say --help for those that there are.`,
  "option-needs-number": ({ option, value }: Words<"option" | "value">, n: WriteNumber) =>
    `${option} needs a number, such as ${option} ${n("4.5")}, and “${value}” is none.`,
  "option-needs-file": ({ option }: Words<"option">) =>
    `${option} needs the name of a file, such as ${option} setup.csv.`,
  "option-decimal": ({ value }: Words<"value">) =>
    `--decimal needs a point or a comma, and “${value}” is neither.`,
  "option-language": ({ value }: Words<"value">) =>
    `--language needs en or es, and “${value}” is neither.`,
  "no-file-named": "No file is named. Name files, or - for what comes in; --help says more.",
  "file-not-found": ({ name }: Words<"name">) =>
    `“${name}” is not there or cannot be opened. Look at its name and its rights.`,
  "file-without-tests": ({ name }: Words<"name">) =>
    `“${name}” holds no table of volumetric air tests that could be read. It needs a row of headers with a meter reading, such as “First reading”.`,
  "sheet-without-tests":
    "no table of volumetric air tests was found here. Its header needs a meter reading, such as “First reading”.",
  "line-is-no-json": ({ line }: Words<"line">) =>
    `Line ${line} is neither a JSON object nor a list of cells, so it was left out.`,
  "name-not-in-first-line": ({ line, column }: Words<"line" | "column">) =>
    `Line ${line} has “${column}”, which the first line does not have, so it was left out here and below. Name it in the first line.`,
  "more-cells-than-headers": ({ line }: Words<"line">) =>
    `Line ${line} has more cells than there are headers, so the last ones were left out.`,
  "stream-read-otherwise": ({
    line,
    header,
    above,
    here,
  }: Words<"line" | "header" | "above" | "here">) =>
    `From line ${line} on “${header}” was read as ${here}, above it as ${above}. Say in a setup which it is, or give the file by its name, so that it is read whole.`,
  "stream-yes-is-good": "a yes says that all is in order",
  "stream-day-first": "the day first",
  "stream-month-first": "the month first",
  "more-lines-not-read": ({ count }: Words<"count">) =>
    `More than ${count} lines were not read whole; the others are not told one by one.`,
} as const;
