import { FIELDS, type FieldId } from "../../src/reading/fields";
import type { CellValue } from "../../src/measure/cell-value";
import { readTable } from "../../src/reading/read-table";

/** A record of one row, read. */
function read(cells: Readonly<Record<string, CellValue>>, decimal?: "," | ".") {
  const table = { headers: Object.keys(cells), rows: [Object.values(cells)] };
  const record = readTable(table, { decimal }).records[0]!;
  const fields = Object.keys(FIELDS) as FieldId[];
  const read = fields.map((field) => [field, record.values[field]] as const);
  return { ...record, values: Object.fromEntries(read.filter(([, value]) => value !== undefined)) };
}

describe("a cell is read as what its column is for", () => {
  test.each<[header: string, cell: CellValue, field: string, value: unknown]>([
    ["First reading", "5 1/4", "first", 5.25],
    ["First reading", " 5.25 % ", "first", 5.25],
    ["Cups", 0, "cups", 0],
    ["Sample", 17, "sample", "17"],
    ["Alcohol", "48 oz", "alcohol", { amount: 48, unit: "oz" }],
    ["Alcohol (mL)", 1400, "alcohol", { amount: 1.4, unit: "L" }],
    ["Alcohol (oz)", "3 pt", "alcohol", { amount: 3, unit: "pt" }],
    ["Water before alcohol (pt)", 1, "water", { amount: 1, unit: "pt" }],
    ["Time to settle", 3, "settle", { value: 3 }],
    ["Time to settle (s)", 90, "settle", { value: 1.5 }],
    ["Time to settle", "90 s", "settle", { value: 1.5 }],
    ["Inversion time", 45, "inversion", 45],
    ["Inversion time (min)", 1, "inversion", 60],
    ["Inversion time", "1:30", "inversion", 90],
    ["Wet sieved", "x", "wetSieved", true],
    ["Packed concrete", "yes", "packed", true],
    ["Packed concrete", false, "packed", false],
    ["Alcohol after zeroing", "no", "lateAlcohol", false],
    ["Alcohol after zeroing (oz)", 8, "lateAlcohol", true],
    ["Alcohol after zeroing", "4 oz", "lateAlcohol", true],
    ["Tolerance", "±1.5", "tolerance", { below: 1.5, above: 1.5 }],
    ["Tolerance", "+/- 1.5 %", "tolerance", { below: 1.5, above: 1.5 }],
    ["Tolerance", "+2/-1", "tolerance", { below: 1, above: 2 }],
    ["Target air", 6, "target", { aim: 6 }],
    ["Low limit", "4.5 to 7.5", "low", { low: 4.5, high: 7.5 }],
    ["Date", "2026-06-09", "date", 46182],
    ["Test start", "2:05 pm", "start", 845],
    ["Aggregate size", "3/4 in", "aggregateSize", { size: 0.75, unit: "in" }],
    ["Aggregate size", 19, "aggregateSize", { size: 19, unit: "mm" }],
    ["Aggregate size", 0.75, "aggregateSize", { size: 0.75, unit: "in" }],
    ["Aggregate size (mm)", 19, "aggregateSize", { size: 19, unit: "mm" }],
  ])("%s, %j: %s %j", (header, cell, field, value) => {
    const { values, unreadable } = read({ [header]: cell });
    expect(unreadable).toEqual({});
    expect(values).toEqual({ [field]: value });
  });
});

test("the unit beside an amount goes before the unit in its header", () => {
  const { values } = read({ "Alcohol (oz)": 1.4, "Alcohol unit": "L" });
  expect(values.alcohol).toEqual({ amount: 1.4, unit: "L" });
});

test("a decimal comma is read where the workbook writes it", () => {
  expect(read({ "First reading": "5,25" }, ",").values.first).toBe(5.25);
  expect(read({ Alcohol: "1,4 L" }, ",").values.alcohol).toEqual({ amount: 1.4, unit: "L" });
});

describe("what says nothing is left out, and is no zero", () => {
  test.each<[CellValue]>([[null], [""], ["  "], ["-"], ["—"], ["n/a"], ["N.A."]])("%j", (cell) => {
    const { values, unreadable, blank } = read({ Cups: cell, "First reading": 6 });
    expect([values, unreadable, blank]).toEqual([{ first: 6 }, {}, false]);
  });
});

