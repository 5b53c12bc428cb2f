import type { FUniver } from "@univerjs/core/facade";
import { columnPosition } from "../cell-address";
import type { Rectangle } from "./filled-block";
import { openWorkbook, type Sheet } from "./workbook";

const BLOCK = /^(.+)!\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)$/;

/**
 * The named block that a cell stands in. This spreadsheet has no tables of its own; those of a file
 * are names here, which move along when rows are inserted.
 */
export function namedTableAround(
  api: FUniver,
  sheet: Sheet,
  row: number,
  column: number,
): Rectangle | undefined {
  return openWorkbook(api)
    .getDefinedNames()
    .map((name) => blockNamed(name.getFormulaOrRefString(), sheet.getSheetName()))
    .find(
      (block) =>
        block &&
        block.top <= row &&
        row <= block.bottom &&
        block.left <= column &&
        column <= block.right,
    );
}

function blockNamed(reference: string, sheetName: string): Rectangle | undefined {
  const parts = BLOCK.exec(reference.replace(/^=/, ""));
  if (!parts) return undefined;
  const [, name = "", left = "", top, right = "", bottom] = parts;
  if (name.replace(/^'|'$/g, "").replaceAll("''", "'") !== sheetName) return undefined;
  return {
    top: Number(top) - 1,
    left: columnPosition(left),
    bottom: Number(bottom) - 1,
    right: columnPosition(right),
  };
}
