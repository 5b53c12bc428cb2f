import type { Words, WriteNumber } from "../sentence";

/** What the report says. */
export const paneReportMessages = {
  "report-check-first": "Press Check; then the report of what was found can be printed.",
  "report-print": "Print",
  "report-print-hint":
    "If no window to print opens, write a results sheet on the page “Check” and print that.",
  "report-title": "Check of field tests of fresh concrete",
  "report-of": ({ address, tests }: Words<"address" | "tests">) =>
    `Checked: ${address}. Tests in it: ${tests}.`,
  "report-tests": ({ counts }: Words<"counts">) => `Tests: ${counts}.`,
  "report-specification": ({ counts }: Words<"counts">) =>
    `Valid tests against the specification: ${counts}.`,
  "report-no-specification": "No test was compared with a specification.",
  "report-findings": ({ counts }: Words<"counts">) => `Findings: ${counts}.`,
  "report-where": "Where",
  "report-finding": "Finding",
  "report-cut-here": ({ shown, left }: Words<"shown" | "left">) =>
    `The first ${shown} findings are shown here; ${left} more are printed, as far as paper bears them, and stand on the results sheet.`,
  "report-cut": ({ shown, left }: Words<"shown" | "left">) =>
    `The first ${shown} findings are printed; ${left} more are on the results sheet.`,
  "report-method": "Method",
  "report-method-text": (_: Words<never>, n: WriteNumber) =>
    `Air content by the volumetric method, as ASTM C173/C173M and AASHTO T 196 are understood here: final meter reading, less the correction for the alcohol, plus ${n("1.00")} % for each calibrated cup, reported to the nearest ${n("0.25")} %, halves to the even step. Some of the values behind it are from memory and wait to be compared with the standard in force.`,
} as const;
