import { SLIPS } from "../../../src/fieldsheet/diagnosis/diagnose";
import { LIKELIHOOD } from "../../../src/fieldsheet/diagnosis/likelihood";
import { sentenceOf } from "../../../src/messages/catalogue";
import { sheetFor, type Cells } from "../rule-cases";
import { checkedTable } from "../checked";

/** The causes named for a wrong result, each with its sentence, the likelier first. */
function saidOfResult(record: Cells): (readonly [string, string])[] {
  const { findings } = checkedTable(sheetFor(record));
  const wrong = findings.filter(({ rule }) => rule === "reported-air-wrong");
  expect(wrong.every(({ weight, field }) => weight === "error" && field === "air")).toBe(true);
  return wrong.flatMap(({ causes = [] }) =>
    causes.map(({ id, say, values }) => [id, sentenceOf(say, values)] as const),
  );
}

/** The causes named for a record, the likelier first. */
function causesOf(record: Cells): string[] {
  return saidOfResult(record).map(([id]) => id);
}

const readings = (first: number, second = first, third?: number): Cells => ({
  "First reading": first,
  "Second reading": second,
  ...(third !== undefined && { "Third reading": third }),
});

const TABLE = "ASTM C173 Table 1 as reproduced in a meter maker's manual (2019)";

describe("a slip that alone explains the number is named with its sentence", () => {
  test.each<[cause: string, record: Cells, sentence: string, working: string]>([
    [
      "correction-forgotten",
      { ...readings(6.5), "Alcohol (oz)": 64, "Reported air": 6.5 },
      "6.5 % comes out when the correction for alcohol, 0.6, is forgotten. Subtract it.",
      `6.5 instead of 6.5 - 0.6 = 5.9, 6.00; ${TABLE}`,
    ],
    [
      "correction-added",
      { ...readings(5.75), "Alcohol (oz)": 64, "Reported air": 6.25 },
      "6.25 % comes out when the correction for alcohol, 0.6, is added. Subtract it.",
      `5.75 + 0.6 = 6.35, 6.25 instead of 5.15, 5.25; ${TABLE}`,
    ],
    [
      "correction-not-due",
      { ...readings(6.5), "Alcohol (oz)": 36, "Reported air": 6.25 },
      "6.25 % comes out when 0.3 is subtracted for 36 oz of alcohol. Under 2.5 pt, 40 oz or 1.2 L nothing is subtracted.",
      `6.5 - 0.3 = 6.2, 6.25; nothing is due under 40 oz; ${TABLE}`,
    ],
    [
      "unit-mistaken",
      { ...readings(7), "Alcohol (oz)": 4.5, "Reported air": 6.25 },
      "6.25 % comes out when 4.5 oz of alcohol is read as 4.5 pt, with a correction of 0.75. See which unit is right.",
      `7 - 0.75 = 6.25; 4.5 pt lies half-way between 0.6 and 0.9; ${TABLE}`,
    ],
    [
      "aggregate-factor-subtracted",
      { ...readings(6), "Aggregate correction factor": 0.6, "Reported air": 5.5 },
      "5.5 % comes out when the aggregate correction factor, 0.6, is subtracted. It belongs to the pressure method only.",
      "6 - 0.6 = 5.4, 5.50; no such factor in this method, abstracts of ASTM C173",
    ],
    [
      "cups-forgotten",
      { ...readings(8.25, 8.5), Cups: 3, "Reported air": 8.5 },
      "8.5 % comes out when the calibrated cups, 3, are forgotten. Add them.",
      "8.5 instead of 8.5 + 3; each cup 1.00 %, from memory, ASTM C173 apparatus",
    ],
    [
      "cups-counted-twice",
      { ...readings(8.25, 8.5), Cups: 3, "Reported air": 14.5 },
      "14.5 % comes out when the calibrated cups, 3, are added twice. Add them once.",
      "8.5 + 6; each cup 1.00 %, from memory, ASTM C173 apparatus",
    ],
    [
      "cups-subtracted",
      { ...readings(8.25, 8.5), Cups: 3, "Reported air": 5.5 },
      "5.5 % comes out when the calibrated cups, 3, are subtracted. Add them.",
      "8.5 - 3; each cup 1.00 %, from memory, ASTM C173 apparatus",
    ],
    [
      "first-reading-used",
      { ...readings(5.25, 5.5), "Alcohol (oz)": 0, "Reported air": 5.25 },
      "5.25 % comes out when an earlier reading, 5.25 %, is used. The final one is 5.5 %.",
      "the second reading is final, a meter maker's manual (2019)",
    ],
    [
      "readings-averaged",
      { ...readings(5.5, 6.25, 6.25), "Alcohol (oz)": 0, "Reported air": 5.88 },
      "5.88 % comes out when the readings are averaged to 5.875 %. The final one, 6.25 %, counts alone.",
      "(5.5 + 6.25) / 2 = 5.875, written to the hundredth",
    ],
    [
      "recorded-final-used",
      { ...readings(5.5, 5.5), "Alcohol (oz)": 0, "Final reading": 6.5, "Reported air": 6.5 },
      "6.5 % comes out of the recorded final reading, 6.5 %. The readings give 5.5 %.",
      "the second reading is final, a meter maker's manual (2019)",
    ],
    [
      "rounded-to-other-step",
      { ...readings(5.75), "Alcohol (oz)": 48, "Reported air": 5.4 },
      "5.4 % comes out when 5.45 % is rounded to the nearest 0.1 %. Round to the nearest 0.25 %.",
      "5.75 - 0.3 = 5.45; half to the even tenth, ASTM E29",
    ],
    [
      "rounded-to-other-step",
      { ...readings(6), "Alcohol (oz)": 52, "Reported air": 5.75 },
      "5.75 % comes out when 5.625 %, half-way between two steps of 0.25 %, is rounded up. Round it to the even step.",
      "52 oz lies a quarter between 0.3 and 0.6: 0.375; 6 - 0.375 = 5.625 goes to 5.50, ASTM E29",
    ],
    [
      "rounded-to-other-step",
      { ...readings(5.75), "Alcohol (oz)": 48, "Reported air": 5.45 },
      "5.45 % comes out when the result is not rounded. Round it to the nearest 0.25 %.",
      "5.75 - 0.3 = 5.45",
    ],
    [
      "digits-swapped",
      { ...readings(5.75), "Alcohol (oz)": 0, "Reported air": 7.55 },
      "7.55 % is 5.75 % with two digits changed over. Write it again.",
      "5 and 7 changed over",
    ],
    [
      "unexplained",
      { ...readings(5.75), "Alcohol (oz)": 0, "Reported air": 9 },
      "No slip that is known here gives 9 %. Work the result out again from the readings, the cups and the alcohol.",
      "3.25 more than the readings, and nothing to add",
    ],
  ])("%s: %j", (cause, record, sentence) => {
    expect(saidOfResult(record)).toEqual([[cause, sentence]]);
  });
});

