import { findingSentence } from "../../src/fieldsheet/finding-sentence";
import { findTable } from "../../src/reading/layout";
import { sheetFor, type Cells } from "./rule-cases";
import { checkedTable } from "./checked";

/** What is said of one bad record that stands between two sound ones, which must stay as they are. */
function saidBetweenSoundRows(bad: Cells): string[] {
  const { results, findings, columns } = checkedTable(sheetFor([{}, bad, {}]));
  expect([results[0], results[2]].map((row) => [row!.state, row!.air])).toEqual([
    ["valid", 6],
    ["valid", 6],
  ]);
  expect(results[1]!.air).toBeUndefined();
  expect(results[1]!.state).toBe("incomplete");
  expect(findings.every(({ record }) => record === 1)).toBe(true);
  return findings.map((finding) => findingSentence(finding, columns));
}

describe("one sentence says what is wrong and where, and the rows beside it stay", () => {
  test.each<[what: string, bad: Cells, sentence: string]>([
    [
      "text in a reading",
      { "First reading": "about 6" },
      "First reading: “about 6” is not a number. Type a number, such as 5.25.",
    ],
    [
      "a negative reading",
      { "Second reading": -6 },
      "Second reading: -6 is below zero, which cannot be. Look at the record again.",
    ],
    [
      "a reading beyond the scale",
      { "Second reading": 9.5 },
      "Second reading: a meter reading of 9.5 % is beyond the 9 % that the neck scale is sure to reach. Add calibrated cups of water until the level is on the scale, and give the cups separately.",
    ],
    [
      "a reading in a cell with a percentage format",
      { "Second reading": 0.061 },
      "Second reading: a meter reading of 0.061 looks like 6.1 % in a cell with a percentage format. Type 6.1 into a cell with a number format.",
    ],
    [
      "another number in the place of the cups",
      { Cups: 40 },
      "Cups: with 40 calibrated cups the air content comes out at 46 %, and no concrete that is tested so holds more than 30 %. Count the cups again; each is 1.00 %.",
    ],
    [
      "part of a cup",
      { Cups: 0.5 },
      "Cups: 0.5 is not a whole number of calibrated cups. Only full cups count, each 1.00 %.",
    ],
    [
      "cups below zero",
      { Cups: -1 },
      "Cups: -1 is below zero, which cannot be. Look at the record again.",
    ],
    [
      "an unknown unit",
      { "Alcohol (oz)": "2 cups" },
      "Alcohol (oz): “cups” is not a unit of alcohol that the correction table lists. Use pt, oz, L or mL.",
    ],
    [
      "alcohol beyond the table",
      { "Alcohol (oz)": 96 },
      "Alcohol (oz): the correction table ends at 80 oz, and 96 oz lies beyond it, so no correction can be given. Look at the amount and its unit again.",
    ],
    [
      "an error value",
      { "Second reading": { error: "#N/A" } },
      "Second reading: the cell holds the error #N/A. Correct that cell first.",
    ],
    [
      "an error value in a cell that only decides whether the test is void",
      { Foam: { error: "#DIV/0!" } },
      "Foam: the cell holds the error #DIV/0!. Correct that cell first.",
    ],
    [
      "a number with a comma that can be read in two ways",
      { "First reading": "6,250" },
      "First reading: “6,250” can be read in two ways. Type 6.250 if the comma is a decimal comma.",
    ],
    [
      "two numbers in one cell",
      { Cups: "2-3" },
      "Cups: “2-3” can be read in two ways: 2 or 3. Type the one that is meant.",
    ],
    [
      "a time to settle that may be over the limit",
      { "Time to settle (min)": ">5" },
      "Time to settle (min): “>5” can be read in two ways: more than 6, or not. Type what was measured.",
    ],
    [
      "a mark for the cell above with nothing in it",
      { Foam: "ditto" },
      "Foam: “ditto” stands for the cell above, and there is nothing above it. Type the value.",
    ],
    [
      "neither yes nor no",
      { "Packed concrete": "a bit" },
      "Packed concrete: “a bit” is neither yes nor no. Type yes, no, or nothing.",
    ],
    [
      "true where a number belongs",
      { "First reading": true },
      "First reading: “true” is not a number. Type a number, such as 5.25.",
    ],
  ])("%s", (_, bad, sentence) => {
    expect(saidBetweenSoundRows(bad)).toEqual([sentence]);
  });
});

describe("there is no table to check", () => {
  test.each([
    ["an empty selection", []],
    [
      "blank cells",
      [
        [null, ""],
        [null, null],
      ],
    ],
    ["one cell", [["Tests"]]],
  ])("%s", (_, block) => {
    expect(findTable(block)).toMatchObject({ id: "no-header-row" });
  });
});
