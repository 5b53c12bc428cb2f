import { summaries, type Summary } from "../fieldsheet/summary";
import type { CheckResult } from "../fieldsheet/check-result";
import { type CellValue, isBlank, quoted, shownValue } from "../measure/cell-value";
import { dateFromCell } from "../measure/date";
import { writtenDay } from "../measure/spreadsheet-day";
import { at, isIssue, issue, type Issue } from "../measure/issue";
import type { FieldId } from "../reading/fields";
import type { FieldRecord } from "../reading/record";
import { resultFor } from "./runner/checked-table";
import { text } from "./runner/argument";
import { orThrow } from "./runner/cell-error";
import { CellTable } from "./runner/cell-table";
import { single } from "./runner/setting";
import { whoOrWhere } from "./runner/who-and-where";

const HEADER = [
  "tests",
  "void",
  "incomplete",
  "mean",
  "deviation",
  "least",
  "most",
  "outside",
  "on the limit",
  "median alcohol",
];

/** What tests are put together by, besides the header of any column. */
const FIELDS_BY_NAME: Readonly<Record<string, FieldId>> = {
  mix: "mix",
  day: "date",
  date: "date",
  meter: "meter",
  load: "load",
  sample: "sample",
  method: "method",
};

/**
 * Sums up a table of volumetric air tests by mix, day, meter or any column of it: tests, void, incomplete, mean, deviation and range of the air, outside, on the limit, median alcohol. Void and incomplete tests take no part in mean, deviation and range.
 * @customfunction SUMMARY SUMMARY
 * @param headers The header row of the table, or its two header rows.
 * @param rows The rows below it, over the same columns.
 * @param by "mix", "day", "meter", "load", "method", "technician" or "plant"; or the header of a column, such as "Lane".
 * @param [low] Low limit in %: a number or a column; else the sheet's own low or target and tolerance columns are used.
 * @param [high] High limit in %: a number or a column.
 * @param [setup] What columns hold (header, taken for, unit), what is specified by mix (mix, target, tolerance, low, high …) and settings (setting, value), each under its headings; such as the sheet that the pane keeps.
 * @returns A header row, and a line for each mix, day … in the order in which they first appear.
 * @example =FRESH.SUMMARY({"Mix","First reading","Second reading","Alcohol (oz)"}, {"LW4",6,6,16;"LW4",7,7,24;"NW5",5,5,0}, "mix", , , {"Mix","Low","High";"LW4",4.5,7;"NW5",4.5,7}) gives "mix", "tests", "void", "incomplete", "mean", "deviation", "least", "most", "outside", "on the limit", "median alcohol"; "LW4", 2, 0, 0, 6.5, 0.7071, 6, 7, 0, 1, "20 oz"; "NW5", 1, 0, 0, 5, "", 5, 5, 0, 0, "0 oz" [(6 + 7) / 2; √0.5; 7 lies on the limit; (16 + 24) / 2]
 */
export function summary(
  headers: any[][],
  rows: any[][],
  by: any[][],
  low?: any[][],
  high?: any[][],
  setup?: any[][],
): any[][] {
  const name = orThrow(single(text("by")).read(new CellTable(by)));
  const result = resultFor(headers, rows, low, high, setup);
  const groupOf = orThrow(at("by", groupsBy(name, result, headers, new CellTable(rows))));
  return [[name, ...HEADER], ...summaries(result, groupOf).map(lineOf)];
}

/** What each test belongs to; the issue `by-not-in-sheet`. */
function groupsBy(
  name: string,
  { reading }: CheckResult,
  headers: unknown[][],
  rows: CellTable,
): ((row: number) => string) | Issue {
  const field = FIELDS_BY_NAME[name.toLowerCase()];
  if (field && reading.has(field))
    return (row) => dayOf(reading.records[row]!, field) ?? written(field, reading.cell(row, field));
  const column = headers.flatMap((cells) => cells.map((cell) => String(cell ?? ""))).map(plain);
  const named = column.indexOf(plain(name));
  const index = named < 0 ? whoOrWhere(plain(name), column) : named;
  if (index === undefined) return issue("by-not-in-sheet", { value: quoted(name) });
  const width = headers[0]!.length;
  return (row) => written(undefined, rows.cell(row, index % width));
}

/** The day of a test as it was read, from whichever year the workbook counts. */
function dayOf({ values }: FieldRecord, field: FieldId): string | undefined {
  return field === "date" && values.date !== undefined ? writtenDay(values.date) : undefined;
}

function written(field: FieldId | undefined, cell: CellValue): string {
  if (isBlank(cell)) return "";
  const day = field === "date" ? dateFromCell(cell) : undefined;
  return day === undefined || isIssue(day) ? shownValue(cell).trim() : writtenDay(day);
}

function plain(header: string): string {
  return header.toLowerCase().replace(/\s+/g, " ").trim();
}

function lineOf(summary: Summary): (string | number)[] {
  const { alcohol } = summary;
  return [
    summary.of,
    summary.tests,
    summary.void,
    summary.incomplete,
    summary.mean ?? "",
    summary.deviation ?? "",
    summary.least ?? "",
    summary.most ?? "",
    summary.outside,
    summary.onTheLimit,
    alcohol ? `${alcohol.amount} ${alcohol.unit}` : "",
  ];
}
