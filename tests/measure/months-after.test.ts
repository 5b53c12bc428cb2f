import { dateFromCell } from "../../src/measure/date";
import { writtenDay, yearsAfter } from "../../src/measure/spreadsheet-day";
import { monthsAfter } from "../../src/measure/months-after";

test.each([
  ["2026-03-02", 12, "2027-03-02", "the calendar"],
  ["2025-12-09", 3, "2026-03-09", "the calendar, over the end of the year"],
  ["2025-08-31", 6, "2026-03-01", "the calendar: February has no 31st"],
  ["2024-02-29", 12, "2025-03-01", "the calendar: no 29 February in 2025"],
  ["2025-03-31", 1, "2025-05-01", "the calendar: April has no 31st"],
])("from %s, %s months on is %s (%s)", (from, months, to) => {
  expect(writtenDay(monthsAfter(dateFromCell(from) as number, months))).toBe(to);
});

test("twelve months are a year", () => {
  for (let day = 45000; day < 46500; day++) expect(monthsAfter(day, 12)).toBe(yearsAfter(day, 1));
});
