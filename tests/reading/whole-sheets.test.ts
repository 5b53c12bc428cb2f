import { readFileSync } from "node:fs";
import { checkSheet } from "../../src/command-line/check-sheet";
import type { SaidTest } from "../../src/command-line/said";
import type { CellValue } from "../../src/measure/cell-value";

interface ExpectedTest {
  readonly name: string;
  readonly void: boolean;
  readonly air?: number;
}

interface WholeSheet {
  readonly name: string;
  readonly cells: readonly (readonly CellValue[])[];
  readonly tests: readonly ExpectedTest[];
}

const FILES = [
  ...["english", "spanish", "french", "german"],
  ...["english-second", "spanish-second", "french-second", "german-second", "english-third"],
];
const SHEETS = FILES.flatMap((file) => {
  const written = readFileSync(`tests/reading/corpus/blind-sheets/${file}.json`, "utf8");
  return JSON.parse(written) as WholeSheet[];
});

/** Tests that are valid here though the author of the sheets gives them no air, each for a reason. */
const DECIDED_OTHERWISE: ReadonlySet<string> = new Set([
  // A blank among the cups counts as none, as crews leave it (common practice).
  "Three pours, two mixes, load numbers start over: 2",
  // Between two rows of the correction table it is interpolated, and said (ASTM C173, Table 1, from memory).
  "Ounce sheet: B11-D5",
  "Prüfungen nebeneinander, Leichtbeton: LB 4",
  // 3 below "Alc.(oz)" is 3 oz; that the sheet reports the air of 3 pt is said.
  "Clearwell: CL-6",
]);

/** What came of a test that is expected. */
type Outcome = "right" | "asked" | "wrong" | "not found";

function outcomesOf({ name, cells, tests }: WholeSheet): { outcome: Outcome; test: string }[] {
  const width = Math.max(...cells.map((row) => row.length));
  const rows = cells.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
  const { said } = checkSheet("sheet.xlsx", "Sheet", rows, {}, true);
  const left = said.filter((each): each is SaidTest => each.kind === "test");
  return tests.map((expected) => {
    const at = left.findIndex(({ sample }) => sample === expected.name);
    const [found] = at < 0 ? [] : left.splice(at, 1);
    return { outcome: outcomeOf(expected, found), test: `${name}: ${expected.name}` };
  });
}

function outcomeOf(expected: ExpectedTest, found: SaidTest | undefined): Outcome {
  if (!found) return "not found";
  if (found.test === "valid") {
    const isRight = !expected.void && found.air === expected.air;
    return isRight ? "right" : "wrong";
  }
  if (expected.void) return found.test === "void" ? "right" : "asked";
  return expected.air === undefined && found.test !== "void" ? "right" : "asked";
}

const OUTCOMES = SHEETS.flatMap(outcomesOf);
const of = (which: Outcome) => OUTCOMES.filter(({ outcome }) => outcome === which);

test("no test of a sheet that nobody here has seen is valid with another air, or though it is void", () => {
  const wrong = of("wrong").map(({ test }) => test);
  expect(wrong.filter((test) => !DECIDED_OTHERWISE.has(test))).toEqual([]);
  expect(wrong).toHaveLength(DECIDED_OTHERWISE.size);
});

test("of all tests so many are right at once, under the name that they have in the sheet", () => {
  expect(OUTCOMES).toHaveLength(586);
  expect(of("right").length).toBeGreaterThanOrEqual(375);
});
