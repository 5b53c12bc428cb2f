import { isBlank, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import type { FieldId } from "./fields";
import type { Cells } from "./labelled-value";
import type { SheetReading } from "./sheet-reading";
import { askedOfTests, type UnreadColumn } from "./unread-column";

const ALCOHOL = "(?:alcohol|alcool|alkohol|ipa|isoprop\\w*)";
const CUPS = "(?:cups?|copas?|tazas?|vasos?|godets?|tasses?|(?:mess)?becher)";
const UNIT =
  "(?:pts?|pints?|pintas?|pintes?|chopines?|oz|ounces?|onzas?|onces?|ml|cc|l|lts?|lit(?:er|re|ro)s?|qts?|quarts?)";
const NUMBER =
  "(?:\\d[\\d.,/]*(?!\\d*\\s*%)|[½¼¾]|half|one|two|three|four|un|una|uno|medio|dos|tres|deux|trois|demi|ein|eine|einen|zwei|drei|halber)";
const AMOUNT = `${NUMBER}\\s*${UNIT}`;
/** Words that belong together stand so close. */
const NEAR = "[^.;\\n]{0,30}";

/** What changes the air, told in a text: an amount of alcohol, or cups of water that were counted. */
const TOLD: readonly (readonly [FieldId, RegExp])[] = [
  [
    "alcohol",
    new RegExp(`\\b${AMOUNT}\\b${NEAR}\\b${ALCOHOL}\\b|\\b${ALCOHOL}\\b${NEAR}\\b${AMOUNT}\\b`),
  ],
  ["cups", new RegExp(`\\b(?!0\\b)${NUMBER}\\s*(?:cal\\w*\\.? |calibrated )?${CUPS}\\b`)],
];
/** What is on hand or to be bought went into no test. */
const OF_NO_TEST =
  /\b(?:on hand|left over|in stock|to buy|order(?:ed)?|pick up|jugs?|bottles?|en existencia|por comprar|botellas?|bidons?|bouteilles?|flaschen?|kanister|bestellen)\b/;

/** A text without any of these tells of neither. */
const MAY_TELL = /alc|alk|ipa|isoprop|cup|cop|taza|vaso|godet|tasse|becher/i;

/** What of the two a text tells an amount of, where the sheet has no column for it. */
function toldIn(cell: CellValue | undefined, missing: ReadonlySet<FieldId>): boolean {
  if (typeof cell !== "string" || !MAY_TELL.test(cell)) return false;
  const text = folded(cell.slice(0, 1000));
  return (
    !OF_NO_TEST.test(text) && TOLD.some(([field, told]) => missing.has(field) && told.test(text))
  );
}

/** Which of the two no column of the sheet holds. */
function missingOf(has: SheetReading["has"]): ReadonlySet<FieldId> {
  return new Set(TOLD.map(([field]) => field).filter((field) => !has(field)));
}

/**
 * Amounts that change the air and are told in words beside the tests of a table or below them, where no column
 * holds them: "1.4 L of alcohol" in a column of remarks. One for each column.
 *
 * @param isTest Whether a row holds a test; what stands in another row is told of all.
 */
export function amountsTold(
  rows: Cells,
  read: readonly number[],
  has: SheetReading["has"],
  isTest: (row: number) => boolean,
  headerRow: number,
): UnreadColumn[] {
  const missing = missingOf(has);
  if (missing.size === 0) return [];
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const told: UnreadColumn[] = [];
  for (let column = 0; column < columns; column++) {
    const isRead = read.includes(column);
    const places = [...rows.keys()].filter(
      (row) => !(isRead && isTest(row)) && toldIn(rows[row]![column], missing),
    );
    const [first] = places;
    if (first === undefined) continue;
    const ofAll = places.some((row) => !isTest(row));
    const own = new Set(places);
    told.push(
      askedOfTests(
        "amount-told",
        {
          index: column,
          place: { row: headerRow + 1 + first, column },
          header: String(rows[first]![column]),
        },
        (record) => (ofAll ? isTest(record) : own.has(record)),
      ),
    );
  }
  return told;
}

/** The same of what stands above a table: it is told of all of its tests. */
export function withAmountsToldAbove(read: SheetReading, head: Cells, from: number): SheetReading {
  const missing = missingOf(read.has);
  if (missing.size === 0) return read;
  const labels = new Set(
    read.unread.flatMap(({ place }) => (place ? [`${place.row},${place.column}`] : [])),
  );
  const isTest = (record: number) => read.records[record]?.blank === false;
  const told = [...head.entries()].flatMap(([row, cells]) =>
    [...cells.entries()].flatMap(([column, cell]) => {
      if (isBlank(cell) || labels.has(`${from + row},${column}`) || !toldIn(cell, missing))
        return [];
      const at = { index: column, place: { row: from + row, column }, header: String(cell) };
      return [askedOfTests("amount-told", at, isTest)];
    }),
  );
  return told.length === 0 ? read : { ...read, unread: [...read.unread, ...told] };
}
