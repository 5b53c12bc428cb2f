import { isBlank, shownValue } from "../measure/cell-value";
import { amountsIn } from "./amount-in-words";
import type { BlockPlace } from "./block-place";
import { testsToldOf } from "./fault-in-a-line";
import type { Cells, LabelledValue } from "./labelled-value";
import { isLine } from "./labels";
import type { SheetReading } from "./sheet-reading";
import { testsNamedBy } from "./tests-named";
import { askedOfTests, type UnreadColumn } from "./unread-column";

/** A text among forms that is neither label nor value. */
export interface LineAmongForms {
  readonly place: BlockPlace;
  readonly text: string;
}

/** For each test the place of the value of each column. */
type Places = readonly (readonly (BlockPlace | undefined)[])[];

/** The lines of a block that are no part of a form's labels and values. */
export function linesAmong(block: Cells, pairs: readonly LabelledValue[]): LineAmongForms[] {
  const keyOf = ({ row, column }: BlockPlace) => `${row} ${column}`;
  // A label of many words without a value may be a line: "bowl leaked at the clamp".
  const filled = pairs.filter(({ value }) => !isBlank(block[value.row]?.[value.column]));
  const used = new Set(filled.flatMap(({ label, value }) => [keyOf(label), keyOf(value)]));
  return block.flatMap((cells, row) =>
    cells.flatMap((text, column) => {
      const place = { row, column };
      const isOne = typeof text === "string" && isLine(text) && !used.has(keyOf(place));
      return isOne ? [{ place, text }] : [];
    }),
  );
}

/**
 * What lines among forms tell of tests: of those that they name, else of those of the form that begins last above
 * them, else of all.
 */
export function toldAmongForms(
  read: SheetReading,
  lines: readonly LineAmongForms[],
  places: Places,
): UnreadColumn[] {
  if (lines.length === 0) return [];
  const isTest = (record: number) => read.records[record]?.blank === false;
  const tests = [...read.records.keys()].filter(isTest);
  const namesOf = (record: number) =>
    (["sample", "load"] as const).flatMap((field) => {
      const name = read.has(field) ? shownValue(read.cell(record, field)) : "";
      return name === "" ? [] : [[record, name] as const];
    });
  const named = testsNamedBy(tests.flatMap(namesOf));
  const begins = new Map(tests.map((record) => [record, beginOf(record, places)]));
  const besides = ({ place }: LineAmongForms, isOpen: boolean) => {
    const above = [...begins.values()].filter((row) => row <= place.row);
    const last = Math.max(...above);
    return isOpen || above.length === 0
      ? isTest
      : (record: number) => isTest(record) && begins.get(record) === last;
  };
  return lines.flatMap((line) => {
    const at = { index: line.place.column, place: line.place, header: line.text };
    const told: UnreadColumn[] = [];
    const ofFault = testsToldOf(line.text, named, (isOpen) => besides(line, isOpen));
    if (ofFault) told.push(askedOfTests("words-may-void", at, ofFault));
    const fields = amountsIn(line.text, false).filter((field) => !read.has(field));
    if (fields.length > 0) {
      const { rows, isOpen } = named(line.text);
      const touches = rows.size > 0 ? (record: number) => rows.has(record) : besides(line, isOpen);
      told.push(askedOfTests("amount-told", at, touches));
    }
    return told;
  });
}

/** The first row of a form: that of the uppermost value that is its own. */
function beginOf(record: number, places: Places): number {
  const own = (places[record] ?? []).filter((place, column) => {
    const isShared = places.some(
      (others, other) =>
        other !== record && others[column] !== undefined && others[column] === place,
    );
    return place !== undefined && !isShared;
  });
  return Math.min(...own.map((place) => place!.row));
}
