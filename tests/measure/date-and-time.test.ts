import type { CellValue } from "../../src/measure/cell-value";
import { dateFromCell } from "../../src/measure/date";
import { writtenDay, yearsAfter } from "../../src/measure/spreadsheet-day";
import { minuteOfDayFromCell, writtenTime } from "../../src/measure/time-of-day";
import { resultOf } from "../check-values/result-of";

/** Day numbers as spreadsheets show them for these dates: 2000-01-01 is 36526 (Excel, known widely). */
const DAYS: [written: string, day: number][] = [
  ["2000-01-01", 36526],
  ["2000-02-29", 36585],
  ["2024-02-29", 45351],
  ["2026-06-09", 46182],
];

describe("a date", () => {
  test.each(DAYS)("%s is day %d, read and written", (written, day) => {
    expect(dateFromCell(written)).toBe(day);
    expect(dateFromCell(day)).toBe(day);
    expect(writtenDay(day)).toBe(written);
  });

  test.each<[CellValue, number]>([
    [46182.75, 46182],
    ["2026/6/9", 46182],
    ["2026.06.09", 46182],
    ["2026-06-09T14:05", 46182],
    ["9 June 2026", 46182],
    ["09-Jun-2026", 46182],
    ["29/2/2024", 45351],
    ["2/29/2024", 45351],
    ["29.02.2024", 45351],
    ["1/1/2000", 36526],
  ])("%j is day %d", (cell, day) => {
    expect(dateFromCell(cell)).toBe(day);
  });

  test.each<[CellValue, string]>([
    ["5/6/2026", "date-is-unclear"],
    ["31/31/2026", "not-a-date"],
    ["0/31/2026", "not-a-date"],
    ["2/29/2026", "not-a-date"],
    ["2026-02-30", "not-a-date"],
    ["2026-13-01", "not-a-date"],
    ["9 Foo 2026", "not-a-date"],
    ["today", "not-a-date"],
    [0.5, "not-a-date"],
    [true, "not-a-date"],
    [{ error: "#VALUE!" }, "cell-error"],
  ])("%j: %s", (cell, id) => {
    expect(dateFromCell(cell)).toMatchObject({ id });
  });

  test.each([
    ["2025-06-09", "2026-06-09"],
    ["2023-03-01", "2024-03-01"],
    ["2024-02-29", "2025-03-01"],
  ])("a year after %s is %s", (day, later) => {
    expect(writtenDay(yearsAfter(resultOf(dateFromCell(day))!, 1))).toBe(later);
  });
});

describe("a time of day", () => {
  test.each<[CellValue, number]>([
    ["0:00", 0],
    ["7:05", 425],
    ["14:05", 845],
    ["14:05:59", 845],
    ["2:05 pm", 845],
    ["2:05PM", 845],
    ["1405", 845],
    [1405, 845],
    ["12:00 am", 0],
    ["12:30 pm", 750],
    [0.5, 720],
    [845 / 1440, 845],
    [46182 + 845 / 1440, 845],
    [0.99999, 0],
  ])("%j is minute %d", (cell, minute) => {
    expect(minuteOfDayFromCell(cell)).toBe(minute);
  });

  test.each<[CellValue, string]>([
    ["24:00", "not-a-time"],
    ["7:60", "not-a-time"],
    ["13:00 pm", "not-a-time"],
    ["0:30 am", "not-a-time"],
    [-0.25, "not-a-time"],
    [7.5, "not-a-time"],
    ["noon", "not-a-time"],
    [{ error: "#N/A" }, "cell-error"],
  ])("%j: %s", (cell, id) => {
    expect(minuteOfDayFromCell(cell)).toMatchObject({ id });
  });

  test.each([
    [0, "00:00"],
    [845, "14:05"],
    [1439, "23:59"],
  ])("minute %d is written %s", (minute, written) => {
    expect(writtenTime(minute)).toBe(written);
    expect(minuteOfDayFromCell(written)).toBe(minute);
  });
});

test.each<[CellValue]>([[null], [""], ["—"]])("%j is blank", (cell) => {
  expect([dateFromCell(cell), minuteOfDayFromCell(cell)]).toEqual([undefined, undefined]);
});
