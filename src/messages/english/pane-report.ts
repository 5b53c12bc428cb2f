import type { Words, WriteNumber } from "../sentence";

/** What the report says. */
export const paneReportMessages = {
  "report-check-first":
    "Press Check; then the report of what was found can be printed or put on a sheet.",
  "report-print": "Print",
  "report-print-hint":
    "If no window to print opens, write the report on a sheet and print that from the spreadsheet.",
  "report-write-sheet": "Write a report sheet",
  "report-save-xlsx": "Save as .xlsx",
  "report-save-csv": "Save as .csv",
  "report-sheet-written": ({ sheet }: Words<"sheet">) => `The report is on the sheet “${sheet}”.`,
  "report-saved": ({ file }: Words<"file">) => `The report was handed over as ${file}.`,
  "report-no-name": "tests",
  "report-file-name": ({ file }: Words<"file">) => `Report of ${file}`,
  "report-scope": "Tests",
  "report-scope-all": "all that were checked",
  "report-scope-test": "the test under the cursor",
  "report-scope-day": ({ day }: Words<"day">) => `the day ${day}`,
  "report-scope-week": ({ from, to }: Words<"from" | "to">) => `the week ${from} to ${to}`,
  "report-select-test": "Select a test in the checked table; the report is then of that test.",
  "report-head-hint":
    "What the sheet itself says stands in the report. What it lacks can be typed here once; it is kept with the workbook.",

  "report-title": "Report of field tests of fresh concrete",
  "report-head": "Head of the report",
  "report-head-number": "Report number",
  "report-head-project": "Project",
  "report-head-location": "Location",
  "report-head-date": "Date of the tests",
  "report-head-mix": "Mix",
  "report-head-specification": "Specification",
  "report-head-testers": "Tested by",
  "report-head-meter": "Meter",
  "report-head-meterCheck": "Meter last checked",
  "report-and-more": ({ listed, more }: Words<"listed" | "more">) =>
    `${listed} and ${more} more, see the table`,
  "report-limits": ({ low, high }: Words<"low" | "high">) => `${low} to ${high} %`,
  "report-limit-low": ({ low }: Words<"low">) => `${low} % or more`,
  "report-limit-high": ({ high }: Words<"high">) => `${high} % or less`,

  "report-of-all": "Of all tests that were checked.",
  "report-of-test": ({ sample }: Words<"sample">) => `Of one test, ${sample}.`,
  "report-of-one": "Of one test.",
  "report-of-day": ({ day }: Words<"day">) => `Of the tests of ${day}.`,
  "report-of-week": ({ from, to }: Words<"from" | "to">) => `Of the tests from ${from} to ${to}.`,
  "report-source": ({ file, sheet, cells }: Words<"file" | "sheet" | "cells">) =>
    `File: ${file}. Sheet: ${sheet}. Cells: ${cells}.`,
  "report-checked-by": ({ version, rules, time }: Words<"version" | "rules" | "time">) =>
    `Checked ${time} by Fresh Concrete Functions ${version}, with ${rules} rules.`,
  "report-foot": ({ file, sheet }: Words<"file" | "sheet">) => `File ${file}, sheet ${sheet}`,
  "report-page": ({ page, pages }: Words<"page" | "pages">) => `Page ${page} of ${pages}`,

  "report-counts": "Summary",
  "report-tests": ({ counts }: Words<"counts">) => `Tests: ${counts}.`,
  "report-specification": ({ counts }: Words<"counts">) =>
    `Valid tests against the specification: ${counts}.`,
  "report-no-specification": "No test was compared with a specification.",
  "report-findings": ({ counts }: Words<"counts">) => `Findings: ${counts}.`,

  "report-table": "Tests",
  "report-row": "Row",
  "report-sample": "Sample",
  "report-date": "Date",
  "report-time": "Time",
  "report-mix": "Mix",
  "report-first": "1st, %",
  "report-second": "2nd, %",
  "report-third": "3rd, %",
  "report-final": "Final, %",
  "report-alcohol": "Alcohol",
  "report-cups": "Cups",
  "report-air-reported": "Reported, %",
  "report-air": "Air, %",
  "report-limits-head": "Limits",
  "report-result": "Result",
  "report-density": "Density",
  "report-temperature": "Concrete",
  "report-slump": "Slump",
  "report-label-unit": ({ label, unit }: Words<"label" | "unit">) => `${label}, ${unit}`,
  "report-valid-within": "valid, within",
  "report-valid-below": "valid, below",
  "report-valid-above": "valid, above",
  "report-table-key":
    "1st, 2nd, 3rd: meter readings as recorded. Final: the reading that the air is worked out from. Air: the result of the check, for valid tests only.",

  "report-whole-sheet": "The sheet as a whole",
  "report-sample-in-row": ({ sample, row }: Words<"sample" | "row">) => `${sample}, row ${row}`,
  "report-row-alone": ({ row }: Words<"row">) => `Row ${row}`,
  "report-where": "Where",
  "report-finding": "Finding",
  "report-decision": "Reviewer's decision",
  "report-decided": ({ decision }: Words<"decision">) => `Reviewer's decision: ${decision}`,
  "report-cut-here": ({ shown, left }: Words<"shown" | "left">) =>
    `The first ${shown} are shown here; ${left} more are printed, as far as paper bears them, and stand on the report sheet.`,
  "report-cut": ({ shown, left }: Words<"shown" | "left">) =>
    `The first ${shown} are printed; ${left} more are on the report sheet.`,
  "report-undated": ({ tests }: Words<"tests">) =>
    `Tests without a date that can be read, which belong to no day: ${tests}.`,
  "report-others": ({ tests }: Words<"tests">) =>
    `Tests of the checked cells that are not in this report: ${tests}.`,
  "report-not-there": ({ fields }: Words<"fields">) =>
    `Further things that no column holds and no rule could look at: ${fields}.`,
  "report-more-mixes": ({ shown, left }: Words<"shown" | "left">) =>
    `The trends of ${shown} mixes are drawn; those of ${left} more are on the page “Trend”.`,

  "report-method": "Method",
  "report-method-text": (_: Words<never>, n: WriteNumber) =>
    `Air content by the volumetric method, as ASTM C173/C173M and AASHTO T 196 are understood here: final meter reading, less the correction for the alcohol, plus ${n("1.00")} % for each calibrated cup, reported to the nearest ${n("0.25")} %, halves to the even step. From memory, to be compared with the standard in force: the ${n("1.00")} % of a cup, the step of ${n("0.25")} %, and that alcohol below 2 pt subtracts nothing.`,

  "report-signatures": "Signatures",
  "report-signed-tester": "Tested by",
  "report-signed-reviewer": "Reviewed by",
  "report-name-signature-date": "Name, signature, date",
} as const;
