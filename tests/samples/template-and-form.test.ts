import { readFileSync } from "node:fs";
import { oneTestSheets } from "../../scripts/samples/one-test-form";
import { sampleFiles } from "../../scripts/samples/sample-files";
import type { SampleSheet } from "../../scripts/samples/sheet";
import { templateSheets } from "../../scripts/samples/template";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { checkedSheet } from "../pane/report/checked-sheet";
import { bundledEngine } from "./bundled-engine";

jest.setTimeout(60_000);

const SAMPLES = [
  ["template.xlsx", templateSheets],
  ["one-test-form.xlsx", oneTestSheets],
] as const;
const valuesOf = ({ rows }: SampleSheet) => {
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, c) => row[c]?.v ?? null));
};

test.each(SAMPLES)("%s is the one that the script makes: npm run samples", async (name) => {
  const made = (await sampleFiles())[name] as Uint8Array;
  const committed = await readWorkbook(readFileSync(`samples/${name}`));
  expect(committed).toEqual(await readWorkbook(made));
});

test.each(SAMPLES)(
  "%s: the workbench's spreadsheet gives the stored results",
  async (_, sheets) => {
    const { calculated, worksheetFunctions } = bundledEngine();
    const made = sheets();
    const again = await calculated(made, worksheetFunctions);
    const filled = (sheet: SampleSheet) => valuesOf(sheet).map((row) => row.map((v) => v ?? ""));
    expect(again.map(filled)).toEqual(made.map(filled));
  },
);

// Worked by hand: 6.00 and nothing to subtract; 6.50 − 0.30 for 48 oz is 6.20, so 6.25 (ASTM C173 Table 1
// as reproduced in a meter maker's manual, 2019).
test("the examples of the template are sound tests, and the room below them is blank", () => {
  const [sheet] = templateSheets();
  const columns = sheet!.rows[4]!.indexOf(null);
  const { result } = checkedSheet(valuesOf(sheet!).map((row) => row.slice(0, columns)));
  const tests = result.results.filter(({ state }) => state !== "");
  expect(tests.map(({ sample, state, air }) => [sample, state, air])).toEqual([
    ["S-02", "valid", 6],
    ["S-04", "valid", 6.25],
  ]);
  expect(result.findings.filter(({ weight }) => weight === "void" || weight === "error")).toEqual(
    [],
  );
  expect(valuesOf(sheet!)[7]!.every((value) => value === null || value === "")).toBe(true);
});

test("the example of the form is one sound test, and its results are those of the method", () => {
  const [sheet] = oneTestSheets();
  const { result } = checkedSheet(valuesOf(sheet!));
  expect(result.reading.forms).toBe(1);
  expect(result.results.map(({ sample, state, air }) => [sample, state, air])).toEqual([
    ["S-04", "valid", 6.25],
  ]);
  expect(result.findings.map(({ rule }) => rule)).toEqual([]);
  const results = sheet!.rows.slice(-4).map(([label, cell]) => [label!.v, cell!.v]);
  expect(results).toEqual([
    ["Next step", "final"],
    ["Final reading (%)", 6.5],
    ["Reported air (%)", 6.25],
    ["Verdict", "within"],
  ]);
});

test("every column of numbers in the template says what may be typed, and lets a blank be one", async () => {
  const [sheet] = (await readWorkbook(readFileSync("samples/template.xlsx"))).sheets;
  const validations = sheet!.dataValidations!;
  expect(validations).toHaveLength(13);
  for (const { allowBlank, errorStyle, inputMessage } of validations) {
    expect([allowBlank, errorStyle]).toEqual([true, "warning"]);
    expect(inputMessage).toMatch(/\.$/);
    // Excel shows no more of it (ECMA-376 18.3.1.32: prompt and error hold 255 characters).
    expect(inputMessage!.length).toBeLessThanOrEqual(255);
  }
});
