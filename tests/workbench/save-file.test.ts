import type { FUniver } from "@univerjs/core/facade";
import { readFileSync } from "node:fs";
import { OpenedPackage } from "../../src/files/package/opened-package";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { workbenchHost } from "../../src/hosts/workbench/workbench-host";
import { EditsSinceOpening } from "../../src/workbench/files/edits-since-opening";
import { openFile } from "../../src/workbench/files/open-file";
import { fileToSave, notesByCell, type FileBehind } from "../../src/workbench/files/save-file";
import { openWorkbench } from "../hosts/workbench/workbench-under-test";

jest.mock("@univerjs/core", () =>
  jest.requireActual("../hosts/workbench/headless-univer").loadHeadlessUniver(),
);
jest.mock("@univerjs/preset-sheets-core", () => jest.requireMock("@univerjs/core"));

const SHEET = "Loads & tests";
/** Written by openpyxl and by LibreOffice (scripts/make-workbook-fixtures.py). */
const WRITERS = ["by-openpyxl", "by-libreoffice"];
let close = () => {};
afterEach(() => close());

async function opened(name: string, bytes: Uint8Array) {
  const bench = openWorkbench();
  close = () => bench.close();
  const { api } = bench;
  const file = await openFile("book", name, bytes);
  api.disposeUnit("w");
  const book = api.createWorkbook(file.data);
  const sheets = book.getSheets();
  const behind: FileBehind = {
    original: file.original,
    names: file.sheetNames,
    sheets: new Map(
      file.original ? sheets.map((each) => [each.getSheetId(), each.getSheetName()]) : [],
    ),
    notes: new Map(sheets.map((each) => [each.getSheetId(), notesByCell(each)])),
  };
  const edits = new EditsSinceOpening(api);
  const sheet = book.getActiveSheet();
  const mark = (row: number, column: number) => ({
    sheetId: sheet.getSheetId(),
    ...{ row, column, weight: "error" as const, sentences: ["Look here."] },
  });
  return {
    ...{ api, file, sheet, mark, host: workbenchHost(api), close },
    save: () => fileToSave(api, behind, edits),
  };
}

const fixture = (writer: string) =>
  new Uint8Array(readFileSync(`tests/workbench/files/${writer}.xlsx`));

async function sheetOf(bytes: Uint8Array, name = SHEET) {
  return (await readWorkbook(bytes)).sheets.find((sheet) => sheet.name === name)!;
}

async function textOf(bytes: Uint8Array, part: string) {
  return new OpenedPackage(bytes).text(part);
}

/** A sheet that was opened and changed in the spreadsheet. */
function setCell(api: FUniver, cell: string, value: string | number): void {
  api.getActiveWorkbook()!.getActiveSheet().getRange(cell).setValue(value);
}

