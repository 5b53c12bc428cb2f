import { excelHost } from "../../../src/hosts/excel/excel-host";
import { say } from "../../../src/messages/pane-catalogue";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { rectangleFrom } from "../../excel-client/block";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import type { SheetModel } from "../../excel-client/sheet-model";
import { deleteRows, edit, giveNote, insertRows } from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/* Several tables on one sheet, checked and marked one after the other: what becomes of the marks of each. */

const excel = startExcel();
afterAll(untilReleased);

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Foam"];
const BLANK = HEADERS.map(() => "");

/** Two tables below one another, each with one test that has too much foam, in rows 2 and 7. */
function pane() {
  excel.workbook = new WorkbookModel();
  const sheet = excel.workbook.front;
  sheet.grid = [
    HEADERS,
    ["A-1", 5, 5, 32, 4],
    ["A-2", 5, 5, 32, 0],
    BLANK,
    BLANK,
    HEADERS,
    ["B-1", 5, 5, 32, 5],
    ["B-2", 5, 5, 32, 0],
  ];
  const store = createPaneStore();
  const commands = paneCommands(store, excelHost());
  const tryToMark = async (cells: string) => {
    excel.workbook.select(sheet, rectangleFrom(cells));
    await commands.checkSelection();
    await commands.mark();
  };
  const mark = async (cells: string) => {
    await tryToMark(cells);
    expect(store.get().error).toBe("");
    return store.get().status;
  };
  const marked = () =>
    sheet.formats
      .filter(({ formula }) => formula.startsWith("=LEN"))
      .flatMap(({ areas }) => areas.map(({ top, left }) => `${top + 1},${left + 1}`));
  return { sheet, commands, tryToMark, mark, marked };
}

/** What somebody does to the first table while the second is marked. */
const DOINGS: readonly { readonly name: string; readonly act: (sheet: SheetModel) => void }[] = [
  { name: "mends the foam of its test", act: (sheet) => edit(sheet, 1, 4, 0) },
  { name: "inserts a row above its test", act: (sheet) => insertRows(sheet, 1, 1) },
  { name: "deletes its test", act: (sheet) => deleteRows(sheet, 1, 1) },
];

describe.each(DOINGS)("somebody who $name while another table is marked", ({ act }) => {
  test.each(Array.from({ length: 12 }, (_, i) => i + 1))(
    "right before the %ith request finds no mark on a cell that it was not made for",
    async (call) => {
      const { sheet, tryToMark, mark, marked } = pane();
      await mark("A1:E3");
      let markedBefore = false;
      excel.interrupt(call, () => {
        markedBefore = marked().includes(FOAM_OF_B);
        act(sheet);
      });
      await tryToMark("A6:E8");
      if (excel.takeBackInterruptions() > 0 || markedBefore) return;
      const wrong = marked().filter((place) => {
        const [row, column] = place.split(",").map(Number);
        return column === 5 && !(Number(sheet.grid[row! - 1]?.[4]) > 2);
      });
      expect(wrong).toEqual([]);
      expect(marked()).toHaveLength(new Set(marked()).size);
    },
  );
});

const FOAM_OF_A = "2,5";
const FOAM_OF_B = "7,5";

test("the marks of one stay when another is marked, and all of them come off", async () => {
  const { sheet, commands, mark, marked } = pane();
  await mark("A1:E3");
  expect(marked()).toContain(FOAM_OF_A);
  const said = await mark("A6:E8");
  expect(marked()).toEqual(expect.arrayContaining([FOAM_OF_A, FOAM_OF_B]));
  expect(said).toContain(say("pane-marks-kept-of", { addresses: "Loads!A1:E3" }));
  await commands.unmark();
  expect(marked()).toEqual([]);
  expect(sheet.notes).toEqual([]);
});

test("a table that was edited since loses its marks, and that is said", async () => {
  const { sheet, mark, marked } = pane();
  await mark("A1:E3");
  edit(sheet, 1, 4, 0);
  const said = await mark("A6:E8");
  expect(marked()).not.toContain(FOAM_OF_A);
  expect(marked()).toContain(FOAM_OF_B);
  expect(said).toContain(say("pane-marks-gone-of", { addresses: "Loads!A1:E3" }));
});

test("a table that moved down since loses its marks rather than mark other cells", async () => {
  const { sheet, mark, marked } = pane();
  await mark("A6:E8");
  insertRows(sheet, 4, 1);
  const said = await mark("A1:E3");
  expect(marked()).toContain(FOAM_OF_A);
  expect(marked().filter((place) => place.startsWith("7,") || place.startsWith("8,"))).toEqual([]);
  expect(said).toContain(say("pane-marks-gone-of", { addresses: "Loads!A6:E8" }));
});

test("a table that is checked again with a row more is marked once", async () => {
  const { sheet, mark, marked } = pane();
  await mark("A1:E3");
  sheet.grid[3] = ["A-3", 5, 5, 32, 6];
  await mark("A1:E4");
  expect(marked().filter((place) => place === FOAM_OF_A)).toEqual([FOAM_OF_A]);
  expect(marked()).toContain("4,5");
});

test("a note of the user's beside a kept mark stays", async () => {
  const { sheet, commands, mark } = pane();
  await mark("A1:E3");
  giveNote(sheet, 2, 0, "Seen by the foreman.");
  await mark("A6:E8");
  await commands.unmark();
  expect(sheet.notes.map(({ content }) => content)).toEqual(["Seen by the foreman."]);
});