describe("a row is blank when every recognised cell is", () => {
  test.each<[Readonly<Record<string, CellValue>>, boolean]>([
    [{ Sample: null, "First reading": "" }, true],
    [{ Sample: "-", "First reading": null, Remarks: "lunch" }, true],
    [{ Sample: "S-1", "First reading": null }, false],
    [{ Sample: null, "First reading": { error: "#N/A" } }, false],
    [{ Sample: null, "First reading": 0 }, false],
  ])("%j: %s", (cells, blank) => {
    expect(read(cells).blank).toBe(blank);
  });
});

test("a cell that cannot be read is kept with its problem, and hides none of the others", () => {
  const { values, unreadable } = read({
    "First reading": "about 6",
    "Second reading": 6,
    "Alcohol (oz)": { error: "#REF!" },
    Leak: "perhaps",
  });
  expect(values).toEqual({ second: 6 });
  expect(Object.entries(unreadable).map(([field, problem]) => [field, problem!.id])).toEqual([
    ["first", "not-a-number"],
    ["alcohol", "cell-error"],
    ["leak", "not-yes-or-no"],
  ]);
});

describe("a row that sums up others holds no test (common practice: a last row)", () => {
  test.each(["Total", "AVERAGE", "Avg.", "Mean:", "Grand total", "Std. dev."])("%s", (label) => {
    const { blank, values, unreadable } = read({ Sample: label, "First reading": 5.63 });
    expect({ blank, values, unreadable }).toEqual({ blank: true, values: {}, unreadable: {} });
  });

  test.each(["Mean Street 4", "Total-7", "T-1"])("%s is a test", (sample) => {
    expect(read({ Sample: sample, "First reading": 5.5 }).blank).toBe(false);
  });

  test("the word counts only where the row begins", () => {
    expect(read({ Sample: "S-1", "First reading": 5.5, Mix: "average" }).blank).toBe(false);
  });
});

describe("what a column shows counts for each of its cells", () => {
  const column = (header: string, cells: readonly CellValue[], datesFrom?: 1904) => {
    const rows = cells.map((cell) => [6, cell]);
    return readTable({ headers: ["First reading", header], rows }, { datesFrom }).records;
  };

  test("the order of its dates, where it holds one that can only be read so", () => {
    const dates = column("Date", ["05/04/2026", "05/13/2026"]).map(({ values }) => values.date);
    // 2026-05-04 and 2026-05-13, counted from 2026-06-09, day 46182.
    expect(dates).toEqual([46146, 46155]);
    const both = column("Date", ["05/04/2026", "05/13/2026", "13/05/2026"]);
    expect(both[0]!.unreadable.date).toMatchObject({ id: "date-is-unclear" });
  });

  test("the year from which the workbook counts: 44720 from 1904 is 46182 from 1900", () => {
    expect(column("Date", [44720], 1904)[0]!.values.date).toBe(46182);
  });

  test("its decimal comma, where no decimal point stands beside it", () => {
    const foam = (...cells: string[]) => column("Foam", cells).map(({ values }) => values.foam);
    expect(foam("0,5", "1,250")).toEqual([{ value: 0.5 }, { value: 1.25 }]);
    expect(foam("0,5", "1,250", "1.25")).toEqual([{ value: 0.5 }, undefined, { value: 1.25 }]);
    expect(foam("1,250")).toEqual([undefined]);
  });

  test("a ditto mark looks through blank rows to the test above, and no further", () => {
    const table = (...rows: CellValue[][]) =>
      readTable({ headers: ["First reading", "Alcohol (oz)"], rows }).records.at(-1)!;
    expect(table([6, 48], [null, null], [6, '"']).values.alcohol).toEqual({
      amount: 48,
      unit: "oz",
    });
    expect(table([6, 48], [6, "ditto"], [6, '"']).values.alcohol).toMatchObject({ amount: 48 });
    expect(table([6, 48], [6, null], [6, '"']).unreadable.alcohol).toMatchObject({
      id: "nothing-above",
    });
    // What cannot be read above is not better for being repeated.
    expect(table([6, "2-3 pt"], [6, '"']).unreadable.alcohol).toMatchObject({ id: "two-ways" });
  });
});
