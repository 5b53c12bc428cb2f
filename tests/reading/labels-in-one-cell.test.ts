import { isIssue } from "../../src/measure/issue";
import { findTestsIn, readTestsInSteps } from "../../src/reading/read-sheet";
import { inOneGo } from "../../src/reading/steps";
import type { CellValue } from "../../src/measure/cell-value";

function read(block: CellValue[][]) {
  const width = Math.max(...block.map((row) => row.length));
  const cells = block.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
  const found = findTestsIn(cells);
  if (isIssue(found)) throw new Error(found.id);
  const reading = inOneGo(readTestsInSteps(found));
  return { ...reading, records: reading.records.filter(({ blank }) => !blank) };
}

describe("a form with labels and values in one cell", () => {
  const form = [
    ["Initial reading: 5 1/4", "Alcohol: 1 pt"],
    ["Final reading: 5.25", "Cups: 0"],
    ["Time: 9:15", "Note: pumped at 9:05"],
    ["Leak: no", "Truck: 44"],
  ];

  test("is read", () => {
    const { first, final, alcohol, cups, time, leak, load } = read(form).records[0]!.values;
    expect({ first, final, alcohol, cups, time, leak, load }).toEqual({
      first: 5.25,
      final: 5.25,
      alcohol: { amount: 1, unit: "pt" },
      cups: 0,
      time: 9 * 60 + 15,
      leak: false,
      load: "44",
    });
  });

  test("and each value stands in the cell of its label", () => {
    const { placeOf } = read(form);
    expect(placeOf(0, "alcohol")).toEqual({ row: 0, column: 1 });
    expect(placeOf(0, "final")).toEqual({ row: 1, column: 0 });
  });

  test("but a word behind the colon is no value where one stands beside it", () => {
    const cells = [...form.slice(1), ["Initial reading", 5.25, "Alcohol: isopropyl", "2 pt"]];
    expect(read(cells).records[0]!.values.alcohol).toEqual({ amount: 2, unit: "pt" });
  });
});

describe("tests in columns", () => {
  const block = (names: CellValue[]) => [
    ["Volumetric air"],
    names,
    ["Initial reading", 5.25, 6],
    ["Final reading", 5.25, 6],
    ["Alcohol (pt)", 1, 1],
  ];

  test("have the names above them", () => {
    const { records, placeOf } = read(block([null, "Truck 12", "Truck 15"]));
    expect(records.map(({ values }) => values.sample)).toEqual(["Truck 12", "Truck 15"]);
    expect(placeOf(1, "sample")).toEqual({ row: 1, column: 2 });
  });

  test("but not a word that stands over each of them", () => {
    const { records } = read(block([null, "%", "%"]));
    expect(records.map(({ values }) => values.sample)).toEqual([undefined, undefined]);
  });
});

test("a row that is only a day is the title of the tests below it", () => {
  const { records } = read([
    ["Sample", "First reading", "Final reading", "Alcohol (pt)"],
    ["March 3"],
    ["1", 5.25, 5.25, 1],
    ["3/4/2026"],
    ["2", 6, 6, 1],
  ]);
  expect(records.map(({ values }) => values.sample)).toEqual(["1", "2"]);
});

test("a day alone below the header of the days is a test without a reading", () => {
  const { records } = read([
    ["Date", "First reading", "Final reading", "Alcohol (pt)"],
    ["2026-03-03", 5.25, 5.25, 1],
    ["2026-03-04"],
  ]);
  expect(records).toHaveLength(2);
});

test("below a title of times “Initial” is when a reading was taken", () => {
  const { records, columns } = read([
    [null, "Time", null, "Meter reading", null, null],
    ["Sample", "Initial", "Final", "Initial", "Final", "Alcohol (pt)"],
    ["A", "9:00", "9:08", 5.25, 5.25, 1],
    ["B", "9:30", "9:38", 5.5, 5.75, 1],
  ]);
  expect(columns.first?.index).toBe(3);
  expect(records.map(({ values }) => values.final)).toEqual([5.25, 5.75]);
});

test("headers that only their cells make plain are found over two rows", () => {
  const { records } = read([
    ["Sample", "Air by roll-a-meter", null, null, "Density"],
    [null, "1st", "2nd", "Result", "pcf"],
    ["A", 5.25, 5.25, 5.25, 118],
    ["B", 5.5, 5.75, 5.75, 117],
  ]);
  expect(records.map(({ values }) => values.sample)).toEqual(["A", "B"]);
  expect(records.map(({ values }) => values.second)).toEqual([5.25, 5.75]);
});
