import * as core from "@univerjs/core";
import { openWorkbench } from "./workbench-under-test";

jest.mock("@univerjs/core", () => jest.requireActual("./headless-univer").loadHeadlessUniver());
jest.mock("@univerjs/preset-sheets-core", () => jest.requireMock("@univerjs/core"));

test("one Undo takes back all marks and notes of a marking, and one all of their removal", async () => {
  const { api, host, fill, edit, select, fillsAt, noteAt, valuesOf, close } = openWorkbench();
  fill([["Sample"], ["L-1"], ["L-2"]]);
  // As in a page whose grid has the focus.
  const injector = api.getActiveWorkbook()!.getActiveSheet().getInject();
  injector.get(core.IContextService).setContextValue(core.FOCUSING_SHEET, true);
  injector.get(core.IUniverInstanceService).focusUnit(api.getActiveWorkbook()!.getId());
  edit(1, 0, "L-1, typed");
  select([0, 0, 3, 1]);
  const read = await host.read("selection");
  const { sheetId } = read.area;
  const marks = [1, 2].map((row) => ({
    ...{ sheetId, row, column: 0, sentences: ["Look at it."] },
    weight: row === 1 ? ("error" as const) : ("void" as const),
  }));
  const marked = () => [1, 2].map((row) => [fillsAt(row, 0).length, noteAt(row, 0) !== undefined]);
  await host.mark(marks, true, [read]);
  expect(marked()).toEqual([
    [1, true],
    [1, true],
  ]);
  await host.unmark();
  await api.undo();
  expect(marked()).toEqual([
    [1, true],
    [1, true],
  ]);
  await api.undo();
  expect(marked()).toEqual([
    [0, false],
    [0, false],
  ]);
  expect(valuesOf("Loads")).toEqual([["Sample"], ["L-1, typed"], ["L-2"]]);
  await api.undo();
  expect(valuesOf("Loads")).toEqual([["Sample"], ["L-1"], ["L-2"]]);
  close();
});
