import { excelHost } from "../../../src/hosts/excel/excel-host";
import { say } from "../../../src/messages/pane-catalogue";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { rectangleFrom } from "../../excel-client/block";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import type { Held } from "../../excel-client/sheet-model";
import { insertRows, sortRows } from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/* Two tests in a row, and a row for each value: marks stand on the test's own cells, whatever users do meanwhile. */

const excel = startExcel();
afterAll(untilReleased);

const BESIDE: Held[][] = [
  ["Ticket", "Chute", "", "", "Pump", "", ""],
  ["", "1st", "2nd", "Foam", "1st", "2nd", "Foam"],
  ["101", 5.5, 5.5, 0, 4.5, 4.5, 4],
  ["102", 6, 6, 0, 5, 5, 0],
];
const LIST: Held[][] = [
  ["Sample", "Parameter", "Result"],
  ["S-1", "First reading", 5.5],
  ["S-1", "Second reading", 5.5],
  ["S-1", "Foam", 0],
  ["S-2", "First reading", 6],
  ["S-2", "Second reading", 6],
  ["S-2", "Foam", 4],
];

function pane(rows: Held[][]) {
  excel.workbook = new WorkbookModel();
  const sheet = excel.workbook.front;
  sheet.grid = rows.map((row) => [...row]);
  excel.workbook.select(sheet, rectangleFrom("B2"));
  const store = createPaneStore();
  const commands = paneCommands(store, excelHost());
  /** What stands in the cells that are marked as voiding a test. */
  const voidCells = () => {
    const foam = store
      .get()
      .checked!.result.findings.filter(({ rule }) => rule === "foam-over-limit");
    expect(foam).toHaveLength(1);
    return sheet.formats
      .filter(({ formula }) => formula.includes("void"))
      .flatMap(({ areas }) => areas.map(({ top, left }) => sheet.grid[top]?.[left]));
  };
  return { sheet, store, commands, voidCells };
}

describe.each([
  ["two tests in a row", BESIDE, rectangleFrom("A3:G4")],
  ["a row for each value", LIST, rectangleFrom("A2:C7")],
] as const)("%s", (_, rows, tests) => {
  test("are said to be so, and the foam that voids one is marked", async () => {
    const { sheet, store, commands, voidCells } = pane(rows);
    await commands.check();
    expect(store.get().status).toContain(say("pane-rows-are-no-tests"));
    await commands.mark();
    expect(voidCells()).toEqual([4]);
    await commands.unmark();
    expect(sheet.formats).toEqual([]);
    expect(sheet.notes).toEqual([]);
  });

  test("sorted between check and mark, the same foam is marked", async () => {
    const { sheet, commands, voidCells } = pane(rows);
    await commands.check();
    sortRows(sheet, tests, 1);
    sheet.grid.splice(tests.top, 2, ...[sheet.grid[tests.top + 1], sheet.grid[tests.top]]);
    await commands.mark();
    expect(voidCells()).toEqual([4]);
  });

  test("with rows put in above, the marks move along", async () => {
    const { sheet, commands, voidCells } = pane(rows);
    await commands.check();
    await commands.mark();
    insertRows(sheet, 0, 2);
    expect(voidCells()).toEqual([4]);
    await commands.unmark();
    expect(sheet.formats).toEqual([]);
  });
});
