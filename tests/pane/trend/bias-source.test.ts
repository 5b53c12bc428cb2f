import type { CellValue } from "../../../src/measure/cell-value";
import { areaAddress } from "../../../src/hosts/cell-address";
import { checkAreaInSteps, type CheckedArea } from "../../../src/pane/state/checked-area";
import { biasBy, namingColumns } from "../../../src/pane/trend/bias-source";
import { biasSentence, neededFor } from "../../../src/pane/trend/bias-words";

const HEADERS = ["Sample", "Mix", "First reading", "Second reading", "Alcohol (oz)", "Tested by"];

/** Tests with too little alcohol for a correction, so that the air is what was read. */
const testOf = (sample: string, mix: string, air: number, who: string | null): CellValue[] => [
  ...[sample, mix, air, air, 16],
  who,
];

function checked(rows: CellValue[][], headers: CellValue[] = HEADERS): CheckedArea {
  const values = [headers, ...rows];
  const size = { rows: values.length, columns: headers.length };
  const area = { sheetId: "s", sheetName: "Loads", row: 0, column: 0, ...size };
  const steps = checkAreaInSteps(
    { area, address: areaAddress(area), values },
    { low: "", high: "", decimal: "." },
  );
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** By hand: A is 6, 6.5, 7, B is 5, 5.5, 6: 1 apart, √(0.25 / 3 + 0.25 / 3) = 0.408. */
const DAY = [
  ...[6, 6.5, 7].map((air, i) => testOf(`S-${i}`, "M", air, "A. Nilsen")),
  ...[5, 5.5, 6].map((air, i) => testOf(`T-${i}`, "M", air, "B. Orozco")),
];

test("a column that names who made the tests is offered, and no other", () => {
  expect(namingColumns(checked(DAY))).toEqual([{ index: 5, header: "Tested by" }]);
});

test.each<[string, CellValue[]]>([
  ["numbers", [1, 2, 1, 2, 1, 2]],
  ["names of which each comes once", ["a", "b", "c", "d", "e", "f"]],
  ["one name only", Array<CellValue>(6).fill("A")],
  ["blanks", Array<CellValue>(6).fill(null)],
])("a column of %s names nobody", (_, more) => {
  const rows = DAY.map((row, i) => [...row.slice(0, 5), more[i]!]);
  expect(namingColumns(checked(rows, [...HEADERS.slice(0, 5), "Lane"]))).toEqual([]);
});

test("each one's difference is that of FRESH.BIAS; a test without a name, or void, takes no part", () => {
  const unread = testOf("S-8", "M", 9, "A. Nilsen").map((cell) => (cell === 16 ? null : cell));
  const rows = [...DAY, testOf("S-9", "M", 9, null), unread];
  const [a, b] = biasBy(checked(rows), { index: 5, header: "" })!;
  expect(a).toMatchObject({ who: "A. Nilsen", tests: 3, difference: 1 });
  expect(a!.standardError).toBeCloseTo(0.408, 3);
  expect(b).toMatchObject({ who: "B. Orozco", difference: -1 });
});

test("of different mixes nobody is compared, and that is said by leaving it blank", () => {
  const rows = DAY.map((row, i) => [row[0]!, i < 3 ? "M" : "N", ...row.slice(2)]);
  expect(biasBy(checked(rows), { index: 5, header: "" })).toBeUndefined();
});

test("a difference that is not told says how many tests would be needed", () => {
  const [a] = biasBy(checked(DAY), { index: 5, header: "" })!;
  // By hand: 7.849 × (0.25 + 0.25) / 1 + 0.960 = 4.88, so 5; p of t 2.449 and 4 is 0.0705.
  expect(neededFor(a!)).toBe(5);
  expect(biasSentence(a!, ".")).toBe(
    "A. Nilsen: +1 %, standard error 0.408 %, tests: 3. Where nobody differs, so much comes about by chance in 7 % of cases. To tell such a difference, 5 tests of each on the same mixes would be needed.",
  );
});

test("where one has no two tests and the others neither, nothing more is claimed", () => {
  const [a] = biasBy(checked([DAY[0]!, DAY[3]!]), { index: 5, header: "" })!;
  expect(biasSentence(a!, ",")).toBe(
    "A. Nilsen: +1 %, tests: 1. Too few to say how well that is known.",
  );
  expect(neededFor({ who: "A", tests: 3, difference: 0, scatter: 1 })).toBeUndefined();
});
