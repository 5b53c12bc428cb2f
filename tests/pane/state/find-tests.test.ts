import type { CellPlace, ReadArea } from "../../../src/hosts/sheet-host";
import type { CellValue } from "../../../src/measure/cell-value";
import { Problem } from "../../../src/measure/problem";
import { findTests } from "../../../src/pane/state/find-tests";
import { fakeHost, HEADER } from "../fake-host";

const COVER = [["Air tests of the north yard"], ["Week 23"]];
const TESTS = [HEADER, ["S-01", 6, 6, 16, 1]];

const sheet = (sheetId: string, values: CellValue[][], row = 0): ReadArea => ({
  area: { sheetId, sheetName: sheetId, row, column: 0, rows: values.length, columns: 5 },
  address: `${sheetId}!A1`,
  values,
});

/** A workbook whose selected cell stands among some cells, and whose sheets begin with others. */
function workbook(around: ReadArea | Problem, ...tops: ReadArea[]) {
  const { host } = fakeHost([HEADER]);
  const asked: (CellPlace | undefined)[] = [];
  host.read = async (_scope, _progress, place) => {
    asked.push(place);
    if (place) return tops.find(({ area }) => area.sheetId === place.sheetId)!;
    if (around instanceof Problem) throw around;
    return around;
  };
  host.sheetTops = async () => tops;
  // Above them the sheets are blank.
  host.readAgain = async ({ area }) => ({ area, address: "", values: [] });
  return { asked, found: () => findTests(host, () => {}) };
}

test("the tests around the selected cell come first", async () => {
  const { found } = workbook(sheet("Day 2", TESTS), sheet("Day 1", TESTS));
  expect(await found()).toMatchObject({ read: { area: { sheetId: "Day 2" } } });
});

test("where the cell stands beside them, the tests on the sheet are taken", async () => {
  const front = sheet("Loads", [...COVER, ...TESTS], 4);
  const { asked, found } = workbook(new Problem("selection-empty"), front);
  expect(await found()).toEqual({ read: front });
  // The cover takes the rows 5 and 6; the header, with the first reading in column B, is row 7.
  expect(asked[1]).toEqual({ sheetId: "Loads", row: 6, column: 1 });
});

test("a cover sheet in front leads to the sheets that hold tests", async () => {
  const cover = sheet("Cover", COVER);
  const { found } = workbook(
    cover,
    cover,
    sheet("Empty", []),
    sheet("Day 1", TESTS),
    sheet("Day 2", TESTS),
  );
  const { elsewhere } = (await found()) as { elsewhere: readonly { sheetName: string }[] };
  expect(elsewhere.map(({ sheetName }) => sheetName)).toEqual(["Day 1", "Day 2"]);
});

test("where no sheet holds tests, what the cells around the cursor lack is said", async () => {
  const { found } = workbook(sheet("Cover", COVER), sheet("Cover", COVER));
  await expect(found()).rejects.toEqual(new Problem("no-header-row"));
});

test("what stops the spreadsheet is passed on at once", async () => {
  const { found, asked } = workbook(new Problem("host-busy"), sheet("Loads", TESTS));
  await expect(found()).rejects.toEqual(new Problem("host-busy"));
  expect(asked).toHaveLength(1);
});
