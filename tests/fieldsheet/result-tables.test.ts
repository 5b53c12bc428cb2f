import { checkedRows, findingsList } from "../../src/fieldsheet/result-tables";
import { sheetFor } from "./rule-cases";
import { checkedTable } from "./checked";

const HEADER = ["row", "sample", "rule", "weight", "column", "value", "message", "cause"];

/** The sound test of the rule tables records no foam, time to settle, packed concrete, leak or limits. */
const NOT_LOOKED_AT = [
  ...["", "", "not-looked-at", "note", "", ""],
  expect.stringMatching(/foam, time to settle, undisturbed packed concrete, leaks, limits/),
  "",
];

test("four cells stand for each row, and blanks for a blank row", () => {
  const sheet = sheetFor([
    { Low: 5, High: 7 },
    { Low: 5, Foam: 3 },
  ]);
  const blank = sheet.headers.map(() => null);
  const rows = checkedRows(checkedTable({ ...sheet, rows: [...sheet.rows, blank] }));
  expect(rows).toEqual([
    ["valid", 6, "within", ""],
    ["void", "", "", expect.stringMatching(/^Foam: 3 divisions of foam/)],
    ["", "", "", ""],
  ]);
});

test("what concerns the whole sheet is said with its first test", () => {
  const sheet = sheetFor([{ Sample: null, "First reading": null, "Second reading": null }, {}]);
  const without = {
    headers: sheet.headers.slice(0, 3),
    rows: sheet.rows.map((row) => row.slice(0, 3)),
  };
  const rows = checkedRows(checkedTable(without));
  expect(rows.map((row) => row[3])).toEqual(["", expect.stringMatching(/no column for alcohol/)]);
});

test("every finding has a line, which names what led to it", () => {
  const sheet = sheetFor([
    {},
    { Sample: "S-9", "Alcohol (oz)": 64, "Reported air": 6, Foam: 1 },
    { Foam: 3, Sample: "S-10", "Reported air": 5 },
  ]);
  const list = findingsList(checkedTable(sheet));
  expect(list[0]).toEqual(HEADER);
  expect(list.slice(1).map((line) => [...line.slice(0, 6), line[7]])).toEqual([
    [2, "S-9", "reported-air-wrong", "error", "Reported air", 6, "correction-forgotten"],
    [3, "S-10", "foam-over-limit", "void", "Foam", 3, ""],
    [3, "S-10", "void-test-reported", "error", "Reported air", 5, ""],
    [3, "S-10", "void-without-repeat", "doubt", "Sample", "S-10", ""],
    ["", "", "not-looked-at", "note", "", "", ""],
  ]);
  expect(list[1]![6]).toBe(
    "Reported air: 6 % is reported, but the record gives 5.5 %: reading 6 less 0.6 for alcohol plus 0 for cups, to the nearest 0.25. 6 % comes out when the correction for alcohol, 0.6, is forgotten. Subtract it.",
  );
});

test("a finding points at what stands in the cell, errors too", () => {
  const [, line] = findingsList(checkedTable(sheetFor({ Foam: { error: "#REF!" } })));
  expect(line!.slice(3, 6)).toEqual(["error", "Foam", "#REF!"]);
});

test("where nothing is found, one line says so, and one what was not looked at", () => {
  const list = findingsList(checkedTable(sheetFor([{}, {}])));
  expect(list).toEqual([
    HEADER,
    ["", "", "", "", "", "", expect.stringMatching(/^Nothing was found.*2/), ""],
    NOT_LOOKED_AT,
  ]);
});

test("a row without a sample is named by its load", () => {
  const sheet = sheetFor({ Sample: null, Load: "L-4", Foam: 3 });
  expect(findingsList(checkedTable(sheet))[1]![1]).toBe("L-4");
});
