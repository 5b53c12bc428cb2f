import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";
import { THIRD_BLIND_TABLES } from "./corpus/blind-third/tables";
import { FOURTH_BLIND_TABLES } from "./corpus/blind-fourth/tables";
import { BLIND_TABLES } from "./corpus/blind/tables";
import { SECOND_BLIND_TABLES } from "./corpus/blind-second/tables";
import { LANGUAGES } from "./corpus/languages";

/*
 * Sheets of another method, or of none: nothing in them is a valid volumetric test. That a pressure meter's readings
 * are corrected for the aggregate, and that no alcohol goes into it, is common practice (ASTM C231).
 */

type Block = readonly (readonly CellValue[])[];

function statesOf(block: Block): string[] {
  const result = checkBlock(block);
  return isIssue(result) ? [result.id] : result.results.map(({ state }) => state);
}

const rulesOf = (block: Block) => {
  const result = checkBlock(block);
  return isIssue(result) ? [] : result.findings.map(({ rule }) => rule);
};

const HEADER = ["Sample", "First reading", "Second reading"];
const TESTS: Block = [
  ["A", 5.5, 5.5],
  ["B", 6, 6],
];
const titled = (...title: CellValue[]): Block => [
  [title[0]!, title[1] ?? null, null],
  HEADER,
  ...TESTS,
];

test.each([
  ["Air by pressure method"],
  ["Type B pressure meter"],
  ["ASTM C231"],
  ["Aire por presión"],
  ["Essai à l'air par pression"],
  ["Drucktopfverfahren"],
])("below “%s” it is open whose readings they are", (title) => {
  expect(statesOf(titled(title))).toEqual(["incomplete", "incomplete"]);
  expect(rulesOf(titled(title))).toContain("title-of-another-method");
});

test.each([
  ["Daily log of concrete"],
  ["Air by volumetric method"],
  ["Pressure and volumetric air"],
  ["Mix type A"],
  ["Pump pressure"],
  ["High-pressure pump pour"],
  ["Line pressure 30 psi"],
  ["Pressure washing log"],
  ["Pressure 30 psi"],
])("below “%s” they are judged", (title) => {
  expect(statesOf(titled(title))).toEqual(["valid", "valid"]);
});

test.each([
  ["Pressure", 30],
  ["Pressure", "30 psi"],
  ["Pump pressure", 30],
])("the label “%s” beside %s tells of no meter", (label, amount) => {
  expect(statesOf(titled(label, amount))).toEqual(["valid", "valid"]);
});

test.each([
  ["Method:", "Pressure"],
  ["Pressure", null],
  // 2026-06-03, counted from 1900.
  ["Pressure", 46_176],
  ["Air by pressure method", "2026-06-03"],
])("“%s” beside %s tells of one", (...cells) => {
  expect(statesOf(titled(...cells))).toEqual(["incomplete", "incomplete"]);
});

test("a column that names the method goes before the title", () => {
  const block: Block = [
    ["Air by pressure method", null, null, null],
    [...HEADER, "Method"],
    ...TESTS.map((row) => [...row, "volumetric"]),
  ];
  expect(statesOf(block)).toEqual(["valid", "valid"]);
});

test("a nearer title of the volumetric method goes before one further above", () => {
  const block = [["Pressure meters are kept in room 2", null, null], ...titled("Volumetric air")];
  expect(statesOf(block)).toEqual(["valid", "valid"]);
});

test("the title of a group makes the readings below it a pressure meter's", () => {
  const block: Block = [
    ["Sample", "Pressure meter", null, null],
    [null, "Reading", "Agg. corr.", "Air"],
    ["A", 5.5, 0.3, 5.2],
    ["B", 6, 0.3, 5.7],
  ];
  expect(statesOf(block)).toEqual(["no-readings-column"]);
});

const CORRECTED: Block = [
  ["Sample", "Gauge reading", "Agg. corr.", "Air"],
  ["A", 5.5, 0.3, 5.2],
  ["B", 6, 0.3, 5.7],
];

test("readings corrected for the aggregate, without alcohol and cups, may be a pressure meter's", () => {
  expect(statesOf(CORRECTED)).toEqual(["incomplete", "incomplete"]);
  expect(rulesOf(CORRECTED)).toContain("may-be-by-pressure");
});

test.each([["Alcohol (pt)"], ["Cups"], ["Foam (div)"]])("with “%s” they are not", (header) => {
  const block = CORRECTED.map((row, at) => [...row, at === 0 ? header : 0]);
  expect(rulesOf(block)).not.toContain("may-be-by-pressure");
});

const READINGS = new Set(["first", "second", "third", "final"]);
const ALL = [
  ...LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]),
  ...[BLIND_TABLES, SECOND_BLIND_TABLES, THIRD_BLIND_TABLES, FOURTH_BLIND_TABLES]
    .flat()
    .flatMap(({ tables }) => tables),
];

/** Two tests a row, whose readings are asked about column by column, and two readings in a cell. */
const ASKED_BY_COLUMN = ["comparison of two meters of a kind", "both readings in one cell"];

test("a sheet without its volumetric readings has no valid test", () => {
  const valid = ALL.filter(({ name, headers, rows, expect: fields }) => {
    if (ASKED_BY_COLUMN.includes(name)) return false;
    const left = fields.flatMap((field, at) => (READINGS.has(field) ? [] : [at]));
    const pick = (row: readonly CellValue[]) =>
      left.map((at) => (row[at] === "" ? null : row[at]!));
    return statesOf([...headers.map(pick), ...rows.map(pick)]).includes("valid");
  });
  expect(valid.map(({ name }) => name)).toEqual([]);
});
