import type { Words } from "../sentence";

/** How the lines of the command line are put together. */
export const commandLineWords = {
  "line-row": ({ row }: Words<"row">) => `row ${row}`,
  "line-finding": ({
    where,
    weight,
    message,
    sample,
  }: Words<"where" | "weight" | "message" | "sample">) =>
    `${where}: ${weight}: ${sample === "" ? "" : `${sample}: `}${message}`,
  "line-test": ({
    where,
    sample,
    state,
    air,
    specification,
  }: Words<"where" | "sample" | "state" | "air" | "specification">) =>
    `${where}: test ${sample}: ${[state, air === "" ? "" : `${air} % air`, specification].filter((word) => word !== "").join(", ")}`,
  "line-sheet": ({
    where,
    tests,
    valid,
    void: voided,
    incomplete,
    findings,
    notLookedAt,
  }: Words<"where" | "tests" | "valid" | "void" | "incomplete" | "findings" | "notLookedAt">) =>
    `${where}: tests: ${tests} (valid ${valid}, void ${voided}, incomplete ${incomplete}); findings: ${findings}. ${notLookedAt}`.trimEnd(),
  "line-not-read": ({ where, message }: Words<"where" | "message">) =>
    `${where}: not read: ${message}`,
  "command-line-help": `Checks volumetric air tests of fresh concrete in workbooks and CSV files.

  fresh-check [options] file.xlsx more/*.csv
  … | fresh-check [options] -

A "-" reads CSV or JSON lines from standard input, of any length.

  --json           one JSON object a line
  --tests          also a line for each test: its state, air and specification
  --low, --high    specification limits in %, in place of the sheets' own
  --setup FILE     what columns hold and what is specified by mix: CSV, or a workbook
                   with a sheet "Fresh setup"
  --decimal ,      texts are written with decimal commas
  --language es    speaks Spanish, or English with en; else as the machine does
  --               what follows are names of files
  --help           this text

Ends with 0 where nothing was found, 1 where something was found, 2 where something could not be read.
`,
} as const;
