import type { CellValue } from "../../src/measure/cell-value";
import { issueSentence } from "../../src/measure/issue";
import { FIELDS } from "../../src/reading/fields";
import { readSetup } from "../../src/reading/setup";

type Cells = readonly (readonly CellValue[])[];

const COLUMNS = ["Header", "Taken for", "Unit"];
const MIXES = ["Mix", "Target", "Tolerance", "Low", "High", "Source"];

test("both parts are read, with titles and blank lines between them (the format as documented)", () => {
  const setup = readSetup([
    ["Fresh setup", null, null],
    COLUMNS,
    ["R 1", "first reading", null],
    ["Spirit", "Alcohol", "oz"],
    ["Remark 2", "Not  ours", null],
    [null, null, null],
    ["Specifications", null, null],
    MIXES,
    ["LW-4", 6, 1.5, null, null, "drawing S-1"],
    ["LW-5", null, null, 4, 7],
  ]);
  expect(setup.issues).toEqual([]);
  expect(setup.columns).toEqual([
    { header: "R 1", field: "first" },
    { header: "Spirit", field: "alcohol", unit: "oz" },
    { header: "Remark 2", field: "not ours" },
  ]);
  expect(setup.specificationFor("lw-4 ")).toMatchObject({ low: 4.5, high: 7.5 });
  expect(setup.specificationFor("LW-5")).toMatchObject({ low: 4, high: 7 });
  expect(setup.specificationFor("LW-6")).toBeUndefined();
});

test("the parts may stand beside each other", () => {
  const setup = readSetup([
    ["Header", "Taken for", null, "Mix", "Target"],
    ["R 1", "first", null, "A", "6 ± 1.5"],
    [null, null, null, 101, "min 4"],
  ]);
  expect(setup.issues).toEqual([]);
  expect(setup.columns).toEqual([{ header: "R 1", field: "first" }]);
  expect(setup.specificationFor("A")).toMatchObject({ low: 4.5, high: 7.5 });
  expect(setup.specificationFor("101")).toEqual({ mix: "101", low: 4 });
});

test("every field can be named by its label, and no two fields by the same", () => {
  const ids = Object.keys(FIELDS) as (keyof typeof FIELDS)[];
  const lines = ids.map((id, i) => [`column ${i}`, FIELDS[id].label]);
  expect(readSetup([COLUMNS, ...lines]).columns.map(({ field }) => field)).toEqual(ids);
});

test.each<[what: string, cells: Cells, said: RegExp]>([
  ["no headings", [["R 1", "first"]], /^Nothing of the setup was applied/],
  ["above the headings", [["R 1", "first"], COLUMNS], /^Setup, line 1: it stands above/],
  ["a column of our own", [["Header", "Taken for", "Who"]], /with the column “Who”/],
  ["no header", [COLUMNS, [null, "first"]], /line 2: it names no header/],
  ["nothing taken for", [COLUMNS, ["R 1", null]], /what “R 1” is taken for/],
  ["no field", [COLUMNS, ["R 1", "fist"]], /“fist”.*is no field/],
  ["no unit", [COLUMNS, ["R 1", "alcohol", "thimbles"]], /“thimbles” is no unit/],
  ["a unit of other things", [COLUMNS, ["R 1", "alcohol", "°F"]], /alcohol is not given in °F/],
  ["a unit where none is", [COLUMNS, ["R 1", "sample", "oz"]], /sample is not given in oz/],
  ["a header twice", [COLUMNS, ["A", "first"], ["a", "second"]], /line 3: line 2 says something/],
  ["no mix", [MIXES, [null, 6, 1.5]], /line 2: it names no mix/],
  ["no limits", [MIXES, ["A", 6]], /no limit for mix “A”/],
  [
    "unreadable",
    [MIXES, ["A", null, null, "four"]],
    /line 2, low: the line was not applied\. “four”/,
  ],
  ["an error", [MIXES, ["A", null, null, { error: "#N/A" }]], /line 2, low: .*#N\/A/],
  ["crossed", [MIXES, ["A", null, null, 8, 4]], /low limit, 8 %, lies above the high one, 4 %/],
  ["a mix twice", [MIXES, ["A", 6, 1], ["A ", 6, 2]], /line 3: line 2 says something else of mix/],
])("%s is said, and nothing of the line is applied", (_, cells, said) => {
  const { issues, columns, specifies } = readSetup(cells);
  expect(issues.map((issue) => issueSentence(issue))).toEqual([expect.stringMatching(said)]);
  expect(columns).toEqual([]);
  expect(specifies).toBe(false);
});

test("a wrong line does not hide the others, and the same said twice is no dispute", () => {
  const setup = readSetup([COLUMNS, ["A", "fist"], ["B", "first"], ["b", "First reading"]]);
  expect(setup.issues).toHaveLength(1);
  expect(setup.columns).toEqual([{ header: "B", field: "first" }]);
});

test.each<[Cells]>([[[[null]]], [[]], [[["", " "]]]])(
  "nothing given, %j, says nothing",
  (cells) => {
    expect(readSetup(cells)).toMatchObject({ columns: [], specifies: false, issues: [] });
  },
);
