import { quoted } from "../measure/cell-value";
import { fieldName } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import type { UnreadColumn } from "../reading/unread-column";
import type { Finding } from "./finding";

/** What is said of a column that was not read, and the tests that it touches. */
export interface UnreadFinding {
  readonly finding: Finding;
  readonly column: UnreadColumn;
}

/** One finding for each column that holds something and was not read. */
export function unreadFindings({ unread, records }: SheetReading): readonly UnreadFinding[] {
  return unread.map((column) => {
    // What is harmless in every test decides nothing.
    const decides =
      column.decides && records.some(({ record, blank }) => !blank && column.touches(record));
    return { column, finding: findingOf({ ...column, decides }) };
  });
}

/** One finding for each stretch of columns that stands beside the table and was not read with it. */
export function columnsApartFindings({ apart }: SheetReading): readonly Finding[] {
  return apart.map(({ from, to, first, last, readings }) => ({
    ...{ record: null, field: null, column: from, header: first, rule: "column-not-read" },
    ...(readings
      ? ({ weight: "doubt", say: "readings-apart" } as const)
      : ({ weight: "note", say: from === to ? "column-apart" : "columns-apart" } as const)),
    values: { last },
  }));
}

/** That another table begins further down, whose rows were not read. */
export function headedAgainFindings({ headedAgain, placeOf }: SheetReading): readonly Finding[] {
  if (!headedAgain) return [];
  const { record, column, header } = headedAgain;
  const place = { row: placeOf(record, null).row, column };
  return [
    {
      ...{ record: null, field: null, place, rule: "rows-not-read", weight: "error" },
      ...{ say: "rows-headed-otherwise", values: { header: quoted(header) } },
    },
  ];
}

/** That the readings of a test, which stand in rows of their own, were put together. */
export function togetherFindings({ together }: SheetReading): readonly Finding[] {
  if (!together) return [];
  const { column, header } = together;
  const at = { record: null, field: null, column, header } as const;
  return [{ ...at, rule: "readings-in-rows", weight: "note", say: "readings-in-rows", values: {} }];
}

/** What stands once for the table and was taken for every test, at the first of these cells. */
export function saidOnceFindings({ saidOnce = [] }: SheetReading): readonly Finding[] {
  const [first] = saidOnce;
  if (!first) return [];
  const values = { labels: saidOnce.map(({ header }) => `“${quoted(header)}”`).join(", ") };
  const at = { record: null, field: null, place: first.place, rule: "said-once" } as const;
  return [{ ...at, weight: "note", say: "said-once", values }];
}

function findingOf({ index, place, header, mayBe, decides, asks, because }: UnreadColumn): Finding {
  const where = { record: null, field: null, column: index, header, ...(place && { place }) };
  if (asks === "title-of-another-method" || asks === "amount-told" || asks === "words-may-void") {
    const values = { title: quoted(header) };
    return { record: null, field: null, place, rule: asks, weight: "error", say: asks, values };
  }
  if (because.say === "row-of-words") {
    const values = { title: quoted(header) };
    return {
      record: null,
      field: null,
      place,
      rule: because.say,
      weight: "note",
      say: because.say,
      values,
    };
  }
  if (because.say === "once-not-read") {
    const at = { record: null, field: null, place, values: { label: quoted(header) } };
    return decides
      ? { ...at, rule: "column-may-decide", weight: "error", say: "once-may-decide" }
      : { ...at, rule: "said-once", weight: "doubt", say: "once-not-read" };
  }
  if (asks) return { ...where, rule: asks, weight: "error", say: asks, values: {} };
  const at = { ...where, values: { mayBe: { either: mayBe.map(fieldName) } } };
  if (decides) {
    return { ...at, rule: "column-may-decide", weight: "error", say: "column-may-decide" };
  }
  const say = mayBe.length > 0 ? "column-may-be" : "column-not-read";
  return { ...at, rule: "column-not-read", weight: "note", say };
}
