import type { SpecLimits } from "../../acceptance/limits";
import type { TrendGrouping, TrendTest } from "../../acceptance/trend";
import { trendTestsOf } from "../../fieldsheet/trend-tests";
import { blockAddress } from "../../hosts/cell-address";
import type { CellPlace } from "../../hosts/sheet-host";
import type { CellValue } from "../../measure/cell-value";
import { isIssue } from "../../measure/issue";
import { numberFromCell, type DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import type { CheckedArea } from "../state/checked-area";
import type { PaneState, ReadColumn } from "../state/pane-state";
import { typedLimits } from "../state/typed-limits";
import { groupingsFor } from "./trend-groups";

/** What a trend is drawn of. */
export interface TrendSource {
  readonly address: string;
  readonly decimal: DecimalMark;
  readonly tests: readonly TrendTest[];
  /** Filled cells that hold no number; they are left out. */
  readonly unreadable: number;
  readonly groupings: readonly TrendGrouping[];
  /** The cell of a number that was taken from a column; absent of a check, which finds its tests again. */
  readonly placeOf?: (record: number) => CellPlace;
}

/** What the trend is of now; `undefined` where nothing is checked or taken yet. @throws Problem `trend-one-column` and those of `typedLimits`. */
export function trendSourceOf(state: PaneState): TrendSource | undefined {
  const { checked, trendColumn } = state;
  if (trendColumn) return sourceOfColumn(trendColumn, typedLimits(state, trendColumn.decimal));
  return checked && sourceOfCheck(checked);
}

/** The tests of a checked table. */
function sourceOfCheck(checked: CheckedArea): TrendSource {
  return {
    address: checked.read.address,
    decimal: checked.decimal,
    tests: trendTestsOf(checked.result),
    unreadable: 0,
    groupings: groupingsFor(checked.result),
  };
}

/** The numbers of a column, each known by its cell. A text on top is its header. */
export function sourceOfColumn({ read, decimal }: ReadColumn, limits: SpecLimits): TrendSource {
  const { sheetId, row: top, column } = read.area;
  const numbers = read.values.map((row) => numberIn(row[0] ?? null, decimal));
  const header = numbers.findIndex((number) => number !== undefined);
  const headers = numbers[header] === "unreadable" ? 1 : 0;
  const tests = numbers.flatMap((value, record): TrendTest[] => {
    if (typeof value !== "number") return [];
    const name = blockAddress({ row: top + record, column, rows: 1, columns: 1 });
    return [{ record, name, test: "valid", value, limits }];
  });
  if (tests.length === 0) throw new Problem("trend-one-column");
  return {
    address: read.address,
    decimal,
    tests,
    unreadable: numbers.filter((number) => number === "unreadable").length - headers,
    groupings: ["all"],
    placeOf: (record) => ({ sheetId, row: top + record, column }),
  };
}

function numberIn(cell: CellValue, decimal: DecimalMark): number | "unreadable" | undefined {
  const number = numberFromCell(cell, decimal);
  return isIssue(number) ? "unreadable" : number;
}
