import type { CellValue } from "../../src/measure/cell-value";
import { sentenceOf } from "../../src/messages/catalogue";
import type { SheetTable } from "../../src/reading/sheet-table";
import { checkedTable } from "./checked";

/** A record by headers; `undefined` takes a column of the plain record out of the sheet. */
export type Cells = Readonly<Record<string, CellValue | undefined>>;

/** What a rule says: row from 1, header of the cell it points at ("" for none), sentence. */
export type Said = readonly [row: number, column: string, sentence: string];

/** The table of one rule. Each case ends with the source of what is expected. */
export interface RuleCases {
  /** Records, beside a sound test, about which the rule says nothing. */
  readonly silent: readonly (readonly [records: Cells | readonly Cells[], source: string])[];
  /** Records about which it says something, and all that it says. */
  readonly speaks: readonly (readonly [
    records: Cells | readonly Cells[],
    said: readonly Said[],
    source: string,
  ])[];
}

/** A sound test: 6.00 % with too little alcohol for a correction. Each row has a sample of its own. */
const SOUND: Cells = { Sample: "", "First reading": 6, "Second reading": 6, "Alcohol (oz)": 16 };

/** The sheet for some records, each a sound test but for the cells given. */
export function sheetFor(given: Cells | readonly Cells[]): SheetTable {
  const records = (Array.isArray(given) ? given : [given]) as readonly Cells[];
  const columns: Cells = Object.assign({}, SOUND, ...records);
  const headers = Object.keys(columns).filter((header) =>
    records.every((record) => !(header in record) || record[header] !== undefined),
  );
  const rows = records.map((record, i) => {
    const row: Cells = { ...SOUND, Sample: `S-${i + 1}`, ...record };
    return headers.map((header) => row[header] ?? null);
  });
  return { headers, rows };
}

/** All that a rule says about a sheet; what is said of the sheet as a whole has row 0. */
export function saidBy(rule: string, sheet: SheetTable): Said[] {
  const { findings, columns } = checkedTable(sheet);
  return findings
    .filter((finding) => finding.rule === rule)
    .map((finding) => [
      finding.record === null ? 0 : finding.record + 1,
      (finding.field && columns[finding.field]?.header) ?? "",
      sentenceOf(finding.say, finding.values),
    ]);
}
