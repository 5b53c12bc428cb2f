import { correctionsBetween } from "../../src/review/corrections";
import { checkedTable } from "../fieldsheet/checked";

/* Expected here is what is promised of a review: who corrects the cell of a finding sees it noted with both values. */

const HEADERS = ["Sample", "Reading 1", "Reading 2", "Alcohol (oz)", "Air reported"];
type Row = readonly (string | number)[];
const right = (sample: string): Row => [sample, 5.5, 5.5, 48, 5.25];
const wrong = (sample: string): Row => [sample, 5.5, 5.5, 48, 5.5];

const CASES: [what: string, before: Row[], now: Row[], corrected: number][] = [
  ["a test of its own name", [wrong("S-1"), right("S-2")], [right("S-1"), right("S-2")], 1],
  ["the first of two of one name", [wrong("S-1"), wrong("S-1")], [right("S-1"), wrong("S-1")], 1],
  ["the second of two of one name", [wrong("S-1"), wrong("S-1")], [wrong("S-1"), right("S-1")], 1],
  ["both of two of one name", [wrong("S-1"), wrong("S-1")], [right("S-1"), right("S-1")], 2],
  ["none", [wrong("S-1"), wrong("S-1")], [wrong("S-1"), wrong("S-1")], 0],
  ["none, in another order", [wrong("S-1"), wrong("S-2")], [wrong("S-2"), wrong("S-1")], 0],
];

test.each(CASES)("notes as corrected: %s", (_, before, now, corrected) => {
  const [was, is] = [before, now].map((rows) => checkedTable({ headers: HEADERS, rows }));
  const noted = correctionsBetween(was!, is!).filter(
    ({ finding }) => finding.rule === "reported-air-wrong",
  );
  expect(noted.map(({ oldValue, newValue }) => [oldValue, newValue])).toEqual(
    Array.from({ length: corrected }, () => ["5.5", "5.25"]),
  );
});
