import type { CellValue } from "../../src/measure/cell-value";
import { recognise } from "../../src/reading/recognise";

type Column = readonly [header: string, ...cells: CellValue[]];

const statesOf = (columns: readonly Column[]) =>
  recognise(columns.map(([header, ...cells]) => ({ headers: [header], cells }))).all.map(
    (column) => (column.state === "read" ? column.field : column.state),
  );

const LOAD: Column = ["Load", 14, 22, 9];
const AIR = [5, 5.5, 6] as const;
const SLUMP = [4, 4.5, 5] as const;

/** Two results of one test on one load, before and after an act or at two places (common practice). */
const TWICE: readonly (readonly [first: string, second: string, cells: readonly number[]])[] = [
  ["Air at chute", "Air at hose end", AIR],
  ["Air at truck", "Air at end of pump line", AIR],
  ["Slump before water", "Slump after water", SLUMP],
  ["Slump on arrival", "Slump after water", SLUMP],
  ["Air before pump", "Air after pump", AIR],
  ["Unit wt before pump (pcf)", "Unit wt after pump (pcf)", [110, 111, 110]],
  ["Temp before ice (°F)", "Temp after ice (°F)", [95, 96, 95]],
  ["Aire antes de bombeo", "Aire después de bombeo", AIR],
  ["Air avant pompage", "Air après pompage", AIR],
  ["Luftgehalt vor Pumpe", "Luftgehalt nach Pumpe", AIR],
];

test.each(TWICE)("of “%s” and “%s” neither is taken by chance", (first, second, cells) => {
  expect(statesOf([LOAD, [first, ...cells], [second, ...cells]]).slice(1)).toEqual([
    "asked",
    "asked",
  ]);
});

/** Limits of air as they are headed; one cell holds both, or none could be an air. */
const LIMITS: readonly (readonly [header: string, cells: readonly CellValue[], state: string])[] = [
  ["Air limits", ["4-7", "4-7", "4-7"], "target"],
  ["Min/Max air", ["4-7", "4-7", "4-7"], "target"],
  ["Allowable air", ["4-7", "4-7", "4-7"], "target"],
  ["Límites de aire", ["4-7", "4-7", "4-7"], "target"],
  ["Limites d'air", ["4-7", "4-7", "4-7"], "target"],
  ["Grenzwerte Luft", ["4-7", "4-7", "4-7"], "target"],
  ["Slump limits", ["4-7", "4-7", "4-7"], "unknown"],
  ["Limit, min", [90, 90, 90], "asked"],
  ["Low limit", [45, 45, 45], "asked"],
  ["Low limit", [4.5, 4.5, 4.5], "low"],
];

test.each(LIMITS)("“%s” over %j: %s", (header, cells, state) => {
  expect(statesOf([LOAD, [header, ...cells], ["Air (%)", ...AIR]])[1]).toBe(state);
});

/** Dates of a paper and not of the test; a word that is not known beside "date" says of what. */
const DATES: readonly (readonly [header: string, state: string])[] = [
  ["Test date", "date"],
  ["Pour date", "date"],
  ["Review date", "not ours"],
  ["Date typed", "asked"],
  ["Submittal date", "asked"],
  ["Date of issue", "asked"],
];

test.each(DATES)("“%s”: %s", (header, state) => {
  const days = ["2026-05-13", "2026-05-14", "2026-05-15"];
  expect(statesOf([LOAD, [header, ...days], ["Air (%)", ...AIR]])[1]).toBe(state);
});
