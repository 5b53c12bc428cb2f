import type { CellValue } from "../../src/measure/cell-value";
import { recognise } from "../../src/reading/recognise";
import type { KeptColumn, RecognisedColumn } from "../../src/reading/recognition";

/** Headers written "title / header: cell, cell"; the expected words are ordinary usage of the trade. */
function columns(...written: string[]) {
  return written.map((line) => {
    const [headers, cells = ""] = line.split(": ");
    const values = cells.split(",").map((cell) => cell.trim());
    return {
      headers: headers!.split(" / "),
      cells: values.map((cell): CellValue => (cell === "" ? null : isNaN(+cell) ? cell : +cell)),
    };
  });
}

function said(column: RecognisedColumn): string {
  if (column.state === "read") return column.field + (column.opposite ? " opposite" : "");
  if (column.state === "asked") return `asked ${column.candidates.join(" ")}`;
  if (column.state === "not ours") return `not ours: ${column.guard}`;
  if (column.state === "empty") return "empty";
  return column.decides ? `may be ${column.mayBe.join(" ")}` : "unknown";
}

const recognised = (...written: string[]) => recognise(columns(...written)).all.map(said);

test.each<[string, string[], string[]]>([
  [
    "two columns that could both be the field",
    ["Air: 5, 6", "Air: 6, 6"],
    ["asked air", "asked air"],
  ],
  [
    "one that says it more plainly",
    ["Air content by the lab: 5, 6", "Air: 6, 6"],
    ["unknown", "air"],
  ],
  [
    "a name, a place and ways",
    ["Tested by: A. B.", "Location: Pier 1", "Arrived: 9:10", "Left plant: 8:40"],
    ["not ours: person", "not ours: place", "not ours: arrival", "not ours: departure"],
  ],
  [
    "another test by its title",
    ["Air / Result: 5, 6", "Slump / Result: 4, 4", "Cylinders / No.: 3, 3"],
    ["air", "slump", "not ours: other test"],
  ],
  ["the air's temperature", ["Air (°F): 70, 71", "Air (%): 5, 6"], ["airTemperature", "air"]],
  [
    "in order and gone wrong",
    ["Bowl clean?: yes, yes", "Leak?: no, no"],
    ["packed opposite", "leak"],
  ],
  ["a test that was made", ["Leak test: yes, yes"], ["asked leak"]],
  [
    "alcohol under another name, by its unit",
    ["Spirit (pt): 2, 3"],
    ["may be alcohol lateAlcohol"],
  ],
  ["a yes that is about nothing known", ["Flag: yes, no"], ["may be packed leak lateAlcohol"]],
  ["a blank column", [": "], ["empty"]],
  ["a number sign is never a no", ["Cups #: 0, 1", "# leaks: 0, 1"], ["cups", "asked leak sample"]],
  ["lettered", ["Alcohol A (oz): 8, 8"], ["asked alcohol lateAlcohol"]],
  ["another matter's date", ["Cup check date: 46120, 46121, 46122"], ["unknown"]],
])("%s", (_, written, expected) => {
  expect(recognised(...written)).toEqual(expected);
});

test("the order of the columns changes nothing", () => {
  const written = [
    "Air: 5, 6",
    "Temp: 70, 72",
    "Air temp: 60, 61",
    "Reading 1: 5, 6",
    "Cups: 0, 1",
  ];
  const there = recognised(...written);
  expect(recognised(...[...written].reverse())).toEqual([...there].reverse());
  expect(there).toEqual(["air", "concreteTemperature", "airTemperature", "first", "cups"]);
});

describe("what the user has said of a column", () => {
  const sheet = columns("Spirit: 2, 3", "Air: 5, 6", "Air (lab): 5, 6");
  test.each<[string, KeptColumn[], string[]]>([
    [
      "a field and its unit",
      [{ header: "spirit", field: "alcohol", unit: "pt" }],
      ["alcohol", "air"],
    ],
    [
      "not ours",
      [{ header: "Air", field: "not ours" }],
      ["may be cups alcohol", "not ours: setup"],
    ],
    [
      "a header that is not there",
      [{ header: "Ethanol", field: "alcohol" }],
      ["may be cups alcohol", "air"],
    ],
  ])("%s", (_, kept, expected) => {
    expect(recognise(sheet, kept).all.map(said).slice(0, 2)).toEqual(expected);
  });

  test("outweighs the words, and its unit is kept", () => {
    const kept: KeptColumn[] = [{ header: "Air", field: "gravimetricAir", unit: "%" }];
    expect(recognise(sheet, kept).columns.gravimetricAir).toEqual({
      index: 1,
      header: "Air",
      unit: "%",
    });
  });
});

test("cells of 32,767 characters and a thousand columns of one name take no time to speak of", () => {
  const long = { headers: ["(".repeat(16_000)], cells: ["1".repeat(32_767)] };
  const same = Array.from({ length: 1000 }, () => ({ headers: ["Air"], cells: [5] }));
  expect(recognise([long, ...same]).all).toHaveLength(1001);
});
