import type { CellValue } from "../../../src/measure/cell-value";
import { readingChoice } from "../../../src/pane/test/reading-choice";
import { checkedTable } from "../../fieldsheet/checked";

const HEADERS = ["Sample", "First reading", "Second reading", "Third reading"];
const choiceOf = (...readings: CellValue[]) =>
  readingChoice(
    checkedTable({ headers: HEADERS, rows: [["S-1", ...readings]] }).results[0]!,
    ".",
  ).join(" ");

// Two readings agree within 0.25 %; the third by common practice (a meter maker's manual, 2019, describing ASTM C173).
test.each([
  [
    [5.5, 5.75, null],
    /second reading, 5\.75 %, agrees with the first, 5\.50 %.*the second is final/,
  ],
  [[5.5, 5.75, 6], /the second is final.*third, 6\.00 %, was not needed/],
  [[5.5, 6.25, 6.25], /differs.*third, 6\.25 %, agrees.*the third is final/],
  [[5, 5.5, 6], /differs.*third, 6\.00 %, differs.*void/],
  [[5, 5.5, null], /differs.*There is none/],
  [[5, null, null], /no second one/],
  [[null, null, null], /^$/],
  [["about 6", 6, null], /^$/],
])("how the final reading of %j was chosen", (readings, said) => {
  expect(choiceOf(...readings)).toMatch(said);
});
