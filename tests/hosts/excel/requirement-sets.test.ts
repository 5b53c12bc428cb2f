import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { SheetHost } from "../../../src/hosts/sheet-host";
import { Problem } from "../../../src/measure/problem";
import { say } from "../../../src/messages/pane-catalogue";
import { rectangleFrom } from "../../excel-client/block";
import { startExcel } from "../../excel-client/excel-client";
import { setOf } from "../../excel-client/requirement-sets";
import { WorkbookModel } from "../../excel-client/workbook-model";

/*
 * The Excels that people have. The emulated one refuses every member that its requirement set does not bring, so a
 * call that is not asked for first fails here.
 */
const EXCELS = [
  { excel: "ExcelApi 1.9, the oldest that is read and marked", set: 9, notes: false, asked: false },
  { excel: "ExcelApi 1.14, Office 2021", set: 14, notes: false, asked: true },
  { excel: "ExcelApi 1.17, Office 2024", set: 17, notes: false, asked: true },
  { excel: "ExcelApi 1.18", set: 18, notes: true, asked: true },
  { excel: "ExcelApi 1.20", set: 20, notes: true, asked: true },
];

const excel = startExcel();
let host: SheetHost;

beforeEach(() => {
  excel.workbook = new WorkbookModel();
  const sheet = excel.workbook.front;
  sheet.grid = [["Sample"], ["L-1"], ["L-2"]];
  sheet.merges.push(rectangleFrom("C1:C2"));
  sheet.comments.push({ id: excel.workbook.newId(), row: 2, column: 0, content: "Whose?" });
  excel.workbook.select(sheet, rectangleFrom("A1:A3"));
  host = excelHost();
});

describe.each(EXCELS)("$excel", ({ set, notes, asked }) => {
  beforeEach(() => {
    excel.requirementSet = set;
  });

  test("reads, selects, marks, takes marks off, writes, draws and keeps settings", async () => {
    const read = await host.read("selection");
    const { area } = read;
    expect((await host.read("table")).values).toEqual([["Sample"], ["L-1"], ["L-2"]]);
    expect((await host.readAgain(read)).values).toEqual([["Sample"], ["L-1"], ["L-2"]]);
    await host.select({ sheetId: area.sheetId, row: 1, column: 0 });
    const mark = { sheetId: area.sheetId, row: 1, column: 0, weight: "void" as const };
    expect(await host.mark([{ ...mark, sentences: ["Void."] }], false)).toEqual({
      cells: 1,
      notes: 0,
      remarks: [],
    });
    expect(await host.unmark()).toMatchObject({
      cells: 1,
      remarks: notes ? [] : [say("notes-not-seen-here")],
    });
    expect(await host.writeResultsSheet("Findings", [["Sample"], ["L-1"]])).toBe("Findings");
    const lines = [{ name: "Air", values: [5.25] }];
    const chart = { sheetName: "Trend", title: "Air", names: ["L-1"], lines };
    expect(await host.addChart!(chart)).toBe("Trend");
    await host.saveSettings({ low: 4.5 });
    expect(await host.settings()).toEqual({ low: 4.5 });
  });

  test("adds notes or says in a sentence that it cannot", async () => {
    const { sheetId } = (await host.read("selection")).area;
    const sentences = ["Look at this reading."];
    const marks = [{ sheetId, row: 1, column: 0, weight: "error" as const, sentences }];
    expect(await host.mark(marks, true)).toEqual({
      cells: 1,
      notes: notes ? 1 : 0,
      remarks: notes ? [] : [say("notes-need-newer-excel")],
    });
  });

  test("knows how decimals are written, where need be from the language", async () => {
    excel.workbook.decimalSeparator = ",";
    expect(await host.decimalMark()).toBe(asked ? "," : ".");
    (Office.context as { contentLanguage: string }).contentLanguage = "de-DE";
    expect(await excelHost().decimalMark()).toBe(",");
    (Office.context as { contentLanguage: string }).contentLanguage = "en-US";
  });

  test("tells of edits and selections, not of what we do ourselves", async () => {
    const { area } = await host.read("selection");
    const sheet = excel.workbook.front;
    const edits: string[] = [];
    const stops = [
      await host.onEdit((sheetId) => edits.push(sheetId)),
      await host.onSelectionChange(() => undefined),
    ];
    const mark = { sheetId: area.sheetId, row: 1, column: 0, weight: "void" as const };
    await host.mark([{ ...mark, sentences: ["Void."] }], true);
    await host.unmark();
    await host.writeResultsSheet("Findings", [["Sample"], ["L-1"]]);
    await later(300);
    expect(edits).toEqual([]);
    excel.userChanged(sheet, "RangeEdited");
    await later(20);
    expect(edits).toEqual([sheet.id]);
    for (const stop of stops) await stop();
  });

  test("tells of sorting where this Excel does", async () => {
    const sheet = excel.workbook.front;
    const edits: string[] = [];
    const stop = await host.onEdit((sheetId) => edits.push(sheetId));
    excel.userSorted(sheet, rectangleFrom("A1:A3"));
    await later(20);
    expect(edits).toEqual(set >= 10 ? [sheet.id] : []);
    await stop();
  });
});

test("an Excel before ExcelApi 1.9 gets one sentence for everything", async () => {
  excel.requirementSet = 8;
  const tooOld = new Problem("excel-too-old");
  const place = { sheetId: excel.workbook.front.id, row: 0, column: 0 };
  await expect(host.read("selection")).rejects.toEqual(tooOld);
  await expect(host.read("table")).rejects.toEqual(tooOld);
  await expect(host.select(place)).rejects.toEqual(tooOld);
  const marks = [{ ...place, weight: "error" as const, sentences: [] }];
  await expect(host.mark(marks, false)).rejects.toEqual(tooOld);
  await expect(host.unmark()).rejects.toEqual(tooOld);
  await expect(host.writeResultsSheet("Findings", [["Sample"]])).rejects.toEqual(tooOld);
  await expect(host.settings()).rejects.toEqual(tooOld);
  await expect(host.onEdit(() => undefined)).rejects.toEqual(tooOld);
});

test.each([
  // Source: "[Api set: ExcelApi …]" on Microsoft Learn and in its type declarations.
  { member: "Range.values", set: 1 },
  { member: "Range.conditionalFormats", set: 6 },
  { member: "Worksheet.getRanges", set: 9 },
  { member: "Application.decimalSeparator", set: 11 },
  { member: "Range.getMergedAreasOrNullObject", set: 13 },
  { member: "Worksheet.notes", set: 18 },
])("the emulated Excel refuses $member below ExcelApi 1.$set", ({ member, set }) => {
  const [className = "", name = ""] = member.split(".");
  expect(setOf(className, name)).toBe(set);
});

function later(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