describe.each(WRITERS)("a workbook written %s", (writer) => {
  test("is opened with its notes, its rules and what may be typed, and says what is not shown", async () => {
    const { file, sheet } = await opened(`${writer}.xlsx`, fixture(writer));
    expect(sheet.getSheetName()).toBe(SHEET);
    expect(notesByCell(sheet)).toEqual(
      new Map([
        ["A3", "First truck\nof the day"],
        ["H4", "Looked at again by R. Ferro"],
      ]),
    );
    const rules = sheet.getConditionalFormattingRules().map(({ rule }) => rule);
    expect(rules).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ value: "=H3>(J3)", style: { bg: { rgb: "#FFC7CE" } } }),
        expect.objectContaining({ value: "=$G3>2" }),
        expect.objectContaining({ type: "colorScale" }),
      ]),
    );
    const typed = JSON.parse(
      file.data.resources!.find(({ name }) => name === "SHEET_DATA_VALIDATION_PLUGIN")!.data,
    );
    expect(typed["book-1"]).toEqual([
      expect.objectContaining({ type: "custom", formula1: "=OR(E3=0,E3=1,E3=2,E3=3)" }),
      expect.objectContaining({ type: "decimal", formula1: "0", formula2: "9" }),
    ]);
    expect(file.remarks).toEqual([
      `“${writer}.xlsx” also holds what the workbench does not show, and keeps when it saves: 1 hidden sheet, 1 chart, 1 picture.`,
    ]);
  });

  test("is saved as it was, byte for byte, where nothing was done", async () => {
    const { save } = await opened("day.xlsx", fixture(writer));
    const { bytes, remarks } = await save();
    expect(remarks).toEqual([]);
    for (const name of new OpenedPackage(bytes).names())
      expect(await textOf(bytes, name)).toBe(await textOf(fixture(writer), name));
  });

  test("is saved with marks, notes and results, and as it was once they are taken off", async () => {
    const { api, host, mark, save } = await opened("day.xlsx", fixture(writer));
    // H4 has a note of the user's own, which stays.
    await host.mark([mark(4, 6), mark(3, 7)], true);
    await host.writeResultsSheet("FRESH results", [["row"], [5]]);
    const { bytes, ...counts } = await save();
    expect(counts).toEqual({ sheets: 1, cells: 0, notes: 1, remarks: [] });
    const saved = await sheetOf(bytes);
    expect(saved.cells!.get("4,6")!.comment!.text).toMatch(/^Look here.*\nChecked with FRESH /);
    expect(saved.cells!.get("3,7")!.comment!.text).toBe("Looked at again by R. Ferro");
    expect(saved.conditionalRules).toHaveLength(4);
    expect((await sheetOf(bytes, "FRESH results")).rows).toEqual([["row"], [5]]);

    api.getActiveWorkbook()!.deleteSheet(api.getActiveWorkbook()!.getSheetByName("FRESH results")!);
    await host.unmark();
    const { bytes: again } = await save();
    const part = "xl/worksheets/sheet1.xml";
    expect(await textOf(again, part)).toBe(await textOf(fixture(writer), part));
  });

  test("opened again after saving has its marks, and loses them with the note", async () => {
    const first = await opened("day.xlsx", fixture(writer));
    await first.host.mark([first.mark(4, 6)], true);
    const { bytes } = await first.save();
    close();
    const second = await opened("day.xlsx", bytes);
    expect(await second.host.unmark()).toMatchObject({ cells: 1, notes: 1 });
    const { bytes: without } = await second.save();
    const part = "xl/worksheets/sheet1.xml";
    expect(await textOf(without, part)).toBe(await textOf(fixture(writer), part));
  });

  test("is saved with a cell that was typed into, and without one that was undone", async () => {
    const { api, save } = await opened("day.xlsx", fixture(writer));
    setCell(api, "C4", 6.25);
    setCell(api, "C5", 1);
    api.getActiveWorkbook()!.undo();
    const { bytes, cells } = await save();
    expect(cells).toBe(1);
    const { rows } = await sheetOf(bytes);
    expect([rows[3]![2], rows[4]![2]]).toEqual([6.25, 7]);
  });

  test("is not saved while rows are put in, and is again once that is undone", async () => {
    const { api, sheet, save } = await opened("day.xlsx", fixture(writer));
    sheet.insertRowBefore(3);
    await expect(save()).rejects.toMatchObject({
      id: "moved-cells-not-saved",
      values: { sheet: SHEET },
    });
    api.getActiveWorkbook()!.undo();
    expect(await save()).toMatchObject({ cells: 0 });
  });
});

test("a formula whose results fill other cells is saved with all of them", async () => {
  const { api, save } = await opened("day.xlsx", fixture("by-openpyxl"));
  setCell(api, "N3", "=SORT(C3:C6,1,-1)");
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(api.getActiveWorkbook()!.getActiveSheet().getRange("N4").getValue()).toBe(7);
  const { bytes } = await save();
  const { cells } = await sheetOf(bytes);
  expect(cells!.get("2,13")).toMatchObject({ formulaType: "array", formulaRef: "N3:N6" });
});

test("a CSV file is saved as a workbook with its marks", async () => {
  const { api, host, mark, save } = await opened(
    "yard.csv",
    Buffer.from("Sample,First reading\nS-1,5.25\n"),
  );
  setCell(api, "C1", "=FRESH.AIR(B2)");
  await host.mark([mark(1, 1)], true);
  const { bytes } = await save();
  const { rows, cells, conditionalRules } = await sheetOf(bytes, "yard");
  expect(rows[1]).toEqual(["S-1", 5.25, null]);
  expect(cells!.get("0,2")!.formula).toBe("_xldudf_FRESH_AIR(B2)");
  expect(conditionalRules).toHaveLength(1);
  expect(cells!.get("1,1")!.comment!.text).toContain("Look here.");
});

test.each(WRITERS)(
  "a setup sheet is saved with a workbook written %s, and changed in it",
  async (writer) => {
    const first = await opened("day.xlsx", fixture(writer));
    await first.host.addSheet("Fresh setup", [
      ["Header", "Taken for", "Unit"],
      ["Spirit", "alcohol", "oz"],
    ]);
    const once = await first.save();
    expect(once).toMatchObject({ sheets: 1, cells: 0 });
    first.close();
    const again = await opened("day.xlsx", once.bytes);
    const read = (await again.host.readSheet("Fresh setup"))!;
    await again.host.writeCells(read, [
      { row: 1, column: 2, values: [["pt"]] },
      { row: 2, column: 0, values: [["Pointer", "not ours", null]] },
    ]);
    const { bytes, sheets } = await again.save();
    expect(sheets).toBe(0);
    expect((await sheetOf(bytes, "Fresh setup")).rows).toEqual([
      ["Header", "Taken for", "Unit"],
      ["Spirit", "alcohol", "pt"],
      ["Pointer", "not ours", null],
    ]);
    expect((await sheetOf(bytes)).rows).toEqual((await sheetOf(fixture(writer))).rows);
  },
);
