import { excelHost } from "../../../src/hosts/excel/excel-host";
import { weightOfFormula } from "../../../src/hosts/mark-tag";
import type { Mark } from "../../../src/hosts/sheet-host";
import { Problem } from "../../../src/measure/problem";
import { say } from "../../../src/messages/pane-catalogue";
import { addressOf, rectangleFrom } from "../../excel-client/block";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import type { SheetModel } from "../../excel-client/sheet-model";
import { WorkbookModel } from "../../excel-client/workbook-model";

/* What Excel refuses, hides or cuts off. */

const excel = startExcel();
afterAll(untilReleased);
const host = excelHost();
let sheet: SheetModel;

beforeEach(() => {
  excel.workbook = new WorkbookModel();
  excel.waitsForEditing = true;
  sheet = excel.workbook.front;
  sheet.grid = [
    ["Sample", "First reading"],
    ["L-1", 5.25],
    ["L-2", 5.5],
  ];
  excel.workbook.select(sheet, rectangleFrom("A1:B3"));
});

function markAt(row: number, column: number): Mark {
  const sentences = ["Look at this reading."];
  return { sheetId: sheet.id, row, column, weight: "error", sentences };
}

describe("a protected sheet", () => {
  const NOTHING_ALLOWED = { protected: true, allowFormatCells: false, allowEditObjects: false };

  test("is not marked, and a sentence says so", async () => {
    sheet.protection = NOTHING_ALLOWED;
    const before = excel.workbook.snapshot();
    expect(await host.mark([markAt(1, 1)], true)).toEqual({
      cells: 0,
      notes: 0,
      remarks: [
        say("marks-not-on-protected-sheet", { sheet: "Loads" }),
        say("notes-not-on-protected-sheet", { sheet: "Loads" }),
      ],
    });
    expect(excel.workbook.snapshot()).toEqual(before);
  });

  test("is marked where it allows formats", async () => {
    sheet.protection = { ...NOTHING_ALLOWED, allowFormatCells: true };
    expect(await host.mark([markAt(1, 1)], false)).toEqual({ cells: 1, notes: 0, remarks: [] });
  });

  test("keeps marks that were put before; they come off once the protection is off", async () => {
    const before = excel.workbook.snapshot();
    await host.mark([markAt(1, 1)], true);
    sheet.protection = NOTHING_ALLOWED;
    expect(await host.unmark()).toEqual({
      cells: 0,
      notes: 0,
      remarks: [say("marks-left-on-protected-sheet", { sheet: "Loads" })],
    });
    sheet.protection = { ...NOTHING_ALLOWED, protected: false };
    await host.unmark();
    expect(excel.workbook.snapshot()).toEqual(before);
  });

  test("does not keep the others from being marked", async () => {
    const other = excel.workbook.addSheet("Mixes");
    sheet.protection = NOTHING_ALLOWED;
    const marks = [markAt(1, 1), { ...markAt(0, 0), sheetId: other.id }];
    expect(await host.mark(marks, false)).toMatchObject({ cells: 1 });
    expect(other.formats).toHaveLength(1);
  });
});

test("a workbook with a protected structure gets no results sheet, but a sentence", async () => {
  excel.workbook.structureProtected = true;
  await expect(host.writeResultsSheet("Findings", [["Sample"]])).rejects.toEqual(
    new Problem("sheet-protected"),
  );
});

describe("a cell that is being edited", () => {
  test("makes Excel wait, and then do it", async () => {
    excel.startEditing();
    const reading = host.read("selection");
    const first = await Promise.race([reading, later(30)]);
    expect(first).toBe("waited");
    excel.stopEditing();
    expect((await reading).values).toHaveLength(3);
  });

  test("is named in a sentence where Excel cannot wait", async () => {
    excel.waitsForEditing = false;
    excel.startEditing();
    await expect(host.read("selection")).rejects.toEqual(new Problem("host-busy"));
    excel.stopEditing();
    expect((await host.read("selection")).values).toHaveLength(3);
  });
});

describe("reading", () => {
  test("goes on in smaller pieces where Excel refuses one as too large", async () => {
    sheet.grid = Array.from({ length: 2_000 }, (_, i) => [`${i} ${"long remark ".repeat(500)}`]);
    excel.workbook.select(sheet, rectangleFrom("A1:A2000"));
    const told: number[] = [];
    const { values } = await host.read("selection", (done) => told.push(done));
    expect(values).toEqual(sheet.grid);
    expect(told.at(-1)).toBe(2_000);
    expect(told.length).toBeGreaterThan(3);
  });

  test("says that a single row is more than Excel hands over", async () => {
    sheet.grid = [Array.from({ length: 200 }, () => "x".repeat(32_000))];
    excel.workbook.select(sheet, { top: 0, left: 0, bottom: 0, right: 199 });
    await expect(host.read("selection")).rejects.toEqual(new Problem("too-much-at-once"));
  });

  test("says how much can be read at most", async () => {
    sheet.grid[1_000_000] = ["far below"];
    excel.workbook.select(sheet, rectangleFrom("A1:Z1000001"));
    await expect(host.read("selection")).rejects.toEqual(
      new Problem("selection-too-large", { rows: 1_000_001, columns: 26, limit: 21_000_000 }),
    );
  });

  test("stops where the caller calls it off", async () => {
    const calledOff = new Error("stopped");
    const stop = (): void => {
      throw calledOff;
    };
    await expect(host.read("selection", stop)).rejects.toBe(calledOff);
  });

  test("leaves out the blank end of a selection that was drawn too far", async () => {
    excel.workbook.select(sheet, rectangleFrom("A1:B1048570"));
    expect((await host.read("selection")).area).toMatchObject({ row: 0, rows: 3, columns: 2 });
  });

  test("cuts the whole sheet to the cells in use", async () => {
    excel.workbook.select(sheet, rectangleFrom("A1:XFD1048576"));
    expect((await host.read("selection")).area).toMatchObject({ row: 0, rows: 3, columns: 2 });
  });

  test("reads filtered rows too, and the first of merged cells for all of them", async () => {
    sheet.filter = { block: rectangleFrom("A1:B3"), hiddenRows: [1] };
    sheet.merges.push(rectangleFrom("A2:A3"));
    sheet.grid[2] = ["", 5.5];
    expect((await host.read("selection")).values).toEqual([
      ["Sample", "First reading"],
      ["L-1", 5.25],
      ["", 5.5],
    ]);
  });

  test("reads an Excel table whole, across a blank row and without its totals", async () => {
    sheet.grid = [["Sample"], ["L-1"], [""], ["L-3"], ["Total"]];
    sheet.tables.push({
      id: excel.workbook.newId(),
      name: "Table1",
      block: rectangleFrom("A1:A5"),
      showTotals: true,
    });
    excel.workbook.select(sheet, rectangleFrom("A2"));
    expect((await host.read("table")).values).toEqual([["Sample"], ["L-1"], [""], ["L-3"]]);
  });

  test("says that a chart is selected, not cells", async () => {
    excel.workbook.selection = [];
    await expect(host.read("selection")).rejects.toEqual(new Problem("selection-in-parts"));
  });
});