describe("where several explain the number, all are named and the likelier first", () => {
  const AVERAGE =
    "(5.5 + 5.75) / 2 = 5.625 goes to the even 5.50, ASTM E29, as does the first reading";
  const LITRES = `2 L: 0.66 is subtracted; forgotten, or read as 2 pt: nothing; ${TABLE}`;

  test.each<[record: Cells, causes: string[], working: string]>([
    [
      { ...readings(5.5, 5.75), "Alcohol (oz)": 0, "Reported air": 5.5 },
      ["first-reading-used", "readings-averaged"],
      AVERAGE,
    ],
    [
      { ...readings(5.5, 5.75), "Alcohol (oz)": 0, "Final reading": 5.5, "Reported air": 5.5 },
      ["first-reading-used", "readings-averaged"],
      `${AVERAGE}; the sheet's final reading is the first`,
    ],
    [
      { ...readings(5.5, 5.75), "Alcohol (oz)": 0, "Final reading": 5.63, "Reported air": 5.5 },
      ["readings-averaged", "first-reading-used"],
      `${AVERAGE}; the sheet's final reading is the average`,
    ],
    [
      { ...readings(5.5, 5.75), "Alcohol (oz)": 0, "Final reading": 6, "Reported air": 5.5 },
      ["first-reading-used", "readings-averaged"],
      `${AVERAGE}; the sheet's final reading is neither`,
    ],
    [
      { ...readings(6.25, 6), "Alcohol (oz)": 48, "Final reading": 6, "Reported air": 6 },
      ["correction-forgotten", "rounded-to-other-step", "first-reading-used"],
      "6 - 0.3 = 5.7, 5.75; 6 without it, 5.7 to the whole percent 6, 6.25 - 0.3 = 5.95 to 6.00",
    ],
    [
      { ...readings(6.25), "Alcohol (oz)": 16, "Reported air": 6 },
      ["rounded-to-other-step", "correction-not-due"],
      "6.25 to the even half 6.0; 6.25 - 0.3 = 5.95 to 6.00; 16 oz is far from a corrected row",
    ],
    [
      { ...readings(6.25), "Alcohol (oz)": 36, "Reported air": 6 },
      ["correction-not-due", "rounded-to-other-step"],
      "as before; 36 oz lies between 32 oz and the corrected row of 48 oz",
    ],
    [
      { ...readings(6.25), "Aggregate correction factor": 0.3, "Reported air": 6 },
      ["aggregate-factor-subtracted", "rounded-to-other-step", "correction-not-due"],
      "6.25 - 0.3 = 5.95 to 6.00, for the factor that stands in the sheet",
    ],
    [
      { ...readings(6.5), "Alcohol (oz)": "2 L", "Reported air": 6.5 },
      ["correction-forgotten", "unit-mistaken"],
      LITRES,
    ],
    [
      { ...readings(6.5), "Alcohol (oz)": "1.75 L", "Reported air": 6.5 },
      ["unit-mistaken", "correction-forgotten"],
      `${LITRES}; 1.75 is a mark of a pint measure, not one of 100 mL marks`,
    ],
    [
      { ...readings(8.5), "Alcohol (oz)": 80, Cups: 1, "Reported air": 9.5 },
      ["cups-counted-twice", "correction-forgotten"],
      "8.5 - 0.9 + 1 = 8.6, 8.50; with another cup 9.6, 9.50; without the correction 9.50",
    ],
  ])("%j: %j", (record, causes) => {
    expect(causesOf(record)).toEqual(causes);
  });
});

describe("the table of likelihood", () => {
  const ids = SLIPS.map(({ id }) => id);

  test("holds each slip, at last without a condition", () => {
    for (const id of ids) {
      const entries = LIKELIHOOD.filter(({ slip }) => slip === id);
      expect(entries.map(({ when }) => when === undefined)).toEqual([
        ...entries.slice(1).map(() => false),
        true,
      ]);
    }
  });

  test("gives a reason for each place", () => {
    expect(LIKELIHOOD.filter(({ because }) => !/^[A-Z].{10,}\.$/.test(because))).toEqual([]);
  });
});
