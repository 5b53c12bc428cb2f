import type { CheckResult } from "../fieldsheet/check-result";
import { datesOfColumn, type DateOrder } from "../measure/date-order";
import type { CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import type { Phrase } from "../messages/sentence";
import { FIELDS, fieldName, type FieldId } from "../reading/fields";

/** What one stretch of a stream makes of a column. */
interface Way {
  readonly field: FieldId;
  readonly unit: string;
  readonly opposite: boolean;
  /** Of a column of dates whose dates show it. */
  readonly order?: DateOrder;
}

/**
 * Each stretch of a stream is read by what its own cells show. Where one shows that a column is something
 * else than it was taken for above, or has its dates the other way round, a file read whole would have
 * asked: it is said, once a column.
 */
export class ReadAlike {
  private readonly ways = new Map<number, Way>();
  private readonly told = new Set<number>();

  /**
   * Compares how a stretch was read with those before it.
   *
   * @param line The first line of the stretch that was not looked at before.
   */
  *differences(
    { columns }: CheckResult,
    rows: readonly (readonly CellValue[])[],
    line: number,
  ): Generator<Problem> {
    for (const [id, place] of Object.entries(columns)) {
      const field = id as FieldId;
      const { index, header, unit = "", opposite = false } = place;
      const order =
        FIELDS[field].kind === "date"
          ? datesOfColumn(rows.map((row) => row[index] ?? null)).order
          : undefined;
      const way: Way = { field, unit, opposite, order };
      const before = this.ways.get(index);
      this.ways.set(index, { ...way, order: before?.order ?? order });
      if (!before || isAlike(before, way) || this.told.has(index)) continue;
      this.told.add(index);
      const values = { line, header, above: inWords(before), here: inWords(way) };
      yield new Problem("stream-read-otherwise", values);
    }
  }
}

function isAlike(one: Way, other: Way): boolean {
  const orders = new Set([one.order, other.order].filter((order) => order !== undefined));
  return (
    one.field === other.field &&
    one.unit === other.unit &&
    one.opposite === other.opposite &&
    orders.size < 2
  );
}

function inWords({ field, unit, opposite, order }: Way): Phrase {
  return {
    all: [
      fieldName(field),
      ...(unit === "" ? [] : [unit]),
      ...(opposite ? [{ say: "stream-yes-is-good" }] : []),
      ...(order
        ? [{ say: order === "day first" ? "stream-day-first" : "stream-month-first" }]
        : []),
    ],
  };
}
