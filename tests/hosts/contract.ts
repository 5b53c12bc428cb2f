import { MARK_STYLES } from "../../src/hosts/mark-style";
import type { CellArea, CellPlace, Mark, ReadArea, SheetHost } from "../../src/hosts/sheet-host";
import { isBlank, type CellValue } from "../../src/measure/cell-value";
import { Problem } from "../../src/measure/problem";
import { say } from "../../src/messages/pane-catalogue";
import { findTests } from "../../src/pane/state/find-tests";

/** A spreadsheet with a host on it, as a test handles it. Positions from 0. */
export interface SpreadsheetUnderTest {
  readonly host: SheetHost;
  /** Fills the sheet in front from its first cell on; null leaves a cell blank. */
  fill(rows: readonly (readonly CellValue[])[]): void;
  /** The user selects blocks: first row, first column, rows, columns. */
  select(...blocks: readonly [number, number, number, number][]): void;
  selectColumns(first: number, count: number): void;
  /** The user types into a cell of the sheet in front. */
  edit(row: number, column: number, value: CellValue): void;
  insertRow(above: number): void;
  deleteRow(at: number): void;
  insertColumn(before: number): void;
  hideRow(row: number): void;
  /** The user writes the note of a cell, in place of one that it has. */
  giveNote(row: number, column: number, text: string): void;
  formulaAt(row: number, column: number): string | undefined;
  noteAt(row: number, column: number): string | undefined;
  removeNote(row: number, column: number): void;
  /** The user colours a cell for good, by a conditional format of their own. */
  giveFormat(row: number, column: number, fill: string): void;
  /** The fills that conditional formats lay over a cell, the one that is seen first. */
  fillsAt(row: number, column: number): readonly string[];
  sheetNames(): readonly string[];
  /** What a reader sees on a sheet; an error is its text. */
  valuesOf(sheetName: string): readonly (readonly CellValue[])[];
  close(): void;
}

/** A day of tests with every kind of cell. */
const LOADS: readonly (readonly CellValue[])[] = [
  ["Sample", "First reading", "Final reading", "Packed"],
  ["L-1", 5.25, 5, false],
  ["L-2", "5.25", 0, true],
  ["L-3", null, { error: "#N/A" }, null],
];

/** A plain table of tests, over the same cells. */
const TABLE: readonly (readonly CellValue[])[] = [
  ["Sample", "First reading", "Second reading", "Alcohol (oz)"],
  ["S-1", 5, 5, 16],
  ["S-2", 6, 6, 16],
  ["S-3", 5.5, 5.5, 16],
];

/**
 * What the pane relies on, whatever spreadsheet it stands beside. Every host passes it.
 *
 * @param open Opens a spreadsheet with one empty sheet.
 */