describe("marking", () => {
  test("spreads many scattered cells over several rules of one tag, no address too long", async () => {
    const before = excel.workbook.snapshot();
    const marks = Array.from({ length: 3_000 }, (_, i) => markAt(100_000 + 2 * i, 3));
    expect(await host.mark(marks, false)).toMatchObject({ cells: 3_000 });
    expect(sheet.formats.map(({ formula }) => weightOfFormula(formula))).toEqual(
      Array.from(sheet.formats, () => "error"),
    );
    const marked = sheet.formats.flatMap(({ areas }) => areas.map(addressOf));
    expect(new Set(marked).size).toBe(3_000);
    // 3,000 addresses of 7 characters with commas make 24,000: three rules of 8,000.
    expect(sheet.formats).toHaveLength(3);
    await host.unmark();
    expect(excel.workbook.snapshot()).toEqual(before);
  });

  test("takes cells under each other together", async () => {
    await host.mark(
      [3, 1, 2, 5].map((row) => markAt(row, 1)),
      false,
    );
    expect(sheet.formats.map(({ areas }) => areas.map(addressOf))).toEqual([["B2:B4", "B6"]]);
  });

  test("puts the note of merged cells on their first, where Excel takes it", async () => {
    sheet.merges.push(rectangleFrom("A2:A3"));
    expect(await host.mark([markAt(1, 0), markAt(2, 0)], true)).toMatchObject({ notes: 1 });
    expect(sheet.notes.map(({ row, column }) => [row, column])).toEqual([[1, 0]]);
  });

  test("keeps notes off cells with a comment", async () => {
    sheet.comments.push({ id: excel.workbook.newId(), row: 1, column: 1, content: "Whose?" });
    expect(await host.mark([markAt(1, 1)], true)).toEqual({
      cells: 1,
      notes: 0,
      remarks: [say("notes-kept", { count: 1 })],
    });
  });

  test("adds notes to the first thousand cells only, and says so", async () => {
    const marks = Array.from({ length: 1_200 }, (_, i) => markAt(i, 2));
    expect(await host.mark(marks, true)).toEqual({
      cells: 1_200,
      notes: 1_000,
      remarks: [say("notes-only-first", { count: 1_000 })],
    });
  });

  test("finds our marks beside a rule that Excel lists and cannot show", async () => {
    sheet.formats.push({
      id: excel.workbook.newId(),
      type: "Custom",
      areas: [rectangleFrom("B2:B3")],
      formula: "=duplicated",
      fill: "#00aa55",
      ink: "#000000",
    });
    const before = excel.workbook.snapshot();
    await host.mark([markAt(1, 1)], false);
    await host.mark([markAt(1, 1)], false);
    expect(sheet.formats).toHaveLength(2);
    await host.unmark();
    expect(excel.workbook.snapshot()).toEqual(before);
  });

  test("of nothing asks Excel nothing", async () => {
    excel.startCounting();
    expect(await host.mark([], true)).toEqual({ cells: 0, notes: 0, remarks: [] });
    expect(excel.traffic.calls).toBe(0);
  });
});

describe("a large results sheet", () => {
  test("is written in pieces that Excel takes", async () => {
    const table = Array.from({ length: 40_000 }, (_, i) => [
      i + 1,
      `L-${i}`,
      "This sentence is about as long as those that the check writes into its list of findings.",
    ]);
    excel.startCounting();
    const name = await host.writeResultsSheet("Findings", table);
    const written = excel.workbook.sheets.find((one) => one.name === name);
    expect(written?.grid).toEqual(table);
    expect(excel.traffic.largestRequest).toBeLessThan(3_500_000);
    expect(excel.traffic.calls).toBeGreaterThan(3);
  });

  test("that no sheet can hold is refused before anything is written", async () => {
    const table = Array.from({ length: 1_048_577 }, () => [1]);
    await expect(host.writeResultsSheet("Findings", table)).rejects.toEqual(
      new Problem("results-too-long", { rows: 1_048_577 }),
    );
    expect(excel.workbook.sheets).toHaveLength(1);
  });
});

function later(milliseconds: number): Promise<string> {
  return new Promise((resolve) => setTimeout(() => resolve("waited"), milliseconds));
}
