import "../functions/custom-functions-runtime";
import { check } from "../../src/functions/field-sheet";
import { randomTest, type PlainTest } from "../simulation/plain-test";
import { Random } from "../simulation/random";

/*
 * The same tests, written another way, have the same answers. Readings and amounts are drawn by the
 * method's own tables; answers are compared with each other, none is expected of itself.
 */
const LAYOUT = { unitInCell: false, hasFinal: true, hasFactor: false, isFull: false };
const LABELS = [
  "Sample",
  "First reading",
  "Second reading",
  "Third reading",
  "Cups",
  "Air content %",
];

/** About a third of the tests are reported wrongly, some have a reading missing. */
function cellsOf(test: PlainTest, i: number, random: Random): unknown[] {
  const [first, second, third] = test.readings.map((reading) => reading / 1000);
  const reported = test.reported / 1000 + random.one([0, 0, 0.25, 1]);
  const missing = random.chance(0.1);
  return [`S-${i + 1}`, first, missing ? null : second, third ?? null, test.cups, reported];
}

const drawn = (seed: number, count: number, unit: PlainTest["unit"]) => {
  const random = new Random(seed);
  return Array.from({ length: count }, (_, i) => {
    const test = randomTest(random, { ...LAYOUT, unit });
    return { test, cells: cellsOf(test, i, random) };
  });
};

const LIMITS: [unknown[][], unknown[][]] = [[[4.5]], [[7.5]]];
const seeds = Array.from({ length: 60 }, (_, i) => 500 + i);
const shape = (rows: unknown[][]) => rows.map((row) => row.slice(0, 3));

test.each(seeds)("tests as columns of a form are those of the table (%d)", (seed) => {
  const tests = drawn(seed, 4, "oz");
  const headers = [...LABELS, "Alcohol (oz)"];
  const rows = tests.map(({ test, cells }) => [...cells, test.amount]);
  const table = shape(check([headers], rows, ...LIMITS));
  const form = headers.map((label, i) => [label, ...rows.map((row) => row[i])]);
  expect(shape(check([[null]], form, ...LIMITS)).slice(0, rows.length)).toEqual(table);
});

test.each(seeds)("one test as a form is its row of the table (%d)", (seed) => {
  const [{ test, cells }] = drawn(seed, 1, "oz") as [ReturnType<typeof drawn>[number]];
  const headers = [...LABELS, "Alcohol (oz)"];
  const row = [...cells, test.amount];
  const form = headers.map((label, i) => [label, row[i]]);
  expect(shape(check([[null]], form, ...LIMITS))[0]).toEqual(
    shape(check([headers], [row], ...LIMITS))[0],
  );
});

/** Rows of the table of corrections in ounces and litres (ASTM C173, table 1), and amounts below it. */
const SAME_AMOUNT = [
  ...[
    [16, 0.5],
    [32, 0.9],
    [48, 1.4],
    [64, 1.9],
    [80, 2.4],
  ],
] as const;

test.each(seeds)("ounces, pints, litres and millilitres give the same air (%d)", (seed) => {
  const random = new Random(seed);
  const tests = drawn(seed, 12, "oz").map(({ cells }) => ({
    cells,
    same: random.one(SAME_AMOUNT),
  }));
  const answers = (unit: string, amount: (same: readonly [number, number]) => number) =>
    shape(
      check(
        [[...LABELS, `Alcohol (${unit})`]],
        tests.map(({ cells, same }) => [...cells, amount(same)]),
        ...LIMITS,
      ),
    );
  const ounces = answers("oz", ([oz]) => oz);
  expect(answers("pt", ([oz]) => oz / 16)).toEqual(ounces);
  expect(answers("L", ([, litres]) => litres)).toEqual(ounces);
  expect(answers("mL", ([, litres]) => litres * 1000)).toEqual(ounces);
});
