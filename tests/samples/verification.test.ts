import { readFileSync } from "node:fs";
import type { SampleSheet } from "../../scripts/samples/sheet";
import { CASES, WITHOUT_ORDINARY_FORMULA } from "../../scripts/samples/verification/cases";
import { verificationSheets } from "../../scripts/samples/verification/sheets";
import { xlsxOf } from "../../scripts/write-workbook";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import recorded from "../functions/functions-record.json";
import { bundledEngine } from "./bundled-engine";

const { calculated, worksheetFunctions } = bundledEngine();

const SPREADSHEET = "in the workbench's spreadsheet";

const verdicts = (sheets: readonly SampleSheet[]) => sheets.map(({ rows }) => rows[0]![0]!.v);
const ALL_MATCH = [`${CASES.length} of ${CASES.length} match`, "10 of 10 match", "1 of 1 match"];

test(`each function gives what the ordinary formulas give, both ${SPREADSHEET}`, async () => {
  const sheets = await calculated(verificationSheets(), worksheetFunctions);
  const differing = sheets.flatMap(({ rows }) =>
    rows.map((row) => row.map((cell) => cell?.v ?? "")).filter((row) => row.includes("DIFFERS")),
  );
  expect(differing).toEqual([]);
  expect(verdicts(sheets)).toEqual(ALL_MATCH);
});

test("a result that is off in its seventh digit, or a wrong word, is told", async () => {
  const sheets = verificationSheets().map((sheet) => ({
    ...sheet,
    rows: sheet.rows.map((row) =>
      row.map((cell) => {
        if (!cell?.f?.includes("FRESH.")) return cell;
        return { v: typeof cell.v === "number" ? cell.v * (1 + 1e-7) + 1e-7 : `${cell.v}!` };
      }),
    ),
  }));
  const [one, two, three] = verdicts(await calculated(sheets));
  expect(one).toBe(`0 of ${CASES.length} match`);
  expect(two).toMatch(/^(0|9) of 10 match$/);
  expect(three).toBe("0 of 1 match");
});

test("every recorded function is in the workbook, or it is said why not", () => {
  const inWorkbook = new Set<string>([
    ...CASES.map(([name]) => name),
    "STRENGTH.ACCEPT",
    "STRENGTH.WITHINTEST",
  ]);
  const without = recorded.map(({ id }) => id).filter((id) => !inWorkbook.has(id));
  expect(Object.keys(WITHOUT_ORDINARY_FORMULA).sort()).toEqual(without.sort());
});

test("the committed file is the one that the script makes: npm run verification", async () => {
  const made = await xlsxOf(
    "Functions beside ordinary formulas",
    await calculated(verificationSheets()),
  );
  const committed = await readWorkbook(readFileSync("samples/verification.xlsx"));
  expect(committed).toEqual(await readWorkbook(made));
});
