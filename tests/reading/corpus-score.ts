import type { CellValue } from "../../src/measure/cell-value";
import { DECIDING } from "../../src/reading/deciding";
import type { FieldId } from "../../src/reading/fields";
import { recognise } from "../../src/reading/recognise";
import type { RecognisedColumn, SheetColumn } from "../../src/reading/recognition";
import type { Answer, HeaderCase } from "./corpus/header-case";

/** Fields that came when the blind tables had been written; what they head is "none" there. */
export const NEWER_THAN_BLIND: ReadonlySet<FieldId> = new Set<FieldId>([
  "batchWater",
  "freeMoisture",
  "cementitious",
  "waterCementLimit",
  "exposureClass",
  "cylinders",
  "cylinderSize",
  "firstCylinder",
  "secondCylinder",
  "thirdCylinder",
]);

/** Those that came when the other tables had been written. */
const NEWER: ReadonlySet<FieldId> = new Set<FieldId>([
  ...NEWER_THAN_BLIND,
  "revolutions",
  "revolutionLimit",
  "deliveryStandard",
  "dimension",
  "loadDecision",
  "addedWater",
  "loadShare",
  "samplingPlace",
  "moulded",
  "specifiedStrength",
  "curingLow",
  "curingHigh",
  "slumpLow",
  "slumpHigh",
]);

/** How one column came out. */
export type Outcome = "right" | "missed" | "asked" | "wrong" | "silent";

/** A column that did not come out right, for a reader of the table. */
export interface Miss {
  readonly table: string;
  readonly header: string;
  readonly expected: string;
  readonly got: string;
  readonly outcome: Outcome;
}

/** The outcomes of some tables. */
export interface Score {
  readonly counts: Readonly<Record<Outcome, number>>;
  readonly misses: readonly Miss[];
}

/** Titles over merged cells stand over the blank cells to their right, too. */
export function sheetColumns({ headers, rows }: HeaderCase): readonly SheetColumn[] {
  const width = headers[0]!.length;
  const titles = headers.map((row) => [...row]);
  for (const [level, row] of titles.slice(0, -1).entries()) {
    for (let at = 1; at < width; at++) {
      const sameAbove = titles.slice(0, level).every((above) => above[at] === above[at - 1]);
      if (row[at] === "" && sameAbove) row[at] = row[at - 1]!;
    }
  }
  return Array.from({ length: width }, (_, at) => ({
    headers: titles.map((row) => row[at]!),
    cells: rows.map((row): CellValue => row[at] ?? null),
  }));
}

/**
 * Recognises the tables and counts what came out.
 *
 * @param newer Fields of which the answers do not know.
 */
export function scoreOf(tables: readonly HeaderCase[], newer = NEWER): Score {
  const counts = { right: 0, missed: 0, asked: 0, wrong: 0, silent: 0 };
  const misses: Miss[] = [];
  for (const table of tables) {
    const { all } = recognise(sheetColumns(table));
    all.forEach((column, at) => {
      const expected = table.expect[at]!;
      const reversed = table.reversed.includes(at);
      const outcome = outcomeOf(column, expected, reversed, newer);
      counts[outcome]++;
      if (outcome === "right") return;
      const header = table.headers.map((row) => row[at]).join(" / ");
      const got = saidOf(column);
      const wanted = expected + (reversed ? " reversed" : "");
      misses.push({ table: table.name, header, expected: wanted, got, outcome });
    });
  }
  return { counts, misses };
}

function outcomeOf(
  column: RecognisedColumn,
  expected: Answer,
  reversed: boolean,
  newer: ReadonlySet<FieldId>,
): Outcome {
  if (column.state === "read") {
    if (expected === "none" && newer.has(column.field)) return "right";
    const same = column.field === expected && (column.opposite ?? false) === reversed;
    return same ? "right" : "wrong";
  }
  const asks = column.state === "asked" || (column.state === "unknown" && column.decides);
  if (expected === "ask") return asks ? "right" : "missed";
  if (expected === "none") return asks ? "asked" : "right";
  if (asks) return "asked";
  const silent = column.state !== "unknown" && DECIDING.has(expected as FieldId);
  return silent ? "silent" : "missed";
}

function saidOf(column: RecognisedColumn): string {
  if (column.state === "read") return `read ${column.field}${column.opposite ? " reversed" : ""}`;
  if (column.state === "asked") return `asked ${column.candidates.join(", ")}`;
  if (column.state === "unknown") return `unknown ${column.mayBe.join(", ")}`;
  return column.state === "not ours" ? `not ours: ${column.guard}` : "empty";
}
