import { readFileSync } from "node:fs";
import { diagnosisPage } from "../../scripts/reference/diagnosis-page";
import { findingsList } from "../../src/fieldsheet/result-tables";
import { measureDiagnosis, SEED } from "./measure-diagnosis";
import { CORRECTIONS, finalOf, PERCENT, QUARTER, rounded, SCALE, subtracted } from "./plain-method";
import { randomLayout, randomTest } from "./plain-test";
import { PLAIN_SLIPS } from "./plain-slips";
import { Random } from "./random";
import { SLIPS } from "../../src/fieldsheet/diagnosis/diagnose";
import { sheetOf } from "./sheet-of-tests";
import { checkedTable } from "../fieldsheet/checked";

describe("the plain method", () => {
  test.each([
    [5125, 5000],
    [5375, 5500],
    [5625, 5500],
    [5875, 6000],
    [5950, 6000],
    [7150, 7250],
  ])("rounds %d thousandths to %d (derived from ASTM E29)", (value, quarter) => {
    expect(rounded(value)).toBe(quarter);
  });

  test.each([
    ["pt", 3, 300],
    ["pt", 4, 600],
    ["pt", 5, 900],
    ["oz", 48, 300],
    ["oz", 80, 900],
    ["L", 1.4, 300],
    ["L", 1.9, 600],
    ["L", 2.4, 900],
  ] as const)(
    "%s %d: %d (ASTM C173 Table 1, meter maker's manual, 2019)",
    (unit, amount, least) => {
      const mark = { pt: 0.25, oz: 4, L: 0.1 }[unit];
      expect(subtracted(unit, Math.round(amount / mark))).toBe(least);
    },
  );
});

test("20,000 sound records: the same air as the plain method, and nothing void or wrong", () => {
  const random = new Random(SEED);
  const found: unknown[] = [];
  for (let sheets = 0; sheets < 400; sheets += 1) {
    const layout = randomLayout(random);
    const tests = Array.from({ length: 50 }, () => randomTest(random, layout));
    const result = checkedTable(sheetOf(tests, layout, random));
    expect(result.results.map(({ air }) => air)).toEqual(
      tests.map(({ reported }) => reported / PERCENT),
    );
    found.push(
      ...findingsList(result).filter(([, , , weight]) => weight === "void" || weight === "error"),
    );
  }
  expect(found).toEqual([]);
});

describe("1,000 records with each slip", () => {
  const scores = measureDiagnosis(1000, SEED);

  /**
   * Without a final reading in the sheet the average of two readings that agree cannot be told from
   * the first of them, as the last test below shows. See docs/diagnosis.md.
   */
  const NAMED_FIRST_AT_LEAST: Readonly<Record<string, number>> = { "readings-averaged": 0.6 };

  test("every slip that the check knows is tried", () => {
    expect(Object.keys(PLAIN_SLIPS).sort()).toEqual(SLIPS.map(({ id }) => id).sort());
  });

  test.each(scores.map((score) => [score.slip, score] as const))("%s", (slip, score) => {
    expect(score.rows).toBe(1000);
    expect(score.missed).toBe(0);
    expect(score.first / score.rows).toBeGreaterThanOrEqual(NAMED_FIRST_AT_LEAST[slip] ?? 0.9);
  });

  test("docs/diagnosis.md tells these figures; if not, run: npm run reference", () => {
    const committed = readFileSync("docs/diagnosis.md", "utf8").replaceAll("\r\n", "\n");
    expect(committed).toBe(diagnosisPage(scores));
  });

  test("an average of two readings that agree gives the result of one of them", () => {
    const corrections = [...CORRECTIONS.oz, ...CORRECTIONS.L];
    // But for 0.375, interpolated, which brings both results half-way between two steps.
    for (const correction of corrections.filter((one) => one % QUARTER !== QUARTER / 2)) {
      for (let first = 0; first <= SCALE; first += QUARTER) {
        for (const second of [first - QUARTER, first, first + QUARTER]) {
          const average = rounded((first + second) / 2 - correction);
          const either = [first, second].map((reading) => rounded(reading - correction));
          expect(finalOf([first, second])).toBe(second);
          expect(either).toContain(average);
        }
      }
    }
  });
});
