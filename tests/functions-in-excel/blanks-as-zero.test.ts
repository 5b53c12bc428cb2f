import "../functions/custom-functions-runtime";
import { bias } from "../../src/functions/bias";
import { check, findings } from "../../src/functions/field-sheet";
import { registerStateOf } from "../../src/functions/register";
import { letBlankCellsCome } from "../../src/functions/runner/blank-cells";
import { summary } from "../../src/functions/summary";
import { testsDueFor } from "../../src/functions/tests-due";
import { EmulatedExcel } from "../excel-client/emulated-excel";
import { handedOver } from "../excel-client/handed-over";
import { edit } from "../excel-client/user-edits";
import { randomSheet } from "../digests/random-sheet";
import { Random } from "../simulation/random";
import { WORKING_CALLS, type Given } from "../functions/working-calls";

/*
 * An Excel that makes zeros of blank cells, and is not known to do otherwise: of each function, with some of
 * its cells blank, every answer is the one that blanks would get, or it is an error that says why.
 */

type Run = (...given: any[]) => unknown[][];

const SEES_ZERO_OR_BLANK = /is 0 or blank: this Excel may hand over a blank cell as 0/;
const excel = new EmulatedExcel();
const sure = { mayBeZero: () => false, saw: () => {} };
const inDoubt = { mayBeZero: () => true, saw: () => {} };
afterEach(() => letBlankCellsCome(sure));

/** What a call gives of arguments that stand side by side on a sheet: cells, or why it fails. */
function called(run: Run, tables: readonly (readonly (readonly unknown[])[])[]): unknown[][] {
  const sheet = excel.workbook.addSheet(`call ${excel.workbook.sheets.length}`);
  let left = 0;
  const given = tables.map((table) => {
    const columns = Math.max(...table.map((row) => row.length));
    table.forEach((row, r) =>
      row.forEach((value, c) => {
        if (value !== null) edit(sheet, r, left + c, value as string);
      }),
    );
    const block = { top: 0, left, bottom: table.length - 1, right: left + columns - 1 };
    left += columns;
    return handedOver(excel, sheet, block);
  });
  excel.workbook.sheets.pop();
  try {
    return run(...given);
  } catch (error) {
    return [[error]];
  }
}

/** The same call as Excel ought to make it, and as one makes it that hands over blanks as 0. */
function bothWays(run: Run, tables: readonly (readonly (readonly unknown[])[])[]) {
  excel.blanksAsZero = false;
  letBlankCellsCome(sure);
  const right = called(run, tables);
  excel.blanksAsZero = true;
  letBlankCellsCome(inDoubt);
  return { right, zeros: called(run, tables) };
}

const isError = (cell: unknown): cell is Error => cell instanceof Error;
const same = (one: unknown, other: unknown) =>
  isError(one) && isError(other) ? one.message === other.message : Object.is(one, other);

/** Answers that differ from the right ones, and are no errors that say why or lie beside one that does. */
function wrongWithoutAWord(right: unknown[][], zeros: unknown[][]): unknown[] {
  const told = zeros.flat().some((cell) => isError(cell) && SEES_ZERO_OR_BLANK.test(cell.message));
  return zeros.flatMap((row, r) =>
    row.flatMap((cell, c) => {
      const expected = right[r]?.[c] ?? right[0]![0];
      return (told && isError(cell)) || same(cell, expected)
        ? []
        : [{ cell, expected, row: r, column: c }];
    }),
  );
}

/** Columns of the arguments of a call, with blanks among them. */
function withBlanks(base: readonly Given[], random: Random): unknown[][][] {
  const rows = random.one([1, 1, 3]);
  const share = random.one([0.2, 0.5]);
  return base.map((value) => {
    const cells =
      typeof value === "object"
        ? (value as readonly number[])
        : Array.from({ length: random.one([1, rows]) }, () => value);
    return cells.map((cell) => [random.chance(share) ? null : cell]);
  });
}

test.each(
  WORKING_CALLS.map(([id, run, ...base]) => ({ id, run: run as Run, base: base as Given[] })),
)("FRESH.$id takes no blank for a zero", ({ run, base }) => {
  const random = new Random(29);
  let told = 0;
  for (let i = 0; i < 40; i++) {
    const columns = withBlanks(base, random);
    const { right, zeros } = bothWays(run, columns);
    expect(wrongWithoutAWord(right, zeros)).toEqual([]);
    told += zeros.flat().filter(isError).length;
  }
  expect(told).toBeGreaterThan(0);
});

