import { checkedRows, findingsList } from "../fieldsheet/result-tables";
import { resultFor } from "./runner/checked-table";

/**
 * Checks a table of volumetric air tests, row by row: test ("valid", "void" or "incomplete"), air content in %, specification ("within", "below" or "above") and the findings in words.
 * @customfunction CHECK CHECK
 * @param headers The header row of the table, or its two header rows; left out, the rows are searched for a table or forms.
 * @param rows The rows below it, over the same columns.
 * @param [low] Low limit in %: a number or a column; else the sheet's own low or target and tolerance columns are used.
 * @param [high] High limit in %: a number or a column.
 * @param [setup] What columns hold (header, taken for, unit), what is specified by mix (mix, target, tolerance, low, high …) and settings (setting, value), each under its headings; such as the sheet that the pane keeps.
 * @returns Four cells for each row.
 * @example =FRESH.CHECK({"First reading","Second reading","Spirit"}, {6,6.25,48}, 4.5, 7.5, {"Header","Taken for","Unit";"Spirit","alcohol","oz"}) gives "valid", 6, "within", "" [48 oz of alcohol read as 0.30 %: 6.25 − 0.30 = 5.95, rounded to 6.00]
 */
export function check(
  headers: any[][],
  rows: any[][],
  low?: any[][],
  high?: any[][],
  setup?: any[][],
): any[][] {
  return checkedRows(resultFor(headers, rows, low, high, setup));
}

/**
 * Lists every finding in a table of volumetric air tests, with a header row: row, sample, rule, weight, column, value, message and, for a wrong result, the slips that lead to it.
 * @customfunction FINDINGS FINDINGS
 * @param headers The header row of the table, or its two header rows; left out, the rows are searched for a table or forms.
 * @param rows The rows below it, over the same columns.
 * @param [low] Low limit in %: a number or a column; else the sheet's own low or target and tolerance columns are used.
 * @param [high] High limit in %: a number or a column.
 * @param [setup] What columns hold (header, taken for, unit), what is specified by mix (mix, target, tolerance, low, high …) and settings (setting, value), each under its headings; such as the sheet that the pane keeps.
 * @returns One line for each finding, or one that says that nothing was found; at the end, what was not looked at because the sheet does not record it.
 * @example =FRESH.FINDINGS({"Reading 1","Reading 2","Spirit"}, {6,6,0}, 4.5, 7.5, {"Header","Taken for","Unit";"Spirit","alcohol","oz"}) gives "row", "sample", "rule", "weight", "column", "value", "message", "cause"; "", "", "", "", "", "", "Nothing was found. Rows checked: 1.", ""; "", "", "not-looked-at", "note", "", "", "Not looked at, because the sheet does not record it: foam, time to settle, undisturbed packed concrete, leaks.", "" [two equal readings, nothing to subtract]
 */
export function findings(
  headers: any[][],
  rows: any[][],
  low?: any[][],
  high?: any[][],
  setup?: any[][],
): any[][] {
  return findingsList(resultFor(headers, rows, low, high, setup));
}
