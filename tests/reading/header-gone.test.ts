import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";
import type { FieldId } from "../../src/reading/fields";
import { THIRD_BLIND_TABLES } from "./corpus/blind-third/tables";
import { FOURTH_BLIND_TABLES } from "./corpus/blind-fourth/tables";
import { BLIND_TABLES } from "./corpus/blind/tables";
import { SECOND_BLIND_TABLES } from "./corpus/blind-second/tables";
import type { HeaderCase } from "./corpus/header-case";
import { LANGUAGES } from "./corpus/languages";

/*
 * A column that decides tests loses its header: nobody typed one, or a spreadsheet put "Column5" there. What stands in
 * it may still decide, so no test is valid that was void with the header, or has another air.
 */

const TABLES: readonly HeaderCase[] = [
  ...LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]),
  ...[BLIND_TABLES, SECOND_BLIND_TABLES, THIRD_BLIND_TABLES, FOURTH_BLIND_TABLES]
    .flat()
    .flatMap(({ tables }) => tables),
];
const DECIDING: readonly FieldId[] = [
  ...(["first", "second", "third", "cups", "alcohol", "lateAlcohol"] as const),
  ...(["foam", "settle", "packed", "leak"] as const),
];

/** What only its header tells from something else, by table and field. */
const ONLY_BY_HEADER: ReadonlySet<string> = new Set([
  // Whole numbers that count on, in some order, are the numbers of tests as well.
  "cups in Spanish: cups",
  "cups in French: cups",
  "cups in German: cups",
  // Whole numbers, one number, or two off the scale's grid.
  "respuestas de un cuestionario: second",
  "laboratory summary with groups: third",
  "gallery concrete of a dam, metric: second",
  // Words that say how much of anything.
  "short sheet with pints and quarts: foam",
  "Fragen, mit Schreibfehlern: foam",
]);

type Row = readonly CellValue[];
const resultsOf = (block: readonly Row[]) => {
  const result = checkBlock(block.map((row) => row.map((cell) => (cell === "" ? null : cell))));
  // A row of units is a test in neither, or none.
  return isIssue(result) ? undefined : result.results.filter(({ state }) => state !== "");
};

/** The tables for which a test is valid, with another air or in place of void, once a header is another. */
function misled(tables: readonly HeaderCase[], header: CellValue): string[] {
  return tables.flatMap(({ name, headers, rows, expect: fields }) => {
    const before = resultsOf([...headers, ...rows]);
    return DECIDING.filter((field) => {
      const at = fields.indexOf(field);
      if (at < 0 || !before) return false;
      const last = headers.length - 1;
      const without: Row[] = headers.map((row, level) =>
        row.map((cell, column) => (level === last && column === at ? header : cell)),
      );
      return (resultsOf([...without, ...rows]) ?? []).some(({ state, air }, i) => {
        const with_ = before[i];
        return state === "valid" && (with_?.state !== "valid" || with_.air !== air);
      });
    }).map((field) => `${name}: ${field}`);
  });
}

/** An eighth of the tables; all of them on demand: EVERY=1 npx jest header-gone. */
const PARTS = process.env.EVERY ? 1 : 8;

test.each([
  ["no header", null],
  ["“Column5”", "Column5"],
  ["a header that says nothing", "Xqz"],
])("with %s a column that decides makes no test valid that was not", (_, header) => {
  const tables = TABLES.filter((_, at) => at % PARTS === 0);
  expect(misled(tables, header).filter((each) => !ONLY_BY_HEADER.has(each))).toEqual([]);
});

test("“Vol” over amounts of alcohol is asked about, over the volume of loads it is not", () => {
  const block = (volumes: readonly number[]): Row[] => [
    ["Sample", "First reading", "Second reading", "Vol"],
    ...volumes.map((volume, at) => [`S-${at}`, 5.5, 5.5, volume]),
  ];
  expect(resultsOf(block([2, 2, 3]))!.map(({ state }) => state)).toEqual([
    "incomplete",
    "incomplete",
    "incomplete",
  ]);
  expect(resultsOf(block([9, 9, 8.5]))!.map(({ state }) => state)).toEqual([
    "valid",
    "valid",
    "valid",
  ]);
});
