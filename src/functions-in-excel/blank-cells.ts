import { letBlankCellsCome } from "../functions/runner/blank-cells";
import { howBlanksCome, keepHowBlanksCome, type HowBlanksCome } from "../hosts/excel/blank-cells";

/*
 * Comes before the functions. Where an Excel is not known to hand over blank cells as blanks, a 0 may be
 * one of them, until a cell is seen that came as a blank.
 */

let how: HowBlanksCome = "unknown";
let proved = false;

function saw(blankCell: "blank" | "zero"): void {
  if (proved) return;
  proved = blankCell === "blank";
  how = blankCell;
  keepHowBlanksCome(blankCell);
}

function mayBeZero(given: readonly unknown[]): boolean {
  // Asked again until Office is ready to tell.
  if (how === "unknown") how = howBlanksCome();
  if (how === "blank") return false;
  if (given.some((row) => Array.isArray(row) && row.includes(null))) saw("blank");
  return !proved;
}

// The workbench, in Excel's place, says of itself that it hands over blanks as blanks.
if (!("handsOverBlanks" in CustomFunctions)) letBlankCellsCome({ mayBeZero, saw });
