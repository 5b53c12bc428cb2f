import { excelHost } from "../../../src/hosts/excel/excel-host";
import { cellAt, LAST_ROW, lettersOf, overlap } from "../../excel-client/block";
import { startExcel } from "../../excel-client/excel-client";
import type { Held } from "../../excel-client/sheet-model";
import {
  deleteRows,
  edit,
  giveNote,
  insertColumns,
  insertRows,
} from "../../excel-client/user-edits";
import { describeHost } from "../contract";
import type { CellValue } from "../../../src/measure/cell-value";

describeHost("the Excel host, on the real client library", () => {
  const excel = startExcel();
  const { workbook } = excel;
  return {
    host: excelHost(),
    fill: (rows) => {
      workbook.front.grid = rows.map((row) => row.map(held));
    },
    select: (...blocks) =>
      excel.userSelects(
        workbook.front,
        ...blocks.map(([row, column, rows, columns]) => ({
          top: row,
          left: column,
          bottom: row + rows - 1,
          right: column + columns - 1,
        })),
      ),
    selectColumns: (first, count) =>
      excel.userSelects(workbook.front, {
        top: 0,
        left: first,
        bottom: LAST_ROW,
        right: first + count - 1,
      }),
    edit: (row, column, value) => {
      edit(workbook.front, row, column, held(value));
      excel.userChanged(workbook.front, "RangeEdited");
    },
    insertRow: (above) => {
      insertRows(workbook.front, above, 1);
      excel.userChanged(workbook.front, "RowInserted", `${above + 1}:${above + 1}`);
    },
    deleteRow: (at) => {
      deleteRows(workbook.front, at, 1);
      excel.userChanged(workbook.front, "RowDeleted", `${at + 1}:${at + 1}`);
    },
    insertColumn: (before) => {
      insertColumns(workbook.front, before, 1);
      const letters = lettersOf(before);
      excel.userChanged(workbook.front, "ColumnInserted", `${letters}:${letters}`);
    },
    hideRow: (row) => workbook.front.hiddenRows.push(row),
    removeNote: (row, column) => {
      const { front } = workbook;
      front.notes = front.notes.filter((note) => note.row !== row || note.column !== column);
    },
    giveNote: (row, column, content) => giveNote(workbook.front, row, column, content),
    formulaAt: (row, column) =>
      workbook.front.formulas.find((each) => each.row === row && each.column === column)?.formula,
    noteAt: (row, column) =>
      workbook.front.notes.find((note) => note.row === row && note.column === column)?.content,
    giveFormat: (row, column, fill) =>
      workbook.front.formats.push({
        id: workbook.newId(),
        type: "Custom",
        areas: [cellAt(row, column)],
        formula: "=TRUE",
        fill,
        ink: "#000000",
      }),
    fillsAt: (row, column) =>
      workbook.front.formats
        .filter(({ areas }) => areas.some((area) => overlap(area, cellAt(row, column))))
        .map(({ fill }) => fill),
    sheetNames: () => workbook.sheets.map(({ name }) => name),
    valuesOf: (name) => workbook.sheets.find((sheet) => sheet.name === name)?.grid as CellValue[][],
    close: () => undefined,
  };
});

function held(value: CellValue): Held {
  if (value === null) return "";
  return typeof value === "object" ? value.error : value;
}