describe("a table with blanks among its cells", () => {
  const SHEETS = 60;

  /** Random sheets, with some further cells left blank. */
  const sheets = Array.from({ length: SHEETS }, (_, number) => {
    const random = new Random(number);
    const { headers, rows } = randomSheet(number);
    const written = (cell: unknown) => (typeof cell === "object" && cell !== null ? "#N/A" : cell);
    const blanked = rows.map((row) => row.map((cell) => (random.chance(0.1) ? "" : written(cell))));
    return [[headers], blanked] as unknown[][][];
  });

  test("FRESH.CHECK calls no test valid that is not, and gives no other air content", () => {
    let told = 0;
    for (const tables of sheets) {
      const { right, zeros } = bothWays(check, tables);
      if (isError(zeros[0]![0])) continue;
      zeros.forEach(([test, air, specification, words], row) => {
        const [rightTest, rightAir, rightSpecification] = right[row]!;
        if (test === "valid") expect(rightTest).toBe("valid");
        if (air !== "") expect(air).toBe(rightAir);
        if (specification !== "") expect(specification).toBe(rightSpecification);
        if (SEES_ZERO_OR_BLANK.test(String(words))) told += 1;
        else if (test !== rightTest) expect(words).not.toBe("");
      });
    }
    expect(told).toBeGreaterThan(SHEETS / 2);
  });

  test("FRESH.FINDINGS says it", () => {
    const said = sheets.filter((tables) =>
      bothWays(findings, tables)
        .zeros.flat()
        .some((cell) => SEES_ZERO_OR_BLANK.test(isError(cell) ? cell.message : String(cell))),
    );
    expect(said.length).toBeGreaterThan(SHEETS / 2);
  });

  test("FRESH.SUMMARY leaves such tests out and counts them as incomplete", () => {
    const headers = [["Mix", "First reading", "Second reading", "Alcohol (oz)"]];
    const rows = [
      ["LW4", 6, 6, 16],
      ["LW4", 5, 5, null],
      ["LW4", 7, 7, 24],
    ];
    const { right, zeros } = bothWays(summary, [headers, rows, [["mix"]]]);
    expect(right[1]!.slice(0, 5)).toEqual(["LW4", 3, 0, 1, 6.5]);
    expect(zeros[1]!.slice(0, 5)).toEqual(["LW4", 3, 0, 1, 6.5]);
  });
});

describe("other functions of whole columns", () => {
  test.each<[string, Run, unknown[][][]]>([
    [
      "BIAS",
      bias,
      [
        [[6], [null], [7], [5]],
        [["A"], ["A"], ["B"], ["B"]],
      ],
    ],
    [
      "BIAS",
      bias,
      [
        [[6], [5], [7], [5]],
        [["A"], [null], ["B"], ["B"]],
      ],
    ],
    ["REGISTER.STATE", registerStateOf, [[["M-1"]], [[46100]], [["M-1", null]]]],
    ["REGISTER.STATE", registerStateOf, [[["M-1"]], [[null]], [["M-1", 46000]]]],
    ["REGISTER.STATE", registerStateOf, [[["M-1"]], [[46100]], [["M-1", 46000, null]]]],
    [
      "TESTS.DUE",
      testsDueFor,
      [
        [[46000], [46000]],
        [["A"], ["A"]],
        [[90], [null]],
      ],
    ],
    [
      "TESTS.DUE",
      testsDueFor,
      [
        [[46000], [46000]],
        [["A"], [null]],
        [[90], [70]],
      ],
    ],
    [
      "TESTS.DUE",
      testsDueFor,
      [[[46000], [46000]], [["A"], ["A"]], [[90], [70]], [["ACI 318-08"]], [[6], [null]]],
    ],
  ])("FRESH.%s", (_id, run, tables) => {
    const [[whole]] = bothWays(run, tables).zeros as [[unknown]];
    expect(isError(whole) && whole.message).toMatch(SEES_ZERO_OR_BLANK);
  });
});

test("a 0 that is written as a text is a 0 in every function, also in doubt", () => {
  for (const [id, run, ...base] of WORKING_CALLS) {
    base.forEach((value, position) => {
      if (typeof value !== "number") return;
      const withZero = (zero: unknown) =>
        (base as Given[]).map((other, i) => {
          const cells = typeof other === "object" ? (other as readonly number[]) : [other];
          return cells.map((cell) => [i === position ? zero : cell]);
        });
      letBlankCellsCome(sure);
      const right = called(run, withZero(0));
      letBlankCellsCome(inDoubt);
      const text = called(run, withZero("0"));
      expect({ id, position, text: plain(text) }).toEqual({ id, position, text: plain(right) });
    });
  }
});

function plain(cells: unknown[][]): unknown {
  return cells.map((row) => row.map((cell) => (isError(cell) ? cell.message : cell)));
}
