import fc from "fast-check";
import type { CheckResult } from "../../src/fieldsheet/check-result";
import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";
import { DECIDING } from "../../src/reading/deciding";
import type { FieldId } from "../../src/reading/fields";
import { BLIND_TABLES } from "./corpus/blind/tables";
import type { HeaderCase } from "./corpus/header-case";
import { LANGUAGES } from "./corpus/languages";

const TABLES: readonly HeaderCase[] = [
  ...LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]),
  ...BLIND_TABLES.flatMap(({ tables }) => tables),
];

/** Columns that decide a test, each with a header that a reader recognises. */
const COLUMNS = TABLES.flatMap((table) =>
  table.expect.flatMap((answer, column) =>
    DECIDING.has(answer as FieldId) ? [{ table, column, field: answer as FieldId }] : [],
  ),
);

/** What voids the test or is an error in its column: packed concrete, a leak, too much foam, too long (C173). */
const FAULT: Readonly<Partial<Record<FieldId, CellValue>>> = {
  packed: "yes",
  leak: "yes",
  foam: 3,
  settle: 9,
  lateAlcohol: "yes",
  cups: 2,
};

/** Words that head no such column in any of the languages, made up and of other trades. */
const unseen = fc.oneof(
  fc.stringMatching(/^[bdfgkmprvz][aou][bdfgkmpvz]{2}[ou][gkvz]$/),
  fc.constantFrom("Drift", "Zwirn", "Merluza", "Ombrage", "Kvitt", "Qx", "Fazit", ""),
);

function blockOf({ headers, rows }: HeaderCase, column: number, header: string, fault?: CellValue) {
  const titled = headers.map((row) => [...row] as CellValue[]);
  titled.at(-1)![column] = header;
  const cells = rows.map((row) => [...row]);
  if (fault !== undefined) cells[0]![column] = fault;
  return [...titled, ...cells];
}

/** Whether something is said of a column, by its place or because it is read all the same. */
function isSaid({ findings, reading }: CheckResult, field: FieldId, column: number): boolean {
  const isRead = reading.recognised[column]?.state === "read";
  const kept = isRead && reading.columns[field]?.index === column;
  return kept || findings.some((finding) => finding.column === column);
}

test("a column that decides a test, under a word nobody has seen, never leaves it valid unsaid", () => {
  let tried = 0;
  fc.assert(
    fc.property(fc.constantFrom(...COLUMNS), unseen, ({ table, column, field }, header) => {
      const own = String(table.headers.at(-1)![column]);
      const fault = table.reversed.includes(column) ? "no" : FAULT[field];
      const known = checkBlock(blockOf(table, column, own, fault));
      const renamed = checkBlock(blockOf(table, column, header, fault));
      if (isIssue(known) || isIssue(renamed)) return;
      for (const [i, { state, air }] of renamed.results.entries()) {
        const before = known.results[i];
        if (state !== "valid" || (before?.state === "valid" && before.air === air)) continue;
        tried++;
        expect({ i, said: isSaid(renamed, field, column) }).toEqual({ i, said: true });
      }
    }),
    { numRuns: 400 },
  );
  expect(tried).toBeGreaterThan(0);
});
