import type { DecimalMark } from "../../measure/number-from-cell";
import type { SheetHost } from "../sheet-host";
import { howBlanksCome } from "./blank-cells";
import { addLineChart } from "./chart";
import { decimalMarkOfExcel } from "./decimal-mark";
import { datesFromOfExcel } from "./date-system";
import { onEditOfOthers, onSelection } from "./events";
import { writeCellsOf } from "./kept-sheet";
import { addLinesBelow } from "./lines-below";
import { putMarks } from "./marking";
import { readNamedSheet } from "./named-sheet";
import { insertFormula } from "./insert-formula";
import { OwnEdits } from "./own-edits";
import { readAgain, readScope } from "./reading";
import { asReport, setLook } from "./report-look";
import { addSheetNamed, writeNewSheet } from "./results-sheet";
import { readSheetTops } from "./sheet-tops";
import { selectCell } from "./selecting";
import { readSettings, writeSettings } from "./settings";
import { removeMarks } from "./unmarking";
import { workbookName } from "./workbook-name";

/** The port to the workbook that is open in Excel. Office.js must be ready. */
export function excelHost(): SheetHost {
  const own = new OwnEdits();
  // Each reading tells how decimals are written, which saves asking Excel once more.
  let decimal: DecimalMark | undefined;
  let datesFrom: 1900 | 1904 | undefined;
  return {
    decimalMark: async () => decimal ?? decimalMarkOfExcel(),
    datesFrom: async () => (datesFrom ??= await datesFromOfExcel()),
    async read(scope, progress, around) {
      const reading = await readScope(scope, progress, around);
      decimal = reading.decimal;
      return reading.read;
    },
    sheetTops: readSheetTops,
    readAgain,
    select: selectCell,
    mark: (...given) => own.during(() => putMarks(...given)),
    async unmark(pause) {
      await pause?.();
      return own.during(removeMarks);
    },
    readSheet: readNamedSheet,
    addLines: (name, lines) => own.during(() => addLinesBelow(name, lines)),
    async writeResultsSheet(name, table, look, pause) {
      await pause?.();
      return own.during(() => writeNewSheet(name, table, look && asReport(look)));
    },
    showsPictures: true,
    workbookName,
    insertFormula,
    addChart: (chart) => own.during(() => addLineChart(chart)),
    howBlanksCome,
    addSheet: (name, table, look) =>
      own.during(() => addSheetNamed(name, table, (sheet) => look && setLook(sheet, look))),
    writeCells: (read, blocks) => own.during(() => writeCellsOf(read, blocks)),
    settings: readSettings,
    saveSettings: writeSettings,
    onSelectionChange: onSelection,
    onEdit: (listener) => onEditOfOthers(listener, own),
  };
}