export function describeHost(name: string, open: () => SpreadsheetUnderTest): void {
  describe(name, () => {
    let sheet: SpreadsheetUnderTest;
    let host: SheetHost;

    beforeEach(() => {
      sheet = open();
      host = sheet.host;
      sheet.fill(LOADS);
    });
    afterEach(() => sheet.close());

    const readWhole = (): Promise<ReadArea> => {
      sheet.select([0, 0, 4, 4]);
      return host.read("selection");
    };
    const readAll = async (): Promise<CellArea> => (await readWhole()).area;
    const markAt = (
      area: CellArea,
      row: number,
      column: number,
      more: Partial<Mark> = {},
    ): Mark => ({
      sheetId: area.sheetId,
      row,
      column,
      weight: "error",
      sentences: ["Look at this reading."],
      ...more,
    });

    describe("work that is stopped", () => {
      const stop = new Error("stopped");
      const stopAt = (pauses: number) => {
        let left = pauses;
        return async () => {
          if ((left -= 1) < 1) throw stop;
        };
      };
      // Each step is as long as a slice, so that there is a pause behind each.
      let now = 0;
      beforeEach(() => void jest.spyOn(performance, "now").mockImplementation(() => (now += 30)));
      afterEach(() => jest.restoreAllMocks());

      test.each([1, 2, 3, 4, 5, 6])(
        "leaves none of the new marks when it is stopped at pause %i, and passes on what stopped it",
        async (pauses) => {
          const read = await readWhole();
          const marks = [1, 2, 3].map((row) => markAt(read.area, row, 1));
          const ended = await host.mark(marks, true, [read], stopAt(pauses)).catch((by) => by);
          // A host that has only few slices comes to its end before.
          if (ended !== stop) return expect(ended).toMatchObject({ cells: 3, notes: 3 });
          expect([1, 2, 3].map((row) => sheet.fillsAt(row, 1))).toEqual([[], [], []]);
          expect([1, 2, 3].map((row) => sheet.noteAt(row, 1) ?? "")).toEqual(["", "", ""]);
        },
      );

      test.each([1, 2, 3])(
        "takes the rest of the marks off later when it is stopped at pause %i",
        async (pauses) => {
          const read = await readWhole();
          await host.mark(
            [1, 2].map((row) => markAt(read.area, row, 1)),
            true,
            [read],
          );
          const ended = await host.unmark(stopAt(pauses)).catch((by) => by);
          if (ended !== stop) expect(ended).toMatchObject({ notes: 2 });
          await host.unmark();
          expect(sheet.fillsAt(1, 1)).toEqual([]);
          expect(sheet.noteAt(1, 1) ?? "").toBe("");
        },
      );

      test("writes no results", async () => {
        const before = sheet.sheetNames();
        const written = host.writeResultsSheet("Findings", LOADS, undefined, stopAt(1));
        expect(await written.catch((by) => by)).toBe(stop);
        expect(sheet.sheetNames()).toEqual(before);
      });
    });

    describe("reading", () => {
      test("gives the selection, each cell as it is: a blank is not a zero, a text not a number", async () => {
        sheet.select([0, 0, 4, 4]);
        const { area, values } = await host.read("selection");
        expect(area).toMatchObject({ row: 0, column: 0, rows: 4, columns: 4 });
        expect(withoutBlanks(values)).toEqual(LOADS);
      });

      test("says where, as people write it", async () => {
        sheet.select([1, 1, 2, 2]);
        const { area, address } = await host.read("selection");
        expect(address).toBe(`${area.sheetName}!B2:C3`);
      });

      test("finds the block of filled cells around the selected cell", async () => {
        sheet.edit(5, 0, "far below");
        sheet.select([2, 1, 1, 1]);
        const { area, values } = await host.read("table");
        expect(area).toMatchObject({ row: 0, column: 0, rows: 4, columns: 4 });
        expect(withoutBlanks(values)).toEqual(LOADS);
      });

      test("cuts whole columns to the cells in use", async () => {
        sheet.selectColumns(0, 3);
        const { area } = await host.read("selection");
        expect(area).toMatchObject({ row: 0, column: 0, rows: 4, columns: 3 });
      });

      test("finds the block around another cell than the selected one", async () => {
        sheet.select([10, 10, 1, 1]);
        const [top] = await host.sheetTops(10);
        const { area } = await host.read("table", undefined, {
          sheetId: top!.area.sheetId,
          row: 2,
          column: 1,
        });
        expect(area).toMatchObject({ row: 0, column: 0, rows: 4, columns: 4 });
      });

      test("gives the first rows of every sheet, the one in front first", async () => {
        const [only, ...others] = await host.sheetTops(2);
        expect(others).toEqual([]);
        expect(withoutBlanks(only!.values)).toEqual(LOADS.slice(0, 2));
        await host.writeResultsSheet("Findings", [["row", "sample"]]);
        const names = (await host.sheetTops(2)).map(({ area }) => area.sheetName);
        // A results sheet is shown when it is written.
        expect(names).toEqual(["Findings", only!.area.sheetName]);
      });

      test("says that nothing is selected", async () => {
        sheet.select([10, 10, 2, 2]);
        await expect(host.read("selection")).rejects.toEqual(new Problem("selection-empty"));
        sheet.select([10, 10, 1, 1]);
        await expect(host.read("table")).rejects.toEqual(new Problem("selection-empty"));
      });

      test("says that the selection is in several parts", async () => {
        sheet.select([0, 0, 2, 2], [3, 0, 1, 2]);
        await expect(host.read("selection")).rejects.toEqual(new Problem("selection-in-parts"));
      });

      test("again gives what has been typed since", async () => {
        const read = await readWhole();
        sheet.edit(3, 1, 4.5);
        const again = await host.readAgain(read);
        expect(again.values[3]?.[1]).toBe(4.5);
        expect(again.area).toEqual(read.area);
      });

      test("again takes in every row that was added below, and leaves out rows that are blank", async () => {
        const read = await readWhole();
        for (let row = 4; row < 60; row += 1) sheet.edit(row, 0, `L-${row}`);
        expect((await host.readAgain(read)).area).toMatchObject({ row: 0, rows: 60, columns: 4 });
        for (let row = 3; row < 60; row += 1) {
          for (let column = 0; column < 4; column += 1) sheet.edit(row, column, null);
        }
        expect((await host.readAgain(read)).area).toMatchObject({ row: 0, rows: 3, columns: 4 });
      });

      test("again keeps the last column after one was put in at the left edge", async () => {
        const read = await readWhole();
        sheet.insertColumn(0);
        const moved = await host.readAgain(read);
        expect(moved.area).toMatchObject({ column: 1, columns: 4 });
        expect(withoutBlanks(moved.values)).toEqual(LOADS);
        sheet.edit(0, 0, "Day");
        const wider = await host.readAgain(read);
        expect(wider.area).toMatchObject({ column: 0, columns: 5 });
      });

      test("of a part of a table keeps to that part, and tells what stands below it", async () => {
        sheet.select([0, 0, 3, 4]);
        const read = await host.read("selection");
        expect(read).toMatchObject({ cut: ["bottom"], below: { row: 3, rows: 1 } });
        sheet.edit(4, 0, "L-4");
        const again = await host.readAgain(read);
        expect(again).toMatchObject({ area: read.area, below: { row: 3, rows: 2 } });
        expect(again.values).toEqual(read.values);
      });

      test("of a table tells what stands beside it in the same rows", async () => {
        sheet.select([1, 1, 1, 1]);
        expect((await host.read("table")).beside).toEqual([]);
        sheet.edit(2, 6, "apart");
        sheet.edit(2, 8, "further apart");
        sheet.edit(20, 10, "in another row");
        expect((await host.read("table")).beside).toEqual([{ column: 6, columns: 3 }]);
      });

      test("finds what decides a test behind a blank column, and keeps to it", async () => {
        sheet.fill(TABLE);
        sheet.edit(0, 5, "Foam (divisions)");
        sheet.edit(1, 5, 3);
        sheet.edit(0, 7, "Inspector's car");
        sheet.edit(1, 7, "blue");
        sheet.select([1, 1, 1, 1]);
        const { read } = (await findTests(host, () => undefined)) as { read: ReadArea };
        const expected = { area: { column: 0, columns: 6 }, beside: [{ column: 7, columns: 1 }] };
        expect(read).toMatchObject(expected);
        expect(read.values[1]![5]).toBe(3);
        sheet.edit(4, 0, "S-4");
        expect(await host.readAgain(read)).toMatchObject({ area: { rows: 5, columns: 6 } });
      });

      test("finds the tests behind blank rows, and keeps to them", async () => {
        sheet.fill(TABLE);
        const end = TABLE.length;
        sheet.edit(end + 1, 0, "S-8");
        TABLE[0]!.forEach((_, column) => {
          if (column > 0) sheet.edit(end + 1, column, TABLE[1]![column] ?? null);
        });
        sheet.edit(end + 3, 0, "to be sent to the north yard");
        sheet.select([1, 1, 1, 1]);
        const { read } = (await findTests(host, () => undefined)) as { read: ReadArea };
        expect(read.area).toMatchObject({ row: 0, rows: end + 2 });
        expect(read.values[end + 1]![0]).toBe("S-8");
        expect(read.below).toEqual({ row: end + 3, rows: 1 });
        expect((await host.readAgain(read)).area.rows).toBe(end + 2);
      });

      test("leaves what stands below another header, and words below the tests", async () => {
        sheet.fill(TABLE);
        const end = TABLE.length;
        ["Sample", "Slump (in)", "Mix", "Truck"].forEach((header, column) =>
          sheet.edit(end + 1, column, header),
        );
        sheet.edit(end + 2, 0, "S-1");
        sheet.edit(end + 2, 1, 4);
        sheet.select([1, 1, 1, 1]);
        const { read } = (await findTests(host, () => undefined)) as { read: ReadArea };
        expect(read.area.rows).toBe(end);
        expect(read.below).toEqual({ row: end + 1, rows: 2 });
      });

      test("leaves a number that stands below a reading with a word beside it", async () => {
        sheet.fill(TABLE);
        sheet.edit(TABLE.length + 1, 0, "Low limit");
        sheet.edit(TABLE.length + 1, 1, 4.5);
        sheet.select([1, 1, 1, 1]);
        const { read } = (await findTests(host, () => undefined)) as { read: ReadArea };
        expect(read.area.rows).toBe(TABLE.length);
      });

      test("leaves aside what is behind a blank column and decides no test", async () => {
        sheet.fill(TABLE);
        sheet.edit(0, 5, "Inspector's car");
        sheet.edit(1, 5, "blue");
        sheet.select([1, 1, 1, 1]);
        const { read } = (await findTests(host, () => undefined)) as { read: ReadArea };
        expect(read.area).toMatchObject({ column: 0, columns: 4 });
      });

      test("of a table tells what stands further below", async () => {
        sheet.edit(7, 1, "after a blank row");
        sheet.select([1, 1, 1, 1]);
        expect((await host.read("table")).below).toEqual({ row: 7, rows: 1 });
        sheet.edit(7, 1, null);
        expect((await host.read("table")).below).toBeUndefined();
      });

      test("again says that the sheet is gone", async () => {
        const read = await readWhole();
        const gone = { ...read, area: { ...read.area, sheetId: "gone" } };
        await expect(host.readAgain(gone)).rejects.toEqual(new Problem("sheet-gone"));
      });
    });

    test("selects a cell", async () => {
      const { sheetId } = await readAll();
      await host.select({ sheetId, row: 2, column: 1 });
      const { area } = await host.read("selection");
      expect(area).toMatchObject({ row: 2, column: 1, rows: 1, columns: 1 });
    });

    test("selects a cell and reads others at the same moment", async () => {
      const area = await readAll();
      const place = { sheetId: area.sheetId, row: 2, column: 1 };
      const values = await host.select(place, { ...area, row: 2, rows: 1 });
      expect(withoutBlanks(values)).toEqual([LOADS[2]]);
    });

    describe("marking", () => {
      test("colours the cell by the weight and says how many were marked", async () => {
        const area = await readAll();
        const marks = [
          markAt(area, 1, 1),
          markAt(area, 2, 1),
          markAt(area, 3, 2, { weight: "void" }),
        ];
        expect(await host.mark(marks, false)).toMatchObject({ cells: 3, notes: 0 });
        expect(sheet.fillsAt(1, 1)).toEqual([MARK_STYLES.error.fill]);
        expect(sheet.fillsAt(2, 1)).toEqual([MARK_STYLES.error.fill]);
        expect(sheet.fillsAt(3, 2)).toEqual([MARK_STYLES.void.fill]);
        expect(sheet.fillsAt(1, 2)).toEqual([]);
      });

      test("marks a cell once, by the gravest of its findings, and notes them all", async () => {
        const area = await readAll();
        const marks = [
          markAt(area, 1, 1, { weight: "note", sentences: ["Good to know."] }),
          markAt(area, 1, 1, { weight: "void", sentences: ["The test is void."] }),
        ];
        expect(await host.mark(marks, true)).toMatchObject({ cells: 1, notes: 1 });
        expect(sheet.fillsAt(1, 1)).toEqual([MARK_STYLES.void.fill]);
        const lines = sheet.noteAt(1, 1)?.split("\n");
        expect(lines).toEqual([
          ...["The test is void.", "Good to know."],
          expect.stringMatching(/^Checked with FRESH/),
        ]);
      });

      test("done twice marks once, and leaves nothing of the earlier marks", async () => {
        const area = await readAll();
        await host.mark([markAt(area, 1, 1), markAt(area, 2, 2)], true);
        await host.mark([markAt(area, 1, 1)], true);
        await host.mark([markAt(area, 1, 1)], true);
        expect(sheet.fillsAt(1, 1)).toEqual([MARK_STYLES.error.fill]);
        expect(sheet.fillsAt(2, 2)).toEqual([]);
        expect(sheet.noteAt(2, 2)).toBeUndefined();
      });

      test("takes earlier marks off also where nothing is to be marked any more", async () => {
        const read = await readWhole();
        await host.mark([markAt(read.area, 1, 1)], true);
        expect(await host.mark([], true, [read])).toEqual({
          cells: 0,
          notes: 0,
          remarks: [],
        });
        expect(sheet.fillsAt(1, 1)).toEqual([]);
        expect(sheet.noteAt(1, 1)).toBeUndefined();
      });

      test("leaves the notes and formats of the user as they are, and says so", async () => {
        const area = await readAll();
        sheet.giveNote(1, 1, "Ask the driver.");
        sheet.giveFormat(1, 1, "#123456");
        const report = await host.mark([markAt(area, 1, 1)], true);
        expect(report).toMatchObject({ cells: 1, notes: 0 });
        expect(report.remarks).toHaveLength(1);
        expect(sheet.noteAt(1, 1)).toBe("Ask the driver.");
        await host.unmark();
        expect(sheet.noteAt(1, 1)).toBe("Ask the driver.");
        expect(sheet.fillsAt(1, 1)).toEqual(["#123456"]);
      });

      test("leaves what the user has written above and below our lines in a note", async () => {
        const area = await readAll();
        await host.mark([markAt(area, 1, 1), markAt(area, 2, 1)], true);
        sheet.giveNote(1, 1, `Ana:\n${sheet.noteAt(1, 1)}\nChecked by phone.`);
        await host.mark([markAt(area, 1, 1)], true);
        expect(sheet.noteAt(1, 1)).toBe("Ana:\nChecked by phone.");
        await host.unmark();
        expect(sheet.noteAt(1, 1)).toBe("Ana:\nChecked by phone.");
        expect(sheet.noteAt(2, 1)).toBeUndefined();
      });

      test("leaves a note of ours that the user has changed as it is, and says where", async () => {
        const area = await readAll();
        const mark = markAt(area, 1, 1);
        for (const change of [
          (text: string) => `${text} Checked by phone.`,
          (text: string) => text.replace("Look", "Do not look"),
          (text: string) => text.replace("Look at this reading.", "All is well."),
        ]) {
          await host.mark([mark], true);
          const written = change(sheet.noteAt(1, 1)!);
          sheet.giveNote(1, 1, written);
          const again = await host.mark([mark], true);
          expect(again.remarks.join(" ")).toContain(`${area.sheetName}!B2`);
          expect(sheet.noteAt(1, 1)).toBe(written);
          const { notes, remarks } = await host.unmark();
          expect(notes).toBe(0);
          expect(remarks.join(" ")).toContain(`${area.sheetName}!B2`);
          expect(sheet.noteAt(1, 1)).toBe(written);
          sheet.removeNote(1, 1);
        }
      });

      test("puts no mark where the checked cells hold something else by now", async () => {
        const read = await readWhole();
        await host.mark([markAt(read.area, 1, 1)], true, [read]);
        sheet.edit(2, 1, 6);
        await expect(host.mark([markAt(read.area, 2, 1)], true, [read])).rejects.toEqual(
          new Problem("table-changed"),
        );
        expect(sheet.fillsAt(2, 1)).toEqual([]);
        expect(sheet.noteAt(2, 1)).toBeUndefined();
      });

      test("puts no mark where another of the checked tables holds something else by now", async () => {
        const read = await readWhole();
        sheet.select([0, 0, 1, 4]);
        const above = await host.read("selection");
        sheet.edit(0, 1, "Changed");
        await expect(
          host.mark([markAt(read.area, 2, 1)], true, [await readWhole(), above]),
        ).rejects.toEqual(new Problem("table-changed"));
        expect(sheet.fillsAt(2, 1)).toEqual([]);
        expect(await host.unmark()).toMatchObject({ cells: 0, notes: 0 });
      });

      test("says how many of the marked cells are hidden", async () => {
        const area = await readAll();
        sheet.hideRow(2);
        const { cells, remarks } = await host.mark([markAt(area, 1, 1), markAt(area, 2, 1)], false);
        expect(cells).toBe(2);
        expect(remarks).toEqual([say("marks-hidden", { count: 1 })]);
      });

      test("is taken off again, from wherever its cells have gone", async () => {
        const area = await readAll();
        await host.mark([markAt(area, 2, 1), markAt(area, 3, 1)], true);
        sheet.insertRow(1);
        expect(await host.unmark()).toMatchObject({ cells: 2, notes: 2 });
        for (let row = 0; row < 6; row += 1) {
          expect(sheet.fillsAt(row, 1)).toEqual([]);
          expect(sheet.noteAt(row, 1)).toBeUndefined();
        }
        expect(await host.unmark()).toMatchObject({ cells: 0, notes: 0 });
      });

      test("changes no cell", async () => {
        const read = await readWhole();
        await host.mark([markAt(read.area, 1, 1), markAt(read.area, 3, 1)], true);
        expect(withoutBlanks((await host.readAgain(read)).values)).toEqual(LOADS);
      });
    });

    describe("a results sheet", () => {
      const TABLE = [
        ["Sample", "Value", "Message"],
        ["L-1", 5.25, "=1+1"],
        ["5/8", null, "Look at “5,25”."],
        ["'L-3'", { error: "#N/A" }, "007"],
      ];
      const SHOWN = [...TABLE.slice(0, 3), ["'L-3'", "#N/A", "007"]];

      test("is new and shows the table as given: no text becomes a formula, a date or a number", async () => {
        const name = await host.writeResultsSheet("Findings", TABLE);
        expect(name).toBe("Findings");
        expect(withoutBlanks(sheet.valuesOf("Findings"))).toEqual(SHOWN);
      });

      test("holds the same with a look of its own", async () => {
        const look = { bold: [0, 2], widths: [20, 8] };
        const name = await host.writeResultsSheet("Fresh report", TABLE, look);
        expect(withoutBlanks(sheet.valuesOf(name))).toEqual(SHOWN);
      });

      test("is in front", async () => {
        await host.writeResultsSheet("Findings", TABLE);
        sheet.select([1, 1, 1, 1]);
        const { area } = await host.read("table");
        expect(area).toMatchObject({ sheetName: "Findings", rows: 4, columns: 3 });
      });

      test("never takes the place of a sheet that is there", async () => {
        const first = await host.writeResultsSheet("Findings", TABLE);
        const second = await host.writeResultsSheet("findings", [["Sample"], ["L-9"]]);
        expect(second.toLowerCase()).not.toBe(first.toLowerCase());
        expect(withoutBlanks(sheet.valuesOf(first))).toEqual(SHOWN);
        expect(sheet.sheetNames()).toHaveLength(3);
      });

      test("takes any name", async () => {
        const name = await host.writeResultsSheet(
          `Loads: 5/31 [north] ${"long ".repeat(9)}`,
          TABLE,
        );
        expect(sheet.sheetNames()).toContain(name);
        expect(name.length).toBeLessThanOrEqual(31);
      });
    });

    describe("lines added to a sheet of a name", () => {
      const HEADED = [
        ["time", "note"],
        ["1", "=1+1"],
      ];
      const add = (lines: CellValue[][]) => host.addLines("Kept", (now) => (now ? lines : HEADED));
      const kept = () => withoutBlanks(sheet.valuesOf("Kept"));

      test("make it where there is none, with the sheet in front staying there", async () => {
        const front = await readAll();
        expect(await host.readSheet("Kept")).toBeUndefined();
        const { area, values } = await host.addLines("Kept", (now) =>
          now && now.values.length > 0 ? [] : HEADED,
        );
        expect(area).toMatchObject({ sheetName: "Kept", row: 0, column: 0, rows: 2, columns: 2 });
        expect(withoutBlanks(values)).toEqual(HEADED);
        expect((await readAll()).sheetId).toBe(front.sheetId);
      });

      test("come below what stands there, and leave blank what they leave out", async () => {
        await host.addLines("Kept", (now) => (now?.values.length ? [] : HEADED));
        const { values } = await add([
          ["2", null],
          [null, "5/8"],
        ]);
        expect(withoutBlanks(values)).toEqual([...HEADED, ["2", null], [null, "5/8"]]);
        expect(kept()).toEqual(withoutBlanks(values));
        const again = await host.readSheet("kept");
        expect(withoutBlanks(again!.values)).toEqual(withoutBlanks(values));
      });

      test("are many more than a new sheet has rows", async () => {
        await host.addLines("Kept", (now) => (now?.values.length ? [] : HEADED));
        await add(Array.from({ length: 2500 }, (_, i) => [String(i), null, "third"]));
        expect(kept()).toHaveLength(2502);
        expect(kept().at(-1)).toEqual(["2499", null, "third"]);
      });

      test("are none where the caller refuses what stands there", async () => {
        sheet.edit(0, 0, "A list of my own");
        const own = sheet.sheetNames()[0]!;
        const before = sheet.valuesOf(own).map((row) => [...row]);
        const refused = host.addLines(own, () => {
          throw new Problem("table-changed");
        });
        await expect(refused).rejects.toEqual(new Problem("table-changed"));
        expect(sheet.valuesOf(own)).toEqual(before);
      });
    });

    describe("a sheet of settings", () => {
      const TABLE = [
        ["Header", "Taken for", "Unit"],
        ["R 1", "first reading", ""],
        ["5/8", "=not a formula", "oz"],
      ];
      const add = () => host.addSheet("Fresh setup", TABLE);
      const readIt = async () => (await host.readSheet("FRESH SETUP"))!;

      test("is read by its name in any letters, and is not there before it is added", async () => {
        expect(await host.readSheet("Fresh setup")).toBeUndefined();
        await add();
        const { area, values } = await readIt();
        expect(area).toMatchObject({ sheetName: "Fresh setup", row: 0, column: 0, rows: 3 });
        expect(withoutBlanks(values)).toEqual(withoutBlanks(TABLE));
      });

      test("is added behind the sheet in front, which stays there", async () => {
        const { sheetName } = await readAll();
        await add();
        expect(sheet.sheetNames()).toEqual([sheetName, "Fresh setup"]);
        const [top] = await host.sheetTops(1);
        expect(top!.area.sheetName).toBe(sheetName);
      });

      test("is never added twice", async () => {
        await add();
        const again = host.addSheet("fresh SETUP", [["Other"]]);
        await expect(again).rejects.toEqual(new Problem("changed-meanwhile"));
        expect(withoutBlanks((await readIt()).values)).toEqual(withoutBlanks(TABLE));
      });

      test("is written to in some cells, and the others stay as they are", async () => {
        await add();
        await host.writeCells(await readIt(), [
          { row: 1, column: 1, values: [["second reading", null]] },
          {
            row: 3,
            column: 0,
            values: [
              ["R 2", "not ours", null],
              ["R 3", null, "in"],
            ],
          },
        ]);
        expect(withoutBlanks((await readIt()).values)).toEqual(
          withoutBlanks([
            TABLE[0]!,
            ["R 1", "second reading", ""],
            TABLE[2]!,
            ["R 2", "not ours", ""],
            ["R 3", "", "in"],
          ]),
        );
      });

      test("is not written to where one of its cells holds something else by now", async () => {
        await add();
        const read = await readIt();
        await host.writeCells(read, [{ row: 2, column: 0, values: [["1/2"]] }]);
        const now = withoutBlanks((await readIt()).values);
        const late = host.writeCells(read, [
          { row: 1, column: 2, values: [["oz"]] },
          { row: 2, column: 0, values: [["7/8", "leak"]] },
        ]);
        await expect(late).rejects.toEqual(new Problem("changed-meanwhile"));
        expect(withoutBlanks((await readIt()).values)).toEqual(now);
      });

      test("takes 5,000 lines at once, beyond the rows that it has", async () => {
        await add();
        const lines = Array.from({ length: 5000 }, (_, i) => [`Mix ${i}`, 4 + (i % 8) / 4, null]);
        await host.writeCells(await readIt(), [{ row: 3, column: 0, values: lines }]);
        const { values } = await readIt();
        expect(values).toHaveLength(5003);
        expect(values[5002]!.slice(0, 2)).toEqual(["Mix 4999", 5.75]);
      });
    });

    test("tells from which year days are counted", async () => {
      expect(await host.datesFrom()).toBe(1900);
    });

    test("keeps settings", async () => {
      await host.saveSettings({ low: 4.5, notes: true, edition: "ACI 318-19" });
      expect(await host.settings()).toEqual({ low: 4.5, notes: true, edition: "ACI 318-19" });
    });

    test("puts a formula into the selected cell and says where", async () => {
      sheet.select([5, 2, 1, 1]);
      expect(await host.insertFormula("=1+1")).toBe("C6");
      expect(sheet.formulaAt(5, 2)).toBe("=1+1");
    });

    test("leaves a cell alone that holds something", async () => {
      sheet.select([1, 0, 1, 1]);
      const filled = new Problem("cell-is-filled", { cell: "A2" });
      await expect(host.insertFormula("=1+1")).rejects.toEqual(filled);
      expect(sheet.valuesOf("Loads")[1]?.[0]).toBe("L-1");
    });

    test("tells the name of the file", async () => {
      expect(await host.workbookName()).toBe("loads.xlsx");
    });

    test("tells how decimals are written", async () => {
      expect(await host.decimalMark()).toBe(".");
    });

    describe("listening", () => {
      test("to the selection tells the cell, until stopped", async () => {
        const { sheetId } = await readAll();
        const places: CellPlace[] = [];
        const stop = await host.onSelectionChange((place) => places.push(place));
        sheet.select([2, 1, 2, 2]);
        await soon();
        expect(places.at(-1)).toEqual({ sheetId, row: 2, column: 1 });
        await stop();
        const told = places.length;
        sheet.select([3, 3, 1, 1]);
        await soon();
        expect(places).toHaveLength(told);
      });

      test("to edits tells the sheet of typing and of inserted rows, until stopped", async () => {
        const { sheetId } = await readAll();
        const sheets: string[] = [];
        const stop = await host.onEdit((id) => sheets.push(id));
        sheet.edit(1, 1, 5.5);
        await soon();
        expect(new Set(sheets)).toEqual(new Set([sheetId]));
        const typed = sheets.length;
        sheet.insertRow(1);
        await soon();
        expect(sheets.length).toBeGreaterThan(typed);
        await stop();
        const told = sheets.length;
        sheet.edit(1, 1, 6);
        await soon();
        expect(sheets).toHaveLength(told);
      });

      test("to edits tells where rows and columns were put in and taken out", async () => {
        await readAll();
        const moves: unknown[] = [];
        const stop = await host.onEdit((_, moved) => moved && moves.push(moved));
        sheet.insertRow(2);
        sheet.deleteRow(1);
        sheet.insertColumn(1);
        sheet.edit(1, 1, 5.5);
        await soon();
        expect(moves).toEqual([
          { axis: "row", at: 2, count: 1 },
          { axis: "row", at: 1, count: -1 },
          { axis: "column", at: 1, count: 1 },
        ]);
        await stop();
      });

      test("to edits tells nothing of our own marks", async () => {
        const area = await readAll();
        const sheets: string[] = [];
        const stop = await host.onEdit((id) => sheets.push(id));
        await host.mark([markAt(area, 1, 1)], true);
        await host.unmark();
        await soon();
        expect(sheets).toEqual([]);
        await stop();
      });
    });
  });
}

function withoutBlanks(values: readonly (readonly CellValue[])[]): CellValue[][] {
  return values.map((row) => row.map((value) => (isBlank(value) ? null : value)));
}

/** Events come a little later than what caused them. */
function soon(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 20));
}
