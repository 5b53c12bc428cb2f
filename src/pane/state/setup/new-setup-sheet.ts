import type { SheetLook } from "../../../hosts/sheet-host";
import type { CellValue } from "../../../measure/cell-value";
import { say } from "../../../messages/pane-catalogue";
import type { MixHeading } from "../../../reading/setup/mix-headings";
import type { NewLine } from "./setup-edits";
import {
  columnHeadings,
  mixHeadingsWritten,
  settingHeadings,
  settingLines,
  type MeasuredUnits,
} from "./setup-words";

/** What a new setup sheet is to hold. */
export interface NewSetup {
  readonly columns: readonly NewLine<"header" | "taken for" | "unit">[];
  readonly mixes: readonly NewLine<MixHeading>[];
  readonly units: MeasuredUnits;
  readonly scaleEnd: number;
  readonly datesFrom: 1900 | 1904 | undefined;
}

/** The line above the tables and their headings stand out; that line makes no column wide. */
export const SETUP_LOOK: SheetLook = {
  bold: [0, 1],
  widths: [26, 22, 8, 3, 26, 10, 3, 14, 8, 10, 8, 8, 20, 15, 10, ...Array<number>(6).fill(18), 32],
};

/** The three tables beside each other, under a line that says what they are for. */
export function newSetupSheet(setup: NewSetup): CellValue[][] {
  const { columns, mixes, units, scaleEnd, datesFrom } = setup;
  const tables: readonly CellValue[][][] = [
    tableOf(columnHeadings(), columns),
    [Object.values(settingHeadings()), ...settingLines(scaleEnd, datesFrom)],
    tableOf(mixHeadingsWritten(units), mixes),
  ];
  const rows = Math.max(...tables.map((table) => table.length));
  const beside = Array.from({ length: rows }, (_, row) =>
    tables.flatMap((table, i) => {
      const cells = table[row] ?? Array<CellValue>(table[0]!.length).fill("");
      return i === 0 ? cells : ["", ...cells];
    }),
  );
  return [[say("setup-sheet-title")], ...beside];
}

function tableOf(
  headings: Readonly<Record<string, string>>,
  lines: readonly NewLine<string>[],
): CellValue[][] {
  const order = Object.keys(headings);
  return [
    Object.values(headings),
    ...lines.map((line) => order.map((heading) => line[heading] ?? "")),
  ];
}
